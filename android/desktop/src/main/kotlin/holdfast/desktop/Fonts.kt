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

/** Where systems keep font files for every program. */
private val FontFolders = listOf("/usr/share/fonts", "/usr/local/share/fonts", "/Library/Fonts", "C:/Windows/Fonts")

/** The font files of this machine, for names in scripts that the report's own face lacks. */
internal fun fontFiles(): List<String> = FontFolders.map(::File).flatMap { folder ->
    folder.walk().filter { it.extension.lowercase() in setOf("ttf", "otf", "ttc") }.map { it.path }
}
