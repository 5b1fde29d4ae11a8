### What solvers’ words mean, for readers of hints. A term is named for the technique, claim or concept that asks for it
### (`tell/concepts.py`).

term-alternating-chain = Cadeia alternada
    .meaning = Casas e algarismos ligados de tal modo que, se um não vale, vale o seguinte. Um algarismo que as duas pontas da cadeia descartam é eliminado, seja qual for a ponta verdadeira.
term-seen-by-all = Casa vista por todos os lugares de um algarismo
    .meaning = Onde quer que o algarismo fique numa unidade, ele se descarta a si mesmo numa casa de fora: essa casa não pode contê-lo.
term-combination = Combinação
    .meaning = Um conjunto de algarismos que dá o total pedido e pode ficar nas casas.
term-contradiction = Contradição
    .meaning = Uma casa sem algarismo, um algarismo sem lugar ou uma marca que não pode ser cumprida. O que levou até ali estava errado.
term-eliminate = Eliminar
    .meaning = Descartar um algarismo para uma casa. O que ainda não foi eliminado são os candidatos da casa, que muitos anotam em letra miúda no canto.
term-fins = Padrão com barbatana
    .meaning = Uma asa X, ou um padrão maior do mesmo tipo, que um ou dois lugares estragam: as barbatanas. O que tanto o padrão quanto cada barbatana descartam é eliminado mesmo assim.
term-hidden-subset = Par, trio, quarteto oculto
    .meaning = Dois algarismos com os mesmos dois lugares numa unidade precisam das duas casas só para si, mesmo que outros parecessem possíveis ali. O mesmo vale para três algarismos com três lugares e quatro com quatro.
term-hidden-single = Solitário oculto
    .meaning = Um algarismo que, numa unidade, só cabe numa casa, mesmo que essa casa aceite outros. Olhe onde o algarismo já aparece por perto.
term-house = Unidade
    .meaning = Uma linha, uma coluna{ $divided ->
        [none] {""}
        [regions] , uma região
       *[boxes] , um bloco ou região
    }, ou qualquer outro conjunto de casas em que nenhum algarismo se repete.
term-jellyfish = Água-viva
    .meaning = Um peixe-espada com quatro linhas e quatro colunas.
term-last-cell = Última casa vazia
    .meaning = Numa unidade já completa menos uma casa, essa casa recebe o algarismo que falta.
term-locked = Candidatos bloqueados
    .meaning = Quando todos os lugares de um algarismo numa unidade ficam também numa segunda, o algarismo se esgota ali: não cabe em nenhuma outra casa da segunda.
term-mark = Marca
    .meaning = O que está impresso numa grade, ou ao lado dela, para uma das suas regras: um termômetro, uma gaiola, uma bolinha, uma pista de fora.
term-naked-subset = Par, trio, quarteto exposto
    .meaning = Duas casas de uma unidade às quais só restam os mesmos dois algarismos esgotam os dois: nenhuma outra casa da unidade recebe um deles. O mesmo vale para três casas com três algarismos e quatro com quatro.
term-naked-single = Solitário exposto
    .meaning = Uma casa à qual a sua linha, coluna{ $divided ->
        [none] {""}
        [regions] , região
       *[boxes] , bloco
    } e marcas, em conjunto, deixam um só algarismo. Conte o que ela vê.
term-sight = Ver
    .meaning = Duas casas se veem quando não podem conter o mesmo algarismo, porque estão na mesma unidade ou porque uma regra assim determina.
term-single-digit-chain = Cadeia de um só algarismo
    .meaning = Lugares de um mesmo algarismo, dois em cada unidade, ligados ponta a ponta. Uma das pontas é verdadeira, de modo que uma casa que vê as duas não pode conter o algarismo.
term-swordfish = Peixe-espada
    .meaning = Uma asa X com três linhas e três colunas.
term-left-over--cage = Gaiolas inteiras
    .meaning = Os algarismos de 1 a 9 somam 45. Subtraia as gaiolas que ficam dentro de uma unidade, e o que resta é das outras casas dela.
term-w-wing = Asa W
    .meaning = Duas casas às quais só restam os mesmos dois algarismos, unidas por uma unidade em que um dos dois só tem dois lugares, cada um visto por uma das casas. O outro algarismo está numa delas, de modo que uma casa que vê as duas não pode contê-lo.
term-what-if = Hipótese
    .meaning = Suponha um algarismo, de cabeça, siga o que ele força e risque-o se isso termina numa contradição. Prefira as hipóteses curtas.
term-x-wing = Asa X
    .meaning = Duas linhas em que um algarismo só cabe nas mesmas duas colunas. Ele fica em cantos opostos, de modo que não cabe em mais nenhuma casa dessas colunas. Linhas e colunas podem trocar de papel.
term-xy-wing = Asa XY
    .meaning = Uma casa à qual restam dois algarismos e que vê outras duas: cada uma destas tem um dos dois, e ambas têm um mesmo terceiro. Qualquer que seja o algarismo da primeira, uma das outras contém o terceiro, de modo que uma casa que vê as duas não pode contê-lo.
term-xyz-wing = Asa XYZ
    .meaning = Uma asa XY cuja primeira casa também pode conter o terceiro algarismo. Só o perdem as casas que veem as três.
term-extended-chain = Cadeia ampliada
    .meaning = Uma cadeia alternada cujos elos podem ser também grupos de casas, ou aquilo para que uma marca deixa lugar. O que as duas pontas descartam é eliminado.
term-either-way = Candidato descartado em todos os casos
    .meaning = Tome uma casa à qual restam poucos algarismos, ou um algarismo ao qual restam poucos lugares, e olhe uma opção de cada vez. O que todas elas descartam, diretamente ou por meio de uma marca, é eliminado.
