### The book's own words: headings, the page on how to read it, what stands around puzzles, keys and hints.
### The reader is addressed as “je”.

## Headings

heading-contents = Inhoud
heading-foreword = Voorwoord
heading-guide = Zo lees je dit boek
heading-text-guide = Zo lees je deze uitgave
heading-primer = De regels, één voor één
heading-hints = Hints
heading-glossary = Woorden in de hints
heading-times = Tijden
heading-keys = Oplossingen
heading-answer-key = Oplossing
heading-credits = Verantwoording
heading-index = Register
heading-imprint = Colofon
heading-notes = Aantekeningen
heading-latin = Latijnse vierkanten
heading-zero = Cijfers vanaf 0
heading-by-setter = Per maker
heading-by-rule = Per regel
titled = { $title }: { $what }
chapter-titled = Hoofdstuk { $number }: { $title }

## The five bands of difficulty, gentlest first

band-1 = Ommetje
band-2 = Wandeling
band-3 = Trektocht
band-4 = Klim
band-5 = Top

## How to read the book

cell-names = Vakjes heten naar hun rij (r) en kolom (c): r5c2 is het vakje in rij 5, kolom 2.
houses-explained = Een groep is een rij, een kolom{ $areas ->
    [boxes] , een blok
    [regions] , een gebied
    [both] , een blok of gebied
   *[none] {""}
} of een andere verzameling vakjes waarin geen cijfer twee keer voorkomt.
guide-ridge = Naast elke titel staat een bergkam van vijf toppen, die laat zien hoe moeilijk de puzzel is. De toppen kleuren van links af, van { $first } tot { $last }. Het getal erbij is de moeilijkheid: het cijfer voor de komma telt de toppen, het cijfer erachter laat zien hoe dichtbij de volgende is.
guide-order-difficulty = De puzzels staan op volgorde van moeilijkheid, de makkelijkste eerst.
guide-order-listed = De puzzels staan in de volgorde die de redactie heeft gekozen.
guide-order-chapters = De puzzels zijn in hoofdstukken ingedeeld; in elk hoofdstuk staat de makkelijkste voorop.
guide-rules = De regels bij een diagram zijn volledig en gelden alle tegelijk. Elk soort markering staat nog eens afgebeeld naast de zin die haar uitlegt. De diagrammen zijn gemaakt voor potlood: je kunt over elke markering heen schrijven.
guide-rules-shared = De regels bij een diagram en aan het begin van zijn hoofdstuk zijn volledig en gelden alle tegelijk. Elk soort markering staat nog eens afgebeeld naast de zin die haar uitlegt. De diagrammen zijn gemaakt voor potlood: je kunt over elke markering heen schrijven.
guide-large = In de grootste diagrammen volgen na het cijfer 9 letters: A staat voor 10, B voor 11, enzovoort. I en O ontbreken, omdat ze op 1 en 0 lijken.
guide-proved = Elke puzzel heeft precies één oplossing: dat is voor het drukken uitputtend nagegaan, en daarna is de oplossing aan de regels getoetst.
guide-draft = Dit is een proefdruk: een puzzel kan hier geen oplossing hebben, of meer dan één.
guide-hints = Loop je vast, sla dan de drie hints bij elke puzzel op, vóór de oplossingen: waar je moet kijken, waarnaar je zoekt en wat de volgende stap is.
guide-hints-in-pad = Loop je vast, sla dan de drie hints bij elke puzzel op, na het laatste blad: waar je moet kijken, waarnaar je zoekt en wat de volgende stap is.
guide-keys = De oplossingen staan achterin; de gegeven cijfers zijn er vet gedrukt.
guide-keys-in-pad = De oplossing staat op de achterkant van elk blad; de gegeven cijfers zijn er vet gedrukt.
guide-profile = De lijn onder elke oplossing toont het verloop: ze stijgt waar een stap meer zoekwerk vraagt, en pijlpunten wijzen de lastige momenten aan.
guide-credits = Na de oplossingen volgt de verantwoording: wanneer puzzels voor het eerst te zien waren en wie toestemming gaf.
guide-credits-in-pad = Aan het eind volgt de verantwoording: wanneer puzzels voor het eerst te zien waren en wie toestemming gaf.
guide-text-marks = Rijen zijn genummerd van boven naar beneden, kolommen van links naar rechts; een leeg vakje vul je in. Waar rijen en kolommen samen worden genoemd, gaat het om alle vakjes waar ze elkaar kruisen. De vakjes van een lijn staan in de volgorde van de lijn, zodat kolommen of rijen ook terug kunnen lopen.
guide-text-below = Onder elke regel staan de markeringen die erbij horen.
guide-text-pictured = Onder de afbeelding wordt elk diagram nog eens weergegeven, in woorden en als tabel, die je kunt openklappen.
guide-text-bands = Het niveau van een puzzel, van { $first } tot { $last }, zegt hoe moeilijk hij is. De moeilijkheid is een getal: het cijfer voor de komma telt de niveaus, het cijfer erachter laat zien hoe dichtbij het volgende is.

## What a grid asks

grid-asks = Vul het diagram zo in dat { $houses ->
    [lines] elke rij en elke kolom
    [boxes] elke rij, elke kolom en elk blok
   *[regions] elke rij, elke kolom en elk omlijnd gebied
} { $symbols } precies één keer bevat.
# The same where several grids overlap.
grids-ask = Vul alle diagrammen zo in dat in elk ervan elke rij, elke kolom en elk blok { $symbols } precies één keer bevat. Een vakje dat diagrammen delen, telt in elk daarvan mee.
holes-stand = Zwarte vakjes blijven leeg.
# “1 to 9”, kept on one line.
symbols-digits = de cijfers { $low } t/m { $high }
symbols-and-letter = de cijfers { $low } t/m { $high } en de letter { $last }
symbols-and-two-letters = de cijfers { $low } t/m { $high } en de letters { $first } en { $last }
symbols-and-letters = de cijfers { $low } t/m { $high } en de letters { $first } t/m { $last }
symbols-and-letters-without = de cijfers { $low } t/m { $high } en de letters { $first } t/m { $last } zonder { $without }
symbols-letters = de letters { $letters }
letters-stand = Hier staan letters in plaats van cijfers.
row-spells = rij { $number } vormt { $word }
    .short = r{ $number } vormt { $word }
column-spells = kolom { $number } vormt { $word }
    .short = k{ $number } vormt { $word }
cells-spell = de vakjes van { $first } tot { $last } vormen { $word }
boxes-have = Een blok heeft { $high } en { $wide }.
rows-counted = { $n ->
    [1] één rij
   *[other] { $number } rijen
}
columns-counted = { $n ->
    [1] één kolom
   *[other] { $number } kolommen
}
region-at = Gebied { $number }: { $cells }
# Where one of several overlapping grids lies.
grid-at = diagram { $grid }: rij { $top } t/m { $bottom }, kolom { $left } t/m { $right }
    .short = diagram { $grid }: r{ $top }-{ $bottom }, k{ $left }-{ $right }
grid-boxes = Klassiek
grid-regions = Onregelmatig
grid-lines = Latijns vierkant
grids-overlap = Overlappende diagrammen
grid-holes = Zwarte vakjes
latin-with = Latijns vierkant met { $rules }
rule-titled = { $title }: { $sentence }
# A rule that holds in some of several grids, $grids being their letters.
rule-in-grids = { $n ->
    [1] Diagram { $grids }
   *[other] Diagrammen { $grids }
}: { $sentence }

## Around a puzzle

puzzle-numbered = Puzzel { $number }
puzzle-named = Puzzel { $name }
key-to = Oplossing van puzzel { $name }
hints-for = Hints bij puzzel { $name }
back-to = Terug naar puzzel { $number }
difficulty-of = moeilijkheid { $figure }
band-said = { $band }, niveau { $number } van 5, moeilijkheid { $figure }.
set-by = Gemaakt door { $setter }.
puzzles-by = Puzzels van { $setters }
edited-by = Samengesteld door { $editor }
first-shown = voor het eerst getoond: { $date }
points = { $n ->
    [1] 1 punt
   *[other] { $n } punten
}
flaw-none = Geen oplossing
flaw-several = Meer dan één oplossing
flaw-undecided = Niet beslist
draft = PROEF
time = Tijd
isbn = ISBN { $number }
isbn-printed = ISBN { $number } (gedrukt)
isbn-ebook = ISBN { $number } (e-boek)
index-note = De getallen zijn puzzelnummers.
key-on-page = Oplossing op bladzijde
hints-on-page = Hints op bladzijde
page = bladzijde
terms-on-page = Woorden die nieuw kunnen zijn, staan uitgelegd op bladzijde
steps-counted = { $n ->
    [1] 1 stap
   *[other] { $number } stappen
}
rules-face-grid = De regels van de volgende puzzel staan tegenover zijn diagram.
puzzles-counted = { $n ->
    [1] één puzzel
   *[other] { $number } puzzels
}

rules-of-chapter = Voor elke puzzel in dit hoofdstuk:
belongs-to = Dit boek is van
begun-on = Begonnen op
finished-on = Klaar op

## Hints

hints-note = Bij elke puzzel horen drie hints, over het eerste lastige moment. Elke hint verklapt meer dan de vorige, en de volgende staat nooit in het zicht. Vakjes heten naar hun rij (r) en kolom (c): r5c2 is het vakje in rij 5, kolom 2.
hints-note-sheet = Bij elke puzzel horen drie hints, over het eerste lastige moment. Elke hint verklapt meer dan de vorige: leg een blad papier over wat eronder staat. Vakjes heten naar hun rij (r) en kolom (c): r5c2 is het vakje in rij 5, kolom 2.
hints-note-text = Bij elke puzzel horen drie hints, over het eerste lastige moment. Elke hint verklapt meer dan de vorige. Open alleen de hint die je wilt lezen.
hint-level-1 = Waar je kijkt
hint-level-2 = Wat je zoekt
hint-level-3 = De volgende stap
hints-level-1 = Hints: waar je kijkt
hints-level-2 = Hints: wat je zoekt
hints-level-3 = Hints: de volgende stap
hints-overleaf-2 = De tweede hints staan op de achterkant.
hints-overleaf-3 = De derde hints staan op de achterkant.
hint-leads-2 = tweede hint bij puzzel { $number }
hint-leads-3 = derde hint bij puzzel { $number }
hint-leads-key = oplossing van puzzel { $number }
hint-leads-puzzle = puzzel { $number }

## Handouts and contests

name = Naam
date = Datum
copy-of = Exemplaar { $number } van { $count }
check-row = Als een diagram klaar is, neem dan de cijfers uit de vakjes met een letter over in de hokjes van de controlerij. Je blad wordt daarmee nagekeken.
marker-sheet = Nakijkblad
marker-help = Leg de controlerijen van een blad naast deze. Een rij die klopt, levert meteen de punten op; wijkt een rij af of lijkt een diagram niet af, vergelijk het dan met de oplossing op de achterkant.
of-points = van { $points }
total-of = Totaal van { $points }
minutes = minuten
place = Plaats
total = Totaal

## Covers

cover-count = { $number } { $n ->
    [1] puzzel met precies één oplossing.
   *[other] puzzels, elk met precies één oplossing.
}
cover-sample = Nr. { $number }
cover-puzzles = { $n ->
    [1] puzzel
   *[other] puzzels
}
cover-kinds = { $n ->
    [1] soort regel
   *[other] soorten regels
}

## The presenter’s crib

crib = Spiekbrief voor wie presenteert
crib-steps = De getallen in de marge tellen de stappen van de oplosroute.
crib-look = kijk hier
crib-look-along = kijk hierlangs
crib-next = nu invullen
crib-eliminated = vervalt
crib-supposed = verondersteld
crib-step = stap { $first }
crib-run = stap { $first }–{ $last }
crib-follows = wat volgt, in deze volgorde
cells-filled = { $number } vakjes ingevuld
start = Het begin
solution = De oplossing
story-set-by = { $title }, gemaakt door { $setter }
story-setter = gemaakt door { $setter }
story-crux = Het lastige moment
story-onwards = Daarna verder
story-ending = Naar het einde

## The chart of all rules

chart = De regels en hun markeringen
chart-subject = Elk soort regel met zijn markering en zijn zin
chart-lines = Langs lijnen
chart-cells = In vakjes en gebieden
chart-borders = Tussen vakjes en op hoeken
chart-outside = Buiten het diagram
chart-whole = In het hele diagram, zonder markering
