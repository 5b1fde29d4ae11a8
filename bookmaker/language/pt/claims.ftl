### Why a step holds: a sentence for each claim. A kind of rule or a technique may have a wording of its own, after “--”.
### $gone is what goes, as a clause; $mark is the mark that says so, always the subject. Attributes are further wordings.

## What goes

gone-first = { COUNT($digits) ->
    [one] o { $digits } é eliminado
   *[other] { $digits } são eliminados
} { AFTER("de", $cells) }
gone-next = { COUNT($digits) ->
    [one] o { $digits }
   *[other] { $digits }
} { AFTER("de", $cells) }
impossible = com { COUNT($digits) ->
    [one] o { $digits }
   *[other] { OR($digits) }
} { AFTER("em", OR($cells)) }

## Singles

claim-last-cell = A última casa vazia { CASE($house, "de") }, { $cell }, recebe o { $digit }.
claim-hidden-single = { CASE($house, "em") }, só { $cell } pode conter o { $digit }.
claim-naked-single = { AFTER("Para", $cell) } só resta o { $digit }.
claim-fixed = { $mark } não deixa escolha { AFTER("a", $cell) }: ali vai o { $digit }, quaisquer que sejam os algarismos iniciais.
claim-from-proof = A escala de técnicas termina aqui; o { $digit } { AFTER("de", $cell) } vem da demonstração.

## Patterns

claim-locked = { CASE($home, "em") }, todos os lugares do { $digit } ficam também { CASE($other, "em") }, logo { $gone }.
claim-naked-subset = { CASE($house, "em") }, { $cells } dividem entre si { $digits }, logo { $gone }.
claim-naked-subset-in-mark = { $mark } não repete nenhum algarismo, e ali { $cells } { COUNT($cells) ->
    [one] contém
   *[other] contêm
} { $digits }, logo { $gone }.
claim-naked-subset--limits = { CASE($house, "em") }, { $cells } estão limitadas a { $digits }, logo { $gone }.
claim-naked-subset--parity = { CASE($house, "em") }, { $cells } esgotam os algarismos { $digits }, logo { $gone }.
claim-hidden-subset = { CASE($house, "em") }, os algarismos { $digits } só cabem { AFTER("em", $cells) }, logo { $gone }.
claim-fish = { CASE($base, "em") }, todos os lugares do { $digit } ficam { CASE($cover, "em") }, logo { $gone }.
claim-fish-finned = { CASE($base, "em") }, todos os lugares do { $digit } ficam { CASE($cover, "em") }, ou então o { $digit } está { AFTER("em", OR($fins)) }; em ambos os casos { $gone }.
claim-seen-by-all = { CASE($house, "em") }, o { $digit } está { AFTER("em", OR($places)) }; qualquer uma delas vê { $gone-cells }, logo { $gone }.
claim-seen-by-all-in-mark = { $mark } tem o seu { $digit } { AFTER("em", OR($places)) }; qualquer uma delas vê { $gone-cells }, logo { $gone }.
claim-seen-by-all--king = { CASE($house, "em") }, o { $digit } está { AFTER("em", OR($places)) }; qualquer uma delas toca { $gone-cells } ou está na mesma { house-any }, logo { $gone }.
claim-seen-by-all--knight = { CASE($house, "em") }, o { $digit } está { AFTER("em", OR($places)) }; qualquer uma delas vê { $gone-cells }, por { house-any } ou por um salto do cavalo, logo { $gone }.
claim-pivot-wing--xy-wing = Qualquer que seja o algarismo { AFTER("de", $pivot) }, o { $digit } está { AFTER("em", OR($wings)) }, logo { $gone }.
claim-pivot-wing--xyz-wing = Qualquer que seja o algarismo { AFTER("de", $pivot) }, o { $digit } está ali ou { AFTER("em", OR($wings)) }, logo { $gone }.
claim-linked-wing = { CASE($house, "em") }, o { $joined } está { AFTER("em", OR($link)) }, de modo que { $pair } não podem conter ambas o { $joined }; uma das duas contém o { $digit }, e { $gone }.
claim-chain = Se { $start-cell } não for { $start-digit }, então { $trues }. Portanto, { $start } ou { $end }, e em ambos os casos { $gone }.
claim-chain-to-itself = Se { $start-cell } não for { $start-digit }, então { $trues } mesmo assim. Portanto, { $start }, e { $gone }.
claim-extended-chain = Se { $unless }, então { $trues }. Portanto, { $start }, ou { $end }, e em ambos os casos { $by } descarta { $taken }.
claim-extended-chain-seen = Se { $unless }, então { $trues }. Portanto, { $start }, ou { $end }, e em ambos os casos { $gone }.
claim-extended-chain-to-itself = Se { $unless }, então { $trues } mesmo assim. Portanto, { $start }, e { $by } descarta { $taken }.
claim-extended-chain-to-itself-seen = Se { $unless }, então { $trues } mesmo assim. Portanto, { $start }, e { $gone }.
claim-either-way = { CASE($house, "em") }, o { $digit } está { AFTER("em", OR($places)) }; { $n ->
    [2] em ambos os casos,
   *[other] em todos os casos,
} { $by } descarta { $taken }.
claim-either-way-in-cell = Qualquer que seja o algarismo { AFTER("de", $cell) }, { OR($digits) }, { $by } descarta { $taken }.
in-plain-sight = o próprio algarismo
true = { $cell } é { $digit }
true-in-group = o { $digit } está { AFTER("em", OR($cells)) }
# What the chain starts by doubting: it follows “Se”.
unless = { $cell } não for { $digit }
unless-in-group = o { $digit } não estiver em nenhuma das casas { $cells }
true-by-mark = { $by } descarta { $taken }, logo { $true }
true-among = { $among } contêm { $digits }, logo { $true }
true-among-by-mark = { $by } descarta { $taken }, { $among } contêm { $digits }, logo { $true }

## What-ifs

claim-refuted = Com { $tried }, { $end }, logo { $gone }.
claim-refuted-later = Com { $tried }, { $end } depois de { $n ->
    [1] uma rodada
   *[other] { $rounds } rodadas
} de deduções forçadas, logo { $gone }.
claim-refuted-linked = Suponha { $tried }: então { $links }, e { $end }. Portanto, { $gone }.
end-no-place = { $house } fica sem lugar para o { $digit }
end-no-digit = não resta nenhum algarismo { AFTER("para", $cell) }
end-no-digit-by-mark = { $mark } não deixa nenhum algarismo { AFTER("para", $cell) }
end-no-digit-by-marks = as marcas não deixam nenhum algarismo { AFTER("para", $cell) }
end-nothing-fits = { $mark } já não tem como se completar
then-in-house = { $house } tem o seu { $digit } { AFTER("em", $cell) }
then-last = { $cell } só pode ser { $digit }
then-by-mark = { $mark } só deixa o { $digit } { AFTER("para", $cell) }
then-gone = { $mark } descarta { $taken }
taken = { COUNT($digits) ->
    [one] o { $digits }
   *[other] { $digits }
} { AFTER("em", $cells) }

## What a mark allows

bounds-least = { $cell } com no mínimo { $low }
bounds-most = { $cell } com no máximo { $high }
bounds-both = { $cell } só com { $low } a { $high }
bounds-only = { $cell } só com { $low }
claim-bounds = { $mark } { $many ->
    [yes] deixam
   *[no] deixa
} { $bounds }, logo { $gone }.
claim-bounds--thermometer = { $mark } tem de subir a cada passo, logo { $gone }.
claim-bounds--resting-thermometer = { $mark } não pode descer, logo { $gone }.
claim-bounds--diagonal-sum = { $mark } deixa { $bounds }, seja o que for que as outras casas contenham, logo { $gone }.
claim-enclosed = { $mark } tem todos os seus algarismos entre os das duas pontas, logo { $gone }.
claim-enclosed-ends = { $mark } precisa de espaço para os seus algarismos entre os das duas pontas, logo { $gone }.
claim-only-digits = { $mark } só admite { $digits }, logo { $gone }.
claim-only-digits--parity-run = { $mark } exige { OR($digits) } { AFTER("em", $cells) }, logo { $gone }.
claim-only-digits--parity-line = { $mark } tem { OR($digits) } { AFTER("em", $cells) }, logo { $gone }.
claim-only-digits--low-high-line = { $mark } tem { OR($digits) } { AFTER("em", $cells) }, logo { $gone }.
claim-only-in = { $mark } obriga a pôr { COUNT($digits) ->
    [one] o { $digits } { AFTER("em", OR($cells)) }
   *[other] { $digits } { AFTER("em", $cells) }
}, logo { $gone }.
claim-only-in--counting-area = { $mark } tem { COUNT($digits) ->
    [one] o seu { $digits }
   *[other] os seus { $digits }
} { AFTER("em", $cells) }, logo { $gone }.
claim-only-in--quadruple = { $mark } precisa { COUNT($digits) ->
    [one] do { $digits }, que só pode
   *[other] de { $digits }, que só podem
} estar { AFTER("em", $cells) }, logo { $gone }.
claim-no-partner = { $mark } descarta { COUNT($gone-digits) ->
    [one] o { $gone-digits }
   *[other] { $gone-digits }
} { AFTER("em", $cell) }: nada restaria { AFTER("para", $beyond) }.
claim-beside = { $mark } e o { $known } { AFTER("em", $beside) } descartam { COUNT($gone-digits) ->
    [one] o { $gone-digits }
   *[other] { $gone-digits }
} { AFTER("em", $cell) }.
claim-beside--non-consecutive = O { $known } { AFTER("em", $beside) } não admite nas casas vizinhas nem o algarismo anterior nem o seguinte, logo { $gone }.
    .b = Ao lado do { $known } { AFTER("em", $beside) } não fica nem o algarismo anterior nem o seguinte, logo { $gone }.
claim-beside--no-doubles = Ao lado do { $known } { AFTER("em", $beside) } não ficam nem a sua metade nem o seu dobro, logo { $gone }.
claim-beside--barred-sums = Com o { $known } { AFTER("em", $beside) }, { COUNT($gone-digits) ->
    [one] o { $gone-digits }
   *[other] { OR($gone-digits) }
} { AFTER("em", $cell) } daria uma soma proibida.
claim-too-near = { $mark } descarta { COUNT($gone-digits) ->
    [one] o { $gone-digits }
   *[other] { $gone-digits }
} { AFTER("em", $cell) }, perto demais do que { COUNT($beside) ->
    [one] pode
   *[other] podem
} conter { $beside }.
claim-one-combination = { $mark } só pode conter { $digits }, logo { $gone }.
claim-one-combination--quadruple = { $mark } preenche as suas quatro casas, logo { $gone }.
claim-no-combination = { $mark } não tem nenhuma combinação com { OR($gone-digits) }, logo { $gone }.
claim-no-run = { $mark } não tem nenhuma sequência com { OR($gone-digits) }, logo { $gone }.
claim-needed = { $mark } precisa do { $digit }, { AFTER("em", OR($places)) }, logo { $gone }.
claim-no-filling = { $mark } não se completa { $impossible }.
    .b = { $mark } não tem preenchimento possível { $impossible }.
claim-no-filling-joined = { $mark } não se cumprem ao mesmo tempo { $impossible }.
claim-same-digit = { $mark } tem o mesmo algarismo { AFTER("em", $cells) }, logo { $gone }.
claim-reached = { $mark } impede que o { $digit } { AFTER("de", $cell) } se repita { AFTER("em", $gone-cells) }, logo { $gone }.
claim-reached--king = Um movimento do rei leva do { $digit } { AFTER("em", $cell) } { AFTER("a", $gone-cells) }, onde não pode haver outro { $digit }.
claim-reached--knight = Um salto do cavalo leva do { $digit } { AFTER("em", $cell) } { AFTER("a", $gone-cells) }, onde não pode haver outro { $digit }.
claim-beside-all = { CASE($house, "em") }, o { $digit } está { AFTER("em", OR($places)) }, sempre ao lado { AFTER("de", $cell) }, logo { $gone }.
claim-limits-meet = { $mark } soma no mínimo { $least }, e o seu total é no máximo { $most }, logo { $gone }.
claim-limits-meet-from-above = { $mark } soma no máximo { $most }, e o seu total é no mínimo { $least }, logo { $gone }.
claim-limits-meet--arrow = { $mark } soma no mínimo { $least } ao longo da haste e tem no máximo { $most } no círculo, logo { $gone }.
claim-limits-meet-from-above--arrow = { $mark } soma no máximo { $most } ao longo da haste e tem no mínimo { $least } no círculo, logo { $gone }.
claim-common-sum--square-block = { $mark } tem de somar { $sums } em cada uma das suas fileiras, logo { $gone }.
claim-common-sum--open-cage = { $mark } tem de somar { $sums } em cada gaiola, logo { $gone }.
claim-common-sum = { $mark } tem de somar { $sums } em cada parte, logo { $gone }.
sums-range = de { $least } a { $most }
claim-left-over = { $houses } { $n ->
    [1] soma
   *[other] somam
} { $total }, e { GENDER($noun) ->
    [feminine] as { $nouns } que ficam inteiramente ali somam
   *[masculine] os { $nouns } que ficam inteiramente ali somam
} { $within }, o que deixa { $rest } { AFTER("para", $cells) }{ COUNT($cells) ->
    [one] {""}
   *[other] {" "}juntas
}, logo { $gone }.
claim-left-over-beyond = { $houses } { $n ->
    [1] soma
   *[other] somam
} { $total }, e { GENDER($noun) ->
    [feminine] as { $nouns }
   *[masculine] os { $nouns }
} que cobrem toda essa área somam { $within }, o que deixa { $rest } { AFTER("para", $cells) }{ COUNT($cells) ->
    [one] {""}
   *[other] {" "}juntas
}, logo { $gone }.
claim-steps = { $mark } só admite passos de { OR($steps) }, logo { $gone }.
claim-first-digits = { $mark } { COUNT($digits) ->
    [one] tem de começar com { $digits }
   *[other] só pode começar com { OR($digits) }
}, e o que vem depois tem de se encaixar, logo { $gone }.
claim-counts-to = { $mark } só pode ficar na posição { OR($places) }, e é { $first } que indica qual, logo { $gone }.
claim-counts-to--pointing = { $mark } só pode contar { OR($places) } na sua direção, logo { $gone }.
claim-apart = { $mark } deixa { $counts } entre as duas fatias, logo { $gone }.
claim-apart-filled = { $mark } tem { $counts } entre as duas fatias, com { $fillings } de recheio, logo { $gone }.
apart-cells = { $number } { $n ->
    [1] casa
   *[other] casas
}
claim-held-by-rest = { $rest }, onde cada algarismo também aparece uma única vez, só pode ter o { $digit } { AFTER("em", $cell) }, logo { $gone }.
claim-held-by-rest-settled = { $rest }, onde cada algarismo também aparece uma única vez, já tem o seu { $digit } { AFTER("em", $cell) }, logo { $gone }.
