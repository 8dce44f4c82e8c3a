package holdfast.ui.states

import holdfast.core.Action
import holdfast.core.Body
import holdfast.core.FieldId
import holdfast.core.FormItem
import holdfast.core.LogRow
import holdfast.core.LogScreen
import holdfast.core.PhotoCard
import holdfast.core.PhotoScreen

internal val photoStates = listOf(
    state(
        "photo",
        "Photo",
        Body.Photo(
            PhotoScreen(
                connectorScene(),
                one("Mark", option("ring", true), option("arrow"), option("pin"), option("test point"), option("measure"), option("blur")),
                field("Caption", "The valve's connector", id = FieldId.Caption),
                listOf(primary("Done"), plain("Undo", Action.Undo), quiet("Remove", Action.RemovePhoto("1"))),
            ),
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
