package holdfast.desktop

import java.awt.FileDialog
import java.awt.Frame
import java.io.File

/** Asks which file is meant. */
internal interface FilePicker {
    /** A file to read, or null; the system's dialog says that one is to be chosen. */
    fun open(): File?

    /** A file to write what has this title, or null. */
    fun save(title: String, name: String): File?
}

/** The system's own dialogs. */
internal object Dialogs : FilePicker {
    override fun open() = ask(FileDialog(null as Frame?, "", FileDialog.LOAD))

    override fun save(title: String, name: String) =
        ask(FileDialog(null as Frame?, title, FileDialog.SAVE).apply { file = name })

    private fun ask(dialog: FileDialog): File? {
        dialog.isVisible = true
        return dialog.files.firstOrNull()
    }
}
