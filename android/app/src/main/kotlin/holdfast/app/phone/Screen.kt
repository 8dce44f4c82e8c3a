package holdfast.app.phone

import android.view.Window
import android.view.WindowManager

/** `KeepScreenOn` and `LetScreenSleep`. */
internal fun Window.lit(on: Boolean) {
    if (on) {
        addFlags(WindowManager.LayoutParams.FLAG_KEEP_SCREEN_ON)
    } else {
        clearFlags(WindowManager.LayoutParams.FLAG_KEEP_SCREEN_ON)
    }
}
