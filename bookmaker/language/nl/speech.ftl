### Cells, lines and borders in words, for readers who see none. The row always comes first.

spoken-rows = { $n ->
    [1] rij { $places }
   *[other] rijen { $places }
}
spoken-columns = { $n ->
    [1] kolom { $places }
   *[other] kolommen { $places }
}
spoken-range = { $first } tot en met { $last }
spoken-crossing = { $rows } { $columns }
spoken-along-row = rij { $row } kolommen { $first } tot en met { $last }
spoken-along-column = rijen { $first } tot en met { $last } kolom { $column }
spoken-diagonally = { $first } diagonaal naar { $last }
spoken-pair = { $one } en { $other }
spoken-borders-row = in rij { $number } tussen kolommen { $between }
spoken-borders-column = in kolom { $number } tussen rijen { $between }
spoken-side-left = aan de linkerkant
spoken-side-right = aan de rechterkant
spoken-side-top = erboven
spoken-side-bottom = eronder
spoken-row-has = rij { $number } heeft { $values }
spoken-column-has = kolom { $number } heeft { $values }
