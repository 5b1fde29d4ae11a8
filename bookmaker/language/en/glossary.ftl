### What solvers’ words mean, for readers of hints. `.signs`: what hints that need the word say, with bars between them; what
### these begin with is enough, and capitals do not matter.

term-alternating-chain = Alternating chain
    .signs = alternating chain
    .meaning = Cells and digits linked so that if one fails the next holds. Whichever end of the chain is true, a digit that both ends rule out is gone.
term-cell-seen-by-all-places-of-a-digit = Cell seen by all places of a digit
    .signs = every place of a digit
    .meaning = Wherever the digit goes in a house, it rules itself out in one cell outside: that cell cannot hold it.
term-combination = Combination
    .signs = combination
    .meaning = A set of digits that has the total asked for and may stand in the cells.
term-contradiction = Contradiction
    .signs = contradiction
    .meaning = A cell without a digit, a digit without a place, or a mark that cannot be met. What led there was wrong.
term-eliminate = Eliminate
    .signs = eliminated
    .meaning = To rule a digit out for a cell. What is not yet eliminated are the cell’s candidates, which many solvers note small in its corner.
term-finned-pattern = Finned pattern
    .signs = finned
    .meaning = An X-wing or a larger fish that is spoilt by a place or two, the fins. What both the pattern and each fin rule out is gone all the same.
term-hidden-pair-triple-quad = Hidden pair, triple, quad
    .signs = same two places | share three places | share four places
    .meaning = Two digits with the same two places in a house need both cells for themselves, whatever else seemed possible there. So do three digits with three places, and four with four.
term-hidden-single = Hidden single
    .signs = only one place | only place
    .meaning = A digit that fits in one cell of a house only, even if that cell could take others. Look where the digit already stands near by.
term-house = House
    .signs = row | column | box | region
    .meaning = A row, a column{ $divided ->
        [none] {""}
        [regions] , a region
       *[boxes] , a box or region
    }, or any other set of cells in which no digit repeats.
term-step-beyond-the-ladder = Step beyond the ladder
    .signs = beyond the ladder
    .meaning = No pattern that is named here gets any further; the digit is known from the proof that there is one solution.
term-jellyfish = Jellyfish
    .signs = jellyfish
    .meaning = A swordfish with four rows and four columns.
term-last-empty-cell = Last empty cell
    .signs = last empty cell
    .meaning = Of a house that is full but for one cell, that one takes the digit that is missing.
term-locked-candidates = Locked candidates
    .signs = all share another
    .meaning = Where all places for a digit in one house lie in a second house as well, the digit is used up there: it goes nowhere else in the second.
term-mark = Mark
    .signs = mark
    .meaning = What is printed in a grid, or beside it, for one of its rules: a thermometer, a cage, a dot, a clue outside.
term-naked-pair-triple-quad = Naked pair, triple, quad
    .signs = same two digits left | three digits left | four digits left
    .meaning = Two cells of a house with the same two digits left use both of them up, so no other cell of the house takes one. The same goes for three cells with three digits, and four with four.
term-naked-single = Naked single
    .signs = only one possible digit | can only be
    .meaning = A cell for which its row, column{ $divided ->
        [none] {""}
        [regions] , region
       *[boxes] , box
    } and marks together leave one digit. Count what it sees.
term-see = See
    .signs = sees | seen
    .meaning = Two cells see each other if they cannot hold the same digit, as they share a house or a rule says so.
term-single-digit-chain = Single-digit chain
    .signs = single-digit chain
    .meaning = Places of one digit, two to a house, linked end to end. One end or the other is true, so a cell that sees both cannot hold the digit.
term-swordfish = Swordfish
    .signs = swordfish
    .meaning = An X-wing with three rows and three columns.
term-whole-cages = Whole cages
    .signs = adds up to 45
    .meaning = The digits 1 to 9 add up to 45. Take away the cages that lie inside a house, and what is left belongs to its other cells.
term-w-wing = W-wing
    .signs = w-wing
    .meaning = Two cells with the same two digits left, joined by a house where one of the two has but two places, each seen by one of the cells. The other digit is in one of them, so a cell that sees both cannot hold it.
term-what-if = What-if
    .signs = suppose | what-if | soon leads
    .meaning = Try a digit in the mind, follow what is forced, and strike it if that ends in a contradiction. Keep to short ones.
term-x-wing = X-wing
    .signs = x-wing
    .meaning = Two rows in which a digit has the same two columns only. It stands in opposite corners, so these columns have it nowhere else. Rows and columns may change places.
term-xy-wing = XY-wing
    .signs = xy-wing
    .meaning = A cell with two digits left that sees two others, each sharing one of its digits and both a third. Whatever the first holds, one of the others is the third, so a cell that sees both is not.
term-xyz-wing = XYZ-wing
    .signs = xyz-wing
    .meaning = An XY-wing whose first cell may hold the third digit too. Only cells that see all three lose it.
term-extended-chain = Extended chain
    .signs = extended chain
    .meaning = An alternating chain whose links may also be groups of cells, or what a mark leaves room for. What both of its ends rule out is gone.
term-either-way = Candidate ruled out either way
    .signs = no choice there | ruled out either way
    .meaning = Take a cell with few digits left, or a digit with few places, and look at each choice in turn. What every one of them rules out, by sight or through a mark, is gone.
