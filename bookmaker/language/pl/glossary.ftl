### What solvers’ words mean, for readers of hints. `.signs`: what hints that need the word say, with bars between them; what
### these begin with is enough, and capitals do not matter.

term-alternating-chain = Łańcuch naprzemienny
    .signs = łańcuch naprzemienny
    .meaning = Pola i cyfry powiązane tak, że jeśli jedno nie zachodzi, zachodzi następne. Którykolwiek koniec łańcucha jest prawdziwy, cyfra, którą wykluczają oba końce, odpada.
term-cell-seen-by-all-places-of-a-digit = Pole widziane ze wszystkich miejsc cyfry
    .signs = widać z każdego miejsca | widziane ze wszystkich miejsc | pole widziane
    .meaning = Gdziekolwiek cyfra stanie w grupie, wyklucza samą siebie w pewnym polu poza nią: tam stać nie może.
term-combination = Kombinacja
    .signs = kombinacj
    .meaning = Zestaw cyfr, który daje żądaną sumę i może stać w tych polach.
term-contradiction = Sprzeczność
    .signs = sprzeczno
    .meaning = Pole bez cyfry, cyfra bez miejsca albo znak, którego nie da się spełnić. To, co do niej doprowadziło, było błędne.
term-eliminate = Odpadać
    .signs = odpada | odpadają
    .meaning = Cyfra odpada z pola, gdy nie może w nim stać. To, co jeszcze nie odpadło, to kandydaci pola; wielu rozwiązujących zapisuje ich drobno w rogu.
term-finned-pattern = Figura z płetwą
    .signs = płetw | x-wing z płetwą | miecznik z płetwą | meduza z płetwą
    .meaning = X-wing lub większa ryba, której przeszkadza jedno lub dwa miejsca, czyli płetwy. To, co wyklucza zarówno figura, jak i każda płetwa, i tak odpada.
term-hidden-pair-triple-quad = Ukryta para, trójka, czwórka
    .signs = te same dwa miejsca | razem trzy miejsca | razem cztery miejsca
    .meaning = Dwie cyfry, które w grupie mają te same dwa miejsca, potrzebują obu pól dla siebie, cokolwiek jeszcze wydawało się tam możliwe. Tak samo trzy cyfry z trzema miejscami i cztery z czterema.
term-hidden-single = Ukryty singiel
    .signs = tylko jedno miejsce
    .meaning = Cyfra, która w grupie pasuje tylko do jednego pola, nawet jeśli mogłyby tam stać i inne. Zobacz, gdzie w pobliżu ta cyfra już stoi.
term-house = Grupa
    .signs = wiersz | kolumn | blok | obszar
    .meaning = Wiersz, kolumna{ $divided ->
        [none] {""}
        [regions] , obszar
       *[boxes] , blok lub obszar
    } albo każdy inny zbiór pól, w którym żadna cyfra się nie powtarza.
term-step-beyond-the-ladder = Krok spoza drabiny technik
    .signs = krok spoza | spoza drabiny
    .meaning = Żadna figura, która ma tu nazwę, nie prowadzi dalej; cyfra jest znana z dowodu, że rozwiązanie jest jedno.
term-jellyfish = Meduza
    .signs = meduz
    .meaning = Miecznik o czterech wierszach i czterech kolumnach.
term-last-empty-cell = Ostatnie wolne pole
    .signs = ostatnie wolne pole
    .meaning = W grupie wypełnionej poza jednym polem staje w nim cyfra, której brakuje.
term-locked-candidates = Zablokowana cyfra
    .signs = której wszystkie miejsca leżą
    .meaning = Jeśli wszystkie miejsca cyfry w jednej grupie leżą zarazem w drugiej, cyfra jest tam zużyta: nie stoi w drugiej nigdzie indziej.
term-mark = Znak
    .signs = znak
    .meaning = To, co w diagramie lub obok niego wydrukowano dla jednej z reguł: termometr, klatka, kropka, liczba na zewnątrz.
term-naked-pair-triple-quad = Naga para, trójka, czwórka
    .signs = te same dwie cyfry | razem trzy cyfry | razem cztery cyfry
    .meaning = Dwa pola grupy, którym zostały te same dwie cyfry, zużywają obie, więc żadne inne pole grupy ich nie dostanie. Tak samo trzy pola z trzema cyframi i cztery z czterema.
term-naked-single = Nagi singiel
    .signs = tylko jedna cyfra | możliwa jest już tylko
    .meaning = Pole, któremu wiersz, kolumna{ $divided ->
        [none] {""}
        [regions] , obszar
       *[boxes] , blok
    } i znaki zostawiają razem jedną cyfrę. Policz, co to pole widzi.
term-see = Widzieć
    .signs = widzi | widać | widzą
    .meaning = Dwa pola widzą się, jeśli nie może w nich stać ta sama cyfra, bo należą do jednej grupy albo mówi tak reguła.
term-single-digit-chain = Łańcuch jednej cyfry
    .signs = łańcuch jednej cyfry
    .meaning = Miejsca jednej cyfry, po dwa w grupie, połączone jedno za drugim. Jeden z końców jest prawdziwy, więc pole, które widzi oba, nie może zawierać tej cyfry.
term-swordfish = Miecznik
    .signs = miecznik
    .meaning = X-wing o trzech wierszach i trzech kolumnach.
term-whole-cages = Całe klatki
    .signs = sumę 45 | razem 45 | wynosi 45
    .meaning = Cyfry od 1 do 9 dają razem 45. Odejmij klatki, które leżą w całości w grupie: reszta przypada na jej pozostałe pola.
term-w-wing = W-wing
    .signs = w-wing
    .meaning = Dwa pola, którym zostały te same dwie cyfry, połączone grupą, w której jedna z nich ma tylko dwa miejsca, każde widziane z jednego z pól. W jednym z nich stoi druga cyfra, więc pole, które widzi oba, nie może jej zawierać.
term-what-if = Założenie na próbę
    .signs = załóżmy | założeni | szybko prowadzi
    .meaning = Wstaw cyfrę w myśli, prześledź, co z tego wynika, i skreśl ją, jeśli kończy się to sprzecznością. Wystarczą krótkie.
term-x-wing = X-wing
    .signs = x-wing
    .meaning = Dwa wiersze, w których cyfra ma miejsca tylko w tych samych dwóch kolumnach. Stoi w przeciwległych rogach, więc nie ma jej w tych kolumnach nigdzie indziej. Wiersze i kolumny mogą zamienić się rolami.
term-xy-wing = XY-wing
    .signs = xy-wing
    .meaning = Pole z dwiema możliwymi cyframi, które widzi dwa inne; każde ma z nim jedną cyfrę wspólną, a oba mają trzecią. Cokolwiek stoi w pierwszym, w jednym z pozostałych stoi trzecia, więc pole, które widzi oba, jej nie zawiera.
term-xyz-wing = XYZ-wing
    .signs = xyz-wing
    .meaning = XY-wing, którego pierwsze pole może zawierać także trzecią cyfrę. Tracą ją tylko pola, które widzą wszystkie trzy.
term-extended-chain = Łańcuch rozszerzony
    .signs = łańcuch rozszerzony
    .meaning = Łańcuch naprzemienny, którego ogniwami mogą być też grupy pól albo to, co dopuszcza znak. To, co wykluczają oba końce, odpada.
term-either-way = Cyfra wykluczona w każdym wypadku
    .signs = żaden wybór | wykluczona w każdym
    .meaning = Weź pole o niewielu cyfrach albo cyfrę o niewielu miejscach i sprawdź każdą możliwość. To, co wyklucza każda z nich, na widoku lub przez znak, odpada.
