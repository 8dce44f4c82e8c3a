### Woraus man wählt: Beanstandungen, Kreise, Eigenschaften, Werkzeuge, wer arbeitet.

## Beanstandungen. Wie angetippt, und wie sie im Satz stehen.

complaint-question = Was ist los?
complaint-shake-idle = Er schüttelt im Leerlauf
complaint-shake-idle-slight = Er schüttelt leicht im Leerlauf
complaint-shake-idle-gear = Er schüttelt im Leerlauf mit Fahrstufe
complaint-harsh-pulling-away = Er ist rau beim Anfahren
complaint-soft-under-way = Der Motor schaukelt beim Fahren
complaint-clunk = Es schlägt beim Schalten oder Gaswegnehmen
complaint-code-stored = Ein Code ist gespeichert
complaint-none = Nichts: nur eine Kontrolle
complaint-shake-idle-phrase = Schütteln im Leerlauf
complaint-shake-idle-slight-phrase = leichtes Schütteln im Leerlauf
complaint-shake-idle-gear-phrase = Schütteln im Leerlauf mit Fahrstufe
complaint-harsh-pulling-away-phrase = Rauheit beim Anfahren
complaint-soft-under-way-phrase = ein Motor, der beim Fahren schaukelt
complaint-clunk-phrase = ein Schlag beim Schalten oder Gaswegnehmen
complaint-code-stored-phrase = ein gespeicherter Code
complaint-none-phrase = keine Beanstandung, nur eine Kontrolle

## Elektrischer Stecker am Lager

not-this-job = Ein elektrischer Stecker am Lager und kein Schlauch? Dieses Lager arbeitet nicht mit Unterdruck. Hier aufhören.

## Unterdruckkreise

template-one-mount = Ein Lager, ein Ventil
template-two-mounts-one-valve = Zwei Lager, ein Ventil
template-reservoir-on-tee = Zwei Lager, ein Ventil, Speicher am T-Stück
template-two-valves-shared-feed = Zwei Lager, je ein Ventil
template-four-mounts = Vier Lager, ein Ventil
template-pump-with-brake-booster = Vakuumpumpe gemeinsam mit der Bremse
template-two-mounts-open-at-rest = Zwei Lager, Ventil in Ruhe offen
template-two-stage-mount = Ein Lager mit zwei Kammern
template-bled-branch = Ein Lager mit Belüftungsbohrung
template-restricted-branch = Zwei Lager, Drossel nach dem Ventil
template-pulsed-mount = Ein Lager, getaktetes Ventil
template-shared-valve-block = Ventilblock gemeinsam mit anderen Verbrauchern

## Stromkreise

layout-ignition-fed-ground-switched = Plus über die Zündung, Steuergerät schaltet { -ground }
layout-relay-fed-ground-switched = Plus über ein Relais, Steuergerät schaltet { -ground }
layout-supply-switched = Steuergerät schaltet Plus, { -ground } ist fest
layout-shared-fuse-and-splice = Eine Sicherung und Verbindung für mehrere Verbraucher
layout-pulsed-with-diode = Steuergerät taktet das Ventil
layout-push-pull = Steuergerät schaltet beide Pins

## Eigenschaften eines Kreises

property-vacuum-means = Unterdruck macht die Lager
property-vacuum-means-soft = Weich, für den Leerlauf
property-vacuum-means-stiff = Hart, zum Fahren
property-rest = Ventil ohne Strom
property-rest-closed = Zu, und belüftet die Lager
property-rest-open = Offen, lässt Unterdruck durch
property-switched = Das Steuergerät schaltet
property-switched-ground = Die { -ground }seite
property-switched-supply = Die Plusseite
property-feed = Plus kommt
property-feed-ignition = Über die Zündung
property-feed-relay = Über ein Relais, das das Steuergerät hält
property-window = Das Steuergerät schaltet das Ventil
property-window-idle = Im Leerlauf
property-window-idle-in-gear = Im Leerlauf mit Fahrstufe
property-source = Unterdruck kommt
property-source-intake = Vom Ansaugrohr des Motors
property-source-mechanical-pump = Von einer Pumpe am Motor
property-source-electric-pump = Von einer elektrischen Pumpe
property-check-valve = Rückschlagventil nahe der Quelle
property-check-valve-yes = Verbaut
property-check-valve-no = Nicht verbaut
property-unknown = Weiß ich nicht

window-idle = warm und eine Minute im Leerlauf
window-idle-in-gear = warm, Leerlauf mit Fahrstufe, Bremse getreten
window-unknown = warm, eine Minute Leerlauf; dann einmal mit Fahrstufe

## Werkzeuge

tool-hand-pump = Handvakuumpumpe mit Manometer
tool-cap = Kappen für Schlauchenden
tool-multimeter = Multimeter
tool-fused-jumper = Abgesicherte Prüfleitung, 3–5{"\u00A0"}A am Batterieende
tool-lamp = Glühlampe, 2–5{"\u00A0"}W, keine LED
tool-spare-hose = Ersatz-Unterdruckschlauch
tool-code-reader = Diagnosegerät
tool-tachometer = Drehzahlmesser
tool-wooden-lever = Holzhebel

## Voraussetzungen

need-engine-off = Motor aus
need-engine-idle = Motor warm im Leerlauf
need-engine-in-gear = Leerlauf mit Fahrstufe, Bremse getreten
need-ignition-on = Zündung ein, Motor aus
need-window = Schaltbedingung erfüllt: { $window }
need-second-person = Eine zweite Person auf dem Fahrersitz
need-connector-on = Stecker gesteckt
need-connector-off = Stecker ab

## Wer arbeitet

profile-owner = Halter
profile-owner-detail = Alles wird erklärt. Nichts mit Fahrstufe.
profile-mechanic = Mechaniker
profile-mechanic-detail = Kurze Texte. Prüfungen mit Fahrstufe zu zweit.

## Warum eine Prüfung entfällt

cannot-no-access = Komme nicht heran
cannot-no-tool = Werkzeug fehlt
cannot-not-safe = Hier nicht sicher
cannot-not-fitted = Das Auto hat das Teil nicht
cannot-not-now = Jetzt nicht
cannot-not-available = Hier nicht zu bekommen
cannot-why = Ein anderer Grund
cannot-why-missing = Nenne zuerst den Grund.
cannot-own-words = Aus diesem Grund nicht möglich
cannot-no-access-reason = es war nicht zugänglich
cannot-no-tool-reason = das Werkzeug fehlte
cannot-not-safe-reason = es war dort nicht sicher
cannot-not-fitted-reason = das Fahrzeug hat dieses Teil nicht
cannot-not-now-reason = es wurde auf später verschoben
cannot-not-available-reason = es war nicht verfügbar

## Warum eine Prüfung jetzt nicht angeboten wird

not-offered-hand-pump = Braucht eine Handvakuumpumpe mit Manometer.
not-offered-cap = Braucht Kappen für Schlauchenden.
not-offered-multimeter = Braucht ein Multimeter.
not-offered-fused-jumper = Braucht eine abgesicherte Prüfleitung.
not-offered-lamp = Braucht eine Glühlampe mit 2–5{"\u00A0"}W.
not-offered-spare-hose = Braucht einen Ersatz-Unterdruckschlauch.
not-offered-code-reader = Braucht ein Diagnosegerät.
not-offered-tachometer = Braucht einen Drehzahlmesser.
not-offered-wooden-lever = Braucht einen Holzhebel.
not-offered-alone = Braucht eine zweite Person auf dem Fahrersitz.
not-offered-engine = Braucht einen Motor, der läuft.
