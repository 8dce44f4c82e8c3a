package holdfast.ui.screens.photo

import androidx.compose.foundation.Canvas
import androidx.compose.foundation.gestures.awaitEachGesture
import androidx.compose.foundation.gestures.awaitFirstDown
import androidx.compose.foundation.gestures.calculateCentroid
import androidx.compose.foundation.gestures.calculatePan
import androidx.compose.foundation.gestures.calculateZoom
import androidx.compose.foundation.layout.Box
import androidx.compose.foundation.layout.BoxWithConstraints
import androidx.compose.foundation.layout.absoluteOffset
import androidx.compose.foundation.layout.aspectRatio
import androidx.compose.foundation.layout.fillMaxSize
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.size
import androidx.compose.runtime.Composable
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableFloatStateOf
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.remember
import androidx.compose.runtime.setValue
import androidx.compose.ui.Modifier
import androidx.compose.ui.draw.clipToBounds
import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.graphics.drawscope.withTransform
import androidx.compose.ui.input.pointer.PointerEvent
import androidx.compose.ui.input.pointer.PointerInputScope
import androidx.compose.ui.input.pointer.pointerInput
import androidx.compose.ui.semantics.Role
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.semantics.onClick
import androidx.compose.ui.semantics.role
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.unit.Dp
import androidx.compose.ui.unit.IntSize
import androidx.compose.ui.unit.dp
import androidx.compose.ui.unit.max
import holdfast.core.Action
import holdfast.core.Item
import holdfast.core.Scene
import holdfast.ui.scene.rememberDrawing

/** The photo under the fingers: one marks, two zoom. Places go to the core in the scene's units, whatever is shown. */
@Composable
internal fun PhotoPad(scene: Scene, send: (Action) -> Unit) {
    val drawing = rememberDrawing(scene)
    val view = remember { View() }
    BoxWithConstraints(
        Modifier
            .fillMaxWidth()
            .aspectRatio(scene.width / scene.height)
            .clipToBounds()
            .semantics {
                contentDescription = scene.alt
                role = Role.Image
            }
            .pointerInput(scene.width) { fingers(view, scene.width, send) },
    ) {
        Canvas(Modifier.fillMaxSize()) {
            withTransform({
                translate(view.left, view.top)
                scale(view.zoom, view.zoom, Offset.Zero)
            }) { drawing.draw(this, scene.items, size.width / scene.width, needleDeg = null) }
        }
        val unit = maxWidth / scene.width
        scene.items.filterIsInstance<Item.Region>().forEach { MarkPlace(it, unit, send) }
    }
}

/** Which part of the photo is seen: pixels of the photo are shown [zoom] times as large, moved by [left] and [top]. */
private class View {
    var zoom by mutableFloatStateOf(1f)
        private set
    private var moved by mutableStateOf(Offset.Zero)
    val left get() = moved.x
    val top get() = moved.y

    /** Two fingers spread and move; what is between them stays there. */
    fun follow(event: PointerEvent, size: IntSize) {
        val centre = event.calculateCentroid()
        val before = zoom
        zoom = (zoom * event.calculateZoom()).coerceIn(1f, MOST)
        val there = centre - (centre - moved) * (zoom / before) + event.calculatePan()
        moved = Offset(
            there.x.coerceIn(size.width * (1 - zoom), 0f),
            there.y.coerceIn(size.height * (1 - zoom), 0f),
        )
    }

    /** A place on the pad as one on the photo, in pixels. */
    fun onPhoto(at: Offset): Offset = (at - moved) / zoom

    private companion object {
        const val MOST = 8f
    }
}

/** Half of what a finger covers. */
private val Reach = 24.dp

private suspend fun PointerInputScope.fingers(view: View, sceneWidth: Float, send: (Action) -> Unit) = awaitEachGesture {
    val unit = size.width / sceneWidth
    fun scene(at: Offset) = view.onPhoto(at) / unit
    fun grab(at: Offset) = scene(at).let { send(Action.Grab(it.x, it.y, Reach.toPx() / unit / view.zoom)) }

    val down = awaitFirstDown(requireUnconsumed = false)
    var doing = Doing.Undecided
    while (true) {
        val event = awaitPointerEvent()
        if (doing != Doing.Marking && event.changes.count { it.pressed } > 1) doing = Doing.Zooming
        val finger = event.changes.firstOrNull { it.id == down.id }
        if (finger == null || !finger.pressed) {
            if (doing == Doing.Undecided) grab(down.position)
            if (doing != Doing.Zooming) send(Action.Release)
            break
        }
        val far = (finger.position - down.position).getDistance() > viewConfiguration.touchSlop
        if (doing == Doing.Undecided && far) {
            doing = Doing.Marking
            grab(down.position)
        }
        when (doing) {
            Doing.Undecided -> Unit
            Doing.Marking -> scene(finger.position).let { send(Action.Drag(it.x, it.y)) }
            Doing.Zooming -> view.follow(event, size)
        }
        if (doing != Doing.Undecided) event.changes.forEach { it.consume() }
    }
}

private enum class Doing { Undecided, Marking, Zooming }

/** A mark for those who can't see it: named, and to be taken in hand. */
@Composable
private fun MarkPlace(region: Item.Region, unit: Dp, send: (Action) -> Unit) {
    val width = max(unit * region.width, LeastTarget)
    val height = max(unit * region.height, LeastTarget)
    val (x, y) = region.at.x + region.width / 2 to region.at.y + region.height / 2
    Box(
        Modifier
            .absoluteOffset(unit * x - width / 2, unit * y - height / 2)
            .size(width, height)
            .semantics {
                contentDescription = region.label
                role = Role.Button
                onClick {
                    send(Action.Grab(x, y, region.width / 2))
                    send(Action.Release)
                    true
                }
            },
    )
}

private val LeastTarget = 48.dp
