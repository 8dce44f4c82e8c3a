### Pruebas con multímetro. Los colores de los cables van en palabras, voltios DC, conectores por su cuerpo.

-by-body = Presiona el cierre y saca el conector por su cuerpo, no por los cables.
-dc = Voltios DC, no AC. Rango 20{"\u00A0"}V o automático.
-ohms-range = Ohmios, rango menor o automático. Nunca en un cable con tensión.
-black-on-ground = Cable negro a { -ground } de carrocería: metal desnudo, no pintura.

## El propio multímetro

test-prove-meter-title = Comprueba el multímetro
test-prove-meter-name = Multímetro comprobado
test-prove-meter-why = Un rango equivocado o una pila gastada estropea cada lectura posterior.
test-prove-meter-explain = Mide dos cosas que conoces: los cables tocándose y la batería. Luego puedes fiarte del aparato.
test-prove-meter-where = Cables entre sí, luego en los bornes de la batería.
test-prove-meter-step-1 = Cable negro en COM, rojo en V y ohmios. Nunca en A.
test-prove-meter-step-2 = Pon ohmios. Junta los cables y lee.
test-prove-meter-step-3 = Pon voltios DC. Rojo al positivo de batería, negro al negativo. Prueba también la lámpara.
test-prove-meter-means-as-expected = El multímetro y los cables están bien.
test-prove-meter-means-not-as-expected = Cables, tomas o pila del aparato: arréglalo primero.
test-prove-meter-lead-red = Cable rojo al positivo de batería.
test-prove-meter-lead-black = Cable negro al negativo de batería.
test-prove-meter-hint = Primero ohmios con los cables juntos, luego voltios DC, no AC.
test-prove-meter-field-ohms = Cables juntos
test-prove-meter-field-ohms-read = cables { $value }
test-prove-meter-field-battery = Tensión de batería
test-prove-meter-field-battery-read = batería { $value }
test-prove-meter-field-lamp = ¿Luce la lámpara de prueba en la batería?
test-prove-meter-field-lamp-yes = la lámpara luce
test-prove-meter-field-lamp-no = la lámpara no luce

## Corriente en el conector

test-supply-volts-title = ¿Hay corriente en el conector?
test-supply-volts-name = Corriente en el conector
test-supply-volts-why = Dos lecturas separan corriente, cableado y tipo de circuito.
test-supply-volts-explain = Con el conector quitado, cada pin muestra lo que manda el coche. Qué pin debe dar batería depende del circuito.
test-supply-volts-where = El conector del coche, sacado de la válvula: mira su cara abierta.
test-supply-volts-step-1 = Contacto quitado. { -by-body }
test-supply-volts-step-2 = { -black-on-ground } Cable rojo listo.
test-supply-volts-step-3 = { $engine ->
    [off] Contacto puesto, motor parado. Sin llave: no pises el freno.
   *[idle] Arranca el motor y déjalo al ralentí.
}
test-supply-volts-step-4 = Cable rojo al pin 1, luego al pin 2. Toca, no empujes.
test-supply-volts-step-5 = Mide también la batería, en sus bornes.
test-supply-volts-means-as-expected = Llega corriente, sin carga. Falta una prueba con carga.
test-supply-volts-means-not-as-expected = Sin corriente: primero el fusible, luego el cable de alimentación.
test-supply-volts-lead-red = Cable rojo al pin 1, luego al pin 2.
test-supply-volts-lead-black = Cable negro a { -ground } de carrocería.
test-supply-volts-hint = { -dc }
test-supply-volts-field-pin1 = Pin 1 a { -ground } de carrocería
test-supply-volts-field-pin1-read = pin 1 { $value }
test-supply-volts-field-pin2 = Pin 2 a { -ground } de carrocería
test-supply-volts-field-pin2-read = pin 2 { $value }
test-supply-volts-field-battery = Batería ahora
test-supply-volts-field-battery-read = batería { $value }

test-supply-loaded-title = ¿Aguanta la corriente con carga?
test-supply-loaded-name = Corriente con carga
test-supply-loaded-why = Una unión corroída muestra toda la tensión hasta que pasa corriente.
test-supply-loaded-explain = Una lámpara pequeña consume como la válvula. Una mala unión cede con ella, y la tensión cae.
test-supply-loaded-where = El pin de alimentación en el conector del coche, lámpara como carga.
test-supply-loaded-step-1 = { $engine ->
    [off] Conector quitado, contacto puesto, motor parado. { -black-on-ground }
   *[idle] Conector quitado, motor al ralentí. { -black-on-ground }
}
test-supply-loaded-step-2 = Une una lámpara de 2–5{"\u00A0"}W del pin de alimentación a { -ground } de carrocería.
test-supply-loaded-step-3 = Cable rojo al pin de alimentación, junto al de la lámpara.
test-supply-loaded-step-4 = Lee con la lámpara encendida. Luego mide la batería.
test-supply-loaded-means-as-expected = El cable de alimentación aguanta la carga.
test-supply-loaded-means-not-as-expected = Se hunde con carga: una unión o el cable está mal.
test-supply-loaded-lead-red = Cable rojo al pin de alimentación, lámpara conectada.
test-supply-loaded-lead-black = Cable negro a { -ground } de carrocería.
test-supply-loaded-hint = { -dc } Una lámpara de 2–5{"\u00A0"}W, sin LED.
test-supply-loaded-field-pin1 = Pin de alimentación, lámpara encendida
test-supply-loaded-field-pin1-read = pin de alimentación { $value }
test-supply-loaded-field-battery = Batería ahora
test-supply-loaded-field-battery-read = batería { $value }

## Fusible y cable de alimentación

test-fuse-title = Mide el fusible
test-fuse-name = Fusible
test-fuse-why = Sin corriente en el conector: el fusible es la causa más barata.
test-fuse-explain = Un fusible puede parecer entero y estar abierto. Mide los dos puntos pequeños de su dorso.
test-fuse-where = El fusible de la válvula en la caja. Su sitio está en la documentación del fabricante.
test-fuse-step-1 = Contacto puesto, motor parado. { -black-on-ground }
test-fuse-step-2 = Cable rojo a un punto de medida del fusible, luego al otro.
test-fuse-step-3 = O bien: contacto quitado, fusible fuera, mide ohmios entre sus patas.
test-fuse-means-as-expected = El fusible conduce. Mide ahora el cable de alimentación.
test-fuse-means-not-as-expected = El fusible está fundido. Averigua por qué antes de poner otro.
test-fuse-lead-red = Cable rojo a un punto de medida del fusible, luego al otro.
test-fuse-lead-black = Cable negro a { -ground } de carrocería.
test-fuse-hint = { -dc } Con el fusible fuera: ohmios.
test-fuse-field-in-v = Punto con más voltios
test-fuse-field-in-v-read = antes { $value }
test-fuse-field-out-v = El otro punto
test-fuse-field-out-v-read = después { $value }
test-fuse-field-ohms = O fusible fuera: entre patas
test-fuse-field-ohms-read = entre patas { $value }

test-power-wire-title = Mide el cable de alimentación
test-power-wire-name = Cable de alimentación
test-power-wire-why = El fusible está bien y no llega corriente: el cable está en medio.
test-power-wire-explain = El cable va del fusible al conector. Roces, roedores y corrosión están donde dobla o pasa por metal.
test-power-wire-where = De la salida del fusible al pin de alimentación del conector.
test-power-wire-step-1 = Contacto quitado, fusible fuera, conector quitado. Pon ohmios.
test-power-wire-step-2 = Junta los cables de medida y anota la lectura.
test-power-wire-step-3 = Un cable a la salida del zócalo, otro al pin de alimentación.
test-power-wire-step-4 = Mueve el cable a lo largo mientras lees.
test-power-wire-step-5 = Deja un cable en el pin de alimentación, el otro a { -ground }: ¿abierto?
test-power-wire-means-as-expected = El cable conduce con poca corriente. Decide una prueba con carga.
test-power-wire-means-not-as-expected = El cable está cortado, corroído, o toca { -ground }.
test-power-wire-lead-red = Cable rojo a la salida del zócalo del fusible.
test-power-wire-lead-black = Cable negro al pin de alimentación; al final, rojo a { -ground } de carrocería.
test-power-wire-hint = { -ohms-range } Resta los ohmios de los cables de medida.
test-power-wire-field-ohms = Fusible a conector
test-power-wire-field-ohms-read = { $value }
test-power-wire-field-drop-v = O pérdida en él, lámpara encendida
test-power-wire-field-drop-v-read = pierde { $value }
test-power-wire-field-to-ground-open = Pin de alimentación a { -ground } de carrocería: ¿abierto?
test-power-wire-field-to-ground-open-yes = abierto a { -ground }
test-power-wire-field-to-ground-open-no = da ohmios a { -ground }

## Mando

test-valve-volts-title = ¿Recibe la válvula su tensión?
test-valve-volts-name = Tensión en la válvula
test-valve-volts-why = Es lo que ve la propia válvula cuando debe trabajar.
test-valve-volts-explain = La unidad acciona la válvula solo en su condición de mando. Cero voltios fuera de ella no dice nada. Con el conector quitado una unidad sana puede callar; decide la lectura conectada.
test-valve-volts-where = Entre los dos pines de la válvula, conector puesto, por el lado de los cables.
test-valve-volts-step-1 = Contacto quitado. Conector fuera. Cables a los dos pines del conector del coche.
test-valve-volts-step-2 = Arranca el motor. Cumple la condición de mando: { $window }. Lee.
test-valve-volts-step-3 = Motor parado. Conector puesto. Mete puntas finas por el lado de los cables.
test-valve-volts-step-4 = Arranca el motor, cumple la condición, lee otra vez.
test-valve-volts-step-5 = Mide también la batería, en sus bornes.
test-valve-volts-means-as-expected = La válvula recibe mando: mira la propia válvula.
test-valve-volts-means-not-as-expected = No recibe mando. Solo cuenta si se cumplió la condición.
test-valve-volts-lead-red = Cable rojo al pin de alimentación.
test-valve-volts-lead-black = Cable negro al pin de mando.
test-valve-volts-hint = { -dc } Un valor medio estable indica válvula pulsada.
test-valve-volts-field-volts = Los dos pines, conector quitado
test-valve-volts-field-volts-read = conector quitado { $value }
test-valve-volts-field-plugged-v = Los dos pines, conectado
test-valve-volts-field-plugged-v-read = conectado { $value }
test-valve-volts-field-battery = Batería ahora
test-valve-volts-field-battery-read = batería { $value }

test-control-pin-title = ¿Conmuta la unidad el pin de mando?
test-control-pin-name = Pin de mando
test-control-pin-why = La lectura conectada y con carga decide entre unidad, cable y válvula.
test-control-pin-explain = La unidad acciona la válvula llevando este pin a { -ground }, o alimentándolo. La tensión debe cambiar cuando llega el mando.
test-control-pin-where = El pin de mando, conector puesto, por el lado de los cables.
test-control-pin-step-1 = { -black-on-ground } Llévalo lejos de correa y ventilador.
test-control-pin-step-2 = Conector puesto. Mete una punta fina por el lado de los cables.
test-control-pin-step-3 = Arranca el motor. Lee mientras la válvula no tiene mando.
test-control-pin-step-4 = Cumple la condición de mando: { $window }. Lee otra vez.
test-control-pin-means-as-expected = La unidad conmuta. Mira la válvula.
test-control-pin-means-not-as-expected = Sin cambio: cable de mando, unidad, o no se cumplió la condición.
test-control-pin-lead-red = Cable rojo al pin de mando, conector puesto.
test-control-pin-lead-black = Cable negro a { -ground } de carrocería.
test-control-pin-hint = { -dc }
test-control-pin-field-off-v = Válvula sin mando
test-control-pin-field-off-v-read = sin mando { $value }
test-control-pin-field-on-v = Válvula con mando
test-control-pin-field-on-v-read = con mando { $value }
test-control-pin-field-battery = Batería ahora
test-control-pin-field-battery-read = batería { $value }

test-control-wire-title = Mide el cable de mando
test-control-wire-name = Cable de mando
test-control-wire-why = No llega mando: el cable va antes que la unidad.
test-control-wire-explain = Una unidad cuesta más que un cable y falla pocas veces. Comprueba primero el cable.
test-control-wire-where = Del pin de mando del conector al pin de la unidad.
test-control-wire-step-1 = Contacto quitado cinco minutos. Cables juntos: anota los ohmios.
test-control-wire-step-2 = Quita el conector de la válvula y el de la unidad, por su cuerpo.
test-control-wire-step-3 = Mide ohmios del pin de mando al pin de la unidad.
test-control-wire-step-4 = Mide del pin de mando a { -ground } de carrocería: ¿abierto?
test-control-wire-step-5 = Mide del pin de mando al positivo de batería: ¿abierto?
test-control-wire-means-as-expected = El cable está entero: quedan la unidad o sus entradas.
test-control-wire-means-not-as-expected = El cable está cortado, o toca { -ground }.
test-control-wire-lead-red = Cable rojo al pin de mando del conector.
test-control-wire-lead-black = Cable negro al pin de la unidad, luego a { -ground } de carrocería.
test-control-wire-hint = { -ohms-range } No abras los pines.
test-control-wire-field-ohms = Conector a unidad
test-control-wire-field-ohms-read = { $value }
test-control-wire-field-to-ground-open = Pin de mando a { -ground } de carrocería: ¿abierto?
test-control-wire-field-to-ground-open-yes = abierto a { -ground }
test-control-wire-field-to-ground-open-no = da ohmios a { -ground }
test-control-wire-field-to-battery-open = Pin de mando al positivo de batería: ¿abierto?
test-control-wire-field-to-battery-open-yes = abierto al positivo
test-control-wire-field-to-battery-open-no = da ohmios al positivo

## Bobina

test-coil-title = Mide la bobina de la válvula
test-coil-name = Bobina de la válvula
test-coil-why = Una bobina abierta nunca mueve la válvula, la gobierne quien la gobierne.
test-coil-explain = La bobina es un hilo largo y fino. Sus ohmios dicen si está entera. Algunas bobinas solo se abren en caliente.
test-coil-where = Los dos pines de la propia válvula, conector quitado.
test-coil-step-1 = Contacto quitado. { -by-body }
test-coil-step-2 = Pon ohmios. Un cable en cada pin de la válvula. Lee.
test-coil-step-3 = Un cable en un pin, otro en la carcasa metálica de la válvula.
test-coil-means-as-expected = La bobina está entera a esta temperatura.
test-coil-means-not-as-expected = Abierta o en corto: la válvula es una causa.
test-coil-lead-red = Cable rojo a un pin de la válvula.
test-coil-lead-black = Cable negro a su otro pin, luego a su carcasa.
test-coil-hint = { -ohms-range }
test-coil-field-ohms = Ohmios en la válvula
test-coil-field-ohms-read = { $value }
test-coil-field-to-case-open = Pin a la carcasa: ¿abierto?
test-coil-field-to-case-open-yes = sin contacto con la carcasa
test-coil-field-to-case-open-no = da ohmios a la carcasa

## Estado del coche junto a una lectura, y lo que comparten muchos campos

state-connected = conector
state-connected-yes = puesto
state-connected-no = quitado
state-engine = motor
state-engine-off = parado
state-engine-idle = al ralentí
state-engine-in-gear = ralentí con marcha
state-hot = válvula y motor
state-hot-yes = calientes
state-hot-no = fríos
state-otherwise = El coche está de otro modo
vibration-record = { $what }: grabar { $seconds }
vibration-recording = { $what }: grabando. ¿Otra vez?
vibration-kept = { $what }: { $seconds } grabados
vibration-kept-word = Grabado
vibration-not-recorded = No se grabó nada. Deja el móvil quieto y prueba otra vez.
