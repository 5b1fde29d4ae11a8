### What is read aloud to those who do not see a page: grids, pictures, links, and the editions in text and for braille.

row-numbered = row { $number }
column-numbered = column { $number }
cell-given = given { $digit }
cell-empty = empty
# Between overlapping grids.
cell-none = no cell
cell-candidates = { $n ->
    [1] candidate { $digits }
   *[other] candidates { $digits }
}
# A cell to fill, in a table read aloud.
blank = blank
row-digits = Row { $number }: { $digits }
row-holds = row { $number } holds { $digits }
cell-at = row { $row } column { $column }
    .short = r{ $row } c{ $column }
cell-shaded = { $cell } is shaded.
check-cells = Cells of the check row: { $cells }.
profile-of = Solve profile of { $n ->
    [1] one moment
   *[other] { $number } moments
}
profile-narrow = Solve profile of { $n ->
    [1] one moment
   *[other] { $number } moments
}, narrow at { COUNT($at) ->
    [one] moment { $at }
   *[other] moments { $at }
}
sample-of = Sample: { $kind }
code-of-link = Code of the link { $link }
link-of-puzzle = Link of this puzzle: { $link }
look-at = Look at { $cells }
look-along = Look along { $cells }
filled-next = Filled next: { $cell }
eliminated = Eliminated: { $digit } from { $cells }
supposed = Supposed: { $digits } in { $cell }
in-round = In round { $round }: { $digits } in { $cell }
field-at = Row { $row }, column { $column }
bands-counted = Puzzles by difficulty: { $counts }.
band-count = { $band } { $count }
sample-grid = sample grid
tear-off-edge = tear-off edge
cover-art = cover art

## Web page and e-book

skip-to-book = Skip to the book
table-of-key = Key to puzzle { $number }, the digits
table-of-puzzle = Puzzle { $number }, the digits
head-row = Row { $number }
head-column = Column { $number }
cover = Cover
cover-of = Cover: { $title }
title-page = Title page
puzzles = Puzzles
printed-pages = Printed pages
landmarks = Landmarks
grid-in-words = The grid in words
grid-as-table = The grid as a table
picture-told-in-words = The grid of puzzle { $number }, which is told below in words and as a table
picture-told-as-table = The grid of puzzle { $number }, which is told below as a table
subject = Number-placement puzzles
accessibility = Every grid is a picture and a table with headers for rows and columns. The marks of each puzzle are told in words beside it, so that all puzzles can be solved without seeing a picture. Hints open one by one, and links lead from each puzzle to its hints and its key and back.

## The edition for braille displays

# r and c are what rows and columns are shortened to here, and in all attributes “short”, which are for braille.
braille-legend = Lines have at most { $cells } characters, each of which takes one cell in computer braille. A line that goes on is indented. In a grid each character is a cell, with a dot for a blank one{ $boxes ->
    [yes] ; spaces stand between boxes
   *[no] {""}
}. r is a row, c a column: r2 c3 is the cell in row 2, column 3, and r2 c3-5 the three cells from there to column 5.
