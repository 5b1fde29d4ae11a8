### What solvers’ words mean, for readers of hints. A term is named for the technique, claim or concept that asks for it
### (`tell/concepts.py`).

term-alternating-chain = Łańcuch naprzemienny
    .meaning = Kandydaci powiązani tak, że jeśli jeden jest fałszywy, następny jest prawdziwy. Którykolwiek koniec łańcucha jest prawdziwy, cyfra, którą wykluczają oba końce, odpada.
term-seen-by-all = Pole widziane ze wszystkich miejsc cyfry
    .meaning = Gdziekolwiek cyfra stanie w grupie, wyklucza samą siebie w pewnym polu poza tą grupą: nie może więc w nim stać.
term-combination = Kombinacja
    .meaning = Zestaw cyfr, który daje żądaną sumę i może stać w danych polach.
term-contradiction = Sprzeczność
    .meaning = Pole bez cyfry, cyfra bez miejsca albo znak, którego warunku nie da się spełnić. To, co do niej doprowadziło, było błędne.
term-eliminate = Odpadać
    .meaning = Cyfra odpada z pola, gdy nie może w nim stać. Cyfry, które jeszcze nie odpadły, to kandydaci pola; wielu rozwiązujących zapisuje ich drobno w rogu.
term-fins = Figura z płetwą
    .meaning = X-wing lub większa ryba, którą psują jedno lub dwa dodatkowe miejsca, czyli płetwy. To, co wyklucza zarówno sama figura, jak i każda płetwa, i tak odpada.
term-hidden-subset = Ukryta para, trójka, czwórka
    .meaning = Dwie cyfry, które w grupie mają te same dwa miejsca, potrzebują obu pól dla siebie, cokolwiek jeszcze wydawało się tam możliwe. Tak samo trzy cyfry z trzema miejscami i cztery z czterema.
term-hidden-single = Ukryty singiel
    .meaning = Cyfra, która w grupie pasuje tylko do jednego pola, nawet jeśli mogłyby tam stać i inne. Zobacz, gdzie w pobliżu ta cyfra już stoi.
term-house = Grupa
    .meaning = Wiersz, kolumna{ $divided ->
        [none] {""}
        [regions] , obszar
       *[boxes] , blok lub obszar
    } albo każdy inny zbiór pól, w którym żadna cyfra się nie powtarza.
term-jellyfish = Meduza
    .meaning = Miecznik o czterech wierszach i czterech kolumnach.
term-last-cell = Ostatnie wolne pole
    .meaning = Gdy w grupie wolne jest już tylko jedno pole, trafia do niego cyfra, której brakuje.
term-locked = Zablokowana cyfra
    .meaning = Jeśli wszystkie miejsca cyfry w jednej grupie leżą zarazem w drugiej, cyfra jest tam zużyta: w drugiej grupie nie stoi już nigdzie indziej.
term-mark = Znak
    .meaning = To, co w diagramie lub obok niego wydrukowano dla jednej z reguł: termometr, klatka, kropka, liczba poza diagramem.
term-naked-subset = Naga para, trójka, czwórka
    .meaning = Dwa pola grupy, którym zostały te same dwie cyfry, zużywają obie, więc żadne inne pole grupy ich nie dostanie. Tak samo trzy pola z trzema cyframi i cztery z czterema.
term-naked-single = Nagi singiel
    .meaning = Pole, któremu wiersz, kolumna{ $divided ->
        [none] {""}
        [regions] , obszar
       *[boxes] , blok
    } i znaki zostawiają razem tylko jedną cyfrę. Sprawdź, jakie cyfry to pole widzi.
term-sight = Widzieć
    .meaning = Dwa pola widzą się, jeśli nie może w nich stać ta sama cyfra, bo należą do jednej grupy albo wynika to z reguły.
term-single-digit-chain = Łańcuch jednej cyfry
    .meaning = Miejsca jednej cyfry, po dwa w grupie, połączone jedno za drugim. Na jednym lub drugim końcu ta cyfra stoi, więc pole, które widzi oba końce, nie może jej zawierać.
term-swordfish = Miecznik
    .meaning = X-wing o trzech wierszach i trzech kolumnach.
term-left-over--cage = Całe klatki
    .meaning = Cyfry od 1 do 9 dają w sumie 45. Odejmij sumy klatek, które leżą w całości w grupie: reszta przypada na jej pozostałe pola.
term-w-wing = W-wing
    .meaning = Dwa pola, którym zostały te same dwie cyfry, połączone grupą, w której jedna z tych cyfr ma tylko dwa miejsca, każde widziane z innego z tych pól. W jednym z tych pól stoi więc druga cyfra, a pole, które widzi oba, nie może jej zawierać.
term-what-if = Założenie na próbę
    .meaning = Wstaw cyfrę w myśli, prześledź, co z tego wynika, i skreśl ją, jeśli kończy się to sprzecznością. Nie zapuszczaj się zbyt daleko.
term-x-wing = X-wing
    .meaning = Dwa wiersze, w których cyfra ma miejsca tylko w tych samych dwóch kolumnach. Stoi w dwóch przeciwległych rogach, więc nigdzie indziej w tych kolumnach jej nie ma. Wiersze i kolumny mogą zamienić się rolami.
term-xy-wing = XY-wing
    .meaning = Pole z dwiema możliwymi cyframi, które widzi dwa inne: w każdym z nich możliwa jest inna z tych cyfr, a w obu prócz niej ta sama trzecia. Cokolwiek stoi w pierwszym, w jednym z pozostałych stoi trzecia, więc pole, które widzi je oba, jej nie zawiera.
term-xyz-wing = XYZ-wing
    .meaning = XY-wing, którego pierwsze pole może zawierać także trzecią cyfrę. Tracą ją tylko pola, które widzą wszystkie trzy.
term-extended-chain = Łańcuch rozszerzony
    .meaning = Łańcuch naprzemienny, którego ogniwem może być też kilka pól naraz albo to, na co pozwala znak. To, co wykluczają oba końce, odpada.
term-either-way = Cyfra wykluczona w każdym wypadku
    .meaning = Weź pole, w którym zostało niewiele cyfr, albo cyfrę, której zostało niewiele miejsc, i sprawdź po kolei każdy wybór. To, co wyklucza każdy z nich, wprost lub przez znak, odpada.
