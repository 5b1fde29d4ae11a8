### Why a step holds: a sentence for each claim. A kind of rule or a technique may have a wording of its own, after “--”.
### $gone is what goes, as a clause; $mark is the mark that says so, always the subject: its gender “plural” asks for a verb
### in the plural. A cell stands behind “pole”, in its case, for in editions in text it is called “wiersz 3 kolumna 5”.

## What goes

gone-first = z { COUNT($cells) ->
    [one] pola
   *[other] pól
} { $cells } { COUNT($digits) ->
    [one] odpada
   *[other] odpadają
} { $digits }
gone-next = z { COUNT($cells) ->
    [one] pola
   *[other] pól
} { $cells } { COUNT($digits) ->
    [one] odpada
   *[other] odpadają
} { $digits }
impossible = z cyfrą { OR($digits) } w polu { OR($cells) }

## Singles

claim-last-cell = Ostatnie wolne pole { CASE($house, "where") } to { $cell }; trafia tam { $digit }.
claim-hidden-single = { CASE($house, "where") } cyfra { $digit } pasuje tylko do pola { $cell }.
claim-naked-single = W polu { $cell } możliwa jest już tylko cyfra { $digit }.
claim-fixed = { $mark } nie { GENDER($mark) ->
    [plural] zostawiają
   *[other] zostawia
} wyboru w polu { $cell }: niezależnie od podanych cyfr stoi tam { $digit }.
claim-from-proof = Tu kończy się drabina technik; cyfra { $digit } w polu { $cell } pochodzi z dowodu.

## Patterns

claim-locked = { CASE($home, "where") } wszystkie miejsca dla { $digit } leżą { CASE($other, "where") }, więc { $gone }.
claim-naked-subset = { CASE($house, "where") } pola { $cells } dzielą między siebie cyfry { $digits }, więc { $gone }.
claim-naked-subset-in-mark = { $mark } nie { GENDER($mark) ->
    [plural] powtarzają
   *[other] powtarza
} cyfr, a { COUNT($cells) ->
    [one] pole { $cells } zajmuje tam
   *[other] pola { $cells } zajmują tam
} { $digits }, więc { $gone }.
claim-naked-subset--limits = { CASE($house, "where") } pola { $cells } są ograniczone do cyfr { $digits }, więc { $gone }.
claim-naked-subset--parity = { CASE($house, "where") } pola { $cells } zużywają cyfry { $digits }, więc { $gone }.
claim-hidden-subset = { CASE($house, "where") } cyfry { $digits } mieszczą się tylko w polach { $cells }, więc { $gone }.
claim-fish = { CASE($base, "where") } wszystkie miejsca dla { $digit } leżą { CASE($cover, "where") }, więc { $gone }.
claim-fish-finned = { CASE($base, "where") } każde miejsce dla { $digit } leży { CASE($cover, "where") } albo jest nim pole { OR($fins) }; w każdym z tych wypadków { $gone }.
claim-seen-by-all = { CASE($house, "where") } cyfra { $digit } stoi w polu { OR($places) }; każde z nich widzi { COUNT($gone-cells) ->
    [one] pole
   *[other] pola
} { $gone-cells }, więc { $gone }.
claim-seen-by-all-in-mark = { $mark } { GENDER($mark) ->
    [plural] mają
   *[other] ma
} cyfrę { $digit } w polu { OR($places) }; każde z nich widzi { COUNT($gone-cells) ->
    [one] pole
   *[other] pola
} { $gone-cells }, więc { $gone }.
claim-seen-by-all--king = { CASE($house, "where") } cyfra { $digit } stoi w polu { OR($places) }; każde z nich { COUNT($gone-cells) ->
    [one] styka się z polem { $gone-cells } albo leży z nim
   *[other] styka się z polami { $gone-cells } albo leży z nimi
} w jednym { house-any }, więc { $gone }.
claim-seen-by-all--knight = { CASE($house, "where") } cyfra { $digit } stoi w polu { OR($places) }; każde z nich widzi { COUNT($gone-cells) ->
    [one] pole
   *[other] pola
} { $gone-cells } w { house-any } albo ruchem skoczka, więc { $gone }.
claim-pivot-wing--xy-wing = Cokolwiek stoi w polu { $pivot }, cyfra { $digit } trafia do pola { OR($wings) }, więc { $gone }.
claim-pivot-wing--xyz-wing = Cokolwiek stoi w polu { $pivot }, cyfra { $digit } trafia tam albo do pola { OR($wings) }, więc { $gone }.
claim-linked-wing = { CASE($house, "where") } cyfra { $joined } stoi w polu { OR($link) }, więc pola { $pair } nie mogą oba zawierać { $joined }; w jednym z nich stoi { $digit }, dlatego { $gone }.
claim-chain = Jeśli w polu { $start-cell } nie stoi { $start-digit }, to { $trues }. Zatem { $start } albo { $end }, a w obu wypadkach { $gone }.
claim-chain-to-itself = Jeśli w polu { $start-cell } nie stoi { $start-digit }, to { $trues }, wbrew punktowi wyjścia. Zatem { $start }, więc { $gone }.
claim-extended-chain = Jeśli { $unless }, to { $trues }. Zatem { $start } albo { $end }, a w obu wypadkach { $by } wyklucza { $taken }.
claim-extended-chain-seen = Jeśli { $unless }, to { $trues }. Zatem { $start } albo { $end }, a w obu wypadkach { $gone }.
claim-extended-chain-to-itself = Jeśli { $unless }, to { $trues }, wbrew punktowi wyjścia. Zatem { $start }, a { $by } wyklucza { $taken }.
claim-extended-chain-to-itself-seen = Jeśli { $unless }, to { $trues }, wbrew punktowi wyjścia. Zatem { $start }, więc { $gone }.
claim-either-way = { CASE($house, "where") } cyfra { $digit } stoi w polu { OR($places) }; { $n ->
    [2] w obu wypadkach
   *[other] w każdym wypadku
} { $by } wyklucza { $taken }.
claim-either-way-in-cell = W polu { $cell } stoi { OR($digits) }; { COUNT($digits) ->
    [2] w obu wypadkach
   *[other] w każdym wypadku
} { $by } wyklucza { $taken }.
in-plain-sight = sama cyfra
true-in-group = cyfra { $digit } stoi w polu { OR($cells) }
unless = w polu { $cell } nie stoi { $digit }
unless-in-group = cyfra { $digit } nie stoi w żadnym z pól { $cells }
true-by-mark = { $by } wyklucza { $taken }, więc { $true }
true-among = pola { $among } zawierają { $digits }, więc { $true }
true-among-by-mark = { $by } wyklucza { $taken }, pola { $among } zawierają { $digits }, więc { $true }
true = w polu { $cell } stoi { $digit }

## What-ifs

claim-refuted = Jeśli wpisać { $tried }, to { $end }, więc { $gone }.
claim-refuted-later = Jeśli wpisać { $tried }, to po { $n ->
    [1] jednej rundzie
   *[other] { CASE($rounds, "genitive") } rundach
} wymuszonych wpisów { $end }, więc { $gone }.
claim-refuted-linked = Załóżmy { $tried }: wtedy { $links }, a w końcu { $end }. Zatem { $gone }.
end-no-place = { CASE($house, "where") } nie ma już miejsca dla { $digit }
end-no-digit = dla pola { $cell } nie zostaje żadna cyfra
end-no-digit-by-mark = { $mark } nie { GENDER($mark) ->
    [plural] zostawiają
   *[other] zostawia
} żadnej cyfry dla pola { $cell }
end-no-digit-by-marks = znaki nie zostawiają żadnej cyfry dla pola { $cell }
end-nothing-fits = { $mark } nie { GENDER($mark) ->
    [plural] dają się już dokończyć
   *[other] daje się już dokończyć
}
then-in-house = { CASE($house, "where") } cyfra { $digit } trafia do pola { $cell }
then-last = w polu { $cell } może stać tylko { $digit }
then-by-mark = { $mark } { GENDER($mark) ->
    [plural] zostawiają
   *[other] zostawia
} w polu { $cell } tylko { $digit }
then-gone = { $mark } { GENDER($mark) ->
    [plural] wykluczają
   *[other] wyklucza
} { $taken }
taken = { $digits } w { COUNT($cells) ->
    [one] polu
   *[other] polach
} { $cells }

## What a mark allows

bounds-least = w polu { $cell } co najmniej { $low }
bounds-most = w polu { $cell } najwyżej { $high }
bounds-both = w polu { $cell } od { $low } do { $high }
bounds-only = w polu { $cell } tylko { $low }
claim-bounds = { $mark } { GENDER($mark) ->
    [plural] dopuszczają
   *[other] dopuszcza
} { $bounds }, więc { $gone }.
claim-bounds--thermometer = { $mark } { GENDER($mark) ->
    [plural] muszą
   *[other] musi
} rosnąć z pola na pole, więc { $gone }.
claim-bounds--resting-thermometer = { $mark } nie { GENDER($mark) ->
    [plural] mogą
   *[other] może
} opadać, więc { $gone }.
claim-bounds--diagonal-sum = { $mark } { GENDER($mark) ->
    [plural] dopuszczają
   *[other] dopuszcza
} { $bounds }, cokolwiek stoi w innych polach, więc { $gone }.
claim-enclosed = { $mark } { GENDER($mark) ->
    [plural] mają
   *[other] ma
} wszystkie cyfry między cyframi na obu końcach, więc { $gone }.
claim-enclosed-ends = { $mark } { GENDER($mark) ->
    [plural] potrzebują
   *[other] potrzebuje
} miejsca na swoje cyfry między cyframi na obu końcach, więc { $gone }.
claim-only-digits = { $mark } { GENDER($mark) ->
    [plural] dopuszczają
   *[other] dopuszcza
} tylko { $digits }, więc { $gone }.
claim-only-digits--parity-run = { $mark } { GENDER($mark) ->
    [plural] wymagają
   *[other] wymaga
} w { COUNT($cells) ->
    [one] polu
   *[other] polach
} { $cells } { COUNT($digits) ->
    [one] cyfry
   *[other] cyfr
} { $digits }, więc { $gone }.
claim-only-digits--parity-line = { $mark } { GENDER($mark) ->
    [plural] mają
   *[other] ma
} w { COUNT($cells) ->
    [one] polu
   *[other] polach
} { $cells } cyfrę { OR($digits) }, więc { $gone }.
claim-only-digits--low-high-line = { $mark } { GENDER($mark) ->
    [plural] mają
   *[other] ma
} w { COUNT($cells) ->
    [one] polu
   *[other] polach
} { $cells } cyfrę { OR($digits) }, więc { $gone }.
claim-only-in = { $mark } { GENDER($mark) ->
    [plural] dopuszczają
   *[other] dopuszcza
} { $digits } tylko w { COUNT($digits) ->
    [one] polu { OR($cells) }
   *[other] polach { $cells }
}, więc { $gone }.
claim-only-in--counting-area = { $mark } { GENDER($mark) ->
    [plural] mają
   *[other] ma
} { $digits } w { COUNT($cells) ->
    [one] polu
   *[other] polach
} { $cells }, więc { $gone }.
claim-only-in--quadruple = { $mark } { GENDER($mark) ->
    [plural] wymagają
   *[other] wymaga
} { COUNT($digits) ->
    [one] cyfry { $digits }, a ta mieści
   *[other] cyfr { $digits }, a te mieszczą
} się tylko w { COUNT($cells) ->
    [one] polu
   *[other] polach
} { $cells }, więc { $gone }.
claim-no-partner = { $mark } { GENDER($mark) ->
    [plural] wykluczają
   *[other] wyklucza
} { $gone-digits } w polu { $cell }, bo dla { COUNT($beyond) ->
    [one] pola
   *[other] pól
} { $beyond } nic by nie zostało.
claim-beside = { $mark } oraz cyfra { $known } w polu { $beside } wykluczają { $gone-digits } w polu { $cell }.
claim-beside--non-consecutive = Cyfra { $known } w polu { $beside } nie dopuszcza obok siebie cyfry o jeden mniejszej ani większej, więc { $gone }.
    .b = Obok cyfry { $known } w polu { $beside } nie stoi cyfra o jeden mniejsza ani większa, więc { $gone }.
claim-beside--no-doubles = Obok cyfry { $known } w polu { $beside } nie stoi ani jej połowa, ani jej podwojenie, więc { $gone }.
claim-beside--barred-sums = Obok cyfry { $known } w polu { $beside } { COUNT($gone-digits) ->
    [one] cyfra { $gone-digits } w polu { $cell } dałaby
   *[other] cyfry { $gone-digits } w polu { $cell } dałyby
} zakazaną sumę.
claim-too-near = { $mark } { GENDER($mark) ->
    [plural] wykluczają
   *[other] wyklucza
} { $gone-digits } w polu { $cell }: różnica względem { COUNT($beside) ->
    [one] pola
   *[other] pól
} { $beside } byłaby zawsze za mała.
claim-one-combination = { $mark } { GENDER($mark) ->
    [plural] mogą
   *[other] może
} zawierać tylko { $digits }, więc { $gone }.
claim-one-combination--quadruple = { $mark } { GENDER($mark) ->
    [plural] wypełniają
   *[other] wypełnia
} swoje cztery pola, więc { $gone }.
claim-no-combination = { $mark } nie { GENDER($mark) ->
    [plural] mają
   *[other] ma
} żadnej kombinacji z cyfrą { OR($gone-digits) }, więc { $gone }.
claim-no-run = { $mark } nie { GENDER($mark) ->
    [plural] mają
   *[other] ma
} żadnego ciągu z cyfrą { OR($gone-digits) }, więc { $gone }.
claim-needed = { $mark } { GENDER($mark) ->
    [plural] wymagają
   *[other] wymaga
} cyfry { $digit } w polu { OR($places) }, więc { $gone }.
claim-no-filling = { $mark } nie { GENDER($mark) ->
    [plural] dają
   *[other] daje
} się wypełnić { $impossible }.
    .b = { $mark } nie { GENDER($mark) ->
        [plural] mają
       *[other] ma
    } wypełnienia { $impossible }.
claim-no-filling-joined = { $mark } nie dają się pogodzić { $impossible }.
claim-same-digit = { $mark } { GENDER($mark) ->
    [plural] mają
   *[other] ma
} tę samą cyfrę w polach { $cells }, więc { $gone }.
claim-reached = { $mark } nie { GENDER($mark) ->
    [plural] pozwalają
   *[other] pozwala
} powtórzyć cyfry { $digit } z pola { $cell } w { COUNT($gone-cells) ->
    [one] polu
   *[other] polach
} { $gone-cells }, więc { $gone }.
claim-reached--king = Od cyfry { $digit } w polu { $cell } ruch króla prowadzi do { COUNT($gone-cells) ->
    [one] pola
   *[other] pól
} { $gone-cells }, więc { $digit } nie może tam stać.
claim-reached--knight = Od cyfry { $digit } w polu { $cell } ruch skoczka prowadzi do { COUNT($gone-cells) ->
    [one] pola
   *[other] pól
} { $gone-cells }, więc { $digit } nie może tam stać.
claim-beside-all = { CASE($house, "where") } cyfra { $digit } stoi w polu { OR($places) }, zawsze obok pola { $cell }, więc { $gone }.
claim-limits-meet = { $mark } { GENDER($mark) ->
    [plural] dają
   *[other] daje
} w sumie co najmniej { $least }, a wynik to najwyżej { $most }, więc { $gone }.
claim-limits-meet-from-above = { $mark } { GENDER($mark) ->
    [plural] dają
   *[other] daje
} w sumie najwyżej { $most }, a wynik to co najmniej { $least }, więc { $gone }.
claim-limits-meet--arrow = { $mark } { GENDER($mark) ->
    [plural] mają
   *[other] ma
} wzdłuż trzonu co najmniej { $least }, a w kółku najwyżej { $most }, więc { $gone }.
claim-limits-meet-from-above--arrow = { $mark } { GENDER($mark) ->
    [plural] mają
   *[other] ma
} wzdłuż trzonu najwyżej { $most }, a w kółku co najmniej { $least }, więc { $gone }.
claim-common-sum--square-block = { $mark } { GENDER($mark) ->
    [plural] muszą
   *[other] musi
} mieć w każdym rzędzie sumę { $sums }, więc { $gone }.
claim-common-sum--open-cage = { $mark } { GENDER($mark) ->
    [plural] muszą
   *[other] musi
} mieć w każdej klatce sumę { $sums }, więc { $gone }.
claim-common-sum = { $mark } { GENDER($mark) ->
    [plural] muszą
   *[other] musi
} mieć w każdej części sumę { $sums }, więc { $gone }.
sums-range = od { $least } do { $most }
claim-left-over = { $houses } { $n ->
    [1] daje
   *[other] dają
} w sumie { $total }, a mieszczące się tam w całości { $nouns } dają { $within }, co na { COUNT($cells) ->
    [one] pole { $cells } zostawia
   *[other] pola { $cells } zostawia razem
} { $rest }, więc { $gone }.
claim-left-over-beyond = { $houses } { $n ->
    [1] daje
   *[other] dają
} w sumie { $total }, a pokrywające całość { $nouns } dają { $within }, co na { COUNT($cells) ->
    [one] pole { $cells } zostawia
   *[other] pola { $cells } zostawia razem
} { $rest }, więc { $gone }.
claim-steps = { $mark } { GENDER($mark) ->
    [plural] dopuszczają
   *[other] dopuszcza
} tylko kroki o { OR($steps) }, więc { $gone }.
claim-first-digits = { $mark } { COUNT($digits) ->
    [one] musi zaczynać się od cyfry { $digits }
   *[other] może zaczynać się tylko od cyfry { OR($digits) }
}, a dalszy ciąg musi do niej pasować, więc { $gone }.
claim-counts-to = { $mark } może stać tylko na miejscu { OR($places) }, a pole { $first } do niego odlicza, więc { $gone }.
claim-counts-to--pointing = { $mark } może prowadzić tylko na miejsce { OR($places) }, więc { $gone }.
claim-apart = { $mark } { GENDER($mark) ->
    [plural] zostawiają
   *[other] zostawia
} między kromkami { $counts }, więc { $gone }.
claim-apart-filled = { $mark } { GENDER($mark) ->
    [plural] zostawiają
   *[other] zostawia
} między kromkami { $counts }, a stoi tam { $fillings }, więc { $gone }.
apart-cells = { $number } { $n ->
    [one] pole
    [few] pola
   *[other] pól
}
claim-held-by-rest = { CASE($rest, "where") } każda cyfra też stoi raz, a { $digit } pasuje tam tylko do pola { $cell }, więc { $gone }.
claim-held-by-rest-settled = { CASE($rest, "where") } każda cyfra też stoi raz, a { $digit } stoi tam już w polu { $cell }, więc { $gone }.
