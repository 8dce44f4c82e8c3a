package holdfast.app.phone

import android.content.ActivityNotFoundException
import android.content.Intent
import android.net.Uri
import androidx.activity.ComponentActivity
import androidx.activity.result.contract.ActivityResultContracts
import androidx.core.content.IntentCompat
import androidx.lifecycle.lifecycleScope
import holdfast.ui.bridge.Answers
import java.io.File
import kotlinx.coroutines.CoroutineDispatcher
import kotlinx.coroutines.launch
import kotlinx.coroutines.withContext

/**
 * `PickBundle`, and files that another program shares into this one: the file is lent by the system and copied as it
 * is; the core judges it.
 */
internal class Bundles(
    private val activity: ComponentActivity,
    private val answers: Answers,
    private val io: CoroutineDispatcher,
) {
    private val pick = activity.registerForActivityResult(ActivityResultContracts.OpenDocument()) { uri ->
        if (uri == null) answers.bundle(null) else take(uri)
    }

    fun open() {
        try {
            pick.launch(arrayOf(ZIP, "application/octet-stream"))
        } catch (_: ActivityNotFoundException) {
            answers.bundle(null)
        }
    }

    /** Takes what another program shares, if it shares a bundle. */
    fun shared(intent: Intent) {
        val uri = when (intent.action) {
            Intent.ACTION_SEND -> IntentCompat.getParcelableExtra(intent, Intent.EXTRA_STREAM, Uri::class.java)
            Intent.ACTION_VIEW -> intent.data
            else -> null
        }
        uri?.let(::take)
    }

    private fun take(uri: Uri) {
        val file = File(activity.cacheDir, "bundle.zip")
        activity.lifecycleScope.launch { answers.bundle(withContext(io) { copyOfLent(activity, uri, file) }) }
    }

    private companion object {
        const val ZIP = "application/zip"
    }
}
