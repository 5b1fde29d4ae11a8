### What a presenter says. Attributes are further wordings, taken in turn.

## What lies on the table

table-boxes = Ein Diagramm { $size }×{ $size } { $givens ->
    [0] ohne jede Vorgabe
    [1] mit einer Vorgabe
   *[other] mit { $number } Vorgaben
}.
table-irregular = Ein Diagramm { $size }×{ $size } mit unregelmäßigen Gebieten und { $givens ->
    [0] ohne jede Vorgabe
    [1] einer Vorgabe
   *[other] { $number } Vorgaben
}. Die Gebiete heißen A, B, C und so weiter, in der Reihenfolge, in der die Zeilen sie erreichen.
table-none = Ein lateinisches Quadrat { $size }×{ $size } { $givens ->
    [0] ohne jede Vorgabe
    [1] mit einer Vorgabe
   *[other] mit { $number } Vorgaben
}.
table-overlap = { $grids } überlappende Diagramme { $size }×{ $size } { $givens ->
    [0] ohne jede Vorgabe
    [1] mit einer Vorgabe
   *[other] mit { $number } Vorgaben
}.
table-holes = Ein Diagramm { $size }×{ $size } mit schwarzen Feldern und { $givens ->
    [0] ohne jede Vorgabe
    [1] einer Vorgabe
   *[other] { $number } Vorgaben
}.
symmetry = { $turn } bildet das Rätsel auf sich selbst ab; die meisten Schritte treten daher paarweise auf.
symmetry-relabelled = { $turn } bildet das Rätsel auf sich selbst ab, verbunden mit { $cycles }; die meisten Schritte treten daher paarweise auf.
cycle-swapped = dem Tausch von { $digits }
cycle-round = dem Ringtausch von { $digits }
turn-half = eine halbe Drehung
turn-left-right = eine Spiegelung von links nach rechts
turn-top-bottom = eine Spiegelung von oben nach unten
turn-falling = eine Spiegelung an der Diagonale von links oben
turn-rising = eine Spiegelung an der Diagonale von rechts oben
turn-quarter = eine Vierteldrehung
turn-quarter-right = eine Vierteldrehung nach rechts
turn-quarter-left = eine Vierteldrehung nach links

introduction-singles-crux = Stufe { $band }: durchweg Einer; der schwierige Augenblick kommt bei { $filled } gefüllten Feldern.
introduction-singles-crux-at-start = Stufe { $band }: durchweg Einer; der schwierige Augenblick kommt gleich zu Beginn.
introduction-singles-bottlenecks = Stufe { $band }: durchweg Einer, mit der einen oder anderen Engstelle.
introduction-singles-choice = Stufe { $band }: durchweg Einer, und immer stehen mindestens { $choice } zur Wahl.
introduction-singles = Stufe { $band }: durchweg Einer, und keiner ist schwer zu finden.
introduction-stuck-crux = Stufe { $band }: Die Einer gehen { $times } aus; der schwierige Augenblick kommt bei { $filled } gefüllten Feldern.
introduction-stuck-crux-at-start = Stufe { $band }: Die Einer gehen { $times } aus; der schwierige Augenblick kommt gleich zu Beginn.
introduction-stuck = Stufe { $band }: Die Einer gehen { $times } aus.
introduction-stuck-briefly = Stufe { $band }: Die Einer gehen { $times } aus, aber nie für lange.
times = { $n ->
    [1] einmal
    [2] zweimal
    [3] dreimal
    [4] viermal
   *[other] { $number } Mal
}

## Placements

places-last-of-digit = Die letzte { $digit } kommt nach { $cell }.
    .b = { CASE($house, "where") } findet die letzte { $digit } ihren Platz: { $cell }.
places-last-cell = Das letzte freie Feld { CASE($house, "of") }, { $cell }, erhält die { $digit }.
    .b = { CASE($house, "where") } fehlt nur noch die { $digit }; sie kommt nach { $cell }.
    .c = Mit der { $digit } in { $cell } ist { $house } voll.
places-naked-single = Für { $cell } bleibt nur die { $digit }.
    .b = Nur die { $digit } passt in { $cell }.
places-hidden-single = { CASE($house, "where") } kann die { $digit } nur in { $cell } stehen.
    .b = { CASE($house, "where") } gibt es einen einzigen Platz für die { $digit }: { $cell }.
    .c = Die { $digit } { CASE($house, "of") } kommt nach { $cell }.
# The same where more of the passage stands before it.
then-last-of-digit = Dann kommt die letzte { $digit } nach { $cell }.
    .b = { CASE($house, "where") } findet die letzte { $digit } ihren Platz: { $cell }.
then-last-cell = Das letzte freie Feld { CASE($house, "of") }, { $cell }, erhält die { $digit }.
    .b = Dann fehlt { CASE($house, "where") } nur noch die { $digit }; sie kommt nach { $cell }.
    .c = Mit der { $digit } in { $cell } ist { $house } voll.
    .d = Als Nächstes erhält das letzte freie Feld { CASE($house, "of") }, { $cell }, die { $digit }.
then-naked-single = Dann bleibt für { $cell } nur die { $digit }.
    .b = Nur die { $digit } passt in { $cell }.
then-hidden-single = { CASE($house, "where") } kann die { $digit } nur in { $cell } stehen.
    .b = Dann gibt es { CASE($house, "where") } einen einzigen Platz für die { $digit }: { $cell }.
    .c = Die { $digit } { CASE($house, "of") } kommt nach { $cell }.
    .d = Als Nächstes steht { CASE($house, "where") } die { $digit } fest: Sie kommt nach { $cell }.

leaves-last-cell = So bleibt die { $digit } für { $cell }, das letzte freie Feld { CASE($house, "of") }.
leaves-naked-single = So bleibt für { $cell } nur die { $digit }.
    .b = Dann muss in { $cell } die { $digit } stehen.
leaves-hidden-single = So bleibt { CASE($house, "where") } nur { $cell } für die { $digit }.
    .b = Für die { $digit } bleibt { CASE($house, "where") } damit nur { $cell }.
    .c = Die { $digit } { CASE($house, "of") } muss also in { $cell } stehen.

opens-last-cell = Das letzte freie Feld { CASE($house, "of") }, { $cell }, erhält die { $digit }.
opens-naked-single = Damit bleibt in { $cell } allein die { $digit }.
    .b = Jetzt kann in { $cell } nur noch die { $digit } stehen.
opens-hidden-single = Damit bleibt { $cell } als einziger Platz für die { $digit } { CASE($house, "where") }.
    .b = Jetzt hat die { $digit } { CASE($house, "where") } nur noch einen Platz: { $cell }.
    .c = Damit kommt die { $digit } { CASE($house, "of") } nach { $cell }.
    .d = So findet die { $digit } { CASE($house, "where") } ihren Platz in { $cell }.

run-starts = Beginnen Sie mit der { $digit }: { $cells }.
run-completes = Die letzten { $count } Plätze für die { $digit } sind { $cells }.
    .b = Die { $digit } fehlt noch { $count } Mal; sie kommt nach { $cells }.
    .c = Mit { $cells } ist die { $digit } vollständig.
run-chained = Eine { $digit } zieht die nächste nach sich: { $cells }.
    .b = Bei der { $digit } folgt eines aus dem anderen: { $cells }.
run-band = Die Suche nach der { $digit } in { $band } ergibt { $cells }.
    .b = In { $band } steht die { $digit } in { $cells }.
run = Nun folgt die { $digit } in { $cells }.
    .b = Die Suche nach der { $digit } ergibt { $cells }.
    .c = Dann die { $digit }: { $cells }.
    .d = Weiter geht es mit der { $digit } in { $cells }.
# In the dative, after “in”.
band-top = der oberen Blockzeile
band-middle = der mittleren Blockzeile
band-bottom = der unteren Blockzeile
band-left = der linken Blockspalte
band-centre = der mittleren Blockspalte
band-right = der rechten Blockspalte
fills = { $house } füllt sich mit { $placed }.
    .b = { $house } ist fertig mit { $placed }.

with-image-last-cell = Das letzte freie Feld { CASE($house, "of") }, { $cell }, erhält die { $digit } und aus Symmetrie { $image } die { $other }.
with-image-naked-single = Für { $cell } bleibt nur die { $digit } und aus Symmetrie für { $image } nur die { $other }.
with-image-hidden-single = { CASE($house, "where") } kann die { $digit } nur in { $cell } stehen; aus Symmetrie steht die { $other } in { $image }.
run-with-images = Die { $digit } kommt nach { $cells } und aus Symmetrie die { $other } nach { $images }.
run-with-images-alike = Die { $digit } kommt nach { $cells } und aus Symmetrie auch nach { $images }.

starts-here = Hier geht es los.
starts-in-house = Beginnen Sie mit der { $digit } { CASE($house, "of") }: Wegen der { $digit } in { $lookers } bleibt nur { $cell }.
seen-last-cell = { CASE($house, "where") } fehlt nur noch die { $digit }; sie kommt nach { $cell }.
seen-lookers = Wegen der { $digit } in { $lookers } bleibt { CASE($house, "where") } nur { $cell } für die { $digit }.
seen-lookers-struck = Wegen der { $digit } in { $lookers } und der früheren Streichungen bleibt { CASE($house, "where") } nur { $cell } für die { $digit }.
seen-lookers-marked = Wegen der { $digit } in { $lookers } und der Zeichen bleibt { CASE($house, "where") } nur { $cell } für die { $digit }.
seen-lookers-struck-marked = Wegen der { $digit } in { $lookers }, der Zeichen und der früheren Streichungen bleibt { CASE($house, "where") } nur { $cell } für die { $digit }.
seen-struck = Nach den früheren Streichungen bleibt { CASE($house, "where") } nur { $cell } für die { $digit }.
seen-marked = Die Zeichen lassen { CASE($house, "where") } nur { $cell } für die { $digit }.
seen-struck-marked = Die Zeichen und die früheren Streichungen lassen { CASE($house, "where") } nur { $cell } für die { $digit }.
# What is ruled out, each digit with the house or step that does so: “1 und 2 (Zeile 3), 7 (ein nacktes Paar)”.
seen-in-cell = In { $cell } entfallen { $held }; es bleibt nur die { $digit }.
held-first = { $digits } ({ $house })
held-next = { $digits } ({ $house })
held-first-others = { $digits } (andere Felder in Sicht)
held-next-others = { $digits } (andere Felder in Sicht)
held-struck = { $digits } ({ $steps })
held-marked = { $digits } (das eigene Zeichen)

fixes = { $marks } { $many ->
    [yes] legen
   *[no] legt
} { $count ->
    [1] ein Feld
   *[other] { $number } Felder
} sofort fest: { $placed }.
taken-from-proof = Hier endet die Leiter, und der Beweis muss helfen: { $placed }.
falls-into-place = Von hier an fügt sich alles: { $placed }.
    .b = Der Rest ergibt sich: { $placed }.
remains = Es bleibt { $placed }.
ending-more = { $most }, { $next }
ending-last = { $most } und zuletzt { $last }

## Where it gets narrow

few-lone-naked = Vorsicht: Bei { $filled } gefüllten Feldern gibt es nur einen Einer, und der ist nackt.
    .b = Bei { $filled } gefüllten Feldern bleibt ein einziger nackter Einer.
    .c = Nur ein Einer ist bei { $filled } gefüllten Feldern zu finden, ein nackter.
few-naked = Bei { $filled } gefüllten Feldern sind nur noch nackte Einer da, { $number } an der Zahl.
    .b = Mehr als { $number } nackte Einer gibt es bei { $filled } gefüllten Feldern nicht.
few = Genau hinsehen: Bei { $filled } gefüllten Feldern gibt es nur { $singles ->
    [1] einen Einer
   *[other] { $number } Einer
}.
    .b = Nur { $singles ->
    [1] ein Einer ist
   *[other] { $number } Einer sind
} bei { $filled } gefüllten Feldern zu finden.
crux-lone-naked = Jetzt kommt der schwierige Augenblick: Bei { $filled } gefüllten Feldern gibt es nur einen Einer, und der ist nackt.
crux-naked = Jetzt kommt der schwierige Augenblick: Bei { $filled } gefüllten Feldern sind nur noch nackte Einer da, { $number } an der Zahl.
crux-few = Jetzt kommt der schwierige Augenblick: Bei { $filled } gefüllten Feldern gibt es nur { $singles ->
    [1] einen Einer
   *[other] { $number } Einer
}.
stuck = Bei { $filled } gefüllten Feldern ist kein Einer mehr da.
    .b = Bei { $filled } gefüllten Feldern gehen die Einer aus.
    .c = Kein Einer ist bei { $filled } gefüllten Feldern mehr zu finden.
stuck-at-start = Zu Beginn gibt es keinen Einer.
stuck-long = Bei { $filled } gefüllten Feldern ist kein Einer mehr da; hier hilft nur: { $steps }.
    .b = Bei { $filled } gefüllten Feldern gehen die Einer aus; was weiterführt: { $steps }.
stuck-long-at-start = Zu Beginn gibt es keinen Einer; hier hilft nur: { $steps }.
crux = Jetzt kommt der schwierige Augenblick. Bei { $filled } gefüllten Feldern ist kein Einer mehr da; hier hilft nur: { $steps }.
crux-at-start = Jetzt kommt der schwierige Augenblick. Zu Beginn gibt es keinen Einer; hier hilft nur: { $steps }.
aim-hidden-single = Das Ziel ist die { $digit } { CASE($house, "of") }: Sie gehört nach { $cell }, sobald sie in { $rival-cells } gestrichen ist.
aim-naked-single = Das Ziel ist { $cell }: Dort steht die { $digit }, sobald { COUNT($rival-digits) ->
    [one] die { $rival-digits } gestrichen ist
   *[other] { $rival-digits } gestrichen sind
}.

## Eliminations

names = Hier hilft { $technique }.
    .b = Nun kommt { $technique }.
    .c = Gefragt ist { $technique }.
same-holds = Ebenso { $mark }: Damit { $gone }.
by-symmetry = Aus Symmetrie { $gone }.
by-symmetry-places = Aus Symmetrie erhält { $cell } die { $digit }.
by-symmetry-opens = Aus Symmetrie { $gone }, und { $cell } erhält die { $digit }.
    .b = Im Spiegelbild geht es genauso: Dort { $gone }, und { $cell } erhält die { $digit }.
follow-end = Es folgen { $number } Annahmen; jede lässt { CASE($house, "where") } keinen Platz für die { $digit }.
follow-mark = Es folgen { $number } Annahmen; den Ausschlag gibt jedes Mal { $mark }.
follow-kind = Es folgen { $number } Annahmen, alle widerlegt durch { $marks }.
follow-tried-digit = Es folgen { $number } Annahmen, alle über die { $tried-digit }.
follow-tried-cell = Es folgen { $number } Annahmen, alle über { $tried-cell }.
follow-tried-house = Es folgen { $number } Annahmen, alle { CASE($tried-house, "where") }.
follow = Es folgen { $number } Annahmen.
more-alike = Auf dieselbe Weise, mit { $count ->
    [1] einer weiteren Annahme
   *[other] { $number } weiteren Annahmen
}, { $gone }.
