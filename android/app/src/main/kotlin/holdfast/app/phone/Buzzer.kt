package holdfast.app.phone

import android.content.Context
import android.os.Build
import android.os.VibrationEffect
import android.os.Vibrator
import android.os.VibratorManager
import holdfast.core.Buzz

/** `Buzz`: patterns that a hand can tell apart, as milliseconds of rest and shaking by turns. */
internal class Buzzer(context: Context) {
    private val vibrator: Vibrator? = vibrator(context)

    fun buzz(pattern: Buzz) {
        val times = when (pattern) {
            Buzz.TICK -> longArrayOf(0, 40)
            Buzz.DONE -> longArrayOf(0, 60, 90, 60)
            Buzz.START -> longArrayOf(0, 60, 90, 60, 90, 60)
            Buzz.READ_NOW -> longArrayOf(0, 700)
            Buzz.END -> longArrayOf(0, 400, 200, 400)
            Buzz.ALARM -> longArrayOf(0, 500, 200, 500, 200, 500)
        }
        vibrator?.vibrate(VibrationEffect.createWaveform(times, -1))
    }
}

internal fun vibrator(context: Context): Vibrator? = if (Build.VERSION.SDK_INT >= Build.VERSION_CODES.S) {
    context.getSystemService(VibratorManager::class.java)?.defaultVibrator
} else {
    context.getSystemService(Vibrator::class.java)
}
