// swift-tools-version: 6.0
import PackageDescription

// On a Mac the core comes as an XCFramework (`build-xcframework.sh`); on Linux it is the library of this machine, in the
// folder that HOLDFAST_LIBRARY names (`cargo xtask test swift`), and only what needs no Apple framework is built.
#if os(Linux)
    let libraryFolder = Context.environment["HOLDFAST_LIBRARY"] ?? "."
    let core: Target = .systemLibrary(name: "HoldfastFFI")
    let linking: [LinkerSetting] = [.unsafeFlags(["-L\(libraryFolder)"])]
    let loading: [LinkerSetting] = [
        // The library was linked on an older system than the one Swift runs on: its symbols are looked up when it loads.
        .unsafeFlags(["-Xlinker", "-rpath", "-Xlinker", libraryFolder, "-Xlinker", "--allow-shlib-undefined"])
    ]
    let screens: [Target] = []
    let products: [Product] = [.library(name: "HoldfastKit", targets: ["HoldfastKit"])]
#else
    let core: Target = .binaryTarget(name: "HoldfastFFI", path: "HoldfastFFI.xcframework")
    let linking: [LinkerSetting] = []
    let loading: [LinkerSetting] = []
    let screens: [Target] = [.target(name: "HoldfastApp", dependencies: ["HoldfastKit"])]
    let products: [Product] = [.library(name: "HoldfastApp", targets: ["HoldfastApp"])]
#endif

let package = Package(
    name: "Holdfast",
    platforms: [.iOS(.v17), .macOS(.v14)],
    products: products,
    targets: [
        core,
        .target(name: "HoldfastCore", dependencies: ["HoldfastFFI"], linkerSettings: linking),
        .target(name: "HoldfastKit", dependencies: ["HoldfastCore"]),
        .testTarget(name: "HoldfastKitTests", dependencies: ["HoldfastKit"], linkerSettings: loading),
    ] + screens,
    swiftLanguageModes: [.v6]
)
