### What things are called: cells and digits in lists, houses, marks, techniques.
### Gender is “common” (de, deze) or “neuter” (het, dit). Figures take “de”: de 5.

quotation-marks = “ ” ‘ ’
alphabet = a b c d e f g h i j k l m n o p q r s t u v w x y z

## Lists

list-more = { $most }, { $next }
list-and = { $most } en { $last }
list-or = { $most } of { $last }
list-alike = { $most } met { $last }
clauses-more = { $most }, { $next }
clauses-or = { $most }, of { $last }
clauses-and = { $most }, en { $last }

number = { $n ->
    [0] geen
    [1] één
    [2] twee
    [3] drie
    [4] vier
    [5] vijf
    [6] zes
    [7] zeven
    [8] acht
    [9] negen
    [10] tien
    [11] elf
    [12] twaalf
   *[other] { $n }
}

digits-run = { $first } t/m { $last }
candidate = { $digit } in { $cell }
placed = { $digits } in { $cells }
tried = { OR($digits) } in { OR($cells) }

## Houses

house-any = { $divided ->
    [none] rij of kolom
    [regions] rij, kolom of gebied
   *[boxes] rij, kolom of blok
}
house-row = rij { $number }
    .short = r{ $number }
house-column = kolom { $number }
    .short = k{ $number }
house-region = gebied { $letter }
house-box = { $place ->
    [middle-centre] het middelste blok
    [top-left] het blok linksboven
    [top-centre] het blok middenboven
    [top-right] het blok rechtsboven
    [middle-left] het blok middenlinks
    [middle-right] het blok middenrechts
    [bottom-left] het blok linksonder
    [bottom-centre] het blok middenonder
    [bottom-right] het blok rechtsonder
   *[other] het blok dat begint in { $cell }
}
house-of-rule = { GENDER($noun) ->
    [neuter] het { $noun }
   *[common] de { $noun }
} bij { $cell }
house-diagonals-falling = de dalende diagonaal
house-diagonals-rising = de stijgende diagonaal
# One group of cells, so that verbs are in the singular.
house-disjoint-groups = de groep vakjes op plaats { $number } van hun blokken
house-disjoint-groups-of-nine = { $n ->
    [1] de groep vakjes linksboven in de blokken
    [2] de groep vakjes middenboven in de blokken
    [3] de groep vakjes rechtsboven in de blokken
    [4] de groep vakjes middenlinks in de blokken
    [5] de groep vakjes in het midden van de blokken
    [6] de groep vakjes middenrechts in de blokken
    [7] de groep vakjes linksonder in de blokken
    [8] de groep vakjes middenonder in de blokken
   *[9] de groep vakjes rechtsonder in de blokken
}
house-windows-rows = het deel van rij { $number } t/m { $last } buiten de vensters
    .short = het deel van r{ $number } t/m { $last } buiten de vensters
house-windows-columns = het deel van kolom { $number } t/m { $last } buiten de vensters
    .short = het deel van k{ $number } t/m { $last } buiten de vensters
house-windows-crossing = de kruising van de rijen en kolommen tussen de vensters
houses-row = de rijen { $numbers }
    .short = de r{ $numbers }
houses-column = de kolommen { $numbers }
    .short = de k{ $numbers }
whole-grid = het hele diagram
# After “row”, “column”, or “rows” with several numbers, where grids overlap.
line-in-grid = { $number } van diagram { $grid }

## Marks, by where they are anchored

mark-line = { GENDER($noun) ->
    [neuter] het { $noun }
   *[common] de { $noun }
} van { $first } naar { $last }
mark-at = { GENDER($noun) ->
    [neuter] het { $noun }
   *[common] de { $noun }
} { $value ->
    [none] bij { $cell }
   *[other] met { $value } bij { $cell }
}
mark-between = { GENDER($noun) ->
    [neuter] het { $noun }
   *[common] de { $noun }
} { $value ->
    [none] tussen { $one } en { $other }
   *[other] { $value } tussen { $one } en { $other }
}
mark-between-missing = de grens zonder { $noun } tussen { $one } en { $other }
    .gender = common
# Where a clue outside the grid stands.
beside-line = { $side ->
    [left] links van rij { $line }
    [right] rechts van rij { $line }
    [top] boven kolom { $line }
   *[bottom] onder kolom { $line }
}
    .short = { $side ->
        [left] links van r{ $line }
        [right] rechts van r{ $line }
        [top] boven k{ $line }
       *[bottom] onder k{ $line }
    }
mark-outside = { GENDER($noun) ->
    [neuter] het { $noun }
   *[common] de { $noun }
} { $value } { $where }
mark-slanting = { GENDER($noun) ->
    [neuter] het { $noun }
   *[common] de { $noun }
} { $value } vanaf { $start } { $way ->
    [down-right] naar rechtsonder
    [down-left] naar linksonder
    [up-right] naar rechtsboven
   *[up-left] naar linksboven
}
mark-lettered = { $noun } { $letter }
mark-joined = de { $nouns } die { $cells } verbinden
mark-whole = { GENDER($noun) ->
    [neuter] het { $noun }
   *[common] de { $noun }
}
mark-again = { GENDER($noun) ->
    [neuter] hetzelfde { $noun }
   *[common] dezelfde { $noun }
}
marks = de { $nouns }

## Kinds of rules: one mark, several, the heading

kind-arithmetic-cage = rekenkooi
    .many = rekenkooien
    .title = Rekenkooien
    .gender = common
kind-arrow = pijl
    .many = pijlen
    .title = Pijlen
    .gender = common
kind-barred-sums = verbod op bepaalde sommen
    .many = verboden op bepaalde sommen
    .title = Verboden sommen
    .gender = neuter
kind-border-values = grensgetal
    .many = grensgetallen
    .title = Grensgetallen
    .gender = neuter
kind-bounded-line = begrensde lijn
    .many = begrensde lijnen
    .title = Begrensde lijnen
    .gender = common
kind-cage = kooi
    .many = kooien
    .title = Kooien
    .gender = common
kind-clone = kloon
    .many = klonen
    .title = Klonen
    .gender = common
kind-consecutive-bars = streepje
    .many = streepjes
    .title = Buurstreepjes
    .gender = neuter
kind-consecutive-line = reekslijn
    .many = reekslijnen
    .title = Reekslijnen
    .gender = common
kind-counting-area = telgebied
    .many = telgebieden
    .title = Telgebieden
    .gender = neuter
kind-diagonal-sum = diagonaalsom
    .many = diagonaalsommen
    .title = Diagonaalsommen
    .gender = common
kind-diagonals = diagonaal
    .many = diagonalen
    .title = Diagonalen
    .gender = common
kind-difference-line = verschillijn
    .many = verschillijnen
    .title = Verschillijnen
    .gender = common
kind-disjoint-groups = positiegroep
    .many = positiegroepen
    .title = Positiegroepen
    .gender = common
kind-dots = stip
    .many = stippen
    .title = Stippen
    .gender = common
kind-equal-part-line = deelsomlijn
    .many = deelsomlijnen
    .title = Deelsomlijnen
    .gender = common
kind-even-step-line = staplijn
    .many = staplijnen
    .title = Staplijnen
    .gender = common
kind-extra-region = extra gebied
    .many = extra gebieden
    .title = Extra gebieden
    .gender = neuter
kind-first-seen = kopcijfer
    .many = kopcijfers
    .title = Kopcijfers
    .gender = neuter
kind-fortress = vesting
    .many = vestingen
    .title = Vestingen
    .gender = common
kind-frame-product = randproduct
    .many = randproducten
    .title = Randproducten
    .gender = neuter
kind-frame-sum = randsom
    .many = randsommen
    .title = Randsommen
    .gender = common
kind-hinge-line = scharnierlijn
    .many = scharnierlijnen
    .title = Scharnierlijnen
    .gender = common
kind-inequality = ongelijkheidsteken
    .many = ongelijkheidstekens
    .title = Groter en kleiner
    .gender = neuter
kind-king = koningszet
    .many = koningszetten
    .title = Koningszet
    .gender = common
kind-knight = paardensprong
    .many = paardensprongen
    .title = Paardensprong
    .gender = common
kind-limits = beperking
    .many = beperkingen
    .title = Beperkingen
    .gender = common
kind-low-high-line = laag-hooglijn
    .many = laag-hooglijnen
    .title = Laag-hooglijnen
    .gender = common
kind-no-doubles = verbod op het dubbele
    .many = verboden op het dubbele
    .title = Niet het dubbele
    .gender = neuter
kind-non-consecutive = verbod op opeenvolgende buren
    .many = verboden op opeenvolgende buren
    .title = Niet opeenvolgend
    .gender = neuter
kind-numbered-room = genummerde kamer
    .many = genummerde kamers
    .title = Genummerde kamers
    .gender = common
kind-open-cage = open kooi
    .many = open kooien
    .title = Open kooien
    .gender = common
kind-palindrome = palindroom
    .many = palindromen
    .title = Palindromen
    .gender = neuter
kind-parity = even of oneven vakje
    .many = even en oneven vakjes
    .title = Even en oneven
    .gender = neuter
kind-parity-line = even-onevenlijn
    .many = even-onevenlijnen
    .title = Even-onevenlijnen
    .gender = common
kind-parity-run = even-onevenreeks
    .many = even-onevenreeksen
    .title = Even-onevenreeksen
    .gender = common
kind-peaks = dakje of kommetje
    .many = dakjes en kommetjes
    .title = Pieken en dalen
    .gender = neuter
kind-pointing = pijlvakje
    .many = pijlvakjes
    .title = Pijlvakjes
    .gender = neuter
kind-quadruple = hoekviertal
    .many = hoekviertallen
    .title = Hoekviertallen
    .gender = neuter
kind-resting-thermometer = rustende thermometer
    .many = rustende thermometers
    .title = Rustende thermometers
    .gender = common
kind-rise-or-fall = helling
    .many = hellingen
    .title = Stijgen of dalen
    .gender = common
kind-rising-run = stijgende reeks
    .many = stijgende reeksen
    .title = Stijgende reeksen
    .gender = common
kind-same-sum-line = gelijkesomlijn
    .many = gelijkesomlijnen
    .title = Gelijkesomlijnen
    .gender = common
kind-sandwich = sandwichsom
    .many = sandwichsommen
    .title = Sandwichsommen
    .gender = common
kind-skyscraper = wolkenkrabbergetal
    .many = wolkenkrabbergetallen
    .title = Wolkenkrabbers
    .gender = neuter
kind-square-block = somvierkant
    .many = somvierkanten
    .title = Somvierkanten
    .gender = neuter
kind-sum-marks = somteken
    .many = somtekens
    .title = Somtekens
    .gender = neuter
kind-thermometer = thermometer
    .many = thermometers
    .title = Thermometers
    .gender = common
kind-windows = venster
    .many = vensters
    .title = Vensters
    .gender = neuter
kind-x-sum = X-som
    .many = X-sommen
    .title = X-sommen
    .gender = common

## Marks that are called otherwise

marks-king = de koningszet
    .gender = common
marks-knight = de paardensprong
    .gender = common
marks-non-consecutive = het verbod op opeenvolgende buren
    .gender = neuter
mark-non-consecutive = de grens tussen { $one } en { $other }
    .gender = common
mark-non-consecutive-whole = het verbod op opeenvolgende buren
    .gender = neuter
mark-border-values-sum = de som { $value } tussen { $one } en { $other }
    .gender = common
mark-border-values-difference = het verschil { $value } tussen { $one } en { $other }
    .gender = neuter
mark-border-values-product = het product { $value } tussen { $one } en { $other }
    .gender = neuter
mark-border-values-quotient = het quotiënt { $value } tussen { $one } en { $other }
    .gender = neuter
mark-border-values-missing = de grens zonder getal tussen { $one } en { $other }
    .gender = common
mark-non-consecutive-corner = de hoek tussen { $one } en { $other }
    .gender = common
marks-no-doubles = het verbod op het dubbele
    .gender = neuter
mark-no-doubles = de grens tussen { $one } en { $other }
    .gender = common
mark-no-doubles-corner = de hoek tussen { $one } en { $other }
    .gender = common
mark-no-doubles-whole = het verbod op het dubbele
    .gender = neuter
marks-barred-sums = het verbod op bepaalde sommen
    .gender = neuter
mark-barred-sums = de grens tussen { $one } en { $other }
    .gender = common
mark-barred-sums-corner = de hoek tussen { $one } en { $other }
    .gender = common
mark-barred-sums-whole = het verbod op bepaalde sommen
    .gender = neuter
mark-dots-white = de witte stip tussen { $one } en { $other }
    .gender = common
mark-dots-black = de zwarte stip tussen { $one } en { $other }
    .gender = common
mark-sum-marks-V = de V tussen { $one } en { $other }
    .gender = common
mark-sum-marks-X = de X tussen { $one } en { $other }
    .gender = common
mark-sum-marks-missing = de grens zonder V of X tussen { $one } en { $other }
    .gender = common
mark-rise-or-fall-rise = de stijging { $where }
    .gender = common
mark-rise-or-fall-fall = de daling { $where }
    .gender = common
mark-rise-or-fall-missing = de kant zonder balkjes { $where }
    .gender = common
mark-rising-run-joined = de stijgende reeksen die { $cells } bereiken
mark-parity-run-joined = de even-onevenreeksen aan beide kanten van { $cells }
mark-rise-or-fall-joined = de stijgingen en dalingen die { $cells } bereiken
mark-inequality = het teken tussen { $one } en { $other }
    .gender = neuter
mark-inequality-joined = de tekens die { $cells } verbinden
mark-limits-joined = de beperkingen in { $cells }
mark-fortress-joined = de vestingen bij { $cells }
mark-pointing = de pijl in { $cell }
    .gender = common
mark-parity-even = het vierkant in { $cell }
    .gender = neuter
mark-parity-odd = de cirkel in { $cell }
    .gender = common
mark-parity-joined = de even en oneven vakjes onder { $cells }
mark-peaks-greater = het dakje in { $cell }
    .gender = neuter
mark-peaks-smaller = het kommetje in { $cell }
    .gender = neuter
mark-peaks-joined = de dakjes en kommetjes in { $cells }
mark-cage-joined = de kooien over { $cells }
mark-arithmetic-cage = de rekenkooi { $value } bij { $cell }
    .gender = common
mark-arithmetic-cage-joined = de rekenkooien over { $cells }
mark-counting-area = het telgebied met { $value } bij { $cell }
    .gender = neuter
mark-square-block-magic = het tovervierkant bij { $cell }
    .gender = neuter
mark-open-cage-even = de even kooi bij { $cell }
    .gender = common
mark-open-cage-odd = de oneven kooi bij { $cell }
    .gender = common
mark-open-cage-lettered = de groep kooien { $letter }
    .gender = common

## Techniques: plainly, one of them, several ($count in words)

technique-last-cell = laatste lege vakje
    .one = een laatste leeg vakje
    .many = { $count } laatste lege vakjes
technique-hidden-single = verborgen single
    .one = een verborgen single
    .many = { $count } verborgen singles
technique-naked-single = naakte single
    .one = een naakte single
    .many = { $count } naakte singles
technique-locked-candidates = opgesloten kandidaten
    .one = opgesloten kandidaten
    .many = { $count } keer opgesloten kandidaten
technique-naked-pair = naakt paar
    .one = een naakt paar
    .many = { $count } naakte paren
technique-naked-triple = naakt drietal
    .one = een naakt drietal
    .many = { $count } naakte drietallen
technique-naked-quad = naakt viertal
    .one = een naakt viertal
    .many = { $count } naakte viertallen
technique-hidden-pair = verborgen paar
    .one = een verborgen paar
    .many = { $count } verborgen paren
technique-hidden-triple = verborgen drietal
    .one = een verborgen drietal
    .many = { $count } verborgen drietallen
technique-hidden-quad = verborgen viertal
    .one = een verborgen viertal
    .many = { $count } verborgen viertallen
technique-x-wing = X-wing
    .one = een X-wing
    .many = { $count } X-wings
technique-swordfish = zwaardvis
    .one = een zwaardvis
    .many = { $count } zwaardvissen
technique-jellyfish = kwal
    .one = een kwal
    .many = { $count } kwallen
technique-finned-x-wing = X-wing met vin
    .one = een X-wing met vin
    .many = { $count } X-wings met vin
technique-finned-swordfish = zwaardvis met vin
    .one = een zwaardvis met vin
    .many = { $count } zwaardvissen met vin
technique-finned-jellyfish = kwal met vin
    .one = een kwal met vin
    .many = { $count } kwallen met vin
technique-xy-wing = XY-wing
    .one = een XY-wing
    .many = { $count } XY-wings
technique-xyz-wing = XYZ-wing
    .one = een XYZ-wing
    .many = { $count } XYZ-wings
technique-w-wing = W-wing
    .one = een W-wing
    .many = { $count } W-wings
technique-single-digit-chain = keten van één cijfer
    .one = een keten van één cijfer
    .many = { $count } ketens van één cijfer
technique-alternating-chain = wisselketen
    .one = een wisselketen
    .many = { $count } wisselketens
technique-seen-by-all-places = vakje dat alle plaatsen van een cijfer ziet
    .one = een vakje dat alle plaatsen van een cijfer ziet
    .many = { $count } vakjes die alle plaatsen van een cijfer zien
technique-extended-chain = uitgebreide keten
    .one = een uitgebreide keten
    .many = { $count } uitgebreide ketens
technique-either-way = hoe dan ook uitgesloten cijfer
    .one = een hoe dan ook uitgesloten cijfer
    .many = { $count } hoe dan ook uitgesloten cijfers
technique-what-if = wat-alsvraag
    .one = een wat-alsvraag
    .many = { $count } wat-alsvragen
technique-beyond = stap voorbij de ladder
    .one = een stap voorbij de ladder
    .many = { $count } stappen voorbij de ladder
