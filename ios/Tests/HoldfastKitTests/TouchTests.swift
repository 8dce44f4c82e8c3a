import Foundation
import HoldfastCore
import XCTest

@testable import HoldfastKit

/// Fingers and keys: what they send, and in whose units.
final class TouchTests: XCTestCase {
    private let scene = Scene(width: 200, height: 100, alt: "", items: [])
    private var frame: SceneFrame { SceneFrame(scene, width: 400) }
    private let pad = CGSize(width: 400, height: 200)

    func test_an_echo_of_what_was_typed_changes_nothing() {
        var text = FieldText(field("1"))
        XCTAssertEqual(text.type("12"), .type(field: .plate, text: "12"))
        XCTAssertEqual(text.type("123"), .type(field: .plate, text: "123"))
        text.hear(field("12"))
        XCTAssertEqual(text.text, "123")
        text.hear(field("123"))
        XCTAssertEqual(text.text, "123")
        XCTAssertNil(text.type("123"))
    }

    func test_a_value_that_was_not_typed_replaces_the_text() {
        var text = FieldText(field("1"))
        _ = text.type("12")
        text.hear(field("7"))
        XCTAssertEqual(text.text, "7")
        text.hear(Field(id: .vin, label: "", value: "V", unit: "", hint: "", problem: nil, keys: .code))
        XCTAssertEqual(text.text, "V")
    }

    func test_places_are_told_in_the_scene_s_units() {
        XCTAssertEqual(frame.drag(CGPoint(x: 100, y: 50)), .drag(x: 50, y: 25))
        XCTAssertEqual(frame.screen(Point(x: 50, y: 25)), CGPoint(x: 100, y: 50))
    }

    func test_a_small_region_is_as_large_as_a_finger_needs() {
        let item = Item.region(id: "tee", at: Point(x: 10, y: 10), width: 4, height: 60, label: "Tee")
        let region = Scene(width: 200, height: 100, alt: "", items: [item]).regions[0]
        XCTAssertEqual(frame.target(of: region), CGRect(x: 0, y: 20, width: 48, height: 120))
        XCTAssertEqual(region.tap, .tap(region: "tee"))
    }

    func test_a_stroke_is_sent_whole_and_stays_until_the_scene_has_it() {
        var pen = Pen()
        pen.write(at: CGPoint(x: 0, y: 0))
        pen.write(at: CGPoint(x: 20, y: 10))
        pen.dry()
        XCTAssertEqual(pen.wet.count, 2)
        XCTAssertEqual(pen.lift(in: frame), .ink(stroke: [Point(x: 0, y: 0), Point(x: 10, y: 5)]))
        pen.dry()
        XCTAssertEqual(pen.wet, [])
    }

    func test_a_touch_grabs_and_releases() {
        var touch = PhotoTouch()
        XCTAssertEqual(touch.touch(at: CGPoint(x: 20, y: 20), in: frame, pad: pad), [])
        XCTAssertEqual(touch.lift(in: frame), [.grab(x: 10, y: 10, reach: 12), .release])
    }

    func test_a_finger_that_moves_drags_from_where_it_came_down() {
        var touch = PhotoTouch()
        _ = touch.touch(at: CGPoint(x: 20, y: 20), in: frame, pad: pad)
        XCTAssertEqual(touch.touch(at: CGPoint(x: 22, y: 20), in: frame, pad: pad), [])
        let moved = touch.touch(at: CGPoint(x: 40, y: 20), in: frame, pad: pad)
        XCTAssertEqual(moved, [.grab(x: 10, y: 10, reach: 12), .drag(x: 20, y: 10)])
        XCTAssertEqual(touch.lift(in: frame), [.release])
    }

    func test_two_fingers_zoom_and_mark_nothing() {
        var touch = PhotoTouch()
        _ = touch.touch(at: CGPoint(x: 100, y: 100), in: frame, pad: pad)
        touch.pinch(to: 2, around: CGPoint(x: 100, y: 100), pad: pad)
        XCTAssertEqual(touch.view.zoom, 2)
        XCTAssertEqual(touch.view.moved, CGSize(width: -100, height: -100))
        XCTAssertEqual(touch.lift(in: frame), [])
        _ = touch.touch(at: CGPoint(x: 100, y: 100), in: frame, pad: pad)
        XCTAssertEqual(touch.lift(in: frame), [.grab(x: 50, y: 50, reach: 6), .release])
    }

    func test_a_zoomed_photo_stays_on_its_pad() {
        var touch = PhotoTouch()
        touch.pinch(to: 100, around: .zero, pad: pad)
        XCTAssertEqual(touch.view.zoom, 8)
        touch.pinch(to: 0.001, around: .zero, pad: pad)
        XCTAssertEqual(touch.view.zoom, 1)
        XCTAssertEqual(touch.view.moved, .zero)
    }

    func test_the_primary_button_is_for_the_thumb_else_the_first() {
        let buttons = [button("a", .plain), button("b", .primary), button("c", .quiet)]
        XCTAssertEqual(Foot(buttons).foot.map(\.label), ["b"])
        XCTAssertEqual(Foot(buttons).page.map(\.label), ["a", "c"])
        XCTAssertEqual(Foot([buttons[0], buttons[2]]).foot.map(\.label), ["a"])
        XCTAssertEqual(Foot([]).foot, [])
    }

    func test_a_way_back_that_is_barred_sends_nothing() {
        var screen = Screen.plain("a")
        XCTAssertNil(screen.backAction)
        screen.frame.back = Button(label: "Back", action: .back, weight: .quiet, whyNot: nil)
        XCTAssertEqual(screen.backAction, .back)
        screen.frame.back = Button(label: "Back", action: .back, weight: .quiet, whyNot: "not now")
        XCTAssertNil(screen.backAction)
    }

    private func field(_ value: String) -> Field {
        Field(id: .plate, label: "", value: value, unit: "", hint: "", problem: nil, keys: .code)
    }

    private func button(_ label: String, _ weight: ButtonWeight) -> Button {
        Button(label: label, action: .confirm, weight: weight, whyNot: nil)
    }
}
