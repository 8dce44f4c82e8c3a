package holdfast.ui.states

import holdfast.core.Action
import holdfast.core.Body
import holdfast.core.FieldId
import holdfast.core.FigureSize
import holdfast.core.HoldPhase
import holdfast.core.HoldScreen
import holdfast.core.Keys
import holdfast.core.Live

private fun hold(name: String, phase: HoldPhase, live: Live, figures: FigureSize = FigureSize.USUAL) =
    state(name, "Hold test of the branch", Body.Hold(HoldScreen(gaugeScene(), live, phase)), figures = figures)

private val watch =
    HoldPhase.Watch("Watch the needle. Touch nothing.", listOf(plain("Read now", Action.ReadNow), quiet("Start again", Action.StartAgain)))

private val pump = HoldPhase.Pump(
    "Pump to 20 inHg. The band shows it.",
    "12 strokes",
    listOf(plain("+1 stroke", Action.Stroke), plain("−1", Action.UnStroke)),
    primary("Let go", Action.LetGo),
    listOf(quiet("It won't get there", Action.WillNotBuild)),
)

private val read = HoldPhase.Read(
    "What does the gauge show now?",
    field("Reading", "20", "inHg", "From 0 to 30", keys = Keys.NUMBER, id = FieldId.GaugeReading),
    primary("Take it"),
    listOf(plain("Start again", Action.StartAgain)),
)

internal val holdStates = listOf(
    hold("hold-pump", pump, Live("", 292.5f, "17.5 inHg", "a little more")),
    hold("hold-read", read, Live("", 315f, "20 inHg", "")),
    hold(
        "hold-read-problem",
        HoldPhase.Read(
            "What does the gauge show now?",
            field("Reading", "75", "inHg", keys = Keys.NUMBER, problem = "This gauge reads from 0 to 30 inHg.", id = FieldId.GaugeReading),
            primary("Take it", whyNot = "Put the reading right first."),
            emptyList(),
        ),
        Live("", 405f, "30 inHg", ""),
    ),
    hold("hold-watch", watch, Live("14", 310f, "", "of 20 s")),
    hold("hold-pump-two-metres", pump, Live("", 292.5f, "17.5\ninHg", "a little more"), FigureSize.LARGE),
    hold("hold-read-two-metres", read, Live("", 315f, "20\ninHg", ""), FigureSize.LARGE),
    hold("hold-watch-two-metres", watch, Live("14", 310f, "", "of 20 s"), FigureSize.LARGE),
    hold(
        "hold-interrupted",
        HoldPhase.Interrupted(
            "The hold was cut off after 12 s. One reading was kept.",
            listOf(primary("Start again", Action.StartAgain), plain("Use what there is", Action.UseWhatThereIs)),
        ),
        Live("", 315f, "", ""),
    ),
)
