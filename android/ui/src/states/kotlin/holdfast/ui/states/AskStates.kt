package holdfast.ui.states

import holdfast.core.Action
import holdfast.core.Body
import holdfast.core.LookRow
import holdfast.core.LookScreen
import holdfast.core.Mark
import holdfast.core.Said
import holdfast.core.YesNoScreen

private fun part(name: String, mark: Mark, picked: Int) = LookRow(
    mark,
    one(
        name,
        *listOf("ok", "cracked", "off", "oily", "kinked", "chafed", "wet inside")
            .mapIndexed { index, word -> option(word, index == picked) }
            .toTypedArray(),
    ),
    null,
    quiet("Photo"),
)

internal val askStates = listOf(
    state(
        "yes-no",
        "Shake with vacuum straight to the mounts",
        Body.YesNo(
            YesNoScreen(
                mapScene(),
                null,
                "Does the shake change when you pull the spare hose off?",
                listOf("Sit inside: feel the wheel and the seat.", "Pull the hose off and put it on again, three times."),
                listOf(plain("Yes, it changes", Action.Say(Said.YES)), plain("No, the same", Action.Say(Said.NO))),
                quiet("Not sure", Action.Say(Said.NOT_SURE)),
            ),
        ),
    ),
    state(
        "look-over",
        "Look over",
        Body.LookOver(
            LookScreen(
                mapScene(),
                listOf(
                    part("Front hose", leaks.copy(word = "cracked"), 1),
                    part("Tee", holds.copy(word = "ok"), 0),
                    part("Front mount", notDone.copy(word = "not looked at"), -1),
                ),
                primary("All looked over"),
            ),
        ),
    ),
)
