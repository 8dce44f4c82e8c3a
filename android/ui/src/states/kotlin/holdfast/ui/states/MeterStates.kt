package holdfast.ui.states

import holdfast.core.Body
import holdfast.core.FieldId
import holdfast.core.FigureSize
import holdfast.core.FormItem
import holdfast.core.Keys
import holdfast.core.MeterScreen

private fun volts(label: String, value: String, problem: String? = null) = FormItem.Entry(
    field(label, value, "V", if (problem == null) "From 0 to 30" else "", problem, Keys.NUMBER, FieldId.Answer(label)),
)

private fun valve(vararg readings: FormItem.Entry) = Body.Meter(
    MeterScreen(
        connectorScene(),
        null,
        null,
        listOf("Red lead on pin 1, then on pin 2.", "Black lead on bare metal of the engine."),
        "DC volts, range 20 V",
        readings.toList(),
        bandScene(),
        primary("Take these"),
    ),
)

internal val meterStates = listOf(
    state(
        "meter",
        "Voltage at the valve",
        valve(volts("Pin 1", "12.4"), volts("Pin 2", "99", "Between 0 and 30 V."), volts("Battery", "")),
    ),
    state(
        "meter-two-metres",
        "Voltage at the valve",
        valve(volts("Pin 1", "12.4"), volts("Pin 2", "0.02")),
        figures = FigureSize.LARGE,
    ),
    state(
        "vibration",
        "Vibration",
        Body.Vibration(
            MeterScreen(
                null,
                null,
                null,
                listOf("Sit in the driver's seat, hand on the wheel."),
                "Same gear, same rpm, both times.",
                listOf(
                    FormItem.Options(one("With vacuum", option("0 none"), option("1 a little", true), option("2 clear"), option("3 strong"))),
                    FormItem.Options(one("Without vacuum", option("0 none"), option("1 a little"), option("2 clear"), option("3 strong", true))),
                ),
                null,
                primary("Take these"),
            ),
        ),
    ),
)
