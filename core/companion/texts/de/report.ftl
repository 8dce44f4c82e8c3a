### Der Bericht: die Seite für den Kunden, die Belege, das vollständige Protokoll.

report-heading = { $vehicle }: Prüfung der Motorlager
report-heading-plain = Prüfung der Motorlager
report-began = Geprüft
report-ended = Letzter Eintrag

## Die Seite für den Kunden

report-complaint = Die Beanstandung
report-known = Woher man es weiß
report-done = Reparatur
report-next = Nächster Schritt
report-costs = Kosten
report-estimate = Kostenvoranschlag, gültig bis { $date }
report-not-done-work = Abgelehnt oder aufgeschoben
report-tested-by = Geprüft von
report-sign-decided = Kunde: { $decision }
report-signed-when = { $name }, { $when }
report-signature-of = Unterschrift von { $name }
record-instrument = Womit
instrument-name-gauge = Manometer
instrument-name-meter = Multimeter
instrument-name-phone = Telefon
instrument-name-person = Mensch
readings-what = Messung
readings-value = Wert
readings-unit = Einheit
readings-seconds = Sekunden
readings-vacuum = Unterdruck
readings-description = Die Messwerte dieses Berichts als Tabelle (CSV)
report-not-tested = Nicht geprüft
report-left-open = Was offen bleibt
report-seen = Auch gesehen
report-proposed = Vorschlag: { $what }.
report-proposed-can-wait = Kann warten: { $what }.
report-repaired = { $part-start } wurde repariert.
report-not-retested = Die Prüfung wurde noch nicht wiederholt.
report-compared = { $test }: vorher { $before }, nachher { $after }.
report-compared-not-gone = Der Fehler ist noch da. { $test }: vorher { $before }, nachher { $after }.
report-next-repair = Reparieren, dann dieselbe Prüfung noch einmal.
report-next-elsewhere = Die Ursache woanders suchen: Motor, Auspuff, Stützen, Gummi der Lager.
report-next-outside = Zuerst dies beheben lassen. Bleibt die Beanstandung, den Kreis der Motorlager wieder prüfen.
report-next-nothing = Nichts zu reparieren.
report-next-tester = Eine dichte Handpumpe nehmen und die Halteprüfungen wiederholen.
report-next-retest = Dieselbe Prüfung noch einmal. Bis dahin ist die Reparatur nicht bewiesen.
report-next-road = Probefahrt: zuerst die Bremse, dann Anfahren und Anhalten.
report-next-feel = Die Beanstandung noch einmal nachfühlen, dann Probefahrt, zuerst die Bremse.
report-next-complaint-stays = Weiter prüfen: Eine andere Ursache bleibt.
report-next-again = Noch einmal prüfen: Der Messwert hat sich nicht genug geändert.
report-next-test = Nächste Prüfung: { $test }.
report-next-workshop = Diese Prüfungen sagen nicht mehr. Weiter führen die Herstellerangaben.
report-not-done = { $test }: { $reason }.
report-more-not-done = { $count } weitere, siehe Protokoll.
report-seen-part = { $part }: { $state }.
report-care-brakes = Die Bremse nutzt diesen Unterdruck mit. Weiches oder hartes Pedal: nicht fahren.
report-caption-map = Der Kreis und was die Prüfungen von jedem Teil sagen
report-caption-map-repaired = Der Kreis, wie er vor der Reparatur war
report-care-mount = Ein defektes Lager überlastet die anderen. Nicht lange warten.
report-caption-before-after = Dieselbe Prüfung vor und nach der Reparatur
report-caption-test = { $test }: { $seen } – { $result }
report-caption-figure = { $test }: { $seen } – dieser Wert { $result }
report-caption-after = { $test }, nach der Reparatur: { $seen } – { $result }
report-caption-photo = Foto

## Aufbau

report-evidence = Belege
report-record = Vollständiges Protokoll
report-page = Seite {"{page}"} von {"{pages}"}
report-digest = Prüfsumme des Protokolls
report-written-by = Erstellt von
report-figure = Abbildung {"{number}"}
report-software = Holdfast { $version }

## Das Protokoll

record-ambient = Luftdruck
record-ambient-measured = gemessen oder eingegeben
record-ambient-altitude = aus der Höhe (ISO 2533)
record-ambient-assumed = Meereshöhe angenommen
record-air = Luft
record-instruments = Messgeräte
instrument-assumed = Nicht angegeben: übliche angenommen
record-limit = Erlaubter Abfall
record-limit-value = { $drop } in { $seconds }, übliche Praxis
record-confidence = Ein Befund gilt ab
record-circuit = Kreis
record-causes = Ursachen, wahrscheinlichste zuerst
record-causes-before = Ursachen vor der Reparatur, wahrscheinlichste zuerst
record-cause = Ursache
record-probability = Wahrscheinlichkeit
record-results = Prüfungen und Ergebnisse
record-results-caption = Unsicherheiten mit k = 2, etwa 95{"\u00A0"}%.
record-time = Zeit
record-test = Prüfung
record-read = Abgelesen
record-uncertainty = Unsicherheit
record-result = Ergebnis
record-after-repair = { $test } (nach der Reparatur)
record-kept = { $reading } – nachgefragt und beibehalten
record-u = ±{ $u }
record-u-drop = ±{ $u } am Abfall
record-u-reading = ±{ $u }
record-holds = Halteprüfungen
record-holds-caption = Lecks in Norm-cm³/min: 20{"\u00A0"}°C, 101,325{"\u00A0"}kPa, bei 20{"\u00A0"}inHg innen; das des Prüfgeräts ist abgezogen.
record-fall = Zeiger
record-leak = Leck
record-range = 95-%-Bereich
record-limit-leak = Grenze
record-volume = Volumen, cm³
record-over = Über Grenze
record-none = –
record-skipped = Nicht geprüft, und warum
record-reason = Grund
record-open = Nicht bekannt
record-newer = { $count ->
    [one] { $count } Eintrag stammt aus einer neueren Version und ist nicht gezeigt.
   *[other] { $count } Einträge stammen aus einer neueren Version und sind nicht gezeigt.
}
record-entries = Jeder Eintrag
record-entry = Eintrag
record-standing = { $entry } – { $standing }
record-how = Ergebnisse und Wahrscheinlichkeiten berechnet die unten genannte Software aus diesen Einträgen. Die Volumen des Kreises und die Häufigkeit jedes Fehlers sind Schätzungen aus üblicher Praxis.
report-sign-work = Geprüft von, Datum
report-sign-customer = Kunde, Datum
report-sign-agreed = Kunde, Datum. Reparatur: ja / später / nein
report-sign-handed-over = Übergeben an, Datum
