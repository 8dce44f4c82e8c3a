### Zahlen mit Einheiten, Aufzählungen.

quantity = { $number }{"\u00A0"}{ $unit }
quantity-percent = { $number }{"\u00A0"}%
unit-rpm = 1/min
unit-leak = Norm-cm³/min
quantity-times = mal
quantity-over-1000-times = über 1.000{"\u00A0"}mal
quantity-no-number = keine Zahl
quantity-under-a-minute = unter 1{"\u00A0"}min
quantity-over-99-percent = über 99{"\u00A0"}%
quantity-under-1-percent = unter 1{"\u00A0"}%

list-two = { $first } und { $last }
list-many = { $first } und { $last }
