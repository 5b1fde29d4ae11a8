### What a presenter says. Attributes are further wordings, taken in turn.

## What lies on the table

table-boxes = { $size ->
    [8] An
    [11] An
    [18] An
   *[other] A
} { $size }×{ $size } grid with { $givens ->
    [0] no givens at all
    [1] one given
   *[other] { $number } givens
}.
table-irregular = { $size ->
    [8] An
    [11] An
    [18] An
   *[other] A
} { $size }×{ $size } grid with irregular regions and { $givens ->
    [0] no givens at all
    [1] one given
   *[other] { $number } givens
}. Its regions are lettered from A, in the order in which the rows reach them.
table-none = { $size ->
    [8] An
    [11] An
    [18] An
   *[other] A
} { $size }×{ $size } Latin square with { $givens ->
    [0] no givens at all
    [1] one given
   *[other] { $number } givens
}.
table-overlap = { $grids } overlapping { $size }×{ $size } grids with { $givens ->
    [0] no givens at all
    [1] one given
   *[other] { $number } givens
}.
table-holes = { $size ->
    [8] An
    [11] An
    [18] An
   *[other] A
} { $size }×{ $size } grid with black cells and { $givens ->
    [0] no givens at all
    [1] one given
   *[other] { $number } givens
}.
symmetry = { $turn } maps the puzzle onto itself, so most of its steps come in pairs.
symmetry-relabelled = { $turn }, with { $cycles }, maps the puzzle onto itself, so most of its steps come in pairs.
cycle-swapped = { $digits } exchanged
cycle-round = { $digits } going round
turn-half = a half turn
turn-left-right = a reflection from left to right
turn-top-bottom = a reflection from top to bottom
turn-falling = a reflection in the diagonal from the top left
turn-rising = a reflection in the diagonal from the top right
turn-quarter = a quarter turn
turn-quarter-right = a quarter turn to the right
turn-quarter-left = a quarter turn to the left

introduction-singles-crux = Band { $band }: singles all the way, with the hard moment at { $filled } cells filled.
introduction-singles-crux-at-start = Band { $band }: singles all the way, with the hard moment at the very start.
introduction-singles-bottlenecks = Band { $band }: singles all the way, with a bottleneck or two.
introduction-singles-choice = Band { $band }: singles all the way, and never fewer than { $choice } to choose from.
introduction-singles = Band { $band }: singles all the way, and none that is hard to find.
introduction-stuck-crux = Band { $band }: the singles run out { $times }, and the hard moment comes at { $filled } cells filled.
introduction-stuck-crux-at-start = Band { $band }: the singles run out { $times }, and the hard moment comes at the very start.
introduction-stuck = Band { $band }: the singles run out { $times }.
introduction-stuck-briefly = Band { $band }: the singles run out { $times }, though never for long.
times = { $n ->
    [1] once
    [2] twice
   *[other] { $number } times
}

## Placements

places-last-of-digit = The last { $digit } goes to { $cell }.
    .b = { $house } takes the last { $digit }, in { $cell }.
places-last-cell = The last cell of { $house }, { $cell }, takes { $digit }.
    .b = { $house } lacks only { $digit }, which goes to { $cell }.
    .c = { $house } closes with { $digit } in { $cell }.
places-naked-single = Only { $digit } is left for { $cell }.
    .b = Nothing but { $digit } fits in { $cell }.
places-hidden-single = In { $house } only { $cell } takes { $digit }.
    .b = { $house } has one place for { $digit }, { $cell }.
    .c = The { $digit } of { $house } goes to { $cell }.
# The same where more of the passage stands before it.
then-last-of-digit = Then the last { $digit } goes to { $cell }.
    .b = { $house } takes the last { $digit }, in { $cell }.
then-last-cell = The last cell of { $house }, { $cell }, takes { $digit }.
    .b = Then { $house } lacks only { $digit }, which goes to { $cell }.
    .c = { $house } closes with { $digit } in { $cell }.
    .d = Next, the last cell of { $house }, { $cell }, takes { $digit }.
then-naked-single = Then only { $digit } is left for { $cell }.
    .b = Nothing but { $digit } fits in { $cell }.
then-hidden-single = In { $house } only { $cell } takes { $digit }.
    .b = Then { $house } has one place for { $digit }, { $cell }.
    .c = The { $digit } of { $house } goes to { $cell }.
    .d = Next, in { $house } only { $cell } takes { $digit }.

leaves-last-cell = That leaves { $digit } for { $cell }, the last cell of { $house }.
leaves-naked-single = That leaves { $cell } nothing but { $digit }.
    .b = Then { $cell } must be { $digit }.
leaves-hidden-single = That leaves { $cell } for { $digit } in { $house }.
    .b = That leaves { $house } only { $cell } for { $digit }.
    .c = So the { $digit } of { $house } must be in { $cell }.

opens-last-cell = The last cell of { $house }, { $cell }, takes { $digit }.
opens-naked-single = That leaves { $digit } alone in { $cell }.
    .b = Now { $cell } can only be { $digit }.
opens-hidden-single = That leaves { $cell } as the only place for { $digit } in { $house }.
    .b = Now { $house } has one place left for { $digit }, { $cell }.
    .c = With that, the { $digit } of { $house } goes to { $cell }.
    .d = So { $house } has its { $digit } in { $cell }.

run-starts = Start with the { $digit }s: { $cells }.
run-completes = The last { $count } { $digit }s go to { $cells }.
    .b = { $count } { $digit }s are left, and they go to { $cells }.
    .c = The { $digit }s are completed by { $cells }.
run-chained = One { $digit } leads to the next: { $cells }.
    .b = The { $digit }s follow one from another: { $cells }.
run-band = Scanning the { $digit }s through the { $band } gives { $cells }.
    .b = The { $digit }s of the { $band } are { $cells }.
run = { $count } { $digit }s follow, { $cells }.
    .b = Scanning the { $digit }s gives { $cells }.
    .c = Then the { $digit }s: { $cells }.
    .d = The { $digit }s go on with { $cells }.
band-top = top band
band-middle = middle band
band-bottom = bottom band
band-left = left stack
band-centre = centre stack
band-right = right stack
fills = { $house } fills up with { $placed }.
    .b = { $house } is finished with { $placed }.

with-image-last-cell = The last cell of { $house }, { $cell }, takes { $digit }, and by symmetry { $image } takes { $other }.
with-image-naked-single = Only { $digit } is left for { $cell }, and by symmetry { $other } for { $image }.
with-image-hidden-single = In { $house } only { $cell } takes { $digit }, and by symmetry { $image } takes { $other }.
run-with-images = { $count } { $digit }s go to { $cells }, and by symmetry the { $other }s to { $images }.
run-with-images-alike = { $count } { $digit }s go to { $cells }, and by symmetry as many to { $images }.

starts-here = Start here.
starts-in-house = Start with the { $digit } of { $house }: the { COUNT($lookers) ->
    [one] { $digit }
   *[other] { $digit }s
} in { $lookers } { COUNT($lookers) ->
    [one] leaves
   *[other] leave
} only { $cell }.
seen-last-cell = { $house } lacks only { $digit }, which goes to { $cell }.
seen-lookers = The { COUNT($lookers) ->
    [one] { $digit }
   *[other] { $digit }s
} in { $lookers } { COUNT($lookers) ->
    [one] leaves
   *[other] leave
} { $house } only { $cell } for { $digit }.
seen-lookers-struck = The { COUNT($lookers) ->
    [one] { $digit }
   *[other] { $digit }s
} in { $lookers } and what was eliminated before leave { $house } only { $cell } for { $digit }.
seen-lookers-marked = The { COUNT($lookers) ->
    [one] { $digit }
   *[other] { $digit }s
} in { $lookers } and the marks leave { $house } only { $cell } for { $digit }.
seen-lookers-struck-marked = The { COUNT($lookers) ->
    [one] { $digit }
   *[other] { $digit }s
} in { $lookers }, the marks and what was eliminated before leave { $house } only { $cell } for { $digit }.
seen-struck = What was eliminated before leaves { $house } only { $cell } for { $digit }.
seen-marked = The marks leave { $house } only { $cell } for { $digit }.
seen-struck-marked = The marks and what was eliminated before leave { $house } only { $cell } for { $digit }.
seen-in-cell = { $held }, so { $cell } can only be { $digit }.
held-first = { $house } holds { $digits }
held-next = { $house } adds { $digits }
held-first-others = other cells in sight hold { $digits }
held-next-others = other cells in sight add { $digits }
held-struck = { $steps } eliminated { $digits }
held-marked = its mark rules out { $digits }

fixes = { $marks } { $many ->
    [yes] fix
   *[no] fixes
} { $count ->
    [1] one cell
   *[other] { $number } cells
} at once: { $placed }.
taken-from-proof = Here the ladder ends, and the proof has to help with { $placed }.
falls-into-place = From here everything falls into place: { $placed }.
    .b = The rest falls into place: { $placed }.
remains = What remains is { $placed }.
ending-more = { $most }, { $next }
ending-last = { $most }, and at last { $last }

## Where it gets narrow

few-lone-naked = Careful here: with { $filled } cells filled, the only single is a naked one.
    .b = At { $filled } cells a lone naked single is all there is.
    .c = Just one single is open at { $filled } cells, and it is a naked one.
few-naked = At { $filled } cells only naked singles are left, { $number } of them.
    .b = { $number } naked singles are all there is at { $filled } cells.
few = Look closely: with { $filled } cells filled there { $singles ->
    [1] is only one single
   *[other] are only { $number } singles
}.
    .b = At { $filled } cells there { $singles ->
    [1] is just one single
   *[other] are just { $number } singles
}.
crux-lone-naked = Now comes the hard moment: with { $filled } cells filled, the only single is a naked one.
crux-naked = Now comes the hard moment: at { $filled } cells only naked singles are left, { $number } of them.
crux-few = Now comes the hard moment: with { $filled } cells filled there { $singles ->
    [1] is only one single
   *[other] are only { $number } singles
}.
stuck = With { $filled } cells filled, no single is left.
    .b = At { $filled } cells the singles run out.
    .c = No single is left at { $filled } cells.
stuck-at-start = There is no single to begin with.
stuck-long = With { $filled } cells filled, no single is left, and you need { $steps }.
    .b = At { $filled } cells the singles run out; to go on, you need { $steps }.
stuck-long-at-start = There is no single to begin with, and you need { $steps }.
crux = Now comes the hard moment: with { $filled } cells filled no single is left, and you need { $steps }.
crux-at-start = Now comes the hard moment: there is no single to begin with, and you need { $steps }.
aim-hidden-single = The aim is the { $digit } of { $house }: it belongs in { $cell } once it is gone from { $rival-cells }.
aim-naked-single = The aim is { $cell }, which is { $digit } once { $rival-digits } { COUNT($rival-digits) ->
    [one] is
   *[other] are
} gone from it.

## Eliminations

names = Look for { $technique }.
    .b = Now for { $technique }.
    .c = This calls for { $technique }.
same-holds = The same holds for { $mark }, so { $gone }.
by-symmetry = By symmetry, { $gone }.
by-symmetry-places = By symmetry, { $cell } takes { $digit }.
by-symmetry-opens = By symmetry, { $gone }, and { $cell } takes { $digit }.
    .b = The mirror image goes the same way: { $gone }, and { $cell } takes { $digit }.
follow-end = Next come { $number } what-ifs, each of which leaves { $house } without a place for { $digit }.
follow-mark = Next come { $number } what-ifs, all settled by { $mark }.
follow-kind = Next come { $number } what-ifs, each of which ends at { $marks }.
follow-tried-digit = Next come { $number } what-ifs, all about { $tried-digit }.
follow-tried-cell = Next come { $number } what-ifs, all about { $tried-cell }.
follow-tried-house = Next come { $number } what-ifs, all in { $tried-house }.
follow = Next come { $number } what-ifs.
more-alike = In the same way, { $count ->
    [1] one more shows
   *[other] { $number } more show
} that { $gone }.
