package holdfast.ui.screens.photo

import androidx.compose.runtime.Composable
import holdfast.core.Action
import holdfast.core.Frame
import holdfast.core.MarkPanel
import holdfast.core.PhotoScreen
import holdfast.ui.components.ChoiceGroup
import holdfast.ui.components.FieldBox
import holdfast.ui.components.FormItemView
import holdfast.ui.components.Rule
import holdfast.ui.components.ScreenFrame
import holdfast.ui.components.WideButton
import holdfast.ui.components.Words
import holdfast.ui.components.splitButtons
import holdfast.ui.theme.Theme

/** A photo with its marks: choose a mark, touch the place, drag what is there. */
@Composable
fun PhotoBody(frame: Frame, photo: PhotoScreen, send: (Action) -> Unit) {
    val (foot, others) = splitButtons(photo.buttons)
    ScreenFrame(frame, "photo", send, footer = { foot.forEach { WideButton(it, send) } }) {
        PhotoPad(photo.scene, send)
        WideButton(photo.undo, send)
        ChoiceGroup(photo.palette, send)
        photo.mark?.let { MarkInHand(it, send) }
        photo.looks?.let { ChoiceGroup(it, send) }
        FieldBox(photo.caption, send)
        Rule()
        photo.more.forEach { FormItemView(it, send) }
        others.forEach { WideButton(it, send) }
    }
}

/** What can be done with the mark in hand. */
@Composable
private fun MarkInHand(mark: MarkPanel, send: (Action) -> Unit) {
    Words(mark.name, style = Theme.type.strong)
    mark.words?.let { FieldBox(it, send) }
    WideButton(mark.remove, send)
}
