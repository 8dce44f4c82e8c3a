import Foundation

/// The folder with all that was recorded.
public struct DataFolder: Equatable, Sendable {
    /// Where it is.
    public let url: URL

    /// This folder.
    public init(_ url: URL) {
        self.url = url
    }

    /// A file that may leave the app; nil for a path that climbs out of the folder.
    public func file(_ path: String) -> URL? {
        let folder = url.standardizedFileURL.resolvingSymlinksInPath().path
        let whole = path.hasPrefix("/") ? URL(fileURLWithPath: path) : url.appendingPathComponent(path)
        let file = whole.standardizedFileURL.resolvingSymlinksInPath()
        return file.path.hasPrefix(folder + "/") ? file : nil
    }
}
