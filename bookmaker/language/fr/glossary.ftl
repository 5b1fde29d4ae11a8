### What solvers’ words mean, for readers of hints. A term is named for the technique, claim or concept that asks for it
### (`tell/concepts.py`).

term-alternating-chain = Chaîne alternée
    .meaning = Des cases et des chiffres liés de sorte que, si l’un est faux, le suivant est vrai. Quel que soit le bout vrai, un chiffre que les deux bouts excluent disparaît.
term-seen-by-all = Case vue par toutes les places d’un chiffre
    .meaning = Où que le chiffre se trouve dans une unité, il s’exclut lui-même d’une même case hors de celle-ci : cette case ne peut pas le contenir.
term-combination = Combinaison
    .meaning = Des chiffres qui, ensemble, font le total demandé et peuvent aller dans les cases.
term-contradiction = Contradiction
    .meaning = Une case sans chiffre, un chiffre sans place ou une marque impossible à respecter. Ce qui y a mené était faux.
term-eliminate = Éliminer
    .meaning = Exclure un chiffre d’une case. Ce qui n’y est pas encore éliminé, ce sont ses candidats, que beaucoup notent en petit dans un coin de la case.
term-fins = Figure à aileron
    .meaning = Un X-wing ou un poisson plus grand, gâté par une ou deux places en trop, les ailerons. Ce qu’excluent à la fois la figure et chacun des ailerons disparaît tout de même.
term-hidden-subset = Paire, triplet, quadruplet cachés
    .meaning = Deux chiffres qui ont les deux mêmes places dans une unité occupent ces deux cases à eux seuls, même si d’autres chiffres y semblaient possibles. Il en va de même pour trois chiffres et trois places, quatre chiffres et quatre places.
term-hidden-single = Singleton caché
    .meaning = Un chiffre qui ne peut aller que dans une case d’une unité, même si cette case pourrait en recevoir d’autres. Regardez où il figure déjà aux alentours.
term-house = Unité
    .meaning = Une ligne, une colonne{ $divided ->
        [none] {""}
        [regions] , une région
        [boxes] , un bloc
       *[both] , un bloc ou une région
    }, ou tout autre groupe de cases où aucun chiffre ne se répète.
term-jellyfish = Méduse
    .meaning = Un espadon sur quatre lignes et quatre colonnes.
term-last-cell = Dernière case vide
    .meaning = Dans une unité remplie à une case près, cette case reçoit le chiffre qui manque.
term-locked = Candidats verrouillés
    .meaning = Quand toutes les places d’un chiffre dans une unité sont aussi dans une seconde, le chiffre est pris là : il ne va nulle part ailleurs dans la seconde.
term-mark = Marque
    .meaning = Ce qui est imprimé dans la grille, ou à côté, pour l’une de ses règles : un thermomètre, une cage, un point, un nombre au bord.
term-naked-subset = Paire, triplet, quadruplet nus
    .meaning = Deux cases d’une unité auxquelles il ne reste que les deux mêmes chiffres les prennent tous les deux : aucune autre case de l’unité n’en contient. Il en va de même pour trois cases et trois chiffres, quatre cases et quatre chiffres.
term-naked-single = Singleton nu
    .meaning = Une case à laquelle sa ligne, sa colonne{ $divided ->
        [none] {""}
        [regions] , sa région
       *[boxes] , son bloc
    } et les marques ne laissent ensemble qu’un chiffre. Comptez ce qu’elle voit.
term-sight = Voir
    .meaning = Deux cases se voient quand elles ne peuvent pas contenir le même chiffre, parce qu’elles partagent une unité ou qu’une règle le dit.
term-single-digit-chain = Chaîne d’un seul chiffre
    .meaning = Des places d’un même chiffre, deux par unité, liées bout à bout. L’un des deux bouts est vrai : une case qui voit les deux ne peut pas contenir le chiffre.
term-swordfish = Espadon
    .meaning = Un X-wing sur trois lignes et trois colonnes.
term-left-over--cage = Cages entières
    .meaning = Les chiffres de 1 à 9 totalisent 45. Retranchez les cages qui tiennent tout entières dans une unité : le reste revient à ses autres cases.
term-w-wing = W-wing
    .meaning = Deux cases auxquelles il ne reste que les deux mêmes chiffres, jointes par une unité où l’un des deux n’a que deux places, vues chacune par l’une des cases. L’autre chiffre est dans l’une des deux cases : une case qui voit les deux ne peut pas le contenir.
term-what-if = Supposition
    .meaning = Essayez un chiffre de tête, suivez ce qu’il impose et barrez-le si cela finit par une contradiction. Tenez-vous-en aux suites courtes.
term-x-wing = X-wing
    .meaning = Deux lignes où un chiffre n’a de places que dans les deux mêmes colonnes. Il est dans deux coins opposés, donc nulle part ailleurs dans ces colonnes. Lignes et colonnes peuvent échanger leurs rôles.
term-xy-wing = XY-wing
    .meaning = Une case à deux chiffres possibles qui en voit deux autres, dont chacune a en commun avec elle un chiffre différent, et qui ont toutes deux un même troisième. Quel que soit le chiffre de la première, l’une des autres contient le troisième : une case qui voit ces deux-là ne peut pas le contenir.
term-xyz-wing = XYZ-wing
    .meaning = Un XY-wing dont la première case peut aussi contenir le troisième chiffre. Seules les cases qui voient les trois le perdent.
term-extended-chain = Chaîne étendue
    .meaning = Une chaîne alternée dont les maillons peuvent aussi être des groupes de cases, ou ce qu’une marque laisse possible. Ce que ses deux bouts excluent disparaît.
term-either-way = Chiffre exclu dans tous les cas
    .meaning = Prenez une case à peu de chiffres, ou un chiffre à peu de places, et regardez chaque choix. Ce que tous excluent, à vue ou par une marque, disparaît.
