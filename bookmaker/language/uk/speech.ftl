### Cells, lines and borders in words, for readers who see none. The row always comes first.

spoken-rows = { $n ->
    [1] рядок { $places }
   *[other] рядки { $places }
}
    .short = р{ $places }
spoken-columns = { $n ->
    [1] стовпець { $places }
   *[other] стовпці { $places }
}
    .short = с{ $places }
# What stands between the two is shortened to a hyphen in braille.
spoken-range = { $first } до { $last }
    .short = { $first }-{ $last }
# All cells in which the rows and the columns meet.
spoken-crossing = { $rows } { $columns }
# Stretches of a line, from the first cell to the last.
spoken-along-row = рядок { $row } стовпці { $first } до { $last }
    .short = р{ $row } с{ $first }-{ $last }
spoken-along-column = рядки { $first } до { $last } стовпець { $column }
    .short = р{ $first }-{ $last } с{ $column }
spoken-diagonally = { $first } навскоси — { $last }
# Borders between two cells of one row or column.
spoken-pair = { $one } і { $other }
spoken-borders-row = у рядку { $number } між стовпцями { $between }
    .short = у р{ $number } між с{ $between }
spoken-borders-column = у стовпці { $number } між рядками { $between }
    .short = у с{ $number } між р{ $between }
# Clues outside the grid.
spoken-side-left = ліворуч
spoken-side-right = праворуч
spoken-side-top = угорі
spoken-side-bottom = унизу
spoken-row-has = рядок { $number } має { $values }
    .short = р{ $number } має { $values }
spoken-column-has = стовпець { $number } має { $values }
    .short = с{ $number } має { $values }
