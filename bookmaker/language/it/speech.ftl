### Cells, lines and borders in words, for readers who see none. The row always comes first. Ordinary spaces here: what
### turns these words to braille looks for them.

spoken-rows = { $n ->
    [1] riga { $places }
   *[other] righe { $places }
}
    .short = r{ $places }
spoken-columns = { $n ->
    [1] colonna { $places }
   *[other] colonne { $places }
}
    .short = c{ $places }
spoken-range = { $first } a { $last }
    .short = { $first }-{ $last }
spoken-crossing = { $rows } { $columns }
spoken-along-row = riga { $row } colonne { $first } a { $last }
    .short = r{ $row } c{ $first }-{ $last }
spoken-along-column = righe { $first } a { $last } colonna { $column }
    .short = r{ $first }-{ $last } c{ $column }
spoken-diagonally = { $first } in diagonale fino a { $last }
spoken-pair = { $one } e { $other }
spoken-borders-row = nella riga { $number } tra le colonne { $between }
    .short = nella r{ $number } tra le c{ $between }
spoken-borders-column = nella colonna { $number } tra le righe { $between }
    .short = nella c{ $number } tra le r{ $between }
spoken-side-left = a sinistra
spoken-side-right = a destra
spoken-side-top = in alto
spoken-side-bottom = in basso
spoken-row-has = la riga { $number } ha { $values }
    .short = la r{ $number } ha { $values }
spoken-column-has = la colonna { $number } ha { $values }
    .short = la c{ $number } ha { $values }
