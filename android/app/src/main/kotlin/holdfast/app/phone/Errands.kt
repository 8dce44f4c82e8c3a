package holdfast.app.phone

import android.content.Intent
import androidx.activity.ComponentActivity
import androidx.lifecycle.lifecycleScope
import holdfast.ui.bridge.Answers
import java.io.File
import kotlinx.coroutines.CoroutineDispatcher
import kotlinx.coroutines.launch
import kotlinx.coroutines.withContext

/** Runs what needs a window. Made in `onCreate`: a photo that comes back to a new process finds its way too. */
class Errands(
    private val activity: ComponentActivity,
    dataFolder: File,
    private val answers: Answers,
    private val io: CoroutineDispatcher,
) {
    private val camera = Camera(activity, answers)
    private val gallery = Gallery(activity, answers)
    private val bundles = Bundles(activity, answers, io)
    private val sharing = Sharing(activity, dataFolder)

    fun run(errand: Errand) = when (errand) {
        is Errand.TakePhoto -> camera.open()
        is Errand.PickPhoto -> gallery.open()
        is Errand.PickBundle -> bundles.open()
        is Errand.DecodePicture -> decode(errand.file)
        is Errand.Share -> sharing.share(errand.file, errand.mime, errand.title)
    }

    /** Another program shares something into this one. */
    fun shared(intent: Intent) = bundles.shared(intent)

    private fun decode(file: File) {
        activity.lifecycleScope.launch {
            val jpeg = File(LentFiles.photos(activity), "decoded.jpg")
            val done = withContext(io) { Decoder.decode(file, jpeg) }
            if (done) answers.photo(jpeg.path) else answers.notDecoded()
        }
    }
}
