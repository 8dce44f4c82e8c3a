### Noms des pièces sans article. gender : m, f ou p (pluriel) ; elides = yes devant une voyelle.

# Comment un nom entre dans la phrase : avec son article, après « de », après « à ».
form-the = { $elides ->
    [yes] l’{ $part }
   *[no] { $gender ->
        [f] la { $part }
        [p] les { $part }
       *[m] le { $part }
    }
}
form-of = { $elides ->
    [yes] de l’{ $part }
   *[no] { $gender ->
        [f] de la { $part }
        [p] des { $part }
       *[m] du { $part }
    }
}
form-to = { $elides ->
    [yes] à l’{ $part }
   *[no] { $gender ->
        [f] à la { $part }
        [p] aux { $part }
       *[m] au { $part }
    }
}

part-source = source de dépression
    .gender = f
part-check-valve = clapet anti-retour
    .gender = m
part-booster-check-valve = clapet anti-retour du servofrein
    .gender = m
part-reservoir = réservoir de dépression
    .gender = m
part-valve = électrovanne
    .gender = f
    .elides = yes
part-valve-block = bloc d’électrovannes
    .gender = m
part-inlet-hose = durite d’entrée
    .gender = f
part-feed-hose = durite d’alimentation
    .gender = f
part-pump-hose = durite de la pompe
    .gender = f
part-outlet-hose = durite de sortie
    .gender = f
part-reservoir-hose = durite du réservoir
    .gender = f
part-branch-hose = durite après le calibrage
    .gender = f
part-block-hose = durite vers le bloc d’électrovannes
    .gender = f
part-valve-hose = durite vers l’électrovanne
    .gender = f
part-tee = té
    .gender = m
part-feed-tee = té d’alimentation
    .gender = m
part-inlet-tee = té avant l’électrovanne
    .gender = m
part-pump-tee = té à la pompe
    .gender = m
part-front-tee-hose = durite vers le té avant
    .gender = f
part-rear-tee-hose = durite vers le té arrière
    .gender = f
part-mount-hose = durite du support
    .gender = f
part-mount = support moteur
    .gender = m
part-first-chamber = première chambre du support
    .gender = f
part-second-chamber = deuxième chambre du support
    .gender = f
part-restrictor = calibrage
    .gender = m
part-bleed = mise à l’air calibrée
    .gender = f
part-brake-booster = servofrein
    .gender = m
part-other-users = circuit des autres consommateurs
    .gender = m
part-battery = batterie
    .gender = f
part-fuse = fusible
    .gender = m
part-relay = relais
    .gender = m
part-power-wire = fil d’alimentation
    .gender = m
part-splice = épissure
    .gender = f
    .elides = yes
part-connector = connecteur
    .gender = m
part-coil = bobine de l’électrovanne
    .gender = f
part-control-wire = fil de commande
    .gender = m
part-module = calculateur
    .gender = m
part-ground-point = point de { -ground }
    .gender = m
part-hand-pump = pompe à vide manuelle
    .gender = f
part-engine = moteur
    .gender = m
part-branch = circuit après l’électrovanne
    .gender = m
part-inlet = circuit avant l’électrovanne
    .gender = m
part-strut = biellette de reprise de couple
    .gender = f
part-exhaust = échappement
    .gender = m
    .elides = yes
part-solid-mount = support sans dépression
    .gender = m
part-drivetrain = transmission
    .gender = f

part-hose = durite
    .gender = f
part-chamber = chambre du support
    .gender = f

# L’une de deux pièces semblables, par son côté ; la deuxième ou la troisième, par son numéro.
side-front = avant
side-rear = arrière
side-left = gauche
side-right = { $gender ->
    [f] droite
   *[m] droit
}
side-first = 1
side-second = 2
part-of-side = { $part } { $side }
part-numbered = { $part } { $number }

# Ce qu’est une pièce et ce qu’elle fait, en une ligne : pour qui n’en a jamais vu.
about-source = Là où le moteur fait la dépression : l’admission ou une pompe à vide.
about-check-valve = Laisse sortir l’air du circuit et ne le laisse pas revenir.
about-reservoir = Une boule ou un pot en plastique qui garde la dépression.
about-valve = Une vanne électrique. Elle envoie la dépression aux supports, ou la relâche.
about-inlet-hose = Dépression qui entre : de la source à l’électrovanne.
about-outlet-hose = Dépression qui sort : de l’électrovanne vers les supports.
about-tee = Partage une durite en deux.
about-hose = Amène la dépression à un support.
about-mount = Caoutchouc et huile entre moteur et caisse. La dépression change sa souplesse.
about-battery = Alimente tout ce qui est électrique.
about-fuse = Protège le fil d’alimentation.
about-relay = Commute le fil d’alimentation.
about-power-wire = Amène la tension de batterie à l’électrovanne.
about-control-wire = Par lui, le calculateur commande l’électrovanne.
about-connector = Le connecteur électrique de l’électrovanne.
about-coil = Le bobinage dans l’électrovanne.
about-module = Le calculateur qui décide quand l’électrovanne travaille.
about-restrictor = Un passage étroit qui freine l’air exprès.
about-bleed = Un passage étroit vers l’air libre, exprès.
about-ground-point = Là où des fils sont vissés à la caisse.

# États au contrôle visuel.
look-ok = Semble bon
look-cracked = Fissuré ou fendu
look-off = Débranché ou lâche
look-oily = Huileux dehors
look-kinked = Plié ou écrasé
look-chafed = Usé jusqu’au trou
look-corroded = Corrodé ou vert
look-wet-inside = Mouillé dedans
look-hint-hose = Pliez-la, regardez les deux bouts, tâtez sous les colliers.
look-hint-mount = Cherchez un bord déchiré et une coulure sous le joint.
look-hint-valve = Regardez les bouts de durites et la mise à l’air.
look-hint-wire = Suivez-le des yeux ; cherchez frottements et morsures.
look-hint-connector = Cherchez broches vertes, verrou lâche, joint déchiré.
look-hint-source = Écoutez un sifflement au branchement de la durite.
look-hint-other = Cherchez fissures, saleté et jeu.
