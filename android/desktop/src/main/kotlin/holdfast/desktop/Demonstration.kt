package holdfast.desktop

import holdfast.core.Action
import holdfast.core.Body
import holdfast.core.Clock
import holdfast.core.Live
import holdfast.core.ReportState
import holdfast.core.Request
import holdfast.core.Screen
import holdfast.ui.bridge.Answer
import holdfast.ui.bridge.RustCore
import holdfast.ui.demo.Deed
import holdfast.ui.demo.DemoPerson
import java.io.File
import java.util.Locale
import kotlin.io.path.createTempDirectory
import kotlin.system.exitProcess
import kotlinx.coroutines.Dispatchers
import kotlinx.coroutines.runBlocking

/**
 * Plays a whole job on the real core without a display and leaves a picture of each screen and the report in the
 * folder named by the first argument; the camera gives the pictures `before.jpg` and `after.jpg` of the folder named by
 * the second.
 */
fun main(arguments: Array<String>) {
    val out = File(arguments.firstOrNull() ?: "out")
    val data = createTempDirectory("holdfast").toFile()
    val camera = arguments.getOrNull(1)?.let(::File)
    val demonstration = Demonstration(data, out, camera)
    val well = runBlocking { demonstration.play() }
    data.deleteRecursively()
    if (!well) exitProcess(1)
    println("${demonstration.pictures} screens in ${File(out, "screens")}, the report in ${File(out, "report.pdf")}")
    exitProcess(0)
}

/** The demo job, with a clock of its own so that no time passes in waiting. */
private class Demonstration(private val data: File, private val out: File, private val camera: File?) {
    private val person = DemoPerson(pictures = camera != null)
    private val film = ArrayDeque(listOf("before.jpg", "after.jpg"))
    private val gallery = Gallery(File(out, "screens"))
    private val core = RustCore(data.path, desktopFacts(Locale.UK), ::clock, Dispatchers.Unconfined, Dispatchers.Unconfined)
    private var mono = 0L
    private var ticking: Long? = null
    private var live = Live("", 0f, "", "")
    private var shared = false

    val pictures get() = gallery.taken

    /** Whether the job got to its report. */
    suspend fun play(): Boolean {
        File(out, "screens").deleteRecursively()
        var screen = given(core.open()) ?: return false
        take(screen)
        repeat(MOST_DEEDS) {
            val deed = person.next(screen)
            val large = larger(screen) ?: return false
            if (deed is Deed.Leave) {
                gallery.take(screen, large, live)
                return shared
            }
            val moving = live
            val after = carryOut(deed, screen) ?: return false
            if (gallery.isOther(screen, after)) gallery.take(screen, large, moving)
            if (after != screen) take(after)
            screen = after
        }
        System.err.println("the demo job did not end: it stands at '${screen.frame.title}'")
        return false
    }

    private fun take(screen: Screen) {
        live = (screen.body as? Body.Hold)?.hold?.live ?: live
    }

    /** The screen as it is on a phone with large type. */
    private suspend fun larger(screen: Screen): Screen? {
        val large = act(Action.TextSize(Gallery.LARGE), screen)
        act(Action.TextSize(1f), screen)
        return large
    }

    private suspend fun carryOut(deed: Deed, screen: Screen): Screen? {
        mono += HAND_MS
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

    private suspend fun wait(ms: Long, screen: Screen): Screen? {
        val every = ticking ?: ms
        var now = screen
        repeat((ms / every).toInt().coerceAtLeast(1)) {
            mono += every
            if (ticking != null) now = act(Action.Tick, now) ?: return null
        }
        return now
    }

    private suspend fun act(action: Action, screen: Screen): Screen? {
        val update = given(core.act(action)) ?: return null
        update.live?.let { live = it }
        var now = update.screen ?: screen
        for (request in update.requests) {
            when (request) {
                is Request.StartTicks -> ticking = request.everyMs.toLong()
                is Request.StopTicks -> ticking = null
                is Request.Work -> {
                    if ((now.body as? Body.Report)?.report?.state is ReportState.Working) gallery.take(now, now, live)
                    core.work(request.id) {}
                    now = act(Action.WorkDone(request.id), now) ?: return null
                }
                is Request.Share -> {
                    data.resolve(request.path).copyTo(File(out, "report.pdf"), overwrite = true)
                    shared = true
                }
                is Request.TakePhoto -> now = act(photographed(), now) ?: return null
                else -> Unit
            }
        }
        return now
    }

    /** The next picture of the camera's, as a copy that the core may take. */
    private fun photographed(): Action {
        val picture = film.removeFirstOrNull()?.let { camera?.resolve(it) }?.takeIf { it.exists() } ?: return Action.PhotoNotTaken
        return Action.PhotoTaken(picture.copyTo(data.resolve("taken.jpg"), overwrite = true).path)
    }

    private fun <T> given(answer: Answer<T>): T? = when (answer) {
        is Answer.Given -> answer.value
        is Answer.Refused -> {
            System.err.println(answer.words)
            null
        }
    }

    /** A morning in March, invented. */
    private fun clock() = Clock(wallMs = 1_773_651_600_000 + mono, offsetMin = 0, monoMs = mono, bootId = "demo")

    private companion object {
        const val MOST_DEEDS = 2_000

        /** How far a finger reaches to each side, scene units. */
        const val FINGER = 20f

        /** How long a hand takes for one thing. */
        const val HAND_MS = 700L
    }
}
