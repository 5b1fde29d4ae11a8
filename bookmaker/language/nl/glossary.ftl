### What solvers’ words mean, for readers of hints. `.signs`: what hints that need the word say, with bars between them; what
### these begin with is enough, and capitals do not matter.

term-alternating-chain = Wisselketen
    .signs = wisselketen
    .meaning = Vakjes en cijfers die zo verbonden zijn dat als het ene niet klopt, het volgende wel klopt. Welk uiteinde van de keten ook waar is: een cijfer dat beide uiteinden uitsluiten, vervalt.
term-cell-seen-by-all-places-of-a-digit = Vakje dat alle plaatsen van een cijfer ziet
    .signs = alle plaatsen van een cijfer
    .meaning = Waar het cijfer in een groep ook komt, het sluit zichzelf uit in één vakje daarbuiten: in dat vakje kan het niet staan.
term-combination = Combinatie
    .signs = combinatie
    .meaning = Een stel cijfers met het gevraagde totaal, die in de vakjes mogen staan.
term-contradiction = Tegenspraak
    .signs = tegenspraak
    .meaning = Een vakje zonder cijfer, een cijfer zonder plaats of een markering waaraan niet te voldoen is. Wat daartoe leidde, was dus fout.
term-eliminate = Vervallen
    .signs = vervalt | vervallen
    .meaning = Een cijfer vervalt in een vakje als het daar niet meer kan staan. Wat nog niet vervallen is, zijn de kandidaten van het vakje; veel oplossers noteren ze klein in de hoek.
term-finned-pattern = Patroon met vin
    .signs = x-wing met vin | zwaardvis met vin | kwal met vin
    .meaning = Een X-wing of een grotere vis die door een of twee extra plaatsen, de vinnen, niet helemaal klopt. Wat zowel het patroon als elke vin uitsluit, vervalt toch.
term-hidden-pair-triple-quad = Verborgen paar, drietal, viertal
    .signs = dezelfde twee plaatsen | drie plaatsen delen | vier plaatsen delen
    .meaning = Twee cijfers met dezelfde twee plaatsen in een groep hebben beide vakjes voor zichzelf nodig, wat daar verder ook mogelijk leek. Hetzelfde geldt voor drie cijfers met drie plaatsen en vier met vier.
term-hidden-single = Verborgen single
    .signs = maar één plaats | één plaats voor
    .meaning = Een cijfer dat in een groep maar in één vakje past, ook als dat vakje nog andere cijfers toelaat. Kijk waar het cijfer in de buurt al staat.
term-house = Groep
    .signs = rij | kolom | blok | gebied
    .meaning = Een rij, een kolom{ $divided ->
        [none] {""}
        [regions] , een gebied
        [boxes] , een blok
       *[both] , een blok of gebied
    } of een andere verzameling vakjes waarin geen cijfer twee keer voorkomt.
term-step-beyond-the-ladder = Stap voorbij de ladder
    .signs = voorbij de ladder | eindigt de ladder
    .meaning = Geen van de patronen die hier een naam hebben, helpt nog verder; het cijfer komt uit het bewijs dat er één oplossing is.
term-jellyfish = Kwal
    .signs = kwal
    .meaning = Een zwaardvis met vier rijen en vier kolommen.
term-last-empty-cell = Laatste lege vakje
    .signs = laatste lege vakje | laatste leeg vakje
    .meaning = In een groep die op één vakje na vol is, komt daar het cijfer dat nog ontbreekt.
term-locked-candidates = Opgesloten kandidaten
    .signs = opgesloten kandidaten | nog een tweede
    .meaning = Liggen alle plaatsen voor een cijfer in de ene groep ook in een tweede groep, dan is het cijfer daar vergeven: nergens anders in die tweede groep kan het staan.
term-mark = Markering
    .signs = markering
    .meaning = Wat in of naast een diagram staat afgedrukt voor een van de regels: een thermometer, een kooi, een stip, een getal aan de rand.
term-naked-pair-triple-quad = Naakt paar, drietal, viertal
    .signs = dezelfde twee cijfers over | drie cijfers over | vier cijfers over
    .meaning = Twee vakjes van een groep waarin dezelfde twee cijfers over zijn, verbruiken die allebei; geen ander vakje van de groep krijgt er dus een. Hetzelfde geldt voor drie vakjes met drie cijfers en vier met vier.
term-naked-single = Naakte single
    .signs = maar één cijfer | kan alleen
    .meaning = Een vakje waarvoor rij, kolom{ $divided ->
        [none] {""}
        [regions] , gebied
       *[boxes] , blok
    } en markeringen samen maar één cijfer overlaten. Tel af wat het vakje ziet.
term-see = Zien
    .signs = ziet | zien
    .meaning = Twee vakjes zien elkaar als er niet hetzelfde cijfer in kan staan, omdat ze in dezelfde groep liggen of omdat een regel het zegt.
term-single-digit-chain = Keten van één cijfer
    .signs = keten van één cijfer
    .meaning = Plaatsen van één cijfer, telkens twee in een groep, die een keten vormen. Een van de twee uiteinden is waar; een vakje dat beide ziet, kan het cijfer dus niet bevatten.
term-swordfish = Zwaardvis
    .signs = zwaardvis
    .meaning = Een X-wing met drie rijen en drie kolommen.
term-whole-cages = Hele kooien
    .signs = is 45
    .meaning = De cijfers 1 t/m 9 zijn samen 45. Trek de kooien af die helemaal in een groep liggen: wat overblijft, is voor de andere vakjes.
term-w-wing = W-wing
    .signs = w-wing
    .meaning = Twee vakjes waarin dezelfde twee cijfers over zijn, verbonden door een groep waarin een van de twee maar twee plaatsen heeft, elk gezien door een van de vakjes. Het andere cijfer staat in een van beide; een vakje dat ze allebei ziet, kan het dus niet bevatten.
term-what-if = Wat-alsvraag
    .signs = stel | wat-als | al snel
    .meaning = Probeer in gedachten een cijfer, volg wat daaruit gedwongen volgt, en streep het door als dat op een tegenspraak uitloopt. Houd het kort.
term-x-wing = X-wing
    .signs = x-wing
    .meaning = Twee rijen waarin een cijfer alleen in dezelfde twee kolommen kan. Het staat in tegenoverliggende hoeken, dus verder komt het in die kolommen nergens. Rijen en kolommen mogen van rol wisselen.
term-xy-wing = XY-wing
    .signs = xy-wing
    .meaning = Een vakje met twee cijfers over ziet twee andere, die elk een van die cijfers delen en samen een derde. Wat er ook in het eerste staat, een van de andere twee is het derde cijfer; een vakje dat beide ziet, is het dus niet.
term-xyz-wing = XYZ-wing
    .signs = xyz-wing
    .meaning = Een XY-wing waarvan het eerste vakje ook het derde cijfer kan bevatten. Alleen in vakjes die alle drie zien, vervalt het.
term-extended-chain = Uitgebreide keten
    .signs = uitgebreide keten
    .meaning = Een wisselketen waarvan de schakels ook groepen vakjes kunnen zijn, of wat een teken nog toelaat. Wat beide uiteinden uitsluiten, vervalt.
term-either-way = Hoe dan ook uitgesloten cijfer
    .signs = geen enkele keuze | hoe dan ook uitgesloten
    .meaning = Neem een vakje met weinig cijfers, of een cijfer met weinig plaatsen, en bekijk elke keuze. Wat ze allemaal uitsluiten, op het oog of door een teken, vervalt.
