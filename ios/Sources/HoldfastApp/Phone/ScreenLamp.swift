import HoldfastKit
import UIKit

/// `keepScreenOn` and `letScreenSleep`.
struct ScreenLamp: ScreenLight {
    func keepLit() {
        UIApplication.shared.isIdleTimerDisabled = true
    }

    func letSleep() {
        UIApplication.shared.isIdleTimerDisabled = false
    }
}
