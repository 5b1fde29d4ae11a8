### What is read aloud to those who do not see a page: grids, pictures, links, and the editions in text and for braille.

row-numbered = Zeile { $number }
column-numbered = Spalte { $number }
cell-given = Vorgabe { $digit }
cell-empty = leer
# Between overlapping grids.
cell-none = kein Feld
cell-candidates = { $n ->
    [1] Kandidat { $digits }
   *[other] Kandidaten { $digits }
}
# A cell to fill, in a table read aloud.
blank = leer
row-digits = Zeile { $number }: { $digits }
row-holds = Zeile { $number } enthält { $digits }
cell-at = Zeile { $row } Spalte { $column }
    .short = z{ $row } s{ $column }
cell-shaded = { $cell } ist getönt.
check-cells = Felder der Kontrollzeile: { $cells }.
profile-of = Verlauf der Lösung zu { $n ->
    [1] einem Zeitpunkt
   *[other] { $number } Zeitpunkten
}
profile-narrow = Verlauf der Lösung zu { $n ->
    [1] einem Zeitpunkt
   *[other] { $number } Zeitpunkten
}, eng { COUNT($at) ->
    [one] zum Zeitpunkt { $at }
   *[other] zu den Zeitpunkten { $at }
}
sample-of = Beispiel: { $kind }
code-of-link = Code des Links { $link }
link-of-puzzle = Link zu diesem Rätsel: { $link }
look-at = Hier hinschauen: { $cells }
look-along = Hier entlangschauen: { $cells }
filled-next = Wird als Nächstes gefüllt: { $cell }
eliminated = Gestrichen: { $digit } in { $cells }
supposed = Angenommen: { $digits } in { $cell }
in-round = In Runde { $round }: { $digits } in { $cell }
field-at = Zeile { $row }, Spalte { $column }
bands-counted = Rätsel nach Schwierigkeit: { $counts }.
band-count = { $band } { $count }
sample-grid = Beispieldiagramm
tear-off-edge = Abreißkante
cover-art = Umschlagbild

## Web page and e-book

skip-to-book = Direkt zum Buch
table-of-key = Lösung zu Rätsel { $number }, die Ziffern
table-of-puzzle = Rätsel { $number }, die Ziffern
head-row = Zeile { $number }
head-column = Spalte { $number }
cover = Umschlag
cover-of = Umschlag: { $title }
title-page = Titelseite
puzzles = Rätsel
printed-pages = Gedruckte Seiten
landmarks = Orientierungspunkte
grid-in-words = Das Diagramm in Worten
grid-as-table = Das Diagramm als Tabelle
picture-told-in-words = Das Diagramm von Rätsel { $number }, unten in Worten und als Tabelle wiedergegeben
picture-told-as-table = Das Diagramm von Rätsel { $number }, unten als Tabelle wiedergegeben
subject = Zahlenrätsel
accessibility = Jedes Diagramm ist ein Bild und eine Tabelle mit Überschriften für Zeilen und Spalten. Die Zeichen jedes Rätsels sind daneben in Worten beschrieben, so dass alle Rätsel lösbar sind, ohne ein Bild zu sehen. Die Tipps öffnen sich einzeln; Links führen von jedem Rätsel zu seinen Tipps und seiner Lösung und zurück.

## The edition for braille displays

# z and s are what rows and columns are shortened to here, and in all attributes “short”, which are for braille.
braille-legend = Eine Textzeile hat höchstens { $cells } Zeichen, von denen jedes in Computerbraille eine Braillezelle belegt. Eine fortgesetzte Textzeile ist eingerückt. In einem Diagramm ist jedes Zeichen ein Feld, ein Punkt ein leeres{ $boxes ->
    [yes] ; zwischen Blöcken stehen Leerzeichen
   *[no] {""}
}. z ist eine Zeile, s eine Spalte: z2 s3 ist das Feld in Zeile 2, Spalte 3, und z2 s3-5 sind die drei Felder von dort bis Spalte 5.
