import HoldfastCore
import SwiftUI

/// Colours by their roles, from the core's one table.
struct Palette: Equatable, Sendable {
    /// For daylight: dial-white and ink.
    static let day = Palette(theme: .day)
    /// For a dark garage.
    static let night = Palette(theme: .night)

    let theme: Theme

    subscript(role: Role) -> Color {
        let rgb = HoldfastCore.colour(role: role, theme: theme)
        let part = { (shift: UInt32) in Double((rgb >> shift) & 0xFF) / 255 }
        return Color(.sRGB, red: part(16), green: part(8), blue: part(0))
    }
}

private struct PaletteKey: EnvironmentKey {
    static let defaultValue = Palette.day
}

extension EnvironmentValues {
    /// The colours of the surrounding theme.
    var palette: Palette {
        get { self[PaletteKey.self] }
        set { self[PaletteKey.self] = newValue }
    }
}
