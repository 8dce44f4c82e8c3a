plugins {
    alias(libs.plugins.compose.compiler)
    alias(libs.plugins.compose.desktop)
    alias(libs.plugins.kotlin.jvm)
}

sourceSets["main"].kotlin.srcDirs(
    "../ui/src/main/kotlin",
    "../ui/src/demo/kotlin",
    rootProject.layout.buildDirectory.dir("bindings"),
)

tasks.named("compileKotlin") { dependsOn(":bindings") }

dependencies {
    implementation(compose.desktop.currentOs)
    implementation(compose.foundation)
    implementation(libs.coroutines.swing)
    implementation(libs.jna)
    implementation(libs.json)
}

compose.desktop.application {
    mainClass = "holdfast.desktop.WindowKt"
    jvmArgs(
        "-Djna.library.path=${rootDir.parentFile.resolve("target/release")}",
        "-Dholdfast.scenario=${rootDir.parentFile.resolve("tests/scenarios/split-front-hose-replaced.json")}",
    )
}
