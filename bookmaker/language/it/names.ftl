### What things are called: cells and digits in lists, houses, marks, techniques.
### “il” is a name with its article (“il termometro”, “l’anello”), “in”, “di” and “da” the same after those prepositions
### (“nella riga”, “della riga”, “dalla riga”), “i” several with their article. Digits stand without an article, which would be “l’” before 1 and 8.

quotation-marks = « » “ ”
alphabet = a b c d e f g h i j k l m n o p q r s t u v w x y z

## Lists

list-more = { $most }, { $next }
list-and = { $most } e { $last }
list-or = { $most } o { $last }
list-alike = { $most } con { $last }
clauses-more = { $most }, { $next }
clauses-or = { $most }, o { $last }
clauses-and = { $most }, e { $last }

# Where one thing is counted, messages have “un” or “una” of their own.
number = { $n ->
    [0] zero
    [1] uno
    [2] due
    [3] tre
    [4] quattro
    [5] cinque
    [6] sei
    [7] sette
    [8] otto
    [9] nove
    [10] dieci
    [11] undici
    [12] dodici
   *[other] { $n }
}

digits-run = { $first }–{ $last }
candidate = { $digit } in { $cell }
placed = { $digits } in { $cells }
tried = { OR($digits) } in { OR($cells) }

## Houses

house-any = { $divided ->
    [none] riga o colonna
    [regions] riga, colonna o regione
   *[boxes] riga, colonna o riquadro
}
    .one = { $divided ->
        [none] una riga o una colonna
        [regions] una riga, una colonna o una regione
       *[boxes] una riga, una colonna o un riquadro
    }
    .other = { $divided ->
        [none] un’altra riga o in un’altra colonna
        [regions] un’altra riga, in un’altra colonna o in un’altra regione
       *[boxes] un’altra riga, in un’altra colonna o in un altro riquadro
    }
house-row = la riga { $number }
    .in = nella riga { $number }
    .di = della riga { $number }
    .gender = feminine
    .short = la r{ $number }
    .in-short = nella r{ $number }
    .di-short = della r{ $number }
house-column = la colonna { $number }
    .in = nella colonna { $number }
    .di = della colonna { $number }
    .gender = feminine
    .short = la c{ $number }
    .in-short = nella c{ $number }
    .di-short = della c{ $number }
house-region = la regione { $letter }
    .in = nella regione { $letter }
    .di = della regione { $letter }
    .gender = feminine
house-box = { $place ->
    [middle-centre] il riquadro centrale
    [top-left] il riquadro in alto a sinistra
    [top-centre] il riquadro in alto al centro
    [top-right] il riquadro in alto a destra
    [middle-left] il riquadro al centro a sinistra
    [middle-right] il riquadro al centro a destra
    [bottom-left] il riquadro in basso a sinistra
    [bottom-centre] il riquadro in basso al centro
    [bottom-right] il riquadro in basso a destra
   *[other] il riquadro che comincia in { $cell }
}
    .in = { $place ->
    [middle-centre] nel riquadro centrale
    [top-left] nel riquadro in alto a sinistra
    [top-centre] nel riquadro in alto al centro
    [top-right] nel riquadro in alto a destra
    [middle-left] nel riquadro al centro a sinistra
    [middle-right] nel riquadro al centro a destra
    [bottom-left] nel riquadro in basso a sinistra
    [bottom-centre] nel riquadro in basso al centro
    [bottom-right] nel riquadro in basso a destra
   *[other] nel riquadro che comincia in { $cell }
}
    .di = { $place ->
    [middle-centre] del riquadro centrale
    [top-left] del riquadro in alto a sinistra
    [top-centre] del riquadro in alto al centro
    [top-right] del riquadro in alto a destra
    [middle-left] del riquadro al centro a sinistra
    [middle-right] del riquadro al centro a destra
    [bottom-left] del riquadro in basso a sinistra
    [bottom-centre] del riquadro in basso al centro
    [bottom-right] del riquadro in basso a destra
   *[other] del riquadro che comincia in { $cell }
}
    .gender = masculine
house-of-rule = { CASE($noun, "il") } in { $cell }
    .in = { CASE($noun, "in") } in { $cell }
    .di = { CASE($noun, "di") } in { $cell }
house-diagonals-falling = la diagonale discendente
    .in = nella diagonale discendente
    .di = della diagonale discendente
    .gender = feminine
house-diagonals-rising = la diagonale ascendente
    .in = nella diagonale ascendente
    .di = della diagonale ascendente
    .gender = feminine
house-disjoint-groups = il gruppo delle caselle al posto { $number } dei loro riquadri
    .in = nel gruppo delle caselle al posto { $number } dei loro riquadri
    .di = del gruppo delle caselle al posto { $number } dei loro riquadri
    .gender = masculine
house-disjoint-groups-of-nine = { $n ->
    [1] il gruppo delle caselle in alto a sinistra nei riquadri
    [2] il gruppo delle caselle in alto al centro nei riquadri
    [3] il gruppo delle caselle in alto a destra nei riquadri
    [4] il gruppo delle caselle al centro a sinistra nei riquadri
    [5] il gruppo delle caselle centrali dei riquadri
    [6] il gruppo delle caselle al centro a destra nei riquadri
    [7] il gruppo delle caselle in basso a sinistra nei riquadri
    [8] il gruppo delle caselle in basso al centro nei riquadri
   *[9] il gruppo delle caselle in basso a destra nei riquadri
}
    .in = { $n ->
    [1] nel gruppo delle caselle in alto a sinistra nei riquadri
    [2] nel gruppo delle caselle in alto al centro nei riquadri
    [3] nel gruppo delle caselle in alto a destra nei riquadri
    [4] nel gruppo delle caselle al centro a sinistra nei riquadri
    [5] nel gruppo delle caselle centrali dei riquadri
    [6] nel gruppo delle caselle al centro a destra nei riquadri
    [7] nel gruppo delle caselle in basso a sinistra nei riquadri
    [8] nel gruppo delle caselle in basso al centro nei riquadri
   *[9] nel gruppo delle caselle in basso a destra nei riquadri
}
    .di = { $n ->
    [1] del gruppo delle caselle in alto a sinistra nei riquadri
    [2] del gruppo delle caselle in alto al centro nei riquadri
    [3] del gruppo delle caselle in alto a destra nei riquadri
    [4] del gruppo delle caselle al centro a sinistra nei riquadri
    [5] del gruppo delle caselle centrali dei riquadri
    [6] del gruppo delle caselle al centro a destra nei riquadri
    [7] del gruppo delle caselle in basso a sinistra nei riquadri
    [8] del gruppo delle caselle in basso al centro nei riquadri
   *[9] del gruppo delle caselle in basso a destra nei riquadri
}
    .gender = masculine
house-windows-rows = la parte delle righe { $number }–{ $last } fuori dalle finestre
    .in = nella parte delle righe { $number }–{ $last } fuori dalle finestre
    .di = della parte delle righe { $number }–{ $last } fuori dalle finestre
    .gender = feminine
    .short = la parte delle r{ $number }–{ $last } fuori dalle finestre
    .in-short = nella parte delle r{ $number }–{ $last } fuori dalle finestre
    .di-short = della parte delle r{ $number }–{ $last } fuori dalle finestre
house-windows-columns = la parte delle colonne { $number }–{ $last } fuori dalle finestre
    .in = nella parte delle colonne { $number }–{ $last } fuori dalle finestre
    .di = della parte delle colonne { $number }–{ $last } fuori dalle finestre
    .gender = feminine
    .short = la parte delle c{ $number }–{ $last } fuori dalle finestre
    .in-short = nella parte delle c{ $number }–{ $last } fuori dalle finestre
    .di-short = della parte delle c{ $number }–{ $last } fuori dalle finestre
house-windows-crossing = l’incrocio delle righe e delle colonne che passano tra le finestre
    .in = nell’incrocio delle righe e delle colonne che passano tra le finestre
    .di = dell’incrocio delle righe e delle colonne che passano tra le finestre
    .gender = masculine
houses-row = le righe { $numbers }
    .in = nelle righe { $numbers }
    .di = delle righe { $numbers }
    .short = le r{ $numbers }
    .in-short = nelle r{ $numbers }
    .di-short = delle r{ $numbers }
houses-column = le colonne { $numbers }
    .in = nelle colonne { $numbers }
    .di = delle colonne { $numbers }
    .short = le c{ $numbers }
    .in-short = nelle c{ $numbers }
    .di-short = delle c{ $numbers }
whole-grid = tutta la griglia
# After “row”, “column”, or “rows” with several numbers, where grids overlap.
line-in-grid = { $number } della griglia { $grid }

## Marks, by where they are anchored

mark-line = { CASE($noun, "il") } da { $first } a { $last }
mark-at = { $value ->
    [none] { CASE($noun, "il") } in { $cell }
   *[other] { CASE($noun, "il") } da { $value } in { $cell }
}
mark-between = { $value ->
    [none] { CASE($noun, "il") } tra { $one } e { $other }
   *[other] { CASE($noun, "il") } { $value } tra { $one } e { $other }
}
mark-between-missing = il confine senza { $noun } tra { $one } e { $other }
    .gender = masculine
# Where a clue outside the grid stands.
beside-line = { $side ->
    [left] a sinistra della riga { $line }
    [right] a destra della riga { $line }
    [top] sopra la colonna { $line }
   *[bottom] sotto la colonna { $line }
}
    .short = { $side ->
        [left] a sinistra della r{ $line }
        [right] a destra della r{ $line }
        [top] sopra la c{ $line }
       *[bottom] sotto la c{ $line }
    }
mark-outside = { CASE($noun, "il") } { $value } { $where }
mark-slanting = { CASE($noun, "il") } { $value } che parte da { $start } { $way ->
    [down-right] verso il basso a destra
    [down-left] verso il basso a sinistra
    [up-right] verso l’alto a destra
   *[up-left] verso l’alto a sinistra
}
mark-lettered = { CASE($noun, "il") } { $letter }
mark-joined = { CASE($noun, "i") } che collegano { $cells }
mark-whole = { CASE($noun, "il") }
mark-again = { GENDER($noun) ->
    [feminine] la stessa { $noun }
   *[masculine] lo stesso { $noun }
}
marks = { CASE($noun, "i") }

## Kinds of rules: one mark, several, the heading

kind-arithmetic-cage = gabbia aritmetica
    .many = gabbie aritmetiche
    .title = Gabbie aritmetiche
    .gender = feminine
    .il = la gabbia aritmetica
    .in = nella gabbia aritmetica
    .di = della gabbia aritmetica
    .da = dalla gabbia aritmetica
    .i = le gabbie aritmetiche
kind-arrow = freccia
    .many = frecce
    .title = Frecce
    .gender = feminine
    .il = la freccia
    .in = nella freccia
    .di = della freccia
    .da = dalla freccia
    .i = le frecce
kind-barred-sums = divieto di certe somme
    .many = divieti di certe somme
    .title = Somme vietate
    .gender = masculine
    .il = il divieto di certe somme
    .in = nel divieto di certe somme
    .di = del divieto di certe somme
    .da = dal divieto di certe somme
    .i = i divieti di certe somme
kind-border-values = numero tra due caselle
    .many = numeri tra due caselle
    .title = Numeri tra due caselle
    .gender = masculine
    .il = il numero tra due caselle
    .in = nel numero tra due caselle
    .di = del numero tra due caselle
    .da = dal numero tra due caselle
    .i = i numeri tra due caselle
kind-bounded-line = linea delimitata
    .many = linee delimitate
    .title = Linee delimitate
    .gender = feminine
    .il = la linea delimitata
    .in = nella linea delimitata
    .di = della linea delimitata
    .da = dalla linea delimitata
    .i = le linee delimitate
kind-cage = gabbia
    .many = gabbie
    .title = Gabbie
    .gender = feminine
    .il = la gabbia
    .in = nella gabbia
    .di = della gabbia
    .da = dalla gabbia
    .i = le gabbie
kind-clone = clone
    .many = cloni
    .title = Cloni
    .gender = masculine
    .il = il clone
    .in = nel clone
    .di = del clone
    .da = dal clone
    .i = i cloni
kind-consecutive-bars = barretta
    .many = barrette
    .title = Barrette di consecutivi
    .gender = feminine
    .il = la barretta
    .in = nella barretta
    .di = della barretta
    .da = dalla barretta
    .i = le barrette
kind-consecutive-line = linea di consecutivi
    .many = linee di consecutivi
    .title = Linee di consecutivi
    .gender = feminine
    .il = la linea di consecutivi
    .in = nella linea di consecutivi
    .di = della linea di consecutivi
    .da = dalla linea di consecutivi
    .i = le linee di consecutivi
kind-counting-area = area di conteggio
    .many = aree di conteggio
    .title = Aree di conteggio
    .gender = feminine
    .il = l’area di conteggio
    .in = nell’area di conteggio
    .di = dell’area di conteggio
    .da = dall’area di conteggio
    .i = le aree di conteggio
kind-diagonal-sum = somma diagonale
    .many = somme diagonali
    .title = Somme diagonali
    .gender = feminine
    .il = la somma diagonale
    .in = nella somma diagonale
    .di = della somma diagonale
    .da = dalla somma diagonale
    .i = le somme diagonali
kind-diagonals = diagonale
    .many = diagonali
    .title = Diagonali
    .gender = feminine
    .il = la diagonale
    .in = nella diagonale
    .di = della diagonale
    .da = dalla diagonale
    .i = le diagonali
kind-difference-line = linea delle differenze
    .many = linee delle differenze
    .title = Linee delle differenze
    .gender = feminine
    .il = la linea delle differenze
    .in = nella linea delle differenze
    .di = della linea delle differenze
    .da = dalla linea delle differenze
    .i = le linee delle differenze
kind-disjoint-groups = gruppo disgiunto
    .many = gruppi disgiunti
    .title = Gruppi disgiunti
    .gender = masculine
    .il = il gruppo disgiunto
    .in = nel gruppo disgiunto
    .di = del gruppo disgiunto
    .da = dal gruppo disgiunto
    .i = i gruppi disgiunti
kind-dots = pallino
    .many = pallini
    .title = Pallini
    .gender = masculine
    .il = il pallino
    .in = nel pallino
    .di = del pallino
    .da = dal pallino
    .i = i pallini
kind-equal-part-line = linea a parti uguali
    .many = linee a parti uguali
    .title = Linee a parti uguali
    .gender = feminine
    .il = la linea a parti uguali
    .in = nella linea a parti uguali
    .di = della linea a parti uguali
    .da = dalla linea a parti uguali
    .i = le linee a parti uguali
kind-even-step-line = linea a passo costante
    .many = linee a passo costante
    .title = Linee a passo costante
    .gender = feminine
    .il = la linea a passo costante
    .in = nella linea a passo costante
    .di = della linea a passo costante
    .da = dalla linea a passo costante
    .i = le linee a passo costante
kind-extra-region = regione aggiuntiva
    .many = regioni aggiuntive
    .title = Regioni aggiuntive
    .gender = feminine
    .il = la regione aggiuntiva
    .in = nella regione aggiuntiva
    .di = della regione aggiuntiva
    .da = dalla regione aggiuntiva
    .i = le regioni aggiuntive
kind-first-seen = cifra di testa
    .many = cifre di testa
    .title = Cifre di testa
    .gender = feminine
    .il = la cifra di testa
    .in = nella cifra di testa
    .di = della cifra di testa
    .da = dalla cifra di testa
    .i = le cifre di testa
kind-fortress = fortezza
    .many = fortezze
    .title = Fortezze
    .gender = feminine
    .il = la fortezza
    .in = nella fortezza
    .di = della fortezza
    .da = dalla fortezza
    .i = le fortezze
kind-frame-product = prodotto di bordo
    .many = prodotti di bordo
    .title = Prodotti di bordo
    .gender = masculine
    .il = il prodotto di bordo
    .in = nel prodotto di bordo
    .di = del prodotto di bordo
    .da = dal prodotto di bordo
    .i = i prodotti di bordo
kind-frame-sum = somma di bordo
    .many = somme di bordo
    .title = Somme di bordo
    .gender = feminine
    .il = la somma di bordo
    .in = nella somma di bordo
    .di = della somma di bordo
    .da = dalla somma di bordo
    .i = le somme di bordo
kind-hinge-line = linea a cerniera
    .many = linee a cerniera
    .title = Linee a cerniera
    .gender = feminine
    .il = la linea a cerniera
    .in = nella linea a cerniera
    .di = della linea a cerniera
    .da = dalla linea a cerniera
    .i = le linee a cerniera
kind-inequality = segno di disuguaglianza
    .many = segni di disuguaglianza
    .title = Disuguaglianze
    .gender = masculine
    .il = il segno di disuguaglianza
    .in = nel segno di disuguaglianza
    .di = del segno di disuguaglianza
    .da = dal segno di disuguaglianza
    .i = i segni di disuguaglianza
kind-king = mossa del re
    .many = mosse del re
    .title = Mossa del re
    .gender = feminine
    .il = la mossa del re
    .in = nella mossa del re
    .di = della mossa del re
    .da = dalla mossa del re
    .i = le mosse del re
kind-knight = mossa del cavallo
    .many = mosse del cavallo
    .title = Mossa del cavallo
    .gender = feminine
    .il = la mossa del cavallo
    .in = nella mossa del cavallo
    .di = della mossa del cavallo
    .da = dalla mossa del cavallo
    .i = le mosse del cavallo
kind-limits = limite
    .many = limiti
    .title = Limiti
    .gender = masculine
    .il = il limite
    .in = nel limite
    .di = del limite
    .da = dal limite
    .i = i limiti
kind-low-high-line = linea basso-alto
    .many = linee basso-alto
    .title = Linee basso-alto
    .gender = feminine
    .il = la linea basso-alto
    .in = nella linea basso-alto
    .di = della linea basso-alto
    .da = dalla linea basso-alto
    .i = le linee basso-alto
kind-no-doubles = divieto dei doppi
    .many = divieti dei doppi
    .title = Senza doppi
    .gender = masculine
    .il = il divieto dei doppi
    .in = nel divieto dei doppi
    .di = del divieto dei doppi
    .da = dal divieto dei doppi
    .i = i divieti dei doppi
kind-non-consecutive = divieto dei vicini consecutivi
    .many = divieti dei vicini consecutivi
    .title = Senza consecutivi
    .gender = masculine
    .il = il divieto dei vicini consecutivi
    .in = nel divieto dei vicini consecutivi
    .di = del divieto dei vicini consecutivi
    .da = dal divieto dei vicini consecutivi
    .i = i divieti dei vicini consecutivi
kind-numbered-room = stanza numerata
    .many = stanze numerate
    .title = Stanze numerate
    .gender = feminine
    .il = la stanza numerata
    .in = nella stanza numerata
    .di = della stanza numerata
    .da = dalla stanza numerata
    .i = le stanze numerate
kind-open-cage = gabbia aperta
    .many = gabbie aperte
    .title = Gabbie aperte
    .gender = feminine
    .il = la gabbia aperta
    .in = nella gabbia aperta
    .di = della gabbia aperta
    .da = dalla gabbia aperta
    .i = le gabbie aperte
kind-palindrome = palindromo
    .many = palindromi
    .title = Palindromi
    .gender = masculine
    .il = il palindromo
    .in = nel palindromo
    .di = del palindromo
    .da = dal palindromo
    .i = i palindromi
kind-parity = casella pari o dispari
    .many = caselle pari e dispari
    .title = Pari e dispari
    .gender = feminine
    .il = la casella pari o dispari
    .in = nella casella pari o dispari
    .di = della casella pari o dispari
    .da = dalla casella pari o dispari
    .i = le caselle pari e dispari
kind-parity-line = linea di parità
    .many = linee di parità
    .title = Linee di parità
    .gender = feminine
    .il = la linea di parità
    .in = nella linea di parità
    .di = della linea di parità
    .da = dalla linea di parità
    .i = le linee di parità
kind-parity-run = serie di parità
    .many = serie di parità
    .title = Serie di parità
    .gender = feminine
    .il = la serie di parità
    .in = nella serie di parità
    .di = della serie di parità
    .da = dalla serie di parità
    .i = le serie di parità
kind-peaks = tetto o conca
    .many = tetti e conche
    .title = Cime e conche
    .gender = masculine
    .il = il tetto o la conca
    .in = nel tetto o nella conca
    .di = del tetto o della conca
    .da = dal tetto o dalla conca
    .i = i tetti e conche
kind-pointing = casella con freccia
    .many = caselle con freccia
    .title = Caselle con freccia
    .gender = feminine
    .il = la casella con freccia
    .in = nella casella con freccia
    .di = della casella con freccia
    .da = dalla casella con freccia
    .i = le caselle con freccia
kind-quadruple = anello
    .many = anelli
    .title = Anelli
    .gender = masculine
    .il = l’anello
    .in = nell’anello
    .di = dell’anello
    .da = dall’anello
    .i = gli anelli
kind-resting-thermometer = termometro con soste
    .many = termometri con soste
    .title = Termometri con soste
    .gender = masculine
    .il = il termometro con soste
    .in = nel termometro con soste
    .di = del termometro con soste
    .da = dal termometro con soste
    .i = i termometri con soste
kind-rise-or-fall = pendio
    .many = pendii
    .title = Salite e discese
    .gender = masculine
    .il = il pendio
    .in = nel pendio
    .di = del pendio
    .da = dal pendio
    .i = i pendii
kind-rising-run = serie crescente
    .many = serie crescenti
    .title = Serie crescenti
    .gender = feminine
    .il = la serie crescente
    .in = nella serie crescente
    .di = della serie crescente
    .da = dalla serie crescente
    .i = le serie crescenti
kind-same-sum-line = linea a somma costante
    .many = linee a somma costante
    .title = Linee a somma costante
    .gender = feminine
    .il = la linea a somma costante
    .in = nella linea a somma costante
    .di = della linea a somma costante
    .da = dalla linea a somma costante
    .i = le linee a somma costante
kind-sandwich = somma sandwich
    .many = somme sandwich
    .title = Somme sandwich
    .gender = feminine
    .il = la somma sandwich
    .in = nella somma sandwich
    .di = della somma sandwich
    .da = dalla somma sandwich
    .i = le somme sandwich
kind-skyscraper = numero di grattacieli
    .many = numeri di grattacieli
    .title = Grattacieli
    .gender = masculine
    .il = il numero di grattacieli
    .in = nel numero di grattacieli
    .di = del numero di grattacieli
    .da = dal numero di grattacieli
    .i = i numeri di grattacieli
kind-square-block = quadrato incorniciato
    .many = quadrati incorniciati
    .title = Quadrati incorniciati
    .gender = masculine
    .il = il quadrato incorniciato
    .in = nel quadrato incorniciato
    .di = del quadrato incorniciato
    .da = dal quadrato incorniciato
    .i = i quadrati incorniciati
kind-sum-marks = segno di somma
    .many = segni di somma
    .title = Segni V e X
    .gender = masculine
    .il = il segno di somma
    .in = nel segno di somma
    .di = del segno di somma
    .da = dal segno di somma
    .i = i segni di somma
kind-thermometer = termometro
    .many = termometri
    .title = Termometri
    .gender = masculine
    .il = il termometro
    .in = nel termometro
    .di = del termometro
    .da = dal termometro
    .i = i termometri
kind-windows = finestra
    .many = finestre
    .title = Finestre
    .gender = feminine
    .il = la finestra
    .in = nella finestra
    .di = della finestra
    .da = dalla finestra
    .i = le finestre
kind-x-sum = somma X
    .many = somme X
    .title = Somme X
    .gender = feminine
    .il = la somma X
    .in = nella somma X
    .di = della somma X
    .da = dalla somma X
    .i = le somme X

## Marks that are called otherwise

marks-king = la mossa del re
marks-knight = la mossa del cavallo
marks-non-consecutive = il divieto dei vicini consecutivi
mark-non-consecutive = il confine tra { $one } e { $other }
    .gender = masculine
mark-non-consecutive-whole = il divieto dei vicini consecutivi
    .gender = masculine
mark-border-values-sum = la somma { $value } tra { $one } e { $other }
    .gender = feminine
mark-border-values-difference = la differenza { $value } tra { $one } e { $other }
    .gender = feminine
mark-border-values-product = il prodotto { $value } tra { $one } e { $other }
mark-border-values-quotient = il quoziente { $value } tra { $one } e { $other }
mark-border-values-missing = il confine senza numero tra { $one } e { $other }
    .gender = masculine
mark-non-consecutive-corner = l’angolo tra { $one } e { $other }
    .gender = masculine
marks-no-doubles = il divieto dei doppi
mark-no-doubles = il confine tra { $one } e { $other }
    .gender = masculine
mark-no-doubles-corner = l’angolo tra { $one } e { $other }
    .gender = masculine
mark-no-doubles-whole = il divieto dei doppi
    .gender = masculine
marks-barred-sums = il divieto di certe somme
mark-barred-sums = il confine tra { $one } e { $other }
    .gender = masculine
mark-barred-sums-corner = l’angolo tra { $one } e { $other }
    .gender = masculine
mark-barred-sums-whole = il divieto di certe somme
    .gender = masculine
mark-dots-white = il pallino bianco tra { $one } e { $other }
mark-dots-black = il pallino nero tra { $one } e { $other }
mark-sum-marks-V = la V tra { $one } e { $other }
    .gender = feminine
mark-sum-marks-X = la X tra { $one } e { $other }
    .gender = feminine
mark-sum-marks-missing = il confine senza V né X tra { $one } e { $other }
    .gender = masculine
mark-rise-or-fall-rise = la salita { $where }
    .gender = feminine
mark-rise-or-fall-fall = la discesa { $where }
    .gender = feminine
mark-rise-or-fall-missing = il bordo senza barre { $where }
    .gender = masculine
mark-rising-run-joined = le serie crescenti che raggiungono { $cells }
mark-parity-run-joined = le serie di parità ai due capi di { $cells }
mark-rise-or-fall-joined = le salite e le discese che raggiungono { $cells }
mark-inequality = il segno tra { $one } e { $other }
mark-inequality-joined = i segni che collegano { $cells }
mark-limits-joined = i limiti in { $cells }
mark-fortress-joined = le fortezze in { $cells }
mark-pointing = la freccia in { $cell }
mark-parity-even = il quadrato in { $cell }
    .gender = masculine
mark-parity-odd = il cerchio in { $cell }
    .gender = masculine
mark-parity-joined = le caselle pari e dispari tra { $cells }
mark-peaks-greater = il tetto in { $cell }
mark-peaks-smaller = la conca in { $cell }
    .gender = feminine
mark-peaks-joined = i tetti e le conche in { $cells }
mark-cage-joined = le gabbie che coprono { $cells }
mark-arithmetic-cage = la gabbia aritmetica { $value } in { $cell }
mark-arithmetic-cage-joined = le gabbie aritmetiche che coprono { $cells }
mark-counting-area = l’area di conteggio con { $value } in { $cell }
mark-square-block-magic = il quadrato magico in { $cell }
mark-open-cage-even = la gabbia pari in { $cell }
mark-open-cage-odd = la gabbia dispari in { $cell }
mark-open-cage-lettered = il gruppo delle gabbie { $letter }
    .gender = masculine

## Techniques: plainly, one of them, several ($count in words)

technique-last-cell = ultima casella vuota
    .one = un’ultima casella vuota
    .many = { $count } ultime caselle vuote
technique-hidden-single = singolo nascosto
    .one = un singolo nascosto
    .many = { $count } singoli nascosti
technique-naked-single = singolo nudo
    .one = un singolo nudo
    .many = { $count } singoli nudi
technique-locked-candidates = candidati bloccati
    .one = dei candidati bloccati
    .many = { $count } gruppi di candidati bloccati
technique-naked-pair = coppia nuda
    .one = una coppia nuda
    .many = { $count } coppie nude
technique-naked-triple = terna nuda
    .one = una terna nuda
    .many = { $count } terne nude
technique-naked-quad = quaterna nuda
    .one = una quaterna nuda
    .many = { $count } quaterne nude
technique-hidden-pair = coppia nascosta
    .one = una coppia nascosta
    .many = { $count } coppie nascoste
technique-hidden-triple = terna nascosta
    .one = una terna nascosta
    .many = { $count } terne nascoste
technique-hidden-quad = quaterna nascosta
    .one = una quaterna nascosta
    .many = { $count } quaterne nascoste
technique-x-wing = X-wing
    .one = un X-wing
    .many = { $count } X-wing
technique-swordfish = pesce spada
    .one = un pesce spada
    .many = { $count } pesci spada
technique-jellyfish = medusa
    .one = una medusa
    .many = { $count } meduse
technique-finned-x-wing = X-wing con pinna
    .one = un X-wing con pinna
    .many = { $count } X-wing con pinna
technique-finned-swordfish = pesce spada con pinna
    .one = un pesce spada con pinna
    .many = { $count } pesci spada con pinna
technique-finned-jellyfish = medusa con pinna
    .one = una medusa con pinna
    .many = { $count } meduse con pinna
technique-xy-wing = XY-wing
    .one = un XY-wing
    .many = { $count } XY-wing
technique-xyz-wing = XYZ-wing
    .one = un XYZ-wing
    .many = { $count } XYZ-wing
technique-w-wing = W-wing
    .one = un W-wing
    .many = { $count } W-wing
technique-single-digit-chain = catena di una sola cifra
    .one = una catena di una sola cifra
    .many = { $count } catene di una sola cifra
technique-alternating-chain = catena alternata
    .one = una catena alternata
    .many = { $count } catene alternate
technique-seen-by-all-places = casella vista da tutti i posti di una cifra
    .one = una casella vista da tutti i posti di una cifra
    .many = { $count } caselle viste da tutti i posti di una cifra
technique-extended-chain = catena estesa
    .one = una catena estesa
    .many = { $count } catene estese
technique-either-way = cifra esclusa in ogni caso
    .one = una cifra esclusa in ogni caso
    .many = { $count } cifre escluse in ogni caso
technique-what-if = ipotesi
    .one = un’ipotesi
    .many = { $count } ipotesi
technique-beyond = passo oltre la scala
    .one = un passo oltre la scala
    .many = { $count } passi oltre la scala
