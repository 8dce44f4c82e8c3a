package holdfast.ui.states

import holdfast.core.Anchor
import holdfast.core.Dash
import holdfast.core.Ends
import holdfast.core.Item
import holdfast.core.Point
import holdfast.core.Role
import holdfast.core.Scene
import holdfast.core.Stroke
import holdfast.core.Weight
import kotlin.math.cos
import kotlin.math.sin

private fun line(width: Float, role: Role, dash: Dash = Dash.SOLID) = Stroke(width, role, dash)

private fun words(x: Float, y: Float, size: Float, text: String, anchor: Anchor = Anchor.MIDDLE, weight: Weight = Weight.REGULAR) =
    Item.Text(Point(x, y), anchor, size, weight, Role.INK, text)

/** A dial to 30 with a band from 18 to 22, pointing somewhere. */
internal fun gaugeScene(): Scene {
    val centre = Point(180f, 180f)
    fun around(radius: Float, degrees: Float): Point {
        val radians = Math.toRadians(degrees.toDouble())
        return Point(180f + radius * cos(radians).toFloat(), 180f + radius * sin(radians).toFloat())
    }
    val items = mutableListOf<Item>(
        Item.Circle(centre, 168f, line(2f, Role.INK), Role.PAPER),
        Item.Arc(centre, 154f, 135f + 162f, 36f, line(20f, Role.BAND)),
    )
    for (step in 0..6) {
        val degrees = 135f + 45f * step
        items += Item.Path(listOf(around(164f, degrees), around(144f, degrees)), Ends.OPEN, line(2.5f, Role.INK), null)
        val place = around(122f, degrees)
        items += words(place.x, place.y + 7f, 20f, "${step * 5}", weight = Weight.BOLD)
    }
    items += words(180f, 250f, 18f, "inHg")
    items += Item.Needle(centre, 146f, 315f, 3f, Role.NEEDLE)
    return Scene(360f, 360f, "Gauge, 20 inHg of vacuum. Pump to the band from 18 to 22.", items)
}

/** Three parts in a row with a leaking hose between, each to be tapped. */
internal fun mapScene(): Scene {
    val items = mutableListOf<Item>()
    listOf("Source", "Valve", "Front mount").forEachIndexed { index, name ->
        val x = 12f + index * 118f
        items += Item.Path(
            listOf(Point(x, 60f), Point(x + 100f, 60f), Point(x + 100f, 120f), Point(x, 120f)),
            Ends.CLOSED,
            line(2f, Role.INK),
            Role.RAISED,
        )
        items += words(x + 50f, 96f, 15f, name)
        if (index > 0) {
            val role = if (index == 2) Role.LEAKS else Role.VACUUM
            val dash = if (index == 2) Dash.DASHED else Dash.SOLID
            items += Item.Path(listOf(Point(x - 18f, 90f), Point(x, 90f)), Ends.OPEN, line(4f, role, dash), null)
        }
        items += Item.Region("part:$index", Point(x, 60f), 100f, 60f, name)
    }
    items += Item.Path(listOf(Point(118f, 160f), Point(236f, 160f)), Ends.OPEN, line(3f, Role.ELECTRIC, Dash.DOTTED), null)
    items += words(180f, 190f, 14f, "power wire")
    return Scene(360f, 210f, "Circuit: source, valve, front mount. The front hose is suspected.", items)
}

/** A falling line under a limit. */
internal fun chartScene(): Scene {
    val items = listOf<Item>(
        Item.Path(listOf(Point(40f, 20f), Point(40f, 180f), Point(340f, 180f)), Ends.OPEN, line(2f, Role.INK), null),
        Item.Path(listOf(Point(40f, 40f), Point(340f, 52f), Point(340f, 40f)), Ends.CLOSED, null, Role.BAND),
        Item.Path(listOf(Point(40f, 40f), Point(340f, 52f)), Ends.OPEN, line(2f, Role.QUIET_INK, Dash.DASHED), null),
        Item.Path(listOf(Point(40f, 40f), Point(340f, 150f)), Ends.OPEN, line(3f, Role.NEEDLE), null),
        Item.Circle(Point(40f, 40f), 5f, null, Role.INK),
        Item.Circle(Point(340f, 150f), 5f, null, Role.INK),
        words(330f, 70f, 14f, "limit", Anchor.END),
        words(330f, 200f, 14f, "20 s", Anchor.END),
        words(34f, 45f, 14f, "20", Anchor.END),
    )
    return Scene(360f, 210f, "Vacuum fell from 20 to 13.5 inHg in 20 seconds, far below the limit.", items)
}

/** A connector with two pins and where the leads go. */
internal fun connectorScene(): Scene {
    val items = listOf<Item>(
        Item.Path(
            listOf(Point(90f, 30f), Point(270f, 30f), Point(270f, 130f), Point(90f, 130f)),
            Ends.CLOSED,
            line(2.5f, Role.INK),
            Role.RAISED,
        ),
        Item.Circle(Point(140f, 80f), 20f, line(3f, Role.LEAD_RED), Role.PAPER),
        Item.Circle(Point(220f, 80f), 20f, line(2f, Role.INK), Role.PAPER),
        words(140f, 86f, 18f, "1", weight = Weight.BOLD),
        words(220f, 86f, 18f, "2", weight = Weight.BOLD),
        Item.Path(listOf(Point(140f, 100f), Point(140f, 170f)), Ends.OPEN, line(5f, Role.LEAD_RED), null),
        words(150f, 168f, 15f, "red lead", Anchor.START),
    )
    return Scene(360f, 190f, "Connector with two pins. The red lead goes to pin 1.", items)
}

/** The expected band with the reading on it. */
internal fun bandScene(): Scene {
    val items = listOf<Item>(
        Item.Path(listOf(Point(20f, 40f), Point(340f, 40f)), Ends.OPEN, line(3f, Role.INK), null),
        Item.Path(
            listOf(Point(200f, 26f), Point(300f, 26f), Point(300f, 54f), Point(200f, 54f)),
            Ends.CLOSED,
            null,
            Role.BAND,
        ),
        Item.Path(listOf(Point(250f, 18f), Point(250f, 62f)), Ends.OPEN, line(4f, Role.NEEDLE), null),
        words(250f, 84f, 16f, "12.4 V", weight = Weight.BOLD),
    )
    return Scene(360f, 100f, "12.4 V, inside the expected band.", items)
}

/** A pad that somebody signed with a wave. */
internal fun padScene(): Scene {
    val wave = (0..40).map { Point(60f + it * 4f, 80f - 22f * sin(it * 0.7f)) }
    val items = listOf<Item>(
        Item.Path(listOf(Point(1f, 1f), Point(359f, 1f), Point(359f, 149f), Point(1f, 149f)), Ends.CLOSED, line(1f, Role.LINE), Role.RAISED),
        Item.Path(listOf(Point(24f, 112f), Point(336f, 112f)), Ends.OPEN, line(1.2f, Role.LINE, Dash.DASHED), null),
        words(180f, 136f, 14f, "Sign here with a finger"),
        Item.Path(wave, Ends.OPEN, line(2.4f, Role.INK), null),
    )
    return Scene(360f, 150f, "Signature pad, 1 stroke", items)
}

/** A page with a heading and lines. */
internal fun pageScene(): Scene {
    val items = mutableListOf<Item>(
        Item.Path(
            listOf(Point(0f, 0f), Point(595f, 0f), Point(595f, 842f), Point(0f, 842f)),
            Ends.CLOSED,
            null,
            Role.PAPER,
        ),
        words(50f, 90f, 24f, "The front hose leaks.", Anchor.START, Weight.BOLD),
    )
    for (row in 0..20) items += words(50f, 140f + row * 22f, 11f, "A line of the record, number ${row + 1}.", Anchor.START)
    return Scene(595f, 842f, "Page 1: the front hose leaks.", items)
}
