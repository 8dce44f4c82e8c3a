### Cautions, shown before the step they belong to. The signal word comes from the catalogue.
### Usual trade practice; local codes, licensed practice and the vehicle's service information outrank them.

signal-danger = DANGER
signal-warning = WARNING
signal-caution = CAUTION
signal-notice = NOTICE

## Engine off

caution-engine-may-start = The engine can start by itself: auto stop-start, hybrid, remote start. Key off and away from the car. The fan may still start.
caution-engine-may-start-key-on = With the ignition on the engine and the fan can start by themselves. Hands, sleeves and leads clear of belt and fan.

## Engine running

caution-engine-running = Belt and fan catch hair, sleeves, lanyards and test leads. Keep all of them clear.
caution-fumes = Exhaust gas kills. Work outdoors or with extraction.
caution-hot-parts = Exhaust, coolant parts and mount brackets burn. Never open a hot coolant cap.
caution-in-gear = A person in the seat, foot on the brake, parking brake set. Wheels chocked, level ground, nobody before or behind. No hand in the bay, never on a { -lift } or jack, under 5 seconds.
caution-keep-clear-hoses = Fix the test hose clear of belt, fan and exhaust before you start the engine.
caution-leads-clear = Fix the test leads clear of belt, fan and exhaust before you start the engine.

## Around the car

caution-under-the-car = Never under a car on a jack alone. Use rated stands or a { -lift }.
caution-high-voltage = Orange cables: never open or pierce them. Qualified persons only.
caution-airbag-wiring = Airbag or belt wiring near here: no lamp, no ohmmeter, no unplugging. Keep off ignition, injector and xenon wiring too.
caution-lever-slips = The lever can slip. Wood only, away from oil pan, hoses and wires, no hand in the gap.
caution-mount-fluid = Mount fluid harms skin and eyes and poisons animals. Collect it.
caution-gentle-heat = A hair dryer only, no heat gun or flame. Fuel fumes can catch fire.

## Vacuum

caution-no-over-vacuum = Never above { $most }: diaphragms tear.
caution-never-blow = Never blow air into a mount or valve. No flammable cleaner sprayed to find leaks.
caution-nipples-snap = Plastic nipples snap. Twist the hose, don't pull.
caution-keep-arrow = Refit it with its arrow the same way.
caution-brake-vacuum-open = The brakes may share this vacuum. Don't move the car with the line open. Afterwards the pedal must sink at engine start; try the brakes at walking pace.
caution-not-for-driving = The bypass is for this test at idle. Never drive with it.

## Electric

caution-codes-before-unplugging = Unplugging stores new codes. Read the old ones first.
caution-no-rings = No rings or bracelets, eyes protected: a battery burns.
caution-jumper-fuse = The jumper's fuse, 3–5{"\u00A0"}A, sits at the battery end.
caution-jumper-valve-only = Feed the valve, unplugged from the car. Never the car's connector: it harms the module.
caution-jumper-polarity = Right polarity: a diode inside the valve does not forgive.
caution-jumper-short-time = On for less than 30 seconds: the coil gets hot.
caution-meter-current-socket = Red lead in the V socket. In the A socket it is a dead short.
caution-pins-spread = Thin probes only. A thick one spreads the pin.
caution-nothing-pierced = Pierce no wire and no seal: it corrodes later.
caution-lamp-size = A filament lamp of 2–5{"\u00A0"}W. A bigger one harms the module, an LED loads nothing.
caution-ohms-without-power = Never measure ohms on a live wire: ignition off, fuse out.
caution-fuse-same-rating = Same rating, once. It blows again: stop and find the short.
caution-module-static = Touch bare body metal before you unplug the module. Ignition off for five minutes.

## For the whole job

