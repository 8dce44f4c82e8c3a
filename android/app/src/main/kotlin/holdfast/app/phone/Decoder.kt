package holdfast.app.phone

import android.graphics.Bitmap
import android.graphics.ImageDecoder
import android.os.Build
import androidx.annotation.RequiresApi
import java.io.File
import java.io.IOException
import kotlin.math.ceil
import kotlin.math.sqrt

/** `DecodePicture`: a picture that the core can't decode, such as HEIF, as an upright JPEG; the phone may know how. */
internal object Decoder {
    /** As many pixels as the core takes, in thousands of thousands. */
    private const val MOST_PIXELS = 64e6
    private const val QUALITY = 95

    /** Decodes [from] into [to]. False if this phone can't. */
    fun decode(from: File, to: File): Boolean =
        Build.VERSION.SDK_INT >= Build.VERSION_CODES.P && decodeByPlatform(from, to)

    @RequiresApi(Build.VERSION_CODES.P)
    private fun decodeByPlatform(from: File, to: File): Boolean = try {
        val bitmap = ImageDecoder.decodeBitmap(ImageDecoder.createSource(from)) { decoder, info, _ ->
            // In memory that can be read back, and never more than fits: decided before a pixel is decoded.
            decoder.allocator = ImageDecoder.ALLOCATOR_SOFTWARE
            val pixels = info.size.width.toDouble() * info.size.height
            decoder.setTargetSampleSize(ceil(sqrt(pixels / MOST_PIXELS)).toInt().coerceAtLeast(1))
        }
        to.outputStream().use { bitmap.compress(Bitmap.CompressFormat.JPEG, QUALITY, it) }
    } catch (_: IOException) {
        false
    }
}
