package holdfast.ui.bridge

import holdfast.core.Action
import holdfast.core.Body
import holdfast.core.Live
import holdfast.core.Request
import holdfast.core.Screen
import holdfast.core.Update
import kotlinx.coroutines.CoroutineScope
import kotlinx.coroutines.Job
import kotlinx.coroutines.channels.Channel
import kotlinx.coroutines.delay
import kotlinx.coroutines.flow.MutableStateFlow
import kotlinx.coroutines.flow.StateFlow
import kotlinx.coroutines.flow.asStateFlow
import kotlinx.coroutines.isActive
import kotlinx.coroutines.launch

/**
 * Holds what is to be seen, sends what a person does, and does what the core asks for. It outlives rotations; after
 * the process dies the core itself knows where the person was. [scope] runs on the thread that draws.
 */
class HoldfastModel(
    private val core: Core,
    private val phone: Phone,
    private val scope: CoroutineScope,
) : Answers {
    private val shown = MutableStateFlow<Shown>(Shown.Opening)
    private val moving = MutableStateFlow(Still)
    private val actions = Channel<Action>(Channel.UNLIMITED)
    private val workShare = MutableStateFlow(0f)
    private var ticks: Job? = null
    private var drag: Action.Drag? = null

    /** What is to be seen. */
    val screen: StateFlow<Shown> = shown.asStateFlow()

    /** The part of it that moves. */
    val live: StateFlow<Live> = moving.asStateFlow()

    /** How much of the work that the person waits for is done, 0 to 1. */
    val share: StateFlow<Float> = workShare.asStateFlow()

    init {
        scope.launch {
            when (val opened = core.open()) {
                is Answer.Given -> {
                    show(opened.value)
                    for (action in actions) perform(action)
                }
                is Answer.Refused -> shown.value = Shown.Stuck(opened.words)
            }
        }
    }

    /** Sends an action; they arrive in order. Of drags that wait only the last is sent: the finger has moved on. */
    fun send(action: Action) {
        if (action is Action.Drag) {
            val waiting = drag != null
            drag = action
            if (waiting) return
        }
        actions.trySend(action)
    }

    /** The refusal shown across the screen has been read. */
    fun dismiss() {
        val now = shown.value
        if (now is Shown.Open) shown.value = now.copy(refusal = null)
    }

    override fun photo(path: String?) = send(path?.let { Action.PhotoTaken(it) } ?: Action.PhotoNotTaken)

    override fun notDecoded() = send(Action.PictureNotDecoded)

    override fun bundle(path: String?) = send(path?.let { Action.BundleTaken(it) } ?: Action.BundleNotTaken)

    override fun pressure(pa: Double?) = send(pa?.let { Action.BarometerRead(it) } ?: Action.BarometerMissing)

    override fun gauge(look: GaugeLook) = send(
        when (look) {
            is GaugeLook.Needle -> Action.GaugeSeen(look.vacuum)
            is GaugeLook.Gone -> Action.GaugeNotSeen
        },
    )

    override fun vibration(recording: VibrationRecording?) =
        send(recording?.let { Action.VibrationRecorded(it.hz, it.mg) } ?: Action.VibrationNotRecorded)

    private suspend fun perform(queued: Action) {
        val action = if (queued is Action.Drag) drag.also { drag = null } ?: return else queued
        when (val answer = core.act(action)) {
            is Answer.Given -> take(answer.value)
            is Answer.Refused -> {
                val now = shown.value
                if (now is Shown.Open) shown.value = now.copy(refusal = answer.words)
            }
        }
    }

    private fun take(update: Update) {
        update.screen?.let(::show)
        update.live?.let { moving.value = it }
        update.requests.forEach(::fulfil)
    }

    private fun show(screen: Screen) {
        val body = screen.body
        moving.value = if (body is Body.Hold) body.hold.live else Still
        shown.value = Shown.Open(screen, refusal = null)
    }

    private fun fulfil(request: Request) = when (request) {
        is Request.StartTicks -> startTicks(request.everyMs.toLong())
        is Request.StopTicks -> stopTicks()
        is Request.KeepScreenOn -> phone.keepScreenOn()
        is Request.LetScreenSleep -> phone.letScreenSleep()
        is Request.Buzz -> phone.buzz(request.pattern)
        is Request.Speak -> phone.speak(request.text, request.language)
        is Request.TakePhoto -> phone.takePhoto()
        is Request.PickPhoto -> phone.pickPhoto()
        is Request.DecodePicture -> phone.decodePicture(request.path)
        is Request.PickBundle -> phone.pickBundle()
        is Request.ReadBarometer -> phone.readBarometer()
        is Request.WatchGauge -> phone.watchGauge(request.everyMs.toLong(), request.unit, request.span)
        is Request.StopWatchingGauge -> phone.stopWatchingGauge()
        is Request.RecordVibration -> phone.recordVibration(request.forMs.toLong())
        is Request.Share -> phone.share(request.path, request.mime, request.title)
        is Request.Work -> work(request.id)
    }

    private fun startTicks(everyMs: Long) {
        stopTicks()
        ticks = scope.launch {
            while (isActive) {
                delay(everyMs)
                actions.trySend(Action.Tick)
            }
        }
    }

    private fun stopTicks() {
        ticks?.cancel()
        ticks = null
    }

    private fun work(id: ULong) {
        scope.launch {
            workShare.value = 0f
            core.work(id) { workShare.value = it }
            send(Action.WorkDone(id))
        }
    }
}

/** What is to be seen. */
sealed interface Shown {
    /** The core is being opened. */
    data object Opening : Shown

    /** The core can't be opened: the words say why and what to do. */
    data class Stuck(val words: String) : Shown

    /** A screen, and why the last action was refused, if it was. */
    data class Open(val screen: Screen, val refusal: String?) : Shown
}

private val Still = Live(seconds = "", needleDeg = 0f, reading = "", cue = "")
