### Why a step holds: a sentence for each claim. A kind of rule or a technique may have a wording of its own, after “--”.
### $gone is a main clause with its subject first (“5 vervalt in r1c2”), so that it can follow “dus” or a colon.

## What goes

gone-first = { $digits } { COUNT($digits) ->
    [one] vervalt
   *[other] vervallen
} in { $cells }
gone-next = { $digits } in { $cells }
impossible = met { OR($digits) } in { OR($cells) }

## Singles

claim-last-cell = Het laatste lege vakje van { $house }, { $cell }, wordt { $digit }.
claim-hidden-single = In { $house } kan { $digit } alleen in { $cell }.
claim-naked-single = Voor { $cell } blijft alleen { $digit } over.
claim-fixed = { $mark } laat { $cell } geen keus: daar staat { $digit }, wat de gegeven cijfers ook zijn.
claim-from-proof = Hier eindigt de ladder; de { $digit } in { $cell } komt uit het bewijs.

## Patterns

claim-locked = In { $home } liggen alle plaatsen voor { $digit } in { $other }, dus { $gone }.
claim-naked-subset = In { $house } verdelen { $cells } onder elkaar { $digits }, dus { $gone }.
claim-naked-subset-in-mark = { $mark } herhaalt geen cijfer, en daar { COUNT($cells) ->
    [one] bevat
   *[other] bevatten
} { $cells } { $digits }, dus { $gone }.
claim-naked-subset--limits = In { $house } zijn { $cells } beperkt tot { $digits }, dus { $gone }.
claim-naked-subset--parity = In { $house } verbruiken { $cells } de cijfers { $digits }, dus { $gone }.
claim-hidden-subset = In { $house } passen { $digits } alleen in { $cells }, dus { $gone }.
claim-fish = In { $base } liggen alle plaatsen voor { $digit } in { $cover }, dus { $gone }.
claim-fish-finned = In { $base } liggen alle plaatsen voor { $digit } in { $cover }, of { $digit } staat in { OR($fins) }; in beide gevallen geldt: { $gone }.
claim-seen-by-all = In { $house } staat de { $digit } in { OR($places) }; elk van deze vakjes ziet { $gone-cells }, dus { $gone }.
claim-seen-by-all-in-mark = { $mark } heeft de { $digit } in { OR($places) }; elk van deze vakjes ziet { $gone-cells }, dus { $gone }.
claim-seen-by-all--king = In { $house } staat de { $digit } in { OR($places) }; elk van deze vakjes raakt { $gone-cells } of deelt er een { house-any } mee, dus { $gone }.
claim-seen-by-all--knight = In { $house } staat de { $digit } in { OR($places) }; elk van deze vakjes ziet { $gone-cells }, via een { house-any } of met een paardensprong, dus { $gone }.
claim-pivot-wing--xy-wing = Wat er ook in { $pivot } staat, { $digit } komt in { OR($wings) }, dus { $gone }.
claim-pivot-wing--xyz-wing = Wat er ook in { $pivot } staat, { $digit } komt daar of in { OR($wings) }, dus { $gone }.
claim-linked-wing = In { $house } staat de { $joined } in { OR($link) }, dus { $pair } kunnen niet allebei { $joined } zijn; één ervan is { $digit }, en { $gone }.
claim-chain = Als { $start-cell } niet { $start-digit } is, dan geldt: { $trues }. Dus { $start } of { $end }; in beide gevallen geldt: { $gone }.
claim-chain-to-itself = Als { $start-cell } niet { $start-digit } is, dan geldt toch: { $trues }. Dus { $start }, en { $gone }.
true = { $cell } is { $digit }
claim-extended-chain = Als { $unless }, dan geldt: { $trues }. Dus { $start } of { $end }; in beide gevallen sluit { $by } uit: { $taken }.
claim-extended-chain-seen = Als { $unless }, dan geldt: { $trues }. Dus { $start } of { $end }; in beide gevallen geldt: { $gone }.
claim-extended-chain-to-itself = Als { $unless }, dan geldt toch: { $trues }. Dus { $start }, en { $by } sluit uit: { $taken }.
claim-extended-chain-to-itself-seen = Als { $unless }, dan geldt toch: { $trues }. Dus { $start }, en { $gone }.
claim-either-way = In { $house } staat de { $digit } in { OR($places) }; { $n ->
    [2] in beide gevallen
   *[other] in elk geval
} sluit { $by } uit: { $taken }.
claim-either-way-in-cell = Of { $cell } nu { OR($digits) } is: { $by } sluit uit: { $taken }.
in-plain-sight = het cijfer zelf
true-in-group = { $digit } staat in { OR($cells) }
unless = { $cell } niet { $digit } is
unless-in-group = { $digit } niet in { OR($cells) } staat
true-by-mark = { $by } sluit uit: { $taken }, dus { $true }
true-among = { $among } bevatten { $digits }, dus { $true }
true-among-by-mark = { $by } sluit uit: { $taken }, { $among } bevatten { $digits }, dus { $true }

## What-ifs

claim-refuted = Stel { $tried }, dan geldt: { $end }, dus { $gone }.
claim-refuted-later = Stel { $tried }, dan geldt: { $end }, na { $n ->
    [1] een ronde
   *[other] { $rounds } rondes
} van gedwongen stappen. Dus { $gone }.
claim-refuted-linked = Stel { $tried }. Dan volgt: { $links }, en { $end }. Dus { $gone }.
end-no-place = { $house } heeft geen plaats meer voor { $digit }
end-no-digit = voor { $cell } blijft geen cijfer over
end-no-digit-by-mark = { $mark } laat geen cijfer over voor { $cell }
end-no-digit-by-marks = de markeringen laten geen cijfer over voor { $cell }
end-nothing-fits = voor { $mark } is geen invulling meer mogelijk
then-in-house = { $house } heeft { $digit } in { $cell }
then-last = { $cell } kan alleen { $digit } zijn
then-by-mark = { $mark } laat alleen { $digit } over voor { $cell }
then-gone = { $mark } sluit uit: { $taken }
taken = { $digits } in { $cells }

## What a mark allows

bounds-least = ten minste { $low } in { $cell }
bounds-most = ten hoogste { $high } in { $cell }
bounds-both = { $low } t/m { $high } in { $cell }
bounds-only = { $low } in { $cell }
claim-bounds = { $mark } { $many ->
    [yes] eisen
   *[no] eist
} { $bounds }, dus { $gone }.
claim-bounds--thermometer = { $mark } moet bij elke stap stijgen, dus { $gone }.
claim-bounds--resting-thermometer = { $mark } mag niet dalen, dus { $gone }.
claim-bounds--diagonal-sum = { $mark } eist { $bounds }, wat er ook in de andere vakjes staat, dus { $gone }.
claim-enclosed = { $mark } heeft alle cijfers tussen die van de twee uiteinden, dus { $gone }.
claim-enclosed-ends = { $mark } heeft ruimte nodig tussen de cijfers van de twee uiteinden, dus { $gone }.
claim-only-digits = { $mark } staat alleen { $digits } toe, dus { $gone }.
claim-only-digits--parity-run = { $mark } vraagt om { OR($digits) } in { $cells }, dus { $gone }.
claim-only-digits--parity-line = { $mark } heeft { OR($digits) } in { $cells }, dus { $gone }.
claim-only-digits--low-high-line = { $mark } heeft { OR($digits) } in { $cells }, dus { $gone }.
claim-only-in = { $mark } heeft voor { $digits } alleen plaats in { COUNT($digits) ->
    [one] { OR($cells) }
   *[other] { $cells }
}, dus { $gone }.
claim-only-in--counting-area = { $mark } heeft { $digits } in { $cells }, dus { $gone }.
claim-only-in--quadruple = { $mark } vraagt om { $digits } en heeft daarvoor alleen plaats in { COUNT($digits) ->
    [one] { OR($cells) }
   *[other] { $cells }
}, dus { $gone }.
claim-no-partner = { $mark } sluit { $gone-digits } uit in { $cell }: anders blijft er niets over voor { $beyond }.
claim-beside = { $mark } en de { $known } in { $beside } sluiten { $gone-digits } uit in { $cell }.
claim-beside--non-consecutive = De { $known } in { $beside } houdt het eerstvolgende lagere en hogere cijfer weg uit de vakjes ernaast, dus { $gone }.
    .b = Naast de { $known } in { $beside } staat geen cijfer dat één hoger of één lager is, dus { $gone }.
claim-beside--no-doubles = Naast de { $known } in { $beside } staat noch de helft, noch het dubbele ervan, dus { $gone }.
claim-beside--barred-sums = Met de { $known } in { $beside } zou { OR($gone-digits) } in { $cell } een verboden som geven.
claim-too-near = { $mark } sluit { $gone-digits } uit in { $cell }: dat ligt te dicht bij wat in { $beside } kan staan.
claim-one-combination = { $mark } kan alleen { $digits } bevatten, dus { $gone }.
claim-one-combination--quadruple = { $mark } vult alle vier de vakjes eromheen, dus { $gone }.
claim-no-combination = { $mark } heeft geen combinatie met { OR($gone-digits) }, dus { $gone }.
claim-no-run = { $mark } heeft geen reeks met { OR($gone-digits) }, dus { $gone }.
claim-needed = { $mark } heeft een { $digit } nodig, in { OR($places) }, dus { $gone }.
claim-no-filling = Voor { $mark } is er geen invulling { $impossible }.
    .b = { $mark } laat geen invulling toe { $impossible }.
claim-no-filling-joined = Voor { $mark } is er geen gezamenlijke invulling { $impossible }.
claim-same-digit = { $mark } heeft hetzelfde cijfer in { $cells }, dus { $gone }.
claim-reached = { $mark } houdt de { $digit } in { $cell } weg van { $gone-cells }, dus { $gone }.
claim-reached--king = Een koningszet leidt van de { $digit } in { $cell } naar { $gone-cells }; daar kan dus geen { $digit } staan.
claim-reached--knight = Een paardensprong leidt van de { $digit } in { $cell } naar { $gone-cells }; daar kan dus geen { $digit } staan.
claim-beside-all = In { $house } staat de { $digit } in { OR($places) }, altijd naast { $cell }, dus { $gone }.
claim-limits-meet = { $mark } komt op ten minste { $least }, en het totaal is ten hoogste { $most }, dus { $gone }.
claim-limits-meet-from-above = { $mark } komt op ten hoogste { $most }, en het totaal is ten minste { $least }, dus { $gone }.
claim-limits-meet--arrow = { $mark } heeft ten minste { $least } langs de schacht en ten hoogste { $most } in de cirkel, dus { $gone }.
claim-limits-meet-from-above--arrow = { $mark } heeft ten hoogste { $most } langs de schacht en ten minste { $least } in de cirkel, dus { $gone }.
claim-common-sum--square-block = { $mark } moet in elk van zijn lijnen een som van { $sums } hebben, dus { $gone }.
claim-common-sum--open-cage = { $mark } moet in elke kooi een totaal van { $sums } hebben, dus { $gone }.
claim-common-sum--hinge-line = { $mark } moet in elk paar een som van { $sums } hebben, dus { $gone }.
claim-common-sum = { $mark } moet in elk deel een som van { $sums } hebben, dus { $gone }.
sums-range = { $least } t/m { $most }
claim-left-over = De som van { $houses } is { $total }, en de { $nouns } die daar helemaal in liggen, zijn samen { $within }; voor { $cells } blijft { COUNT($cells) ->
    [one] { $rest }
   *[other] samen { $rest }
} over, dus { $gone }.
claim-left-over-beyond = De som van { $houses } is { $total }, en de { $nouns } die daar overheen liggen, zijn samen { $within }; voor { $cells } blijft { COUNT($cells) ->
    [one] { $rest }
   *[other] samen { $rest }
} over, dus { $gone }.
claim-steps = { $mark } kan alleen stappen van { OR($steps) } zetten, dus { $gone }.
claim-first-digits = { $mark } { COUNT($digits) ->
    [one] moet met { $digits } beginnen
   *[other] kan alleen met { OR($digits) } beginnen
}, en wat volgt, moet daarbij passen, dus { $gone }.
claim-counts-to = { $mark } kan alleen op plaats { OR($places) } staan, en { $first } geeft die plaats aan, dus { $gone }.
claim-counts-to--pointing = { $mark } kan in zijn richting alleen { OR($places) } tellen, dus { $gone }.
claim-apart = { $mark } heeft { $counts } tussen de korsten, dus { $gone }.
claim-apart-filled = { $mark } heeft { $counts } tussen de korsten, gevuld met { $fillings }, dus { $gone }.
apart-cells = { $number } { $n ->
    [1] vakje
   *[other] vakjes
}
claim-held-by-rest = In { $rest }, waar ook elk cijfer één keer staat, kan { $digit } alleen in { $cell }, dus { $gone }.
claim-held-by-rest-settled = In { $rest }, waar ook elk cijfer één keer staat, staat { $digit } al in { $cell }, dus { $gone }.
