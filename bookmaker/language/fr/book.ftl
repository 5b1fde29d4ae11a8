### The book’s own words: headings, the page on how to read it, what stands around puzzles, keys and hints.

## Headings

heading-contents = Sommaire
heading-foreword = Avant-propos
heading-guide = Mode d’emploi
heading-text-guide = Mode d’emploi de cette édition
heading-primer = Les règles, une par une
heading-hints = Indices
heading-glossary = Le vocabulaire des indices
heading-times = Temps
heading-keys = Solutions
heading-answer-key = Solutions
heading-credits = Crédits
heading-index = Index
heading-imprint = Mentions légales
heading-notes = Notes
heading-latin = Carrés latins
heading-zero = Chiffres à partir de 0
heading-by-setter = Par auteur
heading-by-rule = Par règle
titled = { $title } : { $what }
chapter-titled = Chapitre { $number } : { $title }

## The five bands of difficulty, gentlest first

band-1 = Flânerie
band-2 = Balade
band-3 = Randonnée
band-4 = Ascension
band-5 = Sommet

## How to read the book

cell-names = Une case se désigne par sa ligne (r, comme rangée) et sa colonne (c) : r5c2 est dans la ligne 5, colonne 2.
houses-explained = On appelle unité une ligne, une colonne{ $areas ->
    [boxes] , un bloc
    [regions] , une région
    [both] , un bloc ou une région
   *[none] {""}
}, ou tout autre groupe de cases où aucun chiffre ne se répète.
guide-ridge = À côté de chaque titre, une crête de cinq pics indique la difficulté de la grille. Elle se remplit depuis la gauche, pic après pic, du niveau { $first } au niveau { $last }. Le nombre qui l’accompagne est la difficulté : le chiffre avant la virgule compte les pics, le chiffre après la virgule dit si le pic suivant est proche.
guide-order-difficulty = Les grilles se suivent par difficulté croissante.
guide-order-listed = Les grilles se suivent dans l’ordre choisi par l’éditeur.
guide-order-chapters = Les grilles sont réunies en chapitres, chacun par difficulté croissante.
guide-rules = Les règles données avec une grille sont complètes et s’appliquent toutes à la fois. Chaque sorte de marque est dessinée une seconde fois à côté de la phrase qui l’explique. Les grilles sont faites pour le crayon : on peut écrire par-dessus toutes les marques.
# Rules that all puzzles of a chapter share are said where it opens.
guide-rules-shared = Les règles données avec une grille et à l’ouverture de son chapitre sont complètes et s’appliquent toutes à la fois. Chaque sorte de marque est dessinée une seconde fois à côté de la phrase qui l’explique. Les grilles sont faites pour le crayon : on peut écrire par-dessus toutes les marques.
guide-large = Dans les plus grandes grilles, des lettres suivent le chiffre 9 : A vaut 10, B vaut 11 et ainsi de suite. I et O n’y figurent pas, car elles ressemblent à 1 et à 0.
guide-proved = Chaque grille a une solution et une seule : une recherche exhaustive l’a vérifié avant l’impression, puis la solution a été confrontée aux règles.
guide-draft = Ceci est une épreuve : certaines grilles peuvent n’avoir aucune solution, ou en avoir plusieurs.
guide-hints = En cas de blocage, consultez les trois indices de la grille, placés avant les solutions : où regarder, que chercher, et l’étape suivante.
guide-hints-in-pad = En cas de blocage, consultez les trois indices de la grille, placés après la dernière feuille : où regarder, que chercher, et l’étape suivante.
guide-keys = Les solutions sont à la fin ; les chiffres donnés y sont en gras.
guide-keys-in-pad = Les solutions sont au dos des feuilles ; les chiffres donnés y sont en gras.
guide-profile = La courbe sous chaque solution retrace la résolution : elle monte quand une étape demande plus de recherche, et des pointes de flèche marquent les passages difficiles.
guide-credits = Après les solutions viennent les crédits : première parution des grilles et autorisations.
guide-credits-in-pad = À la fin viennent les crédits : première parution des grilles et autorisations.
guide-text-marks = Les lignes sont numérotées de haut en bas, les colonnes de gauche à droite ; « vide » est une case à remplir. Quand des lignes et des colonnes sont nommées ensemble, il s’agit de toutes les cases où elles se croisent ; les cases d’un tracé sont nommées dans son ordre, si bien que ses colonnes ou ses lignes peuvent aller à rebours.
guide-text-below = Sous chaque règle viennent ses marques.
guide-text-pictured = Sous son image, chaque grille est décrite une seconde fois, en mots et sous forme de tableau, à déplier.
guide-text-bands = Le niveau d’une grille, de { $first } à { $last }, dit à quel point elle est difficile. Sa difficulté est un nombre : le chiffre avant la virgule compte les niveaux, le chiffre après la virgule dit si le suivant est proche.

## What a grid asks

grid-asks = Remplissez la grille de sorte que { $houses ->
    [lines] chaque ligne et chaque colonne contiennent
    [boxes] chaque ligne, chaque colonne et chaque bloc contiennent
   *[regions] chaque ligne, chaque colonne et chaque région entourée contiennent
} une fois et une seule { $symbols }.
# The same where several grids overlap.
grids-ask = Remplissez toutes les grilles de sorte que, dans chacune, chaque ligne, chaque colonne et chaque bloc contiennent une fois et une seule { $symbols }. Une case commune à plusieurs grilles compte dans chacune d’elles.
holes-stand = Les cases noires restent vides.
# “1 to 9”, kept on one line.
symbols-digits = les chiffres de { $low } à { $high }
symbols-and-letter = les chiffres de { $low } à { $high } et la lettre { $last }
symbols-and-two-letters = les chiffres de { $low } à { $high } et les lettres { $first } et { $last }
symbols-and-letters = les chiffres de { $low } à { $high } et les lettres de { $first } à { $last }
symbols-and-letters-without = les chiffres de { $low } à { $high } et les lettres de { $first } à { $last } sans { $without }
symbols-letters = les lettres { $letters }
letters-stand = Ici, des lettres remplacent les chiffres.
row-spells = la ligne { $number } donne { $word }
    .short = la r{ $number } donne { $word }
column-spells = la colonne { $number } donne { $word }
    .short = la c{ $number } donne { $word }
cells-spell = les cases de { $first } à { $last } donnent { $word }
boxes-have = Les blocs ont { $high } et { $wide }.
rows-counted = { $n ->
    [1] une ligne
   *[other] { $number } lignes
}
columns-counted = { $n ->
    [1] une colonne
   *[other] { $number } colonnes
}
region-at = Région { $number } : { $cells }
# Where one of several overlapping grids lies.
grid-at = grille { $grid } : lignes { $top } à { $bottom }, colonnes { $left } à { $right }
    .short = grille { $grid } : r{ $top }-{ $bottom }, c{ $left }-{ $right }
grid-boxes = Classique
grid-regions = Régions irrégulières
grid-lines = Carré latin
grids-overlap = Grilles qui se chevauchent
grid-holes = Cases noires
latin-with = Carré latin avec { $rules }
rule-titled = { $title }. { $sentence }
# A rule that holds in some of several grids, $grids being their letters.
rule-in-grids = { $n ->
    [1] Grille { $grids }
   *[other] Grilles { $grids }
} : { $sentence }

## Around a puzzle

puzzle-numbered = Grille { $number }
puzzle-named = Grille { $name }
key-to = Solution de la grille { $name }
hints-for = Indices pour la grille { $name }
back-to = Retour à la grille { $number }
difficulty-of = difficulté { $figure }
band-said = { $band }, niveau { $number } sur 5, difficulté { $figure }.
set-by = Auteur : { $setter }.
puzzles-by = Grilles de { $setters }
edited-by = Recueil établi par { $editor }
first-shown = première parution : { $date }
points = { $n ->
    [1] 1 point
   *[other] { $n } points
}
flaw-none = Aucune solution
flaw-several = Plusieurs solutions
flaw-undecided = Non vérifiée
draft = ÉPREUVE
time = Temps
isbn = ISBN { $number }
isbn-printed = ISBN { $number } (imprimé)
isbn-ebook = ISBN { $number } (numérique)
index-note = Les nombres renvoient aux numéros des grilles.
key-on-page = Solution page
hints-on-page = Indices page
page = page
terms-on-page = Les termes nouveaux sont expliqués page
steps-counted = { $n ->
    [1] 1 étape
   *[other] { $number } étapes
}
rules-face-grid = Les règles de la grille suivante lui font face.
puzzles-counted = { $n ->
    [1] une grille
   *[other] { $number } grilles
}

# On the opening page of a chapter, before rules.
rules-of-chapter = Pour toutes les grilles de ce chapitre :
belongs-to = Ce livre appartient à
begun-on = Commencé le
finished-on = Terminé le

## Hints

hints-note = Chaque grille a trois indices, qui portent sur le premier passage difficile. Chacun en dit plus que le précédent, et le suivant n’est jamais sous les yeux. Une case se désigne par sa ligne (r) et sa colonne (c) : r5c2 est dans la ligne 5, colonne 2.
hints-note-sheet = Chaque grille a trois indices, qui portent sur le premier passage difficile. Chacun en dit plus que le précédent : cachez les suivants avec une feuille de papier. Une case se désigne par sa ligne (r) et sa colonne (c) : r5c2 est dans la ligne 5, colonne 2.
hints-note-text = Chaque grille a trois indices, qui portent sur le premier passage difficile. Chacun en dit plus que le précédent. N’ouvrez que celui que vous voulez.
hint-level-1 = Où regarder
hint-level-2 = Que chercher
hint-level-3 = L’étape suivante
hints-level-1 = Indices : où regarder
hints-level-2 = Indices : que chercher
hints-level-3 = Indices : l’étape suivante
hints-overleaf-2 = Les deuxièmes indices sont au verso.
hints-overleaf-3 = Les troisièmes indices sont au verso.
hint-leads-2 = deuxième indice de la grille { $number }
hint-leads-3 = troisième indice de la grille { $number }
hint-leads-key = solution de la grille { $number }
hint-leads-puzzle = grille { $number }

## Handouts and contests

name = Nom
date = Date
copy-of = Exemplaire { $number } sur { $count }
check-row = Une fois la grille terminée, recopiez les chiffres des cases marquées d’une lettre dans les cases de sa bande de contrôle. C’est elle que l’on corrige.
marker-sheet = Feuille de correction
marker-help = Posez les bandes de contrôle d’une feuille à côté de celles-ci. Une bande identique vaut ses points au premier coup d’œil ; si une bande diffère ou si une grille paraît inachevée, reportez-vous à la solution au verso.
of-points = sur { $points }
total-of = Total sur { $points }
minutes = minutes
place = Rang
total = Total

## Covers

cover-count = { $n ->
    [1] Une grille, à solution unique.
   *[other] { $number } grilles, chacune à solution unique.
}
cover-sample = Nº { $number }
cover-puzzles = { $n ->
    [1] grille
   *[other] grilles
}
cover-kinds = { $n ->
    [1] sorte de règle
   *[other] sortes de règles
}

## The presenter’s crib

crib = Aide-mémoire de l’animateur
crib-steps = Les nombres en marge comptent les étapes du chemin.
crib-look = regarder ici
crib-look-along = regarder le long
crib-next = à remplir
crib-eliminated = éliminé
crib-supposed = supposé
crib-step = étape { $first }
crib-run = étapes { $first }–{ $last }
crib-follows = ce qui en découle, dans cet ordre
cells-filled = { $number } cases remplies
start = Le départ
solution = La solution
story-set-by = { $title }, une grille de { $setter }
story-setter = une grille de { $setter }
story-crux = Le passage difficile
story-onwards = La suite
story-ending = Jusqu’au bout

## The chart of all rules

chart = Les règles et leurs marques
chart-subject = Toutes les sortes de règles, chacune avec sa marque et sa phrase
chart-lines = Le long des tracés
chart-cells = Dans les cases et les zones
chart-borders = Entre les cases et dans les coins
chart-outside = Hors de la grille
chart-whole = Dans toute la grille, sans marque
