### Cells, lines and borders in words, for readers who see none. The row always comes first.

spoken-rows = { $n ->
    [1] Zeile { $places }
   *[other] Zeilen { $places }
}
    .short = z{ $places }
spoken-columns = { $n ->
    [1] Spalte { $places }
   *[other] Spalten { $places }
}
    .short = s{ $places }
spoken-range = { $first } bis { $last }
    .short = { $first }-{ $last }
# All cells in which the rows and the columns meet.
spoken-crossing = { $rows } { $columns }
# Stretches of a line, from the first cell to the last.
spoken-along-row = Zeile { $row } Spalten { $first } bis { $last }
    .short = z{ $row } s{ $first }-{ $last }
spoken-along-column = Zeilen { $first } bis { $last } Spalte { $column }
    .short = z{ $first }-{ $last } s{ $column }
spoken-diagonally = { $first } diagonal bis { $last }
# Borders between two cells of one row or column.
spoken-pair = { $one } und { $other }
spoken-borders-row = in Zeile { $number } zwischen den Spalten { $between }
    .short = in z{ $number } zwischen den s{ $between }
spoken-borders-column = in Spalte { $number } zwischen den Zeilen { $between }
    .short = in s{ $number } zwischen den z{ $between }
# Clues outside the grid.
spoken-side-left = links
spoken-side-right = rechts
spoken-side-top = oben
spoken-side-bottom = unten
spoken-row-has = Zeile { $number } hat { $values }
    .short = z{ $number } hat { $values }
spoken-column-has = Spalte { $number } hat { $values }
    .short = s{ $number } hat { $values }
