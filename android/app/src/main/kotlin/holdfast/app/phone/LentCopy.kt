package holdfast.app.phone

import android.content.Context
import android.net.Uri
import java.io.File
import java.io.IOException

/** Copies what another program lends into a file of this one, as it is: the core judges it. Null if it can't be read. */
internal fun copyOfLent(context: Context, lent: Uri, into: File): String? = try {
    context.contentResolver.openInputStream(lent)?.use { from ->
        into.outputStream().use { from.copyTo(it) }
        into.path
    }
} catch (_: IOException) {
    null
} catch (_: SecurityException) {
    null
}
