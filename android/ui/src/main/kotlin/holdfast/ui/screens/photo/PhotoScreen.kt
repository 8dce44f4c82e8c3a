package holdfast.ui.screens.photo

import androidx.compose.runtime.Composable
import holdfast.core.Action
import holdfast.core.Frame
import holdfast.core.PhotoScreen
import holdfast.ui.components.ChoiceGroup
import holdfast.ui.components.FieldBox
import holdfast.ui.components.ScreenFrame
import holdfast.ui.components.WideButton
import holdfast.ui.components.splitButtons
import holdfast.ui.scene.Finger
import holdfast.ui.scene.SceneView

/** A photo with its marks: choose a mark, touch the place. */
@Composable
fun PhotoBody(frame: Frame, photo: PhotoScreen, send: (Action) -> Unit) {
    val (foot, others) = splitButtons(photo.buttons)
    ScreenFrame(frame, "photo", send, footer = { foot.forEach { WideButton(it, send) } }) {
        SceneView(photo.scene, send, finger = Finger.Marks(send))
        ChoiceGroup(photo.palette, send)
        FieldBox(photo.caption, send)
        others.forEach { WideButton(it, send) }
    }
}
