// For Android Studio. The project's own build is `cargo xtask android`; see README.md.
pluginManagement {
    repositories {
        google()
        mavenCentral()
        gradlePluginPortal()
    }
}

dependencyResolutionManagement {
    repositories {
        google()
        mavenCentral()
    }
}

rootProject.name = "holdfast"
include(":ui", ":app", ":desktop")
