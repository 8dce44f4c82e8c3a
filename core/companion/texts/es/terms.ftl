### Palabras que aparecen en varios sitios.

-ground = masa
-lift = elevador
