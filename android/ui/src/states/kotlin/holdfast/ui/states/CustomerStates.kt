package holdfast.ui.states

import holdfast.core.Action
import holdfast.core.ApprovalScreen
import holdfast.core.Body
import holdfast.core.FieldId
import holdfast.core.FormItem
import holdfast.core.FormScreen
import holdfast.core.Section

private val costs = listOf(
    Section(
        "",
        listOf(
            FormItem.Options(one("These costs are", option("an estimate", true), option("charged for work done"))),
            FormItem.Entry(field("The estimate is good for", "14", "days", id = FieldId.ValidDays)),
            FormItem.Entry(field("Currency", "EUR", id = FieldId.Currency)),
        ),
    ),
    Section(
        "Part",
        listOf(
            FormItem.Entry(field("Line 1: what", "Vacuum hose 3.5 mm, 0.9 m", id = FieldId.CostWords(0u))),
            FormItem.Entry(field("Line 1: quantity", "1", id = FieldId.CostQuantity(0u))),
            FormItem.Entry(field("Line 1: price of one, without tax", "18.90", "EUR", id = FieldId.CostPrice(0u))),
            FormItem.Tap(quiet("Take line 1 out", Action.RemoveCost(0u))),
        ),
    ),
    Section("Together", listOf(FormItem.Words("Parts: 18.90\u00a0EUR"), FormItem.Words("Total: 22.49\u00a0EUR"))),
)

private val decision = listOf(
    Section(
        "",
        listOf(
            FormItem.Options(one("The customer says", option("Agreed", true), option("Put off"), option("Refused"))),
            FormItem.Entry(field("The work", "Replace the rear hose", id = FieldId.DecidedWork)),
        ),
    ),
    Section("Signature", listOf(FormItem.Entry(field("Name of who signs", "A. Example", id = FieldId.Signer)))),
)

private val padButtons = listOf(plain("Take the last stroke back", Action.Undo), quiet("Wipe the pad", Action.WipeInk))

/** What the customer sees and signs. */
internal val customerStates = listOf(
    state("costs", "Costs", Body.Costs(FormScreen(costs, primary("Keep these costs")))),
    state("approval", "Customer's decision", Body.Approval(ApprovalScreen(decision, padScene(), padButtons, primary("Keep it")))),
)
