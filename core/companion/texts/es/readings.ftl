### Lecturas, caídas de la aguja y sus números en palabras.

yes = sí
no = no

fall-lost = perdió { $drop } en { $seconds }
fall-none = quieta en { $start } durante { $seconds }
fall-gained = subió { $drop } en { $seconds }
fall-never = solo llegó a { $highest }
fall-short = se quedó en { $highest }, debe llegar a { $target }
fall-unusable = leído { $start }, no sirve

reading-hold-later = { $vacuum } tras { $seconds }
reading-hold-trace = { $start }, { $vacuum } tras { $seconds }, { $count } lecturas
reading-strokes = { $strokes-n ->
    [one] { $strokes } embolada
   *[other] { $strokes } emboladas
}
reading-field = { $label }: { $value }
reading-open = fuera de rango, abierto
reading-none = ninguno
reading-nothing = no se leyó nada
reading-samples = grabado durante { $seconds }
reading-look = { $part }: { $state }
reading-look-nothing = nada malo a la vista
look-cracked-phrase = grietas o rajas
look-off-phrase = fuera de su sitio o con holgura
look-oily-phrase = aceite por fuera
look-kinked-phrase = doblez o aplastamiento
look-chafed-phrase = roce que atraviesa
look-corroded-phrase = corrosión
look-wet-inside-phrase = líquido dentro

detail-leak = Fuga { $leak } (95{"\u00A0"}% entre { $low } y { $high }), a 20{"\u00A0"}inHg, 20{"\u00A0"}°C, nivel del mar.
detail-leak-none = Ninguna fuga demostrada: menos de { $high }{"\u00A0"}cm³/min norm. con 95{"\u00A0"}% de certeza, a 20{"\u00A0"}inHg, 20{"\u00A0"}°C, nivel del mar.
detail-limit = Límite { $limit } para { $volume } a prueba, aparato incluido.
detail-hole = Como un agujero de { $hole }.
detail-over-limit = Probabilidad de superar el límite: { $share }.

dial-alt = Vacuómetro en { $reading }. Bombea hasta { $target }.
dial-target = bombea hasta aquí
chart-limit = límite
chart-seconds = segundos
chart-before = antes
chart-after = después
chart-alt = { $test }: { $fall }. Límite { $limit } en { $seconds }.
chart-alt-compared = { $test }: antes de la reparación { $before }, después { $fall }. Límite { $limit } en { $seconds }.
band-reached = Vacío máximo alcanzado
spectrum-on = con vacío
spectrum-off = sin vacío
spectrum-hz = vibraciones por segundo (Hz)
spectrum-alt = { $test }: lo más fuerte con vacío { $on }, sin él { $off }.
spectrum-peak = { $level } a { $hz }

band-expected = esperado
band-alt = { $what }: { $reading }. Esperado { $expected }.
band-alt-open = { $what }: aún sin lectura. Esperado { $expected }.
band-from-to = { $low } a { $high }

connector-seen-from = Visto en la cara abierta del conector del coche
connector-seen-from-wires = Visto por el lado de los cables, conector puesto
connector-seen-valve = Visto en la toma de la propia válvula
connector-ground = { -ground } de carrocería
connector-pin = pin { $number }
connector-power-pin = cable de alimentación
connector-control-pin = cable de mando
connector-ground-pin = cable de { -ground }
lead-red-control-pin = Cable rojo al pin de mando.
lead-red-control-pin-lamp = Cable rojo al pin de mando, lámpara conectada, válvula con mando.
lead-black-ground-pin = Cable negro al pin del cable de { -ground }.
lead-red-pin-1 = Cable rojo al pin 1.
lead-black-pin-2 = Cable negro al pin 2.
lead-red-each-pin = Cable rojo a un pin, luego al otro: ambos son cables de mando.
connector-red-here = cable rojo
connector-black-here = cable negro
connector-alt = Conector: { $red } { $black }
