### Why a step holds: a sentence for each claim. A kind of rule or a technique may have a wording of its own, after “--”.
### $gone is what goes, as a clause; $mark is the mark that says so, always the subject. Attributes are further wordings.

## What goes

gone-first = { COUNT($digits) ->
    [one] se elimina el { $digits }
   *[other] se eliminan { $digits }
} de { $cells }
gone-next = { COUNT($digits) ->
    [one] el { $digits }
   *[other] { $digits }
} de { $cells }
impossible = con { OR($digits) } en { OR($cells) }

## Singles

claim-last-cell = La última casilla vacía { CASE($house, "de") }, { $cell }, recibe el { $digit }.
claim-hidden-single = En { $house }, solo { $cell } admite el { $digit }.
claim-naked-single = Para { $cell } solo queda el { $digit }.
claim-fixed = { $mark } no deja elección a { $cell }: contiene el { $digit }, sean cuales sean las cifras dadas.
claim-from-proof = La escala de técnicas termina aquí; el { $digit } de { $cell } se toma de la demostración.

## Patterns

claim-locked = En { $home }, todos los lugares del { $digit } están en { $other }, así que { $gone }.
claim-naked-subset = En { $house }, { $cells } se reparten { $digits }, así que { $gone }.
claim-naked-subset-in-mark = { $mark } no repite ninguna cifra, y ahí { $cells } { COUNT($cells) ->
    [one] contiene
   *[other] contienen
} { $digits }, así que { $gone }.
claim-naked-subset--limits = En { $house }, { $cells } están limitadas a { $digits }, así que { $gone }.
claim-naked-subset--parity = En { $house }, { $cells } agotan las cifras { $digits }, así que { $gone }.
claim-hidden-subset = En { $house }, las cifras { $digits } solo caben en { $cells }, así que { $gone }.
claim-fish = En { $base }, todos los lugares del { $digit } están en { $cover }, así que { $gone }.
claim-fish-finned = En { $base }, todos los lugares del { $digit } están en { $cover }, o bien el { $digit } está en { OR($fins) }; en ambos casos { $gone }.
claim-seen-by-all = En { $house }, el { $digit } está en { OR($places) }; { COUNT($places) ->
    [2] ambas
   *[other] todas ellas
} ven { $gone-cells }, así que { $gone }.
claim-seen-by-all-in-mark = { $mark } tiene su { $digit } en { OR($places) }; { COUNT($places) ->
    [2] ambas
   *[other] todas ellas
} ven { $gone-cells }, así que { $gone }.
claim-seen-by-all--king = En { $house }, el { $digit } está en { OR($places) }; { COUNT($places) ->
    [2] ambas
   *[other] todas ellas
} tocan { $gone-cells } o comparten { house-any } con { COUNT($gone-cells) ->
    [one] ella
   *[other] ellas
}, así que { $gone }.
claim-seen-by-all--knight = En { $house }, el { $digit } está en { OR($places) }; { COUNT($places) ->
    [2] ambas
   *[other] todas ellas
} ven { $gone-cells }, por { house-any } o a un salto del caballo, así que { $gone }.
claim-pivot-wing--xy-wing = Sea cual sea la cifra de { $pivot }, el { $digit } está en { OR($wings) }, así que { $gone }.
claim-pivot-wing--xyz-wing = Sea cual sea la cifra de { $pivot }, el { $digit } está ahí o en { OR($wings) }, así que { $gone }.
claim-linked-wing = En { $house }, el { $joined } está en { OR($link) }, así que { $pair } no pueden tener ambas el { $joined }; una de las dos tiene el { $digit }, y { $gone }.
claim-chain = Si { $start-cell } no es { $start-digit }, entonces { $trues }. Luego { $start } o { $end }, y en ambos casos { $gone }.
claim-chain-to-itself = Si { $start-cell } no es { $start-digit }, entonces { $trues }, a pesar de todo. Luego { $start }, y { $gone }.
claim-extended-chain = Si { $unless }, entonces { $trues }. Luego { $start }, o { $end }, y en ambos casos { $by } descarta { $taken }.
claim-extended-chain-seen = Si { $unless }, entonces { $trues }. Luego { $start }, o { $end }, y en ambos casos { $gone }.
claim-extended-chain-to-itself = Si { $unless }, entonces { $trues }, a pesar de todo. Luego { $start }, y { $by } descarta { $taken }.
claim-extended-chain-to-itself-seen = Si { $unless }, entonces { $trues }, a pesar de todo. Luego { $start }, y { $gone }.
claim-either-way = En { $house }, el { $digit } está en { OR($places) }; { $n ->
    [2] en ambos casos
   *[other] en cualquier caso
} { $by } descarta { $taken }.
claim-either-way-in-cell = Sea { OR($digits) } la cifra de { $cell }, { $by } descarta { $taken }.
in-plain-sight = la propia cifra
true = { $cell } es { $digit }
true-in-group = el { $digit } está en { OR($cells) }
unless = { $cell } no es { $digit }
unless-in-group = el { $digit } no está en { OR($cells) }
true-by-mark = { $by } descarta { $taken }, así que { $true }
true-among = { $among } se reparten { $digits }, así que { $true }
true-among-by-mark = { $by } descarta { $taken }, con lo que { $among } se reparten { $digits } y { $true }

## What-ifs

claim-refuted = Con { $tried }, { $end }, así que { $gone }.
claim-refuted-later = Con { $tried }, { $end } tras { $n ->
    [1] una ronda
   *[other] { $rounds } rondas
} de deducciones obligadas, así que { $gone }.
claim-refuted-linked = Suponga { $tried }: entonces { $links }, y { $end }. Luego { $gone }.
end-no-place = { $house } se queda sin lugar para el { $digit }
end-no-digit = no queda ninguna cifra para { $cell }
end-no-digit-by-mark = { $mark } no deja ninguna cifra para { $cell }
end-no-digit-by-marks = las marcas no dejan ninguna cifra para { $cell }
end-nothing-fits = { $mark } ya no se puede completar
then-in-house = { $house } tiene su { $digit } en { $cell }
then-last = { $cell } solo puede ser { $digit }
then-by-mark = { $mark } solo deja el { $digit } para { $cell }
then-gone = { $mark } descarta { $taken }
taken = { $digits } en { $cells }

## What a mark allows

bounds-least = { $cell } en { $low } como mínimo
bounds-most = { $cell } en { $high } como máximo
bounds-both = { $cell } entre { $low } y { $high }
bounds-only = { $cell } en { $low }
claim-bounds = { $mark } { $many ->
    [yes] dejan
   *[no] deja
} { $bounds }, así que { $gone }.
claim-bounds--thermometer = { $mark } tiene que subir en cada paso, así que { $gone }.
claim-bounds--resting-thermometer = { $mark } no puede bajar, así que { $gone }.
claim-bounds--diagonal-sum = { $mark } deja { $bounds }, contengan lo que contengan sus demás casillas, así que { $gone }.
claim-enclosed = { $mark } tiene todas sus cifras entre las de sus dos extremos, así que { $gone }.
claim-enclosed-ends = { $mark } necesita sitio para sus cifras entre las de sus dos extremos, así que { $gone }.
claim-only-digits = { $mark } solo admite { $digits }, así que { $gone }.
claim-only-digits--parity-run = { $mark } exige { $digits } en { $cells }, así que { $gone }.
claim-only-digits--parity-line = { $mark } tiene { OR($digits) } en { $cells }, así que { $gone }.
claim-only-digits--low-high-line = { $mark } tiene { OR($digits) } en { $cells }, así que { $gone }.
claim-only-in = { $mark } obliga a poner { COUNT($digits) ->
    [one] el { $digits } en { OR($cells) }
   *[other] { $digits } en { $cells }
}, así que { $gone }.
claim-only-in--counting-area = { $mark } tiene { COUNT($digits) ->
    [one] su { $digits }
   *[other] sus { $digits }
} en { $cells }, así que { $gone }.
claim-only-in--quadruple = { $mark } necesita { $digits }, que solo { COUNT($digits) ->
    [one] puede
   *[other] pueden
} estar en { $cells }, así que { $gone }.
claim-no-partner = { $mark } descarta { $gone-digits } en { $cell }: { $beyond } se quedaría sin cifra posible.
claim-beside = { $mark } y el { $known } de { $beside } descartan { $gone-digits } en { $cell }.
claim-beside--non-consecutive = El { $known } de { $beside } no admite en las casillas contiguas ni la cifra anterior ni la siguiente, así que { $gone }.
    .b = Junto al { $known } de { $beside } no hay ninguna cifra que valga uno más o uno menos, así que { $gone }.
claim-beside--no-doubles = Junto al { $known } de { $beside } no están ni su mitad ni su doble, así que { $gone }.
claim-beside--barred-sums = Con el { $known } de { $beside }, poner { OR($gone-digits) } en { $cell } daría una suma prohibida.
claim-too-near = { $mark } descarta { $gone-digits } en { $cell }, demasiado cerca de lo que { COUNT($beside) ->
    [one] puede
   *[other] pueden
} contener { $beside }.
claim-one-combination = { $mark } solo puede contener { $digits }, así que { $gone }.
claim-one-combination--quadruple = { $mark } llena sus cuatro casillas, así que { $gone }.
claim-no-combination = { $mark } no tiene ninguna combinación con { OR($gone-digits) }, así que { $gone }.
claim-no-run = { $mark } no tiene ninguna serie con { OR($gone-digits) }, así que { $gone }.
claim-needed = { $mark } necesita el { $digit }, en { OR($places) }, así que { $gone }.
claim-no-filling = { $mark } no se puede completar { $impossible }.
    .b = { $mark } no tiene solución { $impossible }.
claim-no-filling-joined = { $mark } no se pueden cumplir a la vez { $impossible }.
claim-same-digit = { $mark } tiene la misma cifra en { $cells }, así que { $gone }.
claim-reached = { $mark } impide repetir en { $gone-cells } el { $digit } de { $cell }, así que { $gone }.
claim-reached--king = Un paso del rey lleva del { $digit } de { $cell } a { $gone-cells }, donde no puede haber otro { $digit }.
claim-reached--knight = Un salto del caballo lleva del { $digit } de { $cell } a { $gone-cells }, donde no puede haber otro { $digit }.
claim-beside-all = En { $house }, el { $digit } está en { OR($places) }, siempre junto a { $cell }, así que { $gone }.
claim-limits-meet = { $mark } suma como mínimo { $least }, y su total es como máximo { $most }, así que { $gone }.
claim-limits-meet-from-above = { $mark } suma como máximo { $most }, y su total es como mínimo { $least }, así que { $gone }.
claim-limits-meet--arrow = { $mark } suma como mínimo { $least } a lo largo del asta y tiene como máximo { $most } en el círculo, así que { $gone }.
claim-limits-meet-from-above--arrow = { $mark } suma como máximo { $most } a lo largo del asta y tiene como mínimo { $least } en el círculo, así que { $gone }.
claim-common-sum--square-block = { $mark } debe sumar { $sums } en cada una de sus líneas, así que { $gone }.
claim-common-sum--open-cage = { $mark } debe sumar { $sums } en cada jaula, así que { $gone }.
claim-common-sum = { $mark } debe sumar { $sums } en cada parte, así que { $gone }.
sums-range = entre { $least } y { $most }
claim-left-over = { $houses } { $n ->
    [1] suma
   *[other] suman
} { $total }, y { GENDER($noun) ->
    [feminine] las
   *[masculine] los
} { $nouns } que están ahí por completo, { $within }, lo que deja { $rest } para { $cells }{ COUNT($cells) ->
    [one] {""}
   *[other] {" "}en total
}, así que { $gone }.
claim-left-over-beyond = { $houses } { $n ->
    [1] suma
   *[other] suman
} { $total }, y { GENDER($noun) ->
    [feminine] las
   *[masculine] los
} { $nouns } que cubren sus casillas, { $within }, lo que deja { $rest } para { $cells }{ COUNT($cells) ->
    [one] {""}
   *[other] {" "}en total
}, así que { $gone }.
claim-steps = { $mark } solo admite pasos de { OR($steps) }, así que { $gone }.
claim-first-digits = { $mark } { COUNT($digits) ->
    [one] tiene que empezar con { $digits }
   *[other] solo puede empezar con { OR($digits) }
}, y lo que sigue debe encajar, así que { $gone }.
claim-counts-to = { $mark } solo puede estar en el lugar { OR($places) }, y { $first } lo indica, así que { $gone }.
claim-counts-to--pointing = { $mark } solo puede contar { OR($places) } en su dirección, así que { $gone }.
claim-apart = { $mark } deja { $counts } entre sus rebanadas, así que { $gone }.
claim-apart-filled = { $mark } tiene { $counts } entre sus rebanadas, con { $fillings } dentro, así que { $gone }.
apart-cells = { $number } { $n ->
    [one] casilla
   *[other] casillas
}
claim-held-by-rest = { $rest }, donde también está cada cifra una vez, solo puede tener el { $digit } en { $cell }, así que { $gone }.
claim-held-by-rest-settled = { $rest }, donde también está cada cifra una vez, ya tiene su { $digit } en { $cell }, así que { $gone }.
