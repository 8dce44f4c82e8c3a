// A stand-in for SwiftUI: just the signatures that the views use, written from memory of Apple's documentation, with
// nothing behind them. Against it the views are type-checked where there is no Mac: that proves our own names, types and
// switches, and nothing about Apple's.

@_exported import Foundation

// Views and how they are put together

@MainActor @preconcurrency
public protocol View {
    associatedtype Body: View
    @ViewBuilder @MainActor @preconcurrency var body: Body { get }
}

extension Never: View {
    public var body: Never { fatalError() }
}

extension Optional: View where Wrapped: View {
    public var body: Never { fatalError() }
}

public protocol Leaf: View where Body == Never {}

extension Leaf {
    public var body: Never { fatalError() }
}

public struct EmptyView: Leaf { public nonisolated init() {} }
public struct TupleView<T>: Leaf { init() {} }
public struct EitherView<First: View, Second: View>: Leaf { init() {} }

@resultBuilder
public struct ViewBuilder {
    public static func buildExpression<C: View>(_ content: C) -> C { content }
    public static func buildBlock() -> EmptyView { EmptyView() }
    public static func buildBlock<C: View>(_ content: C) -> C { content }
    public static func buildBlock<each C: View>(_ content: repeat each C) -> TupleView<(repeat each C)> { fatalError() }
    public static func buildIf<C: View>(_ content: C?) -> C? { content }
    public static func buildEither<A: View, B: View>(first: A) -> EitherView<A, B> { fatalError() }
    public static func buildEither<A: View, B: View>(second: B) -> EitherView<A, B> { fatalError() }
}

public struct Group<Content: View>: Leaf { public init(@ViewBuilder content: () -> Content) {} }
public struct GeometryReader<Content: View>: Leaf {
    public init(@ViewBuilder content: @escaping (GeometryProxy) -> Content) {}
}
public struct GeometryProxy { public var size: CGSize { fatalError() } }
public struct VStack<Content: View>: Leaf {
    public init(
        alignment: HorizontalAlignment = .center, spacing: CGFloat? = nil, @ViewBuilder content: () -> Content
    ) {}
}
public struct LazyVStack<Content: View>: Leaf {
    public init(
        alignment: HorizontalAlignment = .center, spacing: CGFloat? = nil, @ViewBuilder content: () -> Content
    ) {}
}
public struct HStack<Content: View>: Leaf {
    public init(
        alignment: VerticalAlignment = .center, spacing: CGFloat? = nil, @ViewBuilder content: () -> Content
    ) {}
}
public struct ZStack<Content: View>: Leaf {
    public init(alignment: Alignment = .center, @ViewBuilder content: () -> Content) {}
}
public struct ScrollView<Content: View>: Leaf {
    public init(_ axes: Axis.Set = .vertical, showsIndicators: Bool = true, @ViewBuilder content: () -> Content) {}
}
public struct LazyVGrid<Content: View>: Leaf {
    public init(
        columns: [GridItem], alignment: HorizontalAlignment = .center, spacing: CGFloat? = nil,
        @ViewBuilder content: () -> Content
    ) {}
}
public struct GridItem: Sendable { public init(spacing: CGFloat? = nil) {} }
public struct Spacer: Leaf { public init(minLength: CGFloat? = nil) {} }
public struct ForEach<Data: RandomAccessCollection, ID: Hashable, Content: View>: Leaf {
    public init(_ data: Data, id: KeyPath<Data.Element, ID>, @ViewBuilder content: @escaping (Data.Element) -> Content)
    {}
}
extension ForEach where Data.Element: Identifiable, ID == Data.Element.ID {
    public init(_ data: Data, @ViewBuilder content: @escaping (Data.Element) -> Content) {}
}
public struct Button<Label: View>: Leaf {
    public init(action: @escaping @MainActor () -> Void, @ViewBuilder label: () -> Label) {}
}
public struct TextField<Label: View>: Leaf {
    public init(text: Binding<String>, prompt: Text? = nil, axis: Axis, @ViewBuilder label: () -> Label) {}
}
public struct Text: Leaf {
    public nonisolated init(verbatim content: String) {}
    public nonisolated func font(_ font: Font?) -> Text { self }
    public nonisolated func foregroundStyle<S: ShapeStyle>(_ style: S) -> Text { self }
}
public struct Image: Leaf, Sendable {}
public struct Canvas: Leaf {
    public init(renderer: @escaping (inout GraphicsContext, CGSize) -> Void) {}
}

// Layout

public enum Axis: Sendable {
    case horizontal, vertical
    public struct Set: OptionSet, Sendable {
        public let rawValue: Int
        public init(rawValue: Int) { self.rawValue = rawValue }
        public static let horizontal = Set(rawValue: 1)
        public static let vertical = Set(rawValue: 2)
    }
}
public enum Edge: Sendable {
    public struct Set: OptionSet, Sendable {
        public let rawValue: Int
        public init(rawValue: Int) { self.rawValue = rawValue }
        public static let top = Set(rawValue: 1)
        public static let leading = Set(rawValue: 2)
        public static let bottom = Set(rawValue: 4)
        public static let trailing = Set(rawValue: 8)
        public static let horizontal = Set(rawValue: 10)
        public static let vertical = Set(rawValue: 5)
        public static let all = Set(rawValue: 15)
    }
}
public enum HorizontalAlignment: Sendable { case leading, center, trailing }
public enum VerticalAlignment: Sendable { case top, center, bottom, firstTextBaseline, lastTextBaseline }
public enum Alignment: Sendable { case center, leading, trailing, top, bottom, topLeading }
public enum TextAlignment: Sendable { case leading, center, trailing }
public enum LayoutDirection: Sendable { case leftToRight, rightToLeft }
public enum ContentMode: Sendable { case fit, fill }
public enum UnitPoint: Sendable { case topLeading, center }
public struct ProposedViewSize: Sendable {
    public var width: CGFloat?
    public var height: CGFloat?
    public static let unspecified = ProposedViewSize(width: nil, height: nil)
    public init(width: CGFloat?, height: CGFloat?) {}
    public init(_ size: CGSize) {}
}
public struct LayoutSubview {
    public func sizeThatFits(_ proposal: ProposedViewSize) -> CGSize { fatalError() }
    public func place(at: CGPoint, anchor: UnitPoint = .topLeading, proposal: ProposedViewSize) {}
}
public protocol Layout {
    typealias Subviews = [LayoutSubview]
    associatedtype Cache = Void
    func sizeThatFits(proposal: ProposedViewSize, subviews: Subviews, cache: inout Cache) -> CGSize
    func placeSubviews(in bounds: CGRect, proposal: ProposedViewSize, subviews: Subviews, cache: inout Cache)
}
extension Layout {
    @MainActor public func callAsFunction<V: View>(@ViewBuilder _ content: () -> V) -> some View { content() }
}

// Drawing

public protocol ShapeStyle: Sendable {}
public struct Color: Leaf, ShapeStyle, Hashable {
    public enum RGBColorSpace: Sendable { case sRGB }
    public static let clear = Color(.sRGB, red: 0, green: 0, blue: 0)
    public nonisolated init(
        _ space: RGBColorSpace, red: Double, green: Double, blue: Double, opacity: Double = 1
    ) {}
    public nonisolated func opacity(_ opacity: Double) -> Color { self }
}
public struct Font: Sendable {
    public enum TextStyle: Sendable { case body }
    public static func custom(_ name: String, size: CGFloat, relativeTo: TextStyle) -> Font { Font() }
    public static func custom(_ name: String, fixedSize: CGFloat) -> Font { Font() }
    public func monospacedDigit() -> Font { self }
}
public enum CGLineCap: Sendable { case butt, round, square }
public enum CGLineJoin: Sendable { case miter, round, bevel }
public struct StrokeStyle: Sendable {
    public init(
        lineWidth: CGFloat = 1, lineCap: CGLineCap = .butt, lineJoin: CGLineJoin = .miter, dash: [CGFloat] = []
    ) {}
}
public struct Angle: Sendable { public static func degrees(_ degrees: Double) -> Angle { Angle() } }
public protocol Shape: View, Sendable where Body == Never {}
extension Shape {
    public var body: Never { fatalError() }
    public func fill<S: ShapeStyle>(_ style: S) -> some View { self }
    public func stroke<S: ShapeStyle>(_ style: S, style line: StrokeStyle) -> some View { self }
}
public protocol InsettableShape: Shape {}
extension InsettableShape {
    public func strokeBorder<S: ShapeStyle>(_ style: S, lineWidth: CGFloat = 1) -> some View { self }
}
public struct Rectangle: InsettableShape { public nonisolated init() {} }
public struct Circle: InsettableShape { public nonisolated init() {} }
public struct Capsule: InsettableShape { public nonisolated init() {} }
public struct RoundedRectangle: InsettableShape { public nonisolated init(cornerRadius: CGFloat) {} }
public struct Path: Shape {
    public nonisolated init() {}
    public nonisolated init(_ callback: (inout Path) -> Void) {}
    public nonisolated init(_ rect: CGRect) {}
    public nonisolated init(ellipseIn rect: CGRect) {}
    public nonisolated init(roundedRect: CGRect, cornerRadius: CGFloat) {}
    public nonisolated mutating func move(to: CGPoint) {}
    public nonisolated mutating func addLine(to: CGPoint) {}
    public nonisolated mutating func addLines(_ lines: [CGPoint]) {}
    public nonisolated mutating func closeSubpath() {}
    public nonisolated mutating func addRelativeArc(
        center: CGPoint, radius: CGFloat, startAngle: Angle, delta: Angle
    ) {}
}
public struct GraphicsContext {
    public struct Shading { public static func color(_ color: Color) -> Shading { Shading() } }
    public struct ResolvedText {
        public func measure(in size: CGSize) -> CGSize { size }
        public func firstBaseline(in size: CGSize) -> CGFloat { 0 }
    }
    public func fill(_ path: Path, with: Shading) {}
    public func stroke(_ path: Path, with: Shading, lineWidth: CGFloat = 1) {}
    public func stroke(_ path: Path, with: Shading, style: StrokeStyle) {}
    public func resolve(_ text: Text) -> ResolvedText { ResolvedText() }
    public func draw(_ text: ResolvedText, at: CGPoint, anchor: UnitPoint = .center) {}
    public func draw(_ image: Image, in rect: CGRect) {}
}
