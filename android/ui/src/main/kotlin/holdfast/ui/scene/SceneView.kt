package holdfast.ui.scene

import androidx.compose.foundation.Canvas
import androidx.compose.foundation.clickable
import androidx.compose.foundation.gestures.awaitEachGesture
import androidx.compose.foundation.gestures.awaitFirstDown
import androidx.compose.foundation.layout.Box
import androidx.compose.foundation.layout.BoxWithConstraints
import androidx.compose.foundation.layout.absoluteOffset
import androidx.compose.foundation.layout.aspectRatio
import androidx.compose.foundation.layout.fillMaxSize
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.size
import androidx.compose.foundation.layout.widthIn
import androidx.compose.runtime.Composable
import androidx.compose.runtime.LaunchedEffect
import androidx.compose.runtime.mutableStateListOf
import androidx.compose.runtime.remember
import androidx.compose.ui.Modifier
import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.graphics.PointMode
import androidx.compose.ui.graphics.StrokeCap
import androidx.compose.ui.input.pointer.pointerInput
import androidx.compose.ui.semantics.Role
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.semantics.role
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.text.rememberTextMeasurer
import androidx.compose.ui.unit.Dp
import androidx.compose.ui.unit.dp
import androidx.compose.ui.unit.max
import holdfast.core.Action
import holdfast.core.Item
import holdfast.core.Point
import holdfast.core.Scene
import holdfast.ui.theme.Palette
import holdfast.ui.theme.Space
import holdfast.ui.theme.Theme

/** What a finger on a scene means, besides tapping its regions. */
sealed interface Finger {
    /** Nothing. */
    data object Ignored : Finger

    /** It drags the needle: [Action.Drag]. */
    data class Drags(val send: (Action) -> Unit) : Finger

    /** It is a pen: [Action.Ink], one for each stroke. */
    data class Writes(val send: (Action) -> Unit) : Finger
}

/**
 * Draws a scene over the width it is given. Its regions become things to tap, at least 48 dp large and with their
 * label; [needleDeg] turns the needle and is read only while drawing, so that nothing else is laid out again.
 */
@Composable
fun SceneView(
    scene: Scene,
    onTap: (Action) -> Unit,
    modifier: Modifier = Modifier,
    finger: Finger = Finger.Ignored,
    needleDeg: (() -> Float)? = null,
) {
    val drawing = rememberDrawing(scene)
    val palette = Theme.palette
    val pen = remember { Pen() }
    LaunchedEffect(scene) { pen.dry() }
    BoxWithConstraints(
        modifier
            .fillMaxWidth()
            .aspectRatio(scene.width / scene.height)
            .semantics {
                contentDescription = scene.alt
                role = Role.Image
            }
            .fingers(finger, scene.width, pen),
    ) {
        val unit = maxWidth / scene.width
        Canvas(Modifier.fillMaxSize()) {
            drawing.draw(this, scene.items, size.width / scene.width, needleDeg?.invoke())
            if (pen.wet.size > 1) drawPoints(pen.wet, PointMode.Polygon, palette.ink, PenWidth.toPx(), StrokeCap.Round)
        }
        scene.items.filterIsInstance<Item.Region>().forEach { Region(it, unit, onTap) }
    }
}

/** A drawing among words: no wider than it is read easily. */
@Composable
fun Drawing(scene: Scene, onTap: (Action) -> Unit) = SceneView(scene, onTap, Modifier.widthIn(max = Space.drawing))

/** What draws a scene with its pictures. Marks on a photo have day's colours always: those they will be printed in. */
@Composable
internal fun rememberDrawing(scene: Scene): SceneDrawing {
    val palette = if (scene.items.any { it is Item.Image }) Palette.Day else Theme.palette
    val measurer = rememberTextMeasurer(cacheSize = 64)
    val pictures = rememberPictures(scene)
    val type = Theme.type.body
    return remember(palette, measurer, type, pictures) { SceneDrawing(palette, measurer, type, pictures) }
}

/**
 * A scene that is only looked at: no regions, and it may be measured ahead of its place. Words that would come out too
 * small to read are left away.
 */
@Composable
fun SceneStill(scene: Scene, modifier: Modifier = Modifier) {
    val palette = Theme.palette
    val measurer = rememberTextMeasurer(cacheSize = 64)
    val type = Theme.type.body
    val drawing = remember(palette, measurer, type) { SceneDrawing(palette, measurer, type, emptyMap()) }
    Canvas(modifier.aspectRatio(scene.width / scene.height)) {
        val scale = size.width / scene.width
        val legible = scene.items.filter { it !is Item.Text || it.size * scale >= LeastWords.toPx() }
        drawing.draw(this, legible, scale, needleDeg = null)
    }
}

@Composable
private fun Region(region: Item.Region, unit: Dp, onTap: (Action) -> Unit) {
    val width = max(unit * region.width, LeastTarget)
    val height = max(unit * region.height, LeastTarget)
    val left = unit * (region.at.x + region.width / 2) - width / 2
    val top = unit * (region.at.y + region.height / 2) - height / 2
    Box(
        Modifier
            .absoluteOffset(left, top)
            .size(width, height)
            .clickable(role = Role.Button) { onTap(Action.Tap(region.id)) }
            .semantics { contentDescription = region.label },
    )
}

private val LeastTarget = 48.dp

/** The height of the smallest type that can be read at arm's length by good eyes. */
private val LeastWords = 9.dp

private fun Modifier.fingers(finger: Finger, sceneWidth: Float, pen: Pen): Modifier = when (finger) {
    is Finger.Ignored -> this
    is Finger.Drags -> pointerInput(sceneWidth) {
        awaitEachGesture {
            val unit = size.width / sceneWidth
            fun send(at: Offset) = finger.send(Action.Drag(at.x / unit, at.y / unit))
            val down = awaitFirstDown()
            down.consume()
            send(down.position)
            while (true) {
                val change = awaitPointerEvent().changes.firstOrNull { it.id == down.id } ?: break
                change.consume()
                if (!change.pressed) break
                send(change.position)
            }
        }
    }
    is Finger.Writes -> pointerInput(sceneWidth, pen) {
        awaitEachGesture {
            val unit = size.width / sceneWidth
            val down = awaitFirstDown()
            down.consume()
            pen.begin(down.position)
            while (true) {
                val change = awaitPointerEvent().changes.firstOrNull { it.id == down.id } ?: break
                change.consume()
                pen.wet += change.position
                if (!change.pressed) break
            }
            pen.end()
            finger.send(Action.Ink(pen.wet.map { Point(it.x / unit, it.y / unit) }))
        }
    }
}

/** The stroke under way, drawn here until it is part of the scene. */
private class Pen {
    val wet = mutableStateListOf<Offset>()
    private var writing = false

    fun begin(at: Offset) {
        writing = true
        wet.clear()
        wet += at
    }

    fun end() {
        writing = false
    }

    /** The scene has changed: what was drawn is in it, unless the next stroke has begun already. */
    fun dry() {
        if (!writing) wet.clear()
    }
}

/** The pen of the pad, as wide as the core draws it. */
private val PenWidth = 2.4.dp
