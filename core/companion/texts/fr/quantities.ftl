### Nombres avec unités, énumérations.

quantity = { $number }{"\u00A0"}{ $unit }
quantity-percent = { $number }{"\u00A0"}%
unit-rpm = tr/min
unit-leak = cm³/min norm.
quantity-times = fois
quantity-over-1000-times = plus de 1000{"\u00A0"}fois
quantity-no-number = aucun nombre
quantity-under-a-minute = moins d’1{"\u00A0"}min
quantity-over-99-percent = plus de 99{"\u00A0"}%
quantity-under-1-percent = moins de 1{"\u00A0"}%

list-two = { $first } et { $last }
list-many = { $first } et { $last }
