package holdfast.ui.demo

import holdfast.core.Action
import holdfast.core.Button
import holdfast.core.Caution
import holdfast.core.ChoiceOption
import holdfast.core.Field
import holdfast.core.Point
import holdfast.core.Scene

/** One thing a person does with the phone. */
sealed interface Deed {
    /** Taps a button. */
    data class Tap(val button: Button) : Deed

    /** Ticks a caution. */
    data class Tick(val caution: Caution, val action: Action) : Deed

    /** Taps an option; [nth] of those with the same words, from 0. */
    data class Choose(val option: ChoiceOption, val nth: Int) : Deed

    /** Types over what stands in a field. */
    data class Write(val field: Field, val text: String) : Deed

    /** Drags the gauge's needle to a place in the scene. */
    data class Drag(val x: Float, val y: Float) : Deed

    /** Touches a place on the photo, in the scene. */
    data class Mark(val photo: Scene, val x: Float, val y: Float) : Deed

    /** Draws a stroke on the signature pad, through places in the scene. */
    data class Sign(val pad: Scene, val stroke: List<Point>) : Deed

    /** Waits, in milliseconds. */
    data class Wait(val ms: Long) : Deed

    /** The job is done. */
    data object Leave : Deed
}
