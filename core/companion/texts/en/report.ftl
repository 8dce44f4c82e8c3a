### The report: the customer's page, the evidence, the full record.

report-heading = { $vehicle }: engine mount check
report-heading-plain = Engine mount check
report-began = Tested
report-ended = Last entry

## The customer's page

report-complaint = The complaint
report-known = How it is known
report-done = Repair
report-next = Next step
report-costs = Costs
report-estimate = Estimate, good until { $date }
report-not-done-work = Refused or put off
report-tested-by = Tested by
report-sign-decided = Customer: { $decision }
report-signed-when = { $name }, { $when }
report-signature-of = Signature of { $name }
report-not-tested = Not tested
report-left-open = What stays open
report-seen = Also seen
report-proposed = Proposed: { $what }.
report-proposed-can-wait = Can wait: { $what }.
report-repaired = The { $part } was repaired.
report-not-retested = The test was not repeated yet.
report-compared = { $test }: before { $before }, after { $after }.
report-compared-not-gone = The fault is still there. { $test }: before { $before }, after { $after }.
report-next-repair = Repair it, then do the same test again.
report-next-elsewhere = Look for the cause elsewhere: engine, exhaust, struts, rubber of the mounts.
report-next-outside = Have this put right first. If the complaint stays, test the mounts' circuit again.
report-next-nothing = Nothing to repair.
report-next-tester = Use a tight hand pump and repeat the vacuum hold tests.
report-next-retest = Do the same test again. Until then the repair is not proved.
report-next-road = Road test: brakes first, then pulling away and stopping.
report-next-feel = Feel for the complaint again, then a road test, brakes first.
report-next-complaint-stays = Test on: another cause is left.
report-next-again = Test again: the measurement has not changed enough.
report-next-test = Next test: { $test }.
report-next-workshop = These tests can tell no more. The vehicle's service information leads further.
report-not-done = { $test }: { $reason }.
report-more-not-done = { $count } more, see the record.
report-seen-part = the { $part } is { $state }.
report-care-brakes = The brakes share this vacuum. A soft or hard pedal: do not drive.
report-caption-map = The circuit and what the tests say of each part
report-caption-map-repaired = The circuit as found before the repair
report-care-mount = A broken mount overloads the others. Do not wait long.
report-caption-before-after = The same test before and after the repair
report-caption-test = { $test }: { $seen } – { $result }
report-caption-figure = { $test }: { $seen } – this figure { $result }
report-caption-after = { $test }, after the repair: { $seen } – { $result }
report-caption-photo = Photo

## Layout

report-evidence = Evidence
report-record = Full record
report-page = Page {"{page}"} of {"{pages}"}
report-digest = Record digest
report-written-by = Written by
report-figure = Figure {"{number}"}
report-software = Holdfast { $version }

## The record

record-ambient = Air pressure
record-ambient-measured = measured or typed
record-ambient-altitude = from the altitude (ISO 2533)
record-ambient-assumed = sea level assumed
record-air = Air
record-instruments = Instruments
instrument-assumed = Not stated: usual ones assumed
record-limit = Allowed drop
record-limit-value = { $drop } in { $seconds }, common practice
record-confidence = A finding counts from
record-circuit = Circuit
record-causes = Causes, likeliest first
record-causes-before = Causes before the repair, likeliest first
record-cause = Cause
record-probability = Probability
record-results = Tests and results
record-results-caption = Uncertainties with k = 2, about 95{"\u00A0"}%.
record-time = Time
record-test = Test
record-read = Read
record-uncertainty = Uncertainty
record-instrument = Taken with
instrument-name-gauge = gauge
instrument-name-meter = meter
instrument-name-phone = phone
instrument-name-person = person
readings-what = Reading
readings-value = Value
readings-unit = Unit
readings-seconds = Seconds
readings-vacuum = vacuum
readings-description = The readings of this report as a table (CSV)
record-result = Result
record-after-repair = { $test } (after repair)
record-kept = { $reading } – questioned and kept
record-u = ±{ $u }
record-u-drop = ±{ $u } on the drop
record-u-reading = ±{ $u }
record-holds = Vacuum hold tests
record-holds-caption = Leaks in std cm³/min: 20{"\u00A0"}°C, 101.325{"\u00A0"}kPa, at 20{"\u00A0"}inHg inside; the tester's own is taken off.
record-fall = Needle
record-leak = Leak
record-range = 95{"\u00A0"}% range
record-limit-leak = Limit
record-volume = Volume, cm³
record-over = Over limit
record-none = –
record-skipped = Not tested, and why
record-reason = Reason
record-open = Not known
record-newer = { $count ->
    [one] { $count } entry is from a newer version and is not shown.
   *[other] { $count } entries are from a newer version and are not shown.
}
record-entries = Every entry
record-entry = Entry
record-standing = { $entry } – { $standing }
record-how = Results and probabilities are computed from these entries by the software named below. The circuit's volumes and how often each fault occurs are estimates from common practice.
report-sign-work = Tested by, date
report-sign-customer = Customer, date
report-sign-agreed = Customer, date. Repair: agreed / later / refused
report-sign-handed-over = Handed over to, date
