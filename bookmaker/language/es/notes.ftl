### What an editor is told of a path.

note-lone-naked-single = Con { $filled } casillas llenas no hay más que un solitario desnudo, en una cuadrícula repleta.
note-narrow = Con { $filled } casillas llenas hay { $n ->
    [one] una sola salida
   *[other] { $n } salidas
}: { $technique }.
