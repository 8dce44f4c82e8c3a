### Essais de tenue : de l’appareil, d’un tronçon, d’une seule pièce.
### $target est la dépression à atteindre, $seconds le temps d’observation, $limit la chute permise.

test-hand-pump-title = Essayez la pompe manuelle seule
test-hand-pump-name = Pompe manuelle seule
test-hand-pump-why = Un appareil qui fuit fait croire que chaque pièce fuit.
test-hand-pump-explain = Bouchez l’adaptateur et essayez pompe, manomètre et adaptateur seuls. Ce qu’ils perdent est ôté de chaque résultat.
test-hand-pump-where = Au bout de l’adaptateur que vous utiliserez, bouché.
test-hand-pump-step-1 = Montez votre adaptateur et bouchez-le. Manomètre à zéro ?
test-hand-pump-step-2 = Pompez jusqu’à { $target }, puis ôtez la main du levier.
test-hand-pump-step-3 = Regardez l’aiguille { $seconds }. Lisez quand le téléphone vibre.
test-hand-pump-means-holds = L’appareil tient : fiez-vous à lui.
test-hand-pump-means-slow-leak = Il perd un peu. Les résultats suivants l’ôtent.
test-hand-pump-means-leaks = L’appareil fuit. Essayez d’abord un autre bouchon ou adaptateur.
test-hand-pump-means-will-not-build = Le bouchon est parti, ou la pompe est usée.
test-hand-pump-means-undecided = Trop juste. Observer plus longtemps le dira.

## En général : une pièce seule

test-hold-title = Essai de tenue : { $part }
test-hold-name = Essai de tenue, { $part }
test-hold-why = { $part-start } sans le reste : elle tient, ou c’est la fuite.
test-hold-explain = Il n’y a plus que { $part-the } sur la pompe. Si l’aiguille reste, cette pièce ne fuit pas.
test-hold-where = { $part-start } sans le reste, autres ouvertures bouchées.
test-hold-step-1 = Sortez { $part-the } de la ligne. Bouchez les autres ouvertures.
test-hold-step-2 = Enfoncez l’adaptateur de la pompe, droit et serré.
test-hold-step-3 = Pompez jusqu’à { $target }, comptez les coups, puis lâchez le levier.
test-hold-step-4 = Regardez l’aiguille { $seconds }. Lisez quand le téléphone vibre.
test-hold-step-5 = Ensuite laissez entrer l’air doucement et remontez tout.
test-hold-means-holds = { $part-start } ne fuit pas. Cherchez ailleurs.
test-hold-means-slow-leak = Petite perte, dans la limite. Rarement la cause.
test-hold-means-leaks = { $part-start } fuit. C’est une cause.
test-hold-means-will-not-build = Grand ouvert : une fente, un bouchon manquant, ou le mauvais embout.
test-hold-means-undecided = Trop juste pour ce manomètre. Observer plus longtemps le dira.

## Tout après l’électrovanne

test-hold-branch-title = Essai de tenue : tout après l’électrovanne
test-hold-branch-name = Essai de tenue, tout après l’électrovanne
test-hold-branch-why = Un pompage essaie ensemble durites, té et supports.
test-hold-branch-explain = Si l’aiguille reste, durites et supports après l’électrovanne tiennent. Si elle tombe, l’un d’eux fuit et des essais séparés suivent.
test-hold-branch-where = Dépression qui sort : la durite de sortie, tirée à l’électrovanne.
test-hold-branch-step-1 = Tournez et tirez la durite de sortie de l’électrovanne. Mouillée dedans ? Arrêtez, notez.
test-hold-branch-step-2 = Enfoncez l’adaptateur de la pompe dans la durite, droit et serré.
test-hold-branch-step-3 = Pompez jusqu’à { $target }, comptez les coups, puis lâchez le levier.
test-hold-branch-step-4 = Regardez l’aiguille { $seconds }. Lisez quand le téléphone vibre.
test-hold-branch-step-5 = Ensuite laissez entrer l’air doucement et remettez la durite.
test-hold-branch-means-holds = Rien ne fuit après l’électrovanne. Voyez électrovanne et côté électrique.
test-hold-branch-means-slow-leak = Petite perte, dans la limite. Rarement la cause.
test-hold-branch-means-leaks = Quelque chose fuit après l’électrovanne. Ensuite, pièce par pièce.
test-hold-branch-means-will-not-build = Une grosse fuite : durite débranchée ou fendue, ou support déchiré.
test-hold-branch-means-undecided = Trop juste pour ce manomètre. Observer plus longtemps le dira.

## Un support

test-hold-mount-title = Essai de tenue : { $part } seul
test-hold-mount-why = { $part-start } seul : il tient, ou c’est la fuite.
test-hold-mount-explain = Une membrane fissurée ne se voit pas dehors. Elle ne se voit qu’au manomètre.
test-hold-mount-where = L’embout { $part-of }, ou son court bout de durite.
test-hold-mount-step-1 = Photographiez la durite, puis tournez-la et tirez-la { $part-of }.
test-hold-mount-step-2 = Enfoncez l’adaptateur de la pompe sur l’embout. Ne le pliez pas.
test-hold-mount-step-3 = Pompez jusqu’à { $target }, comptez les coups, puis lâchez le levier.
test-hold-mount-step-4 = Regardez l’aiguille { $seconds }. Lisez quand le téléphone vibre.
test-hold-mount-step-5 = Ensuite laissez entrer l’air doucement et remettez la durite.
test-hold-mount-means-holds = Il ne fuit pas. Il peut être déchiré : regardez-le aussi.
test-hold-mount-means-slow-leak = Petite perte, dans la limite. Rarement la cause.
test-hold-mount-means-leaks = Sa membrane ou son embout fuit : ce support est une cause.
test-hold-mount-means-will-not-build = Sa membrane est grande ouverte, ou l’adaptateur porte mal.
test-hold-mount-means-undecided = Trop juste pour ce manomètre. Observer plus longtemps le dira.

## Une durite

test-hold-hose-title = Essai de tenue : { $part } seule
test-hold-hose-why = { $part-start } seule : elle tient, ou c’est la fuite.
test-hold-hose-explain = Essayez la durite comme elle est dans la voiture, les deux bouts débranchés. Un bout fendu se cache souvent sous le collier.
test-hold-hose-where = Bout proche { $part-of }, le bout éloigné bouché.
test-hold-hose-step-1 = Numérotez les deux bouts de la durite, puis tournez et tirez.
test-hold-hose-step-2 = Bouchez le bout éloigné. Enfoncez l’adaptateur dans le bout proche.
test-hold-hose-step-3 = Pompez jusqu’à { $target }, comptez les coups, puis lâchez le levier.
test-hold-hose-step-4 = Pliez doucement la durite en regardant { $seconds }.
test-hold-hose-step-5 = Lisez quand le téléphone vibre. Laissez entrer l’air, remettez les deux bouts.
test-hold-hose-means-holds = Elle ne fuit pas. Elle peut être bouchée : l’air doit passer aussi.
test-hold-hose-means-slow-leak = Petite perte, dans la limite. Rarement la cause.
test-hold-hose-means-leaks = { $part-start } fuit, souvent à un bout. C’est une cause.
test-hold-hose-means-will-not-build = Elle est fendue, ou son bout éloigné n’est pas bouché.
test-hold-hose-means-undecided = Trop juste pour ce manomètre. Observer plus longtemps le dira.

## Clapet anti-retour et réservoir

test-hold-check-valve-title = Essai de tenue : clapet anti-retour
test-hold-check-valve-why = Un clapet qui laisse revenir perd la dépression, moteur arrêté.
test-hold-check-valve-explain = Il ne doit laisser l’air aller que vers le moteur. Sa flèche montre la source.
test-hold-check-valve-where = Clapet anti-retour, du côté opposé au moteur.
test-hold-check-valve-step-1 = Notez sa flèche. Tirez la durite du côté opposé au moteur.
test-hold-check-valve-step-2 = Enfoncez l’adaptateur de la pompe de ce côté.
test-hold-check-valve-step-3 = Pompez jusqu’à { $target }, comptez les coups, puis lâchez le levier.
test-hold-check-valve-step-4 = Regardez l’aiguille { $seconds }. Lisez quand le téléphone vibre.
test-hold-check-valve-step-5 = Ensuite remontez-le, la flèche vers le moteur.
test-hold-check-valve-means-holds = Le clapet anti-retour ferme.
test-hold-check-valve-means-slow-leak = Il laisse revenir un peu, dans la limite.
test-hold-check-valve-means-leaks = Il laisse revenir : la dépression se perd quand le moteur peine.
test-hold-check-valve-means-will-not-build = Grand ouvert, ou vous êtes de l’autre côté.
test-hold-check-valve-means-undecided = Trop juste pour ce manomètre. Observer plus longtemps le dira.
test-hold-restrictor-where = Un bout du calibrage, l’autre bouché. Notez sa flèche.
test-hold-reservoir-where = Un embout du réservoir de dépression, l’autre bouché.
test-hold-tee-where = Un bras du té, les autres bouchés.

## Avant l’électrovanne

test-hold-inlet-title = Essai de tenue : tout avant l’électrovanne
test-hold-inlet-name = Essai de tenue, tout avant l’électrovanne
test-hold-inlet-why = Derrière un clapet anti-retour, cette ligne doit tenir moteur arrêté.
test-hold-inlet-explain = Un moteur arrêté est ouvert à l’air. Seul le clapet anti-retour fait tenir cette ligne, il est donc essayé aussi.
test-hold-inlet-where = Dépression qui entre : la durite d’entrée, tirée à l’électrovanne.
test-hold-inlet-step-1 = Tournez et tirez la durite d’entrée de l’électrovanne.
test-hold-inlet-step-2 = Enfoncez l’adaptateur de la pompe dans la durite, droit et serré.
test-hold-inlet-step-3 = Pompez jusqu’à { $target }, comptez les coups, puis lâchez le levier.
test-hold-inlet-step-4 = Regardez l’aiguille { $seconds }. Lisez quand le téléphone vibre.
test-hold-inlet-step-5 = Ensuite laissez entrer l’air doucement et remettez la durite.
test-hold-inlet-means-holds = Durite et clapet avant l’électrovanne tiennent.
test-hold-inlet-means-slow-leak = Petite perte, dans la limite. Rarement la cause.
test-hold-inlet-means-leaks = Durite, réservoir ou clapet avant l’électrovanne fuit.
test-hold-inlet-means-will-not-build = Aucun clapet n’agit ici, ou une durite est débranchée.
test-hold-inlet-means-undecided = Trop juste pour ce manomètre. Observer plus longtemps le dira.

## L’entrée de l’électrovanne

test-hold-valve-title = Essai de tenue : électrovanne au repos
test-hold-valve-name = Essai de tenue, électrovanne au repos
test-hold-valve-why = Une électrovanne qui passe au repos gaspille sans cesse la dépression.
test-hold-valve-explain = Au repos, son entrée doit être fermée. Si l’aiguille tombe, son siège passe.
test-hold-valve-where = L’entrée de l’électrovanne, les deux durites débranchées, sans courant.
test-hold-valve-step-1 = Tirez les deux durites de l’électrovanne. Le connecteur reste débranché.
test-hold-valve-step-2 = Enfoncez l’adaptateur de la pompe sur l’entrée.
test-hold-valve-step-3 = Pompez jusqu’à { $target }, comptez les coups, puis lâchez le levier.
test-hold-valve-step-4 = Regardez l’aiguille { $seconds }. Lisez quand le téléphone vibre.
test-hold-valve-step-5 = Ensuite remettez les durites comme avant.
test-hold-valve-means-holds = Son siège ferme. S’il ouvre, un autre essai le dit.
test-hold-valve-means-slow-leak = Son siège passe un peu, dans la limite.
test-hold-valve-means-leaks = Son siège passe au repos : l’électrovanne est une cause.
test-hold-valve-means-will-not-build = Elle est ouverte, ou vous êtes au mauvais embout.
test-hold-valve-means-undecided = Trop juste pour ce manomètre. Observer plus longtemps le dira.
