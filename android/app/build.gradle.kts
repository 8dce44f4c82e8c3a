plugins {
    alias(libs.plugins.android.application)
    alias(libs.plugins.compose.compiler)
    alias(libs.plugins.kotlin.android)
}

val fonts = layout.buildDirectory.dir("fonts")

// The report's fonts under names that a resource may have.
val copyFonts by tasks.registering(Copy::class) {
    from(rootDir.parentFile.resolve("core/report/fonts")) {
        include("NotoSans-Regular.ttf", "NotoSans-Bold.ttf")
        rename { it.lowercase().replace("notosans-", "noto_sans_") }
    }
    into(fonts.map { it.dir("font") })
}

android {
    namespace = "holdfast.app"
    compileSdk = libs.versions.compileSdk.get().toInt()
    defaultConfig {
        applicationId = "holdfast.app"
        minSdk = libs.versions.minSdk.get().toInt()
        targetSdk = libs.versions.targetSdk.get().toInt()
        versionCode = 1
        versionName = "0.1.0"
    }
    buildFeatures { compose = true }
    compileOptions {
        sourceCompatibility = JavaVersion.toVersion(libs.versions.jvmTarget.get())
        targetCompatibility = JavaVersion.toVersion(libs.versions.jvmTarget.get())
    }
    sourceSets["main"].res.srcDir(fonts)
    // The core for devices: built with cargo for each target and put here by hand or by cargo-ndk.
    sourceSets["main"].jniLibs.srcDir(rootProject.layout.buildDirectory.dir("jniLibs"))
    sourceSets["test"].kotlin.srcDirs("../ui/src/states/kotlin", "../ui/src/demo/kotlin")
    testOptions.unitTests.isIncludeAndroidResources = true
}

tasks.named("preBuild") { dependsOn(copyFonts) }

dependencies {
    implementation(project(":ui"))
    implementation(libs.activity.compose)
    implementation(libs.core.ktx)
    implementation(libs.coroutines.android)
    implementation("${libs.jna.get()}@aar")
    testImplementation(libs.jna)
    testImplementation(libs.compose.ui.test.junit4)
    testImplementation(libs.coroutines.test)
    testImplementation(libs.junit)
    testImplementation(libs.robolectric)
    testImplementation(libs.test.core)
    debugImplementation(libs.compose.ui.test.manifest)
}
