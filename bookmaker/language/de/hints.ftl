### Three hints for a puzzle: where to look, what to look for, the step itself.

hint-where = Bei { $filled } gefüllten Feldern: { $where }.
hint-where-at-start = Zu Beginn: { $where }.
hint-cells = { COUNT($cells) ->
    [one] das Feld { $cells }
   *[other] die Felder { $cells }
}
hint-around = die Felder um { $cell }

hint-what-last-cell = Das letzte freie Feld.
hint-what-hidden-single = Eine Ziffer, die dort nur einen Platz hat.
hint-what-naked-single = Ein Feld dort, in dem nur eine Ziffer möglich ist.
hint-what-fixed = Die Ziffer, die übrig bleibt.
hint-what-mark = Ziffern, die { GENDER($noun) ->
    [feminine] die
    [neuter] das
   *[masculine] der
} { $noun } ausschließt.
hint-what-mark--king = Ziffern, die ein Königszug ausschließt.
hint-what-mark--knight = Ziffern, die ein Springerzug ausschließt.
hint-what-mark--barred-sums = Ziffern, die mit einem Nachbarn eine verbotene Summe ergäben.
hint-what-mark--no-doubles = Ziffern, die neben ihrer Hälfte oder ihrem Doppelten stünden.
hint-what-mark--non-consecutive = Ziffern, die neben der nächstgrößeren oder nächstkleineren stünden.
hint-what-locked-candidates = Eine Ziffer, deren Plätze dort alle außerdem gemeinsam in { house-any } liegen.
hint-what-naked-pair = Zwei Felder, in denen nur dieselben zwei Ziffern möglich sind.
hint-what-naked-triple = Drei Felder, für die zusammen nur drei Ziffern bleiben.
hint-what-naked-quad = Vier Felder, für die zusammen nur vier Ziffern bleiben.
hint-what-hidden-pair = Zwei Ziffern mit denselben zwei Plätzen.
hint-what-hidden-triple = Drei Ziffern, die sich drei Plätze teilen.
hint-what-hidden-quad = Vier Ziffern, die sich vier Plätze teilen.
hint-what-x-wing = Eine Ziffer, die in zwei Zeilen nur in denselben zwei Spalten Platz hat, oder umgekehrt: ein X-Wing.
hint-what-swordfish = Eine Ziffer, die in drei Zeilen nur in denselben drei Spalten Platz hat, oder umgekehrt: ein Schwertfisch.
hint-what-jellyfish = Eine Ziffer, die in vier Zeilen nur in denselben vier Spalten Platz hat, oder umgekehrt: eine Qualle.
hint-what-seen-by-all-places = Ein Feld, das alle Plätze einer Ziffer sieht.
hint-what-either-way = Ein Kandidat, den dort keine Wahl bestehen lässt.
hint-what-what-if = Eine Ziffer, die schnell zu einem Widerspruch führt.
# A pattern that is named by its name alone.
hint-what = { $technique }.
