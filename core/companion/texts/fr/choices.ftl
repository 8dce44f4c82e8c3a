### Ce que l’on choisit : plaintes, circuits, propriétés, outils, qui travaille.

## Plaintes. Comme on les touche, et comme elles se disent dans une phrase.

complaint-question = Qu’est-ce qui ne va pas ?
complaint-shake-idle = Elle vibre au ralenti
complaint-shake-idle-slight = Elle vibre un peu au ralenti
complaint-shake-idle-gear = Elle vibre au ralenti, rapport engagé
complaint-harsh-pulling-away = Elle est rude au démarrage
complaint-soft-under-way = Le moteur ballotte en roulant
complaint-clunk = Ça cogne en changeant ou au lever de pied
complaint-code-stored = Un code est mémorisé
complaint-none = Rien : un simple contrôle
complaint-shake-idle-phrase = vibration au ralenti
complaint-shake-idle-slight-phrase = légère vibration au ralenti
complaint-shake-idle-gear-phrase = vibration au ralenti, rapport engagé
complaint-harsh-pulling-away-phrase = rudesse au démarrage
complaint-soft-under-way-phrase = un moteur qui ballotte en roulant
complaint-clunk-phrase = un choc en changeant ou au lever de pied
complaint-code-stored-phrase = un code mémorisé
complaint-none-phrase = aucune plainte, un simple contrôle

## Prise électrique sur le support

not-this-job = Une prise électrique sur le support et pas de durite ? Ce support ne marche pas à dépression. Arrêtez ici.

## Circuits de dépression

template-one-mount = Un support, une électrovanne
template-two-mounts-one-valve = Deux supports, une électrovanne
template-reservoir-on-tee = Deux supports, une électrovanne, réservoir sur un té
template-two-valves-shared-feed = Deux supports, une électrovanne chacun
template-four-mounts = Quatre supports, une électrovanne
template-pump-with-brake-booster = Pompe à vide partagée avec les freins
template-two-mounts-open-at-rest = Deux supports, électrovanne ouverte au repos
template-two-stage-mount = Un support à deux chambres
template-bled-branch = Un support avec mise à l’air calibrée
template-restricted-branch = Deux supports, calibrage après l’électrovanne
template-pulsed-mount = Un support, électrovanne pulsée
template-shared-valve-block = Bloc d’électrovannes partagé avec d’autres consommateurs

## Circuits électriques

layout-ignition-fed-ground-switched = Alimentation au contact, le calculateur commute la { -ground }
layout-relay-fed-ground-switched = Alimentation par relais, le calculateur commute la { -ground }
layout-supply-switched = Le calculateur commute le plus, { -ground } fixe
layout-shared-fuse-and-splice = Un fusible et une épissure pour plusieurs consommateurs
layout-pulsed-with-diode = Le calculateur pulse l’électrovanne
layout-push-pull = Le calculateur pilote les deux broches

## Propriétés d’un circuit

property-vacuum-means = La dépression rend les supports
property-vacuum-means-soft = Souples, pour le ralenti
property-vacuum-means-stiff = Durs, pour rouler
property-rest = Électrovanne sans courant
property-rest-closed = Fermée, et laisse respirer les supports
property-rest-open = Ouverte, passe la dépression
property-switched = Le calculateur commute
property-switched-ground = Le côté { -ground }
property-switched-supply = Le côté plus
property-feed = Le plus vient
property-feed-ignition = Avec le contact
property-feed-relay = Par un relais que tient le calculateur
property-window = Le calculateur commande l’électrovanne
property-window-idle = Au ralenti
property-window-idle-in-gear = Au ralenti, rapport engagé
property-source = La dépression vient
property-source-intake = De l’admission du moteur
property-source-mechanical-pump = D’une pompe sur le moteur
property-source-electric-pump = D’une pompe électrique
property-check-valve = Clapet anti-retour près de la source
property-check-valve-yes = Monté
property-check-valve-no = Non monté
property-unknown = Je ne sais pas

window-idle = chaud et au ralenti depuis une minute
window-idle-in-gear = chaud, ralenti rapport engagé, frein tenu
window-unknown = chaud, une minute au ralenti ; puis une fois rapport engagé

## Outils

tool-hand-pump = Pompe à vide manuelle avec manomètre
tool-cap = Bouchons pour durites
tool-multimeter = Multimètre
tool-fused-jumper = Cavalier avec fusible, 3–5{"\u00A0"}A au bout batterie
tool-lamp = Lampe à filament, 2–5{"\u00A0"}W, pas de LED
tool-spare-hose = Durite de dépression de rechange
tool-code-reader = Lecteur de codes
tool-tachometer = Compte-tours
tool-wooden-lever = Levier en bois

## Conditions

need-engine-off = Moteur arrêté
need-engine-idle = Moteur chaud au ralenti
need-engine-in-gear = Ralenti rapport engagé, frein tenu
need-ignition-on = Contact mis, moteur arrêté
need-window = Condition de commande remplie : { $window }
need-second-person = Une deuxième personne au volant
need-connector-on = Connecteur branché
need-connector-off = Connecteur débranché

## Qui travaille

profile-owner = Propriétaire
profile-owner-detail = Tout est expliqué. Rien rapport engagé.
profile-mechanic = Mécanicien
profile-mechanic-detail = Textes courts. Essais rapport engagé à deux.

## Pourquoi un essai n’est pas fait

cannot-no-access = Inaccessible
cannot-no-tool = Outil manquant
cannot-not-safe = Pas sûr ici
cannot-not-fitted = La voiture n’a pas cette pièce
cannot-not-now = Pas maintenant
cannot-not-available = Introuvable ici
cannot-why = Une autre raison
cannot-why-missing = Dites d’abord la raison.
cannot-own-words = Impossible pour cette raison
cannot-no-access-reason = c’était inaccessible
cannot-no-tool-reason = l’outil manquait
cannot-not-safe-reason = ce n’était pas sûr à cet endroit
cannot-not-fitted-reason = le véhicule n’a pas cette pièce
cannot-not-now-reason = remis à plus tard
cannot-not-available-reason = ce n’était pas disponible

## Pourquoi un essai n’est pas proposé ici et maintenant

not-offered-hand-pump = Demande une pompe à vide manuelle avec manomètre.
not-offered-cap = Demande des bouchons pour durites.
not-offered-multimeter = Demande un multimètre.
not-offered-fused-jumper = Demande un cavalier avec fusible.
not-offered-lamp = Demande une lampe à filament de 2–5{"\u00A0"}W.
not-offered-spare-hose = Demande une durite de dépression de rechange.
not-offered-code-reader = Demande un lecteur de codes.
not-offered-tachometer = Demande un compte-tours.
not-offered-wooden-lever = Demande un levier en bois.
not-offered-alone = Demande une deuxième personne au volant.
not-offered-engine = Demande un moteur qui tourne.
