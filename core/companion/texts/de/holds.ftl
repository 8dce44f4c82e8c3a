### Halteprüfungen: des Prüfgeräts, eines Abschnitts, eines einzelnen Teils.
### $target ist der Unterdruck, bis zu dem gepumpt wird, $seconds die Beobachtungszeit, $limit der erlaubte Abfall.

test-hand-pump-title = Handvakuumpumpe allein prüfen
test-hand-pump-name = Handvakuumpumpe allein
test-hand-pump-why = Ein undichtes Prüfgerät lässt jedes Teil undicht aussehen.
test-hand-pump-explain = Verschließe den Adapter und prüfe Pumpe, Manometer und Adapter für sich. Ihr Verlust wird von jedem späteren Ergebnis abgezogen.
test-hand-pump-where = Am Ende des Adapters, den du benutzt, verschlossen.
test-hand-pump-step-1 = Setze deinen Adapter an und verschließe ihn. Manometer auf null?
test-hand-pump-step-2 = Pumpe bis { $target }, dann nimm die Hand vom Hebel.
test-hand-pump-step-3 = Beobachte den Zeiger { $seconds } lang. Lies ab, wenn das Handy brummt.
test-hand-pump-means-holds = Das Prüfgerät hält: Du kannst ihm trauen.
test-hand-pump-means-slow-leak = Es verliert ein wenig. Spätere Ergebnisse ziehen das ab.
test-hand-pump-means-leaks = Das Prüfgerät ist undicht. Probiere zuerst andere Kappe oder Adapter.
test-hand-pump-means-will-not-build = Die Kappe ist ab, oder die Handpumpe ist verschlissen.
test-hand-pump-means-undecided = Zu knapp. Längeres Beobachten klärt es.

## Allgemein: ein Teil allein

test-hold-title = Halteprüfung: { $part }
test-hold-name = Halteprüfung, { $part }
test-hold-why = { $part-start } allein: Hält es, oder sitzt hier das Leck?
test-hold-explain = Jetzt hängt nur noch { $part-the } an der Pumpe. Bleibt der Zeiger, ist dieses Teil dicht.
test-hold-where = { $part }, allein, die übrigen Öffnungen verschlossen.
test-hold-step-1 = Nimm { $part-acc } aus dem Strang. Verschließe die übrigen Öffnungen.
test-hold-step-2 = Schiebe den Adapter der Handpumpe auf, gerade und stramm.
test-hold-step-3 = Pumpe bis { $target }, zähle die Hübe, dann lass den Hebel los.
test-hold-step-4 = Beobachte den Zeiger { $seconds } lang. Lies ab, wenn das Handy brummt.
test-hold-step-5 = Lass danach langsam Luft ein und baue alles zurück.
test-hold-means-holds = { $part-start } ist dicht. Suche woanders.
test-hold-means-slow-leak = Kleiner Verlust, innerhalb der Grenze. Selten die Ursache.
test-hold-means-leaks = { $part-start } ist undicht. Das ist eine Ursache.
test-hold-means-will-not-build = Weit offen: ein Riss, eine fehlende Kappe oder der falsche Anschluss.
test-hold-means-undecided = Zu knapp für dieses Manometer. Längeres Beobachten klärt es.

## Alles nach dem Ventil

test-hold-branch-title = Halteprüfung: alles nach dem Ventil
test-hold-branch-name = Halteprüfung, alles nach dem Ventil
test-hold-branch-why = Ein Pumpen prüft Schläuche, T-Stück und Lager zusammen.
test-hold-branch-explain = Bleibt der Zeiger, sind alle Schläuche und Lager nach dem Ventil dicht. Fällt er, ist etwas davon undicht, und Einzelprüfungen folgen.
test-hold-branch-where = Unterdruck hinaus: der Schlauch vom Ventilausgang, am Ventil abgezogen.
test-hold-branch-step-1 = Zieh den Ausgangsschlauch drehend vom Ventil. Innen nass? Halt, notieren.
test-hold-branch-step-2 = Schiebe den Adapter der Handpumpe in den Schlauch, gerade und stramm.
test-hold-branch-step-3 = Pumpe bis { $target }, zähle die Hübe, dann lass den Hebel los.
test-hold-branch-step-4 = Beobachte den Zeiger { $seconds } lang. Lies ab, wenn das Handy brummt.
test-hold-branch-step-5 = Lass danach langsam Luft ein und stecke den Schlauch zurück.
test-hold-branch-means-holds = Nach dem Ventil ist alles dicht. Prüfe Ventil und Elektrik.
test-hold-branch-means-slow-leak = Kleiner Verlust, innerhalb der Grenze. Selten die Ursache.
test-hold-branch-means-leaks = Nach dem Ventil ist etwas undicht. Nun einzelne Teile.
test-hold-branch-means-will-not-build = Ein großes Leck: Schlauch ab oder gespalten, oder ein Lager gerissen.
test-hold-branch-means-undecided = Zu knapp für dieses Manometer. Längeres Beobachten klärt es.

## Ein Motorlager

test-hold-mount-title = Halteprüfung: { $part } allein
test-hold-mount-why = { $part-start } allein: Hält es, oder sitzt hier das Leck?
test-hold-mount-explain = Eine rissige Membran zeigt außen nichts. Sie zeigt sich nur am Manometer.
test-hold-mount-where = Der Stutzen an { $part-dat } oder sein kurzes Schlauchende.
test-hold-mount-step-1 = Fotografiere den Schlauch, dann zieh ihn drehend ab: { $part }.
test-hold-mount-step-2 = Schiebe den Adapter der Handpumpe auf den Stutzen. Verbiege ihn nicht.
test-hold-mount-step-3 = Pumpe bis { $target }, zähle die Hübe, dann lass den Hebel los.
test-hold-mount-step-4 = Beobachte den Zeiger { $seconds } lang. Lies ab, wenn das Handy brummt.
test-hold-mount-step-5 = Lass danach langsam Luft ein und stecke den Schlauch zurück.
test-hold-mount-means-holds = Es ist dicht. Gerissen kann es trotzdem sein: Sieh es auch an.
test-hold-mount-means-slow-leak = Kleiner Verlust, innerhalb der Grenze. Selten die Ursache.
test-hold-mount-means-leaks = Membran oder Stutzen ist undicht: Dieses Lager ist eine Ursache.
test-hold-mount-means-will-not-build = Die Membran ist weit offen, oder der Adapter sitzt schlecht.
test-hold-mount-means-undecided = Zu knapp für dieses Manometer. Längeres Beobachten klärt es.

## Ein Schlauch

test-hold-hose-title = Halteprüfung: { $part } allein
test-hold-hose-why = { $part-start } allein: Hält er, oder sitzt hier das Leck?
test-hold-hose-explain = Prüfe den Schlauch, wie er im Auto liegt, beide Enden ab. Ein gespaltenes Ende steckt oft unter der Schelle.
test-hold-hose-where = Nahes Ende, fernes Ende verschlossen: { $part }.
test-hold-hose-step-1 = Nummeriere beide Schlauchenden, dann zieh sie drehend ab.
test-hold-hose-step-2 = Verschließe das ferne Ende. Schiebe den Adapter ins nahe Ende.
test-hold-hose-step-3 = Pumpe bis { $target }, zähle die Hübe, dann lass den Hebel los.
test-hold-hose-step-4 = Biege den Schlauch sanft und beobachte { $seconds } lang.
test-hold-hose-step-5 = Lies ab, wenn das Handy brummt. Luft ein, beide Enden zurück.
test-hold-hose-means-holds = Er ist dicht. Verstopft kann er sein: Auch Luft muss durch.
test-hold-hose-means-slow-leak = Kleiner Verlust, innerhalb der Grenze. Selten die Ursache.
test-hold-hose-means-leaks = { $part-start } ist undicht, oft an einem Ende. Das ist eine Ursache.
test-hold-hose-means-will-not-build = Er ist gespalten, oder das ferne Ende ist nicht verschlossen.
test-hold-hose-means-undecided = Zu knapp für dieses Manometer. Längeres Beobachten klärt es.

## Rückschlagventil und Speicher

test-hold-check-valve-title = Halteprüfung: Rückschlagventil
test-hold-check-valve-why = Lässt es zurück, geht bei stehendem Motor Unterdruck verloren.
test-hold-check-valve-explain = Es darf Luft nur zum Motor hin lassen. Sein Pfeil zeigt zur Quelle.
test-hold-check-valve-where = Rückschlagventil, auf der Seite weg vom Motor.
test-hold-check-valve-step-1 = Merke dir den Pfeil. Zieh den Schlauch auf der motorfernen Seite ab.
test-hold-check-valve-step-2 = Schiebe den Adapter der Handpumpe auf diese Seite.
test-hold-check-valve-step-3 = Pumpe bis { $target }, zähle die Hübe, dann lass den Hebel los.
test-hold-check-valve-step-4 = Beobachte den Zeiger { $seconds } lang. Lies ab, wenn das Handy brummt.
test-hold-check-valve-step-5 = Baue es danach ein, den Pfeil zum Motor.
test-hold-check-valve-means-holds = Das Rückschlagventil schließt.
test-hold-check-valve-means-slow-leak = Es lässt ein wenig zurück, innerhalb der Grenze.
test-hold-check-valve-means-leaks = Es lässt zurück: Unter Last des Motors geht Unterdruck verloren.
test-hold-check-valve-means-will-not-build = Weit offen, oder du bist auf der anderen Seite.
test-hold-check-valve-means-undecided = Zu knapp für dieses Manometer. Längeres Beobachten klärt es.
test-hold-restrictor-where = Ein Ende der Drossel, das andere verschlossen. Merke dir ihren Pfeil.
test-hold-reservoir-where = Ein Stutzen des Unterdruckspeichers, der andere verschlossen.
test-hold-tee-where = Ein Arm des T-Stücks, die anderen verschlossen.

## Vor dem Ventil

test-hold-inlet-title = Halteprüfung: alles vor dem Ventil
test-hold-inlet-name = Halteprüfung, alles vor dem Ventil
test-hold-inlet-why = Hinter einem Rückschlagventil muss dieser Strang bei stehendem Motor halten.
test-hold-inlet-explain = Ein stehender Motor ist zur Luft offen. Nur das Rückschlagventil lässt den Strang halten, also wird es mitgeprüft.
test-hold-inlet-where = Unterdruck hinein: der Schlauch zum Ventileingang, am Ventil abgezogen.
test-hold-inlet-step-1 = Zieh den Eingangsschlauch drehend vom Ventil.
test-hold-inlet-step-2 = Schiebe den Adapter der Handpumpe in den Schlauch, gerade und stramm.
test-hold-inlet-step-3 = Pumpe bis { $target }, zähle die Hübe, dann lass den Hebel los.
test-hold-inlet-step-4 = Beobachte den Zeiger { $seconds } lang. Lies ab, wenn das Handy brummt.
test-hold-inlet-step-5 = Lass danach langsam Luft ein und stecke den Schlauch zurück.
test-hold-inlet-means-holds = Schlauch und Rückschlagventil vor dem Ventil halten.
test-hold-inlet-means-slow-leak = Kleiner Verlust, innerhalb der Grenze. Selten die Ursache.
test-hold-inlet-means-leaks = Schlauch, Speicher oder Rückschlagventil vor dem Ventil ist undicht.
test-hold-inlet-means-will-not-build = Hier wirkt kein Rückschlagventil, oder ein Schlauch ist ab.
test-hold-inlet-means-undecided = Zu knapp für dieses Manometer. Längeres Beobachten klärt es.

## Der Eingang des Ventils

test-hold-valve-title = Halteprüfung: Magnetventil in Ruhe
test-hold-valve-name = Halteprüfung, Magnetventil in Ruhe
test-hold-valve-why = Ein Ventil, das in Ruhe durchlässt, vergeudet ständig Unterdruck.
test-hold-valve-explain = In Ruhe soll der Eingang zu sein. Fällt der Zeiger, lässt der Sitz durch.
test-hold-valve-where = Der Eingang des Ventils, beide Schläuche ab, kein Strom.
test-hold-valve-step-1 = Zieh beide Schläuche vom Ventil. Der Stecker bleibt ab.
test-hold-valve-step-2 = Schiebe den Adapter der Handpumpe auf den Eingang.
test-hold-valve-step-3 = Pumpe bis { $target }, zähle die Hübe, dann lass den Hebel los.
test-hold-valve-step-4 = Beobachte den Zeiger { $seconds } lang. Lies ab, wenn das Handy brummt.
test-hold-valve-step-5 = Stecke danach die Schläuche zurück wie vorher.
test-hold-valve-means-holds = Der Sitz schließt. Ob es öffnet, zeigt eine andere Prüfung.
test-hold-valve-means-slow-leak = Der Sitz lässt ein wenig durch, innerhalb der Grenze.
test-hold-valve-means-leaks = Der Sitz lässt in Ruhe durch: Das Ventil ist eine Ursache.
test-hold-valve-means-will-not-build = Es steht offen, oder du bist am falschen Anschluss.
test-hold-valve-means-undecided = Zu knapp für dieses Manometer. Längeres Beobachten klärt es.
