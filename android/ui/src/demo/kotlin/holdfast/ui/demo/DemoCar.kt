package holdfast.ui.demo

import holdfast.core.Point
import holdfast.core.Said
import kotlin.math.exp
import kotlin.math.sin

/** An invented car: two mounts, one valve, and a front hose that is split until it is replaced. */
internal object DemoCar {
    /** What the gauge shows when pumping stops and, where nothing leaks, when it is read again, inHg. */
    const val HELD = "20"

    /** What is written under the pictures; both are drawn. */
    const val SPLIT_HOSE = "The front hose, split at its end (drawn, invented)"
    const val NEW_HOSE = "The new hose with its clips (drawn, invented)"

    /** The highest the gauge gets to, inHg, where the target can't be reached. */
    fun highest(test: String, repaired: Boolean): String? = when {
        repaired -> null
        test == "hold:branch" -> "4"
        test == "hold:front_hose" -> "3"
        else -> null
    }

    /** Answers to the questions of a test, in the order they are asked. */
    fun said(test: String): List<Said> = when (test.substringBefore(':')) {
        "complaint", "flow", "wiggle" -> listOf(Said.YES)
        "valve-off" -> listOf(Said.NO, Said.YES)
        "valve-on" -> listOf(Said.YES, Said.YES, Said.NO)
        else -> listOf(Said.NO, Said.NO)
    }

    /** What is typed, by test and key. */
    fun typed(test: String, key: String): String? = when (test.substringBefore(':') to key) {
        "idle-quality" to "rpm" -> "750"
        "codes" to "list" -> ""
        "mount-look" to "sag_mm" -> "0"
        "delivered" to "gauge" -> "7,5"
        "delivered" to "seconds" -> "4"
        "switch-over" to "seconds" -> "1.5"
        "switch-over" to "gauge" -> "0"
        "source" to "gauge" -> "19"
        "supply-volts" to "pin1" -> "12.4"
        "supply-volts" to "pin2" -> "0.02"
        "supply-volts" to "battery" -> "12.5"
        "supply-loaded" to "pin1" -> "12.1"
        "fuse" to "in_v", "fuse" to "out_v" -> "12.4"
        "power-wire" to "ohms" -> "0.3"
        "valve-volts" to "volts" -> "13.8"
        "valve-volts" to "plugged_v" -> "13.6"
        "valve-volts" to "battery" -> "13.9"
        "control-pin" to "off_v" -> "13.8"
        "control-pin" to "on_v" -> "0.3"
        "control-wire" to "ohms" -> "0.5"
        "coil" to "ohms" -> "28.5"
        "prove-meter" to "ohms" -> "0.2"
        "prove-meter" to "battery" -> "12.6"
        else -> null
    }

    /** What is picked, by test and key. */
    fun picked(test: String, key: String): String? = when (test.substringBefore(':') to key) {
        "idle-quality" to "steady", "source" to "steady" -> "yes"
        "idle-quality" to "rough" -> "no"
        "power-wire" to "to_ground_open", "control-wire" to "to_ground_open", "control-wire" to "to_battery_open", "coil" to "to_case_open" -> "yes"
        "prove-meter" to "lamp" -> "yes"
        "shake" to "on_0_3" -> if (test == "shake") "3" else "1"
        "shake" to "off_0_3" -> "3"
        else -> null
    }

    /** The customer's signature, nobody's hand: two waves and a dot. */
    val signature: List<List<Point>> = listOf(
        wave(60f, 46, 30f),
        wave(168f, 60, 18f),
        listOf(Point(300f, 62f), Point(303f, 64f)),
    )

    private fun wave(from: Float, count: Int, height: Float): List<Point> = (0 until count).map {
        val t = it / 6f
        Point(from + t * 11f + sin(t * 2.3f) * 6f, 84f - sin(t * 3.1f) * height * exp(-t / 8f))
    }
}
