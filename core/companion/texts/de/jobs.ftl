### Die Liste der Aufträge, der Papierkorb, Aufträge auf Reisen.

jobs-title = Aufträge
jobs-search = Suche
jobs-search-hint = Kennzeichen, Fahrzeug, Teil oder Befund
jobs-new = Neuer Auftrag
jobs-open = Öffnen
jobs-bin = In den Papierkorb
jobs-unnamed = Fahrzeug ohne Namen
jobs-none = Noch keine Aufträge. Beginne einen: Tippe auf Neuer Auftrag.
jobs-none-found = Kein Auftrag enthält diese Wörter.
job-begun = Begonnen
job-open = In Arbeit
job-closed = Abgeschlossen
job-repaired = Repariert
jobs-narrow = Eingrenzen
jobs-widen = Alle zeigen
jobs-shelf = Welche
jobs-shelf-all = Alle
jobs-shelf-open = In Arbeit
jobs-shelf-closed = Abgeschlossen
jobs-shelf-bin = Im Papierkorb
jobs-time = Bearbeitet
jobs-time-any = Jederzeit
jobs-time-week = Letzte 7 Tage
jobs-time-month = Letzte 31 Tage
jobs-time-year = Letztes Jahr
jobs-time-between = Zwischen zwei Tagen
jobs-from = Von
jobs-until = Bis
jobs-date-hint = 2026-03-14 oder ein Monat, 2026-03
jobs-date-problem = Schreibe das Jahr zuerst, etwa 2026-03-14.
jobs-more = Mehr zeigen
jobs-customer = { $name }.
jobs-duplicate = Neuer Auftrag an diesem Fahrzeug
jobs-pick = Auswählen
jobs-select = Aufträge auswählen
jobs-select-none = Keine auswählen
jobs-none-picked = Tippe erst die Aufträge an.
jobs-export-picked = { $count ->
    [0] Aufträge exportieren
    [one] 1 Auftrag exportieren
   *[other] { $count } Aufträge exportieren
}
jobs-export-all = Das ganze Protokoll exportieren
jobs-import = Aufträge aus einer Datei übernehmen
jobs-empty-bin = Papierkorb leeren
jobs-bin-empty = Der Papierkorb ist leer.
notice-empty-bin = Die Aufträge im Papierkorb und ihre Fotos sind dann endgültig weg.
notice-empty-bin-yes = Endgültig löschen
notice-empty-bin-no = Behalten
notice-bin-emptied = Der Papierkorb ist leer. Seine Aufträge sind weg.

log-export = Diesen Auftrag exportieren

bundle-file-title = Aufträge
bundle-packing = Die Aufträge werden gepackt.
bundle-taking-in = Die Aufträge werden übernommen.
bundle-stopped = Angehalten. Was schon übernommen ist, bleibt.
bundle-took = { $count ->
    [one] 1 Auftrag hat etwas Neues.
   *[other] { $count } Aufträge haben etwas Neues.
}
bundle-took-nothing = Darin war nichts Neues.
bundle-left-out = { $count ->
    [one] 1 Eintrag fehlt: Er weicht von dem hier ab.
   *[other] { $count } Einträge fehlen: Sie weichen von denen hier ab.
}
bundle-broken-photos = { $count ->
    [one] 1 Foto ist nicht lesbar.
   *[other] { $count } Fotos sind nicht lesbar.
}
bundle-deleted = { $count ->
    [one] 1 Auftrag wurde hier gelöscht und bleibt weg.
   *[other] { $count } Aufträge wurden hier gelöscht und bleiben weg.
}
bundle-take-again = Wieder übernehmen
problem-bundle-none = Diese Datei enthält keine Aufträge.
problem-bundle-newer = Diese Datei stammt von einer neueren Version. Aktualisiere die App, dann übernimm sie.
problem-bundle-cut = Diese Datei endet zu früh. Sende sie noch einmal.
problem-bundle-damaged = Diese Datei ist beschädigt. Nichts davon wurde übernommen.
problem-bundle-file = Diese Datei ist nicht lesbar.
