package holdfast.app

import android.app.Activity
import android.content.Intent
import android.graphics.Bitmap
import android.hardware.Sensor
import android.hardware.SensorManager
import android.net.Uri
import android.os.Looper
import android.provider.MediaStore
import android.provider.OpenableColumns
import android.view.WindowManager
import androidx.test.core.app.ActivityScenario
import androidx.test.core.app.ApplicationProvider
import holdfast.app.phone.AndroidPhone
import holdfast.app.phone.GaugeReader
import holdfast.app.phone.LentFiles
import holdfast.app.phone.phoneFacts
import holdfast.core.Action
import holdfast.core.Body
import holdfast.core.Buzz
import holdfast.core.FormItem
import holdfast.core.PhonePart
import holdfast.core.PhotoSource
import holdfast.core.PhotoSubject
import holdfast.core.Place
import holdfast.core.Scene
import holdfast.ui.bridge.Answers
import holdfast.ui.bridge.GaugeLook
import holdfast.ui.bridge.Shown
import holdfast.ui.bridge.VibrationRecording
import java.io.File
import java.io.FileNotFoundException
import java.util.concurrent.TimeUnit
import org.junit.Assert.assertArrayEquals
import org.junit.Assert.assertEquals
import org.junit.Assert.assertFalse
import org.junit.Assert.assertNotEquals
import org.junit.Assert.assertNull
import org.junit.Assert.assertThrows
import org.junit.Assert.assertTrue
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.RobolectricTestRunner
import org.robolectric.Shadows.shadowOf
import org.robolectric.annotation.Config
import org.robolectric.shadows.SensorEventBuilder
import org.robolectric.shadows.ShadowSensor

/** Each request reaches the system's service, and the answer comes back. */
@RunWith(RobolectricTestRunner::class)
@Config(application = TestApplication::class)
class PhoneTest {
    private val app = ApplicationProvider.getApplicationContext<TestApplication>()
    private val heard = Heard()
    private val phone = AndroidPhone(app, app.dataFolder).apply { answers = heard }

    @Test
    fun the_camera_writes_into_a_lent_file() = with(ActivityScenario.launch(MainActivity::class.java)) {
        onActivity { activity ->
            app.phone.takePhoto()
            idle()
            val asked = shadowOf(activity).nextStartedActivityForResult.intent
            assertEquals(MediaStore.ACTION_IMAGE_CAPTURE, asked.action)
            @Suppress("DEPRECATION")
            val uri = asked.getParcelableExtra<Uri>(MediaStore.EXTRA_OUTPUT)
            app.contentResolver.openOutputStream(checkNotNull(uri))?.use { it.write(byteArrayOf(1, 2, 3)) }
            assertArrayEquals(byteArrayOf(1, 2, 3), File(LentFiles.photos(app), "camera.jpg").readBytes())
        }
        close()
    }

    @Test
    fun a_photo_comes_into_the_job_and_takes_marks() = with(ActivityScenario.launch(MainActivity::class.java)) {
        onActivity { activity ->
            listOf(Action.NewJob, Action.Go(Place.LOG), Action.AddPhoto(PhotoSource.CAMERA, PhotoSubject.Job)).forEach {
                app.model.send(it)
                idle()
            }
            val asked = shadowOf(activity).nextStartedActivityForResult.intent
            val picture = Bitmap.createBitmap(640, 480, Bitmap.Config.ARGB_8888)
            File(LentFiles.photos(app), "camera.jpg").outputStream().use {
                picture.compress(Bitmap.CompressFormat.JPEG, 90, it)
            }
            shadowOf(activity).receiveResult(asked, Activity.RESULT_OK, null)
            idle()
            val log = (shown() as Body.Log).log
            app.model.send(log.photos.filterIsInstance<FormItem.Photo>().single().photo.open)
            idle()
            val before = photo()
            app.model.send(Action.Grab(before.width / 2, before.height / 2, 20f))
            app.model.send(Action.Release)
            idle()
            assertTrue(photo().items.size > before.items.size)
        }
        close()
    }

    private fun shown(): Body = (app.model.screen.value as Shown.Open).screen.body

    private fun photo(): Scene = (shown() as Body.Photo).photo.scene

    @Test
    fun the_screen_stays_lit_while_it_is_asked_to() = with(ActivityScenario.launch(MainActivity::class.java)) {
        onActivity { activity ->
            val flag = WindowManager.LayoutParams.FLAG_KEEP_SCREEN_ON
            app.phone.keepScreenOn()
            idle()
            assertNotEquals(0, activity.window.attributes.flags and flag)
            app.phone.letScreenSleep()
            idle()
            assertEquals(0, activity.window.attributes.flags and flag)
        }
        close()
    }

    @Test
    fun a_report_is_lent_to_be_read_under_its_name() {
        val report = File(app.dataFolder, "reports/page.pdf").apply {
            parentFile?.mkdirs()
            writeText("%PDF-")
        }
        val uri = checkNotNull(LentFiles.report(app.dataFolder, report))
        assertEquals("%PDF-", app.contentResolver.openInputStream(uri)?.use { String(it.readBytes()) })
        app.contentResolver.query(uri, null, null, null, null)?.use { row ->
            row.moveToFirst()
            assertEquals("page.pdf", row.getString(row.getColumnIndexOrThrow(OpenableColumns.DISPLAY_NAME)))
            assertEquals(5, row.getInt(row.getColumnIndexOrThrow(OpenableColumns.SIZE)))
        }
        assertThrows(FileNotFoundException::class.java) { app.contentResolver.openFileDescriptor(uri, "rw") }
    }

    @Test
    fun a_name_that_climbs_out_is_not_lent() {
        File(app.filesDir, "secret").writeText("no")
        val climbing = Uri.parse("content://holdfast.app.lent/data/..%2Fsecret")
        assertThrows(FileNotFoundException::class.java) { app.contentResolver.openInputStream(climbing) }
        assertNull(LentFiles.report(app.dataFolder, File(app.dataFolder, "../secret")))
    }

    @Test
    fun the_pressure_comes_in_pascal_or_not_at_all() {
        phone.readBarometer()
        assertEquals(listOf<Double?>(null), heard.pressures)

        val sensors = app.getSystemService(SensorManager::class.java)
        val sensor = ShadowSensor.newInstance(Sensor.TYPE_PRESSURE)
        shadowOf(sensors).addSensor(sensor)
        phone.readBarometer()
        val event = SensorEventBuilder.newBuilder().setSensor(sensor).setValues(floatArrayOf(986.5f)).build()
        shadowOf(sensors).sendSensorEventToListeners(event)
        assertEquals(98_650.0, checkNotNull(heard.pressures.last()), 0.01)

        phone.readBarometer()
        shadowOf(Looper.getMainLooper()).idleFor(3, TimeUnit.SECONDS)
        assertNull(heard.pressures.last())
        assertEquals(3, heard.pressures.size)
    }

    @Test
    fun without_a_gauge_reader_nobody_looks_and_the_core_is_not_told_of_one() {
        phone.watchGauge(100, "inHg", 30.0)
        phone.stopWatchingGauge()
        assertEquals(listOf<GaugeLook>(GaugeLook.Gone), heard.looks)
        assertFalse(PhonePart.GAUGE_READER in phoneFacts(app).parts)
    }

    @Test
    fun a_gauge_readers_looks_come_until_it_is_stopped() {
        val reader = FakeReader()
        val phone = AndroidPhone(app, app.dataFolder, reader).apply { answers = heard }
        phone.watchGauge(100, "inHg", 30.0)
        reader.see(19.5)
        phone.stopWatchingGauge()
        reader.see(19.0)
        assertEquals(listOf<GaugeLook>(GaugeLook.Needle(19.5)), heard.looks)
        assertTrue(PhonePart.GAUGE_READER in phoneFacts(app, reader).parts)
    }

    @Test
    fun a_recording_has_its_rate_and_the_size_of_the_acceleration() {
        phone.recordVibration(8_000)
        assertEquals(listOf<VibrationRecording?>(null), heard.recordings)

        val sensors = app.getSystemService(SensorManager::class.java)
        val sensor = ShadowSensor.newInstance(Sensor.TYPE_ACCELEROMETER)
        shadowOf(sensors).addSensor(sensor)
        phone.recordVibration(8_000)
        repeat(101) { at ->
            val values = floatArrayOf(0f, 0f, 9.80665f)
            val event = SensorEventBuilder.newBuilder().setSensor(sensor).setTimestamp(at * 10_000_000L).setValues(values).build()
            shadowOf(sensors).sendSensorEventToListeners(event)
        }
        assertEquals(1, heard.recordings.size)
        shadowOf(Looper.getMainLooper()).idleFor(8, TimeUnit.SECONDS)
        val recording = checkNotNull(heard.recordings.last())
        assertEquals(100.0, recording.hz, 1e-9)
        assertEquals(101, recording.mg.size)
        assertEquals(1_000.0, recording.mg.first(), 0.01)
    }

    @Test
    fun buzzes_can_be_told_apart() {
        val vibrator = shadowOf(checkNotNull(holdfast.app.phone.vibrator(app)))
        val patterns = Buzz.entries.map { buzz ->
            phone.buzz(buzz)
            vibrator.pattern?.toList()
        }
        assertEquals(Buzz.entries.size, patterns.toSet().size)
    }

    @Test
    fun sharing_opens_the_systems_chooser() = with(ActivityScenario.launch(MainActivity::class.java)) {
        File(app.dataFolder, "reports").mkdirs()
        File(app.dataFolder, "reports/page.pdf").writeText("%PDF-")
        onActivity { activity ->
            app.phone.share("reports/page.pdf", "application/pdf", "Report")
            idle()
            val chooser = shadowOf(activity).nextStartedActivity
            assertEquals(Intent.ACTION_CHOOSER, chooser.action)
            @Suppress("DEPRECATION")
            val send = chooser.getParcelableExtra<Intent>(Intent.EXTRA_INTENT)
            assertEquals("application/pdf", send?.type)
        }
        close()
    }

    private fun idle() = shadowOf(Looper.getMainLooper()).idle()
}

private class FakeReader : GaugeReader {
    private var seen: ((GaugeLook) -> Unit)? = null

    override fun watch(everyMs: Long, unit: String, span: Double, seen: (GaugeLook) -> Unit) {
        this.seen = seen
    }

    override fun stop() {
        seen = null
    }

    fun see(vacuum: Double) = seen?.invoke(GaugeLook.Needle(vacuum))
}

private class Heard : Answers {
    val pressures = mutableListOf<Double?>()
    val looks = mutableListOf<GaugeLook>()
    val recordings = mutableListOf<VibrationRecording?>()

    override fun photo(path: String?) = Unit

    override fun notDecoded() = Unit

    override fun bundle(path: String?) = Unit

    override fun pressure(pa: Double?) {
        pressures += pa
    }

    override fun gauge(look: GaugeLook) {
        looks += look
    }

    override fun vibration(recording: VibrationRecording?) {
        recordings += recording
    }
}
