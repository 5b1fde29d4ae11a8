### What is read aloud to those who do not see a page: grids, pictures, links, and the editions in text and for braille.

row-numbered = fila { $number }
column-numbered = columna { $number }
cell-given = cifra dada { $digit }
cell-empty = vacía
# Between overlapping grids.
cell-none = ninguna casilla
cell-candidates = { $n ->
    [one] candidato { $digits }
   *[other] candidatos { $digits }
}
# A cell to fill, in a table read aloud.
blank = en blanco
row-digits = Fila { $number }: { $digits }
row-holds = la fila { $number } contiene { $digits }
cell-at = fila { $row } columna { $column }
    .short = f{ $row } c{ $column }
cell-shaded = { $cell } está sombreada.
check-cells = Casillas de la fila de control: { $cells }.
profile-of = Perfil del recorrido, con { $n ->
    [one] un momento
   *[other] { $number } momentos
}
profile-narrow = Perfil del recorrido, con { $n ->
    [one] un momento
   *[other] { $number } momentos
}, estrecho en { COUNT($at) ->
    [one] el momento { $at }
   *[other] los momentos { $at }
}
sample-of = Muestra: { $kind }
code-of-link = Código del enlace { $link }
link-of-puzzle = Enlace de este pasatiempo: { $link }
look-at = Mire { $cells }
look-along = Mire a lo largo de { $cells }
filled-next = Se llena ahora: { $cell }
eliminated = Eliminado: { $digit } de { $cells }
supposed = Supuesto: { $digits } en { $cell }
in-round = En la ronda { $round }: { $digits } en { $cell }
field-at = Fila { $row }, columna { $column }
bands-counted = Pasatiempos por dificultad: { $counts }.
band-count = { $band } { $count }
sample-grid = cuadrícula de muestra
tear-off-edge = borde para arrancar
cover-art = ilustración de cubierta

## Web page and e-book

skip-to-book = Ir al libro
table-of-key = Solución del pasatiempo { $number }, las cifras
table-of-puzzle = Pasatiempo { $number }, las cifras
head-row = Fila { $number }
head-column = Columna { $number }
cover = Cubierta
cover-of = Cubierta: { $title }
title-page = Portada
puzzles = Pasatiempos
printed-pages = Páginas impresas
landmarks = Puntos de referencia
grid-in-words = La cuadrícula en palabras
grid-as-table = La cuadrícula como tabla
picture-told-in-words = La cuadrícula del pasatiempo { $number }, que se describe debajo en palabras y como tabla
picture-told-as-table = La cuadrícula del pasatiempo { $number }, que se describe debajo como tabla
subject = Pasatiempos de colocar cifras
accessibility = Cada cuadrícula es una imagen y una tabla con encabezados de filas y columnas. Las marcas de cada pasatiempo se describen en palabras a su lado, de modo que todos pueden resolverse sin ver ninguna imagen. Las pistas se abren de una en una, y hay enlaces de cada pasatiempo a sus pistas y a su solución, y de vuelta.

## The edition for braille displays

# f and c are what rows and columns are shortened to here, and in all attributes “short”, which are for braille.
braille-legend = Las líneas tienen como máximo { $cells } caracteres, cada uno de los cuales ocupa una celda en braille informático. Una línea que continúa va sangrada. En una cuadrícula cada carácter es una casilla, con un punto para las vacías{ $boxes ->
    [yes] ; los espacios separan los bloques
   *[no] {""}
}. f es una fila, c una columna: f2 c3 es la casilla de la fila 2, columna 3, y f2 c3-5 las tres casillas desde ahí hasta la columna 5.
