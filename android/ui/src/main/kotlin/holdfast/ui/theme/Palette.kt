package holdfast.ui.theme

import androidx.compose.runtime.Immutable
import androidx.compose.ui.graphics.Color
import holdfast.core.Role

/** One table from role to colour; there is one for day and one for night. */
@Immutable
class Palette(private val pick: (Role) -> Color) {
    operator fun get(role: Role): Color = pick(role)

    val paper get() = this[Role.PAPER]
    val raised get() = this[Role.RAISED]
    val ink get() = this[Role.INK]
    val quietInk get() = this[Role.QUIET_INK]
    val line get() = this[Role.LINE]
    val needle get() = this[Role.NEEDLE]
    val onNeedle get() = this[Role.ON_NEEDLE]

    companion object {
        /** For daylight: dial-white and ink. */
        val Day = Palette { colours(it).first }

        /** For a dark garage. */
        val Night = Palette { colours(it).second }
    }
}

/** Day and night colour of each role: the same table as the report's renderer has. */
private fun colours(role: Role): Pair<Color, Color> = when (role) {
    Role.PAPER -> pair(0xFBFAF6, 0x101316)
    Role.RAISED -> pair(0xFFFFFF, 0x1B1F23)
    Role.INK -> pair(0x15191C, 0xF3F1EA)
    Role.QUIET_INK -> pair(0x4B5156, 0xB4B8B8)
    Role.LINE -> pair(0x8B9093, 0x61686D)
    Role.NEEDLE -> pair(0x963000, 0xFF8A4C)
    Role.ON_NEEDLE -> pair(0xFFFFFF, 0x101316)
    Role.BAND -> pair(0xD5E3DC, 0x244238)
    Role.SUSPECT -> pair(0xF4DCC8, 0x522F1A)
    Role.HOLDS -> pair(0x005A43, 0x2FC79B)
    Role.SLOW_LEAK -> pair(0x744C00, 0xE69F00)
    Role.LEAKS -> pair(0x933A00, 0xFF8B4D)
    Role.UNDECIDED -> pair(0x00527F, 0x6DBFEE)
    Role.WONT_BUILD -> pair(0x7D2F5C, 0xE39BC3)
    Role.NOT_DONE, Role.CANT_DO -> pair(0x4B5156, 0xB4B8B8)
    Role.VACUUM -> pair(0x2E5F73, 0x7FB9CE)
    Role.ELECTRIC -> pair(0x6A4A86, 0xC3A5DE)
    Role.LEAD_RED -> pair(0xA61414, 0xFF8F85)
    Role.LEAD_BLACK -> pair(0x15191C, 0xF3F1EA)
    Role.DANGER -> pair(0x9E1B1B, 0xFF8F85)
    Role.WARNING -> pair(0x8A3C00, 0xFF9A52)
    Role.CAUTION -> pair(0x6B5200, 0xF2C94C)
    Role.NOTICE -> pair(0x004F86, 0x77BDF2)
}

private fun pair(day: Long, night: Long) = Color(0xFF000000 or day) to Color(0xFF000000 or night)
