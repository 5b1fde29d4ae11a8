### What an editor is told of a path.

note-lone-naked-single = Bij { $filled } ingevulde vakjes is op een vol diagram één naakte single alles wat er is.
note-narrow = Bij { $filled } ingevulde vakjes { $n ->
    [1] is er één opening
   *[other] zijn er { $n } openingen
}: { $technique }.
