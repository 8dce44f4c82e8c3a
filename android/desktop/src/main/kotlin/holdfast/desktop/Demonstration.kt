package holdfast.desktop

import holdfast.core.Action
import holdfast.core.Body
import holdfast.core.Pick
import holdfast.core.Place
import holdfast.core.ReportState
import holdfast.core.Request
import holdfast.core.Screen
import holdfast.core.TestStage
import holdfast.ui.bridge.RustCore
import holdfast.ui.demo.Deed
import holdfast.ui.demo.DemoClock
import holdfast.ui.demo.DemoHand
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
    println("${demonstration.pictures} screens in ${File(out, "screens")}, the report in ${File(out, REPORT)}, on Letter in ${File(out, LETTER)}")
    exitProcess(0)
}

private const val REPORT = "report.pdf"
private const val LETTER = "report-letter.pdf"

/** The demo job, and a picture of each of its screens. */
private class Demonstration(private val data: File, private val out: File, private val camera: File?) {
    private val person = DemoPerson(pictures = camera != null)
    private val film = ArrayDeque(listOf("before.jpg", "after.jpg"))
    private val gallery = Gallery(File(out, "screens"))
    private val clock = DemoClock()
    private val core = RustCore(data.path, desktopFacts(Locale.UK), clock::now, Dispatchers.Unconfined, Dispatchers.Unconfined)
    private val hand = DemoHand(core, clock, ::answer)
    private val shared = mutableSetOf<String>()
    private var report = REPORT
    private var asked = false

    val pictures get() = gallery.taken

    /** Whether the job got to its report. */
    suspend fun play(): Boolean {
        File(out, "screens").deleteRecursively()
        var screen = hand.open() ?: return false
        repeat(MOST_DEEDS) {
            val deed = person.next(screen)
            val large = larger(screen) ?: return false
            if (deed is Deed.Leave) {
                gallery.take(screen, large, hand.live)
                onLetter(screen)
                visit(screen)
                return shared == setOf(REPORT, LETTER)
            }
            outlook(screen)
            val moving = hand.live
            val after = hand.carryOut(deed, screen) ?: return false
            if (gallery.isOther(screen, after)) gallery.take(screen, large, moving)
            screen = after
        }
        System.err.println("the demo job did not end: it stands at '${screen.frame.title}'")
        return false
    }

    /** The same report on the other paper. */
    private suspend fun onLetter(last: Screen) {
        report = LETTER
        val steps = listOf(Action.Go(Place.REPORT), Action.Pick(Pick.Paper("letter")), Action.MakeReport, Action.ShareReport)
        steps.fold(last) { screen, action -> hand.act(action, screen) ?: return }
    }

    /** What the job itself does not lead through; the settings show what it taught once it is closed. */
    private suspend fun visit(last: Screen) {
        listOf(Place.CIRCUIT, Place.LOG).forEach { visit(it, last) }
        val finding = hand.act(Action.Go(Place.FINDING), last) ?: return
        val closed = hand.act(Action.CloseJob, finding) ?: return
        listOf(Place.SETTINGS, Place.JOBS).forEach { visit(it, closed) }
    }

    private suspend fun visit(place: Place, from: Screen) {
        val there = hand.act(Action.Go(place), from)
        val large = there?.let { larger(it) }
        if (there != null && large != null) gallery.take(there, large, hand.live, "after-${place.name.lowercase()}")
    }

    /** What each result of the first test that the job comes to would change. */
    private suspend fun outlook(screen: Screen) {
        val body = screen.body
        if (asked || body !is Body.Test || body.test.stage !is TestStage.Brief) return
        asked = true
        val outlook = hand.act(Action.WhatIf, screen) ?: return
        gallery.take(outlook, outlook, hand.live, "what-if")
    }

    /** The screen as it is on a phone with large type. */
    private suspend fun larger(screen: Screen): Screen? {
        val large = hand.act(Action.TextSize(Gallery.LARGE), screen)
        hand.act(Action.TextSize(1f), screen)
        return large
    }

    private fun answer(request: Request, screen: Screen): Action? {
        when (request) {
            is Request.Work -> {
                val body = screen.body
                if (body is Body.Report && body.report.state is ReportState.Working) gallery.take(screen, screen, hand.live)
            }
            is Request.Share -> {
                data.resolve(request.path).copyTo(File(out, report), overwrite = true)
                shared += report
            }
            is Request.TakePhoto -> return photographed()
            else -> Unit
        }
        return null
    }

    /** The next picture of the camera's, as a copy that the core may take. */
    private fun photographed(): Action {
        val picture = film.removeFirstOrNull()?.let { camera?.resolve(it) }?.takeIf { it.exists() } ?: return Action.PhotoNotTaken
        return Action.PhotoTaken(picture.copyTo(data.resolve("taken.jpg"), overwrite = true).path)
    }

    private companion object {
        const val MOST_DEEDS = 2_000
    }
}
