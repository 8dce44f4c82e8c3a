### Das Wort zur Form jedes Zustands; Ergebnisse von Prüfungen; Zustände eines Auftrags.

state-holds = Hält
state-slow-leak = Schleichleck
state-leaks = Undicht
state-will-not-build = Baut keinen Unterdruck auf
state-undecided = Unentschieden
state-as-expected = Wie erwartet
state-not-as-expected = Nicht wie erwartet
state-not-done = Nicht gemacht
state-cant-do = Nicht möglich
state-interrupted = Unterbrochen

state-repaired = Repariert
state-tests-good = Prüft gut
state-not-repaired = Nicht repariert
job-state-found = Ursache gefunden
job-state-undecided = Ursache unklar
job-state-no-fault = Nichts gefunden

## Der Kreisplan, für eine Vorlesestimme

map-alt-job = Der Kreis. Am verdächtigsten: { $part }, { $percent }.
map-alt-plain = der Kreis. Kein Teil sticht hervor.
map-alt-test = Der Kreis mit den geprüften Teilen: { $test }.
map-alt-look = Der Kreis mit dem, was du bisher gesehen hast.
map-suspicion = Verdacht { $percent }
map-state-good = geprüft, gut
map-state-bad = geprüft, schlecht
