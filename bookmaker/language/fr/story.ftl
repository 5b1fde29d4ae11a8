### What a presenter says. Attributes are further wordings, taken in turn.

## What lies on the table

table-boxes = Une grille { $size }×{ $size } { $givens ->
    [0] sans aucun chiffre donné
    [1] avec un chiffre donné
   *[other] avec { $number } chiffres donnés
}.
table-irregular = Une grille { $size }×{ $size } à régions irrégulières, { $givens ->
    [0] sans aucun chiffre donné
    [1] avec un chiffre donné
   *[other] avec { $number } chiffres donnés
}. Ses régions ont les lettres A, B, C et ainsi de suite, dans l’ordre où on les rencontre ligne après ligne.
table-none = Un carré latin { $size }×{ $size } { $givens ->
    [0] sans aucun chiffre donné
    [1] avec un chiffre donné
   *[other] avec { $number } chiffres donnés
}.
table-overlap = { $grids } grilles { $size }×{ $size } qui se chevauchent, { $givens ->
    [0] sans aucun chiffre donné
    [1] avec un chiffre donné
   *[other] avec { $number } chiffres donnés
}.
table-holes = Une grille { $size }×{ $size } à cases noires, { $givens ->
    [0] sans aucun chiffre donné
    [1] avec un chiffre donné
   *[other] avec { $number } chiffres donnés
}.
symmetry = { $turn } ramène la grille sur elle-même, si bien que la plupart des étapes vont par paires.
symmetry-relabelled = { $turn }, avec { $cycles }, ramène la grille sur elle-même, si bien que la plupart des étapes vont par paires.
cycle-swapped = échange de { $digits }
cycle-round = permutation circulaire de { $digits }
turn-half = un demi-tour
turn-left-right = une symétrie de gauche à droite
turn-top-bottom = une symétrie de haut en bas
turn-falling = une symétrie par rapport à la diagonale qui part d’en haut à gauche
turn-rising = une symétrie par rapport à la diagonale qui part d’en haut à droite
turn-quarter = un quart de tour
turn-quarter-right = un quart de tour à droite
turn-quarter-left = un quart de tour à gauche

introduction-singles-crux = Niveau { $band } : des singletons de bout en bout, et le passage difficile à { $filled } cases remplies.
introduction-singles-crux-at-start = Niveau { $band } : des singletons de bout en bout, et le passage difficile dès le départ.
introduction-singles-bottlenecks = Niveau { $band } : des singletons de bout en bout, avec un ou deux passages étroits.
introduction-singles-choice = Niveau { $band } : des singletons de bout en bout, et jamais moins de { $choice } au choix.
introduction-singles = Niveau { $band } : des singletons de bout en bout, tous faciles à trouver.
introduction-stuck-crux = Niveau { $band } : les singletons viennent à manquer { $times }, et le passage difficile vient à { $filled } cases remplies.
introduction-stuck-crux-at-start = Niveau { $band } : les singletons viennent à manquer { $times }, et le passage difficile vient dès le départ.
introduction-stuck = Niveau { $band } : les singletons viennent à manquer { $times }.
introduction-stuck-briefly = Niveau { $band } : les singletons viennent à manquer { $times }, mais jamais pour longtemps.
times = { $n ->
    [1] une fois
   *[other] { $number } fois
}

## Placements

places-last-of-digit = Le dernier { $digit } va en { $cell }.
    .b = { $house } reçoit le dernier { $digit }, en { $cell }.
places-last-cell = La dernière case { CASE($house, "de") }, { $cell }, reçoit { $digit }.
    .b = Il ne manque que { $digit } dans { $house } : on le place en { $cell }.
    .c = { $house } se complète par { $digit } en { $cell }.
places-naked-single = Il ne reste que { $digit } pour { $cell }.
    .b = Seul { $digit } convient en { $cell }.
places-hidden-single = Dans { $house }, seule { $cell } peut recevoir { $digit }.
    .b = { $house } n’a qu’une place pour { $digit }, { $cell }.
    .c = Le { $digit } { CASE($house, "de") } va en { $cell }.
then-last-of-digit = Puis le dernier { $digit } va en { $cell }.
    .b = { $house } reçoit le dernier { $digit }, en { $cell }.
then-last-cell = La dernière case { CASE($house, "de") }, { $cell }, reçoit { $digit }.
    .b = Il ne manque alors que { $digit } dans { $house } : on le place en { $cell }.
    .c = { $house } se complète par { $digit } en { $cell }.
    .d = Ensuite, la dernière case { CASE($house, "de") }, { $cell }, reçoit { $digit }.
then-naked-single = Il ne reste alors que { $digit } pour { $cell }.
    .b = Seul { $digit } convient en { $cell }.
then-hidden-single = Dans { $house }, seule { $cell } peut recevoir { $digit }.
    .b = { $house } n’a alors qu’une place pour { $digit }, { $cell }.
    .c = Le { $digit } { CASE($house, "de") } va en { $cell }.
    .d = Ensuite, dans { $house }, seule { $cell } peut recevoir { $digit }.

leaves-last-cell = Il reste { $digit } pour { $cell }, la dernière case { CASE($house, "de") }.
leaves-naked-single = Il ne reste alors à { $cell } que { $digit }.
    .b = C’est donc { $digit } en { $cell }.
leaves-hidden-single = Il ne reste que { $cell } pour le { $digit } { CASE($house, "de") }.
    .b = Dans { $house }, il ne reste que { $cell } pour { $digit }.
    .c = Le { $digit } { CASE($house, "de") } est donc en { $cell }.

opens-last-cell = La dernière case { CASE($house, "de") }, { $cell }, reçoit { $digit }.
opens-naked-single = Il n’y a plus alors que { $digit } en { $cell }.
    .b = Maintenant { $cell } ne peut contenir que { $digit }.
opens-hidden-single = La seule place du { $digit } dans { $house } est maintenant { $cell }.
    .b = Maintenant { $house } n’a plus qu’une place pour { $digit }, { $cell }.
    .c = Dès lors, le { $digit } { CASE($house, "de") } va en { $cell }.
    .d = { $house } a donc son { $digit } en { $cell }.

run-starts = Commencez par les { $digit } : { $cells }.
run-completes = Les { $count } derniers { $digit } vont en { $cells }.
    .b = Il reste { $count } { $digit } à placer : { $cells }.
    .c = Les { $digit } se complètent avec { $cells }.
run-chained = Un { $digit } en amène un autre : { $cells }.
    .b = Les { $digit } s’enchaînent : { $cells }.
run-band = Parcourez les { $digit } dans { $band } : { $cells }.
    .b = Dans { $band }, les { $digit } vont en { $cells }.
run = Suivent { $count } { $digit } : { $cells }.
    .b = Le parcours des { $digit } donne { $cells }.
    .c = Puis les { $digit } : { $cells }.
    .d = Les { $digit } continuent avec { $cells }.
band-top = la bande du haut
band-middle = la bande du milieu
band-bottom = la bande du bas
band-left = la pile de gauche
band-centre = la pile du centre
band-right = la pile de droite
fills = { $house } se remplit avec { $placed }.
    .b = { $house } se termine avec { $placed }.

with-image-last-cell = La dernière case { CASE($house, "de") }, { $cell }, reçoit { $digit } et, par symétrie, { $image } reçoit { $other }.
with-image-naked-single = Il ne reste que { $digit } pour { $cell } et, par symétrie, { $other } pour { $image }.
with-image-hidden-single = Dans { $house }, seule { $cell } peut recevoir { $digit } et, par symétrie, { $image } reçoit { $other }.
run-with-images = Placez { $count } { $digit } en { $cells } et, par symétrie, les { $other } en { $images }.
run-with-images-alike = Placez { $count } { $digit } en { $cells } et, par symétrie, autant en { $images }.

starts-here = Commencez ici.
starts-in-house = Commencez par le { $digit } { CASE($house, "de") } : { COUNT($lookers) ->
    [one] le { $digit } en { $lookers } ne laisse
   *[other] les { $digit } en { $lookers } ne laissent
} que { $cell }.
seen-last-cell = Il ne manque que { $digit } dans { $house } : on le place en { $cell }.
seen-lookers = { COUNT($lookers) ->
    [one] Le { $digit } en { $lookers } ne laisse
   *[other] Les { $digit } en { $lookers } ne laissent
} que { $cell } pour le { $digit } { CASE($house, "de") }.
seen-lookers-struck = { COUNT($lookers) ->
    [one] Le { $digit } en { $lookers }
   *[other] Les { $digit } en { $lookers }
} et ce qu’on a déjà éliminé ne laissent que { $cell } pour le { $digit } { CASE($house, "de") }.
seen-lookers-marked = { COUNT($lookers) ->
    [one] Le { $digit } en { $lookers }
   *[other] Les { $digit } en { $lookers }
} et les marques ne laissent que { $cell } pour le { $digit } { CASE($house, "de") }.
seen-lookers-struck-marked = { COUNT($lookers) ->
    [one] Le { $digit } en { $lookers }
   *[other] Les { $digit } en { $lookers }
}, les marques et ce qu’on a déjà éliminé ne laissent que { $cell } pour le { $digit } { CASE($house, "de") }.
seen-struck = Ce qu’on a déjà éliminé ne laisse que { $cell } pour le { $digit } { CASE($house, "de") }.
seen-marked = Les marques ne laissent que { $cell } pour le { $digit } { CASE($house, "de") }.
seen-struck-marked = Les marques et ce qu’on a déjà éliminé ne laissent que { $cell } pour le { $digit } { CASE($house, "de") }.
seen-in-cell = { $held } : { $cell } ne peut contenir que { $digit }.
held-first = { $house } contient { $digits }
held-next = { $house } y ajoute { $digits }
held-first-others = d’autres cases en vue contiennent { $digits }
held-next-others = d’autres cases en vue y ajoutent { $digits }
held-struck = avec { $steps }, { $digits } { COUNT($digits) ->
    [one] disparaît
   *[other] disparaissent
}
held-marked = sa marque exclut { $digits }

fixes = { $marks } { $many ->
    [yes] fixent
   *[no] fixe
} { $count ->
    [1] une case
   *[other] { $number } cases
} d’emblée : { $placed }.
taken-from-proof = L’échelle s’arrête ici, et la preuve doit aider avec { $placed }.
falls-into-place = Désormais, tout se met en place : { $placed }.
    .b = Le reste se met en place : { $placed }.
remains = Il reste { $placed }.
ending-more = { $most }, { $next }
ending-last = { $most }, et pour finir { $last }

## Where it gets narrow

few-lone-naked = Attention : avec { $filled } cases remplies, le seul singleton est un singleton nu.
    .b = À { $filled } cases, il n’y a rien d’autre qu’un singleton nu.
    .c = Un seul singleton est ouvert à { $filled } cases, et c’est un singleton nu.
few-naked = À { $filled } cases, il ne reste que des singletons nus, au nombre de { $number }.
    .b = { $number } singletons nus, c’est tout ce qu’il y a à { $filled } cases.
few = Regardez bien : avec { $filled } cases remplies, il n’y a { $singles ->
    [1] qu’un singleton
   *[other] que { $number } singletons
}.
    .b = À { $filled } cases, il y a tout juste { $singles ->
    [1] un singleton
   *[other] { $number } singletons
}.
crux-lone-naked = Voici le passage difficile : avec { $filled } cases remplies, le seul singleton est un singleton nu.
crux-naked = Voici le passage difficile : à { $filled } cases, il ne reste que des singletons nus, au nombre de { $number }.
crux-few = Voici le passage difficile : avec { $filled } cases remplies, il n’y a { $singles ->
    [1] qu’un singleton
   *[other] que { $number } singletons
}.
stuck = Avec { $filled } cases remplies, il ne reste aucun singleton.
    .b = À { $filled } cases, les singletons s’épuisent.
    .c = Plus aucun singleton à { $filled } cases.
stuck-at-start = Il n’y a aucun singleton au départ.
stuck-long = Avec { $filled } cases remplies, il ne reste aucun singleton ; il faut { $steps }.
    .b = À { $filled } cases, les singletons s’épuisent ; pour continuer, il faut { $steps }.
stuck-long-at-start = Il n’y a aucun singleton au départ ; il faut { $steps }.
crux = Voici le passage difficile : avec { $filled } cases remplies, il ne reste aucun singleton, et il faut { $steps }.
crux-at-start = Voici le passage difficile : il n’y a aucun singleton au départ, et il faut { $steps }.
aim-hidden-single = Le but est le { $digit } { CASE($house, "de") } : il va en { $cell } une fois exclu de { $rival-cells }.
aim-naked-single = Le but est { $cell }, qui contient { $digit } dès que { $rival-digits } en { COUNT($rival-digits) ->
    [one] disparaît
   *[other] disparaissent
}.

## Eliminations

names = Cherchez { $technique }.
    .b = Voici maintenant { $technique }.
    .c = Il faut ici { $technique }.
same-holds = De même pour { $mark } : { $gone }.
by-symmetry = Par symétrie, { $gone }.
by-symmetry-places = Par symétrie, { $cell } reçoit { $digit }.
by-symmetry-opens = Par symétrie, { $gone }, et { $cell } reçoit { $digit }.
    .b = De même pour l’image symétrique : { $gone }, et { $cell } reçoit { $digit }.
follow-end = Viennent ensuite { $number } suppositions, dont chacune laisse { $house } sans place pour { $digit }.
follow-mark = Viennent ensuite { $number } suppositions, toutes tranchées par { $mark }.
follow-kind = Viennent ensuite { $number } suppositions, dont chacune est tranchée par { $marks }.
follow-tried-digit = Viennent ensuite { $number } suppositions, toutes sur le { $tried-digit }.
follow-tried-cell = Viennent ensuite { $number } suppositions, toutes sur { $tried-cell }.
follow-tried-house = Viennent ensuite { $number } suppositions, toutes dans { $tried-house }.
follow = Viennent ensuite { $number } suppositions.
more-alike = De la même façon, avec { $count ->
    [1] une supposition de plus
   *[other] { $number } suppositions de plus
}, { $gone }.
