### Ce que coûte le travail et ce que dit le client.

costs-title = Coûts
costs-stage = Ces coûts sont
costs-stage-estimate = un devis
costs-stage-charged = facturés pour un travail fait
costs-valid-days = Le devis est valable
costs-days = jours
costs-days-range = Entrez de 1 à { $most } jours.
costs-currency = Monnaie
costs-currency-hint = Trois lettres, comme EUR
costs-currency-missing = Entrez d’abord la monnaie.
costs-currency-unknown = Cette monnaie n’existe pas. Entrez ses trois lettres, comme EUR.
costs-tax-parts = Taxe sur les pièces et le reste
costs-tax-labour = Taxe sur la main-d’œuvre
costs-kind-part = Pièce
costs-kind-labour = Main-d’œuvre
costs-kind-other = Autre
costs-add-part = Ajouter une pièce
costs-add-labour = Ajouter de la main-d’œuvre
costs-add-other = Ajouter autre chose
costs-what = Quoi
costs-what-missing = Dites ce que c’est.
costs-quantity = Quantité
costs-line-what = Ligne { $line } : quoi
costs-line-quantity = Ligne { $line } : quantité
costs-line-hours = Ligne { $line } : heures
costs-line-price = Ligne { $line } : prix unitaire hors taxe
costs-line-rate = Ligne { $line } : prix de l’heure hors taxe
costs-remove = Retirer la ligne { $line }
costs-not-a-figure = Entrez un nombre, comme 12,50.
costs-decimals = { $most ->
    [0] Sans décimales ici.
    [one] Une décimale au plus.
   *[other] { $most } décimales au plus.
}
costs-too-large = C’est trop grand.
costs-sum = Ensemble
costs-sum-part = Pièces
costs-sum-labour = Main-d’œuvre
costs-sum-other = Autres
costs-tax = Taxe { $rate } sur { $on }
costs-total = Total
costs-each = Prix unitaire
costs-amount = Montant, { $currency }
costs-rounding = Chaque montant est arrondi à la plus petite unité de la monnaie, de même que la taxe sur la somme de chaque taux ; les moitiés vont vers le haut.
costs-done = Garder ces coûts

approval-title = Décision du client
approval-decision = Le client dit
approval-agreed = D’accord
approval-put-off = Reporté
approval-refused = Refusé
approval-handed-over = Remis
approval-work = Le travail
approval-repaired = Réparé : { $part }
approval-signature = Signature
approval-name = Nom de qui signe
approval-name-missing = Entrez d’abord le nom.
approval-pad = { $count ->
    [0] Zone de signature, vide
    [one] Zone de signature, { $count } trait
   *[other] Zone de signature, { $count } traits
}
approval-pad-hint = Signez ici avec le doigt
approval-pad-empty = Rien n’est encore dessiné.
approval-undo = Annuler le dernier trait
approval-wipe = Effacer la signature
approval-keep = Garder
approval-said = { $decision }. { $name }
approval-said-of = { $decision } : { $work }. { $name }
