import HoldfastCore
import HoldfastKit
import SwiftUI

/// What every screen has: the way back and the title on top, then what scrolls, then what a thumb reaches. The key names
/// the screen: another key begins at its top again.
struct ScreenFrame<Content: View, Foot: View>: View {
    let frame: Frame
    let key: String
    let content: Content
    let foot: Foot

    @Environment(\.palette) private var palette
    @AccessibilityFocusState private var isTitleFocused: Bool
    @State private var footHeight = 0.0

    init(
        _ frame: Frame,
        key: String,
        @ViewBuilder content: () -> Content,
        @ViewBuilder foot: () -> Foot
    ) {
        self.frame = frame
        self.key = key
        self.content = content()
        self.foot = foot()
    }

    var body: some View {
        GeometryReader { space in
            let low = space.size.height < Space.low && space.size.width > space.size.height
            Group {
                if low { lying } else { upright(space.size.height) }
            }
            .environment(\.isLow, low)
        }
        .background(palette[.paper].ignoresSafeArea())
        .onChange(of: key, initial: true) { isTitleFocused = true }
    }

    private func upright(_ height: Double) -> some View {
        VStack(spacing: 0) {
            top
            page
            if Foot.self != EmptyView.self {
                Rule()
                ScrollView {
                    Stack(spacing: Space.small) { foot }
                        .frame(maxWidth: Space.column)
                        .padding(.horizontal, Space.margin)
                        .padding(.vertical, Space.step)
                        .onHeight { footHeight = $0 }
                }
                .scrollBounceBehavior(.basedOnSize)
                // With large type the ways on scroll by themselves rather than leave the page no room.
                .frame(height: min(footHeight, height * 0.6))
            }
        }
    }

    /// The ways on are where a thumb is when the phone lies on its side.
    private var lying: some View {
        HStack(spacing: 0) {
            VStack(spacing: 0) {
                top
                page
            }
            if Foot.self != EmptyView.self {
                ScrollView {
                    Stack(spacing: Space.small) { foot }.padding(Space.margin)
                }
                .frame(width: Space.side)
            }
        }
    }

    private var top: some View {
        HStack(spacing: Space.hair) {
            if let back = frame.back { BackArrow(back: back) } else { DialSign().padding(Space.step) }
            Heading(frame.title)
                .padding(.vertical, Space.small)
                .accessibilityLabel(Text(verbatim: frame.spoken.isEmpty ? frame.title : frame.spoken))
                .accessibilityFocused($isTitleFocused)
            Spacer(minLength: 0)
        }
        .padding(.leading, Space.hair)
        .padding(.trailing, Space.margin)
        .frame(maxWidth: Space.column)
    }

    private var page: some View {
        ScrollView {
            Stack {
                if let notice = frame.notice { NoticeCard(notice: notice) }
                ForEach(Array(frame.cautions.enumerated()), id: \.offset) { _, caution in CautionCard(caution) }
                content
                if !frame.menu.isEmpty {
                    Rule()
                    FlowRow { ForEach(Array(frame.menu.enumerated()), id: \.offset) { _, way in QuietButton(way) } }
                }
            }
            .padding(.horizontal, Space.margin)
            .padding(.top, Space.hair)
            .padding(.bottom, Space.wide)
            .frame(maxWidth: Space.column)
            .frame(maxWidth: .infinity)
        }
        .id(key)
        .scrollDismissesKeyboard(.interactively)
    }
}

extension ScreenFrame where Foot == EmptyView {
    init(_ frame: Frame, key: String, @ViewBuilder content: () -> Content) {
        self.init(frame, key: key, content: content) { EmptyView() }
    }
}

private struct BackArrow: View {
    let back: Button

    @Environment(\.palette) private var palette
    @Environment(\.layoutDirection) private var direction

    var body: some View {
        Tappable(back) {
            Canvas { context, size in
                let centre = CGPoint(x: size.width / 2, y: size.height / 2)
                let tip = CGPoint(x: centre.x - 10, y: centre.y)
                var arrow = Path()
                arrow.move(to: CGPoint(x: centre.x + 10, y: centre.y))
                arrow.addLine(to: tip)
                arrow.move(to: CGPoint(x: tip.x + 8, y: tip.y - 8))
                arrow.addLine(to: tip)
                arrow.addLine(to: CGPoint(x: tip.x + 8, y: tip.y + 8))
                let style = StrokeStyle(lineWidth: 3, lineCap: .round, lineJoin: .round)
                context.stroke(arrow, with: .color(palette[.ink]), style: style)
            }
            .scaleEffect(x: direction == .rightToLeft ? -1 : 1)
            .frame(width: Space.target, height: Space.target)
        }
    }
}

private struct NoticeCard: View {
    let notice: Notice

    @Environment(\.palette) private var palette

    var body: some View {
        Stack(spacing: Space.hair) {
            Words(notice.text)
            if notice.work != nil { WorkBar() }
            if !notice.buttons.isEmpty {
                FlowRow { ForEach(Array(notice.buttons.enumerated()), id: \.offset) { _, way in QuietButton(way) } }
            }
        }
        .padding(Space.step)
        .card(palette[.raised], frame: palette[.ink], width: 2)
        .announced(notice.text)
    }
}

/// How far the work under way is.
private struct WorkBar: View {
    @Environment(HoldfastModel.self) private var model

    var body: some View {
        Bar(share: model.share, ground: .line, ink: .needle, height: 8).padding(.vertical, Space.hair)
    }
}

extension View {
    /// Words that a screen reader says when they come or change.
    func announced(_ words: String) -> some View {
        onChange(of: words, initial: true) { _, now in
            if !now.isEmpty { AccessibilityNotification.Announcement(now).post() }
        }
    }
}

extension View {
    /// Tells how high this is, at first and when it changes.
    fileprivate func onHeight(_ tell: @escaping (Double) -> Void) -> some View {
        background {
            GeometryReader { space in
                Color.clear.onChange(of: space.size.height, initial: true) { _, now in tell(now) }
            }
        }
    }
}

private struct LowKey: EnvironmentKey {
    static let defaultValue = false
}

extension EnvironmentValues {
    /// Whether the window is so low that the ways on stand at its side.
    var isLow: Bool {
        get { self[LowKey.self] }
        set { self[LowKey.self] = newValue }
    }
}
