### Cells, lines and borders in words, for readers who see none. The row always comes first.

spoken-rows = { $n ->
    [1] linha { $places }
   *[other] linhas { $places }
}
    .short = l{ $places }
spoken-columns = { $n ->
    [1] coluna { $places }
   *[other] colunas { $places }
}
    .short = c{ $places }
spoken-range = { $first } a { $last }
    .short = { $first }-{ $last }
# All cells in which the rows and the columns meet.
spoken-crossing = { $rows } { $columns }
# Stretches of a line, from the first cell to the last.
spoken-along-row = linha { $row } colunas { $first } a { $last }
    .short = l{ $row } c{ $first }-{ $last }
spoken-along-column = linhas { $first } a { $last } coluna { $column }
    .short = l{ $first }-{ $last } c{ $column }
spoken-diagonally = { $first } em diagonal até a { $last }
# Borders between two cells of one row or column.
spoken-pair = { $one } e { $other }
spoken-borders-row = na linha { $number } entre as colunas { $between }
    .short = na l{ $number } entre as c{ $between }
spoken-borders-column = na coluna { $number } entre as linhas { $between }
    .short = na c{ $number } entre as l{ $between }
# Clues outside the grid.
spoken-side-left = à esquerda
spoken-side-right = à direita
spoken-side-top = acima
spoken-side-bottom = abaixo
spoken-row-has = a linha { $number } tem { $values }
    .short = a l{ $number } tem { $values }
spoken-column-has = a coluna { $number } tem { $values }
    .short = a c{ $number } tem { $values }
