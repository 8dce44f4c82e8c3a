import Foundation

/// Files that another program lends, copied as they are: the core judges them.
enum Lent {
    /// The path of a copy the core may delete; nil if the file can't be read.
    static func copy(_ url: URL) async -> String? {
        await Task.detached { copyNow(url) }.value
    }

    /// As `copy`, on this thread: for files that are gone when the caller returns.
    static func copyNow(_ url: URL) -> String? {
        let isGuarded = url.startAccessingSecurityScopedResource()
        defer {
            if isGuarded { url.stopAccessingSecurityScopedResource() }
        }
        let copy = newFile(url.pathExtension)
        do {
            try FileManager.default.copyItem(at: url, to: copy)
            return copy.path
        } catch {
            return nil
        }
    }

    /// The path of a new file with this in it; nil if it can't be written.
    static func write(_ data: Data, _ ending: String) -> String? {
        let file = newFile(ending)
        do {
            try data.write(to: file)
            return file.path
        } catch {
            return nil
        }
    }

    private static func newFile(_ ending: String) -> URL {
        let name = ending.isEmpty ? UUID().uuidString : "\(UUID().uuidString).\(ending)"
        return FileManager.default.temporaryDirectory.appendingPathComponent(name)
    }
}
