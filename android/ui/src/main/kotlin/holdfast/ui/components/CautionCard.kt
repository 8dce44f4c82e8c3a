package holdfast.ui.components

import androidx.compose.foundation.Canvas
import androidx.compose.foundation.background
import androidx.compose.foundation.border
import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.defaultMinSize
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.padding
import androidx.compose.foundation.layout.size
import androidx.compose.foundation.selection.toggleable
import androidx.compose.runtime.Composable
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.draw.clip
import androidx.compose.ui.geometry.CornerRadius
import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.geometry.Size
import androidx.compose.ui.graphics.Color
import androidx.compose.ui.graphics.Path
import androidx.compose.ui.graphics.StrokeCap
import androidx.compose.ui.graphics.StrokeJoin
import androidx.compose.ui.graphics.drawscope.Stroke
import androidx.compose.ui.semantics.Role
import androidx.compose.ui.unit.dp
import holdfast.core.Acknowledgement
import holdfast.core.Action
import holdfast.core.Caution
import holdfast.core.Signal
import holdfast.ui.theme.Space
import holdfast.ui.theme.Theme
import holdfast.core.Role as Colour

/** A caution with its signal word; where it has to be ticked, the whole card is the thing to tap. */
@Composable
fun CautionCard(caution: Caution, send: (Action) -> Unit, modifier: Modifier = Modifier) {
    val palette = Theme.palette
    val colour = palette[caution.signal.colour()]
    val ack = caution.ack
    val tick = when (ack) {
        is Acknowledgement.NotAsked -> Modifier
        is Acknowledgement.Open -> Modifier.toggleable(false, role = Role.Checkbox) { send(ack.action) }
        is Acknowledgement.Given -> Modifier.toggleable(true, enabled = false, role = Role.Checkbox) {}
    }
    Column(
        modifier
            .fillMaxWidth()
            .clip(Space.corner)
            .border(2.dp, colour, Space.corner)
            .background(palette.raised)
            .then(tick),
    ) {
        Row(
            Modifier.fillMaxWidth().background(colour).padding(horizontal = Space.step, vertical = Space.hair),
            Arrangement.spacedBy(Space.small),
            Alignment.CenterVertically,
        ) {
            if (caution.signal != Signal.NOTICE) WarningTriangle(palette.paper, colour)
            Words(caution.word, style = Theme.type.strong, colour = palette.paper)
        }
        Row(
            Modifier.defaultMinSize(minHeight = Space.target).padding(Space.step),
            Arrangement.spacedBy(Space.step),
            Alignment.CenterVertically,
        ) {
            if (ack !is Acknowledgement.NotAsked) TickBox(ack is Acknowledgement.Given)
            Words(caution.text, Modifier.weight(1f))
        }
    }
}

private fun Signal.colour(): Colour = when (this) {
    Signal.DANGER -> Colour.DANGER
    Signal.WARNING -> Colour.WARNING
    Signal.CAUTION -> Colour.CAUTION
    Signal.NOTICE -> Colour.NOTICE
}

/** The general warning sign: a triangle with an exclamation mark. */
@Composable
private fun WarningTriangle(ground: Color, mark: Color) {
    Canvas(Modifier.size(24.dp)) {
        val w = size.width
        val h = size.height
        val triangle = Path().apply {
            moveTo(w * 0.5f, h * 0.1f)
            lineTo(w * 0.96f, h * 0.9f)
            lineTo(w * 0.04f, h * 0.9f)
            close()
        }
        drawPath(triangle, ground)
        drawPath(triangle, ground, style = Stroke(w * 0.08f, join = StrokeJoin.Round))
        drawLine(mark, Offset(w * 0.5f, h * 0.38f), Offset(w * 0.5f, h * 0.62f), w * 0.1f, StrokeCap.Round)
        drawCircle(mark, w * 0.06f, Offset(w * 0.5f, h * 0.77f))
    }
}

/** A box that is ticked or not. */
@Composable
internal fun TickBox(ticked: Boolean) {
    val palette = Theme.palette
    Canvas(Modifier.size(28.dp)) {
        val line = 2.5.dp.toPx()
        val inset = Offset(line / 2, line / 2)
        val inner = Size(size.width - line, size.height - line)
        val round = CornerRadius(6.dp.toPx())
        if (ticked) drawRoundRect(palette.ink, inset, inner, round)
        drawRoundRect(palette.ink, inset, inner, round, Stroke(line))
        if (ticked) {
            val tick = Path().apply {
                moveTo(size.width * 0.25f, size.height * 0.53f)
                lineTo(size.width * 0.43f, size.height * 0.70f)
                lineTo(size.width * 0.76f, size.height * 0.32f)
            }
            drawPath(tick, palette.paper, style = Stroke(line * 1.2f, cap = StrokeCap.Round, join = StrokeJoin.Round))
        }
    }
}
