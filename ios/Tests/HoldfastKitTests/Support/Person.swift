import HoldfastCore

@testable import HoldfastKit

/// One thing a person does with the phone.
enum Deed {
    /// Taps a button.
    case tap(Button)
    /// Taps an option, or ticks a caution.
    case pick(Action)
    /// Types over what stands in a field.
    case write(Field, String)
    /// Draws a stroke on the pad, through places in the scene.
    case sign(Scene, [Point])
    /// Drags the needle to a place in the scene.
    case drag(Float, Float)
    /// Waits, in milliseconds.
    case wait(Int64)
    /// The job is done.
    case leave
}

/// A mechanic with a scenario who looks at the screen and does what it asks, from an empty list of jobs to the shared
/// report. Knows nothing of the order of the tests: the core decides that.
struct Person {
    let scenario: Scenario
    private var test = ""
    private var asked = 0
    private var strokes = 0
    private var watchedMs: Int64 = 0
    private var repaired = false
    private var visited: Set<Place> = []
    private var stroked = 0
    private var shared = false

    init(_ scenario: Scenario) {
        self.scenario = scenario
    }

    /// What to do on this screen; the caller does it before asking again.
    mutating func next(_ screen: Screen) throws -> Deed {
        let deed = try look(screen)
        remember(deed)
        return deed
    }

    private mutating func look(_ screen: Screen) throws -> Deed {
        switch screen.body {
        case .jobs(let jobs): .tap(jobs.newJob)
        case .vehicle(let form): vehicle(form)
        case .prepare(let form): prepare(form)
        case .overview(let overview): .tap(overview.next.go)
        case .test(let test): try stage(test.stage)
        case .hold(let hold): try self.hold(hold)
        case .meter(let meter), .vibration(let meter): values(meter)
        case .yesNo(let ask): say(ask)
        case .lookOver(let look): .tap(look.done)
        case .finding(let finding): self.finding(finding.buttons)
        case .repaired(let repair): repairing(FormScreen(sections: repair.sections, next: repair.next))
        case .report(let report): self.report(report)
        case .costs(let form): costs(form)
        case .approval(let approval): approve(approval)
        case .photo, .log, .settings: .leave
        }
    }

    private mutating func remember(_ deed: Deed) {
        switch deed {
        case .wait(let ms): watchedMs += ms
        case .sign: stroked += 1
        case .tap(let button): remember(button.action)
        case .pick, .write, .drag, .leave: break
        }
    }

    private mutating func remember(_ tapped: Action) {
        switch tapped {
        case .showTest(let shown): test = shown
        case .beginTest, .startAgain: (strokes, asked, watchedMs) = (0, 0, 0)
        case .letGo: watchedMs = 0
        case .stroke: strokes += 1
        case .say: asked += 1
        case .repairDone: repaired = true
        case .shareReport: shared = true
        case .go(let place): visited.insert(place)
        default: break
        }
    }

    private func vehicle(_ form: FormScreen) -> Deed {
        let paper = scenario.paper
        return write(form, .plate, paper["plate"]?.text)
            ?? write(form, .label, scenario.label)
            ?? write(form, .odometer, paper["odometer"]?.text)
            ?? choose(form) { pick in scenario.complaints.contains { pick == .complaint(id: $0) } }
            ?? write(form, .complaintNote, paper["note"]?.text)
            ?? choose(form) { $0 == .template(id: scenario.circuit) }
            ?? choose(form) { $0 == .profile(id: scenario.profile) }
            ?? goOn(form)
    }

    private func prepare(_ form: FormScreen) -> Deed {
        tick(form.items.compactMap(\.caution))
            ?? write(form, .altitude, scenario.altitude)
            ?? choose(form) { $0 == .gaugeUnit(symbol: scenario.gaugeUnit) }
            ?? choose(form) { pick in
                guard case .tool(let id) = pick else { return false }
                return scenario.tools?.contains(id) ?? true
            }
            ?? goOn(form)
    }

    private func stage(_ stage: TestStage) throws -> Deed {
        switch stage {
        case .brief(_, _, let steps, _, let start, let cannot, _):
            guard scenario.answer(test, repaired: repaired) != nil else {
                let refusal = Action.cannotDo(reason: .notAvailable)
                return .tap(try unwrapped(cannot.first { $0.action == refusal }, "a way not to do it"))
            }
            return tick(steps.flatMap(\.cautions)) ?? .tap(start)
        case .question(_, _, let buttons):
            return .tap(try unwrapped(buttons.first { $0.action == .keepReading }, "a way to keep it"))
        case .result(_, _, _, _, _, let buttons, _):
            return .tap(try unwrapped(buttons.first, "a way on"))
        }
    }

    private mutating func hold(_ hold: HoldScreen) throws -> Deed {
        switch hold.phase {
        case .pump(_, _, let count, let letGo, let others):
            return try pump(hold, count, letGo, others)
        case .read(_, let field, let confirm, _):
            let reading = try unwrapped(reading, "a reading of \(test)")
            return field.value == reading ? .tap(confirm) : .write(field, reading)
        case .watch:
            return .wait(1_000)
        case .interrupted(_, let buttons):
            return .tap(try unwrapped(buttons.first, "a way on"))
        }
    }

    private var answer: JSON? { scenario.answer(test, repaired: repaired) }

    private var reading: String? {
        if let highest = answer?["never_reached"]?.typed { return highest }
        let seconds = Double(watchedMs) / 1_000
        return seconds == 0
            ? answer?["start"]?.typed : scenario.reading(test, repaired: repaired, seconds: seconds)
    }

    private mutating func pump(
        _ hold: HoldScreen, _ count: [Button], _ letGo: Button, _ others: [Button]
    ) throws -> Deed {
        let wanted = min(Int(answer?["strokes"]?.number ?? 5), 5)
        if let stroke = count.first(where: { $0.action == .stroke }), strokes < wanted { return .tap(stroke) }
        if strokes == wanted {
            strokes += 1
            // The needle follows the finger up the dial.
            return .drag(hold.gauge.width * 0.7, hold.gauge.height * 0.2)
        }
        if answer?["never_reached"] == nil { return .tap(letGo) }
        return .tap(try unwrapped(others.first { $0.action == .willNotBuild }, "a way to say it"))
    }

    private func values(_ meter: MeterScreen) -> Deed {
        for case .entry(let field) in meter.items {
            guard case .answer(let key) = field.id, let wanted = answer?[key]?.typed else { continue }
            if field.value != wanted { return .write(field, wanted) }
        }
        let form = FormScreen(sections: [Section(heading: "", items: meter.items)], next: nil)
        let pick = choose(form) { pick in
            guard case .answer(let key, let value) = pick, let given = answer?[key] else { return false }
            return given.bool.map { $0 ? "yes" : "no" } == value || given.typed == value
        }
        return pick ?? .tap(meter.confirm)
    }

    private func say(_ ask: YesNoScreen) -> Deed {
        let said = scenario.said(test, repaired: repaired)
        let now = said.indices.contains(asked) ? said[asked] : nil
        let action = now.map { Action.say(said: $0 ? .yes : .no) }
        return .tap(ask.answers.first { $0.action == action } ?? ask.notSure)
    }

    private func finding(_ buttons: [Button]) -> Deed {
        let repair = buttons.first { $0.action == .repair(component: scenario.replaced) }
        let close = buttons.first { $0.action == .closeJob }
        let way = repaired || repair == nil ? close ?? buttons.first : repair
        return way.map(Deed.tap) ?? .leave
    }

    private func repairing(_ form: FormScreen) -> Deed {
        write(form, .repairPart, scenario.paper["part"]?.text) ?? goOn(form)
    }

    private func report(_ report: ReportScreen) -> Deed {
        switch report.state {
        case .toMake(let make):
            let ways = report.sections.flatMap(\.items).compactMap(\.button)
            let todo = [Place.costs, .approval].filter { !visited.contains($0) }
            return .tap(ways.first { way in todo.contains { way.action == .go(to: $0) } } ?? make)
        case .working: return .wait(100)
        case .ready(_, let share, _): return shared ? .leave : .tap(share)
        }
    }

    private func costs(_ form: FormScreen) -> Deed {
        let costs = scenario.paper["costs"]
        var deed =
            choose(form) { $0 == .costStage(id: "charged") }
            ?? write(form, .currency, costs?["currency"]?.text)
            ?? write(form, .taxParts, costs?["tax_parts"]?.text)
            ?? write(form, .taxLabour, costs?["tax_labour"]?.text)
        for (place, line) in (costs?["lines"]?.list ?? []).enumerated() {
            let place = UInt32(place)
            deed =
                deed
                ?? write(form, .costWords(line: place), line["words"]?.text)
                ?? write(form, .costQuantity(line: place), line["quantity"]?.text)
                ?? write(form, .costPrice(line: place), line["price"]?.text)
        }
        return deed ?? goOn(form)
    }

    private func approve(_ approval: ApprovalScreen) -> Deed {
        let form = FormScreen(sections: approval.sections, next: approval.next)
        if let deed = write(form, .signer, scenario.paper["signer"]?.text) { return deed }
        let strokes = scenario.paper["signature"]?.list ?? []
        guard stroked < strokes.count else { return goOn(form) }
        let stroke = strokes[stroked].list.map { at in
            Point(x: Float(at.list.first?.number ?? 0), y: Float(at.list.last?.number ?? 0))
        }
        return .sign(approval.pad, stroke)
    }

    private func goOn(_ form: FormScreen) -> Deed {
        form.next.map(Deed.tap) ?? .leave
    }

    private func tick(_ cautions: [Caution]) -> Deed? {
        for caution in cautions {
            if case .open(let action) = caution.ack { return .pick(action) }
        }
        return nil
    }

    private func write(_ form: FormScreen, _ id: FieldId, _ text: String?) -> Deed? {
        guard let text, let field = form.items.compactMap(\.field).first(where: { $0.id == id }) else { return nil }
        return field.value == text ? nil : .write(field, text)
    }

    /// The first option that is wanted and not picked.
    private func choose(_ form: FormScreen, _ wanted: (Pick) -> Bool) -> Deed? {
        let options = form.items.compactMap(\.choice).flatMap(\.options)
        let option = options.first { option in
            guard case .pick(let pick) = option.action else { return false }
            return option.picked == .no && wanted(pick)
        }
        return option.map { .pick($0.action) }
    }
}

extension FormScreen {
    var items: [FormItem] { sections.flatMap(\.items) }
}

extension FormItem {
    var caution: Caution? {
        guard case .care(let caution) = self else { return nil }
        return caution
    }

    var field: Field? {
        guard case .entry(let field) = self else { return nil }
        return field
    }

    var choice: Choice? {
        guard case .options(let choice) = self else { return nil }
        return choice
    }

    var button: Button? {
        guard case .tap(let button) = self else { return nil }
        return button
    }
}
