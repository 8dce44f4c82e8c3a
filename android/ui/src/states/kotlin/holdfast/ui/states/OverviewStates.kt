package holdfast.ui.states

import holdfast.core.Action
import holdfast.core.Body
import holdfast.core.CauseRow
import holdfast.core.Mark
import holdfast.core.NextCard
import holdfast.core.OverviewScreen
import holdfast.core.TestRow

internal val causes = listOf(
    CauseRow("Front hose leaks", "62 %", 620u),
    CauseRow("Front mount leaks", "21 %", 210u),
    CauseRow("Tee leaks", "9 %", 90u),
)

private fun test(title: String, detail: String, mark: Mark) =
    TestRow(title, detail, mark, plain("Open", Action.ShowTest(title)))

internal val overviewStates = listOf(
    state(
        "overview",
        "Where we stand",
        Body.Overview(
            OverviewScreen(
                subject = "ABC 123 · Blue estate · shakes at idle",
                next = NextCard(
                    "Hold test of the front hose",
                    "It splits the two likeliest causes, and the hose is easy to reach.",
                    "about 5 minutes",
                    primary("Show me how", Action.ShowTest("hold:front_hose")),
                ),
                map = mapScene(),
                causes = causes,
                tests = listOf(
                    test("Look over", "nothing seen", holds),
                    test("Hand pump, capped", "lost nothing in 60 s", holds),
                    test("Hold test of the branch", "lost 6.5 inHg in 20 s", leaks),
                    test("Hold test of the front mount", "lost 0.8 inHg in 20 s", slowLeak),
                    test("Hold test of the rear mount", "no access", cantDo),
                    test("Hold test of the tee", "too close to call", undecided),
                    test("Hold test of the rear hose", "got to 6 inHg", wontBuild),
                    test("Voltage at the valve", "4 minutes", notDone),
                ),
                buttons = listOf(plain("Finding so far"), quiet("Photos and log")),
            ),
        ),
    ),
)
