package holdfast.app.phone

import android.content.Context
import android.speech.tts.TextToSpeech
import java.util.Locale

/** `Speak`: the system's voice, started when it is first needed. */
internal class Voice(private val context: Context) {
    private var speech: TextToSpeech? = null
    private var ready = false
    private var waiting: Pair<String, String>? = null

    fun say(text: String, language: String) {
        if (speech == null) {
            speech = TextToSpeech(context.applicationContext) { status ->
                ready = status == TextToSpeech.SUCCESS
                waiting?.let { (words, tag) -> speak(words, tag) }
                waiting = null
            }
        }
        if (ready) speak(text, language) else waiting = text to language
    }

    private fun speak(text: String, language: String) {
        if (!ready) return
        speech?.setLanguage(Locale.forLanguageTag(language))
        speech?.speak(text, TextToSpeech.QUEUE_FLUSH, null, "holdfast")
    }
}
