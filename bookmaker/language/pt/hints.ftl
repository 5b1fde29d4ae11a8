### Three hints for a puzzle: where to look, what to look for, the step itself.

hint-where = Com { $filled } casas preenchidas: { $where }.
hint-where-at-start = No início: { $where }.
hint-cells = { COUNT($cells) ->
    [one] a casa { $cells }
   *[other] as casas { $cells }
}
hint-around = as casas em volta { AFTER("de", $cell) }

hint-what-last-cell = A última casa vazia.
hint-what-hidden-single = Um algarismo que ali só tem um lugar.
hint-what-naked-single = Uma casa dali com um só algarismo possível.
hint-what-fixed = O algarismo que resta.
hint-what-mark = { GENDER($noun) ->
    [feminine] Algarismos que a { $noun } descarta.
   *[masculine] Algarismos que o { $noun } descarta.
}
hint-what-mark--king = Algarismos que o movimento do rei descarta.
hint-what-mark--knight = Algarismos que o salto do cavalo descarta.
hint-what-mark--barred-sums = Algarismos que dariam uma soma proibida com um vizinho.
hint-what-mark--no-doubles = Algarismos que ficariam ao lado da sua metade ou do seu dobro.
hint-what-mark--peaks = Algarismos que o telhado ou a tigela descarta.
hint-what-mark--non-consecutive = Algarismos que ficariam ao lado do anterior ou do seguinte.
hint-what-locked-candidates = Um algarismo cujos lugares ali ficam todos em outra { house-any }.
hint-what-naked-pair = Duas casas às quais só restam os mesmos dois algarismos.
hint-what-naked-triple = Três casas às quais, em conjunto, só restam três algarismos.
hint-what-naked-quad = Quatro casas às quais, em conjunto, só restam quatro algarismos.
hint-what-hidden-pair = Dois algarismos com os mesmos dois lugares.
hint-what-hidden-triple = Três algarismos que dividem três lugares.
hint-what-hidden-quad = Quatro algarismos que dividem quatro lugares.
hint-what-x-wing = Um algarismo que em duas linhas só cabe nas mesmas duas colunas, ou o contrário: uma asa X.
hint-what-swordfish = Um algarismo que em três linhas só cabe nas mesmas três colunas, ou o contrário: um peixe-espada.
hint-what-jellyfish = Um algarismo que em quatro linhas só cabe nas mesmas quatro colunas, ou o contrário: uma água-viva.
hint-what-seen-by-all-places = Uma casa que vê todos os lugares de um algarismo.
hint-what-either-way = Um candidato que nenhuma das opções dali deixa de pé.
hint-what-what-if = Um algarismo que logo leva a uma contradição.
# A pattern that is named by its name alone.
hint-what = { $technique }.
