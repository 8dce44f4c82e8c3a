package holdfast.desktop

import holdfast.core.Clock
import java.io.File
import java.util.TimeZone

private val uptime = File("/proc/uptime")
private val bootFile = File("/proc/sys/kernel/random/boot_id")
private val startedAt = System.currentTimeMillis().toString()

/** This machine's clocks now. Where the system tells its time since boot, sleep is counted too. */
internal fun desktopClock(): Clock {
    val wall = System.currentTimeMillis()
    return Clock(
        wallMs = wall,
        offsetMin = TimeZone.getDefault().getOffset(wall) / 60_000,
        monoMs = sinceBoot() ?: (System.nanoTime() / 1_000_000),
        bootId = if (bootFile.canRead()) bootFile.readText().trim() else startedAt,
    )
}

private fun sinceBoot(): Long? =
    if (uptime.canRead()) uptime.readText().substringBefore(' ').toDoubleOrNull()?.let { (it * 1000).toLong() } else null
