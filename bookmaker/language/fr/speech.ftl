### Cells, lines and borders in words, for readers who see none. The row always comes first. Ordinary spaces here: what
### turns these words to braille looks for them.

spoken-rows = { $n ->
    [1] ligne { $places }
   *[other] lignes { $places }
}
spoken-columns = { $n ->
    [1] colonne { $places }
   *[other] colonnes { $places }
}
spoken-range = { $first } à { $last }
spoken-crossing = { $rows } { $columns }
spoken-along-row = ligne { $row } colonnes { $first } à { $last }
spoken-along-column = lignes { $first } à { $last } colonne { $column }
spoken-diagonally = { $first } en diagonale jusqu’à { $last }
spoken-pair = { $one } et { $other }
spoken-borders-row = dans la ligne { $number } entre les colonnes { $between }
spoken-borders-column = dans la colonne { $number } entre les lignes { $between }
spoken-side-left = à gauche
spoken-side-right = à droite
spoken-side-top = en haut
spoken-side-bottom = en bas
spoken-row-has = la ligne { $number } a { $values }
spoken-column-has = la colonne { $number } a { $values }
