plugins {
    alias(libs.plugins.android.library)
    alias(libs.plugins.compose.compiler)
    alias(libs.plugins.kotlin.android)
}

android {
    namespace = "holdfast.ui"
    compileSdk = libs.versions.compileSdk.get().toInt()
    defaultConfig { minSdk = libs.versions.minSdk.get().toInt() }
    buildFeatures { compose = true }
    compileOptions {
        sourceCompatibility = JavaVersion.toVersion(libs.versions.jvmTarget.get())
        targetCompatibility = JavaVersion.toVersion(libs.versions.jvmTarget.get())
    }
    sourceSets["main"].kotlin.srcDir(rootProject.layout.buildDirectory.dir("bindings"))
}

tasks.named("preBuild") { dependsOn(":bindings") }

dependencies {
    api(libs.compose.foundation)
    api(libs.compose.ui)
    api(libs.coroutines.core)
    compileOnly(libs.jna)
}
