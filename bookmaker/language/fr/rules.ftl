### What each kind of rule asks, in a sentence under a puzzle, singular or plural as there are marks ($n); how it is taught in
### the primer; and how its marks are told to those who do not see them ($cells, $line: which cells; $where: on which borders;
### $side: on which side of the grid).

## Arithmetic cages

result-sum = la somme (+)
result-product = le produit (×)
result-difference = la différence (−)
result-quotient = le quotient (÷)
arithmetic-cage-sentence-signs = Le nombre dans le coin de { $n ->
    [1] la cage arithmétique
   *[other] chaque cage arithmétique
} est { $results } de ses chiffres{ $unsigned ->
    [pairs]  ; sans signe, c’est la somme, le produit, la différence ou le quotient de ses chiffres
    [larger]  ; sans signe, c’est la somme ou le produit de ses chiffres
   *[none] {""}
}{ $larger ->
    [differ]  ; les chiffres y sont tous différents
    [repeat]  ; un chiffre peut s’y répéter
   *[no] {""}
}.
arithmetic-cage-sentence-unsigned = Le nombre dans le coin de { $n ->
    [1] la cage arithmétique
   *[other] chaque cage arithmétique
} est { $unsigned ->
    [pairs] la somme, le produit, la différence ou le quotient de ses chiffres
   *[larger] la somme ou le produit de ses chiffres
}{ $larger ->
    [differ]  ; les chiffres y sont tous différents
    [repeat]  ; un chiffre peut s’y répéter
   *[no] {""}
}.
arithmetic-cage-spoken = Cage arithmétique { $sort ->
    [sum] de somme { $number }
    [product] de produit { $number }
    [difference] de différence { $number }
    [quotient] de quotient { $number }
   *[none] avec { $number } sans signe
} : { $cells }
arithmetic-cage-primer = Le signe dans le coin d’une cage arithmétique dit ce que donnent ses chiffres : leur somme (+), leur produit (×), leur différence (−) ou leur quotient (÷), le plus grand chiffre d’abord ; s’il n’y a pas de signe, à vous de le trouver. Commencez par les produits : 5 et 7 divisent peu d’entre eux, et s’ils divisent le nombre, la cage les contient. Dans une grille 9×9, une cage marquée ÷ n’a de 5 ou de 7 qu’à côté d’un 1, et une grande différence demande un petit chiffre et un grand.

## Arrows

arrow-sentence = La somme des chiffres le long de { $n ->
    [1] la flèche
   *[other] chaque flèche
} est le chiffre de son cercle.
arrow-sentence-ovals = La somme des chiffres le long de { $n ->
    [1] la flèche
   *[other] chaque flèche
} est le nombre inscrit dans { $all ->
    [yes] son ovale
   *[no] son cercle ou son ovale
}, qui se lit { $ways ->
    [across] de gauche à droite
    [down] de haut en bas
   *[both] de gauche à droite ou de haut en bas
}.
arrow-zero = Le nombre inscrit dans un ovale ne commence jamais par 0.
arrow-circle = du cercle en { $cells }
arrow-oval = de l’ovale en { $cells }, lu { $way ->
    [across] de gauche à droite
   *[down] de haut en bas
}
arrow-spoken = Flèche qui part { $start } : { $line }
arrow-primer = La somme des chiffres sur la tige d’une flèche, du cercle à la pointe, cercle non compris, est le nombre du cercle ; les chiffres peuvent se répéter là où les lignes, les colonnes et les blocs le permettent. Si plusieurs tiges partent du même cercle, chacune donne cette somme. Un ovale sur deux ou trois cases contient un nombre de deux ou trois chiffres. Trois cases d’un même bloc font au moins 6 : les longues tiges demandent donc un grand nombre dans le cercle et de petits chiffres.
# Where no grid of the book has boxes.
arrow-primer--lines = La somme des chiffres sur la tige d’une flèche, du cercle à la pointe, cercle non compris, est le nombre du cercle ; les chiffres peuvent se répéter là où les lignes et les colonnes le permettent. Si plusieurs tiges partent du même cercle, chacune donne cette somme. Un ovale sur deux ou trois cases contient un nombre de deux ou trois chiffres. Trois cases d’une même ligne font au moins 6 : les longues tiges demandent donc un grand nombre dans le cercle et de petits chiffres.

## Barred sums

barred-sums-sentence = La somme de deux cases qui { $touching ->
    [corners] se touchent, par un côté ou par un coin, ne vaut jamais { $sums }.
   *[sides] ont un côté commun ne vaut jamais { $sums }.
}
barred-sums-primer = La somme de deux cases qui ont un côté commun n’est jamais l’un des nombres que cite la règle. Si 10 est interdit, il n’y a pas de 6 à côté d’un 4 ni de 9 à côté d’un 1 : pour chaque nombre interdit, un chiffre exclut un seul chiffre de ses voisines, et la moitié d’un nombre pair n’en exclut aucun. Quand toutes les places d’un chiffre dans une ligne ou un bloc sont à côté d’une même case, celle-ci ne peut pas contenir son complément.
# Where no grid of the book has boxes.
barred-sums-primer--lines = La somme de deux cases qui ont un côté commun n’est jamais l’un des nombres que cite la règle. Si 10 est interdit, il n’y a pas de 6 à côté d’un 4 ni de 9 à côté d’un 1 : pour chaque nombre interdit, un chiffre exclut un seul chiffre de ses voisines, et la moitié d’un nombre pair n’en exclut aucun. Quand toutes les places d’un chiffre dans une ligne sont à côté d’une même case, celle-ci ne peut pas contenir son complément.

## Border values

border-values-sum = la somme ({ $sign })
border-values-difference = la différence ({ $sign })
border-values-product = le produit ({ $sign })
border-values-quotient = le quotient ({ $sign })
border-values-sentence = { $n ->
    [1] Le nombre placé entre deux cases
   *[other] Chaque nombre placé entre deux cases
} est { $results } de leurs deux chiffres.
border-values-sentence-all = { $n ->
    [1] Le nombre placé entre deux cases
   *[other] Chaque nombre placé entre deux cases
} est { $results } de leurs deux chiffres ; deux cases voisines sans nombre n’ont jamais { $never }.
border-values-never-sum = pour somme { $numbers }
border-values-never-difference = pour différence { $numbers }
border-values-never-product = pour produit { $numbers }
border-values-never-quotient = pour quotient { $numbers }
border-values-spoken-sum = { $n ->
    [1] Somme { $number }
   *[other] Sommes { $number }
} { $where }
border-values-spoken-difference = { $n ->
    [1] Différence { $number }
   *[other] Différences { $number }
} { $where }
border-values-spoken-product = { $n ->
    [1] Produit { $number }
   *[other] Produits { $number }
} { $where }
border-values-spoken-quotient = { $n ->
    [1] Quotient { $number }
   *[other] Quotients { $number }
} { $where }
border-values-primer = Un nombre dans un petit cadre entre deux cases dit ce que donnent leurs chiffres : après +, leur somme ; après −, leur différence ; après ×, leur produit ; après /, le plus grand divisé par le plus petit. Les grands produits, les grandes sommes et les grands quotients laissent le moins de choix : dans une grille 9×9, ×35 est fait de 5 et 7, +17 de 8 et 9, /5 de 1 et 5. Quand tous ces nombres sont donnés, une frontière qui n’en porte pas est un indice aussi.

## Bounded lines

bounded-line-sentence = Le long { $n ->
    [1] du tracé borné
   *[other] de chaque tracé borné
}, les chiffres sont strictement compris entre les deux chiffres à crochets de ses bouts.
bounded-line-spoken = Tracé borné, d’un bout à l’autre : { $line }
bounded-line-primer = Les chiffres du tracé sont compris entre les deux chiffres à crochets de ses bouts ; ni l’un ni l’autre ne figure entre les deux. Le plus petit et le plus grand chiffre ne sont donc jamais à l’intérieur d’un tel tracé, et si trois de ses cases intérieures partagent une ligne, une colonne ou un bloc, les bouts diffèrent d’au moins quatre. Cherchez d’abord lequel des deux bouts est le plus grand.
# Where no grid of the book has boxes.
bounded-line-primer--lines = Les chiffres du tracé sont compris entre les deux chiffres à crochets de ses bouts ; ni l’un ni l’autre ne figure entre les deux. Le plus petit et le plus grand chiffre ne sont donc jamais à l’intérieur d’un tel tracé, et si trois de ses cases intérieures partagent une ligne ou une colonne, les bouts diffèrent d’au moins quatre. Cherchez d’abord lequel des deux bouts est le plus grand.

## Cages

cage-sentence-totals = Dans { $n ->
    [1] la cage
   *[other] chaque cage
}, les chiffres sont tous différents et leur somme est le total inscrit dans le coin.
cage-sentence-some = Dans { $n ->
    [1] la cage
   *[other] chaque cage
}, les chiffres sont tous différents et leur somme est le total inscrit dans le coin, s’il y en a un.
cage-sentence-none = Dans { $n ->
    [1] la cage
   *[other] chaque cage
}, les chiffres sont tous différents.
cage-sentence-repeats = Dans { $n ->
    [1] la cage
   *[other] chaque cage
}, la somme des chiffres est le total inscrit dans le coin ; un chiffre peut s’y répéter.
cage-spoken = { $total ->
    [none] Cage sans total : { $cells }
   *[other] Cage de { $total } : { $cells }
}
cage-primer = Une cage est dessinée en tirets. Ses chiffres sont tous différents, même si elle traverse plusieurs blocs, et leur somme est le petit total de son coin. Certains totaux ne laissent qu’un choix : deux cases qui font 3 contiennent 1 et 2, trois cases qui font 24 contiennent 7, 8 et 9. Dans une grille 9×9, chaque ligne, chaque colonne et chaque bloc totalise 45 : là où des cages couvrent tout un bloc sauf une case, retranchez leurs totaux de 45.
# Where no grid of the book has boxes.
cage-primer--lines = Une cage est dessinée en tirets. Ses chiffres sont tous différents et leur somme est le petit total de son coin. Certains totaux ne laissent qu’un choix : deux cases qui font 3 contiennent 1 et 2, trois cases qui font 24 contiennent 7, 8 et 9. Dans une grille 9×9, chaque ligne et chaque colonne totalise 45 : là où des cages couvrent toute une ligne sauf une case, retranchez leurs totaux de 45.

## Clones

clone-sentence = Les { $number } zones hachurées contiennent les mêmes chiffres aux mêmes places.
clone-sentence-letters = Les zones hachurées de même lettre contiennent les mêmes chiffres aux mêmes places.
clone-spoken = Clones { $letter }, case par case : { $twins }
clone-primer = Les zones hachurées de même lettre sont des clones : elles ont la même forme et contiennent les mêmes chiffres aux mêmes places. Un chiffre exclu d’une case l’est aussi de sa jumelle ; chaque paire de jumelles subit donc deux lignes, deux colonnes et deux blocs. Commencez par les clones qui voient le plus de chiffres donnés.
# Where no grid of the book has boxes.
clone-primer--lines = Les zones hachurées de même lettre sont des clones : elles ont la même forme et contiennent les mêmes chiffres aux mêmes places. Un chiffre exclu d’une case l’est aussi de sa jumelle ; chaque paire de jumelles subit donc deux lignes et deux colonnes. Commencez par les clones qui voient le plus de chiffres donnés.

## Consecutive bars

consecutive-bars-sentence = { $n ->
    [1] La barre
   *[other] Une barre
} relie deux chiffres consécutifs ; deux cases voisines sans barre entre elles n’ont jamais de chiffres consécutifs.
consecutive-bars-spoken = { $n ->
    [1] Barre
   *[other] Barres
} { $where }
consecutive-bars-primer = Deux voisines aux chiffres consécutifs ont toujours une barre entre elles ; l’absence de barre est donc un indice aussi : au-delà d’une frontière nue, un 5 n’a ni 4 ni 6 pour voisin. Suivez les files de barres, où les chiffres montent ou descendent d’un à chaque pas, et regardez les cases qui ont peu de barres à côté d’un chiffre connu.

## Consecutive lines

consecutive-line-sentence = Les chiffres { $n ->
    [1] du tracé de consécutifs
   *[other] de chaque tracé de consécutifs
} forment une suite sans trou ni répétition, dans n’importe quel ordre.
consecutive-line-spoken = Tracé de consécutifs : { $line }
consecutive-line-primer = Les chiffres d’un tracé perlé, une fois rangés, forment une suite comme 3 4 5 6, mais ils peuvent se présenter dans n’importe quel ordre. Ils ne se répètent jamais, même si le tracé traverse plusieurs blocs. Dans une grille 9×9, cinq cases contiennent toujours un 5, six cases aussi un 4 et un 6 ; et les chiffres trop éloignés d’un chiffre connu sont exclus.
# Where no grid of the book has boxes.
consecutive-line-primer--lines = Les chiffres d’un tracé perlé, une fois rangés, forment une suite comme 3 4 5 6, mais ils peuvent se présenter dans n’importe quel ordre. Ils ne se répètent jamais. Dans une grille 9×9, cinq cases contiennent toujours un 5, six cases aussi un 4 et un 6 ; et les chiffres trop éloignés d’un chiffre connu sont exclus.

## Counting areas

counting-area-sentence-counts = Dans { $n ->
    [1] la zone de comptage
   *[other] chaque zone de comptage
}, chaque chiffre inscrit dans le coin figure exactement autant de fois qu’il y est écrit.
counting-area-sentence-different = Le nombre dans le coin de { $n ->
    [1] la zone de comptage
   *[other] chaque zone de comptage
} dit combien de chiffres différents elle contient.
counting-area-sentence-both = Dans { $n ->
    [1] la zone de comptage
   *[other] chaque zone de comptage
}, chaque chiffre inscrit dans le coin figure exactement autant de fois qu’il y est écrit ; un nombre accompagné de ≠ dit combien de chiffres différents la zone contient.
counting-area-spoken = { $different ->
    [0] Zone de comptage avec exactement { $digits } : { $cells }
    [1] Zone de comptage à un seul chiffre différent : { $cells }
   *[other] Zone de comptage à { $different } chiffres différents : { $cells }
}
counting-area-primer = Une ligne de points clôt une zone de comptage. Les chiffres de son coin y figurent exactement autant de fois qu’ils sont écrits : 7 7 veut dire deux 7, et les autres chiffres sont quelconques mais pas des 7. Un nombre accompagné de ≠ dit combien de chiffres différents elle contient. Trois cases d’une même ligne ont toujours trois chiffres différents ; demandez-vous donc quelles cases d’une zone peuvent être égales : celles qui ne partagent ni ligne, ni colonne, ni bloc.
# Where no grid of the book has boxes.
counting-area-primer--lines = Une ligne de points clôt une zone de comptage. Les chiffres de son coin y figurent exactement autant de fois qu’ils sont écrits : 7 7 veut dire deux 7, et les autres chiffres sont quelconques mais pas des 7. Un nombre accompagné de ≠ dit combien de chiffres différents elle contient. Trois cases d’une même ligne ont toujours trois chiffres différents ; demandez-vous donc quelles cases d’une zone peuvent être égales : celles qui ne partagent ni ligne ni colonne.

## Diagonal sums

diagonal-sum-sentence = { $n ->
    [1] Le nombre
   *[other] Chaque nombre
} accompagné d’une flèche hors de la grille est la somme des chiffres de la diagonale que montre la flèche ; ils peuvent se répéter là où les autres règles le permettent.
diagonal-sum-spoken = Somme diagonale { $total } : { $line }
diagonal-sum-primer = Une flèche hors de la grille montre une diagonale, et son nombre est la somme de tous les chiffres de celle-ci, jusqu’au bord opposé. Les cases d’un même bloc ont des chiffres différents ; les autres peuvent se répéter, si bien que trois cases de trois blocs peuvent même avoir le même chiffre. Commencez par les diagonales courtes et par les sommes très petites ou très grandes pour leur longueur.
# Where no grid of the book has boxes.
diagonal-sum-primer--lines = Une flèche hors de la grille montre une diagonale, et son nombre est la somme de tous les chiffres de celle-ci, jusqu’au bord opposé. Un chiffre peut s’y répéter. Commencez par les diagonales courtes et par les sommes très petites ou très grandes pour leur longueur.

## Diagonals

diagonals-sentence = { $n ->
    [1] La diagonale marquée
   *[other] Chacune des deux diagonales marquées
} contient une fois chaque chiffre.
diagonals-spoken = Diagonale marquée : { $line }
diagonals-primer = Une diagonale marquée s’emploie comme une ligne ou une colonne de plus : chaque chiffre y figure une fois. La case où deux diagonales se croisent appartient à toutes deux, en plus d’une ligne, d’une colonne et d’un bloc : regardez-la d’abord ; puis cherchez le long d’une diagonale un chiffre qui n’a plus qu’une place.
# Where no grid of the book has boxes.
diagonals-primer--lines = Une diagonale marquée s’emploie comme une ligne ou une colonne de plus : chaque chiffre y figure une fois. La case où deux diagonales se croisent appartient à toutes deux, en plus d’une ligne et d’une colonne : regardez-la d’abord ; puis cherchez le long d’une diagonale un chiffre qui n’a plus qu’une place.

## Difference lines

difference-line-sentence = Le long { $n ->
    [1] du tracé à écarts
   *[other] de chaque tracé à écarts
}, deux chiffres voisins diffèrent d’au moins { $least }.
difference-line-spoken = Tracé à écarts : { $line }
difference-line-primer = Chaque pas le long d’un tracé en dents de scie est un saut d’au moins l’écart indiqué, en général 5. Dans une grille 9×9 avec 5, les chiffres du tracé sont tour à tour petits et grands : 5 n’y figure jamais, 4 seulement à côté de 9 et 6 seulement à côté de 1. Un 4 ou un 6 est donc à un bout, ou entre deux cases qui peuvent être égales.

## Disjoint groups

disjoint-groups-sentence = Les cases de même position dans leurs blocs, comme toutes celles en haut à gauche, contiennent une fois chaque chiffre.
disjoint-groups-primer = Prenez la case en haut à gauche de chaque bloc : ensemble, elles contiennent une fois chaque chiffre, et de même les cases de toute autre position dans les blocs. Un chiffre occupe donc une position différente dans chaque bloc. Quand vous l’avez placé dans quelques blocs, barrez ces positions dans les autres avant de regarder les lignes et les colonnes.

## Dots

dots-sentence-white = { $white ->
    [1] Le point blanc
   *[other] Un point blanc
} relie deux chiffres consécutifs{ $all ->
    [yes]  ; deux cases voisines sans point ne contiennent ni chiffres consécutifs, ni un chiffre et son double
   *[no] {""}
}.
dots-sentence-black = { $black ->
    [1] Le point noir
   *[other] Un point noir
} relie un chiffre et son double{ $all ->
    [yes]  ; deux cases voisines sans point ne contiennent ni chiffres consécutifs, ni un chiffre et son double
   *[no] {""}
}.
dots-sentence-both = { $white ->
    [1] Le point blanc
   *[other] Un point blanc
} relie deux chiffres consécutifs, { $black ->
    [1] le point noir
   *[other] un point noir
} un chiffre et son double (1 et 2 peuvent avoir l’un ou l’autre){ $all ->
    [yes]  ; deux cases voisines sans point ne contiennent ni chiffres consécutifs, ni un chiffre et son double
   *[no] {""}
}.
dots-sentence-none = Deux cases qui ont un côté commun ne contiennent jamais de chiffres consécutifs, ni un chiffre et son double.
dots-spoken-white = { $n ->
    [1] Point blanc
   *[other] Points blancs
} { $where }
dots-spoken-black = { $n ->
    [1] Point noir
   *[other] Points noirs
} { $where }
dots-primer = Un point blanc relie deux voisines aux chiffres consécutifs, un point noir un chiffre et son double ; 1 et 2 peuvent avoir l’un ou l’autre. Dans une grille 9×9, 5, 7 et 9 ne touchent jamais un point noir, et une file de points noirs suit 1, 2, 4 et 8, ou 3 et 6. Quand tous les points sont donnés, une frontière sans point est un indice aussi : ses chiffres ne sont ni consécutifs, ni doubles l’un de l’autre.

## Equal-part lines

equal-part-line-sentence = Sur { $n ->
    [1] le tracé à parts égales
   *[other] chaque tracé à parts égales
}, les chiffres de chaque tronçon compris dans { $home ->
    [box] un bloc
   *[region] une région
} ont la même somme.
equal-part-line-part = tronçon { $number }, { $line }
equal-part-line-spoken = Tracé à parts égales : { $parts }
equal-part-line-primer = Les bords des blocs découpent un tracé à parts égales en tronçons, et les chiffres de chaque tronçon ont la même somme ; un tracé qui revient dans un bloc y a deux tronçons. Un tronçon d’une seule case donne la somme d’emblée. S’il n’y en a pas, comparez le plus long tronçon au plus court : dans une grille 9×9, trois cases d’un bloc font au moins 6, deux cases au plus 17.

## Even-step lines

even-step-line-sentence = Le long { $n ->
    [1] du tracé à pas constant
   *[other] de chaque tracé à pas constant
}, { $step ->
    [none] tous les chiffres voisins diffèrent d’un même écart, { $n ->
        [1] à trouver
       *[other] à trouver pour chaque tracé
    }
   *[other] deux chiffres voisins diffèrent d’exactement { $step }
}.
even-step-line-spoken = Tracé à pas constant : { $line }
even-step-line-primer = Tous les pas le long d’un tracé clouté ont la même taille, vers le haut ou vers le bas, jamais zéro ; si elle n’est pas donnée, trouvez-la pour chaque tracé. Les grands pas manquent vite de place : avec un pas de 4 dans une grille 9×9, un tracé qui part de 1 ne contient que 1, 5 et 9 ; avec un pas de 5, les chiffres sont tour à tour petits et grands, et 5 n’y figure jamais. Trois cases successives qui partagent une ligne, une colonne ou un bloc montent deux fois ou descendent deux fois.
# Where no grid of the book has boxes.
even-step-line-primer--lines = Tous les pas le long d’un tracé clouté ont la même taille, vers le haut ou vers le bas, jamais zéro ; si elle n’est pas donnée, trouvez-la pour chaque tracé. Les grands pas manquent vite de place : avec un pas de 4 dans une grille 9×9, un tracé qui part de 1 ne contient que 1, 5 et 9 ; avec un pas de 5, les chiffres sont tour à tour petits et grands, et 5 n’y figure jamais. Trois cases successives qui partagent une ligne ou une colonne montent deux fois ou descendent deux fois.

## Extra regions

extra-region-sentence = { $full ->
    [yes] { $n ->
        [1] La région grisée contient une fois chaque chiffre
       *[other] Chaque région grisée contient une fois chaque chiffre
    }
   *[no] { $n ->
        [1] Aucun chiffre ne se répète dans la région grisée
       *[other] Aucun chiffre ne se répète dans une même région grisée
    }
}{ $pieces ->
    [yes] { $n ->
        [1]  ; tous ses morceaux portent la même lettre
       *[other]  ; les morceaux d’une même région portent la même lettre
    }
   *[no] {""}
}.
extra-region-spoken = { $letter ->
    [none] Région grisée : { $cells }
   *[other] Région grisée { $letter } : { $cells }
}
extra-region-primer = Une région grisée s’emploie comme un bloc de plus : aucun chiffre n’y figure deux fois. Si elle a autant de cases que la grille a de chiffres, elle les contient tous ; demandez-lui donc ce que vous demanderiez à une ligne : où ce chiffre peut-il encore aller ? Plus petite, elle demande seulement des chiffres différents. Commencez là où une région traverse un bloc presque plein.
# Where no grid of the book has boxes.
extra-region-primer--lines = Une région grisée s’emploie comme une ligne de plus : aucun chiffre n’y figure deux fois. Si elle a autant de cases que la grille a de chiffres, elle les contient tous ; demandez-lui donc ce que vous demanderiez à une ligne : où ce chiffre peut-il encore aller ? Plus petite, elle demande seulement des chiffres différents. Commencez là où une région traverse une ligne presque pleine.

## First-seen digits

first-seen-sentence = { $n ->
    [1] Le chiffre
   *[other] Chaque chiffre
} placé hors de la grille à côté { $seen ->
    [0] de petits carrés figure dans l’une des premières cases (autant de cases que de carrés)
    [1] d’un petit carré figure dans la première case
   *[other] de { $number } petits carrés figure dans l’une des { $number } premières cases
} de sa { $line ->
    [row] ligne
    [column] colonne
   *[both] ligne ou de sa colonne
} à partir de ce bord.
first-seen-spoken = { $n ->
    [1] Chiffre de tête
   *[other] Chiffres de tête
} { $side } : { $clues }
first-seen-side = { $n ->
    [1] { $side }, à côté d’un petit carré
   *[other] { $side }, à côté de { $number } petits carrés
}
first-seen-primer = Un chiffre hors d’une ligne ou d’une colonne figure dans l’une de ses premières cases à partir de ce bord, autant de cases qu’il y a de petits carrés à côté de lui ; s’il y a là plusieurs chiffres, tous y figurent, dans n’importe quel ordre. Dans une grille 9×9, trois carrés mettent le chiffre dans trois cases du bloc le plus proche : rayez-le du reste de la ligne et du bloc.
# Where no grid of the book has boxes.
first-seen-primer--lines = Un chiffre hors d’une ligne ou d’une colonne figure dans l’une de ses premières cases à partir de ce bord, autant de cases qu’il y a de petits carrés à côté de lui ; s’il y a là plusieurs chiffres, tous y figurent, dans n’importe quel ordre.

## Fortress cells

fortress-sentence = Chaque chiffre d’une case grisée, à l’intérieur des créneaux, est plus grand que ceux des cases non grisées qui ont un côté commun avec elle.
fortress-spoken = Forteresse : { $cells }
fortress-primer = Des cases grisées entourées de créneaux sont une forteresse : chacun de ses chiffres est plus grand que les chiffres du dehors qui le touchent par un côté. Deux cases grisées ne se comparent pas. Une case qui a des créneaux de deux côtés d’une même ligne ou d’une même colonne vaut au moins 3, et les petits chiffres d’une forteresse ne vont que là où peu de côtés donnent sur le dehors. Les cases entre deux forteresses sont petites.

## Frame products

frame-product-sentence = { $n ->
    [1] Le nombre
   *[other] Chaque nombre
} précédé d’un point hors de la grille est le produit { $line ->
    [row] des { $number } premiers chiffres de sa ligne
    [column] des { $number } premiers chiffres de sa colonne
    [unlike] des { $number } premiers chiffres de sa ligne, ou des { $other } premiers de sa colonne,
   *[both] des { $number } premiers chiffres de sa ligne ou de sa colonne
} à partir de ce bord.
frame-product-spoken = { $n ->
    [1] Produit de bord
   *[other] Produits de bord
} { $side } : { $clues }
frame-product-primer = Le nombre hors d’une ligne ou d’une colonne est le produit de ses chiffres les plus proches, en général, dans une grille 9×9, les trois du bloc le plus proche. Décomposez-le : un produit qui finit par 5 ou par 0 a un 5, un produit que 7 divise a un 7, et un produit que ni l’un ni l’autre ne divise exclut les deux. Un produit impair n’a que des chiffres impairs.
# Where no grid of the book has boxes.
frame-product-primer--lines = Le nombre hors d’une ligne ou d’une colonne est le produit de ses chiffres les plus proches, en général trois. Décomposez-le : un produit qui finit par 5 ou par 0 a un 5, un produit que 7 divise a un 7, et un produit que ni l’un ni l’autre ne divise exclut les deux. Un produit impair n’a que des chiffres impairs.

## Frame sums

frame-sum-sentence = { $n ->
    [1] Le nombre
   *[other] Chaque nombre
} précédé d’un petit + hors de la grille est la somme { $line ->
    [row] des { $number } premiers chiffres de sa ligne
    [column] des { $number } premiers chiffres de sa colonne
    [unlike] des { $number } premiers chiffres de sa ligne, ou des { $other } premiers de sa colonne,
   *[both] des { $number } premiers chiffres de sa ligne ou de sa colonne
} à partir de ce bord.
frame-sum-spoken = { $n ->
    [1] Somme de bord
   *[other] Sommes de bord
} { $side } : { $clues }
frame-sum-primer = Le nombre hors d’une ligne ou d’une colonne est la somme de ses chiffres les plus proches, en général, dans une grille 9×9, les trois du bloc le plus proche. Trois chiffres qui font 6 sont 1, 2 et 3, trois qui font 24 sont 7, 8 et 9. Un bloc totalise 45 : deux nombres qui regardent un bloc du même côté donnent donc le troisième ; et les nombres aux deux bouts d’une ligne donnent la somme de ce qui est entre eux.
# Where no grid of the book has boxes.
frame-sum-primer--lines = Le nombre hors d’une ligne ou d’une colonne est la somme de ses chiffres les plus proches, en général trois. Trois chiffres qui font 6 sont 1, 2 et 3, trois qui font 24 sont 7, 8 et 9.

## Hinge lines

hinge-line-sentence = Sur { $n ->
    [1] le tracé à charnière
   *[other] chaque tracé à charnière
}, la somme de deux cases à égale distance du milieu est toujours la même{ $middles ->
    [all] , à savoir le chiffre du milieu
    [some] , à savoir le chiffre de la case du milieu s’il y en a une
   *[none] {""}
}.
hinge-line-spoken = { COUNT($middle) ->
    [one] Tracé à charnière dont le milieu est en { $middle } : { $line }
   *[other] Tracé à charnière dont le milieu est entre { $middle } : { $line }
}
hinge-line-primer = Repliez un tracé à charnière en son milieu : deux cases qui tombent l’une sur l’autre ont toujours la même somme. Si le tracé a une case du milieu, un losange la marque et son chiffre est cette somme ; il est donc grand, et les autres petits. Sinon, cherchez la somme : une paire connue suffit.

## Inequalities

inequality-sentence = { $n ->
    [1] Le signe
   *[other] Chaque signe
} entre deux cases s’ouvre vers le plus grand chiffre.
inequality-row = Ligne { $number } : { $signs }
    .short = R{ $number } : { $signs }
inequality-row-sign = la colonne { $more } est plus grande que la colonne { $less }
    .short = la c{ $more } est plus grande que la c{ $less }
inequality-column = Colonne { $number } : { $signs }
    .short = C{ $number } : { $signs }
inequality-column-sign = la ligne { $more } est plus grande que la ligne { $less }
    .short = la r{ $more } est plus grande que la r{ $less }
inequality-primer = Un signe entre deux cases s’ouvre vers le plus grand chiffre et montre de sa pointe le plus petit. Des signes à la file font un escalier : en bas il n’y a de place que pour de petits chiffres, en haut que pour de grands. Commencez par les plus longs escaliers, et par les cases plus grandes, ou plus petites, que tout ce qui les entoure.

## King’s move

king-sentence = Deux cases qui se touchent par un coin contiennent des chiffres différents.
king-primer = Deux cases qui se touchent par un coin contiennent des chiffres différents, comme si chaque chiffre était un roi d’échecs qui ne souffre aucun sosie près de lui. À l’intérieur d’un bloc, cela n’ajoute rien ; la règle agit à travers les bords des blocs. Un chiffre voisin d’un bloc y exclut jusqu’à deux cases de plus.
# Where no grid of the book has boxes.
king-primer--lines = Deux cases qui se touchent par un coin contiennent des chiffres différents, comme si chaque chiffre était un roi d’échecs qui ne souffre aucun sosie près de lui.

## Knight’s move

knight-sentence = Deux cases distantes d’un saut de cavalier (deux pas le long d’une ligne ou d’une colonne, puis un de côté) contiennent des chiffres différents.
knight-primer = Deux cases entre lesquelles un cavalier d’échecs pourrait sauter, deux pas le long d’une ligne ou d’une colonne et un de côté, contiennent des chiffres différents. Au milieu de la grille, un chiffre atteint ainsi huit cases, la plupart hors de son bloc. Cherchez les blocs où un chiffre n’a plus que deux places, toutes deux à un saut de la même case.
# Where no grid of the book has boxes.
knight-primer--lines = Deux cases entre lesquelles un cavalier d’échecs pourrait sauter, deux pas le long d’une ligne ou d’une colonne et un de côté, contiennent des chiffres différents. Au milieu de la grille, un chiffre atteint ainsi huit cases. Cherchez les lignes où un chiffre n’a plus que deux places, toutes deux à un saut de la même case.

## Limits

limits-sentence-allowed = { $n ->
    [1] La case
   *[other] Une case
} qui porte de petits chiffres dans son coin contient l’un d’eux.
limits-sentence-forbidden = { $n ->
    [1] La case
   *[other] Une case
} qui porte de petits chiffres barrés dans son coin ne contient aucun d’eux.
limits-sentence-both = { $n ->
    [1] La case
   *[other] Une case
} qui porte de petits chiffres dans son coin contient l’un d’eux, ou aucun d’eux s’ils sont barrés.
limits-spoken-only = Seulement { $digits } : { $cells }
limits-spoken-not = Jamais { $digits } : { $cells }
limits-primer = De petits chiffres en bas à droite d’une case sont les seuls qu’elle peut contenir ; barrés, ce sont ceux qu’elle ne peut pas contenir. Notez les candidats avant de commencer. Quand une ligne, une colonne ou un bloc a autant de cases de même limite que cette limite a de chiffres, ces chiffres n’y vont nulle part ailleurs.
# Where no grid of the book has boxes.
limits-primer--lines = De petits chiffres en bas à droite d’une case sont les seuls qu’elle peut contenir ; barrés, ce sont ceux qu’elle ne peut pas contenir. Notez les candidats avant de commencer. Quand une ligne ou une colonne a autant de cases de même limite que cette limite a de chiffres, ces chiffres n’y vont nulle part ailleurs.

## Low-high lines

low-high-line-sentence = Le long { $n ->
    [1] du tracé bas-haut
   *[other] de chaque tracé bas-haut
}, les chiffres bas (de { $least } à { $low }) et hauts (de { $high } à { $most }) alternent{ $middle ->
    [none] .
   *[other]  ; le { $middle } n’y figure pas.
}
low-high-line-spoken = Tracé bas-haut : { $line }
low-high-line-primer = Le long d’un tracé crénelé, les chiffres bas et hauts alternent ; il peut commencer par les uns ou par les autres. Dans une grille 9×9, les bas vont de 1 à 4, les hauts de 6 à 9, et 5 ne figure jamais sur un tel tracé. Un seul chiffre connu dit quelles cases sont basses. Quatre cases basses dans une même ligne, une même colonne ou un même bloc prennent tous les chiffres bas.
# Where no grid of the book has boxes.
low-high-line-primer--lines = Le long d’un tracé crénelé, les chiffres bas et hauts alternent ; il peut commencer par les uns ou par les autres. Dans une grille 9×9, les bas vont de 1 à 4, les hauts de 6 à 9, et 5 ne figure jamais sur un tel tracé. Un seul chiffre connu dit quelles cases sont basses. Quatre cases basses dans une même ligne ou une même colonne prennent tous les chiffres bas.

## No doubles

no-doubles-sentence = Deux cases qui { $touching ->
    [corners] se touchent, par un côté ou par un coin, ne contiennent jamais un chiffre et son double.
   *[sides] ont un côté commun ne contiennent jamais un chiffre et son double.
}
no-doubles-zero = Comme 0 est son propre double, deux 0 ne se touchent jamais.
no-doubles-primer = Deux cases qui ont un côté commun ne contiennent jamais un chiffre et son double : à côté d’un 4, il n’y a ni 2 ni 8. Dans une grille 9×9, 5, 7 et 9 peuvent être à côté de n’importe quel chiffre ; ce sont 1, 2, 4 et 8, ainsi que 3 et 6, qui doivent s’éviter. Une case à côté de toutes les places d’un 4 dans une ligne n’est ni 2 ni 8.

## Non-consecutive

non-consecutive-sentence = Deux cases qui { $touching ->
    [corners] se touchent, par un côté ou par un coin, ne contiennent jamais de chiffres consécutifs.
   *[sides] ont un côté commun ne contiennent jamais de chiffres consécutifs.
}
non-consecutive-primer = Deux cases qui ont un côté commun ne contiennent jamais de chiffres consécutifs : à côté d’un 5, il n’y a ni 4 ni 6. Chaque chiffre que vous écrivez en exclut donc deux dans chacune de ses voisines. Quand un chiffre n’a plus que deux places dans une ligne, séparées par une seule case, celle-ci ne contient ni le chiffre précédent ni le chiffre suivant.

## Numbered rooms

numbered-room-sentence = { $n ->
    [1] Le chiffre
   *[other] Chaque chiffre
} inscrit dans une porte hors de la grille va dans la n-ième case de sa { $line ->
    [row] ligne
    [column] colonne
   *[both] ligne ou de sa colonne
} à partir de ce bord, n étant le premier chiffre qu’on y trouve.
numbered-room-zero = Le chiffre n n’est jamais 0.
numbered-room-spoken = { $n ->
    [1] Chambre numérotée
   *[other] Chambres numérotées
} { $side } : { $clues }
numbered-room-primer = Le chiffre le plus proche de la porte est le numéro d’une chambre : avec un 4 en tête, le chiffre de la porte va dans la quatrième case à partir de ce bord. Seul un 1 dans la porte peut avoir un 1 en tête, et aucun numéro ne mène à une chambre déjà occupée. Commencez là où le chiffre de la porte n’a que peu de places dans sa ligne ou sa colonne, car chacune d’elles demande en tête un chiffre précis.

## Open cages

open-cage-sentence = Dans { $n ->
    [1] la cage ouverte
   *[other] chaque cage ouverte
}, les chiffres sont tous différents{ $parities ->
    [even] { $alone ->
        [yes]  ; leur total est pair
       *[no]  ; leur total est pair s’il y a un carré
    }
    [odd] { $alone ->
        [yes]  ; leur total est impair
       *[no]  ; leur total est impair s’il y a un cercle
    }
    [both]  ; leur total est pair s’il y a un carré, impair s’il y a un cercle
   *[none] {""}
}{ $letters ->
    [yes]  ; les cages de même lettre ont le même total
   *[no] {""}
}.
open-cage-spoken = { $value ->
    [even] Cage ouverte de total pair : { $cells }
    [odd] Cage ouverte de total impair : { $cells }
   *[other] Cage ouverte de total { $value } : { $cells }
}
open-cage-primer = Les chiffres d’une cage ouverte sont tous différents, mais leur total n’est pas donné. Un petit carré dans le coin dit qu’il est pair, un petit cercle qu’il est impair : quand il ne reste qu’une case à remplir, son chiffre est forcément pair ou forcément impair. Les cages de même lettre ont le même total : une petite cage qui égale une grande a de grands chiffres, et la grande de petits.

## Palindromes

palindrome-sentence = Les chiffres { $n ->
    [1] du palindrome
   *[other] de chaque palindrome
} se lisent de la même façon à partir des deux bouts.
palindrome-spoken = Palindrome : { $line }
palindrome-primer = Un palindrome se lit de la même façon à partir des deux bouts : sa première et sa dernière case sont égales, la deuxième et l’avant-dernière aussi, et une case du milieu est libre. Un chiffre exclu d’une case d’une telle paire l’est aussi de l’autre ; chaque paire agit donc à la fois dans deux lignes, deux colonnes et deux blocs.
# Where no grid of the book has boxes.
palindrome-primer--lines = Un palindrome se lit de la même façon à partir des deux bouts : sa première et sa dernière case sont égales, la deuxième et l’avant-dernière aussi, et une case du milieu est libre. Un chiffre exclu d’une case d’une telle paire l’est aussi de l’autre ; chaque paire agit donc à la fois dans deux lignes et deux colonnes.

## Even and odd

parity-sentence-even = { $even ->
    [1] La case
   *[other] Chaque case
} marquée d’un carré contient un chiffre pair.
parity-sentence-odd = { $odd ->
    [1] La case
   *[other] Chaque case
} marquée d’un cercle contient un chiffre impair.
parity-sentence-both = { $even ->
    [1] La case
   *[other] Chaque case
} marquée d’un carré contient un chiffre pair, { $odd ->
    [1] la case
   *[other] chaque case
} marquée d’un cercle un chiffre impair.
parity-spoken-even = { $n ->
    [1] Chiffre pair, avec un carré : { $cells }
   *[other] Chiffres pairs, chacun avec un carré : { $cells }
}
parity-spoken-odd = { $n ->
    [1] Chiffre impair, avec un cercle : { $cells }
   *[other] Chiffres impairs, chacun avec un cercle : { $cells }
}
parity-primer = Un carré marque un chiffre pair, un cercle un chiffre impair ; une case sans marque peut être l’un ou l’autre. Dans une grille 9×9, chaque ligne, chaque colonne et chaque bloc a quatre chiffres pairs et cinq impairs : comptez donc, et dès qu’on sait que quatre cases d’une ligne sont paires, toutes les autres sont impaires.
# Where no grid of the book has boxes.
parity-primer--lines = Un carré marque un chiffre pair, un cercle un chiffre impair ; une case sans marque peut être l’un ou l’autre. Dans une grille 9×9, chaque ligne et chaque colonne a quatre chiffres pairs et cinq impairs : comptez donc, et dès qu’on sait que quatre cases d’une ligne sont paires, toutes les autres sont impaires.

## Parity lines

parity-line-sentence = Le long { $n ->
    [1] du tracé de parité
   *[other] de chaque tracé de parité
}, les chiffres pairs et impairs alternent.
parity-line-spoken = Tracé de parité : { $line }
parity-line-primer = Le long d’un tracé qui porte des cercles et des carrés entre ses cases, les chiffres impairs et pairs alternent ; il peut commencer par les uns ou par les autres. Un seul chiffre connu dit quelles cases sont impaires. Comptez là où il suit une ligne ou traverse un bloc : dans une grille 9×9, il y a quatre chiffres pairs, et un tracé le long d’une ligne entière commence et finit donc par un impair.
# Where no grid of the book has boxes.
parity-line-primer--lines = Le long d’un tracé qui porte des cercles et des carrés entre ses cases, les chiffres impairs et pairs alternent ; il peut commencer par les uns ou par les autres. Un seul chiffre connu dit quelles cases sont impaires. Comptez là où il suit une ligne : dans une grille 9×9, il y a quatre chiffres pairs, et un tracé le long d’une ligne entière commence et finit donc par un impair.

## Parity runs

parity-run-sentence = { $n ->
    [1] Le nombre
   *[other] Chaque nombre
} précédé d’un petit = hors de la grille dit combien de chiffres de sa { $line ->
    [row] ligne
    [column] colonne
   *[both] ligne ou de sa colonne
}, à partir de ce bord, sont tous pairs ou tous impairs avant que la parité change.
parity-run-spoken = { $n ->
    [1] Série de parité
   *[other] Séries de parité
} { $side } : { $clues }
parity-run-primer = Regardez le long de la ligne ou de la colonne depuis le nombre : autant de chiffres sont pairs, ou autant sont impairs, et le suivant est de l’autre sorte. Dans une grille 9×9, une ligne a cinq chiffres impairs et quatre pairs ; une série de 5 est donc impaire. Dès qu’on sait qu’un chiffre d’une série est pair ou impair, tous le sont, et celui qui suit ne l’est pas.

## Peaks and hollows

peaks-sentence-greater = { $greater ->
    [1] La case
   *[other] Chaque case
} marquée d’un toit contient un chiffre plus grand que toutes les cases qui ont un côté commun avec elle.
peaks-sentence-smaller = { $smaller ->
    [1] La case
   *[other] Chaque case
} marquée d’une cuvette contient un chiffre plus petit que toutes les cases qui ont un côté commun avec elle.
peaks-sentence-both = { $greater ->
    [1] La case
   *[other] Chaque case
} marquée d’un toit contient un chiffre plus grand que toutes les cases qui ont un côté commun avec elle, { $smaller ->
    [1] la case
   *[other] chaque case
} marquée d’une cuvette un chiffre plus petit.
peaks-spoken-greater = { $n ->
    [1] Pic, avec un toit : { $cells }
   *[other] Pics, chacun avec un toit : { $cells }
}
peaks-spoken-smaller = { $n ->
    [1] Creux, avec une cuvette : { $cells }
   *[other] Creux, chacun avec une cuvette : { $cells }
}
peaks-primer = Un petit toit sur un chiffre veut dire qu’il est plus grand que les chiffres à côté, au-dessus et au-dessous de lui ; une cuvette sous un chiffre, qu’il est plus petit. Ses deux voisins dans la ligne sont différents : loin du bord, un chiffre sous un toit vaut donc au moins 3, et d’ordinaire bien davantage.

## Pointing cells

pointing-sentence = { $n ->
    [1] Le chiffre
   *[other] Chaque chiffre
} d’une case à flèche dit à combien de cases dans le sens de la flèche se trouve le { $digit }, la case voisine étant la première.
pointing-zero = Une case à flèche ne contient jamais 0.
pointing-spoken = { $n ->
    [1] Flèche
   *[other] Flèches
} { $way ->
    [left] vers la gauche : { $cells }
    [right] vers la droite : { $cells }
    [up] vers le haut : { $cells }
   *[down] vers le bas : { $cells }
}
pointing-primer = Une petite flèche noire dans une case montre une direction dans sa ligne ou sa colonne, et le chiffre de la case compte les pas de là jusqu’à un chiffre que cite la règle, par exemple 9 : avec 3 dans la case, le 9 est trois pas plus loin. La case n’est donc jamais ce chiffre-là, ni plus grande que le nombre de cases devant elle, et ce chiffre n’est nulle part derrière. Deux flèches qui visent chacune la ligne ou la colonne de l’autre ne laissent souvent qu’une façon de compter.

## Corner quadruples

quadruple-sentence = { $several ->
    [yes] Les chiffres { $n ->
        [1] de l’anneau
       *[other] de chaque anneau
    } figurent dans les quatre cases qui l’entourent
   *[no] Le chiffre { $n ->
        [1] de l’anneau
       *[other] de chaque anneau
    } figure dans l’une des quatre cases qui l’entourent
}{ $repeats ->
    [yes] , chacun au moins autant de fois qu’il y est écrit
   *[no] {""}
}.
quadruple-spoken = Anneau { $digits } au coin commun : { $cells }
quadruple-primer = Les petits chiffres d’un anneau sont quelque part dans les quatre cases autour de ce coin, chacun au moins autant de fois qu’il est écrit ; d’autres chiffres peuvent s’y trouver aussi s’il y a de la place. Un anneau de quatre chiffres n’en laisse pas : chacune de ses cases contient l’un d’eux. Un chiffre écrit deux fois est dans deux cases opposées en diagonale.

## Resting thermometers

resting-thermometer-sentence = Le long { $n ->
    [1] du thermomètre à paliers
   *[other] de chaque thermomètre à paliers
}, de la boule à la pointe, les chiffres ne diminuent jamais : ils augmentent ou restent égaux.
resting-thermometer-spoken = Thermomètre à paliers, à partir de la boule : { $line }
resting-thermometer-primer = Un thermomètre à paliers est dessiné comme un tube vide. De sa boule cerclée à la pointe, les chiffres augmentent ou restent égaux : chacun vaut au moins autant que le précédent. Deux de ses cases dans une même ligne, une même colonne ou un même bloc ne peuvent pas être égales, et là les chiffres augmentent vraiment : comptez ces pas pour savoir combien la pointe est haute et la boule basse.
# Where no grid of the book has boxes.
resting-thermometer-primer--lines = Un thermomètre à paliers est dessiné comme un tube vide. De sa boule cerclée à la pointe, les chiffres augmentent ou restent égaux : chacun vaut au moins autant que le précédent. Deux de ses cases dans une même ligne ou une même colonne ne peuvent pas être égales, et là les chiffres augmentent vraiment : comptez ces pas pour savoir combien la pointe est haute et la boule basse.

## Rising or falling

rise-or-fall-sentence-none = À partir d’un bord, les { $number } premiers chiffres d’une ligne ou d’une colonne ne sont jamais dans l’ordre croissant ni dans l’ordre décroissant.
rise-or-fall-sentence-rise = Là où { $number } barres hors de la grille grandissent vers elle, les { $number } premiers chiffres de cette { $line ->
    [row] ligne
    [column] colonne
   *[both] ligne ou de cette colonne
} sont dans l’ordre croissant à partir de ce bord{ $all ->
    [yes]  ; à partir d’un bord sans barres, les { $number } premiers chiffres d’une ligne ou d’une colonne ne sont ni dans l’ordre croissant ni dans l’ordre décroissant
   *[no] {""}
}.
rise-or-fall-sentence-fall = Là où { $number } barres hors de la grille rapetissent vers elle, les { $number } premiers chiffres de cette { $line ->
    [row] ligne
    [column] colonne
   *[both] ligne ou de cette colonne
} sont dans l’ordre décroissant à partir de ce bord{ $all ->
    [yes]  ; à partir d’un bord sans barres, les { $number } premiers chiffres d’une ligne ou d’une colonne ne sont ni dans l’ordre croissant ni dans l’ordre décroissant
   *[no] {""}
}.
rise-or-fall-sentence-both = Là où { $number } barres hors de la grille grandissent vers elle, les { $number } premiers chiffres de cette { $line ->
    [row] ligne
    [column] colonne
   *[both] ligne ou de cette colonne
} sont dans l’ordre croissant à partir de ce bord ; là où elles rapetissent, dans l’ordre décroissant{ $all ->
    [yes]  ; à partir d’un bord sans barres, les { $number } premiers chiffres d’une ligne ou d’une colonne ne sont ni dans l’ordre croissant ni dans l’ordre décroissant
   *[no] {""}
}.
rise-or-fall-spoken = { $n ->
    [1] Pente
   *[other] Pentes
} { $side } : { $clues }
rise-or-fall-rises = des barres montantes
rise-or-fall-falls = des barres descendantes
rise-or-fall-primer = Des barres qui grandissent vers la grille veulent dire que les trois chiffres les plus proches sont croissants à partir de ce bord ; des barres qui rapetissent, qu’ils sont décroissants. Plus le chiffre est grand, plus la barre est longue. De trois chiffres croissants, dans une grille 9×9, le premier vaut au plus 7 et le dernier au moins 3 ; deux montées qui partagent une case d’angle la tirent ensemble vers le bas. Quand toutes les barres sont données, un bord qui n’en a pas est un tournant : de ses trois chiffres, celui du milieu est le plus grand ou le plus petit.

## Rising runs

rising-run-sentence = { $n ->
    [1] Le nombre
   *[other] Chaque nombre
} précédé de petites marches hors de la grille dit combien de chiffres de sa { $line ->
    [row] ligne
    [column] colonne
   *[both] ligne ou de sa colonne
} se suivent en ordre croissant à partir de ce bord, celui du bord compris, avant le premier qui diminue.
rising-run-spoken = { $n ->
    [1] Série croissante
   *[other] Séries croissantes
} { $side } : { $clues }
rising-run-primer = Regardez le long de la ligne ou de la colonne depuis le nombre : il dit combien de chiffres augmentent à la file, à compter du plus proche. Après 3, les trois premiers chiffres sont croissants et le quatrième est plus petit que le troisième ; après 1, le deuxième est déjà plus petit que le premier. Les longues séries éloignent du bord les grands chiffres, et le dernier chiffre d’une série est plus grand que ses voisins des deux côtés.

## Same-sum lines

same-sum-line-sentence = Le long { $n ->
    [1] du tracé à somme constante
   *[other] de chaque tracé à somme constante
}, la somme de { $number } cases successives est toujours la même.
same-sum-line-spoken = Tracé à somme constante : { $line }
same-sum-line-primer = Le long d’un tracé en voie ferrée, des cases successives, par groupes de trois si la règle ne dit rien d’autre, ont toujours la même somme. Avancez d’une case : un chiffre sort de la somme, un autre y entre, et les deux sont donc égaux. Ainsi la première, la quatrième et la septième case contiennent un même chiffre, la deuxième et la cinquième un autre ; ce qui est exclu de l’une est exclu de toutes.

## Sandwich sums

sandwich-sentence = { $n ->
    [1] Le nombre
   *[other] Chaque nombre
} entre deux barres hors de la grille est la somme des chiffres placés entre le plus petit et le plus grand chiffre de sa { $line ->
    [row] ligne
    [column] colonne
   *[both] ligne ou de sa colonne
}.
sandwich-spoken = { $n ->
    [1] Somme sandwich
   *[other] Sommes sandwich
} { $side } : { $clues }
sandwich-primer = Le nombre hors d’une ligne ou d’une colonne est la somme des chiffres placés entre son plus petit et son plus grand chiffre ; dans une grille 9×9, ces deux tranches sont 1 et 9, dans un ordre ou dans l’autre. Une somme de 0 veut dire qu’elles sont côte à côte, une somme de 35 qu’elles sont aux deux bouts. Demandez-vous d’abord combien de chiffres peuvent faire la somme, car c’est là la distance entre les tranches.

## Skyscrapers

skyscraper-sentence = { $n ->
    [1] Le nombre
   *[other] Chaque nombre
} inscrit dans une maison hors de la grille dit combien de chiffres de sa { $line ->
    [row] ligne
    [column] colonne
   *[both] ligne ou de sa colonne
} sont visibles depuis ce bord, un chiffre plus haut cachant tous les plus bas derrière lui.
skyscraper-spoken = { $n ->
    [1] Nombre de gratte-ciel
   *[other] Nombres de gratte-ciel
} { $side } : { $clues }
skyscraper-primer = Voyez dans chaque chiffre un immeuble d’autant d’étages et regardez le long de la ligne ou de la colonne depuis le nombre : il dit combien d’immeubles se voient, car un immeuble plus haut cache tous les plus bas derrière lui. D’un 1, on ne voit que le plus haut, qui est donc juste devant ; d’un 9 dans une grille 9×9, on les voit tous, et ils sont donc croissants. Commencez par les plus grands nombres, qui éloignent les grands chiffres, et cherchez la place du plus haut.

## Square blocks

square-block-sentence-magic = Dans { $n ->
    [1] le carré encadré
   *[other] chaque carré encadré
}, les lignes, les colonnes et les deux diagonales ont la même somme ; un chiffre peut s’y répéter.
square-block-sentence-rows = Dans { $n ->
    [1] le carré encadré
   *[other] chaque carré encadré
}, toutes les lignes ont la même somme ; un chiffre peut s’y répéter.
square-block-sentence-columns = Dans { $n ->
    [1] le carré encadré
   *[other] chaque carré encadré
}, toutes les colonnes ont la même somme ; un chiffre peut s’y répéter.
square-block-sentence = Dans { $n ->
    [1] le carré encadré
   *[other] chaque carré encadré
}, des alignements ont la même somme : { $lines } ; un chiffre peut s’y répéter.
square-block-lines-magic = les lignes, les colonnes et les diagonales s’il y a une étoile
square-block-lines-rows = les lignes s’il y a des barres horizontales
square-block-lines-columns = les colonnes s’il y a des barres verticales
square-block-spoken-magic = Carré magique : { $cells }
square-block-spoken-rows = Carré à lignes égales : { $cells }
square-block-spoken-columns = Carré à colonnes égales : { $cells }
square-block-primer = Un double trait encadre un carré, et un signe dit lesquels de ses alignements ont la même somme : des barres horizontales les lignes, des barres verticales les colonnes, une étoile les lignes, les colonnes et les deux diagonales. Un chiffre peut se répéter là où les lignes, les colonnes et les blocs le permettent. La somme d’un carré à étoile vaut trois fois le chiffre de son centre. Si le carré est tout un bloc d’une grille 9×9, trois lignes égales font 15 chacune.
# Where no grid of the book has boxes.
square-block-primer--lines = Un double trait encadre un carré, et un signe dit lesquels de ses alignements ont la même somme : des barres horizontales les lignes, des barres verticales les colonnes, une étoile les lignes, les colonnes et les deux diagonales. Un chiffre peut se répéter là où les lignes et les colonnes le permettent. La somme d’un carré à étoile vaut trois fois le chiffre de son centre.

## Sum marks

sum-marks-sentence-five = { $five ->
    [1] Le V
   *[other] Un V
} relie deux chiffres de somme 5{ $all ->
    [yes]  ; deux cases voisines sans marque n’ont pour somme ni 5 ni 10
   *[no] {""}
}.
sum-marks-sentence-ten = { $ten ->
    [1] Le X
   *[other] Un X
} relie deux chiffres de somme 10{ $all ->
    [yes]  ; deux cases voisines sans marque n’ont pour somme ni 5 ni 10
   *[no] {""}
}.
sum-marks-sentence-both = { $five ->
    [1] Le V
   *[other] Un V
} relie deux chiffres de somme 5, { $ten ->
    [1] le X
   *[other] un X
} deux chiffres de somme 10{ $all ->
    [yes]  ; deux cases voisines sans marque n’ont pour somme ni 5 ni 10
   *[no] {""}
}.
sum-marks-sentence-none = Deux cases qui ont un côté commun n’ont jamais pour somme 5 ni 10.
sum-marks-spoken-five = { $n ->
    [1] Lettre V
   *[other] Lettres V
} { $where }
sum-marks-spoken-ten = { $n ->
    [1] Lettre X
   *[other] Lettres X
} { $where }
sum-marks-primer = Comme en chiffres romains, V vaut 5 et X vaut 10 : c’est la somme des deux chiffres de part et d’autre de la lettre. Un V relie 1 et 4 ou 2 et 3, et aucun chiffre supérieur à 4 ne le touche ; 5 ne touche jamais un X, car il lui faudrait un second 5 pour voisin. Quand toutes les marques sont données, une frontière sans lettre est un indice aussi : la somme de ses chiffres n’est ni 5 ni 10.

## Thermometers

thermometer-sentence = Le long { $n ->
    [1] du thermomètre
   *[other] de chaque thermomètre
}, les chiffres augmentent de la boule à la pointe.
thermometer-spoken = Thermomètre, à partir de la boule : { $line }
thermometer-primer = Les chiffres augmentent à chaque pas, de la boule ronde à la pointe ; ils peuvent en sauter. Un long thermomètre laisse peu de place : dans une grille 9×9, la troisième case sur six vaut au moins 3 et au plus 6. Commencez par les plus longs, et par ceux qui croisent une ligne ou un bloc où de grands ou de petits chiffres sont déjà placés.
# Where no grid of the book has boxes.
thermometer-primer--lines = Les chiffres augmentent à chaque pas, de la boule ronde à la pointe ; ils peuvent en sauter. Un long thermomètre laisse peu de place : dans une grille 9×9, la troisième case sur six vaut au moins 3 et au plus 6. Commencez par les plus longs, et par ceux qui croisent une ligne où de grands ou de petits chiffres sont déjà placés.

## Windows

windows-sentence = Chaque fenêtre grisée contient une fois chaque chiffre.
windows-spoken = Fenêtre : { $cells }
windows-primer = Les fenêtres grisées sont des blocs de plus, à une case du bord et à une case l’une de l’autre : chacune contient une fois chaque chiffre. Les lignes 2 à 4 contiennent trois fois chaque chiffre, et leurs deux fenêtres en prennent deux ; les neuf cases à côté des fenêtres contiennent donc aussi une fois chaque chiffre. Cinq groupes cachés de neuf cases se trouvent ainsi entre et autour des fenêtres d’une grille 9×9 ; c’est par là que la grille s’ouvre.

## X-sums

x-sum-sentence = { $n ->
    [1] Le nombre
   *[other] Chaque nombre
} précédé d’un petit × hors de la grille est la somme des X premiers chiffres de sa { $line ->
    [row] ligne
    [column] colonne
   *[both] ligne ou de sa colonne
} à partir de ce bord, X étant le premier d’entre eux.
x-sum-zero = Si X vaut 0, la somme est 0.
x-sum-spoken = { $n ->
    [1] Somme X
   *[other] Sommes X
} { $side } : { $clues }
x-sum-primer = Le chiffre le plus proche du nombre, X, dit combien de chiffres additionner, lui compris : 3, 8 et 1 en tête font 12, quelle que soit la suite. Les petites sommes demandent un petit X ; 45 demande 9. Demandez-vous d’abord quel X peut atteindre la somme : dans une grille 9×9, 10 demande 2, 3 ou 4 en tête.

## Latin squares

latin-primer = Dans un carré latin, seules comptent les lignes et les colonnes : chacune contient une fois chaque chiffre, et la grille ne demande rien d’autre. Chaque chiffre figure donc une fois dans chaque ligne, et jamais deux fois dans une même colonne. Quand un chiffre manque dans deux lignes et n’y a de places que dans les deux mêmes colonnes, il ne va nulle part ailleurs dans ces colonnes. Voyez ensuite ce qu’ajoutent les marques.
zero-primer = Dans une grille dont les chiffres commencent à 0, chaque règle vaut telle qu’elle est énoncée, et un 0 n’ajoute rien à un total. Les exemples de ces pages valent pour des chiffres à partir de 1 ; leurs nombres changent donc : une ligne de neuf cases qui contient les chiffres de 0 à 8 totalise 36 et non 45 ; elle a cinq chiffres pairs et quatre impairs ; deux cases qui font 3 contiennent 0 et 3, ou 1 et 2.
overlap-primer = Plusieurs grilles forment un seul problème : chacune suit ses propres règles et, là où deux se chevauchent, un même chiffre compte pour les deux. Commencez là où les chiffres donnés sont les plus serrés et restez dans une grille tant qu’elle avance ; reportez ensuite dans la suivante ce que vous avez trouvé dans les blocs communs. Un bloc que deux grilles partagent est souvent la clé des deux : ses chiffres doivent convenir aux lignes et aux colonnes de l’une et de l’autre.
holes-primer = Une case noire ne contient aucun chiffre et n’appartient à aucune ligne ni colonne. Dans les autres cases, chaque ligne et chaque colonne contient toujours une fois chaque chiffre ; un chiffre qui n’y a plus que peu de places est donc vite trouvé. Les chiffres placés de part et d’autre d’une case noire se voient le long de la ligne ou de la colonne, mais ne se touchent pas.
