### Repair lines: what to do, what to mind, in order. Looked up as repair-<component>-N, then repair-<family>-N.
### Every repair ends with repair-all-N.

fix-replace = replace the { $part }
fix-refit = refit the { $part }
fix-repair = repair the { $part }
fix-clean = clean the { $part }
fix-charge = charge the { $part }

repair-hose-1 = Photograph the old hose in place. Cut the new one to the same length.
repair-hose-2 = Use vacuum hose with a thick wall. Bore as the nipple, often 3.2–4{"\u00A0"}mm.
repair-hose-3 = Oil or fuel fumes near it: take fluoro- or nitrile-lined hose, not silicone.
repair-hose-4 = Move restrictor, delay valve and check valve across. The arrow stays the same way.
repair-hose-5 = Wet the ends with water, never with mineral oil. Clamps only where one was.
repair-hose-6 = Keep it well away from the exhaust and free of edges. Leave slack for engine roll.
repair-hose-7 = Only an end is split? Cut back to sound rubber if length allows.

repair-mount-1 = Support the engine by a support bar, or as the service information says.
repair-mount-2 = Use new bolts where the service information says so. Start all by hand.
repair-mount-3 = Rock and settle the engine, then tighten. Torque comes from the service information.
repair-mount-4 = Write down the torque and where it comes from.
repair-mount-5 = Put heat shield, { -ground } strap and pipe brackets back.
repair-mount-6 = Was the hose wet inside? Drain and dry hoses and valve first.
repair-mount-7 = Compare the other mounts. Replace only what failed.

repair-valve-1 = Note which hose sits on which port. Photograph them.
repair-valve-2 = A clogged vent filter may only need cleaning.
repair-valve-3 = Dry the hose ends. Twist them on, never bend the nipples.
repair-valve-4 = Connector clean, seal in place, lock clicked.

repair-coil-1 = The coil comes with the solenoid valve: replace the valve.
repair-coil-2 = Note which hose sits on which port. Photograph them.
repair-coil-3 = Connector clean, seal in place, lock clicked.

repair-check-valve-1 = Note the arrow before you pull it. It points to the source.
repair-check-valve-2 = Fit the new one with the arrow the same way.
repair-check-valve-3 = Brake booster on this line? Start the engine: the pedal must sink a little.

repair-reservoir-1 = Empty it if fluid is inside, and find where the fluid came from.
repair-reservoir-2 = Check both nipples and the seam before you fit it.

repair-tee-1 = Note which hose sits on which arm.
repair-tee-2 = Take the same bore. Push each hose fully on.

repair-source-1 = Clean the port on the intake if carbon closes it.
repair-source-2 = A worn pump, or an engine that makes little vacuum, needs its own diagnosis.

repair-wire-1 = Battery off or fuse out before you cut anything.
repair-wire-2 = Same gauge of wire. Crimp with a sealed sleeve, no solder.
repair-wire-3 = Tape and clip it again, away from edges and heat.
repair-wire-4 = Rodent bites: look for the second one.

repair-connector-1 = Ignition off. Clean the pins with contact cleaner; let them dry.
repair-connector-2 = Try each terminal's grip with a matching pin.
repair-connector-3 = Seal in place, lock clicked, no strain on the wires.
repair-connector-4 = Green or loose pins: replace pin and seal, not the valve.

repair-fuse-1 = Same rating, once. Never a bigger one.
repair-fuse-2 = It blows again: stop and find the short first.
repair-fuse-3 = Hunt the short with a lamp in the fuse's place.

repair-relay-1 = Same part. Another one of the same kind can stand in for a test.
repair-relay-2 = Look for corrosion in its socket.

repair-battery-1 = Charge it fully, then test it before you buy one.
repair-battery-2 = Clean posts and clamps. No rings, eye protection on.

repair-module-1 = Prove power, { -ground } and wire at the module before you order one.
repair-module-2 = Read the service bulletins: software may be the cure.
repair-module-3 = A new module usually needs coding by a workshop.

repair-ground-point-1 = Undo it, clean to bare metal, tighten, protect it with grease.
repair-splice-1 = Cut out the joint. Crimp with a sealed sleeve of the same gauge.
repair-restrictor-1 = Clean or replace it. The same bore, the same way round.
repair-bleed-1 = Clean its passage and filter. Never close it.
repair-hand-pump-1 = Change cap, adapter or seal. Test it capped before the next hold.
repair-engine-1 = Diagnose misfire, mixture or idle speed first.
repair-strut-1 = Replace the strut or its bush. Tighten with the engine settled.
repair-exhaust-1 = Free it: hanger, shield or bracket. Work on a cold exhaust.
repair-solid-mount-1 = Support the engine. Torque comes from the service information.
repair-drivetrain-1 = Have shafts, clutch and flywheel looked at.
repair-part-1 = Replace the { $part } with the same part. Note how it was connected.

repair-all-1 = Put every hose and connector back, then pull at each by hand.
repair-all-2 = Then do the same test again: same place, gauge, temperature and gear.
