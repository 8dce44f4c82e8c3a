### De qué se elige: quejas, circuitos, propiedades, herramientas, quién trabaja.

## Quejas. Como se tocan, y como van en una frase.

complaint-question = ¿Qué pasa?
complaint-shake-idle = Vibra al ralentí
complaint-shake-idle-slight = Vibra un poco al ralentí
complaint-shake-idle-gear = Vibra al ralentí con marcha puesta
complaint-harsh-pulling-away = Es brusco al arrancar la marcha
complaint-soft-under-way = El motor se balancea en marcha
complaint-clunk = Golpea al cambiar o al soltar gas
complaint-code-stored = Hay un código guardado
complaint-none = Nada: solo una revisión
complaint-shake-idle-phrase = vibración al ralentí
complaint-shake-idle-slight-phrase = vibración leve al ralentí
complaint-shake-idle-gear-phrase = vibración al ralentí con marcha puesta
complaint-harsh-pulling-away-phrase = brusquedad al arrancar la marcha
complaint-soft-under-way-phrase = un motor que se balancea en marcha
complaint-clunk-phrase = un golpe al cambiar o al soltar gas
complaint-code-stored-phrase = un código guardado
complaint-none-phrase = sin queja, solo una revisión

## Conector eléctrico en el soporte

not-this-job = ¿Un conector eléctrico en el soporte y ninguna manguera? Ese soporte no funciona con vacío. Para aquí.

## Circuitos de vacío

template-one-mount = Un soporte, una válvula
template-two-mounts-one-valve = Dos soportes, una válvula
template-reservoir-on-tee = Dos soportes, una válvula, depósito en una te
template-two-valves-shared-feed = Dos soportes, una válvula para cada uno
template-four-mounts = Cuatro soportes, una válvula
template-pump-with-brake-booster = Bomba de vacío compartida con los frenos
template-two-mounts-open-at-rest = Dos soportes, válvula abierta en reposo
template-two-stage-mount = Un soporte con dos cámaras
template-bled-branch = Un soporte con purga de aire
template-restricted-branch = Dos soportes, restrictor tras la válvula
template-pulsed-mount = Un soporte, válvula pulsada
template-shared-valve-block = Bloque de válvulas compartido con otros consumidores

## Circuitos eléctricos

layout-ignition-fed-ground-switched = Corriente con el contacto, la unidad conmuta { -ground }
layout-relay-fed-ground-switched = Corriente por relé, la unidad conmuta { -ground }
layout-supply-switched = La unidad conmuta el positivo, { -ground } fija
layout-shared-fuse-and-splice = Un fusible y empalme para varios consumidores
layout-pulsed-with-diode = La unidad pulsa la válvula
layout-push-pull = La unidad gobierna los dos pines

## Propiedades de un circuito

property-vacuum-means = El vacío pone los soportes
property-vacuum-means-soft = Blandos, para el ralentí
property-vacuum-means-stiff = Duros, para rodar
property-rest = Válvula sin corriente
property-rest-closed = Cerrada, y deja respirar los soportes
property-rest-open = Abierta, pasa vacío
property-switched = La unidad conmuta
property-switched-ground = El lado de { -ground }
property-switched-supply = El lado del positivo
property-feed = La corriente viene
property-feed-ignition = Con el contacto
property-feed-relay = Por un relé que mantiene la unidad
property-window = La unidad acciona la válvula
property-window-idle = Al ralentí
property-window-idle-in-gear = Al ralentí con marcha
property-source = El vacío viene
property-source-intake = De la admisión del motor
property-source-mechanical-pump = De una bomba en el motor
property-source-electric-pump = De una bomba eléctrica
property-check-valve = Válvula antirretorno cerca de la fuente
property-check-valve-yes = Montada
property-check-valve-no = No montada
property-unknown = No lo sé

window-idle = caliente y un minuto al ralentí
window-idle-in-gear = caliente, ralentí con marcha, freno pisado
window-unknown = caliente, un minuto al ralentí; luego una vez con marcha

## Herramientas

tool-hand-pump = Bomba de vacío manual con vacuómetro
tool-cap = Tapones para mangueras
tool-multimeter = Multímetro
tool-fused-jumper = Puente con fusible, 3–5{"\u00A0"}A en el extremo de batería
tool-lamp = Lámpara de filamento, 2–5{"\u00A0"}W, sin LED
tool-spare-hose = Manguera de vacío de repuesto
tool-code-reader = Lector de códigos
tool-tachometer = Cuentarrevoluciones
tool-wooden-lever = Palanca de madera

## Condiciones previas

need-engine-off = Motor parado
need-engine-idle = Motor caliente al ralentí
need-engine-in-gear = Ralentí con marcha, freno pisado
need-ignition-on = Contacto puesto, motor parado
need-window = Condición de mando cumplida: { $window }
need-second-person = Otra persona en el asiento del conductor
need-connector-on = Conector puesto
need-connector-off = Conector quitado

## Quién trabaja

profile-owner = Propietario
profile-owner-detail = Todo explicado. Nada con marcha puesta.
profile-mechanic = Mecánico
profile-mechanic-detail = Textos cortos. Pruebas con marcha entre dos.

## Por qué no se hace una prueba

cannot-no-access = No llego
cannot-no-tool = Falta la herramienta
cannot-not-safe = Aquí no es seguro
cannot-not-fitted = El coche no lleva esa pieza
cannot-not-now = Ahora no
cannot-not-available = Aquí no se consigue
cannot-why = Otro motivo
cannot-why-missing = Di antes el motivo.
cannot-own-words = No se puede por este motivo
cannot-no-access-reason = no se podía alcanzar
cannot-no-tool-reason = faltaba la herramienta
cannot-not-safe-reason = allí no era seguro
cannot-not-fitted-reason = el vehículo no lleva esa pieza
cannot-not-now-reason = se dejó para después
cannot-not-available-reason = no estaba disponible

## Por qué no se ofrece ahora una prueba

not-offered-hand-pump = Necesita una bomba de vacío manual con vacuómetro.
not-offered-cap = Necesita tapones para mangueras.
not-offered-multimeter = Necesita un multímetro.
not-offered-fused-jumper = Necesita un puente con fusible.
not-offered-lamp = Necesita una lámpara de filamento de 2–5{"\u00A0"}W.
not-offered-spare-hose = Necesita una manguera de vacío de repuesto.
not-offered-code-reader = Necesita un lector de códigos.
not-offered-tachometer = Necesita un cuentarrevoluciones.
not-offered-wooden-lever = Necesita una palanca de madera.
not-offered-alone = Necesita otra persona en el asiento del conductor.
not-offered-engine = Necesita un motor que funcione.
