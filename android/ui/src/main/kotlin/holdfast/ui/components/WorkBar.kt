package holdfast.ui.components

import androidx.compose.foundation.Canvas
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.height
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.runtime.staticCompositionLocalOf
import androidx.compose.ui.Modifier
import androidx.compose.ui.geometry.Size
import androidx.compose.ui.semantics.ProgressBarRangeInfo
import androidx.compose.ui.semantics.progressBarRangeInfo
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.unit.dp
import holdfast.ui.theme.Space
import holdfast.ui.theme.Theme

/** How much of the work under way is done, 0 to 1; read only while drawing. */
val LocalWorkShare = staticCompositionLocalOf { { 0f } }

/** How far the work under way is. */
@Composable
fun WorkBar(modifier: Modifier = Modifier) {
    val share = LocalWorkShare.current
    val (done, left) = Theme.palette.needle to Theme.palette.line
    Canvas(
        modifier
            .fillMaxWidth()
            .padding(vertical = Space.hair)
            .height(8.dp)
            .semantics { progressBarRangeInfo = ProgressBarRangeInfo(share(), 0f..1f) },
    ) {
        drawRect(left)
        drawRect(done, size = Size(size.width * share().coerceIn(0f, 1f), size.height))
    }
}
