### Ce que dit le raisonnement : d’abord les résultats, puis questions, raisons, ce qui parle pour et contre.

## Essais de tenue

hold-holds = Tient : perte { $drop } en { $seconds }. Permis : { $limit } en { $within }.
hold-slow-leak = Fuite lente : perte { $drop } en { $seconds }. C’est dans la limite de { $limit } en { $within }.
hold-leaks = Fuit : perte { $drop } en { $seconds }. Permis : { $limit } en { $within }.
hold-undecided = Trop juste : perte { $drop } en { $seconds }. Permis : { $limit } en { $within }.
hold-will-not-build = Pas de dépression : bloqué à { $highest }, sous { $target }.
hold-no-reading = Il n’y a pas encore de deuxième lecture. Regardez l’aiguille et lisez encore une fois.
hold-no-vacuum = Au départ, il n’y avait pas de dépression à perdre.
hold-above-ambient = { $start } dépasse ce que l’air permet ici : { $most } au plus. Vérifiez l’unité.
hold-not-usable = Ces valeurs sont inutilisables. Relisez le manomètre.
hold-not-in-circuit = Cette pièce n’est pas dans le circuit choisi.
hold-go-on = Observez encore { $seconds } : cela le dirait.
hold-finer-gauge = Un manomètre lisible à { $step } le dirait.
hold-at-the-limit = C’est juste à la limite. Plus de temps ne le dirait pas non plus.
hold-tester-dominates = L’essentiel de cette perte peut venir de la pompe. Étanchez d’abord l’appareil.
hold-leak-in-part = La fuite est ici : { $part }.
hold-leak-in-one-of = La fuite est dans une de { $count } pièces. Essayez-les une par une.
hold-bleed-normal = Cette ligne a une mise à l’air calibrée : tomber doucement est normal ici.
hold-strokes-few = Si peu de coups ne font que { $volume } d’air. Quelque chose peut être bouché.
hold-strokes-many = Bien plus de coups que n’en demande ce volume : une fuite, ou plus de pièces que prévu.
hold-readings-scatter = Les lectures sautent plus qu’une fuite ne l’explique. Tapotez le manomètre, relisez.
hold-start-low = Le départ était bien sous { $target }. Pompez plus haut pour une réponse plus sûre.
hold-tester-taken-off = La perte propre de la pompe, { $leak }, est ôtée.
hold-clears-no-torn-mount = Un support qui tient peut être déchiré. Regardez-le aussi.
hold-clears-no-blocked-hose = Une durite bouchée tient aussi. Vérifiez que l’air passe.
hold-form-hole = L’aiguille est tombée tout droit : un petit trou.
hold-form-thin-path = La chute a ralenti : une fissure ou un passage fin.
tester-proved = Pompe, manomètre et adaptateur sont étanches. Fiez-vous aux résultats.
tester-fails = L’appareil lui-même fuit. Changez bouchon, adaptateur ou pompe, puis réessayez.
tester-not-tested = La pompe manuelle n’a pas été essayée seule. Sa fuite compterait ici.

## L’ensemble et ses parties

additivity-agrees = Les pièces ensemble fuient autant que le tout : rien ne manque.
additivity-explained = Ce que fuient les pièces essayées explique le tout.
additivity-rest = Le tout fuit { $rest } de plus que ses pièces essayées. Le reste est dans { $untested-n ->
    [one] la pièce pas encore essayée
   *[other] les { $untested } pièces pas encore essayées
}.
additivity-rest-in = Le tout fuit { $rest } de plus que ses pièces essayées. Cela désigne { $part-the }.
additivity-whole-more = Le tout fuit { $rest } de plus que ses pièces seules. Voyez raccords et adaptateur.
additivity-parts-more = Cela contredit l’essai de l’ensemble : ses pièces seules fuient plus. Un adaptateur ou un bouchon fuyait sans doute.

## Ce que fait une fuite en marche

effect-measured-keeps = Les supports reçoivent encore { $vacuum } sur { $source }. Cette fuite compte peu en marche.
effect-measured-lacks = Les supports ne reçoivent que { $vacuum } sur { $source }.
effect-mount-keeps = Au ralenti, environ { $vacuum } sur { $source } devraient encore arriver. Cette fuite seule compte peu.
effect-mount-lacks = Au ralenti, seuls environ { $vacuum } sur { $source } arriveraient.
effect-idle-changes = Elle laisse entrer environ { $share } de l’air de ralenti : assez pour le troubler.
effect-idle-unchanged = Elle laisse entrer { $share } de l’air de ralenti : trop peu pour le troubler.

## Jusqu’où pomper

target-usual = Pompez jusqu’à { $target }, comme d’habitude.
target-usual-sea-level-assumed = Pompez jusqu’à { $target }. Niveau de la mer supposé ; saisissez l’altitude si vous êtes haut.
target-thin-air = Pompez seulement jusqu’à { $target } : l’air mince d’ici permet { $most } au plus.
target-short-scale = Pompez jusqu’à { $target } : votre manomètre finit juste au-dessus.

## Yeux, oreilles, mains

complaint-reproduced = La plainte est là maintenant.
complaint-not-reproduced = La plainte n’est pas là maintenant. Un bon résultat prouvera peu.
complaint-none-felt = Aucune plainte, et rien ne se sent.
codes-none = Aucun code mémorisé. Cela ne blanchit ni durites ni supports.
codes-mount-circuit = { $count-n ->
    [one] Code mémorisé { $codes } : il nomme
   *[other] Codes mémorisés { $codes } : ils nomment
} le circuit de l’électrovanne, pas une pièce.
codes-others = { $count-n ->
    [one] Code mémorisé { $codes } : il ne concerne
   *[other] Codes mémorisés { $codes } : ils ne concernent
} pas les supports. Éclaircissez d’abord la cause.
idle-good = Le moteur tourne rond au ralenti à { $rpm }.
idle-rough = Le moteur tourne mal. Soignez cela d’abord : il vibre aussi sur de bons supports.
idle-hunting = Le ralenti pompe. Soignez cela d’abord.
idle-lowish = { $rpm } est un peu bas pour un ralenti à chaud.
idle-highish = { $rpm } est un peu haut. Le moteur est-il chaud ?
idle-low = { $rpm } est trop bas. Un moteur si lent vibre de lui-même.
idle-high = { $rpm } est trop haut à chaud. Cherchez une prise d’air à l’admission.
look-clear = De dehors, chaque pièce semble bonne.
look-found = { $count-n ->
    [one] Une pièce semble mauvaise.
   *[other] { $count } pièces semblent mauvaises.
}
look-found-cracked = { $part-start } a une fissure ou une fente.
look-found-off = { $part-start } n’est plus en place ou a du jeu.
look-found-oily = { $part-start } a de l’huile dehors.
look-found-kinked = { $part-start } a un pli ou un écrasement.
look-found-chafed = { $part-start } a un frottement qui traverse.
look-found-corroded = { $part-start } a de la corrosion.
look-found-wet-inside = { $part-start } a du fluide dedans : d’un support, ou de l’huile.
mount-looks-good = { $part-start } ne montre pas de déchirure. Cela ne prouve pas qu’il travaille.
mount-torn = { $part-start } est déchiré : le caoutchouc s’est décollé du métal.
mount-wet = { $part-start } perd son fluide : mouillé sous son propre joint.
mount-sagged = { $part-start } est { $sag } plus bas que son pareil : il s’est affaissé.
mount-sags-a-little = { $part-start } est { $sag } plus bas. Cela peut être normal.
mount-moves-well = { $part-start } bouge sans choc : le caoutchouc tient.
mount-clunks = { $part-start } cogne au levier.
mount-gap-opens = Un vide s’ouvre au levier : { $part-the } est déchiré.
wiggle-steady = Remuer { $part-the } ne change rien.
wiggle-jumps = La lecture saute quand on remue { $part-the } : le défaut est là.

## Dépression en marche

source-good = La source donne { $vacuum }. Attendu : { $low } à { $high }.
source-high = La source donne { $vacuum }, même plus que { $high }. C’est assez.
source-felt = La source tire fort. Un manomètre dirait combien.
source-none = Pas de dépression à la source : { $vacuum }.
source-not-felt = La source tire à peine.
source-unsteady = L’aiguille balance autour de { $vacuum } : cela désigne le moteur, pas les durites.
source-lowish = { $vacuum } est un peu bas. Attendu : { $low } à { $high }.
source-low = Seulement { $vacuum } à la source. Attendu : { $low } à { $high }.
source-low-throttle-free = Les moteurs sans papillon font peu de dépression et ont une pompe. Voyez lequel c’est.
delivered-good = { $vacuum } arrivent aux supports ; environ { $source } étaient attendus.
delivered-none = Aucune dépression n’arrive : { $vacuum }.
delivered-slow = { $vacuum } arrivent, mais seulement après { $seconds }. Quelque chose étrangle le passage.
delivered-uncalled = { $vacuum } arrivent alors que le calculateur ne devrait rien demander.
delivered-low = Seuls { $vacuum } arrivent aux supports ; environ { $source } étaient attendus.
delivered-bleed = { $vacuum } arrivent. Moins qu’à la source est normal avec une mise à l’air calibrée.
delivered-pulsed = { $vacuum } arrivent. Une électrovanne pulsée donne une moyenne ; cela seul ne dit rien.
delivered-compare-source = Mesurez aussi la source : sa dépression n’est que supposée.
switch-over-good = La dépression part en { $seconds }. Électrovanne, mise à l’air et commande travaillent.
switch-over-slowish = La dépression part en { $seconds }, un peu lent. Attendu : { $within }.
switch-over-slow = La dépression met { $seconds } à partir. Attendu : { $within }. Mise à l’air ou durite étroite.
switch-over-stays = La dépression reste : { $rests } après { $seconds }.
switch-over-stays-partly = Une partie de la dépression reste : { $rests } après { $seconds }.
switch-over-nothing-to-leave = Il n’y avait pas de dépression à partir. Cela ne dit encore rien.
flow-free = L’air passe dans { $part-the }.
flow-blocked = { $part-start } ne laisse pas passer l’air : un pli, fondue ou bouchée.
bypass-changes = Alimentés directement du moteur, les supports répondent : voyez électrovanne et faisceau.
bypass-changes-though-delivered = Les supports répondent, et la dépression arrivait avant : un défaut qui va et vient.
bypass-no-change = Même en direct rien ne change : supports, durites, ou une cause hors du circuit.
command-window-not-met = Le calculateur ne commande pas l’électrovanne dans cet état. Cela ne compte donc pas contre lui.
command-window-unknown = On ignore quand le calculateur commande l’électrovanne. Cela ne compte donc pas contre lui.

## Électrovanne à la main

valve-off-good = Au repos, l’électrovanne fait ce qu’elle doit.
valve-off-passes = Au repos, l’électrovanne laisse passer la dépression.
valve-off-shut = Au repos, l’électrovanne devrait passer, et elle est fermée.
valve-off-no-vent = Au repos, l’électrovanne ne laisse pas respirer les supports : mise à l’air bouchée.
valve-off-vents = L’électrovanne fuit par sa mise à l’air pendant qu’elle passe.
valve-off-vent-not-tried = La mise à l’air n’a pas été essayée. Bouchée, elle resterait cachée.
valve-on-good = Sur le cavalier, l’électrovanne commute. Voyez son faisceau.
valve-on-dead = Sur le cavalier, l’électrovanne ne fait rien, pas même un clic.
valve-on-clicks-only = L’électrovanne clique, mais rien ne change : grippée ou bouchée.
valve-on-stuck = Sur le cavalier, l’électrovanne ne commute pas.
valve-on-no-click = Elle a commuté sans clic audible. Essayez encore une fois.
valve-on-vents = Sous courant, l’électrovanne fuit par sa mise à l’air.
valve-on-no-vent = Sous courant, l’électrovanne ne laisse pas respirer les supports.

## Alimentation

supply-volts-one = Le courant arrive : { $volts } sur une broche, batterie { $battery }.
supply-volts-bias = { $volts } sur l’autre broche viennent du calculateur : normal chez beaucoup.
supply-volts-load-follows = À vide, une mauvaise jonction peut se cacher. Mesurez aussi en charge.
supply-volts-none-normal = Pas de courant moteur arrêté est normal ici : le calculateur alimente l’électrovanne.
supply-volts-none-commanded = Pas de courant au ralenti. Beaucoup de calculateurs restent coupés, connecteur débranché.
supply-volts-always-on = { $volts } alors que le calculateur ne devrait rien alimenter.
supply-volts-both-normal = Les deux broches à { $volts } : normal avec ce circuit.
supply-volts-both = Les deux broches à la tension de batterie, { $volts }. Connecteur débranché, c’est étrange.
supply-volts-low = Seulement { $volts } au connecteur, batterie { $battery }.
supply-volts-relay-off = Pas encore de courant : un relais a pu retomber. Mesurez encore au ralenti.
supply-volts-none = Pas de courant au connecteur : { $volts }, batterie { $battery }.
supply-volts-other-layouts = Dans certains circuits, c’est normal. Mesurez encore au ralenti.
supply-loaded-good = { $volts } en charge, batterie { $battery } : le fil d’alimentation porte.
supply-loaded-above-battery = { $volts } dépasse la batterie. Remesurez les deux.
supply-loaded-marginal = { $volts } en charge, { $drop } sous la batterie : un peu beaucoup.
supply-loaded-low = Seulement { $volts } en charge, { $drop } sous la batterie : elle s’effondre.
supply-loaded-hidden-joint = À vide, cela semblait bon. Environ { $ohms } sont dans une jonction ou un fil.
fuse-good = { $in } avant et { $out } après le fusible : il conduit.
fuse-blown = Le fusible est fondu : { $in } avant, { $out } après.
fuse-open = Le fusible est fondu : aucune continuité à ses lames.
fuse-find-the-cause = Cherchez pourquoi il a fondu avant d’en monter un du même calibre.
fuse-ohms-good = Le fusible conduit : { $ohms }.
fuse-ohms-high = { $ohms } au fusible est un peu beaucoup. Nettoyez ses lames, remesurez.
fuse-ohms-bad = { $ohms } au fusible : lui ou son support est mauvais.
fuse-no-feed = Pas de courant avant le fusible : { $in }, batterie { $battery }.
fuse-no-feed-relay = Pas de courant avant le fusible. Un relais a pu retomber : mesurez au ralenti.
fuse-low-feed = Seulement { $in } avant le fusible, batterie { $battery }.
fuse-one-side = { $in } avant le fusible. Mesurez aussi son autre point.
fuse-loses = { $in } avant et { $out } après : le fusible ou son support perd des volts.
power-wire-good = Le fil d’alimentation conduit : { $ohms } sans les cordons.
power-wire-open = Le fil d’alimentation est coupé : aucune continuité.
power-wire-marginal = { $ohms } dans le fil d’alimentation est un peu beaucoup.
power-wire-high = { $ohms } dans le fil d’alimentation est trop.
power-wire-drop = Le fil d’alimentation perd { $drop } en charge.
power-wire-drop-marginal = Le fil d’alimentation perd { $drop } en charge : un peu beaucoup.
wire-one-strand = Un dernier brin donne aussi peu d’ohms. Un essai en charge décide.
wire-under-load = Électrovanne commandée, il resterait environ { $left } : { $drop } perdus.
battery-charge-first = La batterie n’a que { $volts }. Chargez-la d’abord.

## Commande

valve-volts-good = L’électrovanne reçoit { $volts }, batterie { $battery }. Voyez l’électrovanne même.
valve-volts-none = L’électrovanne ne reçoit pas de tension quand elle devrait : { $volts }.
valve-volts-low = L’électrovanne ne reçoit que { $volts }, batterie { $battery }.
valve-volts-hidden-joint = Débranché, cela semblait bon : une mauvaise jonction se montre en charge.
valve-volts-maybe-pulsed = Une valeur moyenne peut aussi être une électrovanne pulsée. Une lampe ou un oscilloscope le dit.
valve-volts-open-good = { $volts } connecteur débranché : le calculateur commande.
valve-volts-open-none = { $volts } connecteur débranché. Beaucoup de calculateurs se taisent alors.
valve-volts-connect = Mesurez encore, connecteur branché : cela décide.
control-pin-good = Le calculateur commute : { $off } au repos, { $on } commandé.
control-pin-off-good = { $off } au repos, comme il faut. Mesurez maintenant commandé.
control-pin-off-odd = { $off } au repos est étrange. Mesurez commandé.
control-pin-always-low = La broche de commande reste basse : { $off }. Fil à la { -ground }, ou pas de courant par la bobine.
control-pin-always-on = La broche de commande reste active : { $off } quand elle devrait être au repos.
control-pin-no-change = Rien ne change : { $off } au repos, { $on } commandé. Le calculateur ne la commute pas.
control-pin-weak = { $off } au repos, { $on } commandé : elle commute, mais faiblement.
control-pin-pulsed = { $off } au repos, { $on } commandé : une électrovanne pulsée, commandée.
control-pin-maybe-pulsed = Une valeur moyenne peut aussi être une électrovanne pulsée. Une lampe ou un oscilloscope le dit.
power-wire-to-ground = Le fil d’alimentation touche la { -ground } : il fond chaque fusible neuf.
power-wire-ground-not-tried = On n’a pas mesuré s’il touche la { -ground }.
control-wire-good = Le fil de commande conduit : { $ohms } sans les cordons.
control-wire-open = Le fil de commande est coupé : aucune continuité.
control-wire-to-ground = Le fil de commande touche la { -ground } : l’électrovanne est toujours commandée.
control-wire-to-battery = Le fil de commande touche le plus batterie.
control-wire-marginal = { $ohms } dans le fil de commande est un peu beaucoup.
control-wire-high = { $ohms } dans le fil de commande est trop.
control-wire-ground-not-tried = On n’a pas mesuré s’il touche la { -ground }.
coil-good = La bobine est entière : { $ohms }. Attendu : { $low } à { $high }.
coil-hot-too = Certaines bobines ne coupent qu’à chaud. Mesurez aussi à chaud si le défaut vient à chaud.
coil-open = La bobine est coupée : aucune continuité.
coil-to-case = La bobine touche le boîtier de l’électrovanne.
coil-shorted = La bobine est en court-circuit : { $ohms }. Attendu : { $low } à { $high }.
coil-near-band = { $ohms } est juste hors de { $low } à { $high }. La bobine peut encore être bonne.
coil-low = { $ohms } est trop bas. Attendu : { $low } à { $high }.
coil-high = { $ohms } est trop haut. Attendu : { $low } à { $high }.
prove-meter-good = Multimètre et cordons sont bons : { $ohms } cordons joints.
prove-meter-leads-open = Cordons joints, aucune continuité : un cordon ou le fusible du multimètre est coupé.
prove-meter-leads-high = { $ohms } cordons joints est trop. Nettoyez-les ou changez-les.
prove-meter-lamp = La lampe témoin reste éteinte sur la batterie : son filament est cassé.
prove-meter-no-battery = { $volts } à la batterie est impossible. Vérifiez calibre, prises et cordons.

## Vibration

shake-works = La vibration change { $times } avec la dépression : les supports répondent.
shake-felt-works = Vibration { $on } avec dépression, { $off } sans : les supports répondent.
shake-wrong-way = La vibration change { $times }, mais dans le mauvais sens. Durites inversées ?
shake-felt-wrong-way = Vibration { $on } avec dépression, { $off } sans : le mauvais sens. Durites inversées ?
shake-small-effect = La vibration ne change que { $times }. Cela ne dit rien.
shake-no-effect = La dépression ne change pas la vibration : { $times }.
shake-felt-no-effect = Vibration { $on } avec dépression, { $off } sans : aucun changement.
shake-strong-either-way = Forte vibration avec et sans dépression. L’échelle s’arrête là : un changement ne se verrait pas.
shake-none-either-way = Pas de vibration avec ni sans dépression. Il n’y a rien à comparer.
shake-move-the-phone = Ou le téléphone est là où rien ne vibre. Essayez ailleurs.
shake-nothing-recorded = Rien n’a été enregistré. Posez le téléphone sur du métal et réessayez.
shake-one-side = Un seul côté est là. Sentez avec et sans dépression.
shake-too-short = Trop court. Enregistrez au moins { $seconds }.
shake-engine-rough = Le moteur tourne mal : cela vibre aussi.

## Non fait

not-done = Non fait : { $reason }.
not-available = Non disponible ici.
answer-does-not-fit = Cette réponse ne va pas avec l’essai. Saisissez-la encore.

## Lectures à peine possibles : ce qui est étrange, puis l’erreur probable

odd-above-ambient = { $vacuum } dépasse ce que l’air permet ici : { $most } au plus.
odd-far-below-target = { $vacuum } est bien sous { $target }, et pourtant vous avez continué.
odd-needle-rises = La dépression a monté de { $rise } sans que personne pompe.
odd-negative-volts = { $volts } est sous zéro.
odd-many-volts = { $volts } dépasse ce qu’a une voiture.
odd-battery-low = { $volts } est trop peu pour une batterie qui vient de servir.
odd-above-battery = { $volts } dépasse les { $battery } de la batterie.
odd-negative-ohms = { $ohms } est sous zéro.
odd-few-ohms = { $ohms } est presque rien pour une bobine.
odd-many-ohms = { $ohms } est énorme pour ceci.
odd-rpm = { $rpm } n’est pas un régime de ralenti.
odd-contradicts = Cela contredit { $count-n ->
    [one] une autre lecture
   *[other] { $count } autres lectures
}.
likely-other-scale = Peut-être avez-vous lu l’échelle { $likely } au lieu de { $unit }.
likely-other-unit = Peut-être la valeur est-elle en { $likely }, pas en { $unit }.
likely-typing = Peut-être une faute de frappe.
likely-still-pumped = Peut-être pompait-on encore, ou le manomètre collait. Tapotez-le.
likely-leads-swapped = Peut-être les cordons rouge et noir sont-ils inversés.
likely-millivolts = Peut-être le multimètre montre-t-il des millivolts : { $volts }.
likely-ac-range = Peut-être le multimètre est-il sur AC.
likely-bad-contact = Peut-être un cordon ne touche-t-il pas le métal nu.
likely-other-engine-state = Peut-être le moteur tournait-il pour l’une et pas pour l’autre.
likely-live-wire = Peut-être le fil était-il sous tension. Coupez le contact, puis mesurez.
likely-kiloohms = Peut-être le multimètre montre-t-il des kΩ : { $ohms }.
likely-milliohms = Peut-être le multimètre montre-t-il des mΩ : { $ohms }.
likely-open = Peut-être n’y a-t-il aucune continuité : touchez alors « ouvert ».
likely-dial-factor = Peut-être le cadran compte-t-il en dizaines, centaines ou milliers : { $rpm }.
likely-not-idling = Peut-être le moteur n’était-il pas au ralenti.
likely-other-place = Peut-être un autre endroit, une autre broche ou un autre état de la voiture.

## Pourquoi cet essai maintenant, pourquoi s’arrêter

why-textbook = Le suivant dans l’ordre du manuel, environ { $minutes }.
why-settles = { $count-n ->
    [one] Il règle environ { $share } du doute qui reste ; le résultat est à environ { $finding }.
   *[other] Il règle environ { $share } du doute entre { $count } causes ; le résultat est à environ { $finding }.
}
why-ends = { $count-n ->
    [one] Il termine la recherche avec { $chance } de chances.
   *[other] Il tranche entre { $count } causes avec { $chance } de chances.
}
why-odd = Cette mesure s'accorde mal avec les autres : une erreur avec une probabilité de { $chance }. Regardez encore une fois avant de vous y fier.
why-leans = Le diagnostic s'appuie sur cette mesure. Regardez-la encore une fois avant d'accuser une pièce.
why-proves = Il montre que l’appareil lui-même est bon, avant d’accuser une pièce.
why-mends = L'appareil lui-même est probablement mauvais. Réparez-le ou changez-le, puis contrôlez-le ici : une fois bon, ce qui a été mesuré avec lui avant ne compte plus.
why-again = Encore une fois, en refaisant tout le montage : un mauvais joint ou un bout lâche peut tromper un seul essai. Le diagnostic est à environ { $finding }.
stop-sound = Tous les essais vont avec un circuit sain, sûr à { $sure }.
stop-outside = La cause est hors de ce circuit, sûr à { $sure }.
stop-found = Sûr à { $sure } : d’autres essais ne changeraient pas la réparation.
stop-found-unexplained = Sûr à { $sure }, mais cela n’explique pas la plainte. Aucun essai restant ne le ferait.
stop-tester = L’appareil lui-même est le plus suspect. Essayez-le ou changez-le d’abord.
stop-nothing-left = Aucun essai restant n’en dirait assez pour valoir son temps. La première cause est à { $sure }.
stop-inseparable = Il est peu probable qu’un essai restant sépare les premières causes. La plus probable est à { $sure }.

## Ce qui parle pour et contre

evidence-for = { $test } : { $outcome }. Cela va { $times } mieux avec cette cause qu’avec les autres.
evidence-against = { $test } : { $outcome }. Cela va { $times } mieux avec les autres causes.
outcome-holds = tient
outcome-slow-leak = fuite lente
outcome-leaks = fuit
outcome-will-not-build = ne fait pas de dépression
outcome-undecided = indécis
outcome-as-expected = comme attendu
outcome-not-as-expected = pas comme attendu
outcome-not-done = non fait
