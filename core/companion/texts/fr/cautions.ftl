### Consignes de sécurité, avant l’étape qu’elles concernent. Le mot de signal vient du catalogue.
### Pratique courante ; règles locales, gens de métier et documentation du constructeur passent avant.

signal-danger = DANGER
signal-warning = AVERTISSEMENT
signal-caution = ATTENTION
signal-notice = AVIS

## Moteur arrêté

caution-engine-may-start = Le moteur peut démarrer seul : arrêt-démarrage, hybride, démarrage à distance. Contact coupé, clé loin de la voiture. Le ventilateur peut encore tourner.
caution-engine-may-start-key-on = Contact mis, moteur et ventilateur peuvent démarrer seuls. Mains, manches et cordons loin de courroie et ventilateur.

## Moteur tournant

caution-engine-running = Courroie et ventilateur happent cheveux, manches, cordons et câbles. Tenez tout à l’écart.
caution-fumes = Les gaz d’échappement tuent. Travaillez dehors ou avec extraction.
caution-hot-parts = Échappement, pièces de refroidissement et pattes de support brûlent. N’ouvrez jamais un bouchon chaud.
caution-in-gear = Une personne au siège, pied sur le frein, frein de stationnement serré. Roues calées, sol plat, personne devant ni derrière. Aucune main dans le compartiment, jamais sur { -lift } ou cric, moins de 5 secondes.
caution-keep-clear-hoses = Fixez la durite d’essai loin de courroie, ventilateur et échappement avant de démarrer.
caution-leads-clear = Fixez les cordons loin de courroie, ventilateur et échappement avant de démarrer.

## Autour de la voiture

caution-under-the-car = Jamais sous une voiture posée sur un cric seul. Chandelles homologuées ou { -lift }.
caution-high-voltage = Câbles orange : ne jamais les ouvrir ni les percer. Personnes habilitées seulement.
caution-airbag-wiring = Fils d’airbag ou de ceinture tout près : ni lampe, ni ohmmètre, ni débranchement. Évitez aussi allumage, injecteurs et xénon.
caution-lever-slips = Le levier peut glisser. Bois seulement, loin de carter, durites et fils, aucune main dans l’espace.
caution-mount-fluid = Le fluide de support nuit à la peau et aux yeux et empoisonne les animaux. Recueillez-le.
caution-gentle-heat = Sèche-cheveux seulement, ni décapeur ni flamme. Les vapeurs de carburant peuvent prendre feu.

## Dépression

caution-no-over-vacuum = Jamais plus de { $most } : les membranes se déchirent.
caution-never-blow = Ne soufflez jamais d’air dans un support ou une électrovanne. Aucun nettoyant inflammable pour chercher les fuites.
caution-nipples-snap = Les embouts en plastique cassent. Tournez la durite, ne tirez pas.
caution-keep-arrow = Remontez-le avec la flèche dans le même sens.
caution-brake-vacuum-open = Les freins peuvent partager cette dépression. Ne bougez pas la voiture, ligne ouverte. Après, la pédale doit s’enfoncer au démarrage ; essayez les freins au pas.
caution-not-for-driving = La dérivation ne sert qu’à cet essai au ralenti. Ne roulez jamais avec.

## Électricité

caution-codes-before-unplugging = Débrancher crée des codes. Lisez d’abord les anciens.
caution-no-rings = Ni bagues ni bracelets, yeux protégés : une batterie brûle.
caution-jumper-fuse = Le fusible du cavalier, 3–5{"\u00A0"}A, est au bout batterie.
caution-jumper-valve-only = Alimentez l’électrovanne débranchée de la voiture. Jamais le connecteur : cela abîme le calculateur.
caution-jumper-polarity = Bonne polarité : une diode dans l’électrovanne ne pardonne pas.
caution-jumper-short-time = Moins de 30 secondes : la bobine chauffe.
caution-meter-current-socket = Cordon rouge dans la prise V. Dans la prise A, c’est un court-circuit.
caution-pins-spread = Pointes fines seulement. Une grosse écarte la broche.
caution-nothing-pierced = Ne percez ni fil ni joint : ils se corrodent ensuite.
caution-lamp-size = Une lampe à filament de 2–5{"\u00A0"}W. Plus forte, elle abîme le calculateur ; une LED ne charge rien.
caution-ohms-without-power = Ne mesurez jamais d’ohms sur un fil sous tension : contact coupé, fusible ôté.
caution-fuse-same-rating = Même calibre, une fois. S’il refond : arrêtez, cherchez le court-circuit.
caution-module-static = Touchez la tôle nue de la caisse avant de débrancher le calculateur. Contact coupé cinq minutes.

## Pour tout le travail

