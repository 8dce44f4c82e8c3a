### Prüfungen mit dem Multimeter. Leitungsfarben stehen als Wort, Volt ist DC, Stecker werden am Gehäuse gezogen.

-by-body = Drücke die Rastung und zieh den Stecker am Gehäuse, nicht an den Leitungen.
-dc = Volt DC, nicht AC. Bereich 20{"\u00A0"}V oder Automatik.
-ohms-range = Ohm, kleinster Bereich oder Automatik. Nie unter Spannung.
-black-on-ground = Schwarze Leitung an Karosserie-{ -ground }: blankes Metall, kein Lack.

## Das Multimeter selbst

test-prove-meter-title = Multimeter überprüfen
test-prove-meter-name = Multimeter überprüft
test-prove-meter-why = Falscher Bereich oder leere Gerätebatterie verdirbt jeden Messwert danach.
test-prove-meter-explain = Miss zwei bekannte Dinge: die Leitungen aneinander und die Batterie. Dann kannst du dem Gerät trauen.
test-prove-meter-where = Leitungen aneinander, dann an den Batteriepolen.
test-prove-meter-step-1 = Schwarze Leitung in COM, rote in V und Ohm. Nie in A.
test-prove-meter-step-2 = Stelle Ohm ein. Halte die Leitungen zusammen und lies ab.
test-prove-meter-step-3 = Stelle Volt DC ein. Rot an Batterie plus, Schwarz an minus. Auch die Lampe probieren.
test-prove-meter-means-as-expected = Multimeter und Leitungen sind gut.
test-prove-meter-means-not-as-expected = Leitungen, Buchsen oder Gerätebatterie: Bring das zuerst in Ordnung.
test-prove-meter-lead-red = Rote Leitung an Batterie plus.
test-prove-meter-lead-black = Schwarze Leitung an Batterie minus.
test-prove-meter-hint = Erst Ohm mit den Leitungen aneinander, dann Volt DC, nicht AC.
test-prove-meter-field-ohms = Leitungen aneinander
test-prove-meter-field-ohms-read = Leitungen { $value }
test-prove-meter-field-battery = Batteriespannung
test-prove-meter-field-battery-read = Batterie { $value }
test-prove-meter-field-lamp = Leuchtet die Prüflampe an der Batterie?
test-prove-meter-field-lamp-yes = Lampe leuchtet
test-prove-meter-field-lamp-no = Lampe bleibt dunkel

## Plus am Stecker

test-supply-volts-title = Ist Plus am Stecker?
test-supply-volts-name = Plus am Stecker
test-supply-volts-why = Zwei Messwerte trennen Plus, Leitung und Schaltung.
test-supply-volts-explain = Bei abgezogenem Stecker zeigt jeder Pin, was das Auto schickt. Welcher Batteriespannung haben soll, hängt von der Schaltung ab.
test-supply-volts-where = Der Fahrzeugstecker, vom Ventil gezogen: Blick in die offene Seite.
test-supply-volts-step-1 = Zündung aus. { -by-body }
test-supply-volts-step-2 = { -black-on-ground } Rote Leitung bereit.
test-supply-volts-step-3 = { $engine ->
    [off] Zündung ein, Motor aus. Ohne Schlüssel: Bremspedal nicht treten.
   *[idle] Motor starten und im Leerlauf lassen.
}
test-supply-volts-step-4 = Rote Leitung an Pin 1, dann an Pin 2. Berühren, nicht drücken.
test-supply-volts-step-5 = Miss auch die Batterie, an ihren Polen.
test-supply-volts-means-as-expected = Plus kommt an, ohne Last. Eine Prüfung unter Last muss folgen.
test-supply-volts-means-not-as-expected = Kein Plus: zuerst die Sicherung, dann die Plusleitung.
test-supply-volts-lead-red = Rote Leitung an Pin 1, dann an Pin 2.
test-supply-volts-lead-black = Schwarze Leitung an Karosserie-{ -ground }.
test-supply-volts-hint = { -dc }
test-supply-volts-field-pin1 = Pin 1 gegen Karosserie-{ -ground }
test-supply-volts-field-pin1-read = Pin 1 { $value }
test-supply-volts-field-pin2 = Pin 2 gegen Karosserie-{ -ground }
test-supply-volts-field-pin2-read = Pin 2 { $value }
test-supply-volts-field-battery = Batterie jetzt
test-supply-volts-field-battery-read = Batterie { $value }

test-supply-loaded-title = Hält Plus unter Last?
test-supply-loaded-name = Plus unter Last
test-supply-loaded-why = Eine korrodierte Verbindung zeigt volle Spannung, bis Strom fließt.
test-supply-loaded-explain = Eine kleine Lampe zieht so viel wie das Ventil. Unter ihr gibt eine schlechte Verbindung nach, und die Spannung fällt.
test-supply-loaded-where = Der Pluspin im Fahrzeugstecker, Lampe als Last.
test-supply-loaded-step-1 = { $engine ->
    [off] Stecker ab, Zündung ein, Motor aus. { -black-on-ground }
   *[idle] Stecker ab, Motor im Leerlauf. { -black-on-ground }
}
test-supply-loaded-step-2 = Lampe mit 2–5{"\u00A0"}W vom Pluspin an Karosserie-{ -ground }.
test-supply-loaded-step-3 = Rote Leitung an den Pluspin, neben die Lampenleitung.
test-supply-loaded-step-4 = Lies ab, während die Lampe leuchtet. Miss dann die Batterie.
test-supply-loaded-means-as-expected = Die Plusleitung trägt die Last.
test-supply-loaded-means-not-as-expected = Sie bricht unter Last ein: Verbindung oder Leitung schlecht.
test-supply-loaded-lead-red = Rote Leitung an den Pluspin, Lampe angeschlossen.
test-supply-loaded-lead-black = Schwarze Leitung an Karosserie-{ -ground }.
test-supply-loaded-hint = { -dc } Eine Lampe mit 2–5{"\u00A0"}W, keine LED.
test-supply-loaded-field-pin1 = Pluspin, Lampe ein
test-supply-loaded-field-pin1-read = Pluspin { $value }
test-supply-loaded-field-battery = Batterie jetzt
test-supply-loaded-field-battery-read = Batterie { $value }

## Sicherung und Plusleitung

test-fuse-title = Sicherung messen
test-fuse-name = Sicherung
test-fuse-why = Kein Plus am Stecker: Die Sicherung ist die billigste Ursache.
test-fuse-explain = Eine Sicherung kann ganz aussehen und offen sein. Miss beide kleinen Messpunkte auf dem Rücken.
test-fuse-where = Die Sicherung des Ventils im Sicherungskasten. Ihr Platz steht in den Herstellerangaben.
test-fuse-step-1 = Zündung ein, Motor aus. { -black-on-ground }
test-fuse-step-2 = Rote Leitung an einen Messpunkt der Sicherung, dann an den anderen.
test-fuse-step-3 = Oder: Zündung aus, Sicherung heraus, Ohm darüber messen.
test-fuse-means-as-expected = Die Sicherung leitet. Miss als Nächstes die Plusleitung.
test-fuse-means-not-as-expected = Die Sicherung ist durch. Finde den Grund, bevor du eine neue steckst.
test-fuse-lead-red = Rote Leitung an einen Messpunkt der Sicherung, dann an den anderen.
test-fuse-lead-black = Schwarze Leitung an Karosserie-{ -ground }.
test-fuse-hint = { -dc } Sicherung heraus: Ohm.
test-fuse-field-in-v = Messpunkt mit mehr Volt
test-fuse-field-in-v-read = davor { $value }
test-fuse-field-out-v = Anderer Messpunkt
test-fuse-field-out-v-read = dahinter { $value }
test-fuse-field-ohms = Oder Sicherung heraus: darüber
test-fuse-field-ohms-read = darüber { $value }

test-power-wire-title = Plusleitung messen
test-power-wire-name = Plusleitung
test-power-wire-why = Sicherung gut, kein Plus kommt an: Dazwischen liegt die Leitung.
test-power-wire-explain = Die Leitung läuft von der Sicherung zum Stecker. Scheuern, Nager und Korrosion sitzen an Biegungen und Metallkanten.
test-power-wire-where = Vom Ausgang der Sicherung zum Pluspin im Stecker.
test-power-wire-step-1 = Zündung aus, Sicherung heraus, Stecker ab. Stelle Ohm ein.
test-power-wire-step-2 = Halte die Leitungen zusammen und merke dir den Wert.
test-power-wire-step-3 = Eine Leitung an den Sockelausgang, eine an den Pluspin.
test-power-wire-step-4 = Wackle entlang der Leitung, während du abliest.
test-power-wire-step-5 = Eine Leitung bleibt am Pluspin, die andere an Karosserie-{ -ground }: offen?
test-power-wire-means-as-expected = Die Leitung leitet bei kleinem Strom. Eine Prüfung unter Last entscheidet.
test-power-wire-means-not-as-expected = Die Leitung ist gebrochen, korrodiert oder berührt { -ground }.
test-power-wire-lead-red = Rote Leitung an den Ausgang des Sicherungssockels.
test-power-wire-lead-black = Schwarze Leitung an den Pluspin; zuletzt rot an Karosserie-{ -ground }.
test-power-wire-hint = { -ohms-range } Zieh den Wert der Messleitungen ab.
test-power-wire-field-ohms = Sicherung bis Stecker
test-power-wire-field-ohms-read = { $value }
test-power-wire-field-drop-v = Oder Verlust darauf, Lampe ein
test-power-wire-field-drop-v-read = verliert { $value }
test-power-wire-field-to-ground-open = Pluspin gegen Karosserie-{ -ground }: offen?
test-power-wire-field-to-ground-open-yes = offen gegen { -ground }
test-power-wire-field-to-ground-open-no = es zeigt Ohm gegen { -ground }

## Ansteuerung

test-valve-volts-title = Bekommt das Ventil seine Spannung?
test-valve-volts-name = Spannung am Ventil
test-valve-volts-why = Das sieht das Ventil selbst, wenn es arbeiten soll.
test-valve-volts-explain = Das Steuergerät schaltet das Ventil nur unter seiner Schaltbedingung. Null Volt sonst sagt nichts. Bei abgezogenem Stecker schweigt auch ein gutes Steuergerät oft; die gesteckte Messung entscheidet.
test-valve-volts-where = Über beiden Pins des Ventils, Stecker gesteckt, von der Leitungsseite.
test-valve-volts-step-1 = Zündung aus. Stecker ab. Leitungen an beide Pins des Fahrzeugsteckers.
test-valve-volts-step-2 = Motor starten. Erfülle die Schaltbedingung: { $window }. Lies ab.
test-valve-volts-step-3 = Motor aus. Stecker drauf. Schiebe dünne Prüfspitzen von hinten ein.
test-valve-volts-step-4 = Motor starten, Schaltbedingung erfüllen, wieder ablesen.
test-valve-volts-step-5 = Miss auch die Batterie, an ihren Polen.
test-valve-volts-means-as-expected = Das Ventil wird angesteuert: Prüfe das Ventil selbst.
test-valve-volts-means-not-as-expected = Es wird nicht angesteuert. Zählt nur bei erfüllter Schaltbedingung.
test-valve-volts-lead-red = Rote Leitung an den Pluspin.
test-valve-volts-lead-black = Schwarze Leitung an den Steuerpin.
test-valve-volts-hint = { -dc } Ein ruhiger Mittelwert heißt: getaktetes Ventil.
test-valve-volts-field-volts = Beide Pins, Stecker ab
test-valve-volts-field-volts-read = Stecker ab { $value }
test-valve-volts-field-plugged-v = Beide Pins, gesteckt
test-valve-volts-field-plugged-v-read = gesteckt { $value }
test-valve-volts-field-battery = Batterie jetzt
test-valve-volts-field-battery-read = Batterie { $value }

test-control-pin-title = Schaltet das Steuergerät den Steuerpin?
test-control-pin-name = Steuerpin
test-control-pin-why = Die Messung gesteckt und belastet entscheidet zwischen Steuergerät, Leitung und Ventil.
test-control-pin-explain = Das Steuergerät zieht diesen Pin an { -ground } oder speist ihn. Die Spannung muss wechseln, wenn der Befehl kommt.
test-control-pin-where = Der Steuerpin, Stecker gesteckt, von der Leitungsseite.
test-control-pin-step-1 = { -black-on-ground } Führe sie weg von Riemen und Lüfter.
test-control-pin-step-2 = Stecker gesteckt. Schiebe eine dünne Prüfspitze von hinten ein.
test-control-pin-step-3 = Motor starten. Lies ab, solange das Ventil keinen Befehl hat.
test-control-pin-step-4 = Erfülle die Schaltbedingung: { $window }. Lies wieder ab.
test-control-pin-means-as-expected = Das Steuergerät schaltet. Prüfe das Ventil.
test-control-pin-means-not-as-expected = Keine Änderung: Steuerleitung, Steuergerät, oder Schaltbedingung nicht erfüllt.
test-control-pin-lead-red = Rote Leitung an den Steuerpin, Stecker gesteckt.
test-control-pin-lead-black = Schwarze Leitung an Karosserie-{ -ground }.
test-control-pin-hint = { -dc }
test-control-pin-field-off-v = Ventil ohne Befehl
test-control-pin-field-off-v-read = aus { $value }
test-control-pin-field-on-v = Ventil mit Befehl
test-control-pin-field-on-v-read = ein { $value }
test-control-pin-field-battery = Batterie jetzt
test-control-pin-field-battery-read = Batterie { $value }

test-control-wire-title = Steuerleitung messen
test-control-wire-name = Steuerleitung
test-control-wire-why = Kein Befehl kommt an: Die Leitung kommt vor dem Steuergerät.
test-control-wire-explain = Ein Steuergerät kostet mehr als eine Leitung und fällt selten aus. Prüfe zuerst die Leitung.
test-control-wire-where = Vom Steuerpin im Stecker zum Pin des Steuergeräts.
test-control-wire-step-1 = Zündung fünf Minuten aus. Leitungen zusammen: Ohm merken.
test-control-wire-step-2 = Zieh den Ventilstecker und den des Steuergeräts, am Gehäuse.
test-control-wire-step-3 = Miss Ohm vom Steuerpin zum Pin des Steuergeräts.
test-control-wire-step-4 = Miss vom Steuerpin zur Karosserie-{ -ground }: offen?
test-control-wire-step-5 = Miss vom Steuerpin zu Batterie plus: offen?
test-control-wire-means-as-expected = Die Leitung ist ganz: Es bleiben Steuergerät oder seine Eingänge.
test-control-wire-means-not-as-expected = Die Leitung ist gebrochen oder berührt { -ground }.
test-control-wire-lead-red = Rote Leitung an den Steuerpin im Stecker.
test-control-wire-lead-black = Schwarze Leitung an den Pin des Steuergeräts, dann an Karosserie-{ -ground }.
test-control-wire-hint = { -ohms-range } Weite die Pins nicht auf.
test-control-wire-field-ohms = Stecker bis Steuergerät
test-control-wire-field-ohms-read = { $value }
test-control-wire-field-to-ground-open = Steuerpin gegen Karosserie-{ -ground }: offen?
test-control-wire-field-to-ground-open-yes = offen gegen { -ground }
test-control-wire-field-to-ground-open-no = es zeigt Ohm gegen { -ground }
test-control-wire-field-to-battery-open = Steuerpin gegen Batterie plus: offen?
test-control-wire-field-to-battery-open-yes = offen gegen Batterie plus
test-control-wire-field-to-battery-open-no = es zeigt Ohm gegen Batterie plus

## Spule

test-coil-title = Ventilspule messen
test-coil-name = Ventilspule
test-coil-why = Eine offene Spule bewegt das Ventil nie, was immer sie ansteuert.
test-coil-explain = Die Spule ist ein langer dünner Draht. Ihr Widerstand sagt, ob sie ganz ist. Manche Spule öffnet nur heiß.
test-coil-where = Die zwei Pins des Ventils selbst, Stecker ab.
test-coil-step-1 = Zündung aus. { -by-body }
test-coil-step-2 = Stelle Ohm ein. Je eine Leitung an einen Ventilpin. Lies ab.
test-coil-step-3 = Eine Leitung an einen Pin, eine ans Metallgehäuse des Ventils.
test-coil-means-as-expected = Die Spule ist bei dieser Temperatur ganz.
test-coil-means-not-as-expected = Offen oder kurzgeschlossen: Das Ventil ist eine Ursache.
test-coil-lead-red = Rote Leitung an einen Pin des Ventils.
test-coil-lead-black = Schwarze Leitung an den anderen Pin, dann ans Gehäuse.
test-coil-hint = { -ohms-range }
test-coil-field-ohms = Ohm über das Ventil
test-coil-field-ohms-read = { $value }
test-coil-field-to-case-open = Pin gegen Ventilgehäuse: offen?
test-coil-field-to-case-open-yes = kein Kontakt zum Gehäuse
test-coil-field-to-case-open-no = es zeigt Ohm gegen Gehäuse

## Zustand des Autos neben einem Messwert, und was viele Felder teilen

state-connected = Stecker
state-connected-yes = gesteckt
state-connected-no = abgezogen
state-engine = Motor
state-engine-off = aus
state-engine-idle = Leerlauf
state-engine-in-gear = Leerlauf mit Fahrstufe
state-hot = Ventil und Motor
state-hot-yes = heiß
state-hot-no = kalt
state-otherwise = Das Auto steht anders da
vibration-record = { $what }: { $seconds } aufzeichnen
vibration-recording = { $what }: Aufzeichnung läuft. Noch einmal?
vibration-kept = { $what }: { $seconds } aufgezeichnet
vibration-kept-word = Aufgezeichnet
vibration-not-recorded = Nichts wurde aufgezeichnet. Lege das Handy hin und versuche es wieder.
