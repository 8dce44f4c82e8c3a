### What the work costs, and what the customer says to it.

costs-title = Costs
costs-stage = These costs are
costs-stage-estimate = an estimate
costs-stage-charged = charged for work done
costs-valid-days = The estimate is good for
costs-days = days
costs-days-range = Enter 1 to { $most } days.
costs-currency = Currency
costs-currency-hint = Three letters, such as EUR
costs-currency-missing = Enter the currency first.
costs-currency-unknown = No such currency. Enter its three letters, such as EUR.
costs-tax-parts = Tax on parts and other items
costs-tax-labour = Tax on { -labor }
costs-kind-part = Part
costs-kind-labour = { -labor-start }
costs-kind-other = Other
costs-add-part = Add a part
costs-add-labour = Add { -labor }
costs-add-other = Add another item
costs-what = What
costs-what-missing = Say what it is.
costs-quantity = Quantity
costs-line-what = Line { $line }: what
costs-line-quantity = Line { $line }: quantity
costs-line-hours = Line { $line }: hours
costs-line-price = Line { $line }: price of one, without tax
costs-line-rate = Line { $line }: price of an hour, without tax
costs-remove = Take line { $line } out
costs-not-a-figure = Enter a figure, such as 12.50.
costs-decimals = { $most ->
    [0] No decimals here.
    [one] At most one decimal.
   *[other] At most { $most } decimals.
}
costs-too-large = That is too large.
costs-sum = Together
costs-sum-part = Parts
costs-sum-labour = { -labor-start }
costs-sum-other = Other
costs-tax = Tax { $rate } on { $on }
costs-total = Total
costs-each = Each
costs-amount = Amount, { $currency }
costs-rounding = Each amount is rounded to the smallest unit of the currency, and so is the tax on the sum of each rate; halves go up.
costs-done = Keep these costs

approval-title = Customer's decision
approval-decision = The customer says
approval-agreed = Agreed
approval-put-off = Put off
approval-refused = Refused
approval-handed-over = Handed over
approval-work = The work
approval-repaired = Repaired: { $part }
approval-signature = Signature
approval-name = Name of who signs
approval-name-missing = Enter the name first.
approval-pad = { $count ->
    [0] Signature pad, empty
    [one] Signature pad, { $count } stroke
   *[other] Signature pad, { $count } strokes
}
approval-pad-hint = Sign here with a finger
approval-pad-empty = Nothing is drawn yet.
approval-undo = Take the last stroke back
approval-wipe = Wipe the pad
approval-keep = Keep it
approval-said = { $decision }. { $name }
approval-said-of = { $decision }: { $work }. { $name }
