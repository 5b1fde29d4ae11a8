### What an editor is told of a path.

note-lone-naked-single = With { $filled } cells filled, a lone naked single on a crowded board is all there is.
note-narrow = With { $filled } cells filled there { $n ->
    [1] is one opening
   *[other] are { $n } openings
}: { $technique }.
