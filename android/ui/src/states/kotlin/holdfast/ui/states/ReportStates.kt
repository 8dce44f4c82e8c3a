package holdfast.ui.states

import holdfast.core.Action
import holdfast.core.Body
import holdfast.core.FieldId
import holdfast.core.FormItem
import holdfast.core.ReportScreen
import holdfast.core.ReportState
import holdfast.core.Section

private val what = listOf(
    Section(
        "",
        listOf(
            FormItem.Options(one("Paper", option("A4", true), option("Letter"))),
            FormItem.Entry(field("Workshop", "Example Garage", id = FieldId.Business)),
        ),
    ),
)

private fun report(state: ReportState) = Body.Report(ReportScreen(listOf(pageScene()), what, state))

internal val reportStates = listOf(
    state("report-to-make", "Report", report(ReportState.ToMake(primary("Make the PDF", Action.MakeReport)))),
    state("report-working", "Report", report(ReportState.Working("Making page 2 of 3", plain("Stop", Action.StopWork)))),
    state("report-ready", "Report", report(ReportState.Ready("reports/a.pdf", primary("Share", Action.ShareReport), quiet("Share the readings as a table", Action.ShareReadings)))),
)
