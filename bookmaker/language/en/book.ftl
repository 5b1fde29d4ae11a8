### The book's own words: headings, the page on how to read it, what stands around puzzles, keys and hints.

## Headings

heading-contents = Contents
heading-foreword = Foreword
heading-guide = How to read this book
heading-text-guide = How to read this edition
heading-primer = Primer: the rules, one by one
heading-hints = Hints
heading-glossary = Words in the hints
heading-times = Times
heading-keys = Solution keys
heading-answer-key = Answer key
heading-credits = Credits
heading-index = Index
heading-imprint = Imprint
heading-notes = Notes
heading-latin = Latin squares
heading-zero = Digits from 0
heading-by-setter = By setter
heading-by-rule = By rule
# A title with what follows from it: “Lanterns: Answer key”.
titled = { $title }: { $what }
chapter-titled = Chapter { $number }: { $title }

## The five bands of difficulty, gentlest first

band-1 = Stroll
band-2 = Ramble
band-3 = Hike
band-4 = Climb
band-5 = Summit

## How to read the book

cell-names = Cells are named by row and column: r5c2 is in row 5, column 2.
houses-explained = A house is a row, a column{ $areas ->
    [boxes] , a box or region
    [regions] , a region
   *[none] {""}
}, or any other set of cells in which no digit repeats.
guide-ridge = Beside each title a ridge of five peaks shows how hard the puzzle is. It fills from the left, peak by peak, from { $first } to { $last }. The figure with it is the difficulty: the digit before the point counts the peaks, the digit after it shows how close the next one is.
guide-order-difficulty = The puzzles are in order of difficulty, gentlest first.
guide-order-listed = The puzzles are in the order the editor chose.
guide-order-chapters = The puzzles are grouped in chapters, each with the gentlest first.
guide-rules = The rules given with a grid are complete, and all apply at once. Each kind of mark is drawn again beside the sentence that explains it. The grids are made for pencil: you can write over every mark.
# Rules that all puzzles of a chapter share are said where it opens.
guide-rules-shared = The rules given with a grid and where its chapter opens are complete, and all apply at once. Each kind of mark is drawn again beside the sentence that explains it. The grids are made for pencil: you can write over every mark.
guide-proved = Every puzzle has exactly one solution: each was checked exhaustively before printing, and its solution was then checked against the rules.
guide-draft = This is a draft: a puzzle in it may have no solution, or several.
guide-hints = If you get stuck, turn to the three hints for each puzzle, before the keys: where to look, what to look for, and the next step.
guide-hints-in-pad = If you get stuck, turn to the three hints for each puzzle, after the last sheet: where to look, what to look for, and the next step.
guide-keys = The solution keys are at the back, with the givens in bold.
guide-keys-in-pad = The solution keys are on the backs of their sheets, with the givens in bold.
guide-profile = The line under each key charts the solve, rising where a step takes more searching; arrowheads mark the sticking points.
guide-credits = After the keys come the credits: when puzzles were first shown, and who gave permission.
guide-credits-in-pad = At the end come the credits: when puzzles were first shown, and who gave permission.
guide-large = In the largest grids letters follow the digit 9: A stands for 10, B for 11 and so on. I and O are left out, since they look like 1 and 0.
guide-text-marks = Rows are numbered from top to bottom, columns from left to right, and a blank is a cell to fill. Where rows and columns are named together, all cells are meant in which they meet; the cells of a line are named in its order, so that its columns or rows may run backwards.
guide-text-below = Below each rule stand its marks.
guide-text-pictured = Below its picture each grid is told once more, in words and as a table, to be unfolded.
guide-text-bands = The band of a puzzle, from { $first } to { $last }, says how hard it is. Its difficulty is a figure: the digit before the point counts the bands, the digit after it shows how close the next one is.

## What a grid asks

grid-asks = Fill the grid so that every { $houses ->
    [lines] row and column
    [boxes] row, column and box
   *[regions] row, column and outlined region
} holds { $symbols } once each.
# The same where several grids overlap.
grids-ask = Fill all the grids so that every row, column and box of each holds { $symbols } once. A cell that grids share counts in each of them.
holes-stand = Black cells stay empty.
# “1 to 9”, kept on one line.
symbols-digits = the digits { $low } to { $high }
symbols-and-letter = the digits { $low } to { $high } and the letter { $last }
symbols-and-two-letters = the digits { $low } to { $high } and the letters { $first } and { $last }
symbols-and-letters = the digits { $low } to { $high } and the letters { $first } to { $last }
symbols-and-letters-without = the digits { $low } to { $high } and the letters { $first } to { $last } without { $without }
symbols-letters = the letters { $letters }
# What sentences on digits become where a grid has letters: pairs of words. A language in which they would not agree leaves
# the message out, and the next one is printed under such a grid.
letters-for-digits = digit letter | digits letters
letters-stand = Here letters stand in place of digits.
# A word that a solution spells, told with its key.
row-spells = row { $number } spells { $word }
    .short = r{ $number } spells { $word }
column-spells = column { $number } spells { $word }
    .short = c{ $number } spells { $word }
cells-spell = the cells from { $first } to { $last } spell { $word }
boxes-have = The boxes have { $high } and { $wide }.
rows-counted = { $n ->
    [1] one row
   *[other] { $number } rows
}
columns-counted = { $n ->
    [1] one column
   *[other] { $number } columns
}
region-at = Region { $number }: { $cells }
# Where one of several overlapping grids lies.
grid-at = grid { $grid }: rows { $top } to { $bottom }, columns { $left } to { $right }
    .short = grid { $grid }: r{ $top }-{ $bottom }, c{ $left }-{ $right }
grid-boxes = Classic
grid-regions = Irregular
grid-lines = Latin square
grids-overlap = Overlapping grids
grid-holes = Black cells
latin-with = Latin square with { $rules }
rule-titled = { $title }: { $sentence }
# A rule that holds in some of several grids, $grids being their letters.
rule-in-grids = { $n ->
    [1] Grid { $grids }
   *[other] Grids { $grids }
}: { $sentence }

## Around a puzzle

puzzle-numbered = Puzzle { $number }
puzzle-named = Puzzle { $name }
key-to = Key to puzzle { $name }
hints-for = Hints for puzzle { $name }
back-to = Back to puzzle { $number }
difficulty-of = difficulty { $figure }
band-said = { $band }, band { $number } of 5, difficulty { $figure }.
set-by = Set by { $setter }.
puzzles-by = Puzzles by { $setters }
edited-by = Edited by { $editor }
first-shown = first shown { $date }
points = { $n ->
    [1] 1 point
   *[other] { $n } points
}
flaw-none = No solution
flaw-several = More than one solution
flaw-undecided = Not decided
draft = DRAFT
time = Time
isbn = ISBN { $number }
isbn-printed = ISBN { $number } (printed)
isbn-ebook = ISBN { $number } (e-book)
index-note = Figures are puzzle numbers.
# The number of the page follows.
key-on-page = Key on page
hints-on-page = Hints on page
page = page
terms-on-page = Words that may be new are explained on page
steps-counted = { $n ->
    [1] 1 step
   *[other] { $number } steps
}
rules-face-grid = The rules of the next puzzle face its grid.
puzzles-counted = { $n ->
    [1] one puzzle
   *[other] { $number } puzzles
}

# On the opening page of a chapter, before rules.
rules-of-chapter = For every puzzle of this chapter:
belongs-to = This book belongs to
begun-on = Begun on
finished-on = Finished on

## Hints

hints-note = There are three hints for every puzzle, about the first sticking point. Each gives away more than the one before it, and the next is never in sight. Cells are named by row and column: r5c2 is in row 5, column 2.
hints-note-sheet = There are three hints for every puzzle, about the first sticking point. Each gives away more than the one before it: cover those below with a sheet of paper. Cells are named by row and column: r5c2 is in row 5, column 2.
hints-note-text = There are three hints for every puzzle, about the first sticking point. Each gives away more than the one before it. Open only the one you want.
hint-level-1 = Where to look
hint-level-2 = What to look for
hint-level-3 = The next step
hints-level-1 = Hints: where to look
hints-level-2 = Hints: what to look for
hints-level-3 = Hints: the next step
hints-overleaf-2 = The second hints are overleaf.
hints-overleaf-3 = The third hints are overleaf.
# Where a hint leads to.
hint-leads-2 = second hint for puzzle { $number }
hint-leads-3 = third hint for puzzle { $number }
hint-leads-key = key for puzzle { $number }
hint-leads-puzzle = puzzle { $number }

## Handouts and contests

name = Name
date = Date
copy-of = Copy { $number } of { $count }
check-row = When a grid is done, copy the digits in its lettered cells into the boxes of its check row. Your sheet is marked from these.
marker-sheet = Marker’s sheet
marker-help = Lay a sheet’s check rows beside these. A row that matches earns its points at a glance; where one differs, or a grid looks unfinished, check it against the key overleaf.
# $points: how many there are to win.
of-points = of { $points }
total-of = Total of { $points }
minutes = minutes
place = Place
total = Total

## Covers

cover-count = { $number } { $n ->
    [1] puzzle, with exactly one solution.
   *[other] puzzles, each with exactly one solution.
}
cover-sample = No. { $number }
# After a large figure.
cover-puzzles = { $n ->
    [1] puzzle
   *[other] puzzles
}
cover-kinds = { $n ->
    [1] kind of rule
   *[other] kinds of rules
}

## The presenter’s crib

crib = Presenter’s crib
crib-steps = The figures in the margin count the steps of the path.
crib-look = look here
crib-look-along = look along here
crib-next = filled next
crib-eliminated = eliminated
crib-supposed = supposed
crib-step = step { $first }
crib-run = steps { $first }–{ $last }
crib-follows = what follows, in this order
cells-filled = { $number } cells filled
start = The start
solution = The solution
story-set-by = { $title }, set by { $setter }
story-setter = set by { $setter }
story-crux = The hard moment
story-onwards = On from there
story-ending = To the end

## The chart of all rules

chart = The rules and their marks
chart-subject = Every rule kind with its mark and its sentence
chart-lines = Along lines
chart-cells = In cells and areas
chart-borders = Between cells and at corners
chart-outside = Outside the grid
chart-whole = In the whole grid, without a mark
