package holdfast.ui.components

import androidx.compose.foundation.Canvas
import androidx.compose.foundation.clickable
import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Box
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.defaultMinSize
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.height
import androidx.compose.foundation.layout.padding
import androidx.compose.foundation.background
import androidx.compose.runtime.Composable
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.geometry.CornerRadius
import androidx.compose.ui.geometry.Size
import androidx.compose.ui.semantics.Role
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.unit.dp
import holdfast.core.Action
import holdfast.core.CauseRow
import holdfast.core.TestRow
import holdfast.ui.theme.Space
import holdfast.ui.theme.Theme
import holdfast.core.Role as Colour

/** Possible causes with their certainty as number and bar. */
@Composable
fun Causes(causes: List<CauseRow>, modifier: Modifier = Modifier) {
    Column(modifier.fillMaxWidth(), Arrangement.spacedBy(Space.step)) {
        causes.forEach { cause ->
            Column(Modifier.fillMaxWidth().semantics(mergeDescendants = true) {}, Arrangement.spacedBy(Space.hair)) {
                Row(Modifier.fillMaxWidth(), Arrangement.spacedBy(Space.step), Alignment.Bottom) {
                    Words(cause.name, Modifier.weight(1f))
                    Words(cause.percent, style = Theme.type.strong)
                }
                Bar(cause.barPermille.toInt())
            }
        }
    }
}

@Composable
private fun Bar(permille: Int) {
    val palette = Theme.palette
    Canvas(Modifier.fillMaxWidth().height(10.dp)) {
        val round = CornerRadius(size.height / 2)
        drawRoundRect(palette[Colour.BAND], cornerRadius = round)
        drawRoundRect(palette.ink, size = Size(size.width * permille / 1000f, size.height), cornerRadius = round)
    }
}

/** Tests with their state; each row opens its test. */
@Composable
fun TestRows(tests: List<TestRow>, send: (Action) -> Unit, modifier: Modifier = Modifier) {
    Column(modifier.fillMaxWidth()) {
        tests.forEach { test ->
            Rule()
            Row(
                Modifier
                    .fillMaxWidth()
                    .clickable(enabled = test.open.whyNot == null, role = Role.Button, onClickLabel = test.open.label) {
                        send(test.open.action)
                    }
                    .defaultMinSize(minHeight = 56.dp)
                    .padding(vertical = Space.small),
                Arrangement.spacedBy(Space.step),
                Alignment.CenterVertically,
            ) {
                MarkSign(test.mark, Theme.type.heading)
                Column(Modifier.weight(1f)) {
                    Words(test.title)
                    QuietWords(test.detail)
                }
                Words(test.mark.word, style = Theme.type.small, colour = Theme.palette[test.mark.role])
            }
        }
        if (tests.isNotEmpty()) Rule()
    }
}

/** A hairline across. */
@Composable
fun Rule(modifier: Modifier = Modifier) =
    Box(modifier.fillMaxWidth().height(1.dp).background(Theme.palette.line))

/** Lines that begin with a short dash, as points that stand side by side. */
@Composable
fun Points(lines: List<String>, modifier: Modifier = Modifier) {
    Column(modifier.fillMaxWidth(), Arrangement.spacedBy(Space.small)) {
        lines.forEach { line ->
            Row(Modifier.fillMaxWidth(), Arrangement.spacedBy(Space.step)) {
                Box(Modifier.padding(top = 11.dp).height(3.dp).defaultMinSize(minWidth = 12.dp).background(Theme.palette.needle))
                Words(line, Modifier.weight(1f))
            }
        }
    }
}
