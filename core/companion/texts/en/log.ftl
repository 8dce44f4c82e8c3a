### The job's log: one line an entry.

quoted = “{ $words }”

log-opened = Job begun with version { $software }.
log-wiped = removed
log-complaint = Complaint: { $complaint }
log-circuit = Circuit: { $template }
log-altitude = altitude { $altitude }
log-ambient = air pressure { $pressure }, { $from }
log-ambient-barometer = from the phone's barometer
log-ambient-typed = typed
log-ambient-altitude = from the altitude
log-ambient-sea-level = sea level assumed
log-air = air { $temperature }
log-place-unknown = Place not stated: sea level assumed
log-instruments = Instruments: { $what }
log-tools = Tools at hand: { $tools }
log-no-tools = No tools at hand
log-engine-runs = The engine can run
log-engine-cannot-run = The engine can't run
log-engine-stopped = Engine stopped { $minutes } ago
log-second-person = A second person is there
log-alone = Nobody else is there
log-profile = At work: { $profile }
log-limit = allowed drop { $drop } in { $seconds }
log-confidence = a finding counts from { $percent }
log-limit-unchanged = Limit unchanged
log-acknowledged = Read and ticked: { $caution }
log-reading = { $test }: { $reading }
log-reading-kept = { $test }: { $reading } (questioned and kept)
log-reading-after = After repair: { $test }: { $reading }
log-reading-unknown = { $test }: a reading this version can't show
log-trace = { $test }: { $count } gauge readings recorded
log-interrupted = { $test }: interrupted, { $by }. Until then: { $had }
log-interrupted-killed = the app was closed
log-interrupted-restarted = the phone restarted
log-interrupted-unseen = the camera did not see the needle
log-interrupted-left = it was left
log-skipped = { $test }: not done, { $reason }
log-skipped-note = { $test }: not done, { $reason }: { $note }
log-correction = Put right: { $instead }
log-kept = Questioned and kept: { $reading }
log-corrected = put right later: { $instead }
log-kept-later = questioned later and kept
log-undo = Taken back: { $what }
log-undo-undo = The taking back was taken back
log-undone = taken back later
log-photo = Photo
log-photo-caption = Photo: { $caption }
log-photo-marked = { $count ->
    [0] Marks removed from a photo
    [one] A mark set on a photo
   *[other] { $count } marks set on a photo
}
log-about = { $words } ({ $about })
log-note = Note: { $note }
log-costs-estimate = Estimate: { $total }
log-costs-charged = Costs charged: { $total }
log-report-language = Reports in { $language }
log-report-language-screens = Reports in the language of the screens
log-report-parts = Reports without: { $parts }
log-report-whole = Reports with everything
log-workshop = Work by { $name }
log-workshop-none = Nobody named on the report
log-signed = { $words }, signed
log-repair-done = Repaired: { $part }.
log-repair-torque = Torque: { $torque }
log-repair-proposed = Repair proposed: { $part }.
log-closed = Closed: { $finding } ({ $percent }, version { $software })
log-closed-repaired = Closed and repaired: { $finding } ({ $percent }, version { $software })
log-report = Report made, { $pages ->
    [one] { $pages } page
   *[other] { $pages } pages
}, digest { $digest }…
log-binned = Put in the bin
log-newer-short = from a newer version
log-unreadable = An entry that can't be read. It is kept as it is.

instrument-gauge = gauge 0–{ $span }{"\u00A0"}{ $unit }, division { $division }, grade { $grade }, read to { $read }
instrument-pump = hand pump, gauge and adapter { $volume }
instrument-stroke = { $volume } a stroke
instrument-meter = multimeter ±({ $percent }{"\u00A0"}% + { $counts-n ->
    [one] { $counts } count
   *[other] { $counts } counts
})
instrument-unknown = not stated

record-plate = Number plate
record-label = Vehicle
record-vin = VIN
record-odometer = Odometer
record-odometer-out = Odometer, out
record-handed-over = Handed over
record-customer = Customer
record-agreed = Agreed with the customer
