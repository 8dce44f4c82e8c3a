import HoldfastKit
import UIKit
import UniformTypeIdentifiers

/// `pickBundle`: the system's list of files.
@MainActor
final class FilePicker: NSObject, Files {
    private let answer = Answer<URL>()

    func pickBundle() async -> String? {
        let sheet = UIDocumentPickerViewController(forOpeningContentTypes: [.zip, .data])
        sheet.delegate = self
        guard let url = await answer.asked(by: sheet) else { return nil }
        return await Lent.copy(url)
    }
}

extension FilePicker: UIDocumentPickerDelegate {
    func documentPicker(_ controller: UIDocumentPickerViewController, didPickDocumentsAt urls: [URL]) {
        answer.give(urls.first)
    }

    func documentPickerWasCancelled(_ controller: UIDocumentPickerViewController) {
        answer.give(nil)
    }
}
