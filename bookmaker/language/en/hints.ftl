### Three hints for a puzzle: where to look, what to look for, the step itself.

hint-where = With { $filled } cells filled: { $where }.
hint-where-at-start = At the start: { $where }.
hint-cells = { COUNT($cells) ->
    [one] the cell { $cells }
   *[other] the cells { $cells }
}
hint-around = the cells around { $cell }

hint-what-last-cell = The last empty cell.
hint-what-hidden-single = A digit with only one place there.
hint-what-naked-single = A cell there with only one possible digit.
hint-what-fixed = The digit that is left.
hint-what-mark = Digits that the { $noun } rules out.
hint-what-mark--king = Digits that the king’s move rules out.
hint-what-mark--knight = Digits that the knight’s move rules out.
hint-what-mark--barred-sums = Digits that would make a barred sum with a neighbour.
hint-what-mark--no-doubles = Digits that would stand beside their half or their double.
hint-what-mark--non-consecutive = Digits that would stand beside the next one up or down.
hint-what-locked-candidates = A digit whose places there all share another { house-any }.
hint-what-naked-pair = Two cells with the same two digits left between them.
hint-what-naked-triple = Three cells with three digits left between them.
hint-what-naked-quad = Four cells with four digits left between them.
hint-what-hidden-pair = Two digits with the same two places.
hint-what-hidden-triple = Three digits that share three places.
hint-what-hidden-quad = Four digits that share four places.
hint-what-x-wing = A digit that two rows have in the same two columns only, or the other way round: an X-wing.
hint-what-swordfish = A digit that three rows have in the same three columns only, or the other way round: a swordfish.
hint-what-jellyfish = A digit that four rows have in the same four columns only, or the other way round: a jellyfish.
hint-what-seen-by-all-places = A cell that sees every place of a digit.
hint-what-either-way = A candidate that no choice there leaves standing.
hint-what-what-if = A digit that soon leads to a contradiction.
# A pattern that is named by its name alone.
hint-what = { $technique }.
