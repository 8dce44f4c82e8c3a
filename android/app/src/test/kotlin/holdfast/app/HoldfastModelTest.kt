package holdfast.app

import holdfast.core.Action
import holdfast.core.Buzz
import holdfast.core.Live
import holdfast.core.Request
import holdfast.core.Screen
import holdfast.core.Update
import holdfast.ui.bridge.Answer
import holdfast.ui.bridge.Core
import holdfast.ui.bridge.GaugeLook
import holdfast.ui.bridge.HoldfastModel
import holdfast.ui.bridge.Phone
import holdfast.ui.bridge.Shown
import holdfast.ui.bridge.VibrationRecording
import holdfast.ui.states.allStates
import kotlinx.coroutines.CompletableDeferred
import kotlinx.coroutines.ExperimentalCoroutinesApi
import kotlinx.coroutines.test.TestScope
import kotlinx.coroutines.test.advanceTimeBy
import kotlinx.coroutines.test.runCurrent
import kotlinx.coroutines.test.runTest
import org.junit.Assert.assertEquals
import org.junit.Test

/** The model sends what a person does, in order, and does what the core asks for. */
@OptIn(ExperimentalCoroutinesApi::class)
class HoldfastModelTest {
    private val core = FakeCore()
    private val phone = FakePhone()

    private fun TestScope.model() = HoldfastModel(core, phone, backgroundScope).also { runCurrent() }

    @Test
    fun the_first_screen_is_the_one_the_core_opens_with() = runTest {
        val model = model()
        assertEquals(Shown.Open(core.first, null), model.screen.value)
    }

    @Test
    fun a_core_that_does_not_open_says_why() = runTest {
        core.opening = Answer.Refused("newer data")
        assertEquals(Shown.Stuck("newer data"), model().screen.value)
    }

    @Test
    fun actions_arrive_in_order() = runTest {
        val model = model()
        val sent = listOf(Action.Stroke, Action.Stroke, Action.UnStroke, Action.LetGo)
        sent.forEach(model::send)
        runCurrent()
        assertEquals(sent, core.acted)
    }

    @Test
    fun of_drags_that_wait_only_the_last_is_sent() = runTest {
        val model = model()
        core.gate = CompletableDeferred()
        model.send(Action.Stroke)
        runCurrent()
        for (step in 1..20) model.send(Action.Drag(step.toFloat(), 0f))
        model.send(Action.LetGo)
        core.gate?.complete(Unit)
        runCurrent()
        assertEquals(listOf(Action.Stroke, Action.Drag(20f, 0f), Action.LetGo), core.acted)
    }

    @Test
    fun ticks_come_until_they_are_stopped() = runTest {
        val model = model()
        core.next = update(Request.StartTicks(100u))
        model.send(Action.BeginTest)
        runCurrent()
        advanceTimeBy(1_050)
        assertEquals(10, core.acted.count { it == Action.Tick })
        core.next = update(Request.StopTicks)
        model.send(Action.LetGo)
        runCurrent()
        advanceTimeBy(1_000)
        assertEquals(10, core.acted.count { it == Action.Tick })
    }

    @Test
    fun every_request_of_the_phone_reaches_it() = runTest {
        val model = model()
        core.next = update(
            Request.KeepScreenOn,
            Request.LetScreenSleep,
            Request.Buzz(Buzz.READ_NOW),
            Request.Speak("stop", "en-GB"),
            Request.TakePhoto,
            Request.PickPhoto,
            Request.DecodePicture("a.heic"),
            Request.PickBundle,
            Request.ReadBarometer,
            Request.Share("reports/a.pdf", "application/pdf", "Report"),
        )
        model.send(Action.Resume)
        runCurrent()
        val asked = listOf(
            "keep on", "let sleep", "buzz READ_NOW", "speak stop en-GB", "take", "pick", "decode a.heic", "pick bundle", "barometer",
            "share reports/a.pdf application/pdf Report",
        )
        assertEquals(asked, phone.asked)
    }

    @Test
    fun work_is_done_and_then_told() = runTest {
        val model = model()
        core.next = update(Request.Work(7u))
        model.send(Action.MakeReport)
        runCurrent()
        assertEquals(listOf(7uL), core.worked)
        assertEquals(0.5f, model.share.value)
        assertEquals(Action.WorkDone(7u), core.acted.last())
    }

    @Test
    fun what_the_phone_found_goes_to_the_core() = runTest {
        val model = model()
        model.photo("a.jpg")
        model.photo(null)
        model.notDecoded()
        model.bundle("a.zip")
        model.bundle(null)
        model.pressure(98_600.0)
        model.pressure(null)
        model.gauge(GaugeLook.Needle(19.5))
        model.gauge(GaugeLook.Needle(null))
        model.gauge(GaugeLook.Gone)
        model.vibration(VibrationRecording(100.0, listOf(1.0, -1.0)))
        model.vibration(null)
        runCurrent()
        val told = listOf(
            Action.PhotoTaken("a.jpg"),
            Action.PhotoNotTaken,
            Action.PictureNotDecoded,
            Action.BundleTaken("a.zip"),
            Action.BundleNotTaken,
            Action.BarometerRead(98_600.0),
            Action.BarometerMissing,
            Action.GaugeSeen(19.5),
            Action.GaugeSeen(null),
            Action.GaugeNotSeen,
            Action.VibrationRecorded(100.0, listOf(1.0, -1.0)),
            Action.VibrationNotRecorded,
        )
        assertEquals(told, core.acted)
    }

    @Test
    fun a_refusal_is_shown_over_the_screen_until_it_is_dismissed() = runTest {
        val model = model()
        core.refusal = "The phone is full."
        model.send(Action.Confirm)
        runCurrent()
        assertEquals(Shown.Open(core.first, "The phone is full."), model.screen.value)
        model.dismiss()
        assertEquals(Shown.Open(core.first, null), model.screen.value)
    }

    @Test
    fun a_hold_brings_its_moving_part_and_updates_replace_it() = runTest {
        val model = model()
        val hold = allStates.first { it.name == "hold-watch" }.screen
        core.next = Update(emptyList(), hold, null)
        model.send(Action.LetGo)
        runCurrent()
        assertEquals("14", model.live.value.seconds)
        core.next = Update(emptyList(), null, Live("15", 300f, "", ""))
        model.send(Action.Tick)
        runCurrent()
        assertEquals("15", model.live.value.seconds)
    }

    private fun update(vararg requests: Request) = Update(requests.toList(), null, null)
}

/** Answers with what it was told to, once, and remembers what it was asked. */
private class FakeCore : Core {
    val first: Screen = allStates.first().screen
    val acted = mutableListOf<Action>()
    val worked = mutableListOf<ULong>()
    var opening: Answer<Screen> = Answer.Given(first)
    var next: Update? = null
    var refusal: String? = null
    var gate: CompletableDeferred<Unit>? = null

    override suspend fun open() = opening

    override suspend fun act(action: Action): Answer<Update> {
        acted += action
        gate?.await()
        refusal?.let { return Answer.Refused(it) }
        return Answer.Given(next ?: Update(emptyList(), null, null)).also { next = null }
    }

    override suspend fun work(id: ULong, progress: (Float) -> Unit) {
        worked += id
        progress(0.5f)
    }
}

/** Remembers what it was asked for. */
private class FakePhone : Phone {
    val asked = mutableListOf<String>()

    override fun keepScreenOn() { asked += "keep on" }

    override fun letScreenSleep() { asked += "let sleep" }

    override fun buzz(pattern: Buzz) { asked += "buzz $pattern" }

    override fun speak(text: String, language: String) { asked += "speak $text $language" }

    override fun takePhoto() { asked += "take" }

    override fun pickPhoto() { asked += "pick" }

    override fun decodePicture(path: String) { asked += "decode $path" }

    override fun pickBundle() { asked += "pick bundle" }

    override fun readBarometer() { asked += "barometer" }

    override fun watchGauge(everyMs: Long, unit: String, span: Double) { asked += "watch $everyMs $unit $span" }

    override fun stopWatchingGauge() { asked += "look away" }

    override fun recordVibration(forMs: Long) { asked += "record $forMs" }

    override fun share(path: String, mime: String, title: String) { asked += "share $path $mime $title" }
}
