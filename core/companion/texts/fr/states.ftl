### Le mot à côté de la forme de chaque état ; résultats des essais ; états d’un travail.

state-holds = tient
state-slow-leak = fuite lente
state-leaks = fuit
state-will-not-build = ne fait pas de dépression
state-undecided = indécis
state-as-expected = comme attendu
state-not-as-expected = pas comme attendu
state-not-done = non fait
state-cant-do = impossible
state-interrupted = interrompu

state-repaired = réparé
state-tests-good = essai bon
state-not-repaired = non réparé
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
