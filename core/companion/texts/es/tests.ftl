### Pruebas con ojos, manos, vacuómetro o motor en marcha. Retención: holds.ftl. Multímetro: electric.ftl.
### Frases cortas. $part es la pieza a prueba.

## Queja

test-complaint-title = Siente tú mismo la queja
test-complaint-name = Queja percibida
test-complaint-why = Lo que hoy no aparece, hoy no se puede demostrar.
test-complaint-explain = Siente la queja con el cliente antes de tocar nada. Cuándo viene y cuándo se va ya dice mucho.
test-complaint-where = En el asiento del conductor, coche parado.
test-complaint-step-1 = Calienta el motor. Coche en llano, freno de mano puesto.
test-complaint-step-2 = Déjalo al ralentí en punto muerto o P. Palpa volante, asiento y suelo.
test-complaint-step-3 = Enciende luces y aire acondicionado. Anota cuándo vibra.
test-complaint-means-as-expected = La queja está: cada cambio se podrá notar.
test-complaint-means-not-as-expected = Ahora no está. Una prueba buena demuestra poco.
test-complaint-field-present = ¿Está la queja ahora?
test-complaint-field-present-yes = la noto ahora
test-complaint-field-present-no = no la noto ahora
test-complaint-look-1 = Palpa volante, asiento y suelo.
test-complaint-look-2 = Mira el retrovisor: la vibración lo emborrona.

## Códigos

test-codes-title = Lee los códigos guardados
test-codes-name = Códigos guardados
test-codes-why = Desenchufar un conector después crea códigos nuevos. Lee antes los viejos.
test-codes-explain = Un código nombra un circuito eléctrico, no una pieza rota. Sin códigos no quedan libres ni mangueras ni soportes.
test-codes-where = Toma de diagnóstico, normalmente bajo el salpicadero.
test-codes-step-1 = Conecta el lector antes de desenchufar otra cosa.
test-codes-step-2 = Contacto puesto, motor parado. Sin llave: no pises el freno.
test-codes-step-3 = Apunta cada código con sus datos congelados. No borres nada aún.
test-codes-means-as-expected = Ningún código de la electroválvula: mira primero el vacío.
test-codes-means-not-as-expected = Un código de la electroválvula: su parte eléctrica sube.
test-codes-field-list = Códigos, uno tras otro
test-codes-field-list-read = { $value }
test-codes-field-list-hint = Por ejemplo P0A14. Déjalo vacío si no hay ninguno.

## Ralentí

test-idle-quality-title = Descarta el propio motor
test-idle-quality-name = Ralentí del motor
test-idle-quality-why = Un motor irregular vibra también sobre soportes perfectos.
test-idle-quality-explain = Si el motor falla u oscila, arregla eso primero. Las pruebas de soportes dicen poco hasta que gire fino.
test-idle-quality-where = Cuentarrevoluciones del cuadro o lector de códigos.
test-idle-quality-step-1 = Arranca y calienta el motor. Luces, ventilador y aire apagados.
test-idle-quality-step-2 = Observa las revoluciones medio minuto.
test-idle-quality-step-3 = Escucha fallos en el tubo de escape. Mantente apartado.
test-idle-quality-means-as-expected = El motor gira fino: sigue con los soportes.
test-idle-quality-means-not-as-expected = El motor gira irregular: arréglalo antes de juzgar soportes.
test-idle-quality-field-rpm = Régimen del motor
test-idle-quality-field-rpm-read = { $value }
test-idle-quality-field-steady = ¿Se mantiene estable el régimen?
test-idle-quality-field-steady-yes = régimen estable
test-idle-quality-field-steady-no = sube y baja
test-idle-quality-field-rough = ¿Gira irregular o falla?
test-idle-quality-field-rough-yes = irregular, o falla un tiempo
test-idle-quality-field-rough-no = suave y regular

## Inspección visual

test-look-title = Revisa el circuito con la vista
test-look-name = Inspección visual
test-look-why = Mirar es gratis y descubre una manguera suelta.
test-look-explain = Sigue el circuito pieza a pieza. Marca lo que ves; deja lo demás como está.
test-look-where = A lo largo de mangueras, electroválvula, conector y soportes.
test-look-step-1 = Sigue cada manguera con la mano. Dóblala y mira ambos extremos.
test-look-step-2 = Busca aceite, roces, zonas fundidas y pantallas térmicas ausentes.
test-look-step-3 = Busca escape, bandeja o tubo que toquen la carrocería.
test-look-step-4 = Fotografía lo que se ve mal antes de moverlo.
test-look-means-as-expected = Nada malo a la vista. Solo descarta una manguera suelta.
test-look-means-not-as-expected = Algo se ve. Una prueba lo confirma antes de comprar piezas.

## Soportes a ojo y con palanca

test-mount-look-title = Mira { $part-the }
test-mount-look-name = { $part } a ojo
test-mount-look-why = Un soporte roto puede retener vacío y estar acabado.
test-mount-look-explain = Las grietas finas en la piel de la goma son edad. Un hueco entre goma y metal es avería. A menudo gotea aceite de arriba; límpialo y mira otra vez.
test-mount-look-where = { $part-start }, con lámpara desde arriba o abajo.
test-mount-look-step-1 = Ilumina { $part-the } todo alrededor. Mira donde la goma toca el metal.
test-mount-look-step-2 = Limpia bajo la junta. Busca un rastro húmedo reciente.
test-mount-look-step-3 = Compara su altura con la de su pareja.
test-mount-look-means-as-expected = Ni rotura, ni líquido, ni hundimiento a la vista.
test-mount-look-means-not-as-expected = Roto, mojado o hundido: ese soporte no trabaja.
test-mount-look-field-torn = ¿Se ha separado la goma del metal?
test-mount-look-field-torn-yes = rota o separada
test-mount-look-field-torn-no = goma entera
test-mount-look-field-wet = ¿Hay líquido bajo la junta?
test-mount-look-field-wet-yes = mojado bajo la junta
test-mount-look-field-wet-no = seco
test-mount-look-field-sag-mm = Más bajo que su pareja en
test-mount-look-field-sag-mm-read = { $value } más bajo

test-mount-move-title = Haz palanca en { $part-the }
test-mount-move-name = { $part } con palanca
test-mount-move-why = Una rotura se abre al mover el motor.
test-mount-move-explain = Compara con el otro soporte: ambos ceden poco por igual y frenan suave.
test-mount-move-where = { $part-start }, con una palanca de madera al lado.
test-mount-move-step-1 = Pon una palanca de madera entre un punto firme y el soporte del motor.
test-mount-move-step-2 = Empuja suave, nunca contra el cárter. Mira la goma.
test-mount-move-step-3 = Haz lo mismo en su pareja y compara.
test-mount-move-means-as-expected = Se mueve como su pareja: la goma está unida.
test-mount-move-means-not-as-expected = Golpea o se abre: la goma se ha separado.
test-mount-move-field-clunk = ¿Oyes o notas un golpe?
test-mount-move-field-clunk-yes = un golpe, metal con metal
test-mount-move-field-clunk-no = ningún golpe
test-mount-move-field-gap-opens = ¿Se abre un hueco en la goma?
test-mount-move-field-gap-opens-yes = se abre un hueco
test-mount-move-field-gap-opens-no = no se abre

## Vacío con el motor en marcha

test-delivered-title = ¿Llega vacío a los soportes?
test-delivered-name = Vacío en los soportes
test-delivered-why = Una lectura en servicio absuelve o acusa a toda la alimentación.
test-delivered-explain = El motor hace vacío y la válvula lo pasa al ralentí. Con un vacuómetro en la línea ves lo que reciben de verdad los soportes.
test-delivered-where = Una te con el vacuómetro en la manguera de salida de la válvula.
test-delivered-step-1 = Motor parado. Pon el vacuómetro con una te en la manguera de salida.
test-delivered-step-2 = Lleva su manguera lejos de correa, ventilador y escape. Arranca el motor.
test-delivered-step-3 = Espera a que la unidad accione la válvula: { $window }.
test-delivered-step-4 = Lee el vacuómetro. Anota los segundos hasta que se paró.
test-delivered-means-as-expected = Llega todo el vacío: fuente, válvula y cableado trabajan al ralentí.
test-delivered-means-not-as-expected = Llega poco: busca antes del punto de medida, o una fuga grande.
test-delivered-field-gauge = Vacío en el vacuómetro
test-delivered-field-gauge-read = { $value }
test-delivered-field-seconds = Hasta que la aguja se paró
test-delivered-field-seconds-read = tras { $value }

test-switch-over-title = ¿Se va otra vez el vacío?
test-switch-over-name = Salida del vacío
test-switch-over-why = El vacuómetro sigue puesto, y un cambio demuestra el mando.
test-switch-over-explain = La unidad suelta el vacío cuando el coche va a rodar. Si queda, los soportes siguen en estado de ralentí.
test-switch-over-where = El mismo vacuómetro en la salida de la válvula.
test-switch-over-step-1 = Deja el vacuómetro puesto. Sube el motor a unas 2000{"\u00A0"}rpm.
test-switch-over-step-2 = Cuenta los segundos hasta que la aguja descanse.
test-switch-over-step-3 = Lee dónde descansa. Luego vuelve al ralentí.
test-switch-over-means-as-expected = El vacío se va a tiempo: válvula, respiradero y mando trabajan.
test-switch-over-means-not-as-expected = Se queda o tarda: válvula, respiradero o un mando que no acaba.
test-switch-over-field-seconds = Hasta que la aguja descansó
test-switch-over-field-seconds-read = en reposo tras { $value }
test-switch-over-field-gauge = Dónde descansa
test-switch-over-field-gauge-read = en { $value }

test-bypass-title = Alimenta los soportes directo del motor
test-bypass-name = Vacío directo a los soportes
test-bypass-why = Si la vibración cambia ahora, los soportes están bien.
test-bypass-explain = Una manguera de repuesto saca válvula y cableado de la duda. Es para probar al ralentí, nunca para conducir.
test-bypass-where = Manguera de repuesto desde la fuente de vacío a la manguera de salida.
test-bypass-step-1 = Motor parado. Quita la manguera de salida de la válvula. Tapa la boca.
test-bypass-step-2 = Une fuente y manguera de salida con la de repuesto. Arranca el motor.
test-bypass-step-3 = Pinza la manguera de repuesto y suéltala. Nota el cambio.
test-bypass-step-4 = Motor parado. Devuelve cada manguera a su sitio.
test-bypass-means-as-expected = La vibración cambia: soportes bien, fallo en válvula o cableado.
test-bypass-means-not-as-expected = Sin cambio: mangueras, soportes o una causa fuera del circuito.
test-bypass-field-changes = ¿Cambia la vibración con vacío?
test-bypass-field-changes-yes = la vibración cambia
test-bypass-field-changes-no = la vibración sigue
test-bypass-look-1 = Palpa el carril del asiento y el volante.
test-bypass-look-2 = Compara con la manguera pinzada y abierta, tres veces.

test-source-title = ¿Hay vacío en la fuente?
test-source-name = Vacío en la fuente
test-source-why = Sin vacío en la válvula nada detrás puede trabajar.
test-source-explain = Al ralentí la manguera de la válvula debe tirar fuerte. La altitud reduce lo posible, y el límite aquí lo tiene en cuenta.
test-source-where = Entrada de vacío: la manguera quitada de la entrada de la válvula.
test-source-step-1 = Motor parado. Gira y saca la manguera de entrada de la válvula.
test-source-step-2 = Pon el vacuómetro en la manguera, o un dedo. Arranca el motor.
test-source-step-3 = Ralentí en punto muerto o P. Lee cuando la aguja esté quieta.
test-source-step-4 = Motor parado. Vuelve a poner la manguera en la válvula.
test-source-means-as-expected = La fuente está bien. Mira válvula, cableado y lo que sigue.
test-source-means-not-as-expected = Poco vacío: motor, válvula antirretorno, manguera u otro consumidor.
test-source-field-gauge = Vacío en el vacuómetro
test-source-field-gauge-read = { $value }
test-source-field-steady = ¿Está quieta la aguja?
test-source-field-steady-yes = aguja quieta
test-source-field-steady-no = aguja que tiembla u oscila
test-source-field-felt = Sin vacuómetro: ¿tira la manguera del dedo?
test-source-field-felt-yes = tira fuerte
test-source-field-felt-no = apenas tira

test-flow-title = ¿Está libre { $part-the }?
test-flow-name = Aire por { $part-the }
test-flow-why = Una manguera doblada u obstruida pasa toda prueba de retención.
test-flow-explain = Una manguera obstruida parece estanca en el vacuómetro. Solo el aire en movimiento muestra si está abierta.
test-flow-where = { $part-start }, extremo lejano abierto.
test-flow-step-1 = Quita los dos extremos { $part-of }.
test-flow-step-2 = Bomba manual en un extremo, el otro abierto. Da cinco emboladas.
test-flow-step-3 = Dobla la manguera como va en el coche. Bombea otra vez.
test-flow-means-as-expected = Pasa el aire: la manguera está libre.
test-flow-means-not-as-expected = La aguja se queda arriba: manguera doblada, fundida u obstruida.
test-flow-field-free = ¿Pasa libre el aire?
test-flow-field-free-yes = la aguja cae al instante
test-flow-field-free-no = la aguja sube y se queda
test-flow-look-1 = Una manguera libre nunca deja subir la aguja.

## Válvula a mano

test-valve-off-title = Válvula en reposo
test-valve-off-name = Válvula en reposo
test-valve-off-why = Una válvula que pasa en reposo deja los soportes en un solo estado.
test-valve-off-explain = Sin corriente la válvula debe { $rest ->
    [open] pasar vacío a los soportes
   *[closed] no pasar nada y dejar respirar los soportes
}. La bomba manual muestra ambas cosas.
test-valve-off-where = La electroválvula: bomba manual en la entrada, salida abierta.
test-valve-off-step-1 = Quita el conector por su cuerpo. Saca las dos mangueras de la válvula.
test-valve-off-step-2 = Bomba manual en la entrada, la otra boca abierta. Bombea.
test-valve-off-step-3 = Bomba manual en la salida. Bombea: ¿respira?
test-valve-off-step-4 = Déjalo así para la prueba con corriente, o monta todo.
test-valve-off-means-as-expected = En reposo la válvula hace lo que debe.
test-valve-off-means-not-as-expected = La válvula pasa o no respira: está agarrotada, o su respiradero obstruido.
test-valve-off-field-passes = ¿Pasa vacío de la entrada a la salida?
test-valve-off-field-passes-yes = pasa vacío
test-valve-off-field-passes-no = no pasa nada
test-valve-off-field-vents = ¿Respira la salida al aire libre?
test-valve-off-field-vents-yes = la salida respira
test-valve-off-field-vents-no = la salida está cerrada

test-valve-on-title = Válvula con corriente
test-valve-on-name = Válvula con corriente
test-valve-on-why = La batería directa a la válvula saca de la duda el cableado.
test-valve-on-explain = Un puente con fusible alimenta la propia válvula, desenchufada del coche. Oyes un clic y el paso cambia.
test-valve-on-where = Los dos pines de la propia válvula, conector quitado.
test-valve-on-step-1 = Deja quitado el conector del coche. Bomba manual en la entrada.
test-valve-on-step-2 = Une el puente al positivo de batería, el fusible en ese extremo.
test-valve-on-step-3 = Toca los pines de la válvula, polaridad correcta, menos de 30 segundos.
test-valve-on-step-4 = Escucha el clic. Bombea mientras y mira la aguja.
test-valve-on-step-5 = Quita primero el puente de la batería. Monta todo.
test-valve-on-means-as-expected = La válvula conmuta y pasa: mira su cableado.
test-valve-on-means-not-as-expected = No conmuta o no pasa: la válvula está averiada.
test-valve-on-field-passes = Con corriente: ¿pasa vacío de la entrada a la salida?
test-valve-on-field-passes-yes = pasa vacío
test-valve-on-field-passes-no = no pasa nada
test-valve-on-field-clicks = ¿Hace clic?
test-valve-on-field-clicks-yes = hace clic
test-valve-on-field-clicks-no = no hace clic
test-valve-on-field-vents = Con corriente: ¿pierde por el respiradero?
test-valve-on-field-vents-yes = silba aire en el respiradero
test-valve-on-field-vents-no = el respiradero está cerrado

## Vibración

test-shake-title = Vibración con y sin vacío
test-shake-name = Vibración, con y sin vacío
test-shake-why = Los soportes sanos cambian la vibración cuando se va el vacío.
test-shake-explain = Juzga ambos estados en el mismo sitio, marcha y régimen. Solo cuenta la diferencia.
test-shake-where = Carril del asiento o volante, siempre el mismo punto.
test-shake-step-1 = Ralentí en caliente. Con vacío, da a la vibración de 0 a 3.
test-shake-step-2 = Motor parado. Quita la manguera de salida y tapa ambos extremos.
test-shake-step-3 = Ralentí otra vez, mismo régimen. Da a la vibración de 0 a 3.
test-shake-step-4 = Motor parado. Vuelve a poner la manguera.
test-shake-means-as-expected = La vibración cambia: los soportes responden al vacío.
test-shake-means-not-as-expected = Sin cambio: el vacío no les llega, o no responden.
test-shake-mount-title = Vibración con vacío solo en { $part-the }
test-shake-mount-name = Vibración, solo { $part-the }
test-shake-mount-why = Un soporte con la bomba manual muestra si ese responde.
test-shake-mount-explain = La bomba manual acciona un soporte con el motor al ralentí. El otro queda como está.
test-shake-mount-where = Bomba manual en { $part-the }, su manguera fuera del vano.
test-shake-mount-step-1 = Motor parado. Quita la manguera { $part-of } y tápala.
test-shake-mount-step-2 = Une la bomba manual con una manguera larga. Ralentí en caliente.
test-shake-mount-step-3 = Bombea hasta { $target }. Da a la vibración de 0 a 3.
test-shake-mount-step-4 = Deja entrar el aire. Da otra vez a la vibración de 0 a 3.
test-shake-mount-step-5 = Motor parado. Vuelve a poner la manguera.
test-shake-mount-means-as-expected = { $part-start } responde al vacío.
test-shake-mount-means-not-as-expected = { $part-start } no responde, aunque le llega vacío.
test-shake-field-on-0-3 = Vibración con vacío
test-shake-field-on-0-3-read = con vacío { $value }
test-shake-field-off-0-3 = Vibración sin vacío
test-shake-field-off-0-3-read = sin vacío { $value }
test-shake-scale-0 = 0 – ninguna
test-shake-scale-1 = 1 – apenas se nota
test-shake-scale-2 = 2 – se nota claro
test-shake-scale-3 = 3 – fuerte, traquetea

## Mover

test-wiggle-title = Mueve { $part-the } y observa
test-wiggle-name = { $part } en movimiento
test-wiggle-why = Un fallo que viene y va se ve al mover las cosas.
test-wiggle-explain = Deja puesto el vacuómetro o el multímetro y mueve una cosa cada vez. Una lectura que salta muestra el sitio.
test-wiggle-where = { $part-start }, con el vacuómetro o multímetro a la vista.
test-wiggle-step-1 = Deja el vacuómetro o multímetro donde estaba en la última prueba.
test-wiggle-step-2 = Tira y dobla suave { $part-the }. Calienta con secador de pelo.
test-wiggle-step-3 = Mira la lectura todo el tiempo.
test-wiggle-means-as-expected = La lectura se mantiene: ni falso contacto ni grieta aquí.
test-wiggle-means-not-as-expected = La lectura salta: el fallo está en { $part-the }.
test-wiggle-field-steady = ¿Se mantiene la lectura?
test-wiggle-field-steady-yes = la lectura se mantiene
test-wiggle-field-steady-no = la lectura salta
test-wiggle-look-1 = Mueve una cosa cada vez, y despacio.
