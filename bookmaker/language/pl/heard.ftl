### What is read aloud to those who do not see a page: grids, pictures, links, and the editions in text and for braille.

row-numbered = wiersz { $number }
column-numbered = kolumna { $number }
cell-given = podane { $digit }
cell-empty = puste
# Between overlapping grids.
cell-none = brak pola
cell-candidates = { $n ->
    [one] kandydat { $digits }
   *[other] kandydaci { $digits }
}
# A cell to fill, in a table read aloud.
blank = puste
row-digits = Wiersz { $number }: { $digits }
row-holds = wiersz { $number } zawiera { $digits }
cell-at = wiersz { $row } kolumna { $column }
    .short = w{ $row } k{ $column }
cell-shaded = Zacieniowane pole: { $cell }.
check-cells = Pola wiersza kontrolnego: { $cells }.
profile-of = Profil rozwiązywania, { $n ->
    [one] jeden moment
    [few] { $n } momenty
   *[other] { $n } momentów
}
profile-narrow = Profil rozwiązywania, { $n ->
    [one] jeden moment
    [few] { $n } momenty
   *[other] { $n } momentów
}, wąskie gardło w { COUNT($at) ->
    [one] momencie { $at }
   *[other] momentach { $at }
}
sample-of = Przykład: { $kind }
code-of-link = Kod odsyłacza { $link }
link-of-puzzle = Odsyłacz do tego zadania: { $link }
look-at = Patrz tutaj: { $cells }
look-along = Patrz wzdłuż: { $cells }
filled-next = Następny wpis: { $cell }
eliminated = Skreślone { $digit }: { $cells }
supposed = Założone { $digits }: { $cell }
in-round = W rundzie { $round }, { $digits }: { $cell }
field-at = Wiersz { $row }, kolumna { $column }
bands-counted = Zadania według trudności: { $counts }.
band-count = { $band } { $count }
sample-grid = przykładowy diagram
tear-off-edge = brzeg do oderwania
cover-art = grafika okładki

## Web page and e-book

skip-to-book = Przejdź do książki
table-of-key = Rozwiązanie zadania { $number }, cyfry
table-of-puzzle = Zadanie { $number }, cyfry
head-row = Wiersz { $number }
head-column = Kolumna { $number }
cover = Okładka
cover-of = Okładka: { $title }
title-page = Strona tytułowa
puzzles = Zadania
printed-pages = Strony wydania drukowanego
landmarks = Punkty orientacyjne
grid-in-words = Diagram słowami
grid-as-table = Diagram jako tabela
picture-told-in-words = Diagram zadania { $number }, podany poniżej słowami i jako tabela
picture-told-as-table = Diagram zadania { $number }, podany poniżej jako tabela
subject = Łamigłówki z rozmieszczaniem cyfr
accessibility = Każdy diagram jest podany jako rysunek i jako tabela z nagłówkami wierszy i kolumn. Znaki każdego zadania są obok opisane słowami, więc wszystkie zadania można rozwiązać, nie widząc rysunku. Podpowiedzi otwierają się pojedynczo, a odsyłacze prowadzą od każdego zadania do jego podpowiedzi i rozwiązania oraz z powrotem.

## The edition for braille displays

# w and k are what rows and columns are shortened to here, and in all attributes “short”, which are for braille.
braille-legend = Wiersze tekstu mają najwyżej { $cells } znaków; każdy zajmuje jedną kratkę brajla komputerowego. Ciąg dalszy wiersza jest wcięty. W diagramie każdy znak to jedno pole, kropka to pole puste{ $boxes ->
    [yes] ; odstępy oddzielają bloki
   *[no] {""}
}. w to wiersz, k to kolumna: w2 k3 to pole w wierszu 2 i kolumnie 3, a w2 k3-5 to trzy pola od niego do kolumny 5.
