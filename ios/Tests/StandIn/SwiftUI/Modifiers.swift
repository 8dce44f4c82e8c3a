import Foundation
import Observation

// What views can be told

extension View {
    public func frame(width: CGFloat? = nil, height: CGFloat? = nil, alignment: Alignment = .center) -> some View {
        self
    }
    public func frame(
        minWidth: CGFloat? = nil, maxWidth: CGFloat? = nil, minHeight: CGFloat? = nil, maxHeight: CGFloat? = nil,
        alignment: Alignment = .center
    ) -> some View { self }
    public func padding(_ edges: Edge.Set = .all, _ length: CGFloat? = nil) -> some View { self }
    public func padding(_ length: CGFloat) -> some View { self }
    public func background<S: ShapeStyle>(_ style: S) -> some View { self }
    public func background<V: View>(_ view: V, alignment: Alignment = .center) -> some View { self }
    public func background<S: ShapeStyle, T: InsettableShape>(_ style: S, in shape: T) -> some View { self }
    public func background<V: View>(alignment: Alignment = .center, @ViewBuilder content: () -> V) -> some View { self }
    public func overlay<V: View>(_ view: V, alignment: Alignment = .center) -> some View { self }
    public func overlay<V: View>(alignment: Alignment = .center, @ViewBuilder content: () -> V) -> some View { self }
    public func font(_ font: Font?) -> some View { self }
    public func foregroundStyle<S: ShapeStyle>(_ style: S) -> some View { self }
    public func tint<S: ShapeStyle>(_ style: S) -> some View { self }
    public func multilineTextAlignment(_ alignment: TextAlignment) -> some View { self }
    public func fixedSize(horizontal: Bool, vertical: Bool) -> some View { self }
    public func underline(_ isActive: Bool = true) -> some View { self }
    public func minimumScaleFactor(_ factor: Double) -> some View { self }
    public func lineLimit(_ limit: ClosedRange<Int>) -> some View { self }
    public func buttonStyle(_ style: PlainButtonStyle) -> some View { self }
    public func disabled(_ disabled: Bool) -> some View { self }
    public func contentShape<S: Shape>(_ shape: S) -> some View { self }
    public func clipShape<S: Shape>(_ shape: S) -> some View { self }
    public func clipped() -> some View { self }
    public func aspectRatio(_ ratio: CGFloat?, contentMode: ContentMode) -> some View { self }
    public func scaleEffect(_ scale: CGFloat, anchor: UnitPoint = .center) -> some View { self }
    public func scaleEffect(x: CGFloat = 1, y: CGFloat = 1, anchor: UnitPoint = .center) -> some View { self }
    public func offset(_ offset: CGSize) -> some View { self }
    public func offset(x: CGFloat = 0, y: CGFloat = 0) -> some View { self }
    public func ignoresSafeArea(edges: Edge.Set = .all) -> some View { self }
    public func id<ID: Hashable>(_ id: ID) -> some View { self }
    public func allowsHitTesting(_ enabled: Bool) -> some View { self }
    public func scrollDismissesKeyboard(_ mode: ScrollDismissesKeyboardMode) -> some View { self }
    public func scrollBounceBehavior(_ behavior: ScrollBounceBehavior, axes: Axis.Set = [.vertical]) -> some View { self }
    public func submitLabel(_ label: SubmitLabel) -> some View { self }
    public func textInputAutocapitalization(_ how: TextInputAutocapitalization?) -> some View { self }
    public func autocorrectionDisabled(_ disable: Bool = true) -> some View { self }
    public func keyboardType(_ type: UIKeyboardType) -> some View { self }
    public func focused(_ condition: FocusState<Bool>.Binding) -> some View { self }
    public func environment<V>(_ key: WritableKeyPath<EnvironmentValues, V>, _ value: V) -> some View { self }
    public func environment<T: AnyObject & Observable>(_ object: T?) -> some View { self }
    public func onChange<V: Equatable>(of value: V, initial: Bool = false, _ act: @escaping (V, V) -> Void) -> some View
    {
        self
    }
    public func onChange<V: Equatable>(of value: V, initial: Bool = false, _ act: @escaping () -> Void) -> some View {
        self
    }
    public func onOpenURL(perform: @escaping (URL) -> Void) -> some View { self }
    public func onTapGesture(count: Int = 1, perform: @escaping () -> Void) -> some View { self }
    public func task<T: Equatable>(id: T, _ act: @escaping @Sendable @MainActor () async -> Void) -> some View { self }
    public func gesture<G: Gesture>(_ gesture: G, including: GestureMask = .all) -> some View { self }
    public func simultaneousGesture<G: Gesture>(_ gesture: G, including: GestureMask = .all) -> some View { self }
    public func accessibilityAddTraits(_ traits: AccessibilityTraits) -> some View { self }
    public func accessibilityElement(children: AccessibilityChildBehavior = .ignore) -> some View { self }
    public func accessibilityLabel(_ label: Text) -> some View { self }
    public func accessibilityValue(_ value: Text) -> some View { self }
    public func accessibilityHint(_ hint: Text) -> some View { self }
    public func accessibilityHidden(_ hidden: Bool) -> some View { self }
    public func accessibilityFocused(_ condition: AccessibilityFocusState<Bool>.Binding) -> some View { self }
    public func accessibilityAction(
        _ kind: AccessibilityActionKind = .default, _ handler: @escaping () -> Void
    ) -> some View { self }
}
