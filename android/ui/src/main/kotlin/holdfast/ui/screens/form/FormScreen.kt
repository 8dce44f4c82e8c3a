package holdfast.ui.screens.form

import androidx.compose.runtime.Composable
import holdfast.core.Action
import holdfast.core.FormScreen
import holdfast.core.Frame
import holdfast.ui.components.ScreenFrame
import holdfast.ui.components.Sections
import holdfast.ui.components.WideButton

/** A form from top to bottom: vehicle and complaint, before you start, settings. [kind] names which. */
@Composable
fun FormBody(frame: Frame, kind: String, form: FormScreen, send: (Action) -> Unit) {
    val next = form.next
    ScreenFrame(frame, kind to frame.title, send, footer = next?.let { { WideButton(it, send) } }) {
        Sections(form.sections, send)
    }
}
