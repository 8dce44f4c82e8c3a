import HoldfastCore
import SwiftUI

/// Text in a given type; nothing if it is empty.
struct Words: View {
    let text: String
    var style = TypeStyle.body
    var role = Role.ink
    var align = TextAlignment.leading

    @Environment(\.palette) private var palette

    init(_ text: String, style: TypeStyle = .body, role: Role = .ink, align: TextAlignment = .leading) {
        self.text = text
        self.style = style
        self.role = role
        self.align = align
    }

    var body: some View {
        if !text.isEmpty {
            Text(verbatim: text)
                .font(style.font)
                .foregroundStyle(palette[role])
                .multilineTextAlignment(align)
                .fixedSize(horizontal: false, vertical: true)
        }
    }
}

/// Text of less weight, still easy to read.
struct QuietWords: View {
    let text: String

    init(_ text: String) {
        self.text = text
    }

    var body: some View {
        Words(text, style: .small, role: .quietInk)
    }
}

/// The heading of a part of the screen.
struct Heading: View {
    let text: String
    var style = TypeStyle.heading

    init(_ text: String, style: TypeStyle = .heading) {
        self.text = text
        self.style = style
    }

    var body: some View {
        Words(text, style: style).accessibilityAddTraits(.isHeader)
    }
}

/// A hairline across.
struct Rule: View {
    @Environment(\.palette) private var palette

    var body: some View {
        Rectangle().fill(palette[.line]).frame(height: 1).accessibilityHidden(true)
    }
}

/// Parts below each other over the whole width, from the leading edge.
struct Stack<Content: View>: View {
    var spacing = Space.margin
    @ViewBuilder let content: Content

    var body: some View {
        VStack(alignment: .leading, spacing: spacing) { content }
            .frame(maxWidth: .infinity, alignment: .leading)
    }
}
