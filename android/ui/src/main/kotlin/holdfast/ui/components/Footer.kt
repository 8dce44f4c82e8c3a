package holdfast.ui.components

import holdfast.core.Button
import holdfast.core.ButtonWeight

/** Buttons for the foot of the screen, and those that stand in the page: the primary one is for the thumb. */
fun splitButtons(buttons: List<Button>): Pair<List<Button>, List<Button>> {
    val (primary, others) = buttons.partition { it.weight == ButtonWeight.PRIMARY }
    return if (primary.isEmpty()) others.take(1) to others.drop(1) else primary to others
}
