### What each kind of rule asks, in a sentence under a puzzle, singular or plural as there are marks ($n); how it is taught in
### the primer; and how its marks are told to those who do not see them ($cells, $line: which cells; $where: on which borders;
### $side: on which side of the grid).

## Arithmetic cages

result-sum = de som (+)
result-product = het product (×)
result-difference = het verschil (−)
result-quotient = het quotiënt (÷)
arithmetic-cage-sentence-signs = Het getal in de hoek van { $n ->
    [1] de rekenkooi
   *[other] elke rekenkooi
} is { $results } van de cijfers erin{ $unsigned ->
    [pairs] ; zonder teken is het de som, het verschil, het product of het quotiënt ervan
    [larger] ; zonder teken is het de som of het product ervan
   *[none] {""}
}{ $larger ->
    [differ] ; de cijfers zijn er verschillend
    [repeat] ; cijfers mogen zich herhalen
   *[no] {""}
}.
arithmetic-cage-sentence-unsigned = Het getal in de hoek van { $n ->
    [1] de rekenkooi
   *[other] elke rekenkooi
} is { $unsigned ->
    [pairs] de som, het verschil, het product of het quotiënt van de cijfers erin
   *[larger] de som of het product van de cijfers erin
}{ $larger ->
    [differ] ; de cijfers zijn er verschillend
    [repeat] ; cijfers mogen zich herhalen
   *[no] {""}
}.
arithmetic-cage-spoken = Rekenkooi met { $sort ->
    [sum] som { $number }
    [product] product { $number }
    [difference] verschil { $number }
    [quotient] quotiënt { $number }
   *[none] { $number }, zonder teken
}: { $cells }
arithmetic-cage-primer = Het teken in de hoek van een rekenkooi zegt wat de cijfers opleveren: hun som (+), product (×), verschil (−) of quotiënt (÷), met het grootste cijfer voorop; ontbreekt het teken, dan moet je het zelf vinden. Begin met producten: weinig producten zijn deelbaar door 5 of 7, en als dat zo is, moet dat cijfer in de kooi staan. In een diagram van 9×9 heeft een kooi met ÷ alleen een 5 of een 7 naast een 1, en een groot verschil vraagt om een laag en een hoog cijfer.

## Arrows

arrow-sentence = De som van de cijfers langs { $n ->
    [1] de pijl
   *[other] elke pijl
} is het cijfer in de cirkel.
arrow-sentence-ovals = De som van de cijfers langs { $n ->
    [1] de pijl
   *[other] elke pijl
} is het getal in { $all ->
    [yes] het ovaal
   *[no] de cirkel of het ovaal
}; een ovaal lees je { $ways ->
    [across] van links naar rechts
    [down] van boven naar beneden
   *[both] van links naar rechts of van boven naar beneden
}.
arrow-zero = Het getal in een ovaal begint nooit met 0.
arrow-circle = de cirkel in { $cells }
arrow-oval = het ovaal in { $cells }, gelezen { $way ->
    [across] van links naar rechts
   *[down] van boven naar beneden
}
arrow-spoken = Pijl vanuit { $start }: { $line }
arrow-primer = De cijfers langs de schacht van een pijl, van naast de cirkel tot de punt, zijn samen het getal in de cirkel; ze mogen zich herhalen waar rijen, kolommen en blokken dat toelaten. Vertrekken er meer schachten uit één cirkel, dan geldt dat voor elke schacht. Een ovaal over twee of drie vakjes bevat een getal van twee of drie cijfers. Drie vakjes in één blok zijn samen minstens 6: een lange schacht betekent dus een hoge cirkel en lage cijfers.
arrow-primer--lines = De cijfers langs de schacht van een pijl, van naast de cirkel tot de punt, zijn samen het getal in de cirkel; ze mogen zich herhalen waar rijen en kolommen dat toelaten. Vertrekken er meer schachten uit één cirkel, dan geldt dat voor elke schacht. Een ovaal over twee of drie vakjes bevat een getal van twee of drie cijfers. Drie vakjes in één rij zijn samen minstens 6: een lange schacht betekent dus een hoge cirkel en lage cijfers.

## Barred sums

barred-sums-sentence = { $touching ->
    [corners] De som van twee vakjes die elkaar met een zijde of een hoek raken, is nooit { $sums }.
   *[sides] De som van twee vakjes met een gemeenschappelijke zijde is nooit { $sums }.
}
barred-sums-primer = De som van twee vakjes met een gemeenschappelijke zijde is nooit een van de getallen die de regel noemt. Is 10 verboden, dan staat er geen 6 naast een 4 en geen 9 naast een 1: elk cijfer sluit bij elk getal één cijfer in de buurvakjes uit, en de helft van een even getal is vrij. Liggen alle plaatsen voor een cijfer in een rij of blok naast één vakje, dan kan de partner van dat cijfer daar niet staan.
barred-sums-primer--lines = De som van twee vakjes met een gemeenschappelijke zijde is nooit een van de getallen die de regel noemt. Is 10 verboden, dan staat er geen 6 naast een 4 en geen 9 naast een 1: elk cijfer sluit bij elk getal één cijfer in de buurvakjes uit, en de helft van een even getal is vrij. Liggen alle plaatsen voor een cijfer in een rij naast één vakje, dan kan de partner van dat cijfer daar niet staan.

## Border values

border-values-sum = de som ({ $sign })
border-values-difference = het verschil ({ $sign })
border-values-product = het product ({ $sign })
border-values-quotient = het quotiënt ({ $sign })
border-values-sentence = { $n ->
    [1] Het getal
   *[other] Elk getal
} op een grens is { $results } van de twee cijfers ernaast.
border-values-sentence-all = { $n ->
    [1] Het getal
   *[other] Elk getal
} op een grens is { $results } van de twee cijfers ernaast; buurvakjes zonder getal hebben nooit { $never }.
border-values-never-sum = som { $numbers }
border-values-never-difference = verschil { $numbers }
border-values-never-product = product { $numbers }
border-values-never-quotient = quotiënt { $numbers }
border-values-spoken-sum = { $n ->
    [1] Som { $number }
   *[other] Sommen { $number }
} { $where }
border-values-spoken-difference = { $n ->
    [1] Verschil { $number }
   *[other] Verschillen { $number }
} { $where }
border-values-spoken-product = { $n ->
    [1] Product { $number }
   *[other] Producten { $number }
} { $where }
border-values-spoken-quotient = { $n ->
    [1] Quotiënt { $number }
   *[other] Quotiënten { $number }
} { $where }
border-values-primer = Een getal in een hokje op een grens zegt wat de twee cijfers ernaast opleveren: na + hun som, na − hun verschil, na × hun product, na / het grootste gedeeld door het kleinste. Grote producten, grote sommen en grote quotiënten laten de minste keus: in een diagram van 9×9 is ×35 5 en 7, +17 is 8 en 9, /5 is 1 en 5. Staan al zulke getallen erin, dan is een grens zonder getal ook een aanwijzing.

## Bounded lines

bounded-line-sentence = Alle andere cijfers langs { $n ->
    [1] de begrensde lijn
   *[other] elke begrensde lijn
} liggen strikt tussen de twee cijfers met haken aan de uiteinden.
bounded-line-spoken = Begrensde lijn, van uiteinde tot uiteinde: { $line }
bounded-line-primer = De cijfers op de lijn liggen tussen de twee cijfers met haken aan de uiteinden; die twee komen er zelf niet tussen voor. Het laagste en het hoogste cijfer staan dus nooit binnen in zo’n lijn, en als drie vakjes van het binnenste stuk in dezelfde rij, kolom of hetzelfde blok liggen, schelen de uiteinden minstens vier. Zoek eerst uit welk uiteinde het hoogste is.
bounded-line-primer--lines = De cijfers op de lijn liggen tussen de twee cijfers met haken aan de uiteinden; die twee komen er zelf niet tussen voor. Het laagste en het hoogste cijfer staan dus nooit binnen in zo’n lijn, en als drie vakjes van het binnenste stuk in dezelfde rij of kolom liggen, schelen de uiteinden minstens vier. Zoek eerst uit welk uiteinde het hoogste is.

## Cages

cage-sentence-totals = In { $n ->
    [1] de kooi
   *[other] elke kooi
} zijn de cijfers verschillend en is hun som het totaal in de hoek.
cage-sentence-some = In { $n ->
    [1] de kooi
   *[other] elke kooi
} zijn de cijfers verschillend en is hun som het totaal in de hoek, als dat er staat.
cage-sentence-none = In { $n ->
    [1] de kooi
   *[other] elke kooi
} zijn de cijfers verschillend.
cage-sentence-repeats = De som van de cijfers in { $n ->
    [1] de kooi
   *[other] elke kooi
} is het totaal in de hoek; cijfers mogen zich herhalen.
cage-spoken = { $total ->
    [none] Kooi zonder totaal: { $cells }
   *[other] Kooi met { $total }: { $cells }
}
cage-primer = Een kooi is met streepjes omlijnd. De cijfers erin zijn verschillend, ook als de kooi door meer blokken loopt, en hun som is het kleine totaal in de hoek. Sommige totalen laten geen keus: twee vakjes met 3 bevatten 1 en 2, drie met 24 bevatten 7, 8 en 9. In een diagram van 9×9 is elke rij, elke kolom en elk blok samen 45: bedekken kooien alle vakjes van een blok op één na, trek ze dan van 45 af.
cage-primer--lines = Een kooi is met streepjes omlijnd. De cijfers erin zijn verschillend en hun som is het kleine totaal in de hoek. Sommige totalen laten geen keus: twee vakjes met 3 bevatten 1 en 2, drie met 24 bevatten 7, 8 en 9. In een diagram van 9×9 is elke rij en elke kolom samen 45: bedekken kooien alle vakjes van een rij op één na, trek ze dan van 45 af.

## Clones

clone-sentence = De { $number } gearceerde vlakken bevatten dezelfde cijfers op dezelfde plaatsen.
clone-sentence-letters = Gearceerde vlakken met dezelfde letter bevatten dezelfde cijfers op dezelfde plaatsen.
clone-spoken = Klonen { $letter }, vakje voor vakje: { $twins }
clone-primer = Gearceerde vlakken met dezelfde letter zijn klonen: ze hebben dezelfde vorm en bevatten dezelfde cijfers op dezelfde plaatsen. Wat in een vakje is uitgesloten, is ook in zijn tweeling uitgesloten; elk paar tweelingen is dus gebonden aan twee rijen, twee kolommen en twee blokken. Begin met de klonen die de meeste gegeven cijfers zien.
clone-primer--lines = Gearceerde vlakken met dezelfde letter zijn klonen: ze hebben dezelfde vorm en bevatten dezelfde cijfers op dezelfde plaatsen. Wat in een vakje is uitgesloten, is ook in zijn tweeling uitgesloten; elk paar tweelingen is dus gebonden aan twee rijen en twee kolommen. Begin met de klonen die de meeste gegeven cijfers zien.

## Consecutive bars

consecutive-bars-sentence = { $n ->
    [1] Het streepje
   *[other] Een streepje
} verbindt opeenvolgende cijfers; buurvakjes zonder streepje ertussen zijn niet opeenvolgend.
consecutive-bars-spoken = { $n ->
    [1] Streepje
   *[other] Streepjes
} { $where }
consecutive-bars-primer = Tussen alle buurvakjes met opeenvolgende cijfers staat een streepje. Een ontbrekend streepje is dus ook een aanwijzing: over een grens zonder streepje heeft een 5 geen 4 of 6 naast zich. Volg rijtjes streepjes, waarlangs de cijfers telkens één hoger of lager worden, en let op vakjes met weinig streepjes naast een bekend cijfer.

## Consecutive lines

consecutive-line-sentence = De cijfers op { $n ->
    [1] de reekslijn
   *[other] elke reekslijn
} vormen een reeks opeenvolgende cijfers zonder herhaling, in willekeurige volgorde.
consecutive-line-spoken = Reekslijn: { $line }
consecutive-line-primer = De cijfers op een kralenlijn zijn zo te ordenen dat ze een reeks vormen, zoals 3 4 5 6, maar langs de lijn mogen ze in elke volgorde staan. Ze herhalen zich nooit, ook niet als de lijn door meer blokken loopt. In een diagram van 9×9 is bij vijf vakjes altijd een 5 aanwezig, bij zes ook een 4 en een 6; en wat te ver van een bekend cijfer ligt, valt af.
consecutive-line-primer--lines = De cijfers op een kralenlijn zijn zo te ordenen dat ze een reeks vormen, zoals 3 4 5 6, maar langs de lijn mogen ze in elke volgorde staan. Ze herhalen zich nooit. In een diagram van 9×9 is bij vijf vakjes altijd een 5 aanwezig, bij zes ook een 4 en een 6; en wat te ver van een bekend cijfer ligt, valt af.

## Counting areas

counting-area-sentence-counts = In { $n ->
    [1] het telgebied
   *[other] elk telgebied
} komt elk cijfer uit de hoek precies zo vaak voor als het daar staat.
counting-area-sentence-different = Het getal in de hoek van { $n ->
    [1] het telgebied
   *[other] elk telgebied
} is het aantal verschillende cijfers erin.
counting-area-sentence-both = In { $n ->
    [1] het telgebied
   *[other] elk telgebied
} komt elk cijfer uit de hoek precies zo vaak voor als het daar staat; een getal met ≠ is het aantal verschillende cijfers in het gebied.
counting-area-spoken = { $different ->
    [0] Telgebied met precies { $digits }: { $cells }
    [1] Telgebied met 1 verschillend cijfer: { $cells }
   *[other] Telgebied met { $different } verschillende cijfers: { $cells }
}
counting-area-primer = Een stippellijn omsluit een telgebied. De cijfers in de hoek komen erin precies zo vaak voor als ze daar staan: 7 7 betekent twee keer een 7, en de andere cijfers zijn vrij. Een getal met ≠ zegt hoeveel verschillende cijfers er zijn. Drie vakjes op een rij hebben altijd drie verschillende cijfers; vraag je dus af welke vakjes van een gebied gelijk kunnen zijn: die geen rij, kolom of blok delen.
counting-area-primer--lines = Een stippellijn omsluit een telgebied. De cijfers in de hoek komen erin precies zo vaak voor als ze daar staan: 7 7 betekent twee keer een 7, en de andere cijfers zijn vrij. Een getal met ≠ zegt hoeveel verschillende cijfers er zijn. Drie vakjes op een rij hebben altijd drie verschillende cijfers; vraag je dus af welke vakjes van een gebied gelijk kunnen zijn: die geen rij of kolom delen.

## Diagonal sums

diagonal-sum-sentence = { $n ->
    [1] Het getal
   *[other] Elk getal
} met een pijl buiten het diagram is de som van de cijfers op de diagonaal waarlangs de pijl wijst; ze mogen zich herhalen waar de andere regels dat toelaten.
diagonal-sum-spoken = Diagonaalsom { $total }: { $line }
diagonal-sum-primer = Een pijl buiten het diagram wijst langs een diagonaal, en het getal is de som van alle cijfers daarop, tot aan de overkant. Vakjes van één blok hebben verschillende cijfers; andere mogen gelijk zijn, zodat drie vakjes in drie blokken zelfs hetzelfde cijfer kunnen bevatten. Begin met korte diagonalen, en met sommen die klein of groot zijn voor hun lengte.
diagonal-sum-primer--lines = Een pijl buiten het diagram wijst langs een diagonaal, en het getal is de som van alle cijfers daarop, tot aan de overkant. De cijfers mogen zich herhalen. Begin met korte diagonalen, en met sommen die klein of groot zijn voor hun lengte.

## Diagonals

diagonals-sentence = { $n ->
    [1] De gemarkeerde diagonaal
   *[other] Elk van de twee gemarkeerde diagonalen
} bevat elk cijfer één keer.
diagonals-spoken = Gemarkeerde diagonaal: { $line }
diagonals-primer = Een gemarkeerde diagonaal werkt als een extra rij of kolom: elk cijfer staat er één keer op. Het vakje waar twee diagonalen kruisen, hoort bij allebei en ook bij een rij, een kolom en een blok; kijk dus daar het eerst. Zoek daarna langs een diagonaal een cijfer dat nog maar één plaats heeft.
diagonals-primer--lines = Een gemarkeerde diagonaal werkt als een extra rij of kolom: elk cijfer staat er één keer op. Het vakje waar twee diagonalen kruisen, hoort bij allebei en ook bij een rij en een kolom; kijk dus daar het eerst. Zoek daarna langs een diagonaal een cijfer dat nog maar één plaats heeft.

## Difference lines

difference-line-sentence = Langs { $n ->
    [1] de verschillijn
   *[other] elke verschillijn
} schelen aangrenzende cijfers minstens { $least }.
difference-line-spoken = Verschillijn: { $line }
difference-line-primer = Elke stap langs een zaagtandlijn is een sprong van minstens het genoemde verschil, meestal 5. In een diagram van 9×9 wisselen met 5 lage en hoge cijfers elkaar af: 5 zelf staat er nooit op, 4 alleen naast 9 en 6 alleen naast 1. Een 4 of 6 staat dus aan een uiteinde, of tussen twee vakjes die gelijk mogen zijn.

## Disjoint groups

disjoint-groups-sentence = De vakjes op dezelfde plaats in hun blok, zoals alle vakjes linksboven, bevatten elk cijfer één keer.
disjoint-groups-primer = Neem het vakje linksboven in elk blok: samen bevatten ze elk cijfer één keer, en dat geldt ook voor de vakjes op elke andere plaats in de blokken. Een cijfer staat dus in elk blok op een andere plaats. Heb je het in een paar blokken ingevuld, streep die plaatsen dan in de andere weg voordat je naar rijen en kolommen kijkt.

## Dots

dots-sentence-white = { $white ->
    [1] De witte stip
   *[other] Een witte stip
} verbindt opeenvolgende cijfers{ $all ->
    [yes] ; buurvakjes zonder stip zijn niet opeenvolgend, en geen van beide cijfers is het dubbele van het andere
   *[no] {""}
}.
dots-sentence-black = { $black ->
    [1] De zwarte stip
   *[other] Een zwarte stip
} verbindt een cijfer en het dubbele daarvan{ $all ->
    [yes] ; buurvakjes zonder stip zijn niet opeenvolgend, en geen van beide cijfers is het dubbele van het andere
   *[no] {""}
}.
dots-sentence-both = { $white ->
    [1] De witte stip
   *[other] Een witte stip
} verbindt opeenvolgende cijfers en { $black ->
    [1] de zwarte stip
   *[other] een zwarte stip
} een cijfer en het dubbele daarvan (bij 1 en 2 kan het allebei){ $all ->
    [yes] ; voor buurvakjes zonder stip geldt geen van beide
   *[no] {""}
}.
dots-sentence-none = Vakjes met een gemeenschappelijke zijde bevatten nooit opeenvolgende cijfers, en nooit een cijfer en het dubbele daarvan.
dots-spoken-white = { $n ->
    [1] Witte stip
   *[other] Witte stippen
} { $where }
dots-spoken-black = { $n ->
    [1] Zwarte stip
   *[other] Zwarte stippen
} { $where }
dots-primer = Een witte stip verbindt twee buurvakjes met opeenvolgende cijfers, een zwarte stip een cijfer en het dubbele daarvan; bij 1 en 2 kan het allebei. In een diagram van 9×9 grenzen 5, 7 en 9 nooit aan een zwarte stip, en een rijtje zwarte stippen loopt door 1, 2, 4 en 8 of door 3 en 6. Staan alle stippen erin, dan is een grens zonder stip ook een aanwijzing: de cijfers zijn niet opeenvolgend en geen van beide is het dubbele van het andere.

## Equal-part lines

equal-part-line-sentence = Op { $n ->
    [1] de deelsomlijn
   *[other] elke deelsomlijn
} hebben de cijfers van elk stuk binnen een { $home ->
    [box] blok
   *[region] gebied
} dezelfde som.
equal-part-line-part = deel { $number }, { $line }
equal-part-line-spoken = Deelsomlijn: { $parts }
equal-part-line-primer = De grenzen van de blokken delen een deelsomlijn in stukken, en de cijfers van elk stuk hebben dezelfde som; een lijn die in een blok terugkeert, heeft daar twee stukken. Een stuk van één vakje geeft de som meteen. Is er zo’n stuk niet, vergelijk dan het langste met het kortste: in een diagram van 9×9 zijn drie vakjes van een blok samen minstens 6 en twee hoogstens 17.

## Even-step lines

even-step-line-sentence = Langs { $n ->
    [1] de staplijn
   *[other] elke staplijn
} schelen aangrenzende cijfers { $step ->
    [none] steeds evenveel; { $n ->
        [1] hoeveel, moet je zelf vinden
       *[other] hoeveel, moet je per lijn zelf vinden
    }
   *[other] precies { $step }
}.
even-step-line-spoken = Staplijn: { $line }
even-step-line-primer = Elke stap langs een lijn met noppen is even groot, omhoog of omlaag, en nooit nul; staat de grootte er niet bij, dan zoek je haar per lijn uit. Grote stappen lopen snel vast: met een stap van 4 kan een lijn die bij 1 begint, in een diagram van 9×9 alleen 1, 5 en 9 bevatten; met een stap van 5 wisselen laag en hoog elkaar af en komt 5 niet voor. Drie opeenvolgende vakjes in dezelfde rij, kolom of hetzelfde blok gaan twee keer omhoog of twee keer omlaag.
even-step-line-primer--lines = Elke stap langs een lijn met noppen is even groot, omhoog of omlaag, en nooit nul; staat de grootte er niet bij, dan zoek je haar per lijn uit. Grote stappen lopen snel vast: met een stap van 4 kan een lijn die bij 1 begint, in een diagram van 9×9 alleen 1, 5 en 9 bevatten; met een stap van 5 wisselen laag en hoog elkaar af en komt 5 niet voor. Drie opeenvolgende vakjes in dezelfde rij of kolom gaan twee keer omhoog of twee keer omlaag.

## Extra regions

extra-region-sentence = { $full ->
    [yes] { $n ->
        [1] Het grijze gebied bevat elk cijfer één keer
       *[other] Elk grijs gebied bevat elk cijfer één keer
    }
   *[no] { $n ->
        [1] In het grijze gebied komt geen cijfer vaker dan één keer voor
       *[other] In elk grijs gebied komt geen cijfer vaker dan één keer voor
    }
}{ $pieces ->
    [yes] { $n ->
        [1] ; alle stukken ervan hebben dezelfde letter
       *[other] ; stukken van één gebied hebben dezelfde letter
    }
   *[no] {""}
}.
extra-region-spoken = { $letter ->
    [none] Grijs gebied: { $cells }
   *[other] Grijs gebied { $letter }: { $cells }
}
extra-region-primer = Een grijs gebied werkt als een extra blok: geen cijfer komt er twee keer in voor. Heeft het evenveel vakjes als het diagram cijfers, dan bevat het ze allemaal; stel er dan dezelfde vraag aan als aan een rij: waar kan dit cijfer nog staan? Een kleiner gebied houdt zijn cijfers alleen uit elkaar. Begin waar een gebied over een bijna vol blok ligt.
extra-region-primer--lines = Een grijs gebied werkt als een extra rij: geen cijfer komt er twee keer in voor. Heeft het evenveel vakjes als het diagram cijfers, dan bevat het ze allemaal; stel er dan dezelfde vraag aan als aan een rij: waar kan dit cijfer nog staan? Een kleiner gebied houdt zijn cijfers alleen uit elkaar. Begin waar een gebied over een bijna volle rij ligt.

## First-seen digits

first-seen-sentence = { $n ->
    [1] Het cijfer
   *[other] Elk cijfer
} buiten het diagram, naast { $seen ->
    [0] kleine vierkantjes, staat in een van de eerste zoveel vakjes
    [1] één klein vierkantje, staat in het eerste vakje
   *[other] { $number } kleine vierkantjes, staat in een van de eerste { $number } vakjes
} van zijn { $line ->
    [row] rij
    [column] kolom
   *[both] rij of kolom
} vanaf die kant.
first-seen-spoken = { $n ->
    [1] Kopcijfer
   *[other] Kopcijfers
} { $side }: { $clues }
first-seen-side = { $n ->
    [1] { $side }, naast één klein vierkantje
   *[other] { $side }, naast { $number } kleine vierkantjes
}
first-seen-primer = Een cijfer buiten een rij of kolom staat, vanaf die kant, in een van de eerste vakjes: zoveel als er kleine vierkantjes naast staan. Staan er meer cijfers bij elkaar, dan geldt dat voor alle, in willekeurige volgorde. In een diagram van 9×9 plaatsen drie vierkantjes het cijfer in drie vakjes van het dichtstbijzijnde blok; streep het dus weg in de rest van de rij en van het blok.
first-seen-primer--lines = Een cijfer buiten een rij of kolom staat, vanaf die kant, in een van de eerste vakjes: zoveel als er kleine vierkantjes naast staan. Staan er meer cijfers bij elkaar, dan geldt dat voor alle, in willekeurige volgorde.

## Fortress cells

fortress-sentence = Elk cijfer in een grijs vakje, binnen de kantelen, is groter dan de cijfers in de witte vakjes waarmee het een zijde deelt.
fortress-spoken = Vesting: { $cells }
fortress-primer = Grijze vakjes met kantelen eromheen zijn een vesting: elk cijfer erin is groter dan de cijfers erbuiten waarmee het een zijde deelt. Twee grijze vakjes worden niet vergeleken. Een vakje met kantelen aan twee zijden van één rij of kolom is minstens 3, en lage cijfers in een vesting staan waar maar weinig zijden buitenzijden zijn. Vakjes tussen twee vestingen zijn laag.

## Frame products

frame-product-sentence = { $n ->
    [1] Het getal
   *[other] Elk getal
} na een punt buiten het diagram is het product van { $line ->
    [row] de eerste { $number } cijfers van zijn rij
    [column] de eerste { $number } cijfers van zijn kolom
    [unlike] de eerste { $number } cijfers van zijn rij of de eerste { $other } van zijn kolom
   *[both] de eerste { $number } cijfers van zijn rij of kolom
} vanaf die kant.
frame-product-spoken = { $n ->
    [1] Randproduct
   *[other] Randproducten
} { $side }: { $clues }
frame-product-primer = Het getal buiten een rij of kolom is het product van de dichtstbijzijnde cijfers, in een diagram van 9×9 meestal de drie in het eerste blok. Ontbind het: een product dat op 5 of 0 eindigt, heeft een 5, een product dat door 7 deelbaar is, heeft een 7, en wat door geen van beide deelbaar is, sluit ze allebei uit. Een oneven product heeft alleen oneven cijfers.
frame-product-primer--lines = Het getal buiten een rij of kolom is het product van de dichtstbijzijnde cijfers, meestal drie. Ontbind het: een product dat op 5 of 0 eindigt, heeft een 5, een product dat door 7 deelbaar is, heeft een 7, en wat door geen van beide deelbaar is, sluit ze allebei uit. Een oneven product heeft alleen oneven cijfers.

## Frame sums

frame-sum-sentence = { $n ->
    [1] Het getal
   *[other] Elk getal
} na een kleine + buiten het diagram is de som van { $line ->
    [row] de eerste { $number } cijfers van zijn rij
    [column] de eerste { $number } cijfers van zijn kolom
    [unlike] de eerste { $number } cijfers van zijn rij of de eerste { $other } van zijn kolom
   *[both] de eerste { $number } cijfers van zijn rij of kolom
} vanaf die kant.
frame-sum-spoken = { $n ->
    [1] Randsom
   *[other] Randsommen
} { $side }: { $clues }
frame-sum-primer = Het getal buiten een rij of kolom is de som van de dichtstbijzijnde cijfers, in een diagram van 9×9 meestal de drie in het eerste blok. Drie cijfers met som 6 zijn 1, 2 en 3, drie met som 24 zijn 7, 8 en 9. Een blok is samen 45: twee getallen die van dezelfde kant in een blok kijken, geven dus het derde; en de getallen aan beide einden van een rij geven de som van wat ertussen ligt.
frame-sum-primer--lines = Het getal buiten een rij of kolom is de som van de dichtstbijzijnde cijfers, meestal drie. Drie cijfers met som 6 zijn 1, 2 en 3, drie met som 24 zijn 7, 8 en 9.

## Hinge lines

hinge-line-sentence = Op { $n ->
    [1] de scharnierlijn
   *[other] elke scharnierlijn
} heeft elk tweetal vakjes op gelijke afstand van het midden dezelfde som{ $middles ->
    [all] , en die som is het cijfer in het midden
    [some] , en die som is het cijfer in het middelste vakje, als dat er is
   *[none] {""}
}.
hinge-line-spoken = { COUNT($middle) ->
    [one] Scharnierlijn met het midden in { $middle }: { $line }
   *[other] Scharnierlijn met het midden tussen { $middle }: { $line }
}
hinge-line-primer = Vouw een scharnierlijn in het midden dubbel: elke twee vakjes die op elkaar vallen, hebben dezelfde som. Heeft de lijn een middelste vakje, dan staat er een ruit in en is het cijfer daar de som: het is dus hoog en de partners zijn laag. Anders moet je de som zelf vinden: één bekend paar legt haar vast.

## Inequalities

inequality-sentence = { $n ->
    [1] Het teken
   *[other] Elk teken
} tussen twee vakjes opent zich naar het grootste cijfer.
inequality-row = Rij { $number }: { $signs }
    .short = R{ $number }: { $signs }
inequality-row-sign = kolom { $more } is groter dan kolom { $less }
    .short = k{ $more } is groter dan k{ $less }
inequality-column = Kolom { $number }: { $signs }
    .short = K{ $number }: { $signs }
inequality-column-sign = rij { $more } is groter dan rij { $less }
    .short = r{ $more } is groter dan r{ $less }
inequality-primer = Een teken tussen twee vakjes opent zich naar het grootste cijfer en wijst naar het kleinste. Tekens achter elkaar vormen een trap: onderaan is alleen plaats voor lage cijfers, bovenaan alleen voor hoge. Begin met de langste trappen, en met vakjes die groter of kleiner zijn dan alles eromheen.

## King's move

king-sentence = Vakjes die elkaar met een hoek raken, bevatten verschillende cijfers.
king-primer = Vakjes die elkaar met een hoek raken, bevatten verschillende cijfers, alsof elk cijfer een schaakkoning is die geen tweeling in de buurt duldt. Binnen een blok voegt dit niets toe; het werkt over de grenzen van blokken heen. Een cijfer naast een blok sluit er tot twee extra vakjes in uit.
king-primer--lines = Vakjes die elkaar met een hoek raken, bevatten verschillende cijfers, alsof elk cijfer een schaakkoning is die geen tweeling in de buurt duldt.

## Knight's move

knight-sentence = Vakjes die een paardensprong uit elkaar liggen (twee stappen langs een rij of kolom en dan één opzij), bevatten verschillende cijfers.
knight-primer = Twee vakjes waartussen een schaakpaard kan springen, twee stappen langs een rij of kolom en één opzij, bevatten verschillende cijfers. Een cijfer midden in het diagram bereikt zo acht vakjes, de meeste buiten zijn blok. Zoek blokken waarin een cijfer nog twee plaatsen heeft, allebei een paardensprong van hetzelfde vakje.
knight-primer--lines = Twee vakjes waartussen een schaakpaard kan springen, twee stappen langs een rij of kolom en één opzij, bevatten verschillende cijfers. Een cijfer midden in het diagram bereikt zo acht vakjes. Zoek rijen waarin een cijfer nog twee plaatsen heeft, allebei een paardensprong van hetzelfde vakje.

## Limits

limits-sentence-allowed = { $n ->
    [1] Het vakje
   *[other] Een vakje
} met kleine cijfers in de hoek bevat een daarvan.
limits-sentence-forbidden = { $n ->
    [1] Het vakje
   *[other] Een vakje
} met kleine doorgestreepte cijfers in de hoek bevat geen daarvan.
limits-sentence-both = { $n ->
    [1] Het vakje
   *[other] Een vakje
} met kleine cijfers in de hoek bevat een daarvan, of juist geen als ze doorgestreept zijn.
limits-spoken-only = Alleen { $digits }: { $cells }
limits-spoken-not = Niet { $digits }: { $cells }
limits-primer = In een vakje met kleine cijfers in de hoek rechtsonder kan alleen een daarvan staan; zijn ze doorgestreept, dan kunnen juist die er niet staan. Noteer de kandidaten voordat je begint. Hebben evenveel vakjes van een rij, kolom of blok dezelfde beperking als ze cijfers telt, dan staan die cijfers daar nergens anders.
limits-primer--lines = In een vakje met kleine cijfers in de hoek rechtsonder kan alleen een daarvan staan; zijn ze doorgestreept, dan kunnen juist die er niet staan. Noteer de kandidaten voordat je begint. Hebben evenveel vakjes van een rij of kolom dezelfde beperking als ze cijfers telt, dan staan die cijfers daar nergens anders.

## Low-high lines

low-high-line-sentence = Langs { $n ->
    [1] de laag-hooglijn
   *[other] elke laag-hooglijn
} wisselen lage ({ $least } t/m { $low }) en hoge cijfers ({ $high } t/m { $most }) elkaar af{ $middle ->
    [none] .
   *[other] ; { $middle } komt er niet voor.
}
low-high-line-spoken = Laag-hooglijn: { $line }
low-high-line-primer = Langs een lijn met kantelen wisselen lage en hoge cijfers elkaar af; ze mag met allebei beginnen. In een diagram van 9×9 zijn 1 t/m 4 laag en 6 t/m 9 hoog, en 5 staat nooit op zo’n lijn. Eén cijfer erop legt vast welke vakjes laag zijn. Vier lage vakjes in één rij, kolom of blok verbruiken alle lage cijfers.
low-high-line-primer--lines = Langs een lijn met kantelen wisselen lage en hoge cijfers elkaar af; ze mag met allebei beginnen. In een diagram van 9×9 zijn 1 t/m 4 laag en 6 t/m 9 hoog, en 5 staat nooit op zo’n lijn. Eén cijfer erop legt vast welke vakjes laag zijn. Vier lage vakjes in één rij of kolom verbruiken alle lage cijfers.

## No doubles

no-doubles-sentence = { $touching ->
    [corners] Vakjes die elkaar met een zijde of een hoek raken, bevatten nooit een cijfer en het dubbele daarvan.
   *[sides] Vakjes met een gemeenschappelijke zijde bevatten nooit een cijfer en het dubbele daarvan.
}
no-doubles-zero = Omdat 0 zijn eigen dubbele is, raken twee nullen elkaar nooit.
no-doubles-primer = Twee vakjes met een gemeenschappelijke zijde bevatten nooit een cijfer en het dubbele daarvan: naast een 4 staat geen 2 en geen 8. In een diagram van 9×9 mogen 5, 7 en 9 naast elk cijfer staan; het zijn 1, 2, 4 en 8, en 3 en 6, die uit elkaar moeten blijven. Een vakje naast elke plaats van een 4 in een rij kan geen 2 of 8 zijn.

## Non-consecutive

non-consecutive-sentence = { $touching ->
    [corners] Vakjes die elkaar met een zijde of een hoek raken, bevatten nooit opeenvolgende cijfers.
   *[sides] Vakjes met een gemeenschappelijke zijde bevatten nooit opeenvolgende cijfers.
}
non-consecutive-primer = Twee vakjes met een gemeenschappelijke zijde bevatten nooit opeenvolgende cijfers: naast een 5 staat geen 4 en geen 6. Elk cijfer dat je invult, sluit dus twee cijfers uit in elk buurvakje. Heeft een cijfer in een rij nog maar twee plaatsen met één vakje ertussen, dan kan in dat vakje geen cijfer staan dat één hoger of lager is.

## Numbered rooms

numbered-room-sentence = { $n ->
    [1] Het cijfer
   *[other] Elk cijfer
} in een deur buiten het diagram staat in het n-de vakje van zijn { $line ->
    [row] rij
    [column] kolom
   *[both] rij of kolom
} vanaf die kant; n is het cijfer in het eerste vakje daar.
numbered-room-zero = Het cijfer n is nooit 0.
numbered-room-spoken = { $n ->
    [1] Genummerde kamer
   *[other] Genummerde kamers
} { $side }: { $clues }
numbered-room-primer = Het cijfer het dichtst bij de deur is het nummer van een kamer: staat er een 4 vooraan, dan komt het cijfer in de deur in het vierde vakje van die kant. Alleen een 1 in de deur kan een 1 vooraan hebben, en geen nummer leidt naar een kamer die al bezet is. Begin waar het cijfer in de deur in zijn rij of kolom nog weinig plaatsen heeft, want elke plaats vraagt om één bepaald cijfer vooraan.

## Open cages

open-cage-sentence = De cijfers in { $n ->
    [1] de open kooi
   *[other] elke open kooi
} zijn verschillend{ $parities ->
    [even] { $alone ->
        [yes] ; hun som is even
       *[no] ; hun som is even bij een vierkant
    }
    [odd] { $alone ->
        [yes] ; hun som is oneven
       *[no] ; hun som is oneven bij een cirkel
    }
    [both] ; hun som is even bij een vierkant en oneven bij een cirkel
   *[none] {""}
}{ $letters ->
    [yes] ; kooien met dezelfde letter hebben dezelfde som
   *[no] {""}
}.
open-cage-spoken = { $value ->
    [even] Open kooi met even som: { $cells }
    [odd] Open kooi met oneven som: { $cells }
   *[other] Open kooi met som { $value }: { $cells }
}
open-cage-primer = De cijfers in een open kooi zijn verschillend, maar hun som staat er niet bij. Een klein vierkant in de hoek zegt dat ze even is, een kleine cirkel dat ze oneven is: zijn alle vakjes op één na ingevuld, dan is het laatste alleen even of alleen oneven. Kooien met dezelfde letter hebben dezelfde som: een kleine kooi die bij een grote past, heeft hoge cijfers en de grote lage.

## Palindromes

palindrome-sentence = De cijfers langs { $n ->
    [1] het palindroom
   *[other] elk palindroom
} lees je van beide kanten hetzelfde.
palindrome-spoken = Palindroom: { $line }
palindrome-primer = Een palindroom lees je van beide kanten hetzelfde: het eerste en het laatste vakje zijn gelijk, het tweede en het op een na laatste ook, en een middelste vakje is vrij. Wat in een van zo’n paar is uitgesloten, is ook in het andere uitgesloten; elk paar werkt dus in twee rijen, twee kolommen en twee blokken tegelijk.
palindrome-primer--lines = Een palindroom lees je van beide kanten hetzelfde: het eerste en het laatste vakje zijn gelijk, het tweede en het op een na laatste ook, en een middelste vakje is vrij. Wat in een van zo’n paar is uitgesloten, is ook in het andere uitgesloten; elk paar werkt dus in twee rijen en twee kolommen tegelijk.

## Even and odd

parity-sentence-even = { $even ->
    [1] Het vakje
   *[other] Elk vakje
} met een vierkant bevat een even cijfer.
parity-sentence-odd = { $odd ->
    [1] Het vakje
   *[other] Elk vakje
} met een cirkel bevat een oneven cijfer.
parity-sentence-both = { $even ->
    [1] Het vakje
   *[other] Elk vakje
} met een vierkant bevat een even cijfer, en { $odd ->
    [1] het vakje
   *[other] elk vakje
} met een cirkel een oneven cijfer.
parity-spoken-even = { $n ->
    [1] Even cijfer, met een vierkant: { $cells }
   *[other] Even cijfers, elk met een vierkant: { $cells }
}
parity-spoken-odd = { $n ->
    [1] Oneven cijfer, met een cirkel: { $cells }
   *[other] Oneven cijfers, elk met een cirkel: { $cells }
}
parity-primer = Een vierkant betekent een even cijfer, een cirkel een oneven; in vakjes zonder markering kan allebei. In een diagram van 9×9 heeft elke rij, elke kolom en elk blok vier even en vijf oneven cijfers. Tel dus: weet je van vier vakjes in een rij dat ze even zijn, dan zijn alle andere oneven.
parity-primer--lines = Een vierkant betekent een even cijfer, een cirkel een oneven; in vakjes zonder markering kan allebei. In een diagram van 9×9 heeft elke rij en elke kolom vier even en vijf oneven cijfers. Tel dus: weet je van vier vakjes in een rij dat ze even zijn, dan zijn alle andere oneven.

## Parity lines

parity-line-sentence = Langs { $n ->
    [1] de even-onevenlijn
   *[other] elke even-onevenlijn
} wisselen even en oneven cijfers elkaar af.
parity-line-spoken = Even-onevenlijn: { $line }
parity-line-primer = Langs een lijn met cirkels en vierkanten tussen de vakjes wisselen even en oneven cijfers elkaar af; ze mag met allebei beginnen. Eén cijfer erop legt vast welke vakjes oneven zijn. Tel waar de lijn door één rij of blok loopt: in een diagram van 9×9 zijn er vier even cijfers, dus een lijn langs een hele rij begint en eindigt oneven.
parity-line-primer--lines = Langs een lijn met cirkels en vierkanten tussen de vakjes wisselen even en oneven cijfers elkaar af; ze mag met allebei beginnen. Eén cijfer erop legt vast welke vakjes oneven zijn. Tel waar de lijn door één rij loopt: in een diagram van 9×9 zijn er vier even cijfers, dus een lijn langs een hele rij begint en eindigt oneven.

## Parity runs

parity-run-sentence = { $n ->
    [1] Het getal
   *[other] Elk getal
} na een kleine = buiten het diagram zegt hoeveel cijfers van zijn { $line ->
    [row] rij
    [column] kolom
   *[both] rij of kolom
}, vanaf die kant, allemaal even of allemaal oneven zijn voordat dat wisselt.
parity-run-spoken = { $n ->
    [1] Even-onevenreeks
   *[other] Even-onevenreeksen
} { $side }: { $clues }
parity-run-primer = Kijk vanaf het getal langs de rij of kolom: zoveel cijfers zijn even of zoveel zijn oneven, en het volgende is van de andere soort. In een diagram van 9×9 heeft een rij vijf oneven en vier even cijfers; een reeks van 5 is dus oneven. Weet je van één cijfer van een reeks of het even of oneven is, dan weet je het van alle, en het cijfer daarna is het juist niet.

## Peaks and hollows

peaks-sentence-greater = { $greater ->
    [1] Het vakje
   *[other] Elk vakje
} met een dakje bevat een groter cijfer dan alle vakjes waarmee het een zijde deelt.
peaks-sentence-smaller = { $smaller ->
    [1] Het vakje
   *[other] Elk vakje
} met een kommetje bevat een kleiner cijfer dan alle vakjes waarmee het een zijde deelt.
peaks-sentence-both = { $greater ->
    [1] Het vakje
   *[other] Elk vakje
} met een dakje bevat een groter cijfer dan alle vakjes waarmee het een zijde deelt, en { $smaller ->
    [1] het vakje
   *[other] elk vakje
} met een kommetje een kleiner.
peaks-spoken-greater = { $n ->
    [1] Piek, met een dakje: { $cells }
   *[other] Pieken, elk met een dakje: { $cells }
}
peaks-spoken-smaller = { $n ->
    [1] Dal, met een kommetje: { $cells }
   *[other] Dalen, elk met een kommetje: { $cells }
}
peaks-primer = Een dakje boven een cijfer betekent dat het groter is dan de cijfers ernaast, erboven en eronder; een kommetje eronder dat het kleiner is. De twee buren in de rij verschillen, dus weg van de rand is een cijfer onder een dakje minstens 3, en meestal veel hoger.

## Pointing cells

pointing-sentence = { $n ->
    [1] Het cijfer
   *[other] Elk cijfer
} in een vakje met een pijl zegt hoeveel vakjes verder in de richting van de pijl de { $digit } staat; het volgende vakje is het eerste.
pointing-zero = In een vakje met een pijl staat nooit 0.
pointing-spoken = { $n ->
    [1] Pijl
   *[other] Pijlen
} { $way ->
    [left] naar links: { $cells }
    [right] naar rechts: { $cells }
    [up] omhoog: { $cells }
   *[down] omlaag: { $cells }
}
pointing-primer = Een kleine zwarte pijl in een vakje wijst langs zijn rij of kolom, en het cijfer in het vakje telt hoeveel stappen het van daar is naar een cijfer dat de regel noemt, zoals 9: staat er 3, dan is de 9 drie stappen verder. Het vakje is dus nooit dat cijfer zelf en nooit hoger dan het aantal vakjes ervoor, en achter de pijl staat het cijfer niet. Twee pijlen die op elkaars lijn uitkijken, laten vaak maar één manier van tellen over.

## Corner quadruples

quadruple-sentence = { $several ->
    [yes] De cijfers in { $n ->
        [1] de ring
       *[other] elke ring
    } staan alle ergens in de vier vakjes eromheen
   *[no] Het cijfer in { $n ->
        [1] de ring
       *[other] elke ring
    } staat in een van de vier vakjes eromheen
}{ $repeats ->
    [yes] , een herhaald cijfer minstens zo vaak als het in de ring staat
   *[no] {""}
}.
quadruple-spoken = Ring met { $digits } op de hoek van { $cells }
quadruple-primer = De kleine cijfers in een ring staan ergens in de vier vakjes rond die hoek, elk minstens zo vaak als het in de ring staat; andere cijfers mogen er ook staan als er plaats is. Een ring met vier cijfers laat geen plaats over: in elk van de vakjes staat een daarvan. Een cijfer dat er twee keer in staat, komt in twee vakjes schuin tegenover elkaar.

## Resting thermometers

resting-thermometer-sentence = Langs { $n ->
    [1] de rustende thermometer
   *[other] elke rustende thermometer
} dalen de cijfers van de bol naar de punt nooit; ze stijgen of blijven gelijk.
resting-thermometer-spoken = Rustende thermometer, vanaf de bol: { $line }
resting-thermometer-primer = Een rustende thermometer is getekend als een lege buis. Van de bol met ring naar de punt stijgen de cijfers of blijven ze gelijk: elk is minstens zo hoog als het vorige. Twee vakjes ervan in dezelfde rij, kolom of hetzelfde blok kunnen niet gelijk zijn; daar stijgen de cijfers dus wel. Tel die stappen om te vinden hoe hoog de punt moet zijn en hoe laag de bol.
resting-thermometer-primer--lines = Een rustende thermometer is getekend als een lege buis. Van de bol met ring naar de punt stijgen de cijfers of blijven ze gelijk: elk is minstens zo hoog als het vorige. Twee vakjes ervan in dezelfde rij of kolom kunnen niet gelijk zijn; daar stijgen de cijfers dus wel. Tel die stappen om te vinden hoe hoog de punt moet zijn en hoe laag de bol.

## Rising or falling

rise-or-fall-sentence-none = Vanaf geen enkele kant zijn de eerste { $number } cijfers van een rij of kolom steeds stijgend of steeds dalend.
rise-or-fall-sentence-rise = Waar { $number } balkjes aan de rand naar het diagram toe groeien, stijgen de eerste { $number } cijfers van die { $line ->
    [row] rij
    [column] kolom
   *[both] rij of kolom
} vanaf die kant{ $all ->
    [yes] ; vanaf een kant zonder balkjes zijn de eerste { $number } cijfers van een rij of kolom niet steeds stijgend en niet steeds dalend
   *[no] {""}
}.
rise-or-fall-sentence-fall = Waar { $number } balkjes aan de rand naar het diagram toe krimpen, dalen de eerste { $number } cijfers van die { $line ->
    [row] rij
    [column] kolom
   *[both] rij of kolom
} vanaf die kant{ $all ->
    [yes] ; vanaf een kant zonder balkjes zijn de eerste { $number } cijfers van een rij of kolom niet steeds stijgend en niet steeds dalend
   *[no] {""}
}.
rise-or-fall-sentence-both = Waar { $number } balkjes aan de rand naar het diagram toe groeien, stijgen de eerste { $number } cijfers van die { $line ->
    [row] rij
    [column] kolom
   *[both] rij of kolom
} vanaf die kant; waar ze krimpen, dalen de cijfers{ $all ->
    [yes] ; vanaf een kant zonder balkjes zijn de eerste { $number } cijfers van een rij of kolom niet steeds stijgend en niet steeds dalend
   *[no] {""}
}.
rise-or-fall-spoken = { $n ->
    [1] Helling
   *[other] Hellingen
} { $side }: { $clues }
rise-or-fall-rises = stijgende balkjes
rise-or-fall-falls = dalende balkjes
rise-or-fall-primer = Groeien de balkjes naar het diagram toe, dan stijgen de drie dichtstbijzijnde cijfers vanaf die kant; krimpen ze, dan dalen ze. Hoe hoger het cijfer, hoe langer het balkje. Van drie stijgende cijfers is in een diagram van 9×9 het eerste hoogstens 7 en het laatste minstens 3; twee stijgingen vanuit hetzelfde hoekvakje drukken het samen omlaag. Staan alle balkjes erin, dan is er aan een kant zonder balkjes een keerpunt: het middelste van de drie cijfers is het grootste of het kleinste.

## Rising runs

rising-run-sentence = { $n ->
    [1] Het getal
   *[other] Elk getal
} na een trapje buiten het diagram zegt hoeveel cijfers van zijn { $line ->
    [row] rij
    [column] kolom
   *[both] rij of kolom
} vanaf die kant stijgen voordat er een daalt; het eerste telt mee.
rising-run-spoken = { $n ->
    [1] Stijgende reeks
   *[other] Stijgende reeksen
} { $side }: { $clues }
rising-run-primer = Kijk vanaf het getal langs de rij of kolom: het zegt hoeveel cijfers achter elkaar stijgen, geteld vanaf het dichtstbijzijnde. Na 3 stijgen de eerste drie cijfers en is het vierde kleiner dan het derde; na 1 is het tweede al kleiner dan het eerste. Lange reeksen houden hoge cijfers weg van de rand, en het laatste cijfer van een reeks is groter dan de buren aan weerszijden.

## Same-sum lines

same-sum-line-sentence = Langs { $n ->
    [1] de gelijkesomlijn
   *[other] elke gelijkesomlijn
} hebben elke { $number } opeenvolgende vakjes dezelfde som.
same-sum-line-spoken = Gelijkesomlijn: { $line }
same-sum-line-primer = Langs een spoorlijn heeft elk groepje opeenvolgende vakjes, drie tenzij de regel iets anders zegt, dezelfde som. Schuif één vakje op: één cijfer verlaat de som en een ander komt erbij, dus die twee zijn gelijk. Zo bevatten het eerste, vierde en zevende vakje hetzelfde cijfer, en het tweede en vijfde ook; wat in een daarvan is uitgesloten, is in alle uitgesloten.

## Sandwich sums

sandwich-sentence = { $n ->
    [1] Het getal
   *[other] Elk getal
} tussen twee streepjes buiten het diagram is de som van de cijfers tussen het kleinste en het grootste cijfer van zijn { $line ->
    [row] rij
    [column] kolom
   *[both] rij of kolom
}.
sandwich-spoken = { $n ->
    [1] Sandwichsom
   *[other] Sandwichsommen
} { $side }: { $clues }
sandwich-primer = Het getal buiten een rij of kolom is de som van de cijfers tussen het kleinste en het grootste cijfer; in een diagram van 9×9 zijn deze korsten 1 en 9, in willekeurige volgorde. Een som van 0 betekent dat ze naast elkaar staan, een som van 35 dat ze aan de twee uiteinden staan. Vraag je eerst af hoeveel cijfers de som kunnen vormen, want zo ver staan de korsten uit elkaar.

## Skyscrapers

skyscraper-sentence = { $n ->
    [1] Het getal
   *[other] Elk getal
} in een huisje buiten het diagram zegt hoeveel cijfers van zijn { $line ->
    [row] rij
    [column] kolom
   *[both] rij of kolom
} vanaf die kant te zien zijn; een hoger cijfer verbergt elk lager cijfer erachter.
skyscraper-spoken = { $n ->
    [1] Wolkenkrabbergetal
   *[other] Wolkenkrabbergetallen
} { $side }: { $clues }
skyscraper-primer = Stel je elk cijfer voor als een gebouw met zoveel verdiepingen en kijk vanaf het getal langs de rij of kolom: het zegt hoeveel gebouwen je ziet, want een hoger gebouw verbergt elk lager erachter. Vanaf een 1 zie je alleen het hoogste, dat dus vooraan staat; vanaf een 9 zie je ze in een diagram van 9×9 allemaal, dus ze lopen op. Begin met de grootste getallen, die hoge cijfers weghouden, en zoek de plaats van het hoogste.

## Square blocks

square-block-sentence-magic = In { $n ->
    [1] het somvierkant
   *[other] elk somvierkant
} hebben de rijen, de kolommen en beide diagonalen dezelfde som; cijfers mogen zich herhalen.
square-block-sentence-rows = In { $n ->
    [1] het somvierkant
   *[other] elk somvierkant
} hebben alle rijen dezelfde som; cijfers mogen zich herhalen.
square-block-sentence-columns = In { $n ->
    [1] het somvierkant
   *[other] elk somvierkant
} hebben alle kolommen dezelfde som; cijfers mogen zich herhalen.
square-block-sentence = In { $n ->
    [1] het somvierkant
   *[other] elk somvierkant
} hebben deze lijnen dezelfde som: { $lines }; cijfers mogen zich herhalen.
square-block-lines-magic = rijen, kolommen en diagonalen bij een ster
square-block-lines-rows = rijen bij liggende streepjes
square-block-lines-columns = kolommen bij staande streepjes
square-block-spoken-magic = Tovervierkant: { $cells }
square-block-spoken-rows = Somvierkant met gelijke rijen: { $cells }
square-block-spoken-columns = Somvierkant met gelijke kolommen: { $cells }
square-block-primer = Een dubbele lijn omlijst een somvierkant, en een teken zegt welke lijnen erin dezelfde som hebben: liggende streepjes de rijen, staande streepjes de kolommen, een ster de rijen, de kolommen en beide diagonalen. Cijfers mogen zich herhalen waar rijen, kolommen en blokken dat toelaten. De som van een vierkant met een ster is drie keer het middelste cijfer. Valt het vierkant samen met een heel blok van een diagram van 9×9, dan zijn drie gelijke rijen elk 15.
square-block-primer--lines = Een dubbele lijn omlijst een somvierkant, en een teken zegt welke lijnen erin dezelfde som hebben: liggende streepjes de rijen, staande streepjes de kolommen, een ster de rijen, de kolommen en beide diagonalen. Cijfers mogen zich herhalen waar rijen en kolommen dat toelaten. De som van een vierkant met een ster is drie keer het middelste cijfer.

## Sum marks

sum-marks-sentence-five = { $five ->
    [1] De V
   *[other] Een V
} verbindt cijfers die samen 5 zijn{ $all ->
    [yes] ; buurvakjes zonder teken zijn samen geen 5 en geen 10
   *[no] {""}
}.
sum-marks-sentence-ten = { $ten ->
    [1] De X
   *[other] Een X
} verbindt cijfers die samen 10 zijn{ $all ->
    [yes] ; buurvakjes zonder teken zijn samen geen 5 en geen 10
   *[no] {""}
}.
sum-marks-sentence-both = { $five ->
    [1] De V
   *[other] Een V
} verbindt cijfers die samen 5 zijn, en { $ten ->
    [1] de X
   *[other] een X
} verbindt cijfers die samen 10 zijn{ $all ->
    [yes] ; buurvakjes zonder teken zijn samen geen 5 en geen 10
   *[no] {""}
}.
sum-marks-sentence-none = De som van twee vakjes met een gemeenschappelijke zijde is nooit 5 of 10.
sum-marks-spoken-five = { $n ->
    [1] Teken V
   *[other] Tekens V
} { $where }
sum-marks-spoken-ten = { $n ->
    [1] Teken X
   *[other] Tekens X
} { $where }
sum-marks-primer = Als bij Romeinse cijfers is V 5 en X 10: de twee cijfers naast de letter zijn dat samen. Een V verbindt 1 en 4 of 2 en 3, dus niets boven 4 grenst eraan; een 5 grenst nooit aan een X, want dan was er een tweede 5 naast nodig. Staan alle tekens erin, dan is een grens zonder letter ook een aanwijzing: de cijfers zijn samen geen van beide.

## Thermometers

thermometer-sentence = Langs { $n ->
    [1] de thermometer
   *[other] elke thermometer
} stijgen de cijfers van de bol naar de punt.
thermometer-spoken = Thermometer, vanaf de bol: { $line }
thermometer-primer = Bij elke stap van de ronde bol naar de punt stijgen de cijfers; ze mogen waarden overslaan. Een lange thermometer laat weinig ruimte: in een diagram van 9×9 is het derde van zes vakjes minstens 3 en hoogstens 6. Begin met de langste, en met thermometers door een rij of blok waarin al hoge of lage cijfers staan.
thermometer-primer--lines = Bij elke stap van de ronde bol naar de punt stijgen de cijfers; ze mogen waarden overslaan. Een lange thermometer laat weinig ruimte: in een diagram van 9×9 is het derde van zes vakjes minstens 3 en hoogstens 6. Begin met de langste, en met thermometers door een rij waarin al hoge of lage cijfers staan.

## Windows

windows-sentence = Elk grijs venster bevat elk cijfer één keer.
windows-spoken = Venster: { $cells }
windows-primer = De grijze vensters zijn extra blokken, één vakje van de rand en één vakje van elkaar: elk bevat elk cijfer één keer. De rijen 2 t/m 4 bevatten elk cijfer drie keer, en de twee vensters erin nemen er twee; de negen vakjes naast de vensters bevatten dus ook elk cijfer één keer. Vijf zulke verborgen negentallen liggen tussen en om de vensters van een diagram van 9×9; daar gaat de puzzel open.

## X-sums

x-sum-sentence = { $n ->
    [1] Het getal
   *[other] Elk getal
} na een kleine × buiten het diagram is de som van de eerste X cijfers van zijn { $line ->
    [row] rij
    [column] kolom
   *[both] rij of kolom
} vanaf die kant; X is het eerste daarvan.
x-sum-zero = Is X 0, dan is de som 0.
x-sum-spoken = { $n ->
    [1] X-som
   *[other] X-sommen
} { $side }: { $clues }
x-sum-primer = Het cijfer het dichtst bij het getal, X, zegt hoeveel cijfers je optelt, zichzelf meegeteld: 3, 8 en 1 vooraan maken 12, wat er ook volgt. Kleine sommen vragen om een kleine X; 45 vraagt om 9. Vraag je eerst af welke X de som kan halen: in een diagram van 9×9 heeft 10 vooraan een 2, 3 of 4 nodig.

## Latin squares

latin-primer = In een Latijns vierkant tellen alleen rijen en kolommen: elk bevat elk cijfer één keer, en meer wordt van het diagram niet gevraagd. Elk cijfer staat dus één keer in elke rij, en geen twee van zijn plaatsen liggen in dezelfde kolom. Ontbreekt een cijfer in twee rijen en heeft het daar zijn plaatsen in dezelfde twee kolommen, dan staat het verder nergens in die kolommen. Kijk daarna wat de markeringen toevoegen.
zero-primer = In een diagram waarvan de cijfers bij 0 beginnen, geldt elke regel zoals hij er staat, en een 0 voegt niets aan een som toe. De voorbeelden op deze bladzijden gelden voor cijfers vanaf 1; de getallen erin veranderen dus: een rij van negen vakjes met 0 tot en met 8 komt uit op 36 en niet op 45; ze heeft vijf even en vier oneven cijfers; twee vakjes met som 3 bevatten 0 en 3 of 1 en 2.
overlap-primer = Verscheidene diagrammen vormen samen één puzzel: elk volgt zijn eigen regels, en waar twee elkaar overlappen, staat een cijfer in beide. Begin waar de gegeven cijfers het dichtst staan en ga door zolang een diagram iets oplevert; neem daarna naar het volgende mee wat u in de gedeelde blokken hebt gevonden. Een blok dat twee diagrammen delen, is vaak de sleutel tot allebei: de cijfers ervan moeten bij de rijen en kolommen van beide passen.
holes-primer = Een zwart vakje bevat geen cijfer en hoort bij geen enkele rij of kolom. In de andere vakjes bevat elke rij en elke kolom nog steeds elk cijfer één keer; waar een cijfer weinig plaatsen over heeft, is het snel gevonden. Cijfers aan weerszijden van een zwart vakje zien elkaar langs de lijn, maar raken elkaar niet.
