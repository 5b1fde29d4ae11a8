### What an editor is told of a path.

note-lone-naked-single = При { $filled } заповнених клітинках на густо списаній сітці лишається тільки один відкритий одинак.
note-narrow = При { $filled } заповнених клітинках { $n ->
    [1] є один хід
    [one] є { $n } хід
    [few] є { $n } ходи
   *[other] є { $n } ходів
}: { $technique }.
