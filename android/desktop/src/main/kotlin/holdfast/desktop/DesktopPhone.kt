package holdfast.desktop

import holdfast.core.Buzz
import holdfast.ui.bridge.Answers
import holdfast.ui.bridge.GaugeLook
import holdfast.ui.bridge.Phone
import java.io.File
import kotlinx.coroutines.flow.MutableStateFlow
import kotlinx.coroutines.flow.StateFlow

/** A phone played by this machine: files instead of camera and sharing, a line of words instead of voice and buzzing. */
internal class DesktopPhone(private val dataFolder: File, private val files: FilePicker) : Phone {
    private val lineNow = MutableStateFlow("")

    /** Where answers go. */
    var answers: Answers? = null

    /** What a phone would have said or done last. */
    val line: StateFlow<String> = lineNow

    override fun keepScreenOn() = tell("screen stays on")

    override fun letScreenSleep() = tell("screen may sleep")

    override fun buzz(pattern: Buzz) = tell("buzz: ${pattern.name.lowercase().replace('_', ' ')}")

    override fun speak(text: String, language: String) = tell("says: $text")

    override fun takePhoto() = pickPhoto()

    override fun pickPhoto() {
        answers?.photo(files.open("Choose a photo")?.path)
    }

    override fun decodePicture(path: String) {
        answers?.notDecoded()
    }

    override fun pickBundle() {
        answers?.bundle(files.open("Choose a file with jobs")?.path)
    }

    override fun readBarometer() {
        answers?.pressure(null)
    }

    override fun watchGauge(everyMs: Long, unit: String, span: Double) {
        answers?.gauge(GaugeLook.Gone)
    }

    override fun stopWatchingGauge() = Unit

    override fun recordVibration(forMs: Long) {
        answers?.vibration(null)
    }

    override fun share(path: String, mime: String, title: String) {
        val from = dataFolder.resolve(path)
        val to = files.save("Save $title as", from.name) ?: return
        from.copyTo(to, overwrite = true)
        tell("saved: ${to.name}")
    }

    private fun tell(what: String) {
        lineNow.value = what
    }
}
