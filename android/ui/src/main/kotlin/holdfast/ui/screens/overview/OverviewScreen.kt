package holdfast.ui.screens.overview

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.semantics.heading
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.unit.dp
import holdfast.core.Action
import holdfast.core.Frame
import holdfast.core.NextCard
import holdfast.core.OverviewScreen
import holdfast.ui.components.Causes
import holdfast.ui.components.QuietWords
import holdfast.ui.components.ScreenFrame
import holdfast.ui.components.TestRows
import holdfast.ui.components.WideButton
import holdfast.ui.components.Words
import holdfast.ui.scene.Drawing
import holdfast.ui.theme.Space
import holdfast.ui.theme.Theme
import holdfast.ui.theme.card

/** Where we stand: what to do next and why, the circuit, the causes, all tests. */
@Composable
fun OverviewBody(frame: Frame, overview: OverviewScreen, send: (Action) -> Unit) {
    ScreenFrame(frame, "overview", send, footer = { WideButton(overview.next.go, send) }) {
        QuietWords(overview.subject)
        Next(overview.next)
        Drawing(overview.map, send)
        Causes(overview.causes)
        TestRows(overview.tests, send)
        overview.buttons.forEach { WideButton(it, send) }
    }
}

@Composable
private fun Next(next: NextCard) {
    Column(
        Modifier
            .fillMaxWidth()
            .card(Theme.palette.needle, 2.dp)
            .padding(Space.margin),
        Arrangement.spacedBy(Space.small),
    ) {
        Words(next.title, Modifier.semantics { heading() }, Theme.type.title)
        Words(next.why)
        Words(next.minutes, style = Theme.type.strong)
    }
}
