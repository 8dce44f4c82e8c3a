### Das Protokoll des Auftrags: eine Zeile je Eintrag.

quoted = „{ $words }“

log-opened = Auftrag begonnen mit Version { $software }.
log-wiped = entfernt
log-complaint = Beanstandung: { $complaint }
log-circuit = Kreis: { $template }
log-altitude = Höhe { $altitude }
log-ambient = Luftdruck { $pressure }, { $from }
log-ambient-barometer = vom Barometer des Handys
log-ambient-typed = eingegeben
log-ambient-altitude = aus der Höhe
log-ambient-sea-level = Meereshöhe angenommen
log-air = Luft { $temperature }
log-place-unknown = Ort nicht angegeben: Meereshöhe angenommen
log-instruments = Messgeräte: { $what }
log-tools = Werkzeuge zur Hand: { $tools }
log-no-tools = Keine Werkzeuge zur Hand
log-engine-runs = Der Motor kann laufen
log-engine-cannot-run = Der Motor kann nicht laufen
log-engine-stopped = Motor seit { $minutes } aus
log-second-person = Eine zweite Person ist da
log-alone = Sonst ist niemand da
log-profile = Bei der Arbeit: { $profile }
log-limit = erlaubter Abfall { $drop } in { $seconds }
log-confidence = ein Befund gilt ab { $percent }
log-limit-unchanged = Grenze unverändert
log-acknowledged = Gelesen und abgehakt: { $caution }
log-reading = { $test }: { $reading }
log-reading-kept = { $test }: { $reading } (nachgefragt und beibehalten)
log-reading-after = Nach der Reparatur: { $test }: { $reading }
log-reading-unknown = { $test }: ein Messwert, den diese Version nicht zeigen kann
log-trace = { $test }: { $count } Manometerwerte aufgezeichnet
log-interrupted = { $test }: unterbrochen, { $by }. Bis dahin: { $had }
log-interrupted-killed = die App wurde geschlossen
log-interrupted-restarted = das Handy wurde neu gestartet
log-interrupted-unseen = die Kamera sah den Zeiger nicht
log-interrupted-left = sie wurde verlassen
log-skipped = { $test }: nicht gemacht, { $reason }
log-skipped-note = { $test }: nicht gemacht, { $reason }: { $note }
log-correction = Berichtigt: { $instead }
log-kept = Nachgefragt und beibehalten: { $reading }
log-corrected = später berichtigt: { $instead }
log-kept-later = später nachgefragt und beibehalten
log-undo = Zurückgenommen: { $what }
log-undo-undo = Die Rücknahme wurde zurückgenommen
log-undone = später zurückgenommen
log-photo = Foto
log-photo-caption = Foto: { $caption }
log-photo-marked = { $count ->
    [0] Markierungen von einem Foto entfernt
    [one] Eine Markierung auf ein Foto gesetzt
   *[other] { $count } Markierungen auf ein Foto gesetzt
}
log-about = { $words } ({ $about })
log-note = Notiz: { $note }
log-repair-done = Repariert: { $part }.
log-costs-estimate = Kostenvoranschlag: { $total }
log-costs-charged = Kosten berechnet: { $total }
log-report-language = Berichte auf { $language }
log-report-language-screens = Berichte in der Sprache des Bildschirms
log-report-parts = Berichte ohne: { $parts }
log-report-whole = Berichte mit allem
log-workshop = Arbeit von { $name }
log-workshop-none = Niemand auf dem Bericht genannt
log-signed = { $words }, unterschrieben
log-repair-torque = Anzugsmoment: { $torque }
log-repair-proposed = Reparatur vorgeschlagen: { $part }.
log-closed = Abgeschlossen: { $finding } ({ $percent }, Version { $software })
log-closed-repaired = Abgeschlossen und repariert: { $finding } ({ $percent }, Version { $software })
log-report = Bericht erstellt, { $pages ->
    [one] { $pages } Seite
   *[other] { $pages } Seiten
}, Prüfsumme { $digest }…
log-binned = In den Papierkorb gelegt
log-newer-short = aus einer neueren Version
log-unreadable = Ein Eintrag, der sich nicht lesen lässt. Er bleibt, wie er ist.

instrument-gauge = Manometer 0–{ $span }{"\u00A0"}{ $unit }, Teilung { $division }, Klasse { $grade }, abgelesen auf { $read }
instrument-pump = Handpumpe, Manometer und Adapter { $volume }
instrument-stroke = { $volume } je Hub
instrument-meter = Multimeter ±({ $percent }{"\u00A0"}% + { $counts-n ->
    [one] { $counts } Digit
   *[other] { $counts } Digits
})
instrument-unknown = nicht angegeben

record-plate = Kennzeichen
record-label = Fahrzeug
record-vin = FIN
record-odometer = Kilometerstand
record-odometer-out = Kilometerstand bei Rückgabe
record-handed-over = Übergeben
record-customer = Kunde
record-agreed = Mit dem Kunden vereinbart
