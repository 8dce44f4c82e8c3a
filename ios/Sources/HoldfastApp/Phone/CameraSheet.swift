import HoldfastKit
import UIKit

/// `takePhoto`: the system's camera.
@MainActor
final class CameraSheet: NSObject, Camera {
    private static let quality = 0.95
    private let answer = Answer<String>()

    func take() async -> String? {
        guard UIImagePickerController.isSourceTypeAvailable(.camera) else { return nil }
        let sheet = UIImagePickerController()
        sheet.sourceType = .camera
        sheet.delegate = self
        return await answer.asked(by: sheet)
    }
}

extension CameraSheet: UIImagePickerControllerDelegate, UINavigationControllerDelegate {
    func imagePickerController(
        _ picker: UIImagePickerController,
        didFinishPickingMediaWithInfo info: [UIImagePickerController.InfoKey: Any]
    ) {
        picker.dismiss(animated: true)
        let image = info[.originalImage] as? UIImage
        answer.give(image?.jpegData(compressionQuality: Self.quality).flatMap { Lent.write($0, "jpg") })
    }

    func imagePickerControllerDidCancel(_ picker: UIImagePickerController) {
        picker.dismiss(animated: true)
        answer.give(nil)
    }
}
