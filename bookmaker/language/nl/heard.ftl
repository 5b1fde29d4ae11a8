### What is read aloud to those who do not see a page: grids, pictures, links, and the editions in text and for braille.

row-numbered = rij { $number }
column-numbered = kolom { $number }
cell-given = gegeven { $digit }
cell-empty = leeg
# Between overlapping grids.
cell-none = geen vakje
cell-candidates = { $n ->
    [1] kandidaat { $digits }
   *[other] kandidaten { $digits }
}
blank = leeg
row-digits = Rij { $number }: { $digits }
row-holds = rij { $number } bevat { $digits }
cell-at = rij { $row } kolom { $column }
    .short = r{ $row } k{ $column }
cell-shaded = { $cell } is grijs.
check-cells = Vakjes van de controlerij: { $cells }.
profile-of = Verloop van de oplossing in { $n ->
    [1] één moment
   *[other] { $number } momenten
}
profile-narrow = Verloop van de oplossing in { $n ->
    [1] één moment
   *[other] { $number } momenten
}, smal bij { COUNT($at) ->
    [one] moment { $at }
   *[other] de momenten { $at }
}
sample-of = Voorbeeld: { $kind }
code-of-link = Code van de link { $link }
link-of-puzzle = Link van deze puzzel: { $link }
look-at = Kijk naar { $cells }
look-along = Kijk langs { $cells }
filled-next = Nu invullen: { $cell }
eliminated = Vervallen: { $digit } in { $cells }
supposed = Verondersteld: { $digits } in { $cell }
in-round = In ronde { $round }: { $digits } in { $cell }
field-at = Rij { $row }, kolom { $column }
bands-counted = Puzzels per niveau: { $counts }.
band-count = { $band } { $count }
sample-grid = voorbeelddiagram
tear-off-edge = afscheurrand
cover-art = omslagbeeld

## Web page and e-book

skip-to-book = Direct naar het boek
table-of-key = Oplossing van puzzel { $number }, de cijfers
table-of-puzzle = Puzzel { $number }, de cijfers
head-row = Rij { $number }
head-column = Kolom { $number }
cover = Omslag
cover-of = Omslag: { $title }
title-page = Titelpagina
puzzles = Puzzels
printed-pages = Gedrukte bladzijden
landmarks = Herkenningspunten
grid-in-words = Het diagram in woorden
grid-as-table = Het diagram als tabel
picture-told-in-words = Het diagram van puzzel { $number }, hieronder weergegeven in woorden en als tabel
picture-told-as-table = Het diagram van puzzel { $number }, hieronder weergegeven als tabel
subject = Cijferpuzzels
accessibility = Elk diagram is een afbeelding en een tabel met koppen voor rijen en kolommen. De markeringen van elke puzzel staan ernaast in woorden, zodat alle puzzels zonder de afbeelding op te lossen zijn. Hints gaan één voor één open, en links leiden van elke puzzel naar zijn hints en zijn oplossing en terug.

## The edition for braille displays

braille-legend = Elke tekstregel heeft ten hoogste { $cells } tekens, die elk één cel in computerbraille beslaan. Een tekstregel die doorloopt, springt in. In een diagram is elk teken een vakje, met een punt voor een leeg vakje{ $boxes ->
    [yes] ; tussen de blokken staan spaties
   *[no] {""}
}. r is een rij, k een kolom: r2 k3 is het vakje in rij 2, kolom 3, en r2 k3-5 zijn de drie vakjes van daar tot en met kolom 5.
