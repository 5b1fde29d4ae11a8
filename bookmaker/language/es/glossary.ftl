### What solvers’ words mean, for readers of hints. A term is named for the technique, claim or concept that asks for it
### (`tell/concepts.py`).

term-alternating-chain = Cadena alterna
    .meaning = Casillas y cifras enlazadas de modo que, si una falla, se cumple la siguiente. Uno de los dos extremos de la cadena es cierto: la cifra que ambos descartan queda eliminada.
term-seen-by-all = Casilla vista desde todos los lugares de una cifra
    .meaning = Esté donde esté la cifra dentro de una unidad, la descarta en una misma casilla de fuera: esa casilla no puede contenerla.
term-combination = Combinación
    .meaning = Un conjunto de cifras que suma el total pedido y que puede estar en las casillas.
term-contradiction = Contradicción
    .meaning = Una casilla sin cifra posible, una cifra sin lugar o una marca que no se puede cumplir. Lo que llevó a ella era falso.
term-eliminate = Eliminar
    .meaning = Descartar una cifra en una casilla. Las cifras aún no eliminadas son los candidatos de la casilla, que muchos aficionados anotan en pequeño en una esquina.
term-fins = Figura con aleta
    .meaning = Un ala X o un pez mayor que no llega a formarse por uno o dos lugares de más: las aletas. Aun así, lo que descartan tanto la figura como cada aleta queda eliminado.
term-hidden-subset = Par, trío y cuarteto ocultos
    .meaning = Dos cifras que en una unidad tienen los mismos dos lugares necesitan ambas casillas para sí, por más candidatos que hubiera en ellas. Lo mismo vale para tres cifras con tres lugares y para cuatro con cuatro.
term-hidden-single = Solitario oculto
    .meaning = Una cifra que en una unidad cabe en una sola casilla, aunque esa casilla admita otras. Mire dónde está ya la cifra en los alrededores.
term-house = Unidad
    .meaning = Una fila, una columna{ $divided ->
        [none] {""}
        [regions] , una región
       *[boxes] , un bloque o región,
    } o cualquier otro conjunto de casillas en el que no se repite ninguna cifra.
term-jellyfish = Medusa
    .meaning = Un pez espada de cuatro filas y cuatro columnas.
term-last-cell = Última casilla vacía
    .meaning = Cuando en una unidad solo queda una casilla por llenar, en ella va la cifra que falta.
term-locked = Candidatos bloqueados
    .meaning = Si todos los lugares de una cifra en una unidad están también en una segunda unidad, la cifra se gasta ahí: en el resto de la segunda no puede estar.
term-mark = Marca
    .meaning = Lo que se imprime en una cuadrícula, o junto a ella, para una de sus reglas: un termómetro, una jaula, un punto, un número exterior.
term-naked-subset = Par, trío y cuarteto desnudos
    .meaning = Dos casillas de una unidad a las que solo les quedan las mismas dos cifras las gastan, así que ninguna otra casilla de la unidad puede contenerlas. Lo mismo vale para tres casillas con tres cifras y para cuatro con cuatro.
term-naked-single = Solitario desnudo
    .meaning = Una casilla a la que su fila, su columna{ $divided ->
        [none] {""}
        [regions] , su región
       *[boxes] , su bloque
    } y las marcas, entre todas, le dejan una sola cifra. Repase todas las que ve.
term-sight = Ver
    .meaning = Dos casillas se ven si no pueden contener la misma cifra, porque comparten una unidad o porque lo dice una regla.
term-single-digit-chain = Cadena de una sola cifra
    .meaning = Lugares de una misma cifra, dos por unidad, enlazados uno tras otro. En uno de los dos extremos está la cifra, así que la casilla que ve ambos no puede contenerla.
term-swordfish = Pez espada
    .meaning = Un ala X de tres filas y tres columnas.
term-left-over--cage = Jaulas enteras
    .meaning = Las cifras del 1 al 9 suman 45. Reste las jaulas que están enteras dentro de una unidad: lo que queda es la suma de sus demás casillas.
term-w-wing = Ala W
    .meaning = Dos casillas con las mismas dos cifras posibles, unidas por una unidad en la que una de las dos cifras solo tiene dos lugares, cada uno a la vista de una de las casillas. La otra cifra está en una de ellas, así que la casilla que ve ambas no puede contenerla.
term-what-if = Suposición
    .meaning = Pruebe mentalmente una cifra, siga lo que obliga a poner y táchela si se llega a una contradicción. Que sean cortas.
term-x-wing = Ala X
    .meaning = Dos filas en las que una cifra solo cabe en las mismas dos columnas. La cifra está en dos esquinas opuestas, así que en el resto de esas columnas no puede estar. Filas y columnas pueden intercambiarse.
term-xy-wing = Ala XY
    .meaning = Una casilla con dos cifras posibles que ve otras dos; cada una de estas tiene una de esas cifras, y ambas una tercera. Sea cual sea la cifra de la primera, una de las otras dos contiene la tercera, así que la casilla que ve ambas no la admite.
term-xyz-wing = Ala XYZ
    .meaning = Un ala XY cuya primera casilla admite también la tercera cifra. Esta solo se elimina en las casillas que ven las tres.
term-extended-chain = Cadena ampliada
    .meaning = Una cadena alterna cuyos eslabones pueden ser también grupos de casillas, o lo que una marca permite. Lo que ambos extremos descartan queda eliminado.
term-either-way = Candidato descartado en cualquier caso
    .meaning = Tome una casilla con pocas cifras posibles, o una cifra con pocos lugares, y examine cada opción por separado. Lo que descartan todas, a la vista o por medio de una marca, queda eliminado.
