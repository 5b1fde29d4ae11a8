### What solvers’ words mean, for readers of hints. `.signs`: what hints that need the word say, with bars between them; what
### these begin with is enough, and capitals do not matter.

term-alternating-chain = Cadena alterna
    .signs = cadena alterna | una cadena alterna
    .meaning = Casillas y cifras enlazadas de modo que, si una falla, se cumple la siguiente. Sea cual sea el extremo verdadero, la cifra que ambos descartan queda eliminada.
term-cell-seen-by-all-places-of-a-digit = Casilla vista desde todos los lugares de una cifra
    .signs = desde todos los lugares de una cifra
    .meaning = Vaya donde vaya la cifra en una unidad, se descarta a sí misma en una casilla de fuera: esa casilla no puede contenerla.
term-combination = Combinación
    .signs = combinación
    .meaning = Un conjunto de cifras que suma lo que se pide y puede estar en las casillas.
term-contradiction = Contradicción
    .signs = contradicción
    .meaning = Una casilla sin cifra, una cifra sin lugar o una marca que no se puede cumplir. Lo que llevó hasta ahí era falso.
term-eliminate = Eliminar
    .signs = se elimina | se eliminan | eliminada | eliminado
    .meaning = Descartar una cifra en una casilla. Las que aún no se han eliminado son los candidatos de la casilla; muchos los anotan en pequeño en su esquina.
term-finned-pattern = Figura con aleta
    .signs = con aleta
    .meaning = Un ala X o un pez mayor al que estorban uno o dos lugares, las aletas. Lo que descartan tanto la figura como cada aleta queda eliminado igualmente.
term-hidden-pair-triple-quad = Par, trío o cuarteto oculto
    .signs = los mismos dos lugares | comparten tres lugares | comparten cuatro lugares
    .meaning = Dos cifras que en una unidad tienen los mismos dos lugares necesitan ambas casillas para sí, por más que ahí pareciera posible otra cosa. Lo mismo tres cifras con tres lugares, y cuatro con cuatro.
term-hidden-single = Solitario oculto
    .signs = solo tiene un lugar
    .meaning = Una cifra que en una unidad solo cabe en una casilla, aunque esa casilla admitiera otras. Mire dónde está ya la cifra en los alrededores.
term-house = Unidad
    .signs = fila | columna | bloque | región
    .meaning = Una fila, una columna{ $divided ->
        [none] {""}
        [regions] , una región
       *[boxes] , un bloque o región
    } o cualquier otro conjunto de casillas en el que no se repite ninguna cifra.
term-step-beyond-the-ladder = Paso fuera de la escala
    .signs = fuera de la escala
    .meaning = Ninguna figura de las que aquí tienen nombre permite avanzar; la cifra se conoce por la demostración de que la solución es única.
term-jellyfish = Medusa
    .signs = medusa
    .meaning = Un pez espada de cuatro filas y cuatro columnas.
term-last-empty-cell = Última casilla vacía
    .signs = última casilla vacía
    .meaning = En una unidad completa salvo por una casilla, ahí va la cifra que falta.
term-locked-candidates = Candidatos bloqueados
    .signs = coinciden todos en otra
    .meaning = Si todos los lugares de una cifra en una unidad están también en otra, la cifra queda gastada ahí: no va en ningún otro sitio de la segunda.
term-mark = Marca
    .signs = marca
    .meaning = Lo que se imprime en la cuadrícula, o junto a ella, para una de sus reglas: un termómetro, una jaula, un punto, un número de fuera.
term-naked-pair-triple-quad = Par, trío o cuarteto desnudo
    .signs = las mismas dos cifras | les quedan tres cifras | les quedan cuatro cifras
    .meaning = Dos casillas de una unidad a las que solo quedan las mismas dos cifras gastan ambas; ninguna otra casilla de la unidad las recibe. Lo mismo tres casillas con tres cifras, y cuatro con cuatro.
term-naked-single = Solitario desnudo
    .signs = una sola cifra posible
    .meaning = Una casilla a la que su fila, su columna{ $divided ->
        [none] {""}
        [regions] , su región
       *[boxes] , su bloque
    } y las marcas dejan, entre todas, una sola cifra. Cuente lo que ve.
term-see = Ver
    .signs = ve | ven | se ve | vista
    .meaning = Dos casillas se ven si no pueden contener la misma cifra, porque comparten una unidad o porque lo dice una regla.
term-single-digit-chain = Cadena de una sola cifra
    .signs = cadena de una sola cifra
    .meaning = Lugares de una cifra, dos por unidad, enlazados uno tras otro. Uno de los dos extremos es verdadero, así que la casilla que ve ambos no puede contener la cifra.
term-swordfish = Pez espada
    .signs = pez espada
    .meaning = Un ala X de tres filas y tres columnas.
term-whole-cages = Jaulas enteras
    .signs = suma 45
    .meaning = Las cifras del 1 al 9 suman 45. Reste las jaulas que están enteras en una unidad: lo que queda corresponde a las demás casillas.
term-w-wing = Ala W
    .signs = ala w
    .meaning = Dos casillas a las que quedan las mismas dos cifras, unidas por una unidad en la que una de ellas solo tiene dos lugares, cada uno a la vista de una de las casillas. La otra cifra está en una de las dos, así que la casilla que ve ambas no puede contenerla.
term-what-if = Suposición
    .signs = suponga | suposición | lleva pronto
    .meaning = Probar una cifra mentalmente, seguir lo que obliga a poner y tacharla si acaba en contradicción. Bastan las cortas.
term-x-wing = Ala X
    .signs = ala x
    .meaning = Dos filas en las que una cifra solo cabe en las mismas dos columnas. Está en esquinas opuestas, así que en esas columnas no va en ningún otro sitio. Filas y columnas pueden intercambiar su papel.
term-xy-wing = Ala XY
    .signs = ala xy
    .meaning = Una casilla con dos cifras posibles que ve otras dos; cada una comparte con ella una cifra, y ambas tienen una tercera. Tenga lo que tenga la primera, una de las otras es la tercera, así que la casilla que ve ambas no lo es.
term-xyz-wing = Ala XYZ
    .signs = ala xyz
    .meaning = Un ala XY cuya primera casilla también puede ser la tercera cifra. Solo la pierden las casillas que ven las tres.
term-extended-chain = Cadena extendida
    .signs = cadena extendida
    .meaning = Una cadena alterna cuyos eslabones también pueden ser grupos de casillas, o lo que permite una marca. Lo que descartan ambos extremos queda eliminado.
term-either-way = Cifra descartada en todo caso
    .signs = ninguna elección | descartada en todo caso
    .meaning = Tome una casilla con pocas cifras, o una cifra con pocos lugares, y mire cada posibilidad. Lo que todas descartan, a la vista o por una marca, queda eliminado.
