### Three hints for a puzzle: where to look, what to look for, the step itself. Glossary terms are found by these words.

hint-where = Met { $filled } vakjes ingevuld: { $where }.
hint-where-at-start = Aan het begin: { $where }.
hint-cells = { COUNT($cells) ->
    [one] het vakje { $cells }
   *[other] de vakjes { $cells }
}
hint-around = de vakjes rond { $cell }

hint-what-last-cell = Het laatste lege vakje.
hint-what-hidden-single = Een cijfer dat daar maar één plaats heeft.
hint-what-naked-single = Een vakje daar waarin maar één cijfer kan.
hint-what-fixed = Het cijfer dat overblijft.
hint-what-mark = { GENDER($noun) ->
    [neuter] Cijfers die het { $noun } uitsluit.
   *[common] Cijfers die de { $noun } uitsluit.
}
hint-what-mark--king = Cijfers die de koningszet uitsluit.
hint-what-mark--knight = Cijfers die de paardensprong uitsluit.
hint-what-mark--barred-sums = Cijfers die met een buur een verboden som geven.
hint-what-mark--no-doubles = Cijfers die naast hun helft of hun dubbele zouden staan.
hint-what-mark--non-consecutive = Cijfers die naast het eerstvolgende hogere of lagere cijfer zouden staan.
hint-what-locked-candidates = Een cijfer waarvan alle plaatsen daar nog een tweede { house-any } delen.
hint-what-naked-pair = Twee vakjes waarin dezelfde twee cijfers over zijn.
hint-what-naked-triple = Drie vakjes waarin samen drie cijfers over zijn.
hint-what-naked-quad = Vier vakjes waarin samen vier cijfers over zijn.
hint-what-hidden-pair = Twee cijfers met dezelfde twee plaatsen.
hint-what-hidden-triple = Drie cijfers die drie plaatsen delen.
hint-what-hidden-quad = Vier cijfers die vier plaatsen delen.
hint-what-x-wing = Een cijfer dat twee rijen alleen in dezelfde twee kolommen hebben, of andersom: een X-wing.
hint-what-swordfish = Een cijfer dat drie rijen alleen in dezelfde drie kolommen hebben, of andersom: een zwaardvis.
hint-what-jellyfish = Een cijfer dat vier rijen alleen in dezelfde vier kolommen hebben, of andersom: een kwal.
hint-what-seen-by-all-places = Een vakje dat alle plaatsen van een cijfer ziet.
hint-what-either-way = Een cijfer dat daar bij geen enkele keuze blijft staan.
hint-what-what-if = Een cijfer dat al snel op een tegenspraak uitloopt.
hint-what = { $technique }.
