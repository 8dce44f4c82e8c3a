### Fallos como oración sin mayúscula ni punto: «la manguera delantera pierde». $part-the es la pieza con su artículo.
### Se busca fault-<pieza>-<modo>, luego fault-<familia>-<modo>, luego fault-<modo>.

fault-none = nada mal en este circuito
fault-other = una causa fuera de este circuito

## Cualquier pieza

fault-leaks = { $part-the } pierde
fault-blocked = { $part-the } tiene una obstrucción
fault-off = { $part-the } está fuera de su sitio
fault-crossed = { $part-the } tiene la conexión al revés
fault-open = { $part-the } no da continuidad
fault-shorted = { $part-the } tiene un cortocircuito
fault-high-resistance = { $part-the } tiene demasiada resistencia
fault-to-ground = { $part-the } toca { -ground }
fault-to-battery = { $part-the } toca el positivo de batería
fault-dead = { $part-the } no funciona
fault-weak = { $part-the } da poco
fault-loose = { $part-the } tiene holgura
fault-wrong-part = { $part-the } no es la pieza correcta
fault-worn = { $part-the } tiene desgaste
fault-broken = { $part-the } tiene una rotura
fault-unknown = algo va mal en { $part-the }

## Mangueras

fault-hose-leaks = { $part-the } pierde
fault-hose-off = { $part-the } está suelta
fault-hose-blocked = { $part-the } está doblada u obstruida
fault-hose-crossed = { $part-the } está en la boca equivocada
fault-hose-fluid-inside = { $part-the } tiene líquido dentro
fault-hose-loose-end = { $part-the } tiene un extremo flojo y pierde a veces

## Soportes

fault-mount-leaks = { $part-the } pierde vacío
fault-mount-torn = { $part-the } tiene la goma rota
fault-mount-sagged = { $part-the } se ha hundido
fault-mount-fluid-lost = { $part-the } ha perdido su líquido
fault-mount-jammed = { $part-the } está bloqueado por dentro
fault-mount-loose = { $part-the } tiene holgura
fault-mount-blocked = { $part-the } tiene la boquilla obstruida
fault-mount-under-tension = { $part-the } se apretó bajo tensión
fault-mount-wrong-part = { $part-the } no es la pieza correcta

## Lado de vacío

fault-source-weak = { $part-the } da poco vacío
fault-source-dead = { $part-the } no da vacío
fault-source-blocked = { $part-the } tiene la toma obstruida
fault-check-valve-leaks = { $part-the } pierde
fault-check-valve-passes = { $part-the } deja volver el aire
fault-check-valve-stuck-closed = { $part-the } está agarrotada cerrada
fault-check-valve-stuck-open = { $part-the } está agarrotada abierta
fault-check-valve-blocked = { $part-the } está obstruida
fault-check-valve-crossed = { $part-the } está montada al revés
fault-check-valve-reversed = { $part-the } está montada al revés
fault-reservoir-leaks = { $part-the } pierde
fault-tee-leaks = { $part-the } pierde
fault-tee-blocked = { $part-the } está obstruida
fault-restrictor-blocked = { $part-the } está obstruido
fault-bleed-blocked = { $part-the } está obstruida

## Electroválvula

fault-valve-leaks = { $part-the } pierde
fault-valve-passes = { $part-the } pasa en reposo
fault-valve-stuck-closed = { $part-the } está agarrotada cerrada
fault-valve-stuck-open = { $part-the } está agarrotada abierta
fault-valve-vent-leaks = { $part-the } pierde por el respiradero
fault-valve-vent-blocked = { $part-the } tiene el respiradero obstruido
fault-valve-blocked = { $part-the } está obstruida
fault-valve-crossed = las mangueras { $part-of } están cambiadas

## Lado eléctrico

fault-battery-weak = la batería está floja
fault-battery-dead = la batería está descargada
fault-fuse-blown = { $part-the } está fundido
fault-relay-dead = { $part-the } no conmuta
fault-wire-open = { $part-the } está cortado
fault-wire-high-resistance = { $part-the } tiene una mala unión
fault-wire-to-ground = { $part-the } toca { -ground }
fault-wire-to-battery = { $part-the } toca el positivo de batería
fault-wire-shorted = { $part-the } tiene un cortocircuito
fault-connector-open = { $part-the } no hace contacto
fault-connector-high-resistance = { $part-the } está corroído
fault-connector-off = { $part-the } está suelto
fault-connector-crossed = { $part-the } tiene los pines cambiados
fault-coil-open = { $part-the } está cortada
fault-coil-shorted = { $part-the } tiene un cortocircuito
fault-coil-to-ground = { $part-the } toca la carcasa
fault-module-dead = la unidad de control no acciona la válvula
fault-module-always-on = la unidad de control mantiene la válvula encendida
fault-splice-high-resistance = { $part-the } hace mal contacto
fault-ground-point-high-resistance = { $part-the } hace mal contacto

## Aparato de prueba

fault-hand-pump-leaks = la bomba de vacío manual pierde
fault-hand-pump-warming = el aire encerrado se calienta
fault-hand-pump-cooling = el aire encerrado se enfría
fault-hand-pump-settling = la goma todavía se asienta
fault-hand-pump-narrow = una manguera estrecha retrasa el vacuómetro
fault-hand-pump-needle-sticks = la aguja del vacuómetro se atasca
fault-multimeter-dead = el multímetro no muestra nada

## Fuera de este circuito

fault-engine-rough = el motor gira irregular
fault-engine-idle-low = el motor va demasiado bajo al ralentí
fault-strut-worn = la bieleta antipar está gastada
fault-exhaust-touching = el escape toca la carrocería
fault-solid-mount-broken = un soporte sin vacío está roto
fault-drivetrain-other = la transmisión vibra
