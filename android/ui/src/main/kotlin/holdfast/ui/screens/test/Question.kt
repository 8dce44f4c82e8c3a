package holdfast.ui.screens.test

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.semantics.LiveRegionMode
import androidx.compose.ui.semantics.liveRegion
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.unit.dp
import holdfast.core.Entered
import holdfast.core.TestStage
import holdfast.ui.components.QuietWords
import holdfast.ui.components.Words
import holdfast.ui.theme.Space
import holdfast.ui.theme.Theme
import holdfast.ui.theme.card

/** A reading that can hardly be right: what is odd, and what was entered, to be held against the instrument. */
@Composable
internal fun Question(question: TestStage.Question) {
    Words(question.text, Modifier.semantics { liveRegion = LiveRegionMode.Polite }, Theme.type.heading)
    EnteredView(question.entered)
}

@Composable
private fun EnteredView(entered: Entered) {
    Column(
        Modifier
            .fillMaxWidth()
            .card(Theme.palette.line, 2.dp)
            .padding(Space.margin)
            .semantics(mergeDescendants = true) {},
        Arrangement.spacedBy(Space.small),
    ) {
        Words(entered.label, style = Theme.type.strong)
        entered.lines.forEach { Words(it, style = Theme.type.heading) }
        entered.taken.forEach { QuietWords(it) }
    }
}
