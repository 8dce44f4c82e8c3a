package holdfast.ui.components

import androidx.compose.foundation.clickable
import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.semantics.Role
import androidx.compose.ui.unit.dp
import holdfast.core.Action
import holdfast.core.FormItem
import holdfast.core.PhotoCard
import holdfast.core.Section
import holdfast.ui.scene.Drawing
import holdfast.ui.scene.SceneView
import holdfast.ui.theme.Space
import holdfast.ui.theme.Theme
import holdfast.ui.theme.card

/** One thing of a form. */
@Composable
fun FormItemView(item: FormItem, send: (Action) -> Unit) = when (item) {
    is FormItem.Words -> Words(item.text)
    is FormItem.Entry -> FieldBox(item.field, send)
    is FormItem.Options -> ChoiceGroup(item.choice, send)
    is FormItem.Picture -> Drawing(item.scene, send)
    is FormItem.Tap -> WideButton(item.button, send)
    is FormItem.Care -> CautionCard(item.caution, send)
    is FormItem.State -> Column(Modifier.fillMaxWidth(), Arrangement.spacedBy(Space.hair)) {
        MarkView(item.mark)
        Words(item.text)
    }
    is FormItem.Photo -> PhotoCardView(item.photo, send)
}

/** Parts of a form with their headings. */
@Composable
fun Sections(sections: List<Section>, send: (Action) -> Unit) {
    sections.forEachIndexed { index, section ->
        Column(
            Modifier.fillMaxWidth().padding(top = if (index == 0) Space.hair else Space.margin),
            Arrangement.spacedBy(Space.margin),
        ) {
            Heading(section.heading)
            section.items.forEach { FormItemView(it, send) }
        }
    }
}

@Composable
private fun PhotoCardView(photo: PhotoCard, send: (Action) -> Unit) {
    Column(
        Modifier
            .fillMaxWidth()
            .card(Theme.palette.line, 1.dp)
            .clickable(role = Role.Button) { send(photo.open) },
    ) {
        SceneView(photo.scene, onTap = { send(photo.open) })
        if (photo.caption.isNotEmpty()) Words(photo.caption, Modifier.padding(Space.step))
    }
}
