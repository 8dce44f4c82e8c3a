package holdfast.ui.scene

import androidx.compose.runtime.Composable
import androidx.compose.runtime.getValue
import androidx.compose.runtime.produceState
import androidx.compose.runtime.remember
import androidx.compose.runtime.staticCompositionLocalOf
import androidx.compose.ui.graphics.ImageBitmap
import holdfast.core.Item
import holdfast.core.Scene

/** Reads picture files; the shell knows how. */
fun interface PictureReader {
    /** The picture in this file, or null if there is none that can be read. Called off the main thread or on it. */
    suspend fun read(path: String): ImageBitmap?
}

/** The reader of the surrounding shell. */
val LocalPictureReader = staticCompositionLocalOf { PictureReader { null } }

/** The pictures a scene shows, as far as they have been read. */
@Composable
internal fun rememberPictures(scene: Scene): Map<String, ImageBitmap> {
    val paths = remember(scene) { scene.items.filterIsInstance<Item.Image>().map { it.path }.distinct() }
    if (paths.isEmpty()) return emptyMap()
    val reader = LocalPictureReader.current
    val read by produceState(emptyMap<String, ImageBitmap>(), paths, reader) {
        paths.forEach { path -> reader.read(path)?.let { value = value + (path to it) } }
    }
    return read
}
