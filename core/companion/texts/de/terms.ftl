### Wörter, die an mehreren Stellen stehen.

-ground = Masse
-lift = Hebebühne
