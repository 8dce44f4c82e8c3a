### The word that stands with each state's shape; results of tests; states of a job.

state-holds = Holds
state-slow-leak = Slow leak
state-leaks = Leaks
state-will-not-build = Will not build vacuum
state-undecided = Undecided
state-as-expected = As expected
state-not-as-expected = Not as expected
state-not-done = Not done
state-cant-do = Can't do
state-interrupted = Interrupted

state-repaired = Repaired
state-tests-good = Tests good
state-not-repaired = Not repaired
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
