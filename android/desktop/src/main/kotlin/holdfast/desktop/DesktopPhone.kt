package holdfast.desktop

import holdfast.core.Buzz
import holdfast.core.buzzTimes
import holdfast.ui.bridge.Answers
import holdfast.ui.bridge.GaugeLook
import holdfast.ui.bridge.Phone
import java.io.File
import kotlinx.coroutines.flow.MutableStateFlow
import kotlinx.coroutines.flow.StateFlow

/** A phone played by this machine: files instead of camera and sharing, a line of text instead of voice and buzzing. */
internal class DesktopPhone(private val dataFolder: File, private val files: FilePicker) : Phone {
    private val lineNow = MutableStateFlow("")

    /** Where answers go. */
    var answers: Answers? = null

    /** What a phone would have said last, or how it would have buzzed. */
    val line: StateFlow<String> = lineNow

    override fun keepScreenOn() = Unit

    override fun letScreenSleep() = Unit

    /** A stroke for each time it shakes, as long as it does. */
    override fun buzz(pattern: Buzz) {
        val shakes = buzzTimes(pattern).filterIndexed { place, _ -> place % 2 == 0 }
        tell(shakes.joinToString(" ") { "▪".repeat((it.toInt() / SHORT_MS).coerceIn(1, LONGEST)) })
    }

    override fun speak(text: String, language: String) = tell(text)

    override fun takePhoto() = pickPhoto()

    override fun pickPhoto() {
        answers?.photo(files.open()?.path)
    }

    override fun decodePicture(path: String) {
        answers?.notDecoded()
    }

    override fun pickBundle() {
        answers?.bundle(files.open()?.path)
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
        val to = files.save(title, from.name) ?: return
        from.copyTo(to, overwrite = true)
        tell(to.name)
    }

    private fun tell(what: String) {
        lineNow.value = what
    }

    private companion object {
        /** So long a shake is one sign. */
        const val SHORT_MS = 100

        /** Signs for the longest shake. */
        const val LONGEST = 7
    }
}
