### The tests that need eyes, hands, a gauge or the running engine. Hold tests: holds.ftl. Meter tests: electric.ftl.
### Sentences stay under 14 words. $part is the component under test.

## Complaint

test-complaint-title = Feel the complaint yourself
test-complaint-name = Complaint felt
test-complaint-why = What is not there today can't be proved today.
test-complaint-explain = Feel the complaint with the customer before you touch anything. When it comes and when it goes already tells a lot.
test-complaint-where = In the driver's seat, car standing.
test-complaint-step-1 = Warm the engine up. Keep the car level, the parking brake set.
test-complaint-step-2 = Let it idle in neutral or park. Feel wheel, seat and floor.
test-complaint-step-3 = Switch lights and air conditioning on. Note when it shakes.
test-complaint-means-as-expected = The complaint is there: each later change can be felt.
test-complaint-means-not-as-expected = It is not there now. A test may pass and prove little.
test-complaint-field-present = Is the complaint there now?
test-complaint-field-present-yes = I feel it now
test-complaint-field-present-no = I don't feel it now
test-complaint-look-1 = Feel steering wheel, seat and floor.
test-complaint-look-2 = Watch the mirror: a shake blurs it.

## Codes

test-codes-title = Read stored codes
test-codes-name = Stored codes
test-codes-why = Unplugging a connector later stores new codes. Read the old ones first.
test-codes-explain = A code names an electric circuit, not a broken part. No code does not clear hoses and mounts.
test-codes-where = Diagnostic socket, usually under the dashboard.
test-codes-step-1 = Plug the code reader in before you unplug anything else.
test-codes-step-2 = Ignition on, engine off. Keyless: leave the brake pedal alone.
test-codes-step-3 = Write every code down, with its freeze frame. Clear nothing yet.
test-codes-means-as-expected = No code for the mounts' valve: look at vacuum first.
test-codes-means-not-as-expected = A code for the mounts' valve: its electric side moves up.
test-codes-field-list = Codes, one after the other
test-codes-field-list-read = { $value }
test-codes-field-list-hint = For example P0A14. Leave it empty if there are none.

## Idle quality

test-idle-quality-title = Rule out the engine itself
test-idle-quality-name = Engine idle
test-idle-quality-why = A rough engine shakes on perfect mounts.
test-idle-quality-explain = If the engine misses or hunts, cure that first. Mount tests tell little until it runs evenly.
test-idle-quality-where = Tachometer in the dashboard, or the code reader.
test-idle-quality-step-1 = Start the engine and warm it up. Lights, fan, air conditioning off.
test-idle-quality-step-2 = Watch the engine speed for half a minute.
test-idle-quality-step-3 = Listen at the tailpipe for a missing beat. Stay clear of it.
test-idle-quality-means-as-expected = The engine runs evenly: go on to the mounts.
test-idle-quality-means-not-as-expected = The engine runs unevenly: repair that before you judge mounts.
test-idle-quality-field-rpm = Engine speed
test-idle-quality-field-rpm-read = { $value }
test-idle-quality-field-steady = Does the speed stay steady?
test-idle-quality-field-steady-yes = steady speed
test-idle-quality-field-steady-no = it hunts up and down
test-idle-quality-field-rough = Does it run rough or miss?
test-idle-quality-field-rough-yes = rough, or a beat is missing
test-idle-quality-field-rough-no = smooth and even

## Look over

test-look-title = Look the circuit over
test-look-name = Look over
test-look-why = Eyes are free and find a hose that is off.
test-look-explain = Follow the circuit part by part. Mark what you see; leave the rest as it is.
test-look-where = All along the vacuum hoses, the valve, its connector and the mounts.
test-look-step-1 = Follow each hose by hand. Bend it and look at both ends.
test-look-step-2 = Look for oil, chafe, melted spots and a missing heat shield.
test-look-step-3 = Look for exhaust, tray or pipe touching the body.
test-look-step-4 = Photograph what looks wrong before you move it.
test-look-means-as-expected = Nothing wrong to see. That clears a hose being off, no more.
test-look-means-not-as-expected = Something shows. A test confirms it before you buy parts.

## Mounts by eye and lever

test-mount-look-title = Look at the { $part }
test-mount-look-name = { $part } by eye
test-mount-look-why = A torn mount can hold vacuum and still be finished.
test-mount-look-explain = Fine cracks in the rubber skin are age. A gap between rubber and metal is a failure. Oil often drips there from above, so wipe it and look again.
test-mount-look-where = The { $part }, seen with a lamp from above or below.
test-mount-look-step-1 = Light the { $part } all round. Look where rubber meets metal.
test-mount-look-step-2 = Wipe below its seam. Look for a fresh wet streak.
test-mount-look-step-3 = Compare its height with its pair.
test-mount-look-means-as-expected = No tear, no fluid, no sag to be seen.
test-mount-look-means-not-as-expected = Torn, wet or sagged: that mount does not do its work.
test-mount-look-field-torn = Has the rubber parted from the metal?
test-mount-look-field-torn-yes = torn or parted
test-mount-look-field-torn-no = rubber is whole
test-mount-look-field-wet = Is there fluid below the seam?
test-mount-look-field-wet-yes = wet below its seam
test-mount-look-field-wet-no = dry
test-mount-look-field-sag-mm = Lower than its pair by
test-mount-look-field-sag-mm-read = { $value } lower

test-mount-move-title = Lever the { $part }
test-mount-move-name = { $part } by lever
test-mount-move-why = A tear opens when the engine is moved.
test-mount-move-explain = Compare with the other mount: both should give the same small amount and stop softly.
test-mount-move-where = The { $part }, with a wooden lever beside it.
test-mount-move-step-1 = Set a wooden lever between a firm place and the engine bracket.
test-mount-move-step-2 = Push gently, never against the oil pan. Watch the rubber.
test-mount-move-step-3 = Do the same at its pair and compare.
test-mount-move-means-as-expected = It moves like its pair: the rubber is attached.
test-mount-move-means-not-as-expected = It knocks or opens: the rubber has parted.
test-mount-move-field-clunk = Do you hear or feel a knock?
test-mount-move-field-clunk-yes = a knock, metal to metal
test-mount-move-field-clunk-no = no knock
test-mount-move-field-gap-opens = Does a gap open in the rubber?
test-mount-move-field-gap-opens-yes = a gap opens
test-mount-move-field-gap-opens-no = no gap opens

## Vacuum with the engine running

test-delivered-title = Does vacuum arrive at the mounts?
test-delivered-name = Vacuum at the mounts
test-delivered-why = One gauge reading at work clears or accuses the whole feed.
test-delivered-explain = The engine makes vacuum and the valve passes it on at idle. With a gauge in the line you see what the mounts really get.
test-delivered-where = A tee with the gauge in the hose at the valve's outlet.
test-delivered-step-1 = Engine off. Put the gauge on a tee in the vacuum-out hose.
test-delivered-step-2 = Lead the gauge's hose clear of belt, fan and exhaust. Start the engine.
test-delivered-step-3 = Wait until the module works the valve: { $window }.
test-delivered-step-4 = Read the gauge. Note the seconds until it stood still.
test-delivered-means-as-expected = Full vacuum arrives: source, valve and wiring work at idle.
test-delivered-means-not-as-expected = Too little arrives: look ahead of the test point, or for a big leak.
test-delivered-field-gauge = Vacuum on the gauge
test-delivered-field-gauge-read = { $value }
test-delivered-field-seconds = Until the needle stood still
test-delivered-field-seconds-read = after { $value }

test-switch-over-title = Does the vacuum leave again?
test-switch-over-name = Vacuum leaving again
test-switch-over-why = The gauge is still in place, and a change proves the control.
test-switch-over-explain = The module lets the vacuum out when the car is to drive. If it stays, the mounts stay in their idle state.
test-switch-over-where = The same gauge at the valve's outlet.
test-switch-over-step-1 = Keep the gauge in place. Raise the engine to about 2,000{"\u00A0"}rpm.
test-switch-over-step-2 = Count the seconds until the needle rests.
test-switch-over-step-3 = Read where it rests. Then let the engine idle again.
test-switch-over-means-as-expected = Vacuum leaves in time: valve, vent and command work.
test-switch-over-means-not-as-expected = It stays or leaves slowly: valve, vent or a command that never ends.
test-switch-over-field-seconds = Until the needle rested
test-switch-over-field-seconds-read = at rest after { $value }
test-switch-over-field-gauge = Where it rests
test-switch-over-field-gauge-read = at { $value }

test-bypass-title = Feed the mounts straight from the engine
test-bypass-name = Direct vacuum to the mounts
test-bypass-why = If the shake changes now, the mounts are good.
test-bypass-explain = A spare hose takes valve and wiring out of the question. It is for a test at idle, never for driving.
test-bypass-where = Spare hose from the vacuum source to the vacuum-out hose.
test-bypass-step-1 = Engine off. Pull the vacuum-out hose off the valve. Cap the port.
test-bypass-step-2 = Join source and vacuum-out hose with the spare hose. Start the engine.
test-bypass-step-3 = Pinch the spare hose, then let go. Feel for a change.
test-bypass-step-4 = Engine off. Put every hose back where it was.
test-bypass-means-as-expected = The shake changes: mounts work, the fault lies in valve or wiring.
test-bypass-means-not-as-expected = No change: hoses, mounts or a cause outside this circuit.
test-bypass-field-changes = Does the shake change with vacuum?
test-bypass-field-changes-yes = the shake changes
test-bypass-field-changes-no = the shake stays
test-bypass-look-1 = Feel the seat rail and the steering wheel.
test-bypass-look-2 = Compare with the hose pinched and open, three times.

test-source-title = Is there vacuum at the source?
test-source-name = Vacuum at the source
test-source-why = Without vacuum at the valve nothing after it can work.
test-source-explain = At idle the hose to the valve should pull strongly. Altitude lowers what is possible, and the limit here takes that into account.
test-source-where = Vacuum in: the hose pulled off the valve's inlet.
test-source-step-1 = Engine off. Twist the vacuum-in hose off the valve.
test-source-step-2 = Put the gauge on the hose, or a finger. Start the engine.
test-source-step-3 = Let it idle in neutral or park. Read once the needle stands still.
test-source-step-4 = Engine off. Put the hose back on the valve.
test-source-means-as-expected = The source is good. Look at valve, wiring and what follows.
test-source-means-not-as-expected = Too little vacuum: engine, check valve, hose or another user.
test-source-field-gauge = Vacuum on the gauge
test-source-field-gauge-read = { $value }
test-source-field-steady = Does the needle stand still?
test-source-field-steady-yes = needle stands still
test-source-field-steady-no = needle flicks or swings
test-source-field-felt = Without a gauge: does the hose pull your finger?
test-source-field-felt-yes = it pulls strongly
test-source-field-felt-no = hardly any pull

test-flow-title = Is the { $part } free?
test-flow-name = Air through the { $part }
test-flow-why = A kinked or blocked hose passes every hold test.
test-flow-explain = A blocked hose looks tight on the gauge. Only moving air shows whether it is open.
test-flow-where = The { $part }, far end open.
test-flow-step-1 = Pull both ends of the { $part } off.
test-flow-step-2 = Hand pump on one end, other end open. Pump five strokes.
test-flow-step-3 = Bend the hose the way it lies in the car. Pump again.
test-flow-means-as-expected = Air passes: the hose is free.
test-flow-means-not-as-expected = The needle stays up: the hose is kinked, melted or blocked.
test-flow-field-free = Does air pass freely?
test-flow-field-free-yes = needle falls at once
test-flow-field-free-no = needle rises and stays
test-flow-look-1 = A free hose never lets the needle rise.

## Valve by hand

test-valve-off-title = Valve at rest
test-valve-off-name = Valve at rest
test-valve-off-why = A valve that passes at rest keeps the mounts in one state.
test-valve-off-explain = Without current the valve should { $rest ->
    [open] pass vacuum to the mounts
   *[closed] pass nothing and let the mounts breathe
}. A hand pump shows both.
test-valve-off-where = The solenoid valve: hand pump on vacuum in, vacuum out open.
test-valve-off-step-1 = Unplug the connector by its body. Pull both hoses off the valve.
test-valve-off-step-2 = Hand pump on the vacuum-in port, other port open. Pump.
test-valve-off-step-3 = Hand pump on the vacuum-out port. Pump: does it breathe?
test-valve-off-step-4 = Leave it so for the switched-on test, or refit all.
test-valve-off-means-as-expected = At rest the valve does what it should.
test-valve-off-means-not-as-expected = The valve passes or can't vent: it sticks, or its vent is blocked.
test-valve-off-field-passes = Does vacuum pass from in to out?
test-valve-off-field-passes-yes = vacuum passes
test-valve-off-field-passes-no = nothing passes
test-valve-off-field-vents = Does the vacuum-out port breathe to open air?
test-valve-off-field-vents-yes = its outlet breathes
test-valve-off-field-vents-no = its outlet is shut

test-valve-on-title = Valve switched on
test-valve-on-name = Valve switched on
test-valve-on-why = Battery on the valve alone takes the car's wiring out.
test-valve-on-explain = A fused jumper feeds the valve itself, unplugged from the car. You hear a click and the passage changes.
test-valve-on-where = The valve's own two pins, connector unplugged.
test-valve-on-step-1 = Leave the car's connector unplugged. Hand pump on the vacuum-in port.
test-valve-on-step-2 = Join the fused jumper to battery plus, fuse at that end.
test-valve-on-step-3 = Touch the valve's pins, right polarity, under 30 seconds.
test-valve-on-step-4 = Listen for the click. Pump meanwhile and watch the needle.
test-valve-on-step-5 = Take the jumper off the battery first. Refit all.
test-valve-on-means-as-expected = The valve switches and passes: look at its wiring instead.
test-valve-on-means-not-as-expected = It does not switch or pass: the valve is faulty.
test-valve-on-field-passes = Switched on: does vacuum pass from in to out?
test-valve-on-field-passes-yes = vacuum passes
test-valve-on-field-passes-no = nothing passes
test-valve-on-field-clicks = Does it click?
test-valve-on-field-clicks-yes = it clicks
test-valve-on-field-clicks-no = no click
test-valve-on-field-vents = Switched on: does it leak from its vent?
test-valve-on-field-vents-yes = air hisses at the vent
test-valve-on-field-vents-no = the vent is shut

## Vibration

test-shake-title = Vibration with vacuum on and off
test-shake-name = Vibration, vacuum on and off
test-shake-why = Working mounts change the shake when the vacuum goes.
test-shake-explain = Judge both states at the same place, gear and engine speed. Only the difference counts.
test-shake-where = Seat rail or steering wheel, always the same spot.
test-shake-step-1 = Let the engine idle warm. With vacuum on, give the shake 0 to 3.
test-shake-step-2 = Engine off. Pull the vacuum-out hose and cap both ends.
test-shake-step-3 = Idle again at the same speed. Give the shake 0 to 3.
test-shake-step-4 = Engine off. Put the hose back.
test-shake-means-as-expected = The shake changes: the mounts answer to vacuum.
test-shake-means-not-as-expected = No change: vacuum does not reach them, or they don't answer.
test-shake-mount-title = Vibration with vacuum on the { $part } alone
test-shake-mount-name = Vibration, { $part } alone
test-shake-mount-why = One mount by hand pump shows whether that mount answers.
test-shake-mount-explain = The hand pump works one mount while the engine idles. The other mount stays as it is.
test-shake-mount-where = Hand pump on the { $part }, its hose led out of the bay.
test-shake-mount-step-1 = Engine off. Pull the hose off the { $part } and cap the hose.
test-shake-mount-step-2 = Join the hand pump by a long hose. Let the engine idle warm.
test-shake-mount-step-3 = Pump to { $target }. Give the shake 0 to 3.
test-shake-mount-step-4 = Let the air in. Give the shake 0 to 3 again.
test-shake-mount-step-5 = Engine off. Put the hose back.
test-shake-mount-means-as-expected = The { $part } answers to vacuum.
test-shake-mount-means-not-as-expected = The { $part } does not answer, though it gets vacuum.
test-shake-field-on-0-3 = Shake with vacuum on
test-shake-field-on-0-3-read = with vacuum { $value }
test-shake-field-off-0-3 = Shake with vacuum off
test-shake-field-off-0-3-read = without { $value }
test-shake-scale-0 = 0 – none
test-shake-scale-1 = 1 – just felt
test-shake-scale-2 = 2 – clearly felt
test-shake-scale-3 = 3 – strong, things rattle

## Wiggle

test-wiggle-title = Move the { $part } and watch
test-wiggle-name = { $part } moved by hand
test-wiggle-why = A fault that comes and goes shows when things move.
test-wiggle-explain = Leave the gauge or meter connected and move one thing at a time. A reading that jumps shows the place.
test-wiggle-where = The { $part }, gauge or meter in view.
test-wiggle-step-1 = Leave the gauge or meter where it was in the last test.
test-wiggle-step-2 = Pull and bend the { $part } gently. Warm it with a hair dryer.
test-wiggle-step-3 = Watch the reading all the time.
test-wiggle-means-as-expected = The reading stays: no loose contact or opening crack here.
test-wiggle-means-not-as-expected = The reading jumps: the fault sits at the { $part }.
test-wiggle-field-steady = Does the reading stay steady?
test-wiggle-field-steady-yes = reading stays
test-wiggle-field-steady-no = reading jumps
test-wiggle-look-1 = Move one thing at a time, and slowly.
