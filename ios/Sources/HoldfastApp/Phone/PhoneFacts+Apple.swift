import AVFoundation
import CoreHaptics
import CoreMotion
import CoreText
import HoldfastCore
import UIKit

extension PhoneFacts {
    /// What this phone has. No part names a gauge reader: there is none yet.
    @MainActor
    public static func apple() -> PhoneFacts {
        var parts: [PhonePart] = [.gallery, .share]
        if UIImagePickerController.isSourceTypeAvailable(.camera) { parts.append(.camera) }
        if CMAltimeter.isRelativeAltitudeAvailable() { parts.append(.barometer) }
        if CMMotionManager().isAccelerometerAvailable { parts.append(.accelerometer) }
        if !AVSpeechSynthesisVoice.speechVoices().isEmpty { parts.append(.speech) }
        if CHHapticEngine.capabilitiesForHardware().supportsHaptics { parts.append(.buzzer) }
        return PhoneFacts(locale: Locale.preferredLanguages.first ?? "en", parts: parts, fonts: fonts())
    }

    /// The files of the system's fonts, for names in scripts that the report's own family lacks.
    private static func fonts() -> [String] {
        let all = CTFontCollectionCreateFromAvailableFonts(nil)
        let found = CTFontCollectionCreateMatchingFontDescriptors(all) as? [CTFontDescriptor] ?? []
        let files = found.compactMap { CTFontDescriptorCopyAttribute($0, kCTFontURLAttribute) as? URL }
        return Set(files.map(\.path)).sorted()
    }
}
