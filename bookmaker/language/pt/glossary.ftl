### What solvers’ words mean, for readers of hints. `.signs`: what hints that need the word say, with bars between them; what
### these begin with is enough, and capitals do not matter.

term-alternating-chain = Cadeia alternada
    .signs = cadeia alternada | cadeias alternadas
    .meaning = Casas e algarismos ligados de tal modo que, se um não vale, vale o seguinte. Um algarismo que as duas pontas da cadeia descartam é eliminado, seja qual for a ponta verdadeira.
term-cell-seen-by-all-places-of-a-digit = Casa vista por todos os lugares de um algarismo
    .signs = todos os lugares de um algarismo
    .meaning = Onde quer que o algarismo fique numa unidade, ele se descarta a si mesmo numa casa de fora: essa casa não pode contê-lo.
term-combination = Combinação
    .signs = combinação
    .meaning = Um conjunto de algarismos que dá o total pedido e pode ficar nas casas.
term-contradiction = Contradição
    .signs = contradição
    .meaning = Uma casa sem algarismo, um algarismo sem lugar ou uma marca que não pode ser cumprida. O que levou até ali estava errado.
term-eliminate = Eliminar
    .signs = eliminad
    .meaning = Descartar um algarismo para uma casa. O que ainda não foi eliminado são os candidatos da casa, que muitos anotam em letra miúda no canto.
term-finned-pattern = Padrão com barbatana
    .signs = com barbatana
    .meaning = Uma asa X, ou um padrão maior do mesmo tipo, que um ou dois lugares estragam: as barbatanas. O que tanto o padrão quanto cada barbatana descartam é eliminado mesmo assim.
term-hidden-pair-triple-quad = Par, trio, quarteto oculto
    .signs = mesmos dois lugares | dividem três lugares | dividem quatro lugares
    .meaning = Dois algarismos com os mesmos dois lugares numa unidade precisam das duas casas só para si, mesmo que outros parecessem possíveis ali. O mesmo vale para três algarismos com três lugares e quatro com quatro.
term-hidden-single = Solitário oculto
    .signs = só tem um lugar | único lugar | solitário oculto
    .meaning = Um algarismo que, numa unidade, só cabe numa casa, mesmo que essa casa aceite outros. Olhe onde o algarismo já aparece por perto.
term-house = Unidade
    .signs = linha | coluna | bloco | região
    .meaning = Uma linha, uma coluna{ $divided ->
        [none] {""}
        [regions] , uma região
       *[boxes] , um bloco ou região
    }, ou qualquer outro conjunto de casas em que nenhum algarismo se repete.
term-step-beyond-the-ladder = Passo além da escala
    .signs = além da escala | escala de técnicas
    .meaning = Nenhum dos padrões que têm nome aqui leva mais longe; o algarismo é conhecido pela demonstração de que há uma só solução.
term-jellyfish = Água-viva
    .signs = água-viva | águas-vivas
    .meaning = Um peixe-espada com quatro linhas e quatro colunas.
term-last-empty-cell = Última casa vazia
    .signs = última casa vazia
    .meaning = Numa unidade já completa menos uma casa, essa casa recebe o algarismo que falta.
term-locked-candidates = Candidatos bloqueados
    .signs = ficam todos em outra | ficam também
    .meaning = Quando todos os lugares de um algarismo numa unidade ficam também numa segunda, o algarismo se esgota ali: não cabe em nenhuma outra casa da segunda.
term-mark = Marca
    .signs = marca
    .meaning = O que está impresso numa grade, ou ao lado dela, para uma das suas regras: um termômetro, uma gaiola, uma bolinha, uma pista de fora.
term-naked-pair-triple-quad = Par, trio, quarteto exposto
    .signs = mesmos dois algarismos | só restam três algarismos | só restam quatro algarismos
    .meaning = Duas casas de uma unidade às quais só restam os mesmos dois algarismos esgotam os dois: nenhuma outra casa da unidade recebe um deles. O mesmo vale para três casas com três algarismos e quatro com quatro.
term-naked-single = Solitário exposto
    .signs = um só algarismo possível | só pode ser | só podem ser
    .meaning = Uma casa à qual a sua linha, coluna{ $divided ->
        [none] {""}
        [regions] , região
       *[boxes] , bloco
    } e marcas, em conjunto, deixam um só algarismo. Conte o que ela vê.
term-see = Ver
    .signs = vê | veem | vista por | vistas por
    .meaning = Duas casas se veem quando não podem conter o mesmo algarismo, porque estão na mesma unidade ou porque uma regra assim determina.
term-single-digit-chain = Cadeia de um só algarismo
    .signs = cadeia de um só algarismo | cadeias de um só algarismo
    .meaning = Lugares de um mesmo algarismo, dois em cada unidade, ligados ponta a ponta. Uma das pontas é verdadeira, de modo que uma casa que vê as duas não pode conter o algarismo.
term-swordfish = Peixe-espada
    .signs = peixe-espada | peixes-espada | água-viva | águas-vivas
    .meaning = Uma asa X com três linhas e três colunas.
term-whole-cages = Gaiolas inteiras
    .signs = soma 45
    .meaning = Os algarismos de 1 a 9 somam 45. Subtraia as gaiolas que ficam dentro de uma unidade, e o que resta é das outras casas dela.
term-w-wing = Asa W
    .signs = asa w
    .meaning = Duas casas às quais só restam os mesmos dois algarismos, unidas por uma unidade em que um dos dois só tem dois lugares, cada um visto por uma das casas. O outro algarismo está numa delas, de modo que uma casa que vê as duas não pode contê-lo.
term-what-if = Hipótese
    .signs = suponha | hipótese | logo leva
    .meaning = Suponha um algarismo, de cabeça, siga o que ele força e risque-o se isso termina numa contradição. Prefira as hipóteses curtas.
term-x-wing = Asa X
    .signs = asa x. | asa x com | asas x | peixe-espada | peixes-espada | água-viva | águas-vivas
    .meaning = Duas linhas em que um algarismo só cabe nas mesmas duas colunas. Ele fica em cantos opostos, de modo que não cabe em mais nenhuma casa dessas colunas. Linhas e colunas podem trocar de papel.
term-xy-wing = Asa XY
    .signs = asa xy
    .meaning = Uma casa à qual restam dois algarismos e que vê outras duas: cada uma destas tem um dos dois, e ambas têm um mesmo terceiro. Qualquer que seja o algarismo da primeira, uma das outras contém o terceiro, de modo que uma casa que vê as duas não pode contê-lo.
term-xyz-wing = Asa XYZ
    .signs = asa xyz
    .meaning = Uma asa XY cuja primeira casa também pode conter o terceiro algarismo. Só o perdem as casas que veem as três.
term-extended-chain = Cadeia ampliada
    .signs = cadeia ampliada | cadeias ampliadas
    .meaning = Uma cadeia alternada cujos elos podem ser também grupos de casas, ou aquilo para que uma marca deixa lugar. O que as duas pontas descartam é eliminado.
term-either-way = Candidato descartado em todos os casos
    .signs = nenhuma das opções | em todos os casos
    .meaning = Tome uma casa à qual restam poucos algarismos, ou um algarismo ao qual restam poucos lugares, e olhe uma opção de cada vez. O que todas elas descartam, diretamente ou por meio de uma marca, é eliminado.
