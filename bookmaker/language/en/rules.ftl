### What each kind of rule asks, in a sentence under a puzzle, singular or plural as there are marks ($n); how it is taught in
### the primer; and how its marks are told to those who do not see them ($cells, $line: which cells; $where: on which borders;
### $side: on which side of the grid).

## Arithmetic cages

result-sum = the sum (+)
result-product = the product (×)
result-difference = the difference (−)
result-quotient = the quotient (÷)
# $results: the signs that are there. $unsigned: is there a number without a sign; in pairs, it may be any of the four.
arithmetic-cage-sentence-signs = The number in the corner of { $n ->
    [1] the arithmetic cage
   *[other] each arithmetic cage
} is { $results } of its digits{ $unsigned ->
    [pairs] ; without a sign it is the sum, product, difference or quotient of its digits
    [larger] ; without a sign it is the sum or the product of its digits
   *[none] {""}
}{ $larger ->
    [differ] ; digits differ there
    [repeat] ; digits may repeat there
   *[no] {""}
}.
arithmetic-cage-sentence-unsigned = The number in the corner of { $n ->
    [1] the arithmetic cage
   *[other] each arithmetic cage
} is { $unsigned ->
    [pairs] the sum, product, difference or quotient of its digits
   *[larger] the sum or the product of its digits
}{ $larger ->
    [differ] ; digits differ there
    [repeat] ; digits may repeat there
   *[no] {""}
}.
arithmetic-cage-spoken = Arithmetic cage with { $sort ->
    [sum] the sum { $number }
    [product] the product { $number }
    [difference] the difference { $number }
    [quotient] the quotient { $number }
   *[none] { $number } and no sign
}: { $cells }
arithmetic-cage-primer = The sign in the corner of an arithmetic cage says what its digits make: their sum (+), product (×), difference (−) or quotient (÷), the greater digit first; where there is no sign, find it out. Begin with products: a 5 or a 7 divides few of them, and where it divides the number the cage must hold it. On a 9×9 grid a cage with ÷ has a 5 or a 7 only beside a 1, and a great difference takes a low and a high digit.

## Arrows

arrow-sentence = Digits along { $n ->
    [1] the arrow
   *[other] each arrow
} add up to the digit in its circle.
# An oval is read like a number; $all: are there ovals only, and no circle.
arrow-sentence-ovals = Digits along { $n ->
    [1] the arrow
   *[other] each arrow
} add up to the number in { $all ->
    [yes] its oval
   *[no] its circle or oval
}, which is read { $ways ->
    [across] from left to right
    [down] from the top down
   *[both] from left to right or from the top down
}.
# Follows the sentence where digits begin with 0, if there are ovals.
arrow-zero = The number in an oval never begins with 0.
arrow-circle = the circle at { $cells }
arrow-oval = the oval at { $cells }, read { $way ->
    [across] from left to right
   *[down] from the top down
}
arrow-spoken = Arrow from { $start }: { $line }
arrow-primer = The digits along an arrow’s shaft, from beside the circle to the tip, add up to the number in the circle; they may repeat where rows, columns and boxes allow it. Where several shafts leave one circle, each of them adds up to it. An oval over two or three cells holds a number of two or three digits. Three cells in one box total at least 6, so long shafts mean high circles and low digits.
# Where no grid of the book has boxes.
arrow-primer--lines = The digits along an arrow’s shaft, from beside the circle to the tip, add up to the number in the circle; they may repeat where rows and columns allow it. Where several shafts leave one circle, each of them adds up to it. An oval over two or three cells holds a number of two or three digits. Three cells in one row total at least 6, so long shafts mean high circles and low digits.

## Barred sums

barred-sums-sentence = { $touching ->
    [corners] Cells that touch, by a side or a corner, never add up to { $sums }.
   *[sides] Cells that share a side never add up to { $sums }.
}
barred-sums-primer = No two cells that share a side add up to one of the numbers that the rule names. Where 10 is barred, there is no 6 beside a 4 and no 9 beside a 1: for each number, a digit rules out one digit in its neighbours, and half of an even number is free. When all places of a digit in a row or box lie beside one cell, that cell cannot hold its partner.
# Where no grid of the book has boxes.
barred-sums-primer--lines = No two cells that share a side add up to one of the numbers that the rule names. Where 10 is barred, there is no 6 beside a 4 and no 9 beside a 1: for each number, a digit rules out one digit in its neighbours, and half of an even number is free. When all places of a digit in a row lie beside one cell, that cell cannot hold its partner.

## Border values

border-values-sum = the sum ({ $sign })
border-values-difference = the difference ({ $sign })
border-values-product = the product ({ $sign })
border-values-quotient = the quotient ({ $sign })
border-values-sentence = { $n ->
    [1] The number
   *[other] Each number
} on a border is { $results } of the two digits beside it.
border-values-sentence-all = { $n ->
    [1] The number
   *[other] Each number
} on a border is { $results } of the two digits beside it; neighbours without a number never { $never }.
border-values-never-sum = add up to { $numbers }
border-values-never-difference = differ by { $numbers }
border-values-never-product = multiply to { $numbers }
border-values-never-quotient = have the quotient { $numbers }
border-values-spoken-sum = { $n ->
    [1] Sum { $number }
   *[other] Sums { $number }
} { $where }
border-values-spoken-difference = { $n ->
    [1] Difference { $number }
   *[other] Differences { $number }
} { $where }
border-values-spoken-product = { $n ->
    [1] Product { $number }
   *[other] Products { $number }
} { $where }
border-values-spoken-quotient = { $n ->
    [1] Quotient { $number }
   *[other] Quotients { $number }
} { $where }
border-values-primer = A number in a small box on a border tells what comes of the two digits beside it: after + their sum, after − their difference, after × their product, after / the greater divided by the smaller. Large products, large sums and large quotients leave fewest choices: on a 9×9 grid ×35 is 5 and 7, +17 is 8 and 9, /5 is 1 and 5. Where all such numbers are given, a border without one is a clue too.

## Bounded lines

bounded-line-sentence = Digits along { $n ->
    [1] the bounded line
   *[other] each bounded line
} lie strictly between the two bracketed digits at its ends.
bounded-line-spoken = Bounded line, from end to end: { $line }
bounded-line-primer = The digits on the line lie between the two bracketed digits at its ends; neither appears between them. So the lowest and the highest digit never lie inside such a line, and if three of its inner cells share a row, column or box, the ends are at least four apart. First work out which end is the higher one.
# Where no grid of the book has boxes.
bounded-line-primer--lines = The digits on the line lie between the two bracketed digits at its ends; neither appears between them. So the lowest and the highest digit never lie inside such a line, and if three of its inner cells share a row or column, the ends are at least four apart. First work out which end is the higher one.

## Cages

cage-sentence-totals = Inside { $n ->
    [1] the cage
   *[other] each cage
}, digits differ and add up to the total in its corner.
cage-sentence-some = Inside { $n ->
    [1] the cage
   *[other] each cage
}, digits differ and add up to the total in its corner, if there is one.
cage-sentence-none = Inside { $n ->
    [1] the cage
   *[other] each cage
}, digits differ.
cage-sentence-repeats = Digits in { $n ->
    [1] the cage
   *[other] each cage
} add up to the total in its corner, and may repeat there.
cage-spoken = { $total ->
    [none] Cage without a total: { $cells }
   *[other] Cage of { $total }: { $cells }
}
cage-primer = A cage is drawn with dashes. Its digits differ, even where it runs through several boxes, and add up to the small total in its corner. Some totals leave one choice: two cells that make 3 hold 1 and 2, three that make 24 hold 7, 8 and 9. On a 9×9 grid every row, column and box adds up to 45: where cages cover all but one cell of a box, subtract from 45.
# Where no grid of the book has boxes.
cage-primer--lines = A cage is drawn with dashes. Its digits differ and add up to the small total in its corner. Some totals leave one choice: two cells that make 3 hold 1 and 2, three that make 24 hold 7, 8 and 9. On a 9×9 grid every row and column adds up to 45: where cages cover all but one cell of a row, subtract from 45.

## Clones

# $n hatched areas, all alike.
clone-sentence = The { $number } hatched areas hold the same digits in the same places.
clone-sentence-letters = Hatched areas with the same letter hold the same digits in the same places.
clone-spoken = Clones { $letter }, cell by cell: { $twins }
clone-primer = Hatched areas with the same letter are clones: they have the same shape and hold the same digits in the same places. A digit ruled out in one cell is ruled out in its twin as well, so each pair of twins is restricted by two rows, two columns and two boxes. Start with the clones that see the most givens.
# Where no grid of the book has boxes.
clone-primer--lines = Hatched areas with the same letter are clones: they have the same shape and hold the same digits in the same places. A digit ruled out in one cell is ruled out in its twin as well, so each pair of twins is restricted by two rows and two columns. Start with the clones that see the most givens.

## Consecutive bars

consecutive-bars-sentence = { $n ->
    [1] The bar
   *[other] A bar
} joins consecutive digits; neighbours without a bar between them are not consecutive.
consecutive-bars-spoken = { $n ->
    [1] Bar
   *[other] Bars
} { $where }
consecutive-bars-primer = Every pair of neighbours with consecutive digits has a bar between them, so a missing bar is a clue too: across a border without one, a 5 has neither a 4 nor a 6 beside it. Follow strings of bars, along which digits climb or fall by ones, and look at cells with few bars next to a known digit.

## Consecutive lines

consecutive-line-sentence = The digits on { $n ->
    [1] the consecutive line
   *[other] each consecutive line
} form a run with no gaps or repeats, in any order.
consecutive-line-spoken = Consecutive line: { $line }
consecutive-line-primer = The digits on a beaded line can be put in order to make a run such as 3 4 5 6, but they may stand along the line in any order. They never repeat, even where the line runs through several boxes. On a 9×9 grid five cells always include a 5, six cells also a 4 and a 6; and digits too far from a known one are out.
# Where no grid of the book has boxes.
consecutive-line-primer--lines = The digits on a beaded line can be put in order to make a run such as 3 4 5 6, but they may stand along the line in any order. They never repeat. On a 9×9 grid five cells always include a 5, six cells also a 4 and a 6; and digits too far from a known one are out.

## Counting areas

counting-area-sentence-counts = In { $n ->
    [1] the counting area
   *[other] each counting area
}, each digit in the corner stands exactly as often as it is written there.
counting-area-sentence-different = The number in the corner of { $n ->
    [1] the counting area
   *[other] each counting area
} is how many different digits it holds.
counting-area-sentence-both = In { $n ->
    [1] the counting area
   *[other] each counting area
}, each digit in the corner stands exactly as often as it is written there; a number with ≠ is how many different digits the area holds.
counting-area-spoken = { $different ->
    [0] Counting area with exactly { $digits }: { $cells }
    [1] Counting area with 1 different digit: { $cells }
   *[other] Counting area with { $different } different digits: { $cells }
}
counting-area-primer = A dotted line fences off a counting area. Digits in its corner stand inside it exactly as often as they are written: 7 7 means two sevens, and the other digits are anything else. A number with ≠ says how many different digits there are. Three cells in a row always hold three different digits, so ask which cells of an area can be equal at all: those that share no row, column and box.
# Where no grid of the book has boxes.
counting-area-primer--lines = A dotted line fences off a counting area. Digits in its corner stand inside it exactly as often as they are written: 7 7 means two sevens, and the other digits are anything else. A number with ≠ says how many different digits there are. Three cells in a row always hold three different digits, so ask which cells of an area can be equal at all: those that share no row and column.

## Diagonal sums

diagonal-sum-sentence = { $n ->
    [1] The number
   *[other] Each number
} with an arrow outside the grid is the sum of the digits on the diagonal along which the arrow points; they may repeat where the other rules allow it.
diagonal-sum-spoken = Diagonal sum { $total }: { $line }
diagonal-sum-primer = An arrow outside the grid points along a diagonal, and its number is the sum of all the digits on it, up to the far edge. Cells of one box hold different digits; others may repeat, so three cells in three boxes can even hold the same digit. Start with short diagonals and with sums that are very small or very large for their length.
# Where no grid of the book has boxes.
diagonal-sum-primer--lines = An arrow outside the grid points along a diagonal, and its number is the sum of all the digits on it, up to the far edge. Digits on it may repeat. Start with short diagonals and with sums that are very small or very large for their length.

## Diagonals

diagonals-sentence = { $n ->
    [1] The marked diagonal
   *[other] Each of the two marked diagonals
} holds every digit once.
diagonals-spoken = Marked diagonal: { $line }
diagonals-primer = A marked diagonal works like one more row or column: every digit appears on it once. The cell where two diagonals cross belongs to both of them as well as to a row, a column and a box, so look there first; then look along a diagonal for a digit with one place left.
# Where no grid of the book has boxes.
diagonals-primer--lines = A marked diagonal works like one more row or column: every digit appears on it once. The cell where two diagonals cross belongs to both of them as well as to a row and a column, so look there first; then look along a diagonal for a digit with one place left.

## Difference lines

difference-line-sentence = Along { $n ->
    [1] the difference line
   *[other] each difference line
}, neighbouring digits differ by at least { $least }.
difference-line-spoken = Difference line: { $line }
difference-line-primer = Each step along a saw-toothed line is a leap of at least the stated difference, usually 5. On a 9×9 grid with 5, the digits along the line alternate between low and high: 5 itself never stands on it, 4 only beside 9 and 6 only beside 1. So a 4 or a 6 stands at an end, or between two cells that may be equal.

## Disjoint groups

disjoint-groups-sentence = Cells at the same position in their boxes, such as all the top left ones, hold every digit once.
disjoint-groups-primer = Take the top left cell of every box: together they hold each digit once, and so do the cells at every other position in the boxes. A digit therefore stands at a different position in each box. Once you have written it in a few boxes, cross out those positions in the others before you look at rows and columns.

## Dots

dots-sentence-white = { $white ->
    [1] The white dot
   *[other] A white dot
} joins consecutive digits{ $all ->
    [yes] ; neighbours without a dot are neither consecutive nor a digit and its double
   *[no] {""}
}.
dots-sentence-black = { $black ->
    [1] The black dot
   *[other] A black dot
} joins a digit and its double{ $all ->
    [yes] ; neighbours without a dot are neither consecutive nor a digit and its double
   *[no] {""}
}.
dots-sentence-both = { $white ->
    [1] The white dot
   *[other] A white dot
} joins consecutive digits and { $black ->
    [1] the black dot
   *[other] a black dot
} joins a digit and its double (1 and 2 may have either){ $all ->
    [yes] ; neighbours without a dot are neither
   *[no] {""}
}.
# All dots are marked, and there are none.
dots-sentence-none = Cells that share a side never hold consecutive digits, or a digit and its double.
dots-spoken-white = { $n ->
    [1] White dot
   *[other] White dots
} { $where }
dots-spoken-black = { $n ->
    [1] Black dot
   *[other] Black dots
} { $where }
dots-primer = A white dot joins two neighbours with consecutive digits, a black dot a digit and its double; 1 and 2 may have either. On a 9×9 grid 5, 7 and 9 never touch a black dot, and a string of black dots runs through 1, 2, 4 and 8 or through 3 and 6. Where all dots are given, a border without one is a clue too: its digits are neither consecutive nor a digit and its double.

## Equal-part lines

equal-part-line-sentence = On { $n ->
    [1] the equal-part line
   *[other] each equal-part line
}, the digits of each stretch inside a { $home ->
    [box] box
   *[region] region
} add up to the same total.
equal-part-line-part = part { $number }, { $line }
equal-part-line-spoken = Equal-part line: { $parts }
equal-part-line-primer = Box borders cut an equal-part line into stretches, and the digits of every stretch add up to the same total; a line that comes back to a box has two stretches there. A stretch of a single cell gives the total at once. If there is none, compare the longest stretch with the shortest: on a 9×9 grid three cells of a box make at least 6, two make at most 17.

## Even-step lines

even-step-line-sentence = Along { $n ->
    [1] the even-step line
   *[other] each even-step line
}, { $step ->
    [none] all neighbouring digits differ by the same amount; { $n ->
        [1] work it out
       *[other] work it out for each line
    }
   *[other] neighbouring digits differ by exactly { $step }
}.
even-step-line-spoken = Even-step line: { $line }
even-step-line-primer = Every step along a studded line has the same size, up or down, and is never zero; unless the size is given, work it out for each line. Large steps soon run out of room: with a step of 4 on a 9×9 grid a line that starts at 1 can only hold 1, 5 and 9; with a step of 5 it alternates between low and high and never holds 5. Three successive cells that share a row, column or box go up twice or down twice.
# Where no grid of the book has boxes.
even-step-line-primer--lines = Every step along a studded line has the same size, up or down, and is never zero; unless the size is given, work it out for each line. Large steps soon run out of room: with a step of 4 on a 9×9 grid a line that starts at 1 can only hold 1, 5 and 9; with a step of 5 it alternates between low and high and never holds 5. Three successive cells that share a row or column go up twice or down twice.

## Extra regions

# $pieces: a region may be in several pieces, which then have one letter.
extra-region-sentence = { $full ->
    [yes] { $n ->
        [1] The shaded region holds every digit once
       *[other] Each shaded region holds every digit once
    }
   *[no] { $n ->
        [1] No digit repeats in the shaded region
       *[other] No digit repeats within any shaded region
    }
}{ $pieces ->
    [yes] { $n ->
        [1] ; all its pieces have the same letter
       *[other] ; pieces of one region have the same letter
    }
   *[no] {""}
}.
extra-region-spoken = { $letter ->
    [none] Shaded region: { $cells }
   *[other] Shaded region { $letter }: { $cells }
}
extra-region-primer = A shaded region works like one more box: no digit appears in it twice. If it has as many cells as the grid has digits, it holds them all, so ask of it what you would ask of a row: where can this digit still go? A smaller one only keeps its digits apart. Start where a region lies across a box that is nearly full.
# Where no grid of the book has boxes.
extra-region-primer--lines = A shaded region works like one more row: no digit appears in it twice. If it has as many cells as the grid has digits, it holds them all, so ask of it what you would ask of a row: where can this digit still go? A smaller one only keeps its digits apart. Start where a region lies across a row that is nearly full.

## First-seen digits

# $seen: how many small squares beside each digit; 0 where that differs.
first-seen-sentence = { $n ->
    [1] The digit
   *[other] Each digit
} beside { $seen ->
    [0] small squares outside the grid appears in as many cells
    [1] one small square outside the grid appears in the first cell
   *[other] { $number } small squares outside the grid appears in the first { $number } cells
} of its { $line ->
    [row] row
    [column] column
   *[both] row or column
} from that side.
first-seen-spoken = { $n ->
    [1] First-seen clue
   *[other] First-seen clues
} { $side }: { $clues }
first-seen-side = { $n ->
    [1] { $side }, beside one small square
   *[other] { $side }, beside { $number } small squares
}
first-seen-primer = A digit outside a row or column appears in the first cells from that side, as many as small squares stand beside it; where several digits stand together, all of them do, in any order. On a 9×9 grid three squares put the digit in three cells of the nearest box, so strike it from the rest of the row and of the box.
# Where no grid of the book has boxes.
first-seen-primer--lines = A digit outside a row or column appears in the first cells from that side, as many as small squares stand beside it; where several digits stand together, all of them do, in any order.

## Fortress cells

fortress-sentence = Each digit in a shaded cell, inside the battlements, is greater than those in the unshaded cells that share a side with it.
fortress-spoken = Fortress: { $cells }
fortress-primer = Shaded cells with battlements around them are a fortress: each of its digits is greater than the digits outside that touch it along a side. Two shaded cells are not compared. A cell with battlements on two sides of one row or column is at least 3, and low digits in a fortress can only stand where few of their sides are outer ones. Cells between two fortresses are low.

## Frame products

frame-product-sentence = { $n ->
    [1] The number
   *[other] Each number
} after a dot outside the grid is the product of { $line ->
    [row] the first { $number } digits of its row
    [column] the first { $number } digits of its column
    [unlike] the first { $number } digits of its row, or the first { $other } of its column,
   *[both] the first { $number } digits of its row or column
} from that side.
frame-product-spoken = { $n ->
    [1] Frame product
   *[other] Frame products
} { $side }: { $clues }
frame-product-primer = The number outside a row or column is the product of its nearest digits, on a 9×9 grid usually the three in the nearest box. Take it apart: a product that ends in 5 or 0 has a 5, one that 7 divides has a 7, and what is divided by neither keeps both away. An odd product has odd digits only.
# Where no grid of the book has boxes.
frame-product-primer--lines = The number outside a row or column is the product of its nearest digits, usually three of them. Take it apart: a product that ends in 5 or 0 has a 5, one that 7 divides has a 7, and what is divided by neither keeps both away. An odd product has odd digits only.

## Frame sums

frame-sum-sentence = { $n ->
    [1] The number
   *[other] Each number
} after a small + outside the grid is the sum of { $line ->
    [row] the first { $number } digits of its row
    [column] the first { $number } digits of its column
    [unlike] the first { $number } digits of its row, or the first { $other } of its column,
   *[both] the first { $number } digits of its row or column
} from that side.
frame-sum-spoken = { $n ->
    [1] Frame sum
   *[other] Frame sums
} { $side }: { $clues }
frame-sum-primer = The number outside a row or column is the sum of its nearest digits, on a 9×9 grid usually the three in the nearest box. Three digits that make 6 are 1, 2 and 3, three that make 24 are 7, 8 and 9. A box adds up to 45, so two numbers that look into one box from the same side give the third; and numbers at both ends of a row give the sum of what lies between.
# Where no grid of the book has boxes.
frame-sum-primer--lines = The number outside a row or column is the sum of its nearest digits, usually three of them. Three digits that make 6 are 1, 2 and 3, three that make 24 are 7, 8 and 9.

## Hinge lines

# $middles: which lines have a cell in the middle, with a diamond.
hinge-line-sentence = On { $n ->
    [1] the hinge line
   *[other] each hinge line
}, any two cells at the same distance from its middle add up to the same total{ $middles ->
    [all] , which is the digit in the middle
    [some] , which is the digit in the middle cell if there is one
   *[none] {""}
}.
hinge-line-spoken = { COUNT($middle) ->
    [one] Hinge line with its middle at { $middle }: { $line }
   *[other] Hinge line with its middle between { $middle }: { $line }
}
hinge-line-primer = Fold a hinge line at its middle: any two cells that land on each other add up to the same total. Where the line has a middle cell, a diamond marks it and its digit is the total, so it is high and its partners are low. Otherwise work the total out: one known pair settles it.

## Inequalities

inequality-sentence = { $n ->
    [1] The sign
   *[other] Each sign
} between two cells opens towards the greater digit.
inequality-row = Row { $number }: { $signs }
    .short = R{ $number }: { $signs }
inequality-row-sign = column { $more } is greater than column { $less }
    .short = c{ $more } is greater than c{ $less }
inequality-column = Column { $number }: { $signs }
    .short = C{ $number }: { $signs }
inequality-column-sign = row { $more } is greater than row { $less }
    .short = r{ $more } is greater than r{ $less }
inequality-primer = A sign between two cells opens towards the greater digit and points at the smaller. Signs one after another make a staircase: its foot has room only for low digits, its top only for high ones. Start with the longest staircases, and with cells that are greater, or smaller, than everything around them.

## King's move

king-sentence = Cells that touch at a corner hold different digits.
king-primer = Cells that touch at a corner hold different digits, as if each digit were a chess king that tolerates no twin nearby. Within a box this adds nothing; it works across the borders of boxes. A digit next to a box rules out up to two more cells in it.
# Where no grid of the book has boxes.
king-primer--lines = Cells that touch at a corner hold different digits, as if each digit were a chess king that tolerates no twin nearby.

## Knight's move

knight-sentence = Cells a knight’s move apart (two steps along a row or column, then one to the side) hold different digits.
knight-primer = Two cells that a chess knight could jump between, two steps along a row or column and one to the side, hold different digits. A digit in the middle of the grid reaches eight cells this way, most of them outside its box. Look for boxes where a digit has two places left, both a knight’s move from the same cell.
# Where no grid of the book has boxes.
knight-primer--lines = Two cells that a chess knight could jump between, two steps along a row or column and one to the side, hold different digits. A digit in the middle of the grid reaches eight cells this way. Look for rows where a digit has two places left, both a knight’s move from the same cell.

## Limits

limits-sentence-allowed = { $n ->
    [1] The cell
   *[other] A cell
} with small digits in its corner holds one of them.
limits-sentence-forbidden = { $n ->
    [1] The cell
   *[other] A cell
} with small digits struck through in its corner holds none of them.
limits-sentence-both = { $n ->
    [1] The cell
   *[other] A cell
} with small digits in its corner holds one of them, or none where they are struck through.
limits-spoken-only = Only { $digits }: { $cells }
limits-spoken-not = Not { $digits }: { $cells }
limits-primer = Small digits in the bottom right corner of a cell are the only ones it may hold; if they are struck through, they are the ones it may not. Pencil in the candidates before you begin. When as many cells of a row, column or box share the same limit as it has digits, those digits go nowhere else there.
# Where no grid of the book has boxes.
limits-primer--lines = Small digits in the bottom right corner of a cell are the only ones it may hold; if they are struck through, they are the ones it may not. Pencil in the candidates before you begin. When as many cells of a row or column share the same limit as it has digits, those digits go nowhere else there.

## Low-high lines

low-high-line-sentence = Along { $n ->
    [1] the low-high line
   *[other] each low-high line
}, low ({ $least } to { $low }) and high digits ({ $high } to { $most }) alternate{ $middle ->
    [none] .
   *[other] ; there is no { $middle }.
}
low-high-line-spoken = Low-high line: { $line }
low-high-line-primer = Along a line with battlements, low and high digits alternate; it may begin with either. On a 9×9 grid the low ones are 1 to 4, the high ones 6 to 9, and 5 never stands on such a line. One digit on it settles which cells are low. Four low cells in one row, column or box take all the low digits.
# Where no grid of the book has boxes.
low-high-line-primer--lines = Along a line with battlements, low and high digits alternate; it may begin with either. On a 9×9 grid the low ones are 1 to 4, the high ones 6 to 9, and 5 never stands on such a line. One digit on it settles which cells are low. Four low cells in one row or column take all the low digits.

## No doubles

no-doubles-sentence = { $touching ->
    [corners] Cells that touch, by a side or a corner, never hold a digit and its double.
   *[sides] Cells that share a side never hold a digit and its double.
}
# Follows the sentence where digits begin with 0, if cells may not touch at corners either.
no-doubles-zero = Since 0 is its own double, no two 0s touch.
no-doubles-primer = No two cells that share a side hold a digit and its double: beside a 4 there is neither a 2 nor an 8. On a 9×9 grid 5, 7 and 9 may stand beside any digit; it is 1, 2, 4 and 8, and 3 and 6, that have to keep apart. A cell beside every place of a 4 in a row can be neither 2 nor 8.

## Non-consecutive

non-consecutive-sentence = { $touching ->
    [corners] Cells that touch, by a side or a corner, never hold consecutive digits.
   *[sides] Cells that share a side never hold consecutive digits.
}
non-consecutive-primer = No two cells that share a side hold consecutive digits: beside a 5 there is neither a 4 nor a 6. So every digit you write rules out two digits in each of its neighbours. When a digit has only two places left in a row, with one cell between them, that cell cannot hold a digit one above or below it.

## Numbered rooms

numbered-room-sentence = { $n ->
    [1] The digit
   *[other] Each digit
} in a door outside the grid goes in the nth cell of its { $line ->
    [row] row
    [column] column
   *[both] row or column
} from that side, n being the first digit there.
# Follows the sentence where digits begin with 0.
numbered-room-zero = The digit n is never 0.
numbered-room-spoken = { $n ->
    [1] Numbered room
   *[other] Numbered rooms
} { $side }: { $clues }
numbered-room-primer = The digit nearest to the door is the number of a room: with 4 in front, the digit in the door goes in the fourth cell from that side. Only a 1 in the door can have a 1 in front, and no number leads to a room that is already taken. Start where the digit in the door has few places left in its row or column, since each of them calls for one particular digit in front.

## Open cages

open-cage-sentence = Digits in { $n ->
    [1] the open cage
   *[other] each open cage
} differ{ $parities ->
    [even] { $alone ->
        [yes] ; their total is even
       *[no] ; their total is even at a square
    }
    [odd] { $alone ->
        [yes] ; their total is odd
       *[no] ; their total is odd at a circle
    }
    [both] ; their total is even at a square and odd at a circle
   *[none] {""}
}{ $letters ->
    [yes] ; cages with the same letter have the same total
   *[no] {""}
}.
open-cage-spoken = { $value ->
    [even] Open cage with an even total: { $cells }
    [odd] Open cage with an odd total: { $cells }
   *[other] Open cage with the total { $value }: { $cells }
}
open-cage-primer = The digits in an open cage differ, but their total is not told. A small square in the corner says that it is even, a small circle that it is odd: with all but one cell filled, the last can only be even or only odd. Cages with the same letter have the same total: a small cage that matches a large one has high digits, and the large one low ones.

## Palindromes

palindrome-sentence = The digits along { $n ->
    [1] the palindrome
   *[other] each palindrome
} read the same from both ends.
palindrome-spoken = Palindrome: { $line }
palindrome-primer = A palindrome reads the same from both ends: its first and last cells are equal, so are the second and the second-last, and a middle cell is free. A digit ruled out in one cell of such a pair is ruled out in the other, so each pair works in two rows, two columns and two boxes at once.
# Where no grid of the book has boxes.
palindrome-primer--lines = A palindrome reads the same from both ends: its first and last cells are equal, so are the second and the second-last, and a middle cell is free. A digit ruled out in one cell of such a pair is ruled out in the other, so each pair works in two rows and two columns at once.

## Even and odd

parity-sentence-even = { $even ->
    [1] The cell
   *[other] Each cell
} with a square holds an even digit.
parity-sentence-odd = { $odd ->
    [1] The cell
   *[other] Each cell
} with a circle holds an odd digit.
parity-sentence-both = { $even ->
    [1] The cell
   *[other] Each cell
} with a square holds an even digit, and { $odd ->
    [1] the cell
   *[other] each cell
} with a circle an odd one.
parity-spoken-even = { $n ->
    [1] Even digit, with a square: { $cells }
   *[other] Even digits, each with a square: { $cells }
}
parity-spoken-odd = { $n ->
    [1] Odd digit, with a circle: { $cells }
   *[other] Odd digits, each with a circle: { $cells }
}
parity-primer = A square marks an even digit, a circle an odd one; cells without a mark may hold either. On a 9×9 grid every row, column and box has four even digits and five odd ones, so count: once four cells of a row are known to be even, all its others are odd.
# Where no grid of the book has boxes.
parity-primer--lines = A square marks an even digit, a circle an odd one; cells without a mark may hold either. On a 9×9 grid every row and column has four even digits and five odd ones, so count: once four cells of a row are known to be even, all its others are odd.

## Parity lines

parity-line-sentence = Along { $n ->
    [1] the parity line
   *[other] each parity line
}, odd and even digits alternate.
parity-line-spoken = Parity line: { $line }
parity-line-primer = Along a line with circles and squares between its cells, odd and even digits alternate; it may begin with either. One digit on it settles which cells are odd. Count where it runs through one row or box: on a 9×9 grid there are four even digits, so a line along a whole row begins and ends with an odd one.
# Where no grid of the book has boxes.
parity-line-primer--lines = Along a line with circles and squares between its cells, odd and even digits alternate; it may begin with either. One digit on it settles which cells are odd. Count where it runs through one row: on a 9×9 grid there are four even digits, so a line along a whole row begins and ends with an odd one.

## Parity runs

parity-run-sentence = { $n ->
    [1] The number
   *[other] Each number
} after a small = outside the grid tells how many digits of its { $line ->
    [row] row
    [column] column
   *[both] row or column
}, from that side, are all even or all odd before the parity changes.
parity-run-spoken = { $n ->
    [1] Parity run
   *[other] Parity runs
} { $side }: { $clues }
parity-run-primer = Look along the row or column from the number: so many digits are even, or so many are odd, and the next is of the other sort. On a 9×9 grid a row has five odd digits and four even ones, so a run of 5 is odd. Once one digit of a run is known to be even or odd, all of them are, and the one that follows is not.

## Peaks and hollows

peaks-sentence-greater = { $greater ->
    [1] The cell
   *[other] Each cell
} with a roof holds a greater digit than all cells that share a side with it.
peaks-sentence-smaller = { $smaller ->
    [1] The cell
   *[other] Each cell
} with a bowl holds a smaller digit than all cells that share a side with it.
peaks-sentence-both = { $greater ->
    [1] The cell
   *[other] Each cell
} with a roof holds a greater digit than all cells that share a side with it, and { $smaller ->
    [1] the cell
   *[other] each cell
} with a bowl a smaller one.
peaks-spoken-greater = { $n ->
    [1] Peak, with a roof: { $cells }
   *[other] Peaks, each with a roof: { $cells }
}
peaks-spoken-smaller = { $n ->
    [1] Hollow, with a bowl: { $cells }
   *[other] Hollows, each with a bowl: { $cells }
}
peaks-primer = A small roof over a digit means that it is greater than the digits beside, above and below it; a bowl under it means that it is smaller. The two neighbours in its row differ, so away from the edge a digit under a roof is at least 3, and usually far more.

## Pointing cells

pointing-sentence = { $n ->
    [1] The digit
   *[other] Each digit
} in a cell with an arrow tells how many cells along the arrow the { $digit } stands, the next cell being the first.
# Follows the sentence where digits begin with 0.
pointing-zero = A cell with an arrow never holds 0.
pointing-spoken = { $n ->
    [1] Arrow
   *[other] Arrows
} { $way ->
    [left] pointing left: { $cells }
    [right] pointing right: { $cells }
    [up] pointing up: { $cells }
   *[down] pointing down: { $cells }
}
pointing-primer = A small black arrow in a cell points along its row or column, and the digit in the cell counts how many steps it is from there to a digit that the rule names, such as 9: with 3 in the cell, the 9 is three steps on. So the cell is never that digit itself, nor more than the cells ahead, and the digit stands nowhere behind. Two arrows that look at one another’s lines often leave a single way to count.

## Corner quadruples

# $several: does some ring hold more than one digit.
quadruple-sentence = { $several ->
    [yes] The digits in { $n ->
        [1] the ring
       *[other] each ring
    } are among those of the four cells around it
   *[no] The digit in { $n ->
        [1] the ring
       *[other] each ring
    } is among those of the four cells around it
}{ $repeats ->
    [yes] , repeats included
   *[no] {""}
}.
quadruple-spoken = Ring with { $digits } at the corner of { $cells }
quadruple-primer = The small digits in a ring stand somewhere in the four cells around that corner, each at least as often as it is written; other digits may stand there too if there is room. A ring with four digits leaves no room: each of its cells holds one of them. A digit written twice stands in two diagonally opposite cells.

## Resting thermometers

resting-thermometer-sentence = Along { $n ->
    [1] the resting thermometer
   *[other] each resting thermometer
}, digits never fall from the bulb to the tip; they rise or stay the same.
resting-thermometer-spoken = Resting thermometer, bulb first: { $line }
resting-thermometer-primer = A resting thermometer is drawn as an empty tube. From its ringed bulb to the tip, digits rise or stay level: each is at least as high as the one before it. Two of its cells in the same row, column or box can’t be equal, so there the digits do rise: count those steps to find how high the tip must be and how low the bulb.
# Where no grid of the book has boxes.
resting-thermometer-primer--lines = A resting thermometer is drawn as an empty tube. From its ringed bulb to the tip, digits rise or stay level: each is at least as high as the one before it. Two of its cells in the same row or column can’t be equal, so there the digits do rise: count those steps to find how high the tip must be and how low the bulb.

## Rising or falling

rise-or-fall-sentence-none = From no side do the first { $number } digits of a row or column all rise or all fall.
rise-or-fall-sentence-rise = Where { $number } bars outside the grid grow towards it, the first { $number } digits of that { $line ->
    [row] row
    [column] column
   *[both] row or column
} rise from that side{ $all ->
    [yes] ; from a side without bars, the first { $number } digits of a row or column neither all rise nor all fall
   *[no] {""}
}.
rise-or-fall-sentence-fall = Where { $number } bars outside the grid shrink towards it, the first { $number } digits of that { $line ->
    [row] row
    [column] column
   *[both] row or column
} fall from that side{ $all ->
    [yes] ; from a side without bars, the first { $number } digits of a row or column neither all rise nor all fall
   *[no] {""}
}.
rise-or-fall-sentence-both = Where { $number } bars outside the grid grow towards it, the first { $number } digits of that { $line ->
    [row] row
    [column] column
   *[both] row or column
} rise from that side; where they shrink, they fall{ $all ->
    [yes] ; from a side without bars, the first { $number } digits of a row or column neither all rise nor all fall
   *[no] {""}
}.
rise-or-fall-spoken = { $n ->
    [1] Slope
   *[other] Slopes
} { $side }: { $clues }
rise-or-fall-rises = rising bars
rise-or-fall-falls = falling bars
rise-or-fall-primer = Bars that grow towards the grid mean that the nearest three digits rise from that side, bars that shrink that they fall. The bars are as long as the digits are large. Of three rising digits the first is at most 7 and the last at least 3 on a 9×9 grid; two rises that share a corner cell pull it down together. Where all bars are given, an end without them turns: its middle digit is the greatest or the smallest of three.

## Rising runs

rising-run-sentence = { $n ->
    [1] The number
   *[other] Each number
} after small steps outside the grid tells how many digits of its { $line ->
    [row] row
    [column] column
   *[both] row or column
} rise from that side before one falls, the first included.
rising-run-spoken = { $n ->
    [1] Rising run
   *[other] Rising runs
} { $side }: { $clues }
rising-run-primer = Look along the row or column from the number: it tells how many digits rise in a row, counted from the nearest. After 3, the first three digits rise and the fourth is smaller than the third; after 1, the second is smaller than the first already. Long runs keep high digits away from the edge, and the last digit of a run is greater than its neighbours on both sides.

## Same-sum lines

same-sum-line-sentence = Along { $n ->
    [1] the same-sum line
   *[other] each same-sum line
}, any { $number } cells in succession add up to the same total.
same-sum-line-spoken = Same-sum line: { $line }
same-sum-line-primer = Any so many cells in succession along a railway line, three unless the rule says otherwise, add up to the same total. Move on by one cell: one digit leaves the sum and another joins it, so the two are equal. Hence the first, fourth and seventh cells hold one digit, the second and fifth another; what is ruled out in one is ruled out in all of them.

## Sandwich sums

sandwich-sentence = { $n ->
    [1] The number
   *[other] Each number
} between two bars outside the grid is the sum of the digits between the smallest and the largest digit of its { $line ->
    [row] row
    [column] column
   *[both] row or column
}.
sandwich-spoken = { $n ->
    [1] Sandwich sum
   *[other] Sandwich sums
} { $side }: { $clues }
sandwich-primer = The number outside a row or column is the sum of the digits between its smallest and its largest digit; on a 9×9 grid these crusts are 1 and 9, in either order. A sum of 0 means that they stand side by side, a sum of 35 that they stand at the two ends. Start by asking how many digits can make the sum, for that is how far apart the crusts are.

## Skyscrapers

skyscraper-sentence = { $n ->
    [1] The number
   *[other] Each number
} in a house outside the grid tells how many digits of its { $line ->
    [row] row
    [column] column
   *[both] row or column
} can be seen from that side, where a taller digit hides every shorter one behind it.
skyscraper-spoken = { $n ->
    [1] Skyscraper count
   *[other] Skyscraper counts
} { $side }: { $clues }
skyscraper-primer = Think of each digit as a building with that many storeys and look along the row or column from the number: it tells how many buildings you can see, since a taller one hides every shorter one behind it. From a 1 you see only the tallest, so it stands right in front; from a 9 on a 9×9 grid you see them all, so they rise. Start with the largest numbers, which keep tall digits away, and look for the place of the tallest.

## Square blocks

square-block-sentence-magic = In { $n ->
    [1] the square block
   *[other] each square block
}, rows, columns and both diagonals have the same sum; digits may repeat.
square-block-sentence-rows = In { $n ->
    [1] the square block
   *[other] each square block
}, all rows have the same sum; digits may repeat.
square-block-sentence-columns = In { $n ->
    [1] the square block
   *[other] each square block
}, all columns have the same sum; digits may repeat.
square-block-sentence = In { $n ->
    [1] the square block
   *[other] each square block
}, lines have the same sum: { $lines }; digits may repeat.
square-block-lines-magic = rows, columns and diagonals at a star
square-block-lines-rows = rows at level bars
square-block-lines-columns = columns at upright bars
square-block-spoken-magic = Magic block: { $cells }
square-block-spoken-rows = Block with equal rows: { $cells }
square-block-spoken-columns = Block with equal columns: { $cells }
square-block-primer = A double line frames a square block, and a sign says which of its lines have the same sum: level bars the rows, upright bars the columns, a star the rows, the columns and both diagonals. Digits may repeat where rows, columns and boxes allow it. The sum of a block with a star is three times its middle digit. Where the block is a whole box of a 9×9 grid, three equal rows make 15 each.
# Where no grid of the book has boxes.
square-block-primer--lines = A double line frames a square block, and a sign says which of its lines have the same sum: level bars the rows, upright bars the columns, a star the rows, the columns and both diagonals. Digits may repeat where rows and columns allow it. The sum of a block with a star is three times its middle digit.

## Sum marks

sum-marks-sentence-five = { $five ->
    [1] The V
   *[other] A V
} joins digits that add up to 5{ $all ->
    [yes] ; neighbours without a mark add up to neither 5 nor 10
   *[no] {""}
}.
sum-marks-sentence-ten = { $ten ->
    [1] The X
   *[other] An X
} joins digits that add up to 10{ $all ->
    [yes] ; neighbours without a mark add up to neither 5 nor 10
   *[no] {""}
}.
sum-marks-sentence-both = { $five ->
    [1] The V
   *[other] A V
} joins digits that add up to 5 and { $ten ->
    [1] the X
   *[other] an X
} joins digits that add up to 10{ $all ->
    [yes] ; neighbours without a mark add up to neither 5 nor 10
   *[no] {""}
}.
# All marks are given, and there are none.
sum-marks-sentence-none = Cells that share a side never add up to 5 or to 10.
sum-marks-spoken-five = { $n ->
    [1] Letter V
   *[other] Letters V
} { $where }
sum-marks-spoken-ten = { $n ->
    [1] Letter X
   *[other] Letters X
} { $where }
sum-marks-primer = As in Roman numerals, V is 5 and X is 10: the two digits beside the letter add up to it. A V joins 1 and 4 or 2 and 3, so nothing above 4 touches it; 5 never touches an X, since it would need a second 5 beside it. Where all marks are given, a border without a letter is a clue too: its digits add up to neither.

## Thermometers

thermometer-sentence = Along { $n ->
    [1] the thermometer
   *[other] each thermometer
}, digits rise from the bulb to the tip.
thermometer-spoken = Thermometer, bulb first: { $line }
thermometer-primer = Digits rise with every step from the round bulb to the tip, though they may skip some. A long thermometer leaves little room: on a 9×9 grid the third cell of six holds at least 3 and at most 6. Start with the longest, and with those that cross a row or box that already has high or low digits.
# Where no grid of the book has boxes.
thermometer-primer--lines = Digits rise with every step from the round bulb to the tip, though they may skip some. A long thermometer leaves little room: on a 9×9 grid the third cell of six holds at least 3 and at most 6. Start with the longest, and with those that cross a row that already has high or low digits.

## Windows

windows-sentence = Each shaded window holds every digit once.
windows-spoken = Window: { $cells }
windows-primer = The shaded windows are further boxes, set one cell in from the border and one cell apart: each holds every digit once. Rows 2 to 4 hold each digit three times, and the two windows in them take two of these, so the nine cells beside the windows hold every digit once as well. Five such hidden sets of nine lie between and around the windows of a 9×9 grid; they are where the puzzle opens.

## X-sums

x-sum-sentence = { $n ->
    [1] The number
   *[other] Each number
} after a small × outside the grid is the sum of the first X digits of its { $line ->
    [row] row
    [column] column
   *[both] row or column
} from that side, where X is the first of them.
# Follows the sentence where digits begin with 0.
x-sum-zero = If X is 0, the sum is 0.
x-sum-spoken = { $n ->
    [1] X-sum
   *[other] X-sums
} { $side }: { $clues }
x-sum-primer = The digit nearest to the number, X, tells how many digits to add, itself included: 3, 8 and 1 in front make 12, whatever follows. Small sums need a small X; 45 needs 9. Start by asking which X can reach the sum at all: on a 9×9 grid 10 needs 2, 3 or 4 in front.

## Latin squares, digits from 0

latin-primer = In a Latin square only rows and columns count: each holds every digit once, and nothing else is asked of the grid. So every digit stands in each row once, and no two of its places share a column. Where a digit is missing from two rows, and has its places there in the same two columns, it goes nowhere else in these columns. Then see what the marks add.
zero-primer = On a grid whose digits begin with 0, every rule means what it says, and a 0 adds nothing to a total. The examples in these pages are for grids whose digits begin with 1, so their figures shift: a row of nine cells that hold 0 to 8 adds up to 36, not 45; it has five even digits and four odd ones; two cells that make 3 hold 0 and 3 or 1 and 2.
overlap-primer = Several grids make one puzzle: each follows the rules of its own, and where two overlap, a digit stands in both. Begin where the givens are thickest and go on for as long as one grid yields; then take what you have found in the shared boxes over to the next. A box that two grids share is often the key to both: its digits must suit the rows and columns of either.
holes-primer = A black cell holds no digit and belongs to no row or column. Between them each row and column still holds every digit once, so one with few places left for a digit is soon settled. Digits on both sides of a black cell see each other along the line, but do not touch.
