package holdfast.ui.bridge

import holdfast.core.Action
import holdfast.core.Clock
import holdfast.core.Holdfast
import holdfast.core.HoldfastException
import holdfast.core.PhoneFacts
import holdfast.core.Progress
import holdfast.core.Screen
import holdfast.core.Update
import kotlinx.coroutines.CoroutineDispatcher
import kotlinx.coroutines.withContext

/**
 * The real core. [serial] runs one call at a time and in order (`limitedParallelism(1)`), never the main thread;
 * [wide] is for long work, beside it.
 */
class RustCore(
    private val dataFolder: String,
    private val facts: PhoneFacts,
    private val clock: () -> Clock,
    private val serial: CoroutineDispatcher,
    private val wide: CoroutineDispatcher,
) : Core {
    private var handle: Holdfast? = null

    override suspend fun open(): Answer<Screen> = asked {
        val core = handle ?: Holdfast.open(dataFolder, facts, clock()).also { handle = it }
        core.screen()
    }

    override suspend fun act(action: Action): Answer<Update> {
        val at = clock()
        return asked { opened().act(action, at) }
    }

    override suspend fun work(id: ULong, progress: (Float) -> Unit) {
        val work = withContext(serial) { opened().work(id) } ?: return
        withContext(wide) { work.use { it.run(Told(progress)) } }
    }

    private fun opened(): Holdfast = checkNotNull(handle) { "the core is used before it is open" }

    private suspend fun <T> asked(call: () -> T): Answer<T> = withContext(serial) {
        try {
            Answer.Given(call())
        } catch (refusal: HoldfastException) {
            Answer.Refused(refusal.words())
        }
    }
}

private fun HoldfastException.words(): String = when (this) {
    is HoldfastException.CorrectEntry -> text
    is HoldfastException.FreeSpace -> text
    is HoldfastException.UpdateApp -> text
    is HoldfastException.TryAgain -> text
    is HoldfastException.ExportData -> text
}

/** Passes on how far a work is, from whatever thread it runs on. */
private class Told(private val progress: (Float) -> Unit) : Progress {
    override fun at(permille: UShort) = progress(permille.toInt() / 1000f)
}
