### Faults as clauses without a capital and without a full stop: "the front hose leaks". $part is the component.
### Looked up as fault-<component>-<mode>, then fault-<family>-<mode>, then fault-<mode>.

fault-none = nothing wrong in this circuit
fault-other = a cause outside this circuit

## Any part

fault-leaks = the { $part } leaks
fault-blocked = the { $part } is blocked
fault-off = the { $part } is off
fault-crossed = the { $part } is connected the wrong way round
fault-open = the { $part } is broken
fault-shorted = the { $part } is shorted
fault-high-resistance = the { $part } has too much resistance
fault-to-ground = the { $part } touches { -ground }
fault-to-battery = the { $part } touches battery plus
fault-dead = the { $part } is dead
fault-weak = the { $part } is weak
fault-loose = the { $part } is loose
fault-wrong-part = the { $part } is the wrong part
fault-worn = the { $part } is worn
fault-broken = the { $part } is broken
fault-unknown = something is wrong with the { $part }

## Hoses

fault-hose-leaks = the { $part } leaks
fault-hose-off = the { $part } is off
fault-hose-blocked = the { $part } is kinked or blocked
fault-hose-crossed = the { $part } is on the wrong port
fault-hose-fluid-inside = the { $part } has fluid inside
fault-hose-loose-end = an end of the { $part } is loose and leaks at times

## Mounts

fault-mount-leaks = the { $part } leaks vacuum
fault-mount-torn = the { $part } is torn
fault-mount-sagged = the { $part } has sagged
fault-mount-fluid-lost = the { $part } has lost its fluid
fault-mount-jammed = the { $part } is jammed inside
fault-mount-loose = the { $part } is loose
fault-mount-blocked = the { $part }'s nipple is blocked
fault-mount-under-tension = the { $part } was bolted up under tension
fault-mount-wrong-part = the { $part } is the wrong part

## Vacuum side

fault-source-weak = the { $part } is weak
fault-source-dead = the { $part } gives no vacuum
fault-source-blocked = the { $part }'s port is blocked
fault-check-valve-leaks = the { $part } leaks
fault-check-valve-passes = the { $part } passes back
fault-check-valve-stuck-closed = the { $part } is stuck closed
fault-check-valve-stuck-open = the { $part } is stuck open
fault-check-valve-blocked = the { $part } is blocked
fault-check-valve-crossed = the { $part } is fitted the wrong way round
fault-check-valve-reversed = the { $part } is fitted the wrong way round
fault-reservoir-leaks = the { $part } leaks
fault-tee-leaks = the { $part } leaks
fault-tee-blocked = the { $part } is blocked
fault-restrictor-blocked = the { $part } is blocked
fault-bleed-blocked = the { $part } is blocked

## Solenoid valve

fault-valve-leaks = the { $part } leaks
fault-valve-passes = the { $part } passes at rest
fault-valve-stuck-closed = the { $part } is stuck closed
fault-valve-stuck-open = the { $part } is stuck open
fault-valve-vent-leaks = the { $part }'s vent leaks
fault-valve-vent-blocked = the { $part }'s vent is blocked
fault-valve-blocked = the { $part } is blocked
fault-valve-crossed = the hoses on the { $part } are swapped

## Electric side

fault-battery-weak = the battery is weak
fault-battery-dead = the battery is flat
fault-fuse-blown = the { $part } is blown
fault-relay-dead = the { $part } does not switch
fault-wire-open = the { $part } is broken
fault-wire-high-resistance = the { $part } has a bad joint
fault-wire-to-ground = the { $part } touches { -ground }
fault-wire-to-battery = the { $part } touches battery plus
fault-wire-shorted = the { $part } is shorted
fault-connector-open = the { $part } makes no contact
fault-connector-high-resistance = the { $part } is corroded
fault-connector-off = the { $part } is off
fault-connector-crossed = the { $part }'s pins are swapped
fault-coil-open = the { $part } is open
fault-coil-shorted = the { $part } is shorted
fault-coil-to-ground = the { $part } touches its case
fault-module-dead = the control module does not switch the valve
fault-module-always-on = the control module keeps the valve on
fault-splice-high-resistance = the { $part } has a bad joint
fault-ground-point-high-resistance = the { $part } has a bad joint

## Tester

fault-hand-pump-leaks = the hand pump leaks
fault-hand-pump-warming = the trapped air warms up
fault-hand-pump-cooling = the trapped air cools down
fault-hand-pump-settling = rubber is still settling
fault-hand-pump-narrow = a narrow hose lets the gauge settle late
fault-hand-pump-needle-sticks = the gauge needle sticks
fault-multimeter-dead = the multimeter shows nothing

## Outside this circuit

fault-engine-rough = the engine runs rough
fault-engine-idle-low = the engine idles too low
fault-strut-worn = the torque strut is worn
fault-exhaust-touching = the exhaust touches the body
fault-solid-mount-broken = a solid mount is broken
fault-drivetrain-other = the drivetrain shakes
