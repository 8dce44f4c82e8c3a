package holdfast.ui.screens.test

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.defaultMinSize
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.unit.dp
import holdfast.core.Action
import holdfast.core.Meaning
import holdfast.core.Step
import holdfast.core.TestStage
import holdfast.ui.components.CautionCard
import holdfast.ui.components.FormItemView
import holdfast.ui.components.MarkView
import holdfast.ui.components.Points
import holdfast.ui.components.Rule
import holdfast.ui.components.WideButton
import holdfast.ui.components.Words
import holdfast.ui.theme.Space
import holdfast.ui.theme.Theme

/** Before a test: why, what is needed, the steps with their cautions, what each result would mean. */
@Composable
internal fun Brief(brief: TestStage.Brief, send: (Action) -> Unit) {
    Words(brief.why)
    Points(brief.needs)
    Rule()
    brief.steps.forEachIndexed { index, step -> NumberedStep(index + 1, step, send) }
    if (brief.means.isNotEmpty()) {
        Rule()
        brief.means.forEach { MeaningView(it) }
    }
    brief.extras.forEach { FormItemView(it, send) }
    if (brief.cannot.isNotEmpty()) {
        Rule()
        Column { brief.cannot.forEach { WideButton(it, send) } }
    }
}

@Composable
private fun NumberedStep(number: Int, step: Step, send: (Action) -> Unit) {
    Column(Modifier.fillMaxWidth(), Arrangement.spacedBy(Space.step)) {
        step.cautions.forEach { CautionCard(it, send) }
        Row(Modifier.fillMaxWidth().semantics(mergeDescendants = true) {}, Arrangement.spacedBy(Space.step)) {
            Words(
                "$number",
                Modifier.defaultMinSize(minWidth = 28.dp),
                Theme.type.heading,
                Theme.palette.needle,
            )
            Words(step.text, Modifier.weight(1f))
        }
    }
}

@Composable
private fun MeaningView(meaning: Meaning) {
    Column(Modifier.fillMaxWidth().semantics(mergeDescendants = true) {}, Arrangement.spacedBy(Space.hair)) {
        MarkView(meaning.mark)
        Words(meaning.text)
    }
}
