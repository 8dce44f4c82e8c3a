package holdfast.ui.theme

import androidx.compose.runtime.Immutable
import androidx.compose.ui.graphics.Color
import holdfast.core.Role
import holdfast.core.colour

/** Colours by their roles, for day or for night: from the core's one table, which the report is drawn by, too. */
@Immutable
class Palette private constructor(theme: holdfast.core.Theme) {
    private val colours = Role.entries.associateWith { Color(OPAQUE or colour(it, theme).toLong()) }

    operator fun get(role: Role): Color = colours.getValue(role)

    val paper get() = this[Role.PAPER]
    val raised get() = this[Role.RAISED]
    val ink get() = this[Role.INK]
    val quietInk get() = this[Role.QUIET_INK]
    val line get() = this[Role.LINE]
    val needle get() = this[Role.NEEDLE]
    val onNeedle get() = this[Role.ON_NEEDLE]

    companion object {
        private const val OPAQUE = 0xFF000000L

        /** For daylight: dial-white and ink. */
        val Day = Palette(holdfast.core.Theme.DAY)

        /** For a dark garage. */
        val Night = Palette(holdfast.core.Theme.NIGHT)
    }
}
