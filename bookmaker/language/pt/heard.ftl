### What is read aloud to those who do not see a page: grids, pictures, links, and the editions in text and for braille.

row-numbered = linha { $number }
column-numbered = coluna { $number }
cell-given = inicial { $digit }
cell-empty = vazia
# Between overlapping grids.
cell-none = nenhuma casa
cell-candidates = { $n ->
    [1] candidato { $digits }
   *[other] candidatos { $digits }
}
# A cell to fill, in a table read aloud.
blank = em branco
row-digits = Linha { $number }: { $digits }
row-holds = a linha { $number } contém { $digits }
# Its attributes: the same after these prepositions, with its article.
cell-at = linha { $row } coluna { $column }
    .em = na linha { $row } coluna { $column }
    .de = da linha { $row } coluna { $column }
    .a = à linha { $row } coluna { $column }
    .para = para a linha { $row } coluna { $column }
    .entre = entre as casas linha { $row } coluna { $column }
    .short = l{ $row } c{ $column }
    .em-short = na l{ $row } c{ $column }
    .de-short = da l{ $row } c{ $column }
    .a-short = à l{ $row } c{ $column }
    .para-short = para a l{ $row } c{ $column }
    .entre-short = entre as casas l{ $row } c{ $column }
cell-shaded = { $cell } está sombreada.
check-cells = Casas da linha de conferência: { $cells }.
profile-of = Perfil da resolução, com { $n ->
    [1] um momento
   *[other] { CASE($number, "masculine") } momentos
}
profile-narrow = Perfil da resolução, com { $n ->
    [1] um momento
   *[other] { CASE($number, "masculine") } momentos
}, com { COUNT($at) ->
    [one] gargalo no momento { $at }
   *[other] gargalos nos momentos { $at }
}
sample-of = Exemplo: { $kind }
code-of-link = Código do link { $link }
link-of-puzzle = Link deste passatempo: { $link }
look-at = Olhe aqui: { $cells }
look-along = Percorra com o olhar: { $cells }
filled-next = Preenchida em seguida: { $cell }
eliminated = Eliminado o { $digit }: { $cells }
supposed = { COUNT($digits) ->
    [one] Suposto o { $digits }
   *[other] Suposto { $digits }
}: { $cell }
in-round = Na rodada { $round }, { COUNT($digits) ->
    [one] o { $digits }
   *[other] { $digits }
}: { $cell }
field-at = Linha { $row }, coluna { $column }
bands-counted = Passatempos por dificuldade: { $counts }.
band-count = { $band } { $count }
sample-grid = grade de exemplo
tear-off-edge = borda destacável
cover-art = ilustração da capa

## Web page and e-book

skip-to-book = Ir para o livro
table-of-key = Solução do passatempo { $number }, os algarismos
table-of-puzzle = Passatempo { $number }, os algarismos
head-row = Linha { $number }
head-column = Coluna { $number }
cover = Capa
cover-of = Capa: { $title }
title-page = Folha de rosto
puzzles = Passatempos
printed-pages = Páginas impressas
landmarks = Pontos de referência
grid-in-words = A grade em palavras
grid-as-table = A grade em forma de tabela
picture-told-in-words = A grade do passatempo { $number }, descrita abaixo em palavras e em forma de tabela
picture-told-as-table = A grade do passatempo { $number }, descrita abaixo em forma de tabela
subject = Passatempos de lógica com algarismos
accessibility = Cada grade é uma imagem e uma tabela com cabeçalhos de linhas e colunas. As marcas de cada passatempo são descritas em palavras ao lado dele, de modo que todos podem ser resolvidos sem ver imagem alguma. As dicas se abrem uma a uma, e há links de cada passatempo para as suas dicas e a sua solução, e de volta.

## The edition for braille displays

# l and c are what rows and columns are shortened to here, and in all attributes “short”, which are for braille.
braille-legend = As linhas do texto têm no máximo { $cells } caracteres, e cada um ocupa uma cela no braille de computador. Uma linha de texto que continua é recuada. Numa grade, cada caractere é uma casa, com um ponto para as vazias{ $boxes ->
    [yes] ; espaços separam os blocos
   *[no] {""}
}. l é uma linha, c uma coluna: l2 c3 é a casa na linha 2, coluna 3, e l2 c3-5 as três casas dali até a coluna 5.
