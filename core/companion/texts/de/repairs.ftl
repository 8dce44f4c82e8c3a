### Reparaturzeilen: was zu tun und zu beachten ist, der Reihe nach. Jede Reparatur endet mit repair-all-N.

fix-replace = { $part } ersetzen
fix-refit = { $part } wieder anbringen
fix-repair = { $part } reparieren
fix-clean = { $part } reinigen
fix-charge = { $part } laden

repair-hose-1 = Fotografiere den alten Schlauch eingebaut. Schneide den neuen gleich lang.
repair-hose-2 = Nimm dickwandigen Unterdruckschlauch. Innenmaß wie der Stutzen, oft 3,2–4{"\u00A0"}mm.
repair-hose-3 = Öl oder Kraftstoffdampf nahebei: innen Fluor- oder Nitrilkautschuk, kein Silikon.
repair-hose-4 = Setze Drossel, Verzögerungs- und Rückschlagventil um. Der Pfeil bleibt gleich.
repair-hose-5 = Benetze die Enden mit Wasser, nie mit Mineralöl. Schellen nur, wo eine war.
repair-hose-6 = Weit weg vom Auspuff und frei von Kanten. Lass Spiel für Motorbewegung.
repair-hose-7 = Nur ein Ende gespalten? Kürze auf gesunden Gummi, wenn die Länge reicht.

repair-mount-1 = Stütze den Motor mit einer Motorbrücke oder nach Herstellerangaben.
repair-mount-2 = Neue Schrauben, wo der Hersteller es sagt. Setze alle von Hand an.
repair-mount-3 = Rüttle den Motor in seine Lage, dann anziehen. Anzugsmoment nach Herstellerangaben.
repair-mount-4 = Schreibe das Anzugsmoment und seine Quelle auf.
repair-mount-5 = Baue Hitzeschild, { -ground }band und Rohrhalter zurück.
repair-mount-6 = War der Schlauch innen nass? Entleere und trockne zuerst Schläuche und Ventil.
repair-mount-7 = Vergleiche die anderen Lager. Ersetze nur, was defekt ist.

repair-valve-1 = Merke dir, welcher Schlauch wo sitzt. Fotografiere sie.
repair-valve-2 = Ein verstopfter Entlüftungsfilter braucht vielleicht nur eine Reinigung.
repair-valve-3 = Trockne die Schlauchenden. Drehe sie auf, verbiege keinen Stutzen.
repair-valve-4 = Stecker sauber, Dichtung sitzt, Rastung eingerastet.

repair-coil-1 = Die Spule gehört zum Magnetventil: Ersetze das Ventil.
repair-coil-2 = Merke dir, welcher Schlauch wo sitzt. Fotografiere sie.
repair-coil-3 = Stecker sauber, Dichtung sitzt, Rastung eingerastet.

repair-check-valve-1 = Merke dir den Pfeil, bevor du ziehst. Er zeigt zur Quelle.
repair-check-valve-2 = Baue das neue mit gleicher Pfeilrichtung ein.
repair-check-valve-3 = Bremskraftverstärker an dieser Leitung? Motor starten: Das Pedal muss etwas nachgeben.

repair-reservoir-1 = Entleere ihn, wenn Flüssigkeit darin ist, und finde ihre Herkunft.
repair-reservoir-2 = Prüfe beide Stutzen und die Naht vor dem Einbau.

repair-tee-1 = Merke dir, welcher Schlauch auf welchem Arm sitzt.
repair-tee-2 = Nimm dasselbe Innenmaß. Schiebe jeden Schlauch ganz auf.

repair-source-1 = Reinige den Anschluss am Ansaugrohr, wenn Ölkohle ihn verschließt.
repair-source-2 = Eine verschlissene Pumpe oder ein schwacher Motor braucht eine eigene Diagnose.

repair-wire-1 = Batterie ab oder Sicherung heraus, bevor du etwas schneidest.
repair-wire-2 = Gleicher Querschnitt. Mit dichtem Verbinder crimpen, nicht löten.
repair-wire-3 = Umwickle und befestige sie neu, weg von Kanten und Hitze.
repair-wire-4 = Nagerbisse: Suche den zweiten.

repair-connector-1 = Zündung aus. Reinige die Pins mit Kontaktreiniger; lass sie trocknen.
repair-connector-2 = Prüfe den Halt jedes Kontakts mit einem passenden Pin.
repair-connector-3 = Dichtung sitzt, Rastung eingerastet, kein Zug auf den Leitungen.
repair-connector-4 = Grüne oder lose Pins: Ersetze Pin und Dichtung, nicht das Ventil.

repair-fuse-1 = Gleicher Wert, einmal. Nie ein größerer.
repair-fuse-2 = Brennt sie wieder durch: aufhören und erst den Kurzschluss finden.
repair-fuse-3 = Suche den Kurzschluss mit einer Lampe anstelle der Sicherung.

repair-relay-1 = Gleiches Teil. Zur Probe kann ein baugleiches einspringen.
repair-relay-2 = Suche Korrosion im Sockel.

repair-battery-1 = Lade sie voll, dann prüfe sie, bevor du eine kaufst.
repair-battery-2 = Reinige Pole und Klemmen. Keine Ringe, Augenschutz auf.

repair-module-1 = Prüfe Plus, { -ground } und Leitung am Steuergerät, bevor du eines bestellst.
repair-module-2 = Lies die Serviceinformationen: Neue Software kann die Lösung sein.
repair-module-3 = Ein neues Steuergerät muss meist in der Werkstatt codiert werden.

repair-ground-point-1 = Lösen, blank reinigen, anziehen, mit Fett schützen.
repair-splice-1 = Schneide die Verbindung heraus. Crimpe einen dichten Verbinder gleichen Querschnitts.
repair-restrictor-1 = Reinige oder ersetze sie. Gleiches Innenmaß, gleiche Richtung.
repair-bleed-1 = Reinige Durchgang und Filter. Verschließe sie nie.
repair-hand-pump-1 = Tausche Kappe, Adapter oder Dichtung. Prüfe sie verschlossen vor der nächsten Halteprüfung.
repair-engine-1 = Untersuche zuerst Aussetzer, Gemisch oder Leerlaufdrehzahl.
repair-strut-1 = Ersetze die Stütze oder ihre Buchse. Anziehen, wenn der Motor ruht.
repair-exhaust-1 = Mach ihn frei: Aufhängung, Schild oder Halter. Nur am kalten Auspuff.
repair-solid-mount-1 = Stütze den Motor. Anzugsmoment nach Herstellerangaben.
repair-drivetrain-1 = Lass Wellen, Kupplung und Schwungrad ansehen.
repair-part-1 = Ersetze durch das gleiche Teil: { $part }. Merke dir die Anschlüsse.

repair-all-1 = Stecke jeden Schlauch und Stecker zurück, dann zieh an jedem von Hand.
repair-all-2 = Mach dann dieselbe Prüfung: gleicher Ort, gleiches Manometer, gleiche Temperatur, gleicher Gang.
