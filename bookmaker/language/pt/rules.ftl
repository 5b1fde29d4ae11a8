### What each kind of rule asks, in a sentence under a puzzle, singular or plural as there are marks ($n); how it is taught in
### the primer; and how its marks are told to those who do not see them ($cells, $line: which cells; $where: on which borders;
### $side: on which side of the grid).

## Arithmetic cages

result-sum = a soma (+)
result-product = o produto (×)
result-difference = a diferença (−)
result-quotient = o quociente (÷)
# $results: the signs that are there. $unsigned: is there a number without a sign; in pairs, it may be any of the four.
arithmetic-cage-sentence-signs = O número no canto { $n ->
    [1] da gaiola aritmética
   *[other] de cada gaiola aritmética
} é { $results } dos seus algarismos{ $unsigned ->
    [pairs] ; sem sinal, é a soma, o produto, a diferença ou o quociente dos seus algarismos
    [larger] ; sem sinal, é a soma ou o produto dos seus algarismos
   *[none] {""}
}{ $larger ->
    [differ] ; lá dentro, nenhum algarismo se repete
    [repeat] ; lá dentro, algarismos podem se repetir
   *[no] {""}
}.
arithmetic-cage-sentence-unsigned = O número no canto { $n ->
    [1] da gaiola aritmética
   *[other] de cada gaiola aritmética
} é { $unsigned ->
    [pairs] a soma, o produto, a diferença ou o quociente dos seus algarismos
   *[larger] a soma ou o produto dos seus algarismos
}{ $larger ->
    [differ] ; lá dentro, nenhum algarismo se repete
    [repeat] ; lá dentro, algarismos podem se repetir
   *[no] {""}
}.
arithmetic-cage-spoken = Gaiola aritmética com { $sort ->
    [sum] a soma { $number }
    [product] o produto { $number }
    [difference] a diferença { $number }
    [quotient] o quociente { $number }
   *[none] { $number } e sem sinal
}: { $cells }
arithmetic-cage-primer = O sinal no canto de uma gaiola aritmética diz o que se obtém dos seus algarismos: a soma (+), o produto (×), a diferença (−) ou o quociente (÷), com o maior na frente; se não há sinal, descubra qual é. Comece pelos produtos: poucos são divisíveis por 5 ou por 7 e, quando o número é, a gaiola tem de conter esse algarismo. Numa grade 9×9, uma gaiola com ÷ só tem 5 ou 7 ao lado de um 1, e uma diferença grande pede um algarismo baixo e um alto.

## Arrows

arrow-sentence = Os algarismos ao longo { $n ->
    [1] da seta
   *[other] de cada seta
} somam o algarismo do seu círculo.
# An oval is read like a number; $all: are there ovals only, and no circle.
arrow-sentence-ovals = Os algarismos ao longo { $n ->
    [1] da seta
   *[other] de cada seta
} somam o número { $all ->
    [yes] da sua elipse
   *[no] do seu círculo ou da sua elipse
}, que se lê { $ways ->
    [across] da esquerda para a direita
    [down] de cima para baixo
   *[both] da esquerda para a direita ou de cima para baixo
}.
arrow-zero = O número de uma elipse nunca começa com 0.
# With their preposition, for arrow-spoken.
arrow-circle = do círculo na casa { $cells }
arrow-oval = da elipse nas casas { $cells }, lida { $way ->
    [across] da esquerda para a direita
   *[down] de cima para baixo
}
arrow-spoken = Seta a partir { $start }: { $line }
arrow-primer = Os algarismos ao longo da haste de uma seta, da casa vizinha ao círculo até a ponta, somam o número do círculo; podem se repetir onde linhas, colunas e blocos permitem. Se várias hastes saem do mesmo círculo, cada uma soma esse número. Uma elipse sobre duas ou três casas contém um número de dois ou três algarismos. Três casas de um bloco somam pelo menos 6; por isso hastes longas pedem círculos altos e algarismos baixos.
# Where no grid of the book has boxes.
arrow-primer--lines = Os algarismos ao longo da haste de uma seta, da casa vizinha ao círculo até a ponta, somam o número do círculo; podem se repetir onde linhas e colunas permitem. Se várias hastes saem do mesmo círculo, cada uma soma esse número. Uma elipse sobre duas ou três casas contém um número de dois ou três algarismos. Três casas de uma linha somam pelo menos 6; por isso hastes longas pedem círculos altos e algarismos baixos.

## Barred sums

barred-sums-sentence = { $touching ->
    [corners] Duas casas que se tocam, por um lado ou por um canto, nunca somam { $sums }.
   *[sides] Duas casas com um lado em comum nunca somam { $sums }.
}
barred-sums-primer = Duas casas com um lado em comum nunca somam nenhum dos números citados na regra. Se o 10 é proibido, não há 6 ao lado de 4 nem 9 ao lado de 1: para cada número proibido, um algarismo descarta outro nas casas vizinhas, e a metade de um número par fica livre. Quando todos os lugares de um algarismo numa linha ou bloco são vizinhos de uma mesma casa, ela não pode conter o algarismo que com ele daria a soma.
# Where no grid of the book has boxes.
barred-sums-primer--lines = Duas casas com um lado em comum nunca somam nenhum dos números citados na regra. Se o 10 é proibido, não há 6 ao lado de 4 nem 9 ao lado de 1: para cada número proibido, um algarismo descarta outro nas casas vizinhas, e a metade de um número par fica livre. Quando todos os lugares de um algarismo numa linha são vizinhos de uma mesma casa, ela não pode conter o algarismo que com ele daria a soma.

## Border values

border-values-sum = a soma ({ $sign })
border-values-difference = a diferença ({ $sign })
border-values-product = o produto ({ $sign })
border-values-quotient = o quociente ({ $sign })
border-values-sentence = { $n ->
    [1] O número
   *[other] Cada número
} entre duas casas é { $results } dos seus dois algarismos.
border-values-sentence-all = { $n ->
    [1] O número
   *[other] Cada número
} entre duas casas é { $results } dos seus dois algarismos; casas vizinhas sem número nunca { $never }.
border-values-never-sum = somam { $numbers }
border-values-never-difference = têm a diferença { $numbers }
border-values-never-product = têm o produto { $numbers }
border-values-never-quotient = têm o quociente { $numbers }
border-values-spoken-sum = { $n ->
    [1] Soma { $number }
   *[other] Somas { $number }
} { $where }
border-values-spoken-difference = { $n ->
    [1] Diferença { $number }
   *[other] Diferenças { $number }
} { $where }
border-values-spoken-product = { $n ->
    [1] Produto { $number }
   *[other] Produtos { $number }
} { $where }
border-values-spoken-quotient = { $n ->
    [1] Quociente { $number }
   *[other] Quocientes { $number }
} { $where }
border-values-primer = Um número num quadradinho entre duas casas diz o que se obtém dos seus algarismos: depois de +, a soma; depois de −, a diferença; depois de ×, o produto; depois de /, o maior dividido pelo menor. Produtos, somas e quocientes grandes são os que deixam menos escolhas: numa grade 9×9, ×35 é 5 e 7, +17 é 8 e 9, /5 é 1 e 5. Onde todos esses números são dados, a falta de um deles entre duas casas também é uma pista.

## Bounded lines

bounded-line-sentence = Os algarismos no interior { $n ->
    [1] do caminho limitado
   *[other] de cada caminho limitado
} são maiores que o menor e menores que o maior dos dois das pontas, que estão entre colchetes.
bounded-line-spoken = Caminho limitado, de ponta a ponta: { $line }
bounded-line-primer = Os algarismos do caminho ficam entre os dois das pontas, que estão entre colchetes; nenhum desses dois aparece no meio. Por isso o algarismo mais baixo e o mais alto nunca ficam no interior de um caminho assim e, se três casas do interior estão na mesma linha, coluna ou bloco, as pontas diferem em pelo menos quatro. Descubra primeiro qual das pontas é a maior.
# Where no grid of the book has boxes.
bounded-line-primer--lines = Os algarismos do caminho ficam entre os dois das pontas, que estão entre colchetes; nenhum desses dois aparece no meio. Por isso o algarismo mais baixo e o mais alto nunca ficam no interior de um caminho assim e, se três casas do interior estão na mesma linha ou coluna, as pontas diferem em pelo menos quatro. Descubra primeiro qual das pontas é a maior.

## Cages

cage-sentence-totals = { $n ->
    [1] Na gaiola
   *[other] Em cada gaiola
}, nenhum algarismo se repete, e a soma de todos é o total do canto.
cage-sentence-some = { $n ->
    [1] Na gaiola
   *[other] Em cada gaiola
}, nenhum algarismo se repete, e a soma de todos é o total do canto, se houver.
cage-sentence-none = { $n ->
    [1] Na gaiola
   *[other] Em cada gaiola
}, nenhum algarismo se repete.
cage-sentence-repeats = Os algarismos { $n ->
    [1] da gaiola
   *[other] de cada gaiola
} somam o total do canto e podem se repetir ali.
cage-spoken = { $total ->
    [none] Gaiola sem total: { $cells }
   *[other] Gaiola de { $total }: { $cells }
}
cage-primer = Uma gaiola é desenhada com linha tracejada. Os seus algarismos não se repetem, mesmo que ela passe por vários blocos, e somam o total escrito no canto. Alguns totais não deixam escolha: duas casas que somam 3 contêm 1 e 2; três que somam 24 contêm 7, 8 e 9. Numa grade 9×9, cada linha, coluna e bloco soma 45: se as gaiolas cobrem todas as casas de um bloco menos uma, subtraia de 45.
# Where no grid of the book has boxes.
cage-primer--lines = Uma gaiola é desenhada com linha tracejada. Os seus algarismos não se repetem e somam o total escrito no canto. Alguns totais não deixam escolha: duas casas que somam 3 contêm 1 e 2; três que somam 24 contêm 7, 8 e 9. Numa grade 9×9, cada linha e coluna soma 45: se as gaiolas cobrem todas as casas de uma linha menos uma, subtraia de 45.

## Clones

# $n hatched areas, all alike.
clone-sentence = As { $number } áreas hachuradas contêm os mesmos algarismos nas mesmas posições.
clone-sentence-letters = Áreas hachuradas com a mesma letra contêm os mesmos algarismos nas mesmas posições.
clone-spoken = Clones { $letter }, casa por casa: { $twins }
clone-primer = Áreas hachuradas com a mesma letra são clones: têm a mesma forma e contêm os mesmos algarismos nas mesmas posições. Um algarismo descartado numa casa também é descartado na casa gêmea, de modo que cada par de gêmeas é limitado por duas linhas, duas colunas e dois blocos. Comece pelos clones que veem mais algarismos iniciais.
# Where no grid of the book has boxes.
clone-primer--lines = Áreas hachuradas com a mesma letra são clones: têm a mesma forma e contêm os mesmos algarismos nas mesmas posições. Um algarismo descartado numa casa também é descartado na casa gêmea, de modo que cada par de gêmeas é limitado por duas linhas e duas colunas. Comece pelos clones que veem mais algarismos iniciais.

## Consecutive bars

consecutive-bars-sentence = { $n ->
    [1] A barra
   *[other] Cada barra
} une algarismos consecutivos; casas vizinhas sem barra entre elas não contêm algarismos consecutivos.
consecutive-bars-spoken = { $n ->
    [1] Barra
   *[other] Barras
} { $where }
consecutive-bars-primer = Todo par de casas vizinhas com algarismos consecutivos tem uma barra entre elas; por isso a falta de uma barra também é uma pista: onde não há barra, um 5 não tem ao lado nem 4 nem 6. Siga as fieiras de barras, ao longo das quais os algarismos sobem ou descem de um em um, e procure casas com poucas barras ao lado de um algarismo conhecido.

## Consecutive lines

consecutive-line-sentence = Os algarismos { $n ->
    [1] do caminho de consecutivos
   *[other] de cada caminho de consecutivos
} formam, em qualquer ordem, uma sequência sem lacunas nem repetições.
consecutive-line-spoken = Caminho de consecutivos: { $line }
consecutive-line-primer = Os algarismos de um caminho com contas podem ser postos em ordem numa sequência como 3 4 5 6, mas no caminho podem aparecer em qualquer ordem. Nunca se repetem, mesmo que o caminho passe por vários blocos. Numa grade 9×9, cinco casas sempre incluem um 5, e seis também um 4 e um 6; algarismos distantes demais de um já conhecido ficam de fora.
# Where no grid of the book has boxes.
consecutive-line-primer--lines = Os algarismos de um caminho com contas podem ser postos em ordem numa sequência como 3 4 5 6, mas no caminho podem aparecer em qualquer ordem. Nunca se repetem. Numa grade 9×9, cinco casas sempre incluem um 5, e seis também um 4 e um 6; algarismos distantes demais de um já conhecido ficam de fora.

## Counting areas

counting-area-sentence-counts = { $n ->
    [1] Na área de contagem
   *[other] Em cada área de contagem
}, cada algarismo do canto aparece exatamente tantas vezes quantas está escrito ali.
counting-area-sentence-different = O número no canto { $n ->
    [1] da área de contagem
   *[other] de cada área de contagem
} diz quantos algarismos diferentes ela contém.
counting-area-sentence-both = { $n ->
    [1] Na área de contagem
   *[other] Em cada área de contagem
}, cada algarismo do canto aparece exatamente tantas vezes quantas está escrito ali; um número com ≠ diz quantos algarismos diferentes a área contém.
counting-area-spoken = { $different ->
    [0] Área de contagem com exatamente { $digits }: { $cells }
    [1] Área de contagem com 1 só algarismo diferente: { $cells }
   *[other] Área de contagem com { $different } algarismos diferentes: { $cells }
}
counting-area-primer = Uma linha pontilhada cerca uma área de contagem. Os algarismos do seu canto aparecem lá dentro exatamente tantas vezes quantas estão escritos: 7 7 significa dois setes, e os demais algarismos podem ser quaisquer outros. Um número com ≠ diz quantos algarismos diferentes há. Três casas da mesma linha sempre contêm três algarismos diferentes; pergunte, então, quais casas da área podem ser iguais: as que não estão na mesma linha, coluna nem bloco.
# Where no grid of the book has boxes.
counting-area-primer--lines = Uma linha pontilhada cerca uma área de contagem. Os algarismos do seu canto aparecem lá dentro exatamente tantas vezes quantas estão escritos: 7 7 significa dois setes, e os demais algarismos podem ser quaisquer outros. Um número com ≠ diz quantos algarismos diferentes há. Três casas da mesma linha sempre contêm três algarismos diferentes; pergunte, então, quais casas da área podem ser iguais: as que não estão na mesma linha nem na mesma coluna.

## Diagonal sums

diagonal-sum-sentence = { $n ->
    [1] O número
   *[other] Cada número
} com uma seta fora da grade é a soma dos algarismos da diagonal que a seta indica; eles podem se repetir onde as outras regras permitem.
diagonal-sum-spoken = Soma diagonal { $total }: { $line }
diagonal-sum-primer = Uma seta fora da grade indica uma diagonal, e o seu número é a soma de todos os algarismos dela, até a borda oposta. Casas de um mesmo bloco contêm algarismos diferentes; as outras podem se repetir, de modo que três casas de três blocos podem até ter o mesmo algarismo. Comece pelas diagonais curtas e pelas somas muito pequenas ou muito grandes para o seu comprimento.
# Where no grid of the book has boxes.
diagonal-sum-primer--lines = Uma seta fora da grade indica uma diagonal, e o seu número é a soma de todos os algarismos dela, até a borda oposta. Eles podem se repetir. Comece pelas diagonais curtas e pelas somas muito pequenas ou muito grandes para o seu comprimento.

## Diagonals

diagonals-sentence = { $n ->
    [1] A diagonal marcada
   *[other] Cada uma das duas diagonais marcadas
} contém cada algarismo uma única vez.
diagonals-spoken = Diagonal marcada: { $line }
diagonals-primer = Uma diagonal marcada funciona como mais uma linha ou coluna: cada algarismo aparece nela uma única vez. A casa em que duas diagonais se cruzam pertence às duas e também a uma linha, uma coluna e um bloco: olhe primeiro ali. Depois procure, ao longo de cada diagonal, um algarismo ao qual só reste um lugar.
# Where no grid of the book has boxes.
diagonals-primer--lines = Uma diagonal marcada funciona como mais uma linha ou coluna: cada algarismo aparece nela uma única vez. A casa em que duas diagonais se cruzam pertence às duas e também a uma linha e uma coluna: olhe primeiro ali. Depois procure, ao longo de cada diagonal, um algarismo ao qual só reste um lugar.

## Difference lines

difference-line-sentence = Ao longo { $n ->
    [1] do caminho de diferenças
   *[other] de cada caminho de diferenças
}, algarismos vizinhos diferem em pelo menos { $least }.
difference-line-spoken = Caminho de diferenças: { $line }
difference-line-primer = Cada passo por um caminho serrilhado é um salto igual ou maior que a diferença indicada, em geral 5. Numa grade 9×9, com 5, os algarismos do caminho alternam entre baixos e altos: o próprio 5 nunca aparece nele, o 4 só ao lado do 9 e o 6 só ao lado do 1. Por isso um 4 ou um 6 fica numa ponta, ou entre duas casas que podem ser iguais.

## Disjoint groups

disjoint-groups-sentence = As casas na mesma posição dentro dos seus blocos, como todas as superiores esquerdas, contêm cada algarismo uma única vez.
disjoint-groups-primer = Tome a casa superior esquerda de cada bloco: juntas, elas contêm cada algarismo uma única vez, e o mesmo vale para as casas em qualquer outra posição dos blocos. Um algarismo ocupa, portanto, uma posição diferente em cada bloco. Depois de escrevê-lo em alguns blocos, risque essas posições nos demais antes de olhar linhas e colunas.

## Dots

dots-sentence-white = { $white ->
    [1] A bolinha branca
   *[other] Cada bolinha branca
} une algarismos consecutivos{ $all ->
    [yes] ; casas vizinhas sem bolinha não contêm nem algarismos consecutivos nem um algarismo e o seu dobro
   *[no] {""}
}.
dots-sentence-black = { $black ->
    [1] A bolinha preta
   *[other] Cada bolinha preta
} une um algarismo e o seu dobro{ $all ->
    [yes] ; casas vizinhas sem bolinha não contêm nem algarismos consecutivos nem um algarismo e o seu dobro
   *[no] {""}
}.
dots-sentence-both = { $white ->
    [1] A bolinha branca
   *[other] Cada bolinha branca
} une algarismos consecutivos, e { $black ->
    [1] a bolinha preta
   *[other] cada bolinha preta
}, um algarismo e o seu dobro (entre 1 e 2 pode haver qualquer das duas){ $all ->
    [yes] ; casas vizinhas sem bolinha não contêm nem uma coisa nem outra
   *[no] {""}
}.
# All dots are marked, and there are none.
dots-sentence-none = Duas casas com um lado em comum nunca contêm algarismos consecutivos, nem um algarismo e o seu dobro.
dots-spoken-white = { $n ->
    [1] Bolinha branca
   *[other] Bolinhas brancas
} { $where }
dots-spoken-black = { $n ->
    [1] Bolinha preta
   *[other] Bolinhas pretas
} { $where }
dots-primer = Uma bolinha branca une duas casas vizinhas com algarismos consecutivos; uma preta, um algarismo e o seu dobro; entre 1 e 2 pode haver qualquer das duas. Numa grade 9×9, 5, 7 e 9 nunca tocam uma bolinha preta, e uma fieira de bolinhas pretas passa por 1, 2, 4 e 8 ou por 3 e 6. Onde todas as bolinhas são dadas, a falta de uma delas também é uma pista: os dois algarismos não são nem consecutivos nem um o dobro do outro.

## Equal-part lines

equal-part-line-sentence = { $n ->
    [1] No caminho de partes iguais
   *[other] Em cada caminho de partes iguais
}, os algarismos de cada trecho dentro de { $home ->
    [box] um bloco
   *[region] uma região
} somam o mesmo total.
equal-part-line-part = parte { $number }, { $line }
equal-part-line-spoken = Caminho de partes iguais: { $parts }
equal-part-line-primer = As bordas dos blocos cortam o caminho em trechos, e os algarismos de cada trecho somam o mesmo total; um caminho que volta a um bloco tem nele dois trechos. Um trecho de uma só casa dá logo o total. Se não houver nenhum, compare o trecho mais longo com o mais curto: numa grade 9×9, três casas de um bloco somam pelo menos 6; duas, no máximo 17.

## Even-step lines

even-step-line-sentence = Ao longo { $n ->
    [1] do caminho de passos iguais
   *[other] de cada caminho de passos iguais
}, { $step ->
    [none] algarismos vizinhos diferem sempre no mesmo valor, { $n ->
        [1] que é preciso descobrir
       *[other] que é preciso descobrir para cada caminho
    }
   *[other] algarismos vizinhos diferem em exatamente { $step }
}.
even-step-line-spoken = Caminho de passos iguais: { $line }
even-step-line-primer = Todos os passos por um caminho com tachas têm o mesmo tamanho, para cima ou para baixo, e nunca são zero; se o tamanho não for dado, descubra-o para cada caminho. Passos grandes logo esgotam o espaço: com um passo de 4 numa grade 9×9, um caminho que começa em 1 só pode conter 1, 5 e 9; com um passo de 5, ele alterna entre baixos e altos e nunca contém o 5. Três casas seguidas que estão na mesma linha, coluna ou bloco sobem duas vezes ou descem duas vezes.
# Where no grid of the book has boxes.
even-step-line-primer--lines = Todos os passos por um caminho com tachas têm o mesmo tamanho, para cima ou para baixo, e nunca são zero; se o tamanho não for dado, descubra-o para cada caminho. Passos grandes logo esgotam o espaço: com um passo de 4 numa grade 9×9, um caminho que começa em 1 só pode conter 1, 5 e 9; com um passo de 5, ele alterna entre baixos e altos e nunca contém o 5. Três casas seguidas que estão na mesma linha ou coluna sobem duas vezes ou descem duas vezes.

## Extra regions

# $pieces: a region may be in several pieces, which then have one letter.
extra-region-sentence = { $full ->
    [yes] { $n ->
        [1] A região sombreada contém cada algarismo uma única vez
       *[other] Cada região sombreada contém cada algarismo uma única vez
    }
   *[no] { $n ->
        [1] Na região sombreada, nenhum algarismo se repete
       *[other] Em cada região sombreada, nenhum algarismo se repete
    }
}{ $pieces ->
    [yes] { $n ->
        [1] ; todas as suas partes têm a mesma letra
       *[other] ; as partes de uma mesma região têm a mesma letra
    }
   *[no] {""}
}.
extra-region-spoken = { $letter ->
    [none] Região sombreada: { $cells }
   *[other] Região sombreada { $letter }: { $cells }
}
extra-region-primer = Uma região sombreada funciona como mais um bloco: nenhum algarismo aparece nela duas vezes. Se ela tem tantas casas quantos são os algarismos da grade, contém todos eles; faça então a mesma pergunta que faria a uma linha: onde este algarismo ainda cabe? Uma região menor só impede que os algarismos se repitam. Comece onde uma região atravessa um bloco quase cheio.
# Where no grid of the book has boxes.
extra-region-primer--lines = Uma região sombreada funciona como mais uma linha: nenhum algarismo aparece nela duas vezes. Se ela tem tantas casas quantos são os algarismos da grade, contém todos eles; faça então a mesma pergunta que faria a uma linha: onde este algarismo ainda cabe? Uma região menor só impede que os algarismos se repitam. Comece onde uma região atravessa uma linha quase cheia.

## First-seen digits

# $seen: how many small squares beside each digit; 0 where that differs.
first-seen-sentence = { $n ->
    [1] O algarismo
   *[other] Cada algarismo
} ao lado de { $seen ->
    [0] quadradinhos fora da grade aparece numa das primeiras casas (tantas quantos são os quadradinhos)
    [1] um quadradinho fora da grade aparece na primeira casa
   *[other] { CASE($number, "masculine") } quadradinhos fora da grade aparece numa das { $number } primeiras casas
} da sua { $line ->
    [row] linha
    [column] coluna
   *[both] linha ou coluna
}, a partir desse lado.
first-seen-spoken = { $n ->
    [1] Algarismo de entrada
   *[other] Algarismos de entrada
} { $side }: { $clues }
first-seen-side = { $n ->
    [1] { $side }, ao lado de um quadradinho
   *[other] { $side }, ao lado de { CASE($number, "masculine") } quadradinhos
}
first-seen-primer = Um algarismo fora de uma linha ou coluna aparece numa das primeiras casas a partir desse lado, tantas quantos são os quadradinhos ao lado dele; se há vários algarismos juntos, todos aparecem ali, em qualquer ordem. Numa grade 9×9, três quadradinhos deixam ao algarismo só três casas do bloco mais próximo; risque-o então no resto da linha e do bloco.
# Where no grid of the book has boxes.
first-seen-primer--lines = Um algarismo fora de uma linha ou coluna aparece numa das primeiras casas a partir desse lado, tantas quantos são os quadradinhos ao lado dele; se há vários algarismos juntos, todos aparecem ali, em qualquer ordem.

## Fortress cells

fortress-sentence = Cada algarismo numa casa sombreada, dentro das ameias, é maior que os das casas não sombreadas com um lado em comum com ela.
fortress-spoken = Fortaleza: { $cells }
fortress-primer = Casas sombreadas com ameias em volta são uma fortaleza: cada algarismo dela é maior que os de fora que o tocam por um lado. Duas casas sombreadas não são comparadas. Uma casa com ameias dos dois lados, na sua linha ou na sua coluna, vale pelo menos 3, e numa fortaleza os algarismos baixos só cabem em casas com poucos lados voltados para fora. Casas entre duas fortalezas são baixas.

## Frame products

frame-product-sentence = { $n ->
    [1] O número
   *[other] Cada número
} depois de um ponto fora da grade é o produto dos { $line ->
    [row] { CASE($number, "masculine") } primeiros algarismos da sua linha
    [column] { CASE($number, "masculine") } primeiros algarismos da sua coluna
    [unlike] { CASE($number, "masculine") } primeiros algarismos da sua linha, ou dos { CASE($other, "masculine") } primeiros da sua coluna,
   *[both] { CASE($number, "masculine") } primeiros algarismos da sua linha ou coluna
} a partir desse lado.
frame-product-spoken = { $n ->
    [1] Produto da moldura
   *[other] Produtos da moldura
} { $side }: { $clues }
frame-product-primer = O número fora de uma linha ou coluna é o produto dos seus algarismos mais próximos, numa grade 9×9 em geral os três do bloco mais próximo. Decomponha-o: um produto que termina em 5 ou 0 tem um 5; um que é divisível por 7 tem um 7; e o que não é divisível por nenhum dos dois afasta ambos. Um produto ímpar só tem algarismos ímpares.
# Where no grid of the book has boxes.
frame-product-primer--lines = O número fora de uma linha ou coluna é o produto dos seus algarismos mais próximos, em geral três deles. Decomponha-o: um produto que termina em 5 ou 0 tem um 5; um que é divisível por 7 tem um 7; e o que não é divisível por nenhum dos dois afasta ambos. Um produto ímpar só tem algarismos ímpares.

## Frame sums

frame-sum-sentence = { $n ->
    [1] O número
   *[other] Cada número
} depois de um pequeno + fora da grade é a soma dos { $line ->
    [row] { CASE($number, "masculine") } primeiros algarismos da sua linha
    [column] { CASE($number, "masculine") } primeiros algarismos da sua coluna
    [unlike] { CASE($number, "masculine") } primeiros algarismos da sua linha, ou dos { CASE($other, "masculine") } primeiros da sua coluna,
   *[both] { CASE($number, "masculine") } primeiros algarismos da sua linha ou coluna
} a partir desse lado.
frame-sum-spoken = { $n ->
    [1] Soma da moldura
   *[other] Somas da moldura
} { $side }: { $clues }
frame-sum-primer = O número fora de uma linha ou coluna é a soma dos seus algarismos mais próximos, numa grade 9×9 em geral os três do bloco mais próximo. Três algarismos que somam 6 são 1, 2 e 3; três que somam 24 são 7, 8 e 9. Um bloco soma 45, de modo que dois números que olham para um bloco do mesmo lado dão o terceiro; e os números nas duas pontas de uma linha dão a soma do que fica no meio.
# Where no grid of the book has boxes.
frame-sum-primer--lines = O número fora de uma linha ou coluna é a soma dos seus algarismos mais próximos, em geral três deles. Três algarismos que somam 6 são 1, 2 e 3; três que somam 24 são 7, 8 e 9.

## Hinge lines

# $middles: which lines have a cell in the middle, with a diamond.
hinge-line-sentence = { $n ->
    [1] No caminho com dobradiça
   *[other] Em cada caminho com dobradiça
}, duas casas à mesma distância do meio somam sempre o mesmo total{ $middles ->
    [all] , que é o algarismo do meio
    [some] , que é o algarismo da casa do meio, se houver
   *[none] {""}
}.
hinge-line-spoken = { COUNT($middle) ->
    [one] Caminho com dobradiça, com o meio na casa { $middle }: { $line }
   *[other] Caminho com dobradiça, com o meio entre as casas { $middle }: { $line }
}
hinge-line-primer = Dobre o caminho no meio: duas casas que caem uma sobre a outra somam sempre o mesmo total. Se o caminho tem uma casa do meio, um losango a marca, e o algarismo dela é o total; por isso ele é alto, e os das outras casas são baixos. Senão, descubra o total: basta um par conhecido.

## Inequalities

inequality-sentence = { $n ->
    [1] O sinal
   *[other] Cada sinal
} entre duas casas se abre para o algarismo maior.
inequality-row = Linha { $number }: { $signs }
    .short = L{ $number }: { $signs }
inequality-row-sign = a coluna { $more } é maior que a coluna { $less }
    .short = a c{ $more } é maior que a c{ $less }
inequality-column = Coluna { $number }: { $signs }
    .short = C{ $number }: { $signs }
inequality-column-sign = a linha { $more } é maior que a linha { $less }
    .short = a l{ $more } é maior que a l{ $less }
inequality-primer = Um sinal entre duas casas se abre para o algarismo maior e aponta para o menor. Sinais um depois do outro formam uma escada: no pé só cabem algarismos baixos, no alto só altos. Comece pelas escadas mais longas e pelas casas que são maiores, ou menores, que tudo à sua volta.

## King's move

king-sentence = Duas casas que se tocam por um canto contêm algarismos diferentes.
king-primer = Duas casas que se tocam por um canto contêm algarismos diferentes, como se cada algarismo fosse um rei de xadrez que não tolera um igual por perto. Dentro de um bloco isso não acrescenta nada; a regra age através das bordas dos blocos. Um algarismo junto a um bloco descarta nele até duas casas a mais.
# Where no grid of the book has boxes.
king-primer--lines = Duas casas que se tocam por um canto contêm algarismos diferentes, como se cada algarismo fosse um rei de xadrez que não tolera um igual por perto.

## Knight's move

knight-sentence = Duas casas a um salto do cavalo (dois passos por uma linha ou coluna, depois um para o lado) contêm algarismos diferentes.
knight-primer = Duas casas entre as quais um cavalo de xadrez poderia saltar, dois passos por uma linha ou coluna e um para o lado, contêm algarismos diferentes. Um algarismo no meio da grade alcança assim oito casas, a maioria fora do seu bloco. Procure blocos em que restem dois lugares para um algarismo, ambos a um salto do cavalo da mesma casa.
# Where no grid of the book has boxes.
knight-primer--lines = Duas casas entre as quais um cavalo de xadrez poderia saltar, dois passos por uma linha ou coluna e um para o lado, contêm algarismos diferentes. Um algarismo no meio da grade alcança assim oito casas. Procure linhas em que restem dois lugares para um algarismo, ambos a um salto do cavalo da mesma casa.

## Limits

limits-sentence-allowed = { $n ->
    [1] A casa
   *[other] Cada casa
} com algarismos pequenos no canto contém um deles.
limits-sentence-forbidden = { $n ->
    [1] A casa
   *[other] Cada casa
} com algarismos pequenos riscados no canto não contém nenhum deles.
limits-sentence-both = { $n ->
    [1] A casa
   *[other] Cada casa
} com algarismos pequenos no canto contém um deles, ou nenhum deles se estão riscados.
limits-spoken-only = Só { $digits }: { $cells }
limits-spoken-not = Exceto { $digits }: { $cells }
limits-primer = Os algarismos pequenos no canto inferior direito de uma casa são os únicos que ela pode conter; se estão riscados, são os que ela não pode conter. Anote os candidatos a lápis antes de começar. Quando, numa linha, coluna ou bloco, o mesmo limite vale para tantas casas quantos são os algarismos que admite, estes não cabem em nenhuma outra casa dali.
# Where no grid of the book has boxes.
limits-primer--lines = Os algarismos pequenos no canto inferior direito de uma casa são os únicos que ela pode conter; se estão riscados, são os que ela não pode conter. Anote os candidatos a lápis antes de começar. Quando, numa linha ou coluna, o mesmo limite vale para tantas casas quantos são os algarismos que admite, estes não cabem em nenhuma outra casa dali.

## Low-high lines

low-high-line-sentence = Ao longo { $n ->
    [1] do caminho de altos e baixos
   *[other] de cada caminho de altos e baixos
}, alternam-se algarismos baixos (de { $least } a { $low }) e altos (de { $high } a { $most }){ $middle ->
    [none] .
   *[other] ; o { $middle } não aparece.
}
low-high-line-spoken = Caminho de altos e baixos: { $line }
low-high-line-primer = Ao longo de um caminho com ameias, alternam-se algarismos baixos e altos; ele pode começar por qualquer um dos dois tipos. Numa grade 9×9, são baixos os de 1 a 4 e altos os de 6 a 9, e o 5 nunca fica num caminho assim. Um só algarismo dele decide quais casas são baixas. Quatro casas baixas na mesma linha, coluna ou bloco ficam com todos os algarismos baixos.
# Where no grid of the book has boxes.
low-high-line-primer--lines = Ao longo de um caminho com ameias, alternam-se algarismos baixos e altos; ele pode começar por qualquer um dos dois tipos. Numa grade 9×9, são baixos os de 1 a 4 e altos os de 6 a 9, e o 5 nunca fica num caminho assim. Um só algarismo dele decide quais casas são baixas. Quatro casas baixas na mesma linha ou coluna ficam com todos os algarismos baixos.

## No doubles

no-doubles-sentence = { $touching ->
    [corners] Duas casas que se tocam, por um lado ou por um canto, nunca contêm um algarismo e o seu dobro.
   *[sides] Duas casas com um lado em comum nunca contêm um algarismo e o seu dobro.
}
no-doubles-zero = Como 0 é o dobro de si mesmo, dois zeros nunca se tocam.
no-doubles-primer = Duas casas com um lado em comum nunca contêm um algarismo e o seu dobro: ao lado de um 4 não há nem 2 nem 8. Numa grade 9×9, 5, 7 e 9 podem ficar ao lado de qualquer algarismo; são 1, 2, 4 e 8, e também 3 e 6, que precisam se manter afastados. Uma casa vizinha de todos os lugares do 4 numa linha não pode ser nem 2 nem 8.

## Non-consecutive

non-consecutive-sentence = { $touching ->
    [corners] Duas casas que se tocam, por um lado ou por um canto, nunca contêm algarismos consecutivos.
   *[sides] Duas casas com um lado em comum nunca contêm algarismos consecutivos.
}
non-consecutive-primer = Duas casas com um lado em comum nunca contêm algarismos consecutivos: ao lado de um 5 não há nem 4 nem 6. Assim, cada algarismo que você escreve descarta dois algarismos em cada casa vizinha. Quando só restam dois lugares para um algarismo numa linha, com uma casa no meio, essa casa não pode conter nem o anterior nem o seguinte.

## Numbered rooms

numbered-room-sentence = { $n ->
    [1] O algarismo
   *[other] Cada algarismo
} numa porta fora da grade vai para a enésima casa da sua { $line ->
    [row] linha
    [column] coluna
   *[both] linha ou coluna
} a partir desse lado, sendo n o primeiro algarismo dali.
numbered-room-zero = O algarismo n nunca é 0.
numbered-room-spoken = { $n ->
    [1] Sala numerada
   *[other] Salas numeradas
} { $side }: { $clues }
numbered-room-primer = O algarismo mais próximo da porta é o número de uma sala: com um 4 na frente, o algarismo da porta vai para a quarta casa a partir desse lado. Só um 1 na porta pode ter um 1 na frente, e nenhum número leva a uma sala já ocupada. Comece onde restam poucos lugares para o algarismo da porta na sua linha ou coluna, pois cada um deles pede um determinado algarismo na frente.

## Open cages

open-cage-sentence = { $n ->
    [1] Na gaiola aberta
   *[other] Em cada gaiola aberta
}, nenhum algarismo se repete{ $parities ->
    [even] { $alone ->
        [yes] ; o total é par
       *[no] ; o total é par se há um quadrado
    }
    [odd] { $alone ->
        [yes] ; o total é ímpar
       *[no] ; o total é ímpar se há um círculo
    }
    [both] ; o total é par se há um quadrado e ímpar se há um círculo
   *[none] {""}
}{ $letters ->
    [yes] ; gaiolas com a mesma letra têm o mesmo total
   *[no] {""}
}.
open-cage-spoken = { $value ->
    [even] Gaiola aberta com total par: { $cells }
    [odd] Gaiola aberta com total ímpar: { $cells }
   *[other] Gaiola aberta com o total { $value }: { $cells }
}
open-cage-primer = Os algarismos de uma gaiola aberta não se repetem, mas o seu total não é dito. Um pequeno quadrado no canto diz que ele é par; um pequeno círculo, que é ímpar: com todas as casas preenchidas menos uma, a última só pode ser par, ou só ímpar. Gaiolas com a mesma letra têm o mesmo total: uma gaiola pequena que iguala uma grande tem algarismos altos, e a grande, baixos.

## Palindromes

palindrome-sentence = Os algarismos ao longo { $n ->
    [1] do palíndromo
   *[other] de cada palíndromo
} se leem do mesmo modo a partir das duas pontas.
palindrome-spoken = Palíndromo: { $line }
palindrome-primer = Um palíndromo se lê do mesmo modo a partir das duas pontas: a primeira casa e a última são iguais, a segunda e a penúltima também, e uma casa do meio fica livre. Um algarismo descartado numa casa de um desses pares é descartado na outra, de modo que cada par age em duas linhas, duas colunas e dois blocos ao mesmo tempo.
# Where no grid of the book has boxes.
palindrome-primer--lines = Um palíndromo se lê do mesmo modo a partir das duas pontas: a primeira casa e a última são iguais, a segunda e a penúltima também, e uma casa do meio fica livre. Um algarismo descartado numa casa de um desses pares é descartado na outra, de modo que cada par age em duas linhas e duas colunas ao mesmo tempo.

## Even and odd

parity-sentence-even = { $even ->
    [1] A casa
   *[other] Cada casa
} com um quadrado contém um algarismo par.
parity-sentence-odd = { $odd ->
    [1] A casa
   *[other] Cada casa
} com um círculo contém um algarismo ímpar.
parity-sentence-both = { $even ->
    [1] A casa
   *[other] Cada casa
} com um quadrado contém um algarismo par, e { $odd ->
    [1] a casa
   *[other] cada casa
} com um círculo, um ímpar.
parity-spoken-even = { $n ->
    [1] Algarismo par, com um quadrado: { $cells }
   *[other] Algarismos pares, cada um com um quadrado: { $cells }
}
parity-spoken-odd = { $n ->
    [1] Algarismo ímpar, com um círculo: { $cells }
   *[other] Algarismos ímpares, cada um com um círculo: { $cells }
}
parity-primer = Um quadrado marca um algarismo par; um círculo, um ímpar; casas sem marca podem conter qualquer um dos dois tipos. Numa grade 9×9, cada linha, coluna e bloco tem quatro algarismos pares e cinco ímpares; conte, portanto: quando já se sabe que quatro casas de uma linha são pares, todas as outras são ímpares.
# Where no grid of the book has boxes.
parity-primer--lines = Um quadrado marca um algarismo par; um círculo, um ímpar; casas sem marca podem conter qualquer um dos dois tipos. Numa grade 9×9, cada linha e coluna tem quatro algarismos pares e cinco ímpares; conte, portanto: quando já se sabe que quatro casas de uma linha são pares, todas as outras são ímpares.

## Parity lines

parity-line-sentence = Ao longo { $n ->
    [1] do caminho de paridade
   *[other] de cada caminho de paridade
}, alternam-se algarismos ímpares e pares.
parity-line-spoken = Caminho de paridade: { $line }
parity-line-primer = Ao longo de um caminho com círculos e quadrados entre as casas, alternam-se algarismos ímpares e pares; ele pode começar por qualquer um dos dois tipos. Um só algarismo dele decide quais casas são ímpares. Conte onde ele percorre uma linha ou um bloco: numa grade 9×9 há quatro algarismos pares, de modo que um caminho por uma linha inteira começa e termina com um ímpar.
# Where no grid of the book has boxes.
parity-line-primer--lines = Ao longo de um caminho com círculos e quadrados entre as casas, alternam-se algarismos ímpares e pares; ele pode começar por qualquer um dos dois tipos. Um só algarismo dele decide quais casas são ímpares. Conte onde ele percorre uma linha: numa grade 9×9 há quatro algarismos pares, de modo que um caminho por uma linha inteira começa e termina com um ímpar.

## Parity runs

parity-run-sentence = { $n ->
    [1] O número
   *[other] Cada número
} depois de um pequeno = fora da grade diz quantos algarismos da sua { $line ->
    [row] linha
    [column] coluna
   *[both] linha ou coluna
}, a partir desse lado, são todos pares ou todos ímpares antes que a paridade mude.
parity-run-spoken = { $n ->
    [1] Sequência de paridade
   *[other] Sequências de paridade
} { $side }: { $clues }
parity-run-primer = Percorra a linha ou coluna a partir do número: ele diz quantos algarismos seguidos são pares, ou ímpares, até vir um do outro tipo. Numa grade 9×9, uma linha tem cinco algarismos ímpares e quatro pares; uma sequência de 5 é, portanto, ímpar. Quando se sabe que um algarismo da sequência é par ou ímpar, todos são como ele, menos o que vem depois dela.

## Peaks and hollows

peaks-sentence-greater = { $greater ->
    [1] A casa
   *[other] Cada casa
} com um telhado contém um algarismo maior que os de todas as casas com um lado em comum com ela.
peaks-sentence-smaller = { $smaller ->
    [1] A casa
   *[other] Cada casa
} com uma tigela contém um algarismo menor que os de todas as casas com um lado em comum com ela.
peaks-sentence-both = { $greater ->
    [1] A casa
   *[other] Cada casa
} com um telhado contém um algarismo maior que os de todas as casas com um lado em comum com ela, e { $smaller ->
    [1] a casa
   *[other] cada casa
} com uma tigela, um menor.
peaks-spoken-greater = { $n ->
    [1] Pico, com um telhado: { $cells }
   *[other] Picos, cada um com um telhado: { $cells }
}
peaks-spoken-smaller = { $n ->
    [1] Vale, com uma tigela: { $cells }
   *[other] Vales, cada um com uma tigela: { $cells }
}
peaks-primer = Um pequeno telhado sobre um algarismo significa que ele é maior que os algarismos dos lados, de cima e de baixo; uma tigela embaixo dele, que é menor. As duas casas vizinhas na sua linha são diferentes; por isso, longe da borda, um algarismo sob um telhado vale pelo menos 3, e em geral bem mais.

## Pointing cells

pointing-sentence = { $n ->
    [1] O algarismo
   *[other] Cada algarismo
} numa casa com seta diz a quantas casas dali, na direção da seta, está o { $digit }; a casa vizinha conta como a primeira.
pointing-zero = Uma casa com seta nunca contém 0.
pointing-spoken = { $n ->
    [1] Seta
   *[other] Setas
} { $way ->
    [left] para a esquerda: { $cells }
    [right] para a direita: { $cells }
    [up] para cima: { $cells }
   *[down] para baixo: { $cells }
}
pointing-primer = Uma pequena seta preta numa casa aponta ao longo da linha ou coluna, e o algarismo da casa conta os passos dali até um algarismo que a regra cita, por exemplo o 9: com 3 na casa, o 9 está três passos adiante. Por isso a casa nunca contém esse mesmo algarismo, nem um maior que o número de casas à frente, e o algarismo não fica em nenhum lugar atrás dela. Duas setas que apontam cada uma para a linha ou coluna da outra muitas vezes deixam uma única maneira de contar.

## Corner quadruples

# $several: does some ring hold more than one digit.
quadruple-sentence = { $several ->
    [yes] Os algarismos { $n ->
        [1] do anel
       *[other] de cada anel
    } estão entre os das quatro casas em volta dele
   *[no] O algarismo { $n ->
        [1] do anel
       *[other] de cada anel
    } está entre os das quatro casas em volta dele
}{ $repeats ->
    [yes] , repetições incluídas
   *[no] {""}
}.
quadruple-spoken = Anel com { $digits } no canto entre as casas { $cells }
quadruple-primer = Os algarismos pequenos de um anel ficam nas quatro casas em volta desse canto, cada um pelo menos tantas vezes quantas está escrito; se há espaço, outros algarismos também podem ficar ali. Um anel com quatro algarismos não deixa espaço: cada uma das suas casas contém um deles. Um algarismo escrito duas vezes fica em duas casas opostas na diagonal.

## Resting thermometers

resting-thermometer-sentence = Ao longo { $n ->
    [1] do termômetro com pausas
   *[other] de cada termômetro com pausas
}, do bulbo à ponta, os algarismos nunca descem: sobem ou ficam iguais.
resting-thermometer-spoken = Termômetro com pausas, a partir do bulbo: { $line }
resting-thermometer-primer = Um termômetro com pausas é desenhado como um tubo vazio. Do bulbo, com um anel, até a ponta, os algarismos sobem ou ficam iguais: nenhum é menor que o anterior. Duas das suas casas na mesma linha, coluna ou bloco não podem ser iguais, de modo que ali os algarismos sobem mesmo: conte esses passos para saber o mínimo da ponta e o máximo do bulbo.
# Where no grid of the book has boxes.
resting-thermometer-primer--lines = Um termômetro com pausas é desenhado como um tubo vazio. Do bulbo, com um anel, até a ponta, os algarismos sobem ou ficam iguais: nenhum é menor que o anterior. Duas das suas casas na mesma linha ou coluna não podem ser iguais, de modo que ali os algarismos sobem mesmo: conte esses passos para saber o mínimo da ponta e o máximo do bulbo.

## Rising or falling

rise-or-fall-sentence-none = A partir de nenhum lado os { CASE($number, "masculine") } primeiros algarismos de uma linha ou coluna só sobem ou só descem.
rise-or-fall-sentence-rise = Onde { $number } barras fora da grade crescem em direção a ela, os { CASE($number, "masculine") } primeiros algarismos dessa { $line ->
    [row] linha
    [column] coluna
   *[both] linha ou coluna
} sobem a partir desse lado{ $all ->
    [yes] ; a partir de um lado sem barras, os { CASE($number, "masculine") } primeiros algarismos de uma linha ou coluna nem só sobem nem só descem
   *[no] {""}
}.
rise-or-fall-sentence-fall = Onde { $number } barras fora da grade diminuem em direção a ela, os { CASE($number, "masculine") } primeiros algarismos dessa { $line ->
    [row] linha
    [column] coluna
   *[both] linha ou coluna
} descem a partir desse lado{ $all ->
    [yes] ; a partir de um lado sem barras, os { CASE($number, "masculine") } primeiros algarismos de uma linha ou coluna nem só sobem nem só descem
   *[no] {""}
}.
rise-or-fall-sentence-both = Onde { $number } barras fora da grade crescem em direção a ela, os { CASE($number, "masculine") } primeiros algarismos dessa { $line ->
    [row] linha
    [column] coluna
   *[both] linha ou coluna
} sobem a partir desse lado; onde diminuem, eles descem{ $all ->
    [yes] ; a partir de um lado sem barras, os { CASE($number, "masculine") } primeiros algarismos de uma linha ou coluna nem só sobem nem só descem
   *[no] {""}
}.
rise-or-fall-spoken = { $n ->
    [1] Rampa
   *[other] Rampas
} { $side }: { $clues }
rise-or-fall-rises = barras crescentes
rise-or-fall-falls = barras decrescentes
rise-or-fall-primer = Barras que crescem em direção à grade significam que os três algarismos mais próximos sobem a partir desse lado; barras que diminuem, que eles descem. Quanto maior o algarismo, mais longa a barra. Numa grade 9×9, de três algarismos que sobem, o primeiro vale no máximo 7 e o último pelo menos 3; duas subidas que partem da mesma casa de canto a puxam juntas para baixo. Onde todas as barras são dadas, uma ponta sem elas muda de sentido: o algarismo do meio é o maior ou o menor dos três.

## Rising runs

rising-run-sentence = { $n ->
    [1] O número
   *[other] Cada número
} depois de pequenos degraus fora da grade diz quantos algarismos da sua { $line ->
    [row] linha
    [column] coluna
   *[both] linha ou coluna
} sobem a partir desse lado antes que um desça, contando o primeiro.
rising-run-spoken = { $n ->
    [1] Sequência crescente
   *[other] Sequências crescentes
} { $side }: { $clues }
rising-run-primer = Percorra a linha ou coluna a partir do número, que diz quantos algarismos seguidos sobem, contados do mais próximo. Depois de um 3, os três primeiros algarismos sobem e o quarto é menor que o terceiro; depois de um 1, o segundo já é menor que o primeiro. Sequências longas mantêm os algarismos altos longe da borda, e o último algarismo de uma sequência é maior que os seus vizinhos dos dois lados.

## Same-sum lines

same-sum-line-sentence = Ao longo { $n ->
    [1] do caminho de somas iguais
   *[other] de cada caminho de somas iguais
}, quaisquer { $number } casas seguidas somam o mesmo total.
same-sum-line-spoken = Caminho de somas iguais: { $line }
same-sum-line-primer = Num caminho desenhado como trilho de trem, quaisquer três casas seguidas (ou tantas quantas a regra disser) somam o mesmo total. Avance uma casa: um algarismo sai da soma e outro entra, de modo que os dois são iguais. Por isso a primeira, a quarta e a sétima casas contêm o mesmo algarismo, e a segunda e a quinta, outro; o que é descartado numa delas é descartado em todas.

## Sandwich sums

sandwich-sentence = { $n ->
    [1] O número
   *[other] Cada número
} entre duas barras fora da grade é a soma dos algarismos que ficam entre o menor e o maior da sua { $line ->
    [row] linha
    [column] coluna
   *[both] linha ou coluna
}.
sandwich-spoken = { $n ->
    [1] Soma-sanduíche
   *[other] Somas-sanduíche
} { $side }: { $clues }
sandwich-primer = O número fora de uma linha ou coluna é a soma dos algarismos entre o menor e o maior dela; numa grade 9×9, essas duas fatias de pão são o 1 e o 9, em qualquer ordem. Uma soma 0 significa que elas estão lado a lado; uma soma 35, que estão nas duas pontas. Comece perguntando quantos algarismos podem dar a soma, pois é essa a distância entre as fatias.

## Skyscrapers

skyscraper-sentence = { $n ->
    [1] O número
   *[other] Cada número
} dentro de um prédio fora da grade diz quantos algarismos da sua { $line ->
    [row] linha
    [column] coluna
   *[both] linha ou coluna
} podem ser vistos desse lado, já que cada um esconde todos os menores atrás dele.
skyscraper-spoken = { $n ->
    [1] Arranha-céu à vista
   *[other] Arranha-céus à vista
} { $side }: { $clues }
skyscraper-primer = Imagine cada algarismo como um prédio com esse número de andares e olhe ao longo da linha ou coluna a partir do número: ele diz quantos prédios se veem, pois um prédio mais alto esconde todos os mais baixos atrás dele. De um 1 só se vê o mais alto, que fica, portanto, logo na frente; de um 9, numa grade 9×9, veem-se todos, em ordem crescente. Comece pelos números maiores, que mantêm longe os algarismos altos, e procure o lugar do prédio mais alto.

## Square blocks

square-block-sentence-magic = { $n ->
    [1] No quadrado de somas
   *[other] Em cada quadrado de somas
}, as linhas, as colunas e as duas diagonais têm a mesma soma; algarismos podem se repetir.
square-block-sentence-rows = { $n ->
    [1] No quadrado de somas
   *[other] Em cada quadrado de somas
}, todas as linhas têm a mesma soma; algarismos podem se repetir.
square-block-sentence-columns = { $n ->
    [1] No quadrado de somas
   *[other] Em cada quadrado de somas
}, todas as colunas têm a mesma soma; algarismos podem se repetir.
square-block-sentence = { $n ->
    [1] No quadrado de somas
   *[other] Em cada quadrado de somas
}, há fileiras com a mesma soma: { $lines }; algarismos podem se repetir.
square-block-lines-magic = linhas, colunas e diagonais onde há uma estrela
square-block-lines-rows = linhas onde há barras horizontais
square-block-lines-columns = colunas onde há barras verticais
square-block-spoken-magic = Quadrado mágico: { $cells }
square-block-spoken-rows = Quadrado com linhas de mesma soma: { $cells }
square-block-spoken-columns = Quadrado com colunas de mesma soma: { $cells }
square-block-primer = Uma linha dupla emoldura um quadrado de somas, e um sinal diz quais das suas fileiras têm a mesma soma: barras horizontais, as linhas; barras verticais, as colunas; uma estrela, as linhas, as colunas e as duas diagonais. Algarismos podem se repetir onde linhas, colunas e blocos permitem. A soma de um quadrado com estrela é o triplo do seu algarismo do meio. Se o quadrado é um bloco inteiro de uma grade 9×9, três linhas de mesma soma dão 15 cada uma.
# Where no grid of the book has boxes.
square-block-primer--lines = Uma linha dupla emoldura um quadrado de somas, e um sinal diz quais das suas fileiras têm a mesma soma: barras horizontais, as linhas; barras verticais, as colunas; uma estrela, as linhas, as colunas e as duas diagonais. Algarismos podem se repetir onde linhas e colunas permitem. A soma de um quadrado com estrela é o triplo do seu algarismo do meio.

## Sum marks

sum-marks-sentence-five = { $five ->
    [1] O V
   *[other] Cada V
} une algarismos que somam 5{ $all ->
    [yes] ; casas vizinhas sem marca não somam nem 5 nem 10
   *[no] {""}
}.
sum-marks-sentence-ten = { $ten ->
    [1] O X
   *[other] Cada X
} une algarismos que somam 10{ $all ->
    [yes] ; casas vizinhas sem marca não somam nem 5 nem 10
   *[no] {""}
}.
sum-marks-sentence-both = { $five ->
    [1] O V
   *[other] Cada V
} une algarismos que somam 5, e { $ten ->
    [1] o X
   *[other] cada X
}, algarismos que somam 10{ $all ->
    [yes] ; casas vizinhas sem marca não somam nem 5 nem 10
   *[no] {""}
}.
# All marks are given, and there are none.
sum-marks-sentence-none = Duas casas com um lado em comum nunca somam 5 nem 10.
sum-marks-spoken-five = { $n ->
    [1] Letra V
   *[other] Letras V
} { $where }
sum-marks-spoken-ten = { $n ->
    [1] Letra X
   *[other] Letras X
} { $where }
sum-marks-primer = Como nos algarismos romanos, V é 5 e X é 10: os dois algarismos ao lado da letra somam esse valor. Um V une 1 e 4 ou 2 e 3, de modo que nada acima de 4 toca um V; o 5 nunca toca um X, pois precisaria de outro 5 ao lado. Onde todas as marcas são dadas, a falta de letra entre duas casas também é uma pista: os seus algarismos não somam nem um nem outro valor.

## Thermometers

thermometer-sentence = Ao longo { $n ->
    [1] do termômetro
   *[other] de cada termômetro
}, os algarismos sobem do bulbo à ponta.
thermometer-spoken = Termômetro, a partir do bulbo: { $line }
thermometer-primer = Os algarismos sobem a cada passo, do bulbo redondo até a ponta, embora possam pular alguns. Um termômetro longo deixa pouco espaço: numa grade 9×9, a terceira de seis casas vale pelo menos 3 e no máximo 6. Comece pelos mais longos e pelos que cruzam uma linha ou bloco que já tem algarismos altos ou baixos.
# Where no grid of the book has boxes.
thermometer-primer--lines = Os algarismos sobem a cada passo, do bulbo redondo até a ponta, embora possam pular alguns. Um termômetro longo deixa pouco espaço: numa grade 9×9, a terceira de seis casas vale pelo menos 3 e no máximo 6. Comece pelos mais longos e pelos que cruzam uma linha que já tem algarismos altos ou baixos.

## Windows

windows-sentence = Cada janela sombreada contém cada algarismo uma única vez.
windows-spoken = Janela: { $cells }
windows-primer = As janelas sombreadas são blocos adicionais, a uma casa da borda e a uma casa umas das outras: cada uma contém cada algarismo uma única vez. As linhas 2 a 4 contêm cada algarismo três vezes, e as duas janelas que estão nelas ficam com duas dessas vezes; por isso as nove casas ao lado das janelas também contêm cada algarismo uma única vez. Cinco desses conjuntos ocultos de nove casas ficam entre as janelas e em volta delas numa grade 9×9; é por eles que o passatempo se abre.

## X-sums

x-sum-sentence = { $n ->
    [1] O número
   *[other] Cada número
} depois de um pequeno × fora da grade é a soma dos X primeiros algarismos da sua { $line ->
    [row] linha
    [column] coluna
   *[both] linha ou coluna
} a partir desse lado, sendo X o primeiro deles.
x-sum-zero = Se X for 0, a soma é 0.
x-sum-spoken = { $n ->
    [1] Soma X
   *[other] Somas X
} { $side }: { $clues }
x-sum-primer = O algarismo mais próximo do número, X, diz quantos algarismos somar, ele mesmo incluído: 3, 8 e 1 na frente dão 12, venha o que vier depois. Somas pequenas pedem um X pequeno; 45 pede um 9. Comece perguntando que X pode alcançar a soma: numa grade 9×9, 10 pede 2, 3 ou 4 na frente.

## Latin squares, digits from 0

latin-primer = Num quadrado latino só valem linhas e colunas: em cada uma, cada algarismo aparece uma única vez, e a grade não pede mais nada. Assim, todo algarismo aparece uma vez em cada linha, e nunca duas vezes na mesma coluna. Quando um algarismo falta em duas linhas e nelas só cabe nas mesmas duas colunas, não cabe em nenhuma outra casa dessas colunas. Depois, veja o que as marcas acrescentam.
zero-primer = Numa grade cujos algarismos começam em 0, cada regra vale tal como está escrita, e um 0 não acrescenta nada a um total. Os exemplos destas páginas são para grades com algarismos a partir de 1; por isso, seus números mudam: uma linha de nove casas com os algarismos de 0 a 8 soma 36, e não 45; tem cinco algarismos pares e quatro ímpares; duas casas que somam 3 contêm 0 e 3 ou 1 e 2.
overlap-primer = Várias grades formam um só passatempo: cada uma segue suas próprias regras e, onde duas se sobrepõem, cada algarismo pertence a ambas. Comece onde houver mais algarismos iniciais e fique numa grade enquanto ela render; depois leve para a seguinte o que encontrou nos blocos comuns. Um bloco comum a duas grades costuma ser a chave de ambas: seus algarismos precisam caber nas linhas e colunas das duas.
holes-primer = Uma casa preta não leva algarismo e não pertence a nenhuma linha nem coluna. Nas demais casas, cada linha e cada coluna ainda contém todos os algarismos uma vez; quando restam poucos lugares para um algarismo, ele logo se decide. Os algarismos dos dois lados de uma casa preta se veem na sua linha ou coluna, mas não se tocam.
