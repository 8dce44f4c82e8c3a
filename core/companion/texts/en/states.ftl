### The word that stands with each state's shape; results of tests; states of a job.

state-holds = holds
state-slow-leak = slow leak
state-leaks = leaks
state-will-not-build = will not build vacuum
state-undecided = undecided
state-as-expected = as expected
state-not-as-expected = not as expected
state-not-done = not done
state-cant-do = can't do
state-interrupted = interrupted

state-repaired = repaired
state-tests-good = tests good
state-not-repaired = not repaired
job-state-found = Cause found
job-state-undecided = Cause not clear
job-state-no-fault = Nothing found

## The circuit map, for a screen reader

map-alt-job = The circuit. Most suspect: the { $part }, { $percent }.
map-alt-plain = the circuit. No part stands out.
map-alt-test = The circuit with the parts under test: { $test }.
map-alt-look = The circuit with what you have seen so far.
map-suspicion = suspect { $percent }
map-state-good = tested, good
map-state-bad = tested, bad
