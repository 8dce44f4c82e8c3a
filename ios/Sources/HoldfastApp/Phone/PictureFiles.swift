import Foundation
import ImageIO
import SwiftUI

/// Reads the core's screen renditions: small, upright JPEG or PNG files.
actor PictureFiles {
    static let shared = PictureFiles()

    private let known = NSCache<NSString, CGImage>()

    /// The picture in this file, or nil if there is none that can be read.
    func picture(_ path: String) -> Image? {
        read(path).map { Image(decorative: $0, scale: 1) }
    }

    private func read(_ path: String) -> CGImage? {
        if let picture = known.object(forKey: path as NSString) { return picture }
        guard let source = CGImageSourceCreateWithURL(URL(fileURLWithPath: path) as CFURL, nil),
            let picture = CGImageSourceCreateImageAtIndex(source, 0, nil)
        else { return nil }
        known.setObject(picture, forKey: path as NSString)
        return picture
    }
}
