package holdfast.ui.demo

import holdfast.core.Action
import holdfast.core.Body
import holdfast.core.Clock
import holdfast.core.Live
import holdfast.core.Request
import holdfast.core.Screen
import holdfast.ui.bridge.Answer
import holdfast.ui.bridge.Core

/** A morning in March, invented: a clock of its own, so that no time passes in waiting. */
class DemoClock {
    private var mono = 0L

    fun now() = Clock(wallMs = 1_773_651_600_000 + mono, offsetMin = 0, monoMs = mono, bootId = "demo")

    internal fun pass(ms: Long) {
        mono += ms
    }
}

/**
 * Carries out deeds on the real core without fingers or a display. Ticks and long work are done here; [asked] hears of
 * every request and may answer it.
 */
class DemoHand(
    private val core: Core,
    private val clock: DemoClock,
    private val asked: (Request, Screen) -> Action?,
) {
    private var ticking: Long? = null

    /** The moving part as it was last. */
    var live = Live("", 0f, "", "")
        private set

    /** The first screen, or null where the core refuses. */
    suspend fun open(): Screen? = given(core.open())?.also(::take)

    /** The screen after a deed, or null where the core refuses it. */
    suspend fun carryOut(deed: Deed, screen: Screen): Screen? {
        clock.pass(HAND_MS)
        return when (deed) {
            is Deed.Tap -> act(deed.button.action, screen)
            is Deed.Tick -> act(deed.action, screen)
            is Deed.Choose -> act(deed.option.action, screen)
            is Deed.Write -> act(Action.Type(deed.field.id, deed.text), screen)
            is Deed.Sign -> act(Action.Ink(deed.stroke), screen)
            is Deed.Mark -> act(Action.Grab(deed.x, deed.y, FINGER), screen)?.let { act(Action.Release, it) }
            is Deed.Drag -> act(Action.Drag(deed.x, deed.y), screen)
            is Deed.Wait -> wait(deed.ms, screen)
            is Deed.Leave -> screen
        }
    }

    /** The screen after an action and all that the core asked for. */
    suspend fun act(action: Action, screen: Screen): Screen? {
        val update = given(core.act(action)) ?: return null
        update.live?.let { live = it }
        var now = update.screen?.also(::take) ?: screen
        for (request in update.requests) {
            val answer = asked(request, now)
            when (request) {
                is Request.StartTicks -> ticking = request.everyMs.toLong()
                is Request.StopTicks -> ticking = null
                is Request.Work -> {
                    core.work(request.id) {}
                    now = act(Action.WorkDone(request.id), now) ?: return null
                }
                else -> if (answer != null) now = act(answer, now) ?: return null
            }
        }
        return now
    }

    private suspend fun wait(ms: Long, screen: Screen): Screen? {
        val every = ticking ?: ms
        var now = screen
        repeat((ms / every).toInt().coerceAtLeast(1)) {
            clock.pass(every)
            if (ticking != null) now = act(Action.Tick, now) ?: return null
        }
        return now
    }

    private fun take(screen: Screen) {
        live = (screen.body as? Body.Hold)?.hold?.live ?: live
    }

    private fun <T> given(answer: Answer<T>): T? = when (answer) {
        is Answer.Given -> answer.value
        is Answer.Refused -> {
            System.err.println(answer.words)
            null
        }
    }

    private companion object {
        /** How far a finger reaches to each side, scene units. */
        const val FINGER = 20f

        /** How long a hand takes for one thing. */
        const val HAND_MS = 700L
    }
}
