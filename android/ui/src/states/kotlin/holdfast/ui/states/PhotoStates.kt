package holdfast.ui.states

import holdfast.core.Action
import holdfast.core.Body
import holdfast.core.Choice
import holdfast.core.FieldId
import holdfast.core.FormItem
import holdfast.core.LogRow
import holdfast.core.LogScreen
import holdfast.core.MarkPanel
import holdfast.core.PhotoCard
import holdfast.core.PhotoScreen

private val tools = listOf("Test point", "Ring", "Arrow", "Numbered pin", "Measure", "Hide")

private fun photo(mark: MarkPanel?, looks: Choice?, tool: String) = Body.Photo(
    PhotoScreen(
        scene = connectorScene(),
        palette = one("Choose a mark, then touch the photo", *tools.map { option(it, it == tool) }.toTypedArray()),
        looks = looks,
        mark = mark,
        caption = field("What it shows", "The valve's connector", id = FieldId.Caption),
        more = listOf(
            FormItem.Tap(plain("Keep it for every Blue estate", Action.PromotePhoto)),
            FormItem.Tap(plain("Share a copy with its marks", Action.SharePhoto)),
        ),
        undo = quiet("Undo", Action.Undo),
        buttons = listOf(primary("Done"), quiet("Take the photo out", Action.RemovePhoto("1"))),
    ),
)

private val colours = one("Colour", option("Red-brown", true), option("Blue"), option("Green"), option("Black"))

internal val photoStates = listOf(
    state("photo", "Photo", photo(null, colours, "Ring")),
    state(
        "photo-mark",
        "Photo",
        photo(
            MarkPanel("Test point", field("Words beside it", "pin 1", id = FieldId.MarkText), quiet("Take this mark away", Action.RemoveMark)),
            one("What goes here", option("Test point"), option("Red lead", true), option("Black lead"), option("Hand pump"), option("Gauge")),
            "Test point",
        ),
    ),
    state(
        "log",
        "Photos and log",
        Body.Log(
            LogScreen(
                listOf(
                    FormItem.Tap(plain("Take a photo")),
                    FormItem.Photo(PhotoCard(connectorScene(), "The valve's connector", Action.OpenPhoto("1"))),
                ),
                listOf(
                    LogRow("10:42", "Hold test of the branch: lost 6.5 inHg in 20 s", ""),
                    LogRow("10:31", "Hold test of the branch: lost 65 inHg in 20 s", "corrected"),
                    LogRow("10:12", "Job begun", ""),
                ),
            ),
        ),
    ),
)
