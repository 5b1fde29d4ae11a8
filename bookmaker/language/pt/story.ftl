### What a presenter says. Attributes are further wordings, taken in turn.

## What lies on the table

table-boxes = Uma grade { $size }×{ $size } { $givens ->
    [0] sem nenhum algarismo inicial
    [1] com um algarismo inicial
   *[other] com { CASE($number, "masculine") } algarismos iniciais
}.
table-irregular = Uma grade { $size }×{ $size } com regiões irregulares e { $givens ->
    [0] nenhum algarismo inicial
    [1] um algarismo inicial
   *[other] { CASE($number, "masculine") } algarismos iniciais
}. As regiões têm letras a partir de A, na ordem em que as linhas as alcançam.
table-none = Um quadrado latino { $size }×{ $size } { $givens ->
    [0] sem nenhum algarismo inicial
    [1] com um algarismo inicial
   *[other] com { CASE($number, "masculine") } algarismos iniciais
}.
table-overlap = { CASE($grids, "feminine") } grades sobrepostas de { $size }×{ $size } { $givens ->
    [0] sem nenhum algarismo inicial
    [1] com um algarismo inicial
   *[other] com { CASE($number, "masculine") } algarismos iniciais
}.
table-holes = Uma grade { $size }×{ $size } com casas pretas e { $givens ->
    [0] nenhum algarismo inicial
    [1] um algarismo inicial
   *[other] { CASE($number, "masculine") } algarismos iniciais
}.
symmetry = { $turn } transforma o passatempo nele mesmo, de modo que a maioria dos seus passos vem aos pares.
symmetry-relabelled = { $turn }, com { $cycles }, transforma o passatempo nele mesmo, de modo que a maioria dos seus passos vem aos pares.
cycle-swapped = { $digits } trocados
cycle-round = { $digits } em rodízio
turn-half = uma meia-volta
turn-left-right = um espelhamento da esquerda para a direita
turn-top-bottom = um espelhamento de cima para baixo
turn-falling = um espelhamento na diagonal descendente
turn-rising = um espelhamento na diagonal ascendente
turn-quarter = um quarto de volta
turn-quarter-right = um quarto de volta para a direita
turn-quarter-left = um quarto de volta para a esquerda

introduction-singles-crux = Nível { $band }: só solitários do começo ao fim, com o momento difícil na altura de { $filled } casas preenchidas.
introduction-singles-crux-at-start = Nível { $band }: só solitários do começo ao fim, com o momento difícil logo no início.
introduction-singles-bottlenecks = Nível { $band }: só solitários do começo ao fim, com um ou outro gargalo.
introduction-singles-choice = Nível { $band }: só solitários do começo ao fim, e nunca menos de { CASE($choice, "masculine") } à escolha.
introduction-singles = Nível { $band }: só solitários do começo ao fim, e nenhum difícil de achar.
introduction-stuck-crux = Nível { $band }: os solitários se esgotam { $times }, e o momento difícil vem na altura de { $filled } casas preenchidas.
introduction-stuck-crux-at-start = Nível { $band }: os solitários se esgotam { $times }, e o momento difícil vem logo no início.
introduction-stuck = Nível { $band }: os solitários se esgotam { $times }.
introduction-stuck-briefly = Nível { $band }: os solitários se esgotam { $times }, mas nunca por muito tempo.
times = { $n ->
    [1] uma vez
   *[other] { $number } vezes
}

## Placements

places-last-of-digit = O último { $digit } vai { AFTER("para", $cell) }.
    .b = { $house } recebe o último { $digit }, { AFTER("em", $cell) }.
places-last-cell = A última casa { CASE($house, "de") }, { $cell }, recebe o { $digit }.
    .b = { CASE($house, "em") } só falta o { $digit }, que vai { AFTER("para", $cell) }.
    .c = { $house } se fecha com o { $digit } { AFTER("em", $cell) }.
places-naked-single = { AFTER("Para", $cell) } só resta o { $digit }.
    .b = { AFTER("Em", $cell) } só cabe o { $digit }.
places-hidden-single = { CASE($house, "em") }, só { $cell } aceita o { $digit }.
    .b = { $house } tem um só lugar para o { $digit }: { $cell }.
    .c = O { $digit } { CASE($house, "de") } vai { AFTER("para", $cell) }.
# The same where more of the passage stands before it.
then-last-of-digit = Então o último { $digit } vai { AFTER("para", $cell) }.
    .b = { $house } recebe o último { $digit }, { AFTER("em", $cell) }.
then-last-cell = A última casa { CASE($house, "de") }, { $cell }, recebe o { $digit }.
    .b = Agora, { CASE($house, "em") }, só falta o { $digit }, que vai { AFTER("para", $cell) }.
    .c = { $house } se fecha com o { $digit } { AFTER("em", $cell) }.
    .d = Em seguida, a última casa { CASE($house, "de") }, { $cell }, recebe o { $digit }.
then-naked-single = Agora { AFTER("para", $cell) } só resta o { $digit }.
    .b = { AFTER("Em", $cell) } só cabe o { $digit }.
then-hidden-single = { CASE($house, "em") }, só { $cell } aceita o { $digit }.
    .b = Agora { $house } tem um só lugar para o { $digit }: { $cell }.
    .c = O { $digit } { CASE($house, "de") } vai { AFTER("para", $cell) }.
    .d = Em seguida, { CASE($house, "em") }, só { $cell } aceita o { $digit }.

leaves-last-cell = Isso deixa o { $digit } { AFTER("para", $cell) }, a última casa { CASE($house, "de") }.
leaves-naked-single = Com isso, { AFTER("em", $cell) } só cabe o { $digit }.
    .b = Então { $cell } tem de ser { $digit }.
leaves-hidden-single = Isso só deixa { $cell } para o { $digit } { CASE($house, "de") }.
    .b = Com isso, { CASE($house, "em") } só resta { $cell } para o { $digit }.
    .c = Portanto, o { $digit } { CASE($house, "de") } tem de estar { AFTER("em", $cell) }.

opens-last-cell = A última casa { CASE($house, "de") }, { $cell }, recebe o { $digit }.
opens-naked-single = Isso deixa só o { $digit } { AFTER("em", $cell) }.
    .b = Agora { $cell } só pode ser { $digit }.
opens-hidden-single = Isso deixa { $cell } como único lugar para o { $digit } { CASE($house, "em") }.
    .b = Agora, { CASE($house, "em") }, resta um só lugar para o { $digit }: { $cell }.
    .c = Com isso, o { $digit } { CASE($house, "de") } vai { AFTER("para", $cell) }.
    .d = Assim, { $house } tem o seu { $digit } { AFTER("em", $cell) }.

run-starts = Comece pelos { $digit }: { $cells }.
run-completes = Os { CASE($count, "masculine") } { $digit } que faltam vão { AFTER("para", $cells) }.
    .b = Dos { $digit }, só faltam os { AFTER("de", $cells) }.
    .c = Os { $digit } se completam com { $cells }.
run-chained = Um { $digit } leva ao outro: { $cells }.
    .b = Os { $digit } saem um do outro: { $cells }.
run-band = Uma varredura dos { $digit } { $band } dá { $cells }.
    .b = { $band }, os { $digit } ficam { AFTER("em", $cells) }.
run = Seguem-se { CASE($count, "masculine") } algarismos { $digit }: { $cells }.
    .b = A varredura dos { $digit } dá { $cells }.
    .c = Depois, os { $digit }: { $cells }.
    .d = Os { $digit } continuam com { $cells }.
# With their preposition, since run-band says them so.
band-top = na faixa superior
band-middle = na faixa do meio
band-bottom = na faixa inferior
band-left = na pilha esquerda
band-centre = na pilha do meio
band-right = na pilha direita
fills = { $house } se enche com { $placed }.
    .b = { $house } se completa com { $placed }.

with-image-last-cell = A última casa { CASE($house, "de") }, { $cell }, recebe o { $digit } e, por simetria, { $image } recebe o { $other }.
with-image-naked-single = { AFTER("Para", $cell) } só resta o { $digit } e, por simetria, o { $other } { AFTER("para", $image) }.
with-image-hidden-single = { CASE($house, "em") }, só { $cell } aceita o { $digit } e, por simetria, { $image } recebe o { $other }.
run-with-images = O { $digit } vai { AFTER("para", $cells) } e, por simetria, o { $other } { AFTER("para", $images) }.
run-with-images-alike = O { $digit } vai { AFTER("para", $cells) } e, por simetria, também { AFTER("para", $images) }.

starts-here = Comece aqui.
starts-in-house = Comece pelo { $digit } { CASE($house, "de") }: { COUNT($lookers) ->
    [one] o { $digit } { AFTER("em", $lookers) } só deixa
   *[other] os { $digit } { AFTER("em", $lookers) } só deixam
} { $cell }.
seen-last-cell = { CASE($house, "em") } só falta o { $digit }, que vai { AFTER("para", $cell) }.
seen-lookers = { COUNT($lookers) ->
    [one] O { $digit } { AFTER("em", $lookers) } só deixa
   *[other] Os { $digit } { AFTER("em", $lookers) } só deixam
} { $cell } para o { $digit } { CASE($house, "de") }.
seen-lookers-struck = { COUNT($lookers) ->
    [one] O { $digit } { AFTER("em", $lookers) }
   *[other] Os { $digit } { AFTER("em", $lookers) }
} e o que já foi eliminado só deixam { $cell } para o { $digit } { CASE($house, "de") }.
seen-lookers-marked = { COUNT($lookers) ->
    [one] O { $digit } { AFTER("em", $lookers) }
   *[other] Os { $digit } { AFTER("em", $lookers) }
} e as marcas só deixam { $cell } para o { $digit } { CASE($house, "de") }.
seen-lookers-struck-marked = { COUNT($lookers) ->
    [one] O { $digit } { AFTER("em", $lookers) }
   *[other] Os { $digit } { AFTER("em", $lookers) }
}, as marcas e o que já foi eliminado só deixam { $cell } para o { $digit } { CASE($house, "de") }.
seen-struck = O que já foi eliminado só deixa { $cell } para o { $digit } { CASE($house, "de") }.
seen-marked = As marcas só deixam { $cell } para o { $digit } { CASE($house, "de") }.
seen-struck-marked = As marcas e o que já foi eliminado só deixam { $cell } para o { $digit } { CASE($house, "de") }.
seen-in-cell = { $held }, logo { $cell } só pode ser { $digit }.
held-first = { $house } contém { $digits }
held-next = { $house } acrescenta { $digits }
held-first-others = outras casas à vista contêm { $digits }
held-next-others = outras casas à vista acrescentam { $digits }
held-struck = { COUNT($digits) ->
    [one] o { $digits } já foi eliminado
   *[other] { $digits } já foram eliminados
} com { $steps }
held-marked = a sua marca descarta { $digits }

fixes = { $count ->
    [1] Uma casa fica definida
   *[other] { $number } casas ficam definidas
} de uma vez com { $marks }: { $placed }.
taken-from-proof = Aqui termina a escala de técnicas, e a demonstração tem de ajudar com { $placed }.
falls-into-place = Daqui em diante tudo se encaixa: { $placed }.
    .b = O resto se encaixa: { $placed }.
remains = O que resta é { $placed }.
ending-more = { $most }, { $next }
ending-last = { $most } e, por fim, { $last }

## Where it gets narrow

few-lone-naked = Cuidado aqui: com { $filled } casas preenchidas, só há um solitário, e exposto.
    .b = Na altura de { $filled } casas, não há mais que um solitário exposto.
    .c = Na altura de { $filled } casas, há um só solitário, e exposto.
few-naked = Na altura de { $filled } casas, só restam solitários expostos, { CASE($number, "masculine") } ao todo.
    .b = { CASE($number, "masculine") } solitários expostos são tudo o que há na altura de { $filled } casas.
few = Olhe com atenção: com { $filled } casas preenchidas, há { $singles ->
    [1] um só solitário
   *[other] só { CASE($number, "masculine") } solitários
}.
    .b = Na altura de { $filled } casas, há apenas { $singles ->
    [1] um solitário
   *[other] { CASE($number, "masculine") } solitários
}.
crux-lone-naked = Chega o momento difícil: com { $filled } casas preenchidas, só há um solitário, e exposto.
crux-naked = Chega o momento difícil: na altura de { $filled } casas, só restam solitários expostos, { CASE($number, "masculine") } ao todo.
crux-few = Chega o momento difícil: com { $filled } casas preenchidas, há { $singles ->
    [1] um só solitário
   *[other] só { CASE($number, "masculine") } solitários
}.
stuck = Com { $filled } casas preenchidas, não resta nenhum solitário.
    .b = Na altura de { $filled } casas, os solitários se esgotam.
    .c = Não resta nenhum solitário na altura de { $filled } casas.
stuck-at-start = Não há nenhum solitário para começar.
stuck-long = Com { $filled } casas preenchidas, não resta nenhum solitário, e você precisa de outros meios: { $steps }.
    .b = Na altura de { $filled } casas, os solitários se esgotam; para seguir adiante, você precisa de outros meios: { $steps }.
stuck-long-at-start = Não há nenhum solitário para começar, e você precisa de outros meios: { $steps }.
crux = Chega o momento difícil: com { $filled } casas preenchidas, não resta nenhum solitário, e você precisa de outros meios: { $steps }.
crux-at-start = Chega o momento difícil: não há nenhum solitário para começar, e você precisa de outros meios: { $steps }.
aim-hidden-single = O objetivo é o { $digit } { CASE($house, "de") }: ele vai { AFTER("para", $cell) } assim que sair { AFTER("de", $rival-cells) }.
aim-naked-single = O objetivo é { $cell }, que será { $digit } assim que { COUNT($rival-digits) ->
    [one] o { $rival-digits } sair
   *[other] { $rival-digits } saírem
} dali.

## Eliminations

names = Procure { $technique }.
    .b = Agora é a vez de { $technique }.
    .c = Isto pede { $technique }.
same-holds = O mesmo vale para { $mark }, logo { $gone }.
by-symmetry = Por simetria, { $gone }.
by-symmetry-places = Por simetria, { $cell } recebe o { $digit }.
by-symmetry-opens = Por simetria, { $gone }, e { $cell } recebe o { $digit }.
    .b = Com a imagem espelhada é o mesmo: { $gone }, e { $cell } recebe o { $digit }.
follow-end = Seguem-se { $number } hipóteses, e cada uma deixa { $house } sem lugar para o { $digit }.
follow-mark = Seguem-se { $number } hipóteses; { $mark } resolve todas.
follow-kind = Seguem-se { $number } hipóteses, e todas tropeçam na mesma coisa: { $marks }.
follow-tried-digit = Seguem-se { $number } hipóteses, todas sobre o { $tried-digit }.
follow-tried-cell = Seguem-se { $number } hipóteses, todas sobre { $tried-cell }.
follow-tried-house = Seguem-se { $number } hipóteses, todas { CASE($tried-house, "em") }.
follow = Seguem-se { $number } hipóteses.
more-alike = Do mesmo modo, { $count ->
    [1] mais uma mostra
   *[other] mais { $number } mostram
} que { $gone }.
