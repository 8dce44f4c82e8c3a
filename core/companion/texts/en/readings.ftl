### Readings, falls of the needle and their numbers in words.

yes = yes
no = no

fall-lost = lost { $drop } in { $seconds }
fall-none = stood still at { $start } for { $seconds }
fall-gained = rose by { $drop } in { $seconds }
fall-never = reached only { $highest }
fall-short = stuck at { $highest }, should reach { $target }
fall-unusable = read { $start }, not usable

reading-hold-later = { $vacuum } after { $seconds }
reading-hold-trace = { $start }, { $vacuum } after { $seconds }, { $count } readings
reading-strokes = { $strokes-n ->
    [one] { $strokes } stroke
   *[other] { $strokes } strokes
}
reading-field = { $label }: { $value }
reading-open = over range, open
reading-none = none
reading-nothing = nothing was read
reading-samples = recorded for { $seconds }
reading-look = { $part } { $state }
reading-look-nothing = nothing wrong to see
look-cracked-phrase = cracked or split
look-off-phrase = off or loose
look-oily-phrase = oily outside
look-kinked-phrase = kinked or flattened
look-chafed-phrase = chafed through
look-corroded-phrase = corroded
look-wet-inside-phrase = wet inside

detail-leak = Leak { $leak } (95{"\u00A0"}% between { $low } and { $high }), at 20{"\u00A0"}inHg, 20{"\u00A0"}°C, sea level.
detail-leak-none = No leak proved: below { $high }{"\u00A0"}std cm³/min with 95{"\u00A0"}% certainty, at 20{"\u00A0"}inHg, 20{"\u00A0"}°C, sea level.
detail-limit = Limit { $limit } for { $volume } under test, tester included.
detail-hole = As much as one hole of { $hole }.
detail-over-limit = Probability over the limit: { $share }.

dial-alt = Gauge at { $reading }. Pump to { $target }.
dial-target = pump to here
chart-limit = limit
chart-seconds = seconds
chart-before = before
chart-after = after
chart-alt = { $test }: { $fall }. Limit { $limit } in { $seconds }.
chart-alt-compared = { $test }: before the repair { $before }, after it { $fall }. Limit { $limit } in { $seconds }.
band-reached = Highest vacuum reached
spectrum-on = with vacuum
spectrum-off = without
spectrum-hz = vibrations a second (Hz)
spectrum-alt = { $test }: strongest with vacuum { $on }, without { $off }.
spectrum-peak = { $level } at { $hz }

band-expected = expected
band-alt = { $what }: { $reading }. Expected { $expected }.
band-alt-open = { $what }: no reading yet. Expected { $expected }.
band-from-to = { $low } to { $high }

connector-seen-from = Seen into the open face of the car's connector
connector-seen-from-wires = Seen from the wire side, connector plugged in
connector-seen-valve = Seen into the valve's own socket
connector-ground = chassis { -ground }
connector-pin = pin { $number }
connector-power-pin = power wire
connector-control-pin = control wire
connector-ground-pin = { -ground } wire
lead-red-control-pin = Red lead on the control pin.
lead-red-control-pin-lamp = Red lead on the control pin, lamp connected, valve commanded.
lead-black-ground-pin = Black lead on the pin of the { -ground } wire.
lead-red-pin-1 = Red lead on pin 1.
lead-black-pin-2 = Black lead on pin 2.
lead-red-each-pin = Red lead on one pin, then the other: both are control wires.
connector-red-here = red lead
connector-black-here = black lead
connector-alt = Connector: { $red } { $black }
