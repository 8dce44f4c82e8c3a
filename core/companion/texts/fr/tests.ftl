### Essais avec les yeux, les mains, un manomètre ou le moteur tournant. Tenue : holds.ftl. Multimètre : electric.ftl.
### Phrases courtes. $part est la pièce à l’essai.

## Plainte

test-complaint-title = Sentez vous-même la plainte
test-complaint-name = Plainte ressentie
test-complaint-why = Ce qui n’est pas là aujourd’hui ne peut être prouvé aujourd’hui.
test-complaint-explain = Sentez la plainte avec le client avant de toucher à quoi que ce soit. Quand elle vient et s’en va en dit déjà long.
test-complaint-where = Sur le siège du conducteur, voiture à l’arrêt.
test-complaint-step-1 = Faites chauffer le moteur. Voiture à plat, frein de stationnement serré.
test-complaint-step-2 = Ralenti au point mort ou en P. Sentez volant, siège et plancher.
test-complaint-step-3 = Allumez feux et climatisation. Notez quand ça vibre.
test-complaint-means-as-expected = La plainte est là : chaque changement se sentira.
test-complaint-means-not-as-expected = Elle n’est pas là. Un bon essai prouvera peu.
test-complaint-field-present = La plainte est-elle là maintenant ?
test-complaint-field-present-yes = je la sens maintenant
test-complaint-field-present-no = je ne la sens pas maintenant
test-complaint-look-1 = Sentez volant, siège et plancher.
test-complaint-look-2 = Regardez le rétroviseur : une vibration le brouille.

## Codes

test-codes-title = Lisez les codes mémorisés
test-codes-name = Codes mémorisés
test-codes-why = Débrancher un connecteur plus tard crée des codes. Lisez d’abord les anciens.
test-codes-explain = Un code nomme un circuit électrique, pas une pièce cassée. Sans code, durites et supports ne sont pas blanchis.
test-codes-where = Prise de diagnostic, souvent sous le tableau de bord.
test-codes-step-1 = Branchez le lecteur avant de débrancher autre chose.
test-codes-step-2 = Contact mis, moteur arrêté. Sans clé : ne touchez pas au frein.
test-codes-step-3 = Notez chaque code avec ses données figées. N’effacez rien encore.
test-codes-means-as-expected = Aucun code de l’électrovanne : voyez d’abord la dépression.
test-codes-means-not-as-expected = Un code de l’électrovanne : son côté électrique passe devant.
test-codes-field-list = Codes, l’un après l’autre
test-codes-field-list-read = { $value }
test-codes-field-list-hint = Par exemple P0A14. Laissez vide s’il n’y en a pas.

## Ralenti

test-idle-quality-title = Écartez le moteur lui-même
test-idle-quality-name = Ralenti du moteur
test-idle-quality-why = Un moteur irrégulier vibre même sur de bons supports.
test-idle-quality-explain = Si le moteur a des ratés ou pompe, soignez cela d’abord. Les essais de supports disent peu avant qu’il tourne rond.
test-idle-quality-where = Compte-tours du tableau de bord, ou lecteur de codes.
test-idle-quality-step-1 = Démarrez et chauffez le moteur. Feux, ventilation, climatisation coupés.
test-idle-quality-step-2 = Observez le régime une demi-minute.
test-idle-quality-step-3 = Écoutez les ratés à l’échappement. Restez à l’écart.
test-idle-quality-means-as-expected = Le moteur tourne rond : passez aux supports.
test-idle-quality-means-not-as-expected = Le moteur tourne mal : réparez cela avant de juger les supports.
test-idle-quality-field-rpm = Régime du moteur
test-idle-quality-field-rpm-read = { $value }
test-idle-quality-field-steady = Le régime reste-t-il stable ?
test-idle-quality-field-steady-yes = régime stable
test-idle-quality-field-steady-no = il monte et descend
test-idle-quality-field-rough = Tourne-t-il mal ou avec des ratés ?
test-idle-quality-field-rough-yes = irrégulier, ou des ratés
test-idle-quality-field-rough-no = souple et régulier

## Contrôle visuel

test-look-title = Parcourez le circuit des yeux
test-look-name = Contrôle visuel
test-look-why = Regarder ne coûte rien et trouve une durite débranchée.
test-look-explain = Suivez le circuit pièce par pièce. Marquez ce que vous voyez ; laissez le reste tel quel.
test-look-where = Le long des durites, de l’électrovanne, de son connecteur et des supports.
test-look-step-1 = Suivez chaque durite à la main. Pliez-la et regardez les deux bouts.
test-look-step-2 = Cherchez huile, frottement, points fondus, écran thermique manquant.
test-look-step-3 = Cherchez échappement, carénage ou tube qui touche la caisse.
test-look-step-4 = Photographiez ce qui paraît faux avant d’y toucher.
test-look-means-as-expected = Rien à voir. Cela n’écarte qu’une durite débranchée.
test-look-means-not-as-expected = Quelque chose se voit. Un essai confirme avant d’acheter.

## Supports à l’œil et au levier

test-mount-look-title = Regardez { $part-the }
test-mount-look-name = { $part } à l’œil
test-mount-look-why = Un support déchiré peut tenir la dépression et être fini.
test-mount-look-explain = De fines fissures dans la peau du caoutchouc sont l’âge. Un vide entre caoutchouc et métal est une panne. L’huile y goutte souvent d’en haut ; essuyez et regardez encore.
test-mount-look-where = { $part-start }, avec une lampe, d’en haut ou d’en bas.
test-mount-look-step-1 = Éclairez { $part-the } tout autour. Regardez où le caoutchouc touche le métal.
test-mount-look-step-2 = Essuyez sous le joint. Cherchez une coulure fraîche.
test-mount-look-step-3 = Comparez sa hauteur à celle de son pareil.
test-mount-look-means-as-expected = Ni déchirure, ni fluide, ni affaissement visibles.
test-mount-look-means-not-as-expected = Déchiré, mouillé ou affaissé : ce support ne travaille pas.
test-mount-look-field-torn = Le caoutchouc s’est-il décollé du métal ?
test-mount-look-field-torn-yes = déchiré ou décollé
test-mount-look-field-torn-no = caoutchouc entier
test-mount-look-field-wet = Y a-t-il du fluide sous le joint ?
test-mount-look-field-wet-yes = mouillé sous le joint
test-mount-look-field-wet-no = sec
test-mount-look-field-sag-mm = Plus bas que son pareil de
test-mount-look-field-sag-mm-read = { $value } plus bas

test-mount-move-title = Faites levier sur { $part-the }
test-mount-move-name = { $part } au levier
test-mount-move-why = Une déchirure s’ouvre quand on bouge le moteur.
test-mount-move-explain = Comparez avec l’autre support : les deux cèdent un peu, pareil, et s’arrêtent en douceur.
test-mount-move-where = { $part-start }, un levier en bois à côté.
test-mount-move-step-1 = Posez un levier en bois entre un point ferme et la patte moteur.
test-mount-move-step-2 = Poussez doucement, jamais contre le carter. Regardez le caoutchouc.
test-mount-move-step-3 = Faites de même sur son pareil et comparez.
test-mount-move-means-as-expected = Il bouge comme son pareil : le caoutchouc tient.
test-mount-move-means-not-as-expected = Il cogne ou s’ouvre : le caoutchouc s’est décollé.
test-mount-move-field-clunk = Entendez-vous ou sentez-vous un choc ?
test-mount-move-field-clunk-yes = un choc, métal sur métal
test-mount-move-field-clunk-no = aucun choc
test-mount-move-field-gap-opens = Un vide s’ouvre-t-il dans le caoutchouc ?
test-mount-move-field-gap-opens-yes = un vide s’ouvre
test-mount-move-field-gap-opens-no = aucun vide

## Dépression, moteur tournant

test-delivered-title = La dépression arrive-t-elle aux supports ?
test-delivered-name = Dépression aux supports
test-delivered-why = Une lecture en marche blanchit ou accuse toute l’alimentation.
test-delivered-explain = Le moteur fait la dépression et l’électrovanne la passe au ralenti. Un manomètre dans la ligne montre ce que reçoivent vraiment les supports.
test-delivered-where = Un té avec le manomètre dans la durite de sortie de l’électrovanne.
test-delivered-step-1 = Moteur arrêté. Mettez le manomètre par un té dans la durite de sortie.
test-delivered-step-2 = Menez sa durite loin de courroie, ventilateur et échappement. Démarrez.
test-delivered-step-3 = Attendez que le calculateur commande l’électrovanne : { $window }.
test-delivered-step-4 = Lisez le manomètre. Notez les secondes jusqu’à l’arrêt.
test-delivered-means-as-expected = Toute la dépression arrive : source, électrovanne et faisceau travaillent au ralenti.
test-delivered-means-not-as-expected = Il en arrive trop peu : cherchez avant le point de mesure, ou une grosse fuite.
test-delivered-field-gauge = Dépression au manomètre
test-delivered-field-gauge-read = { $value }
test-delivered-field-seconds = Jusqu’à l’arrêt de l’aiguille
test-delivered-field-seconds-read = après { $value }

test-switch-over-title = La dépression repart-elle ?
test-switch-over-name = Départ de la dépression
test-switch-over-why = Le manomètre est encore là, et un changement prouve la commande.
test-switch-over-explain = Le calculateur relâche la dépression quand la voiture va rouler. Si elle reste, les supports gardent leur état de ralenti.
test-switch-over-where = Le même manomètre à la sortie de l’électrovanne.
test-switch-over-step-1 = Laissez le manomètre. Montez le moteur vers 2000{"\u00A0"}tr/min.
test-switch-over-step-2 = Comptez les secondes jusqu’au repos de l’aiguille.
test-switch-over-step-3 = Lisez où elle repose. Puis revenez au ralenti.
test-switch-over-means-as-expected = La dépression part à temps : électrovanne, mise à l’air et commande travaillent.
test-switch-over-means-not-as-expected = Elle reste ou traîne : électrovanne, mise à l’air ou commande sans fin.
test-switch-over-field-seconds = Jusqu’au repos de l’aiguille
test-switch-over-field-seconds-read = au repos après { $value }
test-switch-over-field-gauge = Où elle repose
test-switch-over-field-gauge-read = à { $value }

test-bypass-title = Alimentez les supports directement du moteur
test-bypass-name = Dépression directe aux supports
test-bypass-why = Si la vibration change maintenant, les supports sont bons.
test-bypass-explain = Une durite de rechange met électrovanne et faisceau hors de cause. Pour un essai au ralenti, jamais pour rouler.
test-bypass-where = Durite de rechange de la source de dépression à la durite de sortie.
test-bypass-step-1 = Moteur arrêté. Tirez la durite de sortie de l’électrovanne. Bouchez l’embout.
test-bypass-step-2 = Reliez source et durite de sortie par celle de rechange. Démarrez.
test-bypass-step-3 = Pincez la durite de rechange, puis lâchez. Sentez le changement.
test-bypass-step-4 = Moteur arrêté. Remettez chaque durite à sa place.
test-bypass-means-as-expected = La vibration change : supports bons, défaut d’électrovanne ou de faisceau.
test-bypass-means-not-as-expected = Aucun changement : durites, supports ou une cause hors du circuit.
test-bypass-field-changes = La vibration change-t-elle avec la dépression ?
test-bypass-field-changes-yes = la vibration change
test-bypass-field-changes-no = la vibration reste
test-bypass-look-1 = Sentez le rail du siège et le volant.
test-bypass-look-2 = Comparez durite pincée et ouverte, trois fois.

test-source-title = Y a-t-il de la dépression à la source ?
test-source-name = Dépression à la source
test-source-why = Sans dépression à l’électrovanne, rien après ne peut marcher.
test-source-explain = Au ralenti, la durite doit tirer fort. L’altitude réduit le possible, et la limite ici en tient compte.
test-source-where = Dépression qui entre : la durite tirée de l’entrée de l’électrovanne.
test-source-step-1 = Moteur arrêté. Tournez et tirez la durite d’entrée de l’électrovanne.
test-source-step-2 = Mettez le manomètre sur la durite, ou un doigt. Démarrez.
test-source-step-3 = Ralenti au point mort ou en P. Lisez quand l’aiguille ne bouge plus.
test-source-step-4 = Moteur arrêté. Remettez la durite sur l’électrovanne.
test-source-means-as-expected = La source est bonne. Voyez électrovanne, faisceau et la suite.
test-source-means-not-as-expected = Trop peu de dépression : moteur, clapet, durite ou autre consommateur.
test-source-field-gauge = Dépression au manomètre
test-source-field-gauge-read = { $value }
test-source-field-steady = L’aiguille est-elle immobile ?
test-source-field-steady-yes = aiguille immobile
test-source-field-steady-no = aiguille qui tremble ou balance
test-source-field-felt = Sans manomètre : la durite tire-t-elle le doigt ?
test-source-field-felt-yes = elle tire fort
test-source-field-felt-no = à peine

test-flow-title = Passage libre dans { $part-the } ?
test-flow-name = Air dans { $part-the }
test-flow-why = Une durite pliée ou bouchée passe tout essai de tenue.
test-flow-explain = Une durite bouchée paraît étanche au manomètre. Seul l’air qui bouge montre si elle est ouverte.
test-flow-where = { $part-start }, bout éloigné ouvert.
test-flow-step-1 = Tirez les deux bouts { $part-of }.
test-flow-step-2 = Pompe manuelle à un bout, l’autre ouvert. Donnez cinq coups.
test-flow-step-3 = Pliez la durite comme dans la voiture. Pompez encore.
test-flow-means-as-expected = L’air passe : la durite est libre.
test-flow-means-not-as-expected = L’aiguille reste en haut : durite pliée, fondue ou bouchée.
test-flow-field-free = L’air passe-t-il librement ?
test-flow-field-free-yes = L’aiguille tombe aussitôt
test-flow-field-free-no = L’aiguille monte et reste
test-flow-look-1 = Une durite libre ne laisse jamais monter l’aiguille.

## Électrovanne à la main

test-valve-off-title = Électrovanne au repos
test-valve-off-name = Électrovanne au repos
test-valve-off-why = Une électrovanne qui passe au repos laisse les supports dans un seul état.
test-valve-off-explain = Sans courant, l’électrovanne doit { $rest ->
    [open] passer la dépression aux supports
   *[closed] ne rien passer et laisser respirer les supports
}. La pompe manuelle montre les deux.
test-valve-off-where = L’électrovanne : pompe manuelle à l’entrée, sortie ouverte.
test-valve-off-step-1 = Débranchez le connecteur par son corps. Tirez les deux durites de l’électrovanne.
test-valve-off-step-2 = Pompe manuelle à l’entrée, l’autre embout ouvert. Pompez.
test-valve-off-step-3 = Pompe manuelle à la sortie. Pompez : respire-t-elle ?
test-valve-off-step-4 = Laissez ainsi pour l’essai sous courant, ou remontez tout.
test-valve-off-means-as-expected = Au repos, l’électrovanne fait ce qu’elle doit.
test-valve-off-means-not-as-expected = L’électrovanne passe ou ne respire pas : grippée, ou mise à l’air bouchée.
test-valve-off-field-passes = La dépression passe-t-elle de l’entrée à la sortie ?
test-valve-off-field-passes-yes = la dépression passe
test-valve-off-field-passes-no = rien ne passe
test-valve-off-field-vents = La sortie respire-t-elle à l’air libre ?
test-valve-off-field-vents-yes = la sortie respire
test-valve-off-field-vents-no = la sortie est fermée

test-valve-on-title = Électrovanne sous courant
test-valve-on-name = Électrovanne sous courant
test-valve-on-why = La batterie directe sur l’électrovanne met le faisceau hors de cause.
test-valve-on-explain = Un cavalier avec fusible alimente l’électrovanne seule, débranchée de la voiture. Vous entendez un clic et le passage change.
test-valve-on-where = Les deux broches de l’électrovanne même, connecteur débranché.
test-valve-on-step-1 = Laissez le connecteur débranché. Pompe manuelle à l’entrée.
test-valve-on-step-2 = Reliez le cavalier au plus de la batterie, fusible à ce bout.
test-valve-on-step-3 = Touchez les broches de l’électrovanne, bonne polarité, moins de 30 secondes.
test-valve-on-step-4 = Écoutez le clic. Pompez en même temps et regardez l’aiguille.
test-valve-on-step-5 = Ôtez d’abord le cavalier de la batterie. Remontez tout.
test-valve-on-means-as-expected = L’électrovanne commute et passe : voyez plutôt son faisceau.
test-valve-on-means-not-as-expected = Elle ne commute ou ne passe pas : électrovanne en panne.
test-valve-on-field-passes = Sous courant : la dépression passe-t-elle de l’entrée à la sortie ?
test-valve-on-field-passes-yes = la dépression passe
test-valve-on-field-passes-no = rien ne passe
test-valve-on-field-clicks = Entend-on un clic ?
test-valve-on-field-clicks-yes = un clic
test-valve-on-field-clicks-no = aucun clic
test-valve-on-field-vents = Sous courant : fuit-elle par sa mise à l’air ?
test-valve-on-field-vents-yes = L’air siffle à la mise à l’air
test-valve-on-field-vents-no = la mise à l’air est fermée

## Vibration

test-shake-title = Vibration avec et sans dépression
test-shake-name = Vibration, avec et sans dépression
test-shake-why = De bons supports changent la vibration quand la dépression part.
test-shake-explain = Jugez les deux états au même endroit, rapport et régime. Seule la différence compte.
test-shake-where = Rail du siège ou volant, toujours le même point.
test-shake-step-1 = Ralenti à chaud. Avec dépression, notez la vibration de 0 à 3.
test-shake-step-2 = Moteur arrêté. Tirez la durite de sortie et bouchez les deux bouts.
test-shake-step-3 = Ralenti encore, même régime. Notez la vibration de 0 à 3.
test-shake-step-4 = Moteur arrêté. Remettez la durite.
test-shake-means-as-expected = La vibration change : les supports répondent à la dépression.
test-shake-means-not-as-expected = Aucun changement : la dépression n’arrive pas, ou ils ne répondent pas.
test-shake-mount-title = Vibration, dépression seulement sur { $part-the }
test-shake-mount-name = Vibration, seulement { $part-the }
test-shake-mount-why = Un support à la pompe manuelle montre si celui-là répond.
test-shake-mount-explain = La pompe manuelle actionne un support, moteur au ralenti. L’autre reste comme il est.
test-shake-mount-where = Pompe manuelle sur { $part-the }, durite menée hors du compartiment.
test-shake-mount-step-1 = Moteur arrêté. Tirez la durite { $part-of } et bouchez-la.
test-shake-mount-step-2 = Reliez la pompe manuelle par une longue durite. Ralenti à chaud.
test-shake-mount-step-3 = Pompez jusqu’à { $target }. Notez la vibration de 0 à 3.
test-shake-mount-step-4 = Laissez entrer l’air. Notez encore la vibration de 0 à 3.
test-shake-mount-step-5 = Moteur arrêté. Remettez la durite.
test-shake-mount-means-as-expected = { $part-start } répond à la dépression.
test-shake-mount-means-not-as-expected = { $part-start } ne répond pas, malgré la dépression.
test-shake-field-on-0-3 = Vibration avec dépression
test-shake-field-on-0-3-read = avec dépression { $value }
test-shake-field-off-0-3 = Vibration sans dépression
test-shake-field-off-0-3-read = sans { $value }
test-shake-scale-0 = 0 – aucune
test-shake-scale-1 = 1 – à peine sentie
test-shake-scale-2 = 2 – bien sentie
test-shake-scale-3 = 3 – forte, ça cliquette

## Remuer

test-wiggle-title = Remuez { $part-the } et observez
test-wiggle-name = { $part } à la main
test-wiggle-why = Un défaut qui va et vient se montre quand on remue.
test-wiggle-explain = Laissez manomètre ou multimètre branché et remuez une chose à la fois. Une lecture qui saute montre l’endroit.
test-wiggle-where = { $part-start }, manomètre ou multimètre en vue.
test-wiggle-step-1 = Laissez manomètre ou multimètre comme au dernier essai.
test-wiggle-step-2 = Tirez et pliez doucement { $part-the }. Chauffez au sèche-cheveux.
test-wiggle-step-3 = Regardez la lecture tout le temps.
test-wiggle-means-as-expected = La lecture reste : ni faux contact ni fissure ici.
test-wiggle-means-not-as-expected = La lecture saute : le défaut est à cet endroit, sur { $part-the }.
test-wiggle-field-steady = La lecture reste-t-elle stable ?
test-wiggle-field-steady-yes = la lecture reste
test-wiggle-field-steady-no = la lecture saute
test-wiggle-look-1 = Remuez une chose à la fois, et lentement.
