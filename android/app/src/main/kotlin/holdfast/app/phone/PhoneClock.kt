package holdfast.app.phone

import android.content.Context
import android.os.SystemClock
import android.provider.Settings
import holdfast.core.Clock
import java.util.TimeZone

/** The phone's clocks now; the monotonic one counts sleep and begins anew at each boot. */
internal fun phoneClock(context: Context): Clock {
    val wall = System.currentTimeMillis()
    return Clock(
        wallMs = wall,
        offsetMin = TimeZone.getDefault().getOffset(wall) / 60_000,
        monoMs = SystemClock.elapsedRealtime(),
        bootId = Settings.Global.getInt(context.contentResolver, Settings.Global.BOOT_COUNT, 0).toString(),
    )
}
