package holdfast.app

import android.app.Application
import holdfast.app.phone.AndroidPhone
import holdfast.app.phone.phoneClock
import holdfast.app.phone.phoneFacts
import holdfast.ui.bridge.HoldfastModel
import holdfast.ui.bridge.RustCore
import java.io.File
import kotlinx.coroutines.CoroutineDispatcher
import kotlinx.coroutines.CoroutineScope
import kotlinx.coroutines.Dispatchers
import kotlinx.coroutines.ExperimentalCoroutinesApi
import kotlinx.coroutines.MainScope

/** Holds what outlives the activity: the core, the model of its screens, and the phone's services. */
open class HoldfastApplication : Application() {
    /** The folder with all that was recorded. */
    val dataFolder: File by lazy { File(filesDir, "holdfast").apply { mkdirs() } }

    /** The phone's services. */
    val phone: AndroidPhone by lazy { AndroidPhone(this, dataFolder) }

    /** Where files are copied and decoded. */
    val io: CoroutineDispatcher by lazy { wideDispatcher() }

    /** What the screens show and send. */
    val model: HoldfastModel by lazy {
        val core = RustCore(dataFolder.path, phoneFacts(this), { phoneClock(this) }, serialDispatcher(), wideDispatcher())
        HoldfastModel(core, phone, scope()).also { phone.answers = it }
    }

    /** Runs the core's calls, one at a time, off the main thread. */
    @OptIn(ExperimentalCoroutinesApi::class)
    protected open fun serialDispatcher(): CoroutineDispatcher = Dispatchers.Default.limitedParallelism(1)

    /** Runs long work. */
    protected open fun wideDispatcher(): CoroutineDispatcher = Dispatchers.IO

    /** Runs the model, on the main thread. */
    protected open fun scope(): CoroutineScope = MainScope()
}
