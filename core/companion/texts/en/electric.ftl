### Tests with a multimeter. Lead colours are named in words, volts are DC, the plug is pulled by its body.
### $battery is what the battery reads now, $fuse the fuse's rating, $band the expected band.

-by-body = Press the lock and pull the connector by its body, not its wires.
-dc = Volts DC, not AC. Range 20{"\u00A0"}V or auto.
-ohms-range = Ohms, lowest range or auto. Never on a live wire.
-black-on-ground = Black lead on chassis { -ground }: bare metal, not paint.

## The meter itself

test-prove-meter-title = Prove the multimeter
test-prove-meter-name = Multimeter proved
test-prove-meter-why = A wrong range or a flat meter battery spoils every reading after it.
test-prove-meter-explain = Measure two things you know: the leads touching each other, and the battery. Then you can trust the meter.
test-prove-meter-where = Leads on each other, then on the battery posts.
test-prove-meter-step-1 = Black lead in COM, red lead in V and ohms. Never in A.
test-prove-meter-step-2 = Set ohms. Touch the leads together and read.
test-prove-meter-step-3 = Set volts DC. Red on battery plus, black on minus. Try the lamp too.
test-prove-meter-means-as-expected = Meter and leads are good.
test-prove-meter-means-not-as-expected = Leads, sockets or the meter's battery: put that right first.
test-prove-meter-lead-red = Red lead on battery plus.
test-prove-meter-lead-black = Black lead on battery minus.
test-prove-meter-hint = First ohms with the leads together, then volts DC, not AC.
test-prove-meter-field-ohms = Leads together
test-prove-meter-field-ohms-read = leads { $value }
test-prove-meter-field-battery = Battery voltage
test-prove-meter-field-battery-read = battery { $value }
test-prove-meter-field-lamp = Does the test lamp light on the battery?
test-prove-meter-field-lamp-yes = lamp lights
test-prove-meter-field-lamp-no = lamp stays dark

## Power at the connector

test-supply-volts-title = Is there power at the connector?
test-supply-volts-name = Power at the connector
test-supply-volts-why = Two readings tell power, wiring and layout apart.
test-supply-volts-explain = With the connector off, each pin shows what the car sends. Which pin should read battery depends on the layout.
test-supply-volts-where = The car's connector, pulled off the valve: look into its open face.
test-supply-volts-step-1 = Ignition off. { -by-body }
test-supply-volts-step-2 = { -black-on-ground } Red lead ready.
test-supply-volts-step-3 = { $engine ->
    [off] Ignition on, engine off. Keyless: leave the brake pedal alone.
   *[idle] Start the engine and let it idle.
}
test-supply-volts-step-4 = Red lead on pin 1, then on pin 2. Touch, don't push.
test-supply-volts-step-5 = Measure the battery too, at its posts.
test-supply-volts-means-as-expected = Power arrives, unloaded. A load test still has to follow.
test-supply-volts-means-not-as-expected = No power: fuse first, then the power wire.
test-supply-volts-lead-red = Red lead on pin 1, then on pin 2.
test-supply-volts-lead-black = Black lead on chassis { -ground }.
test-supply-volts-hint = { -dc }
test-supply-volts-field-pin1 = Pin 1 to chassis { -ground }
test-supply-volts-field-pin1-read = pin 1 { $value }
test-supply-volts-field-pin2 = Pin 2 to chassis { -ground }
test-supply-volts-field-pin2-read = pin 2 { $value }
test-supply-volts-field-battery = Battery now
test-supply-volts-field-battery-read = battery { $value }

test-supply-loaded-title = Does the power hold under load?
test-supply-loaded-name = Power under load
test-supply-loaded-why = A corroded joint shows full volts until current flows.
test-supply-loaded-explain = A small lamp draws as much as the valve. A bad joint gives way under it, and the volts fall.
test-supply-loaded-where = The power pin in the car's connector, lamp as load.
test-supply-loaded-step-1 = { $engine ->
    [off] Connector off, ignition on, engine off. { -black-on-ground }
   *[idle] Connector off, engine idling. { -black-on-ground }
}
test-supply-loaded-step-2 = Join a 2–5{"\u00A0"}W lamp from the power pin to chassis { -ground }.
test-supply-loaded-step-3 = Red lead on the power pin, beside the lamp's wire.
test-supply-loaded-step-4 = Read while the lamp is on. Then measure the battery.
test-supply-loaded-means-as-expected = The power wire carries the load.
test-supply-loaded-means-not-as-expected = It breaks down under load: a joint or wire is bad.
test-supply-loaded-lead-red = Red lead on the power pin, lamp connected.
test-supply-loaded-lead-black = Black lead on chassis { -ground }.
test-supply-loaded-hint = { -dc } A lamp of 2–5{"\u00A0"}W, no LED.
test-supply-loaded-field-pin1 = Power pin, lamp on
test-supply-loaded-field-pin1-read = power pin { $value }
test-supply-loaded-field-battery = Battery now
test-supply-loaded-field-battery-read = battery { $value }

## Fuse and power wire

test-fuse-title = Measure the fuse
test-fuse-name = Fuse
test-fuse-why = No power at the connector: the fuse is the cheapest cause.
test-fuse-explain = A fuse can look whole and be open. Measure both small test points on its back.
test-fuse-where = The valve's fuse in the fuse box. Its place is in the service information.
test-fuse-step-1 = Ignition on, engine off. { -black-on-ground }
test-fuse-step-2 = Red lead on one test point of the fuse, then the other.
test-fuse-step-3 = Or: ignition off, fuse out, measure ohms across it.
test-fuse-means-as-expected = The fuse carries. Measure the power wire next.
test-fuse-means-not-as-expected = The fuse is blown. Find out why before you fit a new one.
test-fuse-lead-red = Red lead on one test point of the fuse, then the other.
test-fuse-lead-black = Black lead on chassis { -ground }.
test-fuse-hint = { -dc } With the fuse out: ohms.
test-fuse-field-in-v = Point with more volts
test-fuse-field-in-v-read = before it { $value }
test-fuse-field-out-v = Other point
test-fuse-field-out-v-read = behind it { $value }
test-fuse-field-ohms = Or fuse out: across it
test-fuse-field-ohms-read = across it { $value }

test-power-wire-title = Measure the power wire
test-power-wire-name = Power wire
test-power-wire-why = The fuse is good and no power arrives: the wire is between.
test-power-wire-explain = The wire runs from the fuse to the connector. Chafe, rodents and corrosion sit where it bends or passes metal.
test-power-wire-where = From the fuse's output to the power pin in the connector.
test-power-wire-step-1 = Ignition off, fuse out, connector off. Set ohms.
test-power-wire-step-2 = Touch the leads together and note the reading.
test-power-wire-step-3 = One lead on the fuse socket's output, one on the power pin.
test-power-wire-step-4 = Wiggle the wire along its way while you read.
test-power-wire-step-5 = Leave one lead on the power pin, the other on chassis { -ground }: open?
test-power-wire-means-as-expected = The wire carries at this small current. A load test decides.
test-power-wire-means-not-as-expected = The wire is broken, corroded, or touches { -ground }.
test-power-wire-lead-red = Red lead on the fuse socket's output.
test-power-wire-lead-black = Black lead on the power pin; red to chassis { -ground } last.
test-power-wire-hint = { -ohms-range } Take the leads' own ohms off.
test-power-wire-field-ohms = Fuse to connector
test-power-wire-field-ohms-read = { $value }
test-power-wire-field-drop-v = Or lost along it, lamp on
test-power-wire-field-drop-v-read = loses { $value }
test-power-wire-field-to-ground-open = Power pin to chassis { -ground }: open?
test-power-wire-field-to-ground-open-yes = open to { -ground }
test-power-wire-field-to-ground-open-no = it reads ohms to { -ground }

## Drive

test-valve-volts-title = Does the valve get its voltage?
test-valve-volts-name = Voltage at the valve
test-valve-volts-why = This is what the valve itself sees when it should work.
test-valve-volts-explain = The module only works the valve in its own window. Zero volts outside that window says nothing. With the connector off a good module may stay silent, so the connected reading decides.
test-valve-volts-where = Across both pins of the valve, connector plugged in, from the wire side.
test-valve-volts-step-1 = Ignition off. Connector off. Leads on both pins of the car's connector.
test-valve-volts-step-2 = Start the engine. Meet the control window: { $window }. Read.
test-valve-volts-step-3 = Engine off. Connector on. Slip thin probes in from the wire side.
test-valve-volts-step-4 = Start the engine, meet the window, read again.
test-valve-volts-step-5 = Measure the battery too, at its posts.
test-valve-volts-means-as-expected = The valve is driven: look at the valve itself.
test-valve-volts-means-not-as-expected = It is not driven. Only counts if the window was met.
test-valve-volts-lead-red = Red lead on the power pin.
test-valve-volts-lead-black = Black lead on the control pin.
test-valve-volts-hint = { -dc } A steady middle value means a pulsed valve.
test-valve-volts-field-volts = Both pins, connector off
test-valve-volts-field-volts-read = connector off { $value }
test-valve-volts-field-plugged-v = Both pins, plugged in
test-valve-volts-field-plugged-v-read = plugged in { $value }
test-valve-volts-field-battery = Battery now
test-valve-volts-field-battery-read = battery { $value }

test-control-pin-title = Does the module switch the control pin?
test-control-pin-name = Control pin
test-control-pin-why = The connected, loaded reading decides between module, wire and valve.
test-control-pin-explain = The module works the valve by pulling this pin to { -ground }, or by feeding it. The voltage must change when the command comes.
test-control-pin-where = The control pin, connector plugged in, from the wire side.
test-control-pin-step-1 = { -black-on-ground } Lead it clear of belt and fan.
test-control-pin-step-2 = Connector plugged in. Slip a thin probe in from the wire side.
test-control-pin-step-3 = Start the engine. Read while the valve is not commanded.
test-control-pin-step-4 = Meet the control window: { $window }. Read again.
test-control-pin-means-as-expected = The module switches. Look at the valve.
test-control-pin-means-not-as-expected = No change: control wire, module, or the window was not met.
test-control-pin-lead-red = Red lead on the control pin, connector plugged in.
test-control-pin-lead-black = Black lead on chassis { -ground }.
test-control-pin-hint = { -dc }
test-control-pin-field-off-v = Valve not commanded
test-control-pin-field-off-v-read = off { $value }
test-control-pin-field-on-v = Valve commanded
test-control-pin-field-on-v-read = on { $value }
test-control-pin-field-battery = Battery now
test-control-pin-field-battery-read = battery { $value }

test-control-wire-title = Measure the control wire
test-control-wire-name = Control wire
test-control-wire-why = No command arrives: the wire comes before the module.
test-control-wire-explain = A module costs more than a wire and seldom fails. Prove the wire first.
test-control-wire-where = From the control pin in the connector to the module's pin.
test-control-wire-step-1 = Ignition off for five minutes. Leads together: note the ohms.
test-control-wire-step-2 = Unplug the valve's connector and the module's, by their bodies.
test-control-wire-step-3 = Measure ohms from the control pin to the module's pin.
test-control-wire-step-4 = Measure from the control pin to chassis { -ground }: open?
test-control-wire-step-5 = Measure from the control pin to battery plus: open?
test-control-wire-means-as-expected = The wire is whole: the module or its inputs remain.
test-control-wire-means-not-as-expected = The wire is broken, or touches { -ground }.
test-control-wire-lead-red = Red lead on the control pin in the connector.
test-control-wire-lead-black = Black lead on the module's pin, then on chassis { -ground }.
test-control-wire-hint = { -ohms-range } Don't spread the pins.
test-control-wire-field-ohms = Connector to module
test-control-wire-field-ohms-read = { $value }
test-control-wire-field-to-ground-open = Control pin to chassis { -ground }: open?
test-control-wire-field-to-ground-open-yes = open to { -ground }
test-control-wire-field-to-ground-open-no = it reads ohms to { -ground }
test-control-wire-field-to-battery-open = Control pin to battery plus: open?
test-control-wire-field-to-battery-open-yes = open to battery plus
test-control-wire-field-to-battery-open-no = it reads ohms to battery plus

## Coil

test-coil-title = Measure the valve's coil
test-coil-name = Valve coil
test-coil-why = An open coil never moves the valve, whatever drives it.
test-coil-explain = The coil is a long thin wire. Its ohms tell whether it is whole. Some coils only open when hot.
test-coil-where = The valve's own two pins, connector off.
test-coil-step-1 = Ignition off. { -by-body }
test-coil-step-2 = Set ohms. One lead on each pin of the valve. Read.
test-coil-step-3 = One lead on a pin, one on the valve's metal case.
test-coil-means-as-expected = The coil is whole at this temperature.
test-coil-means-not-as-expected = Open or shorted: the valve is a cause.
test-coil-lead-red = Red lead on one pin of the valve.
test-coil-lead-black = Black lead on its other pin, then on its case.
test-coil-hint = { -ohms-range }
test-coil-field-ohms = Ohms across the valve
test-coil-field-ohms-read = { $value }
test-coil-field-to-case-open = Pin to the valve's case: open?
test-coil-field-to-case-open-yes = no contact to the case
test-coil-field-to-case-open-no = it reads ohms to the case

## Car state beside a reading, and the options that many fields share

state-connected = connector
state-connected-yes = plugged in
state-connected-no = unplugged
state-engine = engine
state-engine-off = off
state-engine-idle = idling
state-engine-in-gear = idling in gear
state-hot = valve and engine
state-hot-yes = hot
state-hot-no = cold
state-otherwise = The car stands otherwise

## Vibration

vibration-record = { $what }: record { $seconds }
vibration-recording = { $what }: recording. Again?
vibration-kept = { $what }: { $seconds } recorded
vibration-kept-word = Recorded
vibration-not-recorded = Nothing was recorded. Lay the phone down and try again.
