package holdfast.ui.screens.finding

import androidx.compose.foundation.background
import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Box
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.IntrinsicSize
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.fillMaxHeight
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.height
import androidx.compose.foundation.layout.width
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.semantics.heading
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.text.style.TextAlign
import androidx.compose.ui.unit.dp
import holdfast.core.Action
import holdfast.core.FindingScreen
import holdfast.core.Frame
import holdfast.core.Role
import holdfast.ui.components.Causes
import holdfast.ui.components.MarkView
import holdfast.ui.components.ScreenFrame
import holdfast.ui.components.WideButton
import holdfast.ui.components.Words
import holdfast.ui.components.splitButtons
import holdfast.ui.scene.Drawing
import holdfast.ui.theme.Space
import holdfast.ui.theme.Theme

/** The finding: the part, how sure, what speaks for and against it, what is left open. */
@Composable
fun FindingBody(frame: Frame, finding: FindingScreen, send: (Action) -> Unit) {
    val (foot, others) = splitButtons(finding.buttons)
    ScreenFrame(frame, "finding", send, footer = { foot.forEach { WideButton(it, send) } }) {
        MarkView(finding.mark)
        Words(finding.headline, Modifier.semantics { heading() }, Theme.type.title)
        Words(finding.certainty, style = Theme.type.heading)
        Words(finding.explains)
        Drawing(finding.map, send)
        Reasons("+", finding.speaksFor, Role.HOLDS)
        Reasons("−", finding.speaksAgainst, Role.LEAKS)
        Reasons("?", finding.leftOpen, Role.UNDECIDED)
        Causes(finding.causes)
        others.forEach { WideButton(it, send) }
    }
}

/** Lines of one kind: for, against or open, along a bar with their sign. */
@Composable
private fun Reasons(sign: String, lines: List<String>, role: Role) {
    if (lines.isEmpty()) return
    Row(Modifier.fillMaxWidth().height(IntrinsicSize.Min).semantics(mergeDescendants = true) {}, Arrangement.spacedBy(Space.step)) {
        Words(sign, Modifier.width(24.dp), Theme.type.title, Theme.palette[role], TextAlign.Center)
        Box(Modifier.width(4.dp).fillMaxHeight().background(Theme.palette[role]))
        Column(Modifier.weight(1f), Arrangement.spacedBy(Space.small)) { lines.forEach { Words(it) } }
    }
}
