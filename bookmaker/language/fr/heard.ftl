### What is read aloud to those who do not see a page: grids, pictures, links, and the editions in text and for braille.

row-numbered = ligne { $number }
column-numbered = colonne { $number }
cell-given = chiffre donné { $digit }
cell-empty = vide
# Between overlapping grids.
cell-none = pas de case
cell-candidates = { $n ->
    [1] candidat { $digits }
   *[other] candidats { $digits }
}
blank = vide
row-digits = Ligne { $number } : { $digits }
row-holds = la ligne { $number } contient { $digits }
cell-at = ligne { $row } colonne { $column }
    .short = r{ $row } c{ $column }
cell-shaded = { $cell } est grisée.
check-cells = Cases de la bande de contrôle : { $cells }.
profile-of = Profil de la résolution, { $n ->
    [1] un moment
   *[other] { $number } moments
}
profile-narrow = Profil de la résolution, { $n ->
    [1] un moment
   *[other] { $number } moments
}, étroit { COUNT($at) ->
    [one] au moment { $at }
   *[other] aux moments { $at }
}
sample-of = Exemple : { $kind }
code-of-link = Code du lien { $link }
link-of-puzzle = Lien de cette grille : { $link }
look-at = Regarder { $cells }
look-along = Regarder le long de { $cells }
filled-next = À remplir : { $cell }
eliminated = Éliminé : { $digit } en { $cells }
supposed = Supposé : { $digits } en { $cell }
in-round = Au tour { $round } : { $digits } en { $cell }
field-at = Ligne { $row }, colonne { $column }
bands-counted = Grilles par difficulté : { $counts }.
band-count = { $band } { $count }
sample-grid = grille d’exemple
tear-off-edge = bord à détacher
cover-art = dessin de couverture

## Web page and e-book

skip-to-book = Aller au livre
table-of-key = Solution de la grille { $number }, les chiffres
table-of-puzzle = Grille { $number }, les chiffres
head-row = Ligne { $number }
head-column = Colonne { $number }
cover = Couverture
cover-of = Couverture : { $title }
title-page = Page de titre
puzzles = Grilles
printed-pages = Pages imprimées
landmarks = Repères
grid-in-words = La grille en mots
grid-as-table = La grille en tableau
picture-told-in-words = La grille { $number }, décrite ci-dessous en mots et sous forme de tableau
picture-told-as-table = La grille { $number }, décrite ci-dessous sous forme de tableau
subject = Grilles de chiffres à compléter
accessibility = Chaque grille est une image et un tableau dont les lignes et les colonnes ont leurs en-têtes. Les marques de chaque grille sont décrites en mots à côté d’elle, si bien que toutes les grilles peuvent se résoudre sans voir d’image. Les indices s’ouvrent un par un, et des liens mènent de chaque grille à ses indices et à sa solution, et inversement.

## The edition for braille displays

braille-legend = Les lignes de texte ont au plus { $cells } caractères, dont chacun occupe une cellule en braille informatique. Une ligne de texte qui se poursuit est en retrait. Dans une grille, chaque caractère est une case, un point pour une case vide{ $boxes ->
    [yes] {" "}; une espace sépare les blocs
   *[no] {""}
}. r est une ligne (rangée), c une colonne : r2 c3 est la case de la ligne 2, colonne 3, et r2 c3-5 les trois cases de là jusqu’à la colonne 5.
# The names of cells begin with r and c in every language.
