### What things are called. A house has `.where` (“im mittleren Block”), `.of` (“des mittleren Blocks”); kinds of rules
### have a gender and, as compound nouns, no other case.

# What the editor’s plain quotation marks become: outer pair, inner pair, with a space between them.
quotation-marks = „ “ ‚ ‘
# The letters in the order of a dictionary; ä, ö, ü are sorted as a, o, u.
alphabet = a b c d e f g h i j k l m n o p q r s t u v w x y z

## Lists

list-more = { $most }, { $next }
list-and = { $most } und { $last }
list-or = { $most } oder { $last }
# Cells that hold the same digit.
list-alike = { $most } mit { $last }
# Clauses that hold commas or “and” themselves.
clauses-more = { $most }, { $next }
clauses-or = { $most } oder { $last }
clauses-and = { $most } sowie { $last }

# How many things, in words as far as twelve.
number = { $n ->
    [0] null
    [1] ein
    [2] zwei
    [3] drei
    [4] vier
    [5] fünf
    [6] sechs
    [7] sieben
    [8] acht
    [9] neun
    [10] zehn
    [11] elf
    [12] zwölf
   *[other] { $n }
}

# Four digits in a row, or more.
digits-run = { $first } bis { $last }
candidate = { $digit } in { $cell }
placed = { $digits } in { $cells }
tried = { OR($digits) } in { OR($cells) }

## Houses

# Any house of the grid itself, by what the grid is divided into, in the dative.
house-any = { $divided ->
    [none] einer Zeile oder Spalte
    [regions] einer Zeile, einer Spalte oder einem Gebiet
   *[boxes] einer Zeile, einer Spalte oder einem Block
}
house-row = Zeile { $number }
    .where = in Zeile { $number }
    .of = der Zeile { $number }
    .short = z{ $number }
    .where-short = in z{ $number }
    .of-short = der z{ $number }
house-column = Spalte { $number }
    .where = in Spalte { $number }
    .of = der Spalte { $number }
    .short = s{ $number }
    .where-short = in s{ $number }
    .of-short = der s{ $number }
house-region = Gebiet { $letter }
    .where = in Gebiet { $letter }
    .of = des Gebiets { $letter }
house-box = { $place ->
    [middle-centre] der mittlere Block
    [top-left] der Block oben links
    [top-centre] der Block oben in der Mitte
    [top-right] der Block oben rechts
    [middle-left] der Block links in der Mitte
    [middle-right] der Block rechts in der Mitte
    [bottom-left] der Block unten links
    [bottom-centre] der Block unten in der Mitte
    [bottom-right] der Block unten rechts
   *[other] der Block ab { $cell }
}
    .where = { $place ->
        [middle-centre] im mittleren Block
        [top-left] im Block oben links
        [top-centre] im Block oben in der Mitte
        [top-right] im Block oben rechts
        [middle-left] im Block links in der Mitte
        [middle-right] im Block rechts in der Mitte
        [bottom-left] im Block unten links
        [bottom-centre] im Block unten in der Mitte
        [bottom-right] im Block unten rechts
       *[other] im Block ab { $cell }
    }
    .of = { $place ->
        [middle-centre] des mittleren Blocks
        [top-left] des Blocks oben links
        [top-centre] des Blocks oben in der Mitte
        [top-right] des Blocks oben rechts
        [middle-left] des Blocks links in der Mitte
        [middle-right] des Blocks rechts in der Mitte
        [bottom-left] des Blocks unten links
        [bottom-centre] des Blocks unten in der Mitte
        [bottom-right] des Blocks unten rechts
       *[other] des Blocks ab { $cell }
    }
# Houses that a rule adds.
house-of-rule = { GENDER($noun) ->
    [feminine] die
    [neuter] das
   *[masculine] der
} { $noun } ab { $cell }
    .where = { GENDER($noun) ->
        [feminine] in der
       *[masculine] im
    } { $noun } ab { $cell }
    .of = von { GENDER($noun) ->
        [feminine] der
       *[masculine] dem
    } { $noun } ab { $cell }
house-diagonals-falling = die fallende Diagonale
    .where = auf der fallenden Diagonale
    .of = der fallenden Diagonale
house-diagonals-rising = die steigende Diagonale
    .where = auf der steigenden Diagonale
    .of = der steigenden Diagonale
house-disjoint-groups = die Gruppe der { $number }. Felder aller Blöcke
    .where = in der Gruppe der { $number }. Felder aller Blöcke
    .of = der Gruppe der { $number }. Felder aller Blöcke
house-disjoint-groups-of-nine = die Gruppe der { house-disjoint-groups-of-nine.place }
    .where = in der Gruppe der { house-disjoint-groups-of-nine.place }
    .of = der Gruppe der { house-disjoint-groups-of-nine.place }
    .place = { $n ->
        [1] Blockfelder oben links
        [2] Blockfelder oben in der Mitte
        [3] Blockfelder oben rechts
        [4] Blockfelder links in der Mitte
        [5] Blockfelder genau in der Mitte
        [6] Blockfelder rechts in der Mitte
        [7] Blockfelder unten links
        [8] Blockfelder unten in der Mitte
       *[9] Blockfelder unten rechts
    }
house-windows-rows = der Teil der Zeilen { $number } bis { $last } außerhalb der Fenster
    .where = im Teil der Zeilen { $number } bis { $last } außerhalb der Fenster
    .of = des Teils der Zeilen { $number } bis { $last } außerhalb der Fenster
    .short = der Teil der z{ $number }-{ $last } außerhalb der Fenster
    .where-short = im Teil der z{ $number }-{ $last } außerhalb der Fenster
    .of-short = des Teils der z{ $number }-{ $last } außerhalb der Fenster
house-windows-columns = der Teil der Spalten { $number } bis { $last } außerhalb der Fenster
    .where = im Teil der Spalten { $number } bis { $last } außerhalb der Fenster
    .of = des Teils der Spalten { $number } bis { $last } außerhalb der Fenster
    .short = der Teil der s{ $number }-{ $last } außerhalb der Fenster
    .where-short = im Teil der s{ $number }-{ $last } außerhalb der Fenster
    .of-short = des Teils der s{ $number }-{ $last } außerhalb der Fenster
house-windows-crossing = die Kreuzung der Zeilen und Spalten zwischen den Fenstern
    .where = auf der Kreuzung der Zeilen und Spalten zwischen den Fenstern
    .of = der Kreuzung der Zeilen und Spalten zwischen den Fenstern
houses-row = die Zeilen { $numbers }
    .where = in den Zeilen { $numbers }
    .short = die z{ $numbers }
    .where-short = in den z{ $numbers }
houses-column = die Spalten { $numbers }
    .where = in den Spalten { $numbers }
    .short = die s{ $numbers }
    .where-short = in den s{ $numbers }
whole-grid = das ganze Diagramm
# After “row”, “column”, or “rows” with several numbers, where grids overlap.
line-in-grid = { $number } von Diagramm { $grid }

## Marks, by where they are anchored; always the subject of their sentence

mark-line = { GENDER($noun) ->
    [feminine] die
    [neuter] das
   *[masculine] der
} { $noun } von { $first } nach { $last }
mark-at = { GENDER($noun) ->
    [feminine] die
    [neuter] das
   *[masculine] der
} { $noun } { $value ->
    [none] bei { $cell }
   *[other] mit { $value } bei { $cell }
}
mark-between = { GENDER($noun) ->
    [feminine] die
    [neuter] das
   *[masculine] der
} { $noun } { $value ->
    [none] zwischen { $one } und { $other }
   *[other] { $value } zwischen { $one } und { $other }
}
mark-between-missing = { GENDER($noun) ->
    [feminine] die fehlende
    [neuter] das fehlende
   *[masculine] der fehlende
} { $noun } zwischen { $one } und { $other }
# Where a clue outside the grid stands.
beside-line = { $side ->
    [left] links von Zeile { $line }
    [right] rechts von Zeile { $line }
    [top] über Spalte { $line }
   *[bottom] unter Spalte { $line }
}
    .short = { $side ->
        [left] links von z{ $line }
        [right] rechts von z{ $line }
        [top] über s{ $line }
       *[bottom] unter s{ $line }
    }
mark-outside = { GENDER($noun) ->
    [feminine] die
    [neuter] das
   *[masculine] der
} { $noun } { $value } { $where }
mark-slanting = { GENDER($noun) ->
    [feminine] die
    [neuter] das
   *[masculine] der
} { $noun } { $value } von { $start } nach { $way ->
    [down-right] rechts unten
    [down-left] links unten
    [up-right] rechts oben
   *[up-left] links oben
}
mark-lettered = { GENDER($noun) ->
    [feminine] die
    [neuter] das
   *[masculine] der
} { $noun } { $letter }
mark-joined = die { $nouns } bei { $cells }
mark-whole = { GENDER($noun) ->
    [feminine] die
    [neuter] das
   *[masculine] der
} { $noun }
# A mark that was named just before.
mark-again = { GENDER($noun) ->
    [feminine] dieselbe
    [neuter] dasselbe
   *[masculine] derselbe
} { $noun }
# All marks of a kind; “die” in the nominative and the accusative.
marks = die { $nouns }

## Kinds of rules

kind-arithmetic-cage = Rechenkäfig
    .many = Rechenkäfige
    .title = Rechenkäfige
    .gender = masculine
kind-arrow = Pfeil
    .many = Pfeile
    .title = Pfeile
    .gender = masculine
kind-barred-sums = Summenverbot
    .many = Summenverbote
    .title = Verbotene Summen
    .gender = neuter
kind-border-values = Grenzzahl
    .many = Grenzzahlen
    .title = Grenzzahlen
    .gender = feminine
kind-bounded-line = Klammerlinie
    .many = Klammerlinien
    .title = Klammerlinien
    .gender = feminine
kind-cage = Käfig
    .many = Käfige
    .title = Käfige
    .gender = masculine
kind-clone = Klon
    .many = Klone
    .title = Klone
    .gender = masculine
kind-consecutive-bars = Balken
    .many = Balken
    .title = Nachbarbalken
    .gender = masculine
kind-consecutive-line = Folgelinie
    .many = Folgelinien
    .title = Folgelinien
    .gender = feminine
kind-counting-area = Zählgebiet
    .many = Zählgebiete
    .title = Zählgebiete
    .gender = neuter
kind-diagonal-sum = Diagonalsumme
    .many = Diagonalsummen
    .title = Diagonalsummen
    .gender = feminine
kind-diagonals = Diagonale
    .many = Diagonalen
    .title = Diagonalen
    .gender = feminine
kind-difference-line = Differenzlinie
    .many = Differenzlinien
    .title = Differenzlinien
    .gender = feminine
kind-disjoint-groups = Positionsgruppe
    .many = Positionsgruppen
    .title = Positionsgruppen
    .gender = feminine
kind-dots = Punkt
    .many = Punkte
    .title = Punkte
    .gender = masculine
kind-equal-part-line = Abschnittslinie
    .many = Abschnittslinien
    .title = Abschnittslinien
    .gender = feminine
kind-even-step-line = Gleichschrittlinie
    .many = Gleichschrittlinien
    .title = Gleichschrittlinien
    .gender = feminine
kind-extra-region = Zusatzgebiet
    .many = Zusatzgebiete
    .title = Zusatzgebiete
    .gender = neuter
kind-first-seen = Vorderziffer
    .many = Vorderziffern
    .title = Vorderziffern
    .gender = feminine
kind-fortress = Festung
    .many = Festungen
    .title = Festungen
    .gender = feminine
kind-frame-product = Randprodukt
    .many = Randprodukte
    .title = Randprodukte
    .gender = neuter
kind-frame-sum = Randsumme
    .many = Randsummen
    .title = Randsummen
    .gender = feminine
kind-hinge-line = Scharnierlinie
    .many = Scharnierlinien
    .title = Scharnierlinien
    .gender = feminine
kind-inequality = Ungleichheitszeichen
    .many = Ungleichheitszeichen
    .title = Größer und kleiner
    .gender = neuter
kind-king = Königszug
    .many = Königszüge
    .title = Königszug
    .gender = masculine
kind-knight = Springerzug
    .many = Springerzüge
    .title = Springerzug
    .gender = masculine
kind-limits = Einschränkung
    .many = Einschränkungen
    .title = Einschränkungen
    .gender = feminine
kind-low-high-line = Tief-hoch-Linie
    .many = Tief-hoch-Linien
    .title = Tief-hoch-Linien
    .gender = feminine
kind-no-doubles = Doppelverbot
    .many = Doppelverbote
    .title = Kein Doppeltes
    .gender = neuter
kind-non-consecutive = Folgeverbot
    .many = Folgeverbote
    .title = Keine Folgeziffern
    .gender = neuter
kind-numbered-room = Zimmer
    .many = Zimmer
    .title = Nummerierte Zimmer
    .gender = neuter
kind-open-cage = Blankokäfig
    .many = Blankokäfige
    .title = Blankokäfige
    .gender = masculine
kind-palindrome = Palindrom
    .many = Palindrome
    .title = Palindrome
    .gender = neuter
kind-parity = Paritätsfeld
    .many = Paritätsfelder
    .title = Gerade und ungerade
    .gender = neuter
kind-parity-line = Paritätslinie
    .many = Paritätslinien
    .title = Paritätslinien
    .gender = feminine
kind-parity-run = Paritätsfolge
    .many = Paritätsfolgen
    .title = Paritätsfolgen
    .gender = feminine
kind-peaks = Kuppe
    .many = Kuppen und Mulden
    .title = Kuppen und Mulden
    .gender = feminine
kind-pointing = Zeigerfeld
    .many = Zeigerfelder
    .title = Zeigerfelder
    .gender = neuter
kind-quadruple = Eckring
    .many = Eckringe
    .title = Eckringe
    .gender = masculine
kind-resting-thermometer = Ruhethermometer
    .many = Ruhethermometer
    .title = Ruhethermometer
    .gender = neuter
kind-rise-or-fall = Hang
    .many = Hänge
    .title = Steigend oder fallend
    .gender = masculine
kind-rising-run = Steigfolge
    .many = Steigfolgen
    .title = Steigfolgen
    .gender = feminine
kind-same-sum-line = Gleichsummenlinie
    .many = Gleichsummenlinien
    .title = Gleichsummenlinien
    .gender = feminine
kind-sandwich = Sandwichsumme
    .many = Sandwichsummen
    .title = Sandwichsummen
    .gender = feminine
kind-skyscraper = Hochhauszahl
    .many = Hochhauszahlen
    .title = Hochhäuser
    .gender = feminine
kind-square-block = Quadratblock
    .many = Quadratblöcke
    .title = Quadratblöcke
    .gender = masculine
kind-sum-marks = Summenzeichen
    .many = Summenzeichen
    .title = Summenzeichen
    .gender = neuter
kind-thermometer = Thermometer
    .many = Thermometer
    .title = Thermometer
    .gender = neuter
kind-windows = Fenster
    .many = Fenster
    .title = Fenster
    .gender = neuter
kind-x-sum = X-Summe
    .many = X-Summen
    .title = X-Summen
    .gender = feminine

## Marks that are called otherwise

marks-king = die Königszüge
marks-knight = die Springerzüge
marks-non-consecutive = das Folgeverbot
mark-non-consecutive = die Grenze zwischen { $one } und { $other }
mark-non-consecutive-whole = das Folgeverbot
mark-border-values-sum = die Summe { $value } zwischen { $one } und { $other }
mark-border-values-difference = die Differenz { $value } zwischen { $one } und { $other }
mark-border-values-product = das Produkt { $value } zwischen { $one } und { $other }
mark-border-values-quotient = der Quotient { $value } zwischen { $one } und { $other }
mark-border-values-missing = die Grenze ohne Zahl zwischen { $one } und { $other }
mark-non-consecutive-corner = die Ecke zwischen { $one } und { $other }
marks-no-doubles = das Doppelverbot
mark-no-doubles = die Grenze zwischen { $one } und { $other }
mark-no-doubles-corner = die Ecke zwischen { $one } und { $other }
mark-no-doubles-whole = das Doppelverbot
marks-barred-sums = das Summenverbot
mark-barred-sums = die Grenze zwischen { $one } und { $other }
mark-barred-sums-corner = die Ecke zwischen { $one } und { $other }
mark-barred-sums-whole = das Summenverbot
mark-dots-white = der weiße Punkt zwischen { $one } und { $other }
mark-dots-black = der schwarze Punkt zwischen { $one } und { $other }
mark-sum-marks-V = das V zwischen { $one } und { $other }
mark-sum-marks-X = das X zwischen { $one } und { $other }
mark-sum-marks-missing = das fehlende V oder X zwischen { $one } und { $other }
mark-rise-or-fall-rise = der Anstieg { $where }
mark-rise-or-fall-fall = der Abstieg { $where }
mark-rise-or-fall-missing = das Ende ohne Balken { $where }
mark-rising-run-joined = die Steigfolgen über { $cells }
mark-parity-run-joined = die Paritätsfolgen an beiden Enden von { $cells }
mark-rise-or-fall-joined = die An- und Abstiege über { $cells }
mark-inequality = das Zeichen zwischen { $one } und { $other }
mark-inequality-joined = die Zeichen zwischen { $cells }
mark-limits-joined = die Einschränkungen in { $cells }
mark-fortress-joined = die Festungen bei { $cells }
mark-pointing = der Pfeil in { $cell }
mark-parity-even = das Quadrat in { $cell }
mark-parity-odd = der Kreis in { $cell }
mark-parity-joined = die Quadrate und Kreise in { $cells }
mark-peaks-greater = das Dach in { $cell }
mark-peaks-smaller = die Schale in { $cell }
mark-peaks-joined = die Dächer und Schalen in { $cells }
mark-cage-joined = die Käfige über { $cells }
mark-arithmetic-cage = der Rechenkäfig { $value } bei { $cell }
mark-arithmetic-cage-joined = die Rechenkäfige über { $cells }
mark-counting-area = das Zählgebiet mit { $value } bei { $cell }
mark-square-block-magic = der magische Block bei { $cell }
mark-open-cage-even = der gerade Käfig bei { $cell }
mark-open-cage-odd = der ungerade Käfig bei { $cell }
mark-open-cage-lettered = die Käfiggruppe { $letter }

## Techniques: plainly, one of them, several ($count in words)

technique-last-cell = letztes freies Feld
    .one = ein letztes freies Feld
    .many = { $count } letzte freie Felder
technique-hidden-single = versteckter Einer
    .one = ein versteckter Einer
    .many = { $count } versteckte Einer
technique-naked-single = nackter Einer
    .one = ein nackter Einer
    .many = { $count } nackte Einer
technique-locked-candidates = gebundene Ziffer
    .one = eine gebundene Ziffer
    .many = { $count } gebundene Ziffern
technique-naked-pair = nacktes Paar
    .one = ein nacktes Paar
    .many = { $count } nackte Paare
technique-naked-triple = nacktes Trio
    .one = ein nacktes Trio
    .many = { $count } nackte Trios
technique-naked-quad = nacktes Quartett
    .one = ein nacktes Quartett
    .many = { $count } nackte Quartette
technique-hidden-pair = verstecktes Paar
    .one = ein verstecktes Paar
    .many = { $count } versteckte Paare
technique-hidden-triple = verstecktes Trio
    .one = ein verstecktes Trio
    .many = { $count } versteckte Trios
technique-hidden-quad = verstecktes Quartett
    .one = ein verstecktes Quartett
    .many = { $count } versteckte Quartette
technique-x-wing = X-Wing
    .one = ein X-Wing
    .many = { $count } X-Wings
technique-swordfish = Schwertfisch
    .one = ein Schwertfisch
    .many = { $count } Schwertfische
technique-jellyfish = Qualle
    .one = eine Qualle
    .many = { $count } Quallen
technique-finned-x-wing = X-Wing mit Flosse
    .one = ein X-Wing mit Flosse
    .many = { $count } X-Wings mit Flosse
technique-finned-swordfish = Schwertfisch mit Flosse
    .one = ein Schwertfisch mit Flosse
    .many = { $count } Schwertfische mit Flosse
technique-finned-jellyfish = Qualle mit Flosse
    .one = eine Qualle mit Flosse
    .many = { $count } Quallen mit Flosse
technique-xy-wing = XY-Wing
    .one = ein XY-Wing
    .many = { $count } XY-Wings
technique-xyz-wing = XYZ-Wing
    .one = ein XYZ-Wing
    .many = { $count } XYZ-Wings
technique-w-wing = W-Wing
    .one = ein W-Wing
    .many = { $count } W-Wings
technique-single-digit-chain = Kette einer Ziffer
    .one = eine Kette einer Ziffer
    .many = { $count } Ketten einer Ziffer
technique-alternating-chain = Wechselkette
    .one = eine Wechselkette
    .many = { $count } Wechselketten
technique-extended-chain = erweiterte Kette
    .one = eine erweiterte Kette
    .many = { $count } erweiterte Ketten
technique-either-way = so oder so ausgeschlossener Kandidat
    .one = ein so oder so ausgeschlossener Kandidat
    .many = { $count } so oder so ausgeschlossene Kandidaten
technique-seen-by-all-places = Feld in Sicht aller Plätze einer Ziffer
    .one = ein Feld in Sicht aller Plätze einer Ziffer
    .many = { $count } Felder in Sicht aller Plätze einer Ziffer
technique-what-if = Annahme
    .one = eine Annahme
    .many = { $count } Annahmen
technique-beyond = Schritt jenseits der Leiter
    .one = ein Schritt jenseits der Leiter
    .many = { $count } Schritte jenseits der Leiter
