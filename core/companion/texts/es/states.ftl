### La palabra junto a la forma de cada estado; resultados de pruebas; estados de un trabajo.

state-holds = Retiene
state-slow-leak = Fuga lenta
state-leaks = Pierde
state-will-not-build = No hace vacío
state-undecided = Sin decidir
state-as-expected = Como se esperaba
state-not-as-expected = No como se esperaba
state-not-done = No hecha
state-cant-do = No se puede
state-interrupted = Interrumpida

state-repaired = Reparado
state-tests-good = Da bien
state-not-repaired = No reparado
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
