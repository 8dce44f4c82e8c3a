import HoldfastKit
import LinkPresentation
import UIKit

/// `share`: the file is lent to the program the person chooses.
@MainActor
struct ShareSheet: Share {
    let data: DataFolder

    func share(path: String, mime: String, title: String) {
        guard let file = data.file(path), let top = Presenter.top else { return }
        let titled = Titled(file: file, title: title)
        let sheet = UIActivityViewController(activityItems: [titled], applicationActivities: nil)
        // On a tablet the sheet points at something.
        sheet.popoverPresentationController?.sourceView = top.view
        sheet.popoverPresentationController?.sourceRect = CGRect(
            x: top.view.bounds.midX, y: top.view.bounds.maxY, width: 0, height: 0)
        top.present(sheet, animated: true)
    }
}

/// A file with what it is called to a person.
private final class Titled: NSObject, UIActivityItemSource {
    private let file: URL
    private let title: String

    init(file: URL, title: String) {
        self.file = file
        self.title = title
    }

    func activityViewControllerPlaceholderItem(_ controller: UIActivityViewController) -> Any { file }

    func activityViewController(
        _ controller: UIActivityViewController, itemForActivityType type: UIActivity.ActivityType?
    ) -> Any? { file }

    func activityViewController(
        _ controller: UIActivityViewController, subjectForActivityType type: UIActivity.ActivityType?
    ) -> String { title }

    func activityViewControllerLinkMetadata(_ controller: UIActivityViewController) -> LPLinkMetadata? {
        let words = LPLinkMetadata()
        words.title = title
        words.originalURL = file
        return words
    }
}
