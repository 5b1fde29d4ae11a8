### What each kind of rule asks, in a sentence under a puzzle, singular or plural as there are marks ($n); how it is taught in
### the primer; and how its marks are told to those who do not see them ($cells, $line: which cells; $where: on which borders;
### $side: on which side of the grid).

## Arithmetic cages

result-sum = la suma (+)
result-product = el producto (×)
result-difference = la diferencia (−)
result-quotient = el cociente (÷)
# $results: the signs that are there. $unsigned: is there a number without a sign; in pairs, it may be any of the four.
arithmetic-cage-sentence-signs = El número en la esquina de { $n ->
    [one] la jaula aritmética
   *[other] cada jaula aritmética
} es { $results } de sus cifras{ $unsigned ->
    [pairs] ; sin signo, es la suma, el producto, la diferencia o el cociente de sus cifras
    [larger] ; sin signo, es la suma o el producto de sus cifras
   *[none] {""}
}{ $larger ->
    [differ] ; dentro no se repiten cifras
    [repeat] ; dentro pueden repetirse cifras
   *[no] {""}
}.
arithmetic-cage-sentence-unsigned = El número en la esquina de { $n ->
    [one] la jaula aritmética
   *[other] cada jaula aritmética
} es { $unsigned ->
    [pairs] la suma, el producto, la diferencia o el cociente de sus cifras
   *[larger] la suma o el producto de sus cifras
}{ $larger ->
    [differ] ; dentro no se repiten cifras
    [repeat] ; dentro pueden repetirse cifras
   *[no] {""}
}.
arithmetic-cage-spoken = Jaula aritmética con { $sort ->
    [sum] la suma { $number }
    [product] el producto { $number }
    [difference] la diferencia { $number }
    [quotient] el cociente { $number }
   *[none] { $number } sin signo
}: { $cells }
arithmetic-cage-primer = El signo en la esquina de una jaula aritmética dice qué dan sus cifras: su suma (+), su producto (×), su diferencia (−) o su cociente (÷), con la cifra mayor delante; si no hay signo, hay que averiguarlo. Empiece por los productos: pocos son divisibles entre 5 o entre 7, y cuando el número lo es, la jaula tiene que contener esa cifra. En una cuadrícula de 9×9, una jaula con ÷ solo tiene un 5 o un 7 junto a un 1, y una diferencia grande exige una cifra baja y otra alta.

## Arrows

arrow-sentence = Las cifras a lo largo de { $n ->
    [one] la flecha
   *[other] cada flecha
} suman la cifra de su círculo.
# An oval is read like a number; $all: are there ovals only, and no circle.
arrow-sentence-ovals = Las cifras a lo largo de { $n ->
    [one] la flecha
   *[other] cada flecha
} suman el número de su { $all ->
    [yes] óvalo
   *[no] círculo u óvalo
}, que se lee { $ways ->
    [across] de izquierda a derecha
    [down] de arriba abajo
   *[both] de izquierda a derecha o de arriba abajo
}.
arrow-zero = El número de un óvalo nunca empieza por 0.
arrow-circle = el círculo en { $cells }
arrow-oval = el óvalo en { $cells }, leído { $way ->
    [across] de izquierda a derecha
   *[down] de arriba abajo
}
arrow-spoken = Flecha desde { $start }: { $line }
arrow-primer = Las cifras del asta de una flecha, desde la contigua al círculo hasta la punta, suman el número del círculo; pueden repetirse si las filas, columnas y bloques lo permiten. Si de un círculo salen varias astas, cada una suma lo mismo. Un óvalo sobre dos o tres casillas contiene un número de dos o tres cifras. Tres casillas de un mismo bloque suman al menos 6, así que las astas largas exigen círculos altos y cifras bajas.
# Where no grid of the book has boxes.
arrow-primer--lines = Las cifras del asta de una flecha, desde la contigua al círculo hasta la punta, suman el número del círculo; pueden repetirse si las filas y columnas lo permiten. Si de un círculo salen varias astas, cada una suma lo mismo. Un óvalo sobre dos o tres casillas contiene un número de dos o tres cifras. Tres casillas de una misma fila suman al menos 6, así que las astas largas exigen círculos altos y cifras bajas.

## Barred sums

barred-sums-sentence = { $touching ->
    [corners] Dos casillas que se tocan, por un lado o por una esquina, nunca suman { $sums }.
   *[sides] Dos casillas que comparten un lado nunca suman { $sums }.
}
barred-sums-primer = Dos casillas que comparten un lado nunca suman ninguno de los números que nombra la regla. Si se prohíbe el 10, no hay un 6 junto a un 4 ni un 9 junto a un 1: por cada número prohibido, una cifra descarta otra en sus vecinas, y la mitad de un número par queda libre. Cuando todos los lugares de una cifra en una fila o bloque son contiguos a una casilla, en ella no puede estar su pareja.
# Where no grid of the book has boxes.
barred-sums-primer--lines = Dos casillas que comparten un lado nunca suman ninguno de los números que nombra la regla. Si se prohíbe el 10, no hay un 6 junto a un 4 ni un 9 junto a un 1: por cada número prohibido, una cifra descarta otra en sus vecinas, y la mitad de un número par queda libre. Cuando todos los lugares de una cifra en una fila son contiguos a una casilla, en ella no puede estar su pareja.

## Border values

border-values-sum = la suma ({ $sign })
border-values-difference = la diferencia ({ $sign })
border-values-product = el producto ({ $sign })
border-values-quotient = el cociente ({ $sign })
border-values-sentence = { $n ->
    [one] El número
   *[other] Cada número
} entre dos casillas es { $results } de sus cifras.
border-values-sentence-all = { $n ->
    [one] El número
   *[other] Cada número
} entre dos casillas es { $results } de sus cifras; ninguna pareja de vecinas sin número entre ellas { $never }.
border-values-never-sum = suma { $numbers }
border-values-never-difference = difiere en { $numbers }
border-values-never-product = da el producto { $numbers }
border-values-never-quotient = da el cociente { $numbers }
border-values-spoken-sum = { $n ->
    [one] Suma { $number }
   *[other] Sumas { $number }
} { $where }
border-values-spoken-difference = { $n ->
    [one] Diferencia { $number }
   *[other] Diferencias { $number }
} { $where }
border-values-spoken-product = { $n ->
    [one] Producto { $number }
   *[other] Productos { $number }
} { $where }
border-values-spoken-quotient = { $n ->
    [one] Cociente { $number }
   *[other] Cocientes { $number }
} { $where }
border-values-primer = El número en un recuadro pequeño entre dos casillas dice qué dan sus cifras: tras + su suma, tras − su diferencia, tras × su producto, tras / la mayor dividida entre la menor. Los productos, sumas y cocientes grandes son los que menos opciones dejan: en una cuadrícula de 9×9, ×35 son 5 y 7, +17 son 8 y 9, /5 son 1 y 5. Cuando están dados todos esos números, la falta de número entre dos casillas también informa.

## Bounded lines

bounded-line-sentence = Las cifras a lo largo de { $n ->
    [one] la línea acotada
   *[other] cada línea acotada
} están estrictamente entre las dos cifras con corchete de sus extremos.
bounded-line-spoken = Línea acotada, de extremo a extremo: { $line }
bounded-line-primer = Las cifras de la línea están comprendidas entre las dos de sus extremos, marcadas con corchetes; ninguna de estas dos aparece en medio. Por eso la cifra más baja y la más alta nunca están en el interior de la línea, y si tres casillas interiores comparten fila, columna o bloque, los extremos se llevan al menos cuatro. Averigüe primero cuál de los extremos es el mayor.
# Where no grid of the book has boxes.
bounded-line-primer--lines = Las cifras de la línea están comprendidas entre las dos de sus extremos, marcadas con corchetes; ninguna de estas dos aparece en medio. Por eso la cifra más baja y la más alta nunca están en el interior de la línea, y si tres casillas interiores comparten fila o columna, los extremos se llevan al menos cuatro. Averigüe primero cuál de los extremos es el mayor.

## Cages

cage-sentence-totals = Dentro de { $n ->
    [one] la jaula
   *[other] cada jaula
}, las cifras no se repiten y suman el total de la esquina.
cage-sentence-some = Dentro de { $n ->
    [one] la jaula
   *[other] cada jaula
}, las cifras no se repiten y suman el total de la esquina, si lo hay.
cage-sentence-none = Dentro de { $n ->
    [one] la jaula
   *[other] cada jaula
} no se repite ninguna cifra.
cage-sentence-repeats = Las cifras de { $n ->
    [one] la jaula
   *[other] cada jaula
} suman el total de la esquina y pueden repetirse.
cage-spoken = { $total ->
    [none] Jaula sin total: { $cells }
   *[other] Jaula de { $total }: { $cells }
}
cage-primer = Una jaula se dibuja con trazos discontinuos. Sus cifras no se repiten, aunque atraviese varios bloques, y suman el total que figura en la esquina. Algunos totales no dejan elección: dos casillas que suman 3 contienen 1 y 2; tres que suman 24, 7, 8 y 9. En una cuadrícula de 9×9, cada fila, columna y bloque suma 45: si las jaulas cubren un bloque salvo una casilla, reste su total de 45.
# Where no grid of the book has boxes.
cage-primer--lines = Una jaula se dibuja con trazos discontinuos. Sus cifras no se repiten y suman el total que figura en la esquina. Algunos totales no dejan elección: dos casillas que suman 3 contienen 1 y 2; tres que suman 24, 7, 8 y 9. En una cuadrícula de 9×9, cada fila y cada columna suma 45: si las jaulas cubren una fila salvo una casilla, reste su total de 45.

## Clones

# $n hatched areas, all alike.
clone-sentence = Las { $number } zonas rayadas contienen las mismas cifras en los mismos lugares.
clone-sentence-letters = Las zonas rayadas con la misma letra contienen las mismas cifras en los mismos lugares.
clone-spoken = Clones { $letter }, casilla a casilla: { $twins }
clone-primer = Las zonas rayadas con la misma letra son clones: tienen la misma forma y contienen las mismas cifras en los mismos lugares. Una cifra descartada en una casilla queda descartada también en su gemela, así que a cada pareja la limitan dos filas, dos columnas y dos bloques. Empiece por los clones que ven más cifras dadas.
# Where no grid of the book has boxes.
clone-primer--lines = Las zonas rayadas con la misma letra son clones: tienen la misma forma y contienen las mismas cifras en los mismos lugares. Una cifra descartada en una casilla queda descartada también en su gemela, así que a cada pareja la limitan dos filas y dos columnas. Empiece por los clones que ven más cifras dadas.

## Consecutive bars

consecutive-bars-sentence = { $n ->
    [one] La barra
   *[other] Cada barra
} une dos cifras consecutivas; dos vecinas sin barra entre ellas no son consecutivas.
consecutive-bars-spoken = { $n ->
    [one] Barra
   *[other] Barras
} { $where }
consecutive-bars-primer = Todas las parejas de vecinas con cifras consecutivas tienen una barra en medio, así que la falta de barra también informa: junto a un 5, donde no hay barra, no hay ni un 4 ni un 6. Siga las filas de barras, en las que las cifras suben o bajan de una en una, y busque casillas con pocas barras junto a una cifra conocida.

## Consecutive lines

consecutive-line-sentence = Las cifras de { $n ->
    [one] la línea de consecutivas
   *[other] cada línea de consecutivas
} forman, en cualquier orden, una serie sin huecos ni repeticiones.
consecutive-line-spoken = Línea de consecutivas: { $line }
consecutive-line-primer = Las cifras de una línea con cuentas pueden ordenarse en una serie como 3 4 5 6, pero en la línea pueden estar en cualquier orden. Nunca se repiten, aunque la línea atraviese varios bloques. En una cuadrícula de 9×9, cinco casillas incluyen siempre un 5, y seis también un 4 y un 6; las cifras demasiado alejadas de una conocida quedan fuera.
# Where no grid of the book has boxes.
consecutive-line-primer--lines = Las cifras de una línea con cuentas pueden ordenarse en una serie como 3 4 5 6, pero en la línea pueden estar en cualquier orden. Nunca se repiten. En una cuadrícula de 9×9, cinco casillas incluyen siempre un 5, y seis también un 4 y un 6; las cifras demasiado alejadas de una conocida quedan fuera.

## Counting areas

counting-area-sentence-counts = En { $n ->
    [one] la zona de recuento
   *[other] cada zona de recuento
}, cada cifra de la esquina aparece exactamente tantas veces como está escrita en ella.
counting-area-sentence-different = El número en la esquina de { $n ->
    [one] la zona de recuento
   *[other] cada zona de recuento
} indica cuántas cifras distintas contiene.
counting-area-sentence-both = En { $n ->
    [one] la zona de recuento
   *[other] cada zona de recuento
}, cada cifra de la esquina aparece exactamente tantas veces como está escrita en ella; un número con ≠ indica cuántas cifras distintas contiene la zona.
counting-area-spoken = { $different ->
    [0] Zona de recuento con exactamente { $digits }: { $cells }
    [one] Zona de recuento con 1 cifra distinta: { $cells }
   *[other] Zona de recuento con { $different } cifras distintas: { $cells }
}
counting-area-primer = Una línea de puntos cerca una zona de recuento. Las cifras de su esquina aparecen dentro exactamente tantas veces como están escritas: 7 7 significa dos sietes, y las demás cifras son otras cualesquiera. Un número con ≠ dice cuántas cifras distintas hay. Tres casillas de una misma fila contienen siempre tres cifras distintas; pregúntese, pues, qué casillas de una zona pueden ser iguales: las que no comparten fila, columna ni bloque.
# Where no grid of the book has boxes.
counting-area-primer--lines = Una línea de puntos cerca una zona de recuento. Las cifras de su esquina aparecen dentro exactamente tantas veces como están escritas: 7 7 significa dos sietes, y las demás cifras son otras cualesquiera. Un número con ≠ dice cuántas cifras distintas hay. Tres casillas de una misma fila contienen siempre tres cifras distintas; pregúntese, pues, qué casillas de una zona pueden ser iguales: las que no comparten ni fila ni columna.

## Diagonal sums

diagonal-sum-sentence = { $n ->
    [one] El número
   *[other] Cada número
} con flecha fuera de la cuadrícula es la suma de las cifras de la diagonal que señala la flecha; pueden repetirse si las demás reglas lo permiten.
diagonal-sum-spoken = Suma diagonal { $total }: { $line }
diagonal-sum-primer = Una flecha fuera de la cuadrícula señala una diagonal, y su número es la suma de todas las cifras que hay en ella hasta el borde opuesto. Las casillas de un mismo bloque tienen cifras distintas; las demás pueden repetirse, de modo que tres casillas de tres bloques pueden incluso tener la misma. Empiece por las diagonales cortas y por las sumas muy pequeñas o muy grandes para su longitud.
# Where no grid of the book has boxes.
diagonal-sum-primer--lines = Una flecha fuera de la cuadrícula señala una diagonal, y su número es la suma de todas las cifras que hay en ella hasta el borde opuesto. Sus cifras pueden repetirse. Empiece por las diagonales cortas y por las sumas muy pequeñas o muy grandes para su longitud.

## Diagonals

diagonals-sentence = { $n ->
    [one] La diagonal marcada
   *[other] Cada una de las dos diagonales marcadas
} contiene cada cifra una sola vez.
diagonals-spoken = Diagonal marcada: { $line }
diagonals-primer = Una diagonal marcada funciona como una fila o columna más: cada cifra aparece en ella una sola vez. La casilla en que se cruzan dos diagonales pertenece a las dos, y además a una fila, una columna y un bloque: mire ahí primero; después busque en cada diagonal una cifra a la que solo le quede un lugar.
# Where no grid of the book has boxes.
diagonals-primer--lines = Una diagonal marcada funciona como una fila o columna más: cada cifra aparece en ella una sola vez. La casilla en que se cruzan dos diagonales pertenece a las dos, y además a una fila y una columna: mire ahí primero; después busque en cada diagonal una cifra a la que solo le quede un lugar.

## Difference lines

difference-line-sentence = En { $n ->
    [one] la línea de diferencias
   *[other] cada línea de diferencias
}, dos cifras seguidas difieren al menos en { $least }.
difference-line-spoken = Línea de diferencias: { $line }
difference-line-primer = Cada paso por una línea dentada es un salto al menos de la diferencia indicada, por lo general 5. En una cuadrícula de 9×9, con 5, las cifras de la línea alternan entre bajas y altas: el 5 nunca está en ella, el 4 solo junto al 9 y el 6 solo junto al 1. Por eso un 4 o un 6 está en un extremo, o entre dos casillas que puedan ser iguales.

## Disjoint groups

disjoint-groups-sentence = Las casillas situadas en la misma posición dentro de sus bloques, como todas las superiores izquierdas, contienen cada cifra una sola vez.
disjoint-groups-primer = Tome la casilla superior izquierda de cada bloque: entre todas contienen cada cifra una sola vez, y lo mismo pasa con cualquier otra posición dentro de los bloques. Una cifra ocupa, pues, una posición distinta en cada bloque. Cuando la haya escrito en algunos, tache esas posiciones en los demás antes de mirar filas y columnas.

## Dots

dots-sentence-white = { $white ->
    [one] El punto blanco
   *[other] Cada punto blanco
} une dos cifras consecutivas{ $all ->
    [yes] ; dos vecinas sin punto entre ellas ni son consecutivas ni son una cifra y su doble
   *[no] {""}
}.
dots-sentence-black = { $black ->
    [one] El punto negro
   *[other] Cada punto negro
} une una cifra y su doble{ $all ->
    [yes] ; dos vecinas sin punto entre ellas ni son consecutivas ni son una cifra y su doble
   *[no] {""}
}.
dots-sentence-both = { $white ->
    [one] El punto blanco
   *[other] Cada punto blanco
} une dos cifras consecutivas, y { $black ->
    [one] el punto negro
   *[other] cada punto negro
}, una cifra y su doble (entre 1 y 2 puede haber cualquiera de los dos){ $all ->
    [yes] ; dos vecinas sin punto entre ellas no son ni lo uno ni lo otro
   *[no] {""}
}.
# All dots are marked, and there are none.
dots-sentence-none = Dos casillas que comparten un lado nunca contienen cifras consecutivas, ni una cifra y su doble.
dots-spoken-white = { $n ->
    [one] Punto blanco
   *[other] Puntos blancos
} { $where }
dots-spoken-black = { $n ->
    [one] Punto negro
   *[other] Puntos negros
} { $where }
dots-primer = Un punto blanco une dos vecinas con cifras consecutivas; uno negro, una cifra y su doble; entre 1 y 2 puede haber cualquiera de los dos. En una cuadrícula de 9×9, el 5, el 7 y el 9 nunca tocan un punto negro, y una cadena de puntos negros recorre 1, 2, 4 y 8, o 3 y 6. Cuando están dados todos los puntos, la falta de punto también informa: las dos cifras ni son consecutivas ni son una cifra y su doble.

## Equal-part lines

equal-part-line-sentence = En { $n ->
    [one] la línea de partes iguales
   *[other] cada línea de partes iguales
}, las cifras de cada tramo dentro de { $home ->
    [box] un bloque
   *[region] una región
} suman el mismo total.
equal-part-line-part = tramo { $number }, { $line }
equal-part-line-spoken = Línea de partes iguales: { $parts }
equal-part-line-primer = Los bordes de los bloques cortan la línea en tramos, y las cifras de cada tramo suman el mismo total; si la línea vuelve a un bloque, tiene en él dos tramos. Un tramo de una sola casilla da el total enseguida. Si no lo hay, compare el tramo más largo con el más corto: en una cuadrícula de 9×9, tres casillas de un bloque suman al menos 6; dos, como mucho 17.

## Even-step lines

even-step-line-sentence = En { $n ->
    [one] la línea de pasos iguales
   *[other] cada línea de pasos iguales
}, { $step ->
    [none] dos cifras seguidas difieren siempre en la misma cantidad, { $n ->
        [one] que hay que averiguar
       *[other] que hay que averiguar para cada línea
    }
   *[other] dos cifras seguidas difieren exactamente en { $step }
}.
even-step-line-spoken = Línea de pasos iguales: { $line }
even-step-line-primer = Todos los pasos de una línea con tachuelas son igual de grandes, hacia arriba o hacia abajo, y nunca son cero; si el paso no está dado, averígüelo para cada línea. Los pasos grandes agotan pronto el espacio: con un paso de 4 en una cuadrícula de 9×9, una línea que empieza en 1 solo puede contener 1, 5 y 9; con un paso de 5 alterna entre bajas y altas y nunca contiene el 5. Tres casillas seguidas que comparten fila, columna o bloque suben dos veces o bajan dos veces.
# Where no grid of the book has boxes.
even-step-line-primer--lines = Todos los pasos de una línea con tachuelas son igual de grandes, hacia arriba o hacia abajo, y nunca son cero; si el paso no está dado, averígüelo para cada línea. Los pasos grandes agotan pronto el espacio: con un paso de 4 en una cuadrícula de 9×9, una línea que empieza en 1 solo puede contener 1, 5 y 9; con un paso de 5 alterna entre bajas y altas y nunca contiene el 5. Tres casillas seguidas que comparten fila o columna suben dos veces o bajan dos veces.

## Extra regions

# $pieces: a region may be in several pieces, which then have one letter.
extra-region-sentence = { $full ->
    [yes] { $n ->
        [one] La región sombreada contiene cada cifra una sola vez
       *[other] Cada región sombreada contiene cada cifra una sola vez
    }
   *[no] { $n ->
        [one] En la región sombreada no se repite ninguna cifra
       *[other] En cada región sombreada no se repite ninguna cifra
    }
}{ $pieces ->
    [yes] { $n ->
        [one] ; todas sus partes llevan la misma letra
       *[other] ; las partes de una misma región llevan la misma letra
    }
   *[no] {""}
}.
extra-region-spoken = { $letter ->
    [none] Región sombreada: { $cells }
   *[other] Región sombreada { $letter }: { $cells }
}
extra-region-primer = Una región sombreada funciona como un bloque más: ninguna cifra aparece en ella dos veces. Si tiene tantas casillas como cifras hay en la cuadrícula, las contiene todas; hágase entonces la misma pregunta que con una fila: ¿dónde cabe aún esta cifra? Si es más pequeña, solo impide que las cifras se repitan. Empiece donde una región atraviesa un bloque casi lleno.
# Where no grid of the book has boxes.
extra-region-primer--lines = Una región sombreada funciona como una fila más: ninguna cifra aparece en ella dos veces. Si tiene tantas casillas como cifras hay en la cuadrícula, las contiene todas; hágase entonces la misma pregunta que con cualquier fila: ¿dónde cabe aún esta cifra? Si es más pequeña, solo impide que las cifras se repitan. Empiece donde una región atraviesa una fila casi llena.

## First-seen digits

# $seen: how many small squares beside each digit; 0 where that differs.
first-seen-sentence = { $n ->
    [one] La cifra
   *[other] Cada cifra
} junto a { $seen ->
    [0] unos cuadraditos fuera de la cuadrícula aparece en una de las primeras casillas (tantas como cuadraditos)
    [one] un cuadradito fuera de la cuadrícula aparece en la primera casilla
   *[other] { $number } cuadraditos fuera de la cuadrícula aparece en una de las { $number } primeras casillas
} de su { $line ->
    [row] fila
    [column] columna
   *[both] fila o columna
}, contando desde ese lado.
first-seen-spoken = { $n ->
    [one] Cifra cercana
   *[other] Cifras cercanas
} { $side }: { $clues }
first-seen-side = { $n ->
    [one] { $side }, junto a un cuadradito
   *[other] { $side }, junto a { $number } cuadraditos
}
first-seen-primer = Una cifra fuera de una fila o columna aparece en una de las primeras casillas desde ese lado, tantas como cuadraditos tiene al lado; si hay varias cifras juntas, aparecen todas ellas, en cualquier orden. En una cuadrícula de 9×9, tres cuadraditos sitúan la cifra en tres casillas del bloque más próximo: táchela en el resto de la fila y del bloque.
# Where no grid of the book has boxes.
first-seen-primer--lines = Una cifra fuera de una fila o columna aparece en una de las primeras casillas desde ese lado, tantas como cuadraditos tiene al lado; si hay varias cifras juntas, aparecen todas ellas, en cualquier orden.

## Fortress cells

fortress-sentence = Cada cifra en una casilla sombreada, dentro de las almenas, es mayor que las de las casillas sin sombrear que comparten un lado con ella.
fortress-spoken = Fortaleza: { $cells }
fortress-primer = Las casillas sombreadas y rodeadas de almenas son una fortaleza: cada una de sus cifras es mayor que las de fuera que la tocan por un lado. Dos casillas sombreadas no se comparan. Una casilla con almenas a ambos lados de una misma fila o columna vale al menos 3, y las cifras bajas de una fortaleza solo caben donde pocos de sus lados dan al exterior. Las casillas entre dos fortalezas son bajas.

## Frame products

frame-product-sentence = { $n ->
    [one] El número
   *[other] Cada número
} tras un punto fuera de la cuadrícula es el producto de { $line ->
    [row] las { $number } primeras cifras de su fila
    [column] las { $number } primeras cifras de su columna
    [unlike] las { $number } primeras cifras de su fila, o de las { $other } primeras de su columna,
   *[both] las { $number } primeras cifras de su fila o columna
} desde ese lado.
frame-product-spoken = { $n ->
    [one] Producto del marco
   *[other] Productos del marco
} { $side }: { $clues }
frame-product-primer = El número fuera de una fila o columna es el producto de sus cifras más próximas, por lo general las tres del bloque más cercano en una cuadrícula de 9×9. Descompóngalo: un producto que acaba en 5 o en 0 tiene un 5; uno divisible entre 7 tiene un 7; y el que no es divisible ni entre 5 ni entre 7 excluye esas dos cifras. Un producto impar solo tiene cifras impares.
# Where no grid of the book has boxes.
frame-product-primer--lines = El número fuera de una fila o columna es el producto de sus cifras más próximas, por lo general tres. Descompóngalo: un producto que acaba en 5 o en 0 tiene un 5; uno divisible entre 7 tiene un 7; y el que no es divisible ni entre 5 ni entre 7 excluye esas dos cifras. Un producto impar solo tiene cifras impares.

## Frame sums

frame-sum-sentence = { $n ->
    [one] El número
   *[other] Cada número
} tras un pequeño + fuera de la cuadrícula es la suma de { $line ->
    [row] las { $number } primeras cifras de su fila
    [column] las { $number } primeras cifras de su columna
    [unlike] las { $number } primeras cifras de su fila, o de las { $other } primeras de su columna,
   *[both] las { $number } primeras cifras de su fila o columna
} desde ese lado.
frame-sum-spoken = { $n ->
    [one] Suma del marco
   *[other] Sumas del marco
} { $side }: { $clues }
frame-sum-primer = El número fuera de una fila o columna es la suma de sus cifras más próximas, por lo general las tres del bloque más cercano en una cuadrícula de 9×9. Tres cifras que suman 6 son 1, 2 y 3; tres que suman 24 son 7, 8 y 9. Un bloque suma 45, así que dos números que miran a un bloque desde el mismo lado dan el tercero; y los números a ambos extremos de una fila dan la suma de lo que hay en medio.
# Where no grid of the book has boxes.
frame-sum-primer--lines = El número fuera de una fila o columna es la suma de sus cifras más próximas, por lo general tres. Tres cifras que suman 6 son 1, 2 y 3; tres que suman 24 son 7, 8 y 9.

## Hinge lines

# $middles: which lines have a cell in the middle, with a diamond.
hinge-line-sentence = En { $n ->
    [one] la línea con bisagra
   *[other] cada línea con bisagra
}, dos casillas cualesquiera a la misma distancia del centro suman el mismo total{ $middles ->
    [all] , que es la cifra del centro
    [some] , que es la cifra de la casilla central, si la hay
   *[none] {""}
}.
hinge-line-spoken = { COUNT($middle) ->
    [one] Línea con bisagra, centro en { $middle }: { $line }
   *[other] Línea con bisagra, centro entre { $middle }: { $line }
}
hinge-line-primer = Doble una línea con bisagra por el centro: dos casillas que coinciden al plegarla suman siempre el mismo total. Si la línea tiene una casilla central, la marca un rombo y su cifra es el total: es, pues, alta, y las demás, bajas. Si no, averigüe el total: basta con una pareja conocida.

## Inequalities

inequality-sentence = { $n ->
    [one] El signo
   *[other] Cada signo
} entre dos casillas se abre hacia la cifra mayor.
inequality-row = Fila { $number }: { $signs }
    .short = F{ $number }: { $signs }
inequality-row-sign = la columna { $more } es mayor que la columna { $less }
    .short = la c{ $more } es mayor que la c{ $less }
inequality-column = Columna { $number }: { $signs }
    .short = C{ $number }: { $signs }
inequality-column-sign = la fila { $more } es mayor que la fila { $less }
    .short = la f{ $more } es mayor que la f{ $less }
inequality-primer = Un signo entre dos casillas se abre hacia la cifra mayor y apunta a la menor. Varios signos seguidos forman una escalera: al pie solo caben cifras bajas, y arriba solo altas. Empiece por las escaleras más largas y por las casillas que son mayores, o menores, que todo lo que las rodea.

## King's move

king-sentence = Dos casillas que se tocan por una esquina contienen cifras distintas.
king-primer = Dos casillas que se tocan por una esquina contienen cifras distintas, como si cada cifra fuera un rey de ajedrez que no tolera un igual a su lado. Dentro de un bloque esto no añade nada; actúa a través de los bordes de los bloques. Una cifra junto a un bloque descarta en él hasta dos casillas más.
# Where no grid of the book has boxes.
king-primer--lines = Dos casillas que se tocan por una esquina contienen cifras distintas, como si cada cifra fuera un rey de ajedrez que no tolera un igual a su lado.

## Knight's move

knight-sentence = Dos casillas a un salto del caballo (dos pasos por una fila o columna y uno de lado) contienen cifras distintas.
knight-primer = Dos casillas entre las que podría saltar un caballo de ajedrez, dos pasos por una fila o columna y uno de lado, contienen cifras distintas. Una cifra en el centro de la cuadrícula alcanza así ocho casillas, la mayoría fuera de su bloque. Busque bloques en los que a una cifra le queden dos lugares, ambos a un salto del caballo de una misma casilla.
# Where no grid of the book has boxes.
knight-primer--lines = Dos casillas entre las que podría saltar un caballo de ajedrez, dos pasos por una fila o columna y uno de lado, contienen cifras distintas. Una cifra en el centro de la cuadrícula alcanza así ocho casillas. Busque filas en las que a una cifra le queden dos lugares, ambos a un salto del caballo de una misma casilla.

## Limits

limits-sentence-allowed = { $n ->
    [one] La casilla
   *[other] Cada casilla
} con cifras pequeñas en la esquina contiene una de ellas.
limits-sentence-forbidden = { $n ->
    [one] La casilla
   *[other] Cada casilla
} con cifras pequeñas tachadas en la esquina no contiene ninguna de ellas.
limits-sentence-both = { $n ->
    [one] La casilla
   *[other] Cada casilla
} con cifras pequeñas en la esquina contiene una de ellas, o ninguna si están tachadas.
limits-spoken-only = Solo { $digits }: { $cells }
limits-spoken-not = No { $digits }: { $cells }
limits-primer = Las cifras pequeñas en la esquina inferior derecha de una casilla son las únicas que puede contener; si están tachadas, son las que no puede contener. Anote los candidatos antes de empezar. Cuando en una fila, columna o bloque comparten el mismo límite tantas casillas como cifras tiene este, esas cifras no caben en ningún otro lugar de ahí.
# Where no grid of the book has boxes.
limits-primer--lines = Las cifras pequeñas en la esquina inferior derecha de una casilla son las únicas que puede contener; si están tachadas, son las que no puede contener. Anote los candidatos antes de empezar. Cuando en una fila o columna comparten el mismo límite tantas casillas como cifras tiene este, esas cifras no caben en ningún otro lugar de ahí.

## Low-high lines

low-high-line-sentence = En { $n ->
    [one] la línea de altibajos
   *[other] cada línea de altibajos
} alternan cifras bajas (del { $least } al { $low }) y altas (del { $high } al { $most }){ $middle ->
    [none] .
   *[other] ; no hay ningún { $middle }.
}
low-high-line-spoken = Línea de altibajos: { $line }
low-high-line-primer = A lo largo de una línea almenada alternan cifras bajas y altas; puede empezar por cualquiera de las dos. En una cuadrícula de 9×9 son bajas del 1 al 4 y altas del 6 al 9, y el 5 nunca está en una de estas líneas. Una sola cifra decide qué casillas son bajas. Cuatro casillas bajas en una misma fila, columna o bloque se llevan todas las cifras bajas.
# Where no grid of the book has boxes.
low-high-line-primer--lines = A lo largo de una línea almenada alternan cifras bajas y altas; puede empezar por cualquiera de las dos. En una cuadrícula de 9×9 son bajas del 1 al 4 y altas del 6 al 9, y el 5 nunca está en una de estas líneas. Una sola cifra decide qué casillas son bajas. Cuatro casillas bajas en una misma fila o columna se llevan todas las cifras bajas.

## No doubles

no-doubles-sentence = { $touching ->
    [corners] Dos casillas que se tocan, por un lado o por una esquina, nunca contienen una cifra y su doble.
   *[sides] Dos casillas que comparten un lado nunca contienen una cifra y su doble.
}
no-doubles-zero = Como el 0 es su propio doble, dos ceros nunca se tocan.
no-doubles-primer = Dos casillas que comparten un lado nunca contienen una cifra y su doble: junto a un 4 no hay ni un 2 ni un 8. En una cuadrícula de 9×9, el 5, el 7 y el 9 pueden estar junto a cualquier cifra; son 1, 2, 4 y 8, y 3 y 6, las que deben separarse. Una casilla contigua a todos los lugares del 4 en una fila no puede ser ni 2 ni 8.

## Non-consecutive

non-consecutive-sentence = { $touching ->
    [corners] Dos casillas que se tocan, por un lado o por una esquina, nunca contienen cifras consecutivas.
   *[sides] Dos casillas que comparten un lado nunca contienen cifras consecutivas.
}
non-consecutive-primer = Dos casillas que comparten un lado nunca contienen cifras consecutivas: junto a un 5 no hay ni un 4 ni un 6. Cada cifra que escribe descarta, pues, dos cifras en cada una de sus vecinas. Cuando a una cifra solo le quedan dos lugares en una fila, con una casilla en medio, en esta no cabe ni la cifra anterior ni la siguiente.

## Numbered rooms

numbered-room-sentence = { $n ->
    [one] La cifra
   *[other] Cada cifra
} en una puerta fuera de la cuadrícula va en la enésima casilla de su { $line ->
    [row] fila
    [column] columna
   *[both] fila o columna
} desde ese lado, donde n es la cifra de la primera casilla.
numbered-room-zero = La cifra n nunca es 0.
numbered-room-spoken = { $n ->
    [one] Habitación numerada
   *[other] Habitaciones numeradas
} { $side }: { $clues }
numbered-room-primer = La cifra más próxima a la puerta es el número de una habitación: con un 4 delante, la cifra de la puerta va en la cuarta casilla desde ese lado. Solo si en la puerta hay un 1 puede haber un 1 delante, y ningún número lleva a una habitación ya ocupada. Empiece donde a la cifra de la puerta le queden pocos lugares en su fila o columna, ya que cada uno exige una cifra concreta delante.

## Open cages

open-cage-sentence = En { $n ->
    [one] la jaula abierta
   *[other] cada jaula abierta
} no se repite ninguna cifra{ $parities ->
    [even] { $alone ->
        [yes] ; su total es par
       *[no] ; su total es par si lleva un cuadrado
    }
    [odd] { $alone ->
        [yes] ; su total es impar
       *[no] ; su total es impar si lleva un círculo
    }
    [both] ; su total es par si lleva un cuadrado e impar si lleva un círculo
   *[none] {""}
}{ $letters ->
    [yes] ; las jaulas con la misma letra tienen el mismo total
   *[no] {""}
}.
open-cage-spoken = { $value ->
    [even] Jaula abierta con total par: { $cells }
    [odd] Jaula abierta con total impar: { $cells }
   *[other] Jaula abierta con el total { $value }: { $cells }
}
open-cage-primer = Las cifras de una jaula abierta no se repiten, pero su total no se dice. Un cuadrado pequeño en la esquina indica que es par; un círculo pequeño, que es impar: cuando falta una sola casilla, se sabe si su cifra es par o impar. Las jaulas con la misma letra tienen el mismo total: una jaula pequeña que iguala a una grande tiene cifras altas, y la grande, bajas.

## Palindromes

palindrome-sentence = Las cifras { $n ->
    [one] del palíndromo
   *[other] de cada palíndromo
} se leen igual desde ambos extremos.
palindrome-spoken = Palíndromo: { $line }
palindrome-primer = Un palíndromo se lee igual desde ambos extremos: la primera casilla y la última son iguales, también la segunda y la penúltima, y la casilla central, si la hay, es libre. Una cifra descartada en una casilla de la pareja queda descartada en la otra, así que cada pareja actúa en dos filas, dos columnas y dos bloques a la vez.
# Where no grid of the book has boxes.
palindrome-primer--lines = Un palíndromo se lee igual desde ambos extremos: la primera casilla y la última son iguales, también la segunda y la penúltima, y la casilla central, si la hay, es libre. Una cifra descartada en una casilla de la pareja queda descartada en la otra, así que cada pareja actúa en dos filas y dos columnas a la vez.

## Even and odd

parity-sentence-even = { $even ->
    [one] La casilla
   *[other] Cada casilla
} con un cuadrado contiene una cifra par.
parity-sentence-odd = { $odd ->
    [one] La casilla
   *[other] Cada casilla
} con un círculo contiene una cifra impar.
parity-sentence-both = { $even ->
    [one] La casilla
   *[other] Cada casilla
} con un cuadrado contiene una cifra par, y { $odd ->
    [one] la casilla
   *[other] cada casilla
} con un círculo, una impar.
parity-spoken-even = { $n ->
    [one] Cifra par, con un cuadrado: { $cells }
   *[other] Cifras pares, cada una con un cuadrado: { $cells }
}
parity-spoken-odd = { $n ->
    [one] Cifra impar, con un círculo: { $cells }
   *[other] Cifras impares, cada una con un círculo: { $cells }
}
parity-primer = Un cuadrado marca una cifra par; un círculo, una impar; las casillas sin marca pueden contener cualquiera. En una cuadrícula de 9×9, cada fila, columna y bloque tiene cuatro cifras pares y cinco impares, así que cuente: en cuanto se sabe que cuatro casillas de una fila son pares, todas las demás son impares.
# Where no grid of the book has boxes.
parity-primer--lines = Un cuadrado marca una cifra par; un círculo, una impar; las casillas sin marca pueden contener cualquiera. En una cuadrícula de 9×9, cada fila y cada columna tiene cuatro cifras pares y cinco impares, así que cuente: en cuanto se sabe que cuatro casillas de una fila son pares, todas las demás son impares.

## Parity lines

parity-line-sentence = A lo largo de { $n ->
    [one] la línea de paridad
   *[other] cada línea de paridad
} alternan cifras pares e impares.
parity-line-spoken = Línea de paridad: { $line }
parity-line-primer = A lo largo de una línea con círculos y cuadrados entre sus casillas alternan cifras impares y pares; puede empezar por cualquiera de las dos. Una sola cifra decide qué casillas son impares. Cuente donde la línea recorre una fila o un bloque: en una cuadrícula de 9×9 hay cuatro cifras pares, así que una línea que ocupa una fila entera empieza y acaba con una impar.
# Where no grid of the book has boxes.
parity-line-primer--lines = A lo largo de una línea con círculos y cuadrados entre sus casillas alternan cifras impares y pares; puede empezar por cualquiera de las dos. Una sola cifra decide qué casillas son impares. Cuente donde la línea recorre una fila: en una cuadrícula de 9×9 hay cuatro cifras pares, así que una línea que ocupa una fila entera empieza y acaba con una impar.

## Parity runs

parity-run-sentence = { $n ->
    [one] El número
   *[other] Cada número
} tras un pequeño = fuera de la cuadrícula dice cuántas cifras de su { $line ->
    [row] fila
    [column] columna
   *[both] fila o columna
}, desde ese lado, son todas pares o todas impares antes de que cambie la paridad.
parity-run-spoken = { $n ->
    [one] Racha de paridad
   *[other] Rachas de paridad
} { $side }: { $clues }
parity-run-primer = Recorra la fila o columna desde el número: tantas cifras como indica son todas pares, o todas impares, y la siguiente es lo contrario. En una cuadrícula de 9×9, una fila tiene cinco cifras impares y cuatro pares, así que una racha de 5 es impar. En cuanto se sabe si una cifra de la racha es par o impar, se sabe de todas, y la que sigue es lo contrario.

## Peaks and hollows

peaks-sentence-greater = { $greater ->
    [one] La casilla
   *[other] Cada casilla
} con un tejado contiene una cifra mayor que todas las casillas que comparten un lado con ella.
peaks-sentence-smaller = { $smaller ->
    [one] La casilla
   *[other] Cada casilla
} con un cuenco contiene una cifra menor que todas las casillas que comparten un lado con ella.
peaks-sentence-both = { $greater ->
    [one] La casilla
   *[other] Cada casilla
} con un tejado contiene una cifra mayor que todas las casillas que comparten un lado con ella, y { $smaller ->
    [one] la casilla
   *[other] cada casilla
} con un cuenco, una menor.
peaks-spoken-greater = { $n ->
    [one] Pico, con un tejado: { $cells }
   *[other] Picos, cada uno con un tejado: { $cells }
}
peaks-spoken-smaller = { $n ->
    [one] Valle, con un cuenco: { $cells }
   *[other] Valles, cada uno con un cuenco: { $cells }
}
peaks-primer = Un pequeño tejado sobre una cifra significa que es mayor que las cifras que tiene a los lados, encima y debajo; un cuenco debajo, que es menor. Las dos vecinas de su fila son distintas, así que lejos del borde una cifra bajo un tejado vale al menos 3, y por lo general mucho más.

## Pointing cells

pointing-sentence = { $n ->
    [one] La cifra
   *[other] Cada cifra
} en una casilla con flecha dice a cuántas casillas está el { $digit } en la dirección de la flecha; la contigua es la primera.
pointing-zero = Una casilla con flecha nunca contiene 0.
pointing-spoken = { $n ->
    [one] Flecha
   *[other] Flechas
} { $way ->
    [left] hacia la izquierda: { $cells }
    [right] hacia la derecha: { $cells }
    [up] hacia arriba: { $cells }
   *[down] hacia abajo: { $cells }
}
pointing-primer = Una pequeña flecha negra en una casilla señala a lo largo de su fila o columna, y la cifra de la casilla cuenta los pasos que hay desde ahí hasta la cifra que nombra la regla, por ejemplo el 9: con un 3 en la casilla, el 9 está tres pasos más allá. La casilla nunca contiene, pues, esa cifra, ni una mayor que el número de casillas que tiene delante, y la cifra nunca está detrás. Dos flechas cuyas líneas se cruzan dejan a menudo una sola manera de contar.

## Corner quadruples

# $several: does some ring hold more than one digit.
quadruple-sentence = { $several ->
    [yes] Las cifras { $n ->
        [one] del anillo
       *[other] de cada anillo
    } figuran entre las de las cuatro casillas que lo rodean
   *[no] La cifra { $n ->
        [one] del anillo
       *[other] de cada anillo
    } figura entre las de las cuatro casillas que lo rodean
}{ $repeats ->
    [yes] , repeticiones incluidas
   *[no] {""}
}.
quadruple-spoken = Anillo con { $digits } en la esquina entre { $cells }
quadruple-primer = Las cifras pequeñas de un anillo están en las cuatro casillas que rodean esa esquina, cada una al menos tantas veces como está escrita; si hay sitio, puede haber también otras. Un anillo con cuatro cifras no deja sitio: cada una de sus casillas contiene una de ellas. Una cifra escrita dos veces está en dos casillas opuestas en diagonal.

## Resting thermometers

resting-thermometer-sentence = En { $n ->
    [one] el termómetro con pausas
   *[other] cada termómetro con pausas
}, las cifras nunca bajan del bulbo al extremo: suben o se mantienen.
resting-thermometer-spoken = Termómetro con pausas, desde el bulbo: { $line }
resting-thermometer-primer = Un termómetro con pausas se dibuja como un tubo vacío. Desde el bulbo, rodeado de un anillo, hasta el extremo, las cifras suben o se mantienen: ninguna es menor que la anterior. Dos de sus casillas en la misma fila, columna o bloque no pueden ser iguales, así que ahí las cifras sí suben: cuente esos pasos para saber lo alto que tiene que ser el extremo y lo bajo que tiene que ser el bulbo.
# Where no grid of the book has boxes.
resting-thermometer-primer--lines = Un termómetro con pausas se dibuja como un tubo vacío. Desde el bulbo, rodeado de un anillo, hasta el extremo, las cifras suben o se mantienen: ninguna es menor que la anterior. Dos de sus casillas en la misma fila o columna no pueden ser iguales, así que ahí las cifras sí suben: cuente esos pasos para saber lo alto que tiene que ser el extremo y lo bajo que tiene que ser el bulbo.

## Rising or falling

rise-or-fall-sentence-none = Las { $number } primeras cifras de una fila o columna, desde cualquiera de sus lados, ni crecen todas ni decrecen todas.
rise-or-fall-sentence-rise = Donde { $number } barras fuera de la cuadrícula crecen hacia ella, las { $number } primeras cifras de esa { $line ->
    [row] fila
    [column] columna
   *[both] fila o columna
} crecen desde ese lado{ $all ->
    [yes] ; desde un lado sin barras, las { $number } primeras cifras de una fila o columna ni crecen todas ni decrecen todas
   *[no] {""}
}.
rise-or-fall-sentence-fall = Donde { $number } barras fuera de la cuadrícula menguan hacia ella, las { $number } primeras cifras de esa { $line ->
    [row] fila
    [column] columna
   *[both] fila o columna
} decrecen desde ese lado{ $all ->
    [yes] ; desde un lado sin barras, las { $number } primeras cifras de una fila o columna ni crecen todas ni decrecen todas
   *[no] {""}
}.
rise-or-fall-sentence-both = Donde { $number } barras fuera de la cuadrícula crecen hacia ella, las { $number } primeras cifras de esa { $line ->
    [row] fila
    [column] columna
   *[both] fila o columna
} crecen desde ese lado; donde menguan, decrecen{ $all ->
    [yes] ; desde un lado sin barras, las { $number } primeras cifras de una fila o columna ni crecen todas ni decrecen todas
   *[no] {""}
}.
rise-or-fall-spoken = { $n ->
    [one] Pendiente
   *[other] Pendientes
} { $side }: { $clues }
rise-or-fall-rises = barras crecientes
rise-or-fall-falls = barras decrecientes
rise-or-fall-primer = Unas barras que crecen hacia la cuadrícula significan que las tres cifras más próximas crecen desde ese lado; si menguan, decrecen. Las barras son tan largas como grandes las cifras. En una cuadrícula de 9×9, de tres cifras crecientes la primera vale como mucho 7 y la última al menos 3; dos subidas que comparten una casilla de esquina la hacen bajar entre las dos. Cuando están dadas todas las barras, en un extremo sin ellas hay un giro: la cifra de en medio es la mayor o la menor de las tres.

## Rising runs

rising-run-sentence = { $n ->
    [one] El número
   *[other] Cada número
} tras unos peldaños fuera de la cuadrícula dice cuántas cifras de su { $line ->
    [row] fila
    [column] columna
   *[both] fila o columna
} crecen desde ese lado antes de que una baje, contando la primera.
rising-run-spoken = { $n ->
    [one] Racha creciente
   *[other] Rachas crecientes
} { $side }: { $clues }
rising-run-primer = Recorra la fila o columna desde el número, que dice cuántas cifras seguidas crecen, contando desde la más próxima. Tras un 3, las tres primeras cifras crecen y la cuarta es menor que la tercera; tras un 1, ya la segunda es menor que la primera. Las rachas largas alejan las cifras altas del borde, y la última cifra de una racha es mayor que sus vecinas de ambos lados.

## Same-sum lines

same-sum-line-sentence = En { $n ->
    [one] la línea de sumas iguales
   *[other] cada línea de sumas iguales
}, { $number } casillas seguidas cualesquiera suman siempre el mismo total.
same-sum-line-spoken = Línea de sumas iguales: { $line }
same-sum-line-primer = En una línea dibujada como una vía de tren, las casillas seguidas, de tres en tres si la regla no dice otra cosa, suman siempre el mismo total. Avance una casilla: una cifra sale de la suma y otra entra, así que las dos son iguales. Por eso la primera casilla, la cuarta y la séptima contienen la misma cifra, y la segunda y la quinta otra; lo que se descarta en una se descarta en todas.

## Sandwich sums

sandwich-sentence = { $n ->
    [one] El número
   *[other] Cada número
} entre dos barras fuera de la cuadrícula es la suma de las cifras que hay entre la menor y la mayor de su { $line ->
    [row] fila
    [column] columna
   *[both] fila o columna
}.
sandwich-spoken = { $n ->
    [one] Suma sándwich
   *[other] Sumas sándwich
} { $side }: { $clues }
sandwich-primer = El número fuera de una fila o columna es la suma de las cifras entre la menor y la mayor; en una cuadrícula de 9×9 estas rebanadas son el 1 y el 9, en cualquier orden. Una suma de 0 significa que están juntas; una de 35, que están en los dos extremos. Empiece por preguntarse cuántas cifras pueden dar la suma, pues eso dice a qué distancia están las rebanadas.

## Skyscrapers

skyscraper-sentence = { $n ->
    [one] El número
   *[other] Cada número
} dentro de una casa fuera de la cuadrícula dice cuántas cifras de su { $line ->
    [row] fila
    [column] columna
   *[both] fila o columna
} se ven desde ese lado, si cada cifra tapa a todas las menores que tiene detrás.
skyscraper-spoken = { $n ->
    [one] Rascacielos visto
   *[other] Rascacielos vistos
} { $side }: { $clues }
skyscraper-primer = Imagine cada cifra como un edificio de otras tantas plantas y mire a lo largo de la fila o columna desde el número, que dice cuántos edificios se ven, ya que uno alto tapa a todos los más bajos que tiene detrás. Desde un 1 solo se ve el más alto, que está, pues, delante del todo; desde un 9, en una cuadrícula de 9×9, se ven todos, así que van subiendo. Empiece por los números mayores, que alejan las cifras altas, y busque el lugar del edificio más alto.

## Square blocks

square-block-sentence-magic = En { $n ->
    [one] el cuadrado de sumas
   *[other] cada cuadrado de sumas
}, las filas, las columnas y las dos diagonales suman todas lo mismo; las cifras pueden repetirse.
square-block-sentence-rows = En { $n ->
    [one] el cuadrado de sumas
   *[other] cada cuadrado de sumas
}, todas las filas suman lo mismo; las cifras pueden repetirse.
square-block-sentence-columns = En { $n ->
    [one] el cuadrado de sumas
   *[other] cada cuadrado de sumas
}, todas las columnas suman lo mismo; las cifras pueden repetirse.
square-block-sentence = En { $n ->
    [one] el cuadrado de sumas
   *[other] cada cuadrado de sumas
} hay líneas que suman lo mismo: { $lines }; las cifras pueden repetirse.
square-block-lines-magic = las filas, columnas y diagonales si lleva una estrella
square-block-lines-rows = las filas si lleva barras horizontales
square-block-lines-columns = las columnas si lleva barras verticales
square-block-spoken-magic = Cuadrado mágico: { $cells }
square-block-spoken-rows = Cuadrado de filas iguales: { $cells }
square-block-spoken-columns = Cuadrado de columnas iguales: { $cells }
square-block-primer = Una línea doble enmarca un cuadrado de sumas, y un signo dice cuáles de sus líneas suman lo mismo: unas barras horizontales, las filas; unas verticales, las columnas; una estrella, las filas, las columnas y las dos diagonales. Las cifras pueden repetirse si las filas, columnas y bloques lo permiten. La suma de un cuadrado con estrella es el triple de su cifra central. Si el cuadrado es un bloque entero de una cuadrícula de 9×9, tres filas iguales suman 15 cada una.
# Where no grid of the book has boxes.
square-block-primer--lines = Una línea doble enmarca un cuadrado de sumas, y un signo dice cuáles de sus líneas suman lo mismo: unas barras horizontales, las filas; unas verticales, las columnas; una estrella, las filas, las columnas y las dos diagonales. Las cifras pueden repetirse si las filas y columnas lo permiten. La suma de un cuadrado con estrella es el triple de su cifra central.

## Sum marks

sum-marks-sentence-five = { $five ->
    [one] La V
   *[other] Cada V
} une dos cifras que suman 5{ $all ->
    [yes] ; dos vecinas sin marca entre ellas no suman ni 5 ni 10
   *[no] {""}
}.
sum-marks-sentence-ten = { $ten ->
    [one] La X
   *[other] Cada X
} une dos cifras que suman 10{ $all ->
    [yes] ; dos vecinas sin marca entre ellas no suman ni 5 ni 10
   *[no] {""}
}.
sum-marks-sentence-both = { $five ->
    [one] La V
   *[other] Cada V
} une dos cifras que suman 5, y { $ten ->
    [one] la X
   *[other] cada X
}, dos que suman 10{ $all ->
    [yes] ; dos vecinas sin marca entre ellas no suman ni 5 ni 10
   *[no] {""}
}.
# All marks are given, and there are none.
sum-marks-sentence-none = Dos casillas que comparten un lado nunca suman ni 5 ni 10.
sum-marks-spoken-five = { $n ->
    [one] Letra V
   *[other] Letras V
} { $where }
sum-marks-spoken-ten = { $n ->
    [one] Letra X
   *[other] Letras X
} { $where }
sum-marks-primer = Como en los números romanos, V es 5 y X es 10: las dos cifras a los lados de la letra suman ese valor. Una V une 1 y 4 o 2 y 3, de modo que no la toca nada mayor que 4; el 5 nunca toca una X, pues necesitaría otro 5 al lado. Cuando están dadas todas las marcas, la falta de letra también informa: las dos cifras no suman ni lo uno ni lo otro.

## Thermometers

thermometer-sentence = En { $n ->
    [one] el termómetro
   *[other] cada termómetro
}, las cifras crecen del bulbo al extremo.
thermometer-spoken = Termómetro, desde el bulbo: { $line }
thermometer-primer = Las cifras crecen a cada paso desde el bulbo redondo hasta el extremo, aunque pueden saltarse algunas. Un termómetro largo deja poco margen: en una cuadrícula de 9×9, la tercera casilla de seis vale al menos 3 y como mucho 6. Empiece por los más largos, y por los que cruzan una fila o un bloque que ya tiene cifras altas o bajas.
# Where no grid of the book has boxes.
thermometer-primer--lines = Las cifras crecen a cada paso desde el bulbo redondo hasta el extremo, aunque pueden saltarse algunas. Un termómetro largo deja poco margen: en una cuadrícula de 9×9, la tercera casilla de seis vale al menos 3 y como mucho 6. Empiece por los más largos, y por los que cruzan una fila que ya tiene cifras altas o bajas.

## Windows

windows-sentence = Cada ventana sombreada contiene cada cifra una sola vez.
windows-spoken = Ventana: { $cells }
windows-primer = Las ventanas sombreadas son bloques añadidos, a una casilla del borde y a una casilla unas de otras: cada una contiene cada cifra una sola vez. Las filas 2 a 4 contienen cada cifra tres veces, y las dos ventanas que hay en ellas se llevan dos, así que las nueve casillas a los lados de las ventanas también contienen cada cifra una sola vez. Hay cinco de estos grupos ocultos de nueve casillas entre las ventanas de una cuadrícula de 9×9 y a su alrededor; ahí se abre el pasatiempo.

## X-sums

x-sum-sentence = { $n ->
    [one] El número
   *[other] Cada número
} tras un pequeño × fuera de la cuadrícula es la suma de las X primeras cifras de su { $line ->
    [row] fila
    [column] columna
   *[both] fila o columna
} desde ese lado, donde X es la primera de ellas.
x-sum-zero = Si X es 0, la suma es 0.
x-sum-spoken = { $n ->
    [one] Suma X
   *[other] Sumas X
} { $side }: { $clues }
x-sum-primer = La cifra más próxima al número, X, dice cuántas cifras se suman, ella incluida: 3, 8 y 1 delante suman 12, siga lo que siga. Las sumas pequeñas exigen una X pequeña; 45 exige un 9. Empiece por preguntarse qué X puede alcanzar la suma: en una cuadrícula de 9×9, un 10 exige 2, 3 o 4 delante.

## Latin squares

latin-primer = En un cuadrado latino solo cuentan las filas y las columnas: cada una contiene cada cifra una sola vez, y no se pide nada más. Toda cifra está, pues, una vez en cada fila, y dos de sus lugares nunca comparten columna. Cuando una cifra falta en dos filas y en ambas tiene sus lugares en las mismas dos columnas, en el resto de esas columnas no puede estar. Después mire qué añaden las marcas.
zero-primer = En una cuadrícula cuyas cifras empiezan en el 0, cada regla vale tal como está escrita, y un 0 no añade nada a una suma. Los ejemplos de estas páginas valen para cifras a partir del 1, así que sus números cambian: una fila de nueve casillas con las cifras del 0 al 8 suma 36 y no 45; tiene cinco cifras pares y cuatro impares; dos casillas que suman 3 contienen 0 y 3, o bien 1 y 2.
overlap-primer = Varias cuadrículas forman un solo pasatiempo: cada una sigue sus propias reglas y, donde dos se superponen, cada cifra pertenece a ambas. Empiece donde haya más cifras dadas y siga en una cuadrícula mientras dé resultado; luego lleve a la siguiente lo que haya encontrado en los bloques compartidos. Un bloque que comparten dos cuadrículas suele ser la clave de ambas: sus cifras deben encajar en las filas y columnas de las dos.
holes-primer = Una casilla negra no lleva cifra y no pertenece a ninguna fila ni columna. En las demás casillas, cada fila y cada columna contiene todas las cifras una vez; cuando a una cifra le quedan pocos lugares, pronto se decide. Las cifras a ambos lados de una casilla negra se ven en su fila o columna, pero no se tocan.
