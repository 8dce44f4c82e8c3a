package holdfast.ui.demo

import holdfast.core.Acknowledgement
import holdfast.core.Action
import holdfast.core.ApprovalScreen
import holdfast.core.Body
import holdfast.core.Button
import holdfast.core.ButtonWeight
import holdfast.core.CannotReason
import holdfast.core.Choice
import holdfast.core.Field
import holdfast.core.FieldId
import holdfast.core.FormItem
import holdfast.core.FormScreen
import holdfast.core.HoldPhase
import holdfast.core.HoldScreen
import holdfast.core.PhotoScreen
import holdfast.core.PhotoSource
import holdfast.core.Pick
import holdfast.core.Picked
import holdfast.core.Place
import holdfast.core.ReportScreen
import holdfast.core.ReportState
import holdfast.core.Said
import holdfast.core.Screen
import holdfast.core.TestStage
import holdfast.core.YesNoScreen
import org.json.JSONObject

/**
 * A mechanic with a [scenario] who looks at the screen and does what it asks, from an empty list of jobs to the
 * shared report. Knows nothing of the order of the tests: the core decides that. Where the phone at hand has
 * [pictures] to give, the split hose and the new one are photographed and marked.
 */
class DemoPerson(private val scenario: Scenario = Scenario.given(), private val pictures: Boolean = false) {
    private var test = ""
    private var strokes = 0
    private var asked = 0
    private var watchedMs = 0L
    private var repaired = false
    private var marked = 0
    private var ringed = false
    private var priced = false
    private var signed = false
    private var shared = false

    /** What to do on this screen; the caller does it before asking again. */
    fun next(screen: Screen): Deed {
        val deed = look(screen)
        if (deed is Deed.Tap) remember(deed.button.action)
        if (deed is Deed.Wait) watchedMs += deed.ms
        return deed
    }

    private fun look(screen: Screen): Deed = when (val body = screen.body) {
        is Body.Jobs -> Deed.Tap(body.jobs.newJob)
        is Body.Vehicle -> vehicle(body.form)
        is Body.Prepare -> prepare(body.form)
        is Body.Overview -> Deed.Tap(body.overview.next.go)
        is Body.Test -> test(body.test.stage)
        is Body.Hold -> hold(body.hold)
        is Body.Meter -> values(body.meter.items, body.meter.confirm)
        is Body.Vibration -> values(body.meter.items, body.meter.confirm)
        is Body.YesNo -> say(body.ask)
        is Body.LookOver -> Deed.Tap(body.look.done)
        is Body.Finding -> finding(body.finding.buttons)
        is Body.Repaired -> repair(FormScreen(body.repair.sections, body.repair.next))
        is Body.Report -> report(body.report)
        is Body.Costs -> costs(body.form)
        is Body.Approval -> approve(body.approval)
        is Body.Photo -> mark(body.photo)
        is Body.Log, is Body.Settings -> screen.frame.back?.let { Deed.Tap(it) } ?: Deed.Leave
    }

    private fun remember(action: Action) {
        when (action) {
            is Action.ShowTest -> test = action.test
            is Action.BeginTest, is Action.StartAgain -> {
                strokes = 0
                asked = 0
                watchedMs = 0
            }
            is Action.LetGo -> watchedMs = 0
            is Action.Stroke -> strokes += 1
            is Action.Say -> asked += 1
            is Action.RepairDone -> repaired = true
            is Action.Go -> strokes = 0
            else -> Unit
        }
    }

    private fun vehicle(form: FormScreen): Deed =
        write(form, FieldId.Plate, scenario.paper.getString("plate"))
            ?: write(form, FieldId.Label, scenario.label)
            ?: write(form, FieldId.Odometer, scenario.paper.getString("odometer"))
            ?: choose(form) { it is Pick.Complaint && it.id in scenario.complaints }
            ?: write(form, FieldId.ComplaintNote, scenario.paper.getString("note"))
            ?: choose(form) { it == Pick.Template(scenario.circuit) }
            ?: choose(form) { it == Pick.Profile(scenario.profile) }
            ?: goOn(form)

    private fun prepare(form: FormScreen): Deed =
        tick(form.sections.flatMap { it.items }.filterIsInstance<FormItem.Care>().map { it.caution })
            ?: scenario.altitude?.let { write(form, FieldId.Altitude, it) }
            ?: choose(form) { it == Pick.GaugeUnit(scenario.gaugeUnit) }
            ?: choose(form) { it is Pick.Tool && scenario.tools?.contains(it.id) != false }
            ?: goOn(form)

    private fun tick(cautions: List<holdfast.core.Caution>): Deed? = cautions.firstNotNullOfOrNull { caution ->
        (caution.ack as? Acknowledgement.Open)?.let { Deed.Tick(caution, it.action) }
    }

    private fun test(stage: TestStage): Deed = when (stage) {
        is TestStage.Brief -> if (scenario.answer(test, repaired) == null) {
            Deed.Tap(stage.cannot.first { it.action == Action.CannotDo(CannotReason.NOT_AVAILABLE) })
        } else {
            tick(stage.steps.flatMap { it.cautions }) ?: Deed.Tap(stage.start)
        }
        is TestStage.Question -> Deed.Tap(stage.buttons.first { it.action is Action.KeepReading })
        is TestStage.Result -> photograph(stage.extras) ?: Deed.Tap(stage.buttons.first())
    }

    /** A photo of the hose alone, before and after its repair; then it is opened to be marked. */
    private fun photograph(extras: List<FormItem>): Deed? {
        val wanted = pictures && test == "hold:${scenario.replaced}" && marked == (if (repaired) 1 else 0)
        if (!wanted) return null
        val photo = extras.filterIsInstance<FormItem.Photo>().getOrNull(marked)
        if (photo != null) return Deed.Tap(Button(photo.photo.caption, photo.photo.open, ButtonWeight.QUIET, null))
        return extras.filterIsInstance<FormItem.Tap>().map { it.button }
            .firstOrNull { (it.action as? Action.AddPhoto)?.from == PhotoSource.CAMERA }
            ?.let { Deed.Tap(it) }
    }

    /** A ring round the end of the hose and a caption. */
    private fun mark(photo: PhotoScreen): Deed {
        val ring = photo.palette.options.first { it.action == Action.Pick(Pick.MarkTool("ring")) }
        val caption = scenario.paper.getJSONObject("photos").getString(if (repaired) "after" else "before")
        return when {
            ring.picked == Picked.NO && !ringed -> Deed.Choose(ring, 0)
            !ringed -> Deed.Mark(photo.scene, photo.scene.width * 0.585f, photo.scene.width * 0.375f).also { ringed = true }
            photo.caption.value != caption -> Deed.Write(photo.caption, caption)
            else -> Deed.Tap(photo.buttons.first()).also {
                marked += 1
                ringed = false
            }
        }
    }

    private fun hold(hold: HoldScreen): Deed = when (val phase = hold.phase) {
        is HoldPhase.Pump -> pump(phase, hold)
        is HoldPhase.Read -> read(phase)
        is HoldPhase.Watch -> Deed.Wait(1_000)
        is HoldPhase.Interrupted -> Deed.Tap(phase.buttons.first())
    }

    private fun pump(phase: HoldPhase.Pump, hold: HoldScreen): Deed {
        val stroke = phase.count.firstOrNull { it.action is Action.Stroke }
        return when {
            stroke != null && strokes < STROKES -> Deed.Tap(stroke)
            strokes == STROKES -> {
                strokes += 1
                // Up the dial or not far: the needle follows the finger.
                if (scenario.highest(test, repaired) == null) at(hold, 0.75f, 0.2f) else at(hold, 0.1f, 0.6f)
            }
            else -> Deed.Tap(if (scenario.highest(test, repaired) == null) phase.letGo else phase.others.first())
        }
    }

    private fun at(hold: HoldScreen, right: Float, down: Float) =
        Deed.Drag(hold.gauge.width * right, hold.gauge.height * down)

    private fun read(phase: HoldPhase.Read): Deed {
        val reading = scenario.highest(test, repaired) ?: scenario.reading(test, repaired, watchedMs / 1_000.0)
        return if (reading == null || phase.field.value == reading) Deed.Tap(phase.confirm) else Deed.Write(phase.field, reading)
    }

    private fun values(items: List<FormItem>, confirm: Button): Deed {
        val answer = scenario.answer(test, repaired)
        items.filterIsInstance<FormItem.Entry>().forEach { entry ->
            val key = (entry.field.id as? FieldId.Answer)?.key ?: return@forEach
            val wanted = Scenario.typed(answer?.opt(key)) ?: return@forEach
            if (entry.field.value != wanted) return Deed.Write(entry.field, wanted)
        }
        val form = FormScreen(listOf(holdfast.core.Section("", items)), null)
        return choose(form) { it is Pick.Answer && picked(answer?.opt(it.key)) == it.value } ?: Deed.Tap(confirm)
    }

    private fun picked(value: Any?): String? = if (value is Boolean) (if (value) "yes" else "no") else Scenario.typed(value)

    private fun say(ask: YesNoScreen): Deed {
        val said = scenario.said(test, repaired).getOrElse(asked) { Said.NOT_SURE }
        return Deed.Tap(ask.answers.firstOrNull { it.action == Action.Say(said) } ?: ask.notSure)
    }

    private fun finding(buttons: List<Button>): Deed {
        val repair = buttons.firstOrNull { it.action == Action.Repair(scenario.replaced) }
        val close = buttons.firstOrNull { it.action is Action.CloseJob }
        return Deed.Tap(if (repaired || repair == null) close ?: buttons.first() else repair)
    }

    private fun repair(form: FormScreen): Deed =
        write(form, FieldId.RepairPart, scenario.paper.getString("part")) ?: goOn(form)

    private fun report(report: ReportScreen): Deed = when (val state = report.state) {
        is ReportState.ToMake -> go(report, Place.COSTS, priced) ?: go(report, Place.APPROVAL, signed) ?: Deed.Tap(state.make)
        is ReportState.Working -> Deed.Wait(100)
        is ReportState.Ready -> if (shared) Deed.Leave else Deed.Tap(state.share).also { shared = true }
    }

    /** The way to a screen of the customer's, until it was filled in. */
    private fun go(report: ReportScreen, to: Place, done: Boolean): Deed? = report.sections
        .flatMap { it.items }
        .mapNotNull { (it as? FormItem.Tap)?.button }
        .firstOrNull { it.action == Action.Go(to) && !done }
        ?.let { Deed.Tap(it) }

    private fun costs(form: FormScreen): Deed {
        val costs = scenario.paper.getJSONObject("costs")
        val lines = costs.getJSONArray("lines").objects().withIndex()
        return choose(form) { it == Pick.CostStage("charged") }
            ?: write(form, FieldId.Currency, costs.getString("currency"))
            ?: write(form, FieldId.TaxParts, costs.getString("tax_parts"))
            ?: write(form, FieldId.TaxLabour, costs.getString("tax_labour"))
            ?: lines.firstNotNullOfOrNull { (place, line) -> costLine(form, place.toUInt(), line) }
            ?: goOn(form).also { priced = true }
    }

    private fun costLine(form: FormScreen, place: UInt, line: JSONObject): Deed? =
        write(form, FieldId.CostWords(place), line.getString("words"))
            ?: line.optString("quantity").ifEmpty { null }?.let { write(form, FieldId.CostQuantity(place), it) }
            ?: write(form, FieldId.CostPrice(place), line.getString("price"))

    private fun approve(approval: ApprovalScreen): Deed {
        val form = FormScreen(approval.sections, approval.next)
        val stroke = scenario.signature.getOrNull(strokes)
        return write(form, FieldId.Signer, scenario.paper.getString("signer"))
            ?: stroke?.let { Deed.Sign(approval.pad, it) }?.also { strokes += 1 }
            ?: goOn(form).also { signed = true }
    }

    private fun goOn(form: FormScreen): Deed = form.next?.let { Deed.Tap(it) } ?: Deed.Leave

    private fun write(form: FormScreen, id: FieldId, text: String): Deed? {
        val field: Field? = form.sections.flatMap { it.items }
            .firstNotNullOfOrNull { item -> (item as? FormItem.Entry)?.field?.takeIf { it.id == id } }
        return field?.takeIf { it.value != text }?.let { Deed.Write(it, text) }
    }

    /** The first option that is wanted and not picked. */
    private fun choose(form: FormScreen, wanted: (Pick) -> Boolean): Deed? {
        val options = form.sections.flatMap { it.items }
            .mapNotNull { (it as? FormItem.Options)?.choice }
            .flatMap(Choice::options)
        val index = options.indexOfFirst { option ->
            val pick = (option.action as? Action.Pick)?.pick
            pick != null && option.picked == Picked.NO && wanted(pick)
        }
        if (index < 0) return null
        val option = options[index]
        return Deed.Choose(option, options.take(index).count { it.label == option.label })
    }

    private companion object {
        const val STROKES = 5
    }
}
