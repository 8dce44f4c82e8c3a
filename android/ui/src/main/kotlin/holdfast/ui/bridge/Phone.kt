package holdfast.ui.bridge

import holdfast.core.Buzz

/** What only a phone can do: one method for each request of the core but ticks and work, which need no phone. */
interface Phone {
    fun keepScreenOn()

    fun letScreenSleep()

    fun buzz(pattern: Buzz)

    /** Says [text] aloud, cutting off what is being said; [language] is a BCP 47 tag. */
    fun speak(text: String, language: String)

    /** Opens the camera; the photo comes by [Answers.photo]. */
    fun takePhoto()

    /** Opens the gallery; the photo comes by [Answers.photo]. */
    fun pickPhoto()

    /** Reads the pressure sensor once; the reading comes by [Answers.pressure]. */
    fun readBarometer()

    /** Hands a file to another program. */
    fun share(path: String, mime: String, title: String)
}

/** Where a phone puts what it was asked for. */
interface Answers {
    /** The path of a photo, or null if none came. */
    fun photo(path: String?)

    /** Absolute pressure in Pa, or null if there is no sensor. */
    fun pressure(pa: Double?)
}
