### Three hints for a puzzle: where to look, what to look for, the step itself.

hint-where = Avec { $filled } cases remplies : { $where }.
hint-where-at-start = Au départ : { $where }.
hint-cells = { COUNT($cells) ->
    [one] la case { $cells }
   *[other] les cases { $cells }
}
hint-around = les cases autour de { $cell }

hint-what-last-cell = La dernière case vide.
hint-what-hidden-single = Un chiffre qui n’y a qu’une place.
hint-what-naked-single = Une case où un seul chiffre est possible.
hint-what-fixed = Le chiffre qui reste.
hint-what-mark = Des chiffres exclus par { CASE($noun, "le") }.
hint-what-mark--barred-sums = Des chiffres qui feraient avec un voisin une somme interdite.
hint-what-mark--no-doubles = Des chiffres qui se trouveraient à côté de leur moitié ou de leur double.
hint-what-mark--non-consecutive = Des chiffres qui se trouveraient à côté du chiffre suivant ou précédent.
hint-what-locked-candidates = Un chiffre dont toutes les places y partagent { house-any.other }.
hint-what-naked-pair = Deux cases auxquelles il ne reste que les deux mêmes chiffres.
hint-what-naked-triple = Trois cases auxquelles il ne reste que trois chiffres en tout.
hint-what-naked-quad = Quatre cases auxquelles il ne reste que quatre chiffres en tout.
hint-what-hidden-pair = Deux chiffres qui ont les deux mêmes places.
hint-what-hidden-triple = Trois chiffres qui se partagent trois places.
hint-what-hidden-quad = Quatre chiffres qui se partagent quatre places.
hint-what-x-wing = Un chiffre qui, dans deux lignes, n’a de places que dans les deux mêmes colonnes, ou l’inverse : un X-wing.
hint-what-swordfish = Un chiffre qui, dans trois lignes, n’a de places que dans les trois mêmes colonnes, ou l’inverse : un espadon.
hint-what-jellyfish = Un chiffre qui, dans quatre lignes, n’a de places que dans les quatre mêmes colonnes, ou l’inverse : une méduse.
hint-what-seen-by-all-places = Une case qui voit toutes les places d’un chiffre.
hint-what-either-way = Un chiffre qu’aucun choix n’y laisse possible.
hint-what-what-if = Un chiffre qui mène vite à une contradiction.
hint-what = { $technique }.
