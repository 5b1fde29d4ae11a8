### What solvers’ words mean, for readers of hints. A term is named for the technique, claim or concept that asks for it
### (`tell/concepts.py`).

term-alternating-chain = Wechselkette
    .meaning = Kandidaten, so verbunden, dass der nächste gilt, wenn einer entfällt. Welches Ende der Kette auch gilt: Eine Ziffer, die beide Enden ausschließen, entfällt.
term-seen-by-all = Feld in Sicht aller Plätze einer Ziffer
    .meaning = Wo auch immer die Ziffer in einer Einheit steht, sie schließt sich in einem Feld außerhalb aus: Dort kann sie nicht stehen.
term-combination = Kombination
    .meaning = Eine Menge von Ziffern, die die verlangte Summe hat und in den Feldern stehen darf.
term-contradiction = Widerspruch
    .meaning = Ein Feld ohne Ziffer, eine Ziffer ohne Platz oder ein Zeichen, das sich nicht erfüllen lässt. Was dorthin führte, war falsch.
term-eliminate = Streichen
    .meaning = Eine Ziffer für ein Feld ausschließen: Sie entfällt dort. Was noch nicht gestrichen ist, sind die Kandidaten des Feldes; viele notieren sie klein in seiner Ecke.
term-extended-chain = Erweiterte Kette
    .meaning = Eine Wechselkette, deren Glieder auch Gruppen von Feldern sein können oder das, wofür ein Zeichen Platz lässt. Was beide Enden ausschließen, entfällt.
term-either-way = So oder so ausgeschlossener Kandidat
    .meaning = Nehmen Sie ein Feld mit wenigen möglichen Ziffern oder eine Ziffer mit wenigen Plätzen und gehen Sie jede Wahl durch. Was jede von ihnen ausschließt, durch Sicht oder durch ein Zeichen, entfällt.
term-fins = Muster mit Flosse
    .meaning = Ein X-Wing oder ein größerer Fisch, den ein oder zwei Plätze stören, die Flossen. Was sowohl das Muster als auch jede Flosse ausschließt, entfällt trotzdem.
term-hidden-subset = Verstecktes Paar, Trio, Quartett
    .meaning = Zwei Ziffern mit denselben zwei Plätzen in einer Einheit brauchen beide Felder für sich, was auch sonst dort möglich schien. Ebenso drei Ziffern mit drei Plätzen und vier mit vier.
term-hidden-single = Versteckter Einer
    .meaning = Eine Ziffer, die in einer Einheit nur in ein Feld passt, auch wenn dort noch andere möglich wären. Schauen Sie, wo die Ziffer in der Nähe schon steht.
term-house = Einheit
    .meaning = Eine Zeile, eine Spalte{ $divided ->
        [none] {""}
        [regions] , ein Gebiet
       *[boxes] , ein Block oder Gebiet
    } oder sonst eine Gruppe von Feldern, in der sich keine Ziffer wiederholt.
term-jellyfish = Qualle
    .meaning = Ein Schwertfisch mit vier Zeilen und vier Spalten.
term-last-cell = Letztes freies Feld
    .meaning = Ist eine Einheit bis auf ein Feld gefüllt, so erhält dieses die Ziffer, die fehlt.
term-locked = Gebundene Ziffer
    .meaning = Liegen alle Plätze einer Ziffer in einer Einheit auch in einer zweiten, so ist die Ziffer dort verbraucht: In der zweiten steht sie nirgends sonst.
term-mark = Zeichen
    .meaning = Was in oder neben einem Diagramm für eine seiner Regeln gedruckt ist: ein Thermometer, ein Käfig, ein Punkt, eine Zahl am Rand.
term-naked-subset = Nacktes Paar, Trio, Quartett
    .meaning = Zwei Felder einer Einheit, in denen nur noch dieselben zwei Ziffern möglich sind, verbrauchen beide; kein anderes Feld der Einheit erhält eine davon. Ebenso drei Felder mit drei Ziffern und vier mit vier.
term-naked-single = Nackter Einer
    .meaning = Ein Feld, für das Zeile, Spalte{ $divided ->
        [none] {""}
        [regions] , Gebiet
       *[boxes] , Block
    } und Zeichen zusammen nur eine Ziffer lassen. Zählen Sie, was es sieht.
term-sight = Sehen
    .meaning = Zwei Felder sehen einander, wenn sie nicht dieselbe Ziffer enthalten können, weil sie in einer Einheit liegen oder eine Regel es verlangt.
term-single-digit-chain = Kette einer Ziffer
    .meaning = Plätze einer Ziffer, je zwei in einer Einheit, Ende an Ende verbunden. Das eine oder das andere Ende gilt; ein Feld, das beide sieht, kann die Ziffer nicht enthalten.
term-swordfish = Schwertfisch
    .meaning = Ein X-Wing mit drei Zeilen und drei Spalten.
term-left-over--cage = Ganze Käfige
    .meaning = Die Ziffern 1 bis 9 ergeben zusammen 45. Ziehen Sie die Käfige ab, die ganz in einer Einheit liegen; was bleibt, gehört ihren übrigen Feldern.
term-w-wing = W-Wing
    .meaning = Zwei Felder mit denselben zwei möglichen Ziffern, verbunden durch eine Einheit, in der die eine nur zwei Plätze hat, von denen jeder eines der Felder sieht. Die andere Ziffer steht in einem der beiden; ein Feld, das beide sieht, kann sie nicht enthalten.
term-what-if = Annahme
    .meaning = Setzen Sie in Gedanken eine Ziffer, folgen Sie dem, was sich daraus ergibt, und streichen Sie sie, wenn das zu einem Widerspruch führt. Bleiben Sie bei kurzen Annahmen.
term-x-wing = X-Wing
    .meaning = Zwei Zeilen, in denen eine Ziffer nur in denselben zwei Spalten Platz hat. Sie steht in gegenüberliegenden Ecken, also in diesen Spalten nirgends sonst. Zeilen und Spalten können die Rollen tauschen.
term-xy-wing = XY-Wing
    .meaning = Ein Feld mit zwei möglichen Ziffern sieht zwei weitere solche Felder: Jedes hat eine andere dieser Ziffern mit ihm gemeinsam und daneben dieselbe dritte. Was auch im ersten steht, eines der anderen enthält die dritte; ein Feld, das beide sieht, kann sie nicht enthalten.
term-xyz-wing = XYZ-Wing
    .meaning = Ein XY-Wing, dessen erstes Feld auch die dritte Ziffer enthalten darf. Sie entfällt nur in Feldern, die alle drei sehen.
