package holdfast.app.phone

import holdfast.ui.bridge.GaugeLook

/**
 * `WatchGauge`: a camera with a program that reads the needle from its picture. There is none in this app yet, so it
 * does not tell the core of one and the core does not offer it; what brings readings later is handed to
 * [AndroidPhone] and to [phoneFacts].
 */
interface GaugeReader {
    /** Looks each [everyMs] at a gauge from 0 to [span] [unit], until [stop] or [GaugeLook.Gone]. */
    fun watch(everyMs: Long, unit: String, span: Double, seen: (GaugeLook) -> Unit)

    /** Looks no longer. */
    fun stop()
}
