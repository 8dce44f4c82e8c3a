### Sicherheitshinweise, vor dem Schritt, zu dem sie gehören. Das Signalwort kommt aus dem Katalog.
### Übliche Werkstattpraxis; örtliche Vorschriften, Fachkunde und Herstellerangaben gehen vor.

signal-danger = GEFAHR
signal-warning = WARNUNG
signal-caution = VORSICHT
signal-notice = HINWEIS

## Motor aus

caution-engine-may-start = Der Motor kann von selbst starten: Start-Stopp, Hybrid, Fernstart. Zündung aus, Schlüssel weg vom Auto. Der Lüfter kann trotzdem anlaufen.
caution-engine-may-start-key-on = Bei Zündung ein können Motor und Lüfter von selbst anlaufen. Hände, Ärmel und Leitungen weg von Riemen und Lüfter.

## Motor läuft

caution-engine-running = Riemen und Lüfter erfassen Haare, Ärmel, Bänder und Messleitungen. Halte alles fern.
caution-fumes = Abgas tötet. Arbeite im Freien oder mit Absaugung.
caution-hot-parts = Auspuff, Kühlwasserteile und Lagerhalter verbrennen dich. Öffne nie einen heißen Kühlerdeckel.
caution-in-gear = Jemand auf dem Fahrersitz, Fuß auf der Bremse, Feststellbremse angezogen. Keile an den Rädern, ebener Boden, niemand davor oder dahinter. Keine Hand im Motorraum, nie auf { -lift } oder Wagenheber, unter 5 Sekunden.
caution-keep-clear-hoses = Befestige den Prüfschlauch weg von Riemen, Lüfter und Auspuff, bevor du den Motor startest.
caution-leads-clear = Befestige die Messleitungen weg von Riemen, Lüfter und Auspuff, bevor du den Motor startest.

## Rund ums Auto

caution-under-the-car = Nie unter ein Auto, das nur auf dem Wagenheber steht. Geprüfte Unterstellböcke oder { -lift }.
caution-high-voltage = Orange Leitungen: nie öffnen oder anstechen. Nur Fachkundige.
caution-airbag-wiring = Airbag- oder Gurtleitungen in der Nähe: keine Lampe, kein Ohmmeter, nichts abziehen. Auch Zündung, Einspritzung und Xenon meiden.
caution-lever-slips = Der Hebel kann abrutschen. Nur Holz, weg von Ölwanne, Schläuchen und Leitungen, keine Hand im Spalt.
caution-mount-fluid = Lagerflüssigkeit schadet Haut und Augen und vergiftet Tiere. Fang sie auf.
caution-gentle-heat = Nur ein Föhn, keine Heißluftpistole, keine Flamme. Kraftstoffdämpfe können sich entzünden.

## Unterdruck

caution-no-over-vacuum = Nie über { $most }: Membranen reißen.
caution-never-blow = Blase nie Luft in Lager oder Ventil. Sprühe keinen brennbaren Reiniger zur Lecksuche.
caution-nipples-snap = Kunststoffstutzen brechen. Drehe den Schlauch ab, zieh nicht.
caution-keep-arrow = Baue es mit gleicher Pfeilrichtung wieder ein.
caution-brake-vacuum-open = Die Bremse kann diesen Unterdruck mitnutzen. Bewege das Auto nicht bei offener Leitung. Danach muss das Pedal beim Motorstart nachgeben; prüfe die Bremse im Schritttempo.
caution-not-for-driving = Die Umgehung ist nur für diese Prüfung im Leerlauf. Fahre nie damit.

## Elektrik

caution-codes-before-unplugging = Abziehen setzt neue Codes. Lies zuerst die alten.
caution-no-rings = Keine Ringe oder Armbänder, Augen geschützt: Eine Batterie kann verbrennen.
caution-jumper-fuse = Die Sicherung der Prüfleitung, 3–5{"\u00A0"}A, sitzt am Batterieende.
caution-jumper-valve-only = Speise das Ventil, vom Auto getrennt. Nie den Fahrzeugstecker: Das schadet dem Steuergerät.
caution-jumper-polarity = Richtig polen: Eine Diode im Ventil verzeiht nichts.
caution-jumper-short-time = Weniger als 30 Sekunden ein: Die Spule wird heiß.
caution-meter-current-socket = Rote Leitung in die V-Buchse. In der A-Buchse ist sie ein Kurzschluss.
caution-pins-spread = Nur dünne Prüfspitzen. Eine dicke weitet den Pin auf.
caution-nothing-pierced = Stich keine Leitung und keine Dichtung an: Es korrodiert später.
caution-lamp-size = Eine Glühlampe mit 2–5{"\u00A0"}W. Eine größere schadet dem Steuergerät, eine LED belastet nicht.
caution-ohms-without-power = Miss nie Ohm an einer Leitung unter Spannung: Zündung aus, Sicherung heraus.
caution-fuse-same-rating = Gleicher Wert, einmal. Brennt sie wieder durch: aufhören, Kurzschluss suchen.
caution-module-static = Berühre blankes Karosserieblech, bevor du das Steuergerät abziehst. Zündung fünf Minuten aus.

## Für den ganzen Auftrag

