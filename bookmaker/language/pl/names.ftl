### What things are called: cells and digits in lists, houses, marks, techniques, kinds of rules. A house has a genitive, an
### accusative (where it differs from the plain form) and “where”, the locative with its preposition (“w wierszu”, “na przekątnej”).

# What the editor’s plain quotation marks become: outer pair, inner pair, with a space between them.
quotation-marks = „ ” « »
# The letters in the order of a dictionary.
alphabet = a ą b c ć d e ę f g h i j k l ł m n ń o ó p q r s ś t u v w x y z ź ż

## Lists

list-more = { $most }, { $next }
list-and = { $most } i { $last }
list-or = { $most } lub { $last }
# Cells that hold the same digit.
list-alike = { $most } jak { $last }
# Clauses that hold commas or “and” themselves.
clauses-more = { $most }, { $next }
clauses-or = { $most } albo { $last }
clauses-and = { $most }, a { $last }

# How many things, in words as far as twelve; neuter, for most of what is counted is “pole”, “zadanie”, “założenie”.
# The genitive is the locative, too.
number = { $n ->
    [0] zero
    [1] jedno
    [2] dwa
    [3] trzy
    [4] cztery
    [5] pięć
    [6] sześć
    [7] siedem
    [8] osiem
    [9] dziewięć
    [10] dziesięć
    [11] jedenaście
    [12] dwanaście
   *[other] { $n }
}
    .feminine = { $n ->
        [1] jedna
        [2] dwie
       *[other] { number }
    }
    .genitive = { $n ->
        [0] zera
        [1] jednego
        [2] dwóch
        [3] trzech
        [4] czterech
        [5] pięciu
        [6] sześciu
        [7] siedmiu
        [8] ośmiu
        [9] dziewięciu
        [10] dziesięciu
        [11] jedenastu
        [12] dwunastu
       *[other] { $n }
    }

# Four digits in a row, or more.
digits-run = { $first }–{ $last }
candidate = { $digit } w polu { $cell }
placed = { $digits } w { $cells }
tried = { OR($digits) } w polu { OR($cells) }

## Houses

# Any house of the grid itself, by what the grid is divided into; in the locative, after “w jednym”, “w innym”.
house-any = { $divided ->
    [none] wierszu lub kolumnie
    [regions] wierszu, kolumnie lub obszarze
   *[boxes] wierszu, kolumnie lub bloku
}
house-row = wiersz { $number }
    .genitive = wiersza { $number }
    .where = w wierszu { $number }
    .short = w{ $number }
    .genitive-short = w{ $number }
    .where-short = w w{ $number }
house-column = kolumna { $number }
    .genitive = kolumny { $number }
    .where = w kolumnie { $number }
    .accusative = kolumnę { $number }
    .short = k{ $number }
    .genitive-short = k{ $number }
    .where-short = w k{ $number }
    .accusative-short = k{ $number }
house-region = obszar { $letter }
    .genitive = obszaru { $letter }
    .where = w obszarze { $letter }
house-box = { $place ->
    [middle-centre] środkowy blok
    [top-left] lewy górny blok
    [top-centre] środkowy górny blok
    [top-right] prawy górny blok
    [middle-left] lewy środkowy blok
    [middle-right] prawy środkowy blok
    [bottom-left] lewy dolny blok
    [bottom-centre] środkowy dolny blok
    [bottom-right] prawy dolny blok
   *[other] blok od pola { $cell }
}
    .genitive = { $place ->
        [middle-centre] środkowego bloku
        [top-left] lewego górnego bloku
        [top-centre] środkowego górnego bloku
        [top-right] prawego górnego bloku
        [middle-left] lewego środkowego bloku
        [middle-right] prawego środkowego bloku
        [bottom-left] lewego dolnego bloku
        [bottom-centre] środkowego dolnego bloku
        [bottom-right] prawego dolnego bloku
       *[other] bloku od pola { $cell }
    }
    .where = { $place ->
        [middle-centre] w środkowym bloku
        [top-left] w lewym górnym bloku
        [top-centre] w środkowym górnym bloku
        [top-right] w prawym górnym bloku
        [middle-left] w lewym środkowym bloku
        [middle-right] w prawym środkowym bloku
        [bottom-left] w lewym dolnym bloku
        [bottom-centre] w środkowym dolnym bloku
        [bottom-right] w prawym dolnym bloku
       *[other] w bloku od pola { $cell }
    }
# Houses that a rule adds.
house-of-rule = { $noun } od pola { $cell }
    .genitive = { CASE($noun, "genitive") } od pola { $cell }
    .where = w { CASE($noun, "locative") } od pola { $cell }
house-diagonals-falling = przekątna opadająca
    .genitive = przekątnej opadającej
    .where = na przekątnej opadającej
    .accusative = przekątną opadającą
house-diagonals-rising = przekątna wznosząca
    .genitive = przekątnej wznoszącej
    .where = na przekątnej wznoszącej
    .accusative = przekątną wznoszącą
house-disjoint-groups = zestaw pól nr { $number } z każdego bloku
    .genitive = zestawu pól nr { $number } z każdego bloku
    .where = w zestawie pól nr { $number } z każdego bloku
house-disjoint-groups-of-nine = zestaw { house-disjoint-groups-of-nine.which } pól bloków
    .which = { $n ->
        [1] lewych górnych
        [2] środkowych górnych
        [3] prawych górnych
        [4] lewych środkowych
        [5] środkowych
        [6] prawych środkowych
        [7] lewych dolnych
        [8] środkowych dolnych
       *[9] prawych dolnych
    }
    .genitive = zestawu { house-disjoint-groups-of-nine.which } pól bloków
    .where = w zestawie { house-disjoint-groups-of-nine.which } pól bloków
house-windows-rows = część wierszy { $number }–{ $last } poza oknami
    .genitive = części wierszy { $number }–{ $last } poza oknami
    .where = w części wierszy { $number }–{ $last } poza oknami
    .short = część w{ $number }–{ $last } poza oknami
    .genitive-short = części w{ $number }–{ $last } poza oknami
    .where-short = w części w{ $number }–{ $last } poza oknami
house-windows-columns = część kolumn { $number }–{ $last } poza oknami
    .genitive = części kolumn { $number }–{ $last } poza oknami
    .where = w części kolumn { $number }–{ $last } poza oknami
    .short = część k{ $number }–{ $last } poza oknami
    .genitive-short = części k{ $number }–{ $last } poza oknami
    .where-short = w części k{ $number }–{ $last } poza oknami
house-windows-crossing = skrzyżowanie wierszy i kolumn między oknami
    .genitive = skrzyżowania wierszy i kolumn między oknami
    .where = na skrzyżowaniu wierszy i kolumn między oknami
houses-row = wiersze { $numbers }
    .genitive = wierszy { $numbers }
    .where = w wierszach { $numbers }
    .short = w{ $numbers }
    .genitive-short = w{ $numbers }
    .where-short = w w{ $numbers }
houses-column = kolumny { $numbers }
    .genitive = kolumn { $numbers }
    .where = w kolumnach { $numbers }
    .short = k{ $numbers }
    .genitive-short = k{ $numbers }
    .where-short = w k{ $numbers }
whole-grid = cały diagram
# After “row”, “column”, or “rows” with several numbers, where grids overlap.
line-in-grid = { $number } diagramu { $grid }

## Marks, by where they are anchored. The gender “plural” tells that a verb is in the plural.

mark-line = { $noun } { $first }–{ $last }
mark-at = { $value ->
    [none] { $noun } w polu { $cell }
   *[other] { $noun } { $value } w polu { $cell }
}
mark-between = { $value ->
    [none] { $noun } między polami { $one } i { $other }
   *[other] { $noun } { $value } między polami { $one } i { $other }
}
mark-between-missing = granica bez { CASE($noun, "genitive") } między polami { $one } i { $other }
    .gender = feminine
# Where a clue outside the grid stands.
beside-line = { $side ->
    [left] na lewo od wiersza { $line }
    [right] na prawo od wiersza { $line }
    [top] nad kolumną { $line }
   *[bottom] pod kolumną { $line }
}
    .short = { $side ->
        [left] na lewo od w{ $line }
        [right] na prawo od w{ $line }
        [top] nad k{ $line }
       *[bottom] pod k{ $line }
    }
mark-outside = { $noun } { $value } { $where }
mark-slanting = { $noun } { $value } od pola { $start } { $way ->
    [down-right] w dół w prawo
    [down-left] w dół w lewo
    [up-right] w górę w prawo
   *[up-left] w górę w lewo
}
mark-lettered = { $noun } { $letter }
mark-joined = { $nouns } łączące pola { $cells }
    .gender = plural
mark-whole = { $noun }
# A mark that was named just before.
mark-again = { GENDER($noun) ->
    [feminine] ta sama
    [neuter] to samo
   *[masculine] ten sam
} { $noun }
# All marks of a kind.
marks = { $nouns }

## Marks that are called otherwise

marks-king = ruch króla
marks-knight = ruch skoczka
marks-non-consecutive = zakaz kolejnych cyfr
mark-non-consecutive = granica między polami { $one } i { $other }
    .gender = feminine
mark-non-consecutive-whole = zakaz kolejnych cyfr
mark-border-values-sum = suma { $value } między polami { $one } i { $other }
mark-border-values-difference = różnica { $value } między polami { $one } i { $other }
mark-border-values-product = iloczyn { $value } między polami { $one } i { $other }
    .gender = masculine
mark-border-values-quotient = iloraz { $value } między polami { $one } i { $other }
    .gender = masculine
mark-border-values-missing = granica bez liczby między polami { $one } i { $other }
mark-non-consecutive-corner = róg między polami { $one } i { $other }
marks-no-doubles = zakaz podwojeń
mark-no-doubles = granica między polami { $one } i { $other }
    .gender = feminine
mark-no-doubles-corner = róg między polami { $one } i { $other }
mark-no-doubles-whole = zakaz podwojeń
marks-barred-sums = zakaz sum
mark-barred-sums = granica między polami { $one } i { $other }
    .gender = feminine
mark-barred-sums-corner = róg między polami { $one } i { $other }
mark-barred-sums-whole = zakaz sum
mark-dots-white = biała kropka między polami { $one } i { $other }
mark-dots-black = czarna kropka między polami { $one } i { $other }
mark-sum-marks-V = znak V między polami { $one } i { $other }
mark-sum-marks-X = znak X między polami { $one } i { $other }
mark-sum-marks-missing = granica bez V i X między polami { $one } i { $other }
mark-rise-or-fall-rise = wzrost { $where }
mark-rise-or-fall-fall = spadek { $where }
mark-rise-or-fall-missing = koniec bez pasków { $where }
mark-rising-run-joined = serie rosnące sięgające pól { $cells }
    .gender = plural
mark-parity-run-joined = serie parzystości z obu stron pól { $cells }
    .gender = plural
mark-rise-or-fall-joined = wzrosty i spadki sięgające pól { $cells }
    .gender = plural
mark-inequality = znak między polami { $one } i { $other }
mark-inequality-joined = znaki łączące pola { $cells }
    .gender = plural
mark-limits-joined = ograniczenia w polach { $cells }
    .gender = plural
mark-fortress-joined = twierdze przy polach { $cells }
    .gender = plural
mark-pointing = strzałka w polu { $cell }
    .gender = feminine
mark-parity-even = kwadrat w polu { $cell }
    .gender = masculine
mark-parity-odd = koło w polu { $cell }
mark-parity-joined = pola parzyste i nieparzyste spośród { $cells }
    .gender = plural
mark-peaks-greater = daszek w polu { $cell }
mark-peaks-smaller = miseczka w polu { $cell }
    .gender = feminine
mark-peaks-joined = daszki i miseczki w polach { $cells }
    .gender = plural
mark-cage-joined = klatki na polach { $cells }
    .gender = plural
mark-arithmetic-cage = klatka arytmetyczna { $value } w polu { $cell }
mark-arithmetic-cage-joined = klatki arytmetyczne na polach { $cells }
    .gender = plural
mark-counting-area = obszar zliczający { $value } w polu { $cell }
mark-square-block-magic = kwadrat magiczny w polu { $cell }
mark-open-cage-even = otwarta klatka parzysta w polu { $cell }
mark-open-cage-odd = otwarta klatka nieparzysta w polu { $cell }
mark-open-cage-lettered = zestaw klatek { $letter }
    .gender = masculine

## Techniques: plainly, one of them, several ($count in words)

technique-last-cell = ostatnie wolne pole
    .one = ostatnie wolne pole
    .many = { $count } { COUNT($count) ->
        [few] ostatnie wolne pola
       *[other] ostatnich wolnych pól
    }
technique-hidden-single = ukryty singiel
    .one = ukryty singiel
    .many = { $count } { COUNT($count) ->
        [few] ukryte single
       *[other] ukrytych singli
    }
technique-naked-single = nagi singiel
    .one = nagi singiel
    .many = { $count } { COUNT($count) ->
        [few] nagie single
       *[other] nagich singli
    }
technique-locked-candidates = zablokowana cyfra
    .one = zablokowana cyfra
    .many = { CASE($count, "feminine") } { COUNT($count) ->
        [few] zablokowane cyfry
       *[other] zablokowanych cyfr
    }
technique-naked-pair = naga para
    .one = naga para
    .many = { CASE($count, "feminine") } { COUNT($count) ->
        [few] nagie pary
       *[other] nagich par
    }
technique-naked-triple = naga trójka
    .one = naga trójka
    .many = { CASE($count, "feminine") } { COUNT($count) ->
        [few] nagie trójki
       *[other] nagich trójek
    }
technique-naked-quad = naga czwórka
    .one = naga czwórka
    .many = { CASE($count, "feminine") } { COUNT($count) ->
        [few] nagie czwórki
       *[other] nagich czwórek
    }
technique-hidden-pair = ukryta para
    .one = ukryta para
    .many = { CASE($count, "feminine") } { COUNT($count) ->
        [few] ukryte pary
       *[other] ukrytych par
    }
technique-hidden-triple = ukryta trójka
    .one = ukryta trójka
    .many = { CASE($count, "feminine") } { COUNT($count) ->
        [few] ukryte trójki
       *[other] ukrytych trójek
    }
technique-hidden-quad = ukryta czwórka
    .one = ukryta czwórka
    .many = { CASE($count, "feminine") } { COUNT($count) ->
        [few] ukryte czwórki
       *[other] ukrytych czwórek
    }
technique-x-wing = X-wing
    .one = X-wing
    .many = { $count } { COUNT($count) ->
        [few] X-wingi
       *[other] X-wingów
    }
technique-swordfish = miecznik
    .one = miecznik
    .many = { $count } { COUNT($count) ->
        [few] mieczniki
       *[other] mieczników
    }
technique-jellyfish = meduza
    .one = meduza
    .many = { CASE($count, "feminine") } { COUNT($count) ->
        [few] meduzy
       *[other] meduz
    }
technique-finned-x-wing = X-wing z płetwą
    .one = X-wing z płetwą
    .many = { $count } { COUNT($count) ->
        [few] X-wingi
       *[other] X-wingów
    } z płetwą
technique-finned-swordfish = miecznik z płetwą
    .one = miecznik z płetwą
    .many = { $count } { COUNT($count) ->
        [few] mieczniki
       *[other] mieczników
    } z płetwą
technique-finned-jellyfish = meduza z płetwą
    .one = meduza z płetwą
    .many = { CASE($count, "feminine") } { COUNT($count) ->
        [few] meduzy
       *[other] meduz
    } z płetwą
technique-xy-wing = XY-wing
    .one = XY-wing
    .many = { $count } { COUNT($count) ->
        [few] XY-wingi
       *[other] XY-wingów
    }
technique-xyz-wing = XYZ-wing
    .one = XYZ-wing
    .many = { $count } { COUNT($count) ->
        [few] XYZ-wingi
       *[other] XYZ-wingów
    }
technique-w-wing = W-wing
    .one = W-wing
    .many = { $count } { COUNT($count) ->
        [few] W-wingi
       *[other] W-wingów
    }
technique-single-digit-chain = łańcuch jednej cyfry
    .one = łańcuch jednej cyfry
    .many = { $count } { COUNT($count) ->
        [few] łańcuchy
       *[other] łańcuchów
    } jednej cyfry
technique-alternating-chain = łańcuch naprzemienny
    .one = łańcuch naprzemienny
    .many = { $count } { COUNT($count) ->
        [few] łańcuchy naprzemienne
       *[other] łańcuchów naprzemiennych
    }
technique-seen-by-all-places = pole widziane ze wszystkich miejsc cyfry
    .one = pole widziane ze wszystkich miejsc cyfry
    .many = { $count } { COUNT($count) ->
        [few] pola widziane
       *[other] pól widzianych
    } ze wszystkich miejsc cyfry
technique-extended-chain = łańcuch rozszerzony
    .one = łańcuch rozszerzony
    .many = { $count } { COUNT($count) ->
        [few] łańcuchy rozszerzone
       *[other] łańcuchów rozszerzonych
    }
technique-either-way = cyfra wykluczona w każdym wypadku
    .one = cyfra wykluczona w każdym wypadku
    .many = { CASE($count, "feminine") } { COUNT($count) ->
        [few] cyfry wykluczone
       *[other] cyfr wykluczonych
    } w każdym wypadku
technique-what-if = założenie na próbę
    .one = założenie na próbę
    .many = { $count } { COUNT($count) ->
        [few] założenia
       *[other] założeń
    } na próbę
technique-beyond = krok spoza drabiny technik
    .one = krok spoza drabiny technik
    .many = { $count } { COUNT($count) ->
        [few] kroki
       *[other] kroków
    } spoza drabiny technik

## Kinds of rules: one mark, several, the heading. Genitive and locative are for those that houses are named by; “granica
## bez kropki”, too.

kind-arithmetic-cage = klatka arytmetyczna
    .many = klatki arytmetyczne
    .title = Klatki arytmetyczne
    .gender = feminine
kind-arrow = strzałka
    .many = strzałki
    .title = Strzałki
    .gender = feminine
kind-barred-sums = zakaz sum
    .many = zakazy sum
    .title = Zakazane sumy
    .gender = masculine
kind-border-values = liczba na granicy
    .many = liczby na granicach
    .title = Liczby na granicach pól
    .gender = feminine
kind-bounded-line = linia ograniczona
    .many = linie ograniczone
    .title = Linie ograniczone
    .gender = feminine
kind-cage = klatka
    .many = klatki
    .title = Klatki
    .gender = feminine
kind-clone = klon
    .many = klony
    .title = Klony
    .gender = masculine
kind-consecutive-bars = kreska
    .many = kreski
    .title = Kreski kolejnych cyfr
    .gender = feminine
    .genitive = kreski
kind-consecutive-line = linia kolejnych cyfr
    .many = linie kolejnych cyfr
    .title = Linie kolejnych cyfr
    .gender = feminine
kind-counting-area = obszar zliczający
    .many = obszary zliczające
    .title = Obszary zliczające
    .gender = masculine
kind-diagonal-sum = suma ukośna
    .many = sumy ukośne
    .title = Sumy ukośne
    .gender = feminine
kind-diagonals = przekątna
    .many = przekątne
    .title = Przekątne
    .gender = feminine
    .genitive = przekątnej
    .locative = przekątnej
kind-difference-line = linia różnic
    .many = linie różnic
    .title = Linie różnic
    .gender = feminine
kind-disjoint-groups = zestaw pól
    .many = zestawy pól
    .title = Te same miejsca w blokach
    .gender = masculine
    .genitive = zestawu pól
    .locative = zestawie pól
kind-dots = kropka
    .many = kropki
    .title = Kropki
    .gender = feminine
    .genitive = kropki
kind-equal-part-line = linia równych części
    .many = linie równych części
    .title = Linie równych części
    .gender = feminine
kind-even-step-line = linia równych kroków
    .many = linie równych kroków
    .title = Linie równych kroków
    .gender = feminine
kind-extra-region = dodatkowy obszar
    .many = dodatkowe obszary
    .title = Dodatkowe obszary
    .gender = masculine
    .genitive = dodatkowego obszaru
    .locative = dodatkowym obszarze
kind-first-seen = wskazówka z brzegu
    .many = wskazówki z brzegu
    .title = Cyfry z brzegu
    .gender = feminine
kind-fortress = twierdza
    .many = twierdze
    .title = Twierdze
    .gender = feminine
kind-frame-product = iloczyn z brzegu
    .many = iloczyny z brzegu
    .title = Iloczyny z brzegu
    .gender = masculine
kind-frame-sum = suma z brzegu
    .many = sumy z brzegu
    .title = Sumy z brzegu
    .gender = feminine
kind-hinge-line = linia zawiasowa
    .many = linie zawiasowe
    .title = Linie zawiasowe
    .gender = feminine
kind-inequality = znak nierówności
    .many = znaki nierówności
    .title = Nierówności
    .gender = masculine
kind-king = ruch króla
    .many = ruchy króla
    .title = Ruch króla
    .gender = masculine
kind-knight = ruch skoczka
    .many = ruchy skoczka
    .title = Ruch skoczka
    .gender = masculine
kind-limits = ograniczenie
    .many = ograniczenia
    .title = Ograniczenia
    .gender = neuter
kind-low-high-line = linia małych i dużych cyfr
    .many = linie małych i dużych cyfr
    .title = Linie małych i dużych cyfr
    .gender = feminine
kind-no-doubles = zakaz podwojeń
    .many = zakazy podwojeń
    .title = Bez podwojeń
    .gender = masculine
kind-non-consecutive = zakaz kolejnych cyfr
    .many = zakazy kolejnych cyfr
    .title = Bez kolejnych cyfr obok siebie
    .gender = masculine
kind-numbered-room = numerowany pokój
    .many = numerowane pokoje
    .title = Numerowane pokoje
    .gender = masculine
kind-open-cage = otwarta klatka
    .many = otwarte klatki
    .title = Otwarte klatki
    .gender = feminine
kind-palindrome = palindrom
    .many = palindromy
    .title = Palindromy
    .gender = masculine
kind-parity = pole parzyste lub nieparzyste
    .many = pola parzyste i nieparzyste
    .title = Parzyste i nieparzyste
    .gender = neuter
kind-parity-line = linia parzystości
    .many = linie parzystości
    .title = Linie parzystości
    .gender = feminine
kind-parity-run = seria parzystości
    .many = serie parzystości
    .title = Serie parzystości
    .gender = feminine
kind-peaks = daszek lub miseczka
    .many = daszki i miseczki
    .title = Wzniesienia i dołki
    .gender = masculine
kind-pointing = pole ze strzałką
    .many = pola ze strzałkami
    .title = Pola ze strzałkami
    .gender = neuter
kind-quadruple = pierścień
    .many = pierścienie
    .title = Pierścienie na rogach pól
    .gender = masculine
kind-resting-thermometer = termometr z postojami
    .many = termometry z postojami
    .title = Termometry z postojami
    .gender = masculine
kind-rise-or-fall = wzrost lub spadek
    .many = wzrosty i spadki
    .title = Wzrosty i spadki
    .gender = masculine
kind-rising-run = seria rosnąca
    .many = serie rosnące
    .title = Serie rosnące
    .gender = feminine
kind-same-sum-line = linia równych sum
    .many = linie równych sum
    .title = Linie równych sum
    .gender = feminine
kind-sandwich = suma kanapkowa
    .many = sumy kanapkowe
    .title = Sumy kanapkowe
    .gender = feminine
kind-skyscraper = liczba wieżowców
    .many = liczby wieżowców
    .title = Wieżowce
    .gender = feminine
kind-square-block = kwadrat równych sum
    .many = kwadraty równych sum
    .title = Kwadraty równych sum
    .gender = masculine
kind-sum-marks = znak sumy
    .many = znaki sum
    .title = Znaki sum
    .gender = masculine
kind-thermometer = termometr
    .many = termometry
    .title = Termometry
    .gender = masculine
kind-windows = okno
    .many = okna
    .title = Okna
    .gender = neuter
    .genitive = okna
    .locative = oknie
kind-x-sum = suma X
    .many = sumy X
    .title = Sumy X
    .gender = feminine
