package holdfast.app.phone

import android.content.Context
import android.content.Intent
import android.content.pm.PackageManager
import android.hardware.Sensor
import android.hardware.SensorManager
import android.speech.tts.TextToSpeech
import holdfast.core.PhoneFacts
import holdfast.core.PhonePart
import java.io.File

/** What this phone has, beside a [gaugeReader]. */
internal fun phoneFacts(context: Context, gaugeReader: GaugeReader? = null): PhoneFacts {
    val packages = context.packageManager
    val sensors = context.getSystemService(SensorManager::class.java)
    val voices = packages.queryIntentServices(Intent(TextToSpeech.Engine.INTENT_ACTION_TTS_SERVICE), 0)
    val parts = buildList {
        if (packages.hasSystemFeature(PackageManager.FEATURE_CAMERA_ANY)) add(PhonePart.CAMERA)
        add(PhonePart.GALLERY)
        if (sensors?.getDefaultSensor(Sensor.TYPE_PRESSURE) != null) add(PhonePart.BAROMETER)
        if (gaugeReader != null) add(PhonePart.GAUGE_READER)
        if (sensors?.getDefaultSensor(Sensor.TYPE_ACCELEROMETER) != null) add(PhonePart.ACCELEROMETER)
        if (voices.isNotEmpty()) add(PhonePart.SPEECH)
        if (vibrator(context)?.hasVibrator() == true) add(PhonePart.BUZZER)
        add(PhonePart.SHARE)
    }
    return PhoneFacts(
        locale = context.resources.configuration.locales[0].toLanguageTag(),
        parts = parts,
        fonts = File("/system/fonts").list().orEmpty().map { "/system/fonts/$it" },
    )
}
