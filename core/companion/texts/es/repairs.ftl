### Líneas de reparación: qué hacer y qué cuidar, en orden. Toda reparación acaba con repair-all-N.

fix-replace = cambiar { $part-the }
fix-refit = volver a montar { $part-the }
fix-repair = reparar { $part-the }
fix-clean = limpiar { $part-the }
fix-charge = cargar { $part-the }

repair-hose-1 = Fotografía la manguera vieja en su sitio. Corta la nueva igual de larga.
repair-hose-2 = Usa manguera de vacío de pared gruesa. Diámetro como la boquilla, a menudo 3,2–4{"\u00A0"}mm.
repair-hose-3 = Aceite o vapores de combustible cerca: interior fluorado o de nitrilo, no silicona.
repair-hose-4 = Pasa restrictor, válvula de retardo y antirretorno. La flecha igual que antes.
repair-hose-5 = Moja los extremos con agua, nunca con aceite mineral. Abrazaderas solo donde había.
repair-hose-6 = Lejos del escape y sin bordes. Deja holgura para el movimiento del motor.
repair-hose-7 = ¿Solo un extremo rajado? Corta hasta goma sana si la longitud alcanza.

repair-mount-1 = Sujeta el motor con una barra de soporte, o como diga el fabricante.
repair-mount-2 = Tornillos nuevos donde lo diga el fabricante. Empieza todos a mano.
repair-mount-3 = Mueve y asienta el motor, luego aprieta. El par viene del fabricante.
repair-mount-4 = Anota el par y de dónde viene.
repair-mount-5 = Repón pantalla térmica, trenza de { -ground } y soportes de tubos.
repair-mount-6 = ¿Manguera mojada por dentro? Vacía y seca antes mangueras y válvula.
repair-mount-7 = Compara los otros soportes. Cambia solo lo que falló.

repair-valve-1 = Anota qué manguera va en cada boca. Fotografíalas.
repair-valve-2 = Un filtro de respiradero sucio quizá solo pida limpieza.
repair-valve-3 = Seca los extremos. Gíralos al montar, nunca dobles las boquillas.
repair-valve-4 = Conector limpio, junta en su sitio, cierre encajado.

repair-coil-1 = La bobina viene con la electroválvula: cambia la válvula.
repair-coil-2 = Anota qué manguera va en cada boca. Fotografíalas.
repair-coil-3 = Conector limpio, junta en su sitio, cierre encajado.

repair-check-valve-1 = Anota la flecha antes de sacarla. Apunta a la fuente.
repair-check-valve-2 = Monta la nueva con la flecha en el mismo sentido.
repair-check-valve-3 = ¿Servofreno en esta línea? Arranca: el pedal debe bajar un poco.

repair-reservoir-1 = Vacíalo si tiene líquido, y averigua de dónde vino.
repair-reservoir-2 = Revisa ambas boquillas y la junta antes de montarlo.

repair-tee-1 = Anota qué manguera va en cada brazo.
repair-tee-2 = Mismo diámetro. Mete cada manguera hasta el fondo.

repair-source-1 = Limpia la toma de la admisión si la tapa la carbonilla.
repair-source-2 = Una bomba gastada, o un motor con poco vacío, pide su propio diagnóstico.

repair-wire-1 = Batería desconectada o fusible fuera antes de cortar.
repair-wire-2 = Misma sección. Engasta con manguito estanco, sin soldar.
repair-wire-3 = Encíntalo y sujétalo de nuevo, lejos de bordes y calor.
repair-wire-4 = Mordeduras de roedor: busca la segunda.

repair-connector-1 = Contacto quitado. Limpia los pines con limpiacontactos; deja secar.
repair-connector-2 = Prueba el agarre de cada terminal con un pin igual.
repair-connector-3 = Junta en su sitio, cierre encajado, cables sin tirón.
repair-connector-4 = Pines verdes o flojos: cambia pin y junta, no la válvula.

repair-fuse-1 = El mismo valor, una vez. Nunca mayor.
repair-fuse-2 = Si vuelve a fundirse: para y busca antes el corto.
repair-fuse-3 = Busca el corto con una lámpara en lugar del fusible.

repair-relay-1 = Misma pieza. Otro igual puede sustituirlo para probar.
repair-relay-2 = Busca corrosión en su zócalo.

repair-battery-1 = Cárgala del todo, luego pruébala antes de comprar otra.
repair-battery-2 = Limpia bornes y abrazaderas. Sin anillos, ojos protegidos.

repair-module-1 = Comprueba corriente, { -ground } y cable en la unidad antes de pedir otra.
repair-module-2 = Lee los boletines de servicio: el remedio puede ser software.
repair-module-3 = Una unidad nueva suele pedir codificación en taller.

repair-ground-point-1 = Suéltalo, límpialo a metal vivo, aprieta, protege con grasa.
repair-splice-1 = Corta la unión. Engasta un manguito estanco de la misma sección.
repair-restrictor-1 = Límpialo o cámbialo. Mismo paso, mismo sentido.
repair-bleed-1 = Limpia su paso y su filtro. Nunca la cierres.
repair-hand-pump-1 = Cambia tapón, adaptador o junta. Pruébala tapada antes de la próxima retención.
repair-engine-1 = Diagnostica antes fallos de encendido, mezcla o ralentí.
repair-strut-1 = Cambia la bieleta o su casquillo. Aprieta con el motor asentado.
repair-exhaust-1 = Libéralo: colgante, pantalla o brida. Con el escape frío.
repair-solid-mount-1 = Sujeta el motor. El par viene del fabricante.
repair-drivetrain-1 = Haz revisar semiejes, embrague y volante de inercia.
repair-part-1 = Cambia { $part-the } por la misma pieza. Anota cómo estaba conectada.

repair-all-1 = Repón cada manguera y conector, luego tira de cada uno a mano.
repair-all-2 = Luego la misma prueba otra vez: mismo sitio, vacuómetro, temperatura y marcha.
