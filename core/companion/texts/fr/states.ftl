### Le mot à côté de la forme de chaque état ; résultats des essais ; états d’un travail.

state-holds = Tient
state-slow-leak = Fuite lente
state-leaks = Fuit
state-will-not-build = Ne fait pas de dépression
state-undecided = Indécis
state-as-expected = Comme attendu
state-not-as-expected = Pas comme attendu
state-not-done = Non fait
state-cant-do = Impossible
state-interrupted = Interrompu

state-repaired = Réparé
state-tests-good = Essai bon
state-not-repaired = Non réparé
job-state-found = Cause trouvée
job-state-undecided = Cause pas claire
job-state-no-fault = Rien trouvé

## Le plan du circuit, pour un lecteur d’écran

map-alt-job = Le circuit. Le plus suspect : { $part }, { $percent }.
map-alt-plain = le circuit. Aucune pièce ne ressort.
map-alt-test = Le circuit avec les pièces à l’essai : { $test }.
map-alt-look = Le circuit avec ce que vous avez vu jusqu’ici.
map-suspicion = soupçon { $percent }
map-state-good = essayé, bon
map-state-bad = essayé, mauvais
