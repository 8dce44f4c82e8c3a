### British words for the terms that differ from American ones.

-ground = earth
-lift = ramp
-windshield = windscreen
-labor = labour
-labor-start = Labour
