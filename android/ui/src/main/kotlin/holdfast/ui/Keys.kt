package holdfast.ui

import holdfast.core.Action
import holdfast.core.Body
import holdfast.core.HoldPhase
import holdfast.ui.bridge.Shown

/** What the back gesture or key sends, if there is a way back. */
fun Shown.backAction(): Action? = (this as? Shown.Open)?.screen?.frame?.back?.takeIf { it.whyNot == null }?.action

/** What a volume key sends: while pumping it lets go, for hands that can't look for a button. */
fun Shown.hardwareKeyAction(): Action? {
    val hold = ((this as? Shown.Open)?.screen?.body as? Body.Hold)?.hold ?: return null
    return (hold.phase as? HoldPhase.Pump)?.letGo?.takeIf { it.whyNot == null }?.action
}
