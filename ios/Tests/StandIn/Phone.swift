import SwiftUI

// Stand-ins for what the views use of the phone's services, which need Apple's frameworks.

actor PictureFiles {
    static let shared = PictureFiles()

    func picture(_ path: String) -> Image? { nil }
}

enum Lent {
    static func copy(_ url: URL) async -> String? { nil }
}
