### Cells, lines and borders in words, for readers who see none. The row always comes first.

spoken-rows = { $n ->
    [one] fila { $places }
   *[other] filas { $places }
}
    .short = f{ $places }
spoken-columns = { $n ->
    [one] columna { $places }
   *[other] columnas { $places }
}
    .short = c{ $places }
spoken-range = { $first } a { $last }
    .short = { $first }-{ $last }
# All cells in which the rows and the columns meet.
spoken-crossing = { $rows } { $columns }
# Stretches of a line, from the first cell to the last.
spoken-along-row = fila { $row } columnas { $first } a { $last }
    .short = f{ $row } c{ $first }-{ $last }
spoken-along-column = filas { $first } a { $last } columna { $column }
    .short = f{ $first }-{ $last } c{ $column }
spoken-diagonally = { $first } en diagonal hasta { $last }
# Borders between two cells of one row or column.
spoken-pair = { $one } y { $other }
spoken-borders-row = en la fila { $number } entre las columnas { $between }
    .short = en la f{ $number } entre las c{ $between }
spoken-borders-column = en la columna { $number } entre las filas { $between }
    .short = en la c{ $number } entre las f{ $between }
# Clues outside the grid.
spoken-side-left = a la izquierda
spoken-side-right = a la derecha
spoken-side-top = encima
spoken-side-bottom = debajo
spoken-row-has = la fila { $number } tiene { $values }
    .short = la f{ $number } tiene { $values }
spoken-column-has = la columna { $number } tiene { $values }
    .short = la c{ $number } tiene { $values }
