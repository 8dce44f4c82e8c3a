plugins {
    alias(libs.plugins.android.application) apply false
    alias(libs.plugins.android.library) apply false
    alias(libs.plugins.compose.compiler) apply false
    alias(libs.plugins.compose.desktop) apply false
    alias(libs.plugins.kotlin.android) apply false
    alias(libs.plugins.kotlin.jvm) apply false
}

val workspace = rootDir.parentFile
val generated = layout.buildDirectory.dir("bindings")

// The core for this machine, and its Kotlin face.
val bindings by tasks.registering {
    inputs.files(fileTree(workspace.resolve("core")), fileTree(workspace.resolve("bindings")))
    outputs.dir(generated)
    doLast {
        fun cargo(vararg arguments: String) = providers.exec {
            workingDir = workspace
            commandLine("cargo", *arguments)
        }.result.get().assertNormalExitValue()
        val library = workspace.resolve("target/release").resolve(System.mapLibraryName("holdfast"))
        cargo("build", "--release", "--package", "holdfast-bindings")
        cargo(
            "run", "--package", "holdfast-bindgen", "--", "generate", "--language", "kotlin", "--no-format",
            "--out-dir", generated.get().asFile.path, library.path,
        )
    }
}
