import HoldfastKit
import ImageIO
import PhotosUI
import UniformTypeIdentifiers

/// `pickPhoto` and `decodePicture`: the system's picker lends a picture, which is copied as it is; the core judges it.
@MainActor
final class Gallery: NSObject, Pictures {
    private let answer = Answer<String>()

    func pick() async -> String? {
        var wanted = PHPickerConfiguration()
        wanted.filter = .images
        wanted.selectionLimit = 1
        let sheet = PHPickerViewController(configuration: wanted)
        sheet.delegate = self
        return await answer.asked(by: sheet)
    }

    func decode(_ path: String) async -> String? {
        await Task.detached { Decoder.jpeg(of: path) }.value
    }
}

extension Gallery: PHPickerViewControllerDelegate {
    func picker(_ picker: PHPickerViewController, didFinishPicking results: [PHPickerResult]) {
        picker.dismiss(animated: true)
        guard let lender = results.first?.itemProvider else {
            answer.give(nil)
            return
        }
        lender.loadFileRepresentation(forTypeIdentifier: UTType.image.identifier) { file, _ in
            // The file is gone when this returns.
            let copy = file.flatMap(Lent.copyNow)
            Task { @MainActor in self.answer.give(copy) }
        }
    }
}

/// A picture that the core can't decode, such as HEIF, as an upright JPEG; the phone may know how.
enum Decoder {
    /// As many pixels as the core takes on the long side of a square.
    private static let mostPixels = 8_000
    private static let quality = 0.95

    /// The path of the JPEG; nil if this phone can't.
    static func jpeg(of path: String) -> String? {
        guard let source = CGImageSourceCreateWithURL(URL(fileURLWithPath: path) as CFURL, nil) else { return nil }
        // Never more than fits: decided before a pixel is decoded.
        let wanted: [CFString: Any] = [
            kCGImageSourceCreateThumbnailFromImageAlways: true,
            kCGImageSourceCreateThumbnailWithTransform: true,
            kCGImageSourceThumbnailMaxPixelSize: mostPixels,
        ]
        guard let picture = CGImageSourceCreateThumbnailAtIndex(source, 0, wanted as CFDictionary) else { return nil }
        let bytes = NSMutableData()
        let type = UTType.jpeg.identifier as CFString
        guard let to = CGImageDestinationCreateWithData(bytes, type, 1, nil) else { return nil }
        CGImageDestinationAddImage(
            to, picture, [kCGImageDestinationLossyCompressionQuality: quality] as CFDictionary)
        return CGImageDestinationFinalize(to) ? Lent.write(bytes as Data, "jpg") : nil
    }
}
