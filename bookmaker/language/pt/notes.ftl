### What an editor is told of a path.

note-lone-naked-single = Com { $filled } casas preenchidas, numa grade já bastante cheia, só há um solitário, e exposto.
note-narrow = Com { $filled } casas preenchidas, há ali { $n ->
    [1] uma só saída
   *[other] { $n } saídas
}: { $technique }.
