package holdfast.app.phone

import android.content.Context
import android.os.Build
import android.os.VibrationEffect
import android.os.Vibrator
import android.os.VibratorManager
import holdfast.core.Buzz
import holdfast.core.buzzTimes

/** `Buzz`: patterns that a hand can tell apart. */
internal class Buzzer(context: Context) {
    private val vibrator: Vibrator? = vibrator(context)

    fun buzz(pattern: Buzz) {
        // Android begins with a rest.
        val times = listOf(0L) + buzzTimes(pattern).map { it.toLong() }
        vibrator?.vibrate(VibrationEffect.createWaveform(times.toLongArray(), -1))
    }
}

internal fun vibrator(context: Context): Vibrator? = if (Build.VERSION.SDK_INT >= Build.VERSION_CODES.S) {
    context.getSystemService(VibratorManager::class.java)?.defaultVibrator
} else {
    context.getSystemService(Vibrator::class.java)
}
