### What solvers’ words mean, for readers of hints. A term is named for the technique, claim or concept that asks for it
### (`tell/concepts.py`).

term-alternating-chain = Alternating chain
    .meaning = Cells and digits linked so that if one fails the next holds. Whichever end of the chain is true, a digit that both ends rule out is gone.
term-seen-by-all = Cell seen by all places of a digit
    .meaning = Wherever the digit goes in a house, it rules itself out in one cell outside: that cell cannot hold it.
term-combination = Combination
    .meaning = A set of digits that has the total asked for and may stand in the cells.
term-contradiction = Contradiction
    .meaning = A cell without a digit, a digit without a place, or a mark that cannot be met. What led there was wrong.
term-eliminate = Eliminate
    .meaning = To rule a digit out for a cell. What is not yet eliminated are the cell’s candidates, which many solvers note small in its corner.
term-fins = Finned pattern
    .meaning = An X-wing or a larger fish that is spoilt by a place or two, the fins. What both the pattern and each fin rule out is gone all the same.
term-hidden-subset = Hidden pair, triple, quad
    .meaning = Two digits with the same two places in a house need both cells for themselves, whatever else seemed possible there. So do three digits with three places, and four with four.
term-hidden-single = Hidden single
    .meaning = A digit that fits in one cell of a house only, even if that cell could take others. Look where the digit already stands near by.
term-house = House
    .meaning = A row, a column{ $divided ->
        [none] {""}
        [regions] , a region
       *[boxes] , a box or region
    }, or any other set of cells in which no digit repeats.
term-jellyfish = Jellyfish
    .meaning = A swordfish with four rows and four columns.
term-last-cell = Last empty cell
    .meaning = Of a house that is full but for one cell, that one takes the digit that is missing.
term-locked = Locked candidates
    .meaning = Where all places for a digit in one house lie in a second house as well, the digit is used up there: it goes nowhere else in the second.
term-mark = Mark
    .meaning = What is printed in a grid, or beside it, for one of its rules: a thermometer, a cage, a dot, a clue outside.
term-naked-subset = Naked pair, triple, quad
    .meaning = Two cells of a house with the same two digits left use both of them up, so no other cell of the house takes one. The same goes for three cells with three digits, and four with four.
term-naked-single = Naked single
    .meaning = A cell for which its row, column{ $divided ->
        [none] {""}
        [regions] , region
       *[boxes] , box
    } and marks together leave one digit. Count what it sees.
term-sight = See
    .meaning = Two cells see each other if they cannot hold the same digit, as they share a house or a rule says so.
term-single-digit-chain = Single-digit chain
    .meaning = Places of one digit, two to a house, linked end to end. One end or the other is true, so a cell that sees both cannot hold the digit.
term-swordfish = Swordfish
    .meaning = An X-wing with three rows and three columns.
term-left-over--cage = Whole cages
    .meaning = The digits 1 to 9 add up to 45. Take away the cages that lie inside a house, and what is left belongs to its other cells.
term-w-wing = W-wing
    .meaning = Two cells with the same two digits left, joined by a house where one of the two has but two places, each seen by one of the cells. The other digit is in one of them, so a cell that sees both cannot hold it.
term-what-if = What-if
    .meaning = Try a digit in the mind, follow what is forced, and strike it if that ends in a contradiction. Keep to short ones.
term-x-wing = X-wing
    .meaning = Two rows in which a digit has the same two columns only. It stands in opposite corners, so these columns have it nowhere else. Rows and columns may change places.
term-xy-wing = XY-wing
    .meaning = A cell with two digits left that sees two others, each sharing one of its digits and both a third. Whatever the first holds, one of the others is the third, so a cell that sees both is not.
term-xyz-wing = XYZ-wing
    .meaning = An XY-wing whose first cell may hold the third digit too. Only cells that see all three lose it.
term-extended-chain = Extended chain
    .meaning = An alternating chain whose links may also be groups of cells, or what a mark leaves room for. What both of its ends rule out is gone.
term-either-way = Candidate ruled out either way
    .meaning = Take a cell with few digits left, or a digit with few places, and look at each choice in turn. What every one of them rules out, by sight or through a mark, is gone.
