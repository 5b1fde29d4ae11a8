### What solvers’ words mean, for readers of hints. A term is named for the technique, claim or concept that asks for it
### (`tell/concepts.py`).

term-alternating-chain = Catena alternata
    .meaning = Caselle e cifre legate in modo che, se una è falsa, la seguente è vera. Qualunque dei due capi sia vero, una cifra che entrambi escludono è eliminata.
term-seen-by-all = Casella vista da tutti i posti di una cifra
    .meaning = Ovunque la cifra vada in un’unità, esclude sé stessa da una medesima casella esterna: quella casella non può contenerla.
term-combination = Combinazione
    .meaning = Un gruppo di cifre che dà il totale richiesto e può stare nelle caselle.
term-contradiction = Contraddizione
    .meaning = Una casella senza cifra, una cifra senza posto o un segno che non si può rispettare. Ciò che vi ha portato era sbagliato.
term-eliminate = Eliminare
    .meaning = Escludere una cifra da una casella. Le cifre non ancora eliminate sono i candidati della casella, che molti annotano in piccolo in un angolo.
term-fins = Figura con pinna
    .meaning = Un X-wing o un pesce più grande guastato da uno o due posti di troppo, le pinne. Ciò che escludono sia la figura sia ciascuna pinna è eliminato comunque.
term-hidden-subset = Coppia, terna, quaterna nascosta
    .meaning = Due cifre che in un’unità hanno gli stessi due posti occupano da sole le due caselle, qualunque altra cifra vi sembrasse possibile. Lo stesso vale per tre cifre e tre posti, quattro cifre e quattro posti.
term-hidden-single = Singolo nascosto
    .meaning = Una cifra che può stare in una sola casella di un’unità, anche se quella casella potrebbe riceverne altre. Guardate dove la cifra compare già nei dintorni.
term-house = Unità
    .meaning = Una riga, una colonna{ $divided ->
        [none] {""}
        [regions] , una regione
        [boxes] , un riquadro
       *[both] , un riquadro o una regione
    } o qualsiasi altro gruppo di caselle in cui nessuna cifra si ripete.
term-jellyfish = Medusa
    .meaning = Un pesce spada con quattro righe e quattro colonne.
term-last-cell = Ultima casella vuota
    .meaning = In un’unità piena tranne una casella, questa riceve la cifra che manca.
term-locked = Candidati bloccati
    .meaning = Quando tutti i posti per una cifra in un’unità stanno anche in una seconda, la cifra è impegnata lì: nella seconda non va da nessun’altra parte.
term-mark = Segno
    .meaning = Ciò che è stampato nella griglia, o accanto, per una delle sue regole: un termometro, una gabbia, un pallino, un numero a bordo griglia.
term-naked-subset = Coppia, terna, quaterna nuda
    .meaning = Due caselle di un’unità a cui restano solo le stesse due cifre le usano entrambe: nessun’altra casella dell’unità ne contiene una. Lo stesso vale per tre caselle e tre cifre, quattro caselle e quattro cifre.
term-naked-single = Singolo nudo
    .meaning = Una casella a cui riga, colonna{ $divided ->
        [none] {""}
        [regions] , regione
       *[boxes] , riquadro
    } e segni lasciano insieme una sola cifra. Contate quelle che vede.
term-sight = Vedere
    .meaning = Due caselle si vedono se non possono contenere la stessa cifra, perché condividono un’unità o perché lo dice una regola.
term-single-digit-chain = Catena di una sola cifra
    .meaning = Posti di una stessa cifra, due per unità, legati uno all’altro. Uno dei due capi è vero: una casella che li vede entrambi non può contenere la cifra.
term-swordfish = Pesce spada
    .meaning = Un X-wing con tre righe e tre colonne.
term-left-over--cage = Gabbie intere
    .meaning = Le cifre da 1 a 9 sommano 45. Togliete le gabbie che stanno per intero in un’unità: quel che resta spetta alle altre caselle.
term-w-wing = W-wing
    .meaning = Due caselle a cui restano solo le stesse due cifre, unite da un’unità in cui una delle due cifre ha solo due posti, ciascuno visto da una delle caselle. L’altra cifra è in una delle due: una casella che le vede entrambe non può contenerla.
term-what-if = Ipotesi
    .meaning = Provate una cifra a mente, seguite ciò che impone e cancellatela se finisce in una contraddizione. Fermatevi alle catene corte.
term-x-wing = X-wing
    .meaning = Due righe in cui una cifra ha posto solo nelle stesse due colonne. Sta in due angoli opposti, perciò in quelle colonne non va da nessun’altra parte. Righe e colonne possono scambiarsi le parti.
term-xy-wing = XY-wing
    .meaning = Una casella con due cifre possibili che ne vede altre due: ciascuna ha in comune con essa una cifra diversa, ed entrambe hanno una stessa terza cifra. Qualunque cifra contenga la prima, la terza è in una delle altre: una casella che le vede entrambe non può contenerla.
term-xyz-wing = XYZ-wing
    .meaning = Un XY-wing la cui prima casella può contenere anche la terza cifra. La perdono solo le caselle che vedono tutte e tre.
term-extended-chain = Catena estesa
    .meaning = Una catena alternata i cui anelli possono essere anche gruppi di caselle, o ciò che un segno lascia possibile. Ciò che entrambi i capi escludono è eliminato.
term-either-way = Cifra esclusa in ogni caso
    .meaning = Prendete una casella con poche cifre, o una cifra con pochi posti, e guardate ogni scelta. Ciò che tutte escludono, a vista o per un segno, è eliminato.
