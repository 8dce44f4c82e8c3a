### Übersicht und Befund.

overview-subject = { $vehicle } – { $complaint }
overview-minutes = Etwa { $minutes }
overview-takes = Dauert { $minutes }
overview-go = Das als Nächstes
overview-look-again = Noch einmal ansehen: { $test }
overview-go-again = Noch einmal ansehen
overview-open-test = Öffnen
overview-to-finding = Zum Befund
overview-finding = Befund bisher
overview-log = Protokoll und Fotos
overview-report = Bericht

finding-likeliest = Bisher am wahrscheinlichsten: { $cause }.
finding-not-clear = Die Ursache ist noch nicht klar.
finding-nothing-known = Noch ist nichts bekannt.
finding-part = Ursache: { $parts }. Am wahrscheinlichsten: { $cause }.
finding-part-aside = Ein Fehler, aber nicht der Grund der Beanstandung: { $parts }. Am wahrscheinlichsten: { $cause }.
finding-tester = Die Handvakuumpumpe selbst ist undicht. Vom Auto ist noch nichts bewiesen.
finding-sound = Diese Prüfungen fanden keinen Fehler in diesem Kreis.
finding-explains = Das erklärt die Beanstandung.
finding-explains-not = Das erklärt die Beanstandung nicht: Sie hat eine andere Ursache.
finding-explains-no-complaint = Es gibt keine Beanstandung zu erklären.
finding-left-open = Noch möglich: { $fault }.
finding-inseparable = Nicht unterschieden: { $parts }.
finding-inseparable-more = { $count ->
    [one] Nicht unterschieden: { $parts } und ein weiteres Teil.
   *[other] Nicht unterschieden: { $parts } und { $count } weitere Teile.
}
finding-test-more = Weiter prüfen: { $test }
finding-report = Bericht erstellen

repaired-both = { $part-start } ist repariert: Die Prüfung ist gut, die Beanstandung weg.
repaired-complaint-stays = { $part-start } besteht nun die Prüfung, doch die Beanstandung ist noch da.
repaired-test-only = { $part-start } besteht nun die Prüfung; die Beanstandung ist noch nicht nachgeprüft.
repaired-test = { $part-start } besteht nun die Prüfung.
repaired-not = { $part-start } wurde repariert, doch dieselbe Prüfung schlägt noch fehl.
certainty-before = Vorher gefunden: { $cause } ({ $percent }).
evidence-seen-for = { $seen } { $times } wahrscheinlicher mit dieser Ursache.
evidence-seen-against = { $seen } { $times } wahrscheinlicher mit einer anderen Ursache.
certainty-none = Noch ist nichts bekannt.
certainty-very-sure = Praktisch sicher: { $percent }.
certainty-sure = Sicher genug zum Handeln: { $percent }.
certainty-sure-sound = Sicher genug, um nicht weiter zu prüfen: { $percent }.
certainty-tester = Wahrscheinlichkeit { $percent }. Dichte oder tausche sie, dann prüfe wieder.
certainty-likely = Wahrscheinlich, nicht sicher: { $percent }. Ein Befund gilt ab { $level }.
certainty-open = Bisher am wahrscheinlichsten, mit { $percent }: { $cause }.

what-if-ask = Was würde jedes Ergebnis ändern?
what-if-heading = Was jedes Ergebnis ändern würde
what-if-nothing = Diese Prüfung würde jetzt nichts ändern.
what-if-line = { $chance }: { $outcome } Dann { $causes }.
what-if-decides = { $chance }: { $outcome } Das würde es klären: { $causes }.
what-if-cause = { $cause } ({ $percent })
