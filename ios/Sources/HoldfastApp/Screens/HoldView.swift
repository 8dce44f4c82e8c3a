import HoldfastCore
import HoldfastKit
import SwiftUI

/// A vacuum hold test: one big gauge, one thing to do.
struct HoldView: View {
    let frame: Frame
    let hold: HoldScreen

    var body: some View {
        switch hold.phase {
        case .pump(let target, let strokes, let count, let letGo, let others):
            ScreenFrame(frame, key: "pump") {
                Around {
                    Words(target, style: .heading)
                } gauge: {
                    Gauge(scene: hold.gauge)
                } below: {
                    UnderTheNeedle()
                    Words(strokes, style: .strong)
                    HStack(alignment: .top, spacing: Space.step) { WideButtons(count) }
                    WideButtons(others)
                }
            } foot: {
                WideButton(letGo)
            }
        case .read(let prompt, let field, let confirm, let others):
            ScreenFrame(frame, key: "read") {
                Around {
                    Words(prompt, style: .heading).announced(prompt)
                    FieldBox(field, style: .number)
                } gauge: {
                    Gauge(scene: hold.gauge)
                } below: {
                    WideButtons(others)
                }
            } foot: {
                WideButton(confirm)
            }
        case .watch(let prompt, let buttons):
            ScreenFrame(frame, key: "watch") {
                Around {
                    Running()
                    Words(prompt, align: .center).frame(maxWidth: .infinity).announced(prompt)
                } gauge: {
                    Gauge(scene: hold.gauge)
                } below: {
                    EmptyView()
                }
            } foot: {
                WideButtons(buttons)
            }
        case .interrupted(let text, let buttons):
            ScreenFrame(frame, key: "interrupted") {
                Words(text, style: .heading).announced(text)
                Drawing(hold.gauge)
            } foot: {
                WideButtons(Foot(buttons).foot)
                WideButtons(Foot(buttons).page)
            }
        }
    }
}

/// The gauge between its words, or beside them on a phone that lies on its side.
private struct Around<Above: View, Dial: View, Below: View>: View {
    @ViewBuilder let above: Above
    @ViewBuilder let gauge: Dial
    @ViewBuilder let below: Below

    @Environment(\.isLow) private var isLow

    var body: some View {
        if isLow {
            HStack(alignment: .top, spacing: Space.margin) {
                Stack(spacing: Space.step) {
                    above
                    below
                }
                gauge
            }
        } else {
            above
            gauge
            below
        }
    }
}

/// The dial; only its needle is drawn again as it moves.
private struct Gauge: View {
    let scene: Scene

    @Environment(HoldfastModel.self) private var model
    @Environment(\.largeFigures) private var isLarge

    var body: some View {
        SceneView(scene: scene, finger: .drags, needleDeg: model.live.needleDeg)
            .frame(maxWidth: isLarge ? Space.smallGauge : Space.gauge)
            .frame(maxWidth: .infinity)
    }
}

/// The running seconds, the largest thing on the screen, and what to do now.
private struct Running: View {
    @Environment(HoldfastModel.self) private var model

    var body: some View {
        VStack(spacing: Space.hair) {
            // Both run too fast to be read out; what is to be said comes as a request to speak.
            Figure(text: model.live.seconds, usual: .running).accessibilityAddTraits(.updatesFrequently)
            Words(model.live.cue, style: .heading, align: .center)
        }
        .frame(maxWidth: .infinity)
    }
}

/// What the needle points at while a finger drags it, and what to do now.
private struct UnderTheNeedle: View {
    @Environment(HoldfastModel.self) private var model

    var body: some View {
        VStack(spacing: Space.hair) {
            Figure(text: model.live.reading, usual: .number)
            Words(model.live.cue, style: .heading, align: .center).announced(model.live.cue)
        }
        .frame(maxWidth: .infinity)
    }
}
