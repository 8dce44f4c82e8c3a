package holdfast.app.phone

import android.content.Context
import holdfast.core.Buzz
import holdfast.ui.bridge.Answers
import holdfast.ui.bridge.GaugeLook
import holdfast.ui.bridge.Phone
import java.io.File
import kotlinx.coroutines.channels.Channel
import kotlinx.coroutines.flow.MutableStateFlow
import kotlinx.coroutines.flow.StateFlow

/** The phone's services. What needs a window waits as an [Errand] until there is one. */
class AndroidPhone(
    context: Context,
    private val dataFolder: File,
    private val gaugeReader: GaugeReader? = null,
) : Phone {
    private val buzzer = Buzzer(context)
    private val voice = Voice(context)
    private val barometer = Barometer(context)
    private val accelerometer = Accelerometer(context)
    private val litNow = MutableStateFlow(false)

    /** Where answers go; set before the first request can come. */
    var answers: Answers? = null

    /** Whether the screen has to stay lit. */
    val lit: StateFlow<Boolean> = litNow

    /** What waits for a window. */
    val errands = Channel<Errand>(Channel.UNLIMITED)

    override fun keepScreenOn() {
        litNow.value = true
    }

    override fun letScreenSleep() {
        litNow.value = false
    }

    override fun buzz(pattern: Buzz) = buzzer.buzz(pattern)

    override fun speak(text: String, language: String) = voice.say(text, language)

    override fun takePhoto() {
        errands.trySend(Errand.TakePhoto)
    }

    override fun pickPhoto() {
        errands.trySend(Errand.PickPhoto)
    }

    override fun decodePicture(path: String) {
        errands.trySend(Errand.DecodePicture(File(path)))
    }

    override fun pickBundle() {
        errands.trySend(Errand.PickBundle)
    }

    override fun readBarometer() = barometer.read { answers?.pressure(it) }

    override fun watchGauge(everyMs: Long, unit: String, span: Double) {
        if (gaugeReader == null) {
            answers?.gauge(GaugeLook.Gone)
        } else {
            gaugeReader.watch(everyMs, unit, span) { answers?.gauge(it) }
        }
    }

    override fun stopWatchingGauge() {
        gaugeReader?.stop()
    }

    override fun recordVibration(forMs: Long) = accelerometer.record(forMs) { answers?.vibration(it) }

    override fun share(path: String, mime: String, title: String) {
        errands.trySend(Errand.Share(dataFolder.resolve(path), mime, title))
    }
}

/** Something for which a window is needed. */
sealed interface Errand {
    data object TakePhoto : Errand

    data object PickPhoto : Errand

    data object PickBundle : Errand

    data class DecodePicture(val file: File) : Errand

    data class Share(val file: File, val mime: String, val title: String) : Errand
}
