### El informe: la página del cliente, las pruebas, el registro completo.

report-heading = { $vehicle }: revisión de los soportes de motor
report-heading-plain = Revisión de los soportes de motor
report-began = Probado
report-ended = Última entrada

## La página del cliente

report-complaint = La queja
report-known = Cómo se sabe
report-done = Reparación
report-next = Siguiente paso
report-costs = Costes
report-estimate = Presupuesto, válido hasta el { $date }
report-not-done-work = Rechazado o aplazado
report-tested-by = Comprobado por
report-sign-decided = Cliente: { $decision }
report-signed-when = { $name }, { $when }
report-signature-of = Firma de { $name }
record-instrument = Medido con
instrument-name-gauge = vacuómetro
instrument-name-meter = multímetro
instrument-name-phone = teléfono
instrument-name-person = persona
readings-what = Medida
readings-value = Valor
readings-unit = Unidad
readings-seconds = Segundos
readings-vacuum = vacío
readings-description = Las medidas de este informe en una tabla (CSV)
report-not-tested = No probado
report-left-open = Lo que queda abierto
report-seen = También visto
report-proposed = Propuesta: { $what }.
report-proposed-can-wait = Puede esperar: { $what }.
report-repaired = Reparado: { $part }.
report-not-retested = La prueba aún no se ha repetido.
report-compared = { $test }: antes { $before }, después { $after }.
report-compared-not-gone = El fallo sigue. { $test }: antes { $before }, después { $after }.
report-next-repair = Reparar y hacer la misma prueba otra vez.
report-next-elsewhere = Buscar la causa en otro sitio: motor, escape, bieletas, goma de los soportes.
report-next-outside = Arreglar antes esto. Si la queja sigue, probar otra vez el circuito de los soportes.
report-next-nothing = Nada que reparar.
report-next-tester = Usar una bomba manual estanca y repetir las pruebas de retención.
report-next-retest = Repetir la misma prueba. Hasta entonces la reparación no está demostrada.
report-next-road = Prueba en carretera: primero los frenos, luego arrancar y parar.
report-next-feel = Volver a sentir la queja, luego carretera, primero los frenos.
report-next-complaint-stays = Seguir probando: queda otra causa.
report-next-again = Probar otra vez: la medida no ha cambiado bastante.
report-next-test = Próxima prueba: { $test }.
report-next-workshop = Estas pruebas no dicen más. La documentación del fabricante lleva más allá.
report-not-done = { $test }: { $reason }.
report-more-not-done = { $count } más, ver el registro.
report-seen-part = { $part }: { $state }.
report-care-brakes = Los frenos comparten este vacío. Pedal blando o duro: no conducir.
report-caption-map = El circuito y lo que dicen las pruebas de cada pieza
report-caption-map-repaired = El circuito como se halló antes de la reparación
report-care-mount = Un soporte roto sobrecarga a los otros. No esperar mucho.
report-caption-before-after = La misma prueba antes y después de la reparación
report-caption-test = { $test }: { $seen } – { $result }
report-caption-figure = { $test }: { $seen } – este valor { $result }
report-caption-after = { $test }, tras la reparación: { $seen } – { $result }
report-caption-photo = Foto

## Maquetación

report-evidence = Pruebas
report-record = Registro completo
report-page = Página {"{page}"} de {"{pages}"}
report-digest = Huella del registro
report-written-by = Escrito por
report-figure = Figura {"{number}"}
report-software = Holdfast { $version }

## El registro

record-ambient = Presión del aire
record-ambient-measured = medida o escrita
record-ambient-altitude = según la altitud (ISO 2533)
record-ambient-assumed = nivel del mar supuesto
record-air = Aire
record-instruments = Instrumentos
instrument-assumed = No indicados: se suponen los habituales
record-limit = Caída permitida
record-limit-value = { $drop } en { $seconds }, práctica habitual
record-confidence = Un diagnóstico cuenta desde
record-circuit = Circuito
record-causes = Causas, la más probable primero
record-causes-before = Causas antes de la reparación, la más probable primero
record-cause = Causa
record-probability = Probabilidad
record-results = Pruebas y resultados
record-results-caption = Incertidumbres con k = 2, cerca del 95{"\u00A0"}%.
record-time = Hora
record-test = Prueba
record-read = Leído
record-uncertainty = Incertidumbre
record-result = Resultado
record-after-repair = { $test } (tras la reparación)
record-kept = { $reading } – preguntado y mantenido
record-u = ±{ $u }
record-u-drop = ±{ $u } en la caída
record-u-reading = ±{ $u }
record-holds = Pruebas de retención
record-holds-caption = Fugas en cm³/min normales: 20{"\u00A0"}°C, 101,325{"\u00A0"}kPa, con 20{"\u00A0"}inHg dentro; la del aparato está restada.
record-fall = Aguja
record-leak = Fuga
record-range = Intervalo 95{"\u00A0"}%
record-limit-leak = Límite
record-volume = Volumen, cm³
record-over = Sobre límite
record-none = –
record-skipped = No probado, y por qué
record-reason = Motivo
record-open = No conocido
record-newer = { $count ->
    [one] { $count } entrada es de una versión más nueva y no se muestra.
   *[other] { $count } entradas son de una versión más nueva y no se muestran.
}
record-entries = Cada entrada
record-entry = Entrada
record-standing = { $entry } – { $standing }
record-how = El programa nombrado abajo calcula resultados y probabilidades a partir de estas entradas. Los volúmenes del circuito y la frecuencia de cada fallo son estimaciones de la práctica habitual.
report-sign-work = Probado por, fecha
report-sign-customer = Cliente, fecha
report-sign-agreed = Cliente, fecha. Reparación: sí / más tarde / no
report-sign-handed-over = Entregado a, fecha
