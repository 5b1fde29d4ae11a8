### What an editor is told of a path.

note-lone-naked-single = Przy { $filled } wypełnionych polach na gęsto zapisanym diagramie zostaje tylko jeden nagi singiel.
note-narrow = Przy { $filled } wypełnionych polach { $n ->
    [one] jest jedno otwarcie
    [few] są { $n } otwarcia
   *[other] jest { $n } otwarć
}: { $technique }.
