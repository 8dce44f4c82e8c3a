import UIKit

/// Shows the system's sheets over whatever is shown.
@MainActor
enum Presenter {
    /// The topmost controller of the window in front; none while the app is behind.
    static var top: UIViewController? {
        let scenes = UIApplication.shared.connectedScenes.compactMap { $0 as? UIWindowScene }
        let window = scenes.flatMap(\.windows).first(where: \.isKeyWindow)
        var top = window?.rootViewController
        while let above = top?.presentedViewController { top = above }
        return top
    }
}

/// A sheet that is answered once: by what was picked, or by nothing.
@MainActor
final class Answer<Value: Sendable> {
    private var waiting: CheckedContinuation<Value?, Never>?

    /// Shows the sheet and waits for its answer; nil at once if nothing can be shown.
    func asked(by sheet: UIViewController) async -> Value? {
        guard let top = Presenter.top else { return nil }
        return await withCheckedContinuation { waiting in
            self.waiting = waiting
            top.present(sheet, animated: true)
        }
    }

    /// The answer; a second one changes nothing.
    func give(_ value: Value?) {
        waiting?.resume(returning: value)
        waiting = nil
    }
}
