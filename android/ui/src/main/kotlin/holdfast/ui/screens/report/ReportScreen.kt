package holdfast.ui.screens.report

import androidx.compose.foundation.border
import androidx.compose.foundation.clickable
import androidx.compose.foundation.horizontalScroll
import androidx.compose.foundation.layout.Box
import androidx.compose.foundation.layout.BoxWithConstraints
import androidx.compose.foundation.layout.ColumnScope
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.width
import androidx.compose.foundation.rememberScrollState
import androidx.compose.runtime.Composable
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.saveable.rememberSaveable
import androidx.compose.runtime.setValue
import androidx.compose.ui.Modifier
import androidx.compose.ui.unit.dp
import holdfast.core.Action
import holdfast.core.Frame
import holdfast.core.ReportScreen
import holdfast.core.ReportState
import holdfast.core.Scene
import holdfast.ui.components.ScreenFrame
import holdfast.ui.components.Sections
import holdfast.ui.components.WideButton
import holdfast.ui.components.Words
import holdfast.ui.scene.SceneView
import holdfast.ui.theme.Printed
import holdfast.ui.theme.Theme

/** The report as it will print; paper is white at night too. */
@Composable
fun ReportBody(frame: Frame, report: ReportScreen, send: (Action) -> Unit) {
    ScreenFrame(frame, "report", send, footer = footer(report.state, send)) {
        report.pages.forEach { Page(it, send) }
        Sections(report.sections, send)
    }
}

private fun footer(state: ReportState, send: (Action) -> Unit): @Composable ColumnScope.() -> Unit = {
    when (state) {
        is ReportState.ToMake -> WideButton(state.make, send)
        is ReportState.Working -> {
            Words(state.text)
            WideButton(state.stop, send)
        }
        is ReportState.Ready -> {
            WideButton(state.share, send)
            WideButton(state.shareReadings, send)
        }
    }
}

/** A page over the width of the screen; a tap brings it to reading size and back. */
@Composable
private fun Page(page: Scene, send: (Action) -> Unit) {
    var large by rememberSaveable { mutableStateOf(false) }
    BoxWithConstraints(Modifier.fillMaxWidth().border(1.dp, Theme.palette.line)) {
        val width = if (large) maxWidth * 2 else maxWidth
        Box(Modifier.horizontalScroll(rememberScrollState(), enabled = large)) {
            Printed {
                SceneView(page, send, Modifier.width(width).clickable { large = !large })
            }
        }
    }
}
