package holdfast.ui.states

import holdfast.core.Action
import holdfast.core.Body
import holdfast.core.FieldId
import holdfast.core.Frame
import holdfast.core.JobRow
import holdfast.core.JobsScreen
import holdfast.core.Mark
import holdfast.core.Notice

private fun row(plate: String, vehicle: String, mark: Mark, since: String) =
    JobRow(plate, vehicle, mark, since, plain("Open", Action.OpenJob(plate)), quiet("Bin", Action.BinJob(plate)))

private fun jobs(rows: List<JobRow>, empty: String = "", search: String = "") = Body.Jobs(
    JobsScreen(
        field("Search", search, hint = "Plate, vehicle or customer", id = FieldId.Search),
        rows,
        empty,
        primary("New job", Action.NewJob),
    ),
)

private val front: Frame = frame("Jobs", back = false).copy(menu = listOf(quiet("Settings")))

internal val jobStates = listOf(
    state("jobs-none", "Jobs", jobs(emptyList(), "No jobs yet. Start with the vehicle in front of you."), front),
    state(
        "jobs-some",
        "Jobs",
        jobs(
            listOf(
                row("ABC 123", "Blue estate, 2.0 diesel", undecided.copy(word = "under way"), "10 minutes ago"),
                row("", "Silver saloon", notDone.copy(word = "begun"), "yesterday"),
                row("XY 98 ZT", "Van with a very long description that needs two lines", leaks.copy(word = "front hose"), "3 November"),
                row("K 7", "Grey hatchback", holds.copy(word = "repaired"), "12 October"),
            ),
        ),
        front.copy(notice = Notice("Job XY 12 is in the bin.", listOf(quiet("Undo", Action.Undo)))),
    ),
    state("jobs-not-found", "Jobs", jobs(emptyList(), "Nothing matches 'qqq'.", "qqq"), front),
)
