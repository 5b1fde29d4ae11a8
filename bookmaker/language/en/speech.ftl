### Cells, lines and borders in words, for readers who see none. The row always comes first.

spoken-rows = { $n ->
    [1] row { $places }
   *[other] rows { $places }
}
    .short = r{ $places }
spoken-columns = { $n ->
    [1] column { $places }
   *[other] columns { $places }
}
    .short = c{ $places }
spoken-range = { $first } to { $last }
    .short = { $first }-{ $last }
# All cells in which the rows and the columns meet.
spoken-crossing = { $rows } { $columns }
# Stretches of a line, from the first cell to the last.
spoken-along-row = row { $row } columns { $first } to { $last }
    .short = r{ $row } c{ $first }-{ $last }
spoken-along-column = rows { $first } to { $last } column { $column }
    .short = r{ $first }-{ $last } c{ $column }
spoken-diagonally = { $first } diagonally to { $last }
# Borders between two cells of one row or column.
spoken-pair = { $one } and { $other }
spoken-borders-row = in row { $number } between columns { $between }
    .short = in r{ $number } between c{ $between }
spoken-borders-column = in column { $number } between rows { $between }
    .short = in c{ $number } between r{ $between }
# Clues outside the grid.
spoken-side-left = on the left
spoken-side-right = on the right
spoken-side-top = above
spoken-side-bottom = below
spoken-row-has = row { $number } has { $values }
    .short = r{ $number } has { $values }
spoken-column-has = column { $number } has { $values }
    .short = c{ $number } has { $values }
