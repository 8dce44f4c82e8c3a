package holdfast.app.phone

import android.content.ActivityNotFoundException
import androidx.activity.ComponentActivity
import androidx.activity.result.contract.ActivityResultContracts
import holdfast.ui.bridge.Answers
import java.io.File

/** `TakePhoto`: the system's camera writes into a file that is lent to it. */
internal class Camera(private val activity: ComponentActivity, private val answers: Answers) {
    // One name for all: the answer may come to another process than the one that asked.
    private val file = File(LentFiles.photos(activity), "camera.jpg")
    private val take = activity.registerForActivityResult(ActivityResultContracts.TakePicture()) { taken ->
        answers.photo(if (taken) file.path else null)
    }

    fun open() {
        file.delete()
        try {
            take.launch(LentFiles.photo(file))
        } catch (_: ActivityNotFoundException) {
            answers.photo(null)
        }
    }
}
