package holdfast.app.phone

import androidx.activity.ComponentActivity
import holdfast.ui.bridge.Answers
import java.io.File

/** Runs what needs a window. Made in `onCreate`: a photo that comes back to a new process finds its way too. */
class Errands(activity: ComponentActivity, dataFolder: File, answers: Answers) {
    private val camera = Camera(activity, answers)
    private val gallery = Gallery(activity, answers)
    private val sharing = Sharing(activity, dataFolder)

    fun run(errand: Errand) = when (errand) {
        is Errand.TakePhoto -> camera.open()
        is Errand.PickPhoto -> gallery.open()
        is Errand.Share -> sharing.share(errand.file, errand.mime, errand.title)
    }
}
