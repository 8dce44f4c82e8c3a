package holdfast.ui.theme

import androidx.compose.foundation.background
import androidx.compose.foundation.border
import androidx.compose.foundation.shape.RoundedCornerShape
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.draw.clip
import androidx.compose.ui.graphics.Color
import androidx.compose.ui.unit.Dp
import androidx.compose.ui.unit.dp

/** Distances, in steps of 4 dp, and the sizes that fingers need. */
object Space {
    val hair = 4.dp
    val small = 8.dp
    val step = 12.dp
    val margin = 16.dp
    val wide = 24.dp

    /** The least height of the thing to do next. */
    val primaryTarget = 64.dp

    /** The least height of anything else to tap. */
    val target = 52.dp

    /** The widest gauge: the words around it have to fit on the screen too. */
    val gauge = 330.dp

    /** The widest gauge beside figures for two metres. */
    val smallGauge = 220.dp

    /** The widest drawing: on a phone on its side it would leave no room for the words. */
    val drawing = 440.dp

    /** Wider than this, text lines get hard to follow. */
    val column = 640.dp

    /** A window lower than this and wider than high has its ways on at the side. */
    val low = 520.dp

    /** How wide that side is. */
    val side = 280.dp

    val corner = RoundedCornerShape(12.dp)
}

/** A card: raised ground in a frame. */
@Composable
fun Modifier.card(frame: Color, width: Dp, ground: Color = Theme.palette.raised): Modifier =
    clip(Space.corner).background(ground).border(width, frame, Space.corner)
