### Le rapport : la page du client, les preuves, le dossier complet.

report-heading = { $vehicle } : contrôle des supports moteur
report-heading-plain = Contrôle des supports moteur
report-began = Essayé
report-ended = Dernière entrée

## La page du client

report-complaint = La plainte
report-known = Comment on le sait
report-done = Réparation
report-next = Étape suivante
report-costs = Coûts
report-estimate = Devis, valable jusqu’au { $date }
report-not-done-work = Refusé ou reporté
report-tested-by = Contrôlé par
report-sign-decided = Client : { $decision }
report-signed-when = { $name }, { $when }
report-signature-of = Signature de { $name }
record-instrument = Mesuré avec
instrument-name-gauge = manomètre
instrument-name-meter = multimètre
instrument-name-phone = téléphone
instrument-name-person = personne
readings-what = Mesure
readings-value = Valeur
readings-unit = Unité
readings-seconds = Secondes
readings-vacuum = dépression
readings-description = Les mesures de ce rapport en tableau (CSV)
report-not-tested = Non essayé
report-left-open = Ce qui reste ouvert
report-seen = Vu aussi
report-proposed = Proposé : { $what }.
report-proposed-can-wait = Peut attendre : { $what }.
report-repaired = Réparé : { $part }.
report-not-retested = L’essai n’a pas encore été refait.
report-compared = { $test } : avant { $before }, après { $after }.
report-compared-not-gone = Le défaut est encore là. { $test } : avant { $before }, après { $after }.
report-next-repair = Réparer, puis refaire le même essai.
report-next-elsewhere = Chercher la cause ailleurs : moteur, échappement, biellettes, caoutchouc des supports.
report-next-outside = Faire réparer ceci d’abord. Si la plainte reste, contrôler à nouveau le circuit des supports.
report-next-nothing = Rien à réparer.
report-next-tester = Prendre une pompe étanche et refaire les essais de tenue.
report-next-retest = Refaire le même essai. Jusque-là, la réparation n’est pas prouvée.
report-next-road = Essai routier : les freins d’abord, puis démarrages et arrêts.
report-next-feel = Ressentir à nouveau la plainte, puis essai routier, freins d’abord.
report-next-complaint-stays = Continuer les essais : une autre cause reste.
report-next-again = Essayer encore : la mesure n’a pas assez changé.
report-next-test = Prochain essai : { $test }.
report-next-workshop = Ces essais n’en disent pas plus. La documentation du constructeur mène plus loin.
report-not-done = { $test } : { $reason }.
report-more-not-done = { $count } de plus, voir le dossier.
report-seen-part = { $part } : { $state }.
report-care-brakes = Les freins partagent cette dépression. Pédale molle ou dure : ne pas rouler.
report-caption-map = Le circuit et ce que les essais disent de chaque pièce
report-caption-map-repaired = Le circuit tel que trouvé avant la réparation
report-care-mount = Un support cassé surcharge les autres. Ne pas attendre longtemps.
report-caption-before-after = Le même essai avant et après la réparation
report-caption-test = { $test } : { $seen } – { $result }
report-caption-figure = { $test } : { $seen } – cette valeur { $result }
report-caption-after = { $test }, après la réparation : { $seen } – { $result }
report-caption-photo = Photo

## Mise en page

report-evidence = Preuves
report-record = Dossier complet
report-page = Page {"{page}"} sur {"{pages}"}
report-digest = Empreinte du dossier
report-written-by = Rédigé par
report-figure = Figure {"{number}"}
report-software = Holdfast { $version }

## Le dossier

record-ambient = Pression de l’air
record-ambient-measured = mesurée ou saisie
record-ambient-altitude = d’après l’altitude (ISO 2533)
record-ambient-assumed = niveau de la mer supposé
record-air = Air
record-instruments = Instruments
instrument-assumed = Non indiqués : instruments courants supposés
record-limit = Chute permise
record-limit-value = { $drop } en { $seconds }, pratique courante
record-confidence = Un diagnostic compte à partir de
record-circuit = Circuit
record-causes = Causes, la plus probable d’abord
record-causes-before = Causes avant la réparation, la plus probable d’abord
record-cause = Cause
record-probability = Probabilité
record-results = Essais et résultats
record-results-caption = Incertitudes avec k = 2, environ 95{"\u00A0"}%.
record-time = Heure
record-test = Essai
record-read = Lu
record-uncertainty = Incertitude
record-result = Résultat
record-after-repair = { $test } (après réparation)
record-kept = { $reading } – questionné et gardé
record-u = ±{ $u }
record-u-drop = ±{ $u } sur la chute
record-u-reading = ±{ $u }
record-holds = Essais de tenue
record-holds-caption = Fuites en cm³/min normaux : 20{"\u00A0"}°C, 101,325{"\u00A0"}kPa, à 20{"\u00A0"}inHg dedans ; celle de l’appareil est ôtée.
record-fall = Aiguille
record-leak = Fuite
record-range = Intervalle 95{"\u00A0"}%
record-limit-leak = Limite
record-volume = Volume, cm³
record-over = Hors limite
record-none = –
record-skipped = Non essayé, et pourquoi
record-reason = Raison
record-open = Non connu
record-newer = { $count ->
    [one] { $count } entrée vient d’une version plus récente et n’est pas montrée.
   *[other] { $count } entrées viennent d’une version plus récente et ne sont pas montrées.
}
record-entries = Chaque entrée
record-entry = Entrée
record-standing = { $entry } – { $standing }
record-how = Le logiciel nommé ci-dessous calcule résultats et probabilités d’après ces entrées. Les volumes du circuit et la fréquence de chaque défaut sont des estimations de la pratique courante.
report-sign-work = Essayé par, date
report-sign-customer = Client, date
report-sign-agreed = Client, date. Réparation : acceptée / plus tard / refusée
report-sign-handed-over = Remis à, date
