package holdfast.ui.states

import holdfast.core.Action
import holdfast.core.Body
import holdfast.core.Button
import holdfast.core.Choice
import holdfast.core.FieldId
import holdfast.core.Frame
import holdfast.core.JobRow
import holdfast.core.JobsScreen
import holdfast.core.Mark
import holdfast.core.Notice
import holdfast.core.Picked

private fun row(
    plate: String,
    vehicle: String,
    mark: Mark,
    since: String,
    found: String = "",
    picked: Picked? = null,
) = JobRow(
    plate = plate,
    vehicle = vehicle,
    found = found,
    mark = mark,
    `when` = since,
    picked = picked,
    open = plain("Open", Action.OpenJob(plate)),
    buttons = if (picked == null) {
        listOf(quiet("New job on this vehicle", Action.DuplicateJob(plate)), quiet("Put in the bin", Action.BinJob(plate)))
    } else {
        emptyList()
    },
)

private fun jobs(
    rows: List<JobRow>,
    empty: String = "",
    search: String = "",
    filters: List<Choice> = emptyList(),
    more: Button? = null,
    newJob: Button = primary("New job", Action.NewJob),
) = Body.Jobs(
    JobsScreen(
        search = field("Search", search, hint = "Plate, vehicle or customer", id = FieldId.Search),
        narrow = quiet(if (filters.isEmpty()) "Narrow down" else "Show all", Action.NarrowDown),
        filters = filters,
        dates = emptyList(),
        rows = rows,
        more = more,
        empty = empty,
        buttons = listOf(plain("Pick out jobs", Action.SelectJobs), plain("Take in jobs from a file", Action.ImportBundle)),
        newJob = newJob,
    ),
)

private val front: Frame = frame("Jobs", back = false).copy(menu = listOf(quiet("Settings")))

private val filters = listOf(
    one("Which", option("All"), option("Under way"), option("Closed", true), option("In the bin")),
    one("Worked on", option("Any time", true), option("Last 7 days"), option("Last 31 days"), option("Last year")),
)

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
                row("K 7", "Grey hatchback", holds.copy(word = "repaired"), "12 October", "M. Sample. The front hose leaked."),
            ),
            more = plain("Show more", Action.ShowMore),
        ),
        front.copy(notice = Notice("Job XY 12 is in the bin.", listOf(quiet("Undo", Action.Undo)), null)),
    ),
    state("jobs-not-found", "Jobs", jobs(emptyList(), "Nothing matches 'qqq'.", "qqq"), front),
    state(
        "jobs-picked",
        "Jobs",
        jobs(
            listOf(
                row("ABC 123", "Blue estate, 2.0 diesel", holds.copy(word = "closed"), "2 November", picked = Picked.YES),
                row("K 7", "Grey hatchback", holds.copy(word = "repaired"), "12 October", picked = Picked.NO),
            ),
            filters = filters,
            newJob = primary("Export 1 job"),
        ),
        front.copy(notice = Notice("The jobs are being taken in.", listOf(quiet("Stop", Action.StopWork)), 1uL)),
    ),
)
