### The book's own words: headings, the page on how to read it, what stands around puzzles, keys and hints.
### The reader is addressed as “usted”; what is printed says cifra for a digit in a cell, número for any other.

## Headings

heading-contents = Índice
heading-foreword = Prólogo
heading-guide = Cómo leer este libro
heading-text-guide = Cómo leer esta edición
heading-primer = Las reglas, una por una
heading-hints = Pistas
heading-glossary = Palabras de las pistas
heading-times = Tiempos
heading-keys = Soluciones
heading-answer-key = Soluciones
heading-credits = Créditos
heading-index = Índice alfabético
heading-imprint = Pie de imprenta
heading-notes = Notas
heading-latin = Cuadrados latinos
heading-zero = Cifras desde el 0
heading-by-setter = Por autor
heading-by-rule = Por regla
# A title with what follows from it: “Lanterns: Answer key”.
titled = { $title }: { $what }
chapter-titled = Capítulo { $number }: { $title }

## The five bands of difficulty, gentlest first

band-1 = Paseo
band-2 = Caminata
band-3 = Travesía
band-4 = Escalada
band-5 = Cumbre

## How to read the book

cell-names = Las casillas se nombran por su fila y su columna: r5c2 está en la fila 5, columna 2.
houses-explained = Una unidad es una fila, una columna{ $areas ->
    [boxes] , un bloque o región,
    [regions] , una región
   *[none] {""}
} o cualquier otro conjunto de casillas en el que no se repite ninguna cifra.
guide-ridge = Junto a cada título, una sierra de cinco picos muestra la dificultad del pasatiempo. Se llena desde la izquierda, pico a pico, de { $first } a { $last }. El número que la acompaña es el grado de dificultad: la cifra anterior a la coma cuenta los picos; la posterior indica lo cerca que está el siguiente.
guide-order-difficulty = Los pasatiempos van por orden de dificultad, del más suave al más duro.
guide-order-listed = Los pasatiempos van en el orden que ha elegido el editor.
guide-order-chapters = Los pasatiempos se agrupan en capítulos, y en cada uno van del más suave al más duro.
guide-rules = Las reglas que acompañan a cada cuadrícula están completas y se cumplen todas a la vez. Cada tipo de marca se dibuja de nuevo junto a la frase que la explica. Las cuadrículas están pensadas para el lápiz: se puede escribir encima de cualquier marca.
# Rules that all puzzles of a chapter share are said where it opens.
guide-rules-shared = Las reglas que acompañan a cada cuadrícula, junto con las que abren su capítulo, están completas y se cumplen todas a la vez. Cada tipo de marca se dibuja de nuevo junto a la frase que la explica. Las cuadrículas están pensadas para el lápiz: se puede escribir encima de cualquier marca.
guide-proved = Cada pasatiempo tiene una única solución: se ha comprobado exhaustivamente antes de imprimirlo, y después se ha cotejado la solución con las reglas.
guide-draft = Esto es un borrador: puede contener pasatiempos sin solución o con varias.
guide-hints = Si se atasca, recurra a las tres pistas de cada pasatiempo, que preceden a las soluciones: dónde mirar, qué buscar y cuál es el paso siguiente.
guide-hints-in-pad = Si se atasca, recurra a las tres pistas de cada pasatiempo, que siguen a la última hoja: dónde mirar, qué buscar y cuál es el paso siguiente.
guide-keys = Las soluciones están al final, con las cifras dadas en negrita.
guide-keys-in-pad = Cada solución está al dorso de su hoja, con las cifras dadas en negrita.
guide-profile = La línea bajo cada solución muestra el perfil del recorrido, que sube donde cuesta más encontrar el paso siguiente; las puntas de flecha señalan los puntos difíciles.
guide-credits = Tras las soluciones vienen los créditos: cuándo se presentó cada pasatiempo por primera vez y quién ha dado su permiso.
guide-credits-in-pad = Al final vienen los créditos: cuándo se presentó cada pasatiempo por primera vez y quién ha dado su permiso.
guide-large = En las cuadrículas más grandes, tras el 9 siguen letras: A vale 10, B vale 11, y así sucesivamente. Se omiten la I y la O, que se confunden con el 1 y el 0.
guide-text-marks = Las filas se numeran de arriba abajo, las columnas de izquierda a derecha, y un espacio en blanco es una casilla por llenar. Cuando se nombran juntas filas y columnas, se entienden todas las casillas en que se cruzan; las casillas de una línea se nombran en su orden, de modo que sus columnas o filas pueden ir hacia atrás.
guide-text-below = Debajo de cada regla están sus marcas.
guide-text-pictured = Debajo de su imagen, cada cuadrícula se describe otra vez, en palabras y como tabla desplegable.
guide-text-bands = El nivel de un pasatiempo, de { $first } a { $last }, indica su dificultad. El grado de dificultad es un número: la cifra anterior a la coma cuenta los niveles; la posterior indica lo cerca que está el siguiente.

## What a grid asks

grid-asks = Complete la cuadrícula de modo que cada { $houses ->
    [lines] fila y cada columna
    [boxes] fila, columna y bloque
   *[regions] fila, columna y región marcada
} contenga { $symbols }, sin repetir.
# The same where several grids overlap.
grids-ask = Complete todas las cuadrículas de modo que, en cada una, cada fila, columna y bloque contenga { $symbols }, sin repetir. Una casilla que comparten varias cuadrículas cuenta en todas ellas.
holes-stand = Las casillas negras quedan vacías.
# “1 to 9”, kept on one line.
symbols-digits = las cifras del { $low } al { $high }
symbols-and-letter = las cifras del { $low } al { $high } y la letra { $last }
symbols-and-two-letters = las cifras del { $low } al { $high } y las letras { $first } y { $last }
symbols-and-letters = las cifras del { $low } al { $high } y las letras de la { $first } a la { $last }
symbols-and-letters-without = las cifras del { $low } al { $high } y las letras de la { $first } a la { $last }, excepto { $without }
symbols-letters = las letras { $letters }
# What sentences on digits become where a grid has letters: pairs of words.
letters-for-digits = cifra letra | cifras letras
letters-stand = Aquí hay letras en lugar de cifras.
# A word that a solution spells, told with its key.
row-spells = en la fila { $number } se lee { $word }
    .short = en la f{ $number } se lee { $word }
column-spells = en la columna { $number } se lee { $word }
    .short = en la c{ $number } se lee { $word }
cells-spell = en las casillas de { $first } a { $last } se lee { $word }
boxes-have = Los bloques tienen { $high } y { $wide }.
rows-counted = { $n ->
    [one] una fila
   *[other] { $number } filas
}
columns-counted = { $n ->
    [one] una columna
   *[other] { $number } columnas
}
region-at = Región { $number }: { $cells }
# Where one of several overlapping grids lies.
grid-at = cuadrícula { $grid }: filas { $top } a { $bottom }, columnas { $left } a { $right }
    .short = cuadrícula { $grid }: f{ $top }-{ $bottom }, c{ $left }-{ $right }
grid-boxes = Clásico
grid-regions = Irregular
grid-lines = Cuadrado latino
grids-overlap = Cuadrículas superpuestas
grid-holes = Casillas negras
latin-with = Cuadrado latino con { $rules }
rule-titled = { $title }: { $sentence }
# A rule that holds in some of several grids, $grids being their letters.
rule-in-grids = { $n ->
    [1] Cuadrícula { $grids }
   *[other] Cuadrículas { $grids }
}: { $sentence }

## Around a puzzle

puzzle-numbered = Pasatiempo { $number }
puzzle-named = Pasatiempo { $name }
key-to = Solución del pasatiempo { $name }
hints-for = Pistas del pasatiempo { $name }
back-to = Volver al pasatiempo { $number }
difficulty-of = dificultad { $figure }
band-said = { $band }, nivel { $number } de 5, dificultad { $figure }.
set-by = Autor: { $setter }.
puzzles-by = Pasatiempos de { $setters }
edited-by = Edición de { $editor }
first-shown = presentado por primera vez: { $date }
points = { $n ->
    [one] 1 punto
   *[other] { $n } puntos
}
flaw-none = Sin solución
flaw-several = Más de una solución
flaw-undecided = Sin decidir
draft = BORRADOR
time = Tiempo
isbn = ISBN { $number }
isbn-printed = ISBN { $number } (impreso)
isbn-ebook = ISBN { $number } (libro electrónico)
index-note = Los números son los de los pasatiempos.
# The number of the page follows.
key-on-page = Solución en la página
hints-on-page = Pistas en la página
page = página
terms-on-page = Las palabras que puedan resultar nuevas se explican en la página
steps-counted = { $n ->
    [one] 1 paso
   *[other] { $number } pasos
}
rules-face-grid = Las reglas del pasatiempo siguiente están enfrente de su cuadrícula.
puzzles-counted = { $n ->
    [one] un pasatiempo
   *[other] { $number } pasatiempos
}

# On the opening page of a chapter, before rules.
rules-of-chapter = En todos los pasatiempos de este capítulo:
belongs-to = Este libro pertenece a
begun-on = Empezado el
finished-on = Terminado el

## Hints

hints-note = Hay tres pistas para cada pasatiempo, sobre el primer punto difícil. Cada una revela más que la anterior, y la siguiente nunca queda a la vista. Las casillas se nombran por su fila y su columna: r5c2 está en la fila 5, columna 2.
hints-note-sheet = Hay tres pistas para cada pasatiempo, sobre el primer punto difícil. Cada una revela más que la anterior: tape las de abajo con una hoja de papel. Las casillas se nombran por su fila y su columna: r5c2 está en la fila 5, columna 2.
hints-note-text = Hay tres pistas para cada pasatiempo, sobre el primer punto difícil. Cada una revela más que la anterior. Abra solo la que quiera.
hint-level-1 = Dónde mirar
hint-level-2 = Qué buscar
hint-level-3 = El paso siguiente
hints-level-1 = Pistas: dónde mirar
hints-level-2 = Pistas: qué buscar
hints-level-3 = Pistas: el paso siguiente
hints-overleaf-2 = Las segundas pistas están a la vuelta.
hints-overleaf-3 = Las terceras pistas están a la vuelta.
# Where a hint leads to.
hint-leads-2 = segunda pista del pasatiempo { $number }
hint-leads-3 = tercera pista del pasatiempo { $number }
hint-leads-key = solución del pasatiempo { $number }
hint-leads-puzzle = pasatiempo { $number }

## Handouts and contests

name = Nombre
date = Fecha
copy-of = Copia { $number } de { $count }
check-row = Cuando termine una cuadrícula, copie las cifras de sus casillas con letra en los recuadros de su fila de control. Su hoja se corrige a partir de ellos.
marker-sheet = Hoja del corrector
marker-help = Ponga las filas de control de una hoja junto a estas. La que coincide obtiene sus puntos de un vistazo; si alguna difiere, o si una cuadrícula parece incompleta, compruébela con la solución del dorso.
# $points: how many there are to win.
of-points = de { $points }
total-of = Total de { $points }
minutes = minutos
place = Puesto
total = Total

## Covers

cover-count = { $n ->
    [one] Un pasatiempo, con una única solución.
   *[other] { $number } pasatiempos, cada uno con una única solución.
}
cover-sample = N.º { $number }
# After a large figure.
cover-puzzles = { $n ->
    [one] pasatiempo
   *[other] pasatiempos
}
cover-kinds = { $n ->
    [one] tipo de regla
   *[other] tipos de reglas
}

## The presenter’s crib

crib = Guion del presentador
crib-steps = Los números al margen cuentan los pasos del recorrido.
crib-look = mire aquí
crib-look-along = mire a lo largo
crib-next = se llena ahora
crib-eliminated = eliminado
crib-supposed = supuesto
crib-step = paso { $first }
crib-run = pasos { $first }–{ $last }
crib-follows = lo que sigue, en este orden
cells-filled = { $number } casillas llenas
start = El comienzo
solution = La solución
story-set-by = { $title }, de { $setter }
story-setter = de { $setter }
story-crux = El momento difícil
story-onwards = Desde ahí
story-ending = Hasta el final

## The chart of all rules

chart = Las reglas y sus marcas
chart-subject = Todos los tipos de reglas con su marca y su frase
chart-lines = Sobre líneas
chart-cells = En casillas y zonas
chart-borders = Entre casillas y en las esquinas
chart-outside = Fuera de la cuadrícula
chart-whole = En toda la cuadrícula, sin marca
