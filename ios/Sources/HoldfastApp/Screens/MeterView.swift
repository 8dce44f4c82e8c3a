import HoldfastCore
import SwiftUI

/// Readings with a meter or gauge, or of vibration: where the leads go, what to enter, what is expected.
struct MeterView: View {
    let frame: Frame
    let kind: String
    let meter: MeterScreen

    var body: some View {
        ScreenFrame(frame, key: "\(kind)/\(frame.title)") {
            if let picture = meter.picture { Drawing(picture) }
            Points(meter.leads)
            Words(meter.hint, style: .strong)
            FormItems(meter.items)
            if let band = meter.band { Drawing(band) }
            if let own = meter.own { OwnPhotoView(own) }
            if let map = meter.map { Drawing(map) }
        } foot: {
            WideButton(meter.confirm)
        }
    }
}
