package holdfast.app

import holdfast.app.phone.phoneClock
import holdfast.app.phone.phoneFacts
import holdfast.ui.bridge.HoldfastModel
import holdfast.ui.bridge.RustCore
import kotlinx.coroutines.CoroutineDispatcher
import kotlinx.coroutines.Dispatchers

/** The app with all its work on the simulated main thread, so that a test knows when it is done. */
internal class TestApplication : HoldfastApplication() {
    override fun serialDispatcher(): CoroutineDispatcher = Dispatchers.Main.immediate

    override fun wideDispatcher(): CoroutineDispatcher = Dispatchers.Main.immediate

    /** What a process started anew would show: nothing but the data folder is left of the old one. */
    fun newProcess(): HoldfastModel {
        val core = RustCore(dataFolder.path, phoneFacts(this), { phoneClock(this) }, serialDispatcher(), wideDispatcher())
        return HoldfastModel(core, phone, scope())
    }
}
