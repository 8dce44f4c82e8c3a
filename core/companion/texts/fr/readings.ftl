### Lectures, chutes de l’aiguille et leurs nombres en mots.

yes = oui
no = non

fall-lost = perte { $drop } en { $seconds }
fall-none = immobile à { $start } pendant { $seconds }
fall-gained = hausse { $drop } en { $seconds }
fall-never = n’a atteint que { $highest }
fall-short = bloqué à { $highest }, doit atteindre { $target }
fall-unusable = lu { $start }, inutilisable

reading-hold-later = { $vacuum } après { $seconds }
reading-hold-trace = { $start }, { $vacuum } après { $seconds }, { $count } lectures
reading-strokes = { $strokes-n ->
    [one] { $strokes } coup
   *[other] { $strokes } coups
}
reading-field = { $label } : { $value }
reading-open = hors calibre, ouvert
reading-none = aucun
reading-nothing = rien n’a été lu
reading-samples = enregistré { $seconds }
reading-look = { $part } : { $state }
reading-look-nothing = rien d’anormal à voir
look-cracked-phrase = fissure ou fente
look-off-phrase = plus en place ou jeu
look-oily-phrase = huile dehors
look-kinked-phrase = pli ou écrasement
look-chafed-phrase = frottement qui traverse
look-corroded-phrase = corrosion
look-wet-inside-phrase = fluide dedans

detail-leak = Fuite { $leak } (95{"\u00A0"}% entre { $low } et { $high }), à 20{"\u00A0"}inHg, 20{"\u00A0"}°C, niveau de la mer.
detail-leak-none = Aucune fuite prouvée : moins de { $high }{"\u00A0"}cm³/min norm. avec 95{"\u00A0"}% de certitude, à 20{"\u00A0"}inHg, 20{"\u00A0"}°C, niveau de la mer.
detail-limit = Limite { $limit } pour { $volume } à l’essai, appareil compris.
detail-hole = Autant qu’un trou de { $hole }.
detail-over-limit = Probabilité de dépasser la limite : { $share }.

dial-alt = Manomètre à { $reading }. Pompez jusqu’à { $target }.
dial-target = pompez jusqu’ici
chart-limit = limite
chart-seconds = secondes
chart-before = avant
chart-after = après
chart-alt = { $test } : { $fall }. Limite { $limit } en { $seconds }.
chart-alt-compared = { $test } : avant la réparation { $before }, après { $fall }. Limite { $limit } en { $seconds }.
band-reached = Dépression maximale atteinte
spectrum-on = avec dépression
spectrum-off = sans
spectrum-hz = vibrations par seconde (Hz)
spectrum-alt = { $test } : au plus fort avec dépression { $on }, sans { $off }.
spectrum-peak = { $level } à { $hz }

band-expected = attendu
band-alt = { $what } : { $reading }. Attendu { $expected }.
band-alt-open = { $what } : pas encore de lecture. Attendu { $expected }.
band-from-to = { $low } à { $high }

connector-seen-from = Face ouverte du connecteur de la voiture
connector-seen-from-wires = Vu côté fils, connecteur branché
connector-seen-valve = Vu dans la prise de l’électrovanne même
connector-ground = { -ground } de caisse
connector-pin = broche { $number }
connector-power-pin = fil d’alimentation
connector-control-pin = fil de commande
connector-ground-pin = fil de { -ground }
lead-red-control-pin = Cordon rouge sur la broche de commande.
lead-red-control-pin-lamp = Cordon rouge sur la broche de commande, lampe branchée, électrovanne commandée.
lead-black-ground-pin = Cordon noir sur la broche du fil de { -ground }.
lead-red-pin-1 = Cordon rouge sur la broche 1.
lead-black-pin-2 = Cordon noir sur la broche 2.
lead-red-each-pin = Cordon rouge sur une broche, puis l’autre : toutes deux sont de commande.
connector-red-here = cordon rouge
connector-black-here = cordon noir
connector-alt = Connecteur : { $red } { $black }
