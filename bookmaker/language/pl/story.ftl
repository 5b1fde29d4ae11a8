### What a presenter says. Attributes are further wordings, taken in turn.

## What lies on the table

table-boxes = Diagram { $size }×{ $size } { $givens ->
    [0] bez podanych cyfr
    [1] z jedną podaną cyfrą
   *[other] z { $givens } podanymi cyframi
}.
table-irregular = Diagram { $size }×{ $size } o nieregularnych obszarach, { $givens ->
    [0] bez podanych cyfr
    [1] z jedną podaną cyfrą
   *[other] z { $givens } podanymi cyframi
}. Obszary są oznaczone literami od A, w kolejności, w jakiej pojawiają się w wierszach.
table-none = Kwadrat łaciński { $size }×{ $size }, { $givens ->
    [0] bez podanych cyfr
    [1] z jedną podaną cyfrą
   *[other] z { $givens } podanymi cyframi
}.
table-overlap = { $grids } { COUNT($grids) ->
    [few] nakładające się diagramy
   *[other] nakładających się diagramów
} { $size }×{ $size } { $givens ->
    [0] bez podanych cyfr
    [1] z jedną podaną cyfrą
   *[other] z { $givens } podanymi cyframi
}.
table-holes = Diagram { $size }×{ $size } z czarnymi polami, { $givens ->
    [0] bez podanych cyfr
    [1] z jedną podaną cyfrą
   *[other] z { $givens } podanymi cyframi
}.
symmetry = { $turn } przekształca zadanie w nie samo, więc większość kroków występuje parami.
symmetry-relabelled = { $turn }, przy czym { $cycles }, przekształca zadanie w nie samo, więc większość kroków występuje parami.
cycle-swapped = { $digits } zamieniają się miejscami
cycle-round = { $digits } przechodzą kolejno jedna w drugą
turn-half = obrót o 180°
turn-left-right = odbicie względem osi pionowej
turn-top-bottom = odbicie względem osi poziomej
turn-falling = odbicie względem przekątnej z lewego górnego rogu
turn-rising = odbicie względem przekątnej z prawego górnego rogu
turn-quarter = obrót o 90°
turn-quarter-right = obrót o 90° w prawo
turn-quarter-left = obrót o 90° w lewo

introduction-singles-crux = Poziom { $band }: wystarczą single, a trudny moment przychodzi przy { $filled } wypełnionych polach.
introduction-singles-crux-at-start = Poziom { $band }: wystarczą single, a trudny moment przychodzi na samym początku.
introduction-singles-bottlenecks = Poziom { $band }: wystarczą single, choć po drodze bywa wąsko.
introduction-singles-choice = Poziom { $band }: wystarczą single, a do wyboru są zawsze co najmniej { $choice }.
introduction-singles = Poziom { $band }: wystarczą single, i żadnego z nich nie trzeba długo szukać.
introduction-stuck-crux = Poziom { $band }: single kończą się { $times }, a trudny moment przychodzi przy { $filled } wypełnionych polach.
introduction-stuck-crux-at-start = Poziom { $band }: single kończą się { $times }, a trudny moment przychodzi na samym początku.
introduction-stuck = Poziom { $band }: single kończą się { $times }.
introduction-stuck-briefly = Poziom { $band }: single kończą się { $times }, ale nigdy na długo.
times = { $n ->
    [1] raz
   *[other] { $number } razy
}

## Placements

places-last-of-digit = Ostatnia cyfra { $digit } trafia do { $cell }.
    .b = { CASE($house, "where") } ostatnia cyfra { $digit } zajmuje { $cell }.
places-last-cell = Do ostatniego pola { CASE($house, "genitive") }, { $cell }, trafia { $digit }.
    .b = { CASE($house, "where") } brakuje tylko cyfry { $digit }, która trafia do { $cell }.
    .c = { CASE($house, "accusative") } zamyka { $digit } w { $cell }.
places-naked-single = W { $cell } może stać tylko { $digit }.
    .b = Do { $cell } nie pasuje nic poza { $digit }.
places-hidden-single = { CASE($house, "where") } cyfra { $digit } pasuje tylko do { $cell }.
    .b = { $house } ma jedno miejsce dla { $digit }: { $cell }.
    .c = Cyfra { $digit } { CASE($house, "where") } trafia do { $cell }.
# The same where more of the passage stands before it.
then-last-of-digit = Potem ostatnia cyfra { $digit } trafia do { $cell }.
    .b = { CASE($house, "where") } ostatnia cyfra { $digit } zajmuje { $cell }.
then-last-cell = Do ostatniego pola { CASE($house, "genitive") }, { $cell }, trafia { $digit }.
    .b = { CASE($house, "where") } brakuje już tylko cyfry { $digit }, która trafia do { $cell }.
    .c = { CASE($house, "accusative") } zamyka { $digit } w { $cell }.
    .d = Następnie do ostatniego pola { CASE($house, "genitive") }, { $cell }, trafia { $digit }.
then-naked-single = Teraz w { $cell } może stać tylko { $digit }.
    .b = Do { $cell } nie pasuje nic poza { $digit }.
then-hidden-single = { CASE($house, "where") } cyfra { $digit } pasuje tylko do { $cell }.
    .b = Teraz { $house } ma jedno miejsce dla { $digit }: { $cell }.
    .c = Cyfra { $digit } { CASE($house, "where") } trafia do { $cell }.
    .d = Następnie { CASE($house, "where") } cyfra { $digit } pasuje tylko do { $cell }.

leaves-last-cell = Dla { $cell }, ostatniego pola { CASE($house, "genitive") }, zostaje więc { $digit }.
leaves-naked-single = W { $cell } zostaje więc tylko { $digit }.
    .b = Wtedy w { $cell } musi stać { $digit }.
leaves-hidden-single = Cyfrze { $digit } { CASE($house, "where") } zostaje więc { $cell }.
    .b = { CASE($house, "where") } zostaje dla { $digit } już tylko { $cell }.
    .c = Zatem cyfra { $digit } { CASE($house, "where") } musi stać w { $cell }.

opens-last-cell = Ostatnie wolne pole { CASE($house, "genitive") } to { $cell }; trafia tam { $digit }.
opens-naked-single = W polu { $cell } zostaje sama cyfra { $digit }.
    .b = Teraz w polu { $cell } może stać tylko { $digit }.
opens-hidden-single = Jedynym miejscem dla { $digit } { CASE($house, "where") } zostaje pole { $cell }.
    .b = Teraz { $house } ma jedno miejsce dla { $digit }: { $cell }.
    .c = Dzięki temu cyfra { $digit } { CASE($house, "where") } trafia do pola { $cell }.
    .d = Tak więc { CASE($house, "where") } cyfra { $digit } stoi w polu { $cell }.

run-starts = Na początek cyfra { $digit }: { $cells }.
run-completes = Ostatnie cyfry { $digit } trafiają do { $cells }.
    .b = Brakuje jeszcze { COUNT($count) ->
        [one] jednej cyfry { $digit }, która trafia
       *[other] { CASE($count, "genitive") } cyfr { $digit }, które trafiają
    } do { $cells }.
    .c = Komplet cyfr { $digit } zamykają { $cells }.
run-chained = Jedna cyfra { $digit } prowadzi do następnej: { $cells }.
    .b = Cyfry { $digit } wynikają jedna z drugiej: { $cells }.
run-band = Przegląd cyfr { $digit } w { $band } daje { $cells }.
    .b = W { $band } cyfry { $digit } trafiają do { $cells }.
run = Dalej cyfra { $digit }: { $cells }.
    .b = Przegląd cyfr { $digit } daje { $cells }.
    .c = Potem cyfra { $digit }: { $cells }.
    .d = Kolejne cyfry { $digit } trafiają do { $cells }.
# In the locative, behind “w”.
band-top = górnym pasie bloków
band-middle = środkowym pasie bloków
band-bottom = dolnym pasie bloków
band-left = lewym słupku bloków
band-centre = środkowym słupku bloków
band-right = prawym słupku bloków
fills = { $house } wypełnia się do końca: { $placed }.
    .b = { CASE($house, "accusative") } uzupełnia { $placed }.

with-image-last-cell = Do ostatniego pola { CASE($house, "genitive") }, { $cell }, trafia { $digit }, a przez symetrię do { $image } trafia { $other }.
with-image-naked-single = W { $cell } może stać tylko { $digit }, a przez symetrię w { $image } tylko { $other }.
with-image-hidden-single = { CASE($house, "where") } cyfra { $digit } pasuje tylko do { $cell }, a przez symetrię { $other } trafia do { $image }.
run-with-images = Cyfra { $digit } trafia do { $cells }, a przez symetrię { $other } do { $images }.
run-with-images-alike = Cyfra { $digit } trafia do { $cells }, a przez symetrię także do { $images }.

starts-here = Tu jest początek.
starts-in-house = Na początek cyfra { $digit } { CASE($house, "where") }: { COUNT($lookers) ->
    [one] cyfra { $digit } w polu { $lookers } zostawia
   *[other] cyfry { $digit } w polach { $lookers } zostawiają
} tylko pole { $cell }.
seen-last-cell = { CASE($house, "where") } brakuje tylko cyfry { $digit }, która trafia do pola { $cell }.
seen-lookers = { COUNT($lookers) ->
    [one] Cyfra { $digit } w polu { $lookers } zostawia
   *[other] Cyfry { $digit } w polach { $lookers } zostawiają
} { CASE($house, "where") } dla { $digit } tylko pole { $cell }.
seen-lookers-struck = { COUNT($lookers) ->
    [one] Cyfra { $digit } w polu
   *[other] Cyfry { $digit } w polach
} { $lookers } oraz wcześniejsze skreślenia zostawiają { CASE($house, "where") } dla { $digit } tylko pole { $cell }.
seen-lookers-marked = { COUNT($lookers) ->
    [one] Cyfra { $digit } w polu
   *[other] Cyfry { $digit } w polach
} { $lookers } oraz znaki zostawiają { CASE($house, "where") } dla { $digit } tylko pole { $cell }.
seen-lookers-struck-marked = { COUNT($lookers) ->
    [one] Cyfra { $digit } w polu
   *[other] Cyfry { $digit } w polach
} { $lookers }, znaki i wcześniejsze skreślenia zostawiają { CASE($house, "where") } dla { $digit } tylko pole { $cell }.
seen-struck = Wcześniejsze skreślenia zostawiają { CASE($house, "where") } dla { $digit } tylko pole { $cell }.
seen-marked = Znaki zostawiają { CASE($house, "where") } dla { $digit } tylko pole { $cell }.
seen-struck-marked = Znaki i wcześniejsze skreślenia zostawiają { CASE($house, "where") } dla { $digit } tylko pole { $cell }.
seen-in-cell = { $held }, więc w polu { $cell } może stać tylko { $digit }.
held-first = { $house } ma już { $digits }
held-next = { $house } ma { $digits }
held-first-others = inne widoczne pola mają już { $digits }
held-next-others = inne widoczne pola mają { $digits }
held-struck = wcześniej { COUNT($digits) ->
    [one] odpadła
   *[other] odpadły
} { $digits } ({ $steps })
held-marked = znak tego pola wyklucza { $digits }

fixes = { $marks } od razu { $many ->
    [yes] ustalają
   *[no] ustala
} { $count ->
    [one] jedno pole
    [few] { $number } pola
   *[other] { $number } pól
}: { $placed }.
taken-from-proof = Tu kończy się drabina technik; z dowodu pochodzi { $placed }.
falls-into-place = Odtąd wszystko układa się samo: { $placed }.
    .b = Reszta układa się sama: { $placed }.
remains = Zostaje { $placed }.
ending-more = { $most }, { $next }
ending-last = { $most }, a na koniec { $last }

## Where it gets narrow

few-lone-naked = Uwaga: przy { $filled } wypełnionych polach jedyny singiel jest nagi.
    .b = Przy { $filled } wypełnionych polach zostaje jeden nagi singiel i nic więcej.
    .c = Przy { $filled } wypełnionych polach jest tylko jeden singiel, i to nagi.
few-naked = Przy { $filled } wypełnionych polach { COUNT($number) ->
    [few] zostają tylko { $number } nagie single
   *[other] zostaje tylko { $number } nagich singli
}.
    .b = { COUNT($number) ->
        [few] { $number } nagie single to wszystko, co jest
       *[other] { $number } nagich singli to wszystko, co jest
    } przy { $filled } wypełnionych polach.
few = Trzeba patrzeć uważnie: przy { $filled } wypełnionych polach { $singles ->
    [one] jest tylko jeden singiel
    [few] są tylko { $number } single
   *[other] jest tylko { $number } singli
}.
    .b = Przy { $filled } wypełnionych polach { $singles ->
        [one] zostaje zaledwie jeden singiel
        [few] zostają zaledwie { $number } single
       *[other] zostaje zaledwie { $number } singli
    }.
crux-lone-naked = Teraz trudny moment: przy { $filled } wypełnionych polach jedyny singiel jest nagi.
crux-naked = Teraz trudny moment: przy { $filled } wypełnionych polach { COUNT($number) ->
    [few] zostają tylko { $number } nagie single
   *[other] zostaje tylko { $number } nagich singli
}.
crux-few = Teraz trudny moment: przy { $filled } wypełnionych polach { $singles ->
    [one] jest tylko jeden singiel
    [few] są tylko { $number } single
   *[other] jest tylko { $number } singli
}.
stuck = Przy { $filled } wypełnionych polach nie zostaje żaden singiel.
    .b = Przy { $filled } wypełnionych polach kończą się single.
    .c = Przy { $filled } wypełnionych polach nie ma już singla.
stuck-at-start = Na początku nie ma żadnego singla.
# What it takes is listed in the nominative.
stuck-long = Przy { $filled } wypełnionych polach nie zostaje żaden singiel. Dalsza droga: { $steps }.
    .b = Przy { $filled } wypełnionych polach kończą się single. Potrzebne będzie to: { $steps }.
stuck-long-at-start = Na początku nie ma żadnego singla. Droga do celu: { $steps }.
crux = Teraz trudny moment: przy { $filled } wypełnionych polach nie ma już singla. Dalsza droga: { $steps }.
crux-at-start = Teraz trudny moment: na początku nie ma żadnego singla. Droga do celu: { $steps }.
aim-hidden-single = Celem jest cyfra { $digit } { CASE($house, "where") }: trafi do { $cell }, gdy zniknie z { $rival-cells }.
aim-naked-single = Celem jest { $cell }: stanie tam { $digit }, gdy { COUNT($rival-digits) ->
    [one] odpadnie
   *[other] odpadną
} { $rival-digits }.

## Eliminations

names = Tu pomaga { $technique }.
    .b = Następny krok to { $technique }.
    .c = Tym razem potrzebne jest coś innego: { $technique }.
same-holds = Tak samo { GENDER($mark) ->
    [plural] działają
   *[other] działa
} { $mark }, więc { $gone }.
by-symmetry = Przez symetrię { $gone }.
by-symmetry-places = Przez symetrię do { $cell } trafia { $digit }.
by-symmetry-opens = Przez symetrię { $gone }, więc do { $cell } trafia { $digit }.
    .b = W odbiciu jest tak samo: { $gone }, więc do { $cell } trafia { $digit }.
follow-end = Teraz { $number } { COUNT($number) ->
    [few] założenia
   *[other] założeń
} na próbę; przy każdym { CASE($house, "where") } brakuje miejsca dla { $digit }.
follow-mark = Teraz { $number } { COUNT($number) ->
    [few] założenia
   *[other] założeń
} na próbę; o każdym { GENDER($mark) ->
    [plural] rozstrzygają
   *[other] rozstrzyga
} { $mark }.
follow-kind = Teraz { $number } { COUNT($number) ->
    [few] założenia
   *[other] założeń
} na próbę; wszystkie upadają z tego samego powodu: { $marks }.
follow-tried-digit = Teraz { $number } { COUNT($number) ->
    [few] założenia
   *[other] założeń
} na próbę, wszystkie dla cyfry { $tried-digit }.
follow-tried-cell = Teraz { $number } { COUNT($number) ->
    [few] założenia
   *[other] założeń
} na próbę, wszystkie w { $tried-cell }.
follow-tried-house = Teraz { $number } { COUNT($number) ->
    [few] założenia
   *[other] założeń
} na próbę, wszystkie { CASE($tried-house, "where") }.
follow = Teraz { $number } { COUNT($number) ->
    [few] założenia
   *[other] założeń
} na próbę.
more-alike = W ten sam sposób { $count ->
    [one] jeszcze jedno założenie pokazuje
    [few] jeszcze { $number } założenia pokazują
   *[other] jeszcze { $number } założeń pokazuje
}, że { $gone }.
