### Screens: headings, buttons, fields, hints, cues. Second person, present tense, sentences under 14 words.

back = Back
menu-settings = Settings
menu-overview = Where we stand
menu-vehicle = Vehicle and complaint
menu-prepare = Tools and place
menu-log = Photos and log
menu-report = Report
nothing-here = There is nothing to show here. Go back.
unit-minutes = min

## Notices

notice-binned = The job is in the bin.
notice-binned-undo = Take it out again
notice-parked = Not finished: { $test }. It is kept as you left it.
notice-parked-resume = Go on with it



## Vehicle and complaint

vehicle-title = Vehicle and complaint
vehicle-vehicle = Vehicle
vehicle-complaint-note = In your own words
vehicle-complaint-missing = Tap what is wrong, or Nothing.
vehicle-plate = Number plate
vehicle-label = Make, model, engine
vehicle-vin = VIN
vehicle-vin-hint = 17 characters, at the { -windshield } or in the papers
vehicle-odometer = Odometer
vehicle-odometer-hint = As it stands; write another unit behind it
vehicle-odometer-out = Odometer when given back
vehicle-handed-over = Handed over
vehicle-handed-over-hint = When and to whom, such as 3 March 17:30, the owner
vehicle-customer = Customer
vehicle-agreed = Agreed with the customer
vehicle-agreed-hint = Tests, photos, road test, up to what amount; by whom, when
vehicle-circuit = Which circuit?
vehicle-circuit-hint = Follow the hoses from the engine. Count mounts and valves.
vehicle-circuit-edit = Change hoses, volumes or wiring
vehicle-who = Who is at work?
vehicle-next = Next: before you start

## The circuit

circuit-title = The circuit
circuit-hint = Leave a figure as it is if you don't know better.
circuit-parts = Parts
circuit-volume = Air in the { $part }
circuit-length = Length of the { $part }
circuit-doubt = Mounts' volume, known to
circuit-bore = Inner diameter of the hoses
circuit-add-mount = Add a mount
circuit-remove = Not fitted: { $part }
circuit-properties = How it works
circuit-electric = Electric side
circuit-layout = Wiring
circuit-coil-low = Sound coil, from
circuit-coil-high = Sound coil, to
circuit-fuse = Fuse
circuit-cannot = That can't be changed: the circuit would not work without it.
circuit-done = Done

## Before you start

prepare-title = Before you start
prepare-cautions = Read and tick each
prepare-caution-orange-cables = Orange cables carry deadly voltage. Never open or pierce them. Leave them to qualified people.
prepare-caution-engine-starts = The engine may start by itself. For engine-off work take the key away from the car.
prepare-caution-moving-parts = Keep hair, sleeves and leads clear of belt and fan. The fan may start with the key off.
prepare-caution-fumes = Exhaust kills indoors. Run the engine outdoors or with extraction.
prepare-caution-brake-vacuum = The brakes share this vacuum. Do not move the car while a line is open.
prepare-caution-in-gear = In gear: driver on the brake, wheels chocked, nobody before, behind or in the bay.
prepare-caution-stop-lines = Stop if you smell fuel, the brake pedal changes, or the car must be raised without stands.
prepare-caution-burns = Exhaust, coolant parts and brackets burn. Never open a hot coolant cap.
prepare-caution-service-information = The vehicle's service information and local rules come before this app.
prepare-unticked = { $count ->
    [one] One caution is not ticked yet.
   *[other] { $count } cautions are not ticked yet.
}
prepare-tools = Tools at hand
prepare-tools-hint = Only tests you can do are offered.
prepare-place = Where you are
prepare-place-hint = Height decides how much vacuum the air allows.
prepare-altitude = Height above the sea
prepare-ambient = Air pressure here
prepare-ambient-found = Found by this phone
prepare-air = Air temperature
prepare-engine = Engine and people
prepare-engine-runs = The engine can run
prepare-second-person = A second person helps me
prepare-stopped = Engine stopped since
prepare-stopped-hint = Leave it empty if you don't know.
prepare-next = Start testing

## Where we stand

overview-title = Where we stand

## A test

test-unknown = This test is gone
brief-start = Start
brief-unticked = { $count ->
    [one] Tick the warning first.
   *[other] Tick the { $count } warnings first.
}
brief-minutes = About { $minutes }
question-change = Enter it again
question-entered = You entered
question-when = Entered { $when }
question-keep = It really reads that
result-on = Next
result-to-report = Report
result-redo = Do it again
result-do-it = Do it now
result-correct = Put the reading right
result-go-on = Go on for { $seconds }

## Hold

hold-strokes = { $count ->
    [0] No strokes yet
    [one] One stroke
   *[other] { $count } strokes
}
hold-stroke = Stroke
hold-unstroke = One less
hold-no-strokes = No stroke to take back.
hold-let-go = I let go
hold-wont-build = It won't get there
hold-read-first = What did it show when you let go?
hold-read-highest = What was the highest it showed?
hold-read-now = Read the gauge now.
hold-reading = Gauge
hold-reading-hint = Drag the needle, or type. Comma and minus are fine.
hold-read-missing = Set the needle or type the reading first.
hold-not-moved = Not moved: { $reading }
hold-confirm = That's the reading
hold-watch = Hands off the pump. Don't touch the hose.
hold-read-now-early = Read now
hold-by-camera = Let the camera watch
hold-by-eye = Watch by eye
hold-watch-camera = Hands off. Keep the phone still: the camera is watching.
hold-use-seen = Stop here. Use what was seen
hold-camera-lost = The camera lost the gauge. Watch it yourself from here.
keep-out-of-range = It does read that
hold-start-again = Start again
hold-resume = Go on from where it is
hold-use-what-there-is = Use what there is
hold-interrupted-killed = The app was closed during this test.
hold-interrupted-restarted = The phone was restarted during this test, so its time is lost.
hold-interrupted-unseen = The camera didn't see the needle. Better light helps.
hold-kept-nothing = Pumping had stopped; no reading was entered.
hold-kept-start = Kept: { $start } at the start.
hold-kept-reading = Kept: { $start } at the start, { $reading } after { $seconds }.
hold-cue-pump = Pump to the band
hold-cue-first = Set the needle as it was
hold-cue-highest = Set the highest reading
hold-cue-watch = { $seconds } to go
hold-cue-read = Read it now
hold-cue-interrupted = Interrupted
amend-start = When you let go
amend-reading = After { $seconds }
amend-highest = Highest reached
amend-hint = Only what was typed wrong. The times stay.
amend-confirm = That is right now
speak-figure = { $figure }
speak-let-go = Stop. Let go.
speak-read-now = Read it now.
speak-seen = Done. It was seen.
speak-start = The clock runs. Read the gauge.
speak-left = { $seconds } seconds
speak-end = Done. { $result }
speak-stop = Stopped. Look at the phone.

## Values and answers

values-reading-hint = Comma and minus are fine.
values-confirm = Take these readings
values-open = Over range, no connection
said-yes = Yes
said-no = No
said-not-sure = Not sure
scale-0 = 0: nothing
scale-1 = 1: slight
scale-2 = 2: clear
scale-3 = 3: strong
look-done = All looked over



## Finding and repair

finding-title = Finding
finding-repair-anyway = Not certain. Repair the { $part } anyway
finding-repair-other = Another part was repaired
repair-title = Repair: { $part }
repair-which = Which part was repaired?
repair-which-first = Pick the part first.
repair-mind = What to mind
repair-what = What was done
repair-part = What was put in
repair-part-hint = Part, number, new or used
repair-torque = Tightening torque
repair-torque-hint = With its source: 55 N·m, service information
repair-note = Note: old part, who checked it
repair-done = The repair is done
repair-same-test = The same test again
repair-retest-why = Only the test that failed can show that it is repaired.
repair-retest = Retest: { $test }
repair-complaint-again = Feel for the complaint again
repair-before = Before: { $result }
repair-after = After: { $result }
repair-close = Close the job and report

## Log

log-title = Photos and log

## Report

report-title = Report
report-print = Print
report-language = Language of the report
report-language-screens = As on the screens
report-parts = What to include
report-part-drawings = drawings and charts
report-part-photos = photos
report-part-record = full record
report-paper = Paper
paper-a4 = A4
paper-letter = Letter
report-business-hint = Your workshop stands at the top. Set it in Settings.
report-costs-go = Costs
report-approval-go = Customer's decision and signature
report-customer = For the customer
report-share-readings = Share the readings as a table
report-readings-title = Readings
report-settings = Settings
report-make = Make the report
report-working = The report is being made.
report-stop = Stop
report-share = Share
report-no-share = This device can't share files. The report is kept in the job.
report-file-title = Engine mount report

## Settings

settings-title = Settings
settings-shown = Show and speak
settings-language = Language
settings-language-phone = As on this phone
settings-units = Units
settings-unit-set = Other units
settings-unit-set-metric = Metric
settings-unit-set-us = United States
settings-unit-set-uk = United Kingdom
settings-unit-odometer = Odometer
settings-unit-thermometer = Temperature
settings-unit-tape = Heights and hoses
settings-unit-rule = Gaps and bores
settings-shown-unit = Show vacuum in
settings-cues = During a hold
settings-speech = Speak
settings-buzz = Buzz
settings-large-figures = Figures large enough to read at two metres
settings-script = What the phone says during a hold
settings-script-hint = Write your own words. Leave a line empty and it stays silent there. Words in braces become the figure or the result.
settings-script-plain = Say it as it was
script-figure = Figures
script-let-go = At the target
script-start = When you let go
script-left = While you watch
script-read-now = When the time is up
script-seen = When the camera is done
script-end = When there is a result
script-stop = When it was cut off
settings-gauge = Gauge and hand pump
settings-gauge-hint = Look at the dial: end of scale, lines, accuracy.
settings-gauge-unit = The gauge reads in
settings-gauge-grade = Accuracy grade on the dial
settings-span = End of scale
settings-division = From line to line
settings-read-to = You read it to
settings-pump = Air in hand pump, gauge and adapter
settings-stroke = Air moved by one stroke
settings-identity = Serial number and calibration
settings-identity-hint = Such as SN 204, calibrated May 2026
settings-meter = Multimeter
settings-percent = Accuracy, percent of reading
settings-counts = Accuracy, counts
settings-digits = Decimals on the volt range
settings-limit = When a hold counts as leaking
settings-drop = It may lose
settings-seconds = In this time
settings-confidence = A finding counts from
settings-report = On the report
settings-business = Workshop
settings-business-hint = The first line is the name; address, phone and licence below it
settings-technician = Your name, as technician

## Storage

problem-open = The log could not be opened. Close other copies of the app and try again.
problem-open-not-a-log = The file there is no job log. It stays as it is.
notice-salvaged = The log was damaged. What could be read of it is here, and the damaged file was kept.
problem-damaged = The log is damaged. Open the app again: what can be read is kept.
problem-entry-too-large = This entry is too long. Shorten it.

## What the own jobs taught

taught = What your jobs taught
taught-nothing = Nothing yet: it takes a repair that was tested and found good.
taught-jobs = { $count ->
    [one] From one job whose repair was tested and found good:
   *[other] From { $count } jobs whose repair was tested and found good:
}
taught-fault = { $count ->
    [one] { $fault }: once
   *[other] { $fault }: { $count } times
}
taught-forget = Forget what they taught
