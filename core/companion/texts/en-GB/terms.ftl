### British words for the terms that differ from American ones.

-ground = earth
-lift = ramp
