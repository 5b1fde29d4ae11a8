### What a presenter says. Attributes are further wordings, taken in turn.

## What lies on the table

table-boxes = Een diagram van { $size }×{ $size } { $givens ->
    [0] zonder gegeven cijfers
    [1] met één gegeven cijfer
   *[other] met { $number } gegeven cijfers
}.
table-irregular = Een diagram van { $size }×{ $size } met onregelmatige gebieden, { $givens ->
    [0] zonder gegeven cijfers
    [1] met één gegeven cijfer
   *[other] met { $number } gegeven cijfers
}. De gebieden dragen letters vanaf A, in de volgorde waarin je ze rij na rij tegenkomt.
table-none = Een Latijns vierkant van { $size }×{ $size } { $givens ->
    [0] zonder gegeven cijfers
    [1] met één gegeven cijfer
   *[other] met { $number } gegeven cijfers
}.
table-overlap = { $grids } overlappende diagrammen van { $size }×{ $size } { $givens ->
    [0] zonder gegeven cijfers
    [1] met één gegeven cijfer
   *[other] met { $number } gegeven cijfers
}.
table-holes = Een diagram van { $size }×{ $size } met zwarte vakjes, { $givens ->
    [0] zonder gegeven cijfers
    [1] met één gegeven cijfer
   *[other] met { $number } gegeven cijfers
}.
symmetry = Door { $turn } gaat de puzzel in zichzelf over; daarom komen de meeste stappen in paren.
symmetry-relabelled = Door { $turn }, met { $cycles }, gaat de puzzel in zichzelf over; daarom komen de meeste stappen in paren.
cycle-swapped = { $digits } omgewisseld
cycle-round = { $digits } in de rondte doorgeschoven
turn-half = een halve draai
turn-left-right = een spiegeling van links naar rechts
turn-top-bottom = een spiegeling van boven naar beneden
turn-falling = een spiegeling in de diagonaal vanaf linksboven
turn-rising = een spiegeling in de diagonaal vanaf rechtsboven
turn-quarter = een kwartdraai
turn-quarter-right = een kwartdraai naar rechts
turn-quarter-left = een kwartdraai naar links

introduction-singles-crux = Niveau { $band }: van begin tot eind singles, met het lastige moment bij { $filled } ingevulde vakjes.
introduction-singles-crux-at-start = Niveau { $band }: van begin tot eind singles, met het lastige moment meteen aan het begin.
introduction-singles-bottlenecks = Niveau { $band }: van begin tot eind singles, met hier en daar een smalle doorgang.
introduction-singles-choice = Niveau { $band }: van begin tot eind singles, en altijd ten minste { $choice } om uit te kiezen.
introduction-singles = Niveau { $band }: van begin tot eind singles, en geen die lastig te vinden is.
introduction-stuck-crux = Niveau { $band }: de singles raken { $times } op, en het lastige moment komt bij { $filled } ingevulde vakjes.
introduction-stuck-crux-at-start = Niveau { $band }: de singles raken { $times } op, en het lastige moment komt meteen aan het begin.
introduction-stuck = Niveau { $band }: de singles raken { $times } op.
introduction-stuck-briefly = Niveau { $band }: de singles raken { $times } op, maar nooit voor lang.
times = { $n ->
    [1] één keer
   *[other] { $number } keer
}

## Placements

places-last-of-digit = De laatste { $digit } komt in { $cell }.
    .b = In { $house } gaat de laatste { $digit } naar { $cell }.
places-last-cell = Het laatste vakje van { $house }, { $cell }, wordt { $digit }.
    .b = In { $house } ontbreekt alleen nog { $digit }, en die komt in { $cell }.
    .c = Met { $digit } in { $cell } is { $house } vol.
places-naked-single = Voor { $cell } blijft alleen { $digit } over.
    .b = In { $cell } past alleen { $digit }.
places-hidden-single = In { $house } kan { $digit } alleen in { $cell }.
    .b = { $house } heeft één plaats voor { $digit }: { $cell }.
    .c = De { $digit } van { $house } komt in { $cell }.
then-last-of-digit = Dan komt de laatste { $digit } in { $cell }.
    .b = In { $house } gaat de laatste { $digit } naar { $cell }.
then-last-cell = Het laatste vakje van { $house }, { $cell }, wordt { $digit }.
    .b = Dan ontbreekt in { $house } alleen nog { $digit }, en die komt in { $cell }.
    .c = Met { $digit } in { $cell } is { $house } vol.
    .d = Daarna komt { $digit } in { $cell }, het laatste vakje van { $house }.
then-naked-single = Dan blijft voor { $cell } alleen { $digit } over.
    .b = In { $cell } past alleen { $digit }.
then-hidden-single = In { $house } kan { $digit } alleen in { $cell }.
    .b = Dan heeft { $house } één plaats voor { $digit }: { $cell }.
    .c = De { $digit } van { $house } komt in { $cell }.
    .d = Nu kan { $digit } in { $house } alleen in { $cell }.

leaves-last-cell = Zo blijft { $digit } over voor { $cell }, het laatste vakje van { $house }.
leaves-naked-single = Zo blijft voor { $cell } alleen { $digit } over.
    .b = Dan moet { $cell } wel { $digit } zijn.
leaves-hidden-single = Zo blijft { $cell } over voor de { $digit } van { $house }.
    .b = Zo houdt { $house } alleen { $cell } over voor { $digit }.
    .c = Dus moet de { $digit } van { $house } in { $cell }.

opens-last-cell = Het laatste vakje van { $house }, { $cell }, wordt { $digit }.
opens-naked-single = Daardoor blijft in { $cell } alleen { $digit } over.
    .b = Nu kan { $cell } alleen nog { $digit } zijn.
opens-hidden-single = Daardoor is { $cell } de enige plaats voor { $digit } in { $house }.
    .b = Nu heeft { $house } nog één plaats voor { $digit }: { $cell }.
    .c = Daarmee komt de { $digit } van { $house } in { $cell }.
    .d = Dus staat de { $digit } van { $house } in { $cell }.

run-starts = Begin met de { $digit }: { $cells }.
run-completes = De laatste plaatsen voor { $digit } zijn { $cells }.
    .b = Nog { $count } keer { $digit }, in { $cells }: daarmee is dat cijfer klaar.
    .c = De { $digit } is klaar met { $cells }.
run-chained = De ene { $digit } leidt naar de volgende: { $cells }.
    .b = Elke { $digit } volgt uit de vorige: { $cells }.
run-band = Zoek de { $digit } in de { $band }: dat geeft { $cells }.
    .b = In de { $band } komt de { $digit } in { $cells }.
run = Dan { $count } keer { $digit }, in { $cells }.
    .b = De { $digit } nalopen geeft { $cells }.
    .c = Dan de { $digit }: { $cells }.
    .d = Het gaat verder met de { $digit } in { $cells }.
band-top = bovenste blokkenrij
band-middle = middelste blokkenrij
band-bottom = onderste blokkenrij
band-left = linker blokkenkolom
band-centre = middelste blokkenkolom
band-right = rechter blokkenkolom
fills = Met { $placed } is { $house } vol.
    .b = Zo is { $house } klaar: { $placed }.

with-image-last-cell = Het laatste vakje van { $house }, { $cell }, wordt { $digit }, en door de symmetrie komt { $other } in { $image }.
with-image-naked-single = Voor { $cell } blijft alleen { $digit } over, en door de symmetrie { $other } voor { $image }.
with-image-hidden-single = In { $house } kan { $digit } alleen in { $cell }, en door de symmetrie komt { $other } in { $image }.
run-with-images = De { $digit } komt in { $cells }, en door de symmetrie komt { $other } in { $images }.
run-with-images-alike = De { $digit } komt in { $cells }, en door de symmetrie ook in { $images }.

starts-here = Begin hier.
starts-in-house = Begin met de { $digit } van { $house }: de { $digit } in { $lookers } laat alleen { $cell } over.
seen-last-cell = In { $house } ontbreekt alleen { $digit }, en die komt in { $cell }.
seen-lookers = De { $digit } in { $lookers } laat in { $house } alleen { $cell } over voor { $digit }.
seen-lookers-struck = De { $digit } in { $lookers } en wat eerder verviel, laten in { $house } alleen { $cell } over voor { $digit }.
seen-lookers-marked = De { $digit } in { $lookers } en de markeringen laten in { $house } alleen { $cell } over voor { $digit }.
seen-lookers-struck-marked = De { $digit } in { $lookers }, de markeringen en wat eerder verviel, laten in { $house } alleen { $cell } over voor { $digit }.
seen-struck = Wat eerder verviel, laat in { $house } alleen { $cell } over voor { $digit }.
seen-marked = De markeringen laten in { $house } alleen { $cell } over voor { $digit }.
seen-struck-marked = De markeringen en wat eerder verviel, laten in { $house } alleen { $cell } over voor { $digit }.
seen-in-cell = { $held }, dus { $cell } kan alleen { $digit } zijn.
held-first = { $house } heeft { $digits }
held-next = { $house } voegt { $digits } toe
held-first-others = andere vakjes in zicht hebben { $digits }
held-next-others = andere vakjes in zicht voegen { $digits } toe
held-struck = door { $steps } { COUNT($digits) ->
    [one] verviel
   *[other] vervielen
} { $digits }
held-marked = de markering sluit { $digits } uit

fixes = { $marks } { $many ->
    [yes] leggen
   *[no] legt
} { $count ->
    [1] één vakje
   *[other] { $number } vakjes
} meteen vast: { $placed }.
taken-from-proof = Hier eindigt de ladder, en het bewijs moet helpen met { $placed }.
falls-into-place = Vanaf hier valt alles op zijn plaats: { $placed }.
    .b = De rest valt op zijn plaats: { $placed }.
remains = Wat overblijft, is { $placed }.
ending-more = { $most }, { $next }
ending-last = { $most }, en ten slotte { $last }

## Where it gets narrow

few-lone-naked = Let op: bij { $filled } ingevulde vakjes is de enige single een naakte.
    .b = Bij { $filled } ingevulde vakjes is één naakte single alles wat er is.
    .c = Eén single staat open bij { $filled } ingevulde vakjes, en het is een naakte.
few-naked = Bij { $filled } ingevulde vakjes zijn er alleen nog naakte singles: { $number }.
    .b = { $number } naakte singles zijn alles wat er is bij { $filled } ingevulde vakjes.
few = Kijk goed: bij { $filled } ingevulde vakjes { $singles ->
    [1] is er maar één single
   *[other] zijn er maar { $number } singles
}.
    .b = Bij { $filled } ingevulde vakjes { $singles ->
    [1] is er slechts één single
   *[other] zijn er slechts { $number } singles
}.
crux-lone-naked = Nu komt het lastige moment: bij { $filled } ingevulde vakjes is de enige single een naakte.
crux-naked = Nu komt het lastige moment: bij { $filled } ingevulde vakjes zijn er alleen nog naakte singles: { $number }.
crux-few = Nu komt het lastige moment: bij { $filled } ingevulde vakjes { $singles ->
    [1] is er maar één single
   *[other] zijn er maar { $number } singles
}.
stuck = Bij { $filled } ingevulde vakjes is er geen single meer.
    .b = Bij { $filled } ingevulde vakjes zijn de singles op.
    .c = De singles zijn op bij { $filled } ingevulde vakjes.
stuck-at-start = Er is geen single om mee te beginnen.
stuck-long = Bij { $filled } ingevulde vakjes is er geen single meer, en heb je { $steps } nodig.
    .b = Bij { $filled } ingevulde vakjes zijn de singles op; om verder te komen heb je { $steps } nodig.
stuck-long-at-start = Er is geen single om mee te beginnen: je hebt { $steps } nodig.
crux = Nu komt het lastige moment: bij { $filled } ingevulde vakjes is er geen single meer, en heb je { $steps } nodig.
crux-at-start = Nu komt het lastige moment: er is geen single om mee te beginnen, en je hebt { $steps } nodig.
aim-hidden-single = Het doel is de { $digit } van { $house }: die hoort in { $cell } zodra { $digit } vervalt in { $rival-cells }.
aim-naked-single = Het doel is { $cell }: dat wordt { $digit } zodra { $rival-digits } er { COUNT($rival-digits) ->
    [one] vervalt
   *[other] vervallen
}.

## Eliminations

names = Zoek { $technique }.
    .b = Nu volgt { $technique }.
    .c = Hier helpt { $technique }.
same-holds = Hetzelfde geldt voor { $mark }, dus { $gone }.
by-symmetry = De symmetrie geeft: { $gone }.
by-symmetry-places = De symmetrie geeft: { $cell } wordt { $digit }.
by-symmetry-opens = De symmetrie geeft: { $gone }, en { $cell } wordt { $digit }.
    .b = Het spiegelbeeld gaat net zo: { $gone }, en { $cell } wordt { $digit }.
follow-end = Nu volgen { $number } wat-alsvragen, die { $house } elk zonder plaats voor { $digit } laten.
follow-mark = Nu volgen { $number } wat-alsvragen, die alle stuklopen op { $mark }.
follow-kind = Nu volgen { $number } wat-alsvragen, die elk stuklopen op { $marks }.
follow-tried-digit = Nu volgen { $number } wat-alsvragen, alle over { $tried-digit }.
follow-tried-cell = Nu volgen { $number } wat-alsvragen, alle over { $tried-cell }.
follow-tried-house = Nu volgen { $number } wat-alsvragen, alle in { $tried-house }.
follow = Nu volgen { $number } wat-alsvragen.
more-alike = Op dezelfde manier { $count ->
    [1] laat nog één stap zien
   *[other] laten nog { $number } stappen zien
}: { $gone }.
