### What the reasoning has to say: results first, then questions, reasons, what speaks for and against.
### Quantities come as text; $x-n is their number, for plurals only.

## Vacuum hold tests

hold-holds = Holds: lost { $drop } in { $seconds }. Allowed: { $limit } in { $within }.
hold-slow-leak = Slow leak: lost { $drop } in { $seconds }. That is within { $limit } in { $within }.
hold-leaks = Leaks: lost { $drop } in { $seconds }. Allowed: { $limit } in { $within }.
hold-undecided = Too close to call: lost { $drop } in { $seconds }. Allowed: { $limit } in { $within }.
hold-will-not-build = Will not build vacuum: it stops at { $highest }, short of { $target }.
hold-no-reading = There is no second reading yet. Watch the needle and read it once more.
hold-no-vacuum = At the start there was no vacuum to lose.
hold-above-ambient = { $start } is more than the air here allows: { $most } at most. Check the unit.
hold-not-usable = These figures can't be used. Read the gauge again.
hold-not-in-circuit = This part is not in the circuit you chose.
hold-go-on = Watch { $seconds } more: that would tell.
hold-finer-gauge = A gauge you can read to { $step } would tell.
hold-at-the-limit = It lies right at the limit. More time would not tell either.
hold-tester-dominates = Most of this loss may be the hand pump's own. Seal the tester first.
hold-leak-in-part = The leak is in the { $part }.
hold-leak-in-one-of = The leak is in one of { $count } parts. Test them one by one.
hold-bleed-normal = This line has an air bleed: falling slowly is normal here.
hold-strokes-few = So few strokes mean only { $volume } of air. Something may be blocked.
hold-strokes-many = Far more strokes than this volume needs: a leak, or more parts than thought.
hold-readings-scatter = The readings jump more than a leak explains. Tap the gauge, read again.
hold-start-low = It began well below { $target }. Pump higher for a surer answer.
hold-tester-taken-off = The hand pump's own leak of { $leak } is taken off.
hold-clears-no-torn-mount = A mount that holds can still be torn. Look at it too.
hold-clears-no-blocked-hose = A blocked hose holds as well. Check that air passes.
hold-form-hole = The needle fell in a straight line: one small hole.
hold-form-thin-path = The fall slowed down: a crack or a thin path.
tester-proved = Hand pump, gauge and adapter are tight. Results can be trusted.
tester-fails = The tester itself leaks. Change cap, adapter or hand pump, then test again.
tester-not-tested = The hand pump was not tested alone. A leak in it would count here.

## The whole and its parts

additivity-agrees = The parts together leak as much as the whole: nothing is missing.
additivity-explained = What the tested parts leak explains the whole.
additivity-rest = The whole leaks { $rest } more than its tested parts. The rest is in the { $untested-n ->
    [one] part
   *[other] { $untested } parts
} not tested yet.
additivity-rest-in = The whole leaks { $rest } more than its tested parts. That points to the { $part }.
additivity-whole-more = The whole leaks { $rest } more than its parts alone. Look at joints and adapter.
additivity-parts-more = This contradicts the hold of the whole: its parts alone leak more. Probably an adapter or a cap leaked.

## What a leak does at work

effect-measured-keeps = The mounts still get { $vacuum } of { $source }. This leak hardly matters at work.
effect-measured-lacks = The mounts get only { $vacuum } of { $source }.
effect-mount-keeps = At idle about { $vacuum } of { $source } should still arrive. This leak alone hardly matters.
effect-mount-lacks = At idle only about { $vacuum } of { $source } would arrive.
effect-idle-changes = It lets in about { $share } of the idle air: enough to disturb the idle.
effect-idle-unchanged = It lets in { $share } of the idle air: too little to disturb the idle.

## What to pump to

target-usual = Pump to { $target }, as usual.
target-usual-sea-level-assumed = Pump to { $target }. Sea level is assumed; type the altitude if you are high up.
target-thin-air = Pump to { $target } only: the thin air here allows { $most } at most.
target-short-scale = Pump to { $target }: your gauge ends a little above.

## Eyes, ears, hands

complaint-reproduced = The complaint is there now.
complaint-not-reproduced = The complaint is not there now. A good result may prove little.
complaint-none-felt = No complaint, and nothing is felt.
codes-none = No codes are stored. That does not clear hoses and mounts.
codes-mount-circuit = { $count-n ->
    [one] Stored code { $codes }: it names
   *[other] Stored codes { $codes }: they name
} the circuit of the mounts' valve, not a part.
codes-others = { $count-n ->
    [one] Stored code { $codes }: it is
   *[other] Stored codes { $codes }: they are
} not about the mounts. Clear up the cause first.
idle-good = The engine idles evenly at { $rpm }.
idle-rough = The engine runs rough. Cure that first: it shakes on good mounts too.
idle-hunting = The idle hunts up and down. Cure that first.
idle-lowish = { $rpm } is a little low for a warm idle.
idle-highish = { $rpm } is a little high. Is the engine warm?
idle-low = { $rpm } is too low. An engine that idles so slowly shakes by itself.
idle-high = { $rpm } is too high for a warm idle. Look for an intake leak.
look-clear = Every part looks right from outside.
look-found = { $count-n ->
    [one] One part looks wrong.
   *[other] { $count } parts look wrong.
}
look-found-cracked = The { $part } is cracked or split.
look-found-off = The { $part } is off or loose.
look-found-oily = The { $part } is oily outside.
look-found-kinked = The { $part } is kinked or flattened.
look-found-chafed = The { $part } is chafed through.
look-found-corroded = The { $part } is corroded.
look-found-wet-inside = The { $part } is wet inside: fluid from a mount, or oil.
mount-looks-good = The { $part } shows no tear. That does not prove it works.
mount-torn = The { $part } is torn: rubber has parted from metal.
mount-wet = The { $part } loses its fluid: wet below its own seam.
mount-sagged = The { $part } sits { $sag } lower than its pair: it has sagged.
mount-sags-a-little = The { $part } sits { $sag } lower. That may be normal.
mount-moves-well = The { $part } moves without a knock: it is attached.
mount-clunks = The { $part } knocks when levered.
mount-gap-opens = A gap opens in the { $part } when levered: it is torn.
wiggle-steady = Moving the { $part } changes nothing.
wiggle-jumps = The reading jumps when the { $part } moves: the fault sits there.

## Vacuum at work

source-good = The source gives { $vacuum }. Expected: { $low } to { $high }.
source-high = The source gives { $vacuum }, even more than { $high }. That is enough.
source-felt = The source pulls strongly. A gauge would say how much.
source-none = No vacuum at the source: { $vacuum }.
source-not-felt = Hardly any pull at the source.
source-unsteady = The needle swings around { $vacuum }: that points to the engine, not to the hoses.
source-lowish = { $vacuum } is a little low. Expected: { $low } to { $high }.
source-low = Only { $vacuum } at the source. Expected: { $low } to { $high }.
source-low-throttle-free = Engines without a throttle make little vacuum and use a pump. Check which kind this is.
delivered-good = { $vacuum } arrive at the mounts; about { $source } was expected.
delivered-none = No vacuum arrives: { $vacuum }.
delivered-slow = { $vacuum } arrive, but only after { $seconds }. Something narrows the way.
delivered-uncalled = { $vacuum } arrive although the module should not ask for it.
delivered-low = Only { $vacuum } arrive at the mounts; about { $source } was expected.
delivered-bleed = { $vacuum } arrive. Less than at the source is normal with an air bleed.
delivered-pulsed = { $vacuum } arrive. A pulsed valve gives a middle value; this alone does not tell.
delivered-compare-source = Measure the source too: its vacuum is only assumed.
switch-over-good = The vacuum leaves in { $seconds }. Valve, vent and command work.
switch-over-slowish = The vacuum leaves in { $seconds }, a little slow. Expected: { $within }.
switch-over-slow = The vacuum takes { $seconds } to leave. Expected: { $within }. Vent or hose is narrow.
switch-over-stays = The vacuum stays: { $rests } are left after { $seconds }.
switch-over-stays-partly = Part of the vacuum stays: { $rests } are left after { $seconds }.
switch-over-nothing-to-leave = There was no vacuum to leave. This does not tell anything yet.
flow-free = Air passes through the { $part }.
flow-blocked = The { $part } lets no air pass: kinked, melted or blocked.
bypass-changes = Fed straight from the engine the mounts answer: look at valve and wiring.
bypass-changes-though-delivered = The mounts answer, and vacuum arrived before: a fault that comes and goes.
bypass-no-change = Even with direct vacuum nothing changes: mounts, hoses, or a cause outside.
command-window-not-met = The module does not work the valve in this state. So this does not count against it.
command-window-unknown = It is not known when the module works the valve. So this does not count against it.

## Valve by hand

valve-off-good = At rest the solenoid valve does what it should.
valve-off-passes = At rest the solenoid valve lets vacuum through.
valve-off-shut = At rest the solenoid valve should pass, and it is shut.
valve-off-no-vent = At rest the solenoid valve does not let the mounts breathe: vent blocked.
valve-off-vents = The solenoid valve leaks at its vent while it passes.
valve-off-vent-not-tried = The vent was not tried. A blocked one would stay hidden.
valve-on-good = Fed by the jumper the solenoid valve switches. Look at its wiring.
valve-on-dead = Fed by the jumper the solenoid valve does nothing, not even a click.
valve-on-clicks-only = The solenoid valve clicks, but nothing changes: stuck or blocked.
valve-on-stuck = Fed by the jumper the solenoid valve does not switch.
valve-on-no-click = It switched without a click you could hear. Try once more.
valve-on-vents = Switched on, the solenoid valve leaks at its vent.
valve-on-no-vent = Switched on, the solenoid valve does not let the mounts breathe.

## Power

supply-volts-one = Power arrives: { $volts } on one pin, battery { $battery }.
supply-volts-bias = { $volts } on the other pin comes from the module: normal for many.
supply-volts-load-follows = Unloaded volts can hide a bad joint. Measure under load too.
supply-volts-none-normal = No power with the engine off is normal here: the module feeds the valve.
supply-volts-none-commanded = No power at idle. Many modules stay off with the connector unplugged.
supply-volts-always-on = { $volts } although the module should feed nothing now.
supply-volts-both-normal = Both pins at { $volts }: normal with this layout.
supply-volts-both = Both pins at battery voltage, { $volts }. With the connector off that is odd.
supply-volts-low = Only { $volts } at the connector, battery { $battery }.
supply-volts-relay-off = No power yet: a relay may have dropped. Measure again at idle.
supply-volts-none = No power at the connector: { $volts }, battery { $battery }.
supply-volts-other-layouts = In some layouts this is normal. Measure again at idle.
supply-loaded-good = { $volts } under load, battery { $battery }: the power wire carries.
supply-loaded-above-battery = { $volts } is more than the battery has. Measure both again.
supply-loaded-marginal = { $volts } under load, { $drop } below the battery: a little much.
supply-loaded-low = Only { $volts } under load, { $drop } below the battery: it breaks down.
supply-loaded-hidden-joint = Unloaded it looked good. About { $ohms } sit in a joint or wire.
fuse-good = { $in } before and { $out } behind the fuse: it carries.
fuse-blown = The fuse is blown: { $in } before, { $out } behind.
fuse-open = The fuse is blown: no connection across it.
fuse-find-the-cause = Find out why it blew before you fit another of the same rating.
fuse-ohms-good = The fuse carries: { $ohms }.
fuse-ohms-high = { $ohms } across the fuse is a little much. Clean its blades, measure again.
fuse-ohms-bad = { $ohms } across the fuse: it or its socket is bad.
fuse-no-feed = No power before the fuse: { $in }, battery { $battery }.
fuse-no-feed-relay = No power before the fuse. A relay may have dropped: measure at idle.
fuse-low-feed = Only { $in } before the fuse, battery { $battery }.
fuse-one-side = { $in } before the fuse. Measure its other test point too.
fuse-loses = { $in } before and { $out } behind: the fuse or its socket loses volts.
power-wire-good = The power wire carries: { $ohms } without the leads.
power-wire-open = The power wire is broken: no connection.
power-wire-marginal = { $ohms } in the power wire is a little much.
power-wire-high = { $ohms } in the power wire is too much.
power-wire-drop = The power wire loses { $drop } under load.
power-wire-drop-marginal = The power wire loses { $drop } under load: a little much.
wire-one-strand = One last strand passes ohms too. A load test decides.
wire-under-load = With the valve on, about { $left } would be left: { $drop } lost.
battery-charge-first = The battery has only { $volts }. Charge it first.

## Drive

valve-volts-good = The valve gets { $volts }, battery { $battery }. Look at the valve itself.
valve-volts-none = The valve gets no voltage when it should: { $volts }.
valve-volts-low = The valve gets only { $volts }, battery { $battery }.
valve-volts-hidden-joint = With the connector off it looked good: a bad joint shows under load.
valve-volts-maybe-pulsed = A middle value can also be a pulsed valve. A lamp or scope tells.
valve-volts-open-good = { $volts } with the connector off: the module drives.
valve-volts-open-none = { $volts } with the connector off. Many modules stay silent then.
valve-volts-connect = Measure again with the connector plugged in: that decides.
control-pin-good = The module switches: { $off } off, { $on } on.
control-pin-off-good = { $off } with the valve off, as it should be. Now measure with it on.
control-pin-off-odd = { $off } with the valve off is odd. Measure with it on.
control-pin-always-low = The control pin stays low: { $off }. Wire to { -ground }, or no power through the coil.
control-pin-always-on = The control pin stays on: { $off } when it should be off.
control-pin-no-change = Nothing changes: { $off } off, { $on } on. The module does not switch it.
control-pin-weak = { $off } off, { $on } on: it switches, but weakly.
control-pin-pulsed = { $off } off, { $on } on: a pulsed valve, driven.
control-pin-maybe-pulsed = A middle value can also be a pulsed valve. A lamp or scope tells.
power-wire-to-ground = The power wire touches { -ground }: it blows each new fuse.
power-wire-ground-not-tried = Whether it touches { -ground } was not measured.
control-wire-good = The control wire carries: { $ohms } without the leads.
control-wire-open = The control wire is broken: no connection.
control-wire-to-ground = The control wire touches { -ground }: the valve is on all the time.
control-wire-to-battery = The control wire touches battery plus.
control-wire-marginal = { $ohms } in the control wire is a little much.
control-wire-high = { $ohms } in the control wire is too much.
control-wire-ground-not-tried = Whether it touches { -ground } was not measured.
coil-good = The coil is whole: { $ohms }. Expected: { $low } to { $high }.
coil-hot-too = Some coils only open when hot. Measure hot too if the fault comes hot.
coil-open = The coil is open: no connection.
coil-to-case = The coil touches the valve's case.
coil-shorted = The coil is shorted: { $ohms }. Expected: { $low } to { $high }.
coil-near-band = { $ohms } is just outside { $low } to { $high }. The coil may still be good.
coil-low = { $ohms } is too low. Expected: { $low } to { $high }.
coil-high = { $ohms } is too high. Expected: { $low } to { $high }.
prove-meter-good = Meter and leads are good: { $ohms } with the leads together.
prove-meter-leads-open = Leads together, and no connection: a lead or the meter's fuse is broken.
prove-meter-leads-high = { $ohms } with the leads together is too much. Clean or change the leads.
prove-meter-lamp = The test lamp stays dark on the battery: its filament is broken.
prove-meter-no-battery = { $volts } on the battery can't be. Check range, sockets and leads.

## Vibration

shake-works = The shake changes { $times } with vacuum: the mounts answer.
shake-felt-works = Shake { $on } with vacuum, { $off } without: the mounts answer.
shake-wrong-way = The shake changes { $times }, but the wrong way round. Are hoses swapped?
shake-felt-wrong-way = Shake { $on } with vacuum, { $off } without: the wrong way round. Are hoses swapped?
shake-small-effect = The shake changes only { $times }. That does not tell.
shake-no-effect = Vacuum does not change the shake: { $times }.
shake-felt-no-effect = Shake { $on } with vacuum, { $off } without: no change.
shake-strong-either-way = Strong shake with and without vacuum. The scale ends here: a change would not show.
shake-none-either-way = No shake with or without vacuum. There is nothing to compare.
shake-move-the-phone = Or the phone lies where it does not shake. Try another place.
shake-nothing-recorded = Nothing was recorded. Lay the phone on metal and try again.
shake-one-side = Only one side is there. Feel it with vacuum and without.
shake-too-short = Too short. Record for { $seconds } at least.
shake-engine-rough = The engine runs rough: that shakes too.

## Not done

not-done = Not done: { $reason }.
not-available = Not available here.
answer-does-not-fit = This answer does not fit the test. Enter it again.

## Readings that can hardly be right: what is odd, then the likely slip

odd-above-ambient = { $vacuum } is more than the air here allows: { $most } at most.
odd-far-below-target = { $vacuum } is far below { $target }, and yet you went on.
odd-needle-rises = The vacuum rose by { $rise } while nobody pumped.
odd-negative-volts = { $volts } is below zero.
odd-many-volts = { $volts } is more than a car has.
odd-battery-low = { $volts } is too little for a battery that just ran the car.
odd-above-battery = { $volts } is more than the battery's { $battery }.
odd-negative-ohms = { $ohms } is below zero.
odd-few-ohms = { $ohms } is next to nothing for a coil.
odd-many-ohms = { $ohms } is very much for this.
odd-rpm = { $rpm } is no idle speed.
odd-contradicts = This goes against { $count-n ->
    [one] another reading
   *[other] { $count } other readings
}.
likely-other-scale = Perhaps you read the { $likely } scale instead of { $unit }.
likely-other-unit = Perhaps the figure is in { $likely }, not in { $unit }.
likely-typing = Perhaps a slip in typing.
likely-still-pumped = Perhaps somebody still pumped, or the gauge stuck. Tap it.
likely-leads-swapped = Perhaps red and black lead are swapped.
likely-millivolts = Perhaps the meter shows millivolts: { $volts }.
likely-ac-range = Perhaps the meter stands on AC.
likely-bad-contact = Perhaps a lead does not touch bare metal.
likely-other-engine-state = Perhaps the engine ran for one and not for the other.
likely-live-wire = Perhaps the wire was live. Ignition off, then measure.
likely-kiloohms = Perhaps the meter shows kΩ: { $ohms }.
likely-milliohms = Perhaps the meter shows mΩ: { $ohms }.
likely-open = Perhaps there is no connection at all: tap “open” instead.
likely-dial-factor = Perhaps the dial counts in tens, hundreds or thousands: { $rpm }.
likely-not-idling = Perhaps the engine was not idling.
likely-other-place = Perhaps another place, pin or state of the car.

## Why this test now, why to stop

why-textbook = Next in the textbook order, about { $minutes }.
why-settles = { $count-n ->
    [one] It settles about { $share } of the doubt that is left; the finding is about { $finding } away.
   *[other] It settles about { $share } of the doubt between { $count } causes; the finding is about { $finding } away.
}
why-ends = { $count-n ->
    [one] It ends the search with a chance of { $chance }.
   *[other] It decides between { $count } causes with a chance of { $chance }.
}
why-odd = This reading goes badly with the others: a slip with a chance of { $chance }. Look once more before anything is built on it.
why-leans = The finding leans on this reading. Look at it once more before a part is blamed.
why-proves = It shows that the tester itself is sound, before a part is blamed.
why-mends = The tester itself is probably bad. Put it right or change it, then prove it here: once it is good, what was read with it before no longer counts.
why-again = Once more, set up anew: a poor seal or a loose end can fool one hold. The finding is about { $finding } away.
stop-sound = All tests fit a sound circuit, { $sure } sure.
stop-outside = The cause lies outside this circuit, { $sure } sure.
stop-found = { $sure } sure: more tests would not change what to repair.
stop-found-unexplained = { $sure } sure, but it does not explain the complaint. No test left would.
stop-tester = The tester itself is most suspect. Test or change it first.
stop-nothing-left = No test that is left would tell enough more to be worth its time. The leading cause stands at { $sure }.
stop-inseparable = No test that is left is likely to tell the leading causes apart. The likeliest stands at { $sure }.

## What speaks for and against

evidence-for = { $test }: { $outcome }. That fits this cause { $times } better than the others.
evidence-against = { $test }: { $outcome }. That fits the other causes { $times } better.
outcome-holds = holds
outcome-slow-leak = slow leak
outcome-leaks = leaks
outcome-will-not-build = will not build vacuum
outcome-undecided = undecided
outcome-as-expected = as expected
outcome-not-as-expected = not as expected
outcome-not-done = not done
