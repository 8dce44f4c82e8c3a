package holdfast.ui.screens.hold

import androidx.compose.foundation.layout.Box
import androidx.compose.foundation.layout.BoxWithConstraints
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.ColumnScope
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.widthIn
import androidx.compose.runtime.Composable
import androidx.compose.runtime.getValue
import androidx.compose.runtime.collectAsState
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.semantics.LiveRegionMode
import androidx.compose.ui.semantics.liveRegion
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.text.TextStyle
import androidx.compose.ui.text.style.TextAlign
import holdfast.core.Action
import holdfast.core.Frame
import holdfast.core.HoldPhase
import holdfast.core.HoldScreen
import holdfast.core.Live
import holdfast.ui.components.FieldBox
import holdfast.ui.components.LocalLow
import holdfast.ui.components.ScreenFrame
import holdfast.ui.components.WideButton
import holdfast.ui.components.Words
import holdfast.ui.components.splitButtons
import holdfast.ui.scene.Finger
import holdfast.ui.scene.SceneView
import holdfast.ui.theme.LocalLargeFigures
import holdfast.ui.theme.Space
import holdfast.ui.theme.Theme
import holdfast.ui.theme.fitted
import kotlinx.coroutines.flow.StateFlow

/** A vacuum hold test: one big gauge, one thing to do. */
@Composable
fun HoldBody(frame: Frame, hold: HoldScreen, live: StateFlow<Live>, send: (Action) -> Unit) {
    val phase = hold.phase
    ScreenFrame(frame, phase::class, send, footer = footer(phase, send)) {
        when (phase) {
            is HoldPhase.Pump -> Around(
                above = { Words(phase.target, style = Theme.type.heading) },
                gauge = { Gauge(hold, live, send) },
                below = {
                    UnderTheNeedle(live)
                    Strokes(phase, send)
                    phase.others.forEach { WideButton(it, send) }
                },
            )
            is HoldPhase.Watch -> Around(
                above = {
                    Running(live)
                    Words(phase.prompt, Modifier.fillMaxWidth().announced(), align = TextAlign.Center)
                },
                gauge = { Gauge(hold, live, send) },
                below = {},
            )
            is HoldPhase.Read -> Around(
                above = {
                    Words(phase.prompt, Modifier.announced(), Theme.type.heading)
                    FieldBox(phase.field, send, style = Theme.type.number)
                },
                gauge = { Gauge(hold, live, send) },
                below = { phase.others.forEach { WideButton(it, send) } },
            )
            is HoldPhase.Interrupted -> {
                Words(phase.text, Modifier.announced(), Theme.type.heading)
                SceneView(hold.gauge, send)
            }
        }
    }
}

/** The gauge between its words, or beside them on a phone that lies on its side. */
@Composable
private fun Around(above: @Composable () -> Unit, gauge: @Composable () -> Unit, below: @Composable () -> Unit) {
    if (LocalLow.current) {
        Row(Modifier.fillMaxWidth(), Arrangement.spacedBy(Space.margin)) {
            Column(Modifier.weight(1f), Arrangement.spacedBy(Space.step)) {
                above()
                below()
            }
            Box(Modifier.weight(1f)) { gauge() }
        }
    } else {
        above()
        gauge()
        below()
    }
}

private fun footer(phase: HoldPhase, send: (Action) -> Unit): @Composable ColumnScope.() -> Unit = {
    when (phase) {
        is HoldPhase.Pump -> WideButton(phase.letGo, send)
        is HoldPhase.Watch -> phase.buttons.forEach { WideButton(it, send) }
        is HoldPhase.Read -> WideButton(phase.confirm, send)
        is HoldPhase.Interrupted -> {
            val (first, others) = splitButtons(phase.buttons)
            (first + others).forEach { WideButton(it, send) }
        }
    }
}

@Composable
private fun Gauge(hold: HoldScreen, live: StateFlow<Live>, send: (Action) -> Unit) {
    val now = live.collectAsState()
    Column(Modifier.fillMaxWidth(), horizontalAlignment = Alignment.CenterHorizontally) {
        SceneView(
            hold.gauge,
            send,
            Modifier.widthIn(max = if (LocalLargeFigures.current) Space.smallGauge else Space.gauge),
            Finger.Drags(send),
            needleDeg = { now.value.needleDeg },
        )
    }
}

/** The running seconds, the largest thing on the screen, and what to do now. */
@Composable
private fun Running(live: StateFlow<Live>) {
    val now by live.collectAsState()
    Column(Modifier.fillMaxWidth(), horizontalAlignment = Alignment.CenterHorizontally) {
        Figure(now.seconds, Theme.type.running)
        // It changes each second: a screen reader would never come to an end. The core says what is left aloud.
        Words(now.cue, style = Theme.type.heading, align = TextAlign.Center)
    }
}

/** What the needle points at while a finger drags it, and what to do now. */
@Composable
private fun UnderTheNeedle(live: StateFlow<Live>) {
    val now by live.collectAsState()
    Column(Modifier.fillMaxWidth(), horizontalAlignment = Alignment.CenterHorizontally) {
        Figure(now.reading, Theme.type.number)
        Words(now.cue, Modifier.announced(), Theme.type.heading, align = TextAlign.Center)
    }
}

/** A figure in its usual type, or as large as there is room. */
@Composable
private fun Figure(figure: String, usual: TextStyle) {
    if (LocalLargeFigures.current) {
        BoxWithConstraints { Words(figure, style = fitted(figure, maxWidth), align = TextAlign.Center) }
    } else {
        Words(figure, style = usual, align = TextAlign.Center)
    }
}

/** A screen reader says it when it appears or changes. */
private fun Modifier.announced() = semantics { liveRegion = LiveRegionMode.Polite }

@Composable
private fun Strokes(pump: HoldPhase.Pump, send: (Action) -> Unit) {
    Words(pump.strokes, style = Theme.type.strong)
    Row(Modifier.fillMaxWidth(), Arrangement.spacedBy(Space.step)) {
        pump.count.forEach { WideButton(it, send, Modifier.weight(1f)) }
    }
}
