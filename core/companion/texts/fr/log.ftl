### Le journal du travail : une ligne par entrée.

quoted = « { $words } »

log-opened = Travail commencé avec la version { $software }.
log-wiped = effacé
log-complaint = Plainte : { $complaint }
log-circuit = Circuit : { $template }
log-altitude = altitude { $altitude }
log-ambient = pression de l’air { $pressure }, { $from }
log-ambient-barometer = du baromètre du téléphone
log-ambient-typed = saisie
log-ambient-altitude = d’après l’altitude
log-ambient-sea-level = niveau de la mer supposé
log-air = air { $temperature }
log-place-unknown = Lieu non indiqué : niveau de la mer supposé
log-instruments = Instruments : { $what }
log-tools = Outils sous la main : { $tools }
log-no-tools = Aucun outil sous la main
log-engine-runs = Le moteur peut tourner
log-engine-cannot-run = Le moteur ne peut pas tourner
log-engine-stopped = Moteur arrêté depuis { $minutes }
log-second-person = Une deuxième personne est là
log-alone = Personne d’autre n’est là
log-profile = Au travail : { $profile }
log-limit = chute permise { $drop } en { $seconds }
log-confidence = un diagnostic compte à partir de { $percent }
log-limit-unchanged = Limite inchangée
log-acknowledged = Lu et coché : { $caution }
log-reading = { $test } : { $reading }
log-reading-kept = { $test } : { $reading } (questionné et gardé)
log-reading-after = Après réparation : { $test } : { $reading }
log-reading-unknown = { $test } : une lecture que cette version ne sait pas montrer
log-trace = { $test } : { $count } lectures du manomètre enregistrées
log-interrupted = { $test } : interrompu, { $by }. Jusque-là : { $had }
log-interrupted-killed = l’application a été fermée
log-interrupted-restarted = le téléphone a redémarré
log-interrupted-unseen = la caméra n’a pas vu l’aiguille
log-interrupted-left = il a été quitté
log-skipped = { $test } : non fait, { $reason }
log-skipped-note = { $test } : non fait, { $reason } : { $note }
log-correction = Corrigé : { $instead }
log-kept = Questionné et gardé : { $reading }
log-corrected = corrigé plus tard : { $instead }
log-kept-later = questionné plus tard et gardé
log-undo = Repris : { $what }
log-undo-undo = La reprise a été annulée
log-undone = repris plus tard
log-photo = Photo
log-photo-caption = Photo : { $caption }
log-photo-marked = { $count ->
    [0] Repères ôtés d’une photo
    [one] Un repère posé sur une photo
   *[other] { $count } repères posés sur une photo
}
log-about = { $words } ({ $about })
log-note = Note : { $note }
log-repair-done = Réparé : { $part }.
log-costs-estimate = Devis : { $total }
log-costs-charged = Coûts facturés : { $total }
log-report-language = Rapports en { $language }
log-report-language-screens = Rapports dans la langue de l’écran
log-report-parts = Rapports sans : { $parts }
log-report-whole = Rapports avec tout
log-workshop = Travail de { $name }
log-workshop-none = Personne n’est nommé sur le rapport
log-signed = { $words }, signé
log-repair-torque = Couple de serrage : { $torque }
log-repair-proposed = Réparation proposée : { $part }.
log-closed = Clos : { $finding } ({ $percent }, version { $software })
log-closed-repaired = Clos et réparé : { $finding } ({ $percent }, version { $software })
log-report = Rapport fait, { $pages ->
    [one] { $pages } page
   *[other] { $pages } pages
}, empreinte { $digest }…
log-binned = Mis à la corbeille
log-newer-short = d’une version plus récente
log-unreadable = Une entrée illisible. Elle est gardée telle quelle.

instrument-gauge = manomètre 0–{ $span }{"\u00A0"}{ $unit }, division { $division }, classe { $grade }, lu à { $read }
instrument-pump = pompe manuelle, manomètre et adaptateur { $volume }
instrument-stroke = { $volume } par coup
instrument-meter = multimètre ±({ $percent }{"\u00A0"}% + { $counts-n ->
    [one] { $counts } digit
   *[other] { $counts } digits
})
instrument-unknown = non indiqué

record-plate = Immatriculation
record-label = Véhicule
record-vin = VIN
record-odometer = Compteur
record-odometer-out = Compteur à la sortie
record-handed-over = Remis
record-customer = Client
record-agreed = Convenu avec le client
