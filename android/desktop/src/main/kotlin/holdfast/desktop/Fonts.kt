package holdfast.desktop

import androidx.compose.ui.text.font.FontFamily
import androidx.compose.ui.text.font.FontWeight
import androidx.compose.ui.text.platform.Font
import java.io.File

/** The report's own face; the start command says where its files lie. */
internal val ReportFont: FontFamily by lazy {
    val files = listOf("regular" to FontWeight.Normal, "bold" to FontWeight.Bold)
    val fonts = files.mapNotNull { (name, weight) ->
        System.getProperty("holdfast.font.$name")?.let { Font(File(it), weight) }
    }
    if (fonts.isEmpty()) FontFamily.SansSerif else FontFamily(fonts)
}
