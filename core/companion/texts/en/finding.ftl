### Overview and finding.

overview-subject = { $vehicle } – { $complaint }
overview-minutes = About { $minutes }
overview-takes = Takes { $minutes }
overview-go = Do this next
overview-look-again = Look again: { $test }
overview-go-again = Look again
overview-open-test = Open
overview-to-finding = See the finding
overview-finding = Finding so far
overview-log = Log and photos
overview-report = Report

finding-likeliest = Likeliest so far: { $cause }.
finding-not-clear = The cause is not clear yet.
finding-nothing-known = Nothing is known yet.
finding-part = The cause is the { $parts }. Most likely { $cause }.
finding-part-aside = A fault, but not behind the complaint: the { $parts }. Most likely { $cause }.
finding-tester = The hand pump itself leaks. Nothing is proved of the car yet.
finding-sound = These tests found no fault in this circuit.
finding-explains = This explains the complaint.
finding-explains-not = It does not explain the complaint: that has another cause.
finding-explains-no-complaint = There is no complaint to explain.
finding-left-open = Still possible: { $fault }.
finding-inseparable = Not told apart: { $parts }.
finding-inseparable-more = { $count ->
    [one] Not told apart: { $parts } and one part more.
   *[other] Not told apart: { $parts } and { $count } parts more.
}
finding-test-more = Test more: { $test }
finding-report = Make the report

repaired-both = The { $part } is repaired: the test is good and the complaint is gone.
repaired-complaint-stays = The { $part } now tests good, but the complaint is still there.
repaired-test-only = The { $part } now tests good; the complaint is not checked again yet.
repaired-test = The { $part } now tests good.
repaired-not = The { $part } was repaired, but the same test still fails.
certainty-before = Found before: { $cause } ({ $percent }).
evidence-seen-for = { $seen } { $times } likelier with this cause.
evidence-seen-against = { $seen } { $times } likelier with another cause.
certainty-none = Nothing is known yet.
certainty-very-sure = Practically sure: { $percent }.
certainty-sure = Sure enough to act: { $percent }.
certainty-sure-sound = Sure enough to stop testing: { $percent }.
certainty-tester = Probability { $percent }. Seal or change it, then test again.
certainty-likely = Likely, not sure: { $percent }. A finding counts from { $level }.
certainty-open = Likeliest so far, with { $percent }: { $cause }.

what-if-ask = What would each result change?
what-if-heading = What each result would change
what-if-nothing = This test would change nothing now.
what-if-line = { $chance }: { $outcome } Then { $causes }.
what-if-decides = { $chance }: { $outcome } That would settle it: { $causes }.
what-if-cause = { $cause } ({ $percent })
