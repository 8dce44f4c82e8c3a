### La palabra junto a la forma de cada estado; resultados de pruebas; estados de un trabajo.

state-holds = retiene
state-slow-leak = fuga lenta
state-leaks = pierde
state-will-not-build = no hace vacío
state-undecided = sin decidir
state-as-expected = como se esperaba
state-not-as-expected = no como se esperaba
state-not-done = no hecha
state-cant-do = no se puede
state-interrupted = interrumpida

state-repaired = reparado
state-tests-good = prueba superada
state-not-repaired = no reparado
job-state-found = Causa hallada
job-state-undecided = Causa no clara
job-state-no-fault = Nada hallado

## El plano del circuito, para un lector de pantalla

map-alt-job = El circuito. Más sospechoso: { $part }, { $percent }.
map-alt-plain = el circuito. Ninguna pieza destaca.
map-alt-test = El circuito con las piezas a prueba: { $test }.
map-alt-look = El circuito con lo que has visto hasta ahora.
map-suspicion = sospecha { $percent }
map-state-good = probada, bien
map-state-bad = probada, mal
