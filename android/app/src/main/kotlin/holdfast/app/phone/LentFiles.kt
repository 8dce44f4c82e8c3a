package holdfast.app.phone

import android.content.ContentProvider
import android.content.ContentValues
import android.content.Context
import android.database.Cursor
import android.database.MatrixCursor
import android.net.Uri
import android.os.ParcelFileDescriptor
import android.provider.OpenableColumns
import android.webkit.MimeTypeMap
import java.io.File
import java.io.FileNotFoundException

/**
 * Lends single files to other programs: `photos/…` for the camera to write, `data/…` to read. A name that climbs
 * out of its folder is refused.
 */
class LentFiles : ContentProvider() {
    override fun onCreate(): Boolean = true

    override fun openFile(uri: Uri, mode: String): ParcelFileDescriptor {
        if (uri.pathSegments.first() != PHOTOS && mode != "r") throw FileNotFoundException("only to be read: $uri")
        return ParcelFileDescriptor.open(file(uri), ParcelFileDescriptor.parseMode(mode))
    }

    override fun query(
        uri: Uri,
        projection: Array<out String>?,
        selection: String?,
        selectionArgs: Array<out String>?,
        sortOrder: String?,
    ): Cursor {
        val file = file(uri)
        val columns = projection ?: arrayOf(OpenableColumns.DISPLAY_NAME, OpenableColumns.SIZE)
        val row = columns.map { column ->
            when (column) {
                OpenableColumns.DISPLAY_NAME -> file.name
                OpenableColumns.SIZE -> file.length()
                else -> null
            }
        }
        return MatrixCursor(columns, 1).apply { addRow(row) }
    }

    override fun getType(uri: Uri): String? =
        MimeTypeMap.getSingleton().getMimeTypeFromExtension(file(uri).extension.lowercase())

    override fun insert(uri: Uri, values: ContentValues?): Uri? = null

    override fun delete(uri: Uri, selection: String?, selectionArgs: Array<out String>?): Int = 0

    override fun update(uri: Uri, values: ContentValues?, selection: String?, selectionArgs: Array<out String>?): Int = 0

    private fun file(uri: Uri): File {
        val context = context ?: throw FileNotFoundException("no context")
        val segments = uri.pathSegments
        val folder = when (segments.firstOrNull()) {
            PHOTOS -> photos(context)
            DATA -> File(context.filesDir, "holdfast")
            else -> throw FileNotFoundException("nothing lent there: $uri")
        }
        val file = File(folder, segments.drop(1).joinToString("/")).canonicalFile
        if (!file.startsWith(folder.canonicalFile)) throw FileNotFoundException("outside its folder: $uri")
        return file
    }

    companion object {
        private const val AUTHORITY = "holdfast.app.lent"
        private const val PHOTOS = "photos"
        private const val DATA = "data"

        /** Photos on their way into the core. */
        fun photos(context: Context): File = File(context.cacheDir, PHOTOS).apply { mkdirs() }

        /** The address of a file in [photos]. */
        fun photo(file: File): Uri = address(PHOTOS, file.name)

        /** The address of a file in the data folder, or null if it isn't in there. */
        fun report(dataFolder: File, file: File): Uri? {
            val whole = file.canonicalFile
            val folder = dataFolder.canonicalFile
            return if (whole.startsWith(folder)) address(DATA, whole.relativeTo(folder).path) else null
        }

        private fun address(kind: String, path: String): Uri =
            Uri.Builder().scheme("content").authority(AUTHORITY).appendPath(kind).apply {
                path.split(File.separatorChar).forEach { appendPath(it) }
            }.build()
    }
}
