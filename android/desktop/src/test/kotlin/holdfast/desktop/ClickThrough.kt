package holdfast.desktop

import holdfast.core.Body
import holdfast.core.Screen
import holdfast.ui.bridge.HoldfastModel
import holdfast.ui.bridge.Shown
import holdfast.ui.demo.Deed
import holdfast.ui.demo.DemoPerson
import java.io.File
import kotlin.concurrent.thread
import kotlin.io.path.createTempDirectory
import kotlin.system.exitProcess

/**
 * Does a whole job in the real window with a real mouse and keyboard, in real time, and leaves the shared report
 * in the folder named by the one argument. It needs a display that nobody else uses, such as Xvfb.
 */
fun main(arguments: Array<String>) {
    val out = File(arguments.firstOrNull() ?: "out").apply { mkdirs() }
    val data = createTempDirectory("holdfast").toFile()
    val report = File(out, "clicked.pdf").apply { delete() }
    val phone = DesktopPhone(data, Fixed(report))
    val model = desktopModel(data, phone)
    thread(isDaemon = true) {
        val ended = runCatching { play(model, Mouse()) }
        ended.exceptionOrNull()?.printStackTrace()
        data.deleteRecursively()
        val well = ended.isSuccess && report.length() > 0
        println(if (well) "1 passed, 0 failed: the job ends with ${report.length()} bytes of report" else "0 passed, 1 failed")
        exitProcess(if (well) 0 else 1)
    }
    openWindow(model, phone)
}

private fun play(model: HoldfastModel, mouse: Mouse) {
    val person = DemoPerson()
    var deeds = 0
    while (true) {
        val shown = model.screen.value
        check(shown !is Shown.Stuck) { "the core did not open" }
        if (shown !is Shown.Open) {
            Thread.sleep(SHORT_MS)
            continue
        }
        val deed = person.next(shown.screen)
        println("${++deeds} ${shown.screen.frame.title}: ${deed::class.simpleName}")
        when (deed) {
            is Deed.Wait -> Thread.sleep(deed.ms)
            is Deed.Leave -> return
            else -> {
                mouse.carryOut(deed, shown.screen)
                awaitAnswer(model, shown)
            }
        }
        Thread.sleep(SHORT_MS)
    }
}

private fun Mouse.carryOut(deed: Deed, screen: Screen) = when (deed) {
    is Deed.Tap -> click(deed.button.label)
    is Deed.Tick -> tick(deed.caution.word)
    is Deed.Choose -> click(deed.option.label, deed.nth)
    is Deed.Write -> write(deed.field.label, deed.text)
    is Deed.Drag -> clickOn((screen.body as Body.Hold).hold.gauge, deed.x, deed.y)
    is Deed.Mark -> clickOn(deed.photo, deed.x, deed.y)
    is Deed.Sign -> draw(deed.pad, deed.stroke)
    is Deed.Wait, is Deed.Leave -> Unit
}

/** A person sees that a tap was taken before the next; on a busy machine that can take a while. Some change nothing. */
private fun awaitAnswer(model: HoldfastModel, before: Shown) {
    val end = System.nanoTime() + PATIENCE_NS
    while (model.screen.value == before && System.nanoTime() < end) Thread.sleep(SHORT_MS / 4)
}

private const val PATIENCE_NS = 3_000_000_000L
private const val SHORT_MS = 400L

/** Always the same file. */
private class Fixed(private val file: File) : FilePicker {
    override fun open(): File? = null

    override fun save(title: String, name: String) = file
}
