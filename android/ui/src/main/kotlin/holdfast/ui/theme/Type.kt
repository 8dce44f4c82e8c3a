package holdfast.ui.theme

import androidx.compose.runtime.Immutable
import androidx.compose.ui.text.TextStyle
import androidx.compose.ui.text.font.FontFamily
import androidx.compose.ui.text.font.FontWeight
import androidx.compose.ui.text.style.LineBreak
import androidx.compose.ui.unit.em
import androidx.compose.ui.unit.sp

/** The sizes of type: six, and no others. Figures are tabular so that running numbers don't jump. */
@Immutable
class Type(val family: FontFamily) {
    val small = style(16, FontWeight.Normal)
    val smallStrong = style(16, FontWeight.Bold)
    val body = style(18, FontWeight.Normal)
    val strong = style(18, FontWeight.Bold)
    val heading = style(22, FontWeight.Bold)
    val title = style(28, FontWeight.Bold)
    val number = style(44, FontWeight.Bold)
    val running = style(96, FontWeight.Bold)

    private fun style(size: Int, weight: FontWeight) = TextStyle(
        fontFamily = family,
        fontSize = size.sp,
        fontWeight = weight,
        lineHeight = if (size < 40) 1.35.em else 1.1.em,
        fontFeatureSettings = "tnum",
        lineBreak = if (size < 20) LineBreak.Paragraph else LineBreak.Heading,
    )
}
