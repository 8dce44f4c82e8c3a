package holdfast.ui.states

import holdfast.core.Action
import holdfast.core.Body
import holdfast.core.FieldId
import holdfast.core.FindingScreen
import holdfast.core.FormItem
import holdfast.core.Mark
import holdfast.core.RepairedScreen
import holdfast.core.Section

private fun finding(headline: String, certainty: String, mark: Mark, buttons: List<holdfast.core.Button>) = Body.Finding(
    FindingScreen(
        headline = headline,
        certainty = certainty,
        mark = mark,
        explains = "It explains the shaking at idle.",
        speaksFor = listOf("The branch lost 6.5 inHg in 20 s.", "The front hose alone lost 6.4 inHg in 20 s.", "Both mounts hold."),
        speaksAgainst = listOf("Nothing was seen on it from outside."),
        leftOpen = listOf("The rear mount could not be reached."),
        causes = causes,
        map = mapScene(),
        buttons = buttons,
    ),
)

internal val findingStates = listOf(
    state(
        "finding-decided",
        "Finding",
        finding(
            "The front hose leaks.",
            "97 % sure",
            leaks.copy(word = "found"),
            listOf(primary("Repair it", Action.Repair("front_hose")), plain("Test more"), quiet("Report")),
        ),
    ),
    state(
        "finding-open",
        "Finding",
        finding(
            "The front hose or the front mount leaks.",
            "62 % against 21 %",
            undecided,
            listOf(primary("Test more"), plain("Repair the front hose")),
        ),
    ),
    state(
        "repaired",
        "Repair",
        Body.Repaired(
            RepairedScreen(
                listOf(
                    Section("What was done", listOf(FormItem.Entry(field("Part put in", "Hose 3.5 mm, 0.5 m", id = FieldId.RepairPart)))),
                    Section("The same test again", listOf(FormItem.State(holds, "Lost nothing in 20 s. Before: 6.5 inHg."))),
                ),
                chartScene(),
                primary("Close the job", Action.CloseJob),
            ),
        ),
    ),
)
