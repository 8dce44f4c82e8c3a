### Écrans : titres, boutons, champs, aides, annonces. Deuxième personne, présent, phrases courtes.

back = Retour
menu-settings = Réglages
menu-overview = Où nous en sommes
menu-vehicle = Véhicule et plainte
menu-prepare = Outils et lieu
menu-log = Photos et journal
menu-report = Rapport
nothing-here = Il n’y a rien à montrer ici. Revenez en arrière.
unit-minutes = min

## Messages

notice-binned = Le travail est à la corbeille.
notice-binned-undo = Le ressortir
notice-parked = Pas fini : { $test }. Il reste comme vous l’avez laissé.
notice-parked-resume = Le continuer



## Véhicule et plainte

vehicle-title = Véhicule et plainte
vehicle-vehicle = Véhicule
vehicle-complaint-note = Avec vos mots
vehicle-complaint-missing = Touchez ce qui ne va pas, ou Rien.
vehicle-plate = Immatriculation
vehicle-label = Marque, modèle, moteur
vehicle-vin = VIN
vehicle-vin-hint = 17 caractères, au pare-brise ou dans les papiers
vehicle-odometer = Compteur
vehicle-odometer-hint = Tel quel; si l’unité est autre, écrivez-la derrière
vehicle-odometer-out = Compteur à la restitution
vehicle-handed-over = Remis
vehicle-handed-over-hint = Quand et à qui, comme 3 mars 17:30, le propriétaire
vehicle-customer = Client
vehicle-agreed = Convenu avec le client
vehicle-agreed-hint = Essais, photos, route, jusqu’à quel montant ; par qui, quand
vehicle-circuit = Quel circuit ?
vehicle-circuit-hint = Suivez les durites depuis le moteur. Comptez supports et électrovannes.
vehicle-circuit-edit = Changer durites, volumes ou câblage
vehicle-who = Qui travaille ?
vehicle-next = Suite : avant de commencer

## Le circuit

circuit-title = Le circuit
circuit-hint = Laissez la valeur si vous n’en savez pas de meilleure.
circuit-parts = Pièces
circuit-volume = Air dans { $part-the }
circuit-length = Longueur { $part-of }
circuit-doubt = Volume des supports, connu à
circuit-bore = Diamètre intérieur des durites
circuit-add-mount = Ajouter un support
circuit-remove = Non monté : { $part }
circuit-properties = Comment il marche
circuit-electric = Côté électrique
circuit-layout = Câblage
circuit-coil-low = Bonne bobine, de
circuit-coil-high = Bonne bobine, à
circuit-fuse = Fusible
circuit-cannot = Impossible à changer : sans cela le circuit ne marcherait pas.
circuit-done = Fini

## Avant de commencer

prepare-title = Avant de commencer
prepare-cautions = Lisez et cochez chacune
prepare-caution-orange-cables = Les câbles orange portent une tension mortelle. Ne les ouvrez ni ne les percez jamais. Laissez-les aux gens habilités.
prepare-caution-engine-starts = Le moteur peut démarrer seul. Pour travailler moteur arrêté, éloignez la clé de la voiture.
prepare-caution-moving-parts = Cheveux, manches et cordons loin de courroie et ventilateur. Le ventilateur peut tourner contact coupé.
prepare-caution-fumes = L’échappement tue en lieu clos. Faites tourner le moteur dehors ou avec extraction.
prepare-caution-brake-vacuum = Les freins partagent cette dépression. Ne bougez pas la voiture, ligne ouverte.
prepare-caution-in-gear = Rapport engagé : conducteur au frein, roues calées, personne devant, derrière ni dans le compartiment.
prepare-caution-stop-lines = Arrêtez si ça sent le carburant, si la pédale change, ou sans chandelles pour lever.
prepare-caution-burns = Échappement, refroidissement et pattes brûlent. N’ouvrez jamais un bouchon chaud.
prepare-caution-service-information = La documentation du constructeur et les règles locales passent avant cette application.
prepare-unticked = { $count ->
    [one] Une consigne n’est pas encore cochée.
   *[other] { $count } consignes ne sont pas encore cochées.
}
prepare-tools = Outils sous la main
prepare-tools-hint = Seuls les essais faisables sont proposés.
prepare-place = Où vous êtes
prepare-place-hint = L’altitude décide de la dépression que permet l’air.
prepare-altitude = Altitude au-dessus de la mer
prepare-ambient = Pression de l’air ici
prepare-ambient-found = Trouvée par ce téléphone
prepare-air = Température de l’air
prepare-engine = Moteur et personnes
prepare-engine-runs = Le moteur peut tourner
prepare-second-person = Une deuxième personne m’aide
prepare-stopped = Moteur arrêté depuis
prepare-stopped-hint = Laissez vide si vous ne savez pas.
prepare-next = Commencer les essais

## Où nous en sommes

overview-title = Où nous en sommes

## Un essai

test-unknown = Cet essai n’existe plus
brief-start = Commencer
brief-unticked = { $count ->
    [one] Cochez d’abord l’avertissement.
   *[other] Cochez d’abord les { $count } avertissements.
}
brief-minutes = Environ { $minutes }
question-change = Saisir encore
question-entered = Vous avez saisi
question-when = Saisi : { $when }
question-keep = Il affiche vraiment cela
result-on = Suivant
result-to-report = Rapport
result-redo = Le refaire
result-do-it = Le faire maintenant
result-correct = Corriger la lecture
result-go-on = Continuer { $seconds }

## Tenue

hold-strokes = { $count ->
    [0] Aucun coup encore
    [one] Un coup
   *[other] { $count } coups
}
hold-stroke = Coup
hold-unstroke = Un de moins
hold-no-strokes = Aucun coup à reprendre.
hold-let-go = J’ai lâché
hold-wont-build = Ça n’y arrive pas
hold-read-first = Qu’indiquait-il quand vous avez lâché ?
hold-read-highest = Quel était le plus haut ?
hold-read-now = Lisez le manomètre maintenant.
hold-reading = Manomètre
hold-reading-hint = Tirez l’aiguille, ou tapez. Virgule et moins conviennent.
hold-read-missing = Placez d’abord l’aiguille ou tapez la lecture.
hold-not-moved = Pas bougé : { $reading }
hold-confirm = C’est la lecture
hold-watch = Mains loin de la pompe. Ne touchez pas la durite.
hold-read-now-early = Lire maintenant
hold-by-camera = Laisser la caméra regarder
hold-by-eye = Regarder à l’œil
hold-watch-camera = Mains à l’écart. Tenez le téléphone immobile : la caméra regarde.
hold-use-seen = Arrêter ici. Prendre ce qui a été vu
hold-camera-lost = La caméra a perdu le manomètre. Regardez vous-même à partir d’ici.
keep-out-of-range = Il affiche bien cela
hold-start-again = Recommencer
hold-resume = Reprendre d’ici
hold-use-what-there-is = Prendre ce qu’il y a
hold-interrupted-killed = L’application a été fermée pendant cet essai.
hold-interrupted-restarted = Le téléphone a redémarré pendant cet essai ; son temps est perdu.
hold-interrupted-unseen = La caméra n’a pas vu l’aiguille. Plus de lumière aide.
hold-kept-nothing = On ne pompait plus ; aucune lecture n’était saisie.
hold-kept-start = Gardé : { $start } au départ.
hold-kept-reading = Gardé : { $start } au départ, { $reading } après { $seconds }.
hold-cue-pump = Pompez jusqu’à la bande
hold-cue-first = Placez l’aiguille comme elle était
hold-cue-highest = Placez la plus haute lecture
hold-cue-watch = Encore { $seconds }
hold-cue-read = Lisez maintenant
hold-cue-interrupted = Interrompu
amend-start = Au lâcher
amend-reading = Après { $seconds }
amend-highest = Le plus haut
amend-hint = Seulement ce qui était mal tapé. Les temps restent.
amend-confirm = C’est juste ainsi
speak-figure = { $figure }
speak-let-go = Stop. Lâchez.
speak-read-now = Lisez maintenant.
speak-seen = Fini. C’est vu.
speak-start = Le temps tourne. Lisez le manomètre.
speak-left = Encore { $seconds } secondes
speak-end = Fini. { $result }
speak-stop = Interrompu. Regardez le téléphone.

## Valeurs et réponses

values-reading-hint = Virgule et moins conviennent.
values-confirm = Prendre ces lectures
values-open = Hors calibre, aucune continuité
said-yes = Oui
said-no = Non
said-not-sure = Pas sûr
scale-0 = 0 : rien
scale-1 = 1 : légère
scale-2 = 2 : nette
scale-3 = 3 : forte
look-done = Tout est vu

## Photos


## Diagnostic et réparation

finding-title = Diagnostic
finding-repair-anyway = Pas certain. Réparer quand même : { $part }
finding-repair-other = Une autre pièce a été réparée
repair-title = Réparation : { $part }
repair-which = Quelle pièce a été réparée ?
repair-which-first = Choisissez d’abord la pièce.
repair-mind = À quoi veiller
repair-what = Ce qui a été fait
repair-part = Ce qui a été monté
repair-part-hint = Pièce, numéro, neuve ou d’occasion
repair-torque = Couple de serrage
repair-torque-hint = Avec sa source : 55 N·m, constructeur
repair-note = Note : ancienne pièce, qui a vérifié
repair-done = La réparation est faite
repair-same-test = Le même essai encore
repair-retest-why = Seul l’essai qui a échoué peut montrer que c’est réparé.
repair-retest = Refaire : { $test }
repair-complaint-again = Ressentir à nouveau la plainte
repair-before = Avant : { $result }
repair-after = Après : { $result }
repair-close = Clore le travail et faire le rapport

## Journal

log-title = Photos et journal

## Rapport

report-title = Rapport
report-print = Impression
report-language = Langue du rapport
report-language-screens = Comme à l’écran
report-parts = Que mettre
report-part-drawings = dessins et courbes
report-part-photos = photos
report-part-record = dossier complet
report-paper = Papier
paper-a4 = A4
paper-letter = Letter
report-business-hint = Votre atelier figure en haut. Il se règle dans Réglages.
report-settings = Réglages
report-costs-go = Coûts
report-approval-go = Décision du client et signature
report-customer = Pour le client
report-share-readings = Partager les mesures en tableau
report-readings-title = Mesures
settings-technician = Votre nom, comme technicien
report-make = Faire le rapport
report-working = Le rapport est en cours.
report-stop = Arrêter
report-share = Partager
report-no-share = Cet appareil ne peut pas partager de fichiers. Le rapport reste dans le travail.
report-file-title = Rapport de supports moteur

## Réglages

settings-title = Réglages
settings-shown = Affichage et voix
settings-language = Langue
settings-language-phone = Comme sur ce téléphone
settings-units = Unités
settings-unit-set = Autres unités
settings-unit-set-metric = Métriques
settings-unit-set-us = États-Unis
settings-unit-set-uk = Royaume-Uni
settings-unit-odometer = Compteur kilométrique
settings-unit-thermometer = Température
settings-unit-tape = Altitudes et durites
settings-unit-rule = Jeux et diamètres
settings-shown-unit = Montrer la dépression en
settings-cues = Pendant une tenue
settings-speech = Parler
settings-buzz = Vibrer
settings-large-figures = Chiffres assez grands pour être lus à deux mètres
settings-script = Ce que dit le téléphone pendant la tenue
settings-script-hint = Écrivez vos propres mots. Une ligne vide reste muette. Les mots entre accolades deviennent le chiffre ou le résultat.
settings-script-plain = Dire comme avant
script-figure = Chiffres
script-let-go = À la cible
script-start = Quand vous lâchez
script-left = Pendant l’observation
script-read-now = Quand le temps est écoulé
script-seen = Quand la caméra a fini
script-end = Quand le résultat est là
script-stop = Si c’est interrompu
settings-gauge = Manomètre et pompe manuelle
settings-gauge-hint = Regardez le cadran : fin d’échelle, traits, précision.
settings-gauge-unit = Le manomètre lit en
settings-gauge-grade = Classe de précision au cadran
settings-span = Fin d’échelle
settings-division = D’un trait à l’autre
settings-read-to = Vous le lisez à
settings-pump = Air dans pompe, manomètre et adaptateur
settings-stroke = Air par coup
settings-identity = Numéro de série et étalonnage
settings-identity-hint = Comme SN 204, étalonné en mai 2026
settings-meter = Multimètre
settings-percent = Précision, pour cent de la lecture
settings-counts = Précision, digits
settings-digits = Décimales sur le calibre volts
settings-limit = Quand une tenue compte comme fuite
settings-drop = Elle peut perdre
settings-seconds = Dans ce temps
settings-confidence = Un diagnostic compte à partir de
settings-report = Sur le rapport
settings-business = Atelier
settings-business-hint = La première ligne est le nom ; dessous, adresse, téléphone et agrément

## Stockage

problem-open = Le journal n’a pu être ouvert. Fermez les autres copies de l’application et réessayez.
problem-open-not-a-log = Le fichier là n’est pas un journal de travaux. Il reste tel quel.
notice-salvaged = Le journal était abîmé. Ce qui se lisait est ici, et le fichier abîmé a été gardé.
problem-damaged = Le journal est abîmé. Rouvrez l’application : ce qui se lit est gardé.
problem-entry-too-large = Cette entrée est trop longue. Raccourcissez-la.

## What the own jobs taught

taught = Ce que vos travaux ont appris
taught-nothing = Rien encore : il faut une réparation essayée avec succès.
taught-jobs = { $count ->
    [one] D’un travail dont la réparation a été essayée avec succès :
   *[other] De { $count } travaux dont la réparation a été essayée avec succès :
}
taught-fault = { $count ->
    [one] { $fault } : une fois
   *[other] { $fault } : { $count } fois
}
taught-forget = Oublier ce qui a été appris
