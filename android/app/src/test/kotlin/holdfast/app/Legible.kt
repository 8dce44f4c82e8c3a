package holdfast.app

import androidx.compose.ui.geometry.Rect
import androidx.compose.ui.semantics.Role
import androidx.compose.ui.semantics.SemanticsActions
import androidx.compose.ui.semantics.SemanticsNode
import androidx.compose.ui.semantics.SemanticsProperties
import androidx.compose.ui.semantics.getOrNull
import androidx.compose.ui.test.SemanticsMatcher
import androidx.compose.ui.test.isRoot
import androidx.compose.ui.test.junit4.ComposeTestRule
import androidx.compose.ui.text.TextLayoutResult
import androidx.compose.ui.unit.IntSize

/** What can't be read on this screen: text cut off by its own box, pushed off the window's side, or out of any scroll's reach. */
internal fun ComposeTestRule.cutOff(): List<String> {
    val everything = onAllNodes(SemanticsMatcher("anything") { true }, useUnmergedTree = true).fetchSemanticsNodes()
    val window = onAllNodes(isRoot()).fetchSemanticsNodes().first().size
    return everything.mapNotNull { node -> node.words()?.let { it to node } }.flatMap { (words, node) ->
        val left = node.positionInWindow.x
        val right = left + node.size.width
        val unscrolled = node.ancestors().none { it.config.contains(SemanticsActions.ScrollBy) }
        listOfNotNull(
            "'$words' is cut off".takeIf { node.layouts().any { it.isCutIn(node.size) } },
            "'$words' leaves the side: $left to $right of ${window.width}"
                .takeIf { !node.isInSideScroll() && (left < -1 || right > window.width + 1) },
            "'$words' is below the window and nothing scrolls to it"
                .takeIf { unscrolled && node.positionInWindow.y + node.size.height > window.height + 1 },
        )
    }
}

private fun SemanticsNode.words(): String? =
    config.getOrNull(SemanticsProperties.Text)?.joinToString(" ") ?: config.getOrNull(SemanticsProperties.EditableText)?.text

/** How the words were laid out; what is typed may be longer than its field and moves in it. */
private fun SemanticsNode.layouts(): List<TextLayoutResult> {
    if (config.contains(SemanticsActions.SetText)) return emptyList()
    val laid = mutableListOf<TextLayoutResult>()
    config.getOrNull(SemanticsActions.GetTextLayoutResult)?.action?.invoke(laid)
    return laid
}

/** Whether a line is shortened, wider than its box, or below it. (`hasVisualOverflow` is not told right for plain text.) */
private fun TextLayoutResult.isCutIn(box: IntSize): Boolean {
    val lines = 0 until lineCount
    return lines.any { isLineEllipsized(it) || getLineRight(it) - getLineLeft(it) > box.width + 1.5f } ||
        getLineBottom(lineCount - 1) > box.height + 1.5f
}

/** The type size of the tallest figure that is seen without scrolling. */
internal fun ComposeTestRule.tallestFigureDp(): Float {
    val window = onAllNodes(isRoot()).fetchSemanticsNodes().first().size
    val nodes = onAllNodes(SemanticsMatcher("anything") { true }, useUnmergedTree = true).fetchSemanticsNodes()
    val figures = nodes.filter { node ->
        node.words().orEmpty().any(Char::isDigit) && node.positionInWindow.y + node.size.height <= window.height
    }
    return figures.flatMap { it.typeSizes() }.maxOrNull() ?: 0f
}

private fun SemanticsNode.typeSizes(): List<Float> {
    val laid = mutableListOf<TextLayoutResult>()
    config.getOrNull(SemanticsActions.GetTextLayoutResult)?.action?.invoke(laid)
    return laid.map { with(it.layoutInput.density) { it.layoutInput.style.fontSize.toDp().value } }
}

private fun SemanticsNode.ancestors(): Sequence<SemanticsNode> = generateSequence(parent) { it.parent }

/** A report's page brought to reading size is wider than the window, and scrolls. */
private fun SemanticsNode.isInSideScroll() = ancestors().any { it.config.contains(SemanticsProperties.HorizontalScrollAxisRange) }

/** What a screen reader would stumble over: no name, no heading, no role, or an order that jumps back up. */
internal fun ComposeTestRule.unheard(rightToLeft: Boolean): List<String> {
    val nodes = onAllNodes(SemanticsMatcher("anything") { true }).fetchSemanticsNodes()
    val panes = nodes.mapNotNull { it.config.getOrNull(SemanticsProperties.PaneTitle) }
    val headings = nodes.filter { it.config.contains(SemanticsProperties.Heading) }
    return listOfNotNull(
        "the screen is called $panes".takeIf { panes.size != 1 || panes.first().isBlank() },
        "no heading".takeIf { headings.isEmpty() },
    ) + nodes.filter { it.config.contains(SemanticsActions.OnClick) }
        .filter { !it.config.contains(SemanticsProperties.Role) && !it.config.contains(SemanticsActions.SetText) }
        .map { "'${it.words()}' can be tapped and says not what it is" } +
        jumps(nodes, rightToLeft)
}

/** Places where what is read next stands above what was read before and not beside it. */
private fun jumps(nodes: List<SemanticsNode>, rightToLeft: Boolean): List<String> {
    val groups = nodes.filter { it.config.getOrNull(SemanticsProperties.IsTraversalGroup) == true }
    return groups.flatMap { group ->
        val read = group.spoken()
        read.zipWithNext().mapNotNull { (before, after) ->
            val (a, b) = before.place() to after.place()
            val beside = if (rightToLeft) b.right <= a.left + 1 else b.left >= a.right - 1
            "'${after.words()}' is read after '${before.words()}'".takeIf { b.top < a.top - 1 && !beside && !a.contains(b) }
        }
    }
}

/** What is said of a group's content, in the order of the tree, which is that of its traversal; a drawing as one. */
private fun SemanticsNode.spoken(): List<SemanticsNode> = children.flatMap { child ->
    val says = !child.words().isNullOrBlank() || child.config.contains(SemanticsProperties.ContentDescription)
    val drawing = child.config.getOrNull(SemanticsProperties.Role) == Role.Image
    (if (says) listOf(child) else emptyList()) + if (drawing) emptyList() else child.spoken()
}

private fun SemanticsNode.place() = Rect(positionInRoot.x, positionInRoot.y, positionInRoot.x + size.width, positionInRoot.y + size.height)

private fun Rect.contains(other: Rect) = other.left >= left - 1 && other.right <= right + 1 && other.top >= top - 1 && other.bottom <= bottom + 1

/** How many things a screen reader says by itself when they appear or change. */
internal fun ComposeTestRule.announced(): Int =
    onAllNodes(SemanticsMatcher.keyIsDefined(SemanticsProperties.LiveRegion), useUnmergedTree = true).fetchSemanticsNodes().size
