### Was die Arbeit kostet und was der Kunde dazu sagt.

costs-title = Kosten
costs-stage = Diese Kosten sind
costs-stage-estimate = ein Kostenvoranschlag
costs-stage-charged = berechnet für getane Arbeit
costs-valid-days = Der Voranschlag gilt
costs-days = Tage
costs-days-range = 1 bis { $most } Tage eingeben.
costs-currency = Währung
costs-currency-hint = Drei Buchstaben, etwa EUR
costs-currency-missing = Zuerst die Währung eingeben.
costs-currency-unknown = Diese Währung gibt es nicht. Ihre drei Buchstaben eingeben, etwa EUR.
costs-tax-parts = Steuer auf Teile und Sonstiges
costs-tax-labour = Steuer auf Arbeit
costs-kind-part = Teil
costs-kind-labour = Arbeit
costs-kind-other = Sonstiges
costs-add-part = Ein Teil hinzufügen
costs-add-labour = Arbeit hinzufügen
costs-add-other = Sonstiges hinzufügen
costs-what = Was
costs-what-missing = Sagen, was es ist.
costs-quantity = Menge
costs-line-what = Zeile { $line }: was
costs-line-quantity = Zeile { $line }: Menge
costs-line-hours = Zeile { $line }: Stunden
costs-line-price = Zeile { $line }: Einzelpreis ohne Steuer
costs-line-rate = Zeile { $line }: Stundenpreis ohne Steuer
costs-remove = Zeile { $line } herausnehmen
costs-not-a-figure = Eine Zahl eingeben, etwa 12,50.
costs-decimals = { $most ->
    [0] Hier ohne Nachkommastellen.
    [one] Höchstens eine Nachkommastelle.
   *[other] Höchstens { $most } Nachkommastellen.
}
costs-too-large = Das ist zu groß.
costs-sum = Zusammen
costs-sum-part = Teile
costs-sum-labour = Arbeit
costs-sum-other = Sonstiges
costs-tax = Steuer { $rate } auf { $on }
costs-total = Summe
costs-each = Einzelpreis
costs-amount = Betrag, { $currency }
costs-rounding = Jeder Betrag ist auf die kleinste Einheit der Währung gerundet, ebenso die Steuer auf die Summe jedes Satzes; Hälften werden aufgerundet.
costs-done = Diese Kosten behalten

approval-title = Entscheidung des Kunden
approval-decision = Der Kunde sagt
approval-agreed = Einverstanden
approval-put-off = Aufgeschoben
approval-refused = Abgelehnt
approval-handed-over = Übergeben
approval-work = Die Arbeit
approval-repaired = Repariert: { $part }
approval-signature = Unterschrift
approval-name = Name dessen, der unterschreibt
approval-name-missing = Zuerst den Namen eingeben.
approval-pad = { $count ->
    [0] Unterschriftenfeld, leer
    [one] Unterschriftenfeld, { $count } Strich
   *[other] Unterschriftenfeld, { $count } Striche
}
approval-pad-hint = Hier mit dem Finger unterschreiben
approval-pad-empty = Noch ist nichts gezeichnet.
approval-undo = Den letzten Strich zurücknehmen
approval-wipe = Das Feld leeren
approval-keep = Behalten
approval-said = { $decision }. { $name }
approval-said-of = { $decision }: { $work }. { $name }
