package holdfast.app.phone

import android.content.ActivityNotFoundException
import android.net.Uri
import androidx.activity.ComponentActivity
import androidx.activity.result.PickVisualMediaRequest
import androidx.activity.result.contract.ActivityResultContracts
import androidx.lifecycle.lifecycleScope
import holdfast.ui.bridge.Answers
import java.io.File
import kotlinx.coroutines.Dispatchers
import kotlinx.coroutines.launch
import kotlinx.coroutines.withContext

/** `PickPhoto`: the system's picker lends a picture, which is copied as it is; the core judges it. */
internal class Gallery(private val activity: ComponentActivity, private val answers: Answers) {
    private val pick = activity.registerForActivityResult(ActivityResultContracts.PickVisualMedia()) { uri ->
        if (uri == null) answers.photo(null) else activity.lifecycleScope.launch { answers.photo(copied(uri)) }
    }

    fun open() {
        try {
            pick.launch(PickVisualMediaRequest(ActivityResultContracts.PickVisualMedia.ImageOnly))
        } catch (_: ActivityNotFoundException) {
            answers.photo(null)
        }
    }

    private suspend fun copied(uri: Uri): String? = withContext(Dispatchers.IO) {
        copyOfLent(activity, uri, File(LentFiles.photos(activity), "picked"))
    }
}
