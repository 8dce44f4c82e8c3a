package holdfast.ui.screens.test

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.semantics.LiveRegionMode
import androidx.compose.ui.semantics.liveRegion
import androidx.compose.ui.semantics.semantics
import holdfast.core.Action
import holdfast.core.TestStage
import holdfast.ui.components.FormItemView
import holdfast.ui.components.MarkView
import holdfast.ui.components.QuietWords
import holdfast.ui.components.WideButton
import holdfast.ui.components.Words
import holdfast.ui.components.splitButtons
import holdfast.ui.theme.Space
import holdfast.ui.theme.Theme

/** The result in a word and a sentence, and what it means. */
@Composable
internal fun ResultHead(result: TestStage.Result) {
    MarkView(result.mark, style = Theme.type.title)
    Words(result.sentence, Modifier.semantics { liveRegion = LiveRegionMode.Polite }, Theme.type.heading)
    Words(result.meaning)
}

/** What stands behind the result. */
@Composable
internal fun ResultRest(result: TestStage.Result, send: (Action) -> Unit) {
    if (result.details.isNotEmpty()) {
        Column(Modifier.fillMaxWidth(), Arrangement.spacedBy(Space.hair)) {
            result.details.forEach { QuietWords(it) }
        }
    }
    result.extras.forEach { FormItemView(it, send) }
    splitButtons(result.buttons).second.forEach { WideButton(it, send) }
}
