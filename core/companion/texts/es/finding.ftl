### Resumen y dictamen.

overview-subject = { $vehicle } – { $complaint }
overview-minutes = Unos { $minutes }
overview-takes = Lleva { $minutes }
overview-go = Haz esto ahora
overview-look-again = Mira otra vez: { $test }
overview-go-again = Mirar otra vez
overview-open-test = Abrir
overview-to-finding = Ver el diagnóstico
overview-finding = Diagnóstico hasta ahora
overview-log = Registro y fotos
overview-report = Informe

finding-likeliest = Lo más probable hasta ahora: { $cause }.
finding-not-clear = La causa aún no está clara.
finding-nothing-known = Aún no se sabe nada.
finding-part = Causa: { $parts }. Lo más probable: { $cause }.
finding-part-aside = Un fallo, pero no el de la queja: { $parts }. Lo más probable: { $cause }.
finding-tester = La propia bomba manual pierde. Del coche aún no hay nada demostrado.
finding-sound = Estas pruebas no hallaron fallo en este circuito.
finding-explains = Esto explica la queja.
finding-explains-not = No explica la queja: esa tiene otra causa.
finding-explains-no-complaint = No hay queja que explicar.
finding-left-open = Aún posible: { $fault }.
finding-inseparable = Sin separar: { $parts }.
finding-inseparable-more = { $count ->
    [one] Sin separar: { $parts } y una pieza más.
   *[other] Sin separar: { $parts } y { $count } piezas más.
}
finding-test-more = Prueba más: { $test }
finding-report = Hacer el informe

repaired-both = Reparación hecha ({ $part }): la prueba sale bien y la queja ha desaparecido.
repaired-complaint-stays = La prueba sale bien ahora ({ $part }), pero la queja sigue.
repaired-test-only = La prueba sale bien ahora ({ $part }); la queja aún no se ha vuelto a comprobar.
repaired-test = La prueba sale bien ahora: { $part }.
repaired-not = Reparación hecha ({ $part }), pero la misma prueba sigue fallando.
certainty-before = Hallado antes: { $cause } ({ $percent }).
evidence-seen-for = { $seen } { $times } más probable con esta causa.
evidence-seen-against = { $seen } { $times } más probable con otra causa.
certainty-none = Aún no se sabe nada.
certainty-very-sure = Prácticamente seguro: { $percent }.
certainty-sure = Bastante seguro para actuar: { $percent }.
certainty-sure-sound = Bastante seguro para dejar de probar: { $percent }.
certainty-tester = Probabilidad: { $percent }. Séllala o cámbiala, luego prueba otra vez.
certainty-likely = Probable, no seguro: { $percent }. Un diagnóstico cuenta desde { $level }.
certainty-open = Lo más probable hasta ahora, con { $percent }: { $cause }.

what-if-ask = ¿Qué cambiaría cada resultado?
what-if-heading = Qué cambiaría cada resultado
what-if-nothing = Esta prueba no cambiaría nada ahora.
what-if-line = { $chance }: { $outcome } Entonces { $causes }.
what-if-decides = { $chance }: { $outcome } Eso lo aclararía: { $causes }.
what-if-cause = { $cause } ({ $percent })
