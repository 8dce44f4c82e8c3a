package holdfast.ui.components

import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.unit.dp
import holdfast.core.OwnPhoto
import holdfast.ui.scene.SceneView
import holdfast.ui.theme.Space
import holdfast.ui.theme.Theme
import holdfast.ui.theme.card

/** The person's own photo of the place, under what it shows. */
@Composable
fun OwnPhotoView(photo: OwnPhoto) {
    Column(
        Modifier
            .fillMaxWidth()
            .card(Theme.palette.line, 1.dp),
    ) {
        Words(photo.words, Modifier.padding(Space.step), Theme.type.strong)
        SceneView(photo.scene, onTap = {})
    }
}
