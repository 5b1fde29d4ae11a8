### What things are called: cells and digits in lists, houses, marks, techniques. “em” and “de” are a house after those
### prepositions, which contract with its article. A digit is an “algarismo”, a cell a “casa”, a row a “linha”; a drawn line is
### a “caminho”, so that it is never taken for a row.

quotation-marks = “ ” ‘ ’
alphabet = a b c d e f g h i j k l m n o p q r s t u v w x y z

## Lists

list-more = { $most }, { $next }
list-and = { $most } e { $last }
list-or = { $most } ou { $last }
list-alike = { $most } com { $last }
clauses-more = { $most }, { $next }
clauses-or = { $most }, ou { $last }
clauses-and = { $most }, e { $last }

# Feminine, as cells are.
number = { $n ->
    [0] zero
    [1] uma
    [2] duas
    [3] três
    [4] quatro
    [5] cinco
    [6] seis
    [7] sete
    [8] oito
    [9] nove
    [10] dez
    [11] onze
    [12] doze
   *[other] { $n }
}
    .masculine = { $n ->
    [0] zero
    [1] um
    [2] dois
    [3] três
    [4] quatro
    [5] cinco
    [6] seis
    [7] sete
    [8] oito
    [9] nove
    [10] dez
    [11] onze
    [12] doze
   *[other] { $n }
}

digits-run = { $first } a { $last }
candidate = { $digit } { AFTER("em", $cell) }
placed = { $digits } { AFTER("em", $cells) }
tried = { COUNT($digits) ->
    [one] o { $digits }
   *[other] { OR($digits) }
} { AFTER("em", OR($cells)) }

## Houses

# After “outra” and without an article.
house-any = { $divided ->
    [none] linha ou coluna
    [regions] linha, coluna ou região
   *[boxes] linha, coluna ou bloco
}
house-row = a linha { $number }
    .em = na linha { $number }
    .de = da linha { $number }
    .gender = feminine
    .short = a l{ $number }
    .em-short = na l{ $number }
    .de-short = da l{ $number }
house-column = a coluna { $number }
    .em = na coluna { $number }
    .de = da coluna { $number }
    .gender = feminine
    .short = a c{ $number }
    .em-short = na c{ $number }
    .de-short = da c{ $number }
house-region = a região { $letter }
    .em = na região { $letter }
    .de = da região { $letter }
    .gender = feminine
house-box = { $place ->
    [middle-centre] o bloco central
    [top-left] o bloco superior esquerdo
    [top-centre] o bloco superior central
    [top-right] o bloco superior direito
    [middle-left] o bloco central esquerdo
    [middle-right] o bloco central direito
    [bottom-left] o bloco inferior esquerdo
    [bottom-centre] o bloco inferior central
    [bottom-right] o bloco inferior direito
   *[other] o bloco que começa { AFTER("em", $cell) }
}
    .em = { $place ->
    [middle-centre] no bloco central
    [top-left] no bloco superior esquerdo
    [top-centre] no bloco superior central
    [top-right] no bloco superior direito
    [middle-left] no bloco central esquerdo
    [middle-right] no bloco central direito
    [bottom-left] no bloco inferior esquerdo
    [bottom-centre] no bloco inferior central
    [bottom-right] no bloco inferior direito
   *[other] no bloco que começa { AFTER("em", $cell) }
}
    .de = { $place ->
    [middle-centre] do bloco central
    [top-left] do bloco superior esquerdo
    [top-centre] do bloco superior central
    [top-right] do bloco superior direito
    [middle-left] do bloco central esquerdo
    [middle-right] do bloco central direito
    [bottom-left] do bloco inferior esquerdo
    [bottom-centre] do bloco inferior central
    [bottom-right] do bloco inferior direito
   *[other] do bloco que começa { AFTER("em", $cell) }
}
    .gender = masculine
# Houses that a rule adds.
house-of-rule = { GENDER($noun) ->
    [feminine] a { $noun } { AFTER("em", $cell) }
   *[masculine] o { $noun } { AFTER("em", $cell) }
}
    .em = { GENDER($noun) ->
    [feminine] na { $noun } { AFTER("em", $cell) }
   *[masculine] no { $noun } { AFTER("em", $cell) }
}
    .de = { GENDER($noun) ->
    [feminine] da { $noun } { AFTER("em", $cell) }
   *[masculine] do { $noun } { AFTER("em", $cell) }
}
house-diagonals-falling = a diagonal descendente
    .em = na diagonal descendente
    .de = da diagonal descendente
    .gender = feminine
house-diagonals-rising = a diagonal ascendente
    .em = na diagonal ascendente
    .de = da diagonal ascendente
    .gender = feminine
house-disjoint-groups = o grupo das casas na posição { $number } de cada bloco
    .em = no grupo das casas na posição { $number } de cada bloco
    .de = do grupo das casas na posição { $number } de cada bloco
    .gender = masculine
house-disjoint-groups-of-nine = { $n ->
    [1] o grupo das casas superiores esquerdas dos blocos
    [2] o grupo das casas superiores centrais dos blocos
    [3] o grupo das casas superiores direitas dos blocos
    [4] o grupo das casas centrais esquerdas dos blocos
    [5] o grupo das casas centrais dos blocos
    [6] o grupo das casas centrais direitas dos blocos
    [7] o grupo das casas inferiores esquerdas dos blocos
    [8] o grupo das casas inferiores centrais dos blocos
   *[9] o grupo das casas inferiores direitas dos blocos
}
    .em = { $n ->
    [1] no grupo das casas superiores esquerdas dos blocos
    [2] no grupo das casas superiores centrais dos blocos
    [3] no grupo das casas superiores direitas dos blocos
    [4] no grupo das casas centrais esquerdas dos blocos
    [5] no grupo das casas centrais dos blocos
    [6] no grupo das casas centrais direitas dos blocos
    [7] no grupo das casas inferiores esquerdas dos blocos
    [8] no grupo das casas inferiores centrais dos blocos
   *[9] no grupo das casas inferiores direitas dos blocos
}
    .de = { $n ->
    [1] do grupo das casas superiores esquerdas dos blocos
    [2] do grupo das casas superiores centrais dos blocos
    [3] do grupo das casas superiores direitas dos blocos
    [4] do grupo das casas centrais esquerdas dos blocos
    [5] do grupo das casas centrais dos blocos
    [6] do grupo das casas centrais direitas dos blocos
    [7] do grupo das casas inferiores esquerdas dos blocos
    [8] do grupo das casas inferiores centrais dos blocos
   *[9] do grupo das casas inferiores direitas dos blocos
}
    .gender = masculine
house-windows-rows = a parte das linhas { $number } a { $last } fora das janelas
    .em = na parte das linhas { $number } a { $last } fora das janelas
    .de = da parte das linhas { $number } a { $last } fora das janelas
    .gender = feminine
    .short = a parte das l{ $number }-{ $last } fora das janelas
    .em-short = na parte das l{ $number }-{ $last } fora das janelas
    .de-short = da parte das l{ $number }-{ $last } fora das janelas
house-windows-columns = a parte das colunas { $number } a { $last } fora das janelas
    .em = na parte das colunas { $number } a { $last } fora das janelas
    .de = da parte das colunas { $number } a { $last } fora das janelas
    .gender = feminine
    .short = a parte das c{ $number }-{ $last } fora das janelas
    .em-short = na parte das c{ $number }-{ $last } fora das janelas
    .de-short = da parte das c{ $number }-{ $last } fora das janelas
house-windows-crossing = o cruzamento das linhas e colunas que passam entre as janelas
    .em = no cruzamento das linhas e colunas que passam entre as janelas
    .de = do cruzamento das linhas e colunas que passam entre as janelas
    .gender = masculine
houses-row = as linhas { $numbers }
    .em = nas linhas { $numbers }
    .de = das linhas { $numbers }
    .short = as l{ $numbers }
    .em-short = nas l{ $numbers }
    .de-short = das l{ $numbers }
houses-column = as colunas { $numbers }
    .em = nas colunas { $numbers }
    .de = das colunas { $numbers }
    .short = as c{ $numbers }
    .em-short = nas c{ $numbers }
    .de-short = das c{ $numbers }
whole-grid = a grade inteira
# After “row”, “column”, or “rows” with several numbers, where grids overlap.
line-in-grid = { $number } da grade { $grid }

## Marks, by where they are anchored

mark-line = { GENDER($noun) ->
    [feminine] a { $noun } { AFTER("de", $first) } { AFTER("a", $last) }
   *[masculine] o { $noun } { AFTER("de", $first) } { AFTER("a", $last) }
}
mark-at = { $value ->
    [none] { GENDER($noun) ->
        [feminine] a { $noun } { AFTER("em", $cell) }
       *[masculine] o { $noun } { AFTER("em", $cell) }
    }
   *[other] { GENDER($noun) ->
        [feminine] a { $noun } de { $value } { AFTER("em", $cell) }
       *[masculine] o { $noun } de { $value } { AFTER("em", $cell) }
    }
}
mark-between = { $value ->
    [none] { GENDER($noun) ->
        [feminine] a { $noun } { AFTER("entre", $one) } e { $other }
       *[masculine] o { $noun } { AFTER("entre", $one) } e { $other }
    }
   *[other] { GENDER($noun) ->
        [feminine] a { $noun } { $value } { AFTER("entre", $one) } e { $other }
       *[masculine] o { $noun } { $value } { AFTER("entre", $one) } e { $other }
    }
}
mark-between-missing = a falta de { $noun } { AFTER("entre", $one) } e { $other }
    .gender = feminine
# Where a clue outside the grid stands.
beside-line = { $side ->
    [left] à esquerda da linha { $line }
    [right] à direita da linha { $line }
    [top] acima da coluna { $line }
   *[bottom] abaixo da coluna { $line }
}
    .short = { $side ->
        [left] à esquerda da l{ $line }
        [right] à direita da l{ $line }
        [top] acima da c{ $line }
       *[bottom] abaixo da c{ $line }
    }
mark-outside = { GENDER($noun) ->
    [feminine] a { $noun } { $value }
   *[masculine] o { $noun } { $value }
} { $where }
mark-slanting = { GENDER($noun) ->
    [feminine] a { $noun } { $value }
   *[masculine] o { $noun } { $value }
} { $way ->
    [down-right] que desce { AFTER("de", $start) } para a direita
    [down-left] que desce { AFTER("de", $start) } para a esquerda
    [up-right] que sobe { AFTER("de", $start) } para a direita
   *[up-left] que sobe { AFTER("de", $start) } para a esquerda
}
mark-lettered = { GENDER($noun) ->
    [feminine] a { $noun } { $letter }
   *[masculine] o { $noun } { $letter }
}
mark-joined = { GENDER($noun) ->
    [feminine] as { $nouns } que unem { $cells }
   *[masculine] os { $nouns } que unem { $cells }
}
mark-whole = { GENDER($noun) ->
    [feminine] a { $noun }
   *[masculine] o { $noun }
}
# A mark that was named just before.
mark-again = { GENDER($noun) ->
    [feminine] a mesma { $noun }
   *[masculine] o mesmo { $noun }
}
# All marks of a kind.
marks = { GENDER($noun) ->
    [feminine] as { $nouns }
   *[masculine] os { $nouns }
}

## Kinds of rules: one mark, several, the heading

kind-arithmetic-cage = gaiola aritmética
    .many = gaiolas aritméticas
    .title = Gaiolas aritméticas
    .gender = feminine
kind-arrow = seta
    .many = setas
    .title = Setas
    .gender = feminine
kind-barred-sums = proibição de somas
    .many = proibições de somas
    .title = Somas proibidas
    .gender = feminine
kind-border-values = número entre casas
    .many = números entre casas
    .title = Números entre casas
    .gender = masculine
kind-bounded-line = caminho limitado
    .many = caminhos limitados
    .title = Caminhos limitados
    .gender = masculine
kind-cage = gaiola
    .many = gaiolas
    .title = Gaiolas
    .gender = feminine
kind-clone = clone
    .many = clones
    .title = Clones
    .gender = masculine
kind-consecutive-bars = barra
    .many = barras
    .title = Barras de consecutivos
    .gender = feminine
kind-consecutive-line = caminho de consecutivos
    .many = caminhos de consecutivos
    .title = Caminhos de consecutivos
    .gender = masculine
kind-counting-area = área de contagem
    .many = áreas de contagem
    .title = Áreas de contagem
    .gender = feminine
kind-diagonal-sum = soma diagonal
    .many = somas diagonais
    .title = Somas diagonais
    .gender = feminine
kind-diagonals = diagonal
    .many = diagonais
    .title = Diagonais
    .gender = feminine
kind-difference-line = caminho de diferenças
    .many = caminhos de diferenças
    .title = Caminhos de diferenças
    .gender = masculine
kind-disjoint-groups = grupo disjunto
    .many = grupos disjuntos
    .title = Grupos disjuntos
    .gender = masculine
kind-dots = bolinha
    .many = bolinhas
    .title = Bolinhas
    .gender = feminine
kind-equal-part-line = caminho de partes iguais
    .many = caminhos de partes iguais
    .title = Caminhos de partes iguais
    .gender = masculine
kind-even-step-line = caminho de passos iguais
    .many = caminhos de passos iguais
    .title = Caminhos de passos iguais
    .gender = masculine
kind-extra-region = região extra
    .many = regiões extras
    .title = Regiões extras
    .gender = feminine
kind-first-seen = algarismo de entrada
    .many = algarismos de entrada
    .title = Algarismos de entrada
    .gender = masculine
kind-fortress = fortaleza
    .many = fortalezas
    .title = Fortalezas
    .gender = feminine
kind-frame-product = produto da moldura
    .many = produtos da moldura
    .title = Produtos da moldura
    .gender = masculine
kind-frame-sum = soma da moldura
    .many = somas da moldura
    .title = Somas da moldura
    .gender = feminine
kind-hinge-line = caminho com dobradiça
    .many = caminhos com dobradiça
    .title = Caminhos com dobradiça
    .gender = masculine
kind-inequality = sinal de desigualdade
    .many = sinais de desigualdade
    .title = Desigualdades
    .gender = masculine
kind-king = movimento do rei
    .many = movimentos do rei
    .title = Movimento do rei
    .gender = masculine
kind-knight = salto do cavalo
    .many = saltos do cavalo
    .title = Salto do cavalo
    .gender = masculine
kind-limits = limite
    .many = limites
    .title = Limites
    .gender = masculine
kind-low-high-line = caminho de altos e baixos
    .many = caminhos de altos e baixos
    .title = Caminhos de altos e baixos
    .gender = masculine
kind-no-doubles = proibição de dobros
    .many = proibições de dobros
    .title = Sem dobros
    .gender = feminine
kind-non-consecutive = proibição de vizinhos consecutivos
    .many = proibições de vizinhos consecutivos
    .title = Sem consecutivos
    .gender = feminine
kind-numbered-room = sala numerada
    .many = salas numeradas
    .title = Salas numeradas
    .gender = feminine
kind-open-cage = gaiola aberta
    .many = gaiolas abertas
    .title = Gaiolas abertas
    .gender = feminine
kind-palindrome = palíndromo
    .many = palíndromos
    .title = Palíndromos
    .gender = masculine
kind-parity = casa par ou ímpar
    .many = casas pares e ímpares
    .title = Pares e ímpares
    .gender = feminine
kind-parity-line = caminho de paridade
    .many = caminhos de paridade
    .title = Caminhos de paridade
    .gender = masculine
kind-parity-run = sequência de paridade
    .many = sequências de paridade
    .title = Sequências de paridade
    .gender = feminine
kind-peaks = telhado ou tigela
    .many = telhados e tigelas
    .title = Picos e vales
    .gender = masculine
kind-pointing = casa com seta
    .many = casas com seta
    .title = Casas com seta
    .gender = feminine
kind-quadruple = anel
    .many = anéis
    .title = Anéis nos cantos
    .gender = masculine
kind-resting-thermometer = termômetro com pausas
    .many = termômetros com pausas
    .title = Termômetros com pausas
    .gender = masculine
kind-rise-or-fall = rampa
    .many = rampas
    .title = Subidas e descidas
    .gender = feminine
kind-rising-run = sequência crescente
    .many = sequências crescentes
    .title = Sequências crescentes
    .gender = feminine
kind-same-sum-line = caminho de somas iguais
    .many = caminhos de somas iguais
    .title = Caminhos de somas iguais
    .gender = masculine
kind-sandwich = soma-sanduíche
    .many = somas-sanduíche
    .title = Somas-sanduíche
    .gender = feminine
kind-skyscraper = arranha-céu
    .many = arranha-céus
    .title = Arranha-céus
    .gender = masculine
kind-square-block = quadrado de somas
    .many = quadrados de somas
    .title = Quadrados de somas
    .gender = masculine
kind-sum-marks = marca de soma
    .many = marcas de soma
    .title = Marcas de soma
    .gender = feminine
kind-thermometer = termômetro
    .many = termômetros
    .title = Termômetros
    .gender = masculine
kind-windows = janela
    .many = janelas
    .title = Janelas
    .gender = feminine
kind-x-sum = soma X
    .many = somas X
    .title = Somas X
    .gender = feminine

## Marks that are called otherwise

marks-king = o movimento do rei
marks-knight = o salto do cavalo
marks-non-consecutive = a proibição de vizinhos consecutivos
mark-non-consecutive = o lado comum { AFTER("de", $one) } e { $other }
    .gender = masculine
mark-non-consecutive-whole = a proibição de vizinhos consecutivos
mark-border-values-sum = a soma { $value } { AFTER("entre", $one) } e { $other }
    .gender = feminine
mark-border-values-difference = a diferença { $value } { AFTER("entre", $one) } e { $other }
    .gender = feminine
mark-border-values-product = o produto { $value } { AFTER("entre", $one) } e { $other }
mark-border-values-quotient = o quociente { $value } { AFTER("entre", $one) } e { $other }
mark-border-values-missing = a falta de número { AFTER("entre", $one) } e { $other }
    .gender = feminine
mark-non-consecutive-corner = o canto comum { AFTER("de", $one) } e { $other }
    .gender = masculine
marks-no-doubles = a proibição de dobros
mark-no-doubles = o lado comum { AFTER("de", $one) } e { $other }
    .gender = masculine
mark-no-doubles-corner = o canto comum { AFTER("de", $one) } e { $other }
    .gender = masculine
mark-no-doubles-whole = a proibição de dobros
marks-barred-sums = a proibição de somas
mark-barred-sums = o lado comum { AFTER("de", $one) } e { $other }
    .gender = masculine
mark-barred-sums-corner = o canto comum { AFTER("de", $one) } e { $other }
    .gender = masculine
mark-barred-sums-whole = a proibição de somas
mark-dots-white = a bolinha branca { AFTER("entre", $one) } e { $other }
mark-dots-black = a bolinha preta { AFTER("entre", $one) } e { $other }
mark-sum-marks-V = o V { AFTER("entre", $one) } e { $other }
    .gender = masculine
mark-sum-marks-X = o X { AFTER("entre", $one) } e { $other }
    .gender = masculine
mark-sum-marks-missing = a falta de V ou X { AFTER("entre", $one) } e { $other }
mark-rise-or-fall-rise = a subida { $where }
mark-rise-or-fall-fall = a descida { $where }
mark-rise-or-fall-missing = a falta de barras { $where }
mark-rising-run-joined = as sequências crescentes que chegam { AFTER("a", $cells) }
mark-parity-run-joined = as sequências de paridade nas duas pontas { AFTER("de", $cells) }
mark-rise-or-fall-joined = as subidas e descidas que chegam { AFTER("a", $cells) }
mark-inequality = o sinal { AFTER("entre", $one) } e { $other }
mark-inequality-joined = os sinais que unem { $cells }
mark-limits-joined = os limites { AFTER("de", $cells) }
mark-fortress-joined = as fortalezas { AFTER("em", $cells) }
mark-pointing = a seta { AFTER("em", $cell) }
mark-parity-even = o quadrado { AFTER("em", $cell) }
    .gender = masculine
mark-parity-odd = o círculo { AFTER("em", $cell) }
    .gender = masculine
mark-parity-joined = as casas pares e ímpares { AFTER("entre", $cells) }
mark-peaks-greater = o telhado { AFTER("em", $cell) }
mark-peaks-smaller = a tigela { AFTER("em", $cell) }
    .gender = feminine
mark-peaks-joined = os telhados e tigelas { AFTER("em", $cells) }
mark-cage-joined = as gaiolas que cobrem { $cells }
mark-arithmetic-cage = a gaiola aritmética { $value } { AFTER("em", $cell) }
mark-arithmetic-cage-joined = as gaiolas aritméticas que cobrem { $cells }
mark-counting-area = a área de contagem com { $value } { AFTER("em", $cell) }
mark-square-block-magic = o quadrado mágico { AFTER("em", $cell) }
mark-open-cage-even = a gaiola par { AFTER("em", $cell) }
mark-open-cage-odd = a gaiola ímpar { AFTER("em", $cell) }
mark-open-cage-lettered = o conjunto de gaiolas { $letter }
    .gender = masculine

## Techniques: plainly, one of them, several ($count in words)

technique-last-cell = última casa vazia
    .one = uma última casa vazia
    .many = { $count } últimas casas vazias
technique-hidden-single = solitário oculto
    .one = um solitário oculto
    .many = { CASE($count, "masculine") } solitários ocultos
technique-naked-single = solitário exposto
    .one = um solitário exposto
    .many = { CASE($count, "masculine") } solitários expostos
technique-locked-candidates = candidatos bloqueados
    .one = candidatos bloqueados
    .many = { CASE($count, "masculine") } grupos de candidatos bloqueados
technique-naked-pair = par exposto
    .one = um par exposto
    .many = { CASE($count, "masculine") } pares expostos
technique-naked-triple = trio exposto
    .one = um trio exposto
    .many = { CASE($count, "masculine") } trios expostos
technique-naked-quad = quarteto exposto
    .one = um quarteto exposto
    .many = { CASE($count, "masculine") } quartetos expostos
technique-hidden-pair = par oculto
    .one = um par oculto
    .many = { CASE($count, "masculine") } pares ocultos
technique-hidden-triple = trio oculto
    .one = um trio oculto
    .many = { CASE($count, "masculine") } trios ocultos
technique-hidden-quad = quarteto oculto
    .one = um quarteto oculto
    .many = { CASE($count, "masculine") } quartetos ocultos
technique-x-wing = asa X
    .one = uma asa X
    .many = { $count } asas X
technique-swordfish = peixe-espada
    .one = um peixe-espada
    .many = { CASE($count, "masculine") } peixes-espada
technique-jellyfish = água-viva
    .one = uma água-viva
    .many = { $count } águas-vivas
technique-finned-x-wing = asa X com barbatana
    .one = uma asa X com barbatana
    .many = { $count } asas X com barbatana
technique-finned-swordfish = peixe-espada com barbatana
    .one = um peixe-espada com barbatana
    .many = { CASE($count, "masculine") } peixes-espada com barbatana
technique-finned-jellyfish = água-viva com barbatana
    .one = uma água-viva com barbatana
    .many = { $count } águas-vivas com barbatana
technique-xy-wing = asa XY
    .one = uma asa XY
    .many = { $count } asas XY
technique-xyz-wing = asa XYZ
    .one = uma asa XYZ
    .many = { $count } asas XYZ
technique-w-wing = asa W
    .one = uma asa W
    .many = { $count } asas W
technique-single-digit-chain = cadeia de um só algarismo
    .one = uma cadeia de um só algarismo
    .many = { $count } cadeias de um só algarismo
technique-alternating-chain = cadeia alternada
    .one = uma cadeia alternada
    .many = { $count } cadeias alternadas
technique-extended-chain = cadeia ampliada
    .one = uma cadeia ampliada
    .many = { $count } cadeias ampliadas
technique-either-way = candidato descartado em todos os casos
    .one = um candidato descartado em todos os casos
    .many = { CASE($count, "masculine") } candidatos descartados em todos os casos
technique-seen-by-all-places = casa vista por todos os lugares de um algarismo
    .one = uma casa vista por todos os lugares de um algarismo
    .many = { $count } casas vistas por todos os lugares de um algarismo
technique-what-if = hipótese
    .one = uma hipótese
    .many = { $count } hipóteses
technique-beyond = passo além da escala
    .one = um passo além da escala
    .many = { CASE($count, "masculine") } passos além da escala
