### Fehler als Satz ohne Punkt: „der Schlauch vorn ist undicht“. $part-the ist das Bauteil mit Artikel.
### Gesucht als fault-<Bauteil>-<Art>, dann fault-<Familie>-<Art>, dann fault-<Art>.

fault-none = kein Fehler in diesem Kreis
fault-other = eine Ursache außerhalb dieses Kreises

## Jedes Bauteil

fault-leaks = { $part-the } ist undicht
fault-blocked = { $part-the } ist verstopft
fault-off = { $part-the } ist ab
fault-crossed = { $part-the } ist verkehrt angeschlossen
fault-open = { $part-the } ist unterbrochen
fault-shorted = { $part-the } hat einen Kurzschluss
fault-high-resistance = { $part-the } hat zu hohen Widerstand
fault-to-ground = { $part-the } berührt { -ground }
fault-to-battery = { $part-the } berührt Batterie plus
fault-dead = { $part-the } ist ausgefallen
fault-weak = { $part-the } ist schwach
fault-loose = { $part-the } ist locker
fault-wrong-part = { $part-the } ist das falsche Teil
fault-worn = { $part-the } ist verschlissen
fault-broken = { $part-the } ist gebrochen
fault-unknown = etwas stimmt nicht: { $part }

## Schläuche

fault-hose-leaks = { $part-the } ist undicht
fault-hose-off = { $part-the } ist ab
fault-hose-blocked = { $part-the } ist geknickt oder verstopft
fault-hose-crossed = { $part-the } sitzt am falschen Anschluss
fault-hose-fluid-inside = { $part-the } hat Flüssigkeit innen
fault-hose-loose-end = { $part-the } sitzt an einem Ende lose und ist zeitweise undicht

## Motorlager

fault-mount-leaks = { $part-the } verliert Unterdruck
fault-mount-torn = { $part-the } ist gerissen
fault-mount-sagged = { $part-the } ist abgesackt
fault-mount-fluid-lost = { $part-the } hat seine Flüssigkeit verloren
fault-mount-jammed = { $part-the } klemmt innen
fault-mount-loose = { $part-the } ist locker
fault-mount-blocked = { $part-the } hat einen verstopften Stutzen
fault-mount-under-tension = { $part-the } wurde unter Spannung verschraubt
fault-mount-wrong-part = { $part-the } ist das falsche Teil

## Unterdruckseite

fault-source-weak = { $part-the } ist schwach
fault-source-dead = { $part-the } liefert keinen Unterdruck
fault-source-blocked = { $part-the } hat einen verstopften Anschluss
fault-check-valve-leaks = { $part-the } ist undicht
fault-check-valve-passes = { $part-the } lässt zurück
fault-check-valve-stuck-closed = { $part-the } klemmt geschlossen
fault-check-valve-stuck-open = { $part-the } klemmt offen
fault-check-valve-blocked = { $part-the } ist verstopft
fault-check-valve-crossed = { $part-the } ist verkehrt herum eingebaut
fault-check-valve-reversed = { $part-the } ist verkehrt herum eingebaut
fault-reservoir-leaks = { $part-the } ist undicht
fault-tee-leaks = { $part-the } ist undicht
fault-tee-blocked = { $part-the } ist verstopft
fault-restrictor-blocked = { $part-the } ist verstopft
fault-bleed-blocked = { $part-the } ist verstopft

## Magnetventil

fault-valve-leaks = { $part-the } ist undicht
fault-valve-passes = { $part-the } lässt in Ruhe durch
fault-valve-stuck-closed = { $part-the } klemmt geschlossen
fault-valve-stuck-open = { $part-the } klemmt offen
fault-valve-vent-leaks = { $part-the } ist an der Entlüftung undicht
fault-valve-vent-blocked = { $part-the } hat eine verstopfte Entlüftung
fault-valve-blocked = { $part-the } ist verstopft
fault-valve-crossed = die Schläuche an { $part-dat } sind vertauscht

## Elektrische Seite

fault-battery-weak = die Batterie ist schwach
fault-battery-dead = die Batterie ist leer
fault-fuse-blown = { $part-the } ist durchgebrannt
fault-relay-dead = { $part-the } schaltet nicht
fault-wire-open = { $part-the } ist unterbrochen
fault-wire-high-resistance = { $part-the } hat eine schlechte Verbindung
fault-wire-to-ground = { $part-the } berührt { -ground }
fault-wire-to-battery = { $part-the } berührt Batterie plus
fault-wire-shorted = { $part-the } hat einen Kurzschluss
fault-connector-open = { $part-the } hat keinen Kontakt
fault-connector-high-resistance = { $part-the } ist korrodiert
fault-connector-off = { $part-the } ist ab
fault-connector-crossed = { $part-the } hat vertauschte Pins
fault-coil-open = { $part-the } ist unterbrochen
fault-coil-shorted = { $part-the } hat einen Kurzschluss
fault-coil-to-ground = { $part-the } berührt das Gehäuse
fault-module-dead = das Steuergerät schaltet das Ventil nicht
fault-module-always-on = das Steuergerät hält das Ventil ein
fault-splice-high-resistance = { $part-the } ist schlecht
fault-ground-point-high-resistance = { $part-the } hat schlechten Kontakt

## Prüfgerät

fault-hand-pump-leaks = die Handvakuumpumpe ist undicht
fault-hand-pump-warming = die eingeschlossene Luft erwärmt sich
fault-hand-pump-cooling = die eingeschlossene Luft kühlt ab
fault-hand-pump-settling = das Gummi setzt sich noch
fault-hand-pump-narrow = ein enger Schlauch lässt das Manometer spät zur Ruhe kommen
fault-hand-pump-needle-sticks = die Nadel des Manometers klemmt
fault-multimeter-dead = das Multimeter zeigt nichts an

## Außerhalb dieses Kreises

fault-engine-rough = der Motor läuft unrund
fault-engine-idle-low = der Motor dreht im Leerlauf zu niedrig
fault-strut-worn = die Drehmomentstütze ist verschlissen
fault-exhaust-touching = der Auspuff berührt die Karosserie
fault-solid-mount-broken = ein Lager ohne Unterdruck ist gebrochen
fault-drivetrain-other = der Antriebsstrang schüttelt
