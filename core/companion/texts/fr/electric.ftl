### Essais au multimètre. Couleurs de cordons en toutes lettres, volts DC, connecteurs tirés par le corps.

-by-body = Pressez le verrou et tirez le connecteur par son corps, pas par les fils.
-dc = Volts DC, pas AC. Calibre 20{"\u00A0"}V ou automatique.
-ohms-range = Ohms, plus petit calibre ou automatique. Jamais sous tension.
-black-on-ground = Cordon noir sur la { -ground } de caisse : métal nu, pas peinture.

## Le multimètre lui-même

test-prove-meter-title = Vérifiez le multimètre
test-prove-meter-name = Multimètre vérifié
test-prove-meter-why = Un mauvais calibre ou une pile vide gâche chaque lecture qui suit.
test-prove-meter-explain = Mesurez deux choses connues : les cordons l’un sur l’autre et la batterie. Alors vous pouvez lui faire confiance.
test-prove-meter-where = Cordons l’un sur l’autre, puis sur les bornes de batterie.
test-prove-meter-step-1 = Cordon noir dans COM, rouge dans V et ohms. Jamais dans A.
test-prove-meter-step-2 = Réglez sur ohms. Joignez les cordons et lisez.
test-prove-meter-step-3 = Réglez sur volts DC. Rouge au plus, noir au moins de la batterie. Essayez aussi la lampe.
test-prove-meter-means-as-expected = Multimètre et cordons sont bons.
test-prove-meter-means-not-as-expected = Cordons, prises ou pile : réglez cela d’abord.
test-prove-meter-lead-red = Cordon rouge au plus de la batterie.
test-prove-meter-lead-black = Cordon noir au moins de la batterie.
test-prove-meter-hint = D’abord ohms, cordons joints, puis volts DC, pas AC.
test-prove-meter-field-ohms = Cordons joints
test-prove-meter-field-ohms-read = cordons { $value }
test-prove-meter-field-battery = Tension de batterie
test-prove-meter-field-battery-read = batterie { $value }
test-prove-meter-field-lamp = La lampe témoin s’allume-t-elle sur la batterie ?
test-prove-meter-field-lamp-yes = la lampe s’allume
test-prove-meter-field-lamp-no = la lampe reste éteinte

## Alimentation au connecteur

test-supply-volts-title = Le courant arrive-t-il au connecteur ?
test-supply-volts-name = Alimentation au connecteur
test-supply-volts-why = Deux lectures séparent alimentation, faisceau et type de circuit.
test-supply-volts-explain = Connecteur débranché, chaque broche montre ce que la voiture envoie. Celle qui doit donner la batterie dépend du circuit.
test-supply-volts-where = Le connecteur de la voiture, tiré de l’électrovanne : vue sur sa face ouverte.
test-supply-volts-step-1 = Contact coupé. { -by-body }
test-supply-volts-step-2 = { -black-on-ground } Cordon rouge prêt.
test-supply-volts-step-3 = { $engine ->
    [off] Contact mis, moteur arrêté. Sans clé : ne touchez pas au frein.
   *[idle] Démarrez le moteur, laissez-le au ralenti.
}
test-supply-volts-step-4 = Cordon rouge sur la broche 1, puis la broche 2. Touchez, n’enfoncez pas.
test-supply-volts-step-5 = Mesurez aussi la batterie, à ses bornes.
test-supply-volts-means-as-expected = Le courant arrive, à vide. Un essai en charge doit suivre.
test-supply-volts-means-not-as-expected = Pas de courant : d’abord le fusible, puis le fil d’alimentation.
test-supply-volts-lead-red = Cordon rouge sur la broche 1, puis la broche 2.
test-supply-volts-lead-black = Cordon noir sur la { -ground } de caisse.
test-supply-volts-hint = { -dc }
test-supply-volts-field-pin1 = Broche 1 à la { -ground } de caisse
test-supply-volts-field-pin1-read = broche 1 { $value }
test-supply-volts-field-pin2 = Broche 2 à la { -ground } de caisse
test-supply-volts-field-pin2-read = broche 2 { $value }
test-supply-volts-field-battery = Batterie maintenant
test-supply-volts-field-battery-read = batterie { $value }

test-supply-loaded-title = L’alimentation tient-elle en charge ?
test-supply-loaded-name = Alimentation en charge
test-supply-loaded-why = Une jonction corrodée montre toute la tension tant que rien ne débite.
test-supply-loaded-explain = Une petite lampe débite autant que l’électrovanne. Une mauvaise jonction cède, et les volts tombent.
test-supply-loaded-where = La broche d’alimentation du connecteur, lampe comme charge.
test-supply-loaded-step-1 = { $engine ->
    [off] Connecteur débranché, contact mis, moteur arrêté. { -black-on-ground }
   *[idle] Connecteur débranché, moteur au ralenti. { -black-on-ground }
}
test-supply-loaded-step-2 = Reliez une lampe de 2–5{"\u00A0"}W de la broche d’alimentation à la { -ground } de caisse.
test-supply-loaded-step-3 = Cordon rouge sur la broche d’alimentation, à côté du fil de lampe.
test-supply-loaded-step-4 = Lisez, lampe allumée. Puis mesurez la batterie.
test-supply-loaded-means-as-expected = Le fil d’alimentation porte la charge.
test-supply-loaded-means-not-as-expected = Elle s’effondre en charge : jonction ou fil mauvais.
test-supply-loaded-lead-red = Cordon rouge sur la broche d’alimentation, lampe branchée.
test-supply-loaded-lead-black = Cordon noir sur la { -ground } de caisse.
test-supply-loaded-hint = { -dc } Une lampe de 2–5{"\u00A0"}W, pas de LED.
test-supply-loaded-field-pin1 = Broche d’alimentation, lampe allumée
test-supply-loaded-field-pin1-read = broche d’alimentation { $value }
test-supply-loaded-field-battery = Batterie maintenant
test-supply-loaded-field-battery-read = batterie { $value }

## Fusible et fil d’alimentation

test-fuse-title = Mesurez le fusible
test-fuse-name = Fusible
test-fuse-why = Pas de courant au connecteur : le fusible est la cause la moins chère.
test-fuse-explain = Un fusible peut sembler entier et être coupé. Mesurez les deux petits points sur son dos.
test-fuse-where = Le fusible de l’électrovanne dans la boîte. Sa place est dans la documentation du constructeur.
test-fuse-step-1 = Contact mis, moteur arrêté. { -black-on-ground }
test-fuse-step-2 = Cordon rouge sur un point du fusible, puis sur l’autre.
test-fuse-step-3 = Ou : contact coupé, fusible ôté, mesurez les ohms à ses lames.
test-fuse-means-as-expected = Le fusible conduit. Mesurez ensuite le fil d’alimentation.
test-fuse-means-not-as-expected = Le fusible est fondu. Cherchez pourquoi avant d’en mettre un neuf.
test-fuse-lead-red = Cordon rouge sur un point du fusible, puis sur l’autre.
test-fuse-lead-black = Cordon noir sur la { -ground } de caisse.
test-fuse-hint = { -dc } Fusible ôté : ohms.
test-fuse-field-in-v = Point avec le plus de volts
test-fuse-field-in-v-read = avant { $value }
test-fuse-field-out-v = L’autre point
test-fuse-field-out-v-read = après { $value }
test-fuse-field-ohms = Ou fusible ôté : à ses lames
test-fuse-field-ohms-read = à ses lames { $value }

test-power-wire-title = Mesurez le fil d’alimentation
test-power-wire-name = Fil d’alimentation
test-power-wire-why = Fusible bon, courant absent : le fil est entre les deux.
test-power-wire-explain = Le fil va du fusible au connecteur. Frottement, rongeurs et corrosion sont aux coudes et près du métal.
test-power-wire-where = De la sortie du fusible à la broche d’alimentation du connecteur.
test-power-wire-step-1 = Contact coupé, fusible ôté, connecteur débranché. Réglez sur ohms.
test-power-wire-step-2 = Joignez les cordons et notez la lecture.
test-power-wire-step-3 = Un cordon à la sortie du support, l’autre à la broche d’alimentation.
test-power-wire-step-4 = Remuez le fil sur son trajet pendant la lecture.
test-power-wire-step-5 = Laissez un cordon sur la broche d’alimentation, l’autre à la { -ground } de caisse : ouvert ?
test-power-wire-means-as-expected = Le fil conduit sous ce petit courant. Un essai en charge décide.
test-power-wire-means-not-as-expected = Le fil est coupé, corrodé, ou touche la { -ground }.
test-power-wire-lead-red = Cordon rouge à la sortie du support de fusible.
test-power-wire-lead-black = Cordon noir sur la broche d’alimentation ; à la fin, rouge à la { -ground } de caisse.
test-power-wire-hint = { -ohms-range } Ôtez les ohms des cordons.
test-power-wire-field-ohms = Fusible à connecteur
test-power-wire-field-ohms-read = { $value }
test-power-wire-field-drop-v = Ou perte sur le fil, lampe allumée
test-power-wire-field-drop-v-read = perd { $value }
test-power-wire-field-to-ground-open = Broche d’alimentation à la { -ground } de caisse : ouvert ?
test-power-wire-field-to-ground-open-yes = ouvert vers la { -ground }
test-power-wire-field-to-ground-open-no = des ohms vers la { -ground }

## Commande

test-valve-volts-title = L’électrovanne reçoit-elle sa tension ?
test-valve-volts-name = Tension à l’électrovanne
test-valve-volts-why = C’est ce que voit l’électrovanne quand elle doit travailler.
test-valve-volts-explain = Le calculateur ne commande l’électrovanne que dans sa condition. Zéro volt hors d’elle ne dit rien. Connecteur débranché, un bon calculateur peut se taire ; la lecture branchée décide.
test-valve-volts-where = Entre les deux broches de l’électrovanne, connecteur branché, côté fils.
test-valve-volts-step-1 = Contact coupé. Connecteur débranché. Cordons sur les deux broches du connecteur.
test-valve-volts-step-2 = Démarrez. Remplissez la condition de commande : { $window }. Lisez.
test-valve-volts-step-3 = Moteur arrêté. Connecteur branché. Glissez des pointes fines côté fils.
test-valve-volts-step-4 = Démarrez, remplissez la condition, lisez encore.
test-valve-volts-step-5 = Mesurez aussi la batterie, à ses bornes.
test-valve-volts-means-as-expected = L’électrovanne est commandée : voyez l’électrovanne même.
test-valve-volts-means-not-as-expected = Elle n’est pas commandée. Ne compte que si la condition était remplie.
test-valve-volts-lead-red = Cordon rouge sur la broche d’alimentation.
test-valve-volts-lead-black = Cordon noir sur la broche de commande.
test-valve-volts-hint = { -dc } Une valeur moyenne stable veut dire électrovanne pulsée.
test-valve-volts-field-volts = Les deux broches, débranché
test-valve-volts-field-volts-read = débranché { $value }
test-valve-volts-field-plugged-v = Les deux broches, branché
test-valve-volts-field-plugged-v-read = branché { $value }
test-valve-volts-field-battery = Batterie maintenant
test-valve-volts-field-battery-read = batterie { $value }

test-control-pin-title = Le calculateur commute-t-il la broche de commande ?
test-control-pin-name = Broche de commande
test-control-pin-why = La lecture branchée, en charge, décide entre calculateur, fil et électrovanne.
test-control-pin-explain = Le calculateur tire cette broche à la { -ground }, ou l’alimente. La tension doit changer quand l’ordre vient.
test-control-pin-where = La broche de commande, connecteur branché, côté fils.
test-control-pin-step-1 = { -black-on-ground } Menez-le loin de courroie et ventilateur.
test-control-pin-step-2 = Connecteur branché. Glissez une pointe fine côté fils.
test-control-pin-step-3 = Démarrez. Lisez tant que l’électrovanne n’est pas commandée.
test-control-pin-step-4 = Remplissez la condition de commande : { $window }. Lisez encore.
test-control-pin-means-as-expected = Le calculateur commute. Voyez l’électrovanne.
test-control-pin-means-not-as-expected = Aucun changement : fil de commande, calculateur, ou condition non remplie.
test-control-pin-lead-red = Cordon rouge sur la broche de commande, connecteur branché.
test-control-pin-lead-black = Cordon noir sur la { -ground } de caisse.
test-control-pin-hint = { -dc }
test-control-pin-field-off-v = Électrovanne non commandée
test-control-pin-field-off-v-read = repos { $value }
test-control-pin-field-on-v = Électrovanne commandée
test-control-pin-field-on-v-read = commandée { $value }
test-control-pin-field-battery = Batterie maintenant
test-control-pin-field-battery-read = batterie { $value }

test-control-wire-title = Mesurez le fil de commande
test-control-wire-name = Fil de commande
test-control-wire-why = Aucun ordre n’arrive : le fil passe avant le calculateur.
test-control-wire-explain = Un calculateur coûte plus qu’un fil et lâche rarement. Vérifiez d’abord le fil.
test-control-wire-where = De la broche de commande du connecteur à celle du calculateur.
test-control-wire-step-1 = Contact coupé cinq minutes. Cordons joints : notez les ohms.
test-control-wire-step-2 = Débranchez le connecteur de l’électrovanne et celui du calculateur, par leur corps.
test-control-wire-step-3 = Mesurez les ohms de la broche de commande à celle du calculateur.
test-control-wire-step-4 = Mesurez de la broche de commande à la { -ground } de caisse : ouvert ?
test-control-wire-step-5 = Mesurez de la broche de commande au plus batterie : ouvert ?
test-control-wire-means-as-expected = Le fil est entier : restent le calculateur ou ses entrées.
test-control-wire-means-not-as-expected = Le fil est coupé, ou touche la { -ground }.
test-control-wire-lead-red = Cordon rouge sur la broche de commande du connecteur.
test-control-wire-lead-black = Cordon noir sur la broche du calculateur, puis la { -ground } de caisse.
test-control-wire-hint = { -ohms-range } N’écartez pas les broches.
test-control-wire-field-ohms = Connecteur à calculateur
test-control-wire-field-ohms-read = { $value }
test-control-wire-field-to-ground-open = Broche de commande à la { -ground } de caisse : ouvert ?
test-control-wire-field-to-ground-open-yes = ouvert vers la { -ground }
test-control-wire-field-to-ground-open-no = des ohms vers la { -ground }
test-control-wire-field-to-battery-open = Broche de commande au plus batterie : ouvert ?
test-control-wire-field-to-battery-open-yes = ouvert vers le plus
test-control-wire-field-to-battery-open-no = des ohms vers le plus

## Bobine

test-coil-title = Mesurez la bobine de l’électrovanne
test-coil-name = Bobine de l’électrovanne
test-coil-why = Une bobine coupée ne bouge jamais l’électrovanne, quoi qui la commande.
test-coil-explain = La bobine est un long fil fin. Ses ohms disent si elle est entière. Certaines ne coupent qu’à chaud.
test-coil-where = Les deux broches de l’électrovanne même, connecteur débranché.
test-coil-step-1 = Contact coupé. { -by-body }
test-coil-step-2 = Réglez sur ohms. Un cordon sur chaque broche de l’électrovanne. Lisez.
test-coil-step-3 = Un cordon sur une broche, l’autre sur le boîtier métallique.
test-coil-means-as-expected = La bobine est entière à cette température.
test-coil-means-not-as-expected = Coupée ou en court-circuit : l’électrovanne est une cause.
test-coil-lead-red = Cordon rouge sur une broche de l’électrovanne.
test-coil-lead-black = Cordon noir sur l’autre broche, puis sur le boîtier.
test-coil-hint = { -ohms-range }
test-coil-field-ohms = Ohms de l’électrovanne
test-coil-field-ohms-read = { $value }
test-coil-field-to-case-open = Broche au boîtier : ouvert ?
test-coil-field-to-case-open-yes = pas de contact avec le boîtier
test-coil-field-to-case-open-no = des ohms vers le boîtier

## État de la voiture à côté d’une lecture, et ce que partagent bien des champs

state-connected = connecteur
state-connected-yes = branché
state-connected-no = débranché
state-engine = moteur
state-engine-off = arrêté
state-engine-idle = au ralenti
state-engine-in-gear = ralenti, rapport engagé
state-hot = électrovanne et moteur
state-hot-yes = chauds
state-hot-no = froids
state-otherwise = La voiture est dans un autre état
vibration-record = { $what } : enregistrer { $seconds }
vibration-recording = { $what } : enregistrement en cours. Encore ?
vibration-kept = { $what } : { $seconds } enregistrées
vibration-kept-word = Enregistré
vibration-not-recorded = Rien n’a été enregistré. Posez le téléphone et réessayez.
