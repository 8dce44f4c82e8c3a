import HoldfastCore
import HoldfastKit
import SwiftUI

/// The photo under the fingers: one marks, two zoom. Its marks have names, for those who can't see them.
struct PhotoPad: View {
    let scene: Scene

    @Environment(HoldfastModel.self) private var model
    @State private var touch = PhotoTouch()

    var body: some View {
        GeometryReader { space in
            let frame = SceneFrame(scene, width: space.size.width)
            SceneCanvas(scene: scene)
                .scaleEffect(touch.view.zoom, anchor: .topLeading)
                .offset(touch.view.moved)
                .contentShape(Rectangle())
                .gesture(marking(frame, space.size))
                .simultaneousGesture(zooming(space.size))
                .overlay(alignment: .topLeading) { marks(frame) }
        }
        .aspectRatio(Double(scene.width) / Double(scene.height), contentMode: .fit)
        .clipped()
        .environment(\.layoutDirection, .leftToRight)
    }

    private func marking(_ frame: SceneFrame, _ pad: CGSize) -> some Gesture {
        DragGesture(minimumDistance: 0)
            .onChanged { finger in send(touch.touch(at: finger.location, in: frame, pad: pad)) }
            .onEnded { _ in send(touch.lift(in: frame)) }
    }

    private func zooming(_ pad: CGSize) -> some Gesture {
        MagnifyGesture()
            .onChanged { fingers in
                touch.pinch(to: fingers.magnification, around: fingers.startLocation, pad: pad)
            }
    }

    private func marks(_ frame: SceneFrame) -> some View {
        ForEach(scene.regions) { mark in
            let target = frame.target(of: mark)
            Color.clear
                .frame(width: target.width, height: target.height)
                .offset(x: target.minX, y: target.minY)
                .accessibilityElement()
                .accessibilityLabel(Text(verbatim: mark.label))
                .accessibilityAddTraits(.isButton)
                .accessibilityAction { send(PhotoTouch.take(mark)) }
                .allowsHitTesting(false)
        }
    }

    private func send(_ actions: [Action]) {
        for action in actions { model.send(action) }
    }
}
