#!/usr/bin/env bash
# Builds the core for phones and for the simulator and packs it as HoldfastFFI.xcframework, with the Swift that calls it.
# Needs a Mac with Xcode 16 or later, and Rust by rustup. Not run in CI here: no Mac.
set -euo pipefail
cd "$(dirname "$0")/.."

targets=(aarch64-apple-ios aarch64-apple-ios-sim x86_64-apple-ios)
target_dir=${CARGO_TARGET_DIR:-target}
work=$target_dir/xtask/xcframework
export IPHONEOS_DEPLOYMENT_TARGET=17.0

rustup target add "${targets[@]}"
for target in "${targets[@]}"; do
    cargo build --locked --release --package holdfast-bindings --target "$target"
done

# The generator reads a library of this machine.
cargo build --locked --release --package holdfast-bindings
cargo build --locked --package holdfast-bindgen
rm -rf "$work"
mkdir -p "$work/headers" "$work/simulator" ios/Sources/HoldfastCore/Generated
"$target_dir/debug/holdfast-bindgen" generate --language swift --no-format --out-dir "$work/generated" \
    "$target_dir/release/libholdfast.dylib"
cp "$work/generated/HoldfastCore.swift" ios/Sources/HoldfastCore/Generated/
cp "$work/generated/HoldfastFFI.h" "$work/headers/"
printf 'module HoldfastFFI {\n    header "HoldfastFFI.h"\n    export *\n}\n' > "$work/headers/module.modulemap"

# Both kinds of simulator in one file: an XCFramework takes one library for each platform.
lipo -create -output "$work/simulator/libholdfast.a" \
    "$target_dir/aarch64-apple-ios-sim/release/libholdfast.a" "$target_dir/x86_64-apple-ios/release/libholdfast.a"
rm -rf ios/HoldfastFFI.xcframework
xcodebuild -create-xcframework -output ios/HoldfastFFI.xcframework \
    -library "$target_dir/aarch64-apple-ios/release/libholdfast.a" -headers "$work/headers" \
    -library "$work/simulator/libholdfast.a" -headers "$work/headers"
