import Foundation
import HoldfastApp
import HoldfastCore
import HoldfastKit
import SwiftUI

/// Holds what outlives any view: the core and the model of its screens.
@main
struct Main: App {
    @State private var model = Main.model()

    var body: some SwiftUI.Scene {
        WindowGroup { HoldfastRoot(model: model) }
    }

    /// The model on the folder with all that was recorded, which the phone's backup takes along.
    private static func model() -> HoldfastModel {
        let folder = URL.applicationSupportDirectory.appendingPathComponent("holdfast", isDirectory: true)
        let core = RustCore(dataFolder: folder.path, facts: .apple())
        return HoldfastModel(core: core, phone: .apple(data: DataFolder(folder)))
    }
}
