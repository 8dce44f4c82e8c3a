package holdfast.ui.components

import androidx.compose.foundation.background
import androidx.compose.foundation.clickable
import androidx.compose.foundation.layout.Box
import androidx.compose.foundation.layout.WindowInsets
import androidx.compose.foundation.layout.WindowInsetsSides
import androidx.compose.foundation.layout.defaultMinSize
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.only
import androidx.compose.foundation.layout.padding
import androidx.compose.foundation.layout.safeDrawing
import androidx.compose.foundation.layout.windowInsetsPadding
import androidx.compose.runtime.Composable
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.semantics.LiveRegionMode
import androidx.compose.ui.semantics.Role
import androidx.compose.ui.semantics.liveRegion
import androidx.compose.ui.semantics.semantics
import holdfast.ui.theme.Space
import holdfast.ui.theme.Theme

/** Why the last action was refused, across the top, until it is tapped or the screen changes. */
@Composable
fun Refusal(words: String, dismiss: () -> Unit) {
    Box(
        Modifier
            .fillMaxWidth()
            .background(Theme.palette.ink)
            .windowInsetsPadding(WindowInsets.safeDrawing.only(WindowInsetsSides.Top + WindowInsetsSides.Horizontal))
            .clickable(role = Role.Button, onClick = dismiss)
            .defaultMinSize(minHeight = Space.target)
            .padding(Space.margin)
            .semantics { liveRegion = LiveRegionMode.Assertive },
        contentAlignment = Alignment.CenterStart,
    ) {
        Words(words, colour = Theme.palette.paper)
    }
}
