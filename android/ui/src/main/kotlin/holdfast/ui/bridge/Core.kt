package holdfast.ui.bridge

import holdfast.core.Action
import holdfast.core.Screen
import holdfast.core.Update

/** The core as the screens know it: actions in, screens out. */
interface Core {
    /** Opens the data and gives the first screen. */
    suspend fun open(): Answer<Screen>

    /** Takes in what a person did or what the phone has to tell. */
    suspend fun act(action: Action): Answer<Update>

    /** Does the long work of this number, telling its share done, and comes back when it has ended, well or not. */
    suspend fun work(id: ULong, progress: (Float) -> Unit)
}

/** What the core says, or why it can't. */
sealed interface Answer<out T> {
    /** It did what was asked. */
    data class Given<T>(val value: T) : Answer<T>

    /** It could not: the words are for the person. */
    data class Refused(val words: String) : Answer<Nothing>
}
