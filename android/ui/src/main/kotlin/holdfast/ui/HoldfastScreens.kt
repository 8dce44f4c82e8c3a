package holdfast.ui

import androidx.compose.foundation.background
import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Box
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.WindowInsets
import androidx.compose.foundation.layout.fillMaxSize
import androidx.compose.foundation.layout.padding
import androidx.compose.foundation.layout.safeDrawing
import androidx.compose.foundation.layout.windowInsetsPadding
import androidx.compose.foundation.rememberScrollState
import androidx.compose.foundation.verticalScroll
import androidx.compose.runtime.Composable
import androidx.compose.runtime.CompositionLocalProvider
import androidx.compose.runtime.LaunchedEffect
import androidx.compose.runtime.collectAsState
import androidx.compose.runtime.getValue
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.LocalDensity
import androidx.compose.ui.platform.LocalLayoutDirection
import androidx.compose.ui.unit.LayoutDirection
import holdfast.core.Action
import holdfast.core.Body
import holdfast.core.Direction
import holdfast.core.FigureSize
import holdfast.core.Live
import holdfast.core.Screen
import holdfast.ui.bridge.HoldfastModel
import holdfast.ui.bridge.Shown
import holdfast.ui.components.LocalWorkShare
import holdfast.ui.components.Refusal
import holdfast.ui.components.Words
import holdfast.ui.screens.approval.ApprovalBody
import holdfast.ui.screens.finding.FindingBody
import holdfast.ui.screens.form.FormBody
import holdfast.ui.screens.hold.HoldBody
import holdfast.ui.screens.jobs.JobsBody
import holdfast.ui.screens.log.LogBody
import holdfast.ui.screens.lookover.LookBody
import holdfast.ui.screens.meter.MeterBody
import holdfast.ui.screens.overview.OverviewBody
import holdfast.ui.screens.photo.PhotoBody
import holdfast.ui.screens.repaired.RepairedBody
import holdfast.ui.screens.report.ReportBody
import holdfast.ui.screens.test.TestBody
import holdfast.ui.screens.yesno.YesNoBody
import holdfast.ui.theme.LocalLargeFigures
import holdfast.ui.theme.Space
import holdfast.ui.theme.Theme
import kotlinx.coroutines.flow.StateFlow

/** The whole app: whatever the model shows. */
@Composable
fun HoldfastScreens(model: HoldfastModel) {
    val shown by model.screen.collectAsState()
    val share by model.share.collectAsState()
    val larger = LocalDensity.current.fontScale
    LaunchedEffect(larger) { model.send(Action.TextSize(larger)) }
    CompositionLocalProvider(LocalWorkShare provides { share }) { Shown(shown, model) }
}

@Composable
private fun Shown(shown: Shown, model: HoldfastModel) {
    Box(Modifier.fillMaxSize().background(Theme.palette.paper)) {
        when (val now = shown) {
            is Shown.Opening -> Unit
            is Shown.Stuck -> Stuck(now.words)
            is Shown.Open -> Column {
                now.refusal?.let { Refusal(it, model::dismiss) }
                Box(Modifier.weight(1f)) { ScreenView(now.screen, model.live, model::send) }
            }
        }
    }
}

/** One screen of the core, laid out the way its language runs. */
@Composable
fun ScreenView(screen: Screen, live: StateFlow<Live>, send: (Action) -> Unit) {
    val direction = when (screen.direction) {
        Direction.LEFT_TO_RIGHT -> LayoutDirection.Ltr
        Direction.RIGHT_TO_LEFT -> LayoutDirection.Rtl
    }
    val large = screen.figures == FigureSize.LARGE && screen.body.isReadWhileWorking()
    CompositionLocalProvider(LocalLayoutDirection provides direction, LocalLargeFigures provides large) {
        BodyView(screen, live, send)
    }
}

private fun Body.isReadWhileWorking() = this is Body.Hold || this is Body.Meter || this is Body.Vibration

@Composable
private fun BodyView(screen: Screen, live: StateFlow<Live>, send: (Action) -> Unit) {
    val frame = screen.frame
    when (val body = screen.body) {
        is Body.Jobs -> JobsBody(frame, body.jobs, send)
        is Body.Vehicle -> FormBody(frame, "vehicle", body.form, send)
        is Body.Prepare -> FormBody(frame, "prepare", body.form, send)
        is Body.Settings -> FormBody(frame, "settings", body.form, send)
        is Body.Overview -> OverviewBody(frame, body.overview, send)
        is Body.Test -> TestBody(frame, body.test, send)
        is Body.Hold -> HoldBody(frame, body.hold, live, send)
        is Body.Meter -> MeterBody(frame, "meter", body.meter, send)
        is Body.Vibration -> MeterBody(frame, "vibration", body.meter, send)
        is Body.YesNo -> YesNoBody(frame, body.ask, send)
        is Body.LookOver -> LookBody(frame, body.look, send)
        is Body.Photo -> PhotoBody(frame, body.photo, send)
        is Body.Finding -> FindingBody(frame, body.finding, send)
        is Body.Repaired -> RepairedBody(frame, body.repair, send)
        is Body.Report -> ReportBody(frame, body.report, send)
        is Body.Costs -> FormBody(frame, "costs", body.form, send)
        is Body.Approval -> ApprovalBody(frame, body.approval, send)
        is Body.Log -> LogBody(frame, body.log, send)
    }
}

/** The core could not be opened: its words, and nothing that could do harm. */
@Composable
private fun Stuck(words: String) {
    Column(
        Modifier
            .fillMaxSize()
            .windowInsetsPadding(WindowInsets.safeDrawing)
            .verticalScroll(rememberScrollState())
            .padding(Space.wide),
        Arrangement.Center,
    ) {
        Words(words, style = Theme.type.heading)
    }
}
