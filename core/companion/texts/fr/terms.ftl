### Mots qui servent à plusieurs endroits.

-ground = masse
-lift = pont élévateur
