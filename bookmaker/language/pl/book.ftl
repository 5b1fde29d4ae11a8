### The book's own words: headings, the page on how to read it, what stands around puzzles, keys and hints. The reader is
### addressed in the singular, as puzzle books do (“wypełnij”); a cell is “pole”, a grid “diagram”, a box “blok”.

## Headings

heading-contents = Spis treści
heading-foreword = Słowo wstępne
heading-guide = Jak czytać tę książkę
heading-text-guide = Jak czytać to wydanie
heading-primer = Elementarz: reguły po kolei
heading-hints = Podpowiedzi
heading-glossary = Słowa z podpowiedzi
heading-times = Czasy rozwiązań
heading-latin = Kwadraty łacińskie
heading-zero = Cyfry od 0
heading-keys = Rozwiązania
heading-answer-key = Klucz odpowiedzi
heading-credits = Źródła
heading-index = Indeks
heading-imprint = Stopka redakcyjna
heading-notes = Notatki
heading-by-setter = Według autorów
heading-by-rule = Według reguł
# A title with what follows from it: “Lanterns: Answer key”.
titled = { $title }: { $what }
chapter-titled = Rozdział { $number }: { $title }

## The five bands of difficulty, gentlest first

band-1 = Spacer
band-2 = Wycieczka
band-3 = Wędrówka
band-4 = Wspinaczka
band-5 = Szczyt

## How to read the book

cell-names = Pola oznaczamy wierszem (r) i kolumną (c): r5c2 leży w wierszu 5 i kolumnie 2.
houses-explained = Grupa to wiersz, kolumna{ $areas ->
    [boxes] , blok lub obszar
    [regions] , obszar
   *[none] {""}
} albo każdy inny zbiór pól, w którym żadna cyfra się nie powtarza.
guide-ridge = Grań o pięciu szczytach przy każdym tytule pokazuje, jak trudne jest zadanie. Wypełnia się od lewej, szczyt po szczycie, od poziomu { $first } do poziomu { $last }. Liczba obok niej to trudność: cyfra przed przecinkiem podaje liczbę szczytów, a cyfra po przecinku – jak blisko jest następny.
guide-order-difficulty = Zadania są ułożone od najłatwiejszego do najtrudniejszego.
guide-order-listed = Zadania są ułożone w kolejności wybranej przez redaktora.
guide-order-chapters = Zadania są podzielone na rozdziały, a w każdym ułożone od najłatwiejszego.
guide-rules = Reguły podane przy diagramie są kompletne i obowiązują wszystkie naraz. Każdy rodzaj znaku jest narysowany jeszcze raz obok zdania, które go objaśnia. Diagramy są przeznaczone do ołówka: można pisać po każdym znaku.
guide-rules-shared = Reguły podane przy diagramie i na początku jego rozdziału są kompletne i obowiązują wszystkie naraz. Każdy rodzaj znaku jest narysowany jeszcze raz obok zdania, które go objaśnia. Diagramy są przeznaczone do ołówka: można pisać po każdym znaku.
guide-large = W największych diagramach po cyfrze 9 następują litery: A oznacza 10, B oznacza 11 i tak dalej. Nie ma liter I i O, bo są podobne do 1 i 0.
guide-proved = Każde zadanie ma dokładnie jedno rozwiązanie: przed drukiem sprawdzono wszystkie możliwości, a potem zgodność rozwiązania z regułami.
guide-draft = To wersja robocza: zadanie może tu nie mieć rozwiązania albo mieć ich kilka.
guide-hints = Gdy utkniesz, przed rozwiązaniami znajdziesz po trzy podpowiedzi do każdego zadania: gdzie patrzeć, czego szukać i jaki jest następny krok.
guide-hints-in-pad = Gdy utkniesz, za ostatnią kartką znajdziesz po trzy podpowiedzi do każdego zadania: gdzie patrzeć, czego szukać i jaki jest następny krok.
guide-keys = Rozwiązania są na końcu; podane cyfry są w nich pogrubione.
guide-keys-in-pad = Rozwiązania są na odwrocie kartek; podane cyfry są w nich pogrubione.
guide-profile = Linia pod rozwiązaniem pokazuje przebieg pracy: wznosi się tam, gdzie krok trudniej znaleźć, a groty strzałek zaznaczają miejsca, w których łatwo utknąć.
guide-credits = Za rozwiązaniami podano źródła: kiedy zadania ukazały się po raz pierwszy i kto wyraził zgodę.
guide-credits-in-pad = Na końcu podano źródła: kiedy zadania ukazały się po raz pierwszy i kto wyraził zgodę.
guide-text-marks = Wiersze są numerowane od góry do dołu, kolumny od lewej do prawej; puste oznacza pole do wypełnienia. Gdy wiersze i kolumny są wymienione razem, chodzi o wszystkie pola, w których się przecinają; pola linii są wymienione w jej kolejności, więc numery kolumn lub wierszy mogą maleć.
guide-text-below = Pod każdą regułą wymieniono jej znaki.
guide-text-pictured = Pod rysunkiem każdy diagram jest podany jeszcze raz, słowami i jako tabela, do rozwinięcia.
guide-text-bands = Każde zadanie ma poziom trudności, od najłatwiejszego ({ $first }) do najtrudniejszego ({ $last }). Trudność jest liczbą: cyfra przed przecinkiem podaje poziom, a cyfra po przecinku – jak blisko jest następny.

## What a grid asks

grid-asks = Wypełnij diagram tak, aby { $houses ->
    [lines] w każdym wierszu i każdej kolumnie
    [boxes] w każdym wierszu, każdej kolumnie i każdym bloku
   *[regions] w każdym wierszu, każdej kolumnie i każdym obrysowanym obszarze
} wystąpiły po jednym razie { $symbols }.
# The same where several grids overlap.
grids-ask = Wypełnij wszystkie diagramy tak, aby w każdym z nich w każdym wierszu, każdej kolumnie i każdym bloku wystąpiły po jednym razie { $symbols }. Pole wspólne dla kilku diagramów liczy się w każdym z nich.
holes-stand = Czarne pola pozostają puste.
# “1 to 9”, kept on one line.
symbols-digits = cyfry od { $low } do { $high }
symbols-and-letter = cyfry od { $low } do { $high } i litera { $last }
symbols-and-two-letters = cyfry od { $low } do { $high } i litery { $first } i { $last }
symbols-and-letters = cyfry od { $low } do { $high } i litery od { $first } do { $last }
symbols-and-letters-without = cyfry od { $low } do { $high } i litery od { $first } do { $last } bez { $without }
symbols-letters = litery { $letters }
letters-for-digits = cyfra litera | cyfry litery | cyfrze literze | cyfrę literę | cyfrą literą | cyfr liter | cyfrom literom | cyframi literami | cyfrach literach
letters-stand = Zamiast cyfr stoją tu litery.
row-spells = wiersz { $number } tworzy słowo { $word }
    .short = w{ $number } tworzy słowo { $word }
column-spells = kolumna { $number } tworzy słowo { $word }
    .short = k{ $number } tworzy słowo { $word }
cells-spell = pola od { $first } do { $last } tworzą słowo { $word }
boxes-have = Każdy blok ma { $high } i { $wide }.
rows-counted = { $n ->
    [one] jeden wiersz
    [few] { $number } wiersze
   *[other] { $number } wierszy
}
columns-counted = { $n ->
    [one] jedną kolumnę
    [few] { CASE($number, "feminine") } kolumny
   *[other] { $number } kolumn
}
region-at = Obszar { $number }: { $cells }
# Where one of several overlapping grids lies.
grid-at = diagram { $grid }: wiersze { $top }–{ $bottom }, kolumny { $left }–{ $right }
    .short = diagram { $grid }: w{ $top }–{ $bottom }, k{ $left }–{ $right }
grid-boxes = Klasyczny
grid-regions = Nieregularny
grid-lines = Kwadrat łaciński
grids-overlap = Nakładające się diagramy
grid-holes = Czarne pola
latin-with = Kwadrat łaciński: { $rules }
rule-titled = { $title }: { $sentence }
# A rule that holds in some of several grids, $grids being their letters.
rule-in-grids = { $n ->
    [1] Diagram { $grids }
   *[other] Diagramy { $grids }
}: { $sentence }

## Around a puzzle

puzzle-numbered = Zadanie { $number }
puzzle-named = Zadanie { $name }
key-to = Rozwiązanie zadania { $name }
hints-for = Podpowiedzi do zadania { $name }
back-to = Wróć do zadania { $number }
difficulty-of = trudność { $figure }
band-said = { $band }, poziom { $number } z 5, trudność { $figure }.
set-by = Autor: { $setter }.
puzzles-by = Autorzy zadań: { $setters }
edited-by = Redakcja: { $editor }
first-shown = pierwsza publikacja: { $date }
points = { $n ->
    [one] 1 punkt
    [few] { $n } punkty
   *[other] { $n } punktów
}
flaw-none = Brak rozwiązania
flaw-several = Więcej niż jedno rozwiązanie
flaw-undecided = Nierozstrzygnięte
draft = WERSJA ROBOCZA
time = Czas
isbn = ISBN { $number }
isbn-printed = ISBN { $number } (druk)
isbn-ebook = ISBN { $number } (e-book)
index-note = Liczby to numery zadań.
# The number of the page follows.
key-on-page = Rozwiązanie: s.
hints-on-page = Podpowiedzi: s.
page = strona
terms-on-page = Mniej znane słowa objaśniono na stronie
steps-counted = { $n ->
    [one] 1 krok
    [few] { $number } kroki
   *[other] { $number } kroków
}
rules-face-grid = Reguły następnego zadania są na stronie obok diagramu.
puzzles-counted = { $n ->
    [one] jedno zadanie
    [few] { $number } zadania
   *[other] { $number } zadań
}

# On the opening page of a chapter, before rules.
rules-of-chapter = W każdym zadaniu tego rozdziału:
belongs-to = Ta książka należy do
begun-on = Rozpoczęto dnia
finished-on = Ukończono dnia

## Hints

hints-note = Do każdego zadania są trzy podpowiedzi, dotyczące pierwszego miejsca, w którym łatwo utknąć. Każda zdradza więcej niż poprzednia, a następnej nigdy nie widać. Pola oznaczamy wierszem (r) i kolumną (c): r5c2 leży w wierszu 5 i kolumnie 2.
hints-note-sheet = Do każdego zadania są trzy podpowiedzi, dotyczące pierwszego miejsca, w którym łatwo utknąć. Każda zdradza więcej niż poprzednia: dalsze zakryj kartką papieru. Pola oznaczamy wierszem (r) i kolumną (c): r5c2 leży w wierszu 5 i kolumnie 2.
hints-note-text = Do każdego zadania są trzy podpowiedzi, dotyczące pierwszego miejsca, w którym łatwo utknąć. Każda zdradza więcej niż poprzednia. Otwórz tylko tę, której potrzebujesz.
hint-level-1 = Gdzie patrzeć
hint-level-2 = Czego szukać
hint-level-3 = Następny krok
hints-level-1 = Podpowiedzi: gdzie patrzeć
hints-level-2 = Podpowiedzi: czego szukać
hints-level-3 = Podpowiedzi: następny krok
hints-overleaf-2 = Drugie podpowiedzi są na odwrocie.
hints-overleaf-3 = Trzecie podpowiedzi są na odwrocie.
# Where a hint leads to.
hint-leads-2 = druga podpowiedź do zadania { $number }
hint-leads-3 = trzecia podpowiedź do zadania { $number }
hint-leads-key = rozwiązanie zadania { $number }
hint-leads-puzzle = zadanie { $number }

## Handouts and contests

name = Imię i nazwisko
date = Data
copy-of = Egzemplarz { $number } z { $count }
check-row = Po rozwiązaniu diagramu przepisz cyfry z pól oznaczonych literami do kratek jego wiersza kontrolnego. Twoja kartka jest oceniana na tej podstawie.
marker-sheet = Arkusz sprawdzającego
marker-help = Przyłóż wiersze kontrolne kartki do wydrukowanych tutaj. Zgodny wiersz od razu daje swoje punkty; gdy się różni albo diagram wygląda na nieskończony, porównaj go z kluczem na odwrocie.
# $points: how many there are to win.
of-points = z { $points }
total-of = Razem z { $points }
minutes = minut
place = Miejsce
total = Razem

## Covers

cover-count = { CASE($number, "feminine") } { $n ->
    [one] łamigłówka z dokładnie jednym rozwiązaniem.
    [few] łamigłówki, każda z dokładnie jednym rozwiązaniem.
   *[other] łamigłówek, każda z dokładnie jednym rozwiązaniem.
}
cover-sample = Nr { $number }
# After a large figure.
cover-puzzles = { $n ->
    [one] łamigłówka
    [few] łamigłówki
   *[other] łamigłówek
}
cover-kinds = { $n ->
    [one] rodzaj reguły
    [few] rodzaje reguł
   *[other] rodzajów reguł
}

## The presenter’s crib

crib = Ściąga prowadzącego
crib-steps = Liczby na marginesie to numery kroków.
crib-look = patrz tutaj
crib-look-along = patrz wzdłuż
crib-next = następny wpis
crib-eliminated = skreślone
crib-supposed = założone
crib-step = krok { $first }
crib-run = kroki { $first }–{ $last }
crib-follows = co z tego wynika, po kolei
cells-filled = wypełnione pola: { $number }
start = Początek
solution = Rozwiązanie
story-set-by = { $title }, autor: { $setter }
story-setter = autor: { $setter }
story-crux = Trudny moment
story-onwards = Co dalej
story-ending = Do końca

## The chart of all rules

chart = Reguły i ich znaki
chart-subject = Każdy rodzaj reguły ze swoim znakiem i zdaniem
chart-lines = Wzdłuż linii
chart-cells = W polach i na obszarach
chart-borders = Między polami i na rogach
chart-outside = Poza diagramem
chart-whole = W całym diagramie, bez znaku
