### Pruebas de retención: del aparato, de un tramo, de una sola pieza.
### $target es el vacío hasta el que se bombea, $seconds el tiempo de observación, $limit la caída permitida.

test-hand-pump-title = Prueba la bomba manual sola
test-hand-pump-name = Bomba manual sola
test-hand-pump-why = Un aparato que pierde hace que cada pieza parezca perder.
test-hand-pump-explain = Tapa el adaptador y prueba bomba, vacuómetro y adaptador por sí solos. Lo que pierden se resta de cada resultado posterior.
test-hand-pump-where = En el extremo del adaptador que usarás, tapado.
test-hand-pump-step-1 = Monta el adaptador que usarás y tápalo. ¿Vacuómetro a cero?
test-hand-pump-step-2 = Bombea hasta { $target } y quita la mano de la palanca.
test-hand-pump-step-3 = Mira la aguja { $seconds }. Lee cuando el móvil vibre.
test-hand-pump-means-holds = El aparato retiene: fíate de él.
test-hand-pump-means-slow-leak = Pierde un poco. Los resultados posteriores lo restan.
test-hand-pump-means-leaks = El aparato pierde. Prueba antes otro tapón o adaptador.
test-hand-pump-means-will-not-build = El tapón está fuera, o la bomba está gastada.
test-hand-pump-means-undecided = Demasiado justo. Observar más tiempo lo dirá.

## En general: una pieza sola

test-hold-title = Prueba de retención: { $part }
test-hold-name = Prueba de retención, { $part }
test-hold-why = Solo { $part-the }: o retiene, o es la fuga.
test-hold-explain = Ahora solo { $part-the } está en la bomba. Si la aguja se queda, esta pieza no pierde.
test-hold-where = Solo { $part-the }, sus otras aberturas tapadas.
test-hold-step-1 = Saca { $part-the } de la línea. Tapa sus otras aberturas.
test-hold-step-2 = Mete el adaptador de la bomba, recto y ajustado.
test-hold-step-3 = Bombea hasta { $target }, cuenta las emboladas, suelta la palanca.
test-hold-step-4 = Mira la aguja { $seconds }. Lee cuando el móvil vibre.
test-hold-step-5 = Después deja entrar el aire despacio y monta todo.
test-hold-means-holds = { $part-start } no pierde. Busca en otro sitio.
test-hold-means-slow-leak = Pierde un poco, dentro del límite. Rara vez es la causa.
test-hold-means-leaks = { $part-start } pierde. Es una causa.
test-hold-means-will-not-build = Abierto del todo: una raja, falta un tapón, o boca equivocada.
test-hold-means-undecided = Demasiado justo para este vacuómetro. Observar más tiempo lo dirá.

## Todo tras la válvula

test-hold-branch-title = Prueba de retención: todo tras la válvula
test-hold-branch-name = Prueba de retención, todo tras la válvula
test-hold-branch-why = Un bombeo prueba juntos mangueras, te y soportes.
test-hold-branch-explain = Si la aguja se queda, todas las mangueras y soportes tras la válvula retienen. Si cae, algo de ahí pierde y siguen pruebas sueltas.
test-hold-branch-where = Salida de vacío: la manguera de la salida, quitada en la válvula.
test-hold-branch-step-1 = Gira y saca la manguera de salida de la válvula. ¿Mojada dentro? Para, anótalo.
test-hold-branch-step-2 = Mete el adaptador de la bomba en la manguera, recto y ajustado.
test-hold-branch-step-3 = Bombea hasta { $target }, cuenta las emboladas, suelta la palanca.
test-hold-branch-step-4 = Mira la aguja { $seconds }. Lee cuando el móvil vibre.
test-hold-branch-step-5 = Después deja entrar el aire despacio y pon la manguera.
test-hold-branch-means-holds = Nada pierde tras la válvula. Mira válvula y parte eléctrica.
test-hold-branch-means-slow-leak = Pierde un poco, dentro del límite. Rara vez es la causa.
test-hold-branch-means-leaks = Algo pierde tras la válvula. Ahora las piezas sueltas.
test-hold-branch-means-will-not-build = Una fuga grande: manguera suelta o rajada, o un soporte roto.
test-hold-branch-means-undecided = Demasiado justo para este vacuómetro. Observar más tiempo lo dirá.

## Un soporte

test-hold-mount-title = Prueba de retención: { $part } solo
test-hold-mount-why = Solo { $part-the }: o retiene, o es la fuga.
test-hold-mount-explain = Una membrana agrietada no se ve por fuera. Solo se ve en el vacuómetro.
test-hold-mount-where = La boquilla { $part-of }, o su corto extremo de manguera.
test-hold-mount-step-1 = Fotografía la manguera, luego gírala y sácala { $part-of }.
test-hold-mount-step-2 = Mete el adaptador de la bomba en la boquilla. No la dobles.
test-hold-mount-step-3 = Bombea hasta { $target }, cuenta las emboladas, suelta la palanca.
test-hold-mount-step-4 = Mira la aguja { $seconds }. Lee cuando el móvil vibre.
test-hold-mount-step-5 = Después deja entrar el aire despacio y pon la manguera.
test-hold-mount-means-holds = No pierde. Aún puede estar roto: míralo también.
test-hold-mount-means-slow-leak = Pierde un poco, dentro del límite. Rara vez es la causa.
test-hold-mount-means-leaks = Su membrana o boquilla pierde: este soporte es una causa.
test-hold-mount-means-will-not-build = Su membrana está abierta, o el adaptador asienta mal.
test-hold-mount-means-undecided = Demasiado justo para este vacuómetro. Observar más tiempo lo dirá.

## Una manguera

test-hold-hose-title = Prueba de retención: { $part } sola
test-hold-hose-why = Solo { $part-the }: o retiene, o es la fuga.
test-hold-hose-explain = Prueba la manguera como va en el coche, ambos extremos fuera. Un extremo rajado suele esconderse bajo la abrazadera.
test-hold-hose-where = Extremo cercano { $part-of }, el lejano tapado.
test-hold-hose-step-1 = Numera los dos extremos de la manguera, luego gíralos y sácalos.
test-hold-hose-step-2 = Tapa el extremo lejano. Mete el adaptador en el cercano.
test-hold-hose-step-3 = Bombea hasta { $target }, cuenta las emboladas, suelta la palanca.
test-hold-hose-step-4 = Dobla suave la manguera mientras miras { $seconds }.
test-hold-hose-step-5 = Lee cuando el móvil vibre. Deja entrar aire, monta ambos extremos.
test-hold-hose-means-holds = No pierde. Aún puede estar obstruida: también debe pasar aire.
test-hold-hose-means-slow-leak = Pierde un poco, dentro del límite. Rara vez es la causa.
test-hold-hose-means-leaks = { $part-start } pierde, a menudo en un extremo. Es una causa.
test-hold-hose-means-will-not-build = Está rajada, o su extremo lejano no está tapado.
test-hold-hose-means-undecided = Demasiado justo para este vacuómetro. Observar más tiempo lo dirá.

## Válvula antirretorno y depósito

test-hold-check-valve-title = Prueba de retención: válvula antirretorno
test-hold-check-valve-why = Si deja volver aire, se pierde vacío con el motor parado.
test-hold-check-valve-explain = Solo debe dejar ir el aire hacia el motor. Su flecha apunta a la fuente.
test-hold-check-valve-where = Válvula antirretorno, en el lado opuesto al motor.
test-hold-check-valve-step-1 = Anota su flecha. Quita la manguera del lado opuesto al motor.
test-hold-check-valve-step-2 = Mete el adaptador de la bomba en ese lado.
test-hold-check-valve-step-3 = Bombea hasta { $target }, cuenta las emboladas, suelta la palanca.
test-hold-check-valve-step-4 = Mira la aguja { $seconds }. Lee cuando el móvil vibre.
test-hold-check-valve-step-5 = Después móntala, con la flecha hacia el motor.
test-hold-check-valve-means-holds = La válvula antirretorno cierra.
test-hold-check-valve-means-slow-leak = Deja volver un poco, dentro del límite.
test-hold-check-valve-means-leaks = Deja volver aire: se pierde vacío cuando el motor se esfuerza.
test-hold-check-valve-means-will-not-build = Abierta del todo, o estás en su otro lado.
test-hold-check-valve-means-undecided = Demasiado justo para este vacuómetro. Observar más tiempo lo dirá.
test-hold-restrictor-where = Un extremo del restrictor, el otro tapado. Anota su flecha.
test-hold-reservoir-where = Una boquilla del depósito de vacío, la otra tapada.
test-hold-tee-where = Un brazo de la te, los otros tapados.

## Antes de la válvula

test-hold-inlet-title = Prueba de retención: todo antes de la válvula
test-hold-inlet-name = Prueba de retención, todo antes de la válvula
test-hold-inlet-why = Tras una válvula antirretorno, este ramal debe retener con motor parado.
test-hold-inlet-explain = Un motor parado está abierto al aire. Solo la válvula antirretorno hace que este ramal retenga, así que también se prueba.
test-hold-inlet-where = Entrada de vacío: la manguera a la entrada, quitada en la válvula.
test-hold-inlet-step-1 = Gira y saca la manguera de entrada de la válvula.
test-hold-inlet-step-2 = Mete el adaptador de la bomba en la manguera, recto y ajustado.
test-hold-inlet-step-3 = Bombea hasta { $target }, cuenta las emboladas, suelta la palanca.
test-hold-inlet-step-4 = Mira la aguja { $seconds }. Lee cuando el móvil vibre.
test-hold-inlet-step-5 = Después deja entrar el aire despacio y pon la manguera.
test-hold-inlet-means-holds = Manguera y antirretorno antes de la válvula retienen.
test-hold-inlet-means-slow-leak = Pierde un poco, dentro del límite. Rara vez es la causa.
test-hold-inlet-means-leaks = Pierde manguera, depósito o antirretorno antes de la válvula.
test-hold-inlet-means-will-not-build = Aquí no actúa ninguna antirretorno, o hay una manguera suelta.
test-hold-inlet-means-undecided = Demasiado justo para este vacuómetro. Observar más tiempo lo dirá.

## La entrada de la válvula

test-hold-valve-title = Prueba de retención: electroválvula en reposo
test-hold-valve-name = Prueba de retención, electroválvula en reposo
test-hold-valve-why = Una válvula que pasa en reposo malgasta vacío todo el tiempo.
test-hold-valve-explain = En reposo su entrada debe estar cerrada. Si la aguja cae, su asiento pasa.
test-hold-valve-where = La entrada de la válvula, ambas mangueras fuera, sin corriente.
test-hold-valve-step-1 = Saca las dos mangueras de la válvula. El conector sigue quitado.
test-hold-valve-step-2 = Mete el adaptador de la bomba en la entrada.
test-hold-valve-step-3 = Bombea hasta { $target }, cuenta las emboladas, suelta la palanca.
test-hold-valve-step-4 = Mira la aguja { $seconds }. Lee cuando el móvil vibre.
test-hold-valve-step-5 = Después monta las mangueras como estaban.
test-hold-valve-means-holds = Su asiento cierra. Si abre, lo dice otra prueba.
test-hold-valve-means-slow-leak = Su asiento pasa un poco, dentro del límite.
test-hold-valve-means-leaks = Su asiento pasa en reposo: la válvula es una causa.
test-hold-valve-means-will-not-build = Está abierta, o estás en la boca equivocada.
test-hold-valve-means-undecided = Demasiado justo para este vacuómetro. Observar más tiempo lo dirá.
