### Vacuum hold tests: of the tester, of a reach of the circuit, of one part alone.
### $target is the vacuum to pump to, $seconds how long to watch, $limit the drop that is allowed.

test-hand-pump-title = Test the hand pump alone
test-hand-pump-name = Hand pump alone
test-hand-pump-why = A tester that leaks makes every part look leaky.
test-hand-pump-explain = Cap the adapter and test hand pump, gauge and adapter by themselves. What they lose is taken off every later result.
test-hand-pump-where = At the end of the adapter you will use, capped.
test-hand-pump-step-1 = Fit the adapter you will use and cap it. Gauge at zero?
test-hand-pump-step-2 = Pump to { $target }, then take your hand off the lever.
test-hand-pump-step-3 = Watch the needle for { $seconds }. Read it when the phone buzzes.
test-hand-pump-means-holds = The tester holds: trust it.
test-hand-pump-means-slow-leak = It loses a little. Later results take that off.
test-hand-pump-means-leaks = The tester leaks. Try another cap or adapter first.
test-hand-pump-means-will-not-build = The cap is off, or the hand pump is worn.
test-hand-pump-means-undecided = Too close to call. Watching longer tells.

## In general: a part alone

test-hold-title = Vacuum hold test: { $part }
test-hold-name = Vacuum hold test, { $part }
test-hold-why = The { $part } alone: it holds, or it is the leak.
test-hold-explain = Only the { $part } is on the pump now. If the needle stays, this part does not leak.
test-hold-where = The { $part } alone, its other openings capped.
test-hold-step-1 = Take the { $part } out of the line. Cap its other openings.
test-hold-step-2 = Push the hand pump's adapter on, straight and snug.
test-hold-step-3 = Pump to { $target }, count the strokes, then let go of the lever.
test-hold-step-4 = Watch the needle for { $seconds }. Read it when the phone buzzes.
test-hold-step-5 = Afterwards let the air in slowly and refit everything.
test-hold-means-holds = The { $part } does not leak. Look elsewhere.
test-hold-means-slow-leak = It loses a little, within the limit. Seldom the cause.
test-hold-means-leaks = The { $part } leaks. It is a cause.
test-hold-means-will-not-build = Wide open: a split, a missing cap, or the wrong port.
test-hold-means-undecided = Too close to call on this gauge. Watching longer tells.

## Everything after the valve

test-hold-branch-title = Vacuum hold test: everything after the valve
test-hold-branch-name = Vacuum hold test, all after the valve
test-hold-branch-why = One pull tests hoses, tee and mounts together.
test-hold-branch-explain = If the needle stays, all hoses and mounts after the valve hold. If it falls, something among them leaks and single tests follow.
test-hold-branch-where = Vacuum out: the hose from the valve's outlet, pulled off at the valve.
test-hold-branch-step-1 = Twist the vacuum-out hose off the valve. Wet inside? Stop, note it.
test-hold-branch-step-2 = Push the hand pump's adapter into the hose, straight and snug.
test-hold-branch-step-3 = Pump to { $target }, count the strokes, then let go of the lever.
test-hold-branch-step-4 = Watch the needle for { $seconds }. Read it when the phone buzzes.
test-hold-branch-step-5 = Afterwards let the air in slowly and refit the hose.
test-hold-branch-means-holds = Nothing after the valve leaks. Look at valve and electric side.
test-hold-branch-means-slow-leak = It loses a little, within the limit. Seldom the cause.
test-hold-branch-means-leaks = Something after the valve leaks. Single parts come next.
test-hold-branch-means-will-not-build = A big leak: a hose is off or split, or a mount is torn.
test-hold-branch-means-undecided = Too close to call on this gauge. Watching longer tells.

## One mount

test-hold-mount-title = Vacuum hold test: { $part } alone
test-hold-mount-why = The { $part } alone: it holds, or it is the leak.
test-hold-mount-explain = A cracked diaphragm shows no sign outside. It only shows on the gauge.
test-hold-mount-where = The nipple on the { $part }, or its short hose end.
test-hold-mount-step-1 = Photograph the hose, then twist it off the { $part }.
test-hold-mount-step-2 = Push the hand pump's adapter onto the nipple. Don't bend it.
test-hold-mount-step-3 = Pump to { $target }, count the strokes, then let go of the lever.
test-hold-mount-step-4 = Watch the needle for { $seconds }. Read it when the phone buzzes.
test-hold-mount-step-5 = Afterwards let the air in slowly and refit the hose.
test-hold-mount-means-holds = It does not leak. It may still be torn: look at it too.
test-hold-mount-means-slow-leak = It loses a little, within the limit. Seldom the cause.
test-hold-mount-means-leaks = Its diaphragm or nipple leaks: this mount is a cause.
test-hold-mount-means-will-not-build = Its diaphragm is wide open, or the adapter sits badly.
test-hold-mount-means-undecided = Too close to call on this gauge. Watching longer tells.

## One hose

test-hold-hose-title = Vacuum hold test: { $part } alone
test-hold-hose-why = The { $part } alone: it holds, or it is the leak.
test-hold-hose-explain = Test the hose as it lies in the car, both ends off. A split end often hides under the clip.
test-hold-hose-where = Near end of the { $part }, its far end capped.
test-hold-hose-step-1 = Number both ends of the hose, then twist them off.
test-hold-hose-step-2 = Cap the far end. Push the hand pump's adapter into the near end.
test-hold-hose-step-3 = Pump to { $target }, count the strokes, then let go of the lever.
test-hold-hose-step-4 = Bend the hose gently while you watch for { $seconds }.
test-hold-hose-step-5 = Read when the phone buzzes. Let the air in, refit both ends.
test-hold-hose-means-holds = It does not leak. It may still be blocked: air must pass too.
test-hold-hose-means-slow-leak = It loses a little, within the limit. Seldom the cause.
test-hold-hose-means-leaks = The { $part } leaks, often at an end. It is a cause.
test-hold-hose-means-will-not-build = It is split, or its far end is not capped.
test-hold-hose-means-undecided = Too close to call on this gauge. Watching longer tells.

## Check valve and reservoir

test-hold-check-valve-title = Vacuum hold test: check valve
test-hold-check-valve-why = A check valve that passes back loses vacuum with the engine off.
test-hold-check-valve-explain = It must let air go towards the engine only. Its arrow points to the source.
test-hold-check-valve-where = Check valve, on the side away from the engine.
test-hold-check-valve-step-1 = Note its arrow. Pull the hose off the side away from the engine.
test-hold-check-valve-step-2 = Push the hand pump's adapter onto that side.
test-hold-check-valve-step-3 = Pump to { $target }, count the strokes, then let go of the lever.
test-hold-check-valve-step-4 = Watch the needle for { $seconds }. Read it when the phone buzzes.
test-hold-check-valve-step-5 = Afterwards refit it, the arrow towards the engine.
test-hold-check-valve-means-holds = The check valve closes.
test-hold-check-valve-means-slow-leak = It passes back a little, within the limit.
test-hold-check-valve-means-leaks = It passes back: vacuum is lost when the engine { -labor }s.
test-hold-check-valve-means-will-not-build = Wide open, or you are on its other side.
test-hold-check-valve-means-undecided = Too close to call on this gauge. Watching longer tells.
test-hold-restrictor-where = One end of the restrictor, the other one capped. Note its arrow.
test-hold-reservoir-where = A nipple of the vacuum reservoir, the other one capped.
test-hold-tee-where = One arm of the tee, the others capped.

## Ahead of the valve

test-hold-inlet-title = Vacuum hold test: everything ahead of the valve
test-hold-inlet-name = Vacuum hold test, all ahead of the valve
test-hold-inlet-why = Behind a check valve this line must hold with the engine off.
test-hold-inlet-explain = A stopped engine is open to the air. Only the check valve lets this line hold, so it is tested too.
test-hold-inlet-where = Vacuum in: the hose to the valve's inlet, pulled off at the valve.
test-hold-inlet-step-1 = Twist the vacuum-in hose off the valve.
test-hold-inlet-step-2 = Push the hand pump's adapter into the hose, straight and snug.
test-hold-inlet-step-3 = Pump to { $target }, count the strokes, then let go of the lever.
test-hold-inlet-step-4 = Watch the needle for { $seconds }. Read it when the phone buzzes.
test-hold-inlet-step-5 = Afterwards let the air in slowly and refit the hose.
test-hold-inlet-means-holds = Hose and check valve ahead of the valve hold.
test-hold-inlet-means-slow-leak = It loses a little, within the limit. Seldom the cause.
test-hold-inlet-means-leaks = Hose, reservoir or check valve ahead of the valve leaks.
test-hold-inlet-means-will-not-build = No check valve works here, or a hose is off.
test-hold-inlet-means-undecided = Too close to call on this gauge. Watching longer tells.

## The valve's inlet port

test-hold-valve-title = Vacuum hold test: solenoid valve at rest
test-hold-valve-name = Vacuum hold test, solenoid valve at rest
test-hold-valve-why = A valve that passes at rest wastes vacuum all the time.
test-hold-valve-explain = At rest its inlet should be shut. If the needle falls, its seat passes.
test-hold-valve-where = The valve's inlet port, both hoses off, no current.
test-hold-valve-step-1 = Pull both hoses off the valve. Leave its connector unplugged.
test-hold-valve-step-2 = Push the hand pump's adapter onto the inlet port.
test-hold-valve-step-3 = Pump to { $target }, count the strokes, then let go of the lever.
test-hold-valve-step-4 = Watch the needle for { $seconds }. Read it when the phone buzzes.
test-hold-valve-step-5 = Afterwards refit the hoses as they were.
test-hold-valve-means-holds = Its seat closes. Whether it opens is another test.
test-hold-valve-means-slow-leak = Its seat passes a little, within the limit.
test-hold-valve-means-leaks = Its seat passes at rest: the valve is a cause.
test-hold-valve-means-will-not-build = It stands open, or you are on the wrong port.
test-hold-valve-means-undecided = Too close to call on this gauge. Watching longer tells.
