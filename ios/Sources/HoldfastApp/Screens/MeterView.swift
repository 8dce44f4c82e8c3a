import HoldfastCore
import SwiftUI

/// Readings with a meter or gauge, or of vibration: where the leads go, what to enter, what is expected.
struct MeterView: View {
    let frame: Frame
    let kind: String
    let meter: MeterScreen

    @Environment(\.largeFigures) private var isLarge

    var body: some View {
        ScreenFrame(frame, key: "\(kind)/\(frame.title)") {
            // Read from two metres the figures come first; where the leads go was seen before stepping back.
            if isLarge {
                figures
                leads
            } else {
                leads
                figures
            }
            if let own = meter.own { OwnPhotoView(own) }
            if let map = meter.map { Drawing(map) }
        } foot: {
            WideButton(meter.confirm)
        }
    }

    @ViewBuilder
    private var leads: some View {
        if let picture = meter.picture { Drawing(picture) }
        Points(meter.leads)
        Words(meter.hint, style: .strong)
    }

    @ViewBuilder
    private var figures: some View {
        FormItems(meter.items)
        if let band = meter.band { Drawing(band) }
    }
}
