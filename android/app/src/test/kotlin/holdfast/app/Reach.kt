package holdfast.app

import androidx.compose.ui.semantics.SemanticsActions
import androidx.compose.ui.semantics.SemanticsNode
import androidx.compose.ui.semantics.SemanticsProperties
import androidx.compose.ui.semantics.getOrNull
import androidx.compose.ui.test.SemanticsMatcher
import androidx.compose.ui.test.junit4.ComposeTestRule

/** Everything that can be tapped or typed into. */
private val touchable = SemanticsMatcher("can be touched") {
    it.config.contains(SemanticsActions.OnClick) || it.config.contains(SemanticsActions.SetText)
}

/** What keeps a finger or a screen reader from this screen: too small, or without a name. */
internal fun ComposeTestRule.outOfReach(): List<String> {
    val least = with(density) { LEAST_DP * density }
    return onAllNodes(touchable).fetchSemanticsNodes().flatMap { node ->
        val name = node.name()
        val size = node.touchBoundsInRoot
        listOfNotNull(
            "something without a name at ${node.positionInRoot}".takeIf { name.isBlank() },
            "'$name' is ${size.width} by ${size.height} pixels".takeIf {
                // What is scrolled half out of the window is cut off there, so the whole node counts.
                maxOf(node.size.width.toFloat(), size.width) < least - 1 || maxOf(node.size.height.toFloat(), size.height) < least - 1
            },
        )
    }
}

private const val LEAST_DP = 48f

private fun SemanticsNode.name(): String = listOfNotNull(
    config.getOrNull(SemanticsProperties.ContentDescription)?.joinToString(" "),
    config.getOrNull(SemanticsProperties.Text)?.joinToString(" "),
    config.getOrNull(SemanticsProperties.EditableText)?.text,
).joinToString(" ")
