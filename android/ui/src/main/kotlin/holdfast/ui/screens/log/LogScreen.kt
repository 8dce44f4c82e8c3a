package holdfast.ui.screens.log

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.semantics.semantics
import holdfast.core.Action
import holdfast.core.Frame
import holdfast.core.LogRow
import holdfast.core.LogScreen
import holdfast.ui.components.FormItemView
import holdfast.ui.components.QuietWords
import holdfast.ui.components.Rule
import holdfast.ui.components.ScreenFrame
import holdfast.ui.components.Words
import holdfast.ui.theme.Space
import holdfast.ui.theme.Theme

/** The job's photos and all its entries, newest first. */
@Composable
fun LogBody(frame: Frame, log: LogScreen, send: (Action) -> Unit) {
    ScreenFrame(frame, "log", send) {
        log.photos.forEach { FormItemView(it, send) }
        Column { log.rows.forEach { Entry(it) } }
    }
}

@Composable
private fun Entry(row: LogRow) {
    Rule()
    Column(
        Modifier.fillMaxWidth().padding(vertical = Space.step).semantics(mergeDescendants = true) {},
        Arrangement.spacedBy(Space.hair),
    ) {
        QuietWords(row.`when`)
        Words(row.text)
        Words(row.state, style = Theme.type.strong, colour = Theme.palette.quietInk)
    }
}
