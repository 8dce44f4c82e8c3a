import HoldfastCore
import HoldfastKit
import SwiftUI

/// Something to type: what is asked, the box with its unit, then the problem or the help.
struct FieldBox: View {
    let field: Field
    private let style: TypeStyle

    @Environment(HoldfastModel.self) private var model
    @Environment(\.palette) private var palette
    @Environment(\.largeFigures) private var isLarge
    @FocusState private var isFocused: Bool
    @State private var typed: FieldText

    init(_ field: Field, style: TypeStyle? = nil) {
        self.field = field
        self.style = style ?? field.keys.style
        _typed = State(initialValue: FieldText(field))
    }

    var body: some View {
        Stack(spacing: Space.hair) {
            Words(field.label, style: .strong).accessibilityHidden(true)
            HStack(spacing: Space.small) {
                entry
                Words(field.unit, style: .heading, role: .quietInk)
            }
            .padding(.horizontal, Space.margin)
            .padding(.vertical, Space.hair)
            .card(palette[.raised], frame: palette[frame], width: isFocused || field.problem != nil ? 3 : 2)
            if let problem = field.problem {
                Words(problem, style: .small, role: .danger).announced(problem)
            } else {
                QuietWords(field.hint)
            }
        }
        .onChange(of: field) { _, now in typed.hear(now) }
    }

    private var frame: Role {
        if field.problem != nil { return .danger }
        return isFocused ? .needle : .ink
    }

    private var entry: some View {
        TextField(text: text, axis: field.keys == .lines ? .vertical : .horizontal) { EmptyView() }
            .lineLimit(field.keys == .lines ? 3...12 : 1...1)
            .font(isLarge && field.keys == .number ? TypeStyle.twoMetres.font : style.font)
            .minimumScaleFactor(isLarge ? 0.1 : 1)
            .foregroundStyle(palette[.ink])
            .tint(palette[.needle])
            .focused($isFocused)
            .keys(field.keys)
            .frame(minHeight: Space.target)
            .accessibilityLabel(Text(verbatim: field.label))
            .accessibilityHint(Text(verbatim: field.problem ?? field.hint))
    }

    private var text: Binding<String> {
        Binding {
            typed.text
        } set: { text in
            if let action = typed.type(text) { model.send(action) }
        }
    }
}

extension Keys {
    /// Numbers and codes are to be read at arm's length; sentences need room.
    fileprivate var style: TypeStyle {
        switch self {
        case .number, .code: .heading
        case .text, .lines: .body
        }
    }
}

extension View {
    /// The keyboard that suits a field.
    @ViewBuilder
    fileprivate func keys(_ keys: Keys) -> some View {
        switch keys {
        case .text: submitLabel(.done)
        case .lines: self
        case .code: textInputAutocapitalization(.characters).autocorrectionDisabled()
        // Decimal keys alone have no minus.
        case .number: keyboardType(.numbersAndPunctuation).autocorrectionDisabled().submitLabel(.done)
        }
    }
}
