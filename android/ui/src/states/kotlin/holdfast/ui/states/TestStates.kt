package holdfast.ui.states

import holdfast.core.Action
import holdfast.core.Body
import holdfast.core.CannotReason
import holdfast.core.Entered
import holdfast.core.FormItem
import holdfast.core.Meaning
import holdfast.core.OwnPhoto
import holdfast.core.Signal
import holdfast.core.Step
import holdfast.core.TestScreen
import holdfast.core.TestStage

private val steps = listOf(
    Step(listOf(caution(Signal.WARNING, "WARNING", "Switch the engine off before you reach in.")), "Switch off the engine and take out the key."),
    Step(emptyList(), "Pull the hose off the valve's outlet."),
    Step(listOf(caution(Signal.NOTICE, "NOTICE", "Turn the hose on its pipe before you pull.")), "Put the hand pump's adapter into the hose."),
    Step(emptyList(), "Pump to the band on the gauge, then let go."),
)

internal val testStates = listOf(
    state(
        "test-brief",
        "Hold test of the branch",
        Body.Test(
            TestScreen(
                mapScene(),
                OwnPhoto(connectorScene(), "Valve of Blue estate: it is here."),
                "At the valve's outlet hose",
                TestStage.Brief(
                    why = "It tests five parts at once, and takes 4 minutes.",
                    needs = listOf("Hand pump with gauge", "Adapter", "Engine off"),
                    steps = steps,
                    means = listOf(
                        Meaning(holds, "Hoses, tee and mounts are tight."),
                        Meaning(leaks, "One of the five parts leaks. They are tested one by one."),
                    ),
                    start = primary("Start", Action.BeginTest),
                    cannot = listOf(
                        quiet("Can't reach it", Action.CannotDo(CannotReason.NO_ACCESS)),
                        quiet("No tool for it", Action.CannotDo(CannotReason.NO_TOOL)),
                    ),
                    extras = listOf(FormItem.Tap(plain("Photograph the place"))),
                ),
            ),
        ),
    ),
    state(
        "test-question",
        "Hold test of the branch",
        Body.Test(
            TestScreen(
                null,
                null,
                "",
                TestStage.Question(
                    "67 inHg is more vacuum than the air here allows. Is it 67 kPa on the gauge's other scale?",
                    Entered(
                        "You entered",
                        listOf("67 inHg, 60 inHg after 20 s; 19 strokes"),
                        listOf("Gauge 0–100 inHg, division 1, grade B, read to 0.5", "Entered November 25, 2026 at 9:10 AM"),
                    ),
                    listOf(primary("Change it", Action.ChangeReading), plain("Keep 67 inHg", Action.KeepReading)),
                ),
            ),
        ),
    ),
    state(
        "test-result",
        "Hold test of the branch",
        Body.Test(
            TestScreen(
                null,
                null,
                "",
                TestStage.Result(
                    leaks,
                    "Lost 6.5 inHg in 20 s. 0.5 inHg is allowed.",
                    "One of five parts leaks: hoses, tee or a mount.",
                    listOf("Leak 41 std cm³/min (35 to 48)", "Like a hole of 0.22 mm", "Trapped volume 180 cm³, known to 6 %"),
                    chartScene(),
                    listOf(primary("Go on"), plain("Do it again", Action.RedoTest), quiet("Put the reading right", Action.CorrectReading)),
                    listOf(FormItem.Tap(plain("Photograph the gauge"))),
                ),
            ),
        ),
    ),
    state(
        "test-result-undecided",
        "Hold test of the tee",
        Body.Test(
            TestScreen(
                null,
                null,
                "",
                TestStage.Result(
                    undecided,
                    "Too close to call on this gauge.",
                    "34 s more would tell.",
                    listOf("Lost 0.4 inHg in 20 s"),
                    chartScene(),
                    listOf(primary("Go on for 34 s", Action.GoOn), plain("Leave it undecided")),
                    emptyList(),
                ),
            ),
        ),
    ),
)
