### The book's own words: headings, the page on how to read it, what stands around puzzles, keys and hints. Readers are “Sie”.

## Headings

heading-contents = Inhalt
heading-foreword = Vorwort
heading-guide = Wie dieses Buch zu lesen ist
heading-text-guide = Wie diese Ausgabe zu lesen ist
heading-primer = Regelkunde: Regel für Regel
heading-hints = Tipps
heading-glossary = Begriffe in den Tipps
heading-times = Zeiten
heading-keys = Lösungen
heading-answer-key = Lösungsschlüssel
heading-credits = Nachweise
heading-index = Register
heading-imprint = Impressum
heading-notes = Notizen
heading-latin = Lateinische Quadrate
heading-zero = Ziffern ab 0
heading-by-setter = Nach Autor
heading-by-rule = Nach Regel
# A title with what follows from it: “Lanterns: Answer key”.
titled = { $title }: { $what }
chapter-titled = Kapitel { $number }: { $title }

## The five bands of difficulty, gentlest first

band-1 = Bummel
band-2 = Ausflug
band-3 = Wanderung
band-4 = Aufstieg
band-5 = Gipfel

## How to read the book

cell-names = Felder heißen nach Zeile und Spalte: r5c2 liegt in Zeile 5 (r), Spalte 2 (c).
houses-explained = Eine Einheit ist eine Zeile, eine Spalte{ $areas ->
    [boxes] , ein Block oder Gebiet
    [regions] , ein Gebiet
   *[none] {""}
} oder sonst eine Gruppe von Feldern, in der sich keine Ziffer wiederholt.
guide-ridge = Neben jedem Titel zeigt ein Grat mit fünf Gipfeln, wie schwer das Rätsel ist. Er füllt sich von links, Gipfel um Gipfel, von { $first } bis { $last }. Die Zahl dabei ist die Schwierigkeit: Die Ziffer vor dem Komma zählt die Gipfel, die Ziffer danach sagt, wie nah der nächste ist.
guide-order-difficulty = Die Rätsel sind nach Schwierigkeit geordnet, die leichtesten zuerst.
guide-order-listed = Die Rätsel stehen in der Reihenfolge, die der Herausgeber gewählt hat.
guide-order-chapters = Die Rätsel sind in Kapitel geordnet, in jedem die leichtesten zuerst.
guide-rules = Die Regeln bei einem Diagramm sind vollständig und gelten alle zugleich. Jede Art von Zeichen ist neben dem Satz, der sie erklärt, noch einmal abgebildet. Die Diagramme sind für den Bleistift gemacht: Über jedes Zeichen lässt sich schreiben.
# Rules that all puzzles of a chapter share are said where it opens.
guide-rules-shared = Die Regeln bei einem Diagramm und am Anfang seines Kapitels sind vollständig und gelten alle zugleich. Jede Art von Zeichen ist neben dem Satz, der sie erklärt, noch einmal abgebildet. Die Diagramme sind für den Bleistift gemacht: Über jedes Zeichen lässt sich schreiben.
guide-proved = Jedes Rätsel hat genau eine Lösung: Vor dem Druck wurden alle Möglichkeiten geprüft und die Lösung dann mit den Regeln verglichen.
guide-draft = Dies ist ein Entwurf: Ein Rätsel darin kann keine oder mehrere Lösungen haben.
guide-hints = Wenn Sie nicht weiterkommen, helfen drei Tipps zu jedem Rätsel: wohin schauen, wonach suchen und der nächste Schritt. Sie stehen vor den Lösungen.
guide-hints-in-pad = Wenn Sie nicht weiterkommen, helfen drei Tipps zu jedem Rätsel: wohin schauen, wonach suchen und der nächste Schritt. Sie stehen nach dem letzten Blatt.
guide-keys = Die Lösungen stehen am Ende, die Vorgaben fett gedruckt.
guide-keys-in-pad = Die Lösungen stehen auf der Rückseite der Blätter, die Vorgaben fett gedruckt.
guide-profile = Die Linie unter jeder Lösung zeichnet den Lösungsweg nach und steigt, wo ein Schritt mehr Suche verlangt; Pfeilspitzen bezeichnen die Stellen, an denen man leicht stecken bleibt.
guide-credits = Nach den Lösungen folgen die Nachweise: wann Rätsel zuerst erschienen und wer den Abdruck erlaubt hat.
guide-credits-in-pad = Am Ende folgen die Nachweise: wann Rätsel zuerst erschienen und wer den Abdruck erlaubt hat.
guide-large = In den größten Diagrammen folgen auf die Ziffer 9 Buchstaben: A steht für 10, B für 11 und so weiter. I und O fehlen, weil sie wie 1 und 0 aussehen.
guide-text-marks = Die Zeilen sind von oben nach unten nummeriert, die Spalten von links nach rechts; „leer“ ist ein Feld, das zu füllen ist. Werden Zeilen und Spalten zusammen genannt, so sind alle Felder gemeint, in denen sie sich kreuzen. Die Felder einer Linie werden in ihrer Reihenfolge genannt; Spalten oder Zeilen können dabei rückwärts laufen.
guide-text-below = Unter jeder Regel stehen ihre Zeichen.
guide-text-pictured = Unter dem Bild ist jedes Diagramm noch einmal in Worten und als Tabelle wiedergegeben, zum Aufklappen.
guide-text-bands = Die Stufe eines Rätsels, von { $first } bis { $last }, sagt, wie schwer es ist. Seine Schwierigkeit ist eine Zahl: Die Ziffer vor dem Komma zählt die Stufen, die Ziffer danach sagt, wie nah die nächste ist.

## What a grid asks

grid-asks = Füllen Sie das Diagramm so aus, dass { $houses ->
    [lines] jede Zeile und jede Spalte
    [boxes] jede Zeile, jede Spalte und jeder Block
   *[regions] jede Zeile, jede Spalte und jedes umrandete Gebiet
} { $symbols } je einmal enthält.
# The same where several grids overlap.
grids-ask = Füllen Sie alle Diagramme so aus, dass jede Zeile, jede Spalte und jeder Block jedes Diagramms { $symbols } je einmal enthält. Ein Feld, das zu mehreren Diagrammen gehört, zählt in jedem davon.
holes-stand = Schwarze Felder bleiben leer.
# “1 to 9”, kept on one line.
symbols-digits = die Ziffern { $low } bis { $high }
symbols-and-letter = die Ziffern { $low } bis { $high } und den Buchstaben { $last }
symbols-and-two-letters = die Ziffern { $low } bis { $high } und die Buchstaben { $first } und { $last }
symbols-and-letters = die Ziffern { $low } bis { $high } und die Buchstaben { $first } bis { $last }
symbols-and-letters-without = die Ziffern { $low } bis { $high } und die Buchstaben { $first } bis { $last } ohne { $without }
symbols-letters = die Buchstaben { $letters }
# “Ziffer” and “Buchstabe” differ in gender, so there is no letters-for-digits.
letters-stand = Hier stehen Buchstaben anstelle von Ziffern.
# A word that a solution spells, told with its key.
row-spells = Zeile { $number } ergibt das Wort { $word }
    .short = z{ $number } ergibt das Wort { $word }
column-spells = Spalte { $number } ergibt das Wort { $word }
    .short = s{ $number } ergibt das Wort { $word }
cells-spell = die Felder von { $first } bis { $last } ergeben das Wort { $word }
boxes-have = Die Blöcke haben { $high } und { $wide }.
rows-counted = { $n ->
    [1] eine Zeile
   *[other] { $number } Zeilen
}
columns-counted = { $n ->
    [1] eine Spalte
   *[other] { $number } Spalten
}
region-at = Gebiet { $number }: { $cells }
# Where one of several overlapping grids lies.
grid-at = Diagramm { $grid }: Zeilen { $top } bis { $bottom }, Spalten { $left } bis { $right }
    .short = Diagramm { $grid }: z{ $top }-{ $bottom }, s{ $left }-{ $right }
grid-boxes = Klassisch
grid-regions = Unregelmäßig
grid-lines = Lateinisches Quadrat
grids-overlap = Überlappende Diagramme
grid-holes = Schwarze Felder
# $rules: names of rules, in the nominative; hence the plus sign.
latin-with = Lateinisches Quadrat + { $rules }
rule-titled = { $title }: { $sentence }
# A rule that holds in some of several grids, $grids being their letters.
rule-in-grids = { $n ->
    [1] Diagramm { $grids }
   *[other] Diagramme { $grids }
}: { $sentence }

## Around a puzzle

puzzle-numbered = Rätsel { $number }
puzzle-named = Rätsel { $name }
key-to = Lösung zu Rätsel { $name }
hints-for = Tipps zu Rätsel { $name }
back-to = Zurück zu Rätsel { $number }
difficulty-of = Schwierigkeit { $figure }
band-said = { $band }, Stufe { $number } von 5, Schwierigkeit { $figure }.
set-by = Von { $setter }.
puzzles-by = Rätsel von { $setters }
edited-by = Herausgegeben von { $editor }
first-shown = zuerst erschienen { $date }
points = { $n ->
    [1] 1 Punkt
   *[other] { $n } Punkte
}
flaw-none = Keine Lösung
flaw-several = Mehr als eine Lösung
flaw-undecided = Nicht entschieden
draft = ENTWURF
time = Zeit
isbn = ISBN { $number }
isbn-printed = ISBN { $number } (gedruckt)
isbn-ebook = ISBN { $number } (E-Book)
index-note = Die Zahlen sind Rätselnummern.
# The number of the page follows.
key-on-page = Lösung auf Seite
hints-on-page = Tipps auf Seite
page = Seite
terms-on-page = Neue Begriffe erklärt auf Seite
steps-counted = { $n ->
    [1] 1 Schritt
   *[other] { $number } Schritte
}
rules-face-grid = Die Regeln des nächsten Rätsels stehen dem Diagramm gegenüber.
puzzles-counted = { $n ->
    [1] ein Rätsel
   *[other] { $number } Rätsel
}

# On the opening page of a chapter, before rules.
rules-of-chapter = Für jedes Rätsel dieses Kapitels:
belongs-to = Dieses Buch gehört
begun-on = Begonnen am
finished-on = Beendet am

## Hints

hints-note = Zu jedem Rätsel gibt es drei Tipps zur ersten schwierigen Stelle. Jeder verrät mehr als der vorige, und der nächste ist nie im Blick. Felder heißen nach Zeile und Spalte: r5c2 liegt in Zeile 5 (r), Spalte 2 (c).
hints-note-sheet = Zu jedem Rätsel gibt es drei Tipps zur ersten schwierigen Stelle. Jeder verrät mehr als der vorige: Decken Sie die folgenden mit einem Blatt Papier ab. Felder heißen nach Zeile und Spalte: r5c2 liegt in Zeile 5 (r), Spalte 2 (c).
hints-note-text = Zu jedem Rätsel gibt es drei Tipps zur ersten schwierigen Stelle. Jeder verrät mehr als der vorige. Öffnen Sie nur den, den Sie brauchen.
hint-level-1 = Wohin schauen
hint-level-2 = Wonach suchen
hint-level-3 = Der nächste Schritt
hints-level-1 = Tipps: wohin schauen
hints-level-2 = Tipps: wonach suchen
hints-level-3 = Tipps: der nächste Schritt
hints-overleaf-2 = Die zweiten Tipps stehen umseitig.
hints-overleaf-3 = Die dritten Tipps stehen umseitig.
# Where a hint leads to.
hint-leads-2 = zweiter Tipp zu Rätsel { $number }
hint-leads-3 = dritter Tipp zu Rätsel { $number }
hint-leads-key = Lösung zu Rätsel { $number }
hint-leads-puzzle = Rätsel { $number }

## Handouts and contests

name = Name
date = Datum
copy-of = Exemplar { $number } von { $count }
check-row = Ist ein Diagramm fertig, so übertragen Sie die Ziffern der mit Buchstaben bezeichneten Felder in die Kästchen der Kontrollzeile. Nach diesen wird Ihr Blatt gewertet.
marker-sheet = Wertungsblatt
marker-help = Legen Sie die Kontrollzeilen eines Blatts neben diese. Stimmt eine Zeile überein, so zählen ihre Punkte sofort; weicht eine ab oder wirkt ein Diagramm unfertig, so vergleichen Sie es mit der Lösung auf der Rückseite.
# $points: how many there are to win.
of-points = von { $points }
total-of = Summe von { $points }
minutes = Minuten
place = Platz
total = Summe

## Covers

cover-count = { $number } Rätsel { $n ->
    [1] mit genau einer Lösung.
   *[other] mit jeweils genau einer Lösung.
}
cover-sample = Nr. { $number }
# After a large figure.
cover-puzzles = { $n ->
    [1] Rätsel
   *[other] Rätsel
}
cover-kinds = { $n ->
    [1] Regelart
   *[other] Regelarten
}

## The presenter’s crib

crib = Spickzettel zum Vortrag
crib-steps = Die Zahlen am Rand zählen die Schritte des Lösungswegs.
crib-look = hier hinschauen
crib-look-along = hier entlangschauen
crib-next = wird als Nächstes gefüllt
crib-eliminated = gestrichen
crib-supposed = angenommen
crib-step = Schritt { $first }
crib-run = Schritte { $first }–{ $last }
crib-follows = was folgt, in dieser Reihenfolge
cells-filled = { $number } Felder gefüllt
start = Der Anfang
solution = Die Lösung
story-set-by = { $title }, von { $setter }
story-setter = von { $setter }
story-crux = Der schwierige Augenblick
story-onwards = Wie es weitergeht
story-ending = Bis zum Schluss

## The chart of all rules

chart = Die Regeln und ihre Zeichen
chart-subject = Jede Regelart mit ihrem Zeichen und ihrem Satz
chart-lines = Entlang von Linien
chart-cells = In Feldern und Flächen
chart-borders = Zwischen Feldern und an Ecken
chart-outside = Außerhalb des Diagramms
chart-whole = Im ganzen Diagramm, ohne Zeichen
