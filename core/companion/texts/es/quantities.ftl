### Números con unidades, enumeraciones.

quantity = { $number }{"\u00A0"}{ $unit }
quantity-percent = { $number }{"\u00A0"}%
unit-rpm = rpm
unit-leak = cm³/min norm.
quantity-times = veces
quantity-over-1000-times = más de 1000{"\u00A0"}veces
quantity-no-number = ningún número
quantity-under-a-minute = menos de 1{"\u00A0"}min
quantity-over-99-percent = más del 99{"\u00A0"}%
quantity-under-1-percent = menos del 1{"\u00A0"}%

list-two = { $first } y { $last }
list-many = { $first } y { $last }
