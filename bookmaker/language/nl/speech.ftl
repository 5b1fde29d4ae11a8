### Cells, lines and borders in words, for readers who see none. The row always comes first.

spoken-rows = { $n ->
    [1] rij { $places }
   *[other] rijen { $places }
}
    .short = r{ $places }
spoken-columns = { $n ->
    [1] kolom { $places }
   *[other] kolommen { $places }
}
    .short = k{ $places }
spoken-range = { $first } tot en met { $last }
    .short = { $first }-{ $last }
spoken-crossing = { $rows } { $columns }
spoken-along-row = rij { $row } kolommen { $first } tot en met { $last }
    .short = r{ $row } k{ $first }-{ $last }
spoken-along-column = rijen { $first } tot en met { $last } kolom { $column }
    .short = r{ $first }-{ $last } k{ $column }
spoken-diagonally = { $first } diagonaal naar { $last }
spoken-pair = { $one } en { $other }
spoken-borders-row = in rij { $number } tussen kolommen { $between }
    .short = in r{ $number } tussen k{ $between }
spoken-borders-column = in kolom { $number } tussen rijen { $between }
    .short = in k{ $number } tussen r{ $between }
spoken-side-left = aan de linkerkant
spoken-side-right = aan de rechterkant
spoken-side-top = erboven
spoken-side-bottom = eronder
spoken-row-has = rij { $number } heeft { $values }
    .short = r{ $number } heeft { $values }
spoken-column-has = kolom { $number } heeft { $values }
    .short = k{ $number } heeft { $values }
