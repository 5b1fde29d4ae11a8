### What an editor is told of a path.

note-lone-naked-single = Con { $filled } caselle riempite c’è soltanto un singolo nudo, su una griglia ancora affollata.
note-narrow = Con { $filled } caselle riempite { $n ->
    [1] c’è una sola apertura
   *[other] ci sono { $n } aperture
}: { $technique }.
