package holdfast.desktop

import androidx.compose.ui.graphics.ImageBitmap
import androidx.compose.ui.graphics.toComposeImageBitmap
import holdfast.ui.scene.PictureReader
import java.io.File
import java.io.IOException
import org.jetbrains.skia.Image

/** Reads the core's screen renditions. */
internal object PictureFiles : PictureReader {
    override suspend fun read(path: String): ImageBitmap? = try {
        Image.makeFromEncoded(File(path).readBytes()).toComposeImageBitmap()
    } catch (_: IOException) {
        null
    } catch (_: IllegalArgumentException) {
        null
    }
}
