### Was die Auswertung zu sagen hat: erst Ergebnisse, dann Fragen, Gründe, was dafür und dagegen spricht.

## Halteprüfungen

hold-holds = Hält: { $drop } verloren in { $seconds }. Erlaubt: { $limit } in { $within }.
hold-slow-leak = Schleichleck: { $drop } verloren in { $seconds }. Das liegt innerhalb von { $limit } in { $within }.
hold-leaks = Undicht: { $drop } verloren in { $seconds }. Erlaubt: { $limit } in { $within }.
hold-undecided = Zu knapp: { $drop } verloren in { $seconds }. Erlaubt: { $limit } in { $within }.
hold-will-not-build = Baut keinen Unterdruck auf: Ende bei { $highest }, unter { $target }.
hold-no-reading = Es gibt noch keinen zweiten Messwert. Beobachte den Zeiger und lies noch einmal ab.
hold-no-vacuum = Am Anfang war kein Unterdruck da, der verloren gehen könnte.
hold-above-ambient = { $start } ist mehr, als die Luft hier erlaubt: höchstens { $most }. Prüfe die Einheit.
hold-not-usable = Diese Werte sind nicht brauchbar. Lies das Manometer noch einmal ab.
hold-not-in-circuit = Dieses Teil gehört nicht zum gewählten Kreis.
hold-go-on = Beobachte noch { $seconds }: Das würde es klären.
hold-finer-gauge = Ein Manometer, das sich auf { $step } ablesen lässt, würde es klären.
hold-at-the-limit = Es liegt genau an der Grenze. Mehr Zeit würde auch nichts klären.
hold-tester-dominates = Das meiste davon kann die Handpumpe selbst sein. Dichte zuerst das Prüfgerät ab.
hold-leak-in-part = Das Leck sitzt hier: { $part }.
hold-leak-in-one-of = Das Leck sitzt in einem von { $count } Teilen. Prüfe sie einzeln.
hold-bleed-normal = Dieser Strang hat eine Belüftungsbohrung: Langsames Fallen ist hier normal.
hold-strokes-few = So wenige Hübe bedeuten nur { $volume } Luft. Etwas kann verstopft sein.
hold-strokes-many = Viel mehr Hübe, als dieses Volumen braucht: ein Leck, oder mehr Teile als gedacht.
hold-readings-scatter = Die Werte springen mehr, als ein Leck erklärt. Klopfe ans Manometer, lies neu ab.
hold-start-low = Es begann deutlich unter { $target }. Pumpe höher für eine sicherere Antwort.
hold-tester-taken-off = Der eigene Verlust der Handpumpe, { $leak }, ist abgezogen.
hold-clears-no-torn-mount = Ein Lager, das hält, kann trotzdem gerissen sein. Sieh es auch an.
hold-clears-no-blocked-hose = Ein verstopfter Schlauch hält auch. Prüfe, ob Luft durchgeht.
hold-form-hole = Der Zeiger fiel gleichmäßig: ein kleines Loch.
hold-form-thin-path = Der Fall wurde langsamer: ein Riss oder ein enger Weg.
tester-proved = Handpumpe, Manometer und Adapter sind dicht. Den Ergebnissen kannst du trauen.
tester-fails = Das Prüfgerät selbst ist undicht. Tausche Kappe, Adapter oder Handpumpe, dann prüfe wieder.
tester-not-tested = Die Handpumpe wurde nicht allein geprüft. Ein Leck darin würde hier mitzählen.

## Das Ganze und seine Teile

additivity-agrees = Die Teile lecken zusammen so viel wie das Ganze: Nichts fehlt.
additivity-explained = Was die geprüften Teile lecken, erklärt das Ganze.
additivity-rest = Das Ganze leckt { $rest } mehr als seine geprüften Teile. Der Rest sitzt in { $untested-n ->
    [one] dem noch ungeprüften Teil
   *[other] den { $untested } noch ungeprüften Teilen
}.
additivity-rest-in = Das Ganze leckt { $rest } mehr als seine geprüften Teile. Das weist auf { $part-acc }.
additivity-whole-more = Das Ganze leckt { $rest } mehr als seine Teile allein. Prüfe Verbindungen und Adapter.
additivity-parts-more = Das widerspricht der Prüfung des Ganzen: Die Teile allein verlieren mehr. Wahrscheinlich war ein Adapter oder Stopfen undicht.

## Was ein Leck im Betrieb bewirkt

effect-measured-keeps = Die Lager bekommen noch { $vacuum } von { $source }. Dieses Leck zählt im Betrieb kaum.
effect-measured-lacks = Die Lager bekommen nur { $vacuum } von { $source }.
effect-mount-keeps = Im Leerlauf sollten noch etwa { $vacuum } von { $source } ankommen. Dieses Leck allein zählt kaum.
effect-mount-lacks = Im Leerlauf kämen nur etwa { $vacuum } von { $source } an.
effect-idle-changes = Es lässt etwa { $share } der Leerlaufluft ein: genug, um den Leerlauf zu stören.
effect-idle-unchanged = Es lässt { $share } der Leerlaufluft ein: zu wenig, um den Leerlauf zu stören.

## Bis wohin pumpen

target-usual = Pumpe wie üblich bis { $target }.
target-usual-sea-level-assumed = Pumpe bis { $target }. Meereshöhe ist angenommen; gib die Höhe ein, wenn du hoch liegst.
target-thin-air = Pumpe nur bis { $target }: Die dünne Luft hier erlaubt höchstens { $most }.
target-short-scale = Pumpe bis { $target }: Dein Manometer endet knapp darüber.

## Augen, Ohren, Hände

complaint-reproduced = Die Beanstandung ist jetzt da.
complaint-not-reproduced = Die Beanstandung ist jetzt nicht da. Ein gutes Ergebnis beweist dann wenig.
complaint-none-felt = Keine Beanstandung, und nichts ist zu spüren.
codes-none = Keine Codes gespeichert. Das entlastet weder Schläuche noch Lager.
codes-mount-circuit = { $count-n ->
    [one] Gespeicherter Code { $codes }: Er nennt
   *[other] Gespeicherte Codes { $codes }: Sie nennen
} den Stromkreis des Magnetventils, kein Teil.
codes-others = { $count-n ->
    [one] Gespeicherter Code { $codes }: Er betrifft
   *[other] Gespeicherte Codes { $codes }: Sie betreffen
} nicht die Lager. Kläre zuerst die Ursache.
idle-good = Der Motor läuft ruhig im Leerlauf mit { $rpm }.
idle-rough = Der Motor läuft unrund. Behebe das zuerst: Er schüttelt auch auf guten Lagern.
idle-hunting = Der Leerlauf sägt auf und ab. Behebe das zuerst.
idle-lowish = { $rpm } ist für warmen Leerlauf etwas niedrig.
idle-highish = { $rpm } ist etwas hoch. Ist der Motor warm?
idle-low = { $rpm } ist zu niedrig. Ein so langsamer Motor schüttelt von selbst.
idle-high = { $rpm } ist für warmen Leerlauf zu hoch. Suche Falschluft am Ansaugrohr.
look-clear = Von außen sieht jedes Teil gut aus.
look-found = { $count-n ->
    [one] Ein Teil sieht falsch aus.
   *[other] { $count } Teile sehen falsch aus.
}
look-found-cracked = { $part-start } ist rissig oder gespalten.
look-found-off = { $part-start } ist ab oder locker.
look-found-oily = { $part-start } ist außen ölig.
look-found-kinked = { $part-start } ist geknickt oder platt.
look-found-chafed = { $part-start } ist durchgescheuert.
look-found-corroded = { $part-start } ist korrodiert.
look-found-wet-inside = { $part-start } ist innen nass: Flüssigkeit aus einem Lager, oder Öl.
mount-looks-good = { $part-start } zeigt keinen Riss. Das beweist nicht, dass es arbeitet.
mount-torn = { $part-start } ist gerissen: Gummi hat sich vom Metall gelöst.
mount-wet = { $part-start } verliert Flüssigkeit: nass unter der eigenen Naht.
mount-sagged = { $part-start } sitzt { $sag } tiefer als das Gegenstück: Es ist abgesackt.
mount-sags-a-little = { $part-start } sitzt { $sag } tiefer. Das kann normal sein.
mount-moves-well = { $part-start } bewegt sich ohne Schlag: Der Gummi haftet.
mount-clunks = { $part-start } schlägt beim Hebeln an.
mount-gap-opens = Beim Hebeln öffnet sich ein Spalt: { $part-start } ist gerissen.
wiggle-steady = Bewegen ändert nichts: { $part }.
wiggle-jumps = Der Messwert springt beim Bewegen. Der Fehler sitzt an { $part-dat }.

## Unterdruck im Betrieb

source-good = Die Quelle liefert { $vacuum }. Erwartet: { $low } bis { $high }.
source-high = Die Quelle liefert { $vacuum }, sogar mehr als { $high }. Das reicht.
source-felt = Die Quelle zieht kräftig. Ein Manometer würde sagen, wie sehr.
source-none = Kein Unterdruck an der Quelle: { $vacuum }.
source-not-felt = Kaum ein Zug an der Quelle.
source-unsteady = Der Zeiger schwankt um { $vacuum }: Das weist auf den Motor, nicht auf die Schläuche.
source-lowish = { $vacuum } ist etwas wenig. Erwartet: { $low } bis { $high }.
source-low = Nur { $vacuum } an der Quelle. Erwartet: { $low } bis { $high }.
source-low-throttle-free = Motoren ohne Drosselklappe machen wenig Unterdruck und haben eine Pumpe. Prüfe, welche Art dies ist.
delivered-good = { $vacuum } kommen an den Lagern an, erwartet waren etwa { $source }.
delivered-none = Kein Unterdruck kommt an: { $vacuum }.
delivered-slow = { $vacuum } kommen an, aber erst nach { $seconds }. Etwas verengt den Weg.
delivered-uncalled = { $vacuum } kommen an, obwohl das Steuergerät nichts verlangen sollte.
delivered-low = Nur { $vacuum } kommen an den Lagern an, erwartet waren etwa { $source }.
delivered-bleed = { $vacuum } kommen an. Weniger als an der Quelle ist mit Belüftungsbohrung normal.
delivered-pulsed = { $vacuum } kommen an. Ein getaktetes Ventil gibt einen Mittelwert; das allein klärt nichts.
delivered-compare-source = Miss auch die Quelle: Ihr Unterdruck ist nur angenommen.
switch-over-good = Der Unterdruck geht in { $seconds }. Ventil, Entlüftung und Befehl arbeiten.
switch-over-slowish = Der Unterdruck geht in { $seconds }, etwas langsam. Erwartet: { $within }.
switch-over-slow = Der Unterdruck braucht { $seconds }. Erwartet: { $within }. Entlüftung oder Schlauch ist eng.
switch-over-stays = Der Unterdruck bleibt: { $rests } nach { $seconds }.
switch-over-stays-partly = Ein Teil des Unterdrucks bleibt: { $rests } nach { $seconds }.
switch-over-nothing-to-leave = Es war kein Unterdruck da, der gehen konnte. Das sagt noch nichts.
flow-free = Luft geht durch { $part-acc }.
flow-blocked = { $part-start } lässt keine Luft durch: geknickt, geschmolzen oder verstopft.
bypass-changes = Direkt vom Motor gespeist sprechen die Lager an: Prüfe Ventil und Leitungen.
bypass-changes-though-delivered = Die Lager sprechen an, und Unterdruck kam zuvor an: ein Fehler, der kommt und geht.
bypass-no-change = Auch direkt gespeist ändert sich nichts: Lager, Schläuche oder eine Ursache außerhalb.
command-window-not-met = In diesem Zustand schaltet das Steuergerät das Ventil nicht. Das spricht also nicht gegen es.
command-window-unknown = Wann das Steuergerät schaltet, ist nicht bekannt. Das spricht also nicht gegen es.

## Ventil von Hand

valve-off-good = In Ruhe tut das Magnetventil, was es soll.
valve-off-passes = In Ruhe lässt das Magnetventil Unterdruck durch.
valve-off-shut = In Ruhe soll das Magnetventil durchlassen, und es ist zu.
valve-off-no-vent = In Ruhe belüftet das Magnetventil die Lager nicht: Entlüftung verstopft.
valve-off-vents = Das Magnetventil leckt an der Entlüftung, während es durchlässt.
valve-off-vent-not-tried = Die Entlüftung wurde nicht probiert. Eine verstopfte bliebe verborgen.
valve-on-good = An der Prüfleitung schaltet das Magnetventil. Prüfe seine Leitungen.
valve-on-dead = An der Prüfleitung tut das Magnetventil nichts, nicht einmal ein Klicken.
valve-on-clicks-only = Das Magnetventil klickt, aber nichts ändert sich: Es klemmt oder ist verstopft.
valve-on-stuck = An der Prüfleitung schaltet das Magnetventil nicht.
valve-on-no-click = Es schaltete ohne hörbares Klicken. Probiere es noch einmal.
valve-on-vents = Mit Strom leckt das Magnetventil an der Entlüftung.
valve-on-no-vent = Mit Strom belüftet das Magnetventil die Lager nicht.

## Plus

supply-volts-one = Plus kommt an: { $volts } an einem Pin, Batterie { $battery }.
supply-volts-bias = { $volts } am anderen Pin kommen vom Steuergerät: bei vielen normal.
supply-volts-load-follows = Ohne Last kann sich eine schlechte Verbindung verstecken. Miss auch unter Last.
supply-volts-none-normal = Kein Plus bei stehendem Motor ist hier normal: Das Steuergerät speist das Ventil.
supply-volts-none-commanded = Kein Plus im Leerlauf. Viele Steuergeräte bleiben bei gezogenem Stecker aus.
supply-volts-always-on = { $volts }, obwohl das Steuergerät jetzt nichts speisen sollte.
supply-volts-both-normal = Beide Pins bei { $volts }: normal bei dieser Schaltung.
supply-volts-both = Beide Pins haben Batteriespannung, { $volts }. Bei gezogenem Stecker ist das seltsam.
supply-volts-low = Nur { $volts } am Stecker, Batterie { $battery }.
supply-volts-relay-off = Noch kein Plus: Ein Relais kann abgefallen sein. Miss noch einmal im Leerlauf.
supply-volts-none = Kein Plus am Stecker: { $volts }, Batterie { $battery }.
supply-volts-other-layouts = Bei manchen Schaltungen ist das normal. Miss noch einmal im Leerlauf.
supply-loaded-good = { $volts } unter Last, Batterie { $battery }: Die Plusleitung trägt.
supply-loaded-above-battery = { $volts } ist mehr, als die Batterie hat. Miss beides noch einmal.
supply-loaded-marginal = { $volts } unter Last, { $drop } unter der Batterie: etwas viel.
supply-loaded-low = Nur { $volts } unter Last, { $drop } unter der Batterie: Sie bricht ein.
supply-loaded-hidden-joint = Ohne Last sah es gut aus. Etwa { $ohms } sitzen in Verbindung oder Leitung.
fuse-good = { $in } vor und { $out } hinter der Sicherung: Sie leitet.
fuse-blown = Die Sicherung ist durch: { $in } davor, { $out } dahinter.
fuse-open = Die Sicherung ist durch: keine Verbindung darüber.
fuse-find-the-cause = Finde heraus, warum sie durchbrannte, bevor du eine gleiche steckst.
fuse-ohms-good = Die Sicherung leitet: { $ohms }.
fuse-ohms-high = { $ohms } über der Sicherung ist etwas viel. Reinige die Kontakte, miss noch einmal.
fuse-ohms-bad = { $ohms } über der Sicherung: Sie oder ihr Sockel ist schlecht.
fuse-no-feed = Kein Plus vor der Sicherung: { $in }, Batterie { $battery }.
fuse-no-feed-relay = Kein Plus vor der Sicherung. Ein Relais kann abgefallen sein: Miss im Leerlauf.
fuse-low-feed = Nur { $in } vor der Sicherung, Batterie { $battery }.
fuse-one-side = { $in } vor der Sicherung. Miss auch den anderen Messpunkt.
fuse-loses = { $in } davor und { $out } dahinter: Sicherung oder Sockel verliert Spannung.
power-wire-good = Die Plusleitung leitet: { $ohms } ohne die Messleitungen.
power-wire-open = Die Plusleitung ist unterbrochen: keine Verbindung.
power-wire-marginal = { $ohms } in der Plusleitung ist etwas viel.
power-wire-high = { $ohms } in der Plusleitung ist zu viel.
power-wire-drop = Die Plusleitung verliert { $drop } unter Last.
power-wire-drop-marginal = Die Plusleitung verliert { $drop } unter Last: etwas viel.
wire-one-strand = Auch eine letzte Ader zeigt wenig Ohm. Eine Prüfung unter Last entscheidet.
wire-under-load = Mit geschaltetem Ventil blieben etwa { $left }: { $drop } verloren.
battery-charge-first = Die Batterie hat nur { $volts }. Lade sie zuerst.

## Ansteuerung

valve-volts-good = Das Ventil bekommt { $volts }, Batterie { $battery }. Prüfe das Ventil selbst.
valve-volts-none = Das Ventil bekommt keine Spannung, wenn es sollte: { $volts }.
valve-volts-low = Das Ventil bekommt nur { $volts }, Batterie { $battery }.
valve-volts-hidden-joint = Bei gezogenem Stecker sah es gut aus: Eine schlechte Verbindung zeigt sich unter Last.
valve-volts-maybe-pulsed = Ein Mittelwert kann auch ein getaktetes Ventil sein. Lampe oder Oszilloskop klärt es.
valve-volts-open-good = { $volts } bei gezogenem Stecker: Das Steuergerät steuert an.
valve-volts-open-none = { $volts } bei gezogenem Stecker. Viele Steuergeräte schweigen dann.
valve-volts-connect = Miss noch einmal mit gestecktem Stecker: Das entscheidet.
control-pin-good = Das Steuergerät schaltet: { $off } aus, { $on } ein.
control-pin-off-good = { $off } bei Ventil aus, wie es sein soll. Miss nun mit Ventil ein.
control-pin-off-odd = { $off } bei Ventil aus ist seltsam. Miss mit Ventil ein.
control-pin-always-low = Der Steuerpin bleibt niedrig: { $off }. Leitung an { -ground }, oder kein Plus durch die Spule.
control-pin-always-on = Der Steuerpin bleibt ein: { $off }, wenn er aus sein sollte.
control-pin-no-change = Nichts ändert sich: { $off } aus, { $on } ein. Das Steuergerät schaltet ihn nicht.
control-pin-weak = { $off } aus, { $on } ein: Es schaltet, aber schwach.
control-pin-pulsed = { $off } aus, { $on } ein: ein getaktetes Ventil, angesteuert.
control-pin-maybe-pulsed = Ein Mittelwert kann auch ein getaktetes Ventil sein. Lampe oder Oszilloskop klärt es.
power-wire-to-ground = Die Plusleitung berührt { -ground }: Sie zerstört jede neue Sicherung.
power-wire-ground-not-tried = Ob sie { -ground } berührt, wurde nicht gemessen.
control-wire-good = Die Steuerleitung leitet: { $ohms } ohne die Messleitungen.
control-wire-open = Die Steuerleitung ist unterbrochen: keine Verbindung.
control-wire-to-ground = Die Steuerleitung berührt { -ground }: Das Ventil ist immer ein.
control-wire-to-battery = Die Steuerleitung berührt Batterie plus.
control-wire-marginal = { $ohms } in der Steuerleitung ist etwas viel.
control-wire-high = { $ohms } in der Steuerleitung ist zu viel.
control-wire-ground-not-tried = Ob sie { -ground } berührt, wurde nicht gemessen.
coil-good = Die Spule ist ganz: { $ohms }. Erwartet: { $low } bis { $high }.
coil-hot-too = Manche Spule öffnet nur heiß. Miss auch heiß, wenn der Fehler heiß kommt.
coil-open = Die Spule ist unterbrochen: keine Verbindung.
coil-to-case = Die Spule berührt das Ventilgehäuse.
coil-shorted = Die Spule hat einen Kurzschluss: { $ohms }. Erwartet: { $low } bis { $high }.
coil-near-band = { $ohms } liegt knapp außerhalb von { $low } bis { $high }. Die Spule kann noch gut sein.
coil-low = { $ohms } ist zu niedrig. Erwartet: { $low } bis { $high }.
coil-high = { $ohms } ist zu hoch. Erwartet: { $low } bis { $high }.
prove-meter-good = Multimeter und Leitungen sind gut: { $ohms } aneinander.
prove-meter-leads-open = Leitungen aneinander, und keine Verbindung: Leitung oder Gerätesicherung defekt.
prove-meter-leads-high = { $ohms } mit den Leitungen aneinander ist zu viel. Reinige oder tausche sie.
prove-meter-lamp = Die Prüflampe bleibt an der Batterie dunkel: Der Glühfaden ist durch.
prove-meter-no-battery = { $volts } an der Batterie kann nicht sein. Prüfe Bereich, Buchsen und Leitungen.

## Vibrationen

shake-works = Das Schütteln ändert sich mit Unterdruck { $times }: Die Lager sprechen an.
shake-felt-works = Schütteln { $on } mit Unterdruck, { $off } ohne: Die Lager sprechen an.
shake-wrong-way = Das Schütteln ändert sich { $times }, aber verkehrt herum. Sind Schläuche vertauscht?
shake-felt-wrong-way = Schütteln { $on } mit Unterdruck, { $off } ohne: verkehrt herum. Sind Schläuche vertauscht?
shake-small-effect = Das Schütteln ändert sich nur { $times }. Das klärt nichts.
shake-no-effect = Unterdruck ändert das Schütteln nicht: { $times }.
shake-felt-no-effect = Schütteln { $on } mit Unterdruck, { $off } ohne: keine Änderung.
shake-strong-either-way = Starkes Schütteln mit und ohne Unterdruck. Hier endet die Skala: Eine Änderung wäre nicht zu sehen.
shake-none-either-way = Kein Schütteln mit oder ohne Unterdruck. Es gibt nichts zu vergleichen.
shake-move-the-phone = Oder das Handy liegt, wo nichts schüttelt. Versuche eine andere Stelle.
shake-nothing-recorded = Nichts wurde aufgezeichnet. Lege das Handy auf Metall und versuche es wieder.
shake-one-side = Nur eine Seite ist da. Fühle mit und ohne Unterdruck.
shake-too-short = Zu kurz. Zeichne mindestens { $seconds } auf.
shake-engine-rough = Der Motor läuft unrund: Auch das schüttelt.

## Nicht gemacht

not-done = Nicht gemacht: { $reason }.
not-available = Hier nicht verfügbar.
answer-does-not-fit = Diese Antwort passt nicht zur Prüfung. Gib sie noch einmal ein.

## Messwerte, die kaum stimmen können: was seltsam ist, dann das wahrscheinliche Versehen

odd-above-ambient = { $vacuum } ist mehr, als die Luft hier erlaubt: höchstens { $most }.
odd-far-below-target = { $vacuum } ist weit unter { $target }, und doch ging es weiter.
odd-needle-rises = Der Unterdruck stieg um { $rise }, obwohl niemand pumpte.
odd-negative-volts = { $volts } ist unter null.
odd-many-volts = { $volts } ist mehr, als ein Auto hat.
odd-battery-low = { $volts } ist zu wenig für eine Batterie, die eben das Auto versorgte.
odd-above-battery = { $volts } ist mehr als die { $battery } der Batterie.
odd-negative-ohms = { $ohms } ist unter null.
odd-few-ohms = { $ohms } ist fast nichts für eine Spule.
odd-many-ohms = { $ohms } ist hierfür sehr viel.
odd-rpm = { $rpm } ist keine Leerlaufdrehzahl.
odd-contradicts = Das widerspricht { $count-n ->
    [one] einem anderen Messwert
   *[other] { $count } anderen Messwerten
}.
likely-other-scale = Vielleicht hast du die { $likely }-Skala statt { $unit } gelesen.
likely-other-unit = Vielleicht ist der Wert in { $likely }, nicht in { $unit }.
likely-typing = Vielleicht ein Tippfehler.
likely-still-pumped = Vielleicht hat noch jemand gepumpt, oder das Manometer klemmte. Klopfe daran.
likely-leads-swapped = Vielleicht sind rote und schwarze Leitung vertauscht.
likely-millivolts = Vielleicht zeigt das Multimeter Millivolt: { $volts }.
likely-ac-range = Vielleicht steht das Multimeter auf AC.
likely-bad-contact = Vielleicht berührt eine Leitung kein blankes Metall.
likely-other-engine-state = Vielleicht lief der Motor bei einem Wert und beim anderen nicht.
likely-live-wire = Vielleicht stand die Leitung unter Spannung. Zündung aus, dann messen.
likely-kiloohms = Vielleicht zeigt das Multimeter kΩ: { $ohms }.
likely-milliohms = Vielleicht zeigt das Multimeter mΩ: { $ohms }.
likely-open = Vielleicht ist gar keine Verbindung da: Tippe dann auf „offen“.
likely-dial-factor = Vielleicht zählt die Anzeige in Zehnern, Hundertern oder Tausendern: { $rpm }.
likely-not-idling = Vielleicht war der Motor nicht im Leerlauf.
likely-other-place = Vielleicht anderer Ort, anderer Pin oder anderer Zustand des Autos.

## Warum jetzt diese Prüfung, warum aufhören

why-textbook = Die nächste nach Lehrbuch, etwa { $minutes }.
why-settles = { $count-n ->
    [one] Sie klärt etwa { $share } der verbleibenden Zweifel; bis zum Befund sind es etwa { $finding }.
   *[other] Sie klärt etwa { $share } der Zweifel zwischen { $count } Ursachen; bis zum Befund sind es etwa { $finding }.
}
why-ends = { $count-n ->
    [one] Sie beendet die Suche mit { $chance } Aussicht.
   *[other] Sie entscheidet zwischen { $count } Ursachen mit { $chance } Aussicht.
}
why-odd = Diese Messung passt schlecht zu den anderen: mit { $chance } Wahrscheinlichkeit ein Versehen. Noch einmal hinsehen, bevor etwas darauf aufbaut.
why-leans = Der Befund stützt sich auf diese Messung. Noch einmal hinsehen, bevor ein Teil beschuldigt wird.
why-proves = Sie zeigt, dass das Prüfmittel selbst in Ordnung ist, bevor ein Teil beschuldigt wird.
why-mends = Das Prüfmittel selbst ist wahrscheinlich schadhaft. Instand setzen oder tauschen, dann hier prüfen: Ist es gut, zählt nicht mehr, was vorher damit gemessen wurde.
why-again = Noch einmal, neu angesetzt: Eine schlechte Dichtung oder ein loses Ende kann eine einzelne Prüfung täuschen. Bis zum Befund sind es etwa { $finding }.
stop-sound = Alle Prüfungen passen zu einem guten Kreis, { $sure } sicher.
stop-outside = Die Ursache liegt außerhalb dieses Kreises, { $sure } sicher.
stop-found = { $sure } sicher: Mehr Prüfungen würden an der Reparatur nichts ändern.
stop-found-unexplained = { $sure } sicher, aber es erklärt die Beanstandung nicht. Keine übrige Prüfung täte es.
stop-tester = Das Prüfgerät selbst ist am verdächtigsten. Prüfe oder tausche es zuerst.
stop-nothing-left = Keine übrige Prüfung sagt genug mehr, um ihre Zeit wert zu sein. Die erste Ursache steht bei { $sure }.
stop-inseparable = Keine übrige Prüfung trennt die führenden Ursachen voraussichtlich. Die wahrscheinlichste steht bei { $sure }.

## Was dafür und dagegen spricht

evidence-for = { $test }: { $outcome }. Das passt { $times } besser zu dieser Ursache als zu den anderen.
evidence-against = { $test }: { $outcome }. Das passt { $times } besser zu den anderen Ursachen.
outcome-holds = hält
outcome-slow-leak = Schleichleck
outcome-leaks = undicht
outcome-will-not-build = baut keinen Unterdruck auf
outcome-undecided = unentschieden
outcome-as-expected = wie erwartet
outcome-not-as-expected = nicht wie erwartet
outcome-not-done = nicht gemacht
