package holdfast.app

import holdfast.core.Action
import holdfast.core.Body
import holdfast.core.Live
import holdfast.core.PhoneFacts
import holdfast.core.PhonePart
import holdfast.core.Pick
import holdfast.core.Place
import holdfast.core.Screen
import holdfast.ui.bridge.RustCore
import holdfast.ui.demo.Deed
import holdfast.ui.demo.DemoClock
import holdfast.ui.demo.DemoHand
import holdfast.ui.demo.DemoPerson
import holdfast.ui.demo.Scenario
import java.io.File
import kotlinx.coroutines.Dispatchers
import kotlinx.coroutines.runBlocking

/** A screen of the demo job with its moving part. */
internal data class Told(val name: String, val screen: Screen, val live: Live)

/** The demo job on the real core, in the language of [locale] and for type [larger] times as large: one screen of each kind. */
internal fun story(locale: String, larger: Float, folder: File): List<Told> = runBlocking {
    val clock = DemoClock()
    val facts = PhoneFacts(locale, listOf(PhonePart.CAMERA, PhonePart.GALLERY, PhonePart.SPEECH, PhonePart.SHARE), emptyList())
    val core = RustCore(folder.path, facts, clock::now, Dispatchers.Unconfined, Dispatchers.Unconfined)
    val hand = DemoHand(core, clock) { _, _ -> null }
    val scenario = Scenario.given()
    val person = DemoPerson(scenario)
    val seen = linkedMapOf<String, Told>()
    fun see(screen: Screen) = seen.getOrPut(screen.kind()) { Told(screen.kind(), screen, hand.live) }

    var screen = checkNotNull(hand.open())
    // The gauge of the scenario, whatever is usual in the region.
    val gauge = Action.Pick(Pick.GaugeUnit(scenario.gaugeUnit))
    listOf(Action.TextSize(larger), Action.Go(Place.SETTINGS), gauge, Action.Back).forEach {
        screen = checkNotNull(hand.act(it, screen))
    }
    repeat(MOST_DEEDS) {
        see(screen)
        val deed = person.next(screen)
        if (deed is Deed.Leave) {
            // What the job itself does not lead through.
            (Place.entries - Place.JOBS + Place.JOBS).forEach { place -> see(checkNotNull(hand.act(Action.Go(place), screen))) }
            return@runBlocking seen.values.toList()
        }
        screen = checkNotNull(hand.carryOut(deed, screen))
    }
    throw AssertionError("the job does not end: it stands at '${screen.frame.title}'")
}

/** What kind of screen this is: its body, and which of its stages. */
internal fun Screen.kind(): String = when (val body = body) {
    is Body.Hold -> "hold-${body.hold.phase::class.simpleName}"
    is Body.Test -> "test-${body.test.stage::class.simpleName}"
    is Body.Vehicle -> "vehicle-${frame.title}"
    else -> body::class.simpleName.orEmpty()
}.lowercase()

private const val MOST_DEEDS = 2_000
