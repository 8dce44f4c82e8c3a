### Lignes de réparation : que faire, à quoi veiller, dans l’ordre. Chaque réparation finit par repair-all-N.

fix-replace = remplacer { $part-the }
fix-refit = remonter { $part-the }
fix-repair = réparer { $part-the }
fix-clean = nettoyer { $part-the }
fix-charge = charger { $part-the }

repair-hose-1 = Photographiez l’ancienne durite en place. Coupez la neuve à la même longueur.
repair-hose-2 = Durite de dépression à paroi épaisse. Diamètre comme l’embout, souvent 3,2–4{"\u00A0"}mm.
repair-hose-3 = Huile ou vapeurs de carburant près d’elle : intérieur fluoré ou nitrile, pas silicone.
repair-hose-4 = Reportez calibrage, retardateur et clapet. La flèche dans le même sens.
repair-hose-5 = Mouillez les bouts à l’eau, jamais à l’huile minérale. Colliers seulement où il y en avait.
repair-hose-6 = Bien loin de l’échappement, sans arêtes. Laissez du mou pour le moteur.
repair-hose-7 = Un bout seul est fendu ? Recoupez au caoutchouc sain si la longueur suffit.

repair-mount-1 = Soutenez le moteur par une barre, ou comme dit le constructeur.
repair-mount-2 = Vis neuves où le constructeur le dit. Amorcez-les toutes à la main.
repair-mount-3 = Faites bouger et se poser le moteur, puis serrez. Couple du constructeur.
repair-mount-4 = Notez le couple et d’où il vient.
repair-mount-5 = Remontez écran thermique, tresse de { -ground } et pattes de tubes.
repair-mount-6 = La durite était mouillée dedans ? Videz et séchez d’abord durites et électrovanne.
repair-mount-7 = Comparez les autres supports. Ne remplacez que le défaillant.

repair-valve-1 = Notez quelle durite va sur quel embout. Photographiez-les.
repair-valve-2 = Un filtre de mise à l’air bouché ne demande peut-être qu’un nettoyage.
repair-valve-3 = Séchez les bouts. Tournez en montant, ne pliez jamais les embouts.
repair-valve-4 = Connecteur propre, joint en place, verrou enclenché.

repair-coil-1 = La bobine vient avec l’électrovanne : remplacez celle-ci.
repair-coil-2 = Notez quelle durite va sur quel embout. Photographiez-les.
repair-coil-3 = Connecteur propre, joint en place, verrou enclenché.

repair-check-valve-1 = Notez la flèche avant de le tirer. Elle montre la source.
repair-check-valve-2 = Montez le neuf avec la flèche dans le même sens.
repair-check-valve-3 = Servofrein sur cette ligne ? Démarrez : la pédale doit s’enfoncer un peu.

repair-reservoir-1 = Videz-le s’il y a du fluide, et cherchez d’où il vient.
repair-reservoir-2 = Contrôlez les deux embouts et le joint avant de le monter.

repair-tee-1 = Notez quelle durite va sur quel bras.
repair-tee-2 = Même diamètre. Enfoncez chaque durite à fond.

repair-source-1 = Nettoyez la prise d’admission si la calamine la bouche.
repair-source-2 = Une pompe usée, ou un moteur qui tire peu, demande son propre diagnostic.

repair-wire-1 = Batterie débranchée ou fusible ôté avant de couper.
repair-wire-2 = Même section. Sertissez un manchon étanche, sans soudure.
repair-wire-3 = Regainez et refixez, loin des arêtes et de la chaleur.
repair-wire-4 = Morsures de rongeur : cherchez la deuxième.

repair-connector-1 = Contact coupé. Nettoyez les broches au nettoyant contacts ; laissez sécher.
repair-connector-2 = Essayez la prise de chaque cosse avec une broche pareille.
repair-connector-3 = Joint en place, verrou enclenché, fils sans traction.
repair-connector-4 = Broches vertes ou lâches : changez broche et joint, pas l’électrovanne.

repair-fuse-1 = Même calibre, une fois. Jamais plus fort.
repair-fuse-2 = S’il refond : arrêtez et cherchez d’abord le court-circuit.
repair-fuse-3 = Cherchez le court-circuit avec une lampe à la place du fusible.

repair-relay-1 = Même pièce. Un autre pareil peut le remplacer pour un essai.
repair-relay-2 = Cherchez la corrosion dans son support.

repair-battery-1 = Chargez-la à fond, puis essayez-la avant d’en acheter une.
repair-battery-2 = Nettoyez bornes et cosses. Pas de bagues, yeux protégés.

repair-module-1 = Vérifiez plus, { -ground } et fil au calculateur avant d’en commander un.
repair-module-2 = Lisez les notes de service : le remède peut être un logiciel.
repair-module-3 = Un calculateur neuf demande souvent un codage en atelier.

repair-ground-point-1 = Défaites, nettoyez à nu, serrez, protégez à la graisse.
repair-splice-1 = Coupez la jonction. Sertissez un manchon étanche de même section.
repair-restrictor-1 = Nettoyez ou remplacez-le. Même passage, même sens.
repair-bleed-1 = Nettoyez passage et filtre. Ne la fermez jamais.
repair-hand-pump-1 = Changez bouchon, adaptateur ou joint. Essayez-la bouchée avant le prochain essai de tenue.
repair-engine-1 = Diagnostiquez d’abord ratés, mélange ou ralenti.
repair-strut-1 = Remplacez la biellette ou sa bague. Serrez moteur posé.
repair-exhaust-1 = Libérez-le : silentbloc, écran ou patte. Échappement froid.
repair-solid-mount-1 = Soutenez le moteur. Couple du constructeur.
repair-drivetrain-1 = Faites voir arbres, embrayage et volant moteur.
repair-part-1 = Remplacez { $part-the } par la même pièce. Notez son branchement.

repair-all-1 = Remettez chaque durite et connecteur, puis tirez sur chacun à la main.
repair-all-2 = Refaites le même essai : même endroit, manomètre, température et rapport.
