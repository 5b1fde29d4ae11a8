### Why a step holds: a sentence for each claim. A kind of rule or a technique may have a wording of its own, after “--”.
### $gone is what goes, as a clause, mostly after a colon; $mark is the mark that says so. Attributes are further wordings.

## What goes

gone-first = { COUNT($digits) ->
    [one] si elimina
   *[other] si eliminano
} { $digits } da { $cells }
gone-next = { $digits } da { $cells }
impossible = con { OR($digits) } in { OR($cells) }

## Singles

claim-last-cell = L’ultima casella vuota { CASE($house, "di") }, { $cell }, riceve { $digit }.
claim-hidden-single = { CASE($house, "in") } solo { $cell } può contenere { $digit }.
claim-naked-single = Per { $cell } resta solo { $digit }.
claim-fixed = { $mark } non lascia scelta a { $cell }: quali che siano le cifre date, contiene { $digit }.
claim-from-proof = Qui la scala finisce; la cifra { $digit } in { $cell } è presa dalla prova.

## Patterns

claim-locked = { CASE($home, "in") } tutti i posti per { $digit } stanno { CASE($other, "in") }: { $gone }.
claim-naked-subset = { CASE($house, "in") }, { $cells } si dividono { $digits }: { $gone }.
claim-naked-subset-in-mark = { $mark } non ripete nessuna cifra, e lì { $cells } { COUNT($cells) ->
    [one] contiene
   *[other] contengono
} { $digits }: { $gone }.
claim-naked-subset--limits = { CASE($house, "in") }, { $cells } ammettono solo { $digits }: { $gone }.
claim-naked-subset--parity = { CASE($house, "in") }, { $cells } esauriscono le cifre { $digits }: { $gone }.
claim-hidden-subset = { CASE($house, "in") }, { $digits } trovano posto solo in { $cells }: { $gone }.
claim-fish = { CASE($base, "in") } tutti i posti per { $digit } stanno { CASE($cover, "in") }: { $gone }.
claim-fish-finned = { CASE($base, "in") } tutti i posti per { $digit } stanno { CASE($cover, "in") }, oppure è { OR($fins) }; in entrambi i casi { $gone }.
claim-seen-by-all = { CASE($house, "in") } la cifra { $digit } è in { OR($places) }; ognuna di queste caselle vede { $gone-cells }: { $gone }.
claim-seen-by-all-in-mark = { $mark } ha { $digit } in { OR($places) }; ognuna di queste caselle vede { $gone-cells }: { $gone }.
claim-seen-by-all--king = { CASE($house, "in") } la cifra { $digit } è in { OR($places) }; ognuna di queste caselle tocca { $gone-cells } o condivide con essa { house-any.one }: { $gone }.
claim-seen-by-all--knight = { CASE($house, "in") } la cifra { $digit } è in { OR($places) }; ognuna di queste caselle vede { $gone-cells }, lungo { house-any.one }, oppure con una mossa del cavallo: { $gone }.
claim-pivot-wing--xy-wing = Qualunque cifra contenga { $pivot }, { $digit } è in { OR($wings) }: { $gone }.
claim-pivot-wing--xyz-wing = Qualunque cifra contenga { $pivot }, { $digit } è lì oppure in { OR($wings) }: { $gone }.
claim-linked-wing = { CASE($house, "in") } la cifra { $joined } è in { OR($link) }; perciò { $pair } non possono contenere entrambe { $joined }: una delle due contiene { $digit }, e { $gone }.
claim-chain = Se { $start-cell } non contiene { $start-digit }, allora { $trues }. Perciò { $start } oppure { $end }, e in entrambi i casi { $gone }.
claim-chain-to-itself = Se { $start-cell } non contiene { $start-digit }, allora { $trues } lo stesso. Perciò { $start }, e { $gone }.
true = { $cell } contiene { $digit }
claim-extended-chain = Se { $unless }, allora { $trues }. Perciò { $start } oppure { $end }, e in entrambi i casi { $by } esclude { $taken }.
claim-extended-chain-seen = Se { $unless }, allora { $trues }. Perciò { $start } oppure { $end }, e in entrambi i casi { $gone }.
claim-extended-chain-to-itself = Se { $unless }, allora { $trues } lo stesso. Perciò { $start }, e { $by } esclude { $taken }.
claim-extended-chain-to-itself-seen = Se { $unless }, allora { $trues } lo stesso. Perciò { $start }, e { $gone }.
claim-either-way = { CASE($house, "in") } la cifra { $digit } è in { OR($places) }; { $n ->
    [2] in entrambi i casi
   *[other] in ogni caso
} { $by } esclude { $taken }.
claim-either-way-in-cell = Che { $cell } contenga { OR($digits) }, { $by } esclude { $taken }.
in-plain-sight = la cifra stessa
true-in-group = la cifra { $digit } è in { OR($cells) }
unless = { $cell } non contiene { $digit }
unless-in-group = la cifra { $digit } non è in { OR($cells) }
true-by-mark = { $by } esclude { $taken }, perciò { $true }
true-among = { $among } contengono { $digits }, perciò { $true }
true-among-by-mark = { $by } esclude { $taken }, { $among } contengono { $digits }, perciò { $true }

## What-ifs

claim-refuted = Con { $tried }, { $end }: { $gone }.
claim-refuted-later = Con { $tried }, { $end } dopo { $n ->
    [1] un giro
   *[other] { $rounds } giri
} di conseguenze obbligate: { $gone }.
claim-refuted-linked = Supponete { $tried }: allora { $links }, e { $end }. Perciò { $gone }.
end-no-place = { $house } non ha più posto per { $digit }
end-no-digit = per { $cell } non resta nessuna cifra
end-no-digit-by-mark = { $mark } non lascia nessuna cifra a { $cell }
end-no-digit-by-marks = i segni non lasciano nessuna cifra a { $cell }
end-nothing-fits = { $mark } diventa impossibile
then-in-house = { $house } ha { $digit } in { $cell }
then-last = { $cell } può contenere solo { $digit }
then-by-mark = { $mark } lascia solo { $digit } a { $cell }
then-gone = { $mark } esclude { $taken }
taken = { $digits } in { $cells }

## What a mark allows

bounds-least = almeno { $low } in { $cell }
bounds-most = al massimo { $high } in { $cell }
bounds-both = una cifra da { $low } a { $high } in { $cell }
bounds-only = { $low } in { $cell }
claim-bounds = { $mark } { $many ->
    [yes] impongono
   *[no] impone
} { $bounds }: { $gone }.
claim-bounds--thermometer = { $mark } deve salire a ogni passo: { $gone }.
claim-bounds--resting-thermometer = { $mark } non deve mai scendere: { $gone }.
claim-bounds--diagonal-sum = { $mark } impone { $bounds }, qualunque cosa contengano le altre caselle: { $gone }.
claim-enclosed = { $mark } ha tutte le sue cifre tra quelle dei due capi: { $gone }.
claim-enclosed-ends = { $mark } ha bisogno di spazio tra le cifre dei due capi: { $gone }.
claim-only-digits = { $mark } ammette solo { $digits }: { $gone }.
claim-only-digits--parity-run = { $mark } vuole { OR($digits) } in { $cells }: { $gone }.
claim-only-digits--parity-line = { $mark } ha { OR($digits) } in { $cells }: { $gone }.
claim-only-digits--low-high-line = { $mark } ha { OR($digits) } in { $cells }: { $gone }.
claim-only-in = { $mark } riserva { $digits } a { COUNT($digits) ->
    [one] { OR($cells) }
   *[other] { $cells }
}: { $gone }.
claim-only-in--counting-area = { $mark } ha { $digits } in { $cells }: { $gone }.
claim-only-in--quadruple = { $mark } richiede { $digits }, che { COUNT($digits) ->
    [one] può stare solo in { OR($cells) }
   *[other] possono stare solo in { $cells }
}: { $gone }.
claim-no-partner = { $mark } esclude { $gone-digits } in { $cell }: non resterebbe nulla per { $beyond }.
claim-beside = { $mark } e la cifra { $known } in { $beside } escludono { $gone-digits } in { $cell }.
claim-beside--non-consecutive = La cifra { $known } in { $beside } vieta alle vicine la cifra precedente e la successiva: { $gone }.
    .b = Accanto alla cifra { $known } in { $beside } nessuna cifra vale uno in più o uno in meno: { $gone }.
claim-beside--no-doubles = Accanto alla cifra { $known } in { $beside } non c’è né la sua metà né il suo doppio: { $gone }.
claim-beside--barred-sums = Con { $known } in { $beside }, { $gone-digits } in { $cell } { COUNT($gone-digits) ->
    [one] farebbe
   *[other] farebbero
} una somma vietata.
claim-too-near = { $mark } esclude { $gone-digits } in { $cell }, troppo vicino a ciò che può stare in { $beside }.
claim-one-combination = { $mark } può contenere solo { $digits }: { $gone }.
claim-one-combination--quadruple = { $mark } riempie le sue quattro caselle: { $gone }.
claim-no-combination = { $mark } non ha combinazioni con { OR($gone-digits) }: { $gone }.
claim-no-run = { $mark } non ha sequenze con { OR($gone-digits) }: { $gone }.
claim-needed = { $mark } deve contenere { $digit }, che va in { OR($places) }: { $gone }.
claim-no-filling = { $mark } diventa impossibile { $impossible }.
    .b = { $mark } non regge { $impossible }.
claim-no-filling-joined = { $mark } non si accordano { $impossible }.
claim-same-digit = { $mark } ha la stessa cifra in { $cells }: { $gone }.
claim-reached = { $mark } tiene la cifra { $digit } in { $cell } lontana da { $gone-cells }: { $gone }.
claim-reached--king = Una mossa del re porta dalla cifra { $digit } in { $cell } a { $gone-cells }, dove perciò { $digit } non può stare.
claim-reached--knight = Una mossa del cavallo porta dalla cifra { $digit } in { $cell } a { $gone-cells }, dove perciò { $digit } non può stare.
claim-beside-all = { CASE($house, "in") } la cifra { $digit } è in { OR($places) }, sempre accanto a { $cell }: { $gone }.
claim-limits-meet = { $mark } somma almeno { $least }, e il suo totale è al massimo { $most }: { $gone }.
claim-limits-meet-from-above = { $mark } somma al massimo { $most }, e il suo totale è almeno { $least }: { $gone }.
claim-limits-meet--arrow = { $mark } ha almeno { $least } lungo l’asta e al massimo { $most } nel cerchio: { $gone }.
claim-limits-meet-from-above--arrow = { $mark } ha al massimo { $most } lungo l’asta e almeno { $least } nel cerchio: { $gone }.
claim-common-sum--square-block = { $mark } deve avere somma { $sums } in ciascuno dei suoi allineamenti: { $gone }.
claim-common-sum--open-cage = { $mark } deve avere totale { $sums } in ogni gabbia: { $gone }.
claim-common-sum--hinge-line = { $mark } deve avere somma { $sums } in ogni coppia: { $gone }.
claim-common-sum--equal-part-line = { $mark } deve avere somma { $sums } in ogni tratto: { $gone }.
claim-common-sum = { $mark } deve avere somma { $sums } in ogni parte: { $gone }.
sums-range = da { $least } a { $most }
claim-left-over = { $houses } { $n ->
    [1] somma
   *[other] sommano
} { $total }, di cui { $within } { GENDER($mark) ->
    [feminine] nelle { $nouns }
   *[masculine] nei { $nouns }
} che vi stanno per intero; resta { $rest } per { $cells }{ COUNT($cells) ->
    [one] {""}
   *[other] {" "}insieme
}: { $gone }.
claim-left-over-beyond = { $houses } { $n ->
    [1] somma
   *[other] sommano
} { $total } e { GENDER($mark) ->
    [feminine] le { $nouns }
   *[masculine] i { $nouns }
} che coprono il tutto { $within }; l’eccedenza di { $rest } spetta a { $cells }{ COUNT($cells) ->
    [one] {""}
   *[other] {" "}insieme
}: { $gone }.
claim-steps = { $mark } può avanzare solo a passi di { OR($steps) }: { $gone }.
claim-first-digits = { $mark } { COUNT($digits) ->
    [one] deve cominciare con { $digits }
   *[other] può cominciare solo con { OR($digits) }
}, e il seguito deve adattarsi: { $gone }.
claim-counts-to = { $mark } può stare solo al posto { OR($places) }, e { $first } ne dà il numero: { $gone }.
claim-counts-to--pointing = { $mark } può contare solo { OR($places) } nella sua direzione: { $gone }.
claim-apart = { $mark } vuole tra le due fette un numero di cifre uguale a { $counts }: { $gone }.
claim-apart-filled = { $mark } vuole tra le due fette un numero di cifre uguale a { $counts }, cioè { $fillings }: { $gone }.
apart-cells = { $number }
claim-held-by-rest = { $rest }, dove pure ogni cifra sta una volta, ha posto per { $digit } solo in { $cell }: { $gone }.
claim-held-by-rest-settled = { $rest }, dove pure ogni cifra sta una volta, ha già { $digit } in { $cell }: { $gone }.
