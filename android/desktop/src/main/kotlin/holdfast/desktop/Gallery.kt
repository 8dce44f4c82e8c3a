package holdfast.desktop

import androidx.compose.runtime.CompositionLocalProvider
import androidx.compose.ui.ImageComposeScene
import androidx.compose.ui.unit.Density
import holdfast.core.Body
import holdfast.core.Live
import holdfast.core.Screen
import holdfast.ui.ScreenView
import holdfast.ui.scene.LocalPictureReader
import holdfast.ui.theme.HoldfastTheme
import holdfast.ui.theme.Light
import java.io.File
import kotlinx.coroutines.Dispatchers
import kotlinx.coroutines.flow.MutableStateFlow
import org.jetbrains.skia.EncodedImageFormat

/** Takes pictures of screens: by day, by night, in large type, lying on its side, and whole, with what would have to be scrolled to. */
internal class Gallery(private val folder: File) {
    private val alike = mutableMapOf<String, Int>()

    /** How many screens were taken. */
    var taken = 0
        private set

    /** Whether two screens are different places, not the same with something typed. */
    fun isOther(one: Screen, two: Screen) = place(one) != place(two)

    /**
     * The first screen of a kind is taken in every look, the next ones by day, and of many alike only some; [large] is
     * the same screen as the core lays it out for large type.
     */
    fun take(screen: Screen, large: Screen, live: Live, kind: String = kind(screen.body)) {
        val before = alike.merge(kind, 1, Int::plus) ?: 1
        if (before > MOST_ALIKE) return
        taken += 1
        val name = "%03d-%s.png".format(taken, kind)
        val looks = if (before == 1) Look.entries else listOf(Look.Day)
        looks.forEach { look -> write(File(folder, "${look.name.lowercase()}/$name"), draw(if (look == Look.Large) large else screen, live, look)) }
    }

    private fun place(screen: Screen): List<Any> {
        val body = screen.body
        val part = when (body) {
            is Body.Hold -> body.hold.phase::class
            is Body.Test -> body.test.stage::class
            is Body.YesNo -> body.ask.question
            else -> Unit
        }
        return listOf(body::class, screen.frame.title, part)
    }

    private fun kind(body: Body): String {
        val part = when (body) {
            is Body.Hold -> body.hold.phase::class.simpleName
            is Body.Test -> body.test.stage::class.simpleName
            else -> null
        }
        return listOfNotNull(body::class.simpleName, part).joinToString("-").lowercase()
    }

    private fun draw(screen: Screen, live: Live, look: Look): ByteArray {
        val scene = ImageComposeScene(
            width = (look.widthDp * DENSITY).toInt(),
            height = (look.heightDp * DENSITY).toInt(),
            density = Density(DENSITY, look.fontScale),
            coroutineContext = Dispatchers.Unconfined,
        ) {
            HoldfastTheme(look.light, ReportFont) {
                CompositionLocalProvider(LocalPictureReader provides PictureFiles) {
                    ScreenView(screen, MutableStateFlow(live)) {}
                }
            }
        }
        try {
            scene.render()
            val image = scene.render(SETTLED_NS)
            return image.encodeToData(EncodedImageFormat.PNG)?.bytes ?: ByteArray(0)
        } finally {
            scene.close()
        }
    }

    private fun write(file: File, bytes: ByteArray) {
        file.parentFile?.mkdirs()
        file.writeBytes(bytes)
    }

    private enum class Look(val light: Light, val fontScale: Float, val widthDp: Int, val heightDp: Int) {
        Day(Light.Day, 1f, 411, 891),
        Night(Light.Night, 1f, 411, 891),
        Large(Light.Day, LARGE, 411, 891),
        Side(Light.Day, 1f, 891, 411),
        Whole(Light.Day, 1f, 411, 6_000),
    }

    companion object {
        /** How much larger than usual large type is. */
        const val LARGE = 1.5f

        private const val MOST_ALIKE = 3

        private const val DENSITY = 2f

        /** A second later, when nothing moves any more. */
        private const val SETTLED_NS = 1_000_000_000L
    }
}
