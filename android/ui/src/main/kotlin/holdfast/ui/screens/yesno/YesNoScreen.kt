package holdfast.ui.screens.yesno

import androidx.compose.runtime.Composable
import holdfast.core.Action
import holdfast.core.Frame
import holdfast.core.YesNoScreen
import holdfast.ui.components.AnswerButton
import holdfast.ui.components.OwnPhotoView
import holdfast.ui.components.Points
import holdfast.ui.components.ScreenFrame
import holdfast.ui.components.WideButton
import holdfast.ui.components.Words
import holdfast.ui.scene.Drawing
import holdfast.ui.theme.Theme

/** One question with large answers in reach of a thumb. */
@Composable
fun YesNoBody(frame: Frame, ask: YesNoScreen, send: (Action) -> Unit) {
    ScreenFrame(
        frame,
        ask.question,
        send,
        footer = {
            ask.answers.forEach { AnswerButton(it, send) }
            WideButton(ask.notSure, send)
        },
    ) {
        Words(ask.question, style = Theme.type.title)
        ask.picture?.let { Drawing(it, send) }
        Points(ask.lookFor)
        ask.own?.let { OwnPhotoView(it) }
    }
}
