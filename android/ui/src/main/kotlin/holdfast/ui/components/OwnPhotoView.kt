package holdfast.ui.components

import androidx.compose.foundation.background
import androidx.compose.foundation.border
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.draw.clip
import androidx.compose.ui.unit.dp
import holdfast.core.OwnPhoto
import holdfast.ui.scene.SceneView
import holdfast.ui.theme.Space
import holdfast.ui.theme.Theme

/** The person's own photo of the place, under what it shows. */
@Composable
fun OwnPhotoView(photo: OwnPhoto) {
    Column(
        Modifier
            .fillMaxWidth()
            .clip(Space.corner)
            .border(1.dp, Theme.palette.line, Space.corner)
            .background(Theme.palette.raised),
    ) {
        Words(photo.words, Modifier.padding(Space.step), Theme.type.strong)
        SceneView(photo.scene, onTap = {})
    }
}
