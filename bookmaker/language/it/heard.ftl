### What is read aloud to those who do not see a page: grids, pictures, links, and the editions in text and for braille.

row-numbered = riga { $number }
column-numbered = colonna { $number }
cell-given = cifra data { $digit }
cell-empty = vuota
# Between overlapping grids.
cell-none = nessuna casella
cell-candidates = { $n ->
    [1] candidato { $digits }
   *[other] candidati { $digits }
}
blank = vuota
row-digits = Riga { $number }: { $digits }
row-holds = la riga { $number } contiene { $digits }
cell-at = riga { $row } colonna { $column }
    .short = r{ $row } c{ $column }
cell-shaded = { $cell } è ombreggiata.
check-cells = Caselle della striscia di controllo: { $cells }.
profile-of = Profilo della soluzione, { $n ->
    [1] un momento
   *[other] { $number } momenti
}
profile-narrow = Profilo della soluzione, { $n ->
    [1] un momento
   *[other] { $number } momenti
}, stretto { COUNT($at) ->
    [one] al momento { $at }
   *[other] ai momenti { $at }
}
sample-of = Esempio: { $kind }
code-of-link = Codice del link { $link }
link-of-puzzle = Link di questo schema: { $link }
look-at = Guardare { $cells }
look-along = Guardare lungo { $cells }
filled-next = Da riempire: { $cell }
eliminated = Eliminato: { $digit } da { $cells }
supposed = Supposto: { $digits } in { $cell }
in-round = Al giro { $round }: { $digits } in { $cell }
field-at = Riga { $row }, colonna { $column }
bands-counted = Schemi per difficoltà: { $counts }.
band-count = { $band } { $count }
sample-grid = griglia d’esempio
tear-off-edge = bordo a strappo
cover-art = disegno di copertina

## Web page and e-book

skip-to-book = Vai al libro
table-of-key = Soluzione dello schema { $number }, le cifre
table-of-puzzle = Schema { $number }, le cifre
head-row = Riga { $number }
head-column = Colonna { $number }
cover = Copertina
cover-of = Copertina: { $title }
title-page = Frontespizio
puzzles = Schemi
printed-pages = Pagine a stampa
landmarks = Punti di riferimento
grid-in-words = La griglia a parole
grid-as-table = La griglia in tabella
picture-told-in-words = La griglia dello schema { $number }, ripetuta qui sotto a parole e in tabella
picture-told-as-table = La griglia dello schema { $number }, ripetuta qui sotto in tabella
subject = Schemi di cifre da completare
accessibility = Ogni griglia è una figura e una tabella con intestazioni di righe e colonne. I segni di ogni schema sono descritti a parole accanto a esso, perciò tutti gli schemi si possono risolvere senza vedere una figura. Gli aiuti si aprono uno per uno, e i link portano da ogni schema ai suoi aiuti e alla sua soluzione, e viceversa.

## The edition for braille displays

braille-legend = Le righe di testo hanno al massimo { $cells } caratteri, ciascuno dei quali occupa una cella del braille informatico. Una riga di testo che continua è rientrata. In una griglia ogni carattere è una casella, con un punto per una casella vuota{ $boxes ->
    [yes] ; tra i riquadri c’è uno spazio
   *[no] {""}
}. r è una riga, c una colonna: r2 c3 è la casella nella riga 2, colonna 3, e r2 c3-5 le tre caselle da lì fino alla colonna 5.
