package holdfast.app.phone

import android.content.Context
import android.hardware.Sensor
import android.hardware.SensorEvent
import android.hardware.SensorEventListener
import android.hardware.SensorManager
import android.os.Handler
import android.os.Looper
import holdfast.ui.bridge.VibrationRecording
import kotlin.math.sqrt

/**
 * `RecordVibration`: the size of the acceleration as fast as the sensor gives it. Small shakes change it by their part
 * along gravity.
 */
internal class Accelerometer(context: Context) {
    private val sensors: SensorManager? = context.getSystemService(SensorManager::class.java)
    private val handler = Handler(Looper.getMainLooper())

    fun record(forMs: Long, answer: (VibrationRecording?) -> Unit) {
        val sensor = sensors?.getDefaultSensor(Sensor.TYPE_ACCELEROMETER)
        if (sensor == null) {
            answer(null)
            return
        }
        val recorder = Recorder(answer)
        handler.postDelayed(recorder, forMs)
        sensors.registerListener(recorder, sensor, SensorManager.SENSOR_DELAY_GAME, handler)
    }

    private inner class Recorder(private val answer: (VibrationRecording?) -> Unit) : SensorEventListener, Runnable {
        private val sizes = mutableListOf<Double>()
        private var firstNs = 0L
        private var lastNs = 0L

        override fun onSensorChanged(event: SensorEvent) {
            if (sizes.isEmpty()) firstNs = event.timestamp
            lastNs = event.timestamp
            sizes += sqrt(event.values.take(3).sumOf { it.toDouble() * it }) / MILLI_G
        }

        override fun onAccuracyChanged(sensor: Sensor, accuracy: Int) = Unit

        override fun run() {
            sensors?.unregisterListener(this)
            val seconds = (lastNs - firstNs) / 1e9
            answer(if (seconds > 0) VibrationRecording((sizes.size - 1) / seconds, sizes) else null)
        }
    }

    private companion object {
        /** A thousandth of the standard acceleration of free fall (9.80665 m/s², CGPM 1901). */
        const val MILLI_G = 0.00980665
    }
}
