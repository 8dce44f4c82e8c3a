package holdfast.app.phone

import android.content.ClipData
import android.content.Intent
import androidx.activity.ComponentActivity
import java.io.File

/** `Share`: the file is lent to the program the person chooses. */
internal class Sharing(private val activity: ComponentActivity, private val dataFolder: File) {
    fun share(file: File, mime: String, title: String) {
        val uri = LentFiles.report(dataFolder, file) ?: return
        val send = Intent(Intent.ACTION_SEND).apply {
            type = mime
            putExtra(Intent.EXTRA_STREAM, uri)
            putExtra(Intent.EXTRA_TITLE, title)
            putExtra(Intent.EXTRA_SUBJECT, title)
            clipData = ClipData.newRawUri(title, uri)
            addFlags(Intent.FLAG_GRANT_READ_URI_PERMISSION)
        }
        activity.startActivity(Intent.createChooser(send, title))
    }
}
