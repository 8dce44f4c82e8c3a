### What a person picks from: complaints, circuits, properties, tools, who is at work.

## Complaints (design §10). As tapped, and as they stand in a sentence.

complaint-question = What is wrong?
complaint-shake-idle = It shakes at idle
complaint-shake-idle-slight = It shakes a little at idle
complaint-shake-idle-gear = It shakes at idle in gear
complaint-harsh-pulling-away = It is harsh when pulling away
complaint-soft-under-way = The engine bounces under way
complaint-clunk = It clunks on shifting or lifting off
complaint-code-stored = A code is stored
complaint-none = Nothing: a check only
complaint-shake-idle-phrase = shaking at idle
complaint-shake-idle-slight-phrase = slight shaking at idle
complaint-shake-idle-gear-phrase = shaking at idle in gear
complaint-harsh-pulling-away-phrase = harshness when pulling away
complaint-soft-under-way-phrase = an engine that bounces under way
complaint-clunk-phrase = a clunk on shifting or lifting off
complaint-code-stored-phrase = a stored code
complaint-none-phrase = no complaint, a check only

## Electric plug on the mount

not-this-job = An electric plug on the mount and no hose? That mount is not vacuum-operated. Stop here.

## Vacuum layouts

template-one-mount = One mount, one valve
template-two-mounts-one-valve = Two mounts, one valve
template-reservoir-on-tee = Two mounts, one valve, reservoir on a tee
template-two-valves-shared-feed = Two mounts, a valve for each
template-four-mounts = Four mounts, one valve
template-pump-with-brake-booster = Vacuum pump shared with the brakes
template-two-mounts-open-at-rest = Two mounts, valve open at rest
template-two-stage-mount = One mount with two chambers
template-bled-branch = One mount with an air bleed
template-restricted-branch = Two mounts, restrictor after the valve
template-pulsed-mount = One mount, pulsed valve
template-shared-valve-block = Valve block shared with other users

## Electric layouts

layout-ignition-fed-ground-switched = Power with the ignition, module switches { -ground }
layout-relay-fed-ground-switched = Power by a relay, module switches { -ground }
layout-supply-switched = Module switches the power, { -ground } is fixed
layout-shared-fuse-and-splice = One fuse and splice for several users
layout-pulsed-with-diode = Module pulses the valve
layout-push-pull = Module drives both pins

## Properties of a circuit

property-vacuum-means = Vacuum makes the mounts
property-vacuum-means-soft = Soft, for idling
property-vacuum-means-stiff = Stiff, for driving
property-rest = Valve without current
property-rest-closed = Shut, and vents the mounts
property-rest-open = Open, passes vacuum
property-switched = The module switches
property-switched-ground = The { -ground } side
property-switched-supply = The power side
property-feed = Power comes
property-feed-ignition = With the ignition
property-feed-relay = Through a relay the module holds
property-window = The module works the valve
property-window-idle = At idle
property-window-idle-in-gear = At idle in gear
property-source = Vacuum comes from
property-source-intake = The engine's intake
property-source-mechanical-pump = A pump on the engine
property-source-electric-pump = An electric pump
property-check-valve = Check valve near the source
property-check-valve-yes = Fitted
property-check-valve-no = Not fitted
property-unknown = I don't know

window-idle = warm and idling for a minute
window-idle-in-gear = warm, idling in gear, brakes held
window-unknown = warm, idling for a minute; then once in gear

## Tools

tool-hand-pump = Hand pump with gauge
tool-cap = Caps for hose ends
tool-multimeter = Multimeter
tool-fused-jumper = Fused jumper, 3–5{"\u00A0"}A at the battery end
tool-lamp = Filament lamp, 2–5{"\u00A0"}W, no LED
tool-spare-hose = Spare vacuum hose
tool-code-reader = Code reader
tool-tachometer = Tachometer
tool-wooden-lever = Wooden lever

## Preconditions

need-engine-off = Engine off
need-engine-idle = Engine warm and idling
need-engine-in-gear = Idling in gear, brakes held
need-ignition-on = Ignition on, engine off
need-window = Control window met: { $window }
need-second-person = A second person in the driver's seat
need-connector-on = Connector plugged in
need-connector-off = Connector unplugged

## Who is at work

profile-owner = Owner
profile-owner-detail = Everything is explained. Nothing in gear.
profile-mechanic = Mechanic
profile-mechanic-detail = Short texts. Tests in gear with a second person.

## Why a test is not done

cannot-no-access = Can't reach it
cannot-no-tool = Tool is missing
cannot-not-safe = Not safe here
cannot-not-fitted = The car has no such part
cannot-not-now = Not now
cannot-not-available = Not to be had here
cannot-why = Another reason
cannot-why-missing = Say the reason first.
cannot-own-words = Can't do it for this reason
cannot-no-access-reason = it can't be reached
cannot-no-tool-reason = the tool was missing
cannot-not-safe-reason = it was not safe there
cannot-not-fitted-reason = the vehicle has no such part
cannot-not-now-reason = it was left for later
cannot-not-available-reason = it was not available

## Why a test is not offered here and now

not-offered-hand-pump = Needs a hand pump with gauge.
not-offered-cap = Needs caps for hose ends.
not-offered-multimeter = Needs a multimeter.
not-offered-fused-jumper = Needs a fused jumper.
not-offered-lamp = Needs a 2–5{"\u00A0"}W filament lamp.
not-offered-spare-hose = Needs a spare vacuum hose.
not-offered-code-reader = Needs a code reader.
not-offered-tachometer = Needs a tachometer.
not-offered-wooden-lever = Needs a wooden lever.
not-offered-alone = Needs a second person in the driver's seat.
not-offered-engine = Needs an engine that runs.
