package holdfast.ui.scene

import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.geometry.Size
import androidx.compose.ui.graphics.ImageBitmap
import androidx.compose.ui.graphics.Path
import androidx.compose.ui.graphics.PathEffect
import androidx.compose.ui.graphics.StrokeCap
import androidx.compose.ui.graphics.StrokeJoin
import androidx.compose.ui.graphics.drawscope.DrawScope
import androidx.compose.ui.graphics.drawscope.Fill
import androidx.compose.ui.graphics.drawscope.Stroke as DrawnStroke
import androidx.compose.ui.text.TextMeasurer
import androidx.compose.ui.text.TextStyle
import androidx.compose.ui.text.drawText
import androidx.compose.ui.text.font.FontWeight
import androidx.compose.ui.unit.IntOffset
import androidx.compose.ui.unit.IntSize
import holdfast.core.Anchor
import holdfast.core.Dash
import holdfast.core.Ends
import holdfast.core.Item
import holdfast.core.Point
import holdfast.core.Stroke
import holdfast.core.Weight
import holdfast.core.dashLengths
import holdfast.core.needleShapes
import holdfast.ui.theme.Palette
import kotlin.math.roundToInt

/** Draws a scene's items; [scale] is pixels for a scene unit. */
internal class SceneDrawing(
    private val palette: Palette,
    private val measurer: TextMeasurer,
    private val type: TextStyle,
    private val pictures: Map<String, ImageBitmap>,
) {
    fun draw(to: DrawScope, items: List<Item>, scale: Float, needleDeg: Float?) {
        items.forEach { item ->
            when (item) {
                is Item.Path -> to.path(item, scale)
                is Item.Circle -> to.circle(item, scale)
                is Item.Arc -> to.arc(item, scale)
                is Item.Text -> to.text(item, scale)
                is Item.Image -> to.image(item, scale)
                is Item.Needle -> to.needle(item, scale, needleDeg ?: item.angleDeg)
                is Item.Region -> Unit
            }
        }
    }

    private fun DrawScope.path(item: Item.Path, scale: Float) {
        val path = outline(item.points, item.ends, scale)
        item.fill?.let { drawPath(path, palette[it], style = Fill) }
        item.stroke?.let { drawPath(path, palette[it.role], style = it.drawn(scale)) }
    }

    private fun DrawScope.circle(item: Item.Circle, scale: Float) {
        val centre = item.centre.at(scale)
        item.fill?.let { drawCircle(palette[it], item.radius * scale, centre) }
        item.stroke?.let { drawCircle(palette[it.role], item.radius * scale, centre, style = it.drawn(scale)) }
    }

    private fun DrawScope.arc(item: Item.Arc, scale: Float) {
        val radius = item.radius * scale
        drawArc(
            color = palette[item.stroke.role],
            startAngle = item.startDeg,
            sweepAngle = item.sweepDeg,
            useCenter = false,
            topLeft = item.centre.at(scale) - Offset(radius, radius),
            size = Size(radius * 2, radius * 2),
            style = item.stroke.drawn(scale, StrokeCap.Butt),
        )
    }

    private fun DrawScope.text(item: Item.Text, scale: Float) {
        if (item.text.isEmpty()) return
        // Scene text grows with the scene; where the phone's text size asks for more, the core lays the scene out anew.
        val style = type.copy(
            color = palette[item.role],
            fontSize = (item.size * scale).toSp(),
            fontWeight = if (item.weight == Weight.BOLD) FontWeight.Bold else FontWeight.Normal,
        )
        val laid = measurer.measure(item.text, style, softWrap = false, maxLines = 1)
        val left = when (item.anchor) {
            Anchor.START -> 0f
            Anchor.MIDDLE -> laid.size.width / 2f
            Anchor.END -> laid.size.width.toFloat()
        }
        drawText(laid, topLeft = item.at.at(scale) - Offset(left, laid.firstBaseline))
    }

    private fun DrawScope.image(item: Item.Image, scale: Float) {
        val picture = pictures[item.path]
        val at = item.at.at(scale)
        val size = Size(item.width * scale, item.height * scale)
        if (picture == null) {
            drawRect(palette.line, at, size, alpha = 0.3f)
            return
        }
        drawImage(
            picture,
            dstOffset = IntOffset(at.x.roundToInt(), at.y.roundToInt()),
            dstSize = IntSize(size.width.roundToInt(), size.height.roundToInt()),
        )
    }

    private fun DrawScope.needle(item: Item.Needle, scale: Float, degrees: Float) {
        needleShapes(item.pivot, item.length, degrees, item.doubtDeg).forEach { shape ->
            drawPath(outline(shape.points, Ends.CLOSED, scale), palette[item.role], alpha = shape.opacity)
        }
    }
}

private fun outline(points: List<Point>, ends: Ends, scale: Float) = Path().apply {
    points.firstOrNull()?.let { moveTo(it.x * scale, it.y * scale) }
    points.drop(1).forEach { lineTo(it.x * scale, it.y * scale) }
    if (ends == Ends.CLOSED) close()
}

private fun Point.at(scale: Float) = Offset(x * scale, y * scale)

private fun Stroke.drawn(scale: Float, cap: StrokeCap = StrokeCap.Round): DrawnStroke {
    val wide = width * scale
    val broken = if (dash == Dash.SOLID) null else dashLengths(this)
    val effect = broken?.let { lengths -> PathEffect.dashPathEffect(FloatArray(lengths.size) { lengths[it] * scale }) }
    return DrawnStroke(wide, cap = if (dash == Dash.DOTTED) StrokeCap.Round else cap, join = StrokeJoin.Round, pathEffect = effect)
}
