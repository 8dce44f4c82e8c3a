### Numbers with units, and lists.

quantity = { $number }{"\u00A0"}{ $unit }
quantity-percent = { $number }{"\u00A0"}%
unit-rpm = rpm
unit-leak = std cm³/min
quantity-times = times
quantity-over-1000-times = over 1,000{"\u00A0"}times
quantity-no-number = no number
quantity-under-a-minute = under 1{"\u00A0"}min
quantity-over-99-percent = over 99{"\u00A0"}%
quantity-under-1-percent = under 1{"\u00A0"}%

list-two = { $first } and { $last }
list-many = { $first } and { $last }
