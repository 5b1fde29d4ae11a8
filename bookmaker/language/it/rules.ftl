### What each kind of rule asks, in a sentence under a puzzle, singular or plural as there are marks ($n); how it is taught in
### the primer; and how its marks are told to those who do not see them ($cells, $line: which cells; $where: on which borders;
### $side: on which side of the grid).

## Arithmetic cages

result-sum = la somma (+)
result-product = il prodotto (×)
result-difference = la differenza (−)
result-quotient = il quoziente (÷)
arithmetic-cage-sentence-signs = Il numero nell’angolo { $n ->
    [1] della gabbia aritmetica
   *[other] di ogni gabbia aritmetica
} è { $results } delle sue cifre{ $unsigned ->
    [pairs] ; senza segno è la somma, il prodotto, la differenza o il quoziente delle sue cifre
    [larger] ; senza segno è la somma o il prodotto delle sue cifre
   *[none] {""}
}{ $larger ->
    [differ] ; lì le cifre sono tutte diverse
    [repeat] ; lì le cifre possono ripetersi
   *[no] {""}
}.
arithmetic-cage-sentence-unsigned = Il numero nell’angolo { $n ->
    [1] della gabbia aritmetica
   *[other] di ogni gabbia aritmetica
} è { $unsigned ->
    [pairs] la somma, il prodotto, la differenza o il quoziente delle sue cifre
   *[larger] la somma o il prodotto delle sue cifre
}{ $larger ->
    [differ] ; lì le cifre sono tutte diverse
    [repeat] ; lì le cifre possono ripetersi
   *[no] {""}
}.
arithmetic-cage-spoken = Gabbia aritmetica con { $sort ->
    [sum] somma { $number }
    [product] prodotto { $number }
    [difference] differenza { $number }
    [quotient] quoziente { $number }
   *[none] { $number } senza segno
}: { $cells }
arithmetic-cage-primer = Il segno nell’angolo di una gabbia aritmetica dice che cosa danno le sue cifre: la somma (+), il prodotto (×), la differenza (−) o il quoziente (÷), con la cifra maggiore per prima; se il segno non c’è, tocca a voi trovarlo. Cominciate dai prodotti: 5 e 7 ne dividono pochi, e se dividono il numero la gabbia li contiene. In una griglia 9×9 una gabbia con ÷ ha 5 o 7 solo accanto a 1, e una differenza grande vuole una cifra bassa e una alta.

## Arrows

arrow-sentence = La somma delle cifre lungo { $n ->
    [1] la freccia
   *[other] ogni freccia
} è la cifra nel suo cerchio.
arrow-sentence-ovals = La somma delle cifre lungo { $n ->
    [1] la freccia
   *[other] ogni freccia
} è il numero { $all ->
    [yes] nel suo ovale
   *[no] nel suo cerchio o nel suo ovale
}, che si legge { $ways ->
    [across] da sinistra a destra
    [down] dall’alto in basso
   *[both] da sinistra a destra o dall’alto in basso
}.
arrow-zero = Il numero in un ovale non comincia mai con 0.
arrow-circle = dal cerchio in { $cells }
arrow-oval = dall’ovale in { $cells }, letto { $way ->
    [across] da sinistra a destra
   *[down] dall’alto in basso
}
arrow-spoken = Freccia che parte { $start }: { $line }
arrow-primer = La somma delle cifre lungo l’asta di una freccia, dalla casella accanto al cerchio fino alla punta, è il numero nel cerchio; le cifre possono ripetersi dove righe, colonne e riquadri lo permettono. Se da un cerchio partono più aste, ciascuna dà quella somma. Un ovale su due o tre caselle contiene un numero di due o tre cifre. Tre caselle di uno stesso riquadro sommano almeno 6: le aste lunghe vogliono perciò un numero alto nel cerchio e cifre basse.
# Where no grid of the book has boxes.
arrow-primer--lines = La somma delle cifre lungo l’asta di una freccia, dalla casella accanto al cerchio fino alla punta, è il numero nel cerchio; le cifre possono ripetersi dove righe e colonne lo permettono. Se da un cerchio partono più aste, ciascuna dà quella somma. Un ovale su due o tre caselle contiene un numero di due o tre cifre. Tre caselle di una stessa riga sommano almeno 6: le aste lunghe vogliono perciò un numero alto nel cerchio e cifre basse.

## Barred sums

barred-sums-sentence = { $touching ->
    [corners] La somma di due caselle che si toccano, per un lato o per un angolo, non è mai { $sums }.
   *[sides] La somma di due caselle con un lato in comune non è mai { $sums }.
}
barred-sums-primer = La somma di due caselle con un lato in comune non è mai uno dei numeri che la regola nomina. Se 10 è vietato, non c’è 6 accanto a 4 né 9 accanto a 1: per ogni numero vietato una cifra ne esclude una sola nelle caselle vicine, e la metà di un numero pari è libera. Quando in una riga o in un riquadro tutti i posti di una cifra sono accanto a una stessa casella, questa non può contenere il suo complemento.
# Where no grid of the book has boxes.
barred-sums-primer--lines = La somma di due caselle con un lato in comune non è mai uno dei numeri che la regola nomina. Se 10 è vietato, non c’è 6 accanto a 4 né 9 accanto a 1: per ogni numero vietato una cifra ne esclude una sola nelle caselle vicine, e la metà di un numero pari è libera. Quando in una riga tutti i posti di una cifra sono accanto a una stessa casella, questa non può contenere il suo complemento.

## Border values

border-values-sum = la somma ({ $sign })
border-values-difference = la differenza ({ $sign })
border-values-product = il prodotto ({ $sign })
border-values-quotient = il quoziente ({ $sign })
border-values-sentence = { $n ->
    [1] Il numero tra due caselle
   *[other] Ogni numero tra due caselle
} è { $results } delle loro cifre.
border-values-sentence-all = { $n ->
    [1] Il numero tra due caselle
   *[other] Ogni numero tra due caselle
} è { $results } delle loro cifre; due caselle vicine senza numero non hanno mai { $never }.
border-values-never-sum = somma { $numbers }
border-values-never-difference = differenza { $numbers }
border-values-never-product = prodotto { $numbers }
border-values-never-quotient = quoziente { $numbers }
border-values-spoken-sum = { $n ->
    [1] Somma { $number }
   *[other] Somme { $number }
} { $where }
border-values-spoken-difference = { $n ->
    [1] Differenza { $number }
   *[other] Differenze { $number }
} { $where }
border-values-spoken-product = { $n ->
    [1] Prodotto { $number }
   *[other] Prodotti { $number }
} { $where }
border-values-spoken-quotient = { $n ->
    [1] Quoziente { $number }
   *[other] Quozienti { $number }
} { $where }
border-values-primer = Un numero in una piccola cornice tra due caselle dice che cosa danno le loro cifre: dopo + la somma, dopo − la differenza, dopo × il prodotto, dopo / la maggiore divisa per la minore. Prodotti, somme e quozienti grandi lasciano meno scelta: in una griglia 9×9, ×35 è 5 e 7, +17 è 8 e 9, /5 è 1 e 5. Quando tutti questi numeri sono dati, anche un confine che non ne ha è un indizio.

## Bounded lines

bounded-line-sentence = Lungo { $n ->
    [1] la linea delimitata
   *[other] ogni linea delimitata
} le cifre sono strettamente comprese tra le due cifre fra parentesi quadre ai suoi capi.
bounded-line-spoken = Linea delimitata, da capo a capo: { $line }
bounded-line-primer = Le cifre sulla linea sono comprese tra le due cifre fra parentesi quadre ai suoi capi; nessuna di queste due compare in mezzo. La cifra più bassa e la più alta non stanno dunque mai all’interno di una tale linea, e se tre delle sue caselle interne condividono una riga, una colonna o un riquadro, tra i capi c’è una differenza di almeno quattro. Cercate prima quale dei due capi è il più alto.
# Where no grid of the book has boxes.
bounded-line-primer--lines = Le cifre sulla linea sono comprese tra le due cifre fra parentesi quadre ai suoi capi; nessuna di queste due compare in mezzo. La cifra più bassa e la più alta non stanno dunque mai all’interno di una tale linea, e se tre delle sue caselle interne condividono una riga o una colonna, tra i capi c’è una differenza di almeno quattro. Cercate prima quale dei due capi è il più alto.

## Cages

cage-sentence-totals = { $n ->
    [1] Nella gabbia
   *[other] In ogni gabbia
} le cifre sono tutte diverse e la loro somma è il totale nell’angolo.
cage-sentence-some = { $n ->
    [1] Nella gabbia
   *[other] In ogni gabbia
} le cifre sono tutte diverse e la loro somma è il totale nell’angolo, se c’è.
cage-sentence-none = { $n ->
    [1] Nella gabbia
   *[other] In ogni gabbia
} le cifre sono tutte diverse.
cage-sentence-repeats = { $n ->
    [1] Nella gabbia
   *[other] In ogni gabbia
} la somma delle cifre è il totale nell’angolo; le cifre possono ripetersi.
cage-spoken = { $total ->
    [none] Gabbia senza totale: { $cells }
   *[other] Gabbia da { $total }: { $cells }
}
cage-primer = Una gabbia è disegnata a trattini. Le sue cifre sono tutte diverse, anche se attraversa più riquadri, e la loro somma è il piccolo totale nell’angolo. Certi totali lasciano una sola scelta: due caselle che fanno 3 contengono 1 e 2, tre che fanno 24 contengono 7, 8 e 9. In una griglia 9×9 ogni riga, ogni colonna e ogni riquadro somma 45: dove le gabbie coprono tutto un riquadro tranne una casella, sottraete i totali da 45.
# Where no grid of the book has boxes.
cage-primer--lines = Una gabbia è disegnata a trattini. Le sue cifre sono tutte diverse e la loro somma è il piccolo totale nell’angolo. Certi totali lasciano una sola scelta: due caselle che fanno 3 contengono 1 e 2, tre che fanno 24 contengono 7, 8 e 9. In una griglia 9×9 ogni riga e ogni colonna somma 45: dove le gabbie coprono tutta una riga tranne una casella, sottraete i totali da 45.

## Clones

clone-sentence = Le { $number } aree tratteggiate contengono le stesse cifre negli stessi posti.
clone-sentence-letters = Le aree tratteggiate con la stessa lettera contengono le stesse cifre negli stessi posti.
clone-spoken = Cloni { $letter }, casella per casella: { $twins }
clone-primer = Le aree tratteggiate con la stessa lettera sono cloni: hanno la stessa forma e contengono le stesse cifre negli stessi posti. Una cifra esclusa da una casella lo è anche dalla sua gemella, perciò su ogni coppia di gemelle pesano due righe, due colonne e due riquadri. Cominciate dai cloni che vedono più cifre date.
# Where no grid of the book has boxes.
clone-primer--lines = Le aree tratteggiate con la stessa lettera sono cloni: hanno la stessa forma e contengono le stesse cifre negli stessi posti. Una cifra esclusa da una casella lo è anche dalla sua gemella, perciò su ogni coppia di gemelle pesano due righe e due colonne. Cominciate dai cloni che vedono più cifre date.

## Consecutive bars

consecutive-bars-sentence = { $n ->
    [1] La barretta
   *[other] Una barretta
} unisce due cifre consecutive; due caselle vicine senza barretta non hanno mai cifre consecutive.
consecutive-bars-spoken = { $n ->
    [1] Barretta
   *[other] Barrette
} { $where }
consecutive-bars-primer = Tra due caselle vicine con cifre consecutive c’è sempre una barretta, perciò anche l’assenza di barretta è un indizio: oltre un confine che ne è privo, accanto a 5 non c’è né 4 né 6. Seguite le file di barrette, dove le cifre salgono o scendono di uno, e guardate le caselle con poche barrette accanto a una cifra nota.

## Consecutive lines

consecutive-line-sentence = Le cifre { $n ->
    [1] della linea di consecutivi
   *[other] di ogni linea di consecutivi
} formano una sequenza senza vuoti né ripetizioni, in qualsiasi ordine.
consecutive-line-spoken = Linea di consecutivi: { $line }
consecutive-line-primer = Le cifre di una linea a perline, messe in ordine, formano una sequenza come 3 4 5 6, ma lungo la linea possono stare in qualsiasi ordine. Non si ripetono mai, anche se la linea attraversa più riquadri. In una griglia 9×9 cinque caselle contengono sempre 5, sei caselle anche 4 e 6; e le cifre troppo lontane da una nota sono escluse.
# Where no grid of the book has boxes.
consecutive-line-primer--lines = Le cifre di una linea a perline, messe in ordine, formano una sequenza come 3 4 5 6, ma lungo la linea possono stare in qualsiasi ordine. Non si ripetono mai. In una griglia 9×9 cinque caselle contengono sempre 5, sei caselle anche 4 e 6; e le cifre troppo lontane da una nota sono escluse.

## Counting areas

counting-area-sentence-counts = { $n ->
    [1] Nell’area di conteggio
   *[other] In ogni area di conteggio
} ogni cifra scritta nell’angolo compare esattamente tante volte quante vi è scritta.
counting-area-sentence-different = Il numero nell’angolo { $n ->
    [1] dell’area di conteggio
   *[other] di ogni area di conteggio
} dice quante cifre diverse essa contiene.
counting-area-sentence-both = { $n ->
    [1] Nell’area di conteggio
   *[other] In ogni area di conteggio
} ogni cifra scritta nell’angolo compare esattamente tante volte quante vi è scritta; un numero con ≠ dice quante cifre diverse l’area contiene.
counting-area-spoken = { $different ->
    [0] Area di conteggio con esattamente { $digits }: { $cells }
    [1] Area di conteggio con 1 sola cifra diversa: { $cells }
   *[other] Area di conteggio con { $different } cifre diverse: { $cells }
}
counting-area-primer = Una linea di puntini racchiude un’area di conteggio. Le cifre nell’angolo vi compaiono esattamente tante volte quante sono scritte: 7 7 vuol dire due 7, e le altre cifre sono qualsiasi, ma non 7. Un numero con ≠ dice quante cifre diverse ci sono. Tre caselle di una stessa riga hanno sempre tre cifre diverse; chiedetevi dunque quali caselle di un’area possono essere uguali: quelle che non condividono né riga, né colonna, né riquadro.
# Where no grid of the book has boxes.
counting-area-primer--lines = Una linea di puntini racchiude un’area di conteggio. Le cifre nell’angolo vi compaiono esattamente tante volte quante sono scritte: 7 7 vuol dire due 7, e le altre cifre sono qualsiasi, ma non 7. Un numero con ≠ dice quante cifre diverse ci sono. Tre caselle di una stessa riga hanno sempre tre cifre diverse; chiedetevi dunque quali caselle di un’area possono essere uguali: quelle che non condividono né riga né colonna.

## Diagonal sums

diagonal-sum-sentence = { $n ->
    [1] Il numero
   *[other] Ogni numero
} con una freccia fuori dalla griglia è la somma delle cifre sulla diagonale indicata dalla freccia; le cifre possono ripetersi dove le altre regole lo permettono.
diagonal-sum-spoken = Somma diagonale { $total }: { $line }
diagonal-sum-primer = Una freccia fuori dalla griglia indica una diagonale, e il suo numero è la somma di tutte le sue cifre, fino al bordo opposto. Le caselle di uno stesso riquadro hanno cifre diverse; le altre possono ripetersi, perciò tre caselle di tre riquadri possono avere persino la stessa cifra. Cominciate dalle diagonali corte e dalle somme molto piccole o molto grandi per la loro lunghezza.
# Where no grid of the book has boxes.
diagonal-sum-primer--lines = Una freccia fuori dalla griglia indica una diagonale, e il suo numero è la somma di tutte le sue cifre, fino al bordo opposto. Le cifre possono ripetersi. Cominciate dalle diagonali corte e dalle somme molto piccole o molto grandi per la loro lunghezza.

## Diagonals

diagonals-sentence = { $n ->
    [1] La diagonale segnata
   *[other] Ciascuna delle due diagonali segnate
} contiene ogni cifra una volta.
diagonals-spoken = Diagonale segnata: { $line }
diagonals-primer = Una diagonale segnata vale come una riga o una colonna in più: ogni cifra vi compare una volta. La casella in cui due diagonali si incrociano appartiene a entrambe, oltre che a una riga, a una colonna e a un riquadro, perciò guardate prima lì; poi cercate lungo una diagonale una cifra a cui resta un solo posto.
# Where no grid of the book has boxes.
diagonals-primer--lines = Una diagonale segnata vale come una riga o una colonna in più: ogni cifra vi compare una volta. La casella in cui due diagonali si incrociano appartiene a entrambe, oltre che a una riga e a una colonna, perciò guardate prima lì; poi cercate lungo una diagonale una cifra a cui resta un solo posto.

## Difference lines

difference-line-sentence = Lungo { $n ->
    [1] la linea delle differenze
   *[other] ogni linea delle differenze
} due cifre vicine differiscono di almeno { $least }.
difference-line-spoken = Linea delle differenze: { $line }
difference-line-primer = Ogni passo lungo una linea a denti di sega è un salto di almeno la differenza indicata, di solito 5. In una griglia 9×9 con 5 le cifre lungo la linea sono a turno basse e alte: 5 non vi compare mai, 4 solo accanto a 9 e 6 solo accanto a 1. Perciò 4 o 6 sta a un capo, oppure tra due caselle che possono essere uguali.

## Disjoint groups

disjoint-groups-sentence = Le caselle con la stessa posizione nei loro riquadri, come tutte quelle in alto a sinistra, contengono ogni cifra una volta.
disjoint-groups-primer = Prendete la casella in alto a sinistra di ogni riquadro: insieme contengono ogni cifra una volta, e così le caselle di ogni altra posizione nei riquadri. Una cifra sta dunque in una posizione diversa in ogni riquadro. Quando l’avete scritta in qualche riquadro, cancellate quelle posizioni negli altri prima di guardare righe e colonne.

## Dots

dots-sentence-white = { $white ->
    [1] Il pallino bianco
   *[other] Un pallino bianco
} unisce due cifre consecutive{ $all ->
    [yes] ; due caselle vicine senza pallino non contengono né cifre consecutive né una cifra e il suo doppio
   *[no] {""}
}.
dots-sentence-black = { $black ->
    [1] Il pallino nero
   *[other] Un pallino nero
} unisce una cifra e il suo doppio{ $all ->
    [yes] ; due caselle vicine senza pallino non contengono né cifre consecutive né una cifra e il suo doppio
   *[no] {""}
}.
dots-sentence-both = { $white ->
    [1] Il pallino bianco
   *[other] Un pallino bianco
} unisce due cifre consecutive, { $black ->
    [1] il pallino nero
   *[other] un pallino nero
} una cifra e il suo doppio (1 e 2 possono avere l’uno o l’altro){ $all ->
    [yes] ; due caselle vicine senza pallino non contengono né cifre consecutive né una cifra e il suo doppio
   *[no] {""}
}.
dots-sentence-none = Due caselle con un lato in comune non contengono mai cifre consecutive, né una cifra e il suo doppio.
dots-spoken-white = { $n ->
    [1] Pallino bianco
   *[other] Pallini bianchi
} { $where }
dots-spoken-black = { $n ->
    [1] Pallino nero
   *[other] Pallini neri
} { $where }
dots-primer = Un pallino bianco unisce due caselle vicine con cifre consecutive, un pallino nero una cifra e il suo doppio; 1 e 2 possono avere l’uno o l’altro. In una griglia 9×9 le cifre 5, 7 e 9 non toccano mai un pallino nero, e una fila di pallini neri percorre 1, 2, 4 e 8 oppure 3 e 6. Quando tutti i pallini sono dati, anche un confine che non ne ha è un indizio: le sue cifre non sono né consecutive né l’una il doppio dell’altra.

## Equal-part lines

equal-part-line-sentence = { $n ->
    [1] Sulla linea a parti uguali
   *[other] Su ogni linea a parti uguali
} le cifre di ogni tratto compreso in { $home ->
    [box] un riquadro
   *[region] una regione
} hanno la stessa somma.
equal-part-line-part = parte { $number }, { $line }
equal-part-line-spoken = Linea a parti uguali: { $parts }
equal-part-line-primer = I bordi dei riquadri tagliano in tratti una linea a parti uguali, e le cifre di ogni tratto hanno la stessa somma; una linea che torna in un riquadro vi ha due tratti. Un tratto di una sola casella dà subito la somma. Se non ce n’è, confrontate il tratto più lungo con il più corto: in una griglia 9×9 tre caselle di un riquadro fanno almeno 6, due al massimo 17.

## Even-step lines

even-step-line-sentence = Lungo { $n ->
    [1] la linea a passo costante
   *[other] ogni linea a passo costante
} { $step ->
    [none] due cifre vicine hanno sempre la stessa differenza, { $n ->
        [1] da trovare
       *[other] da trovare per ogni linea
    }
   *[other] due cifre vicine differiscono esattamente di { $step }
}.
even-step-line-spoken = Linea a passo costante: { $line }
even-step-line-primer = Tutti i passi lungo una linea a borchie hanno la stessa ampiezza, in su o in giù, e mai zero; se l’ampiezza non è data, trovatela per ogni linea. Ai passi grandi lo spazio manca presto: con passo 4 in una griglia 9×9 una linea che parte da 1 può contenere solo 1, 5 e 9; con passo 5 le cifre sono a turno basse e alte, e 5 non c’è mai. Tre caselle di seguito che condividono una riga, una colonna o un riquadro salgono due volte o scendono due volte.
# Where no grid of the book has boxes.
even-step-line-primer--lines = Tutti i passi lungo una linea a borchie hanno la stessa ampiezza, in su o in giù, e mai zero; se l’ampiezza non è data, trovatela per ogni linea. Ai passi grandi lo spazio manca presto: con passo 4 in una griglia 9×9 una linea che parte da 1 può contenere solo 1, 5 e 9; con passo 5 le cifre sono a turno basse e alte, e 5 non c’è mai. Tre caselle di seguito che condividono una riga o una colonna salgono due volte o scendono due volte.

## Extra regions

extra-region-sentence = { $full ->
    [yes] { $n ->
        [1] La regione ombreggiata contiene ogni cifra una volta
       *[other] Ogni regione ombreggiata contiene ogni cifra una volta
    }
   *[no] { $n ->
        [1] Nessuna cifra si ripete nella regione ombreggiata
       *[other] Nessuna cifra si ripete in una stessa regione ombreggiata
    }
}{ $pieces ->
    [yes] { $n ->
        [1] ; tutti i suoi pezzi hanno la stessa lettera
       *[other] ; i pezzi di una regione hanno la stessa lettera
    }
   *[no] {""}
}.
extra-region-spoken = { $letter ->
    [none] Regione ombreggiata: { $cells }
   *[other] Regione ombreggiata { $letter }: { $cells }
}
extra-region-primer = Una regione ombreggiata vale come un riquadro in più: nessuna cifra vi compare due volte. Se ha tante caselle quante sono le cifre della griglia, le contiene tutte; chiedetele allora ciò che chiedereste a una riga: dove può ancora andare questa cifra? Una più piccola chiede soltanto cifre diverse. Cominciate dove una regione attraversa un riquadro quasi pieno.
# Where no grid of the book has boxes.
extra-region-primer--lines = Una regione ombreggiata vale come una riga in più: nessuna cifra vi compare due volte. Se ha tante caselle quante sono le cifre della griglia, le contiene tutte; chiedetele allora ciò che chiedereste a una riga: dove può ancora andare questa cifra? Una più piccola chiede soltanto cifre diverse. Cominciate dove una regione attraversa una riga quasi piena.

## First-seen digits

first-seen-sentence = { $n ->
    [1] La cifra
   *[other] Ogni cifra
} fuori dalla griglia accanto a { $seen ->
    [0] quadratini compare in una delle prime caselle (tante quanti sono i quadratini)
    [1] un quadratino compare nella prima casella
   *[other] { $number } quadratini compare in una delle prime { $number } caselle
} della sua { $line ->
    [row] riga
    [column] colonna
   *[both] riga o colonna
} da quel lato.
first-seen-spoken = { $n ->
    [1] Cifra di testa
   *[other] Cifre di testa
} { $side }: { $clues }
first-seen-side = { $n ->
    [1] { $side }, accanto a un quadratino
   *[other] { $side }, accanto a { $number } quadratini
}
first-seen-primer = Una cifra fuori da una riga o da una colonna compare in una delle prime caselle da quel lato, tante quanti sono i quadratini accanto; dove stanno più cifre insieme, compaiono tutte, in qualsiasi ordine. In una griglia 9×9 tre quadratini mettono la cifra in tre caselle del riquadro più vicino: cancellatela dal resto della riga e del riquadro.
# Where no grid of the book has boxes.
first-seen-primer--lines = Una cifra fuori da una riga o da una colonna compare in una delle prime caselle da quel lato, tante quanti sono i quadratini accanto; dove stanno più cifre insieme, compaiono tutte, in qualsiasi ordine.

## Fortress cells

fortress-sentence = Ogni cifra in una casella ombreggiata, dentro i merli, è maggiore di quelle nelle caselle non ombreggiate che hanno un lato in comune con essa.
fortress-spoken = Fortezza: { $cells }
fortress-primer = Le caselle ombreggiate con merli intorno sono una fortezza: ognuna delle sue cifre è maggiore delle cifre di fuori che la toccano per un lato. Due caselle ombreggiate non si confrontano. Una casella con merli su due lati della stessa riga o colonna vale almeno 3, e in una fortezza le cifre basse possono stare solo dove pochi lati danno sull’esterno. Le caselle tra due fortezze sono basse.

## Frame products

frame-product-sentence = { $n ->
    [1] Il numero
   *[other] Ogni numero
} preceduto da un punto fuori dalla griglia è il prodotto delle { $line ->
    [row] prime { $number } cifre della sua riga
    [column] prime { $number } cifre della sua colonna
    [unlike] prime { $number } cifre della sua riga, o delle prime { $other } della sua colonna,
   *[both] prime { $number } cifre della sua riga o colonna
} da quel lato.
frame-product-spoken = { $n ->
    [1] Prodotto di bordo
   *[other] Prodotti di bordo
} { $side }: { $clues }
frame-product-primer = Il numero fuori da una riga o da una colonna è il prodotto delle cifre più vicine, in una griglia 9×9 di solito le tre del riquadro più vicino. Scomponetelo: un prodotto che finisce per 5 o per 0 ha un 5, uno divisibile per 7 ha un 7, e uno che non è divisibile per nessuno dei due li esclude entrambi. Un prodotto dispari ha solo cifre dispari.
# Where no grid of the book has boxes.
frame-product-primer--lines = Il numero fuori da una riga o da una colonna è il prodotto delle cifre più vicine, di solito tre. Scomponetelo: un prodotto che finisce per 5 o per 0 ha un 5, uno divisibile per 7 ha un 7, e uno che non è divisibile per nessuno dei due li esclude entrambi. Un prodotto dispari ha solo cifre dispari.

## Frame sums

frame-sum-sentence = { $n ->
    [1] Il numero
   *[other] Ogni numero
} preceduto da un piccolo + fuori dalla griglia è la somma delle { $line ->
    [row] prime { $number } cifre della sua riga
    [column] prime { $number } cifre della sua colonna
    [unlike] prime { $number } cifre della sua riga, o delle prime { $other } della sua colonna,
   *[both] prime { $number } cifre della sua riga o colonna
} da quel lato.
frame-sum-spoken = { $n ->
    [1] Somma di bordo
   *[other] Somme di bordo
} { $side }: { $clues }
frame-sum-primer = Il numero fuori da una riga o da una colonna è la somma delle cifre più vicine, in una griglia 9×9 di solito le tre del riquadro più vicino. Tre cifre che fanno 6 sono 1, 2 e 3, tre che fanno 24 sono 7, 8 e 9. Un riquadro somma 45, perciò due numeri che guardano un riquadro dallo stesso lato danno il terzo; e i numeri ai due capi di una riga danno la somma di ciò che sta in mezzo.
# Where no grid of the book has boxes.
frame-sum-primer--lines = Il numero fuori da una riga o da una colonna è la somma delle cifre più vicine, di solito tre. Tre cifre che fanno 6 sono 1, 2 e 3, tre che fanno 24 sono 7, 8 e 9.

## Hinge lines

hinge-line-sentence = { $n ->
    [1] Sulla linea a cerniera
   *[other] Su ogni linea a cerniera
} la somma di due caselle alla stessa distanza dal centro è sempre la stessa{ $middles ->
    [all] , cioè la cifra al centro
    [some] , cioè la cifra nella casella al centro se c’è
   *[none] {""}
}.
hinge-line-spoken = { COUNT($middle) ->
    [one] Linea a cerniera con il centro in { $middle }: { $line }
   *[other] Linea a cerniera con il centro tra { $middle }: { $line }
}
hinge-line-primer = Piegate una linea a cerniera nel centro: due caselle che si sovrappongono hanno sempre la stessa somma. Se la linea ha una casella centrale, un rombo la segna e la sua cifra è quella somma, perciò è alta e le altre sono basse. Altrimenti trovate la somma: basta una coppia nota.

## Inequalities

inequality-sentence = { $n ->
    [1] Il segno
   *[other] Ogni segno
} tra due caselle si apre verso la cifra maggiore.
inequality-row = Riga { $number }: { $signs }
    .short = R{ $number }: { $signs }
inequality-row-sign = la colonna { $more } è maggiore della colonna { $less }
    .short = la c{ $more } è maggiore della c{ $less }
inequality-column = Colonna { $number }: { $signs }
    .short = C{ $number }: { $signs }
inequality-column-sign = la riga { $more } è maggiore della riga { $less }
    .short = la r{ $more } è maggiore della r{ $less }
inequality-primer = Un segno tra due caselle si apre verso la cifra maggiore e punta verso la minore. Più segni di seguito fanno una scala: in basso c’è posto solo per cifre basse, in cima solo per cifre alte. Cominciate dalle scale più lunghe, e dalle caselle maggiori, o minori, di tutto ciò che le circonda.

## King’s move

king-sentence = Due caselle che si toccano per un angolo contengono cifre diverse.
king-primer = Due caselle che si toccano per un angolo contengono cifre diverse, come se ogni cifra fosse un re degli scacchi che non tollera sosia vicino a sé. Dentro un riquadro questo non aggiunge nulla; la regola agisce attraverso i confini dei riquadri. Una cifra accanto a un riquadro vi esclude fino a due caselle in più.
# Where no grid of the book has boxes.
king-primer--lines = Due caselle che si toccano per un angolo contengono cifre diverse, come se ogni cifra fosse un re degli scacchi che non tollera sosia vicino a sé.

## Knight’s move

knight-sentence = Due caselle a una mossa del cavallo di distanza (due passi lungo una riga o una colonna, poi uno di lato) contengono cifre diverse.
knight-primer = Due caselle tra le quali un cavallo degli scacchi potrebbe saltare, due passi lungo una riga o una colonna e uno di lato, contengono cifre diverse. Una cifra al centro della griglia raggiunge così otto caselle, quasi tutte fuori dal suo riquadro. Cercate riquadri in cui a una cifra restano due posti, entrambi a una mossa del cavallo dalla stessa casella.
# Where no grid of the book has boxes.
knight-primer--lines = Due caselle tra le quali un cavallo degli scacchi potrebbe saltare, due passi lungo una riga o una colonna e uno di lato, contengono cifre diverse. Una cifra al centro della griglia raggiunge così otto caselle. Cercate righe in cui a una cifra restano due posti, entrambi a una mossa del cavallo dalla stessa casella.

## Limits

limits-sentence-allowed = { $n ->
    [1] La casella
   *[other] Una casella
} con cifre piccole nell’angolo contiene una di esse.
limits-sentence-forbidden = { $n ->
    [1] La casella
   *[other] Una casella
} con cifre piccole barrate nell’angolo non contiene nessuna di esse.
limits-sentence-both = { $n ->
    [1] La casella
   *[other] Una casella
} con cifre piccole nell’angolo contiene una di esse, o nessuna di esse se sono barrate.
limits-spoken-only = Solo { $digits }: { $cells }
limits-spoken-not = Mai { $digits }: { $cells }
limits-primer = Le cifre piccole nell’angolo in basso a destra di una casella sono le sole che può contenere; se sono barrate, sono quelle che non può contenere. Annotate i candidati prima di cominciare. Quando in una riga, in una colonna o in un riquadro le caselle con lo stesso limite sono tante quante le sue cifre, queste non vanno in nessun altro posto.
# Where no grid of the book has boxes.
limits-primer--lines = Le cifre piccole nell’angolo in basso a destra di una casella sono le sole che può contenere; se sono barrate, sono quelle che non può contenere. Annotate i candidati prima di cominciare. Quando in una riga o in una colonna le caselle con lo stesso limite sono tante quante le sue cifre, queste non vanno in nessun altro posto.

## Low-high lines

low-high-line-sentence = Lungo { $n ->
    [1] la linea basso-alto
   *[other] ogni linea basso-alto
} si alternano cifre basse (da { $least } a { $low }) e alte (da { $high } a { $most }){ $middle ->
    [none] .
   *[other] ; la cifra { $middle } non vi compare.
}
low-high-line-spoken = Linea basso-alto: { $line }
low-high-line-primer = Lungo una linea a merli si alternano cifre basse e alte; può cominciare con le une o con le altre. In una griglia 9×9 le basse vanno da 1 a 4, le alte da 6 a 9, e 5 non sta mai su una tale linea. Una sola cifra nota decide quali caselle sono basse. Quattro caselle basse in una riga, in una colonna o in un riquadro prendono tutte le cifre basse.
# Where no grid of the book has boxes.
low-high-line-primer--lines = Lungo una linea a merli si alternano cifre basse e alte; può cominciare con le une o con le altre. In una griglia 9×9 le basse vanno da 1 a 4, le alte da 6 a 9, e 5 non sta mai su una tale linea. Una sola cifra nota decide quali caselle sono basse. Quattro caselle basse in una riga o in una colonna prendono tutte le cifre basse.

## No doubles

no-doubles-sentence = { $touching ->
    [corners] Due caselle che si toccano, per un lato o per un angolo, non contengono mai una cifra e il suo doppio.
   *[sides] Due caselle con un lato in comune non contengono mai una cifra e il suo doppio.
}
no-doubles-zero = Poiché 0 è il doppio di sé stesso, due 0 non si toccano mai.
no-doubles-primer = Due caselle con un lato in comune non contengono mai una cifra e il suo doppio: accanto a 4 non c’è né 2 né 8. In una griglia 9×9 le cifre 5, 7 e 9 possono stare accanto a qualunque cifra; sono 1, 2, 4 e 8, come pure 3 e 6, a doversi evitare. Una casella accanto a tutti i posti di 4 in una riga non può essere né 2 né 8.

## Non-consecutive

non-consecutive-sentence = { $touching ->
    [corners] Due caselle che si toccano, per un lato o per un angolo, non contengono mai cifre consecutive.
   *[sides] Due caselle con un lato in comune non contengono mai cifre consecutive.
}
non-consecutive-primer = Due caselle con un lato in comune non contengono mai cifre consecutive: accanto a 5 non c’è né 4 né 6. Ogni cifra che scrivete ne esclude perciò due in ciascuna delle caselle vicine. Quando a una cifra restano solo due posti in una riga, con una casella in mezzo, quella casella non può contenere né la cifra precedente né la successiva.

## Numbered rooms

numbered-room-sentence = { $n ->
    [1] La cifra
   *[other] Ogni cifra
} in una porta fuori dalla griglia va nella n-esima casella della sua { $line ->
    [row] riga
    [column] colonna
   *[both] riga o colonna
} da quel lato, dove n è la prima cifra che vi si trova.
numbered-room-zero = La cifra n non è mai 0.
numbered-room-spoken = { $n ->
    [1] Stanza numerata
   *[other] Stanze numerate
} { $side }: { $clues }
numbered-room-primer = La cifra più vicina alla porta è il numero di una stanza: con 4 davanti, la cifra nella porta va nella quarta casella da quel lato. Solo un 1 nella porta può avere 1 davanti, e nessun numero porta a una stanza già occupata. Cominciate dove la cifra nella porta ha pochi posti nella sua riga o colonna, perché ciascuno richiede davanti una cifra precisa.

## Open cages

open-cage-sentence = { $n ->
    [1] Nella gabbia aperta
   *[other] In ogni gabbia aperta
} le cifre sono tutte diverse{ $parities ->
    [even] { $alone ->
        [yes] ; il loro totale è pari
       *[no] ; il loro totale è pari se c’è un quadrato
    }
    [odd] { $alone ->
        [yes] ; il loro totale è dispari
       *[no] ; il loro totale è dispari se c’è un cerchio
    }
    [both] ; il loro totale è pari se c’è un quadrato, dispari se c’è un cerchio
   *[none] {""}
}{ $letters ->
    [yes] ; le gabbie con la stessa lettera hanno lo stesso totale
   *[no] {""}
}.
open-cage-spoken = { $value ->
    [even] Gabbia aperta con totale pari: { $cells }
    [odd] Gabbia aperta con totale dispari: { $cells }
   *[other] Gabbia aperta con totale { $value }: { $cells }
}
open-cage-primer = Le cifre in una gabbia aperta sono tutte diverse, ma il loro totale non è dato. Un quadratino nell’angolo dice che è pari, un cerchietto che è dispari: quando resta una sola casella da riempire, la sua cifra può essere solo pari o solo dispari. Le gabbie con la stessa lettera hanno lo stesso totale: una gabbia piccola che ne eguaglia una grande ha cifre alte, e la grande cifre basse.

## Palindromes

palindrome-sentence = Le cifre lungo { $n ->
    [1] il palindromo
   *[other] ogni palindromo
} si leggono allo stesso modo dai due capi.
palindrome-spoken = Palindromo: { $line }
palindrome-primer = Un palindromo si legge allo stesso modo dai due capi: la prima e l’ultima casella sono uguali, così come la seconda e la penultima, e una casella centrale è libera. Una cifra esclusa da una casella di una tale coppia lo è anche dall’altra, perciò ogni coppia agisce insieme in due righe, due colonne e due riquadri.
# Where no grid of the book has boxes.
palindrome-primer--lines = Un palindromo si legge allo stesso modo dai due capi: la prima e l’ultima casella sono uguali, così come la seconda e la penultima, e una casella centrale è libera. Una cifra esclusa da una casella di una tale coppia lo è anche dall’altra, perciò ogni coppia agisce insieme in due righe e due colonne.

## Even and odd

parity-sentence-even = { $even ->
    [1] La casella
   *[other] Ogni casella
} con un quadrato contiene una cifra pari.
parity-sentence-odd = { $odd ->
    [1] La casella
   *[other] Ogni casella
} con un cerchio contiene una cifra dispari.
parity-sentence-both = { $even ->
    [1] La casella
   *[other] Ogni casella
} con un quadrato contiene una cifra pari, { $odd ->
    [1] la casella
   *[other] ogni casella
} con un cerchio una dispari.
parity-spoken-even = { $n ->
    [1] Cifra pari, con un quadrato: { $cells }
   *[other] Cifre pari, ciascuna con un quadrato: { $cells }
}
parity-spoken-odd = { $n ->
    [1] Cifra dispari, con un cerchio: { $cells }
   *[other] Cifre dispari, ciascuna con un cerchio: { $cells }
}
parity-primer = Un quadrato segna una cifra pari, un cerchio una dispari; le caselle senza segno possono contenere le une o le altre. In una griglia 9×9 ogni riga, ogni colonna e ogni riquadro ha quattro cifre pari e cinque dispari; contate dunque: appena si sa che quattro caselle di una riga sono pari, tutte le altre sono dispari.
# Where no grid of the book has boxes.
parity-primer--lines = Un quadrato segna una cifra pari, un cerchio una dispari; le caselle senza segno possono contenere le une o le altre. In una griglia 9×9 ogni riga e ogni colonna ha quattro cifre pari e cinque dispari; contate dunque: appena si sa che quattro caselle di una riga sono pari, tutte le altre sono dispari.

## Parity lines

parity-line-sentence = Lungo { $n ->
    [1] la linea di parità
   *[other] ogni linea di parità
} si alternano cifre dispari e pari.
parity-line-spoken = Linea di parità: { $line }
parity-line-primer = Lungo una linea con cerchi e quadrati tra le caselle si alternano cifre dispari e pari; può cominciare con le une o con le altre. Una sola cifra nota decide quali caselle sono dispari. Contate dove attraversa una riga o un riquadro: in una griglia 9×9 ci sono quattro cifre pari, perciò una linea lungo un’intera riga comincia e finisce con una dispari.
# Where no grid of the book has boxes.
parity-line-primer--lines = Lungo una linea con cerchi e quadrati tra le caselle si alternano cifre dispari e pari; può cominciare con le une o con le altre. Una sola cifra nota decide quali caselle sono dispari. Contate dove percorre una riga: in una griglia 9×9 ci sono quattro cifre pari, perciò una linea lungo un’intera riga comincia e finisce con una dispari.

## Parity runs

parity-run-sentence = { $n ->
    [1] Il numero
   *[other] Ogni numero
} preceduto da un piccolo = fuori dalla griglia dice quante cifre della sua { $line ->
    [row] riga
    [column] colonna
   *[both] riga o colonna
}, da quel lato, sono tutte pari o tutte dispari prima che la parità cambi.
parity-run-spoken = { $n ->
    [1] Serie di parità
   *[other] Serie di parità
} { $side }: { $clues }
parity-run-primer = Guardate lungo la riga o la colonna a partire dal numero: altrettante cifre sono pari, o altrettante dispari, e la successiva è dell’altro tipo. In una griglia 9×9 una riga ha cinque cifre dispari e quattro pari, perciò una serie di 5 è dispari. Appena si sa che una cifra di una serie è pari o dispari, lo sono tutte, e quella che segue non lo è.

## Peaks and hollows

peaks-sentence-greater = { $greater ->
    [1] La casella
   *[other] Ogni casella
} con un tetto contiene una cifra maggiore di tutte le caselle che hanno un lato in comune con essa.
peaks-sentence-smaller = { $smaller ->
    [1] La casella
   *[other] Ogni casella
} con una conca contiene una cifra minore di tutte le caselle che hanno un lato in comune con essa.
peaks-sentence-both = { $greater ->
    [1] La casella
   *[other] Ogni casella
} con un tetto contiene una cifra maggiore di tutte le caselle che hanno un lato in comune con essa, { $smaller ->
    [1] la casella
   *[other] ogni casella
} con una conca una minore.
peaks-spoken-greater = { $n ->
    [1] Cima, con un tetto: { $cells }
   *[other] Cime, ciascuna con un tetto: { $cells }
}
peaks-spoken-smaller = { $n ->
    [1] Conca, con il suo segno: { $cells }
   *[other] Conche, ciascuna con il suo segno: { $cells }
}
peaks-primer = Un piccolo tetto sopra una cifra vuol dire che è maggiore delle cifre accanto, sopra e sotto di essa; una conca sotto una cifra vuol dire che è minore. Le sue due vicine nella riga sono diverse, perciò lontano dal bordo una cifra sotto un tetto vale almeno 3, e di solito molto di più.

## Pointing cells

pointing-sentence = { $n ->
    [1] La cifra
   *[other] Ogni cifra
} in una casella con freccia dice a quante caselle, nella direzione della freccia, si trova la cifra { $digit }, contando come prima la casella vicina.
pointing-zero = Una casella con freccia non contiene mai 0.
pointing-spoken = { $n ->
    [1] Freccia
   *[other] Frecce
} { $way ->
    [left] verso sinistra: { $cells }
    [right] verso destra: { $cells }
    [up] verso l’alto: { $cells }
   *[down] verso il basso: { $cells }
}
pointing-primer = Una piccola freccia nera in una casella indica una direzione lungo la sua riga o colonna, e la cifra nella casella conta i passi da lì a una cifra che la regola nomina, per esempio 9: con 3 nella casella, 9 è tre passi più avanti. La casella non contiene dunque mai quella cifra, né una cifra maggiore del numero di caselle che ha davanti, e la cifra non sta mai dietro. Due frecce che guardano ciascuna la riga o la colonna dell’altra lasciano spesso un solo modo di contare.

## Corner quadruples

quadruple-sentence = { $several ->
    [yes] Le cifre { $n ->
        [1] nell’anello
       *[other] in ogni anello
    } compaiono nelle quattro caselle intorno a esso
   *[no] La cifra { $n ->
        [1] nell’anello
       *[other] in ogni anello
    } compare in una delle quattro caselle intorno a esso
}{ $repeats ->
    [yes] , ciascuna almeno tante volte quante vi è scritta
   *[no] {""}
}.
quadruple-spoken = Anello con { $digits } nell’angolo comune: { $cells }
quadruple-primer = Le cifre piccole in un anello stanno da qualche parte nelle quattro caselle intorno a quell’angolo, ciascuna almeno tante volte quante è scritta; se c’è posto, possono starvi anche altre cifre. Un anello con quattro cifre non lascia posto: ciascuna delle sue caselle ne contiene una. Una cifra scritta due volte sta in due caselle opposte in diagonale.

## Resting thermometers

resting-thermometer-sentence = Lungo { $n ->
    [1] il termometro con soste
   *[other] ogni termometro con soste
}, dal bulbo alla punta, le cifre non calano mai: crescono o restano uguali.
resting-thermometer-spoken = Termometro con soste, dal bulbo: { $line }
resting-thermometer-primer = Un termometro con soste è disegnato come un tubo vuoto. Dal bulbo cerchiato alla punta le cifre crescono o restano uguali: ognuna è almeno pari alla precedente. Due delle sue caselle nella stessa riga, colonna o riquadro non possono essere uguali, e lì le cifre crescono davvero: contate quei passi per sapere quanto dev’essere alta la punta e basso il bulbo.
# Where no grid of the book has boxes.
resting-thermometer-primer--lines = Un termometro con soste è disegnato come un tubo vuoto. Dal bulbo cerchiato alla punta le cifre crescono o restano uguali: ognuna è almeno pari alla precedente. Due delle sue caselle nella stessa riga o colonna non possono essere uguali, e lì le cifre crescono davvero: contate quei passi per sapere quanto dev’essere alta la punta e basso il bulbo.

## Rising or falling

rise-or-fall-sentence-none = Da nessun lato le prime { $number } cifre di una riga o di una colonna sono in ordine crescente o in ordine decrescente.
rise-or-fall-sentence-rise = Dove { $number } barre fuori dalla griglia si allungano verso di essa, le prime { $number } cifre di quella { $line ->
    [row] riga
    [column] colonna
   *[both] riga o colonna
} sono in ordine crescente da quel lato{ $all ->
    [yes] ; da un lato senza barre le prime { $number } cifre di una riga o di una colonna non sono né in ordine crescente né in ordine decrescente
   *[no] {""}
}.
rise-or-fall-sentence-fall = Dove { $number } barre fuori dalla griglia si accorciano verso di essa, le prime { $number } cifre di quella { $line ->
    [row] riga
    [column] colonna
   *[both] riga o colonna
} sono in ordine decrescente da quel lato{ $all ->
    [yes] ; da un lato senza barre le prime { $number } cifre di una riga o di una colonna non sono né in ordine crescente né in ordine decrescente
   *[no] {""}
}.
rise-or-fall-sentence-both = Dove { $number } barre fuori dalla griglia si allungano verso di essa, le prime { $number } cifre di quella { $line ->
    [row] riga
    [column] colonna
   *[both] riga o colonna
} sono in ordine crescente da quel lato; dove si accorciano, in ordine decrescente{ $all ->
    [yes] ; da un lato senza barre le prime { $number } cifre di una riga o di una colonna non sono né in ordine crescente né in ordine decrescente
   *[no] {""}
}.
rise-or-fall-spoken = { $n ->
    [1] Pendio
   *[other] Pendii
} { $side }: { $clues }
rise-or-fall-rises = barre in salita
rise-or-fall-falls = barre in discesa
rise-or-fall-primer = Barre che si allungano verso la griglia vogliono dire che le tre cifre più vicine sono in ordine crescente da quel lato; barre che si accorciano, in ordine decrescente. Più grande è la cifra, più lunga è la barra. Di tre cifre crescenti, in una griglia 9×9, la prima vale al massimo 7 e l’ultima almeno 3; due salite che hanno in comune una casella d’angolo la tirano giù insieme. Quando tutte le barre sono date, un bordo che non ne ha è una svolta: delle sue tre cifre quella in mezzo è la maggiore o la minore.

## Rising runs

rising-run-sentence = { $n ->
    [1] Il numero
   *[other] Ogni numero
} preceduto da piccoli gradini fuori dalla griglia dice quante cifre della sua { $line ->
    [row] riga
    [column] colonna
   *[both] riga o colonna
} sono in ordine crescente da quel lato, compresa la prima, fino a quando una cala.
rising-run-spoken = { $n ->
    [1] Serie crescente
   *[other] Serie crescenti
} { $side }: { $clues }
rising-run-primer = Guardate lungo la riga o la colonna a partire dal numero: dice quante cifre crescono di seguito, contando dalla più vicina. Con 3, le prime tre cifre crescono e la quarta è minore della terza; con 1, già la seconda è minore della prima. Le serie lunghe tengono le cifre alte lontane dal bordo, e l’ultima cifra di una serie è maggiore delle sue vicine da entrambe le parti.

## Same-sum lines

same-sum-line-sentence = Lungo { $n ->
    [1] la linea a somma costante
   *[other] ogni linea a somma costante
} la somma di { $number } caselle consecutive è sempre la stessa.
same-sum-line-spoken = Linea a somma costante: { $line }
same-sum-line-primer = Lungo una linea a binario la somma di un certo numero di caselle consecutive, tre se la regola non dice altro, è sempre la stessa. Avanzate di una casella: una cifra esce dalla somma e un’altra vi entra, perciò le due sono uguali. Così la prima, la quarta e la settima casella contengono una stessa cifra, la seconda e la quinta un’altra; ciò che è escluso da una è escluso da tutte.

## Sandwich sums

sandwich-sentence = { $n ->
    [1] Il numero
   *[other] Ogni numero
} tra due barre fuori dalla griglia è la somma delle cifre che stanno tra la cifra minima e la massima della sua { $line ->
    [row] riga
    [column] colonna
   *[both] riga o colonna
}.
sandwich-spoken = { $n ->
    [1] Somma sandwich
   *[other] Somme sandwich
} { $side }: { $clues }
sandwich-primer = Il numero fuori da una riga o da una colonna è la somma delle cifre che stanno tra la minima e la massima; in una griglia 9×9 queste due fette sono 1 e 9, in un ordine o nell’altro. Una somma 0 vuol dire che sono l’una accanto all’altra, una somma 35 che sono ai due capi. Chiedetevi prima quante cifre possono dare la somma, perché tanto distano le fette.

## Skyscrapers

skyscraper-sentence = { $n ->
    [1] Il numero
   *[other] Ogni numero
} in una casetta fuori dalla griglia dice quante cifre della sua { $line ->
    [row] riga
    [column] colonna
   *[both] riga o colonna
} si vedono da quel lato, dove una cifra più alta nasconde tutte le più basse dietro di sé.
skyscraper-spoken = { $n ->
    [1] Numero di grattacieli
   *[other] Numeri di grattacieli
} { $side }: { $clues }
skyscraper-primer = Immaginate ogni cifra come un edificio con altrettanti piani e guardate lungo la riga o la colonna a partire dal numero: dice quanti edifici si vedono, perché uno più alto nasconde tutti i più bassi dietro di sé. Da un 1 si vede solo il più alto, che sta dunque subito davanti; da un 9 in una griglia 9×9 si vedono tutti, che dunque crescono. Cominciate dai numeri più grandi, che tengono lontane le cifre alte, e cercate il posto della più alta.

## Square blocks

square-block-sentence-magic = { $n ->
    [1] Nel quadrato incorniciato
   *[other] In ogni quadrato incorniciato
} righe, colonne e le due diagonali hanno la stessa somma; le cifre possono ripetersi.
square-block-sentence-rows = { $n ->
    [1] Nel quadrato incorniciato
   *[other] In ogni quadrato incorniciato
} tutte le righe hanno la stessa somma; le cifre possono ripetersi.
square-block-sentence-columns = { $n ->
    [1] Nel quadrato incorniciato
   *[other] In ogni quadrato incorniciato
} tutte le colonne hanno la stessa somma; le cifre possono ripetersi.
square-block-sentence = { $n ->
    [1] Nel quadrato incorniciato
   *[other] In ogni quadrato incorniciato
} hanno la stessa somma: { $lines }; le cifre possono ripetersi.
square-block-lines-magic = righe, colonne e diagonali se c’è una stella
square-block-lines-rows = le righe se ci sono barre orizzontali
square-block-lines-columns = le colonne se ci sono barre verticali
square-block-spoken-magic = Quadrato magico: { $cells }
square-block-spoken-rows = Quadrato a righe uguali: { $cells }
square-block-spoken-columns = Quadrato a colonne uguali: { $cells }
square-block-primer = Una doppia linea incornicia un quadrato, e un segno dice che cosa vi ha la stessa somma: barre orizzontali le righe, barre verticali le colonne, una stella le righe, le colonne e le due diagonali. Le cifre possono ripetersi dove righe, colonne e riquadri lo permettono. La somma di un quadrato con la stella è il triplo della cifra al centro. Se il quadrato è un intero riquadro di una griglia 9×9, tre righe uguali fanno 15 ciascuna.
# Where no grid of the book has boxes.
square-block-primer--lines = Una doppia linea incornicia un quadrato, e un segno dice che cosa vi ha la stessa somma: barre orizzontali le righe, barre verticali le colonne, una stella le righe, le colonne e le due diagonali. Le cifre possono ripetersi dove righe e colonne lo permettono. La somma di un quadrato con la stella è il triplo della cifra al centro.

## Sum marks

sum-marks-sentence-five = { $five ->
    [1] La V
   *[other] Una V
} unisce due cifre con somma 5{ $all ->
    [yes] ; due caselle vicine senza segno non hanno per somma né 5 né 10
   *[no] {""}
}.
sum-marks-sentence-ten = { $ten ->
    [1] La X
   *[other] Una X
} unisce due cifre con somma 10{ $all ->
    [yes] ; due caselle vicine senza segno non hanno per somma né 5 né 10
   *[no] {""}
}.
sum-marks-sentence-both = { $five ->
    [1] La V
   *[other] Una V
} unisce due cifre con somma 5, { $ten ->
    [1] la X
   *[other] una X
} due cifre con somma 10{ $all ->
    [yes] ; due caselle vicine senza segno non hanno per somma né 5 né 10
   *[no] {""}
}.
sum-marks-sentence-none = Due caselle con un lato in comune non hanno mai per somma né 5 né 10.
sum-marks-spoken-five = { $n ->
    [1] Lettera V
   *[other] Lettere V
} { $where }
sum-marks-spoken-ten = { $n ->
    [1] Lettera X
   *[other] Lettere X
} { $where }
sum-marks-primer = Come nei numeri romani, V vale 5 e X vale 10: tanto sommano le due cifre ai lati della lettera. Una V unisce 1 e 4 o 2 e 3, perciò nessuna cifra maggiore di 4 la tocca; 5 non tocca mai una X, perché accanto gli servirebbe un secondo 5. Quando tutti i segni sono dati, anche un confine senza lettera è un indizio: le sue cifre non sommano né 5 né 10.

## Thermometers

thermometer-sentence = Lungo { $n ->
    [1] il termometro
   *[other] ogni termometro
} le cifre crescono dal bulbo alla punta.
thermometer-spoken = Termometro, dal bulbo: { $line }
thermometer-primer = Le cifre crescono a ogni passo dal bulbo tondo alla punta, anche saltandone alcune. Un termometro lungo lascia poco spazio: in una griglia 9×9 la terza casella su sei vale almeno 3 e al massimo 6. Cominciate dai più lunghi, e da quelli che incrociano una riga o un riquadro con cifre alte o basse già al loro posto.
# Where no grid of the book has boxes.
thermometer-primer--lines = Le cifre crescono a ogni passo dal bulbo tondo alla punta, anche saltandone alcune. Un termometro lungo lascia poco spazio: in una griglia 9×9 la terza casella su sei vale almeno 3 e al massimo 6. Cominciate dai più lunghi, e da quelli che incrociano una riga con cifre alte o basse già al loro posto.

## Windows

windows-sentence = Ogni finestra ombreggiata contiene ogni cifra una volta.
windows-spoken = Finestra: { $cells }
windows-primer = Le finestre ombreggiate sono riquadri in più, a una casella dal bordo e a una casella l’una dall’altra: ciascuna contiene ogni cifra una volta. Le righe da 2 a 4 contengono ogni cifra tre volte, e le due finestre che vi stanno ne prendono due, perciò anche le nove caselle accanto alle finestre contengono ogni cifra una volta. Cinque di questi gruppi nascosti di nove stanno tra le finestre di una griglia 9×9 e intorno a esse; è lì che lo schema si apre.

## X-sums

x-sum-sentence = { $n ->
    [1] Il numero
   *[other] Ogni numero
} preceduto da un piccolo × fuori dalla griglia è la somma delle prime X cifre della sua { $line ->
    [row] riga
    [column] colonna
   *[both] riga o colonna
} da quel lato, dove X è la prima di esse.
x-sum-zero = Se X vale 0, la somma è 0.
x-sum-spoken = { $n ->
    [1] Somma X
   *[other] Somme X
} { $side }: { $clues }
x-sum-primer = La cifra più vicina al numero, X, dice quante cifre sommare, essa compresa: 3, 8 e 1 davanti fanno 12, qualunque cosa segua. Le somme piccole vogliono una X piccola; 45 vuole 9. Chiedetevi prima quale X può raggiungere la somma: in una griglia 9×9, 10 vuole 2, 3 o 4 davanti.

## Latin squares

latin-primer = In un quadrato latino contano solo righe e colonne: ciascuna contiene ogni cifra una volta, e la griglia non chiede altro. Ogni cifra sta dunque una volta in ogni riga, e mai due volte in una stessa colonna. Quando una cifra manca in due righe e lì ha posto solo nelle stesse due colonne, in quelle colonne non va da nessun’altra parte. Poi guardate che cosa aggiungono i segni.
zero-primer = In una griglia le cui cifre cominciano da 0, ogni regola vale così com’è scritta, e uno 0 non aggiunge nulla a un totale. Gli esempi di queste pagine valgono per cifre a partire da 1; i loro numeri dunque cambiano: una riga di nove caselle con le cifre da 0 a 8 somma 36 e non 45; ha cinque cifre pari e quattro dispari; due caselle che fanno 3 contengono 0 e 3 oppure 1 e 2.
overlap-primer = Più griglie formano un solo schema: ciascuna segue le proprie regole e, dove due si sovrappongono, una stessa cifra vale per entrambe. Cominciate dove le cifre date sono più fitte e restate in una griglia finché si procede; poi riportate nella successiva ciò che avete trovato nei riquadri comuni. Un riquadro che due griglie condividono è spesso la chiave di entrambe: le sue cifre devono andar bene per le righe e le colonne dell’una e dell’altra.
holes-primer = Una casella nera non contiene cifre e non appartiene a nessuna riga né colonna. Nelle altre caselle ogni riga e ogni colonna contiene ancora ogni cifra una volta; perciò una cifra a cui vi restano pochi posti si colloca presto. Le cifre ai due lati di una casella nera si vedono lungo la riga o la colonna, ma non si toccano.
