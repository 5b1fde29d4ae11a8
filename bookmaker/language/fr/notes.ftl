### What an editor is told of a path.

note-lone-naked-single = Avec { $filled } cases remplies, un seul singleton nu, dans une grille encore chargée : rien d’autre.
note-narrow = Avec { $filled } cases remplies, il n’y a { $n ->
    [1] qu’une ouverture
   *[other] que { $n } ouvertures
} : { $technique }.
