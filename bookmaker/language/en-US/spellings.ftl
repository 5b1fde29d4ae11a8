### American spellings of what the folder “en” says; the rest is the same.

hint-what-mark--barred-sums = Digits that would make a barred sum with a neighbor.
house-box =
    { $place ->
        [middle-centre] the center box
        [top-left] the top left box
        [top-centre] the top center box
        [top-right] the top right box
        [middle-left] the middle left box
        [middle-right] the middle right box
        [bottom-left] the bottom left box
        [bottom-centre] the bottom center box
        [bottom-right] the bottom right box
       *[other] the box at { $cell }
    }
house-disjoint-groups-of-nine =
    { $n ->
        [1] the top left cells of the boxes
        [2] the top center cells of the boxes
        [3] the top right cells of the boxes
        [4] the middle left cells of the boxes
        [5] the center cells of the boxes
        [6] the middle right cells of the boxes
        [7] the bottom left cells of the boxes
        [8] the bottom center cells of the boxes
       *[9] the bottom right cells of the boxes
    }
marks-non-consecutive = the ban on consecutive neighbors
mark-non-consecutive-whole = the ban on consecutive neighbors
barred-sums-primer = No two cells that share a side add up to one of the numbers that the rule names. Where 10 is barred, there is no 6 beside a 4 and no 9 beside a 1: for each number, a digit rules out one digit in its neighbors, and half of an even number is free. When all places of a digit in a row or box lie beside one cell, that cell cannot hold its partner.
barred-sums-primer--lines = No two cells that share a side add up to one of the numbers that the rule names. Where 10 is barred, there is no 6 beside a 4 and no 9 beside a 1: for each number, a digit rules out one digit in its neighbors, and half of an even number is free. When all places of a digit in a row lie beside one cell, that cell cannot hold its partner.
border-values-sentence-all =
    { $n ->
        [1] The number
       *[other] Each number
    } on a border is { $results } of the two digits beside it; neighbors without a number never { $never }.
consecutive-bars-sentence =
    { $n ->
        [1] The bar
       *[other] A bar
    } joins consecutive digits; neighbors without a bar between them are not consecutive.
consecutive-bars-primer = Every pair of neighbors with consecutive digits has a bar between them, so a missing bar is a clue too: across a border without one, a 5 has neither a 4 nor a 6 beside it. Follow strings of bars, along which digits climb or fall by ones, and look at cells with few bars next to a known digit.
difference-line-sentence =
    Along { $n ->
        [1] the difference line
       *[other] each difference line
    }, neighboring digits differ by at least { $least }.
dots-sentence-white =
    { $white ->
        [1] The white dot
       *[other] A white dot
    } joins consecutive digits{ $all ->
        [yes] ; neighbors without a dot are neither consecutive nor a digit and its double
       *[no] { "" }
    }.
dots-sentence-black =
    { $black ->
        [1] The black dot
       *[other] A black dot
    } joins a digit and its double{ $all ->
        [yes] ; neighbors without a dot are neither consecutive nor a digit and its double
       *[no] { "" }
    }.
dots-sentence-both =
    { $white ->
        [1] The white dot
       *[other] A white dot
    } joins consecutive digits and { $black ->
        [1] the black dot
       *[other] a black dot
    } joins a digit and its double (1 and 2 may have either){ $all ->
        [yes] ; neighbors without a dot are neither
       *[no] { "" }
    }.
dots-primer = A white dot joins two neighbors with consecutive digits, a black dot a digit and its double; 1 and 2 may have either. On a 9×9 grid 5, 7 and 9 never touch a black dot, and a string of black dots runs through 1, 2, 4 and 8 or through 3 and 6. Where all dots are given, a border without one is a clue too: its digits are neither consecutive nor a digit and its double.
even-step-line-sentence =
    Along { $n ->
        [1] the even-step line
       *[other] each even-step line
    }, { $step ->
        [none]
            all neighboring digits differ by the same amount; { $n ->
                [1] work it out
               *[other] work it out for each line
            }
       *[other] neighboring digits differ by exactly { $step }
    }.
non-consecutive-primer = No two cells that share a side hold consecutive digits: beside a 5 there is neither a 4 nor a 6. So every digit you write rules out two digits in each of its neighbors. When a digit has only two places left in a row, with one cell between them, that cell cannot hold a digit one above or below it.
peaks-primer = A small roof over a digit means that it is greater than the digits beside, above and below it; a bowl under it means that it is smaller. The two neighbors in its row differ, so away from the edge a digit under a roof is at least 3, and usually far more.
rising-run-primer = Look along the row or column from the number: it tells how many digits rise in a row, counted from the nearest. After 3, the first three digits rise and the fourth is smaller than the third; after 1, the second is smaller than the first already. Long runs keep high digits away from the edge, and the last digit of a run is greater than its neighbors on both sides.
sum-marks-sentence-five =
    { $five ->
        [1] The V
       *[other] A V
    } joins digits that add up to 5{ $all ->
        [yes] ; neighbors without a mark add up to neither 5 nor 10
       *[no] { "" }
    }.
sum-marks-sentence-ten =
    { $ten ->
        [1] The X
       *[other] An X
    } joins digits that add up to 10{ $all ->
        [yes] ; neighbors without a mark add up to neither 5 nor 10
       *[no] { "" }
    }.
sum-marks-sentence-both =
    { $five ->
        [1] The V
       *[other] A V
    } joins digits that add up to 5 and { $ten ->
        [1] the X
       *[other] an X
    } joins digits that add up to 10{ $all ->
        [yes] ; neighbors without a mark add up to neither 5 nor 10
       *[no] { "" }
    }.
band-centre = center stack
