### Three hints for a puzzle: where to look, what to look for, the step itself.

hint-where = Przy { $filled } wypełnionych polach: { $where }.
hint-where-at-start = Na początku: { $where }.
hint-cells = { COUNT($cells) ->
    [one] pole { $cells }
   *[other] pola { $cells }
}
hint-around = pola wokół pola { $cell }

hint-what-last-cell = Ostatnie wolne pole.
hint-what-hidden-single = Cyfra, która ma tam tylko jedno miejsce.
hint-what-naked-single = Pole, w którym możliwa jest tylko jedna cyfra.
hint-what-fixed = Cyfra, która jako jedyna zostaje.
hint-what-mark = Cyfry, które wyklucza { $noun }.
hint-what-mark--king = Cyfry, które wyklucza ruch króla.
hint-what-mark--knight = Cyfry, które wyklucza ruch skoczka.
hint-what-mark--barred-sums = Cyfry, które z sąsiadem dałyby zakazaną sumę.
hint-what-mark--no-doubles = Cyfry, które stałyby obok swojej połowy lub swojego podwojenia.
hint-what-mark--non-consecutive = Cyfry, które stałyby obok cyfry o jeden mniejszej lub większej.
hint-what-locked-candidates = Cyfra, której wszystkie miejsca leżą zarazem w innym { house-any }.
hint-what-naked-pair = Dwa pola, którym zostały te same dwie cyfry.
hint-what-naked-triple = Trzy pola, którym zostały razem trzy cyfry.
hint-what-naked-quad = Cztery pola, którym zostały razem cztery cyfry.
hint-what-hidden-pair = Dwie cyfry, które mają te same dwa miejsca.
hint-what-hidden-triple = Trzy cyfry, które mają razem trzy miejsca.
hint-what-hidden-quad = Cztery cyfry, które mają razem cztery miejsca.
hint-what-x-wing = Cyfra, która w dwóch wierszach ma miejsca tylko w tych samych dwóch kolumnach albo odwrotnie: X-wing.
hint-what-swordfish = Cyfra, która w trzech wierszach ma miejsca tylko w tych samych trzech kolumnach albo odwrotnie: miecznik.
hint-what-jellyfish = Cyfra, która w czterech wierszach ma miejsca tylko w tych samych czterech kolumnach albo odwrotnie: meduza.
hint-what-seen-by-all-places = Pole, które widać z każdego miejsca pewnej cyfry.
hint-what-either-way = Cyfra, która odpada tam przy każdym wyborze.
hint-what-what-if = Cyfra, która szybko prowadzi do sprzeczności.
# A pattern that is named by its name alone.
hint-what = { $technique }.
