### What solvers’ words mean, for readers of hints. A term is named for the technique, claim or concept that asks for it
### (`tell/concepts.py`).

term-alternating-chain = Wisselketen
    .meaning = Vakjes en cijfers die zo verbonden zijn dat als het ene niet klopt, het volgende wel klopt. Welk uiteinde van de keten ook waar is: een cijfer dat beide uiteinden uitsluiten, vervalt.
term-seen-by-all = Vakje dat alle plaatsen van een cijfer ziet
    .meaning = Waar het cijfer in een groep ook komt, het sluit zichzelf uit in één vakje daarbuiten: in dat vakje kan het niet staan.
term-combination = Combinatie
    .meaning = Een stel cijfers met het gevraagde totaal, die in de vakjes mogen staan.
term-contradiction = Tegenspraak
    .meaning = Een vakje zonder cijfer, een cijfer zonder plaats of een markering waaraan niet te voldoen is. Wat daartoe leidde, was dus fout.
term-eliminate = Vervallen
    .meaning = Een cijfer vervalt in een vakje als het daar niet meer kan staan. Wat nog niet vervallen is, zijn de kandidaten van het vakje; veel oplossers noteren ze klein in de hoek.
term-fins = Patroon met vin
    .meaning = Een X-wing of een grotere vis die door een of twee extra plaatsen, de vinnen, niet helemaal klopt. Wat zowel het patroon als elke vin uitsluit, vervalt toch.
term-hidden-subset = Verborgen paar, drietal, viertal
    .meaning = Twee cijfers met dezelfde twee plaatsen in een groep hebben beide vakjes voor zichzelf nodig, wat daar verder ook mogelijk leek. Hetzelfde geldt voor drie cijfers met drie plaatsen en vier met vier.
term-hidden-single = Verborgen single
    .meaning = Een cijfer dat in een groep maar in één vakje past, ook als dat vakje nog andere cijfers toelaat. Kijk waar het cijfer in de buurt al staat.
term-house = Groep
    .meaning = Een rij, een kolom{ $divided ->
        [none] {""}
        [regions] , een gebied
        [boxes] , een blok
       *[both] , een blok of gebied
    } of een andere verzameling vakjes waarin geen cijfer twee keer voorkomt.
term-jellyfish = Kwal
    .meaning = Een zwaardvis met vier rijen en vier kolommen.
term-last-cell = Laatste lege vakje
    .meaning = In een groep die op één vakje na vol is, komt daar het cijfer dat nog ontbreekt.
term-locked = Opgesloten kandidaten
    .meaning = Liggen alle plaatsen voor een cijfer in de ene groep ook in een tweede groep, dan is het cijfer daar vergeven: nergens anders in die tweede groep kan het staan.
term-mark = Markering
    .meaning = Wat in of naast een diagram staat afgedrukt voor een van de regels: een thermometer, een kooi, een stip, een getal aan de rand.
term-naked-subset = Naakt paar, drietal, viertal
    .meaning = Twee vakjes van een groep waarin dezelfde twee cijfers over zijn, verbruiken die allebei; geen ander vakje van de groep krijgt er dus een. Hetzelfde geldt voor drie vakjes met drie cijfers en vier met vier.
term-naked-single = Naakte single
    .meaning = Een vakje waarvoor rij, kolom{ $divided ->
        [none] {""}
        [regions] , gebied
       *[boxes] , blok
    } en markeringen samen maar één cijfer overlaten. Tel af wat het vakje ziet.
term-sight = Zien
    .meaning = Twee vakjes zien elkaar als er niet hetzelfde cijfer in kan staan, omdat ze in dezelfde groep liggen of omdat een regel het zegt.
term-single-digit-chain = Keten van één cijfer
    .meaning = Plaatsen van één cijfer, telkens twee in een groep, die een keten vormen. Een van de twee uiteinden is waar; een vakje dat beide ziet, kan het cijfer dus niet bevatten.
term-swordfish = Zwaardvis
    .meaning = Een X-wing met drie rijen en drie kolommen.
term-left-over--cage = Hele kooien
    .meaning = De cijfers 1 t/m 9 zijn samen 45. Trek de kooien af die helemaal in een groep liggen: wat overblijft, is voor de andere vakjes.
term-w-wing = W-wing
    .meaning = Twee vakjes waarin dezelfde twee cijfers over zijn, verbonden door een groep waarin een van de twee maar twee plaatsen heeft, elk gezien door een van de vakjes. Het andere cijfer staat in een van beide; een vakje dat ze allebei ziet, kan het dus niet bevatten.
term-what-if = Wat-alsvraag
    .meaning = Probeer in gedachten een cijfer, volg wat daaruit gedwongen volgt, en streep het door als dat op een tegenspraak uitloopt. Houd het kort.
term-x-wing = X-wing
    .meaning = Twee rijen waarin een cijfer alleen in dezelfde twee kolommen kan. Het staat in tegenoverliggende hoeken, dus verder komt het in die kolommen nergens. Rijen en kolommen mogen van rol wisselen.
term-xy-wing = XY-wing
    .meaning = Een vakje met twee cijfers over ziet twee andere, die elk een van die cijfers delen en samen een derde. Wat er ook in het eerste staat, een van de andere twee is het derde cijfer; een vakje dat beide ziet, is het dus niet.
term-xyz-wing = XYZ-wing
    .meaning = Een XY-wing waarvan het eerste vakje ook het derde cijfer kan bevatten. Alleen in vakjes die alle drie zien, vervalt het.
term-extended-chain = Uitgebreide keten
    .meaning = Een wisselketen waarvan de schakels ook groepen vakjes kunnen zijn, of wat een teken nog toelaat. Wat beide uiteinden uitsluiten, vervalt.
term-either-way = Hoe dan ook uitgesloten cijfer
    .meaning = Neem een vakje met weinig cijfers, of een cijfer met weinig plaatsen, en bekijk elke keuze. Wat ze allemaal uitsluiten, op het oog of door een teken, vervalt.
