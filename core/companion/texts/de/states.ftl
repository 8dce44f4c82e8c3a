### Das Wort zur Form jedes Zustands; Ergebnisse von Prüfungen; Zustände eines Auftrags.

state-holds = hält
state-slow-leak = Schleichleck
state-leaks = undicht
state-will-not-build = baut keinen Unterdruck auf
state-undecided = unentschieden
state-as-expected = wie erwartet
state-not-as-expected = nicht wie erwartet
state-not-done = nicht gemacht
state-cant-do = nicht möglich
state-interrupted = unterbrochen

state-repaired = repariert
state-tests-good = Prüfung bestanden
state-not-repaired = nicht repariert
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
