### What things are called: cells and digits in lists, houses, marks, techniques. “de” is a house after that preposition.

quotation-marks = « » “ ”
alphabet = a b c d e f g h i j k l m n ñ o p q r s t u v w x y z

## Lists

list-more = { $most }, { $next }
# “e” before the sound of “i”, “u” before that of “o”: 8 is ocho, 11 is once.
list-and = { START($last) ->
    [i] { $most } e { $last }
   *[other] { $most } y { $last }
}
list-or = { $last ->
    [8] { $most } u { $last }
    [11] { $most } u { $last }
   *[other] { START($last) ->
        [o] { $most } u { $last }
       *[other] { $most } o { $last }
    }
}
list-alike = { $most } con { $last }
clauses-more = { $most }, { $next }
clauses-or = { $most }, o { $last }
clauses-and = { $most }, y { $last }

# Feminine, as cells are; “un” is the masculine.
number = { $n ->
    [0] cero
    [1] una
    [2] dos
    [3] tres
    [4] cuatro
    [5] cinco
    [6] seis
    [7] siete
    [8] ocho
    [9] nueve
    [10] diez
    [11] once
    [12] doce
   *[other] { $n }
}
    .un = { $n ->
    [0] cero
    [1] un
    [2] dos
    [3] tres
    [4] cuatro
    [5] cinco
    [6] seis
    [7] siete
    [8] ocho
    [9] nueve
    [10] diez
    [11] once
    [12] doce
   *[other] { $n }
}

digits-run = { $first } a { $last }
candidate = { $digit } en { $cell }
placed = { $digits } en { $cells }
tried = { OR($digits) } en { OR($cells) }

## Houses

# Any house of the grid itself, by what the grid is divided into. Its first word is feminine, without an article.
house-any = { $divided ->
    [none] fila o columna
    [regions] fila, columna o región
   *[boxes] fila, columna o bloque
}
house-row = la fila { $number }
    .de = de la fila { $number }
    .gender = feminine
    .short = la f{ $number }
    .de-short = de la f{ $number }
house-column = la columna { $number }
    .de = de la columna { $number }
    .gender = feminine
    .short = la c{ $number }
    .de-short = de la c{ $number }
house-region = la región { $letter }
    .de = de la región { $letter }
    .gender = feminine
house-box = { $place ->
    [middle-centre] el bloque central
    [top-left] el bloque superior izquierdo
    [top-centre] el bloque superior central
    [top-right] el bloque superior derecho
    [middle-left] el bloque central izquierdo
    [middle-right] el bloque central derecho
    [bottom-left] el bloque inferior izquierdo
    [bottom-centre] el bloque inferior central
    [bottom-right] el bloque inferior derecho
   *[other] el bloque que empieza en { $cell }
}
    .de = { $place ->
    [middle-centre] del bloque central
    [top-left] del bloque superior izquierdo
    [top-centre] del bloque superior central
    [top-right] del bloque superior derecho
    [middle-left] del bloque central izquierdo
    [middle-right] del bloque central derecho
    [bottom-left] del bloque inferior izquierdo
    [bottom-centre] del bloque inferior central
    [bottom-right] del bloque inferior derecho
   *[other] del bloque que empieza en { $cell }
}
    .gender = masculine
house-of-rule = { GENDER($noun) ->
    [feminine] la { $noun } de { $cell }
   *[masculine] el { $noun } de { $cell }
}
    .de = { GENDER($noun) ->
    [feminine] de la { $noun } de { $cell }
   *[masculine] del { $noun } de { $cell }
}
house-diagonals-falling = la diagonal descendente
    .de = de la diagonal descendente
    .gender = feminine
house-diagonals-rising = la diagonal ascendente
    .de = de la diagonal ascendente
    .gender = feminine
house-disjoint-groups = el grupo de las casillas en el lugar { $number } de cada bloque
    .de = del grupo de las casillas en el lugar { $number } de cada bloque
    .gender = masculine
house-disjoint-groups-of-nine = { $n ->
    [1] el grupo de las casillas superiores izquierdas de los bloques
    [2] el grupo de las casillas superiores centrales de los bloques
    [3] el grupo de las casillas superiores derechas de los bloques
    [4] el grupo de las casillas centrales izquierdas de los bloques
    [5] el grupo de las casillas centrales de los bloques
    [6] el grupo de las casillas centrales derechas de los bloques
    [7] el grupo de las casillas inferiores izquierdas de los bloques
    [8] el grupo de las casillas inferiores centrales de los bloques
   *[9] el grupo de las casillas inferiores derechas de los bloques
}
    .de = { $n ->
    [1] del grupo de las casillas superiores izquierdas de los bloques
    [2] del grupo de las casillas superiores centrales de los bloques
    [3] del grupo de las casillas superiores derechas de los bloques
    [4] del grupo de las casillas centrales izquierdas de los bloques
    [5] del grupo de las casillas centrales de los bloques
    [6] del grupo de las casillas centrales derechas de los bloques
    [7] del grupo de las casillas inferiores izquierdas de los bloques
    [8] del grupo de las casillas inferiores centrales de los bloques
   *[9] del grupo de las casillas inferiores derechas de los bloques
}
    .gender = masculine
house-windows-rows = la parte de las filas { $number } a { $last } fuera de las ventanas
    .de = de la parte de las filas { $number } a { $last } fuera de las ventanas
    .gender = feminine
    .short = la parte de las f{ $number }-{ $last } fuera de las ventanas
    .de-short = de la parte de las f{ $number }-{ $last } fuera de las ventanas
house-windows-columns = la parte de las columnas { $number } a { $last } fuera de las ventanas
    .de = de la parte de las columnas { $number } a { $last } fuera de las ventanas
    .gender = feminine
    .short = la parte de las c{ $number }-{ $last } fuera de las ventanas
    .de-short = de la parte de las c{ $number }-{ $last } fuera de las ventanas
house-windows-crossing = el cruce de las filas y columnas que pasan entre las ventanas
    .de = del cruce de las filas y columnas que pasan entre las ventanas
    .gender = masculine
houses-row = las filas { $numbers }
    .de = de las filas { $numbers }
    .short = las f{ $numbers }
    .de-short = de las f{ $numbers }
houses-column = las columnas { $numbers }
    .de = de las columnas { $numbers }
    .short = las c{ $numbers }
    .de-short = de las c{ $numbers }
whole-grid = toda la cuadrícula
# After “row”, “column”, or “rows” with several numbers, where grids overlap.
line-in-grid = { $number } de la cuadrícula { $grid }

## Marks, by where they are anchored

mark-line = { GENDER($noun) ->
    [feminine] la { $noun } que va de { $first } a { $last }
   *[masculine] el { $noun } que va de { $first } a { $last }
}
mark-at = { $value ->
    [none] { GENDER($noun) ->
        [feminine] la { $noun } de { $cell }
       *[masculine] el { $noun } de { $cell }
    }
   *[other] { GENDER($noun) ->
        [feminine] la { $noun } de { $value } en { $cell }
       *[masculine] el { $noun } de { $value } en { $cell }
    }
}
mark-between = { $value ->
    [none] { GENDER($noun) ->
        [feminine] la { $noun } entre { $one } y { $other }
       *[masculine] el { $noun } entre { $one } y { $other }
    }
   *[other] { GENDER($noun) ->
        [feminine] la { $noun } { $value } entre { $one } y { $other }
       *[masculine] el { $noun } { $value } entre { $one } y { $other }
    }
}
mark-between-missing = la falta de { $noun } entre { $one } y { $other }
    .gender = feminine
# Where a clue outside the grid stands.
beside-line = { $side ->
    [left] a la izquierda de la fila { $line }
    [right] a la derecha de la fila { $line }
    [top] encima de la columna { $line }
   *[bottom] debajo de la columna { $line }
}
    .short = { $side ->
        [left] a la izquierda de la f{ $line }
        [right] a la derecha de la f{ $line }
        [top] encima de la c{ $line }
       *[bottom] debajo de la c{ $line }
    }
mark-outside = { GENDER($noun) ->
    [feminine] la { $noun } { $value }
   *[masculine] el { $noun } { $value }
} { $where }
mark-slanting = { GENDER($noun) ->
    [feminine] la { $noun } { $value }
   *[masculine] el { $noun } { $value }
} que parte de { $start } { $way ->
    [down-right] hacia abajo a la derecha
    [down-left] hacia abajo a la izquierda
    [up-right] hacia arriba a la derecha
   *[up-left] hacia arriba a la izquierda
}
mark-lettered = { GENDER($noun) ->
    [feminine] la { $noun } { $letter }
   *[masculine] el { $noun } { $letter }
}
mark-joined = { GENDER($noun) ->
    [feminine] las { $nouns } que unen { $cells }
   *[masculine] los { $nouns } que unen { $cells }
}
mark-whole = { GENDER($noun) ->
    [feminine] la { $noun }
   *[masculine] el { $noun }
}
mark-again = { GENDER($noun) ->
    [feminine] la misma { $noun }
   *[masculine] el mismo { $noun }
}
marks = { GENDER($noun) ->
    [feminine] las { $nouns }
   *[masculine] los { $nouns }
}

## Kinds of rules: one mark, several, the heading

kind-arithmetic-cage = jaula aritmética
    .many = jaulas aritméticas
    .title = Jaulas aritméticas
    .gender = feminine
kind-arrow = flecha
    .many = flechas
    .title = Flechas
    .gender = feminine
kind-barred-sums = prohibición de sumas
    .many = prohibiciones de sumas
    .title = Sumas prohibidas
    .gender = feminine
kind-border-values = número entre casillas
    .many = números entre casillas
    .title = Números entre casillas
    .gender = masculine
kind-bounded-line = línea acotada
    .many = líneas acotadas
    .title = Líneas acotadas
    .gender = feminine
kind-cage = jaula
    .many = jaulas
    .title = Jaulas
    .gender = feminine
kind-clone = clon
    .many = clones
    .title = Clones
    .gender = masculine
kind-consecutive-bars = barra
    .many = barras
    .title = Barras de consecutivas
    .gender = feminine
kind-consecutive-line = línea de consecutivas
    .many = líneas de consecutivas
    .title = Líneas de consecutivas
    .gender = feminine
kind-counting-area = zona de recuento
    .many = zonas de recuento
    .title = Zonas de recuento
    .gender = feminine
kind-diagonal-sum = suma diagonal
    .many = sumas diagonales
    .title = Sumas diagonales
    .gender = feminine
kind-diagonals = diagonal
    .many = diagonales
    .title = Diagonales
    .gender = feminine
kind-difference-line = línea de diferencias
    .many = líneas de diferencias
    .title = Líneas de diferencias
    .gender = feminine
kind-disjoint-groups = grupo disjunto
    .many = grupos disjuntos
    .title = Grupos disjuntos
    .gender = masculine
kind-dots = punto
    .many = puntos
    .title = Puntos
    .gender = masculine
kind-equal-part-line = línea de partes iguales
    .many = líneas de partes iguales
    .title = Líneas de partes iguales
    .gender = feminine
kind-even-step-line = línea de pasos iguales
    .many = líneas de pasos iguales
    .title = Líneas de pasos iguales
    .gender = feminine
kind-extra-region = región adicional
    .many = regiones adicionales
    .title = Regiones adicionales
    .gender = feminine
kind-first-seen = cifra cercana
    .many = cifras cercanas
    .title = Cifras cercanas
    .gender = feminine
kind-fortress = fortaleza
    .many = fortalezas
    .title = Fortalezas
    .gender = feminine
kind-frame-product = producto del marco
    .many = productos del marco
    .title = Productos del marco
    .gender = masculine
kind-frame-sum = suma del marco
    .many = sumas del marco
    .title = Sumas del marco
    .gender = feminine
kind-hinge-line = línea con bisagra
    .many = líneas con bisagra
    .title = Líneas con bisagra
    .gender = feminine
kind-inequality = signo de desigualdad
    .many = signos de desigualdad
    .title = Desigualdades
    .gender = masculine
kind-king = paso del rey
    .many = pasos del rey
    .title = Paso del rey
    .gender = masculine
kind-knight = salto del caballo
    .many = saltos del caballo
    .title = Salto del caballo
    .gender = masculine
kind-limits = límite
    .many = límites
    .title = Límites
    .gender = masculine
kind-low-high-line = línea de altibajos
    .many = líneas de altibajos
    .title = Líneas de altibajos
    .gender = feminine
kind-no-doubles = prohibición de dobles
    .many = prohibiciones de dobles
    .title = Sin dobles
    .gender = feminine
kind-non-consecutive = prohibición de vecinas consecutivas
    .many = prohibiciones de vecinas consecutivas
    .title = Sin consecutivas
    .gender = feminine
kind-numbered-room = habitación numerada
    .many = habitaciones numeradas
    .title = Habitaciones numeradas
    .gender = feminine
kind-open-cage = jaula abierta
    .many = jaulas abiertas
    .title = Jaulas abiertas
    .gender = feminine
kind-palindrome = palíndromo
    .many = palíndromos
    .title = Palíndromos
    .gender = masculine
kind-parity = casilla par o impar
    .many = casillas pares e impares
    .title = Pares e impares
    .gender = feminine
kind-parity-line = línea de paridad
    .many = líneas de paridad
    .title = Líneas de paridad
    .gender = feminine
kind-parity-run = racha de paridad
    .many = rachas de paridad
    .title = Rachas de paridad
    .gender = feminine
kind-peaks = tejado o cuenco
    .many = tejados y cuencos
    .title = Picos y valles
    .gender = masculine
kind-pointing = casilla con flecha
    .many = casillas con flecha
    .title = Casillas con flecha
    .gender = feminine
kind-quadruple = anillo
    .many = anillos
    .title = Anillos en las esquinas
    .gender = masculine
kind-resting-thermometer = termómetro con pausas
    .many = termómetros con pausas
    .title = Termómetros con pausas
    .gender = masculine
kind-rise-or-fall = pendiente
    .many = pendientes
    .title = Subidas y bajadas
    .gender = feminine
kind-rising-run = racha creciente
    .many = rachas crecientes
    .title = Rachas crecientes
    .gender = feminine
kind-same-sum-line = línea de sumas iguales
    .many = líneas de sumas iguales
    .title = Líneas de sumas iguales
    .gender = feminine
kind-sandwich = suma sándwich
    .many = sumas sándwich
    .title = Sumas sándwich
    .gender = feminine
kind-skyscraper = rascacielos
    .many = rascacielos
    .title = Rascacielos
    .gender = masculine
kind-square-block = cuadrado de sumas
    .many = cuadrados de sumas
    .title = Cuadrados de sumas
    .gender = masculine
kind-sum-marks = marca de suma
    .many = marcas de suma
    .title = Marcas de suma
    .gender = feminine
kind-thermometer = termómetro
    .many = termómetros
    .title = Termómetros
    .gender = masculine
kind-windows = ventana
    .many = ventanas
    .title = Ventanas
    .gender = feminine
kind-x-sum = suma X
    .many = sumas X
    .title = Sumas X
    .gender = feminine

## Marks that are called otherwise

marks-king = el paso del rey
marks-knight = el salto del caballo
marks-non-consecutive = la prohibición de vecinas consecutivas
mark-non-consecutive = el lado común de { $one } y { $other }
    .gender = masculine
mark-non-consecutive-whole = la prohibición de vecinas consecutivas
mark-border-values-sum = la suma { $value } entre { $one } y { $other }
    .gender = feminine
mark-border-values-difference = la diferencia { $value } entre { $one } y { $other }
    .gender = feminine
mark-border-values-product = el producto { $value } entre { $one } y { $other }
mark-border-values-quotient = el cociente { $value } entre { $one } y { $other }
mark-border-values-missing = la falta de número entre { $one } y { $other }
    .gender = feminine
mark-non-consecutive-corner = la esquina común de { $one } y { $other }
    .gender = feminine
marks-no-doubles = la prohibición de dobles
mark-no-doubles = el lado común de { $one } y { $other }
    .gender = masculine
mark-no-doubles-corner = la esquina común de { $one } y { $other }
    .gender = feminine
mark-no-doubles-whole = la prohibición de dobles
marks-barred-sums = la prohibición de sumas
mark-barred-sums = el lado común de { $one } y { $other }
    .gender = masculine
mark-barred-sums-corner = la esquina común de { $one } y { $other }
    .gender = feminine
mark-barred-sums-whole = la prohibición de sumas
mark-dots-white = el punto blanco entre { $one } y { $other }
mark-dots-black = el punto negro entre { $one } y { $other }
mark-sum-marks-V = la V entre { $one } y { $other }
mark-sum-marks-X = la X entre { $one } y { $other }
mark-sum-marks-missing = la falta de V o X entre { $one } y { $other }
mark-rise-or-fall-rise = la subida { $where }
mark-rise-or-fall-fall = la bajada { $where }
mark-rise-or-fall-missing = la falta de barras { $where }
mark-rising-run-joined = las rachas crecientes que llegan a { $cells }
mark-parity-run-joined = las rachas de paridad a ambos extremos de { $cells }
mark-rise-or-fall-joined = las subidas y bajadas que llegan a { $cells }
mark-inequality = el signo entre { $one } y { $other }
mark-inequality-joined = los signos que unen { $cells }
mark-limits-joined = los límites de { $cells }
mark-fortress-joined = las fortalezas de { $cells }
mark-pointing = la flecha de { $cell }
mark-parity-even = el cuadrado de { $cell }
    .gender = masculine
mark-parity-odd = el círculo de { $cell }
    .gender = masculine
mark-parity-joined = las casillas pares e impares de entre { $cells }
mark-peaks-greater = el tejado de { $cell }
mark-peaks-smaller = el cuenco de { $cell }
mark-peaks-joined = los tejados y cuencos de { $cells }
mark-cage-joined = las jaulas que cubren { $cells }
mark-arithmetic-cage = la jaula aritmética de { $value } en { $cell }
mark-arithmetic-cage-joined = las jaulas aritméticas que cubren { $cells }
mark-counting-area = la zona de recuento con { $value } en { $cell }
mark-square-block-magic = el cuadrado mágico de { $cell }
mark-open-cage-even = la jaula par de { $cell }
mark-open-cage-odd = la jaula impar de { $cell }
mark-open-cage-lettered = el conjunto de jaulas { $letter }
    .gender = masculine

## Techniques: plainly, one of them, several ($count in words)

technique-last-cell = última casilla vacía
    .one = una última casilla vacía
    .many = { $count } últimas casillas vacías
technique-hidden-single = solitario oculto
    .one = un solitario oculto
    .many = { $count } solitarios ocultos
technique-naked-single = solitario desnudo
    .one = un solitario desnudo
    .many = { $count } solitarios desnudos
technique-locked-candidates = candidatos bloqueados
    .one = candidatos bloqueados
    .many = { $count } grupos de candidatos bloqueados
technique-naked-pair = par desnudo
    .one = un par desnudo
    .many = { $count } pares desnudos
technique-naked-triple = trío desnudo
    .one = un trío desnudo
    .many = { $count } tríos desnudos
technique-naked-quad = cuarteto desnudo
    .one = un cuarteto desnudo
    .many = { $count } cuartetos desnudos
technique-hidden-pair = par oculto
    .one = un par oculto
    .many = { $count } pares ocultos
technique-hidden-triple = trío oculto
    .one = un trío oculto
    .many = { $count } tríos ocultos
technique-hidden-quad = cuarteto oculto
    .one = un cuarteto oculto
    .many = { $count } cuartetos ocultos
technique-x-wing = ala X
    .one = un ala X
    .many = { $count } alas X
technique-swordfish = pez espada
    .one = un pez espada
    .many = { $count } peces espada
technique-jellyfish = medusa
    .one = una medusa
    .many = { $count } medusas
technique-finned-x-wing = ala X con aleta
    .one = un ala X con aleta
    .many = { $count } alas X con aleta
technique-finned-swordfish = pez espada con aleta
    .one = un pez espada con aleta
    .many = { $count } peces espada con aleta
technique-finned-jellyfish = medusa con aleta
    .one = una medusa con aleta
    .many = { $count } medusas con aleta
technique-xy-wing = ala XY
    .one = un ala XY
    .many = { $count } alas XY
technique-xyz-wing = ala XYZ
    .one = un ala XYZ
    .many = { $count } alas XYZ
technique-w-wing = ala W
    .one = un ala W
    .many = { $count } alas W
technique-single-digit-chain = cadena de una sola cifra
    .one = una cadena de una sola cifra
    .many = { $count } cadenas de una sola cifra
technique-alternating-chain = cadena alterna
    .one = una cadena alterna
    .many = { $count } cadenas alternas
technique-extended-chain = cadena ampliada
    .one = una cadena ampliada
    .many = { $count } cadenas ampliadas
technique-either-way = candidato descartado en cualquier caso
    .one = un candidato descartado en cualquier caso
    .many = { $count } candidatos descartados en cualquier caso
technique-seen-by-all-places = casilla vista desde todos los lugares de una cifra
    .one = una casilla vista desde todos los lugares de una cifra
    .many = { $count } casillas vistas desde todos los lugares de una cifra
technique-what-if = suposición
    .one = una suposición
    .many = { $count } suposiciones
technique-beyond = paso fuera de la escala
    .one = un paso fuera de la escala
    .many = { $count } pasos fuera de la escala
