import HoldfastCore
import HoldfastKit
import SwiftUI

/// What a finger on a scene means, besides tapping its regions.
enum Finger {
    /// Nothing.
    case ignored
    /// It drags the needle.
    case drags
    /// It is a pen: each stroke is sent when it ends.
    case writes
}

/// Draws a scene over the width it is given. Its regions become things to tap, never smaller than a finger needs and with
/// their label.
struct SceneView: View {
    let scene: Scene
    var finger = Finger.ignored
    var needleDeg: Float?

    @Environment(HoldfastModel.self) private var model
    @State private var pen = Pen()

    var body: some View {
        GeometryReader { space in
            let frame = SceneFrame(scene, width: space.size.width)
            ZStack(alignment: .topLeading) {
                SceneCanvas(scene: scene, needleDeg: needleDeg)
                PenStroke(pen: pen)
                ForEach(scene.regions) { region in
                    RegionButton(region: region, target: frame.target(of: region))
                }
            }
            .contentShape(Rectangle())
            .gesture(gesture(in: frame), including: finger == .ignored ? .subviews : .all)
        }
        .aspectRatio(Double(scene.width) / Double(scene.height), contentMode: .fit)
        .onChange(of: scene) { pen.dry() }
        // A drawing's own left and right are the car's and the dial's, whichever way the words run.
        .environment(\.layoutDirection, .leftToRight)
    }

    private func gesture(in frame: SceneFrame) -> some Gesture {
        DragGesture(minimumDistance: 0)
            .onChanged { touch in
                switch finger {
                case .ignored: break
                case .drags: model.send(frame.drag(touch.location))
                case .writes: pen.write(at: touch.location)
                }
            }
            .onEnded { _ in
                if finger == .writes { model.send(pen.lift(in: frame)) }
            }
    }
}

/// A drawing among words: no wider than it is read easily.
struct Drawing: View {
    let scene: Scene

    init(_ scene: Scene) {
        self.scene = scene
    }

    var body: some View {
        SceneView(scene: scene).frame(maxWidth: Space.drawing)
    }
}

/// The drawing itself, with the words that stand for it.
struct SceneCanvas: View {
    let scene: Scene
    var needleDeg: Float?

    var body: some View {
        WithPictures(scene: scene) { pictures, palette in
            Canvas { context, size in
                SceneDrawing(
                    palette: palette, scale: size.width / Double(scene.width), needleDeg: needleDeg,
                    pictures: pictures
                ).draw(scene.items, in: context)
            }
        }
        .accessibilityElement()
        .accessibilityLabel(Text(verbatim: scene.alt))
        .accessibilityAddTraits(.isImage)
    }
}

/// A scene that is only looked at. Words that would come out too small to read are left away.
struct SceneStill: View {
    /// The height of the smallest type that can be read at arm's length by good eyes, points.
    private static let leastWords = 9.0

    let scene: Scene

    var body: some View {
        WithPictures(scene: scene) { pictures, palette in
            Canvas { context, size in
                let scale = size.width / Double(scene.width)
                let legible = scene.items.filter { item in
                    guard case .text(_, _, let size, _, _, _) = item else { return true }
                    return Double(size) * scale >= Self.leastWords
                }
                SceneDrawing(palette: palette, scale: scale, pictures: pictures).draw(legible, in: context)
            }
        }
        .aspectRatio(Double(scene.width) / Double(scene.height), contentMode: .fit)
        .accessibilityElement()
        .accessibilityLabel(Text(verbatim: scene.alt))
        .accessibilityAddTraits(.isImage)
        .environment(\.layoutDirection, .leftToRight)
    }
}

/// A place on a drawing that can be tapped.
struct RegionButton: View {
    let region: Region
    let target: CGRect

    @Environment(HoldfastModel.self) private var model

    var body: some View {
        SwiftUI.Button {
            model.send(region.tap)
        } label: {
            Color.clear.contentShape(Rectangle())
        }
        .buttonStyle(.plain)
        .frame(width: target.width, height: target.height)
        .offset(x: target.minX, y: target.minY)
        .accessibilityLabel(Text(verbatim: region.label))
    }
}

/// The stroke under way, drawn here until it is part of the scene.
private struct PenStroke: View {
    /// As wide as the core draws it, points.
    private static let width = 2.4

    let pen: Pen

    @Environment(\.palette) private var palette

    var body: some View {
        Path { path in path.addLines(pen.wet) }
            .stroke(palette[.ink], style: StrokeStyle(lineWidth: Self.width, lineCap: .round, lineJoin: .round))
            .allowsHitTesting(false)
            .accessibilityHidden(true)
    }
}
