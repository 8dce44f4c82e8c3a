### Lo que dice el razonamiento: primero resultados, luego preguntas, motivos, lo que habla a favor y en contra.

## Pruebas de retención

hold-holds = Retiene: perdió { $drop } en { $seconds }. Permitido: { $limit } en { $within }.
hold-slow-leak = Fuga lenta: perdió { $drop } en { $seconds }. Está dentro de { $limit } en { $within }.
hold-leaks = Pierde: perdió { $drop } en { $seconds }. Permitido: { $limit } en { $within }.
hold-undecided = Demasiado justo: perdió { $drop } en { $seconds }. Permitido: { $limit } en { $within }.
hold-will-not-build = No hace vacío: se queda en { $highest }, sin llegar a { $target }.
hold-no-reading = Aún no hay segunda lectura. Mira la aguja y léela otra vez.
hold-no-vacuum = Al principio no había vacío que perder.
hold-above-ambient = { $start } es más de lo que permite el aire aquí: { $most } como mucho. Revisa la unidad.
hold-not-usable = Estas cifras no sirven. Lee el vacuómetro otra vez.
hold-not-in-circuit = Esta pieza no está en el circuito elegido.
hold-go-on = Observa { $seconds } más: eso lo diría.
hold-finer-gauge = Un vacuómetro que se lea a { $step } lo diría.
hold-at-the-limit = Está justo en el límite. Más tiempo tampoco lo diría.
hold-tester-dominates = Casi toda esta pérdida puede ser de la bomba manual. Sella antes el aparato.
hold-leak-in-part = La fuga está aquí: { $part }.
hold-leak-in-one-of = La fuga está en una de { $count } piezas. Pruébalas una a una.
hold-bleed-normal = Este ramal tiene una purga de aire: caer despacio es normal aquí.
hold-strokes-few = Tan pocas emboladas son solo { $volume } de aire. Algo puede estar obstruido.
hold-strokes-many = Muchas más emboladas de las que pide este volumen: una fuga, o más piezas de las pensadas.
hold-readings-scatter = Las lecturas saltan más de lo que explica una fuga. Golpea el vacuómetro y lee otra vez.
hold-start-low = Empezó muy por debajo de { $target }. Bombea más para una respuesta más segura.
hold-tester-taken-off = La pérdida propia de la bomba manual, { $leak }, está restada.
hold-clears-no-torn-mount = Un soporte que retiene aún puede estar roto. Míralo también.
hold-clears-no-blocked-hose = Una manguera obstruida también retiene. Comprueba que pasa aire.
hold-form-hole = La aguja cayó en línea recta: un agujero pequeño.
hold-form-thin-path = La caída se fue frenando: una grieta o un paso fino.
tester-proved = Bomba manual, vacuómetro y adaptador son estancos. Puedes fiarte de los resultados.
tester-fails = El propio aparato pierde. Cambia tapón, adaptador o bomba y prueba otra vez.
tester-not-tested = La bomba manual no se probó sola. Una fuga en ella contaría aquí.

## El conjunto y sus partes

additivity-agrees = Las partes juntas pierden tanto como el conjunto: no falta nada.
additivity-explained = Lo que pierden las piezas probadas explica el conjunto.
additivity-rest = El conjunto pierde { $rest } más que sus piezas probadas. El resto está en { $untested-n ->
    [one] la pieza aún no probada
   *[other] las { $untested } piezas aún no probadas
}.
additivity-rest-in = El conjunto pierde { $rest } más que sus piezas probadas. Eso apunta { $part-to }.
additivity-whole-more = El conjunto pierde { $rest } más que sus piezas sueltas. Mira uniones y adaptador.
additivity-parts-more = Esto contradice la prueba del conjunto: sus partes solas pierden más. Probablemente perdía un adaptador o un tapón.

## Qué hace una fuga en servicio

effect-measured-keeps = A los soportes aún les llegan { $vacuum } de { $source }. Esta fuga apenas importa en servicio.
effect-measured-lacks = A los soportes solo les llegan { $vacuum } de { $source }.
effect-mount-keeps = Al ralentí aún deberían llegar unos { $vacuum } de { $source }. Esta fuga sola apenas importa.
effect-mount-lacks = Al ralentí solo llegarían unos { $vacuum } de { $source }.
effect-idle-changes = Deja entrar un { $share } del aire de ralentí: bastante para alterarlo.
effect-idle-unchanged = Deja entrar un { $share } del aire de ralentí: muy poco para alterarlo.

## Hasta dónde bombear

target-usual = Bombea hasta { $target }, como siempre.
target-usual-sea-level-assumed = Bombea hasta { $target }. Se supone nivel del mar; escribe la altitud si estás alto.
target-thin-air = Bombea solo hasta { $target }: el aire fino de aquí permite { $most } como mucho.
target-short-scale = Bombea hasta { $target }: tu vacuómetro acaba poco más arriba.

## Ojos, oídos, manos

complaint-reproduced = La queja está ahora.
complaint-not-reproduced = La queja no está ahora. Un buen resultado demuestra poco.
complaint-none-felt = Sin queja, y no se nota nada.
codes-none = No hay códigos guardados. Eso no libra a mangueras ni soportes.
codes-mount-circuit = { $count-n ->
    [one] Código guardado { $codes }: nombra
   *[other] Códigos guardados { $codes }: nombran
} el circuito de la electroválvula, no una pieza.
codes-others = { $count-n ->
    [one] Código guardado { $codes }: no trata
   *[other] Códigos guardados { $codes }: no tratan
} de los soportes. Aclara antes la causa.
idle-good = El motor va regular al ralentí a { $rpm }.
idle-rough = El motor gira irregular. Arréglalo primero: vibra también sobre soportes buenos.
idle-hunting = El ralentí sube y baja. Arréglalo primero.
idle-lowish = { $rpm } es algo bajo para un ralentí en caliente.
idle-highish = { $rpm } es algo alto. ¿Está caliente el motor?
idle-low = { $rpm } es demasiado bajo. Un motor tan lento vibra por sí solo.
idle-high = { $rpm } es demasiado alto en caliente. Busca una toma de aire en la admisión.
look-clear = Por fuera cada pieza se ve bien.
look-found = { $count-n ->
    [one] Una pieza se ve mal.
   *[other] { $count } piezas se ven mal.
}
look-found-cracked = { $part-start } tiene grietas o rajas.
look-found-off = { $part-start } está fuera de su sitio o con holgura.
look-found-oily = { $part-start } tiene aceite por fuera.
look-found-kinked = { $part-start } tiene un doblez o aplastamiento.
look-found-chafed = { $part-start } tiene un roce que lo atraviesa.
look-found-corroded = { $part-start } tiene corrosión.
look-found-wet-inside = { $part-start } tiene líquido dentro: de un soporte, o aceite.
mount-looks-good = { $part-start } no muestra roturas. Eso no demuestra que trabaje.
mount-torn = { $part-start } está roto: la goma se ha separado del metal.
mount-wet = { $part-start } pierde su líquido: mojado bajo su propia junta.
mount-sagged = { $part-start } está { $sag } más bajo que su pareja: se ha hundido.
mount-sags-a-little = { $part-start } está { $sag } más bajo. Puede ser normal.
mount-moves-well = { $part-start } se mueve sin golpe: la goma está unida.
mount-clunks = { $part-start } golpea al hacer palanca.
mount-gap-opens = Se abre un hueco al hacer palanca: { $part-the } está roto.
wiggle-steady = Mover { $part-the } no cambia nada.
wiggle-jumps = La lectura salta al mover { $part-the }: el fallo está ahí.

## Vacío en servicio

source-good = La fuente da { $vacuum }. Esperado: { $low } a { $high }.
source-high = La fuente da { $vacuum }, incluso más de { $high }. Es suficiente.
source-felt = La fuente tira fuerte. Un vacuómetro diría cuánto.
source-none = No hay vacío en la fuente: { $vacuum }.
source-not-felt = Apenas tira la fuente.
source-unsteady = La aguja oscila en torno a { $vacuum }: eso apunta al motor, no a las mangueras.
source-lowish = { $vacuum } es algo poco. Esperado: { $low } a { $high }.
source-low = Solo { $vacuum } en la fuente. Esperado: { $low } a { $high }.
source-low-throttle-free = Los motores sin mariposa hacen poco vacío y usan una bomba. Mira cuál es este.
delivered-good = Llegan { $vacuum } a los soportes; se esperaban unos { $source }.
delivered-none = No llega vacío: { $vacuum }.
delivered-slow = Llegan { $vacuum }, pero solo tras { $seconds }. Algo estrecha el paso.
delivered-uncalled = Llegan { $vacuum } aunque la unidad no debería pedirlo.
delivered-low = Solo llegan { $vacuum } a los soportes; se esperaban unos { $source }.
delivered-bleed = Llegan { $vacuum }. Menos que en la fuente es normal con una purga de aire.
delivered-pulsed = Llegan { $vacuum }. Una válvula pulsada da un valor medio; esto solo no lo dice.
delivered-compare-source = Mide también la fuente: su vacío es solo supuesto.
switch-over-good = El vacío se va en { $seconds }. Válvula, respiradero y mando trabajan.
switch-over-slowish = El vacío se va en { $seconds }, algo lento. Esperado: { $within }.
switch-over-slow = El vacío tarda { $seconds } en irse. Esperado: { $within }. Respiradero o manguera estrechos.
switch-over-stays = El vacío se queda: { $rests } tras { $seconds }.
switch-over-stays-partly = Parte del vacío se queda: { $rests } tras { $seconds }.
switch-over-nothing-to-leave = No había vacío que se fuera. Esto aún no dice nada.
flow-free = Pasa aire por { $part-the }.
flow-blocked = { $part-start } no deja pasar aire: un doblez, fundida u obstruida.
bypass-changes = Con vacío directo del motor los soportes responden: mira válvula y cableado.
bypass-changes-though-delivered = Los soportes responden, y antes llegaba vacío: un fallo que viene y va.
bypass-no-change = Ni con vacío directo cambia nada: soportes, mangueras o una causa fuera.
command-window-not-met = La unidad no acciona la válvula en este estado. Así que no cuenta contra ella.
command-window-unknown = No se sabe cuándo acciona la unidad la válvula. Así que no cuenta contra ella.

## Válvula a mano

valve-off-good = En reposo la electroválvula hace lo que debe.
valve-off-passes = En reposo la electroválvula deja pasar vacío.
valve-off-shut = En reposo la electroválvula debería pasar, y está cerrada.
valve-off-no-vent = En reposo la electroválvula no deja respirar los soportes: respiradero obstruido.
valve-off-vents = La electroválvula pierde por el respiradero mientras pasa.
valve-off-vent-not-tried = El respiradero no se probó. Uno obstruido quedaría oculto.
valve-on-good = Con el puente la electroválvula conmuta. Mira su cableado.
valve-on-dead = Con el puente la electroválvula no hace nada, ni un clic.
valve-on-clicks-only = La electroválvula hace clic, pero nada cambia: agarrotada u obstruida.
valve-on-stuck = Con el puente la electroválvula no conmuta.
valve-on-no-click = Conmutó sin un clic audible. Prueba otra vez.
valve-on-vents = Con corriente, la electroválvula pierde por el respiradero.
valve-on-no-vent = Con corriente, la electroválvula no deja respirar los soportes.

## Corriente

supply-volts-one = Llega corriente: { $volts } en un pin, batería { $battery }.
supply-volts-bias = { $volts } en el otro pin vienen de la unidad: normal en muchas.
supply-volts-load-follows = Sin carga se puede ocultar una mala unión. Mide también con carga.
supply-volts-none-normal = Sin corriente con el motor parado es normal aquí: la unidad alimenta la válvula.
supply-volts-none-commanded = Sin corriente al ralentí. Muchas unidades no la dan con el conector quitado.
supply-volts-always-on = { $volts } aunque la unidad no debería alimentar nada ahora.
supply-volts-both-normal = Los dos pines a { $volts }: normal con este circuito.
supply-volts-both = Los dos pines a tensión de batería, { $volts }. Con el conector quitado es raro.
supply-volts-low = Solo { $volts } en el conector, batería { $battery }.
supply-volts-relay-off = Aún sin corriente: un relé puede haberse abierto. Mide otra vez al ralentí.
supply-volts-none = Sin corriente en el conector: { $volts }, batería { $battery }.
supply-volts-other-layouts = En algunos circuitos esto es normal. Mide otra vez al ralentí.
supply-loaded-good = { $volts } con carga, batería { $battery }: el cable de alimentación aguanta.
supply-loaded-above-battery = { $volts } es más de lo que tiene la batería. Mide ambas otra vez.
supply-loaded-marginal = { $volts } con carga, { $drop } bajo la batería: algo mucho.
supply-loaded-low = Solo { $volts } con carga, { $drop } bajo la batería: se hunde.
supply-loaded-hidden-joint = Sin carga parecía bien. Unos { $ohms } están en una unión o cable.
fuse-good = { $in } antes y { $out } después del fusible: conduce.
fuse-blown = El fusible está fundido: { $in } antes, { $out } después.
fuse-open = El fusible está fundido: sin continuidad entre patas.
fuse-find-the-cause = Averigua por qué se fundió antes de poner otro del mismo valor.
fuse-ohms-good = El fusible conduce: { $ohms }.
fuse-ohms-high = { $ohms } en el fusible es algo mucho. Limpia sus patas y mide otra vez.
fuse-ohms-bad = { $ohms } en el fusible: él o su zócalo está mal.
fuse-no-feed = Sin corriente antes del fusible: { $in }, batería { $battery }.
fuse-no-feed-relay = Sin corriente antes del fusible. Un relé puede haberse abierto: mide al ralentí.
fuse-low-feed = Solo { $in } antes del fusible, batería { $battery }.
fuse-one-side = { $in } antes del fusible. Mide también su otro punto.
fuse-loses = { $in } antes y { $out } después: el fusible o su zócalo pierde tensión.
power-wire-good = El cable de alimentación conduce: { $ohms } sin los cables de medida.
power-wire-open = El cable de alimentación está cortado: sin continuidad.
power-wire-marginal = { $ohms } en el cable de alimentación es algo mucho.
power-wire-high = { $ohms } en el cable de alimentación es demasiado.
power-wire-drop = El cable de alimentación pierde { $drop } con carga.
power-wire-drop-marginal = El cable de alimentación pierde { $drop } con carga: algo mucho.
wire-one-strand = Un último hilo también da pocos ohmios. Decide una prueba con carga.
wire-under-load = Con la válvula encendida quedarían unos { $left }: { $drop } perdidos.
battery-charge-first = La batería solo tiene { $volts }. Cárgala primero.

## Mando

valve-volts-good = La válvula recibe { $volts }, batería { $battery }. Mira la propia válvula.
valve-volts-none = La válvula no recibe tensión cuando debería: { $volts }.
valve-volts-low = La válvula solo recibe { $volts }, batería { $battery }.
valve-volts-hidden-joint = Con el conector quitado parecía bien: una mala unión se ve con carga.
valve-volts-maybe-pulsed = Un valor medio también puede ser una válvula pulsada. Lo dice una lámpara u osciloscopio.
valve-volts-open-good = { $volts } con el conector quitado: la unidad manda.
valve-volts-open-none = { $volts } con el conector quitado. Muchas unidades callan entonces.
valve-volts-connect = Mide otra vez con el conector puesto: eso decide.
control-pin-good = La unidad conmuta: { $off } sin mando, { $on } con mando.
control-pin-off-good = { $off } con la válvula apagada, como debe ser. Mide ahora encendida.
control-pin-off-odd = { $off } con la válvula apagada es raro. Mide encendida.
control-pin-always-low = El pin de mando sigue bajo: { $off }. Cable a { -ground }, o sin corriente por la bobina.
control-pin-always-on = El pin de mando sigue activo: { $off } cuando debería estar apagado.
control-pin-no-change = Nada cambia: { $off } sin mando, { $on } con mando. La unidad no lo conmuta.
control-pin-weak = { $off } sin mando, { $on } con mando: conmuta, pero débil.
control-pin-pulsed = { $off } sin mando, { $on } con mando: una válvula pulsada, con mando.
control-pin-maybe-pulsed = Un valor medio también puede ser una válvula pulsada. Lo dice una lámpara u osciloscopio.
power-wire-to-ground = El cable de alimentación toca { -ground }: funde cada fusible nuevo.
power-wire-ground-not-tried = No se midió si toca { -ground }.
control-wire-good = El cable de mando conduce: { $ohms } sin los cables de medida.
control-wire-open = El cable de mando está cortado: sin continuidad.
control-wire-to-ground = El cable de mando toca { -ground }: la válvula está siempre encendida.
control-wire-to-battery = El cable de mando toca el positivo de batería.
control-wire-marginal = { $ohms } en el cable de mando es algo mucho.
control-wire-high = { $ohms } en el cable de mando es demasiado.
control-wire-ground-not-tried = No se midió si toca { -ground }.
coil-good = La bobina está entera: { $ohms }. Esperado: { $low } a { $high }.
coil-hot-too = Algunas bobinas solo se abren en caliente. Mide también así si el fallo viene en caliente.
coil-open = La bobina está abierta: sin continuidad.
coil-to-case = La bobina toca la carcasa de la válvula.
coil-shorted = La bobina está en corto: { $ohms }. Esperado: { $low } a { $high }.
coil-near-band = { $ohms } está justo fuera de { $low } a { $high }. La bobina aún puede estar bien.
coil-low = { $ohms } es demasiado bajo. Esperado: { $low } a { $high }.
coil-high = { $ohms } es demasiado alto. Esperado: { $low } a { $high }.
prove-meter-good = Multímetro y cables están bien: { $ohms } con los cables juntos.
prove-meter-leads-open = Cables juntos y sin continuidad: un cable o el fusible del aparato está roto.
prove-meter-leads-high = { $ohms } con los cables juntos es demasiado. Límpialos o cámbialos.
prove-meter-lamp = La lámpara de prueba no luce en la batería: su filamento está roto.
prove-meter-no-battery = { $volts } en la batería no puede ser. Revisa rango, tomas y cables.

## Vibración

shake-works = La vibración cambia { $times } con vacío: los soportes responden.
shake-felt-works = Vibración { $on } con vacío, { $off } sin él: los soportes responden.
shake-wrong-way = La vibración cambia { $times }, pero al revés. ¿Mangueras cambiadas?
shake-felt-wrong-way = Vibración { $on } con vacío, { $off } sin él: al revés. ¿Mangueras cambiadas?
shake-small-effect = La vibración solo cambia { $times }. Eso no lo dice.
shake-no-effect = El vacío no cambia la vibración: { $times }.
shake-felt-no-effect = Vibración { $on } con vacío, { $off } sin él: sin cambio.
shake-strong-either-way = Vibración fuerte con y sin vacío. Aquí acaba la escala: un cambio no se vería.
shake-none-either-way = Sin vibración con ni sin vacío. No hay nada que comparar.
shake-move-the-phone = O el móvil está donde no vibra. Prueba otro sitio.
shake-nothing-recorded = No se grabó nada. Pon el móvil sobre metal y prueba otra vez.
shake-one-side = Solo hay un lado. Siéntelo con vacío y sin él.
shake-too-short = Demasiado corto. Graba al menos { $seconds }.
shake-engine-rough = El motor gira irregular: eso también vibra.

## No hecho

not-done = No hecha: { $reason }.
not-available = Aquí no disponible.
answer-does-not-fit = Esta respuesta no encaja con la prueba. Escríbela otra vez.

## Lecturas que apenas pueden ser: qué es raro, luego el desliz probable

odd-above-ambient = { $vacuum } es más de lo que permite el aire aquí: { $most } como mucho.
odd-far-below-target = { $vacuum } está muy por debajo de { $target }, y aun así seguiste.
odd-needle-rises = El vacío subió { $rise } sin que nadie bombeara.
odd-negative-volts = { $volts } está bajo cero.
odd-many-volts = { $volts } es más de lo que tiene un coche.
odd-battery-low = { $volts } es muy poco para una batería que acaba de mover el coche.
odd-above-battery = { $volts } es más que los { $battery } de la batería.
odd-negative-ohms = { $ohms } está bajo cero.
odd-few-ohms = { $ohms } es casi nada para una bobina.
odd-many-ohms = { $ohms } es muchísimo para esto.
odd-rpm = { $rpm } no es un régimen de ralentí.
odd-contradicts = Esto contradice { $count-n ->
    [one] otra lectura
   *[other] otras { $count } lecturas
}.
likely-other-scale = Quizá leíste la escala { $likely } en vez de { $unit }.
likely-other-unit = Quizá la cifra está en { $likely }, no en { $unit }.
likely-typing = Quizá un error al escribir.
likely-still-pumped = Quizá alguien aún bombeaba, o el vacuómetro se atascó. Dale un golpecito.
likely-leads-swapped = Quizá los cables rojo y negro están cambiados.
likely-millivolts = Quizá el multímetro muestra milivoltios: { $volts }.
likely-ac-range = Quizá el multímetro está en AC.
likely-bad-contact = Quizá un cable no toca metal desnudo.
likely-other-engine-state = Quizá el motor funcionaba en una y no en la otra.
likely-live-wire = Quizá el cable tenía tensión. Quita el contacto y mide.
likely-kiloohms = Quizá el multímetro muestra kΩ: { $ohms }.
likely-milliohms = Quizá el multímetro muestra mΩ: { $ohms }.
likely-open = Quizá no hay continuidad: toca entonces «abierto».
likely-dial-factor = Quizá el dial cuenta en decenas, centenas o millares: { $rpm }.
likely-not-idling = Quizá el motor no estaba al ralentí.
likely-other-place = Quizá otro sitio, pin o estado del coche.

## Por qué ahora esta prueba, por qué parar

why-textbook = La siguiente según el manual, unos { $minutes }.
why-settles = { $count-n ->
    [one] Aclara cerca del { $share } de la duda que queda; faltan unos { $finding } para el resultado.
   *[other] Aclara cerca del { $share } de la duda entre { $count } causas; faltan unos { $finding } para el resultado.
}
why-ends = { $count-n ->
    [one] Termina la búsqueda con una probabilidad del { $chance }.
   *[other] Decide entre { $count } causas con una probabilidad del { $chance }.
}
why-odd = Esta lectura no casa con las demás: un descuido con una probabilidad de { $chance }. Mira otra vez antes de basarte en ella.
why-leans = El resultado se apoya en esta lectura. Mírala otra vez antes de culpar a una pieza.
why-proves = Muestra que el propio aparato está bien antes de culpar a una pieza.
why-mends = Probablemente falle el propio aparato. Arréglalo o cámbialo y compruébalo aquí: en cuanto esté bien, lo medido antes con él ya no cuenta.
why-again = Otra vez, montado de nuevo: una mala junta o un extremo suelto pueden engañar en una sola prueba. El resultado está a unos { $finding }.
stop-sound = Todas las pruebas encajan con un circuito sano, { $sure } seguro.
stop-outside = La causa está fuera de este circuito, { $sure } seguro.
stop-found = { $sure } seguro: más pruebas no cambiarían qué reparar.
stop-found-unexplained = { $sure } seguro, pero no explica la queja. Ninguna prueba que queda lo haría.
stop-tester = El propio aparato es lo más sospechoso. Pruébalo o cámbialo primero.
stop-nothing-left = Ninguna prueba restante diría lo bastante como para compensar su tiempo. La primera causa está en { $sure }.
stop-inseparable = Es improbable que una prueba restante separe las causas principales. La más probable está en { $sure }.

## Lo que habla a favor y en contra

evidence-for = { $test }: { $outcome }. Encaja { $times } mejor con esta causa que con las otras.
evidence-against = { $test }: { $outcome }. Encaja { $times } mejor con las otras causas.
outcome-holds = retiene
outcome-slow-leak = fuga lenta
outcome-leaks = pierde
outcome-will-not-build = no hace vacío
outcome-undecided = sin decidir
outcome-as-expected = como se esperaba
outcome-not-as-expected = no como se esperaba
outcome-not-done = no hecha
