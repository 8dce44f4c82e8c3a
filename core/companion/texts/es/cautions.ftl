### Avisos de seguridad, antes del paso al que pertenecen. La palabra de señal viene del catálogo.
### Práctica habitual; las normas locales, los profesionales y la documentación del fabricante mandan.

signal-danger = PELIGRO
signal-warning = ADVERTENCIA
signal-caution = PRECAUCIÓN
signal-notice = AVISO

## Motor parado

caution-engine-may-start = El motor puede arrancar solo: arranque automático, híbrido, arranque remoto. Contacto quitado y llave lejos del coche. El ventilador aún puede girar.
caution-engine-may-start-key-on = Con el contacto puesto, motor y ventilador pueden arrancar solos. Manos, mangas y cables lejos de correa y ventilador.

## Motor en marcha

caution-engine-running = La correa y el ventilador atrapan pelo, mangas, cordones y cables. Mantén todo lejos.
caution-fumes = Los gases de escape matan. Trabaja al aire libre o con extracción.
caution-hot-parts = Escape, piezas del refrigerante y bridas de soportes queman. Nunca abras un tapón de refrigerante caliente.
caution-in-gear = Una persona en el asiento, pie en el freno, freno de mano puesto. Ruedas calzadas, suelo llano, nadie delante ni detrás. Ninguna mano en el vano, nunca sobre { -lift } o gato, menos de 5 segundos.
caution-keep-clear-hoses = Fija la manguera de prueba lejos de correa, ventilador y escape antes de arrancar.
caution-leads-clear = Fija los cables de medida lejos de correa, ventilador y escape antes de arrancar.

## Alrededor del coche

caution-under-the-car = Nunca bajo un coche solo sobre el gato. Usa borriquetas homologadas o un { -lift }.
caution-high-voltage = Cables naranjas: nunca los abras ni pinches. Solo personal cualificado.
caution-airbag-wiring = Cableado de airbag o cinturón cerca: sin lámpara, sin óhmetro, sin desenchufar. Tampoco toques encendido, inyectores ni xenón.
caution-lever-slips = La palanca puede resbalar. Solo madera, lejos de cárter, mangueras y cables, ninguna mano en el hueco.
caution-mount-fluid = El líquido del soporte daña piel y ojos y envenena animales. Recógelo.
caution-gentle-heat = Solo un secador de pelo, ni pistola de calor ni llama. Los vapores de combustible pueden arder.

## Vacío

caution-no-over-vacuum = Nunca más de { $most }: las membranas se rompen.
caution-never-blow = Nunca soples aire en un soporte o válvula. No rocíes limpiador inflamable para buscar fugas.
caution-nipples-snap = Las boquillas de plástico se parten. Gira la manguera, no tires.
caution-keep-arrow = Vuelve a montarla con la flecha en el mismo sentido.
caution-brake-vacuum-open = Los frenos pueden compartir este vacío. No muevas el coche con la línea abierta. Después el pedal debe ceder al arrancar; prueba los frenos a paso de hombre.
caution-not-for-driving = El puenteo es solo para esta prueba al ralentí. Nunca conduzcas con él.

## Electricidad

caution-codes-before-unplugging = Desenchufar crea códigos nuevos. Lee antes los viejos.
caution-no-rings = Sin anillos ni pulseras, ojos protegidos: una batería quema.
caution-jumper-fuse = El fusible del puente, 3–5{"\u00A0"}A, va en el extremo de la batería.
caution-jumper-valve-only = Alimenta la válvula, desenchufada del coche. Nunca el conector del coche: daña la unidad de control.
caution-jumper-polarity = Polaridad correcta: un diodo en la válvula no perdona.
caution-jumper-short-time = Menos de 30 segundos: la bobina se calienta.
caution-meter-current-socket = Cable rojo en la toma V. En la toma A es un cortocircuito.
caution-pins-spread = Solo puntas finas. Una gruesa abre el pin.
caution-nothing-pierced = No pinches cables ni juntas: después se corroen.
caution-lamp-size = Una lámpara de filamento de 2–5{"\u00A0"}W. Una mayor daña la unidad, un LED no carga nada.
caution-ohms-without-power = Nunca midas ohmios en un cable con tensión: contacto quitado, fusible fuera.
caution-fuse-same-rating = El mismo valor, una vez. Si vuelve a fundirse: para y busca el corto.
caution-module-static = Toca chapa desnuda de la carrocería antes de desenchufar la unidad. Contacto quitado cinco minutos.

## Para todo el trabajo

