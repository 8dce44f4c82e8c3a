import HoldfastCore

/// The typed text of a field, kept here so that fast fingers don't wait for the core. A value from the core that this
/// field sent itself is an echo and changes nothing; any other (a dragged needle, another job) replaces the text.
public struct FieldText: Equatable, Sendable {
    /// What stands in the field.
    public private(set) var text: String

    private var id: FieldId
    private var unheard: [String] = []

    /// The text of a field as the core knows it.
    public init(_ field: Field) {
        text = field.value
        id = field.id
    }

    /// What typing sends; nil if nothing has changed.
    public mutating func type(_ typed: String) -> Action? {
        guard typed != text else { return nil }
        text = typed
        unheard.append(typed)
        return Action.type(field: id, text: typed)
    }

    /// The core has a value for the field.
    public mutating func hear(_ field: Field) {
        if field.id != id {
            self = FieldText(field)
        } else if let heard = unheard.firstIndex(of: field.value) {
            unheard.removeFirst(heard + 1)
        } else if field.value != text {
            unheard = []
            text = field.value
        }
    }
}
