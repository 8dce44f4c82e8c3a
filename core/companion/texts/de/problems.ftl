### Was nicht stimmt und was zu tun ist. Neben einem Feld oder oben auf dem Bildschirm.

## Eine eingegebene Zahl

problem-number-empty = Gib eine Zahl ein.
problem-number-none = Das ist keine Zahl. Gib Ziffern ein, etwa 6,5.
problem-number-not-finite = Eine solche Zahl zeigt kein Manometer.
problem-range = Von { $low } bis { $high }.
problem-range-above = Zu hoch. Gib { $low } bis { $high } ein.
problem-range-below = Zu niedrig. Gib { $low } bis { $high } ein.
problem-missing = Es fehlt noch: { $what }.

## FIN und Kennzeichen

vin-fits = Die Prüfziffer stimmt.
vin-length = Eine FIN hat 17 Zeichen; dies sind { $count }.
vin-character = Eine FIN enthält nie { $character }. Suche 1 oder 0.
vin-differs = Die Prüfziffer ist { $there }, passen würde { $expected }. Sieh noch einmal hin. Außerhalb Nordamerikas kann das stimmen.

## Speicher

problem-open-newer = Dieses Protokoll schrieb Version { $version }, neuer als diese App. Es bleibt, wie es ist. Installiere die neuere App.
problem-folder = Der Datenordner lässt sich nicht anlegen. Schaffe Platz und versuche es wieder.
problem-full = Das Handy ist voll. Nichts ging verloren; dieser letzte Schritt ist nicht gespeichert. Schaffe Platz.
problem-read-only = Das Handy lässt diese App nicht schreiben. Nichts ging verloren; dieser letzte Schritt ist nicht gespeichert.
problem-store = Das Protokoll lässt sich nicht schreiben. Gespeichertes ist noch da. Versuche es wieder.
problem-session = Wo du warst, ließ sich nicht speichern. Deine Messwerte sind sicher.
problem-entry-from-newer = Aus einer neueren Version der App: behalten, nicht gezeigt.

## Fotos

problem-photo-damaged = Dieses Bild ist abgeschnitten oder beschädigt. Nimm es noch einmal auf.
problem-photo-type = Das ist kein Bild in JPEG, PNG oder WebP, und auch das Telefon kann es nicht lesen.
problem-photo-missing = Die Fotodatei fehlt. Ihr Eintrag bleibt.

## Berichte

problem-report = Der Bericht ließ sich nicht erstellen. Der Auftrag ist sicher. Versuche es wieder.
problem-report-no-space = Kein Platz für den Bericht. Schaffe Platz und versuche es wieder.

## Unterbrochen

problem-gap = Das Handy schlief { $seconds }. Weniger Messwerte zählen; die Zeit stimmt.
