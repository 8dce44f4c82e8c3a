import SwiftUI

/// The sizes of type: six, and no others, but for figures that are read at two metres. They grow with the phone's text
/// size; figures are tabular so that running numbers don't jump.
enum TypeStyle {
    case small, smallStrong, body, strong, heading, title, number, running, twoMetres

    /// The report's own face, so that the screen and the page look like one thing.
    var font: Font {
        Font.custom(face, size: size, relativeTo: .body).monospacedDigit()
    }

    private var size: Double {
        switch self {
        case .small, .smallStrong: 16
        case .body, .strong: 18
        case .heading: 22
        case .title: 28
        case .number: 44
        case .running: 96
        case .twoMetres: 190
        }
    }

    private var face: String {
        switch self {
        case .small, .body: Face.regular
        case .smallStrong, .strong, .heading, .title, .number, .running, .twoMetres: Face.bold
        }
    }
}

/// The fonts that come with the app, by their PostScript names.
enum Face {
    static let regular = "NotoSans-Regular"
    static let bold = "NotoSans-Bold"
}
