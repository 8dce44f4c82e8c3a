import HoldfastCore
import HoldfastKit
import SwiftUI

/// One screen of the core, laid out the way its language runs.
struct ScreenView: View {
    let screen: Screen

    @Environment(HoldfastModel.self) private var model

    var body: some View {
        content
            .environment(\.layoutDirection, screen.direction == .rightToLeft ? .rightToLeft : .leftToRight)
            .environment(\.locale, Locale(identifier: screen.language))
            .environment(\.largeFigures, screen.figures == .large && screen.body.isReadWhileWorking)
            // The gesture that goes back, beside the arrow.
            .accessibilityAction(.escape) {
                if let back = screen.backAction { model.send(back) }
            }
    }

    @ViewBuilder
    private var content: some View {
        let frame = screen.frame
        switch screen.body {
        case .jobs(let jobs): JobsView(frame: frame, jobs: jobs)
        case .vehicle(let form): FormView(frame: frame, kind: "vehicle", form: form)
        case .prepare(let form): FormView(frame: frame, kind: "prepare", form: form)
        case .settings(let form): FormView(frame: frame, kind: "settings", form: form)
        case .costs(let form): FormView(frame: frame, kind: "costs", form: form)
        case .overview(let overview): OverviewView(frame: frame, overview: overview)
        case .test(let test): TestView(frame: frame, test: test)
        case .hold(let hold): HoldView(frame: frame, hold: hold)
        case .meter(let meter): MeterView(frame: frame, kind: "meter", meter: meter)
        case .vibration(let meter): MeterView(frame: frame, kind: "vibration", meter: meter)
        case .yesNo(let ask): YesNoView(frame: frame, ask: ask)
        case .lookOver(let look): LookView(frame: frame, look: look)
        case .photo(let photo): PhotoView(frame: frame, photo: photo)
        case .finding(let finding): FindingView(frame: frame, finding: finding)
        case .repaired(let repair): RepairedView(frame: frame, repair: repair)
        case .report(let report): ReportView(frame: frame, report: report)
        case .approval(let approval): ApprovalView(frame: frame, approval: approval)
        case .log(let log): LogView(frame: frame, log: log)
        }
    }
}

extension Body {
    /// Screens whose figures are looked at with both hands busy.
    fileprivate var isReadWhileWorking: Bool {
        switch self {
        case .hold, .meter, .vibration: true
        default: false
        }
    }
}
