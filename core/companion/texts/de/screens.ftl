### Bildschirme: Überschriften, Knöpfe, Felder, Hinweise, Ansagen. Du-Form, Gegenwart, Sätze unter 14 Wörtern.

back = Zurück
menu-settings = Einstellungen
menu-overview = Wo wir stehen
menu-vehicle = Fahrzeug und Beanstandung
menu-prepare = Werkzeug und Ort
menu-log = Fotos und Protokoll
menu-report = Bericht
nothing-here = Hier gibt es nichts zu zeigen. Geh zurück.
unit-minutes = min

## Meldungen

notice-binned = Der Auftrag liegt im Papierkorb.
notice-binned-undo = Wieder herausnehmen
notice-parked = Nicht fertig: { $test }. Alles bleibt, wie du es verlassen hast.
notice-parked-resume = Damit weitermachen



## Fahrzeug und Beanstandung

vehicle-title = Fahrzeug und Beanstandung
vehicle-vehicle = Fahrzeug
vehicle-complaint-note = In deinen Worten
vehicle-complaint-missing = Tippe an, was los ist, oder Nichts.
vehicle-plate = Kennzeichen
vehicle-label = Marke, Modell, Motor
vehicle-vin = FIN
vehicle-vin-hint = 17 Zeichen, an der Windschutzscheibe oder in den Papieren
vehicle-odometer = Kilometerstand
vehicle-odometer-hint = Wie abgelesen; eine andere Einheit schreib dahinter
vehicle-odometer-out = Kilometerstand bei Rückgabe
vehicle-handed-over = Übergeben
vehicle-handed-over-hint = Wann und an wen, etwa 3. März 17:30, der Halter
vehicle-customer = Kunde
vehicle-agreed = Mit dem Kunden vereinbart
vehicle-agreed-hint = Prüfungen, Fotos, Probefahrt, bis zu welchem Betrag; von wem, wann
vehicle-circuit = Welcher Kreis?
vehicle-circuit-hint = Folge den Schläuchen vom Motor. Zähle Lager und Ventile.
vehicle-circuit-edit = Schläuche, Volumen oder Leitungen ändern
vehicle-who = Wer arbeitet?
vehicle-next = Weiter: vor dem Beginn

## Der Kreis

circuit-title = Der Kreis
circuit-hint = Lass eine Zahl stehen, wenn du es nicht besser weißt.
circuit-parts = Bauteile
circuit-volume = Luft in: { $part }
circuit-length = Länge: { $part }
circuit-doubt = Volumen der Lager, bekannt auf
circuit-bore = Innendurchmesser der Schläuche
circuit-add-mount = Ein Motorlager hinzufügen
circuit-remove = Nicht verbaut: { $part }
circuit-properties = Wie er arbeitet
circuit-electric = Elektrische Seite
circuit-layout = Verdrahtung
circuit-coil-low = Gute Spule, von
circuit-coil-high = Gute Spule, bis
circuit-fuse = Sicherung
circuit-cannot = Das geht nicht: Ohne es würde der Kreis nicht arbeiten.
circuit-done = Fertig

## Vor dem Beginn

prepare-title = Vor dem Beginn
prepare-cautions = Lies und hake jeden ab
prepare-caution-orange-cables = Orange Leitungen führen tödliche Spannung. Öffne oder stich sie nie an. Überlass sie Fachkundigen.
prepare-caution-engine-starts = Der Motor kann von selbst starten. Bei Arbeiten mit Motor aus: Schlüssel weg vom Auto.
prepare-caution-moving-parts = Haare, Ärmel und Leitungen weg von Riemen und Lüfter. Der Lüfter kann ohne Zündung anlaufen.
prepare-caution-fumes = Abgas tötet in Räumen. Lass den Motor im Freien oder mit Absaugung laufen.
prepare-caution-brake-vacuum = Die Bremse nutzt diesen Unterdruck mit. Bewege das Auto nicht bei offener Leitung.
prepare-caution-in-gear = Mit Fahrstufe: Fahrer auf der Bremse, Räder gekeilt, niemand davor, dahinter oder im Motorraum.
prepare-caution-stop-lines = Hör auf bei Kraftstoffgeruch, verändertem Bremspedal, oder wenn Böcke zum Anheben fehlen.
prepare-caution-burns = Auspuff, Kühlwasserteile und Halter sind heiß. Öffne nie einen heißen Kühlerdeckel.
prepare-caution-service-information = Herstellerangaben und örtliche Vorschriften gehen dieser App vor.
prepare-unticked = { $count ->
    [one] Ein Hinweis ist noch nicht abgehakt.
   *[other] { $count } Hinweise sind noch nicht abgehakt.
}
prepare-tools = Werkzeuge zur Hand
prepare-tools-hint = Nur mögliche Prüfungen werden angeboten.
prepare-place = Wo du bist
prepare-place-hint = Die Höhe bestimmt, wie viel Unterdruck die Luft erlaubt.
prepare-altitude = Höhe über dem Meer
prepare-ambient = Luftdruck hier
prepare-ambient-found = Von diesem Handy ermittelt
prepare-air = Lufttemperatur
prepare-engine = Motor und Leute
prepare-engine-runs = Der Motor kann laufen
prepare-second-person = Eine zweite Person hilft mir
prepare-stopped = Motor aus seit
prepare-stopped-hint = Lass es leer, wenn du es nicht weißt.
prepare-next = Prüfen beginnen

## Wo wir stehen

overview-title = Wo wir stehen

## Eine Prüfung

test-unknown = Diese Prüfung gibt es nicht mehr
brief-start = Start
brief-unticked = { $count ->
    [one] Hake zuerst die Warnung ab.
   *[other] Hake zuerst die { $count } Warnungen ab.
}
brief-minutes = Etwa { $minutes }
question-change = Noch einmal eingeben
question-entered = Eingegeben wurde
question-when = Eingegeben: { $when }
question-keep = Es zeigt das wirklich
result-on = Weiter
result-to-report = Bericht
result-redo = Noch einmal machen
result-do-it = Jetzt machen
result-correct = Messwert berichtigen
result-go-on = { $seconds } weiter beobachten

## Halteprüfung

hold-strokes = { $count ->
    [0] Noch keine Hübe
    [one] Ein Hub
   *[other] { $count } Hübe
}
hold-stroke = Hub
hold-unstroke = Einer weniger
hold-no-strokes = Kein Hub zum Zurücknehmen.
hold-let-go = Losgelassen
hold-wont-build = Es kommt nicht hin
hold-read-first = Was zeigte es beim Loslassen?
hold-read-highest = Was war der höchste Wert?
hold-read-now = Lies jetzt das Manometer ab.
hold-reading = Manometer
hold-reading-hint = Zieh den Zeiger oder tippe. Komma und Minus gehen.
hold-read-missing = Setze zuerst den Zeiger oder tippe den Wert.
hold-not-moved = Nicht bewegt: { $reading }
hold-confirm = Das ist der Wert
hold-watch = Hände weg von der Pumpe. Berühre den Schlauch nicht.
hold-read-now-early = Jetzt ablesen
hold-by-camera = Die Kamera schauen lassen
hold-by-eye = Selbst hinsehen
hold-watch-camera = Hände weg. Halte das Handy still: Die Kamera schaut zu.
hold-use-seen = Hier aufhören. Nimm, was gesehen wurde
hold-camera-lost = Die Kamera hat das Manometer verloren. Sieh von hier selbst hin.
keep-out-of-range = Es zeigt das wirklich
hold-start-again = Neu beginnen
hold-resume = Von hier weitermachen
hold-use-what-there-is = Nimm, was da ist
hold-interrupted-killed = Die App wurde während dieser Prüfung geschlossen.
hold-interrupted-restarted = Das Handy startete während der Prüfung neu, die Zeit ist verloren.
hold-interrupted-unseen = Die Kamera sah den Zeiger nicht. Besseres Licht hilft.
hold-kept-nothing = Das Pumpen war beendet; kein Wert war eingegeben.
hold-kept-start = Behalten: { $start } am Anfang.
hold-kept-reading = Behalten: { $start } am Anfang, { $reading } nach { $seconds }.
hold-cue-pump = Pumpe bis ins Band
hold-cue-first = Setze den Zeiger, wie er stand
hold-cue-highest = Setze den höchsten Wert
hold-cue-watch = Noch { $seconds }
hold-cue-read = Jetzt ablesen
hold-cue-interrupted = Unterbrochen
amend-start = Beim Loslassen
amend-reading = Nach { $seconds }
amend-highest = Höchster Wert
amend-hint = Nur was falsch getippt war. Die Zeiten bleiben.
amend-confirm = So stimmt es
speak-figure = { $figure }
speak-let-go = Stopp. Loslassen.
speak-read-now = Jetzt ablesen.
speak-seen = Fertig. Es wurde gesehen.
speak-start = Die Zeit läuft. Lies das Manometer ab.
speak-left = Noch { $seconds } Sekunden
speak-end = Fertig. { $result }
speak-stop = Abgebrochen. Schau aufs Handy.

## Werte und Antworten

values-reading-hint = Komma und Minus gehen.
values-confirm = Diese Werte nehmen
values-open = Über Bereich, keine Verbindung
said-yes = Ja
said-no = Nein
said-not-sure = Nicht sicher
scale-0 = 0: nichts
scale-1 = 1: schwach
scale-2 = 2: deutlich
scale-3 = 3: stark
look-done = Alles angesehen

## Fotos


## Befund und Reparatur

finding-title = Befund
finding-repair-anyway = Nicht sicher. Trotzdem reparieren: { $part }
finding-repair-other = Ein anderes Teil wurde repariert
repair-title = Reparatur: { $part }
repair-which = Welches Teil wurde repariert?
repair-which-first = Wähle zuerst das Teil.
repair-mind = Was zu beachten ist
repair-what = Was gemacht wurde
repair-part = Was eingebaut wurde
repair-part-hint = Teil, Nummer, neu oder gebraucht
repair-torque = Anzugsmoment
repair-torque-hint = Mit Quelle: 55 N·m, Herstellerangaben
repair-note = Notiz: Altteil, wer geprüft hat
repair-done = Die Reparatur ist fertig
repair-same-test = Dieselbe Prüfung noch einmal
repair-retest-why = Nur die fehlgeschlagene Prüfung kann zeigen, dass es repariert ist.
repair-retest = Nachprüfung: { $test }
repair-complaint-again = Die Beanstandung nachfühlen
repair-before = Vorher: { $result }
repair-after = Nachher: { $result }
repair-close = Auftrag abschließen und berichten

## Protokoll

log-title = Fotos und Protokoll

## Bericht

report-title = Bericht
report-print = Druck
report-language = Sprache des Berichts
report-language-screens = Wie am Bildschirm
report-parts = Was hineinkommt
report-part-drawings = Zeichnungen und Kurven
report-part-photos = Fotos
report-part-record = vollständiges Protokoll
report-paper = Papier
paper-a4 = A4
paper-letter = Letter
report-business-hint = Ihre Werkstatt steht oben. Sie wird in den Einstellungen gesetzt.
report-settings = Einstellungen
report-costs-go = Kosten
report-approval-go = Entscheidung des Kunden und Unterschrift
report-customer = Für den Kunden
report-share-readings = Die Messwerte als Tabelle teilen
report-readings-title = Messwerte
settings-technician = Ihr Name als Techniker
report-make = Bericht erstellen
report-working = Der Bericht wird erstellt.
report-stop = Stopp
report-share = Teilen
report-no-share = Dieses Gerät kann keine Dateien teilen. Der Bericht bleibt im Auftrag.
report-file-title = Bericht zur Motorlagerprüfung

## Einstellungen

settings-title = Einstellungen
settings-shown = Anzeige und Sprache
settings-language = Sprache
settings-language-phone = Wie auf diesem Handy
settings-units = Einheiten
settings-unit-set = Übrige Einheiten
settings-unit-set-metric = Metrisch
settings-unit-set-us = USA
settings-unit-set-uk = Großbritannien
settings-unit-odometer = Kilometerzähler
settings-unit-thermometer = Temperatur
settings-unit-tape = Höhen und Schläuche
settings-unit-rule = Spalte und Bohrungen
settings-shown-unit = Unterdruck zeigen in
settings-cues = Während der Halteprüfung
settings-speech = Sprechen
settings-buzz = Brummen
settings-large-figures = Zahlen so groß, dass man sie auf zwei Meter liest
settings-script = Was das Handy bei der Halteprüfung sagt
settings-script-hint = Schreib, was du hören willst. Eine leere Zeile bleibt stumm. Was in Klammern steht, wird zur Zahl oder zum Ergebnis.
settings-script-plain = Wieder wie vorher sagen
script-figure = Zahlen
script-let-go = Am Ziel
script-start = Beim Loslassen
script-left = Beim Beobachten
script-read-now = Wenn die Zeit um ist
script-seen = Wenn die Kamera fertig ist
script-end = Wenn das Ergebnis da ist
script-stop = Wenn es abgebrochen ist
settings-gauge = Manometer und Handpumpe
settings-gauge-hint = Sieh auf die Skala: Endwert, Striche, Genauigkeit.
settings-gauge-unit = Das Manometer zeigt in
settings-gauge-grade = Genauigkeitsklasse auf der Skala
settings-span = Skalenende
settings-division = Von Strich zu Strich
settings-read-to = Du liest ab auf
settings-pump = Luft in Handpumpe, Manometer und Adapter
settings-stroke = Luft je Hub
settings-identity = Seriennummer und Kalibrierung
settings-identity-hint = Etwa SN 204, kalibriert Mai 2026
settings-meter = Multimeter
settings-percent = Genauigkeit, Prozent vom Messwert
settings-counts = Genauigkeit, Digits
settings-digits = Nachkommastellen im Voltbereich
settings-limit = Ab wann etwas als undicht gilt
settings-drop = Es darf verlieren
settings-seconds = In dieser Zeit
settings-confidence = Ein Befund gilt ab
settings-report = Auf dem Bericht
settings-business = Werkstatt
settings-business-hint = Die erste Zeile ist der Name; darunter Anschrift, Telefon und Zulassung

## Speicher

problem-open = Das Protokoll ließ sich nicht öffnen. Schließe andere Fenster der App und versuche es wieder.
problem-open-not-a-log = Die Datei dort ist kein Auftragsprotokoll. Sie bleibt, wie sie ist.
notice-salvaged = Das Protokoll war beschädigt. Was lesbar war, ist hier; die beschädigte Datei wurde aufgehoben.
problem-damaged = Das Protokoll ist beschädigt. Öffne die App noch einmal: Lesbares bleibt.
problem-entry-too-large = Dieser Eintrag ist zu lang. Kürze ihn.

## What the own jobs taught

taught = Was deine Aufträge gelehrt haben
taught-nothing = Noch nichts: Dazu gehört eine Reparatur, die bei der Prüfung gut war.
taught-jobs = { $count ->
    [one] Aus einem Auftrag, dessen Reparatur sich bei der Prüfung bewährt hat:
   *[other] Aus { $count } Aufträgen, deren Reparatur sich bei der Prüfung bewährt hat:
}
taught-fault = { $count ->
    [one] { $fault }: einmal
   *[other] { $fault }: { $count }-mal
}
taught-forget = Das Gelernte vergessen
