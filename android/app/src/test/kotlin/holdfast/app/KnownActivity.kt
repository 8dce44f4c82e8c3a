package holdfast.app

import android.content.ComponentName
import android.content.pm.ActivityInfo
import androidx.activity.ComponentActivity
import androidx.test.core.app.ApplicationProvider
import org.junit.rules.ExternalResource
import org.robolectric.Shadows.shadowOf

/** Makes the plain activity that hosts the states known to the system, with the app's theme. */
internal class KnownActivity : ExternalResource() {
    override fun before() {
        val app = ApplicationProvider.getApplicationContext<android.app.Application>()
        val name = ComponentName(app, ComponentActivity::class.java)
        val info = ActivityInfo().apply {
            packageName = name.packageName
            this.name = name.className
            theme = R.style.Holdfast
            exported = true
        }
        shadowOf(app.packageManager).addOrUpdateActivity(info)
    }
}
