package holdfast.ui.components

import androidx.compose.foundation.Canvas
import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.size
import androidx.compose.runtime.Composable
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.geometry.Size
import androidx.compose.ui.graphics.Color
import androidx.compose.ui.graphics.Path
import androidx.compose.ui.graphics.PathEffect
import androidx.compose.ui.graphics.StrokeCap
import androidx.compose.ui.graphics.drawscope.DrawScope
import androidx.compose.ui.graphics.drawscope.Stroke
import androidx.compose.ui.platform.LocalDensity
import androidx.compose.ui.text.TextStyle
import holdfast.core.Mark
import holdfast.core.MarkShape
import holdfast.ui.theme.Space
import holdfast.ui.theme.Theme
import kotlin.math.PI

/** A state: its shape, then its word, both in its colour. */
@Composable
fun MarkView(mark: Mark, modifier: Modifier = Modifier, style: TextStyle = Theme.type.strong) {
    Row(modifier, Arrangement.spacedBy(Space.small), Alignment.CenterVertically) {
        MarkSign(mark, style)
        Words(mark.word, style = style, colour = Theme.palette[mark.role])
    }
}

/** The shape alone, as high as letters of this type. */
@Composable
fun MarkSign(mark: Mark, style: TextStyle = Theme.type.strong) {
    val colour = Theme.palette[mark.role]
    val side = with(LocalDensity.current) { style.fontSize.toDp() }
    Canvas(Modifier.size(side)) { sign(mark.shape, colour) }
}

private fun DrawScope.sign(shape: MarkShape, colour: Color) {
    val line = size.minDimension * 0.14f
    val radius = (size.minDimension - line) / 2
    val box = Size(radius * 2, radius * 2)
    val corner = Offset(center.x - radius, center.y - radius)
    when (shape) {
        MarkShape.DISC -> drawCircle(colour, size.minDimension / 2)
        MarkShape.HALF_DISC -> {
            drawCircle(colour, radius, style = Stroke(line))
            drawArc(colour, 90f, 180f, useCenter = true, corner, box)
        }
        MarkShape.WEDGE -> drawPath(
            Path().apply {
                moveTo(0f, size.height * 0.08f)
                lineTo(size.width, size.height * 0.08f)
                lineTo(size.width / 2, size.height * 0.96f)
                close()
            },
            colour,
        )
        MarkShape.RING -> drawCircle(colour, radius, style = Stroke(line))
        MarkShape.BARRED_RING -> {
            drawCircle(colour, radius, style = Stroke(line))
            drawLine(colour, Offset(0f, center.y), Offset(size.width, center.y), line * 1.4f)
        }
        MarkShape.DOTTED_RING -> {
            val gap = (2 * PI * radius / 9).toFloat()
            val dots = PathEffect.dashPathEffect(floatArrayOf(0.1f, gap))
            drawCircle(colour, radius, style = Stroke(line * 1.3f, cap = StrokeCap.Round, pathEffect = dots))
        }
        MarkShape.GAP_RING -> drawArc(colour, -20f, 280f, useCenter = false, corner, box, style = Stroke(line))
    }
}
