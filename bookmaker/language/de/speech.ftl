### Cells, lines and borders in words, for readers who see none. The row always comes first.

spoken-rows = { $n ->
    [1] Zeile { $places }
   *[other] Zeilen { $places }
}
spoken-columns = { $n ->
    [1] Spalte { $places }
   *[other] Spalten { $places }
}
spoken-range = { $first } bis { $last }
# All cells in which the rows and the columns meet.
spoken-crossing = { $rows } { $columns }
# Stretches of a line, from the first cell to the last.
spoken-along-row = Zeile { $row } Spalten { $first } bis { $last }
spoken-along-column = Zeilen { $first } bis { $last } Spalte { $column }
spoken-diagonally = { $first } diagonal bis { $last }
# Borders between two cells of one row or column.
spoken-pair = { $one } und { $other }
spoken-borders-row = in Zeile { $number } zwischen den Spalten { $between }
spoken-borders-column = in Spalte { $number } zwischen den Zeilen { $between }
# Clues outside the grid.
spoken-side-left = links
spoken-side-right = rechts
spoken-side-top = oben
spoken-side-bottom = unten
spoken-row-has = Zeile { $number } hat { $values }
spoken-column-has = Spalte { $number } hat { $values }
