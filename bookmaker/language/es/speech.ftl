### Cells, lines and borders in words, for readers who see none. The row always comes first.

spoken-rows = { $n ->
    [one] fila { $places }
   *[other] filas { $places }
}
spoken-columns = { $n ->
    [one] columna { $places }
   *[other] columnas { $places }
}
spoken-range = { $first } a { $last }
# All cells in which the rows and the columns meet.
spoken-crossing = { $rows } { $columns }
# Stretches of a line, from the first cell to the last.
spoken-along-row = fila { $row } columnas { $first } a { $last }
spoken-along-column = filas { $first } a { $last } columna { $column }
spoken-diagonally = { $first } en diagonal hasta { $last }
# Borders between two cells of one row or column.
spoken-pair = { $one } y { $other }
spoken-borders-row = en la fila { $number } entre las columnas { $between }
spoken-borders-column = en la columna { $number } entre las filas { $between }
# Clues outside the grid.
spoken-side-left = a la izquierda
spoken-side-right = a la derecha
spoken-side-top = encima
spoken-side-bottom = debajo
spoken-row-has = la fila { $number } tiene { $values }
spoken-column-has = la columna { $number } tiene { $values }
