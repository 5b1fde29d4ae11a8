### Cells, lines and borders in words, for readers who see none. The row always comes first. Ordinary spaces here: what
### turns these words to braille looks for them.

spoken-rows = { $n ->
    [1] ligne { $places }
   *[other] lignes { $places }
}
    .short = r{ $places }
spoken-columns = { $n ->
    [1] colonne { $places }
   *[other] colonnes { $places }
}
    .short = c{ $places }
spoken-range = { $first } à { $last }
    .short = { $first }-{ $last }
spoken-crossing = { $rows } { $columns }
spoken-along-row = ligne { $row } colonnes { $first } à { $last }
    .short = r{ $row } c{ $first }-{ $last }
spoken-along-column = lignes { $first } à { $last } colonne { $column }
    .short = r{ $first }-{ $last } c{ $column }
spoken-diagonally = { $first } en diagonale jusqu’à { $last }
spoken-pair = { $one } et { $other }
spoken-borders-row = dans la ligne { $number } entre les colonnes { $between }
    .short = dans la r{ $number } entre les c{ $between }
spoken-borders-column = dans la colonne { $number } entre les lignes { $between }
    .short = dans la c{ $number } entre les r{ $between }
spoken-side-left = à gauche
spoken-side-right = à droite
spoken-side-top = en haut
spoken-side-bottom = en bas
spoken-row-has = la ligne { $number } a { $values }
    .short = la r{ $number } a { $values }
spoken-column-has = la colonne { $number } a { $values }
    .short = la c{ $number } a { $values }
