### Vue d’ensemble et diagnostic.

overview-subject = { $vehicle } – { $complaint }
overview-minutes = Environ { $minutes }
overview-takes = Prend { $minutes }
overview-go = Faites ceci ensuite
overview-look-again = Regardez encore : { $test }
overview-go-again = Regarder encore
overview-open-test = Ouvrir
overview-to-finding = Voir le diagnostic
overview-finding = Diagnostic à ce stade
overview-log = Journal et photos
overview-report = Rapport

finding-likeliest = Le plus probable à ce stade : { $cause }.
finding-not-clear = La cause n’est pas encore claire.
finding-nothing-known = On ne sait encore rien.
finding-part = Cause : { $parts }. Le plus probable : { $cause }.
finding-part-aside = Un défaut, mais pas celui de la plainte : { $parts }. Le plus probable : { $cause }.
finding-tester = La pompe manuelle elle-même fuit. Rien n’est encore prouvé sur la voiture.
finding-sound = Ces essais n’ont trouvé aucun défaut dans ce circuit.
finding-explains = Cela explique la plainte.
finding-explains-not = Cela n’explique pas la plainte : elle a une autre cause.
finding-explains-no-complaint = Il n’y a pas de plainte à expliquer.
finding-left-open = Encore possible : { $fault }.
finding-inseparable = Non distingués : { $parts }.
finding-inseparable-more = { $count ->
    [one] Non distingués : { $parts } et une autre pièce.
   *[other] Non distingués : { $parts } et { $count } autres pièces.
}
finding-test-more = Essayer encore : { $test }
finding-report = Faire le rapport

repaired-both = Réparation faite ({ $part }) : l’essai est bon et la plainte a disparu.
repaired-complaint-stays = L’essai est bon maintenant ({ $part }), mais la plainte est toujours là.
repaired-test-only = L’essai est bon maintenant ({ $part }) ; la plainte n’est pas encore revérifiée.
repaired-test = L’essai est bon maintenant : { $part }.
repaired-not = Réparation faite ({ $part }), mais le même essai échoue encore.
certainty-before = Trouvé avant : { $cause } ({ $percent }).
evidence-seen-for = { $seen } { $times } plus probable avec cette cause.
evidence-seen-against = { $seen } { $times } plus probable avec une autre cause.
certainty-none = On ne sait encore rien.
certainty-very-sure = Pratiquement sûr : { $percent }.
certainty-sure = Assez sûr pour agir : { $percent }.
certainty-sure-sound = Assez sûr pour arrêter les essais : { $percent }.
certainty-tester = Probabilité : { $percent }. Étanchez-la ou changez-la, puis réessayez.
certainty-likely = Probable, pas sûr : { $percent }. Un diagnostic compte à partir de { $level }.
certainty-open = Le plus probable à ce stade, avec { $percent } : { $cause }.

what-if-ask = Que changerait chaque résultat ?
what-if-heading = Ce que changerait chaque résultat
what-if-nothing = Cet essai ne changerait rien maintenant.
what-if-line = { $chance } : { $outcome } Alors { $causes }.
what-if-decides = { $chance } : { $outcome } Cela trancherait : { $causes }.
what-if-cause = { $cause } ({ $percent })
