### La liste des travaux, la corbeille, les travaux qui voyagent.

jobs-title = Travaux
jobs-search = Chercher
jobs-search-hint = Plaque, véhicule, pièce ou diagnostic
jobs-new = Nouveau travail
jobs-open = Ouvrir
jobs-bin = Mettre à la corbeille
jobs-unnamed = Véhicule sans nom
jobs-none = Pas encore de travaux. Commencez : touchez Nouveau travail.
jobs-none-found = Aucun travail n’a ces mots.
job-begun = Commencé
job-open = En cours
job-closed = Clos
job-repaired = Réparé
jobs-narrow = Restreindre
jobs-widen = Tout montrer
jobs-shelf = Lesquels
jobs-shelf-all = Tous
jobs-shelf-open = En cours
jobs-shelf-closed = Clos
jobs-shelf-bin = À la corbeille
jobs-time = Repris
jobs-time-any = N’importe quand
jobs-time-week = 7 derniers jours
jobs-time-month = 31 derniers jours
jobs-time-year = Dernière année
jobs-time-between = Entre deux jours
jobs-from = Du
jobs-until = Au
jobs-date-hint = 2026-03-14, ou un mois, 2026-03
jobs-date-problem = Écrivez d’abord l’année, comme 2026-03-14.
jobs-more = Montrer plus
jobs-customer = { $name }.
jobs-duplicate = Nouveau travail sur ce véhicule
jobs-pick = Choisir
jobs-select = Choisir des travaux
jobs-select-none = N’en choisir aucun
jobs-none-picked = Touchez d’abord les travaux.
jobs-export-picked = { $count ->
    [0] Exporter des travaux
    [one] Exporter 1 travail
   *[other] Exporter { $count } travaux
}
jobs-export-all = Exporter tout le journal
jobs-import = Reprendre des travaux d’un fichier
jobs-empty-bin = Vider la corbeille
jobs-bin-empty = La corbeille est vide.
notice-empty-bin = Les travaux à la corbeille et leurs photos seront perdus pour de bon.
notice-empty-bin-yes = Effacer pour de bon
notice-empty-bin-no = Les garder
notice-bin-emptied = La corbeille est vide. Ses travaux n’existent plus.

log-export = Exporter ce travail

bundle-file-title = Travaux
bundle-packing = Les travaux sont mis en paquet.
bundle-taking-in = Les travaux sont repris.
bundle-stopped = Arrêté. Ce qui est repris reste.
bundle-took = { $count ->
    [one] 1 travail a du nouveau.
   *[other] { $count } travaux ont du nouveau.
}
bundle-took-nothing = Rien de nouveau dedans.
bundle-left-out = { $count ->
    [one] 1 entrée est laissée de côté : elle diffère de celle d’ici.
   *[other] { $count } entrées sont laissées de côté : elles diffèrent de celles d’ici.
}
bundle-broken-photos = { $count ->
    [one] 1 photo ne se lit pas.
   *[other] { $count } photos ne se lisent pas.
}
bundle-deleted = { $count ->
    [one] 1 travail a été effacé ici et reste effacé.
   *[other] { $count } travaux ont été effacés ici et restent effacés.
}
bundle-take-again = Les reprendre
problem-bundle-none = Ce fichier ne contient pas de travaux.
problem-bundle-newer = Ce fichier vient d’une version plus récente. Mettez l’application à jour, puis reprenez-le.
problem-bundle-cut = Ce fichier finit trop tôt. Renvoyez-le.
problem-bundle-damaged = Ce fichier est abîmé. Rien n’en a été repris.
problem-bundle-file = Ce fichier ne se lit pas.
