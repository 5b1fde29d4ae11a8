### What each kind of rule asks, in a sentence under a puzzle, singular or plural as there are marks ($n); how it is taught in
### the primer; and how its marks are told to those who do not see them ($cells, $line: which cells; $where: on which borders;
### $side: on which side of the grid).

## Arithmetic cages

result-sum = suma (+)
result-product = iloczyn (×)
result-difference = różnica (−)
result-quotient = iloraz (÷)
# $results: the signs that are there. $unsigned: is there a number without a sign; in pairs, it may be any of the four.
arithmetic-cage-sentence-signs = Liczba w rogu { $n ->
    [1] klatki arytmetycznej
   *[other] każdej klatki arytmetycznej
} to { $results } jej cyfr{ $unsigned ->
    [pairs] ; bez znaku jest to suma, iloczyn, różnica lub iloraz jej cyfr
    [larger] ; bez znaku jest to suma lub iloczyn jej cyfr
   *[none] {""}
}{ $larger ->
    [differ] ; cyfry są tam różne
    [repeat] ; cyfry mogą się tam powtarzać
   *[no] {""}
}.
arithmetic-cage-sentence-unsigned = Liczba w rogu { $n ->
    [1] klatki arytmetycznej
   *[other] każdej klatki arytmetycznej
} to { $unsigned ->
    [pairs] suma, iloczyn, różnica lub iloraz jej cyfr
   *[larger] suma lub iloczyn jej cyfr
}{ $larger ->
    [differ] ; cyfry są tam różne
    [repeat] ; cyfry mogą się tam powtarzać
   *[no] {""}
}.
arithmetic-cage-spoken = Klatka arytmetyczna, { $sort ->
    [sum] suma { $number }
    [product] iloczyn { $number }
    [difference] różnica { $number }
    [quotient] iloraz { $number }
   *[none] { $number } bez znaku
}: { $cells }
arithmetic-cage-primer = Znak w rogu klatki arytmetycznej mówi, co powstaje z jej cyfr: suma (+), iloczyn (×), różnica (−) albo iloraz (÷); odejmuje się od większej cyfry i dzieli się większą. Gdy znaku nie ma, trzeba go ustalić. Zacznij od iloczynów: niewiele z nich dzieli się przez 5 lub 7, a jeśli liczba się dzieli, cyfra ta musi być w klatce. W diagramie 9×9 w klatce ze znakiem ÷ cyfra 5 lub 7 może stać tylko obok 1, a duża różnica wymaga cyfry małej i dużej.

## Arrows

arrow-sentence = Suma cyfr wzdłuż { $n ->
    [1] strzałki
   *[other] każdej strzałki
} jest równa cyfrze w jej kółku.
# An oval is read like a number; $all: are there ovals only, and no circle.
arrow-sentence-ovals = Suma cyfr wzdłuż { $n ->
    [1] strzałki
   *[other] każdej strzałki
} jest równa liczbie w jej { $all ->
    [yes] owalu, czytanej
   *[no] kółku lub owalu; w owalu czyta się ją
} { $ways ->
    [across] od lewej do prawej
    [down] z góry na dół
   *[both] od lewej do prawej lub z góry na dół
}.
arrow-zero = Liczba w owalu nigdy nie zaczyna się od 0.
# In the genitive, behind “od”.
arrow-circle = kółka ({ $cells })
arrow-oval = owalu ({ $cells }), czytanego { $way ->
    [across] od lewej do prawej
   *[down] z góry na dół
}
arrow-spoken = Strzałka od { $start }: { $line }
arrow-primer = Cyfry wzdłuż trzonu strzałki, od pola za kółkiem aż po grot, dają w sumie liczbę w kółku; mogą się powtarzać, o ile pozwalają na to wiersze, kolumny i bloki. Gdy z jednego kółka wychodzi kilka trzonów, każdy z nich daje tę sumę. W owalu na dwóch lub trzech polach stoi liczba dwu- lub trzycyfrowa. Trzy pola jednego bloku dają razem co najmniej 6, więc długi trzon oznacza dużą cyfrę w kółku i małe cyfry na trzonie.
# Where no grid of the book has boxes.
arrow-primer--lines = Cyfry wzdłuż trzonu strzałki, od pola za kółkiem aż po grot, dają w sumie liczbę w kółku; mogą się powtarzać, o ile pozwalają na to wiersze i kolumny. Gdy z jednego kółka wychodzi kilka trzonów, każdy z nich daje tę sumę. W owalu na dwóch lub trzech polach stoi liczba dwu- lub trzycyfrowa. Trzy pola jednego wiersza dają razem co najmniej 6, więc długi trzon oznacza dużą cyfrę w kółku i małe cyfry na trzonie.

## Barred sums

barred-sums-sentence = { $touching ->
    [corners] Cyfry w polach stykających się bokiem lub rogiem nigdy nie dają sumy { $sums }.
   *[sides] Cyfry w polach stykających się bokiem nigdy nie dają sumy { $sums }.
}
barred-sums-primer = Cyfry w żadnych dwóch polach stykających się bokiem nie dają sumy podanej w regule. Gdy zakazana jest suma 10, obok 4 nie stoi 6, a obok 1 nie stoi 9: przy każdej takiej sumie cyfra wyklucza u sąsiadów jedną cyfrę, a połowa sumy parzystej jest wolna. Jeśli wszystkie miejsca cyfry w wierszu lub bloku leżą obok jednego pola, nie może w nim stać cyfra dopełniająca ją do zakazanej sumy.
# Where no grid of the book has boxes.
barred-sums-primer--lines = Cyfry w żadnych dwóch polach stykających się bokiem nie dają sumy podanej w regule. Gdy zakazana jest suma 10, obok 4 nie stoi 6, a obok 1 nie stoi 9: przy każdej takiej sumie cyfra wyklucza u sąsiadów jedną cyfrę, a połowa sumy parzystej jest wolna. Jeśli wszystkie miejsca cyfry w wierszu leżą obok jednego pola, nie może w nim stać cyfra dopełniająca ją do zakazanej sumy.

## Border values

border-values-sum = suma ({ $sign })
border-values-difference = różnica ({ $sign })
border-values-product = iloczyn ({ $sign })
border-values-quotient = iloraz ({ $sign })
border-values-sentence = { $n ->
    [1] Liczba
   *[other] Każda liczba
} na granicy pól to { $results } dwóch cyfr po jej bokach.
border-values-sentence-all = { $n ->
    [1] Liczba
   *[other] Każda liczba
} na granicy pól to { $results } dwóch cyfr po jej bokach; sąsiednie cyfry bez liczby między nimi nigdy nie dają { $never }.
border-values-never-sum = sumy { $numbers }
border-values-never-difference = różnicy { $numbers }
border-values-never-product = iloczynu { $numbers }
border-values-never-quotient = ilorazu { $numbers }
border-values-spoken-sum = { $n ->
    [one] Suma { $number }
   *[other] Sumy { $number }
} { $where }
border-values-spoken-difference = { $n ->
    [one] Różnica { $number }
   *[other] Różnice { $number }
} { $where }
border-values-spoken-product = { $n ->
    [one] Iloczyn { $number }
   *[other] Iloczyny { $number }
} { $where }
border-values-spoken-quotient = { $n ->
    [one] Iloraz { $number }
   *[other] Ilorazy { $number }
} { $where }
border-values-primer = Liczba w ramce na granicy dwóch pól mówi, co powstaje z cyfr po obu jej stronach: po znaku + suma, po − różnica, po × iloczyn, po / wynik dzielenia większej przez mniejszą. Najmniej możliwości zostawiają duże iloczyny, sumy i ilorazy: w diagramie 9×9 liczba ×35 to 5 i 7, +17 to 8 i 9, /5 to 1 i 5. Gdy podano wszystkie takie liczby, wskazówką jest także granica bez liczby.

## Bounded lines

bounded-line-sentence = Cyfry wewnątrz { $n ->
    [1] linii ograniczonej
   *[other] każdej linii ograniczonej
} leżą co do wielkości ściśle między dwiema cyframi w nawiasach na jej końcach.
bounded-line-spoken = Linia ograniczona, od końca do końca: { $line }
bounded-line-primer = Cyfry na linii leżą co do wielkości między dwiema cyframi w nawiasach na jej końcach; żadna z tych dwóch się między nimi nie powtarza. Cyfra najmniejsza i największa nigdy więc nie stoją wewnątrz takiej linii, a jeśli trzy jej wewnętrzne pola są w jednym wierszu, kolumnie lub bloku, końce różnią się co najmniej o 4. Najpierw ustal, na którym końcu stoi większa cyfra.
# Where no grid of the book has boxes.
bounded-line-primer--lines = Cyfry na linii leżą co do wielkości między dwiema cyframi w nawiasach na jej końcach; żadna z tych dwóch się między nimi nie powtarza. Cyfra najmniejsza i największa nigdy więc nie stoją wewnątrz takiej linii, a jeśli trzy jej wewnętrzne pola są w jednym wierszu lub kolumnie, końce różnią się co najmniej o 4. Najpierw ustal, na którym końcu stoi większa cyfra.

## Cages

cage-sentence-totals = W { $n ->
    [1] klatce
   *[other] każdej klatce
} cyfry są różne, a ich suma jest podana w rogu.
cage-sentence-some = W { $n ->
    [1] klatce
   *[other] każdej klatce
} cyfry są różne; liczba w rogu, jeśli jest, to ich suma.
cage-sentence-none = W { $n ->
    [1] klatce
   *[other] każdej klatce
} cyfry są różne.
cage-sentence-repeats = Suma cyfr w { $n ->
    [1] klatce
   *[other] każdej klatce
} jest podana w jej rogu; cyfry mogą się tam powtarzać.
cage-spoken = { $total ->
    [none] Klatka bez sumy: { $cells }
   *[other] Klatka { $total }: { $cells }
}
cage-primer = Klatkę wyznacza linia kreskowana. Cyfry w klatce są różne, nawet gdy biegnie ona przez kilka bloków, a ich suma jest podana małą liczbą w rogu. Niektóre sumy zostawiają jeden wybór: w dwóch polach 3 to 1 i 2, w trzech polach 24 to 7, 8 i 9. W diagramie 9×9 każdy wiersz, kolumna i blok daje w sumie 45: gdy klatki pokrywają cały blok prócz jednego pola, odejmij ich sumy od 45.
# Where no grid of the book has boxes.
cage-primer--lines = Klatkę wyznacza linia kreskowana. Cyfry w klatce są różne, a ich suma jest podana małą liczbą w rogu. Niektóre sumy zostawiają jeden wybór: w dwóch polach 3 to 1 i 2, w trzech polach 24 to 7, 8 i 9. W diagramie 9×9 każdy wiersz i każda kolumna daje w sumie 45: gdy klatki pokrywają cały wiersz prócz jednego pola, odejmij ich sumy od 45.

## Clones

# $n hatched areas, all alike.
clone-sentence = { COUNT($number) ->
    [2] Oba zakreskowane obszary
   *[other] Wszystkie zakreskowane obszary
} mają te same cyfry na tych samych miejscach.
clone-sentence-letters = Zakreskowane obszary z tą samą literą mają te same cyfry na tych samych miejscach.
clone-spoken = Klony { $letter }, pole po polu: { $twins }
clone-primer = Zakreskowane obszary z tą samą literą to klony: mają ten sam kształt i te same cyfry na tych samych miejscach. Cyfra wykluczona w jednym polu jest wykluczona także w jego bliźniaku, więc każdą parę bliźniaków ograniczają dwa wiersze, dwie kolumny i dwa bloki. Zacznij od klonów, które widzą najwięcej podanych cyfr.
# Where no grid of the book has boxes.
clone-primer--lines = Zakreskowane obszary z tą samą literą to klony: mają ten sam kształt i te same cyfry na tych samych miejscach. Cyfra wykluczona w jednym polu jest wykluczona także w jego bliźniaku, więc każdą parę bliźniaków ograniczają dwa wiersze i dwie kolumny. Zacznij od klonów, które widzą najwięcej podanych cyfr.

## Consecutive bars

consecutive-bars-sentence = Kreska łączy dwie kolejne cyfry; sąsiednie cyfry bez kreski między nimi nie są kolejne.
consecutive-bars-spoken = { $n ->
    [one] Kreska
   *[other] Kreski
} { $where }
consecutive-bars-primer = Między każdymi dwoma sąsiednimi polami z kolejnymi cyframi jest kreska, więc jej brak też jest wskazówką: po drugiej stronie granicy bez kreski obok 5 nie stoi ani 4, ani 6. Śledź ciągi kresek, wzdłuż których cyfry rosną lub maleją o jeden, i pola z niewieloma kreskami obok znanej cyfry.

## Consecutive lines

consecutive-line-sentence = Cyfry na { $n ->
    [1] linii kolejnych cyfr
   *[other] każdej linii kolejnych cyfr
} tworzą, w dowolnej kolejności, ciąg bez luk i powtórzeń.
consecutive-line-spoken = Linia kolejnych cyfr: { $line }
consecutive-line-primer = Cyfry na linii z paciorków można ułożyć w ciąg, na przykład 3 4 5 6, ale wzdłuż linii stoją w dowolnej kolejności. Nigdy się nie powtarzają, nawet gdy linia biegnie przez kilka bloków. W diagramie 9×9 wśród pięciu pól zawsze jest 5, wśród sześciu także 4 i 6; cyfry zbyt odległe od znanej odpadają.
# Where no grid of the book has boxes.
consecutive-line-primer--lines = Cyfry na linii z paciorków można ułożyć w ciąg, na przykład 3 4 5 6, ale wzdłuż linii stoją w dowolnej kolejności. Nigdy się nie powtarzają. W diagramie 9×9 wśród pięciu pól zawsze jest 5, wśród sześciu także 4 i 6; cyfry zbyt odległe od znanej odpadają.

## Counting areas

counting-area-sentence-counts = W { $n ->
    [1] obszarze zliczającym
   *[other] każdym obszarze zliczającym
} każda cyfra z rogu stoi dokładnie tyle razy, ile razy jest tam napisana.
counting-area-sentence-different = Liczba w rogu { $n ->
    [1] obszaru zliczającego
   *[other] każdego obszaru zliczającego
} mówi, ile jest w nim różnych cyfr.
counting-area-sentence-both = W { $n ->
    [1] obszarze zliczającym
   *[other] każdym obszarze zliczającym
} każda cyfra z rogu stoi dokładnie tyle razy, ile razy jest tam napisana; liczba ze znakiem ≠ mówi, ile jest w obszarze różnych cyfr.
counting-area-spoken = { $different ->
    [0] Obszar zliczający, dokładnie { $digits }: { $cells }
    [one] Obszar zliczający, jedna cyfra: { $cells }
    [few] Obszar zliczający, { $different } różne cyfry: { $cells }
   *[other] Obszar zliczający, { $different } różnych cyfr: { $cells }
}
counting-area-primer = Linia z kropek odgradza obszar zliczający. Cyfry z jego rogu stoją w nim dokładnie tyle razy, ile razy są napisane: 7 7 to dwie siódemki, a pozostałe cyfry są dowolne, byle inne. Liczba ze znakiem ≠ mówi, ile jest różnych cyfr. Trzy pola w jednym rzędzie mają zawsze trzy różne cyfry, więc zapytaj, które pola obszaru mogą być równe: te, które nie leżą w tym samym wierszu, kolumnie ani bloku.
# Where no grid of the book has boxes.
counting-area-primer--lines = Linia z kropek odgradza obszar zliczający. Cyfry z jego rogu stoją w nim dokładnie tyle razy, ile razy są napisane: 7 7 to dwie siódemki, a pozostałe cyfry są dowolne, byle inne. Liczba ze znakiem ≠ mówi, ile jest różnych cyfr. Trzy pola w jednym rzędzie mają zawsze trzy różne cyfry, więc zapytaj, które pola obszaru mogą być równe: te, które nie leżą w tym samym wierszu ani kolumnie.

## Diagonal sums

diagonal-sum-sentence = { $n ->
    [1] Liczba ze strzałką
   *[other] Każda liczba ze strzałką
} poza diagramem to suma cyfr na ukośnej linii, którą wskazuje strzałka; cyfry mogą się powtarzać, o ile pozwalają na to inne reguły.
diagonal-sum-spoken = Suma ukośna { $total }: { $line }
diagonal-sum-primer = Strzałka poza diagramem wskazuje ukośną linię, a liczba przy niej to suma wszystkich cyfr na tej linii, aż do przeciwległego brzegu. W jednym bloku cyfry są różne, poza tym mogą się powtarzać, więc trzy pola w trzech blokach mogą mieć nawet tę samą cyfrę. Zacznij od krótkich linii oraz od sum bardzo małych lub bardzo dużych jak na ich długość.
# Where no grid of the book has boxes.
diagonal-sum-primer--lines = Strzałka poza diagramem wskazuje ukośną linię, a liczba przy niej to suma wszystkich cyfr na tej linii, aż do przeciwległego brzegu. Cyfry mogą się na niej powtarzać. Zacznij od krótkich linii oraz od sum bardzo małych lub bardzo dużych jak na ich długość.

## Diagonals

diagonals-sentence = Na { $n ->
    [1] zaznaczonej przekątnej
   *[other] każdej z dwóch zaznaczonych przekątnych
} każda cyfra występuje raz.
diagonals-spoken = Zaznaczona przekątna: { $line }
diagonals-primer = Zaznaczona przekątna działa jak dodatkowy wiersz lub kolumna: każda cyfra występuje na niej raz. Pole, w którym krzyżują się dwie przekątne, należy do obu, a prócz tego do wiersza, kolumny i bloku, więc zacznij od niego; potem szukaj na przekątnej cyfry, której zostało jedno miejsce.
# Where no grid of the book has boxes.
diagonals-primer--lines = Zaznaczona przekątna działa jak dodatkowy wiersz lub kolumna: każda cyfra występuje na niej raz. Pole, w którym krzyżują się dwie przekątne, należy do obu, a prócz tego do wiersza i kolumny, więc zacznij od niego; potem szukaj na przekątnej cyfry, której zostało jedno miejsce.

## Difference lines

difference-line-sentence = Wzdłuż { $n ->
    [1] linii różnic
   *[other] każdej linii różnic
} sąsiednie cyfry różnią się o co najmniej { $least }.
difference-line-spoken = Linia różnic: { $line }
difference-line-primer = Każdy krok wzdłuż zębatej linii to skok co najmniej o podaną różnicę, zwykle o 5. W diagramie 9×9 przy różnicy 5 cyfry na linii są na przemian małe i duże: 5 nigdy na niej nie stoi, 4 stoi tylko obok 9, a 6 tylko obok 1. Dlatego 4 lub 6 stoi na końcu albo między dwoma polami, które mogą być równe.

## Disjoint groups

disjoint-groups-sentence = Pola na tym samym miejscu w swoich blokach, na przykład wszystkie lewe górne, mają razem każdą cyfrę raz.
disjoint-groups-primer = Weź lewe górne pole każdego bloku: razem mają każdą cyfrę raz, i tak samo pola na każdym innym miejscu w blokach. Cyfra stoi więc w każdym bloku na innym miejscu. Gdy jest już wpisana w kilku blokach, skreśl te miejsca w pozostałych, zanim sprawdzisz wiersze i kolumny.

## Dots

dots-sentence-white = Biała kropka łączy dwie kolejne cyfry{ $all ->
    [yes] ; sąsiednie cyfry bez kropki nie są kolejne i żadna nie jest podwojeniem drugiej
   *[no] {""}
}.
dots-sentence-black = Czarna kropka łączy cyfrę z jej podwojeniem{ $all ->
    [yes] ; sąsiednie cyfry bez kropki nie są kolejne i żadna nie jest podwojeniem drugiej
   *[no] {""}
}.
dots-sentence-both = Biała kropka łączy dwie kolejne cyfry, a czarna cyfrę z jej podwojeniem (przy 1 i 2 może być jedna lub druga){ $all ->
    [yes] ; sąsiednie cyfry bez kropki nie są kolejne i żadna nie jest podwojeniem drugiej
   *[no] {""}
}.
# All dots are marked, and there are none.
dots-sentence-none = Cyfry w polach stykających się bokiem nigdy nie są kolejne i żadna nie jest podwojeniem drugiej.
dots-spoken-white = { $n ->
    [one] Biała kropka
   *[other] Białe kropki
} { $where }
dots-spoken-black = { $n ->
    [one] Czarna kropka
   *[other] Czarne kropki
} { $where }
dots-primer = Biała kropka łączy sąsiednie pola z kolejnymi cyframi, czarna – cyfrę z jej podwojeniem; przy 1 i 2 może być jedna lub druga. W diagramie 9×9 cyfry 5, 7 i 9 nigdy nie stykają się z czarną kropką, a ciąg czarnych kropek biegnie przez 1, 2, 4 i 8 albo przez 3 i 6. Gdy podano wszystkie kropki, wskazówką jest też granica bez kropki: cyfry po jej bokach nie są kolejne i żadna nie jest podwojeniem drugiej.

## Equal-part lines

equal-part-line-sentence = Na { $n ->
    [1] linii równych części
   *[other] każdej linii równych części
} cyfry każdego odcinka wewnątrz { $home ->
    [box] bloku
   *[region] obszaru
} dają tę samą sumę.
equal-part-line-part = część { $number }, { $line }
equal-part-line-spoken = Linia równych części: { $parts }
equal-part-line-primer = Granice bloków dzielą linię równych części na odcinki, a cyfry każdego odcinka dają tę samą sumę; linia, która wraca do bloku, ma w nim dwa odcinki. Odcinek z jednego pola od razu podaje sumę. Jeśli takiego nie ma, porównaj najdłuższy odcinek z najkrótszym: w diagramie 9×9 trzy pola bloku dają co najmniej 6, dwa najwyżej 17.

## Even-step lines

even-step-line-sentence = Wzdłuż { $n ->
    [1] linii równych kroków
   *[other] każdej linii równych kroków
} { $step ->
    [none] wszystkie sąsiednie cyfry różnią się o tyle samo; { $n ->
        [1] ile, trzeba ustalić
       *[other] ile, trzeba ustalić dla każdej linii osobno
    }
   *[other] sąsiednie cyfry różnią się dokładnie o { $step }
}.
even-step-line-spoken = Linia równych kroków: { $line }
even-step-line-primer = Każdy krok wzdłuż linii z ćwiekami jest tej samej wielkości, w górę lub w dół, i nigdy nie jest zerem; jeśli jej nie podano, ustal ją dla każdej linii osobno. Przy dużych krokach szybko brakuje miejsca: w diagramie 9×9 przy kroku 4 linia zaczynająca się od 1 może mieć tylko 1, 5 i 9; przy kroku 5 cyfry są na przemian małe i duże, a 5 nie ma wcale. Trzy kolejne pola w jednym wierszu, kolumnie lub bloku dwa razy rosną albo dwa razy maleją.
# Where no grid of the book has boxes.
even-step-line-primer--lines = Każdy krok wzdłuż linii z ćwiekami jest tej samej wielkości, w górę lub w dół, i nigdy nie jest zerem; jeśli jej nie podano, ustal ją dla każdej linii osobno. Przy dużych krokach szybko brakuje miejsca: w diagramie 9×9 przy kroku 4 linia zaczynająca się od 1 może mieć tylko 1, 5 i 9; przy kroku 5 cyfry są na przemian małe i duże, a 5 nie ma wcale. Trzy kolejne pola w jednym wierszu lub kolumnie dwa razy rosną albo dwa razy maleją.

## Extra regions

# $pieces: a region may be in several pieces, which then have one letter.
extra-region-sentence = { $full ->
    [yes] { $n ->
        [1] W zacieniowanym obszarze każda cyfra występuje raz
       *[other] W każdym zacieniowanym obszarze każda cyfra występuje raz
    }
   *[no] { $n ->
        [1] W zacieniowanym obszarze żadna cyfra się nie powtarza
       *[other] W żadnym zacieniowanym obszarze cyfry się nie powtarzają
    }
}{ $pieces ->
    [yes] { $n ->
        [1] ; wszystkie jego części mają tę samą literę
       *[other] ; części jednego obszaru mają tę samą literę
    }
   *[no] {""}
}.
extra-region-spoken = { $letter ->
    [none] Zacieniowany obszar: { $cells }
   *[other] Zacieniowany obszar { $letter }: { $cells }
}
extra-region-primer = Zacieniowany obszar działa jak dodatkowy blok: żadna cyfra nie występuje w nim dwa razy. Jeśli ma tyle pól, ile cyfr jest w diagramie, są w nim wszystkie cyfry, więc pytaj jak przy wierszu: gdzie ta cyfra może jeszcze stać? W mniejszym cyfry są tylko różne. Zacznij tam, gdzie obszar zachodzi na prawie pełny blok.
# Where no grid of the book has boxes.
extra-region-primer--lines = Zacieniowany obszar działa jak dodatkowy wiersz: żadna cyfra nie występuje w nim dwa razy. Jeśli ma tyle pól, ile cyfr jest w diagramie, są w nim wszystkie cyfry, więc pytaj jak przy wierszu: gdzie ta cyfra może jeszcze stać? W mniejszym cyfry są tylko różne. Zacznij tam, gdzie obszar zachodzi na prawie pełny wiersz.

## First-seen digits

# $seen: how many small squares beside each digit; 0 where that differs.
first-seen-sentence = { $n ->
    [1] Cyfra
   *[other] Każda cyfra
} { $seen ->
    [0] obok kwadracików poza diagramem stoi w jednym z tylu pierwszych pól
    [1] obok kwadracika poza diagramem stoi w pierwszym polu
   *[other] obok { CASE($number, "genitive") } kwadracików poza diagramem stoi w jednym z { CASE($number, "genitive") } pierwszych pól
} { $line ->
    [row] swojego wiersza
    [column] swojej kolumny
   *[both] swojego wiersza lub swojej kolumny
} z tej strony{ $seen ->
    [0] , ile jest kwadracików
   *[other] {""}
}.
first-seen-spoken = { $n ->
    [one] Cyfra z brzegu
   *[other] Cyfry z brzegu
} { $side }: { $clues }
first-seen-side = { $n ->
    [1] { $side }, obok jednego kwadracika
   *[other] { $side }, obok { CASE($number, "genitive") } kwadracików
}
first-seen-primer = Cyfra przy wierszu lub kolumnie stoi w jednym z pierwszych pól z tej strony: jest ich tyle, ile kwadracików obok cyfry. Gdy podano razem kilka cyfr, stoją tam wszystkie, w dowolnej kolejności. W diagramie 9×9 trzy kwadraciki umieszczają cyfrę w trzech polach najbliższego bloku, więc skreśl ją w reszcie wiersza i bloku.
# Where no grid of the book has boxes.
first-seen-primer--lines = Cyfra przy wierszu lub kolumnie stoi w jednym z pierwszych pól z tej strony: jest ich tyle, ile kwadracików obok cyfry. Gdy podano razem kilka cyfr, stoją tam wszystkie, w dowolnej kolejności.

## Fortress cells

fortress-sentence = Cyfra w każdym zacieniowanym polu, wewnątrz blanków, jest większa od cyfr w niezacieniowanych polach, które stykają się z nim bokiem.
fortress-spoken = Twierdza: { $cells }
fortress-primer = Zacieniowane pola otoczone blankami to twierdza: każda jej cyfra jest większa od cyfr na zewnątrz, z którymi styka się bokiem. Dwóch zacieniowanych pól się nie porównuje. Pole z blankami po dwóch stronach jednego wiersza lub kolumny ma co najmniej 3, a małe cyfry mogą stać w twierdzy tylko tam, gdzie mało boków wychodzi na zewnątrz. W polach między dwiema twierdzami stoją małe cyfry.

## Frame products

frame-product-sentence = { $n ->
    [1] Liczba
   *[other] Każda liczba
} po kropce poza diagramem to iloczyn cyfr w { $line ->
    [row] { CASE($number, "genitive") } pierwszych polach swojego wiersza
    [column] { CASE($number, "genitive") } pierwszych polach swojej kolumny
    [unlike] { CASE($number, "genitive") } pierwszych polach swojego wiersza lub { CASE($other, "genitive") } pierwszych polach swojej kolumny
   *[both] { CASE($number, "genitive") } pierwszych polach swojego wiersza lub swojej kolumny
} z tej strony.
frame-product-spoken = { $n ->
    [one] Iloczyn z brzegu
   *[other] Iloczyny z brzegu
} { $side }: { $clues }
frame-product-primer = Liczba przy wierszu lub kolumnie to iloczyn najbliższych cyfr, w diagramie 9×9 zwykle trzech w najbliższym bloku. Rozłóż ją na czynniki: jeśli kończy się na 5 lub 0, jest w niej 5, jeśli dzieli się przez 7, jest w niej 7, a jeśli nie dzieli się przez żadną z nich, nie ma tam żadnej z nich. Iloczyn nieparzysty ma tylko cyfry nieparzyste.
# Where no grid of the book has boxes.
frame-product-primer--lines = Liczba przy wierszu lub kolumnie to iloczyn najbliższych cyfr, zwykle trzech. Rozłóż ją na czynniki: jeśli kończy się na 5 lub 0, jest w niej 5, jeśli dzieli się przez 7, jest w niej 7, a jeśli nie dzieli się przez żadną z nich, nie ma tam żadnej z nich. Iloczyn nieparzysty ma tylko cyfry nieparzyste.

## Frame sums

frame-sum-sentence = { $n ->
    [1] Liczba
   *[other] Każda liczba
} po znaku + poza diagramem to suma cyfr w { $line ->
    [row] { CASE($number, "genitive") } pierwszych polach swojego wiersza
    [column] { CASE($number, "genitive") } pierwszych polach swojej kolumny
    [unlike] { CASE($number, "genitive") } pierwszych polach swojego wiersza lub { CASE($other, "genitive") } pierwszych polach swojej kolumny
   *[both] { CASE($number, "genitive") } pierwszych polach swojego wiersza lub swojej kolumny
} z tej strony.
frame-sum-spoken = { $n ->
    [one] Suma z brzegu
   *[other] Sumy z brzegu
} { $side }: { $clues }
frame-sum-primer = Liczba przy wierszu lub kolumnie to suma najbliższych cyfr, w diagramie 9×9 zwykle trzech w najbliższym bloku. Trzy cyfry o sumie 6 to 1, 2 i 3, o sumie 24 – 7, 8 i 9. Blok daje w sumie 45, więc dwie liczby patrzące w jeden blok z tej samej strony wyznaczają trzecią, a liczby na obu końcach wiersza – sumę tego, co leży między nimi.
# Where no grid of the book has boxes.
frame-sum-primer--lines = Liczba przy wierszu lub kolumnie to suma najbliższych cyfr, zwykle trzech. Trzy cyfry o sumie 6 to 1, 2 i 3, o sumie 24 – 7, 8 i 9.

## Hinge lines

# $middles: which lines have a cell in the middle, with a diamond.
hinge-line-sentence = Na { $n ->
    [1] linii zawiasowej
   *[other] każdej linii zawiasowej
} każda para pól jednakowo odległych od środka linii daje tę samą sumę{ $middles ->
    [all] , równą cyfrze w środkowym polu
    [some] , równą cyfrze w środkowym polu, jeśli takie jest
   *[none] {""}
}.
hinge-line-spoken = { COUNT($middle) ->
    [one] Linia zawiasowa, środek: { $middle }; pola: { $line }
   *[other] Linia zawiasowa, środek między: { $middle }; pola: { $line }
}
hinge-line-primer = Złóż w myślach linię zawiasową w jej środku: każde dwa pola, które się na siebie nałożą, dają tę samą sumę. Jeśli linia ma środkowe pole, zaznacza je romb, a cyfra w nim jest tą sumą, więc jest duża, a cyfry na linii małe. W innym wypadku sumę trzeba znaleźć: wystarczy jedna znana para.

## Inequalities

inequality-sentence = { $n ->
    [1] Znak
   *[other] Każdy znak
} między dwoma polami otwiera się w stronę większej cyfry.
inequality-row = Wiersz { $number }: { $signs }
    .short = W{ $number }: { $signs }
inequality-row-sign = kolumna { $more } większa niż kolumna { $less }
    .short = k{ $more } większa niż k{ $less }
inequality-column = Kolumna { $number }: { $signs }
    .short = K{ $number }: { $signs }
inequality-column-sign = wiersz { $more } większy niż wiersz { $less }
    .short = w{ $more } większy niż w{ $less }
inequality-primer = Znak między dwoma polami otwiera się w stronę większej cyfry, a ostrzem wskazuje mniejszą. Znaki jeden za drugim tworzą schody: na dole mieszczą się tylko małe cyfry, na górze tylko duże. Zacznij od najdłuższych schodów i od pól większych lub mniejszych od wszystkiego dookoła.

## King's move

king-sentence = W polach stykających się rogiem stoją różne cyfry.
king-primer = W polach stykających się rogiem stoją różne cyfry, jakby każda była szachowym królem, który nie znosi obok siebie takiego samego. Wewnątrz bloku nic to nie zmienia; reguła działa przez granice bloków. Cyfra obok bloku wyklucza w nim do dwóch dalszych pól.
# Where no grid of the book has boxes.
king-primer--lines = W polach stykających się rogiem stoją różne cyfry, jakby każda była szachowym królem, który nie znosi obok siebie takiego samego.

## Knight's move

knight-sentence = W polach odległych o ruch skoczka szachowego (dwa pola wzdłuż wiersza lub kolumny i jedno w bok) stoją różne cyfry.
knight-primer = Dwa pola, między którymi mógłby skoczyć skoczek szachowy, czyli dwa pola wzdłuż wiersza lub kolumny i jedno w bok, mają różne cyfry. Cyfra w środku diagramu sięga w ten sposób ośmiu pól, w większości poza swoim blokiem. Szukaj bloków, w których cyfrze zostały dwa miejsca, oba o ruch skoczka od tego samego pola.
# Where no grid of the book has boxes.
knight-primer--lines = Dwa pola, między którymi mógłby skoczyć skoczek szachowy, czyli dwa pola wzdłuż wiersza lub kolumny i jedno w bok, mają różne cyfry. Cyfra w środku diagramu sięga w ten sposób ośmiu pól. Szukaj wierszy, w których cyfrze zostały dwa miejsca, oba o ruch skoczka od tego samego pola.

## Limits

limits-sentence-allowed = W { $n ->
    [1] polu
   *[other] każdym polu
} z małymi cyframi w rogu stoi jedna z nich.
limits-sentence-forbidden = W { $n ->
    [1] polu
   *[other] każdym polu
} z małymi, przekreślonymi cyframi w rogu nie stoi żadna z nich.
limits-sentence-both = W { $n ->
    [1] polu
   *[other] każdym polu
} z małymi cyframi w rogu stoi jedna z nich, a jeśli są przekreślone – żadna z nich.
limits-spoken-only = Tylko { $digits }: { $cells }
limits-spoken-not = Nie { $digits }: { $cells }
limits-primer = W polu może stać tylko jedna z małych cyfr w jego prawym dolnym rogu; jeśli są przekreślone, żadna z nich nie może tam stać. Zanim zaczniesz, wpisz kandydatów ołówkiem. Gdy w wierszu, kolumnie lub bloku tyle pól ma to samo ograniczenie, ile jest w nim cyfr, cyfry te nie stoją tam nigdzie indziej.
# Where no grid of the book has boxes.
limits-primer--lines = W polu może stać tylko jedna z małych cyfr w jego prawym dolnym rogu; jeśli są przekreślone, żadna z nich nie może tam stać. Zanim zaczniesz, wpisz kandydatów ołówkiem. Gdy w wierszu lub kolumnie tyle pól ma to samo ograniczenie, ile jest w nim cyfr, cyfry te nie stoją tam nigdzie indziej.

## Low-high lines

low-high-line-sentence = Wzdłuż { $n ->
    [1] linii małych i dużych cyfr
   *[other] każdej linii małych i dużych cyfr
} stoją na przemian cyfry małe (od { $least } do { $low }) i duże (od { $high } do { $most }){ $middle ->
    [none] .
   *[other] ; nie ma na niej { $middle }.
}
low-high-line-spoken = Linia małych i dużych cyfr: { $line }
low-high-line-primer = Wzdłuż linii z blankami cyfry małe i duże stoją na przemian; linia może zaczynać się jednymi lub drugimi. W diagramie 9×9 małe to 1–4, duże to 6–9, a 5 nigdy na takiej linii nie stoi. Jedna cyfra na linii rozstrzyga, które pola są małe. Cztery małe pola w jednym wierszu, kolumnie lub bloku zużywają wszystkie małe cyfry.
# Where no grid of the book has boxes.
low-high-line-primer--lines = Wzdłuż linii z blankami cyfry małe i duże stoją na przemian; linia może zaczynać się jednymi lub drugimi. W diagramie 9×9 małe to 1–4, duże to 6–9, a 5 nigdy na takiej linii nie stoi. Jedna cyfra na linii rozstrzyga, które pola są małe. Cztery małe pola w jednym wierszu lub kolumnie zużywają wszystkie małe cyfry.

## No doubles

no-doubles-sentence = { $touching ->
    [corners] W polach stykających się bokiem lub rogiem nigdy nie stoją cyfra i jej podwojenie.
   *[sides] W polach stykających się bokiem nigdy nie stoją cyfra i jej podwojenie.
}
no-doubles-zero = Ponieważ podwojone 0 to znów 0, dwa zera nigdy się nie stykają.
no-doubles-primer = W żadnych dwóch polach stykających się bokiem nie stoją cyfra i jej podwojenie: obok 4 nie ma ani 2, ani 8. W diagramie 9×9 cyfry 5, 7 i 9 mogą stać obok każdej innej; z dala od siebie muszą być 1, 2, 4 i 8 oraz 3 i 6. Pole, które sąsiaduje z każdym miejscem cyfry 4 w wierszu, nie może mieć ani 2, ani 8.

## Non-consecutive

non-consecutive-sentence = { $touching ->
    [corners] W polach stykających się bokiem lub rogiem nigdy nie stoją kolejne cyfry.
   *[sides] W polach stykających się bokiem nigdy nie stoją kolejne cyfry.
}
non-consecutive-primer = W żadnych dwóch polach stykających się bokiem nie stoją kolejne cyfry: obok 5 nie ma ani 4, ani 6. Każda wpisana cyfra wyklucza więc dwie cyfry u każdego sąsiada. Gdy cyfrze zostały w wierszu tylko dwa miejsca z jednym polem między nimi, w tym polu nie może stać cyfra o jeden mniejsza ani większa.

## Numbered rooms

numbered-room-sentence = { $n ->
    [1] Cyfra w drzwiach
   *[other] Każda cyfra w drzwiach
} poza diagramem trafia do n-tego pola { $line ->
    [row] swojego wiersza
    [column] swojej kolumny
   *[both] swojego wiersza lub swojej kolumny
} z tej strony, gdzie n to cyfra w pierwszym polu.
numbered-room-zero = Cyfra n nigdy nie jest zerem.
numbered-room-spoken = { $n ->
    [one] Numerowany pokój
   *[other] Numerowane pokoje
} { $side }: { $clues }
numbered-room-primer = Cyfra najbliższa drzwiom to numer pokoju: gdy z przodu stoi 4, cyfra z drzwi trafia do czwartego pola z tej strony. Tylko przy 1 w drzwiach może z przodu stać 1, a żaden numer nie prowadzi do zajętego pokoju. Zacznij tam, gdzie cyfra z drzwi ma w wierszu lub kolumnie niewiele miejsc, bo każde z nich wymaga z przodu jednej określonej cyfry.

## Open cages

open-cage-sentence = W { $n ->
    [1] otwartej klatce
   *[other] każdej otwartej klatce
} cyfry są różne{ $parities ->
    [even] { $alone ->
        [yes] , a ich suma jest parzysta
       *[no] ; przy kwadraciku ich suma jest parzysta
    }
    [odd] { $alone ->
        [yes] , a ich suma jest nieparzysta
       *[no] ; przy kółku ich suma jest nieparzysta
    }
    [both] ; przy kwadraciku ich suma jest parzysta, a przy kółku nieparzysta
   *[none] {""}
}{ $letters ->
    [yes] ; klatki z tą samą literą mają tę samą sumę
   *[no] {""}
}.
open-cage-spoken = { $value ->
    [even] Otwarta klatka z parzystą sumą: { $cells }
    [odd] Otwarta klatka z nieparzystą sumą: { $cells }
   *[other] Otwarta klatka z sumą { $value }: { $cells }
}
open-cage-primer = Cyfry w otwartej klatce są różne, ale ich sumy nie podano. Kwadracik w rogu mówi, że jest parzysta, kółko – że nieparzysta: gdy wypełnione są wszystkie pola prócz jednego, ostatnia cyfra może być już tylko parzysta albo tylko nieparzysta. Klatki z tą samą literą mają tę samą sumę: mała klatka równa dużej ma duże cyfry, a duża małe.

## Palindromes

palindrome-sentence = Cyfry wzdłuż { $n ->
    [1] palindromu
   *[other] każdego palindromu
} czytane od obu końców są takie same.
palindrome-spoken = Palindrom: { $line }
palindrome-primer = Palindrom czyta się tak samo od obu końców: pierwsze i ostatnie pole są równe, podobnie drugie i przedostatnie, a pole środkowe jest dowolne. Cyfra wykluczona w jednym polu takiej pary jest wykluczona i w drugim, więc każda para działa naraz w dwóch wierszach, dwóch kolumnach i dwóch blokach.
# Where no grid of the book has boxes.
palindrome-primer--lines = Palindrom czyta się tak samo od obu końców: pierwsze i ostatnie pole są równe, podobnie drugie i przedostatnie, a pole środkowe jest dowolne. Cyfra wykluczona w jednym polu takiej pary jest wykluczona i w drugim, więc każda para działa naraz w dwóch wierszach i dwóch kolumnach.

## Even and odd

parity-sentence-even = W { $even ->
    [1] polu z kwadratem
   *[other] każdym polu z kwadratem
} stoi cyfra parzysta.
parity-sentence-odd = W { $odd ->
    [1] polu z kołem
   *[other] każdym polu z kołem
} stoi cyfra nieparzysta.
parity-sentence-both = W { $even ->
    [1] polu z kwadratem
   *[other] każdym polu z kwadratem
} stoi cyfra parzysta, a w { $odd ->
    [1] polu z kołem
   *[other] każdym polu z kołem
} – nieparzysta.
parity-spoken-even = { $n ->
    [one] Cyfra parzysta, z kwadratem: { $cells }
   *[other] Cyfry parzyste, każda z kwadratem: { $cells }
}
parity-spoken-odd = { $n ->
    [one] Cyfra nieparzysta, z kołem: { $cells }
   *[other] Cyfry nieparzyste, każda z kołem: { $cells }
}
parity-primer = Kwadrat oznacza cyfrę parzystą, koło nieparzystą; w polach bez znaku może stać jedna lub druga. W diagramie 9×9 każdy wiersz, kolumna i blok ma cztery cyfry parzyste i pięć nieparzystych, więc licz: gdy w wierszu znane są cztery pola parzyste, wszystkie inne są nieparzyste.
# Where no grid of the book has boxes.
parity-primer--lines = Kwadrat oznacza cyfrę parzystą, koło nieparzystą; w polach bez znaku może stać jedna lub druga. W diagramie 9×9 każdy wiersz i każda kolumna ma cztery cyfry parzyste i pięć nieparzystych, więc licz: gdy w wierszu znane są cztery pola parzyste, wszystkie inne są nieparzyste.

## Parity lines

parity-line-sentence = Wzdłuż { $n ->
    [1] linii parzystości
   *[other] każdej linii parzystości
} cyfry nieparzyste i parzyste stoją na przemian.
parity-line-spoken = Linia parzystości: { $line }
parity-line-primer = Wzdłuż linii z kółkami i kwadracikami między polami cyfry nieparzyste i parzyste stoją na przemian; linia może zaczynać się jednymi lub drugimi. Jedna cyfra na linii rozstrzyga, które pola są nieparzyste. Licz tam, gdzie linia biegnie przez jeden wiersz lub blok: w diagramie 9×9 są cztery cyfry parzyste, więc linia przez cały wiersz zaczyna się i kończy cyfrą nieparzystą.
# Where no grid of the book has boxes.
parity-line-primer--lines = Wzdłuż linii z kółkami i kwadracikami między polami cyfry nieparzyste i parzyste stoją na przemian; linia może zaczynać się jednymi lub drugimi. Jedna cyfra na linii rozstrzyga, które pola są nieparzyste. Licz tam, gdzie linia biegnie przez jeden wiersz: w diagramie 9×9 są cztery cyfry parzyste, więc linia przez cały wiersz zaczyna się i kończy cyfrą nieparzystą.

## Parity runs

parity-run-sentence = { $n ->
    [1] Liczba
   *[other] Każda liczba
} po znaku = poza diagramem mówi, ile pierwszych cyfr { $line ->
    [row] jej wiersza
    [column] jej kolumny
   *[both] jej wiersza lub kolumny
} z tej strony ma tę samą parzystość, zanim po raz pierwszy się ona zmieni.
parity-run-spoken = { $n ->
    [one] Seria parzystości
   *[other] Serie parzystości
} { $side }: { $clues }
parity-run-primer = Spójrz od liczby wzdłuż wiersza lub kolumny: tyle cyfr jest parzystych albo tyle nieparzystych, a następna jest inna. W diagramie 9×9 w wierszu jest pięć cyfr nieparzystych i cztery parzyste, więc seria 5 jest nieparzysta. Gdy wiadomo, czy jedna cyfra serii jest parzysta, wiadomo to o wszystkich, a następna jest odwrotna.

## Peaks and hollows

peaks-sentence-greater = W { $greater ->
    [1] polu z daszkiem
   *[other] każdym polu z daszkiem
} stoi cyfra większa niż we wszystkich polach, które stykają się z nim bokiem.
peaks-sentence-smaller = W { $smaller ->
    [1] polu z miseczką
   *[other] każdym polu z miseczką
} stoi cyfra mniejsza niż we wszystkich polach, które stykają się z nim bokiem.
peaks-sentence-both = W { $greater ->
    [1] polu z daszkiem
   *[other] każdym polu z daszkiem
} stoi cyfra większa niż we wszystkich polach, które stykają się z nim bokiem, a w { $smaller ->
    [1] polu z miseczką
   *[other] każdym polu z miseczką
} – mniejsza.
peaks-spoken-greater = { $n ->
    [one] Wzniesienie, z daszkiem: { $cells }
   *[other] Wzniesienia, każde z daszkiem: { $cells }
}
peaks-spoken-smaller = { $n ->
    [one] Dołek, z miseczką: { $cells }
   *[other] Dołki, każdy z miseczką: { $cells }
}
peaks-primer = Mały daszek nad cyfrą oznacza, że jest ona większa od cyfr po bokach, nad nią i pod nią; miseczka pod cyfrą – że jest mniejsza. Dwaj sąsiedzi w wierszu są różni, więc z dala od brzegu cyfra pod daszkiem to co najmniej 3, a zwykle znacznie więcej.

## Pointing cells

pointing-sentence = { $n ->
    [1] Cyfra w polu ze strzałką
   *[other] Każda cyfra w polu ze strzałką
} mówi, w którym z kolei polu stoi { $digit }, licząc wzdłuż strzałki od sąsiedniego.
pointing-zero = W polu ze strzałką nigdy nie stoi 0.
pointing-spoken = { $n ->
    [one] Strzałka
   *[other] Strzałki
} { $way ->
    [left] w lewo: { $cells }
    [right] w prawo: { $cells }
    [up] w górę: { $cells }
   *[down] w dół: { $cells }
}
pointing-primer = Mała czarna strzałka w polu wskazuje wzdłuż wiersza lub kolumny, a cyfra w tym polu mówi, ile kroków dzieli je od cyfry podanej w regule, na przykład od 9: jeśli w polu stoi 3, cyfra 9 stoi trzy kroki dalej. W polu nigdy więc nie stoi sama ta cyfra ani cyfra większa od liczby pól przed strzałką, a szukanej cyfry nie ma za strzałką. Dwie strzałki, które patrzą na swoje linie, często zostawiają tylko jedną możliwość.

## Corner quadruples

# $several: does some ring hold more than one digit.
quadruple-sentence = { $several ->
    [yes] Cyfry w { $n ->
        [1] pierścieniu
       *[other] każdym pierścieniu
    } występują wśród cyfr czterech pól wokół niego
   *[no] Cyfra w { $n ->
        [1] pierścieniu
       *[other] każdym pierścieniu
    } występuje wśród cyfr czterech pól wokół niego
}{ $repeats ->
    [yes] , a powtórzona – co najmniej tyle razy, ile ją napisano
   *[no] {""}
}.
quadruple-spoken = Pierścień { $digits } na wspólnym rogu pól: { $cells }
quadruple-primer = Małe cyfry w pierścieniu stoją gdzieś w czterech polach wokół tego rogu, każda co najmniej tyle razy, ile ją napisano; jeśli jest miejsce, mogą tam stać także inne cyfry. Pierścień z czterema cyframi nie zostawia miejsca: w każdym polu stoi jedna z nich. Cyfra napisana dwa razy stoi w dwóch polach leżących naprzeciw siebie na ukos.

## Resting thermometers

resting-thermometer-sentence = Wzdłuż { $n ->
    [1] termometru z postojami
   *[other] każdego termometru z postojami
} cyfry od bańki do końca nigdy nie maleją: rosną lub pozostają takie same.
resting-thermometer-spoken = Termometr z postojami, od bańki: { $line }
resting-thermometer-primer = Termometr z postojami jest rysowany jako pusta rurka. Od bańki z podwójną obwódką aż po koniec cyfry rosną lub pozostają takie same: każda jest nie mniejsza od poprzedniej. Dwa jego pola w tym samym wierszu, kolumnie lub bloku nie mogą być równe, więc tam cyfry naprawdę rosną: policz te kroki, a dowiesz się, jak duży musi być koniec i jak mała bańka.
# Where no grid of the book has boxes.
resting-thermometer-primer--lines = Termometr z postojami jest rysowany jako pusta rurka. Od bańki z podwójną obwódką aż po koniec cyfry rosną lub pozostają takie same: każda jest nie mniejsza od poprzedniej. Dwa jego pola w tym samym wierszu lub kolumnie nie mogą być równe, więc tam cyfry naprawdę rosną: policz te kroki, a dowiesz się, jak duży musi być koniec i jak mała bańka.

## Rising or falling

rise-or-fall-sentence-none = Z żadnej strony { COUNT($number) ->
    [few] { CASE($number, "feminine") } pierwsze cyfry wiersza lub kolumny nie tworzą
   *[other] { $number } pierwszych cyfr wiersza lub kolumny nie tworzy
} ciągu rosnącego ani malejącego.
rise-or-fall-sentence-rise = Tam, gdzie { COUNT($number) ->
    [few] { $number } paski poza diagramem wydłużają się w jego stronę, { CASE($number, "feminine") } pierwsze cyfry
   *[other] { $number } pasków poza diagramem wydłuża się w jego stronę, { $number } pierwszych cyfr
} { $line ->
    [row] wiersza
    [column] kolumny
   *[both] wiersza lub kolumny
} z tej strony { COUNT($number) ->
    [few] tworzą
   *[other] tworzy
} ciąg rosnący{ $all ->
    [yes] ; od strony bez pasków nie tworzą one ciągu rosnącego ani malejącego
   *[no] {""}
}.
rise-or-fall-sentence-fall = Tam, gdzie { COUNT($number) ->
    [few] { $number } paski poza diagramem skracają się w jego stronę, { CASE($number, "feminine") } pierwsze cyfry
   *[other] { $number } pasków poza diagramem skraca się w jego stronę, { $number } pierwszych cyfr
} { $line ->
    [row] wiersza
    [column] kolumny
   *[both] wiersza lub kolumny
} z tej strony { COUNT($number) ->
    [few] tworzą
   *[other] tworzy
} ciąg malejący{ $all ->
    [yes] ; od strony bez pasków nie tworzą one ciągu rosnącego ani malejącego
   *[no] {""}
}.
rise-or-fall-sentence-both = Tam, gdzie { COUNT($number) ->
    [few] { $number } paski poza diagramem wydłużają się w jego stronę, { CASE($number, "feminine") } pierwsze cyfry
   *[other] { $number } pasków poza diagramem wydłuża się w jego stronę, { $number } pierwszych cyfr
} { $line ->
    [row] wiersza
    [column] kolumny
   *[both] wiersza lub kolumny
} z tej strony { COUNT($number) ->
    [few] tworzą
   *[other] tworzy
} ciąg rosnący, a tam, gdzie się skracają – malejący{ $all ->
    [yes] ; od strony bez pasków nie tworzą one ciągu rosnącego ani malejącego
   *[no] {""}
}.
rise-or-fall-spoken = { $n ->
    [one] Wzrost lub spadek
   *[other] Wzrosty i spadki
} { $side }: { $clues }
rise-or-fall-rises = paski rosnące
rise-or-fall-falls = paski malejące
rise-or-fall-primer = Paski wydłużające się w stronę diagramu oznaczają, że trzy najbliższe cyfry rosną, licząc od tej strony, a skracające się – że maleją. Im większa cyfra, tym dłuższy pasek. W diagramie 9×9 z trzech rosnących cyfr pierwsza to najwyżej 7, a ostatnia co najmniej 3; dwa wzrosty o wspólnym polu w rogu razem zmniejszają w nim cyfrę. Gdy podano wszystkie paski, koniec bez nich oznacza zwrot: środkowa z trzech cyfr jest największa albo najmniejsza.

## Rising runs

rising-run-sentence = { $n ->
    [1] Liczba
   *[other] Każda liczba
} po schodkach poza diagramem mówi, ile pierwszych cyfr { $line ->
    [row] jej wiersza
    [column] jej kolumny
   *[both] jej wiersza lub kolumny
} z tej strony tworzy ciąg rosnący, zanim po raz pierwszy nastąpi mniejsza.
rising-run-spoken = { $n ->
    [one] Seria rosnąca
   *[other] Serie rosnące
} { $side }: { $clues }
rising-run-primer = Spójrz od liczby wzdłuż wiersza lub kolumny: mówi ona, ile cyfr z rzędu rośnie, licząc od najbliższej. Przy 3 rosną trzy pierwsze cyfry, a czwarta jest mniejsza od trzeciej; przy 1 już druga jest mniejsza od pierwszej. Długie serie trzymają duże cyfry z dala od brzegu, a ostatnia cyfra serii jest większa od sąsiadów po obu stronach.

## Same-sum lines

same-sum-line-sentence = Wzdłuż { $n ->
    [1] linii równych sum
   *[other] każdej linii równych sum
} cyfry w każdych { CASE($number, "genitive") } kolejnych polach dają tę samą sumę.
same-sum-line-spoken = Linia równych sum: { $line }
same-sum-line-primer = Cyfry w każdych kilku kolejnych polach toru kolejowego – w trzech, jeśli reguła nie mówi inaczej – dają tę samą sumę. Przesuń się o jedno pole: jedna cyfra ubywa z sumy, druga przybywa, więc są równe. Przy trzech polach pierwsze, czwarte i siódme mają tę samą cyfrę, drugie i piąte inną; co jest wykluczone w jednym z nich, jest wykluczone we wszystkich.

## Sandwich sums

sandwich-sentence = { $n ->
    [1] Liczba między dwoma paskami
   *[other] Każda liczba między dwoma paskami
} poza diagramem to suma cyfr leżących między najmniejszą a największą cyfrą { $line ->
    [row] jej wiersza
    [column] jej kolumny
   *[both] jej wiersza lub kolumny
}.
sandwich-spoken = { $n ->
    [one] Suma kanapkowa
   *[other] Sumy kanapkowe
} { $side }: { $clues }
sandwich-primer = Liczba przy wierszu lub kolumnie to suma cyfr między najmniejszą a największą cyfrą; w diagramie 9×9 tymi kromkami są 1 i 9, w dowolnej kolejności. Suma 0 znaczy, że stoją obok siebie, suma 35 – że stoją na obu końcach. Zacznij od pytania, ile cyfr może dać tę sumę, bo tyle pól dzieli kromki.

## Skyscrapers

skyscraper-sentence = { $n ->
    [1] Liczba w domku
   *[other] Każda liczba w domku
} poza diagramem mówi, ile cyfr { $line ->
    [row] jej wiersza
    [column] jej kolumny
   *[both] jej wiersza lub kolumny
} widać z tej strony, jeśli większa cyfra zasłania każdą mniejszą stojącą za nią.
skyscraper-spoken = { $n ->
    [one] Liczba wieżowców
   *[other] Liczby wieżowców
} { $side }: { $clues }
skyscraper-primer = Wyobraź sobie każdą cyfrę jako budynek o tylu piętrach i spójrz od liczby wzdłuż wiersza lub kolumny: mówi ona, ile budynków widać, bo wyższy zasłania każdy niższy za sobą. Przy 1 widać tylko najwyższy, więc stoi on na samym przodzie; przy 9 w diagramie 9×9 widać wszystkie, więc rosną. Zacznij od największych liczb, które odsuwają wysokie cyfry, i szukaj miejsca dla najwyższej.

## Square blocks

square-block-sentence-magic = W { $n ->
    [1] kwadracie równych sum
   *[other] każdym kwadracie równych sum
} wszystkie wiersze, kolumny i obie przekątne mają tę samą sumę; cyfry mogą się powtarzać.
square-block-sentence-rows = W { $n ->
    [1] kwadracie równych sum
   *[other] każdym kwadracie równych sum
} wszystkie wiersze mają tę samą sumę; cyfry mogą się powtarzać.
square-block-sentence-columns = W { $n ->
    [1] kwadracie równych sum
   *[other] każdym kwadracie równych sum
} wszystkie kolumny mają tę samą sumę; cyfry mogą się powtarzać.
square-block-sentence = W { $n ->
    [1] kwadracie równych sum
   *[other] każdym kwadracie równych sum
} tę samą sumę mają: { $lines }; cyfry mogą się powtarzać.
square-block-lines-magic = przy gwiazdce wiersze, kolumny i przekątne
square-block-lines-rows = przy paskach poziomych wiersze
square-block-lines-columns = przy paskach pionowych kolumny
square-block-spoken-magic = Kwadrat magiczny: { $cells }
square-block-spoken-rows = Kwadrat o równych wierszach: { $cells }
square-block-spoken-columns = Kwadrat o równych kolumnach: { $cells }
square-block-primer = Podwójna linia otacza kwadrat, a znak mówi, co ma w nim tę samą sumę: paski poziome – wiersze, paski pionowe – kolumny, gwiazdka – wiersze, kolumny i obie przekątne. Cyfry mogą się powtarzać, o ile pozwalają na to wiersze, kolumny i bloki diagramu. W kwadracie z gwiazdką suma jest trzy razy większa od środkowej cyfry. Gdy kwadrat jest całym blokiem diagramu 9×9, trzy równe wiersze dają po 15.
# Where no grid of the book has boxes.
square-block-primer--lines = Podwójna linia otacza kwadrat, a znak mówi, co ma w nim tę samą sumę: paski poziome – wiersze, paski pionowe – kolumny, gwiazdka – wiersze, kolumny i obie przekątne. Cyfry mogą się powtarzać, o ile pozwalają na to wiersze i kolumny diagramu. W kwadracie z gwiazdką suma jest trzy razy większa od środkowej cyfry.

## Sum marks

sum-marks-sentence-five = Znak V łączy cyfry o sumie 5{ $all ->
    [yes] ; sąsiednie cyfry bez znaku nie dają sumy 5 ani 10
   *[no] {""}
}.
sum-marks-sentence-ten = Znak X łączy cyfry o sumie 10{ $all ->
    [yes] ; sąsiednie cyfry bez znaku nie dają sumy 5 ani 10
   *[no] {""}
}.
sum-marks-sentence-both = Znak V łączy cyfry o sumie 5, a znak X cyfry o sumie 10{ $all ->
    [yes] ; sąsiednie cyfry bez znaku nie dają sumy 5 ani 10
   *[no] {""}
}.
# All marks are given, and there are none.
sum-marks-sentence-none = Cyfry w polach stykających się bokiem nigdy nie dają sumy 5 ani 10.
sum-marks-spoken-five = { $n ->
    [one] Litera V
   *[other] Litery V
} { $where }
sum-marks-spoken-ten = { $n ->
    [one] Litera X
   *[other] Litery X
} { $where }
sum-marks-primer = Jak w liczbach rzymskich V to 5, a X to 10: tyle dają w sumie dwie cyfry po bokach litery. V łączy 1 i 4 albo 2 i 3, więc nie styka się z niczym większym od 4; X nigdy nie styka się z 5, bo obok musiałaby stać druga 5. Gdy podano wszystkie znaki, wskazówką jest też granica bez litery: cyfry po jej bokach nie dają żadnej z tych sum.

## Thermometers

thermometer-sentence = Wzdłuż { $n ->
    [1] termometru
   *[other] każdego termometru
} cyfry rosną od bańki do końca.
thermometer-spoken = Termometr, od bańki: { $line }
thermometer-primer = Cyfry rosną z każdym krokiem od okrągłej bańki do końca, choć mogą przeskakiwać wartości. Długi termometr zostawia mało swobody: w diagramie 9×9 w trzecim z sześciu pól stoi co najmniej 3 i najwyżej 6. Zacznij od najdłuższych i od tych, które przecinają wiersz lub blok, w którym są już małe lub duże cyfry.
# Where no grid of the book has boxes.
thermometer-primer--lines = Cyfry rosną z każdym krokiem od okrągłej bańki do końca, choć mogą przeskakiwać wartości. Długi termometr zostawia mało swobody: w diagramie 9×9 w trzecim z sześciu pól stoi co najmniej 3 i najwyżej 6. Zacznij od najdłuższych i od tych, które przecinają wiersz, w którym są już małe lub duże cyfry.

## Windows

windows-sentence = W każdym zacieniowanym oknie każda cyfra występuje raz.
windows-spoken = Okno: { $cells }
windows-primer = Zacieniowane okna to dodatkowe bloki, odsunięte o jedno pole od brzegu i od siebie: w każdym każda cyfra występuje raz. W wierszach od 2 do 4 każda cyfra stoi trzy razy, w tym dwa razy w leżących tam oknach, więc dziewięć pól poza oknami też ma każdą cyfrę raz. W diagramie 9×9 między oknami i wokół nich kryje się pięć takich dziewiątek pól; tam zadanie się otwiera.

## X-sums

x-sum-sentence = { $n ->
    [1] Liczba
   *[other] Każda liczba
} po znaku × poza diagramem to suma pierwszych X cyfr { $line ->
    [row] swojego wiersza
    [column] swojej kolumny
   *[both] swojego wiersza lub swojej kolumny
} z tej strony, przy czym X to pierwsza z nich.
x-sum-zero = Gdy X to 0, suma wynosi 0.
x-sum-spoken = { $n ->
    [one] Suma X
   *[other] Sumy X
} { $side }: { $clues }
x-sum-primer = Cyfra najbliższa liczbie, X, mówi, ile cyfr dodać razem z nią samą: 3, 8 i 1 na przodzie dają 12, cokolwiek stoi dalej. Mała suma wymaga małego X; 45 wymaga 9. Zacznij od pytania, przy którym X suma jest w ogóle możliwa: w diagramie 9×9 liczba 10 wymaga na przodzie 2, 3 lub 4.

## Latin squares

latin-primer = W kwadracie łacińskim liczą się tylko wiersze i kolumny: w każdym wierszu i każdej kolumnie wszystkie cyfry stoją po jednym razie i niczego więcej diagram nie wymaga. Każda cyfra stoi więc w każdym wierszu raz, a żadne dwa jej miejsca nie leżą w jednej kolumnie. Jeśli jakiejś cyfry brakuje w dwóch wierszach, a miejsca ma tam tylko w tych samych dwóch kolumnach, to nigdzie indziej w tych kolumnach nie stoi. Potem sprawdź, co dodają znaki.
zero-primer = W diagramie, którego cyfry zaczynają się od 0, każda reguła obowiązuje tak, jak jest zapisana, a 0 nic do sumy nie wnosi. Przykłady na tych stronach dotyczą cyfr od 1, więc podane w nich liczby się zmieniają: wiersz złożony z dziewięciu pól z cyframi od 0 do 8 daje w sumie 36, a nie 45; ma pięć cyfr parzystych i cztery nieparzyste; dwa pola o sumie 3 zawierają 0 i 3 albo 1 i 2.
overlap-primer = Kilka diagramów tworzy jedno zadanie: każdy ma własne reguły, a tam, gdzie dwa się nakładają, cyfra należy do obu. Zacznij tam, gdzie podanych cyfr jest najwięcej, i trzymaj się jednego diagramu, dopóki coś daje; potem przenieś do następnego to, co udało się znaleźć we wspólnych blokach. Blok wspólny dla dwóch diagramów bywa kluczem do obu: jego cyfry muszą pasować do wierszy i kolumn jednego i drugiego.
holes-primer = Czarne pole nie zawiera cyfry i nie należy do żadnego wiersza ani żadnej kolumny. W pozostałych polach każdego wiersza i każdej kolumny każda cyfra nadal występuje jeden raz; gdy zostało jej już niewiele miejsc, łatwo ją wpisać. Cyfry po obu stronach czarnego pola widzą się w swoim wierszu lub kolumnie, ale się nie stykają.
