package holdfast.app

import android.content.Intent
import android.os.Bundle
import android.view.KeyEvent
import androidx.activity.ComponentActivity
import androidx.activity.compose.BackHandler
import androidx.activity.compose.setContent
import androidx.activity.enableEdgeToEdge
import androidx.compose.foundation.isSystemInDarkTheme
import androidx.compose.runtime.Composable
import androidx.compose.runtime.CompositionLocalProvider
import androidx.compose.runtime.collectAsState
import androidx.compose.runtime.getValue
import androidx.compose.ui.text.font.Font
import androidx.compose.ui.text.font.FontFamily
import androidx.compose.ui.text.font.FontWeight
import androidx.lifecycle.lifecycleScope
import holdfast.app.phone.Errands
import holdfast.app.phone.PictureFiles
import holdfast.app.phone.lit
import holdfast.core.Action
import holdfast.ui.HoldfastScreens
import holdfast.ui.backAction
import holdfast.ui.bridge.HoldfastModel
import holdfast.ui.hardwareKeyAction
import holdfast.ui.scene.LocalPictureReader
import holdfast.ui.theme.HoldfastTheme
import holdfast.ui.theme.Light
import kotlinx.coroutines.launch

/** The one window: draws the model's screens and runs the errands that need a window. */
class MainActivity : ComponentActivity() {
    private val app get() = application as HoldfastApplication
    private lateinit var errands: Errands

    override fun onCreate(savedInstanceState: Bundle?) {
        enableEdgeToEdge()
        super.onCreate(savedInstanceState)
        errands = Errands(this, app.dataFolder, app.model, app.io)
        if (savedInstanceState == null) errands.shared(intent)
        lifecycleScope.launch { for (errand in app.phone.errands) errands.run(errand) }
        lifecycleScope.launch { app.phone.lit.collect { window.lit(it) } }
        setContent { Content(app.model) }
    }

    override fun onNewIntent(intent: Intent) {
        super.onNewIntent(intent)
        errands.shared(intent)
    }

    override fun onResume() {
        super.onResume()
        app.model.send(Action.Resume)
    }

    override fun onPause() {
        app.model.send(Action.Pause)
        super.onPause()
    }

    /** The volume keys are what a thumb finds without looking: they let go of the pump. */
    override fun onKeyDown(keyCode: Int, event: KeyEvent): Boolean {
        val volume = keyCode == KeyEvent.KEYCODE_VOLUME_UP || keyCode == KeyEvent.KEYCODE_VOLUME_DOWN
        val action = if (volume) app.model.screen.value.hardwareKeyAction() else null
        if (action == null) return super.onKeyDown(keyCode, event)
        if (event.repeatCount == 0) app.model.send(action)
        return true
    }
}

@Composable
private fun Content(model: HoldfastModel) {
    val shown by model.screen.collectAsState()
    val back = shown.backAction()
    BackHandler(enabled = back != null) { back?.let(model::send) }
    HoldfastTheme(if (isSystemInDarkTheme()) Light.Night else Light.Day, ReportFont) {
        CompositionLocalProvider(LocalPictureReader provides PictureFiles) { HoldfastScreens(model) }
    }
}

/** The report's own face, so that the screen and the page look like one thing. */
internal val ReportFont = FontFamily(
    Font(R.font.noto_sans_regular, FontWeight.Normal),
    Font(R.font.noto_sans_bold, FontWeight.Bold),
)
