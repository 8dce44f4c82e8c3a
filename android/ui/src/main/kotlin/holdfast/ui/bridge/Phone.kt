package holdfast.ui.bridge

import holdfast.core.Buzz

/** What only a phone can do: one method for each request of the core but ticks and work, which need no phone. */
interface Phone {
    fun keepScreenOn()

    fun letScreenSleep()

    fun buzz(pattern: Buzz)

    /** Says [text] aloud, cutting off what is being said; [language] is a BCP 47 tag. */
    fun speak(text: String, language: String)

    /** Opens the camera; the photo comes by [Answers.photo]. */
    fun takePhoto()

    /** Opens the gallery; the photo comes by [Answers.photo]. */
    fun pickPhoto()

    /** Decodes a picture the core can't; an upright JPEG comes by [Answers.photo], else [Answers.notDecoded]. */
    fun decodePicture(path: String)

    /** Asks for a file that holds jobs; it comes by [Answers.bundle]. */
    fun pickBundle()

    /** Reads the pressure sensor once; the reading comes by [Answers.pressure]. */
    fun readBarometer()

    /**
     * Looks at a gauge with a scale from 0 to [span] [unit] each [everyMs] from now on; what is seen comes by
     * [Answers.gauge].
     */
    fun watchGauge(everyMs: Long, unit: String, span: Double)

    /** Looks at the gauge no longer. */
    fun stopWatchingGauge()

    /** Records for so long how the phone shakes; the recording comes by [Answers.vibration]. */
    fun recordVibration(forMs: Long)

    /** Hands a file to another program. */
    fun share(path: String, mime: String, title: String)
}

/** Where a phone puts what it was asked for. */
interface Answers {
    /** The path of a photo, or null if none came. */
    fun photo(path: String?)

    /** The phone can't decode the picture. */
    fun notDecoded()

    /** The path of a file that holds jobs, or null if none came. */
    fun bundle(path: String?)

    /** Absolute pressure in Pa, or null if there is no sensor. */
    fun pressure(pa: Double?)

    /** One look at the gauge. */
    fun gauge(look: GaugeLook)

    /** How the phone shook, or null if that can't be recorded. */
    fun vibration(recording: VibrationRecording?)
}

/** What one look at a gauge brings. */
sealed interface GaugeLook {
    /** Where the needle stands, in the gauge's unit; null if it was not seen this time. */
    data class Needle(val vacuum: Double?) : GaugeLook

    /** Nobody looks, or nobody looks any longer. */
    data object Gone : GaugeLook
}

/** How the phone shook: [hz] samples a second of the acceleration, [mg] in thousandths of free fall's. */
class VibrationRecording(val hz: Double, val mg: List<Double>)
