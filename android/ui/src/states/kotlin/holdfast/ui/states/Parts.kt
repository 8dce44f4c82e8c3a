package holdfast.ui.states

import holdfast.core.Acknowledgement
import holdfast.core.Action
import holdfast.core.Body
import holdfast.core.Button
import holdfast.core.ButtonWeight
import holdfast.core.Caution
import holdfast.core.Choice
import holdfast.core.ChoiceKind
import holdfast.core.ChoiceOption
import holdfast.core.Direction
import holdfast.core.Field
import holdfast.core.FigureSize
import holdfast.core.FieldId
import holdfast.core.Frame
import holdfast.core.Keys
import holdfast.core.Mark
import holdfast.core.MarkShape
import holdfast.core.Picked
import holdfast.core.Role
import holdfast.core.Scene
import holdfast.core.Screen
import holdfast.core.Signal

/** A screen worth seeing, under a name. All words are invented. */
data class State(val name: String, val screen: Screen)

internal fun state(
    name: String,
    title: String,
    body: Body,
    frame: Frame = frame(title),
    figures: FigureSize = FigureSize.USUAL,
) = State(name, Screen(1uL, "en-US", Direction.LEFT_TO_RIGHT, figures, frame, body))

internal fun frame(title: String, back: Boolean = true) = Frame(
    title = title,
    back = if (back) quiet("Back", Action.Back) else null,
    menu = emptyList(),
    cautions = emptyList(),
    spoken = title,
    notice = null,
)

internal fun primary(label: String, action: Action = Action.Confirm, whyNot: String? = null) =
    Button(label, action, ButtonWeight.PRIMARY, whyNot)

internal fun plain(label: String, action: Action = Action.Confirm, whyNot: String? = null) =
    Button(label, action, ButtonWeight.PLAIN, whyNot)

internal fun quiet(label: String, action: Action = Action.Confirm) = Button(label, action, ButtonWeight.QUIET, null)

internal val holds = Mark(MarkShape.DISC, Role.HOLDS, "holds")
internal val slowLeak = Mark(MarkShape.HALF_DISC, Role.SLOW_LEAK, "slow leak")
internal val leaks = Mark(MarkShape.WEDGE, Role.LEAKS, "leaks")
internal val undecided = Mark(MarkShape.RING, Role.UNDECIDED, "undecided")
internal val wontBuild = Mark(MarkShape.BARRED_RING, Role.WONT_BUILD, "will not build")
internal val notDone = Mark(MarkShape.DOTTED_RING, Role.NOT_DONE, "not done")
internal val cantDo = Mark(MarkShape.GAP_RING, Role.CANT_DO, "can't do")

internal fun field(
    label: String,
    value: String,
    unit: String = "",
    hint: String = "",
    problem: String? = null,
    keys: Keys = Keys.TEXT,
    id: FieldId = FieldId.Label,
) = Field(id, label, value, unit, hint, problem, keys)

internal fun one(label: String, vararg options: ChoiceOption) = Choice(label, ChoiceKind.ONE, options.toList())

internal fun many(label: String, vararg options: ChoiceOption) = Choice(label, ChoiceKind.MANY, options.toList())

internal fun option(label: String, picked: Boolean = false, detail: String = "", picture: Scene? = null) =
    ChoiceOption(label, detail, picture, if (picked) Picked.YES else Picked.NO, Action.Confirm)

internal fun caution(signal: Signal, word: String, text: String, ack: Acknowledgement = Acknowledgement.NotAsked) =
    Caution(signal, word, text, ack)
