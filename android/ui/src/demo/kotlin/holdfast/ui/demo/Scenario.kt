package holdfast.ui.demo

import holdfast.core.Point
import holdfast.core.Said
import java.io.File
import org.json.JSONArray
import org.json.JSONObject

/**
 * A job of `tests/scenarios`: what each test reads before and after the repair, and what stands on paper. The iOS
 * shell's tests play the same file.
 */
class Scenario(file: File) {
    private val json = JSONObject(file.readText())

    /** What only a person on a screen needs: plate, costs, signature. */
    val paper: JSONObject = json.getJSONObject("paper")

    val label: String = json.getJSONObject("vehicle").getString("label")
    val complaints: List<String> = json.getJSONArray("complaint").texts()
    val circuit: String = json.getString("circuit")
    val profile: String = json.getString("profile")
    val altitude: String? = typed(json.getJSONObject("place").opt("altitude_m"))
    val gaugeUnit: String = json.getJSONObject("instruments").getJSONObject("gauge").getString("unit")
    val replaced: String = json.getJSONObject("repair").getString("replaced")

    /** The tools at hand; null: all. */
    val tools: List<String>? = json.optJSONArray("tools")?.texts()

    /** The customer's signature, stroke by stroke. */
    val signature: List<List<Point>> = paper.getJSONArray("signature").lists().map { stroke ->
        stroke.lists().map { Point(it.getDouble(0).toFloat(), it.getDouble(1).toFloat()) }
    }

    /** What a test reads; null if the file has nothing for it. */
    fun answer(test: String, repaired: Boolean): JSONObject? {
        val job = if (repaired) json.getJSONObject("repair") else json
        return job.getJSONObject("answers").optJSONObject(test)
    }

    /** Answers to the questions of a test, in the order they are asked. */
    fun said(test: String, repaired: Boolean): List<Said> {
        val keys = paper.getJSONObject("questions").optJSONArray(test.substringBefore(':'))?.texts().orEmpty()
        return keys.map { key ->
            when (answer(test, repaired)?.opt(key)) {
                true -> Said.YES
                false -> Said.NO
                else -> Said.NOT_SURE
            }
        }
    }

    /** The highest the gauge gets to, where the target can't be reached. */
    fun highest(test: String, repaired: Boolean): String? = typed(answer(test, repaired)?.opt("never_reached"))

    /** The gauge's figure so many seconds after letting go: the first at or after them, else the last. */
    fun reading(test: String, repaired: Boolean, seconds: Double): String? {
        val answer = answer(test, repaired) ?: return null
        if (seconds == 0.0) return typed(answer.opt("start"))
        val readings = answer.optJSONArray("readings")?.lists().orEmpty()
        val reading = readings.firstOrNull { it.getDouble(0) >= seconds } ?: readings.lastOrNull()
        return typed(reading?.opt(1))
    }

    companion object {
        /** The file that the system property `holdfast.scenario` names. */
        fun given() = Scenario(File(checkNotNull(System.getProperty("holdfast.scenario")) { "no -Dholdfast.scenario" }))

        /** As a person types it: 20, not 20.0. */
        fun typed(value: Any?): String? = when (value) {
            is String -> value
            is Number -> value.toDouble().let { if (it % 1 == 0.0) it.toLong().toString() else it.toString() }
            is JSONArray -> value.texts().joinToString("\n")
            else -> null
        }
    }
}

/** The objects of a list. */
internal fun JSONArray.objects(): List<JSONObject> = List(length(), ::getJSONObject)

private fun JSONArray.texts(): List<String> = List(length(), ::getString)

private fun JSONArray.lists(): List<JSONArray> = List(length(), ::getJSONArray)
