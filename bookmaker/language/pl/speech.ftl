### Cells, lines and borders in words, for readers who see none. The row always comes first.

spoken-rows = { $n ->
    [one] wiersz { $places }
   *[other] wiersze { $places }
}
    .short = w{ $places }
spoken-columns = { $n ->
    [one] kolumna { $places }
   *[other] kolumny { $places }
}
    .short = k{ $places }
# What stands between the two is shortened to a hyphen in braille.
spoken-range = { $first } do { $last }
    .short = { $first }-{ $last }
# All cells in which the rows and the columns meet.
spoken-crossing = { $rows } { $columns }
# Stretches of a line, from the first cell to the last.
spoken-along-row = wiersz { $row } kolumny { $first } do { $last }
    .short = w{ $row } k{ $first }-{ $last }
spoken-along-column = wiersze { $first } do { $last } kolumna { $column }
    .short = w{ $first }-{ $last } k{ $column }
spoken-diagonally = { $first } na ukos – { $last }
# Borders between two cells of one row or column.
spoken-pair = { $one } i { $other }
spoken-borders-row = w wierszu { $number } między kolumnami { $between }
    .short = w w{ $number } między k{ $between }
spoken-borders-column = w kolumnie { $number } między wierszami { $between }
    .short = w k{ $number } między w{ $between }
# Clues outside the grid.
spoken-side-left = po lewej
spoken-side-right = po prawej
spoken-side-top = u góry
spoken-side-bottom = u dołu
spoken-row-has = wiersz { $number } ma { $values }
    .short = w{ $number } ma { $values }
spoken-column-has = kolumna { $number } ma { $values }
    .short = k{ $number } ma { $values }
