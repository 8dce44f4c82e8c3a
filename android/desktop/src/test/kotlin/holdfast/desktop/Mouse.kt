package holdfast.desktop

import holdfast.core.Scene
import java.awt.Component
import java.awt.Frame
import java.awt.Point
import java.awt.Rectangle
import java.awt.Robot
import java.awt.Toolkit
import java.awt.datatransfer.StringSelection
import java.awt.event.InputEvent
import java.awt.event.KeyEvent
import javax.accessibility.AccessibleContext
import javax.accessibility.AccessibleRole
import javax.accessibility.AccessibleState
import javax.swing.SwingUtilities

/** A mouse and a keyboard that find their way by what a screen reader would be told. */
internal class Mouse {
    private val robot = Robot().apply { autoDelay = 40 }

    /** Clicks on the [nth] thing of this name that can be clicked. */
    fun click(name: String, nth: Int = 0) {
        val at = bring { named(name).filter { it.accessibleRole in clickable }.getOrNull(nth) ?: named(name).getOrNull(nth) }
        press(at.centerX.toInt(), at.centerY.toInt())
    }

    /** Ticks the first card with this signal word that isn't ticked. */
    fun tick(word: String) {
        val at = bring {
            named(word).firstOrNull {
                it.accessibleRole == AccessibleRole.CHECK_BOX && !it.accessibleStateSet.contains(AccessibleState.CHECKED)
            }
        }
        press(at.centerX.toInt(), at.centerY.toInt())
    }

    /** Puts text into the field that follows this label, in place of what is there. */
    fun write(label: String, text: String) {
        val at = bring { everything().dropWhile { it.accessibleName != label }.firstOrNull { it.accessibleEditableText != null } }
        press(at.centerX.toInt(), at.centerY.toInt())
        Toolkit.getDefaultToolkit().systemClipboard.setContents(StringSelection(text), null)
        chord(KeyEvent.VK_A)
        chord(if (text.isEmpty()) KeyEvent.VK_X else KeyEvent.VK_V)
    }

    /** Clicks on a place in a scene. */
    fun clickOn(scene: Scene, x: Float, y: Float) {
        val at = bring { named(scene.alt).firstOrNull() }
        press((at.x + x / scene.width * at.width).toInt(), (at.y + y / scene.height * at.height).toInt())
    }

    /** Draws through places in a scene with the button held. */
    fun draw(scene: Scene, stroke: List<holdfast.core.Point>) {
        val at = bring { named(scene.alt).firstOrNull() }
        stroke.forEachIndexed { index, place ->
            robot.mouseMove((at.x + place.x / scene.width * at.width).toInt(), (at.y + place.y / scene.height * at.height).toInt())
            if (index == 0) robot.mousePress(InputEvent.BUTTON1_DOWN_MASK)
            Thread.sleep(PEN_MS)
        }
        robot.mouseRelease(InputEvent.BUTTON1_DOWN_MASK)
    }

    /** Where it is on the screen, after turning the wheel until it stands well inside the window or moves no more. */
    private fun bring(find: () -> AccessibleContext?): Rectangle {
        var at = awaited(find)
        val window = onSwing { window().bounds }
        val top = window.y + window.height / 6
        val bottom = window.y + window.height * 6 / 10
        repeat(MOST_TURNS) {
            if (at.centerY.toInt() in top..bottom) return at
            robot.mouseMove(window.x + window.width / 2, window.y + window.height * 4 / 10)
            val far = (at.centerY.toInt() - (top + bottom) / 2) / WHEEL_STEP
            robot.mouseWheel(if (at.centerY > bottom) far.coerceIn(1, MOST_WHEEL) else far.coerceIn(-MOST_WHEEL, -1))
            Thread.sleep(SETTLE_MS)
            val now = awaited(find)
            if (now == at) return at
            at = now
        }
        return at
    }

    private fun awaited(find: () -> AccessibleContext?): Rectangle {
        repeat(MOST_LOOKS) {
            val bounds = onSwing { find()?.let(::bounds) }
            if (bounds != null) return bounds
            Thread.sleep(SETTLE_MS)
        }
        throw IllegalStateException("not to be found; there is: " + onSwing { everything().mapNotNull { it.accessibleName }.toList() })
    }

    private fun press(x: Int, y: Int) {
        robot.mouseMove(x, y)
        robot.mousePress(InputEvent.BUTTON1_DOWN_MASK)
        robot.mouseRelease(InputEvent.BUTTON1_DOWN_MASK)
    }

    private fun chord(key: Int) {
        robot.keyPress(KeyEvent.VK_CONTROL)
        robot.keyPress(key)
        robot.keyRelease(key)
        robot.keyRelease(KeyEvent.VK_CONTROL)
    }

    private fun named(name: String) = everything()
        .filter { it.accessibleName?.contains(name) == true || it.accessibleDescription?.contains(name) == true }
        .toList()

    private fun everything(): Sequence<AccessibleContext> = below((window() as Component).accessibleContext)

    private fun below(context: AccessibleContext): Sequence<AccessibleContext> = sequence {
        yield(context)
        for (index in 0 until context.accessibleChildrenCount) {
            context.getAccessibleChild(index)?.accessibleContext?.let { yieldAll(below(it)) }
        }
    }

    private fun bounds(context: AccessibleContext): Rectangle? {
        val component = context.accessibleComponent ?: return null
        val at: Point = component.locationOnScreen ?: return null
        return Rectangle(at, component.size)
    }

    private fun window(): Frame = Frame.getFrames().first { it.isShowing }

    private fun <T> onSwing(work: () -> T): T {
        var result: Result<T>? = null
        SwingUtilities.invokeAndWait { result = runCatching(work) }
        return checkNotNull(result).getOrThrow()
    }

    private companion object {
        const val MOST_TURNS = 60
        const val MOST_LOOKS = 40
        const val SETTLE_MS = 150L
        const val PEN_MS = 15L

        /** About how many pixels a click of the wheel moves, and the most clicks at once. */
        const val WHEEL_STEP = 80
        const val MOST_WHEEL = 12
        val clickable = setOf(AccessibleRole.PUSH_BUTTON, AccessibleRole.CHECK_BOX, AccessibleRole.RADIO_BUTTON)
    }
}
