### Why a step holds: a sentence for each claim. $gone begins with its verb (“entfällt die 4 in r3c5”), as do the clauses end-…
### and then-…; $mark is the mark that says so, always the subject. Attributes are further wordings.

## What goes

gone-first = { COUNT($digits) ->
    [one] entfällt die
   *[other] entfallen
} { $digits } in { $cells }
gone-next = { COUNT($digits) ->
    [one] die { $digits }
   *[other] { $digits }
} in { $cells }
impossible = mit { OR($digits) } in { OR($cells) }

## Singles

claim-last-cell = Das letzte freie Feld { CASE($house, "of") }, { $cell }, erhält die { $digit }.
claim-hidden-single = { CASE($house, "where") } kann die { $digit } nur in { $cell } stehen.
claim-naked-single = Für { $cell } bleibt nur die { $digit }.
claim-fixed = { $mark } lässt { $cell } keine Wahl: Dort steht die { $digit }, was auch immer vorgegeben ist.
claim-from-proof = Hier endet die Leiter; die { $digit } in { $cell } ist dem Beweis entnommen.

## Patterns

claim-locked = { CASE($home, "where") } liegen alle Plätze für die { $digit } auch { CASE($other, "where") }, also { $gone }.
claim-naked-subset = { CASE($house, "where") } enthalten { $cells } zusammen { $digits }, also { $gone }.
claim-naked-subset-in-mark = { $mark } enthält keine Ziffer zweimal, und { COUNT($cells) ->
    [one] { $cells } enthält
   *[other] { $cells } enthalten
} dort { $digits }, also { $gone }.
claim-naked-subset--limits = { CASE($house, "where") } sind { $cells } auf { $digits } eingeschränkt, also { $gone }.
claim-naked-subset--parity = { CASE($house, "where") } verbrauchen { $cells } die Ziffern { $digits }, also { $gone }.
claim-hidden-subset = { CASE($house, "where") } passen { $digits } nur in { $cells }, also { $gone }.
claim-fish = { CASE($base, "where") } liegt jeder Platz für die { $digit } { CASE($cover, "where") }, also { $gone }.
claim-fish-finned = { CASE($base, "where") } liegt jeder Platz für die { $digit } { CASE($cover, "where") } oder ist { OR($fins) }; so oder so { $gone }.
claim-seen-by-all = { CASE($house, "where") } steht die { $digit } in { OR($places) }; jedes dieser Felder sieht { $gone-cells }, also { $gone }.
claim-seen-by-all-in-mark = { $mark } hat die { $digit } in { OR($places) }; jedes dieser Felder sieht { $gone-cells }, also { $gone }.
claim-seen-by-all--king = { CASE($house, "where") } steht die { $digit } in { OR($places) }; jedes dieser Felder berührt { $gone-cells } oder liegt mit { $gone-cells } in { house-any }, also { $gone }.
claim-seen-by-all--knight = { CASE($house, "where") } steht die { $digit } in { OR($places) }; jedes dieser Felder sieht { $gone-cells }, in { house-any } oder durch einen Springerzug, also { $gone }.
claim-pivot-wing--xy-wing = Was immer in { $pivot } steht, in { OR($wings) } steht die { $digit }, also { $gone }.
claim-pivot-wing--xyz-wing = Was immer in { $pivot } steht, die { $digit } steht dort oder in { OR($wings) }, also { $gone }.
claim-linked-wing = { CASE($house, "where") } steht die { $joined } in { OR($link) }, und so kann sie nicht in { $pair } zugleich stehen; in einem der beiden steht die { $digit }, also { $gone }.
claim-chain = Steht in { $start-cell } keine { $start-digit }, so folgt: { $trues }. Es gilt also { $start } oder { $end }, und so oder so { $gone }.
claim-chain-to-itself = Steht in { $start-cell } keine { $start-digit }, so folgt am Ende doch: { $trues }. Es gilt also { $start }, und damit { $gone }.
claim-extended-chain = { $unless }, so folgt: { $trues }. Es gilt also { $start } oder { $end }, und so oder so schließt { $by } { $taken } aus.
claim-extended-chain-seen = { $unless }, so folgt: { $trues }. Es gilt also { $start } oder { $end }, und so oder so { $gone }.
claim-extended-chain-to-itself = { $unless }, so folgt am Ende doch: { $trues }. Es gilt also { $start }, und damit schließt { $by } { $taken } aus.
claim-extended-chain-to-itself-seen = { $unless }, so folgt am Ende doch: { $trues }. Es gilt also { $start }, und damit { $gone }.
claim-either-way = { CASE($house, "where") } steht die { $digit } in { OR($places) }; { $n ->
    [2] so oder so
   *[other] in jedem Fall
} schließt { $by } { $taken } aus.
claim-either-way-in-cell = Ob in { $cell } { OR($digits) } steht, { $by } schließt { $taken } aus.
in-plain-sight = die Ziffer selbst
true = { $digit } in { $cell }
true-in-group = { $digit } in { OR($cells) }
# These begin a sentence: “Steht in r1c1 keine 4, so folgt: …”.
unless = steht in { $cell } keine { $digit }
unless-in-group = steht die { $digit } nicht in { OR($cells) }
true-by-mark = { $true } ({ $by } schließt { $taken } aus)
true-among = { $true } ({ $among } enthalten { $digits })
true-among-by-mark = { $true } ({ $by } schließt { $taken } aus, { $among } enthalten dann { $digits })

## What-ifs

claim-refuted = Mit { $tried } { $end }, also { $gone }.
claim-refuted-later = Folgt man { $n ->
    [1] eine Runde
   *[other] { $rounds } Runden
} lang dem, was aus { $tried } zwingend folgt, so { $end }; also { $gone }.
claim-refuted-linked = Angenommen, es gilt { $tried }: Dann { $links }, und schließlich { $end }. Also { $gone }.
end-no-place = bleibt { CASE($house, "where") } kein Platz für die { $digit }
end-no-digit = bleibt keine Ziffer für { $cell }
end-no-digit-by-mark = lässt { $mark } keine Ziffer für { $cell }
end-no-digit-by-marks = lassen die Zeichen keine Ziffer für { $cell }
end-nothing-fits = lässt sich { $mark } nicht mehr vervollständigen
then-in-house = steht die { $digit } { CASE($house, "where") } in { $cell }
then-last = bleibt für { $cell } nur die { $digit }
then-by-mark = lässt { $mark } für { $cell } nur die { $digit }
then-gone = schließt { $mark } { $taken } aus
taken = { COUNT($digits) ->
    [one] die { $digits }
   *[other] { $digits }
} in { $cells }

## What a mark allows

bounds-least = in { $cell } mindestens { $low }
bounds-most = in { $cell } höchstens { $high }
bounds-both = in { $cell } { $low } bis { $high }
bounds-only = in { $cell } nur { $low }
claim-bounds = { $mark } { $many ->
    [yes] erlauben
   *[no] erlaubt
} { $bounds }, also { $gone }.
claim-bounds--thermometer = { $mark } muss bei jedem Schritt steigen, also { $gone }.
claim-bounds--resting-thermometer = { $mark } darf nicht fallen, also { $gone }.
claim-bounds--diagonal-sum = { $mark } erlaubt { $bounds }, was auch immer in den übrigen Feldern steht, also { $gone }.
claim-enclosed = { $mark } hat alle Ziffern zwischen denen der beiden Enden, also { $gone }.
claim-enclosed-ends = { $mark } braucht Raum für die Ziffern zwischen denen der beiden Enden, also { $gone }.
claim-only-digits = { $mark } erlaubt nur { $digits }, also { $gone }.
claim-only-digits--parity-run = { $mark } verlangt { $digits } in { $cells }, also { $gone }.
claim-only-digits--parity-line = { $mark } hat { OR($digits) } in { $cells }, also { $gone }.
claim-only-digits--low-high-line = { $mark } hat { OR($digits) } in { $cells }, also { $gone }.
claim-only-in = { $mark } legt { COUNT($digits) ->
    [one] die { $digits } auf { OR($cells) }
   *[other] { $digits } auf { $cells }
} fest, also { $gone }.
claim-only-in--counting-area = { $mark } hat { $digits } in { $cells }, also { $gone }.
claim-only-in--quadruple = { $mark } braucht { $digits }, und dafür kommen nur { $cells } in Frage, also { $gone }.
claim-no-partner = { $mark } schließt { COUNT($gone-digits) ->
    [one] die { $gone-digits }
   *[other] { $gone-digits }
} in { $cell } aus, denn sonst bliebe nichts für { $beyond }.
claim-beside = { $mark } und die { $known } in { $beside } schließen { COUNT($gone-digits) ->
    [one] die { $gone-digits }
   *[other] { $gone-digits }
} in { $cell } aus.
claim-beside--non-consecutive = Neben der { $known } in { $beside } steht keine um eins größere oder kleinere Ziffer, also { $gone }.
claim-beside--no-doubles = Neben der { $known } in { $beside } steht weder ihre Hälfte noch ihr Doppeltes, also { $gone }.
claim-beside--barred-sums = Mit der { $known } in { $beside } { COUNT($gone-digits) ->
    [one] ergäbe die { $gone-digits }
   *[other] ergäben { $gone-digits }
} in { $cell } eine verbotene Summe.
claim-too-near = { $mark } schließt { COUNT($gone-digits) ->
    [one] die { $gone-digits }
   *[other] { $gone-digits }
} in { $cell } aus: zu nah an den möglichen Ziffern in { $beside }.
claim-one-combination = { $mark } kann nur { $digits } enthalten, also { $gone }.
claim-one-combination--quadruple = { $mark } füllt alle vier Felder, also { $gone }.
claim-no-combination = { $mark } hat keine Kombination mit { OR($gone-digits) }, also { $gone }.
claim-no-run = { $mark } hat keine Folge mit { OR($gone-digits) }, also { $gone }.
claim-needed = { $mark } braucht die { $digit }, und zwar in { OR($places) }, also { $gone }.
claim-no-filling = { $mark } lässt sich { $impossible } nicht vervollständigen.
    .b = { $mark } geht { $impossible } nicht auf.
claim-no-filling-joined = { $mark } lassen sich { $impossible } nicht alle erfüllen.
claim-same-digit = { $mark } hat dieselbe Ziffer in { $cells }, also { $gone }.
claim-reached = { $mark } lässt neben der { $digit } in { $cell } keine zweite in { $gone-cells } zu, also { $gone }.
claim-reached--king = Ein Königszug führt von der { $digit } in { $cell } nach { $gone-cells }; dort kann also keine { $digit } stehen.
claim-reached--knight = Ein Springerzug führt von der { $digit } in { $cell } nach { $gone-cells }; dort kann also keine { $digit } stehen.
claim-beside-all = { CASE($house, "where") } steht die { $digit } in { OR($places) }, immer neben { $cell }, also { $gone }.
claim-limits-meet = { $mark } ergibt mindestens { $least }, und die Summe ist höchstens { $most }, also { $gone }.
claim-limits-meet-from-above = { $mark } ergibt höchstens { $most }, und die Summe ist mindestens { $least }, also { $gone }.
claim-limits-meet--arrow = { $mark } hat entlang des Schafts mindestens { $least } und im Kreis höchstens { $most }, also { $gone }.
claim-limits-meet-from-above--arrow = { $mark } hat entlang des Schafts höchstens { $most } und im Kreis mindestens { $least }, also { $gone }.
claim-common-sum--square-block = { $mark } muss in jeder gezählten Reihe die Summe { $sums } haben, also { $gone }.
claim-common-sum--open-cage = { $mark } muss in jedem Käfig die Summe { $sums } haben, also { $gone }.
claim-common-sum--equal-part-line = { $mark } muss in jedem Abschnitt die Summe { $sums } haben, also { $gone }.
claim-common-sum--hinge-line = { $mark } muss in jedem Paar die Summe { $sums } haben, also { $gone }.
claim-common-sum = { $mark } muss in jedem Teil die Summe { $sums } haben, also { $gone }.
sums-range = { $least } bis { $most }
claim-left-over = { $houses } { $n ->
    [1] ergibt
   *[other] ergeben zusammen
} { $total }, die ganz darin liegenden { $nouns } { $within }; für { $cells } { COUNT($cells) ->
    [one] bleibt
   *[other] bleibt zusammen
} { $rest }, also { $gone }.
claim-left-over-beyond = { $houses } { $n ->
    [1] ergibt
   *[other] ergeben zusammen
} { $total }, die { $nouns } darüber { $within }; für { $cells } { COUNT($cells) ->
    [one] bleibt
   *[other] bleibt zusammen
} { $rest }, also { $gone }.
claim-steps = { $mark } kann nur Schritte von { OR($steps) } machen, also { $gone }.
claim-first-digits = { $mark } { COUNT($digits) ->
    [one] muss mit { $digits } beginnen
   *[other] kann nur mit { OR($digits) } beginnen
}, und was folgt, muss dazu passen, also { $gone }.
claim-counts-to = { $mark } kann nur an Stelle { OR($places) } stehen, und { $first } zählt dorthin, also { $gone }.
claim-counts-to--pointing = { $mark } kann in seiner Richtung nur { OR($places) } zählen, also { $gone }.
claim-apart = { $mark } lässt { $counts } zwischen den beiden Brotscheiben, also { $gone }.
claim-apart-filled = { $mark } hat { $counts } zwischen den beiden Brotscheiben, gefüllt mit { $fillings }, also { $gone }.
apart-cells = { $number } { $n ->
    [1] Feld
   *[other] Felder
}
claim-held-by-rest = { $rest }, wo ebenfalls jede Ziffer einmal steht, kann die { $digit } nur in { $cell } aufnehmen, also { $gone }.
claim-held-by-rest-settled = { $rest }, wo ebenfalls jede Ziffer einmal steht, hat die { $digit } schon in { $cell }, also { $gone }.
