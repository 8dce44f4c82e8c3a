package holdfast.desktop

import holdfast.core.Buzz
import holdfast.ui.bridge.Answers
import holdfast.ui.bridge.Phone
import java.awt.FileDialog
import java.awt.Frame
import java.io.File
import kotlinx.coroutines.flow.MutableStateFlow
import kotlinx.coroutines.flow.StateFlow

/** A phone played by this machine: files instead of camera and sharing, a line of words instead of voice and buzzing. */
internal class DesktopPhone(private val dataFolder: File) : Phone {
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
        answers?.photo(ask("Choose a photo", FileDialog.LOAD)?.path)
    }

    override fun readBarometer() {
        answers?.pressure(null)
    }

    override fun share(path: String, mime: String, title: String) {
        val from = dataFolder.resolve(path)
        val to = ask("Save $title as", FileDialog.SAVE, from.name) ?: return
        from.copyTo(to, overwrite = true)
        tell("saved: ${to.name}")
    }

    private fun tell(what: String) {
        lineNow.value = what
    }

    private fun ask(title: String, mode: Int, name: String? = null): File? {
        val dialog = FileDialog(null as Frame?, title, mode)
        name?.let { dialog.file = it }
        dialog.isVisible = true
        return dialog.files.firstOrNull()
    }
}
