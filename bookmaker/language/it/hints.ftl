### Three hints for a puzzle: where to look, what to look for, the step itself.

hint-where = Con { $filled } caselle riempite: { $where }.
hint-where-at-start = All’inizio: { $where }.
hint-cells = { COUNT($cells) ->
    [one] la casella { $cells }
   *[other] le caselle { $cells }
}
hint-around = le caselle intorno a { $cell }

hint-what-last-cell = L’ultima casella vuota.
hint-what-hidden-single = Una cifra che lì ha un solo posto.
hint-what-naked-single = Una casella che lì ammette una sola cifra.
hint-what-fixed = La cifra che resta.
hint-what-mark = Cifre escluse { CASE($noun, "da") }.
hint-what-mark--barred-sums = Cifre che con una vicina farebbero una somma vietata.
hint-what-mark--no-doubles = Cifre che starebbero accanto alla loro metà o al loro doppio.
hint-what-mark--non-consecutive = Cifre che starebbero accanto alla cifra precedente o successiva.
hint-what-locked-candidates = Una cifra i cui posti, lì, stanno tutti anche in { house-any.other }.
hint-what-naked-pair = Due caselle a cui restano solo le stesse due cifre.
hint-what-naked-triple = Tre caselle a cui restano in tutto tre cifre.
hint-what-naked-quad = Quattro caselle a cui restano in tutto quattro cifre.
hint-what-hidden-pair = Due cifre che hanno gli stessi due posti.
hint-what-hidden-triple = Tre cifre che si dividono tre posti.
hint-what-hidden-quad = Quattro cifre che si dividono quattro posti.
hint-what-x-wing = Una cifra che due righe hanno solo nelle stesse due colonne, o viceversa: un X-wing.
hint-what-swordfish = Una cifra che tre righe hanno solo nelle stesse tre colonne, o viceversa: un pesce spada.
hint-what-jellyfish = Una cifra che quattro righe hanno solo nelle stesse quattro colonne, o viceversa: una medusa.
hint-what-seen-by-all-places = Una casella che vede tutti i posti di una cifra.
hint-what-either-way = Una cifra che nessuna scelta vi lascia possibile.
hint-what-what-if = Una cifra che porta presto a una contraddizione.
hint-what = { $technique }.
