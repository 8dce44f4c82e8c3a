### Prüfungen mit Augen, Händen, Manometer oder laufendem Motor. Halteprüfungen: holds.ftl. Multimeter: electric.ftl.
### Sätze unter 14 Wörtern. $part ist das geprüfte Bauteil.

## Beanstandung

test-complaint-title = Die Beanstandung selbst spüren
test-complaint-name = Beanstandung gespürt
test-complaint-why = Was heute nicht da ist, lässt sich heute nicht nachweisen.
test-complaint-explain = Spüre die Beanstandung mit dem Kunden, bevor du etwas anfasst. Wann sie kommt und geht, sagt schon viel.
test-complaint-where = Auf dem Fahrersitz, das Auto steht.
test-complaint-step-1 = Lass den Motor warm werden. Auto eben, Feststellbremse angezogen.
test-complaint-step-2 = Leerlauf in Neutral oder Parkstellung. Fühle Lenkrad, Sitz und Boden.
test-complaint-step-3 = Schalte Licht und Klimaanlage ein. Merke dir, wann es schüttelt.
test-complaint-means-as-expected = Die Beanstandung ist da: Jede Änderung lässt sich nun spüren.
test-complaint-means-not-as-expected = Sie ist jetzt nicht da. Ein guter Test beweist dann wenig.
test-complaint-field-present = Ist die Beanstandung jetzt da?
test-complaint-field-present-yes = ich spüre sie jetzt
test-complaint-field-present-no = ich spüre sie jetzt nicht
test-complaint-look-1 = Fühle Lenkrad, Sitz und Boden.
test-complaint-look-2 = Sieh in den Spiegel: Schütteln macht das Bild unscharf.

## Fehlerspeicher

test-codes-title = Fehlerspeicher auslesen
test-codes-name = Fehlerspeicher
test-codes-why = Wer später einen Stecker zieht, setzt neue Codes. Lies zuerst die alten.
test-codes-explain = Ein Code nennt einen Stromkreis, kein defektes Teil. Kein Code entlastet weder Schläuche noch Motorlager.
test-codes-where = Diagnosebuchse, meist unter dem Armaturenbrett.
test-codes-step-1 = Stecke das Diagnosegerät an, bevor du etwas anderes abziehst.
test-codes-step-2 = Zündung ein, Motor aus. Ohne Schlüssel: Bremspedal nicht treten.
test-codes-step-3 = Schreibe jeden Code mit seinen Umgebungsdaten auf. Lösche noch nichts.
test-codes-means-as-expected = Kein Code zum Magnetventil: Prüfe zuerst den Unterdruck.
test-codes-means-not-as-expected = Ein Code zum Magnetventil: Die elektrische Seite rückt nach vorn.
test-codes-field-list = Codes, einer nach dem anderen
test-codes-field-list-read = { $value }
test-codes-field-list-hint = Zum Beispiel P0A14. Leer lassen, wenn keiner da ist.

## Leerlauf

test-idle-quality-title = Den Motor selbst ausschließen
test-idle-quality-name = Leerlauf des Motors
test-idle-quality-why = Ein unrunder Motor schüttelt auch auf guten Lagern.
test-idle-quality-explain = Hat der Motor Aussetzer oder sägt er, behebe das zuerst. Lagerprüfungen sagen wenig, bis er rund läuft.
test-idle-quality-where = Drehzahlmesser im Kombiinstrument oder Diagnosegerät.
test-idle-quality-step-1 = Motor starten und warm laufen lassen. Licht, Gebläse, Klimaanlage aus.
test-idle-quality-step-2 = Beobachte die Drehzahl eine halbe Minute lang.
test-idle-quality-step-3 = Horche am Endrohr auf Aussetzer. Halte Abstand.
test-idle-quality-means-as-expected = Der Motor läuft rund: weiter zu den Motorlagern.
test-idle-quality-means-not-as-expected = Der Motor läuft unrund: Behebe das, bevor du Lager beurteilst.
test-idle-quality-field-rpm = Drehzahl
test-idle-quality-field-rpm-read = { $value }
test-idle-quality-field-steady = Bleibt die Drehzahl ruhig?
test-idle-quality-field-steady-yes = Drehzahl ruhig
test-idle-quality-field-steady-no = sie sägt auf und ab
test-idle-quality-field-rough = Läuft er unrund oder mit Aussetzern?
test-idle-quality-field-rough-yes = unrund oder mit Aussetzern
test-idle-quality-field-rough-no = rund und gleichmäßig

## Sichtprüfung

test-look-title = Den Kreis ansehen
test-look-name = Sichtprüfung
test-look-why = Hinsehen kostet nichts und findet einen abgefallenen Schlauch.
test-look-explain = Folge dem Kreis Teil für Teil. Markiere, was du siehst; lass alles, wie es ist.
test-look-where = Entlang der Unterdruckschläuche, am Ventil, am Stecker und an den Lagern.
test-look-step-1 = Folge jedem Schlauch mit der Hand. Biege ihn, sieh beide Enden an.
test-look-step-2 = Suche Öl, Scheuerstellen, Geschmolzenes und fehlende Hitzeschilde.
test-look-step-3 = Suche Auspuff, Verkleidung oder Rohr, die die Karosserie berühren.
test-look-step-4 = Fotografiere, was falsch aussieht, bevor du es bewegst.
test-look-means-as-expected = Nichts zu sehen. Das schließt nur einen abgefallenen Schlauch aus.
test-look-means-not-as-expected = Etwas ist zu sehen. Eine Prüfung bestätigt es, bevor du Teile kaufst.

## Motorlager mit Auge und Hebel

test-mount-look-title = { $part } ansehen
test-mount-look-name = { $part } mit dem Auge
test-mount-look-why = Ein gerissenes Lager kann Unterdruck halten und doch hin sein.
test-mount-look-explain = Feine Risse in der Gummihaut sind Alter. Ein Spalt zwischen Gummi und Metall ist ein Schaden. Oft tropft Öl von oben darauf; also abwischen und noch einmal hinsehen.
test-mount-look-where = { $part }, mit Lampe von oben oder unten.
test-mount-look-step-1 = Leuchte { $part-acc } rundum an. Sieh hin, wo Gummi an Metall grenzt.
test-mount-look-step-2 = Wische unter der Naht. Suche eine frische nasse Spur.
test-mount-look-step-3 = Vergleiche die Höhe mit dem Gegenstück.
test-mount-look-means-as-expected = Kein Riss, keine Flüssigkeit, nicht abgesackt.
test-mount-look-means-not-as-expected = Gerissen, nass oder abgesackt: Dieses Lager arbeitet nicht.
test-mount-look-field-torn = Hat sich der Gummi vom Metall gelöst?
test-mount-look-field-torn-yes = gerissen oder gelöst
test-mount-look-field-torn-no = Gummi ist ganz
test-mount-look-field-wet = Ist Flüssigkeit unter der Naht?
test-mount-look-field-wet-yes = nass unter der Naht
test-mount-look-field-wet-no = trocken
test-mount-look-field-sag-mm = Tiefer als das Gegenstück um
test-mount-look-field-sag-mm-read = { $value } tiefer

test-mount-move-title = { $part } hebeln
test-mount-move-name = { $part } mit dem Hebel
test-mount-move-why = Ein Riss öffnet sich, wenn der Motor bewegt wird.
test-mount-move-explain = Vergleiche mit dem anderen Lager: Beide geben gleich wenig nach und stoppen weich.
test-mount-move-where = { $part }, ein Holzhebel daneben.
test-mount-move-step-1 = Setze einen Holzhebel zwischen eine feste Stelle und den Motorhalter.
test-mount-move-step-2 = Drücke sanft, nie gegen die Ölwanne. Beobachte den Gummi.
test-mount-move-step-3 = Tu dasselbe am Gegenstück und vergleiche.
test-mount-move-means-as-expected = Es bewegt sich wie das Gegenstück: Der Gummi haftet.
test-mount-move-means-not-as-expected = Es schlägt an oder klafft: Der Gummi hat sich gelöst.
test-mount-move-field-clunk = Hörst oder fühlst du einen Schlag?
test-mount-move-field-clunk-yes = ein Schlag, Metall auf Metall
test-mount-move-field-clunk-no = kein Schlag
test-mount-move-field-gap-opens = Öffnet sich ein Spalt im Gummi?
test-mount-move-field-gap-opens-yes = ein Spalt öffnet sich
test-mount-move-field-gap-opens-no = kein Spalt

## Unterdruck bei laufendem Motor

test-delivered-title = Kommt Unterdruck an den Lagern an?
test-delivered-name = Unterdruck an den Lagern
test-delivered-why = Ein Messwert im Betrieb entlastet oder belastet die ganze Zuführung.
test-delivered-explain = Der Motor macht Unterdruck, das Ventil gibt ihn im Leerlauf weiter. Mit einem Manometer dazwischen siehst du, was die Lager wirklich bekommen.
test-delivered-where = Ein T-Stück mit Manometer im Schlauch am Ventilausgang.
test-delivered-step-1 = Motor aus. Setze das Manometer per T-Stück in den Ausgangsschlauch.
test-delivered-step-2 = Führe den Manometerschlauch weg von Riemen, Lüfter und Auspuff. Motor starten.
test-delivered-step-3 = Warte, bis das Steuergerät das Ventil schaltet: { $window }.
test-delivered-step-4 = Lies das Manometer ab. Merke dir die Sekunden bis zum Stillstand.
test-delivered-means-as-expected = Voller Unterdruck kommt an: Quelle, Ventil und Leitung arbeiten im Leerlauf.
test-delivered-means-not-as-expected = Zu wenig kommt an: Suche vor dem Messpunkt oder nach einem großen Leck.
test-delivered-field-gauge = Unterdruck am Manometer
test-delivered-field-gauge-read = { $value }
test-delivered-field-seconds = Bis der Zeiger stand
test-delivered-field-seconds-read = nach { $value }

test-switch-over-title = Geht der Unterdruck wieder weg?
test-switch-over-name = Abbau des Unterdrucks
test-switch-over-why = Das Manometer sitzt noch, und ein Wechsel beweist die Steuerung.
test-switch-over-explain = Das Steuergerät lässt den Unterdruck ab, wenn das Auto fahren soll. Bleibt er, bleiben die Lager im Leerlaufzustand.
test-switch-over-where = Dasselbe Manometer am Ventilausgang.
test-switch-over-step-1 = Lass das Manometer dran. Drehe den Motor auf etwa 2.000{"\u00A0"}1/min.
test-switch-over-step-2 = Zähle die Sekunden, bis der Zeiger ruht.
test-switch-over-step-3 = Lies ab, wo er ruht. Dann zurück in den Leerlauf.
test-switch-over-means-as-expected = Der Unterdruck geht rechtzeitig: Ventil, Entlüftung und Befehl arbeiten.
test-switch-over-means-not-as-expected = Er bleibt oder geht langsam: Ventil, Entlüftung oder ein Dauerbefehl.
test-switch-over-field-seconds = Bis der Zeiger ruhte
test-switch-over-field-seconds-read = in Ruhe nach { $value }
test-switch-over-field-gauge = Wo er ruht
test-switch-over-field-gauge-read = bei { $value }

test-bypass-title = Motorlager direkt vom Motor speisen
test-bypass-name = Unterdruck direkt auf die Lager
test-bypass-why = Ändert sich das Schütteln jetzt, sind die Lager gut.
test-bypass-explain = Ein Ersatzschlauch nimmt Ventil und Leitungen aus der Frage. Nur für die Prüfung im Leerlauf, nie zum Fahren.
test-bypass-where = Ersatzschlauch von der Unterdruckquelle zum Ausgangsschlauch.
test-bypass-step-1 = Motor aus. Zieh den Ausgangsschlauch vom Ventil. Verschließe den Anschluss.
test-bypass-step-2 = Verbinde Quelle und Ausgangsschlauch mit dem Ersatzschlauch. Motor starten.
test-bypass-step-3 = Klemme den Ersatzschlauch ab, lass wieder los. Fühle die Änderung.
test-bypass-step-4 = Motor aus. Stecke jeden Schlauch zurück.
test-bypass-means-as-expected = Das Schütteln ändert sich: Lager gut, Fehler in Ventil oder Leitung.
test-bypass-means-not-as-expected = Keine Änderung: Schläuche, Lager oder eine Ursache außerhalb.
test-bypass-field-changes = Ändert sich das Schütteln mit Unterdruck?
test-bypass-field-changes-yes = das Schütteln ändert sich
test-bypass-field-changes-no = das Schütteln bleibt
test-bypass-look-1 = Fühle Sitzschiene und Lenkrad.
test-bypass-look-2 = Vergleiche abgeklemmt und offen, dreimal.

test-source-title = Ist an der Quelle Unterdruck?
test-source-name = Unterdruck an der Quelle
test-source-why = Ohne Unterdruck am Ventil arbeitet danach nichts.
test-source-explain = Im Leerlauf soll der Schlauch zum Ventil kräftig ziehen. In der Höhe ist weniger möglich; die Grenze hier rechnet das ein.
test-source-where = Unterdruck hinein: der vom Ventileingang abgezogene Schlauch.
test-source-step-1 = Motor aus. Zieh den Eingangsschlauch drehend vom Ventil.
test-source-step-2 = Setze Manometer oder Finger auf den Schlauch. Motor starten.
test-source-step-3 = Leerlauf in Neutral oder Parkstellung. Lies ab, wenn der Zeiger steht.
test-source-step-4 = Motor aus. Stecke den Schlauch wieder auf das Ventil.
test-source-means-as-expected = Die Quelle ist gut. Prüfe Ventil, Leitung und was folgt.
test-source-means-not-as-expected = Zu wenig Unterdruck: Motor, Rückschlagventil, Schlauch oder anderer Verbraucher.
test-source-field-gauge = Unterdruck am Manometer
test-source-field-gauge-read = { $value }
test-source-field-steady = Steht der Zeiger still?
test-source-field-steady-yes = Zeiger steht still
test-source-field-steady-no = Zeiger zuckt oder schwankt
test-source-field-felt = Ohne Manometer: Zieht der Schlauch am Finger?
test-source-field-felt-yes = er zieht kräftig
test-source-field-felt-no = kaum ein Zug

test-flow-title = Ist { $part-the } frei?
test-flow-name = Luft durch { $part-acc }
test-flow-why = Ein geknickter oder verstopfter Schlauch besteht jede Halteprüfung.
test-flow-explain = Ein verstopfter Schlauch wirkt am Manometer dicht. Nur strömende Luft zeigt, ob er offen ist.
test-flow-where = { $part }, fernes Ende offen.
test-flow-step-1 = Zieh beide Enden ab: { $part }.
test-flow-step-2 = Handpumpe an ein Ende, das andere offen. Fünf Hübe pumpen.
test-flow-step-3 = Biege den Schlauch, wie er im Auto liegt. Pumpe noch einmal.
test-flow-means-as-expected = Luft geht durch: Der Schlauch ist frei.
test-flow-means-not-as-expected = Der Zeiger bleibt oben: Schlauch geknickt, geschmolzen oder verstopft.
test-flow-field-free = Geht Luft frei durch?
test-flow-field-free-yes = Zeiger fällt sofort
test-flow-field-free-no = Zeiger steigt und bleibt
test-flow-look-1 = Ein freier Schlauch lässt den Zeiger nie steigen.

## Ventil von Hand

test-valve-off-title = Ventil in Ruhe
test-valve-off-name = Ventil in Ruhe
test-valve-off-why = Ein Ventil, das in Ruhe durchlässt, hält die Lager in einem Zustand.
test-valve-off-explain = Ohne Strom soll das Ventil { $rest ->
    [open] Unterdruck zu den Lagern durchlassen
   *[closed] nichts durchlassen und die Lager belüften
}. Die Handpumpe zeigt beides.
test-valve-off-where = Das Magnetventil: Handpumpe am Eingang, Ausgang offen.
test-valve-off-step-1 = Zieh den Stecker am Gehäuse ab. Zieh beide Schläuche vom Ventil.
test-valve-off-step-2 = Handpumpe an den Eingang, der andere Anschluss offen. Pumpe.
test-valve-off-step-3 = Handpumpe an den Ausgang. Pumpe: Belüftet er?
test-valve-off-step-4 = Lass es so für die Prüfung mit Strom, oder baue alles zurück.
test-valve-off-means-as-expected = In Ruhe tut das Ventil, was es soll.
test-valve-off-means-not-as-expected = Das Ventil lässt durch oder belüftet nicht: Es klemmt, oder die Entlüftung ist zu.
test-valve-off-field-passes = Geht Unterdruck vom Eingang zum Ausgang?
test-valve-off-field-passes-yes = Unterdruck geht durch
test-valve-off-field-passes-no = nichts geht durch
test-valve-off-field-vents = Ist der Ausgang zur Außenluft offen?
test-valve-off-field-vents-yes = Ausgang belüftet
test-valve-off-field-vents-no = Ausgang ist zu

test-valve-on-title = Ventil mit Strom
test-valve-on-name = Ventil mit Strom
test-valve-on-why = Batterie direkt am Ventil nimmt die Fahrzeugleitungen aus der Frage.
test-valve-on-explain = Eine abgesicherte Prüfleitung speist das Ventil, vom Auto getrennt. Du hörst ein Klicken, und der Durchgang wechselt.
test-valve-on-where = Die zwei Pins des Ventils selbst, Stecker ab.
test-valve-on-step-1 = Lass den Fahrzeugstecker ab. Handpumpe an den Eingang.
test-valve-on-step-2 = Prüfleitung an Batterie plus, die Sicherung an diesem Ende.
test-valve-on-step-3 = Berühre die Ventilpins richtig gepolt, unter 30 Sekunden.
test-valve-on-step-4 = Horche auf das Klicken. Pumpe dabei und beobachte den Zeiger.
test-valve-on-step-5 = Nimm die Prüfleitung zuerst von der Batterie. Baue alles zurück.
test-valve-on-means-as-expected = Das Ventil schaltet und lässt durch: Prüfe seine Leitungen.
test-valve-on-means-not-as-expected = Es schaltet nicht oder lässt nicht durch: Das Ventil ist defekt.
test-valve-on-field-passes = Mit Strom: Geht Unterdruck vom Eingang zum Ausgang?
test-valve-on-field-passes-yes = Unterdruck geht durch
test-valve-on-field-passes-no = nichts geht durch
test-valve-on-field-clicks = Klickt es?
test-valve-on-field-clicks-yes = es klickt
test-valve-on-field-clicks-no = kein Klicken
test-valve-on-field-vents = Mit Strom: Leckt es an der Entlüftung?
test-valve-on-field-vents-yes = Luft zischt an der Entlüftung
test-valve-on-field-vents-no = die Entlüftung ist zu

## Vibrationen

test-shake-title = Vibrationen mit und ohne Unterdruck
test-shake-name = Vibrationen, mit und ohne Unterdruck
test-shake-why = Gute Lager ändern das Schütteln, wenn der Unterdruck geht.
test-shake-explain = Beurteile beides am selben Ort, im selben Gang, bei gleicher Drehzahl. Nur der Unterschied zählt.
test-shake-where = Sitzschiene oder Lenkrad, immer dieselbe Stelle.
test-shake-step-1 = Warmer Leerlauf. Mit Unterdruck: Gib dem Schütteln 0 bis 3.
test-shake-step-2 = Motor aus. Zieh den Ausgangsschlauch und verschließe beide Enden.
test-shake-step-3 = Wieder Leerlauf, gleiche Drehzahl. Gib dem Schütteln 0 bis 3.
test-shake-step-4 = Motor aus. Stecke den Schlauch zurück.
test-shake-means-as-expected = Das Schütteln ändert sich: Die Lager sprechen auf Unterdruck an.
test-shake-means-not-as-expected = Keine Änderung: Unterdruck erreicht sie nicht, oder sie sprechen nicht an.
test-shake-mount-title = Vibrationen mit Unterdruck nur auf: { $part }
test-shake-mount-name = Vibrationen, nur { $part }
test-shake-mount-why = Ein Lager mit der Handpumpe zeigt, ob gerade dieses anspricht.
test-shake-mount-explain = Die Handpumpe betätigt ein Lager im Leerlauf. Das andere bleibt, wie es ist.
test-shake-mount-where = Handpumpe an { $part-dat }, Schlauch aus dem Motorraum geführt.
test-shake-mount-step-1 = Motor aus. Zieh den Schlauch ab und verschließe ihn: { $part }.
test-shake-mount-step-2 = Schließe die Handpumpe mit langem Schlauch an. Warmer Leerlauf.
test-shake-mount-step-3 = Pumpe bis { $target }. Gib dem Schütteln 0 bis 3.
test-shake-mount-step-4 = Lass die Luft ein. Gib dem Schütteln wieder 0 bis 3.
test-shake-mount-step-5 = Motor aus. Stecke den Schlauch zurück.
test-shake-mount-means-as-expected = { $part-start } spricht auf Unterdruck an.
test-shake-mount-means-not-as-expected = { $part-start } spricht nicht an, obwohl Unterdruck ankommt.
test-shake-field-on-0-3 = Schütteln mit Unterdruck
test-shake-field-on-0-3-read = mit Unterdruck { $value }
test-shake-field-off-0-3 = Schütteln ohne Unterdruck
test-shake-field-off-0-3-read = ohne { $value }
test-shake-scale-0 = 0 – keines
test-shake-scale-1 = 1 – gerade spürbar
test-shake-scale-2 = 2 – deutlich spürbar
test-shake-scale-3 = 3 – stark, es klappert

## Wackeln

test-wiggle-title = { $part } bewegen und beobachten
test-wiggle-name = { $part } von Hand bewegt
test-wiggle-why = Ein Fehler, der kommt und geht, zeigt sich bei Bewegung.
test-wiggle-explain = Lass Manometer oder Multimeter dran und bewege eines nach dem anderen. Ein springender Wert zeigt die Stelle.
test-wiggle-where = { $part }, Manometer oder Multimeter im Blick.
test-wiggle-step-1 = Lass Manometer oder Multimeter wie in der letzten Prüfung.
test-wiggle-step-2 = Zieh und biege { $part-acc } sanft. Erwärme mit dem Föhn.
test-wiggle-step-3 = Behalte den Messwert immer im Blick.
test-wiggle-means-as-expected = Der Wert bleibt: kein Wackelkontakt, kein Riss hier.
test-wiggle-means-not-as-expected = Der Wert springt: Der Fehler sitzt an { $part-dat }.
test-wiggle-field-steady = Bleibt der Messwert ruhig?
test-wiggle-field-steady-yes = Wert bleibt
test-wiggle-field-steady-no = Wert springt
test-wiggle-look-1 = Bewege eines nach dem anderen, und langsam.
