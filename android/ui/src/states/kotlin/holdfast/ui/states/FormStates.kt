package holdfast.ui.states

import holdfast.core.Acknowledgement
import holdfast.core.Action
import holdfast.core.Body
import holdfast.core.FieldId
import holdfast.core.FormItem
import holdfast.core.FormScreen
import holdfast.core.Keys
import holdfast.core.Section
import holdfast.core.Signal

private val complaint = FormItem.Options(
    many(
        "What is wrong?",
        option("Shakes at idle", picked = true),
        option("Shakes a little at idle"),
        option("Shakes in gear"),
        option("Harsh when pulling away", picked = true),
        option("Clunk"),
        option("A fault code is stored"),
    ),
)

private val vehicle = Body.Vehicle(
    FormScreen(
        listOf(
            Section("Complaint", listOf(complaint, FormItem.Entry(field("In your words", "Shakes the mirrors when warm.", keys = Keys.LINES, id = FieldId.ComplaintNote)))),
            Section(
                "Vehicle",
                listOf(
                    FormItem.Entry(field("Plate", "ABC 123", keys = Keys.CODE, id = FieldId.Plate)),
                    FormItem.Entry(
                        field(
                            "VIN",
                            "1HF0000000000001",
                            keys = Keys.CODE,
                            problem = "A VIN has 17 letters and digits. This one has 16.",
                            id = FieldId.Vin,
                        ),
                    ),
                    FormItem.Entry(field("Odometer", "128000", "km", "As the instrument shows it", keys = Keys.NUMBER, id = FieldId.Odometer)),
                ),
            ),
            Section(
                "Circuit",
                listOf(
                    FormItem.Options(
                        one(
                            "Which drawing is like this engine?",
                            option("Two mounts, one valve", picked = true, detail = "The common one", picture = mapScene()),
                            option("One mount, one valve", detail = "Only the front mount is switched", picture = mapScene()),
                        ),
                    ),
                ),
            ),
        ),
        primary("Go on"),
    ),
)

private val prepare = Body.Prepare(
    FormScreen(
        listOf(
            Section(
                "Mind these today",
                listOf(
                    FormItem.Care(caution(Signal.DANGER, "DANGER", "Exhaust gas kills. Run the engine only in the open.", Acknowledgement.Open(Action.Acknowledge("gas")))),
                    FormItem.Care(caution(Signal.WARNING, "WARNING", "Fans and belts start by themselves. Keep hands and sleeves away.", Acknowledgement.Given)),
                    FormItem.Care(caution(Signal.CAUTION, "CAUTION", "The engine is hot for an hour.")),
                    FormItem.Care(caution(Signal.NOTICE, "NOTICE", "Pull hoses off by their ends. Old plastic breaks.")),
                ),
            ),
            Section(
                "Tools at hand",
                listOf(FormItem.Options(many("What have you got?", option("Hand pump with gauge", true), option("Cap", true), option("Multimeter"), option("Fused jumper")))),
            ),
            Section(
                "Place",
                listOf(
                    FormItem.Entry(field("Altitude", "12000", "m", keys = Keys.NUMBER, problem = "Between -400 and 5,000 m.", id = FieldId.Altitude)),
                    FormItem.State(holds, "Air pressure read from the phone: 98.6 kPa"),
                ),
            ),
        ),
        primary("Start testing", whyNot = "Tick the cautions first."),
    ),
)

private val settings = Body.Settings(
    FormScreen(
        listOf(
            Section("You", listOf(FormItem.Options(one("How much is explained", option("Owner", true), option("Mechanic"))))),
            Section("Gauge", listOf(FormItem.Options(one("Unit", option("inHg", true), option("kPa"), option("mbar"), option("mmHg"), option("bar"), option("psi"))))),
            Section("Finding", listOf(FormItem.Words("A cause counts as found above this certainty."), FormItem.Entry(field("Certainty", "95", "%", "From 80 to 99.9", keys = Keys.NUMBER, id = FieldId.Confidence)))),
        ),
        null,
    ),
)

internal val formStates = listOf(
    state("vehicle", "Vehicle and complaint", vehicle),
    state("prepare", "Before you start", prepare),
    state("settings", "Settings", settings),
)
