### The list of jobs, the bin, jobs that travel.

jobs-title = Jobs
jobs-search = Search
jobs-search-hint = Plate, vehicle, part or finding
jobs-new = New job
jobs-open = Open
jobs-bin = Put in the bin
jobs-unnamed = Vehicle without a name
jobs-none = No jobs yet. Start one: tap New job.
jobs-none-found = No job has these words.
job-begun = Begun
job-open = Under way
job-closed = Closed
job-repaired = Repaired
jobs-narrow = Narrow down
jobs-widen = Show all
jobs-shelf = Which
jobs-shelf-all = All
jobs-shelf-open = Under way
jobs-shelf-closed = Closed
jobs-shelf-bin = In the bin
jobs-time = Worked on
jobs-time-any = Any time
jobs-time-week = Last 7 days
jobs-time-month = Last 31 days
jobs-time-year = Last year
jobs-time-between = Between two days
jobs-from = From
jobs-until = Until
jobs-date-hint = 2026-03-14, or a month, 2026-03
jobs-date-problem = Write the year first, such as 2026-03-14.
jobs-more = Show more
jobs-customer = { $name }.
jobs-duplicate = New job on this vehicle
jobs-pick = Pick out
jobs-select = Pick out jobs
jobs-select-none = Pick out none
jobs-none-picked = Tap the jobs first.
jobs-export-picked = { $count ->
    [0] Export jobs
    [one] Export 1 job
   *[other] Export { $count } jobs
}
jobs-export-all = Export the whole log
jobs-import = Take in jobs from a file
jobs-empty-bin = Empty the bin
jobs-bin-empty = The bin is empty.
notice-empty-bin = The jobs in the bin and their photos will be gone for good.
notice-empty-bin-yes = Delete for good
notice-empty-bin-no = Keep them
notice-bin-emptied = The bin is empty. Its jobs are gone.

log-export = Export this job

bundle-file-title = Jobs
bundle-packing = The jobs are being packed.
bundle-taking-in = The jobs are being taken in.
bundle-stopped = Stopped. What was taken in stays.
bundle-took = { $count ->
    [one] 1 job has something new.
   *[other] { $count } jobs have something new.
}
bundle-took-nothing = Nothing in it was new.
bundle-left-out = { $count ->
    [one] 1 entry was left out: it differs from the one here.
   *[other] { $count } entries were left out: they differ from those here.
}
bundle-broken-photos = { $count ->
    [one] 1 photo can't be read.
   *[other] { $count } photos can't be read.
}
bundle-deleted = { $count ->
    [one] 1 job was deleted here and stays away.
   *[other] { $count } jobs were deleted here and stay away.
}
bundle-take-again = Take them in again
problem-bundle-none = This file holds no jobs.
problem-bundle-newer = A newer version made this file. Update the app, then take it in.
problem-bundle-cut = This file ends too soon. Send it again.
problem-bundle-damaged = This file is damaged. Nothing of it was taken in.
problem-bundle-file = This file can't be read.
