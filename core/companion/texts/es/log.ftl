### El registro del trabajo: una línea por entrada.

quoted = «{ $words }»

log-opened = Trabajo empezado con la versión { $software }.
log-wiped = borrado
log-complaint = Queja: { $complaint }
log-circuit = Circuito: { $template }
log-altitude = altitud { $altitude }
log-ambient = presión del aire { $pressure }, { $from }
log-ambient-barometer = del barómetro del móvil
log-ambient-typed = escrita
log-ambient-altitude = según la altitud
log-ambient-sea-level = nivel del mar supuesto
log-air = aire { $temperature }
log-place-unknown = Lugar no indicado: nivel del mar supuesto
log-instruments = Instrumentos: { $what }
log-tools = Herramientas a mano: { $tools }
log-no-tools = Ninguna herramienta a mano
log-engine-runs = El motor puede funcionar
log-engine-cannot-run = El motor no puede funcionar
log-engine-stopped = Motor parado hace { $minutes }
log-second-person = Hay otra persona
log-alone = No hay nadie más
log-profile = Trabaja: { $profile }
log-limit = caída permitida { $drop } en { $seconds }
log-confidence = un diagnóstico cuenta desde { $percent }
log-limit-unchanged = Límite sin cambios
log-acknowledged = Leído y marcado: { $caution }
log-reading = { $test }: { $reading }
log-reading-kept = { $test }: { $reading } (preguntado y mantenido)
log-reading-after = Tras la reparación: { $test }: { $reading }
log-reading-unknown = { $test }: una lectura que esta versión no sabe mostrar
log-trace = { $test }: { $count } lecturas del vacuómetro grabadas
log-interrupted = { $test }: interrumpida, { $by }. Hasta entonces: { $had }
log-interrupted-killed = se cerró la aplicación
log-interrupted-restarted = se reinició el móvil
log-interrupted-unseen = la cámara no vio la aguja
log-interrupted-left = se abandonó
log-skipped = { $test }: no hecha, { $reason }
log-skipped-note = { $test }: no hecha, { $reason }: { $note }
log-correction = Corregido: { $instead }
log-kept = Preguntado y mantenido: { $reading }
log-corrected = corregido después: { $instead }
log-kept-later = preguntado después y mantenido
log-undo = Retirado: { $what }
log-undo-undo = Se anuló la retirada
log-undone = retirado después
log-photo = Foto
log-photo-caption = Foto: { $caption }
log-photo-marked = { $count ->
    [0] Marcas quitadas de una foto
    [one] Una marca puesta en una foto
   *[other] { $count } marcas puestas en una foto
}
log-about = { $words } ({ $about })
log-note = Nota: { $note }
log-repair-done = Reparado: { $part }.
log-costs-estimate = Presupuesto: { $total }
log-costs-charged = Costes cobrados: { $total }
log-report-language = Informes en { $language }
log-report-language-screens = Informes en el idioma de la pantalla
log-report-parts = Informes sin: { $parts }
log-report-whole = Informes con todo
log-workshop = Trabajo de { $name }
log-workshop-none = Nadie nombrado en el informe
log-signed = { $words }, firmado
log-repair-torque = Par de apriete: { $torque }
log-repair-proposed = Reparación propuesta: { $part }.
log-closed = Cerrado: { $finding } ({ $percent }, versión { $software })
log-closed-repaired = Cerrado y reparado: { $finding } ({ $percent }, versión { $software })
log-report = Informe hecho, { $pages ->
    [one] { $pages } página
   *[other] { $pages } páginas
}, huella { $digest }…
log-binned = Echado a la papelera
log-newer-short = de una versión más nueva
log-unreadable = Una entrada que no se puede leer. Se guarda como está.

instrument-gauge = vacuómetro 0–{ $span }{"\u00A0"}{ $unit }, división { $division }, clase { $grade }, leído a { $read }
instrument-pump = bomba manual, vacuómetro y adaptador { $volume }
instrument-stroke = { $volume } por embolada
instrument-meter = multímetro ±({ $percent }{"\u00A0"}% + { $counts-n ->
    [one] { $counts } dígito
   *[other] { $counts } dígitos
})
instrument-unknown = no indicado

record-plate = Matrícula
record-label = Vehículo
record-vin = VIN
record-odometer = Cuentakilómetros
record-odometer-out = Cuentakilómetros a la salida
record-handed-over = Entregado
record-customer = Cliente
record-agreed = Acordado con el cliente
