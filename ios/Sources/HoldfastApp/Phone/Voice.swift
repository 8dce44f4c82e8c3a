import AVFoundation
import HoldfastKit

/// `speak`: the system's voice, which lowers other sound while it speaks.
@MainActor
final class Voice: Speech {
    private let synthesizer = AVSpeechSynthesizer()

    func say(_ text: String, language: String) {
        let session = AVAudioSession.sharedInstance()
        // Without it the voice is silent when the phone's switch is on silent; a person under a car needs to hear it.
        try? session.setCategory(.playback, mode: .voicePrompt, options: .duckOthers)
        synthesizer.stopSpeaking(at: .immediate)
        let words = AVSpeechUtterance(string: text)
        words.voice = AVSpeechSynthesisVoice(language: language)
        synthesizer.speak(words)
    }
}
