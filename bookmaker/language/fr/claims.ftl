### Why a step holds: a sentence for each claim. A kind of rule or a technique may have a wording of its own, after “--”.
### $gone is what goes, as a clause, mostly after a colon; $mark is the mark that says so. Attributes are further wordings.

## What goes

gone-first = on élimine { $digits } en { $cells }
gone-next = { $digits } en { $cells }
impossible = avec { OR($digits) } en { OR($cells) }

## Singles

claim-last-cell = La dernière case vide { CASE($house, "de") }, { $cell }, reçoit { $digit }.
claim-hidden-single = Dans { $house }, seule { $cell } peut recevoir { $digit }.
claim-naked-single = Il ne reste que { $digit } pour { $cell }.
claim-fixed = { $mark } ne laisse pas le choix à { $cell } : quels que soient les chiffres donnés, c’est { $digit }.
claim-from-proof = L’échelle s’arrête ici ; le { $digit } en { $cell } est repris de la preuve.

## Patterns

claim-locked = Dans { $home }, toutes les places du { $digit } sont dans { $other } : { $gone }.
claim-naked-subset = Dans { $house }, { $cells } se partagent { $digits } : { $gone }.
claim-naked-subset-in-mark = { $mark } ne répète aucun chiffre, et { $cells } y { COUNT($cells) ->
    [one] contient
   *[other] contiennent
} { $digits } : { $gone }.
claim-naked-subset--limits = Dans { $house }, { $cells } n’admettent que { $digits } : { $gone }.
claim-naked-subset--parity = Dans { $house }, { $cells } épuisent les chiffres { $digits } : { $gone }.
claim-hidden-subset = Dans { $house }, { $digits } n’ont de place qu’en { $cells } : { $gone }.
claim-fish = Dans { $base }, toutes les places du { $digit } sont dans { $cover } : { $gone }.
claim-fish-finned = Dans { $base }, toutes les places du { $digit } sont dans { $cover }, ou bien c’est { OR($fins) } ; dans les deux cas, { $gone }.
claim-seen-by-all = Dans { $house }, le { $digit } est en { OR($places) } ; chacune de ces cases voit { $gone-cells } : { $gone }.
claim-seen-by-all-in-mark = { $mark } a son { $digit } en { OR($places) } ; chacune de ces cases voit { $gone-cells } : { $gone }.
claim-seen-by-all--king = Dans { $house }, le { $digit } est en { OR($places) } ; chacune de ces cases touche { $gone-cells }, ou partage { house-any.one } avec elle : { $gone }.
claim-seen-by-all--knight = Dans { $house }, le { $digit } est en { OR($places) } ; chacune de ces cases voit { $gone-cells }, par { house-any.one }, ou par un saut de cavalier : { $gone }.
claim-pivot-wing--xy-wing = Quel que soit le chiffre en { $pivot }, { OR($wings) } contient { $digit } : { $gone }.
claim-pivot-wing--xyz-wing = Quel que soit le chiffre en { $pivot }, le { $digit } est là ou en { OR($wings) } : { $gone }.
claim-linked-wing = Dans { $house }, le { $joined } est en { OR($link) } ; { $pair } ne peuvent donc pas contenir { $joined } toutes les deux : l’une des deux contient { $digit }, et { $gone }.
claim-chain = Si { $start-cell } ne contient pas { $start-digit }, alors { $trues }. Donc { $start } ou { $end }, et dans les deux cas { $gone }.
claim-chain-to-itself = Si { $start-cell } ne contient pas { $start-digit }, alors { $trues } malgré tout. Donc { $start }, et { $gone }.
true = { $cell } contient { $digit }
claim-extended-chain = Si { $unless }, alors { $trues }. Donc { $start } ou { $end }, et dans les deux cas { $by } exclut { $taken }.
claim-extended-chain-seen = Si { $unless }, alors { $trues }. Donc { $start } ou { $end }, et dans les deux cas { $gone }.
claim-extended-chain-to-itself = Si { $unless }, alors { $trues } malgré tout. Donc { $start }, et { $by } exclut { $taken }.
claim-extended-chain-to-itself-seen = Si { $unless }, alors { $trues } malgré tout. Donc { $start }, et { $gone }.
claim-either-way = Dans { $house }, le { $digit } est en { OR($places) } ; { $n ->
    [2] dans les deux cas
   *[other] dans tous les cas
}, { $by } exclut { $taken }.
claim-either-way-in-cell = Que { $cell } contienne { OR($digits) }, { $by } exclut { $taken }.
in-plain-sight = le chiffre lui-même
true-in-group = le { $digit } est en { OR($cells) }
unless = { $cell } ne contient pas { $digit }
unless-in-group = le { $digit } n’est pas en { OR($cells) }
true-by-mark = { $by } exclut { $taken }, donc { $true }
true-among = { $among } contiennent { $digits }, donc { $true }
true-among-by-mark = { $by } exclut { $taken }, { $among } contiennent { $digits }, donc { $true }

## What-ifs

claim-refuted = Avec { $tried }, { $end } : { $gone }.
claim-refuted-later = Avec { $tried }, { $end } après { $n ->
    [1] un tour
   *[other] { $rounds } tours
} de déductions forcées : { $gone }.
claim-refuted-linked = Supposons { $tried } : alors { $links }, et { $end }. Donc { $gone }.
end-no-place = { $house } n’a plus de place pour { $digit }
end-no-digit = il ne reste aucun chiffre pour { $cell }
end-no-digit-by-mark = { $mark } ne laisse aucun chiffre à { $cell }
end-no-digit-by-marks = les marques ne laissent aucun chiffre à { $cell }
end-nothing-fits = { $mark } devient impossible
then-in-house = le { $digit } { CASE($house, "de") } va en { $cell }
then-last = { $cell } ne peut contenir que { $digit }
then-by-mark = { $mark } ne laisse que { $digit } à { $cell }
then-gone = { $mark } exclut { $taken }
taken = { $digits } en { $cells }

## What a mark allows

bounds-least = au moins { $low } en { $cell }
bounds-most = au plus { $high } en { $cell }
bounds-both = un chiffre de { $low } à { $high } en { $cell }
bounds-only = { $low } en { $cell }
claim-bounds = { $mark } { $many ->
    [yes] imposent
   *[no] impose
} { $bounds } : { $gone }.
claim-bounds--thermometer = { $mark } doit monter à chaque pas : { $gone }.
claim-bounds--resting-thermometer = { $mark } ne doit jamais descendre : { $gone }.
claim-bounds--diagonal-sum = { $mark } impose { $bounds }, quoi que contiennent les autres cases : { $gone }.
claim-enclosed = { $mark } a tous ses chiffres compris entre ceux de ses deux bouts : { $gone }.
claim-enclosed-ends = { $mark } a besoin de place entre les chiffres de ses deux bouts : { $gone }.
claim-only-digits = { $mark } n’admet que { $digits } : { $gone }.
claim-only-digits--parity-run = { $mark } demande { OR($digits) } en { $cells } : { $gone }.
claim-only-digits--parity-line = { $mark } a { OR($digits) } en { $cells } : { $gone }.
claim-only-digits--low-high-line = { $mark } a { OR($digits) } en { $cells } : { $gone }.
claim-only-in = { $mark } réserve { $digits } à { COUNT($digits) ->
    [one] { OR($cells) }
   *[other] { $cells }
} : { $gone }.
claim-only-in--counting-area = { $mark } a ses { $digits } en { $cells } : { $gone }.
claim-only-in--quadruple = { $mark } demande { $digits }, qui { COUNT($digits) ->
    [one] ne peut aller qu’en { OR($cells) }
   *[other] ne peuvent aller qu’en { $cells }
} : { $gone }.
claim-no-partner = { $mark } exclut { $gone-digits } en { $cell } : il ne resterait rien pour { $beyond }.
claim-beside = { $mark } et le { $known } en { $beside } excluent { $gone-digits } en { $cell }.
claim-beside--non-consecutive = Le { $known } en { $beside } interdit à ses voisines le chiffre précédent et le chiffre suivant : { $gone }.
    .b = À côté du { $known } en { $beside }, aucun chiffre ne vaut un de plus ou un de moins : { $gone }.
claim-beside--no-doubles = À côté du { $known } en { $beside }, il n’y a ni sa moitié ni son double : { $gone }.
claim-beside--barred-sums = Avec le { $known } en { $beside }, { $gone-digits } en { $cell } { COUNT($gone-digits) ->
    [one] ferait
   *[other] feraient
} une somme interdite.
claim-too-near = { $mark } exclut { $gone-digits } en { $cell }, trop près de ce qu’il peut y avoir en { $beside }.
claim-one-combination = { $mark } ne peut contenir que { $digits } : { $gone }.
claim-one-combination--quadruple = { $mark } remplit ses quatre cases : { $gone }.
claim-no-combination = { $mark } n’a aucune combinaison avec { OR($gone-digits) } : { $gone }.
claim-no-run = { $mark } n’a aucune suite avec { OR($gone-digits) } : { $gone }.
claim-needed = { $mark } doit contenir { $digit }, en { OR($places) } : { $gone }.
claim-no-filling = { $mark } devient impossible { $impossible }.
    .b = { $mark } ne tient pas { $impossible }.
claim-no-filling-joined = { $mark } ne s’accordent pas { $impossible }.
claim-same-digit = { $mark } a le même chiffre en { $cells } : { $gone }.
claim-reached = { $mark } tient le { $digit } de { $cell } à l’écart de { $gone-cells } : { $gone }.
claim-reached--king = Un pas de roi mène du { $digit } en { $cell } à { $gone-cells }, où il n’y a donc pas de { $digit }.
claim-reached--knight = Un saut de cavalier mène du { $digit } en { $cell } à { $gone-cells }, où il n’y a donc pas de { $digit }.
claim-beside-all = Dans { $house }, le { $digit } est en { OR($places) }, toujours à côté de { $cell } : { $gone }.
claim-limits-meet = { $mark } totalise au moins { $least }, et son total est d’au plus { $most } : { $gone }.
claim-limits-meet-from-above = { $mark } totalise au plus { $most }, et son total est d’au moins { $least } : { $gone }.
claim-limits-meet--arrow = { $mark } a au moins { $least } sur sa tige et au plus { $most } dans son cercle : { $gone }.
claim-limits-meet-from-above--arrow = { $mark } a au plus { $most } sur sa tige et au moins { $least } dans son cercle : { $gone }.
claim-common-sum--square-block = { $mark } doit avoir une somme de { $sums } dans chacun de ses alignements : { $gone }.
claim-common-sum--open-cage = { $mark } doit avoir un total de { $sums } dans chaque cage : { $gone }.
claim-common-sum--hinge-line = { $mark } doit avoir une somme de { $sums } dans chaque paire : { $gone }.
claim-common-sum--equal-part-line = { $mark } doit avoir une somme de { $sums } dans chaque tronçon : { $gone }.
claim-common-sum = { $mark } doit avoir une somme de { $sums } dans chaque partie : { $gone }.
sums-range = { $least } à { $most }
claim-left-over = { $houses } { $n ->
    [1] totalise
   *[other] totalisent
} { $total }, dont { $within } pour les { $nouns } qui y tiennent en entier ; il reste { $rest } pour { $cells }{ COUNT($cells) ->
    [one] {""}
   *[other] {" "}ensemble
} : { $gone }.
claim-left-over-beyond = { $houses } { $n ->
    [1] totalise
   *[other] totalisent
} { $total } et les { $nouns } qui recouvrent le tout { $within } ; l’excédent de { $rest } est pour { $cells }{ COUNT($cells) ->
    [one] {""}
   *[other] {" "}ensemble
} : { $gone }.
claim-steps = { $mark } n’avance que par pas de { OR($steps) } : { $gone }.
claim-first-digits = { $mark } { COUNT($digits) ->
    [one] doit commencer par { $digits }
   *[other] ne peut commencer que par { OR($digits) }
}, et la suite doit convenir : { $gone }.
claim-counts-to = { $mark } ne peut être qu’en position { OR($places) }, et { $first } en donne le rang : { $gone }.
claim-counts-to--pointing = { $mark } ne peut compter que { OR($places) } dans sa direction : { $gone }.
claim-apart = { $mark } laisse { $counts } entre ses deux tranches : { $gone }.
claim-apart-filled = { $mark } a { $counts } entre ses deux tranches, à savoir { $fillings } : { $gone }.
apart-cells = { $number } { $n ->
    [0] chiffre
    [1] chiffre
   *[other] chiffres
}
claim-held-by-rest = { $rest }, où chaque chiffre figure aussi une fois, n’a de place pour { $digit } qu’en { $cell } : { $gone }.
claim-held-by-rest-settled = { $rest }, où chaque chiffre figure aussi une fois, a déjà son { $digit } en { $cell } : { $gone }.
