### Why a step holds: a sentence for each claim. A kind of rule or a technique may have a wording of its own, after “--”.
### $gone is what goes, as a clause; $mark is the mark that says so, always the subject. Attributes are further wordings.

## What goes

gone-first = { $digits } { COUNT($digits) ->
    [one] is
   *[other] are
} eliminated from { $cells }
gone-next = { $digits } from { $cells }
impossible = with { OR($digits) } in { OR($cells) }

## Singles

claim-last-cell = The last empty cell of { $house }, { $cell }, takes { $digit }.
claim-hidden-single = In { $house } only { $cell } can hold { $digit }.
claim-naked-single = Only { $digit } is left for { $cell }.
claim-fixed = { $mark } leaves { $cell } no choice: it holds { $digit }, whatever the givens.
claim-from-proof = The ladder ends here; the { $digit } in { $cell } is taken from the proof.

## Patterns

claim-locked = Every place for { $digit } in { $home } lies in { $other }, so { $gone }.
claim-naked-subset = In { $house }, { $cells } hold { $digits } between them, so { $gone }.
claim-naked-subset-in-mark = { $mark } repeats no digit, and { $cells } { COUNT($cells) ->
    [one] holds
   *[other] hold
} { $digits } there, so { $gone }.
claim-naked-subset--limits = In { $house }, { $cells } are limited to { $digits }, so { $gone }.
claim-naked-subset--parity = In { $house }, { $cells } use up the digits { $digits }, so { $gone }.
claim-hidden-subset = In { $house }, { $digits } fit nowhere but in { $cells }, so { $gone }.
claim-fish = In { $base } every place for { $digit } lies in { $cover }, so { $gone }.
claim-fish-finned = In { $base } every place for { $digit } lies in { $cover } or is { OR($fins) }; either way { $gone }.
claim-seen-by-all = In { $house } the { $digit } is in { OR($places) }; each of these sees { $gone-cells }, so { $gone }.
claim-seen-by-all-in-mark = { $mark } has its { $digit } in { OR($places) }; each of these sees { $gone-cells }, so { $gone }.
claim-seen-by-all--king = In { $house } the { $digit } is in { OR($places) }; each of these touches { $gone-cells } or shares a { house-any } with it, so { $gone }.
claim-seen-by-all--knight = In { $house } the { $digit } is in { OR($places) }; each of these sees { $gone-cells }, along a { house-any } or by a knight’s move, so { $gone }.
claim-pivot-wing--xy-wing = Whatever { $pivot } holds, { OR($wings) } is { $digit }, so { $gone }.
claim-pivot-wing--xyz-wing = Whatever { $pivot } holds, the { $digit } is there or in { OR($wings) }, so { $gone }.
claim-linked-wing = In { $house } the { $joined } is in { OR($link) }, so { $pair } cannot both be { $joined }; one of them is { $digit }, and { $gone }.
claim-chain = If { $start-cell } is not { $start-digit }, then { $trues }. So { $start } or { $end }, and either way { $gone }.
claim-chain-to-itself = If { $start-cell } is not { $start-digit }, then { $trues } after all. So { $start }, and { $gone }.
claim-extended-chain = If { $unless }, then { $trues }. So { $start }, or { $end }, and either way { $by } rules out { $taken }.
claim-extended-chain-seen = If { $unless }, then { $trues }. So { $start }, or { $end }, and either way { $gone }.
claim-extended-chain-to-itself = If { $unless }, then { $trues } after all. So { $start }, and { $by } rules out { $taken }.
claim-extended-chain-to-itself-seen = If { $unless }, then { $trues } after all. So { $start }, and { $gone }.
claim-either-way = In { $house } the { $digit } is in { OR($places) }; { $n ->
    [2] either way
   *[other] whichever it is,
} { $by } rules out { $taken }.
claim-either-way-in-cell = Whether { $cell } holds { OR($digits) }, { $by } rules out { $taken }.
in-plain-sight = the digit itself
true = { $cell } is { $digit }
true-in-group = { $digit } is in { OR($cells) }
unless = { $cell } is not { $digit }
unless-in-group = { $digit } is not in { OR($cells) }
true-by-mark = { $by } rules out { $taken }, so { $true }
true-among = { $among } hold { $digits }, so { $true }
true-among-by-mark = { $by } rules out { $taken }, { $among } hold { $digits }, so { $true }

## What-ifs

claim-refuted = With { $tried }, { $end }, so { $gone }.
claim-refuted-later = With { $tried }, { $end } after { $n ->
    [1] a round
   *[other] { $rounds } rounds
} of following what is forced, so { $gone }.
claim-refuted-linked = Suppose { $tried }: then { $links }, and { $end }. So { $gone }.
end-no-place = { $house } has no place left for { $digit }
end-no-digit = no digit is left for { $cell }
end-no-digit-by-mark = { $mark } leaves no digit for { $cell }
end-no-digit-by-marks = the marks leave no digit for { $cell }
end-nothing-fits = { $mark } can no longer be completed
then-in-house = { $house } has its { $digit } in { $cell }
then-last = { $cell } can only be { $digit }
then-by-mark = { $mark } leaves only { $digit } for { $cell }
then-gone = { $mark } rules out { $taken }
taken = { $digits } in { $cells }

## What a mark allows

bounds-least = { $cell } no less than { $low }
bounds-most = { $cell } no more than { $high }
bounds-both = { $cell } { $low } to { $high }
bounds-only = { $cell } only { $low }
claim-bounds = { $mark } { $many ->
    [yes] leave
   *[no] leaves
} { $bounds }, so { $gone }.
claim-bounds--thermometer = { $mark } has to rise at every step, so { $gone }.
claim-bounds--resting-thermometer = { $mark } must not fall, so { $gone }.
claim-bounds--diagonal-sum = { $mark } leaves { $bounds }, whatever its other cells hold, so { $gone }.
claim-enclosed = { $mark } has all its digits between those of its two ends, so { $gone }.
claim-enclosed-ends = { $mark } needs room for its digits between those of its two ends, so { $gone }.
claim-only-digits = { $mark } allows only { $digits }, so { $gone }.
claim-only-digits--parity-run = { $mark } calls for { $digits } in { $cells }, so { $gone }.
claim-only-digits--parity-line = { $mark } has { OR($digits) } in { $cells }, so { $gone }.
claim-only-digits--low-high-line = { $mark } has { OR($digits) } in { $cells }, so { $gone }.
claim-only-in = { $mark } keeps { $digits } in { COUNT($digits) ->
    [one] { OR($cells) }
   *[other] { $cells }
}, so { $gone }.
claim-only-in--counting-area = { $mark } has its { $digits } in { $cells }, so { $gone }.
claim-only-in--quadruple = { $mark } needs { $digits }, which can only be in { $cells }, so { $gone }.
claim-no-partner = { $mark } rules out { $gone-digits } in { $cell }, which would leave nothing for { $beyond }.
claim-beside = { $mark } and the { $known } in { $beside } rule out { $gone-digits } in { $cell }.
claim-beside--non-consecutive = The { $known } in { $beside } keeps the digits one above and one below it out of the cells next to it, so { $gone }.
    .b = Next to the { $known } in { $beside } no digit is one more or one less, so { $gone }.
claim-beside--no-doubles = Next to the { $known } in { $beside } there is neither its half nor its double, so { $gone }.
claim-beside--barred-sums = With the { $known } in { $beside }, { $gone-digits } in { $cell } would make a barred sum.
claim-too-near = { $mark } rules out { $gone-digits } in { $cell }, too near to what { $beside } can hold.
claim-one-combination = { $mark } can only hold { $digits }, so { $gone }.
claim-one-combination--quadruple = { $mark } fills its four cells, so { $gone }.
claim-no-combination = { $mark } has no combination with { OR($gone-digits) }, so { $gone }.
claim-no-run = { $mark } has no run with { OR($gone-digits) }, so { $gone }.
claim-needed = { $mark } needs { $digit }, in { OR($places) }, so { $gone }.
claim-no-filling = { $mark } cannot be completed { $impossible }.
    .b = { $mark } has no filling { $impossible }.
claim-no-filling-joined = { $mark } cannot all be met { $impossible }.
claim-same-digit = { $mark } has the same digit in { $cells }, so { $gone }.
claim-reached = { $mark } keeps the { $digit } in { $cell } away from { $gone-cells }, so { $gone }.
claim-reached--king = A king’s move leads from the { $digit } in { $cell } to { $gone-cells }, which therefore cannot hold { $digit }.
claim-reached--knight = A knight’s move leads from the { $digit } in { $cell } to { $gone-cells }, which therefore cannot hold { $digit }.
claim-beside-all = In { $house } the { $digit } is in { OR($places) }, always next to { $cell }, so { $gone }.
claim-limits-meet = { $mark } adds up to at least { $least }, and its total is at most { $most }, so { $gone }.
claim-limits-meet-from-above = { $mark } adds up to at most { $most }, and its total is at least { $least }, so { $gone }.
claim-limits-meet--arrow = { $mark } has at least { $least } along its shaft and at most { $most } in its circle, so { $gone }.
claim-limits-meet-from-above--arrow = { $mark } has at most { $most } along its shaft and at least { $least } in its circle, so { $gone }.
claim-common-sum--square-block = { $mark } must have a sum of { $sums } in each of its lines, so { $gone }.
claim-common-sum--open-cage = { $mark } must have a total of { $sums } in each, so { $gone }.
claim-common-sum = { $mark } must have a sum of { $sums } in every part, so { $gone }.
sums-range = { $least } to { $most }
claim-left-over = { $houses } { $n ->
    [1] adds
   *[other] add
} up to { $total } and the whole { $nouns } there to { $within }, which leaves { $rest } for { $cells }{ COUNT($cells) ->
    [one] {""}
   *[other] {" "}together
}, so { $gone }.
claim-left-over-beyond = { $houses } { $n ->
    [1] adds
   *[other] add
} up to { $total } and the { $nouns } over { $n ->
    [1] it
   *[other] them
} to { $within }, which leaves { $rest } for { $cells }{ COUNT($cells) ->
    [one] {""}
   *[other] {" "}together
}, so { $gone }.
claim-steps = { $mark } can only take steps of { OR($steps) }, so { $gone }.
claim-first-digits = { $mark } { COUNT($digits) ->
    [one] has to begin with { $digits }
   *[other] can begin with { OR($digits) } only
}, and what follows has to fit, so { $gone }.
claim-counts-to = { $mark } can only be at place { OR($places) }, and { $first } counts to it, so { $gone }.
claim-counts-to--pointing = { $mark } can only count { OR($places) } along its arrow, so { $gone }.
claim-apart = { $mark } leaves { $counts } between its crusts, so { $gone }.
claim-apart-filled = { $mark } has { $counts } between its crusts, filled with { $fillings }, so { $gone }.
apart-cells = { $number } { $n ->
    [1] cell
   *[other] cells
}
claim-held-by-rest = { $rest }, where every digit stands once too, can hold { $digit } only in { $cell }, so { $gone }.
claim-held-by-rest-settled = { $rest }, where every digit stands once too, already has its { $digit } in { $cell }, so { $gone }.
