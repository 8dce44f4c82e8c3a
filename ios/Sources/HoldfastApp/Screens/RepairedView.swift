import HoldfastCore
import SwiftUI

/// What was repaired, then the same test again, before and after on one chart.
struct RepairedView: View {
    let frame: Frame
    let repair: RepairedScreen

    var body: some View {
        ScreenFrame(frame, key: "repaired") {
            if let chart = repair.chart { Drawing(chart) }
            Sections(repair.sections)
        } foot: {
            WideButton(repair.next)
        }
    }
}
