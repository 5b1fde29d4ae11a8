### What a presenter says. Attributes are further wordings, taken in turn.

## What lies on the table

table-boxes = Una griglia { $size }×{ $size } { $givens ->
    [0] senza cifre date
    [1] con una cifra data
   *[other] con { $number } cifre date
}.
table-irregular = Una griglia { $size }×{ $size } a regioni irregolari, { $givens ->
    [0] senza cifre date
    [1] con una cifra data
   *[other] con { $number } cifre date
}. Le sue regioni hanno le lettere A, B, C e così via, nell’ordine in cui si incontrano riga per riga.
table-none = Un quadrato latino { $size }×{ $size } { $givens ->
    [0] senza cifre date
    [1] con una cifra data
   *[other] con { $number } cifre date
}.
table-overlap = { $grids } griglie { $size }×{ $size } sovrapposte, { $givens ->
    [0] senza cifre date
    [1] con una cifra data
   *[other] con { $number } cifre date
}.
table-holes = Una griglia { $size }×{ $size } con caselle nere, { $givens ->
    [0] senza cifre date
    [1] con una cifra data
   *[other] con { $number } cifre date
}.
symmetry = { $turn } riporta lo schema su sé stesso, perciò i passi vanno quasi tutti a coppie.
symmetry-relabelled = { $turn }, con { $cycles }, riporta lo schema su sé stesso, perciò i passi vanno quasi tutti a coppie.
cycle-swapped = lo scambio di { $digits }
cycle-round = la rotazione di { $digits }
turn-half = un mezzo giro
turn-left-right = una riflessione da sinistra a destra
turn-top-bottom = una riflessione dall’alto in basso
turn-falling = una riflessione sulla diagonale che parte in alto a sinistra
turn-rising = una riflessione sulla diagonale che parte in alto a destra
turn-quarter = un quarto di giro
turn-quarter-right = un quarto di giro a destra
turn-quarter-left = un quarto di giro a sinistra

introduction-singles-crux = Livello { $band }: singoli dall’inizio alla fine, con il passaggio difficile a { $filled } caselle riempite.
introduction-singles-crux-at-start = Livello { $band }: singoli dall’inizio alla fine, con il passaggio difficile proprio all’inizio.
introduction-singles-bottlenecks = Livello { $band }: singoli dall’inizio alla fine, con una o due strettoie.
introduction-singles-choice = Livello { $band }: singoli dall’inizio alla fine, e mai meno di { $choice } tra cui scegliere.
introduction-singles = Livello { $band }: singoli dall’inizio alla fine, tutti facili da trovare.
introduction-stuck-crux = Livello { $band }: i singoli vengono a mancare { $times }, e il passaggio difficile arriva a { $filled } caselle riempite.
introduction-stuck-crux-at-start = Livello { $band }: i singoli vengono a mancare { $times }, e il passaggio difficile è proprio all’inizio.
introduction-stuck = Livello { $band }: i singoli vengono a mancare { $times }.
introduction-stuck-briefly = Livello { $band }: i singoli vengono a mancare { $times }, ma mai a lungo.
times = { $n ->
    [1] una volta
   *[other] { $number } volte
}

## Placements

places-last-of-digit = L’ultimo { $digit } va in { $cell }.
    .b = { CASE($house, "in") } l’ultimo { $digit } va in { $cell }.
places-last-cell = L’ultima casella { CASE($house, "di") }, { $cell }, riceve { $digit }.
    .b = { CASE($house, "in") } manca solo { $digit }: va in { $cell }.
    .c = { $house } si completa con { $digit } in { $cell }.
places-naked-single = Per { $cell } resta solo { $digit }.
    .b = Solo { $digit } può stare in { $cell }.
places-hidden-single = { CASE($house, "in") } solo { $cell } può contenere { $digit }.
    .b = { $house } ha un solo posto per { $digit }, { $cell }.
    .c = { CASE($house, "in") } la cifra { $digit } va in { $cell }.
then-last-of-digit = Poi l’ultimo { $digit } va in { $cell }.
    .b = { CASE($house, "in") } l’ultimo { $digit } va in { $cell }.
then-last-cell = L’ultima casella { CASE($house, "di") }, { $cell }, riceve { $digit }.
    .b = Ora { CASE($house, "in") } manca solo { $digit }: va in { $cell }.
    .c = { $house } si completa con { $digit } in { $cell }.
    .d = Poi l’ultima casella { CASE($house, "di") }, { $cell }, riceve { $digit }.
then-naked-single = Ora per { $cell } resta solo { $digit }.
    .b = Solo { $digit } può stare in { $cell }.
then-hidden-single = { CASE($house, "in") } solo { $cell } può contenere { $digit }.
    .b = Ora { $house } ha un solo posto per { $digit }, { $cell }.
    .c = { CASE($house, "in") } la cifra { $digit } va in { $cell }.
    .d = Poi, { CASE($house, "in") }, solo { $cell } può contenere { $digit }.

leaves-last-cell = Così resta { $digit } per { $cell }, l’ultima casella { CASE($house, "di") }.
leaves-naked-single = Così per { $cell } resta solo { $digit }.
    .b = Allora { $cell } deve contenere { $digit }.
leaves-hidden-single = Così { CASE($house, "in") } resta { $cell } per { $digit }.
    .b = Così { $house } ha solo { $cell } per { $digit }.
    .c = Perciò { CASE($house, "in") } la cifra { $digit } deve stare in { $cell }.

opens-last-cell = L’ultima casella { CASE($house, "di") }, { $cell }, riceve { $digit }.
opens-naked-single = Così in { $cell } rimane solo { $digit }.
    .b = Ora { $cell } può contenere solo { $digit }.
opens-hidden-single = Così { $cell } è l’unico posto per { $digit } { CASE($house, "in") }.
    .b = Ora { $house } ha un solo posto per { $digit }, { $cell }.
    .c = Con ciò { CASE($house, "in") } la cifra { $digit } va in { $cell }.
    .d = Dunque { $house } ha { $digit } in { $cell }.

run-starts = Cominciate dalla cifra { $digit }: { $cells }.
run-completes = Gli ultimi { $count } { $digit } vanno in { $cells }.
    .b = Restano { $count } { $digit } da scrivere: { $cells }.
    .c = La cifra { $digit } si completa con { $cells }.
run-chained = Un { $digit } porta al successivo: { $cells }.
    .b = La cifra { $digit } procede a catena: { $cells }.
run-band = Cercando la cifra { $digit } { $band } si trovano { $cells }.
    .b = Per la cifra { $digit }, { $band }, ci sono { $cells }.
run = Seguono { $count } { $digit }: { $cells }.
    .b = Cercando la cifra { $digit } si trovano { $cells }.
    .c = Poi la cifra { $digit }: { $cells }.
    .d = La cifra { $digit } prosegue con { $cells }.
band-top = nella fascia in alto
band-middle = nella fascia centrale
band-bottom = nella fascia in basso
band-left = nella pila di sinistra
band-centre = nella pila centrale
band-right = nella pila di destra
fills = { $house } si riempie con { $placed }.
    .b = { $house } si conclude con { $placed }.

with-image-last-cell = L’ultima casella { CASE($house, "di") }, { $cell }, riceve { $digit } e, per simmetria, { $image } riceve { $other }.
with-image-naked-single = Per { $cell } resta solo { $digit } e, per simmetria, { $other } per { $image }.
with-image-hidden-single = { CASE($house, "in") } solo { $cell } può contenere { $digit } e, per simmetria, { $image } riceve { $other }.
run-with-images = Scrivete { $count } { $digit } in { $cells } e, per simmetria, altrettanti { $other } in { $images }.
run-with-images-alike = Scrivete { $count } { $digit } in { $cells } e, per simmetria, altrettanti in { $images }.

starts-here = Cominciate qui.
starts-in-house = Cominciate dalla cifra { $digit } { CASE($house, "di") }: con { $digit } in { $lookers } resta solo { $cell }.
seen-last-cell = { CASE($house, "in") } manca solo { $digit }: va in { $cell }.
seen-lookers = Con { $digit } in { $lookers }, { $house } ha solo { $cell } per { $digit }.
seen-lookers-struck = Con { $digit } in { $lookers } e ciò che è già eliminato, { $house } ha solo { $cell } per { $digit }.
seen-lookers-marked = Con { $digit } in { $lookers } e con i segni, { $house } ha solo { $cell } per { $digit }.
seen-lookers-struck-marked = Con { $digit } in { $lookers }, con i segni e con ciò che è già eliminato, { $house } ha solo { $cell } per { $digit }.
seen-struck = Ciò che è già eliminato lascia { CASE($house, "in") } solo { $cell } per { $digit }.
seen-marked = I segni lasciano { CASE($house, "in") } solo { $cell } per { $digit }.
seen-struck-marked = I segni e ciò che è già eliminato lasciano { CASE($house, "in") } solo { $cell } per { $digit }.
seen-in-cell = { $held }: { $cell } può contenere solo { $digit }.
held-first = { $house } contiene { $digits }
held-next = { $house } aggiunge { $digits }
held-first-others = altre caselle in vista contengono { $digits }
held-next-others = altre caselle in vista aggiungono { $digits }
held-struck = con { $steps } { COUNT($digits) ->
    [one] cade
   *[other] cadono
} { $digits }
held-marked = il suo segno esclude { $digits }

fixes = { $marks } { $many ->
    [yes] fissano
   *[no] fissa
} subito { $count ->
    [1] una casella
   *[other] { $number } caselle
}: { $placed }.
taken-from-proof = Qui la scala finisce, e la prova deve aiutare con { $placed }.
falls-into-place = Da qui tutto va al suo posto: { $placed }.
    .b = Il resto va al suo posto: { $placed }.
remains = Rimane { $placed }.
ending-more = { $most }, { $next }
ending-last = { $most }, e infine { $last }

## Where it gets narrow

few-lone-naked = Attenzione: con { $filled } caselle riempite, l’unico singolo è un singolo nudo.
    .b = A { $filled } caselle non c’è altro che un singolo nudo.
    .c = Un solo singolo è aperto a { $filled } caselle, ed è un singolo nudo.
few-naked = A { $filled } caselle restano solo singoli nudi, in numero di { $number }.
    .b = Solo { $number } singoli nudi: è tutto quello che c’è a { $filled } caselle.
few = Guardate bene: con { $filled } caselle riempite { $singles ->
    [1] c’è un solo singolo
   *[other] ci sono solo { $number } singoli
}.
    .b = A { $filled } caselle { $singles ->
    [1] c’è appena un singolo
   *[other] ci sono appena { $number } singoli
}.
crux-lone-naked = Ecco il passaggio difficile: con { $filled } caselle riempite, l’unico singolo è un singolo nudo.
crux-naked = Ecco il passaggio difficile: a { $filled } caselle restano solo singoli nudi, in numero di { $number }.
crux-few = Ecco il passaggio difficile: con { $filled } caselle riempite { $singles ->
    [1] c’è un solo singolo
   *[other] ci sono solo { $number } singoli
}.
stuck = Con { $filled } caselle riempite non resta nessun singolo.
    .b = A { $filled } caselle i singoli finiscono.
    .c = Nessun singolo resta a { $filled } caselle.
stuck-at-start = All’inizio non c’è nessun singolo.
stuck-long = Con { $filled } caselle riempite non resta nessun singolo, e bisogna usare { $steps }.
    .b = A { $filled } caselle i singoli finiscono; per proseguire bisogna usare { $steps }.
stuck-long-at-start = All’inizio non c’è nessun singolo, e bisogna usare { $steps }.
crux = Ecco il passaggio difficile: con { $filled } caselle riempite non resta nessun singolo, e bisogna usare { $steps }.
crux-at-start = Ecco il passaggio difficile: all’inizio non c’è nessun singolo, e bisogna usare { $steps }.
aim-hidden-single = L’obiettivo è la cifra { $digit } { CASE($house, "di") }: va in { $cell } una volta esclusa da { $rival-cells }.
aim-naked-single = L’obiettivo è { $cell }, che contiene { $digit } una volta { COUNT($rival-digits) ->
    [one] escluso
   *[other] esclusi
} { $rival-digits }.

## Eliminations

names = Cercate { $technique }.
    .b = Ecco { $technique }.
    .c = Qui bisogna trovare { $technique }.
same-holds = Lo stesso vale per { $mark }: { $gone }.
by-symmetry = Per simmetria { $gone }.
by-symmetry-places = Per simmetria { $cell } riceve { $digit }.
by-symmetry-opens = Per simmetria { $gone }, e { $cell } riceve { $digit }.
    .b = Lo stesso vale per l’immagine simmetrica: { $gone }, e { $cell } riceve { $digit }.
follow-end = Seguono { $number } ipotesi, ognuna delle quali lascia { $house } senza posto per { $digit }.
follow-mark = Seguono { $number } ipotesi, e tutte si scontrano con { $mark }.
follow-kind = Seguono { $number } ipotesi, e ognuna si scontra con { $marks }.
follow-tried-digit = Seguono { $number } ipotesi, tutte sulla cifra { $tried-digit }.
follow-tried-cell = Seguono { $number } ipotesi, tutte su { $tried-cell }.
follow-tried-house = Seguono { $number } ipotesi, tutte { CASE($tried-house, "in") }.
follow = Seguono { $number } ipotesi.
more-alike = Allo stesso modo, con { $count ->
    [1] un’altra ipotesi
   *[other] altre { $number } ipotesi
}, { $gone }.
