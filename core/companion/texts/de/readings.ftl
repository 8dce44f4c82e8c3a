### Messwerte, Zeigerfälle und ihre Zahlen in Worten.

yes = ja
no = nein

fall-lost = { $drop } verloren in { $seconds }
fall-none = stand { $seconds } bei { $start }
fall-gained = stieg um { $drop } in { $seconds }
fall-never = erreichte nur { $highest }
fall-short = blieb bei { $highest }, soll { $target } erreichen
fall-unusable = { $start } abgelesen, nicht brauchbar

reading-hold-later = { $vacuum } nach { $seconds }
reading-hold-trace = { $start }, { $vacuum } nach { $seconds }, { $count } Messwerte
reading-strokes = { $strokes-n ->
    [one] { $strokes } Hub
   *[other] { $strokes } Hübe
}
reading-field = { $label }: { $value }
reading-open = über Bereich, offen
reading-none = keine
reading-nothing = nichts abgelesen
reading-samples = { $seconds } aufgezeichnet
reading-look = { $part }: { $state }
reading-look-nothing = nichts zu sehen
look-cracked-phrase = rissig oder gespalten
look-off-phrase = ab oder locker
look-oily-phrase = außen ölig
look-kinked-phrase = geknickt oder platt
look-chafed-phrase = durchgescheuert
look-corroded-phrase = korrodiert
look-wet-inside-phrase = innen nass

detail-leak = Leck { $leak } (95{"\u00A0"}% zwischen { $low } und { $high }), bei 20{"\u00A0"}inHg, 20{"\u00A0"}°C, Meereshöhe.
detail-leak-none = Kein Leck bewiesen: unter { $high }{"\u00A0"}Norm-cm³/min mit 95{"\u00A0"}% Sicherheit, bei 20{"\u00A0"}inHg, 20{"\u00A0"}°C, Meereshöhe.
detail-limit = Grenze { $limit } für { $volume } unter Prüfung, Prüfgerät eingeschlossen.
detail-hole = So viel wie ein Loch von { $hole }.
detail-over-limit = Wahrscheinlichkeit über der Grenze: { $share }.

dial-alt = Manometer bei { $reading }. Pumpe bis { $target }.
dial-target = bis hier pumpen
chart-limit = Grenze
chart-seconds = Sekunden
chart-before = vorher
chart-after = nachher
chart-alt = { $test }: { $fall }. Grenze { $limit } in { $seconds }.
chart-alt-compared = { $test }: vor der Reparatur { $before }, danach { $fall }. Grenze { $limit } in { $seconds }.
band-reached = Höchster erreichter Unterdruck
spectrum-on = mit Unterdruck
spectrum-off = ohne
spectrum-hz = Schwingungen je Sekunde (Hz)
spectrum-alt = { $test }: am stärksten mit Unterdruck { $on }, ohne { $off }.
spectrum-peak = { $level } bei { $hz }

band-expected = erwartet
band-alt = { $what }: { $reading }. Erwartet { $expected }.
band-alt-open = { $what }: noch kein Messwert. Erwartet { $expected }.
band-from-to = { $low } bis { $high }

connector-seen-from = Blick in die offene Seite des Fahrzeugsteckers
connector-seen-from-wires = Von der Leitungsseite, Stecker gesteckt
connector-seen-valve = Blick in die Buchse des Ventils
connector-ground = Karosserie-{ -ground }
connector-pin = Pin { $number }
connector-power-pin = Plusleitung
connector-control-pin = Steuerleitung
connector-ground-pin = { -ground }leitung
lead-red-control-pin = Rote Leitung an den Steuerpin.
lead-red-control-pin-lamp = Rote Leitung an den Steuerpin, Lampe angeschlossen, Ventil mit Befehl.
lead-black-ground-pin = Schwarze Leitung an den Pin der { -ground }leitung.
lead-red-pin-1 = Rote Leitung an Pin 1.
lead-black-pin-2 = Schwarze Leitung an Pin 2.
lead-red-each-pin = Rote Leitung an einen Pin, dann an den anderen: Beide sind Steuerleitungen.
connector-red-here = rote Leitung
connector-black-here = schwarze Leitung
connector-alt = Stecker: { $red } { $black }
