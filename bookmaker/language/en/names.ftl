### What things are called: cells and digits in lists, houses, marks, techniques.

# What the editor’s plain quotation marks become: outer pair, inner pair, with a space between them.
quotation-marks = “ ” ‘ ’
# The letters in the order of a dictionary, with a space between them; accented ones only where they have a place of
# their own.
alphabet = a b c d e f g h i j k l m n o p q r s t u v w x y z

## Lists

list-more = { $most }, { $next }
list-and = { $most } and { $last }
list-or = { $most } or { $last }
# Cells that hold the same digit.
list-alike = { $most } with { $last }
# Clauses that hold commas or “and” themselves.
clauses-more = { $most }, { $next }
clauses-or = { $most }, or { $last }
clauses-and = { $most }, and { $last }

# How many things, in words as far as twelve.
number = { $n ->
    [0] no
    [1] one
    [2] two
    [3] three
    [4] four
    [5] five
    [6] six
    [7] seven
    [8] eight
    [9] nine
    [10] ten
    [11] eleven
    [12] twelve
   *[other] { $n }
}

# Four digits in a row, or more.
digits-run = { $first } to { $last }
candidate = { $digit } in { $cell }
placed = { $digits } in { $cells }
tried = { OR($digits) } in { OR($cells) }

## Houses

# Any house of the grid itself, by what the grid is divided into.
house-any = { $divided ->
    [none] row or column
    [regions] row, column or region
   *[boxes] row, column or box
}
house-row = row { $number }
    .short = r{ $number }
house-column = column { $number }
    .short = c{ $number }
house-region = region { $letter }
house-box = { $place ->
    [middle-centre] the centre box
    [top-left] the top left box
    [top-centre] the top centre box
    [top-right] the top right box
    [middle-left] the middle left box
    [middle-right] the middle right box
    [bottom-left] the bottom left box
    [bottom-centre] the bottom centre box
    [bottom-right] the bottom right box
   *[other] the box at { $cell }
}
# Houses that a rule adds.
house-of-rule = the { $noun } at { $cell }
house-diagonals-falling = the falling diagonal
house-diagonals-rising = the rising diagonal
house-disjoint-groups = the cells in place { $number } of each box
house-disjoint-groups-of-nine = { $n ->
    [1] the top left cells of the boxes
    [2] the top centre cells of the boxes
    [3] the top right cells of the boxes
    [4] the middle left cells of the boxes
    [5] the centre cells of the boxes
    [6] the middle right cells of the boxes
    [7] the bottom left cells of the boxes
    [8] the bottom centre cells of the boxes
   *[9] the bottom right cells of the boxes
}
house-windows-rows = the part of rows { $number } to { $last } outside the windows
    .short = the part of r{ $number }-{ $last } outside the windows
house-windows-columns = the part of columns { $number } to { $last } outside the windows
    .short = the part of c{ $number }-{ $last } outside the windows
house-windows-crossing = the crossing of the rows and columns between the windows
houses-row = rows { $numbers }
    .short = r{ $numbers }
houses-column = columns { $numbers }
    .short = c{ $numbers }
whole-grid = the whole grid
# After “row”, “column”, or “rows” with several numbers, where grids overlap.
line-in-grid = { $number } in grid { $grid }

## Marks, by where they are anchored

mark-line = the { $noun } from { $first } to { $last }
mark-at = { $value ->
    [none] the { $noun } at { $cell }
   *[other] the { $noun } of { $value } at { $cell }
}
mark-between = { $value ->
    [none] the { $noun } between { $one } and { $other }
   *[other] the { $noun } { $value } between { $one } and { $other }
}
mark-between-missing = the missing { $noun } between { $one } and { $other }
# Where a clue outside the grid stands.
beside-line = { $side ->
    [left] left of row { $line }
    [right] right of row { $line }
    [top] above column { $line }
   *[bottom] below column { $line }
}
    .short = { $side ->
        [left] left of r{ $line }
        [right] right of r{ $line }
        [top] above c{ $line }
       *[bottom] below c{ $line }
    }
mark-outside = the { $noun } { $value } { $where }
mark-slanting = the { $noun } { $value } from { $start } { $way ->
    [down-right] down to the right
    [down-left] down to the left
    [up-right] up to the right
   *[up-left] up to the left
}
mark-lettered = { $noun } { $letter }
mark-joined = the { $nouns } that join { $cells }
mark-whole = the { $noun }
# A mark that was named just before.
mark-again = the same { $noun }
# All marks of a kind.
marks = the { $nouns }

## Marks that are called otherwise

kind-consecutive-bars = bar
    .many = bars
kind-diagonals = diagonal
    .many = diagonals
kind-parity = even or odd cell
    .many = even and odd cells
kind-peaks = roof or bowl
    .many = roofs and bowls
kind-x-sum = X-sum
    .many = X-sums
marks-king = the king’s move
marks-knight = the knight’s move
marks-non-consecutive = the ban on consecutive neighbours
mark-non-consecutive = the border between { $one } and { $other }
mark-non-consecutive-whole = the ban on consecutive neighbours
mark-border-values-sum = the sum of { $value } between { $one } and { $other }
mark-border-values-difference = the difference of { $value } between { $one } and { $other }
mark-border-values-product = the product of { $value } between { $one } and { $other }
mark-border-values-quotient = the quotient of { $value } between { $one } and { $other }
mark-border-values-missing = the border without a number between { $one } and { $other }
mark-non-consecutive-corner = the corner between { $one } and { $other }
marks-no-doubles = the ban on doubles
mark-no-doubles = the border between { $one } and { $other }
mark-no-doubles-corner = the corner between { $one } and { $other }
mark-no-doubles-whole = the ban on doubles
marks-barred-sums = the ban on sums
mark-barred-sums = the border between { $one } and { $other }
mark-barred-sums-corner = the corner between { $one } and { $other }
mark-barred-sums-whole = the ban on sums
mark-dots-white = the white dot between { $one } and { $other }
mark-dots-black = the black dot between { $one } and { $other }
mark-sum-marks-V = the V between { $one } and { $other }
mark-sum-marks-X = the X between { $one } and { $other }
mark-sum-marks-missing = the missing V or X between { $one } and { $other }
mark-rise-or-fall-rise = the rise { $where }
mark-rise-or-fall-fall = the fall { $where }
mark-rise-or-fall-missing = the end without bars { $where }
mark-rising-run-joined = the rising runs that reach { $cells }
mark-parity-run-joined = the parity runs at both ends of { $cells }
mark-rise-or-fall-joined = the rises and falls that reach { $cells }
mark-inequality = the sign between { $one } and { $other }
mark-inequality-joined = the signs that join { $cells }
mark-limits-joined = the limits in { $cells }
mark-fortress-joined = the fortresses at { $cells }
mark-pointing = the arrow in { $cell }
mark-parity-even = the square in { $cell }
mark-parity-odd = the circle in { $cell }
mark-parity-joined = the even and odd cells among { $cells }
mark-peaks-greater = the roof in { $cell }
mark-peaks-smaller = the bowl in { $cell }
mark-peaks-joined = the roofs and bowls in { $cells }
mark-cage-joined = the cages over { $cells }
mark-arithmetic-cage = the arithmetic cage { $value } at { $cell }
mark-arithmetic-cage-joined = the arithmetic cages over { $cells }
mark-counting-area = the counting area with { $value } at { $cell }
mark-square-block-magic = the magic block at { $cell }
mark-open-cage-even = the even cage at { $cell }
mark-open-cage-odd = the odd cage at { $cell }
mark-open-cage-lettered = the set of cages { $letter }

## Techniques: plainly, one of them, several ($count in words)

technique-last-cell = last empty cell
    .one = a last empty cell
    .many = { $count } last empty cells
technique-hidden-single = hidden single
    .one = a hidden single
    .many = { $count } hidden singles
technique-naked-single = naked single
    .one = a naked single
    .many = { $count } naked singles
technique-locked-candidates = locked candidates
    .one = locked candidates
    .many = { $count } sets of locked candidates
technique-naked-pair = naked pair
    .one = a naked pair
    .many = { $count } naked pairs
technique-naked-triple = naked triple
    .one = a naked triple
    .many = { $count } naked triples
technique-naked-quad = naked quad
    .one = a naked quad
    .many = { $count } naked quads
technique-hidden-pair = hidden pair
    .one = a hidden pair
    .many = { $count } hidden pairs
technique-hidden-triple = hidden triple
    .one = a hidden triple
    .many = { $count } hidden triples
technique-hidden-quad = hidden quad
    .one = a hidden quad
    .many = { $count } hidden quads
technique-x-wing = X-wing
    .one = an X-wing
    .many = { $count } X-wings
technique-swordfish = swordfish
    .one = a swordfish
    .many = { $count } swordfish
technique-jellyfish = jellyfish
    .one = a jellyfish
    .many = { $count } jellyfish
technique-finned-x-wing = finned X-wing
    .one = a finned X-wing
    .many = { $count } finned X-wings
technique-finned-swordfish = finned swordfish
    .one = a finned swordfish
    .many = { $count } finned swordfish
technique-finned-jellyfish = finned jellyfish
    .one = a finned jellyfish
    .many = { $count } finned jellyfish
technique-xy-wing = XY-wing
    .one = an XY-wing
    .many = { $count } XY-wings
technique-xyz-wing = XYZ-wing
    .one = an XYZ-wing
    .many = { $count } XYZ-wings
technique-w-wing = W-wing
    .one = a W-wing
    .many = { $count } W-wings
technique-single-digit-chain = single-digit chain
    .one = a single-digit chain
    .many = { $count } single-digit chains
technique-alternating-chain = alternating chain
    .one = an alternating chain
    .many = { $count } alternating chains
technique-extended-chain = extended chain
    .one = an extended chain
    .many = { $count } extended chains
technique-either-way = candidate ruled out either way
    .one = a candidate ruled out either way
    .many = { $count } candidates ruled out either way
technique-seen-by-all-places = cell seen by all places of a digit
    .one = a cell seen by all places of a digit
    .many = { $count } cells seen by all places of a digit
technique-what-if = what-if
    .one = a what-if
    .many = { $count } what-ifs
technique-beyond = step beyond the ladder
    .one = a step beyond the ladder
    .many = { $count } steps beyond the ladder
