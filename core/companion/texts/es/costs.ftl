### Lo que cuesta el trabajo y lo que dice el cliente.

costs-title = Costes
costs-stage = Estos costes son
costs-stage-estimate = un presupuesto
costs-stage-charged = cobrados por trabajo hecho
costs-valid-days = El presupuesto vale
costs-days = días
costs-days-range = Introduce de 1 a { $most } días.
costs-currency = Moneda
costs-currency-hint = Tres letras, como EUR
costs-currency-missing = Introduce primero la moneda.
costs-currency-unknown = Esa moneda no existe. Introduce sus tres letras, como EUR.
costs-tax-parts = Impuesto sobre piezas y otros
costs-tax-labour = Impuesto sobre mano de obra
costs-kind-part = Pieza
costs-kind-labour = Mano de obra
costs-kind-other = Otro
costs-add-part = Añadir una pieza
costs-add-labour = Añadir mano de obra
costs-add-other = Añadir otra cosa
costs-what = Qué
costs-what-missing = Di qué es.
costs-quantity = Cantidad
costs-line-what = Línea { $line }: qué
costs-line-quantity = Línea { $line }: cantidad
costs-line-hours = Línea { $line }: horas
costs-line-price = Línea { $line }: precio por unidad, sin impuesto
costs-line-rate = Línea { $line }: precio por hora, sin impuesto
costs-remove = Quitar la línea { $line }
costs-not-a-figure = Introduce una cifra, como 12,50.
costs-decimals = { $most ->
    [0] Aquí sin decimales.
    [one] Como mucho un decimal.
   *[other] Como mucho { $most } decimales.
}
costs-too-large = Es demasiado grande.
costs-sum = En total
costs-sum-part = Piezas
costs-sum-labour = Mano de obra
costs-sum-other = Otros
costs-tax = Impuesto { $rate } sobre { $on }
costs-total = Total
costs-each = Por unidad
costs-amount = Importe, { $currency }
costs-rounding = Cada importe se redondea a la unidad más pequeña de la moneda, y también el impuesto sobre la suma de cada tipo; las mitades suben.
costs-done = Guardar estos costes

approval-title = Decisión del cliente
approval-decision = El cliente dice
approval-agreed = De acuerdo
approval-put-off = Aplazado
approval-refused = Rechazado
approval-handed-over = Entregado
approval-work = El trabajo
approval-repaired = Reparado: { $part }
approval-signature = Firma
approval-name = Nombre de quien firma
approval-name-missing = Introduce primero el nombre.
approval-pad = { $count ->
    [0] Espacio para la firma, vacío
    [one] Espacio para la firma, { $count } trazo
   *[other] Espacio para la firma, { $count } trazos
}
approval-pad-hint = Firma aquí con el dedo
approval-pad-empty = Aún no hay nada dibujado.
approval-undo = Deshacer el último trazo
approval-wipe = Borrar la firma
approval-keep = Guardar
approval-said = { $decision }. { $name }
approval-said-of = { $decision }: { $work }. { $name }
