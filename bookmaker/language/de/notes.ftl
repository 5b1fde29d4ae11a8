### What an editor is told of a path.

note-lone-naked-single = Bei { $filled } gefüllten Feldern geht es im dicht besetzten Diagramm nur mit einem einzigen nackten Einer weiter.
note-narrow = Bei { $filled } gefüllten Feldern { $n ->
    [1] geht es nur an einer Stelle weiter
   *[other] geht es nur an { $n } Stellen weiter
}: { $technique }.
