import HoldfastCore
import HoldfastKit
import SwiftUI

/// Reads the pictures of a scene for what draws it. Marks on a photo have day's colours always: those they will be
/// printed in.
struct WithPictures<Content: View>: View {
    let scene: Scene
    @ViewBuilder let content: (_ pictures: [String: Image], _ palette: Palette) -> Content

    @Environment(\.palette) private var palette
    @State private var pictures: [String: Image] = [:]

    var body: some View {
        let paths = scene.pictures
        content(pictures, paths.isEmpty ? palette : .day)
            .task(id: paths) {
                for path in paths where pictures[path] == nil {
                    pictures[path] = await PictureFiles.shared.picture(path)
                }
            }
    }
}
