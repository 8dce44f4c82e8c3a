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

## Dates

date = { $day } { $month } { $year }
date-and-time = { $date }, { $time }
month-1 = January
month-2 = February
month-3 = March
month-4 = April
month-5 = May
month-6 = June
month-7 = July
month-8 = August
month-9 = September
month-10 = October
month-11 = November
month-12 = December
