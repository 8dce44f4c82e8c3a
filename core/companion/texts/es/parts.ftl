### Nombres de las piezas sin artículo. gender: m, f o p (plural).

# Cómo entra un nombre en la frase: con su artículo, tras «de», tras «a».
form-the = { $gender ->
    [f] la
    [p] los
   *[m] el
} { $part }
form-of = { $gender ->
    [f] de la
    [p] de los
   *[m] del
} { $part }
form-to = { $gender ->
    [f] a la
    [p] a los
   *[m] al
} { $part }

part-source = fuente de vacío
    .gender = f
part-check-valve = válvula antirretorno
    .gender = f
part-booster-check-valve = válvula antirretorno del servofreno
    .gender = f
part-reservoir = depósito de vacío
    .gender = m
part-valve = electroválvula
    .gender = f
part-valve-block = bloque de válvulas
    .gender = m
part-inlet-hose = manguera de entrada
    .gender = f
part-feed-hose = manguera de alimentación
    .gender = f
part-pump-hose = manguera de la bomba
    .gender = f
part-outlet-hose = manguera de salida
    .gender = f
part-reservoir-hose = manguera del depósito
    .gender = f
part-branch-hose = manguera tras el restrictor
    .gender = f
part-block-hose = manguera al bloque de válvulas
    .gender = f
part-valve-hose = manguera a la electroválvula
    .gender = f
part-tee = te
    .gender = f
part-feed-tee = te de alimentación
    .gender = f
part-inlet-tee = te antes de la válvula
    .gender = f
part-pump-tee = te de la bomba
    .gender = f
part-front-tee-hose = manguera a la te delantera
    .gender = f
part-rear-tee-hose = manguera a la te trasera
    .gender = f
part-mount-hose = manguera del soporte
    .gender = f
part-mount = soporte de motor
    .gender = m
part-first-chamber = primera cámara del soporte
    .gender = f
part-second-chamber = segunda cámara del soporte
    .gender = f
part-restrictor = restrictor
    .gender = m
part-bleed = purga de aire
    .gender = f
part-brake-booster = servofreno
    .gender = m
part-other-users = ramal de los otros consumidores
    .gender = m
part-battery = batería
    .gender = f
part-fuse = fusible
    .gender = m
part-relay = relé
    .gender = m
part-power-wire = cable de alimentación
    .gender = m
part-splice = empalme
    .gender = m
part-connector = conector
    .gender = m
part-coil = bobina de la electroválvula
    .gender = f
part-control-wire = cable de mando
    .gender = m
part-module = unidad de control
    .gender = f
part-ground-point = punto de { -ground }
    .gender = m
part-hand-pump = bomba de vacío manual
    .gender = f
part-engine = motor
    .gender = m
part-branch = ramal tras la válvula
    .gender = m
part-inlet = ramal antes de la válvula
    .gender = m
part-strut = bieleta antipar
    .gender = f
part-exhaust = escape
    .gender = m
part-solid-mount = soporte sin vacío
    .gender = m
part-drivetrain = transmisión
    .gender = f

part-hose = manguera
    .gender = f
part-chamber = cámara del soporte
    .gender = f

# Una de dos piezas iguales, por su lado; la segunda o tercera, por su número.
side-front = { $gender ->
    [f] delantera
   *[m] delantero
}
side-rear = { $gender ->
    [f] trasera
   *[m] trasero
}
side-left = { $gender ->
    [f] izquierda
   *[m] izquierdo
}
side-right = { $gender ->
    [f] derecha
   *[m] derecho
}
side-first = 1
side-second = 2
part-of-side = { $part } { $side }
part-numbered = { $part } { $number }

# Qué es y qué hace una pieza, en una línea: para quien nunca vio una.
about-source = Donde el motor hace vacío: la admisión o una bomba de vacío.
about-check-valve = Deja salir aire del circuito y no lo deja volver.
about-reservoir = Una bola o bote de plástico que guarda vacío.
about-valve = Una válvula eléctrica. Manda vacío a los soportes o lo suelta.
about-inlet-hose = Entrada de vacío: de la fuente a la válvula.
about-outlet-hose = Salida de vacío: de la válvula hacia los soportes.
about-tee = Divide una manguera en dos.
about-hose = Lleva vacío a un soporte.
about-mount = Goma y aceite entre motor y carrocería. El vacío cambia su blandura.
about-battery = Alimenta todo lo eléctrico.
about-fuse = Protege el cable de alimentación.
about-relay = Conmuta el cable de alimentación.
about-power-wire = Lleva la tensión de batería a la electroválvula.
about-control-wire = Por él la unidad de control acciona la electroválvula.
about-connector = El conector eléctrico de la electroválvula.
about-coil = El bobinado dentro de la electroválvula.
about-module = El ordenador que decide cuándo trabaja la electroválvula.
about-restrictor = Un paso estrecho que frena el aire a propósito.
about-bleed = Un paso estrecho al aire libre, a propósito.
about-ground-point = Donde los cables se atornillan a la carrocería.

# Estados en la inspección visual.
look-ok = Se ve bien
look-cracked = Agrietado o rajado
look-off = Suelto o desconectado
look-oily = Con aceite por fuera
look-kinked = Doblado o aplastado
look-chafed = Roto por roce
look-corroded = Corroído o verde
look-wet-inside = Mojado por dentro
look-hint-hose = Dóblala, mira ambos extremos, palpa bajo las abrazaderas.
look-hint-mount = Busca un borde roto y un rastro húmedo bajo la junta.
look-hint-valve = Mira los extremos de las mangueras y su respiradero.
look-hint-wire = Síguelo con la vista; busca roces y mordeduras.
look-hint-connector = Busca pines verdes, cierre flojo, junta rota.
look-hint-source = Escucha un silbido donde entra la manguera.
look-hint-other = Busca grietas, suciedad y cosas flojas.
