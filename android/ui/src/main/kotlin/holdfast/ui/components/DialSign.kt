package holdfast.ui.components

import androidx.compose.foundation.Canvas
import androidx.compose.foundation.layout.size
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.geometry.Size
import androidx.compose.ui.graphics.StrokeCap
import androidx.compose.ui.graphics.drawscope.Stroke
import androidx.compose.ui.unit.dp
import holdfast.core.Role
import holdfast.ui.theme.Theme

/** The app's own sign: a dial with its band and one needle. Decoration: a screen reader passes it by. */
@Composable
internal fun DialSign(modifier: Modifier = Modifier) {
    val palette = Theme.palette
    Canvas(modifier.size(28.dp)) {
        val line = size.width * 0.11f
        val corner = Offset(line / 2, line / 2)
        val inner = Size(size.width - line, size.height - line)
        drawArc(palette.ink, 135f, 180f, false, corner, inner, style = Stroke(line, cap = StrokeCap.Round))
        drawArc(palette[Role.HOLDS], 330f, 75f, false, corner, inner, style = Stroke(line, cap = StrokeCap.Round))
        val tip = Offset(center.x + size.width * 0.3f, center.y - size.height * 0.17f)
        drawLine(palette.needle, center, tip, line, StrokeCap.Round)
        drawCircle(palette.needle, line, center)
    }
}
