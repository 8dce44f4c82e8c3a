import HoldfastCore

// Words of the trade that SwiftUI has, too: in this module they are the core's, and SwiftUI's are written out.
typealias Button = HoldfastCore.Button
typealias Section = HoldfastCore.Section
typealias Scene = HoldfastCore.Scene
typealias Anchor = HoldfastCore.Anchor
