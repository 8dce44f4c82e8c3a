### Ce qui ne va pas et qu’y faire. À côté d’un champ, ou en haut de l’écran.

## Une valeur saisie

problem-number-empty = Saisissez un nombre.
problem-number-none = Ce n’est pas un nombre. Saisissez des chiffres, comme 6,5.
problem-number-not-finite = Aucun instrument ne montre ce nombre.
problem-range = De { $low } à { $high }.
problem-range-above = Trop haut. Saisissez { $low } à { $high }.
problem-range-below = Trop bas. Saisissez { $low } à { $high }.
problem-missing = Il manque encore : { $what }.

## VIN et plaque

vin-fits = Le chiffre de contrôle est juste.
vin-length = Un VIN a 17 caractères ; il y en a { $count }.
vin-character = Un VIN n’a jamais de { $character }. Cherchez 1 ou 0.
vin-differs = Le chiffre de contrôle est { $there }, { $expected } irait. Regardez encore. Hors d’Amérique du Nord, cela peut être juste.

## Stockage

problem-open-newer = Ce journal vient de la version { $version }, plus récente que cette application. Il reste tel quel. Installez la nouvelle.
problem-folder = Impossible de créer le dossier de données. Libérez de la place et réessayez.
problem-full = Le téléphone est plein. Rien n’est perdu ; cette dernière étape n’est pas enregistrée. Libérez de la place.
problem-read-only = Le téléphone empêche cette application d’écrire. Rien n’est perdu ; cette dernière étape n’est pas enregistrée.
problem-store = Impossible d’écrire le journal. Ce qui était enregistré est encore là. Réessayez.
problem-session = L’endroit où vous étiez n’a pu être gardé. Vos lectures sont à l’abri.
problem-entry-from-newer = D’une version plus récente : gardé, pas montré.

## Photos

problem-photo-damaged = Cette image est coupée ou abîmée. Reprenez-la.
problem-photo-type = Ce n’est pas une image JPEG, PNG ou WebP, et le téléphone ne sait pas la lire non plus.
problem-photo-missing = Le fichier de la photo manque. Son entrée est gardée.

## Rapports

problem-report = Le rapport n’a pu être fait. Le travail est à l’abri. Réessayez.
problem-report-no-space = Pas de place pour le rapport. Libérez de la place et réessayez.

## Interrompu

problem-gap = Le téléphone a dormi { $seconds }. Moins de lectures comptent ; le temps est juste.
