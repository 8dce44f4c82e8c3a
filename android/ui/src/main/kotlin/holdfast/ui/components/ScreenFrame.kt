package holdfast.ui.components

import androidx.compose.foundation.Canvas
import androidx.compose.foundation.ScrollState
import androidx.compose.foundation.background
import androidx.compose.foundation.clickable
import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.BoxWithConstraints
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.ColumnScope
import androidx.compose.foundation.layout.ExperimentalLayoutApi
import androidx.compose.foundation.layout.FlowRow
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.WindowInsets
import androidx.compose.foundation.layout.fillMaxHeight
import androidx.compose.foundation.layout.fillMaxSize
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.heightIn
import androidx.compose.foundation.layout.padding
import androidx.compose.foundation.layout.safeDrawing
import androidx.compose.foundation.layout.size
import androidx.compose.foundation.layout.width
import androidx.compose.foundation.layout.widthIn
import androidx.compose.foundation.layout.windowInsetsPadding
import androidx.compose.foundation.rememberScrollState
import androidx.compose.foundation.verticalScroll
import androidx.compose.runtime.Composable
import androidx.compose.runtime.CompositionLocalProvider
import androidx.compose.runtime.LaunchedEffect
import androidx.compose.runtime.staticCompositionLocalOf
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.draw.clip
import androidx.compose.ui.draw.scale
import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.graphics.StrokeCap
import androidx.compose.ui.platform.LocalLayoutDirection
import androidx.compose.ui.semantics.LiveRegionMode
import androidx.compose.ui.semantics.Role
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.semantics.heading
import androidx.compose.ui.semantics.isTraversalGroup
import androidx.compose.ui.semantics.liveRegion
import androidx.compose.ui.semantics.paneTitle
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.unit.Dp
import androidx.compose.ui.unit.LayoutDirection
import androidx.compose.ui.unit.dp
import holdfast.core.Action
import holdfast.core.Button
import holdfast.core.Frame
import holdfast.core.Notice
import holdfast.ui.theme.Space
import holdfast.ui.theme.Theme
import holdfast.ui.theme.card

/** Whether the window is so low that the ways on stand at its side. */
val LocalLow = staticCompositionLocalOf { false }

/**
 * What every screen has: the way back and the title on top, then what scrolls, then what a thumb reaches. [key]
 * names the screen: another key begins at its top again.
 */
@Composable
fun ScreenFrame(
    frame: Frame,
    key: Any,
    send: (Action) -> Unit,
    footer: (@Composable ColumnScope.() -> Unit)? = null,
    content: @Composable ColumnScope.() -> Unit,
) {
    val scroll = rememberScrollState()
    LaunchedEffect(key) { scroll.scrollTo(0) }
    BoxWithConstraints(
        Modifier
            .fillMaxSize()
            .background(Theme.palette.paper)
            .windowInsetsPadding(WindowInsets.safeDrawing)
            .semantics { paneTitle = frame.spoken.ifEmpty { frame.title } },
    ) {
        val most = maxHeight * FOOT_SHARE
        if (maxHeight < Space.low && maxWidth > maxHeight) {
            CompositionLocalProvider(LocalLow provides true) {
                Row(Modifier.fillMaxSize()) {
                    Column(Modifier.weight(1f)) {
                        Top(frame, send)
                        Page(frame, scroll, send, Modifier.weight(1f), content)
                    }
                    if (footer != null) Side(footer)
                }
            }
        } else {
            Column(Modifier.fillMaxSize(), horizontalAlignment = Alignment.CenterHorizontally) {
                Top(frame, send)
                Page(frame, scroll, send, Modifier.weight(1f), content)
                if (footer != null) Foot(most, footer)
            }
        }
    }
}

@Composable
private fun Page(
    frame: Frame,
    scroll: ScrollState,
    send: (Action) -> Unit,
    modifier: Modifier,
    content: @Composable ColumnScope.() -> Unit,
) {
    Column(modifier.fillMaxWidth().readTogether().verticalScroll(scroll), horizontalAlignment = Alignment.CenterHorizontally) {
        Column(
            Modifier
                .widthIn(max = Space.column)
                .fillMaxWidth()
                .padding(horizontal = Space.margin)
                .padding(top = Space.hair, bottom = Space.wide),
            Arrangement.spacedBy(Space.margin),
        ) {
            frame.notice?.let { NoticeCard(it, send) }
            frame.cautions.forEach { CautionCard(it, send) }
            content()
            Menu(frame.menu, send)
        }
    }
}

/** With large type the ways on scroll by themselves rather than leave the page no room. */
private const val FOOT_SHARE = 0.6f

/** The ways on, where a thumb is when the phone stands upright. */
@Composable
private fun Foot(most: Dp, footer: @Composable ColumnScope.() -> Unit) {
    Rule()
    Column(
        Modifier
            .widthIn(max = Space.column)
            .fillMaxWidth()
            .heightIn(max = most)
            .readTogether()
            .verticalScroll(rememberScrollState())
            .padding(Space.margin, Space.step),
        Arrangement.spacedBy(Space.small),
        content = footer,
    )
}

/** The ways on, where a thumb is when the phone lies on its side. */
@Composable
private fun Side(footer: @Composable ColumnScope.() -> Unit) {
    Column(
        Modifier.width(Space.side).fillMaxHeight().readTogether().verticalScroll(rememberScrollState()).padding(Space.margin, Space.step),
        Arrangement.spacedBy(Space.small, Alignment.CenterVertically),
        content = footer,
    )
}

/** A screen reader goes through all of this before it goes on to what stands beside or below. */
private fun Modifier.readTogether() = semantics { isTraversalGroup = true }

@Composable
private fun Top(frame: Frame, send: (Action) -> Unit) {
    Row(
        Modifier
            .widthIn(max = Space.column)
            .fillMaxWidth()
            .readTogether()
            .padding(start = Space.hair, end = Space.margin, top = Space.hair),
        Arrangement.spacedBy(Space.hair),
        Alignment.CenterVertically,
    ) {
        val back = frame.back
        if (back != null) BackArrow(back, send) else DialSign(Modifier.padding(Space.step))
        Words(
            frame.title,
            Modifier.weight(1f).padding(vertical = Space.small).semantics { heading() },
            Theme.type.heading,
        )
    }
}

@Composable
private fun BackArrow(back: Button, send: (Action) -> Unit) {
    val ink = Theme.palette.ink
    // The way back points to where reading begins.
    val mirrored = if (LocalLayoutDirection.current == LayoutDirection.Rtl) -1f else 1f
    Canvas(
        Modifier
            .size(Space.target)
            .scale(mirrored, 1f)
            .clip(Space.corner)
            .clickable(enabled = back.whyNot == null, role = Role.Button) { send(back.action) }
            .semantics { contentDescription = back.label },
    ) {
        val line = 3.dp.toPx()
        val arm = 8.dp.toPx()
        val tip = Offset(center.x - 10.dp.toPx(), center.y)
        drawLine(ink, tip, Offset(center.x + 10.dp.toPx(), center.y), line, StrokeCap.Round)
        drawLine(ink, tip, tip + Offset(arm, -arm), line, StrokeCap.Round)
        drawLine(ink, tip, tip + Offset(arm, arm), line, StrokeCap.Round)
    }
}

@OptIn(ExperimentalLayoutApi::class)
@Composable
private fun Menu(menu: List<Button>, send: (Action) -> Unit) {
    if (menu.isEmpty()) return
    Rule()
    FlowRow(horizontalArrangement = Arrangement.spacedBy(Space.margin)) { menu.forEach { QuietButton(it, send) } }
}

@OptIn(ExperimentalLayoutApi::class)
@Composable
private fun NoticeCard(notice: Notice, send: (Action) -> Unit) {
    Column(
        Modifier
            .fillMaxWidth()
            .card(Theme.palette.ink, 2.dp)
            .padding(Space.step)
            .semantics { liveRegion = LiveRegionMode.Polite },
        Arrangement.spacedBy(Space.hair),
    ) {
        Words(notice.text)
        if (notice.work != null) WorkBar()
        if (notice.buttons.isNotEmpty()) {
            FlowRow(horizontalArrangement = Arrangement.spacedBy(Space.margin)) {
                notice.buttons.forEach { QuietButton(it, send) }
            }
        }
    }
}
