/// Any JSON: a scenario's answers have a shape for each test.
enum JSON: Decodable, Equatable {
    case null
    case bool(Bool)
    case number(Double)
    case text(String)
    case list([JSON])
    case object([String: JSON])

    init(from decoder: any Decoder) throws {
        let value = try decoder.singleValueContainer()
        if value.decodeNil() {
            self = .null
        } else if let bool = try? value.decode(Bool.self) {
            self = .bool(bool)
        } else if let number = try? value.decode(Double.self) {
            self = .number(number)
        } else if let text = try? value.decode(String.self) {
            self = .text(text)
        } else if let list = try? value.decode([JSON].self) {
            self = .list(list)
        } else {
            self = .object(try value.decode([String: JSON].self))
        }
    }

    subscript(key: String) -> JSON? {
        guard case .object(let object) = self else { return nil }
        return object[key]
    }

    var bool: Bool? {
        guard case .bool(let bool) = self else { return nil }
        return bool
    }

    var number: Double? {
        guard case .number(let number) = self else { return nil }
        return number
    }

    var text: String? {
        guard case .text(let text) = self else { return nil }
        return text
    }

    var list: [JSON] {
        guard case .list(let list) = self else { return [] }
        return list
    }

    /// As a person types it: 20, not 20.0.
    var typed: String? {
        switch self {
        case .text(let text): text
        case .number(let number): number == number.rounded() ? String(Int(number)) : String(number)
        case .list(let list): list.compactMap(\.typed).joined(separator: "\n")
        case .null, .bool, .object: nil
        }
    }
}
