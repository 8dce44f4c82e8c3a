package holdfast.app.phone

import android.content.Context
import android.hardware.Sensor
import android.hardware.SensorEvent
import android.hardware.SensorEventListener
import android.hardware.SensorManager
import android.os.Handler
import android.os.Looper

/** `ReadBarometer`: one reading of the pressure sensor in Pa, or null if there is none within two seconds. */
internal class Barometer(context: Context) {
    private val sensors: SensorManager? = context.getSystemService(SensorManager::class.java)
    private val handler = Handler(Looper.getMainLooper())

    fun read(answer: (Double?) -> Unit) {
        val sensor = sensors?.getDefaultSensor(Sensor.TYPE_PRESSURE)
        if (sensor == null) {
            answer(null)
            return
        }
        val once = Once(answer)
        handler.postDelayed(once, PATIENCE_MS)
        sensors.registerListener(once, sensor, SensorManager.SENSOR_DELAY_NORMAL, handler)
    }

    private inner class Once(private val answer: (Double?) -> Unit) : SensorEventListener, Runnable {
        // The sensor reports hPa.
        override fun onSensorChanged(event: SensorEvent) = end(event.values[0] * 100.0)

        override fun onAccuracyChanged(sensor: Sensor, accuracy: Int) = Unit

        override fun run() = end(null)

        private fun end(pa: Double?) {
            handler.removeCallbacks(this)
            sensors?.unregisterListener(this)
            answer(pa)
        }
    }

    private companion object {
        const val PATIENCE_MS = 2_000L
    }
}
