package holdfast.app

import kotlin.system.exitProcess
import org.junit.runner.Description
import org.junit.runner.JUnitCore
import org.junit.runner.notification.Failure
import org.junit.runner.notification.RunListener

/** Runs the named test classes, prints each test with its time, and ends with the counts. */
fun main(classes: Array<String>) {
    val core = JUnitCore()
    core.addListener(Teller())
    val result = core.run(*classes.map { Class.forName(it) }.toTypedArray())
    println("${result.runCount - result.failureCount} passed, ${result.failureCount} failed, ${result.ignoreCount} skipped")
    exitProcess(if (result.wasSuccessful() && result.runCount > 0) 0 else 1)
}

private class Teller : RunListener() {
    private var begin = 0L
    private var well = true

    override fun testStarted(description: Description) {
        begin = System.nanoTime()
        well = true
    }

    override fun testFailure(failure: Failure) {
        well = false
        val trace = failure.trace.lines().take(MOST_LINES).joinToString("\n")
        println("FAIL ${failure.description.displayName}\n$trace")
    }

    override fun testFinished(description: Description) {
        val milliseconds = (System.nanoTime() - begin) / 1_000_000
        println("${if (well) "ok  " else "FAIL"} ${description.displayName} $milliseconds ms")
    }

    private companion object {
        const val MOST_LINES = 25
    }
}
