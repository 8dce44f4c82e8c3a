### Défauts comme proposition sans majuscule ni point : « la durite avant fuit ». $part-the est la pièce avec son article.
### Cherchés comme fault-<pièce>-<mode>, puis fault-<famille>-<mode>, puis fault-<mode>.

fault-none = rien d’anormal dans ce circuit
fault-other = une cause hors de ce circuit

## Toute pièce

fault-leaks = { $part-the } fuit
fault-blocked = { $part-the } ne laisse rien passer
fault-off = { $part-the } n’est plus en place
fault-crossed = { $part-the } a son branchement inversé
fault-open = { $part-the } n’a plus de continuité
fault-shorted = { $part-the } est en court-circuit
fault-high-resistance = { $part-the } a trop de résistance
fault-to-ground = { $part-the } touche la { -ground }
fault-to-battery = { $part-the } touche le plus batterie
fault-dead = { $part-the } ne marche plus
fault-weak = { $part-the } est faible
fault-loose = { $part-the } a du jeu
fault-wrong-part = { $part-the } n’est pas la bonne pièce
fault-worn = { $part-the } est à bout d’usure
fault-broken = { $part-the } a une rupture
fault-unknown = quelque chose ne va pas avec { $part-the }

## Durites

fault-hose-leaks = { $part-the } fuit
fault-hose-off = { $part-the } est débranchée
fault-hose-blocked = { $part-the } est pliée ou bouchée
fault-hose-crossed = { $part-the } est sur le mauvais embout
fault-hose-fluid-inside = { $part-the } a du fluide dedans
fault-hose-loose-end = { $part-the } a un bout desserré et fuit par moments

## Supports

fault-mount-leaks = { $part-the } perd la dépression
fault-mount-torn = { $part-the } a le caoutchouc déchiré
fault-mount-sagged = { $part-the } s’est affaissé
fault-mount-fluid-lost = { $part-the } a perdu son fluide
fault-mount-jammed = { $part-the } est bloqué à l’intérieur
fault-mount-loose = { $part-the } a du jeu
fault-mount-blocked = { $part-the } a l’embout bouché
fault-mount-under-tension = { $part-the } a été serré sous contrainte
fault-mount-wrong-part = { $part-the } n’est pas la bonne pièce

## Côté dépression

fault-source-weak = { $part-the } est faible
fault-source-dead = { $part-the } ne donne rien
fault-source-blocked = { $part-the } a la prise bouchée
fault-check-valve-leaks = { $part-the } fuit
fault-check-valve-passes = { $part-the } laisse revenir l’air
fault-check-valve-stuck-closed = { $part-the } est grippé fermé
fault-check-valve-stuck-open = { $part-the } est grippé ouvert
fault-check-valve-blocked = { $part-the } est bouché
fault-check-valve-crossed = { $part-the } est monté à l’envers
fault-check-valve-reversed = { $part-the } est monté à l’envers
fault-reservoir-leaks = { $part-the } fuit
fault-tee-leaks = { $part-the } fuit
fault-tee-blocked = { $part-the } est bouché
fault-restrictor-blocked = { $part-the } est bouché
fault-bleed-blocked = { $part-the } est bouchée

## Électrovanne

fault-valve-leaks = { $part-the } fuit
fault-valve-passes = { $part-the } passe au repos
fault-valve-stuck-closed = { $part-the } est grippée fermée
fault-valve-stuck-open = { $part-the } est grippée ouverte
fault-valve-vent-leaks = { $part-the } fuit par sa mise à l’air
fault-valve-vent-blocked = { $part-the } a la mise à l’air bouchée
fault-valve-blocked = { $part-the } est bouchée
fault-valve-crossed = les durites { $part-of } sont inversées

## Côté électrique

fault-battery-weak = la batterie est faible
fault-battery-dead = la batterie est à plat
fault-fuse-blown = { $part-the } est fondu
fault-relay-dead = { $part-the } ne commute pas
fault-wire-open = { $part-the } est coupé
fault-wire-high-resistance = { $part-the } a une mauvaise jonction
fault-wire-to-ground = { $part-the } touche la { -ground }
fault-wire-to-battery = { $part-the } touche le plus batterie
fault-wire-shorted = { $part-the } est en court-circuit
fault-connector-open = { $part-the } ne fait pas contact
fault-connector-high-resistance = { $part-the } est corrodé
fault-connector-off = { $part-the } est débranché
fault-connector-crossed = { $part-the } a ses broches inversées
fault-coil-open = { $part-the } est coupée
fault-coil-shorted = { $part-the } est en court-circuit
fault-coil-to-ground = { $part-the } touche son boîtier
fault-module-dead = le calculateur ne commande pas l’électrovanne
fault-module-always-on = le calculateur garde l’électrovanne commandée
fault-splice-high-resistance = { $part-the } fait mauvais contact
fault-ground-point-high-resistance = { $part-the } fait mauvais contact

## Appareil d’essai

fault-hand-pump-leaks = la pompe à vide manuelle fuit
fault-hand-pump-warming = l’air enfermé se réchauffe
fault-hand-pump-cooling = l’air enfermé refroidit
fault-hand-pump-settling = le caoutchouc se tasse encore
fault-hand-pump-narrow = une durite étroite retarde le manomètre
fault-hand-pump-needle-sticks = l’aiguille du manomètre colle
fault-multimeter-dead = le multimètre n’affiche rien

## Hors de ce circuit

fault-engine-rough = le moteur tourne mal
fault-engine-idle-low = le moteur tourne trop bas au ralenti
fault-strut-worn = la biellette de reprise de couple est usée
fault-exhaust-touching = l’échappement touche la caisse
fault-solid-mount-broken = un support sans dépression est cassé
fault-drivetrain-other = la transmission vibre
