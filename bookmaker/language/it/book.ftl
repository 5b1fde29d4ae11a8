### The book’s own words: headings, the page on how to read it, what stands around puzzles, keys and hints.

## Headings

heading-contents = Sommario
heading-foreword = Premessa
heading-guide = Come si usa questo libro
heading-text-guide = Come si usa questa edizione
heading-primer = Le regole, una per una
heading-hints = Aiuti
heading-glossary = Le parole degli aiuti
heading-times = Tempi
heading-keys = Soluzioni
heading-answer-key = Soluzioni
heading-credits = Crediti
heading-index = Indice analitico
heading-imprint = Colophon
heading-notes = Note
heading-latin = Quadrati latini
heading-zero = Cifre a partire da 0
heading-by-setter = Per autore
heading-by-rule = Per regola
titled = { $title }: { $what }
chapter-titled = Capitolo { $number }: { $title }

## The five bands of difficulty, gentlest first

band-1 = Passeggiata
band-2 = Gita
band-3 = Escursione
band-4 = Scalata
band-5 = Vetta

## How to read the book

cell-names = Le caselle si indicano con riga (r) e colonna (c): r5c2 è nella riga 5, colonna 2.
houses-explained = Si chiama unità una riga, una colonna{ $areas ->
    [boxes] , un riquadro
    [regions] , una regione
    [both] , un riquadro o una regione
   *[none] {""}
} o qualsiasi altro gruppo di caselle in cui nessuna cifra si ripete.
guide-ridge = Accanto a ogni titolo una cresta di cinque picchi mostra quanto è difficile lo schema. Si riempie da sinistra, picco dopo picco, dal livello { $first } al livello { $last }. Il numero che l’accompagna è la difficoltà: la cifra prima della virgola conta i picchi, quella dopo la virgola dice se il picco seguente è vicino.
guide-order-difficulty = Gli schemi sono in ordine di difficoltà crescente.
guide-order-listed = Gli schemi sono nell’ordine scelto dal curatore.
guide-order-chapters = Gli schemi sono raccolti in capitoli, ciascuno in ordine di difficoltà crescente.
guide-rules = Le regole date con uno schema sono complete e valgono tutte insieme. Ogni tipo di segno è ridisegnato accanto alla frase che lo spiega. Gli schemi sono fatti per la matita: si può scrivere sopra tutti i segni.
# Rules that all puzzles of a chapter share are said where it opens.
guide-rules-shared = Le regole date con uno schema e all’inizio del suo capitolo sono complete e valgono tutte insieme. Ogni tipo di segno è ridisegnato accanto alla frase che lo spiega. Gli schemi sono fatti per la matita: si può scrivere sopra tutti i segni.
guide-large = Nelle griglie più grandi dopo la cifra 9 vengono le lettere: A vale 10, B vale 11 e così via. I e O mancano, perché somigliano a 1 e 0.
guide-proved = Ogni schema ha una e una sola soluzione: una ricerca completa lo ha verificato prima della stampa, e poi la soluzione è stata controllata con le regole.
guide-draft = Questa è una bozza: qualche schema può non avere soluzioni, o averne più d’una.
guide-hints = Se siete bloccati, consultate i tre aiuti di ogni schema, prima delle soluzioni: dove guardare, che cosa cercare e il passo seguente.
guide-hints-in-pad = Se siete bloccati, consultate i tre aiuti di ogni schema, dopo l’ultimo foglio: dove guardare, che cosa cercare e il passo seguente.
guide-keys = Le soluzioni sono in fondo, con le cifre date in neretto.
guide-keys-in-pad = Le soluzioni sono sul retro dei fogli, con le cifre date in neretto.
guide-profile = Il grafico sotto ogni soluzione racconta il percorso: sale quando un passo richiede più ricerca, e punte di freccia segnano i passaggi difficili.
guide-credits = Dopo le soluzioni vengono i crediti: la prima apparizione degli schemi e i permessi.
guide-credits-in-pad = In fondo vengono i crediti: la prima apparizione degli schemi e i permessi.
guide-text-marks = Le righe sono numerate dall’alto in basso, le colonne da sinistra a destra; «vuota» è una casella da riempire. Quando righe e colonne sono nominate insieme, si intendono tutte le caselle in cui si incrociano; le caselle di una linea sono nominate nel suo ordine, perciò le sue colonne o le sue righe possono andare a ritroso.
guide-text-below = Sotto ogni regola vengono i suoi segni.
guide-text-pictured = Sotto la sua figura ogni griglia è ripetuta a parole e in forma di tabella, da aprire.
guide-text-bands = Il livello di uno schema, da { $first } a { $last }, dice quanto è difficile. La sua difficoltà è un numero: la cifra prima della virgola conta i livelli, quella dopo la virgola dice se il livello seguente è vicino.

## What a grid asks

grid-asks = Riempite la griglia in modo che { $houses ->
    [lines] ogni riga e ogni colonna contengano
    [boxes] ogni riga, ogni colonna e ogni riquadro contengano
   *[regions] ogni riga, ogni colonna e ogni regione contornata contengano
} { $symbols }, una volta ciascuna.
# The same where several grids overlap.
grids-ask = Riempite tutte le griglie in modo che in ciascuna ogni riga, ogni colonna e ogni riquadro contengano { $symbols }, una volta ciascuna. Una casella comune a più griglie conta in ognuna di esse.
holes-stand = Le caselle nere restano vuote.
# “1 to 9”, kept on one line.
symbols-digits = le cifre da { $low } a { $high }
symbols-and-letter = le cifre da { $low } a { $high } e la lettera { $last }
symbols-and-two-letters = le cifre da { $low } a { $high } e le lettere { $first } e { $last }
symbols-and-letters = le cifre da { $low } a { $high } e le lettere da { $first } a { $last }
symbols-and-letters-without = le cifre da { $low } a { $high } e le lettere da { $first } a { $last } senza { $without }
symbols-letters = le lettere { $letters }
letters-for-digits = cifra lettera | cifre lettere
letters-stand = Qui al posto delle cifre ci sono lettere.
row-spells = la riga { $number } dà { $word }
    .short = la r{ $number } dà { $word }
column-spells = la colonna { $number } dà { $word }
    .short = la c{ $number } dà { $word }
cells-spell = le caselle da { $first } a { $last } danno { $word }
boxes-have = I riquadri hanno { $high } e { $wide }.
rows-counted = { $n ->
    [1] una riga
   *[other] { $number } righe
}
columns-counted = { $n ->
    [1] una colonna
   *[other] { $number } colonne
}
region-at = Regione { $number }: { $cells }
# Where one of several overlapping grids lies.
grid-at = griglia { $grid }: righe { $top }–{ $bottom }, colonne { $left }–{ $right }
    .short = griglia { $grid }: r{ $top }–{ $bottom }, c{ $left }–{ $right }
grid-boxes = Classico
grid-regions = Irregolare
grid-lines = Quadrato latino
grids-overlap = Griglie sovrapposte
grid-holes = Caselle nere
latin-with = Quadrato latino con { $rules }
rule-titled = { $title }. { $sentence }
# A rule that holds in some of several grids, $grids being their letters.
rule-in-grids = { $n ->
    [1] Griglia { $grids }
   *[other] Griglie { $grids }
}: { $sentence }

## Around a puzzle

puzzle-numbered = Schema { $number }
puzzle-named = Schema { $name }
key-to = Soluzione dello schema { $name }
hints-for = Aiuti per lo schema { $name }
back-to = Torna allo schema { $number }
difficulty-of = difficoltà { $figure }
band-said = { $band }, livello { $number } di 5, difficoltà { $figure }.
set-by = Autore: { $setter }.
puzzles-by = Schemi di { $setters }
edited-by = A cura di { $editor }
first-shown = prima apparizione: { $date }
points = { $n ->
    [1] 1 punto
   *[other] { $n } punti
}
flaw-none = Nessuna soluzione
flaw-several = Più di una soluzione
flaw-undecided = Non verificato
draft = BOZZA
time = Tempo
isbn = ISBN { $number }
isbn-printed = ISBN { $number } (a stampa)
isbn-ebook = ISBN { $number } (e-book)
index-note = I numeri sono quelli degli schemi.
key-on-page = Soluzione a pagina
hints-on-page = Aiuti a pagina
page = pagina
terms-on-page = Le parole che possono essere nuove sono spiegate a pagina
steps-counted = { $n ->
    [1] 1 passo
   *[other] { $number } passi
}
rules-face-grid = Le regole dello schema seguente sono di fronte alla sua griglia.
puzzles-counted = { $n ->
    [1] uno schema
   *[other] { $number } schemi
}

# On the opening page of a chapter, before rules.
rules-of-chapter = Per tutti gli schemi di questo capitolo:
belongs-to = Questo libro appartiene a
begun-on = Iniziato il
finished-on = Finito il

## Hints

hints-note = Ogni schema ha tre aiuti, che riguardano il primo passaggio difficile. Ciascuno svela più del precedente, e il seguente non è mai sotto gli occhi. Le caselle si indicano con riga (r) e colonna (c): r5c2 è nella riga 5, colonna 2.
hints-note-sheet = Ogni schema ha tre aiuti, che riguardano il primo passaggio difficile. Ciascuno svela più del precedente: coprite i seguenti con un foglio di carta. Le caselle si indicano con riga (r) e colonna (c): r5c2 è nella riga 5, colonna 2.
hints-note-text = Ogni schema ha tre aiuti, che riguardano il primo passaggio difficile. Ciascuno svela più del precedente. Aprite solo quello che volete.
hint-level-1 = Dove guardare
hint-level-2 = Che cosa cercare
hint-level-3 = Il passo seguente
hints-level-1 = Aiuti: dove guardare
hints-level-2 = Aiuti: che cosa cercare
hints-level-3 = Aiuti: il passo seguente
hints-overleaf-2 = I secondi aiuti sono sul retro.
hints-overleaf-3 = I terzi aiuti sono sul retro.
hint-leads-2 = secondo aiuto per lo schema { $number }
hint-leads-3 = terzo aiuto per lo schema { $number }
hint-leads-key = soluzione dello schema { $number }
hint-leads-puzzle = schema { $number }

## Handouts and contests

name = Nome
date = Data
copy-of = Copia { $number } di { $count }
check-row = Finito uno schema, copiate le cifre delle caselle con una lettera nelle caselle della sua striscia di controllo. Il foglio si corregge da queste.
marker-sheet = Foglio del correttore
marker-help = Accostate a queste le strisce di controllo di un foglio. Una striscia uguale vale i suoi punti a colpo d’occhio; se una è diversa o uno schema sembra incompleto, confrontatelo con la soluzione sul retro.
of-points = su { $points }
total-of = Totale su { $points }
minutes = minuti
place = Posto
total = Totale

## Covers

cover-count = { $n ->
    [1] Uno schema, con una sola soluzione.
   *[other] { $number } schemi, ciascuno con una sola soluzione.
}
cover-sample = N. { $number }
cover-puzzles = { $n ->
    [1] schema
   *[other] schemi
}
cover-kinds = { $n ->
    [1] tipo di regola
   *[other] tipi di regole
}

## The presenter’s crib

crib = Promemoria del presentatore
crib-steps = I numeri a margine contano i passi del percorso.
crib-look = guardare qui
crib-look-along = guardare lungo
crib-next = da riempire
crib-eliminated = eliminato
crib-supposed = supposto
crib-step = passo { $first }
crib-run = passi { $first }–{ $last }
crib-follows = ciò che ne segue, in quest’ordine
cells-filled = { $number } caselle riempite
start = L’inizio
solution = La soluzione
story-set-by = { $title }, uno schema di { $setter }
story-setter = uno schema di { $setter }
story-crux = Il passaggio difficile
story-onwards = Da lì in poi
story-ending = Fino alla fine

## The chart of all rules

chart = Le regole e i loro segni
chart-subject = Tutti i tipi di regole, ciascuno con il suo segno e la sua frase
chart-lines = Lungo le linee
chart-cells = Nelle caselle e nelle aree
chart-borders = Tra le caselle e negli angoli
chart-outside = Fuori dalla griglia
chart-whole = In tutta la griglia, senza segni
