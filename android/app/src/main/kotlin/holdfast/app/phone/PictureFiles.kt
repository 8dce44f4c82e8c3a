package holdfast.app.phone

import android.graphics.BitmapFactory
import androidx.compose.ui.graphics.ImageBitmap
import androidx.compose.ui.graphics.asImageBitmap
import holdfast.ui.scene.PictureReader
import kotlinx.coroutines.Dispatchers
import kotlinx.coroutines.withContext

/** Reads the core's screen renditions: small, upright JPEG or PNG files. */
internal object PictureFiles : PictureReader {
    override suspend fun read(path: String): ImageBitmap? = withContext(Dispatchers.IO) {
        BitmapFactory.decodeFile(path)?.asImageBitmap()
    }
}
