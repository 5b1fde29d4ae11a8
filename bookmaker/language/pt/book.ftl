### The book's own words: headings, the page on how to read it, what stands around puzzles, keys and hints.
### The reader is addressed as “você”, by imperatives. “Algarismo” is a digit in a cell, “número” any other number.

## Headings

heading-contents = Sumário
heading-foreword = Prefácio
heading-guide = Como ler este livro
heading-text-guide = Como ler esta edição
heading-primer = As regras, uma a uma
heading-hints = Dicas
heading-glossary = As palavras das dicas
heading-times = Tempos
heading-keys = Soluções
heading-answer-key = Soluções
heading-credits = Créditos
heading-index = Índice remissivo
heading-imprint = Ficha técnica
heading-notes = Notas
heading-latin = Quadrados latinos
heading-zero = Algarismos a partir de 0
heading-by-setter = Por autor
heading-by-rule = Por regra
# A title with what follows from it: “Lanterns: Answer key”.
titled = { $title }: { $what }
chapter-titled = Capítulo { $number }: { $title }

## The five bands of difficulty, gentlest first

band-1 = Passeio
band-2 = Caminhada
band-3 = Trilha
band-4 = Escalada
band-5 = Cume

## How to read the book

cell-names = As casas são indicadas pela linha (r) e pela coluna (c): r5c2 fica na linha 5, coluna 2.
houses-explained = Uma unidade é uma linha, uma coluna{ $areas ->
    [boxes] , um bloco ou região
    [regions] , uma região
   *[none] {""}
}, ou qualquer outro conjunto de casas em que nenhum algarismo se repete.
guide-ridge = Ao lado de cada título, uma serra de cinco picos mostra a dificuldade do passatempo. Ela se enche a partir da esquerda, pico a pico, de { $first } a { $last }. O número que a acompanha é o grau de dificuldade: o algarismo antes da vírgula conta os picos; o que vem depois mostra quanto falta para o pico seguinte.
guide-order-difficulty = Os passatempos estão em ordem de dificuldade, do mais suave ao mais difícil.
guide-order-listed = Os passatempos estão na ordem escolhida pelo editor.
guide-order-chapters = Os passatempos estão reunidos em capítulos e, em cada um, vão do mais suave ao mais difícil.
guide-rules = As regras dadas com cada grade são completas e valem todas ao mesmo tempo. Cada tipo de marca aparece desenhado de novo ao lado da frase que o explica. As grades foram feitas para o lápis: você pode escrever por cima de qualquer marca.
# Rules that all puzzles of a chapter share are said where it opens.
guide-rules-shared = As regras dadas com cada grade e na abertura do seu capítulo são completas e valem todas ao mesmo tempo. Cada tipo de marca aparece desenhado de novo ao lado da frase que o explica. As grades foram feitas para o lápis: você pode escrever por cima de qualquer marca.
guide-proved = Cada passatempo tem exatamente uma solução: todos foram examinados exaustivamente antes da impressão, e depois a solução foi conferida com as regras.
guide-draft = Este é um rascunho: pode haver nele passatempos sem solução ou com várias.
guide-hints = Se travar, recorra às três dicas de cada passatempo, antes das soluções: onde olhar, o que procurar e qual é o próximo passo.
guide-hints-in-pad = Se travar, recorra às três dicas de cada passatempo, depois da última folha: onde olhar, o que procurar e qual é o próximo passo.
guide-keys = As soluções estão no fim, com os algarismos iniciais em negrito.
guide-keys-in-pad = Cada solução está no verso da sua folha, com os algarismos iniciais em negrito.
guide-profile = A linha abaixo de cada solução traça o perfil da resolução: sobe onde um passo exige mais procura; pontas de seta assinalam os momentos em que é fácil travar.
guide-credits = Depois das soluções vêm os créditos: quando cada passatempo foi apresentado pela primeira vez e quem deu a permissão.
guide-credits-in-pad = No fim vêm os créditos: quando cada passatempo foi apresentado pela primeira vez e quem deu a permissão.
guide-large = Nas grades maiores, depois do algarismo 9 vêm letras: A vale 10, B vale 11 e assim por diante. I e O ficam de fora, porque se parecem com 1 e 0.
guide-text-marks = As linhas são numeradas de cima para baixo, as colunas da esquerda para a direita, e “em branco” é uma casa a preencher. Quando linhas e colunas são citadas juntas, trata-se de todas as casas em que elas se cruzam; as casas de um caminho são citadas na ordem dele, de modo que as suas colunas ou linhas podem vir em ordem decrescente.
guide-text-below = Abaixo de cada regra estão as suas marcas.
guide-text-pictured = Abaixo da imagem, cada grade é descrita outra vez, em palavras e em forma de tabela; é só abrir.
guide-text-bands = O nível de um passatempo, de { $first } a { $last }, indica a sua dificuldade. O grau de dificuldade é um número: o algarismo antes da vírgula conta os níveis; o que vem depois mostra quanto falta para o nível seguinte.

## What a grid asks

grid-asks = Preencha a grade de modo que cada { $houses ->
    [lines] linha e coluna
    [boxes] linha, coluna e bloco
   *[regions] linha, coluna e região contornada
} contenha { $symbols }, sem repetição.
# The same where several grids overlap.
grids-ask = Preencha todas as grades de modo que, em cada uma, cada linha, coluna e bloco contenha { $symbols }, sem repetição. Uma casa comum a várias grades conta em cada uma delas.
holes-stand = As casas pretas ficam vazias.
# “1 a 9”, kept on one line.
symbols-digits = os algarismos de { $low } a { $high }
symbols-and-letter = os algarismos de { $low } a { $high } e a letra { $last }
symbols-and-two-letters = os algarismos de { $low } a { $high } e as letras { $first } e { $last }
symbols-and-letters = os algarismos de { $low } a { $high } e as letras de { $first } a { $last }
symbols-and-letters-without = os algarismos de { $low } a { $high } e as letras de { $first } a { $last }, sem { $without }
symbols-letters = as letras { $letters }
# “Algarismo” is masculine and “letra” feminine, so there is no letters-for-digits.
letters-stand = Aqui, letras ocupam o lugar dos algarismos.
# A word that a solution spells, told with its key.
row-spells = na linha { $number } se lê { $word }
    .short = na l{ $number } se lê { $word }
column-spells = na coluna { $number } se lê { $word }
    .short = na c{ $number } se lê { $word }
cells-spell = nas casas { AFTER("de", $first) } { AFTER("a", $last) } se lê { $word }
boxes-have = Os blocos têm { $high } e { $wide }.
rows-counted = { $n ->
    [1] uma linha
   *[other] { $number } linhas
}
columns-counted = { $n ->
    [1] uma coluna
   *[other] { $number } colunas
}
region-at = Região { $number }: { $cells }
# Where one of several overlapping grids lies.
grid-at = grade { $grid }: linhas { $top } a { $bottom }, colunas { $left } a { $right }
    .short = grade { $grid }: l{ $top }-{ $bottom }, c{ $left }-{ $right }
grid-boxes = Clássico
grid-regions = Irregular
grid-lines = Quadrado latino
grids-overlap = Grades sobrepostas
grid-holes = Casas pretas
latin-with = Quadrado latino com { $rules }
rule-titled = { $title }. { $sentence }
# A rule that holds in some of several grids, $grids being their letters.
rule-in-grids = { $n ->
    [1] Grade { $grids }
   *[other] Grades { $grids }
}: { $sentence }

## Around a puzzle

puzzle-numbered = Passatempo { $number }
puzzle-named = Passatempo { $name }
key-to = Solução do passatempo { $name }
hints-for = Dicas para o passatempo { $name }
back-to = Voltar ao passatempo { $number }
difficulty-of = dificuldade { $figure }
band-said = { $band }, nível { $number } de 5, dificuldade { $figure }.
set-by = Autoria: { $setter }.
puzzles-by = Passatempos de { $setters }
edited-by = Edição: { $editor }
first-shown = apresentado pela primeira vez: { $date }
points = { $n ->
    [1] 1 ponto
   *[other] { $n } pontos
}
flaw-none = Sem solução
flaw-several = Mais de uma solução
flaw-undecided = Em aberto
draft = RASCUNHO
time = Tempo
isbn = ISBN { $number }
isbn-printed = ISBN { $number } (impresso)
isbn-ebook = ISBN { $number } (e-book)
index-note = Os números são os dos passatempos.
# The number of the page follows.
key-on-page = Solução na página
hints-on-page = Dicas na página
page = página
terms-on-page = Palavras que talvez sejam novas: explicação na página
steps-counted = { $n ->
    [1] 1 passo
   *[other] { $number } passos
}
rules-face-grid = As regras do próximo passatempo ficam de frente para a grade.
puzzles-counted = { $n ->
    [1] um passatempo
   *[other] { CASE($number, "masculine") } passatempos
}

# On the opening page of a chapter, before rules.
rules-of-chapter = Para todos os passatempos deste capítulo:
belongs-to = Este livro pertence a
begun-on = Começado em
finished-on = Terminado em

## Hints

hints-note = Há três dicas para cada passatempo, sobre o primeiro momento em que é fácil travar. Cada uma revela mais que a anterior, e a seguinte nunca fica à vista. As casas são indicadas pela linha (r) e pela coluna (c): r5c2 fica na linha 5, coluna 2.
hints-note-sheet = Há três dicas para cada passatempo, sobre o primeiro momento em que é fácil travar. Cada uma revela mais que a anterior: cubra as de baixo com uma folha de papel. As casas são indicadas pela linha (r) e pela coluna (c): r5c2 fica na linha 5, coluna 2.
hints-note-text = Há três dicas para cada passatempo, sobre o primeiro momento em que é fácil travar. Cada uma revela mais que a anterior. Abra só a que quiser.
hint-level-1 = Onde olhar
hint-level-2 = O que procurar
hint-level-3 = O próximo passo
hints-level-1 = Dicas: onde olhar
hints-level-2 = Dicas: o que procurar
hints-level-3 = Dicas: o próximo passo
hints-overleaf-2 = As segundas dicas estão no verso.
hints-overleaf-3 = As terceiras dicas estão no verso.
# Where a hint leads to.
hint-leads-2 = segunda dica para o passatempo { $number }
hint-leads-3 = terceira dica para o passatempo { $number }
hint-leads-key = solução do passatempo { $number }
hint-leads-puzzle = passatempo { $number }

## Handouts and contests

name = Nome
date = Data
copy-of = Exemplar { $number } de { $count }
check-row = Ao terminar uma grade, copie os algarismos das casas com letras para os quadros da linha de conferência. É por eles que a sua folha será corrigida.
marker-sheet = Folha de correção
marker-help = Ponha as linhas de conferência de uma folha ao lado destas. Uma linha igual ganha os seus pontos à primeira vista; se alguma for diferente, ou se uma grade parecer inacabada, confira-a com a solução no verso.
# $points: how many there are to win.
of-points = de { $points }
total-of = Total de { $points }
minutes = minutos
place = Lugar
total = Total

## Covers

cover-count = { CASE($number, "masculine") } { $n ->
    [1] passatempo, com exatamente uma solução.
   *[other] passatempos, cada um com exatamente uma solução.
}
cover-sample = Nº { $number }
# After a large figure.
cover-puzzles = { $n ->
    [1] passatempo
   *[other] passatempos
}
cover-kinds = { $n ->
    [1] tipo de regra
   *[other] tipos de regras
}

## The presenter’s crib

crib = Roteiro do apresentador
crib-steps = Os números na margem contam os passos da resolução.
crib-look = olhe aqui
crib-look-along = percorra com o olhar
crib-next = preenchida em seguida
crib-eliminated = eliminado
crib-supposed = suposto
crib-step = passo { $first }
crib-run = passos { $first }–{ $last }
crib-follows = o que se segue, nesta ordem
cells-filled = { $number } casas preenchidas
start = O início
solution = A solução
story-set-by = { $title }, de { $setter }
story-setter = de { $setter }
story-crux = O momento difícil
story-onwards = Daí em diante
story-ending = Até o fim

## The chart of all rules

chart = As regras e as suas marcas
chart-subject = Todos os tipos de regra, cada um com a sua marca e a sua frase
chart-lines = Ao longo de caminhos
chart-cells = Em casas e áreas
chart-borders = Entre casas e nos cantos
chart-outside = Fora da grade
chart-whole = Na grade inteira, sem marca
