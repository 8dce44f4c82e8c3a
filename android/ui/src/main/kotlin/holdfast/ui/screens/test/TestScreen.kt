package holdfast.ui.screens.test

import androidx.compose.foundation.layout.ColumnScope
import androidx.compose.runtime.Composable
import holdfast.core.Action
import holdfast.core.Frame
import holdfast.core.TestScreen
import holdfast.core.TestStage
import holdfast.ui.components.OwnPhotoView
import holdfast.ui.components.ScreenFrame
import holdfast.ui.components.WideButton
import holdfast.ui.components.Words
import holdfast.ui.components.splitButtons
import holdfast.ui.scene.Drawing
import holdfast.ui.theme.Theme

/** A test outside its measurement: the briefing, a question about a reading, the result. */
@Composable
fun TestBody(frame: Frame, test: TestScreen, send: (Action) -> Unit) {
    val stage = test.stage
    ScreenFrame(frame, frame.title to stage::class, send, footer = footer(stage, send)) {
        if (stage is TestStage.Result) {
            ResultHead(stage)
            stage.chart?.let { Drawing(it, send) }
            test.picture?.let { Drawing(it, send) }
            Words(test.place, style = Theme.type.strong)
            ResultRest(stage, send)
        } else {
            test.picture?.let { Drawing(it, send) }
            Words(test.place, style = Theme.type.strong)
            test.own?.let { OwnPhotoView(it) }
            when (stage) {
                is TestStage.Brief -> Brief(stage, send)
                is TestStage.Question -> Question(stage)
                is TestStage.Result -> Unit
            }
        }
    }
}

/** The ways on that a thumb should reach. */
private fun footer(stage: TestStage, send: (Action) -> Unit): @Composable ColumnScope.() -> Unit = {
    when (stage) {
        is TestStage.Brief -> WideButton(stage.start, send)
        is TestStage.Question -> stage.buttons.forEach { WideButton(it, send) }
        is TestStage.Result -> splitButtons(stage.buttons).first.forEach { WideButton(it, send) }
    }
}
