### What each kind of rule asks, in a sentence under a puzzle, singular or plural as there are marks ($n); how it is taught in
### the primer; and how its marks are told to those who do not see them ($cells, $line: which cells; $where: on which borders;
### $side: on which side of the grid).

## Arithmetic cages

result-sum = die Summe (+)
result-product = das Produkt (×)
result-difference = die Differenz (−)
result-quotient = der Quotient (÷)
# $results: the signs that are there. $unsigned: is there a number without a sign; in pairs, it may be any of the four.
arithmetic-cage-sentence-signs = Die Zahl in der Ecke { $n ->
    [1] des Rechenkäfigs
   *[other] jedes Rechenkäfigs
} ist { $results } seiner Ziffern{ $unsigned ->
    [pairs] ; ohne Zeichen ist sie Summe, Produkt, Differenz oder Quotient seiner Ziffern
    [larger] ; ohne Zeichen ist sie Summe oder Produkt seiner Ziffern
   *[none] {""}
}{ $larger ->
    [differ] ; die Ziffern im Käfig sind verschieden
    [repeat] ; die Ziffern im Käfig dürfen sich wiederholen
   *[no] {""}
}.
arithmetic-cage-sentence-unsigned = Die Zahl in der Ecke { $n ->
    [1] des Rechenkäfigs
   *[other] jedes Rechenkäfigs
} ist { $unsigned ->
    [pairs] Summe, Produkt, Differenz oder Quotient seiner Ziffern
   *[larger] Summe oder Produkt seiner Ziffern
}{ $larger ->
    [differ] ; die Ziffern im Käfig sind verschieden
    [repeat] ; die Ziffern im Käfig dürfen sich wiederholen
   *[no] {""}
}.
arithmetic-cage-spoken = Rechenkäfig mit { $sort ->
    [sum] der Summe { $number }
    [product] dem Produkt { $number }
    [difference] der Differenz { $number }
    [quotient] dem Quotienten { $number }
   *[none] { $number } ohne Zeichen
}: { $cells }
arithmetic-cage-primer = Das Zeichen in der Ecke eines Rechenkäfigs sagt, was seine Ziffern ergeben: ihre Summe (+), ihr Produkt (×), ihre Differenz (−) oder ihren Quotienten (÷), jeweils die größere Ziffer zuerst; fehlt das Zeichen, so ist es herauszufinden. Fangen Sie mit Produkten an: Nur wenige sind durch 5 oder 7 teilbar, und ist die Zahl es, so muss diese Ziffer im Käfig stehen. In einem 9×9-Diagramm steht in einem Käfig mit ÷ eine 5 oder 7 nur neben einer 1, und eine große Differenz verlangt eine niedrige und eine hohe Ziffer.

## Arrows

arrow-sentence = Die Ziffern entlang { $n ->
    [1] des Pfeils
   *[other] jedes Pfeils
} ergeben zusammen die Ziffer in seinem Kreis.
# An oval is read like a number; $all: are there ovals only, and no circle.
arrow-sentence-ovals = Die Ziffern entlang { $n ->
    [1] des Pfeils
   *[other] jedes Pfeils
} ergeben zusammen die Zahl in { $all ->
    [yes] seinem Oval
   *[no] seinem Kreis oder Oval
}; ein Oval liest man { $ways ->
    [across] von links nach rechts
    [down] von oben nach unten
   *[both] von links nach rechts oder von oben nach unten
}.
arrow-zero = Die Zahl in einem Oval beginnt nie mit 0.
arrow-circle = Kreis bei { $cells }
arrow-oval = Oval bei { $cells }, gelesen { $way ->
    [across] von links nach rechts
   *[down] von oben nach unten
}
arrow-spoken = Pfeil, { $start }: { $line }
arrow-primer = Die Ziffern auf dem Schaft eines Pfeils, vom Feld neben dem Kreis bis zur Spitze, ergeben zusammen die Zahl im Kreis; sie dürfen sich wiederholen, wo Zeilen, Spalten und Blöcke es zulassen. Gehen mehrere Schäfte von einem Kreis aus, so ergibt jeder diese Zahl. Ein Oval über zwei oder drei Feldern enthält eine zwei- oder dreistellige Zahl. Drei Felder in einem Block ergeben mindestens 6; lange Schäfte bedeuten also hohe Kreise und niedrige Ziffern.
# Where no grid of the book has boxes.
arrow-primer--lines = Die Ziffern auf dem Schaft eines Pfeils, vom Feld neben dem Kreis bis zur Spitze, ergeben zusammen die Zahl im Kreis; sie dürfen sich wiederholen, wo Zeilen und Spalten es zulassen. Gehen mehrere Schäfte von einem Kreis aus, so ergibt jeder diese Zahl. Ein Oval über zwei oder drei Feldern enthält eine zwei- oder dreistellige Zahl. Drei Felder in einer Zeile ergeben mindestens 6; lange Schäfte bedeuten also hohe Kreise und niedrige Ziffern.

## Barred sums

barred-sums-sentence = { $touching ->
    [corners] Felder, die sich an einer Seite oder Ecke berühren, haben nie die Summe { $sums }.
   *[sides] Felder mit einer gemeinsamen Seite haben nie die Summe { $sums }.
}
barred-sums-primer = Keine zwei Felder mit einer gemeinsamen Seite ergeben zusammen eine der Zahlen, die die Regel nennt. Ist 10 verboten, so steht neben einer 4 keine 6 und neben einer 1 keine 9: Für jede der Zahlen schließt eine Ziffer bei ihren Nachbarn eine Ziffer aus; nur die Hälfte einer geraden Zahl darf überall stehen. Liegen alle Plätze einer Ziffer in einer Zeile oder einem Block neben einem Feld, so kann dort ihr Gegenstück nicht stehen.
# Where no grid of the book has boxes.
barred-sums-primer--lines = Keine zwei Felder mit einer gemeinsamen Seite ergeben zusammen eine der Zahlen, die die Regel nennt. Ist 10 verboten, so steht neben einer 4 keine 6 und neben einer 1 keine 9: Für jede der Zahlen schließt eine Ziffer bei ihren Nachbarn eine Ziffer aus; nur die Hälfte einer geraden Zahl darf überall stehen. Liegen alle Plätze einer Ziffer in einer Zeile neben einem Feld, so kann dort ihr Gegenstück nicht stehen.

## Border values

border-values-sum = die Summe ({ $sign })
border-values-difference = die Differenz ({ $sign })
border-values-product = das Produkt ({ $sign })
border-values-quotient = der Quotient ({ $sign })
border-values-sentence = { $n ->
    [1] Die Zahl
   *[other] Jede Zahl
} auf einer Grenze ist { $results } der beiden Ziffern daneben.
border-values-sentence-all = { $n ->
    [1] Die Zahl
   *[other] Jede Zahl
} auf einer Grenze ist { $results } der beiden Ziffern daneben; Nachbarn ohne Zahl dazwischen haben nie { $never }.
border-values-never-sum = die Summe { $numbers }
border-values-never-difference = die Differenz { $numbers }
border-values-never-product = das Produkt { $numbers }
border-values-never-quotient = den Quotienten { $numbers }
border-values-spoken-sum = { $n ->
    [1] Summe { $number }
   *[other] Summen { $number }
} { $where }
border-values-spoken-difference = { $n ->
    [1] Differenz { $number }
   *[other] Differenzen { $number }
} { $where }
border-values-spoken-product = { $n ->
    [1] Produkt { $number }
   *[other] Produkte { $number }
} { $where }
border-values-spoken-quotient = { $n ->
    [1] Quotient { $number }
   *[other] Quotienten { $number }
} { $where }
border-values-primer = Eine Zahl in einem Kästchen auf einer Grenze sagt, was die beiden Ziffern daneben ergeben: nach + ihre Summe, nach − ihre Differenz, nach × ihr Produkt, nach / die größere geteilt durch die kleinere. Große Produkte, Summen und Quotienten lassen am wenigsten Auswahl: In einem 9×9-Diagramm ist ×35 5 und 7, +17 ist 8 und 9, /5 ist 1 und 5. Sind alle solchen Zahlen angegeben, so ist auch eine Grenze ohne Zahl ein Hinweis.

## Bounded lines

bounded-line-sentence = Die Ziffern auf { $n ->
    [1] der Klammerlinie
   *[other] jeder Klammerlinie
} liegen der Größe nach zwischen den beiden eingeklammerten Ziffern an ihren Enden und gleichen keiner von ihnen.
bounded-line-spoken = Klammerlinie, von Ende zu Ende: { $line }
bounded-line-primer = Die Ziffern auf der Linie liegen zwischen den beiden eingeklammerten Ziffern an ihren Enden; keine von diesen kommt dazwischen vor. Die niedrigste und die höchste Ziffer liegen also nie im Inneren einer solchen Linie, und wenn drei innere Felder in einer Zeile, einer Spalte oder einem Block liegen, haben die Enden mindestens den Abstand 4. Finden Sie zuerst heraus, welches Ende das höhere ist.
# Where no grid of the book has boxes.
bounded-line-primer--lines = Die Ziffern auf der Linie liegen zwischen den beiden eingeklammerten Ziffern an ihren Enden; keine von diesen kommt dazwischen vor. Die niedrigste und die höchste Ziffer liegen also nie im Inneren einer solchen Linie, und wenn drei innere Felder in einer Zeile oder Spalte liegen, haben die Enden mindestens den Abstand 4. Finden Sie zuerst heraus, welches Ende das höhere ist.

## Cages

cage-sentence-totals = { $n ->
    [1] Im Käfig
   *[other] In jedem Käfig
} sind die Ziffern verschieden und ergeben zusammen die Summe in seiner Ecke.
cage-sentence-some = { $n ->
    [1] Im Käfig
   *[other] In jedem Käfig
} sind die Ziffern verschieden und ergeben zusammen die Summe in seiner Ecke, wenn dort eine steht.
cage-sentence-none = { $n ->
    [1] Im Käfig
   *[other] In jedem Käfig
} sind die Ziffern verschieden.
cage-sentence-repeats = Die Ziffern { $n ->
    [1] im Käfig
   *[other] in jedem Käfig
} ergeben zusammen die Summe in seiner Ecke und dürfen sich wiederholen.
cage-spoken = { $total ->
    [none] Käfig ohne Summe: { $cells }
   *[other] Käfig mit Summe { $total }: { $cells }
}
cage-primer = Ein Käfig ist gestrichelt umrandet. Seine Ziffern sind verschieden, auch wenn er durch mehrere Blöcke läuft, und ergeben zusammen die kleine Zahl in seiner Ecke. Manche Summen lassen nur eine Wahl: Zwei Felder mit Summe 3 enthalten 1 und 2, drei mit Summe 24 enthalten 7, 8 und 9. In einem 9×9-Diagramm ergibt jede Zeile, jede Spalte und jeder Block 45: Wo Käfige alle Felder eines Blocks bis auf eines abdecken, ziehen Sie ihre Summen von 45 ab.
# Where no grid of the book has boxes.
cage-primer--lines = Ein Käfig ist gestrichelt umrandet. Seine Ziffern sind verschieden und ergeben zusammen die kleine Zahl in seiner Ecke. Manche Summen lassen nur eine Wahl: Zwei Felder mit Summe 3 enthalten 1 und 2, drei mit Summe 24 enthalten 7, 8 und 9. In einem 9×9-Diagramm ergibt jede Zeile und jede Spalte 45: Wo Käfige alle Felder einer Zeile bis auf eines abdecken, ziehen Sie ihre Summen von 45 ab.

## Clones

# $n hatched areas, all alike.
clone-sentence = Die { $number } schraffierten Flächen enthalten dieselben Ziffern an denselben Stellen.
clone-sentence-letters = Schraffierte Flächen mit demselben Buchstaben enthalten dieselben Ziffern an denselben Stellen.
clone-spoken = Klone { $letter }, Feld für Feld: { $twins }
clone-primer = Schraffierte Flächen mit demselben Buchstaben sind Klone: Sie haben dieselbe Form und enthalten dieselben Ziffern an denselben Stellen. Was in einem Feld ausgeschlossen ist, ist es auch in seinem Zwilling; jedes Zwillingspaar wird also durch zwei Zeilen, zwei Spalten und zwei Blöcke eingeengt. Fangen Sie bei den Klonen an, die die meisten Vorgaben sehen.
# Where no grid of the book has boxes.
clone-primer--lines = Schraffierte Flächen mit demselben Buchstaben sind Klone: Sie haben dieselbe Form und enthalten dieselben Ziffern an denselben Stellen. Was in einem Feld ausgeschlossen ist, ist es auch in seinem Zwilling; jedes Zwillingspaar wird also durch zwei Zeilen und zwei Spalten eingeengt. Fangen Sie bei den Klonen an, die die meisten Vorgaben sehen.

## Consecutive bars

consecutive-bars-sentence = { $n ->
    [1] Der Balken
   *[other] Jeder Balken
} verbindet aufeinanderfolgende Ziffern; Nachbarn ohne Balken dazwischen enthalten keine aufeinanderfolgenden Ziffern.
consecutive-bars-spoken = Balken { $n ->
    [1] { $where }
   *[other] { $where }
}
consecutive-bars-primer = Zwischen allen Nachbarn mit aufeinanderfolgenden Ziffern steht ein Balken; ein fehlender Balken ist also auch ein Hinweis: Ohne Balken dazwischen steht neben einer 5 weder eine 4 noch eine 6. Verfolgen Sie Ketten von Balken, auf denen die Ziffern um je eins steigen oder fallen, und achten Sie auf Felder mit wenigen Balken neben einer bekannten Ziffer.

## Consecutive lines

consecutive-line-sentence = Die Ziffern auf { $n ->
    [1] der Folgelinie
   *[other] jeder Folgelinie
} bilden eine Folge ohne Lücken und Wiederholungen, in beliebiger Reihenfolge.
consecutive-line-spoken = Folgelinie: { $line }
consecutive-line-primer = Die Ziffern auf einer Perlenlinie lassen sich zu einer Folge wie 3 4 5 6 ordnen, dürfen auf der Linie aber in beliebiger Reihenfolge stehen. Sie wiederholen sich nie, auch wenn die Linie durch mehrere Blöcke läuft. In einem 9×9-Diagramm enthalten fünf Felder immer eine 5, sechs auch eine 4 und eine 6; und was zu weit von einer bekannten Ziffer entfernt ist, scheidet aus.
# Where no grid of the book has boxes.
consecutive-line-primer--lines = Die Ziffern auf einer Perlenlinie lassen sich zu einer Folge wie 3 4 5 6 ordnen, dürfen auf der Linie aber in beliebiger Reihenfolge stehen. Sie wiederholen sich nie. In einem 9×9-Diagramm enthalten fünf Felder immer eine 5, sechs auch eine 4 und eine 6; und was zu weit von einer bekannten Ziffer entfernt ist, scheidet aus.

## Counting areas

counting-area-sentence-counts = { $n ->
    [1] Im Zählgebiet
   *[other] In jedem Zählgebiet
} steht jede Ziffer aus der Ecke genau so oft, wie sie dort geschrieben ist.
counting-area-sentence-different = Die Zahl in der Ecke { $n ->
    [1] des Zählgebiets
   *[other] jedes Zählgebiets
} sagt, wie viele verschiedene Ziffern es enthält.
counting-area-sentence-both = { $n ->
    [1] Im Zählgebiet
   *[other] In jedem Zählgebiet
} steht jede Ziffer aus der Ecke genau so oft, wie sie dort geschrieben ist; eine Zahl mit ≠ sagt, wie viele verschiedene Ziffern das Gebiet enthält.
counting-area-spoken = { $different ->
    [0] Zählgebiet mit genau { $digits }: { $cells }
    [1] Zählgebiet mit nur einer Ziffer: { $cells }
   *[other] Zählgebiet mit { $different } verschiedenen Ziffern: { $cells }
}
counting-area-primer = Eine gepunktete Linie umgrenzt ein Zählgebiet. Die Ziffern in seiner Ecke stehen darin genau so oft, wie sie geschrieben sind: 7 7 bedeutet zwei Siebenen, die übrigen Ziffern sind beliebige andere. Eine Zahl mit ≠ sagt, wie viele verschiedene Ziffern es sind. Drei Felder in einer Zeile enthalten immer drei verschiedene Ziffern; fragen Sie also, welche Felder eines Gebiets überhaupt gleich sein können: die ohne gemeinsame Zeile, Spalte und gemeinsamen Block.
# Where no grid of the book has boxes.
counting-area-primer--lines = Eine gepunktete Linie umgrenzt ein Zählgebiet. Die Ziffern in seiner Ecke stehen darin genau so oft, wie sie geschrieben sind: 7 7 bedeutet zwei Siebenen, die übrigen Ziffern sind beliebige andere. Eine Zahl mit ≠ sagt, wie viele verschiedene Ziffern es sind. Drei Felder in einer Zeile enthalten immer drei verschiedene Ziffern; fragen Sie also, welche Felder eines Gebiets überhaupt gleich sein können: die ohne gemeinsame Zeile und Spalte.

## Diagonal sums

diagonal-sum-sentence = { $n ->
    [1] Die Zahl
   *[other] Jede Zahl
} mit einem Pfeil außerhalb des Diagramms ist die Summe der Ziffern auf der Diagonale in Pfeilrichtung; sie dürfen sich wiederholen, wo die übrigen Regeln es zulassen.
diagonal-sum-spoken = Diagonalsumme { $total }: { $line }
diagonal-sum-primer = Ein Pfeil außerhalb des Diagramms weist eine Diagonale entlang, und seine Zahl ist die Summe aller Ziffern darauf, bis zum Rand gegenüber. Felder eines Blocks enthalten verschiedene Ziffern; andere dürfen gleich sein, so dass drei Felder in drei Blöcken sogar dieselbe Ziffer enthalten können. Fangen Sie mit kurzen Diagonalen an und mit Summen, die für ihre Länge sehr klein oder sehr groß sind.
# Where no grid of the book has boxes.
diagonal-sum-primer--lines = Ein Pfeil außerhalb des Diagramms weist eine Diagonale entlang, und seine Zahl ist die Summe aller Ziffern darauf, bis zum Rand gegenüber. Ziffern darauf dürfen sich wiederholen. Fangen Sie mit kurzen Diagonalen an und mit Summen, die für ihre Länge sehr klein oder sehr groß sind.

## Diagonals

diagonals-sentence = { $n ->
    [1] Die markierte Diagonale
   *[other] Jede der beiden markierten Diagonalen
} enthält jede Ziffer einmal.
diagonals-spoken = Markierte Diagonale: { $line }
diagonals-primer = Eine markierte Diagonale wirkt wie eine weitere Zeile oder Spalte: Jede Ziffer steht einmal darauf. Das Feld, in dem sich zwei Diagonalen kreuzen, gehört zu beiden und zu einer Zeile, einer Spalte und einem Block; schauen Sie zuerst dorthin und suchen Sie dann auf einer Diagonale eine Ziffer, die nur noch einen Platz hat.
# Where no grid of the book has boxes.
diagonals-primer--lines = Eine markierte Diagonale wirkt wie eine weitere Zeile oder Spalte: Jede Ziffer steht einmal darauf. Das Feld, in dem sich zwei Diagonalen kreuzen, gehört zu beiden und zu einer Zeile und einer Spalte; schauen Sie zuerst dorthin und suchen Sie dann auf einer Diagonale eine Ziffer, die nur noch einen Platz hat.

## Difference lines

difference-line-sentence = Entlang { $n ->
    [1] der Differenzlinie
   *[other] jeder Differenzlinie
} unterscheiden sich benachbarte Ziffern um mindestens { $least }.
difference-line-spoken = Differenzlinie: { $line }
difference-line-primer = Jeder Schritt auf einer gezackten Linie ist ein Sprung um mindestens die angegebene Differenz, meist 5. In einem 9×9-Diagramm mit 5 wechseln niedrige und hohe Ziffern entlang der Linie ab: Die 5 selbst steht nie darauf, die 4 nur neben einer 9 und die 6 nur neben einer 1. Eine 4 oder 6 steht also an einem Ende oder zwischen zwei Feldern, die gleich sein dürfen.

## Disjoint groups

disjoint-groups-sentence = Felder an derselben Stelle ihres Blocks, etwa alle oben links, enthalten zusammen jede Ziffer einmal.
disjoint-groups-primer = Nehmen Sie aus jedem Block das Feld oben links: Zusammen enthalten diese Felder jede Ziffer einmal, und ebenso die Felder an jeder anderen Stelle der Blöcke. Eine Ziffer steht also in jedem Block an einer anderen Stelle. Steht sie schon in einigen Blöcken, so streichen Sie diese Stellen in den anderen, bevor Sie Zeilen und Spalten ansehen.

## Dots

dots-sentence-white = { $white ->
    [1] Der weiße Punkt
   *[other] Jeder weiße Punkt
} verbindet aufeinanderfolgende Ziffern{ $all ->
    [yes] ; Nachbarn ohne Punkt enthalten weder aufeinanderfolgende Ziffern noch eine Ziffer und ihr Doppeltes
   *[no] {""}
}.
dots-sentence-black = { $black ->
    [1] Der schwarze Punkt
   *[other] Jeder schwarze Punkt
} verbindet eine Ziffer und ihr Doppeltes{ $all ->
    [yes] ; Nachbarn ohne Punkt enthalten weder aufeinanderfolgende Ziffern noch eine Ziffer und ihr Doppeltes
   *[no] {""}
}.
dots-sentence-both = { $white ->
    [1] Der weiße Punkt
   *[other] Jeder weiße Punkt
} verbindet aufeinanderfolgende Ziffern und { $black ->
    [1] der schwarze Punkt
   *[other] jeder schwarze Punkt
} eine Ziffer und ihr Doppeltes (zwischen 1 und 2 kann der eine oder der andere stehen){ $all ->
    [yes] ; auf Nachbarn ohne Punkt trifft keines von beiden zu
   *[no] {""}
}.
# All dots are marked, and there are none.
dots-sentence-none = Felder mit einer gemeinsamen Seite enthalten nie aufeinanderfolgende Ziffern und nie eine Ziffer und ihr Doppeltes.
dots-spoken-white = { $n ->
    [1] Weißer Punkt
   *[other] Weiße Punkte
} { $where }
dots-spoken-black = { $n ->
    [1] Schwarzer Punkt
   *[other] Schwarze Punkte
} { $where }
dots-primer = Ein weißer Punkt verbindet zwei Nachbarn mit aufeinanderfolgenden Ziffern, ein schwarzer eine Ziffer und ihr Doppeltes; zwischen 1 und 2 kann der eine oder der andere stehen. In einem 9×9-Diagramm berühren 5, 7 und 9 nie einen schwarzen Punkt, und eine Kette schwarzer Punkte läuft durch 1, 2, 4 und 8 oder durch 3 und 6. Sind alle Punkte angegeben, so ist auch eine Grenze ohne Punkt ein Hinweis: Ihre Ziffern folgen nicht aufeinander, und keine ist das Doppelte der anderen.

## Equal-part lines

equal-part-line-sentence = Die Grenzen der { $home ->
    [box] Blöcke
   *[region] Gebiete
} teilen { $n ->
    [1] die Abschnittslinie
   *[other] jede Abschnittslinie
} in Abschnitte mit gleicher Ziffernsumme.
equal-part-line-part = Abschnitt { $number }, { $line }
equal-part-line-spoken = Abschnittslinie: { $parts }
equal-part-line-primer = Die Grenzen der Blöcke teilen eine Abschnittslinie in Abschnitte, und die Ziffern jedes Abschnitts haben dieselbe Summe; kehrt eine Linie in einen Block zurück, so hat sie dort zwei Abschnitte. Ein Abschnitt aus einem einzigen Feld verrät die Summe sofort. Gibt es keinen, so vergleichen Sie den längsten Abschnitt mit dem kürzesten: In einem 9×9-Diagramm ergeben drei Felder eines Blocks mindestens 6, zwei höchstens 17.

## Even-step lines

even-step-line-sentence = Entlang { $n ->
    [1] der Gleichschrittlinie
   *[other] jeder Gleichschrittlinie
} { $step ->
    [none] unterscheiden sich alle benachbarten Ziffern um denselben Betrag; er ist { $n ->
        [1] herauszufinden
       *[other] für jede Linie herauszufinden
    }
   *[other] unterscheiden sich benachbarte Ziffern um genau { $step }
}.
even-step-line-spoken = Gleichschrittlinie: { $line }
even-step-line-primer = Alle Schritte auf einer Linie mit Nieten sind gleich groß, aufwärts oder abwärts, und nie null; ist die Größe nicht angegeben, so ist sie für jede Linie herauszufinden. Großen Schritten geht bald der Platz aus: Mit Schritt 4 enthält in einem 9×9-Diagramm eine Linie, die bei 1 beginnt, nur 1, 5 und 9; mit Schritt 5 wechseln niedrige und hohe Ziffern ab, und die 5 kommt nie vor. Drei aufeinanderfolgende Felder in einer Zeile, einer Spalte oder einem Block steigen zweimal oder fallen zweimal.
# Where no grid of the book has boxes.
even-step-line-primer--lines = Alle Schritte auf einer Linie mit Nieten sind gleich groß, aufwärts oder abwärts, und nie null; ist die Größe nicht angegeben, so ist sie für jede Linie herauszufinden. Großen Schritten geht bald der Platz aus: Mit Schritt 4 enthält in einem 9×9-Diagramm eine Linie, die bei 1 beginnt, nur 1, 5 und 9; mit Schritt 5 wechseln niedrige und hohe Ziffern ab, und die 5 kommt nie vor. Drei aufeinanderfolgende Felder in einer Zeile oder Spalte steigen zweimal oder fallen zweimal.

## Extra regions

# $pieces: a region may be in several pieces, which then have one letter.
extra-region-sentence = { $full ->
    [yes] { $n ->
        [1] Das getönte Gebiet enthält jede Ziffer einmal
       *[other] Jedes getönte Gebiet enthält jede Ziffer einmal
    }
   *[no] { $n ->
        [1] Im getönten Gebiet wiederholt sich keine Ziffer
       *[other] In keinem getönten Gebiet wiederholt sich eine Ziffer
    }
}{ $pieces ->
    [yes] { $n ->
        [1] ; alle seine Teile tragen denselben Buchstaben
       *[other] ; die Teile eines Gebiets tragen denselben Buchstaben
    }
   *[no] {""}
}.
extra-region-spoken = { $letter ->
    [none] Getöntes Gebiet: { $cells }
   *[other] Getöntes Gebiet { $letter }: { $cells }
}
extra-region-primer = Ein getöntes Gebiet wirkt wie ein weiterer Block: Keine Ziffer steht zweimal darin. Hat es so viele Felder, wie das Diagramm Ziffern hat, so enthält es alle; fragen Sie es also, was Sie eine Zeile fragen würden: Wo kann diese Ziffer noch stehen? Ein kleineres hält nur seine Ziffern auseinander. Fangen Sie dort an, wo ein Gebiet über einem fast vollen Block liegt.
# Where no grid of the book has boxes.
extra-region-primer--lines = Ein getöntes Gebiet wirkt wie eine weitere Zeile: Keine Ziffer steht zweimal darin. Hat es so viele Felder, wie das Diagramm Ziffern hat, so enthält es alle; fragen Sie es also, was Sie eine Zeile fragen würden: Wo kann diese Ziffer noch stehen? Ein kleineres hält nur seine Ziffern auseinander. Fangen Sie dort an, wo ein Gebiet über einer fast vollen Zeile liegt.

## First-seen digits

# $seen: how many small squares beside each digit; 0 where that differs.
first-seen-sentence = { $n ->
    [1] Die Ziffer
   *[other] Jede Ziffer
} { $seen ->
    [0] neben kleinen Quadraten außerhalb des Diagramms steht, von dort gesehen, in einem der ersten Felder ihrer { $line ->
        [row] Zeile
        [column] Spalte
       *[both] Zeile oder Spalte
    }; die Zahl der Quadrate sagt, wie viele Felder in Frage kommen
    [1] neben einem kleinen Quadrat außerhalb des Diagramms steht, von dort gesehen, im ersten Feld ihrer { $line ->
        [row] Zeile
        [column] Spalte
       *[both] Zeile oder Spalte
    }
   *[other] neben { $number } kleinen Quadraten außerhalb des Diagramms steht, von dort gesehen, in einem der ersten { $number } Felder ihrer { $line ->
        [row] Zeile
        [column] Spalte
       *[both] Zeile oder Spalte
    }
}.
first-seen-spoken = { $n ->
    [1] Vorderziffer
   *[other] Vorderziffern
} { $side }: { $clues }
first-seen-side = { $side }, neben { $n ->
    [1] einem kleinen Quadrat
   *[other] { $number } kleinen Quadraten
}
first-seen-primer = Eine Ziffer außerhalb einer Zeile oder Spalte steht, von dort gesehen, in einem der ersten Felder; wie viele in Frage kommen, sagt die Zahl der kleinen Quadrate neben ihr. Sind mehrere Ziffern beisammen, so stehen alle dort, in beliebiger Reihenfolge. In einem 9×9-Diagramm binden drei Quadrate die Ziffer an drei Felder des nächsten Blocks; streichen Sie sie also im Rest der Zeile und des Blocks.
# Where no grid of the book has boxes.
first-seen-primer--lines = Eine Ziffer außerhalb einer Zeile oder Spalte steht, von dort gesehen, in einem der ersten Felder; wie viele in Frage kommen, sagt die Zahl der kleinen Quadrate neben ihr. Sind mehrere Ziffern beisammen, so stehen alle dort, in beliebiger Reihenfolge.

## Fortress cells

fortress-sentence = Jede Ziffer in einem getönten Feld, innerhalb der Zinnen, ist größer als die Ziffern in den ungetönten Feldern, die eine Seite mit ihm gemeinsam haben.
fortress-spoken = Festung: { $cells }
fortress-primer = Getönte Felder mit Zinnen ringsum sind eine Festung: Jede ihrer Ziffern ist größer als die Ziffern außerhalb, die sie an einer Seite berühren. Zwei getönte Felder werden nicht verglichen. Wo ein Feld in seiner Zeile oder Spalte auf beiden Seiten Zinnen hat, steht mindestens eine 3, und niedrige Ziffern können in einer Festung nur stehen, wo wenige ihrer Seiten nach außen zeigen. Felder zwischen zwei Festungen sind niedrig.

## Frame products

frame-product-sentence = { $n ->
    [1] Die Zahl
   *[other] Jede Zahl
} hinter einem Punkt außerhalb des Diagramms ist das Produkt { $line ->
    [row] der ersten { $number } Ziffern ihrer Zeile
    [column] der ersten { $number } Ziffern ihrer Spalte
    [unlike] der ersten { $number } Ziffern ihrer Zeile oder der ersten { $other } ihrer Spalte
   *[both] der ersten { $number } Ziffern ihrer Zeile oder Spalte
}, von dort gesehen.
frame-product-spoken = { $n ->
    [1] Randprodukt
   *[other] Randprodukte
} { $side }: { $clues }
frame-product-primer = Die Zahl außerhalb einer Zeile oder Spalte ist das Produkt der nächsten Ziffern, in einem 9×9-Diagramm meist der drei im nächsten Block. Zerlegen Sie sie: Ein Produkt, das auf 5 oder 0 endet, enthält eine 5, eines, das durch 7 teilbar ist, eine 7, und was durch keine von beiden teilbar ist, hält beide fern. Ein ungerades Produkt hat nur ungerade Ziffern.
# Where no grid of the book has boxes.
frame-product-primer--lines = Die Zahl außerhalb einer Zeile oder Spalte ist das Produkt der nächsten Ziffern, meist von dreien. Zerlegen Sie sie: Ein Produkt, das auf 5 oder 0 endet, enthält eine 5, eines, das durch 7 teilbar ist, eine 7, und was durch keine von beiden teilbar ist, hält beide fern. Ein ungerades Produkt hat nur ungerade Ziffern.

## Frame sums

frame-sum-sentence = { $n ->
    [1] Die Zahl
   *[other] Jede Zahl
} hinter einem kleinen + außerhalb des Diagramms ist die Summe { $line ->
    [row] der ersten { $number } Ziffern ihrer Zeile
    [column] der ersten { $number } Ziffern ihrer Spalte
    [unlike] der ersten { $number } Ziffern ihrer Zeile oder der ersten { $other } ihrer Spalte
   *[both] der ersten { $number } Ziffern ihrer Zeile oder Spalte
}, von dort gesehen.
frame-sum-spoken = { $n ->
    [1] Randsumme
   *[other] Randsummen
} { $side }: { $clues }
frame-sum-primer = Die Zahl außerhalb einer Zeile oder Spalte ist die Summe der nächsten Ziffern, in einem 9×9-Diagramm meist der drei im nächsten Block. Drei Ziffern mit Summe 6 sind 1, 2 und 3, drei mit Summe 24 sind 7, 8 und 9. Ein Block ergibt 45; zwei Zahlen, die von derselben Seite in einen Block schauen, ergeben also die dritte, und Zahlen an beiden Enden einer Zeile die Summe dessen, was dazwischen liegt.
# Where no grid of the book has boxes.
frame-sum-primer--lines = Die Zahl außerhalb einer Zeile oder Spalte ist die Summe der nächsten Ziffern, meist von dreien. Drei Ziffern mit Summe 6 sind 1, 2 und 3, drei mit Summe 24 sind 7, 8 und 9.

## Hinge lines

# $middles: which lines have a cell in the middle, with a diamond.
hinge-line-sentence = Auf { $n ->
    [1] der Scharnierlinie
   *[other] jeder Scharnierlinie
} haben je zwei Felder mit gleichem Abstand von der Mitte dieselbe Summe{ $middles ->
    [all] , nämlich die Ziffer in der Mitte
    [some] , nämlich die Ziffer im mittleren Feld, wenn es eines gibt
   *[none] {""}
}.
hinge-line-spoken = { COUNT($middle) ->
    [one] Scharnierlinie mit Mitte bei { $middle }: { $line }
   *[other] Scharnierlinie mit Mitte zwischen { $middle }: { $line }
}
hinge-line-primer = Falten Sie eine Scharnierlinie in der Mitte: Je zwei Felder, die aufeinander fallen, haben dieselbe Summe. Hat die Linie ein mittleres Feld, so trägt es eine Raute, und seine Ziffer ist die Summe; sie ist also hoch, und ihre Partner sind niedrig. Sonst ist die Summe herauszufinden: Ein bekanntes Paar genügt.

## Inequalities

inequality-sentence = { $n ->
    [1] Das Zeichen
   *[other] Jedes Zeichen
} zwischen zwei Feldern öffnet sich zur größeren Ziffer.
inequality-row = Zeile { $number }: { $signs }
    .short = z{ $number }: { $signs }
inequality-row-sign = Spalte { $more } ist größer als Spalte { $less }
    .short = s{ $more } ist größer als s{ $less }
inequality-column = Spalte { $number }: { $signs }
    .short = s{ $number }: { $signs }
inequality-column-sign = Zeile { $more } ist größer als Zeile { $less }
    .short = z{ $more } ist größer als z{ $less }
inequality-primer = Ein Zeichen zwischen zwei Feldern öffnet sich zur größeren Ziffer und zeigt auf die kleinere. Mehrere hintereinander bilden eine Treppe: An ihrem Fuß haben nur niedrige Ziffern Platz, oben nur hohe. Fangen Sie mit den längsten Treppen an und mit Feldern, die größer oder kleiner sind als alles ringsum.

## King's move

king-sentence = Felder, die sich an einer Ecke berühren, enthalten verschiedene Ziffern.
king-primer = Felder, die sich an einer Ecke berühren, enthalten verschiedene Ziffern, als wäre jede Ziffer ein Schachkönig, der keinen Zwilling neben sich duldet. Innerhalb eines Blocks ist das nichts Neues; es wirkt über die Grenzen der Blöcke hinweg. Eine Ziffer neben einem Block schließt darin bis zu zwei weitere Felder aus.
# Where no grid of the book has boxes.
king-primer--lines = Felder, die sich an einer Ecke berühren, enthalten verschiedene Ziffern, als wäre jede Ziffer ein Schachkönig, der keinen Zwilling neben sich duldet.

## Knight's move

knight-sentence = Felder im Abstand eines Springerzugs (zwei Schritte in einer Zeile oder Spalte, dann einer zur Seite) enthalten verschiedene Ziffern.
knight-primer = Zwei Felder, zwischen denen ein Springer im Schach ziehen könnte, zwei Schritte in einer Zeile oder Spalte und einen zur Seite, enthalten verschiedene Ziffern. Eine Ziffer in der Mitte des Diagramms erreicht so acht Felder, die meisten außerhalb ihres Blocks. Suchen Sie Blöcke, in denen eine Ziffer noch zwei Plätze hat, beide einen Springerzug von demselben Feld entfernt.
# Where no grid of the book has boxes.
knight-primer--lines = Zwei Felder, zwischen denen ein Springer im Schach ziehen könnte, zwei Schritte in einer Zeile oder Spalte und einen zur Seite, enthalten verschiedene Ziffern. Eine Ziffer in der Mitte des Diagramms erreicht so acht Felder. Suchen Sie Zeilen, in denen eine Ziffer noch zwei Plätze hat, beide einen Springerzug von demselben Feld entfernt.

## Limits

limits-sentence-allowed = { $n ->
    [1] Das Feld
   *[other] Jedes Feld
} mit kleinen Ziffern in der Ecke enthält eine davon.
limits-sentence-forbidden = { $n ->
    [1] Das Feld
   *[other] Jedes Feld
} mit kleinen durchgestrichenen Ziffern in der Ecke enthält keine davon.
limits-sentence-both = { $n ->
    [1] Das Feld
   *[other] Jedes Feld
} mit kleinen Ziffern in der Ecke enthält eine davon oder, wenn sie durchgestrichen sind, keine davon.
limits-spoken-only = Nur { $digits }: { $cells }
limits-spoken-not = Nicht { $digits }: { $cells }
limits-primer = Kleine Ziffern in der rechten unteren Ecke eines Feldes sind die einzigen, die es enthalten darf; sind sie durchgestrichen, so sind es die, die es nicht enthalten darf. Notieren Sie die Kandidaten, bevor Sie anfangen. Wenn so viele Felder einer Zeile, einer Spalte oder eines Blocks dieselbe Einschränkung haben, wie diese Ziffern hat, so stehen die Ziffern dort nirgends sonst.
# Where no grid of the book has boxes.
limits-primer--lines = Kleine Ziffern in der rechten unteren Ecke eines Feldes sind die einzigen, die es enthalten darf; sind sie durchgestrichen, so sind es die, die es nicht enthalten darf. Notieren Sie die Kandidaten, bevor Sie anfangen. Wenn so viele Felder einer Zeile oder Spalte dieselbe Einschränkung haben, wie diese Ziffern hat, so stehen die Ziffern dort nirgends sonst.

## Low-high lines

low-high-line-sentence = Entlang { $n ->
    [1] der Tief-hoch-Linie
   *[other] jeder Tief-hoch-Linie
} wechseln niedrige ({ $least } bis { $low }) und hohe Ziffern ({ $high } bis { $most }) ab{ $middle ->
    [none] .
   *[other] ; eine { $middle } kommt nicht vor.
}
low-high-line-spoken = Tief-hoch-Linie: { $line }
low-high-line-primer = Entlang einer Linie mit Zinnen wechseln niedrige und hohe Ziffern ab; sie darf mit beiden beginnen. In einem 9×9-Diagramm sind 1 bis 4 niedrig, 6 bis 9 hoch, und die 5 steht nie auf einer solchen Linie. Eine Ziffer darauf legt fest, welche Felder niedrig sind. Vier niedrige Felder in einer Zeile, einer Spalte oder einem Block nehmen alle niedrigen Ziffern auf.
# Where no grid of the book has boxes.
low-high-line-primer--lines = Entlang einer Linie mit Zinnen wechseln niedrige und hohe Ziffern ab; sie darf mit beiden beginnen. In einem 9×9-Diagramm sind 1 bis 4 niedrig, 6 bis 9 hoch, und die 5 steht nie auf einer solchen Linie. Eine Ziffer darauf legt fest, welche Felder niedrig sind. Vier niedrige Felder in einer Zeile oder Spalte nehmen alle niedrigen Ziffern auf.

## No doubles

no-doubles-sentence = { $touching ->
    [corners] Felder, die sich an einer Seite oder Ecke berühren, enthalten nie eine Ziffer und ihr Doppeltes.
   *[sides] Felder mit einer gemeinsamen Seite enthalten nie eine Ziffer und ihr Doppeltes.
}
no-doubles-zero = Da das Doppelte von 0 wieder 0 ist, berühren sich zwei Nullen nie.
no-doubles-primer = Keine zwei Felder mit einer gemeinsamen Seite enthalten eine Ziffer und ihr Doppeltes: Neben einer 4 steht weder eine 2 noch eine 8. In einem 9×9-Diagramm dürfen 5, 7 und 9 neben jeder Ziffer stehen; Abstand halten müssen 1, 2, 4 und 8 sowie 3 und 6. Ein Feld neben allen Plätzen einer 4 in einer Zeile kann weder 2 noch 8 sein.

## Non-consecutive

non-consecutive-sentence = { $touching ->
    [corners] Felder, die sich an einer Seite oder Ecke berühren, enthalten nie aufeinanderfolgende Ziffern.
   *[sides] Felder mit einer gemeinsamen Seite enthalten nie aufeinanderfolgende Ziffern.
}
non-consecutive-primer = Keine zwei Felder mit einer gemeinsamen Seite enthalten aufeinanderfolgende Ziffern: Neben einer 5 steht weder eine 4 noch eine 6. Jede Ziffer, die Sie eintragen, schließt also bei jedem Nachbarn zwei Ziffern aus. Hat eine Ziffer in einer Zeile nur noch zwei Plätze mit einem Feld dazwischen, so kann dort keine um eins größere oder kleinere Ziffer stehen.

## Numbered rooms

numbered-room-sentence = { $n ->
    [1] Die Ziffer
   *[other] Jede Ziffer
} in einer Tür außerhalb des Diagramms gehört ins n-te Feld ihrer { $line ->
    [row] Zeile
    [column] Spalte
   *[both] Zeile oder Spalte
}, von dort gezählt; n ist die erste Ziffer dort.
numbered-room-zero = Die Ziffer n ist nie 0.
numbered-room-spoken = { $n ->
    [1] Nummeriertes Zimmer
   *[other] Nummerierte Zimmer
} { $side }: { $clues }
numbered-room-primer = Die Ziffer, die der Tür am nächsten steht, ist die Nummer eines Zimmers: Steht vorn eine 4, so gehört die Ziffer der Tür ins vierte Feld von dort. Nur bei einer 1 in der Tür kann vorn eine 1 stehen, und keine Nummer führt in ein besetztes Zimmer. Fangen Sie dort an, wo die Ziffer der Tür in ihrer Zeile oder Spalte nur wenige Plätze hat, denn jeder davon verlangt vorn eine bestimmte Ziffer.

## Open cages

open-cage-sentence = Die Ziffern { $n ->
    [1] im Blankokäfig
   *[other] in jedem Blankokäfig
} sind verschieden{ $parities ->
    [even] { $alone ->
        [yes] ; ihre Summe ist gerade
       *[no] ; bei einem Quadrat ist ihre Summe gerade
    }
    [odd] { $alone ->
        [yes] ; ihre Summe ist ungerade
       *[no] ; bei einem Kreis ist ihre Summe ungerade
    }
    [both] ; ihre Summe ist bei einem Quadrat gerade, bei einem Kreis ungerade
   *[none] {""}
}{ $letters ->
    [yes] ; Käfige mit demselben Buchstaben haben dieselbe Summe
   *[no] {""}
}.
open-cage-spoken = { $value ->
    [even] Blankokäfig mit gerader Summe: { $cells }
    [odd] Blankokäfig mit ungerader Summe: { $cells }
   *[other] Blankokäfig mit der Summe { $value }: { $cells }
}
open-cage-primer = Die Ziffern in einem Blankokäfig sind verschieden, aber ihre Summe ist nicht angegeben. Ein kleines Quadrat in der Ecke sagt, dass sie gerade ist, ein kleiner Kreis, dass sie ungerade ist: Fehlt nur noch ein Feld, so kann es nur gerade oder nur ungerade sein. Käfige mit demselben Buchstaben haben dieselbe Summe: Ein kleiner Käfig, der einem großen gleicht, hat hohe Ziffern, der große niedrige.

## Palindromes

palindrome-sentence = Die Ziffern entlang { $n ->
    [1] des Palindroms
   *[other] jedes Palindroms
} lesen sich von beiden Enden aus gleich.
palindrome-spoken = Palindrom: { $line }
palindrome-primer = Ein Palindrom liest sich von beiden Enden aus gleich: Sein erstes und letztes Feld sind gleich, ebenso das zweite und das vorletzte; ein mittleres Feld ist frei. Was in einem Feld eines solchen Paares ausgeschlossen ist, ist es auch im anderen; jedes Paar wirkt also in zwei Zeilen, zwei Spalten und zwei Blöcken zugleich.
# Where no grid of the book has boxes.
palindrome-primer--lines = Ein Palindrom liest sich von beiden Enden aus gleich: Sein erstes und letztes Feld sind gleich, ebenso das zweite und das vorletzte; ein mittleres Feld ist frei. Was in einem Feld eines solchen Paares ausgeschlossen ist, ist es auch im anderen; jedes Paar wirkt also in zwei Zeilen und zwei Spalten zugleich.

## Even and odd

parity-sentence-even = { $even ->
    [1] Das Feld
   *[other] Jedes Feld
} mit einem Quadrat enthält eine gerade Ziffer.
parity-sentence-odd = { $odd ->
    [1] Das Feld
   *[other] Jedes Feld
} mit einem Kreis enthält eine ungerade Ziffer.
parity-sentence-both = { $even ->
    [1] Das Feld
   *[other] Jedes Feld
} mit einem Quadrat enthält eine gerade Ziffer, { $odd ->
    [1] das Feld
   *[other] jedes Feld
} mit einem Kreis eine ungerade.
parity-spoken-even = { $n ->
    [1] Gerade Ziffer, mit Quadrat: { $cells }
   *[other] Gerade Ziffern, je mit Quadrat: { $cells }
}
parity-spoken-odd = { $n ->
    [1] Ungerade Ziffer, mit Kreis: { $cells }
   *[other] Ungerade Ziffern, je mit Kreis: { $cells }
}
parity-primer = Ein Quadrat bezeichnet eine gerade Ziffer, ein Kreis eine ungerade; Felder ohne Zeichen können beides enthalten. In einem 9×9-Diagramm hat jede Zeile, jede Spalte und jeder Block vier gerade und fünf ungerade Ziffern. Zählen Sie also: Sind vier Felder einer Zeile als gerade bekannt, so sind alle anderen ungerade.
# Where no grid of the book has boxes.
parity-primer--lines = Ein Quadrat bezeichnet eine gerade Ziffer, ein Kreis eine ungerade; Felder ohne Zeichen können beides enthalten. In einem 9×9-Diagramm hat jede Zeile und jede Spalte vier gerade und fünf ungerade Ziffern. Zählen Sie also: Sind vier Felder einer Zeile als gerade bekannt, so sind alle anderen ungerade.

## Parity lines

parity-line-sentence = Entlang { $n ->
    [1] der Paritätslinie
   *[other] jeder Paritätslinie
} wechseln ungerade und gerade Ziffern ab.
parity-line-spoken = Paritätslinie: { $line }
parity-line-primer = Entlang einer Linie mit Kreisen und Quadraten zwischen ihren Feldern wechseln ungerade und gerade Ziffern ab; sie darf mit beiden beginnen. Eine Ziffer darauf legt fest, welche Felder ungerade sind. Zählen Sie, wo die Linie durch eine Zeile oder einen Block läuft: In einem 9×9-Diagramm gibt es vier gerade Ziffern, und so beginnt und endet eine Linie über eine ganze Zeile mit einer ungeraden.
# Where no grid of the book has boxes.
parity-line-primer--lines = Entlang einer Linie mit Kreisen und Quadraten zwischen ihren Feldern wechseln ungerade und gerade Ziffern ab; sie darf mit beiden beginnen. Eine Ziffer darauf legt fest, welche Felder ungerade sind. Zählen Sie, wo die Linie durch eine Zeile läuft: In einem 9×9-Diagramm gibt es vier gerade Ziffern, und so beginnt und endet eine Linie über eine ganze Zeile mit einer ungeraden.

## Parity runs

parity-run-sentence = { $n ->
    [1] Die Zahl
   *[other] Jede Zahl
} hinter einem kleinen = außerhalb des Diagramms sagt, wie viele Ziffern ihrer { $line ->
    [row] Zeile
    [column] Spalte
   *[both] Zeile oder Spalte
}, von dort gezählt, alle gerade oder alle ungerade sind, bevor die Parität wechselt.
parity-run-spoken = { $n ->
    [1] Paritätsfolge
   *[other] Paritätsfolgen
} { $side }: { $clues }
parity-run-primer = Schauen Sie von der Zahl aus die Zeile oder Spalte entlang: So viele Ziffern sind gerade, oder so viele sind ungerade, und die nächste ist von der anderen Art. In einem 9×9-Diagramm hat eine Zeile fünf ungerade Ziffern und vier gerade; eine Folge von 5 ist also ungerade. Ist eine Ziffer einer Folge als gerade oder ungerade bekannt, so sind es alle, und die nächste ist es nicht.

## Peaks and hollows

peaks-sentence-greater = { $greater ->
    [1] Das Feld
   *[other] Jedes Feld
} mit einem Dach enthält eine größere Ziffer als alle Felder, die eine Seite mit ihm gemeinsam haben.
peaks-sentence-smaller = { $smaller ->
    [1] Das Feld
   *[other] Jedes Feld
} mit einer Schale enthält eine kleinere Ziffer als alle Felder, die eine Seite mit ihm gemeinsam haben.
peaks-sentence-both = { $greater ->
    [1] Das Feld
   *[other] Jedes Feld
} mit einem Dach enthält eine größere Ziffer als alle Felder, die eine Seite mit ihm gemeinsam haben, { $smaller ->
    [1] das Feld
   *[other] jedes Feld
} mit einer Schale eine kleinere.
peaks-spoken-greater = { $n ->
    [1] Kuppe, mit Dach: { $cells }
   *[other] Kuppen, je mit Dach: { $cells }
}
peaks-spoken-smaller = { $n ->
    [1] Mulde, mit Schale: { $cells }
   *[other] Mulden, je mit Schale: { $cells }
}
peaks-primer = Ein kleines Dach über einer Ziffer bedeutet, dass sie größer ist als die Ziffern neben, über und unter ihr; eine Schale darunter, dass sie kleiner ist. Die beiden Nachbarn in ihrer Zeile sind verschieden; abseits des Randes ist eine Ziffer unter einem Dach also mindestens 3 und meist viel mehr.

## Pointing cells

pointing-sentence = { $n ->
    [1] Die Ziffer
   *[other] Jede Ziffer
} in einem Feld mit Pfeil sagt, im wievielten Feld in Pfeilrichtung die { $digit } steht; das nächste Feld ist das erste.
pointing-zero = In einem Feld mit Pfeil steht nie eine 0.
pointing-spoken = { $n ->
    [1] Pfeil
   *[other] Pfeile
} { $way ->
    [left] nach links: { $cells }
    [right] nach rechts: { $cells }
    [up] nach oben: { $cells }
   *[down] nach unten: { $cells }
}
pointing-primer = Ein kleiner schwarzer Pfeil in einem Feld weist eine Zeile oder Spalte entlang, und die Ziffer im Feld zählt die Schritte von dort zu einer Ziffer, die die Regel nennt, etwa 9: Steht im Feld eine 3, so steht die 9 drei Schritte weiter. Im Feld selbst steht also nie diese Ziffer und nie mehr, als Felder vor ihm liegen; hinter dem Pfeil kommt sie nicht vor. Zwei Pfeile, die einander im Blick haben, lassen oft nur eine Art zu zählen.

## Corner quadruples

# $several: does some ring hold more than one digit.
quadruple-sentence = { $several ->
    [yes] Die Ziffern { $n ->
        [1] im Ring
       *[other] in jedem Ring
    } kommen in den vier Feldern ringsum vor
   *[no] Die Ziffer { $n ->
        [1] im Ring
       *[other] in jedem Ring
    } kommt in den vier Feldern ringsum vor
}{ $repeats ->
    [yes] , wiederholte entsprechend oft
   *[no] {""}
}.
quadruple-spoken = Ring mit { $digits } an der Ecke von { $cells }
quadruple-primer = Die kleinen Ziffern in einem Ring stehen in den vier Feldern um diese Ecke, jede mindestens so oft, wie sie geschrieben ist; andere Ziffern dürfen auch dort stehen, wenn Platz ist. Ein Ring mit vier Ziffern lässt keinen Platz: Jedes seiner Felder enthält eine davon. Eine zweimal geschriebene Ziffer steht in zwei diagonal gegenüberliegenden Feldern.

## Resting thermometers

resting-thermometer-sentence = Entlang { $n ->
    [1] des Ruhethermometers
   *[other] jedes Ruhethermometers
} fallen die Ziffern von der Kugel zur Spitze nie; sie steigen oder bleiben gleich.
resting-thermometer-spoken = Ruhethermometer, Kugel zuerst: { $line }
resting-thermometer-primer = Ein Ruhethermometer ist als leeres Rohr gezeichnet. Von der umringten Kugel zur Spitze steigen die Ziffern oder bleiben gleich: Jede ist mindestens so hoch wie die vorige. Zwei seiner Felder in derselben Zeile, Spalte oder demselben Block können nicht gleich sein, dort steigen die Ziffern also wirklich: Zählen Sie diese Schritte, um zu sehen, wie hoch die Spitze sein muss und wie niedrig die Kugel.
# Where no grid of the book has boxes.
resting-thermometer-primer--lines = Ein Ruhethermometer ist als leeres Rohr gezeichnet. Von der umringten Kugel zur Spitze steigen die Ziffern oder bleiben gleich: Jede ist mindestens so hoch wie die vorige. Zwei seiner Felder in derselben Zeile oder Spalte können nicht gleich sein, dort steigen die Ziffern also wirklich: Zählen Sie diese Schritte, um zu sehen, wie hoch die Spitze sein muss und wie niedrig die Kugel.

## Rising or falling

rise-or-fall-sentence-none = Von keiner Seite aus bilden die ersten { $number } Ziffern einer Zeile oder Spalte eine steigende oder eine fallende Folge.
rise-or-fall-sentence-rise = Wo { $number } Balken außerhalb des Diagramms zu ihm hin wachsen, steigen die ersten { $number } Ziffern dieser { $line ->
    [row] Zeile
    [column] Spalte
   *[both] Zeile oder Spalte
}, von dort gesehen{ $all ->
    [yes] ; von einer Seite ohne Balken aus bilden die ersten { $number } Ziffern einer Zeile oder Spalte weder eine steigende noch eine fallende Folge
   *[no] {""}
}.
rise-or-fall-sentence-fall = Wo { $number } Balken außerhalb des Diagramms zu ihm hin schrumpfen, fallen die ersten { $number } Ziffern dieser { $line ->
    [row] Zeile
    [column] Spalte
   *[both] Zeile oder Spalte
}, von dort gesehen{ $all ->
    [yes] ; von einer Seite ohne Balken aus bilden die ersten { $number } Ziffern einer Zeile oder Spalte weder eine steigende noch eine fallende Folge
   *[no] {""}
}.
rise-or-fall-sentence-both = Wo { $number } Balken außerhalb des Diagramms zu ihm hin wachsen, steigen die ersten { $number } Ziffern dieser { $line ->
    [row] Zeile
    [column] Spalte
   *[both] Zeile oder Spalte
}, von dort gesehen; wo sie schrumpfen, fallen sie{ $all ->
    [yes] ; von einer Seite ohne Balken aus bilden die ersten { $number } Ziffern einer Zeile oder Spalte weder eine steigende noch eine fallende Folge
   *[no] {""}
}.
rise-or-fall-spoken = { $n ->
    [1] Hang
   *[other] Hänge
} { $side }: { $clues }
rise-or-fall-rises = steigende Balken
rise-or-fall-falls = fallende Balken
rise-or-fall-primer = Balken, die zum Diagramm hin wachsen, bedeuten, dass die nächsten drei Ziffern von dort steigen; schrumpfende, dass sie fallen. Die Balken sind so lang, wie die Ziffern groß sind. Von drei steigenden Ziffern ist in einem 9×9-Diagramm die erste höchstens 7 und die letzte mindestens 3; zwei Anstiege mit gemeinsamem Eckfeld drücken es herab. Sind alle Balken angegeben, so gilt an einem Ende ohne Balken: Die mittlere der drei Ziffern ist die größte oder die kleinste.

## Rising runs

rising-run-sentence = { $n ->
    [1] Die Zahl
   *[other] Jede Zahl
} hinter kleinen Stufen außerhalb des Diagramms sagt, wie viele Ziffern ihrer { $line ->
    [row] Zeile
    [column] Spalte
   *[both] Zeile oder Spalte
} von dort an steigen, bevor eine fällt; die erste zählt mit.
rising-run-spoken = { $n ->
    [1] Steigfolge
   *[other] Steigfolgen
} { $side }: { $clues }
rising-run-primer = Schauen Sie von der Zahl aus die Zeile oder Spalte entlang: Sie sagt, wie viele Ziffern nacheinander steigen, von der nächsten an gezählt. Nach 3 steigen die ersten drei Ziffern, und die vierte ist kleiner als die dritte; nach 1 ist schon die zweite kleiner als die erste. Lange Folgen halten hohe Ziffern vom Rand fern, und die letzte Ziffer einer Folge ist größer als ihre Nachbarn auf beiden Seiten.

## Same-sum lines

same-sum-line-sentence = Entlang { $n ->
    [1] der Gleichsummenlinie
   *[other] jeder Gleichsummenlinie
} haben beliebige { $number } aufeinanderfolgende Felder stets dieselbe Summe.
same-sum-line-spoken = Gleichsummenlinie: { $line }
same-sum-line-primer = Beliebige drei aufeinanderfolgende Felder einer Schienenlinie, oder so viele, wie die Regel sagt, haben stets dieselbe Summe. Rücken Sie um ein Feld weiter: Eine Ziffer verlässt die Summe, eine andere kommt hinzu; also sind die beiden gleich. So enthalten bei drei Feldern das erste, vierte und siebte dieselbe Ziffer, das zweite und fünfte eine andere; was in einem ausgeschlossen ist, ist es in allen.

## Sandwich sums

sandwich-sentence = { $n ->
    [1] Die Zahl
   *[other] Jede Zahl
} zwischen zwei Strichen außerhalb des Diagramms ist die Summe der Ziffern, die zwischen der kleinsten und der größten Ziffer ihrer { $line ->
    [row] Zeile
    [column] Spalte
   *[both] Zeile oder Spalte
} stehen.
sandwich-spoken = { $n ->
    [1] Sandwichsumme
   *[other] Sandwichsummen
} { $side }: { $clues }
sandwich-primer = Die Zahl außerhalb einer Zeile oder Spalte ist die Summe der Ziffern, die zwischen der kleinsten und der größten stehen; in einem 9×9-Diagramm sind diese beiden Brotscheiben 1 und 9, in beliebiger Reihenfolge. Bei der Summe 0 stehen sie nebeneinander, bei der Summe 35 an den beiden Enden. Fragen Sie zuerst, wie viele Ziffern die Summe ergeben können, denn so weit liegen die Brotscheiben auseinander.

## Skyscrapers

skyscraper-sentence = { $n ->
    [1] Die Zahl
   *[other] Jede Zahl
} in einem Haus außerhalb des Diagramms sagt, wie viele Ziffern ihrer { $line ->
    [row] Zeile
    [column] Spalte
   *[both] Zeile oder Spalte
} von dort zu sehen sind; eine höhere Ziffer verdeckt alle niedrigeren hinter ihr.
skyscraper-spoken = { $n ->
    [1] Hochhauszahl
   *[other] Hochhauszahlen
} { $side }: { $clues }
skyscraper-primer = Denken Sie sich jede Ziffer als Haus mit so vielen Stockwerken und schauen Sie von der Zahl aus die Zeile oder Spalte entlang: Sie sagt, wie viele Häuser Sie sehen, denn ein höheres verdeckt alle niedrigeren dahinter. Von einer 1 aus sieht man nur das höchste, es steht also ganz vorn; von einer 9 aus sieht man in einem 9×9-Diagramm alle, sie steigen also an. Fangen Sie mit den größten Zahlen an, die hohe Ziffern fernhalten, und suchen Sie den Platz der höchsten.

## Square blocks

square-block-sentence-magic = { $n ->
    [1] Im Quadratblock
   *[other] In jedem Quadratblock
} haben Zeilen, Spalten und beide Diagonalen dieselbe Summe; Ziffern dürfen sich wiederholen.
square-block-sentence-rows = { $n ->
    [1] Im Quadratblock
   *[other] In jedem Quadratblock
} haben alle Zeilen dieselbe Summe; Ziffern dürfen sich wiederholen.
square-block-sentence-columns = { $n ->
    [1] Im Quadratblock
   *[other] In jedem Quadratblock
} haben alle Spalten dieselbe Summe; Ziffern dürfen sich wiederholen.
square-block-sentence = { $n ->
    [1] Im Quadratblock
   *[other] In jedem Quadratblock
} haben folgende Reihen dieselbe Summe: { $lines }; Ziffern dürfen sich wiederholen.
square-block-lines-magic = bei einem Stern Zeilen, Spalten und Diagonalen
square-block-lines-rows = bei waagerechten Strichen die Zeilen
square-block-lines-columns = bei senkrechten Strichen die Spalten
square-block-spoken-magic = Magischer Block: { $cells }
square-block-spoken-rows = Block mit gleichen Zeilen: { $cells }
square-block-spoken-columns = Block mit gleichen Spalten: { $cells }
square-block-primer = Eine Doppellinie rahmt einen Quadratblock, und ein Zeichen sagt, was darin dieselbe Summe hat: waagerechte Striche die Zeilen, senkrechte Striche die Spalten, ein Stern die Zeilen, die Spalten und beide Diagonalen. Ziffern dürfen sich wiederholen, wo Zeilen, Spalten und Blöcke es zulassen. Die Summe eines Blocks mit Stern ist das Dreifache seiner mittleren Ziffer. Ist ein Quadratblock zugleich ein Block eines 9×9-Diagramms, so ergeben drei gleiche Zeilen je 15.
# Where no grid of the book has boxes.
square-block-primer--lines = Eine Doppellinie rahmt einen Quadratblock, und ein Zeichen sagt, was darin dieselbe Summe hat: waagerechte Striche die Zeilen, senkrechte Striche die Spalten, ein Stern die Zeilen, die Spalten und beide Diagonalen. Ziffern dürfen sich wiederholen, wo Zeilen und Spalten es zulassen. Die Summe eines Blocks mit Stern ist das Dreifache seiner mittleren Ziffer.

## Sum marks

sum-marks-sentence-five = { $five ->
    [1] Das V
   *[other] Jedes V
} verbindet Ziffern mit der Summe 5{ $all ->
    [yes] ; Nachbarn ohne Zeichen haben weder die Summe 5 noch 10
   *[no] {""}
}.
sum-marks-sentence-ten = { $ten ->
    [1] Das X
   *[other] Jedes X
} verbindet Ziffern mit der Summe 10{ $all ->
    [yes] ; Nachbarn ohne Zeichen haben weder die Summe 5 noch 10
   *[no] {""}
}.
sum-marks-sentence-both = { $five ->
    [1] Das V
   *[other] Jedes V
} verbindet Ziffern mit der Summe 5, { $ten ->
    [1] das X
   *[other] jedes X
} Ziffern mit der Summe 10{ $all ->
    [yes] ; Nachbarn ohne Zeichen haben weder die Summe 5 noch 10
   *[no] {""}
}.
# All marks are given, and there are none.
sum-marks-sentence-none = Felder mit einer gemeinsamen Seite haben nie die Summe 5 oder 10.
sum-marks-spoken-five = { $n ->
    [1] Buchstabe V
   *[other] Buchstaben V
} { $where }
sum-marks-spoken-ten = { $n ->
    [1] Buchstabe X
   *[other] Buchstaben X
} { $where }
sum-marks-primer = Wie bei römischen Zahlen ist V 5 und X 10: Die beiden Ziffern neben dem Buchstaben ergeben zusammen diese Zahl. Ein V verbindet 1 und 4 oder 2 und 3, nichts über 4 berührt es also; die 5 berührt nie ein X, denn daneben müsste noch eine 5 stehen. Sind alle Zeichen angegeben, so ist auch eine Grenze ohne Buchstaben ein Hinweis: Ihre Ziffern ergeben weder 5 noch 10.

## Thermometers

thermometer-sentence = Entlang { $n ->
    [1] des Thermometers
   *[other] jedes Thermometers
} steigen die Ziffern von der Kugel zur Spitze.
thermometer-spoken = Thermometer, Kugel zuerst: { $line }
thermometer-primer = Die Ziffern steigen mit jedem Schritt von der runden Kugel zur Spitze, dürfen aber Ziffern überspringen. Ein langes Thermometer lässt wenig Spielraum: In einem 9×9-Diagramm enthält das dritte von sechs Feldern mindestens 3 und höchstens 6. Fangen Sie mit den längsten an und mit denen, die eine Zeile oder einen Block kreuzen, wo schon hohe oder niedrige Ziffern stehen.
# Where no grid of the book has boxes.
thermometer-primer--lines = Die Ziffern steigen mit jedem Schritt von der runden Kugel zur Spitze, dürfen aber Ziffern überspringen. Ein langes Thermometer lässt wenig Spielraum: In einem 9×9-Diagramm enthält das dritte von sechs Feldern mindestens 3 und höchstens 6. Fangen Sie mit den längsten an und mit denen, die eine Zeile kreuzen, wo schon hohe oder niedrige Ziffern stehen.

## Windows

windows-sentence = Jedes getönte Fenster enthält jede Ziffer einmal.
windows-spoken = Fenster: { $cells }
windows-primer = Die getönten Fenster sind weitere Blöcke, ein Feld vom Rand und ein Feld voneinander entfernt: Jedes enthält jede Ziffer einmal. Die Zeilen 2 bis 4 enthalten jede Ziffer dreimal, und zwei davon stehen in den beiden Fenstern darin; die neun Felder neben den Fenstern enthalten also auch jede Ziffer einmal. Fünf solche versteckten Neunergruppen liegen zwischen und um die Fenster eines 9×9-Diagramms; an ihnen öffnet sich das Rätsel.

## X-sums

x-sum-sentence = { $n ->
    [1] Die Zahl
   *[other] Jede Zahl
} hinter einem kleinen × außerhalb des Diagramms ist die Summe der ersten X Ziffern ihrer { $line ->
    [row] Zeile
    [column] Spalte
   *[both] Zeile oder Spalte
}, von dort gesehen; X ist die erste von ihnen.
x-sum-zero = Ist X gleich 0, so ist die Summe 0.
x-sum-spoken = { $n ->
    [1] X-Summe
   *[other] X-Summen
} { $side }: { $clues }
x-sum-primer = Die Ziffer, die der Zahl am nächsten steht, X, sagt, wie viele Ziffern zu addieren sind, sie selbst eingeschlossen: 3, 8 und 1 vorn ergeben 12, was auch folgt. Kleine Summen brauchen ein kleines X; 45 braucht die 9. Fragen Sie zuerst, mit welchem X die Summe überhaupt zu erreichen ist: In einem 9×9-Diagramm verlangt die Summe 10 vorn eine 2, 3 oder 4.

## Latin squares

latin-primer = In einem lateinischen Quadrat zählen nur Zeilen und Spalten: Jede enthält jede Ziffer einmal, mehr verlangt das Diagramm nicht. Jede Ziffer steht also in jeder Zeile einmal, und keine zwei ihrer Plätze liegen in derselben Spalte. Fehlt eine Ziffer in zwei Zeilen und hat sie dort ihre Plätze in denselben zwei Spalten, so steht sie in diesen Spalten nirgends sonst. Sehen Sie dann, was die Zeichen beitragen.
zero-primer = Beginnen die Ziffern eines Diagramms mit 0, so gilt jede Regel, wie sie dasteht, und eine 0 trägt zu einer Summe nichts bei. Die Beispiele auf diesen Seiten gelten für Ziffern ab 1; ihre Zahlen ändern sich also: Eine Zeile aus neun Feldern mit 0 bis 8 ergibt 36 statt 45; sie hat fünf gerade und vier ungerade Ziffern; zwei Felder mit der Summe 3 enthalten 0 und 3 oder 1 und 2.
overlap-primer = Mehrere Diagramme bilden ein Rätsel: Jedes folgt seinen eigenen Regeln, und wo sich zwei überlappen, gehört eine Ziffer zu beiden. Beginnen Sie dort, wo die Vorgaben am dichtesten stehen, und bleiben Sie in einem Diagramm, solange es etwas hergibt; nehmen Sie dann mit ins nächste, was Sie in den gemeinsamen Blöcken gefunden haben. Ein Block, den zwei Diagramme teilen, ist oft der Schlüssel zu beiden: Seine Ziffern müssen zu den Zeilen und Spalten beider passen.
holes-primer = Ein schwarzes Feld enthält keine Ziffer und gehört zu keiner Zeile und keiner Spalte. In den übrigen Feldern enthält jede Zeile und jede Spalte weiterhin jede Ziffer einmal; wo eine Ziffer nur noch wenige Plätze hat, ist sie bald gefunden. Ziffern zu beiden Seiten eines schwarzen Feldes sehen sich in ihrer Zeile oder Spalte, berühren sich aber nicht.
