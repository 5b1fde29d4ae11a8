### What an editor is told of a path.

note-lone-naked-single = Com { $filled } casas preenchidas, só há um solitário exposto, numa grade já cheia.
note-narrow = Com { $filled } casas preenchidas, há ali { $n ->
    [1] uma só saída
   *[other] { $n } saídas
}: { $technique }.
