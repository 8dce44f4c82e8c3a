package holdfast.desktop

import androidx.compose.foundation.background
import androidx.compose.foundation.isSystemInDarkTheme
import androidx.compose.foundation.layout.Box
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.runtime.CompositionLocalProvider
import androidx.compose.runtime.collectAsState
import androidx.compose.runtime.getValue
import androidx.compose.ui.Modifier
import androidx.compose.ui.input.key.Key
import androidx.compose.ui.input.key.KeyEventType
import androidx.compose.ui.input.key.key
import androidx.compose.ui.input.key.type
import androidx.compose.ui.unit.DpSize
import androidx.compose.ui.unit.dp
import androidx.compose.ui.window.Window
import androidx.compose.ui.window.application
import androidx.compose.ui.window.rememberWindowState
import holdfast.core.Action
import holdfast.core.PhoneFacts
import holdfast.core.PhonePart
import holdfast.ui.HoldfastScreens
import holdfast.ui.backAction
import holdfast.ui.bridge.HoldfastModel
import holdfast.ui.bridge.RustCore
import holdfast.ui.components.Words
import holdfast.ui.scene.LocalPictureReader
import holdfast.ui.theme.HoldfastTheme
import holdfast.ui.theme.Light
import holdfast.ui.theme.Space
import holdfast.ui.theme.Theme
import java.io.File
import java.util.Locale
import kotlinx.coroutines.Dispatchers
import kotlinx.coroutines.ExperimentalCoroutinesApi
import kotlinx.coroutines.MainScope

/** Opens the app in a window of a phone's size; the one argument is the folder for its data. */
fun main(arguments: Array<String>) {
    val dataFolder = File(arguments.firstOrNull() ?: "holdfast-data").apply { mkdirs() }
    val phone = DesktopPhone(dataFolder, Dialogs)
    openWindow(desktopModel(dataFolder, phone), phone)
}

/** The core on its background thread, and the model of its screens. */
@OptIn(ExperimentalCoroutinesApi::class)
internal fun desktopModel(dataFolder: File, phone: DesktopPhone): HoldfastModel {
    val serial = Dispatchers.Default.limitedParallelism(1)
    val core = RustCore(dataFolder.path, desktopFacts(), ::desktopClock, serial, Dispatchers.IO)
    val model = HoldfastModel(core, phone, MainScope()).also { phone.answers = it }
    model.send(Action.Resume)
    return model
}

/** Opens the window and stays until it is closed. */
internal fun openWindow(model: HoldfastModel, phone: DesktopPhone) {
    application {
        val shown by model.screen.collectAsState()
        Window(
            onCloseRequest = ::exitApplication,
            state = rememberWindowState(size = DpSize(420.dp, 880.dp)),
            title = "Holdfast",
            onPreviewKeyEvent = { event ->
                val back = shown.backAction()
                val escape = event.type == KeyEventType.KeyUp && event.key == Key.Escape
                if (escape && back != null) model.send(back)
                escape && back != null
            },
        ) {
            DesktopScreens(model, phone)
        }
    }
}

/** What this machine can do of what a phone can. */
internal fun desktopFacts(locale: Locale = Locale.getDefault()) = PhoneFacts(
    locale = locale.toLanguageTag(),
    parts = listOf(PhonePart.CAMERA, PhonePart.GALLERY, PhonePart.SPEECH, PhonePart.BUZZER, PhonePart.SHARE),
    fonts = fontFiles(),
)

@Composable
private fun DesktopScreens(model: HoldfastModel, phone: DesktopPhone) {
    HoldfastTheme(if (isSystemInDarkTheme()) Light.Night else Light.Day, ReportFont) {
        CompositionLocalProvider(LocalPictureReader provides PictureFiles) {
            Column {
                Box(Modifier.weight(1f)) { HoldfastScreens(model) }
                PhoneLine(phone)
            }
        }
    }
}

/** What a phone would say, and how it would buzz, under the screen. */
@Composable
private fun PhoneLine(phone: DesktopPhone) {
    val line by phone.line.collectAsState()
    Box(Modifier.fillMaxWidth().background(Theme.palette.ink).padding(horizontal = Space.margin, vertical = Space.hair)) {
        Words(line.ifEmpty { "–" }, style = Theme.type.small, colour = Theme.palette.paper)
    }
}
