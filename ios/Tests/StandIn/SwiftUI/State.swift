import Foundation
import Observation

// State

@propertyWrapper
public struct State<Value> {
    public init(wrappedValue: Value) {}
    public init(initialValue: Value) {}
    public var wrappedValue: Value {
        get { fatalError() }
        nonmutating set {}
    }
    public var projectedValue: Binding<Value> { fatalError() }
}
@propertyWrapper
public struct Binding<Value> {
    public init(get: @escaping @MainActor () -> Value, set: @escaping @MainActor (Value) -> Void) {}
    public var wrappedValue: Value {
        get { fatalError() }
        nonmutating set {}
    }
}
@propertyWrapper
public struct FocusState<Value: Hashable> {
    public struct Binding {}
    public init() where Value == Bool {}
    public var wrappedValue: Value {
        get { fatalError() }
        nonmutating set {}
    }
    public var projectedValue: Binding { fatalError() }
}
public typealias AccessibilityFocusState = FocusState
@propertyWrapper
public struct ScaledMetric {
    public init(wrappedValue: Double, relativeTo: Font.TextStyle) {}
    public var wrappedValue: Double { fatalError() }
}
@propertyWrapper
public struct Environment<Value> {
    public init(_ keyPath: KeyPath<EnvironmentValues, Value>) {}
    public init(_ type: Value.Type) where Value: AnyObject & Observable {}
    public var wrappedValue: Value { fatalError() }
}
public protocol EnvironmentKey {
    associatedtype Value
    static var defaultValue: Value { get }
}
public struct EnvironmentValues {
    public subscript<K: EnvironmentKey>(key: K.Type) -> K.Value {
        get { K.defaultValue }
        set {}
    }
    public var layoutDirection: LayoutDirection = .leftToRight
    public var colorScheme: ColorScheme = .light
    public var scenePhase: ScenePhase = .active
    public var locale: Locale = .current
}
public enum ColorScheme: Sendable { case light, dark }
public enum ScenePhase: Sendable { case background, inactive, active }

// Fingers and keys

public protocol Gesture {}
public struct DragGesture: Gesture {
    public struct Value { public var location: CGPoint }
    public init(minimumDistance: CGFloat = 10) {}
    public func onChanged(_ action: @escaping @MainActor (Value) -> Void) -> DragGesture { self }
    public func onEnded(_ action: @escaping @MainActor (Value) -> Void) -> some Gesture { self }
}
public struct MagnifyGesture: Gesture {
    public struct Value {
        public var magnification: CGFloat
        public var startLocation: CGPoint
    }
    public init() {}
    public func onChanged(_ action: @escaping @MainActor (Value) -> Void) -> some Gesture { self }
}
public struct GestureMask: Sendable {
    public static let all = GestureMask()
    public static let subviews = GestureMask()
}
public struct PlainButtonStyle: Sendable { public static let plain = PlainButtonStyle() }
public struct SubmitLabel: Sendable { public static let done = SubmitLabel() }
public struct TextInputAutocapitalization: Sendable { public static let characters = TextInputAutocapitalization() }
public enum UIKeyboardType: Sendable { case numbersAndPunctuation }
public struct ScrollBounceBehavior: Sendable { public static let basedOnSize = ScrollBounceBehavior() }
public struct ScrollDismissesKeyboardMode: Sendable { public static let interactively = ScrollDismissesKeyboardMode() }

// For those who can't see the screen

public struct AccessibilityTraits: OptionSet, Sendable {
    public let rawValue: Int
    public init(rawValue: Int) { self.rawValue = rawValue }
    public static let isHeader = AccessibilityTraits(rawValue: 1)
    public static let isButton = AccessibilityTraits(rawValue: 2)
    public static let isSelected = AccessibilityTraits(rawValue: 4)
    public static let isToggle = AccessibilityTraits(rawValue: 8)
    public static let isImage = AccessibilityTraits(rawValue: 16)
    public static let updatesFrequently = AccessibilityTraits(rawValue: 32)
}
public struct AccessibilityChildBehavior: Sendable {
    public static let combine = AccessibilityChildBehavior()
    public static let ignore = AccessibilityChildBehavior()
}
public struct AccessibilityActionKind: Sendable {
    public static let `default` = AccessibilityActionKind()
    public static let escape = AccessibilityActionKind()
}
public enum AccessibilityNotification {
    public struct Announcement {
        public init(_ words: String) {}
        public func post() {}
    }
}
