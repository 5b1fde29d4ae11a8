### What things are called: cells and digits in lists, houses, marks, techniques.
### “le” is a name with its article (“le thermomètre”, “l’anneau”), “de” the same after the preposition (“du thermomètre”).

quotation-marks = «   » “ ”
alphabet = a b c d e f g h i j k l m n o p q r s t u v w x y z

## Lists

list-more = { $most }, { $next }
list-and = { $most } et { $last }
list-or = { $most } ou { $last }
list-alike = { $most } avec { $last }
clauses-more = { $most }, { $next }
clauses-or = { $most }, ou { $last }
clauses-and = { $most }, et { $last }

# Masculine: where what is counted is feminine, messages have “une” of their own.
number = { $n ->
    [0] zéro
    [1] un
    [2] deux
    [3] trois
    [4] quatre
    [5] cinq
    [6] six
    [7] sept
    [8] huit
    [9] neuf
    [10] dix
    [11] onze
    [12] douze
   *[other] { $n }
}

digits-run = { $first } à { $last }
candidate = { $digit } en { $cell }
placed = { $digits } en { $cells }
tried = { OR($digits) } en { OR($cells) }

## Houses

house-any = { $divided ->
    [none] ligne ou colonne
    [regions] ligne, colonne ou région
   *[boxes] ligne, colonne ou bloc
}
    .one = { $divided ->
        [none] une ligne ou une colonne
        [regions] une ligne, une colonne ou une région
       *[boxes] une ligne, une colonne ou un bloc
    }
    .other = { $divided ->
        [none] une autre ligne ou une autre colonne
        [regions] une autre ligne, une autre colonne ou une autre région
       *[boxes] une autre ligne, une autre colonne ou un autre bloc
    }
house-row = la ligne { $number }
    .de = de la ligne { $number }
    .gender = feminine
    .short = la r{ $number }
    .de-short = de la r{ $number }
house-column = la colonne { $number }
    .de = de la colonne { $number }
    .gender = feminine
    .short = la c{ $number }
    .de-short = de la c{ $number }
house-region = la région { $letter }
    .de = de la région { $letter }
    .gender = feminine
house-box = { $place ->
    [middle-centre] le bloc central
    [top-left] le bloc en haut à gauche
    [top-centre] le bloc en haut au centre
    [top-right] le bloc en haut à droite
    [middle-left] le bloc au milieu à gauche
    [middle-right] le bloc au milieu à droite
    [bottom-left] le bloc en bas à gauche
    [bottom-centre] le bloc en bas au centre
    [bottom-right] le bloc en bas à droite
   *[other] le bloc qui commence en { $cell }
}
    .de = { $place ->
    [middle-centre] du bloc central
    [top-left] du bloc en haut à gauche
    [top-centre] du bloc en haut au centre
    [top-right] du bloc en haut à droite
    [middle-left] du bloc au milieu à gauche
    [middle-right] du bloc au milieu à droite
    [bottom-left] du bloc en bas à gauche
    [bottom-centre] du bloc en bas au centre
    [bottom-right] du bloc en bas à droite
   *[other] du bloc qui commence en { $cell }
}
    .gender = masculine
house-of-rule = { CASE($noun, "le") } en { $cell }
    .de = { CASE($noun, "de") } en { $cell }
house-diagonals-falling = la diagonale descendante
    .de = de la diagonale descendante
    .gender = feminine
house-diagonals-rising = la diagonale montante
    .de = de la diagonale montante
    .gender = feminine
house-disjoint-groups = le groupe des cases de rang { $number } dans leurs blocs
    .de = du groupe des cases de rang { $number } dans leurs blocs
    .gender = masculine
house-disjoint-groups-of-nine = { $n ->
    [1] le groupe des cases en haut à gauche des blocs
    [2] le groupe des cases en haut au centre des blocs
    [3] le groupe des cases en haut à droite des blocs
    [4] le groupe des cases au milieu à gauche des blocs
    [5] le groupe des cases centrales des blocs
    [6] le groupe des cases au milieu à droite des blocs
    [7] le groupe des cases en bas à gauche des blocs
    [8] le groupe des cases en bas au centre des blocs
   *[9] le groupe des cases en bas à droite des blocs
}
    .de = { $n ->
    [1] du groupe des cases en haut à gauche des blocs
    [2] du groupe des cases en haut au centre des blocs
    [3] du groupe des cases en haut à droite des blocs
    [4] du groupe des cases au milieu à gauche des blocs
    [5] du groupe des cases centrales des blocs
    [6] du groupe des cases au milieu à droite des blocs
    [7] du groupe des cases en bas à gauche des blocs
    [8] du groupe des cases en bas au centre des blocs
   *[9] du groupe des cases en bas à droite des blocs
}
    .gender = masculine
house-windows-rows = la partie des lignes { $number } à { $last } hors des fenêtres
    .de = de la partie des lignes { $number } à { $last } hors des fenêtres
    .gender = feminine
    .short = la partie des r{ $number }-{ $last } hors des fenêtres
    .de-short = de la partie des r{ $number }-{ $last } hors des fenêtres
house-windows-columns = la partie des colonnes { $number } à { $last } hors des fenêtres
    .de = de la partie des colonnes { $number } à { $last } hors des fenêtres
    .gender = feminine
    .short = la partie des c{ $number }-{ $last } hors des fenêtres
    .de-short = de la partie des c{ $number }-{ $last } hors des fenêtres
house-windows-crossing = le croisement des lignes et des colonnes qui passent entre les fenêtres
    .de = du croisement des lignes et des colonnes qui passent entre les fenêtres
    .gender = masculine
houses-row = les lignes { $numbers }
    .de = des lignes { $numbers }
    .short = les r{ $numbers }
    .de-short = des r{ $numbers }
houses-column = les colonnes { $numbers }
    .de = des colonnes { $numbers }
    .short = les c{ $numbers }
    .de-short = des c{ $numbers }
whole-grid = toute la grille
# After “row”, “column”, or “rows” with several numbers, where grids overlap.
line-in-grid = { $number } de la grille { $grid }

## Marks, by where they are anchored

mark-line = { CASE($noun, "le") } de { $first } à { $last }
mark-at = { $value ->
    [none] { CASE($noun, "le") } en { $cell }
   *[other] { CASE($noun, "le") } de { $value } en { $cell }
}
mark-between = { $value ->
    [none] { CASE($noun, "le") } entre { $one } et { $other }
   *[other] { CASE($noun, "le") } { $value } entre { $one } et { $other }
}
mark-between-missing = la frontière sans { $noun } entre { $one } et { $other }
    .gender = feminine
# Where a clue outside the grid stands.
beside-line = { $side ->
    [left] à gauche de la ligne { $line }
    [right] à droite de la ligne { $line }
    [top] au-dessus de la colonne { $line }
   *[bottom] au-dessous de la colonne { $line }
}
    .short = { $side ->
        [left] à gauche de la r{ $line }
        [right] à droite de la r{ $line }
        [top] au-dessus de la c{ $line }
       *[bottom] au-dessous de la c{ $line }
    }
mark-outside = { CASE($noun, "le") } { $value } { $where }
mark-slanting = { CASE($noun, "le") } { $value } qui part de { $start } { $way ->
    [down-right] vers le bas à droite
    [down-left] vers le bas à gauche
    [up-right] vers le haut à droite
   *[up-left] vers le haut à gauche
}
mark-lettered = { CASE($noun, "le") } { $letter }
mark-joined = les { $nouns } qui relient { $cells }
mark-whole = { CASE($noun, "le") }
mark-again = { GENDER($noun) ->
    [feminine] la même { $noun }
   *[masculine] le même { $noun }
}
marks = les { $nouns }

## Kinds of rules: one mark, several, the heading

kind-arithmetic-cage = cage arithmétique
    .many = cages arithmétiques
    .title = Cages arithmétiques
    .gender = feminine
    .le = la cage arithmétique
    .de = de la cage arithmétique
kind-arrow = flèche
    .many = flèches
    .title = Flèches
    .gender = feminine
    .le = la flèche
    .de = de la flèche
kind-barred-sums = interdiction de sommes
    .many = interdictions de sommes
    .title = Sommes interdites
    .gender = feminine
    .le = l’interdiction de certaines sommes
    .de = de l’interdiction de certaines sommes
kind-border-values = nombre entre deux cases
    .many = nombres entre deux cases
    .title = Nombres entre deux cases
    .gender = masculine
    .le = le nombre entre deux cases
    .de = du nombre entre deux cases
kind-bounded-line = tracé borné
    .many = tracés bornés
    .title = Tracés bornés
    .gender = masculine
    .le = le tracé borné
    .de = du tracé borné
kind-cage = cage
    .many = cages
    .title = Cages
    .gender = feminine
    .le = la cage
    .de = de la cage
kind-clone = clone
    .many = clones
    .title = Clones
    .gender = masculine
    .le = le clone
    .de = du clone
kind-consecutive-bars = barre
    .many = barres
    .title = Barres de consécutifs
    .gender = feminine
    .le = la barre
    .de = de la barre
kind-consecutive-line = tracé de consécutifs
    .many = tracés de consécutifs
    .title = Tracés de consécutifs
    .gender = masculine
    .le = le tracé de consécutifs
    .de = du tracé de consécutifs
kind-counting-area = zone de comptage
    .many = zones de comptage
    .title = Zones de comptage
    .gender = feminine
    .le = la zone de comptage
    .de = de la zone de comptage
kind-diagonal-sum = somme diagonale
    .many = sommes diagonales
    .title = Sommes diagonales
    .gender = feminine
    .le = la somme diagonale
    .de = de la somme diagonale
kind-diagonals = diagonale
    .many = diagonales
    .title = Diagonales
    .gender = feminine
    .le = la diagonale
    .de = de la diagonale
kind-difference-line = tracé à écarts
    .many = tracés à écarts
    .title = Tracés à écarts
    .gender = masculine
    .le = le tracé à écarts
    .de = du tracé à écarts
kind-disjoint-groups = groupe disjoint
    .many = groupes disjoints
    .title = Groupes disjoints
    .gender = masculine
    .le = le groupe disjoint
    .de = du groupe disjoint
kind-dots = point
    .many = points
    .title = Points
    .gender = masculine
    .le = le point
    .de = du point
kind-equal-part-line = tracé à parts égales
    .many = tracés à parts égales
    .title = Tracés à parts égales
    .gender = masculine
    .le = le tracé à parts égales
    .de = du tracé à parts égales
kind-even-step-line = tracé à pas constant
    .many = tracés à pas constant
    .title = Tracés à pas constant
    .gender = masculine
    .le = le tracé à pas constant
    .de = du tracé à pas constant
kind-extra-region = région supplémentaire
    .many = régions supplémentaires
    .title = Régions supplémentaires
    .gender = feminine
    .le = la région supplémentaire
    .de = de la région supplémentaire
kind-first-seen = chiffre de tête
    .many = chiffres de tête
    .title = Chiffres de tête
    .gender = masculine
    .le = le chiffre de tête
    .de = du chiffre de tête
kind-fortress = forteresse
    .many = forteresses
    .title = Forteresses
    .gender = feminine
    .le = la forteresse
    .de = de la forteresse
kind-frame-product = produit de bord
    .many = produits de bord
    .title = Produits de bord
    .gender = masculine
    .le = le produit de bord
    .de = du produit de bord
kind-frame-sum = somme de bord
    .many = sommes de bord
    .title = Sommes de bord
    .gender = feminine
    .le = la somme de bord
    .de = de la somme de bord
kind-hinge-line = tracé à charnière
    .many = tracés à charnière
    .title = Tracés à charnière
    .gender = masculine
    .le = le tracé à charnière
    .de = du tracé à charnière
kind-inequality = signe d’inégalité
    .many = signes d’inégalité
    .title = Inégalités
    .gender = masculine
    .le = le signe d’inégalité
    .de = du signe d’inégalité
kind-king = pas du roi
    .many = pas du roi
    .title = Pas du roi
    .gender = masculine
    .le = le pas du roi
    .de = du pas du roi
kind-knight = saut du cavalier
    .many = sauts du cavalier
    .title = Saut du cavalier
    .gender = masculine
    .le = le saut du cavalier
    .de = du saut du cavalier
kind-limits = limite
    .many = limites
    .title = Limites
    .gender = feminine
    .le = la limite
    .de = de la limite
kind-low-high-line = tracé bas-haut
    .many = tracés bas-haut
    .title = Tracés bas-haut
    .gender = masculine
    .le = le tracé bas-haut
    .de = du tracé bas-haut
kind-no-doubles = interdiction des doubles
    .many = interdictions des doubles
    .title = Sans doubles
    .gender = feminine
    .le = l’interdiction des doubles
    .de = de l’interdiction des doubles
kind-non-consecutive = interdiction des voisins consécutifs
    .many = interdictions des voisins consécutifs
    .title = Sans consécutifs
    .gender = feminine
    .le = l’interdiction des voisins consécutifs
    .de = de l’interdiction des voisins consécutifs
kind-numbered-room = chambre numérotée
    .many = chambres numérotées
    .title = Chambres numérotées
    .gender = feminine
    .le = la chambre numérotée
    .de = de la chambre numérotée
kind-open-cage = cage ouverte
    .many = cages ouvertes
    .title = Cages ouvertes
    .gender = feminine
    .le = la cage ouverte
    .de = de la cage ouverte
kind-palindrome = palindrome
    .many = palindromes
    .title = Palindromes
    .gender = masculine
    .le = le palindrome
    .de = du palindrome
kind-parity = case paire ou impaire
    .many = cases paires et impaires
    .title = Pair et impair
    .gender = feminine
    .le = la case paire ou impaire
    .de = de la case paire ou impaire
kind-parity-line = tracé de parité
    .many = tracés de parité
    .title = Tracés de parité
    .gender = masculine
    .le = le tracé de parité
    .de = du tracé de parité
kind-parity-run = série de parité
    .many = séries de parité
    .title = Séries de parité
    .gender = feminine
    .le = la série de parité
    .de = de la série de parité
kind-peaks = toit ou cuvette
    .many = toits et cuvettes
    .title = Pics et creux
    .gender = masculine
    .le = le toit ou la cuvette
    .de = du toit ou de la cuvette
kind-pointing = case à flèche
    .many = cases à flèche
    .title = Cases à flèche
    .gender = feminine
    .le = la case à flèche
    .de = de la case à flèche
kind-quadruple = anneau
    .many = anneaux
    .title = Anneaux
    .gender = masculine
    .le = l’anneau
    .de = de l’anneau
kind-resting-thermometer = thermomètre à paliers
    .many = thermomètres à paliers
    .title = Thermomètres à paliers
    .gender = masculine
    .le = le thermomètre à paliers
    .de = du thermomètre à paliers
kind-rise-or-fall = pente
    .many = pentes
    .title = Montées et descentes
    .gender = feminine
    .le = la pente
    .de = de la pente
kind-rising-run = série croissante
    .many = séries croissantes
    .title = Séries croissantes
    .gender = feminine
    .le = la série croissante
    .de = de la série croissante
kind-same-sum-line = tracé à somme constante
    .many = tracés à somme constante
    .title = Tracés à somme constante
    .gender = masculine
    .le = le tracé à somme constante
    .de = du tracé à somme constante
kind-sandwich = somme sandwich
    .many = sommes sandwich
    .title = Sommes sandwich
    .gender = feminine
    .le = la somme sandwich
    .de = de la somme sandwich
kind-skyscraper = nombre de gratte-ciel
    .many = nombres de gratte-ciel
    .title = Gratte-ciel
    .gender = masculine
    .le = le nombre de gratte-ciel
    .de = du nombre de gratte-ciel
kind-square-block = carré encadré
    .many = carrés encadrés
    .title = Carrés encadrés
    .gender = masculine
    .le = le carré encadré
    .de = du carré encadré
kind-sum-marks = marque de somme
    .many = marques de somme
    .title = Marques V et X
    .gender = feminine
    .le = la marque de somme
    .de = de la marque de somme
kind-thermometer = thermomètre
    .many = thermomètres
    .title = Thermomètres
    .gender = masculine
    .le = le thermomètre
    .de = du thermomètre
kind-windows = fenêtre
    .many = fenêtres
    .title = Fenêtres
    .gender = feminine
    .le = la fenêtre
    .de = de la fenêtre
kind-x-sum = somme X
    .many = sommes X
    .title = Sommes X
    .gender = feminine
    .le = la somme X
    .de = de la somme X

## Marks that are called otherwise

marks-king = le pas du roi
marks-knight = le saut du cavalier
marks-non-consecutive = l’interdiction des voisins consécutifs
mark-non-consecutive = la frontière entre { $one } et { $other }
    .gender = feminine
mark-non-consecutive-whole = l’interdiction des voisins consécutifs
    .gender = feminine
mark-border-values-sum = la somme { $value } entre { $one } et { $other }
    .gender = feminine
mark-border-values-difference = la différence { $value } entre { $one } et { $other }
    .gender = feminine
mark-border-values-product = le produit { $value } entre { $one } et { $other }
mark-border-values-quotient = le quotient { $value } entre { $one } et { $other }
mark-border-values-missing = la frontière sans nombre entre { $one } et { $other }
    .gender = feminine
mark-non-consecutive-corner = le coin entre { $one } et { $other }
    .gender = masculine
marks-no-doubles = l’interdiction des doubles
mark-no-doubles = la frontière entre { $one } et { $other }
    .gender = feminine
mark-no-doubles-corner = le coin entre { $one } et { $other }
    .gender = masculine
mark-no-doubles-whole = l’interdiction des doubles
    .gender = feminine
marks-barred-sums = l’interdiction de certaines sommes
mark-barred-sums = la frontière entre { $one } et { $other }
    .gender = feminine
mark-barred-sums-corner = le coin entre { $one } et { $other }
    .gender = masculine
mark-barred-sums-whole = l’interdiction de certaines sommes
    .gender = feminine
mark-dots-white = le point blanc entre { $one } et { $other }
mark-dots-black = le point noir entre { $one } et { $other }
mark-sum-marks-V = le V entre { $one } et { $other }
    .gender = masculine
mark-sum-marks-X = le X entre { $one } et { $other }
    .gender = masculine
mark-sum-marks-missing = la frontière sans V ni X entre { $one } et { $other }
    .gender = feminine
mark-rise-or-fall-rise = la montée { $where }
mark-rise-or-fall-fall = la descente { $where }
mark-rise-or-fall-missing = le bord sans barres { $where }
    .gender = masculine
mark-rising-run-joined = les séries croissantes qui atteignent { $cells }
mark-parity-run-joined = les séries de parité aux deux bouts de { $cells }
mark-rise-or-fall-joined = les montées et les descentes qui atteignent { $cells }
mark-inequality = le signe entre { $one } et { $other }
mark-inequality-joined = les signes qui relient { $cells }
mark-limits-joined = les limites de { $cells }
mark-fortress-joined = les forteresses en { $cells }
mark-pointing = la flèche en { $cell }
mark-parity-even = le carré en { $cell }
    .gender = masculine
mark-parity-odd = le cercle en { $cell }
    .gender = masculine
mark-parity-joined = les cases paires et impaires parmi { $cells }
mark-peaks-greater = le toit en { $cell }
mark-peaks-smaller = la cuvette en { $cell }
    .gender = feminine
mark-peaks-joined = les toits et les cuvettes en { $cells }
mark-cage-joined = les cages qui couvrent { $cells }
mark-arithmetic-cage = la cage arithmétique { $value } en { $cell }
mark-arithmetic-cage-joined = les cages arithmétiques qui couvrent { $cells }
mark-counting-area = la zone de comptage marquée { $value } en { $cell }
mark-square-block-magic = le carré magique en { $cell }
mark-open-cage-even = la cage paire en { $cell }
mark-open-cage-odd = la cage impaire en { $cell }
mark-open-cage-lettered = le groupe des cages { $letter }
    .gender = masculine

## Techniques: plainly, one of them, several ($count in words)

technique-last-cell = dernière case vide
    .one = une dernière case vide
    .many = { $count } dernières cases vides
technique-hidden-single = singleton caché
    .one = un singleton caché
    .many = { $count } singletons cachés
technique-naked-single = singleton nu
    .one = un singleton nu
    .many = { $count } singletons nus
technique-locked-candidates = candidats verrouillés
    .one = des candidats verrouillés
    .many = { $count } groupes de candidats verrouillés
technique-naked-pair = paire nue
    .one = une paire nue
    .many = { $count } paires nues
technique-naked-triple = triplet nu
    .one = un triplet nu
    .many = { $count } triplets nus
technique-naked-quad = quadruplet nu
    .one = un quadruplet nu
    .many = { $count } quadruplets nus
technique-hidden-pair = paire cachée
    .one = une paire cachée
    .many = { $count } paires cachées
technique-hidden-triple = triplet caché
    .one = un triplet caché
    .many = { $count } triplets cachés
technique-hidden-quad = quadruplet caché
    .one = un quadruplet caché
    .many = { $count } quadruplets cachés
technique-x-wing = X-wing
    .one = un X-wing
    .many = { $count } X-wings
technique-swordfish = espadon
    .one = un espadon
    .many = { $count } espadons
technique-jellyfish = méduse
    .one = une méduse
    .many = { $count } méduses
technique-finned-x-wing = X-wing à aileron
    .one = un X-wing à aileron
    .many = { $count } X-wings à aileron
technique-finned-swordfish = espadon à aileron
    .one = un espadon à aileron
    .many = { $count } espadons à aileron
technique-finned-jellyfish = méduse à aileron
    .one = une méduse à aileron
    .many = { $count } méduses à aileron
technique-xy-wing = XY-wing
    .one = un XY-wing
    .many = { $count } XY-wings
technique-xyz-wing = XYZ-wing
    .one = un XYZ-wing
    .many = { $count } XYZ-wings
technique-w-wing = W-wing
    .one = un W-wing
    .many = { $count } W-wings
technique-single-digit-chain = chaîne d’un seul chiffre
    .one = une chaîne d’un seul chiffre
    .many = { $count } chaînes d’un seul chiffre
technique-alternating-chain = chaîne alternée
    .one = une chaîne alternée
    .many = { $count } chaînes alternées
technique-seen-by-all-places = case vue par toutes les places d’un chiffre
    .one = une case vue par toutes les places d’un chiffre
    .many = { $count } cases vues par toutes les places d’un chiffre
technique-extended-chain = chaîne étendue
    .one = une chaîne étendue
    .many = { $count } chaînes étendues
technique-either-way = chiffre exclu dans tous les cas
    .one = un chiffre exclu dans tous les cas
    .many = { $count } chiffres exclus dans tous les cas
technique-what-if = supposition
    .one = une supposition
    .many = { $count } suppositions
technique-beyond = étape au-delà de l’échelle
    .one = une étape au-delà de l’échelle
    .many = { $count } étapes au-delà de l’échelle
