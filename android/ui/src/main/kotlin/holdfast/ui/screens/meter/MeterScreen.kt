package holdfast.ui.screens.meter

import androidx.compose.runtime.Composable
import holdfast.core.Action
import holdfast.core.Frame
import holdfast.core.MeterScreen
import holdfast.ui.components.FormItemView
import holdfast.ui.components.OwnPhotoView
import holdfast.ui.components.Points
import holdfast.ui.components.ScreenFrame
import holdfast.ui.components.WideButton
import holdfast.ui.components.Words
import holdfast.ui.scene.Drawing
import holdfast.ui.theme.LocalLargeFigures
import holdfast.ui.theme.Theme

/** Readings with a meter or gauge, or of vibration: where the leads go, what to enter, what is expected. */
@Composable
fun MeterBody(frame: Frame, kind: String, meter: MeterScreen, send: (Action) -> Unit) {
    ScreenFrame(frame, kind to frame.title, send, footer = { WideButton(meter.confirm, send) }) {
        // Read from two metres the figures come first; where the leads go was seen before stepping back.
        if (LocalLargeFigures.current) {
            Figures(meter, send)
            Leads(meter, send)
        } else {
            Leads(meter, send)
            Figures(meter, send)
        }
        meter.own?.let { OwnPhotoView(it) }
        meter.map?.let { Drawing(it, send) }
    }
}

@Composable
private fun Leads(meter: MeterScreen, send: (Action) -> Unit) {
    meter.picture?.let { Drawing(it, send) }
    Points(meter.leads)
    Words(meter.hint, style = Theme.type.strong)
}

@Composable
private fun Figures(meter: MeterScreen, send: (Action) -> Unit) {
    meter.items.forEach { FormItemView(it, send) }
    meter.band?.let { Drawing(it, send) }
}
