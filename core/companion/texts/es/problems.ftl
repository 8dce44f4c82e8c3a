### Qué va mal y qué hacer. Junto a un campo, o arriba en la pantalla.

## Una cifra escrita

problem-number-empty = Escribe un número.
problem-number-none = Eso no es un número. Escribe cifras, como 6,5.
problem-number-not-finite = Ningún instrumento muestra ese número.
problem-range = De { $low } a { $high }.
problem-range-above = Demasiado alto. Escribe de { $low } a { $high }.
problem-range-below = Demasiado bajo. Escribe de { $low } a { $high }.
problem-missing = Aún falta: { $what }.

## VIN y matrícula

vin-fits = El dígito de control encaja.
vin-length = Un VIN tiene 17 caracteres; estos son { $count }.
vin-character = Un VIN nunca lleva { $character }. Busca 1 o 0.
vin-differs = El dígito de control es { $there }, encajaría { $expected }. Mira otra vez. Fuera de Norteamérica puede ser correcto.

## Almacenamiento

problem-open-newer = Este registro lo escribió la versión { $version }, más nueva que esta aplicación. Queda como está. Instala la nueva.
problem-folder = No se puede crear la carpeta de datos. Libera espacio y prueba otra vez.
problem-full = El móvil está lleno. No se perdió nada; este último paso no se guardó. Libera espacio.
problem-read-only = El móvil no deja escribir a esta aplicación. No se perdió nada; este último paso no se guardó.
problem-store = No se puede escribir el registro. Lo guardado sigue ahí. Prueba otra vez.
problem-session = No se pudo guardar dónde estabas. Tus lecturas están a salvo.
problem-entry-from-newer = De una versión más nueva de la aplicación: guardado, no mostrado.

## Fotos

problem-photo-damaged = Esta imagen está cortada o dañada. Hazla otra vez.
problem-photo-type = Esto no es una imagen JPEG, PNG o WebP, y el teléfono tampoco la puede leer.
problem-photo-missing = Falta el archivo de la foto. Su entrada se conserva.

## Informes

problem-report = No se pudo hacer el informe. El trabajo está a salvo. Prueba otra vez.
problem-report-no-space = No hay sitio para el informe. Libera espacio y prueba otra vez.

## Interrumpido

problem-gap = El móvil durmió { $seconds }. Cuentan menos lecturas; el tiempo es correcto.
