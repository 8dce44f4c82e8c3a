### Namen der Bauteile ohne Artikel. gender: m, f, n oder p (Mehrzahl).

# Wie ein Name im Satz steht: als Täter, als Gegenstand, nach „an“, nach „von“, nach „zu“.
form-the = { $gender ->
    [f] die
    [n] das
    [p] die
   *[m] der
} { $part }
form-acc = { $gender ->
    [f] die
    [n] das
    [p] die
   *[m] den
} { $part }
form-dat = { $gender ->
    [f] der
    [p] den
   *[m] dem
} { $part }
form-of = { $gender ->
    [f] von der
    [p] von den
   *[m] vom
} { $part }
form-to = { $gender ->
    [f] zur
    [p] zu den
   *[m] zum
} { $part }

part-source = Unterdruckquelle
    .gender = f
part-check-valve = Rückschlagventil
    .gender = n
part-booster-check-valve = Rückschlagventil des Bremskraftverstärkers
    .gender = n
part-reservoir = Unterdruckspeicher
    .gender = m
part-valve = Magnetventil
    .gender = n
part-valve-block = Ventilblock
    .gender = m
part-inlet-hose = Eingangsschlauch
    .gender = m
part-feed-hose = Speiseschlauch
    .gender = m
part-pump-hose = Pumpenschlauch
    .gender = m
part-outlet-hose = Ausgangsschlauch
    .gender = m
part-reservoir-hose = Schlauch zum Unterdruckspeicher
    .gender = m
part-branch-hose = Schlauch nach der Drossel
    .gender = m
part-block-hose = Schlauch zum Ventilblock
    .gender = m
part-valve-hose = Schlauch zum Magnetventil
    .gender = m
part-tee = T-Stück
    .gender = n
part-feed-tee = T-Stück der Speisung
    .gender = n
part-inlet-tee = T-Stück vor dem Ventil
    .gender = n
part-pump-tee = T-Stück an der Pumpe
    .gender = n
part-front-tee-hose = Schlauch zum T-Stück vorn
    .gender = m
part-rear-tee-hose = Schlauch zum T-Stück hinten
    .gender = m
part-mount-hose = Motorlagerschlauch
    .gender = m
part-mount = Motorlager
    .gender = n
part-first-chamber = erste Kammer des Motorlagers
    .gender = f
part-second-chamber = zweite Kammer des Motorlagers
    .gender = f
part-restrictor = Drossel
    .gender = f
part-bleed = Belüftungsbohrung
    .gender = f
part-brake-booster = Bremskraftverstärker
    .gender = m
part-other-users = Strang der übrigen Verbraucher
    .gender = m
part-battery = Batterie
    .gender = f
part-fuse = Sicherung
    .gender = f
part-relay = Relais
    .gender = n
part-power-wire = Plusleitung
    .gender = f
part-splice = Leitungsverbindung
    .gender = f
part-connector = Stecker
    .gender = m
part-coil = Ventilspule
    .gender = f
part-control-wire = Steuerleitung
    .gender = f
part-module = Steuergerät
    .gender = n
part-ground-point = Massepunkt
    .gender = m
part-hand-pump = Handvakuumpumpe
    .gender = f
part-engine = Motor
    .gender = m
part-branch = Strang nach dem Ventil
    .gender = m
part-inlet = Strang vor dem Ventil
    .gender = m
part-strut = Drehmomentstütze
    .gender = f
part-exhaust = Auspuff
    .gender = m
part-solid-mount = Lager ohne Unterdruck
    .gender = n
part-drivetrain = Antriebsstrang
    .gender = m

part-hose = Schlauch
    .gender = m
part-chamber = Kammer des Motorlagers
    .gender = f

# Eines von zwei gleichen Teilen nach seiner Seite; ein zweites oder drittes nach seiner Nummer.
side-front = vorn
side-rear = hinten
side-left = links
side-right = rechts
side-first = 1
side-second = 2
part-of-side = { $part } { $side }
part-numbered = { $part } { $number }

# Was ein Teil ist und tut, in einer Zeile: für jemanden, der nie eines sah.
about-source = Hier entsteht der Unterdruck: am Ansaugrohr oder in einer Vakuumpumpe.
about-check-valve = Lässt Luft aus dem Kreis heraus und keine zurück.
about-reservoir = Eine Kugel oder Dose aus Kunststoff, die Unterdruck speichert.
about-valve = Ein elektrisches Ventil. Es gibt Unterdruck auf die Motorlager oder lässt ihn ab.
about-inlet-hose = Unterdruck hinein: von der Quelle zum Ventil.
about-outlet-hose = Unterdruck hinaus: vom Ventil zu den Motorlagern.
about-tee = Teilt einen Schlauch in zwei.
about-hose = Bringt Unterdruck zu einem Motorlager.
about-mount = Gummi und Öl zwischen Motor und Karosserie. Unterdruck ändert, wie weich es ist.
about-battery = Speist alles Elektrische.
about-fuse = Schützt die Plusleitung.
about-relay = Schaltet die Plusleitung.
about-power-wire = Bringt Batteriespannung zum Ventil.
about-control-wire = Darüber schaltet das Steuergerät das Ventil.
about-connector = Der elektrische Stecker am Ventil.
about-coil = Die Wicklung im Ventil.
about-module = Der Rechner, der bestimmt, wann das Ventil arbeitet.
about-restrictor = Ein enger Durchgang, der die Luft mit Absicht bremst.
about-bleed = Ein enger Durchgang ins Freie, mit Absicht.
about-ground-point = Hier sind Leitungen mit der Karosserie verschraubt.

# Zustände bei der Sichtprüfung.
look-ok = Sieht gut aus
look-cracked = Rissig oder gespalten
look-off = Ab oder locker
look-oily = Außen ölig
look-kinked = Geknickt oder platt
look-chafed = Durchgescheuert
look-corroded = Korrodiert oder grün
look-wet-inside = Innen nass
look-hint-hose = Biege ihn, sieh beide Enden an, fühle unter den Schellen.
look-hint-mount = Suche eine gerissene Kante und eine nasse Spur unter der Naht.
look-hint-valve = Sieh die Schlauchenden und die Entlüftung an.
look-hint-wire = Folge ihr mit den Augen; suche Scheuerstellen und Bisse.
look-hint-connector = Suche grüne Pins, lose Rastung, gerissene Dichtung.
look-hint-source = Horche auf Zischen am Schlauchanschluss.
look-hint-other = Suche Risse, Schmutz und Lockeres.
