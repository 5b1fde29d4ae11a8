### Three hints for a puzzle: where to look, what to look for, the step itself.

hint-where = Con { $filled } casillas llenas: { $where }.
hint-where-at-start = Al empezar: { $where }.
hint-cells = { COUNT($cells) ->
    [one] la casilla { $cells }
   *[other] las casillas { $cells }
}
hint-around = las casillas que rodean { $cell }

hint-what-last-cell = La última casilla vacía.
hint-what-hidden-single = Una cifra que ahí solo tiene un lugar.
hint-what-naked-single = Una casilla de esa zona con una sola cifra posible.
hint-what-fixed = La cifra que queda.
hint-what-mark = Cifras que descarta { GENDER($noun) ->
    [feminine] la
   *[masculine] el
} { $noun }.
hint-what-mark--king = Cifras que descarta el paso del rey.
hint-what-mark--knight = Cifras que descarta el salto del caballo.
hint-what-mark--barred-sums = Cifras que darían con una vecina una suma prohibida.
hint-what-mark--no-doubles = Cifras que quedarían junto a su mitad o su doble.
hint-what-mark--non-consecutive = Cifras que quedarían junto a la anterior o la siguiente.
hint-what-locked-candidates = Una cifra cuyos lugares ahí coinciden todos en otra { house-any }.
hint-what-naked-pair = Dos casillas a las que solo les quedan las mismas dos cifras.
hint-what-naked-triple = Tres casillas a las que, entre todas, les quedan tres cifras.
hint-what-naked-quad = Cuatro casillas a las que, entre todas, les quedan cuatro cifras.
hint-what-hidden-pair = Dos cifras que tienen los mismos dos lugares.
hint-what-hidden-triple = Tres cifras que comparten tres lugares.
hint-what-hidden-quad = Cuatro cifras que comparten cuatro lugares.
hint-what-x-wing = Una cifra que en dos filas solo cabe en las mismas dos columnas, o al revés: un ala X.
hint-what-swordfish = Una cifra que en tres filas solo cabe en las mismas tres columnas, o al revés: un pez espada.
hint-what-jellyfish = Una cifra que en cuatro filas solo cabe en las mismas cuatro columnas, o al revés: una medusa.
hint-what-seen-by-all-places = Una casilla que se ve desde todos los lugares de una cifra.
hint-what-either-way = Un candidato que ahí queda descartado, se elija lo que se elija.
hint-what-what-if = Una cifra que lleva pronto a una contradicción.
# A pattern that is named by its name alone.
hint-what = { $technique }.
