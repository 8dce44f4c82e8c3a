### Pantallas: títulos, botones, campos, ayudas, avisos. Segunda persona, presente, frases cortas.

back = Atrás
menu-settings = Ajustes
menu-overview = Dónde estamos
menu-vehicle = Vehículo y queja
menu-prepare = Herramientas y lugar
menu-log = Fotos y registro
menu-report = Informe
nothing-here = Aquí no hay nada que mostrar. Vuelve atrás.
unit-minutes = min

## Avisos

notice-binned = El trabajo está en la papelera.
notice-binned-undo = Sacarlo de ahí
notice-parked = Sin terminar: { $test }. Queda como lo dejaste.
notice-parked-resume = Seguir con ella



## Vehículo y queja

vehicle-title = Vehículo y queja
vehicle-vehicle = Vehículo
vehicle-complaint-note = Con tus palabras
vehicle-complaint-missing = Toca lo que pasa, o Nada.
vehicle-plate = Matrícula
vehicle-label = Marca, modelo, motor
vehicle-vin = VIN
vehicle-vin-hint = 17 caracteres, en el parabrisas o en los papeles
vehicle-odometer = Cuentakilómetros
vehicle-odometer-hint = Tal como está; si la unidad es otra, escríbela detrás
vehicle-odometer-out = Cuentakilómetros al devolverlo
vehicle-handed-over = Entregado
vehicle-handed-over-hint = Cuándo y a quién, como 3 de marzo 17:30, el propietario
vehicle-customer = Cliente
vehicle-agreed = Acordado con el cliente
vehicle-agreed-hint = Pruebas, fotos, carretera, hasta qué importe; por quién, cuándo
vehicle-circuit = ¿Qué circuito?
vehicle-circuit-hint = Sigue las mangueras desde el motor. Cuenta soportes y válvulas.
vehicle-circuit-edit = Cambiar mangueras, volúmenes o cableado
vehicle-who = ¿Quién trabaja?
vehicle-next = Sigue: antes de empezar

## El circuito

circuit-title = El circuito
circuit-hint = Deja la cifra como está si no sabes otra mejor.
circuit-parts = Piezas
circuit-volume = Aire en { $part-the }
circuit-length = Longitud { $part-of }
circuit-doubt = Volumen de los soportes, conocido a
circuit-bore = Diámetro interior de las mangueras
circuit-add-mount = Añadir un soporte
circuit-remove = No montado: { $part }
circuit-properties = Cómo funciona
circuit-electric = Parte eléctrica
circuit-layout = Cableado
circuit-coil-low = Bobina sana, desde
circuit-coil-high = Bobina sana, hasta
circuit-fuse = Fusible
circuit-cannot = Eso no se puede cambiar: sin ello el circuito no funcionaría.
circuit-done = Listo

## Antes de empezar

prepare-title = Antes de empezar
prepare-cautions = Lee y marca cada uno
prepare-caution-orange-cables = Los cables naranjas llevan tensión mortal. Nunca los abras ni pinches. Déjalos a personal cualificado.
prepare-caution-engine-starts = El motor puede arrancar solo. Para trabajar con motor parado, aleja la llave del coche.
prepare-caution-moving-parts = Pelo, mangas y cables lejos de correa y ventilador. El ventilador puede girar sin contacto.
prepare-caution-fumes = El escape mata en interiores. Motor en marcha al aire libre o con extracción.
prepare-caution-brake-vacuum = Los frenos comparten este vacío. No muevas el coche con una línea abierta.
prepare-caution-in-gear = Con marcha: conductor en el freno, ruedas calzadas, nadie delante, detrás ni en el vano.
prepare-caution-stop-lines = Para si hueles combustible, cambia el pedal, o hay que subir el coche sin borriquetas.
prepare-caution-burns = Escape, piezas del refrigerante y bridas queman. Nunca abras un tapón caliente.
prepare-caution-service-information = La documentación del fabricante y las normas locales mandan sobre esta aplicación.
prepare-unticked = { $count ->
    [one] Falta marcar un aviso.
   *[other] Falta marcar { $count } avisos.
}
prepare-tools = Herramientas a mano
prepare-tools-hint = Solo se ofrecen pruebas que puedes hacer.
prepare-place = Dónde estás
prepare-place-hint = La altitud decide cuánto vacío permite el aire.
prepare-altitude = Altitud sobre el mar
prepare-ambient = Presión del aire aquí
prepare-ambient-found = Hallada por este móvil
prepare-air = Temperatura del aire
prepare-engine = Motor y personas
prepare-engine-runs = El motor puede funcionar
prepare-second-person = Me ayuda otra persona
prepare-stopped = Motor parado desde hace
prepare-stopped-hint = Déjalo vacío si no lo sabes.
prepare-next = Empezar a probar

## Dónde estamos

overview-title = Dónde estamos

## Una prueba

test-unknown = Esta prueba ya no existe
brief-start = Empezar
brief-unticked = { $count ->
    [one] Marca antes la advertencia.
   *[other] Marca antes las { $count } advertencias.
}
brief-minutes = Unos { $minutes }
question-change = Escribirlo otra vez
question-entered = Esto se escribió
question-when = Escrito: { $when }
question-keep = De verdad marca eso
result-on = Siguiente
result-to-report = Informe
result-redo = Hacerla otra vez
result-do-it = Hacerla ahora
result-correct = Corregir la lectura
result-go-on = Seguir { $seconds }

## Retención

hold-strokes = { $count ->
    [0] Aún sin emboladas
    [one] Una embolada
   *[other] { $count } emboladas
}
hold-stroke = Embolada
hold-unstroke = Una menos
hold-no-strokes = No hay embolada que quitar.
hold-let-go = He soltado
hold-wont-build = No llega
hold-read-first = ¿Qué marcaba al soltar?
hold-read-highest = ¿Cuál fue el máximo?
hold-read-now = Lee ahora el vacuómetro.
hold-reading = Vacuómetro
hold-reading-hint = Arrastra la aguja, o escribe. Valen coma y menos.
hold-read-missing = Pon antes la aguja o escribe la lectura.
hold-not-moved = No se movió: { $reading }
hold-confirm = Esa es la lectura
hold-watch = Manos fuera de la bomba. No toques la manguera.
hold-read-now-early = Leer ya
hold-by-camera = Que mire la cámara
hold-by-eye = Mirar a ojo
hold-watch-camera = Manos fuera. Mantén quieto el móvil: la cámara está mirando.
hold-use-seen = Parar aquí. Usar lo que se vio
hold-camera-lost = La cámara perdió el vacuómetro. Míralo tú desde aquí.
keep-out-of-range = De verdad marca eso
hold-start-again = Empezar de nuevo
hold-resume = Seguir desde donde está
hold-use-what-there-is = Usar lo que hay
hold-interrupted-killed = La aplicación se cerró durante esta prueba.
hold-interrupted-restarted = El móvil se reinició durante esta prueba; su tiempo se perdió.
hold-interrupted-unseen = La cámara no vio la aguja. Más luz ayuda.
hold-kept-nothing = Ya no se bombeaba; no se escribió ninguna lectura.
hold-kept-start = Guardado: { $start } al principio.
hold-kept-reading = Guardado: { $start } al principio, { $reading } tras { $seconds }.
hold-cue-pump = Bombea hasta la banda
hold-cue-first = Pon la aguja como estaba
hold-cue-highest = Pon la lectura máxima
hold-cue-watch = Quedan { $seconds }
hold-cue-read = Lee ahora
hold-cue-interrupted = Interrumpida
amend-start = Al soltar
amend-reading = Tras { $seconds }
amend-highest = Máximo alcanzado
amend-hint = Solo lo que se escribió mal. Los tiempos quedan.
amend-confirm = Así está bien
speak-figure = { $figure }
speak-let-go = Para. Suelta.
speak-read-now = Lee ahora.
speak-seen = Listo. Se ha visto.
speak-start = Corre el tiempo. Lee el vacuómetro.
speak-left = Quedan { $seconds } segundos
speak-end = Listo. { $result }
speak-stop = Interrumpido. Mira el móvil.

## Valores y respuestas

values-reading-hint = Valen coma y menos.
values-confirm = Tomar estas lecturas
values-open = Fuera de rango, sin continuidad
said-yes = Sí
said-no = No
said-not-sure = No estoy seguro
scale-0 = 0: nada
scale-1 = 1: leve
scale-2 = 2: clara
scale-3 = 3: fuerte
look-done = Todo revisado

## Fotos


## Diagnóstico y reparación

finding-title = Diagnóstico
finding-repair-anyway = No es seguro. Reparar igual: { $part }
finding-repair-other = Se reparó otra pieza
repair-title = Reparación: { $part }
repair-which = ¿Qué pieza se reparó?
repair-which-first = Elige antes la pieza.
repair-mind = Qué cuidar
repair-what = Qué se hizo
repair-part = Qué se montó
repair-part-hint = Pieza, número, nueva o usada
repair-torque = Par de apriete
repair-torque-hint = Con su fuente: 55 N·m, fabricante
repair-note = Nota: pieza vieja, quién lo revisó
repair-done = La reparación está hecha
repair-same-test = La misma prueba otra vez
repair-retest-why = Solo la prueba que falló puede mostrar que está reparado.
repair-retest = Repetir: { $test }
repair-complaint-again = Volver a sentir la queja
repair-before = Antes: { $result }
repair-after = Después: { $result }
repair-close = Cerrar el trabajo e informar

## Registro

log-title = Fotos y registro

## Informe

report-title = Informe
report-print = Impresión
report-language = Idioma del informe
report-language-screens = Como en la pantalla
report-parts = Qué incluir
report-part-drawings = dibujos y gráficas
report-part-photos = fotos
report-part-record = registro completo
report-paper = Papel
paper-a4 = A4
paper-letter = Carta
report-business-hint = Tu taller aparece arriba. Ponlo en Ajustes.
report-settings = Ajustes
report-costs-go = Costes
report-approval-go = Decisión del cliente y firma
report-customer = Para el cliente
report-share-readings = Compartir las medidas en una tabla
report-readings-title = Medidas
settings-technician = Tu nombre, como técnico
report-make = Hacer el informe
report-working = Se está haciendo el informe.
report-stop = Parar
report-share = Compartir
report-no-share = Este aparato no puede compartir archivos. El informe queda en el trabajo.
report-file-title = Informe de soportes de motor

## Ajustes

settings-title = Ajustes
settings-shown = Mostrar y hablar
settings-language = Idioma
settings-language-phone = Como en este móvil
settings-units = Unidades
settings-unit-set = Otras unidades
settings-unit-set-metric = Métricas
settings-unit-set-us = Estados Unidos
settings-unit-set-uk = Reino Unido
settings-unit-odometer = Cuentakilómetros
settings-unit-thermometer = Temperatura
settings-unit-tape = Altitudes y mangueras
settings-unit-rule = Holguras y diámetros
settings-shown-unit = Mostrar el vacío en
settings-cues = Durante una retención
settings-speech = Hablar
settings-buzz = Vibrar
settings-large-figures = Cifras tan grandes que se lean a dos metros
settings-script = Lo que dice el móvil durante la retención
settings-script-hint = Escribe tus palabras. Una línea vacía calla en ese momento. Lo que va entre llaves pasa a ser la cifra o el resultado.
settings-script-plain = Decirlo como antes
script-figure = Cifras
script-let-go = Al llegar al objetivo
script-start = Al soltar
script-left = Mientras observas
script-read-now = Cuando se acaba el tiempo
script-seen = Cuando la cámara termina
script-end = Cuando hay resultado
script-stop = Si se interrumpe
settings-gauge = Vacuómetro y bomba manual
settings-gauge-hint = Mira el dial: fondo de escala, rayas, precisión.
settings-gauge-unit = El vacuómetro lee en
settings-gauge-grade = Clase de precisión en el dial
settings-span = Fondo de escala
settings-division = De raya a raya
settings-read-to = Lo lees a
settings-pump = Aire en bomba, vacuómetro y adaptador
settings-stroke = Aire por embolada
settings-identity = Número de serie y calibración
settings-identity-hint = Como SN 204, calibrado en mayo de 2026
settings-meter = Multímetro
settings-percent = Precisión, tanto por ciento de la lectura
settings-counts = Precisión, dígitos
settings-digits = Decimales en el rango de voltios
settings-limit = Cuándo una retención cuenta como fuga
settings-drop = Puede perder
settings-seconds = En este tiempo
settings-confidence = Un diagnóstico cuenta desde
settings-report = En el informe
settings-business = Taller
settings-business-hint = La primera línea es el nombre; debajo, dirección, teléfono y licencia

## Almacenamiento

problem-open = No se pudo abrir el registro. Cierra otras copias de la aplicación y prueba otra vez.
problem-open-not-a-log = El archivo de ahí no es un registro de trabajos. Queda como está.
notice-salvaged = El registro estaba dañado. Lo que se pudo leer está aquí, y el archivo dañado se guardó.
problem-damaged = El registro está dañado. Abre otra vez la aplicación: lo legible se conserva.
problem-entry-too-large = Esta entrada es demasiado larga. Acórtala.

## What the own jobs taught

taught = Lo que enseñaron tus trabajos
taught-nothing = Aún nada: hace falta una reparación probada con buen resultado.
taught-jobs = { $count ->
    [one] De un trabajo cuya reparación se probó con buen resultado:
   *[other] De { $count } trabajos cuya reparación se probó con buen resultado:
}
taught-fault = { $count ->
    [one] { $fault }: una vez
   *[other] { $fault }: { $count } veces
}
taught-forget = Olvidar lo aprendido
