import Foundation

/// A job of `tests/scenarios`: what each test reads before and after the repair, and what stands on paper. The Android
/// shell's tests play the same file.
struct Scenario {
    private let json: JSON

    /// The file that HOLDFAST_SCENARIO names.
    init() throws {
        let path = try unwrapped(ProcessInfo.processInfo.environment["HOLDFAST_SCENARIO"], "HOLDFAST_SCENARIO")
        json = try JSONDecoder().decode(JSON.self, from: Data(contentsOf: URL(fileURLWithPath: path)))
    }

    var label: String { json["vehicle"]?["label"]?.text ?? "" }
    var complaints: [String] { json["complaint"]?.list.compactMap(\.text) ?? [] }
    var circuit: String { json["circuit"]?.text ?? "" }
    var profile: String { json["profile"]?.text ?? "" }
    /// The tools at hand; nil: all.
    var tools: [String]? { json["tools"] == .null ? nil : json["tools"]?.list.compactMap(\.text) }
    var altitude: String { json["place"]?["altitude_m"]?.typed ?? "" }
    var gaugeUnit: String { json["instruments"]?["gauge"]?["unit"]?.text ?? "" }
    var replaced: String { json["repair"]?["replaced"]?.text ?? "" }
    var paper: JSON { json["paper"] ?? .null }

    /// What a test reads; nil if the file has nothing for it.
    func answer(_ test: String, repaired: Bool) -> JSON? {
        let all = repaired ? json["repair"]?["answers"] : json["answers"]
        return all?[test]
    }

    /// Yes or no to the questions of a test, in the order they are asked; nil where the file doesn't say.
    func said(_ test: String, repaired: Bool) -> [Bool?] {
        let kind = String(test.prefix { $0 != ":" })
        let keys = paper["questions"]?[kind]?.list.compactMap(\.text) ?? []
        return keys.map { answer(test, repaired: repaired)?[$0]?.bool }
    }

    /// The gauge's figure so many seconds after letting go: the first at or after them, else the last.
    func reading(_ test: String, repaired: Bool, seconds: Double) -> String? {
        let readings = answer(test, repaired: repaired)?["readings"]?.list.map(\.list) ?? []
        let next = readings.first { ($0.first?.number ?? 0) >= seconds } ?? readings.last
        return next?.last?.typed
    }
}

struct Missing: Error {
    let what: String
}

/// The value, or an error that says what is missing.
func unwrapped<T>(_ value: T?, _ what: String) throws -> T {
    guard let value else { throw Missing(what: what) }
    return value
}
