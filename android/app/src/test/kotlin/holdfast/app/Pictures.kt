package holdfast.app

import android.app.Activity
import android.graphics.Bitmap
import android.graphics.BitmapFactory
import android.graphics.Canvas
import android.graphics.Color
import java.io.File
import kotlin.math.abs

/**
 * What the activity's window shows, as a picture. On this canvas, and not on a screen, a field of several lines whose
 * text wraps leaves a clip behind that cuts the right margin of what is drawn after it.
 */
internal fun picture(activity: Activity): Bitmap {
    val view = activity.window.decorView
    val bitmap = Bitmap.createBitmap(view.width, view.height, Bitmap.Config.ARGB_8888)
    view.draw(Canvas(bitmap))
    return bitmap
}

/** Keeps pictures for people to look at, and holds them against those that were looked at and found good. */
internal object Golden {
    private val good = File(property("holdfast.golden"))
    private val seen = File(property("holdfast.pictures"))
    private val recording = System.getProperty("holdfast.record") == "yes"

    /** A third of the pixels is enough to tell screens apart, and keeps the project small. */
    private const val SHRINK = 3

    /** A pixel differs when one of its colours is off by more than this, of 255. */
    private const val PIXEL = 40

    /** So many pixels of a thousand may differ: edges of letters move with the graphics library's version. */
    private const val PERMILLE = 10

    /** Keeps a picture for people to look at. */
    fun keep(name: String, whole: Bitmap) = write(File(seen, "$name.png"), whole)

    /** Keeps a file for people and other programs to look at. */
    fun keepFile(name: String, file: File) {
        file.copyTo(File(seen, name), overwrite = true)
    }

    /** What is wrong with this picture, or null. A picture that nobody has looked at yet is wrong too. */
    fun check(name: String, whole: Bitmap): String? {
        keep(name, whole)
        val small = Bitmap.createScaledBitmap(whole, whole.width / SHRINK, whole.height / SHRINK, true)
        val file = File(good, "$name.png")
        if (recording) {
            write(file, small)
            return null
        }
        if (!file.exists()) return "$name: there is no golden picture; look at the new one, then record it"
        val old = BitmapFactory.decodeFile(file.path)
        if (old.width != small.width || old.height != small.height) return "$name: the size differs from the golden picture's"
        val permille = differing(old, small)
        return if (permille > PERMILLE) "$name: $permille of 1,000 pixels differ from the golden picture" else null
    }

    private fun differing(old: Bitmap, new: Bitmap): Int {
        val count = old.width * old.height
        val before = IntArray(count).also { old.getPixels(it, 0, old.width, 0, 0, old.width, old.height) }
        val after = IntArray(count).also { new.getPixels(it, 0, new.width, 0, 0, new.width, new.height) }
        return before.indices.count { differs(before[it], after[it]) } * 1000 / count
    }

    private fun differs(a: Int, b: Int): Boolean = listOf(
        Color.red(a) - Color.red(b),
        Color.green(a) - Color.green(b),
        Color.blue(a) - Color.blue(b),
    ).any { abs(it) > PIXEL }

    private fun write(file: File, bitmap: Bitmap) {
        file.parentFile?.mkdirs()
        file.outputStream().use { bitmap.compress(Bitmap.CompressFormat.PNG, 100, it) }
    }

    private fun property(name: String) = checkNotNull(System.getProperty(name)) { "no -D$name" }
}
