### What a presenter says. Attributes are further wordings, taken in turn.

## What lies on the table

table-boxes = Una cuadrícula de { $size }×{ $size } { $givens ->
    [0] sin ninguna cifra dada
    [one] con una cifra dada
   *[other] con { $number } cifras dadas
}.
table-irregular = Una cuadrícula de { $size }×{ $size } con regiones irregulares y { $givens ->
    [0] sin ninguna cifra dada
    [one] con una cifra dada
   *[other] con { $number } cifras dadas
}. Sus regiones llevan letras desde la A, en el orden en que las alcanzan las filas.
table-none = Un cuadrado latino de { $size }×{ $size } { $givens ->
    [0] sin ninguna cifra dada
    [one] con una cifra dada
   *[other] con { $number } cifras dadas
}.
table-overlap = { $grids } cuadrículas superpuestas de { $size }×{ $size } { $givens ->
    [0] sin ninguna cifra dada
    [one] con una cifra dada
   *[other] con { $number } cifras dadas
}.
table-holes = Una cuadrícula de { $size }×{ $size } con casillas negras y { $givens ->
    [0] sin ninguna cifra dada
    [one] con una cifra dada
   *[other] con { $number } cifras dadas
}.
symmetry = { $turn } deja el pasatiempo igual, de modo que la mayoría de sus pasos van en parejas.
symmetry-relabelled = { $turn }, con { $cycles }, deja el pasatiempo igual, de modo que la mayoría de sus pasos van en parejas.
cycle-swapped = { $digits } intercambiadas
cycle-round = { $digits } en rotación
turn-half = Un giro de media vuelta
turn-left-right = Una reflexión de izquierda a derecha
turn-top-bottom = Una reflexión de arriba abajo
turn-falling = Una reflexión en la diagonal descendente
turn-rising = Una reflexión en la diagonal ascendente
turn-quarter = Un cuarto de vuelta
turn-quarter-right = Un cuarto de vuelta a la derecha
turn-quarter-left = Un cuarto de vuelta a la izquierda

introduction-singles-crux = Nivel { $band }: todo son solitarios, con el momento difícil a las { $filled } casillas llenas.
introduction-singles-crux-at-start = Nivel { $band }: todo son solitarios, con el momento difícil nada más empezar.
introduction-singles-bottlenecks = Nivel { $band }: todo son solitarios, con algún paso estrecho.
introduction-singles-choice = Nivel { $band }: todo son solitarios, y siempre hay al menos { CASE($choice, "un") } donde elegir.
introduction-singles = Nivel { $band }: todo son solitarios, y ninguno difícil de encontrar.
introduction-stuck-crux = Nivel { $band }: los solitarios se agotan { $times }, y el momento difícil llega a las { $filled } casillas llenas.
introduction-stuck-crux-at-start = Nivel { $band }: los solitarios se agotan { $times }, y el momento difícil llega nada más empezar.
introduction-stuck = Nivel { $band }: los solitarios se agotan { $times }.
introduction-stuck-briefly = Nivel { $band }: los solitarios se agotan { $times }, aunque nunca por mucho tiempo.
times = { $n ->
    [one] una vez
   *[other] { $number } veces
}

## Placements

places-last-of-digit = El último { $digit } va a { $cell }.
    .b = { $house } recibe el último { $digit }, en { $cell }.
places-last-cell = La última casilla { CASE($house, "de") }, { $cell }, recibe el { $digit }.
    .b = A { $house } solo le falta el { $digit }, que va a { $cell }.
    .c = { $house } se cierra con el { $digit } en { $cell }.
places-naked-single = Para { $cell } solo queda el { $digit }.
    .b = En { $cell } solo cabe el { $digit }.
places-hidden-single = En { $house }, solo { $cell } admite el { $digit }.
    .b = { $house } tiene un solo lugar para el { $digit }: { $cell }.
    .c = El { $digit } { CASE($house, "de") } va a { $cell }.
# The same where more of the passage stands before it.
then-last-of-digit = Después, el último { $digit } va a { $cell }.
    .b = { $house } recibe el último { $digit }, en { $cell }.
then-last-cell = La última casilla { CASE($house, "de") }, { $cell }, recibe el { $digit }.
    .b = Ahora a { $house } solo le falta el { $digit }, que va a { $cell }.
    .c = { $house } se cierra con el { $digit } en { $cell }.
    .d = A continuación, la última casilla { CASE($house, "de") }, { $cell }, recibe el { $digit }.
then-naked-single = Ahora para { $cell } solo queda el { $digit }.
    .b = En { $cell } solo cabe el { $digit }.
then-hidden-single = En { $house }, solo { $cell } admite el { $digit }.
    .b = Ahora { $house } tiene un solo lugar para el { $digit }: { $cell }.
    .c = El { $digit } { CASE($house, "de") } va a { $cell }.
    .d = A continuación, en { $house }, solo { $cell } admite el { $digit }.

leaves-last-cell = Eso deja el { $digit } para { $cell }, la última casilla { CASE($house, "de") }.
leaves-naked-single = Eso solo deja el { $digit } para { $cell }.
    .b = Entonces { $cell } tiene que ser { $digit }.
leaves-hidden-single = Eso solo deja { $cell } para el { $digit } en { $house }.
    .b = Con eso, a { $house } solo le queda { $cell } para el { $digit }.
    .c = Por tanto, el { $digit } { CASE($house, "de") } tiene que estar en { $cell }.

opens-last-cell = La última casilla { CASE($house, "de") }, { $cell }, recibe el { $digit }.
opens-naked-single = Eso deja solo el { $digit } en { $cell }.
    .b = Ahora { $cell } solo puede ser { $digit }.
opens-hidden-single = Eso deja { $cell } como único lugar para el { $digit } en { $house }.
    .b = Ahora a { $house } le queda un solo lugar para el { $digit }: { $cell }.
    .c = Con eso, el { $digit } { CASE($house, "de") } va a { $cell }.
    .d = Así, { $house } tiene su { $digit } en { $cell }.

run-starts = Empiece por los { $digit }: { $cells }.
run-completes = Los últimos { $digit }, { $count } en total, van a { $cells }.
    .b = Quedan { $count } { $digit }, que van a { $cells }.
    .c = Los { $digit } se completan con { $cells }.
run-chained = Un { $digit } lleva al siguiente: { $cells }.
    .b = Los { $digit } salen uno de otro: { $cells }.
run-band = El repaso de los { $digit } por { $band } da { $cells }.
    .b = Los { $digit } de { $band } están en { $cells }.
run = Siguen { $count } veces el { $digit }: { $cells }.
    .b = El repaso de los { $digit } da { $cells }.
    .c = Después, los { $digit }: { $cells }.
    .d = Los { $digit } continúan en { $cells }.
band-top = la franja superior
band-middle = la franja central
band-bottom = la franja inferior
band-left = la columna de bloques izquierda
band-centre = la columna de bloques central
band-right = la columna de bloques derecha
fills = { $house } se llena con { $placed }.
    .b = { $house } se completa con { $placed }.

with-image-last-cell = La última casilla { CASE($house, "de") }, { $cell }, recibe el { $digit }, y por simetría { $image } recibe el { $other }.
with-image-naked-single = Para { $cell } solo queda el { $digit }, y por simetría el { $other } para { $image }.
with-image-hidden-single = En { $house }, solo { $cell } admite el { $digit }, y por simetría { $image } recibe el { $other }.
run-with-images = El { $digit } va a { $cells }, y por simetría el { $other } a { $images }.
run-with-images-alike = El { $digit } va a { $cells }, y por simetría también a { $images }.

starts-here = Empiece aquí.
starts-in-house = Empiece por el { $digit } { CASE($house, "de") }: { COUNT($lookers) ->
    [one] el { $digit } de { $lookers } solo deja
   *[other] los { $digit } de { $lookers } solo dejan
} { $cell }.
seen-last-cell = A { $house } solo le falta el { $digit }, que va a { $cell }.
seen-lookers = { COUNT($lookers) ->
    [one] El { $digit } de { $lookers } solo deja
   *[other] Los { $digit } de { $lookers } solo dejan
} { $cell } para el { $digit } en { $house }.
seen-lookers-struck = { COUNT($lookers) ->
    [one] El { $digit }
   *[other] Los { $digit }
} de { $lookers } y lo eliminado antes solo dejan { $cell } para el { $digit } en { $house }.
seen-lookers-marked = { COUNT($lookers) ->
    [one] El { $digit }
   *[other] Los { $digit }
} de { $lookers } y las marcas solo dejan { $cell } para el { $digit } en { $house }.
seen-lookers-struck-marked = { COUNT($lookers) ->
    [one] El { $digit }
   *[other] Los { $digit }
} de { $lookers }, las marcas y lo eliminado antes solo dejan { $cell } para el { $digit } en { $house }.
seen-struck = Lo eliminado antes solo deja { $cell } para el { $digit } en { $house }.
seen-marked = Las marcas solo dejan { $cell } para el { $digit } en { $house }.
seen-struck-marked = Las marcas y lo eliminado antes solo dejan { $cell } para el { $digit } en { $house }.
seen-in-cell = { $held }, así que { $cell } solo puede ser { $digit }.
held-first = { $house } contiene { $digits }
held-next = { $house } añade { $digits }
held-first-others = otras casillas a la vista contienen { $digits }
held-next-others = otras casillas a la vista añaden { $digits }
held-struck = { COUNT($digits) ->
    [one] el { $digits } se descarta por
   *[other] { $digits } se descartan por
} { $steps }
held-marked = su marca descarta { $digits }

fixes = { $count ->
    [one] Una casilla queda fijada
   *[other] { $number } casillas quedan fijadas
} de una vez por { $marks }: { $placed }.
taken-from-proof = Aquí acaba la escala de técnicas, y la demostración tiene que ayudar con { $placed }.
falls-into-place = Desde aquí todo encaja: { $placed }.
    .b = El resto encaja: { $placed }.
remains = Lo que queda es { $placed }.
ending-more = { $most }, { $next }
ending-last = { $most } y, por último, { $last }

## Where it gets narrow

few-lone-naked = Cuidado aquí: con { $filled } casillas llenas, el único solitario está desnudo.
    .b = A las { $filled } casillas no hay más que un solitario desnudo.
    .c = A las { $filled } casillas hay un solo solitario a la vista, y está desnudo.
few-naked = A las { $filled } casillas solo quedan solitarios desnudos: { CASE($number, "un") }.
    .b = A las { $filled } casillas no hay más que { CASE($number, "un") } solitarios desnudos.
few = Mire con atención: con { $filled } casillas llenas hay { $singles ->
    [one] un solo solitario
   *[other] solo { CASE($number, "un") } solitarios
}.
    .b = A las { $filled } casillas hay { $singles ->
    [one] un único solitario
   *[other] apenas { CASE($number, "un") } solitarios
}.
crux-lone-naked = Llega el momento difícil: con { $filled } casillas llenas, el único solitario está desnudo.
crux-naked = Llega el momento difícil: a las { $filled } casillas solo quedan solitarios desnudos: { CASE($number, "un") }.
crux-few = Llega el momento difícil: con { $filled } casillas llenas hay { $singles ->
    [one] un solo solitario
   *[other] solo { CASE($number, "un") } solitarios
}.
stuck = Con { $filled } casillas llenas no queda ningún solitario.
    .b = A las { $filled } casillas se agotan los solitarios.
    .c = A las { $filled } casillas no queda ningún solitario.
stuck-at-start = No hay ningún solitario para empezar.
stuck-long = Con { $filled } casillas llenas no queda ningún solitario, y hacen falta otros medios: { $steps }.
    .b = A las { $filled } casillas se agotan los solitarios; para seguir hay que recurrir a otros medios: { $steps }.
stuck-long-at-start = No hay ningún solitario para empezar, y hacen falta otros medios: { $steps }.
crux = Llega el momento difícil: con { $filled } casillas llenas no queda ningún solitario, y hacen falta otros medios: { $steps }.
crux-at-start = Llega el momento difícil: no hay ningún solitario para empezar, y hacen falta otros medios: { $steps }.
aim-hidden-single = El objetivo es el { $digit } { CASE($house, "de") }, que irá a { $cell } en cuanto desaparezca de { $rival-cells }.
aim-naked-single = El objetivo es { $cell }, que será { $digit } en cuanto { COUNT($rival-digits) ->
    [one] desaparezca de ella el { $rival-digits }
   *[other] desaparezcan de ella { $rival-digits }
}.

## Eliminations

names = Busque { $technique }.
    .b = Es el turno de { $technique }.
    .c = Esto pide { $technique }.
same-holds = Lo mismo vale para { $mark }, así que { $gone }.
by-symmetry = Por simetría, { $gone }.
by-symmetry-places = Por simetría, { $cell } recibe el { $digit }.
by-symmetry-opens = Por simetría, { $gone }, y { $cell } recibe el { $digit }.
    .b = La imagen simétrica da lo mismo: { $gone }, y { $cell } recibe el { $digit }.
follow-end = Siguen { $number } suposiciones, y cada una deja { $house } sin lugar para el { $digit }.
follow-mark = Siguen { $number } suposiciones; { $mark } las resuelve todas.
follow-kind = Siguen { $number } suposiciones, y en todas el tropiezo es el mismo: { $marks }.
follow-tried-digit = Siguen { $number } suposiciones, todas sobre el { $tried-digit }.
follow-tried-cell = Siguen { $number } suposiciones, todas sobre { $tried-cell }.
follow-tried-house = Siguen { $number } suposiciones, todas en { $tried-house }.
follow = Siguen { $number } suposiciones.
more-alike = Del mismo modo, { $count ->
    [one] una más muestra
   *[other] { $number } más muestran
} que { $gone }.
