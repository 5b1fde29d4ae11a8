"""How much looking a step takes: the formula of the grade, its sources and its limits.

Effort is counted in *looks*: cells a person looks at before the next step is found. Finding the first of m things
among L places looked at in random order takes (L + 1) / (m + 1) looks on average; here each opening counts by how
visible it is.

**Placing a digit**, L cells being empty:

    looks = (L + 1) / (misses + Σ visible)

over all openings there are now. An opening's visibility is the sum over the ways to see it: the last empty cell of a
house 2, a hidden single in a box 2, a hidden single in a row, column or added house 1.2, a naked single 0.1; five
times that for the digit just written, since people go on with a digit while it gives something. `misses` is 0.5.
Which opening is found first is chance in proportion to visibility; the effort is the mean over sixteen solvers whose
luck belongs to the cells (`solvers.py`), and so exactly repeatable, and the same however the grid is turned.

**Striking candidates**, when no digit can be placed: of the lowest rung of the ladder that finds anything, with n
findings,

    looks = 4 · (1 + reach) · (L + 1) / (n + 1)

`reach` is how far a person must think ahead (`Finding.reach`): 0 for a pattern seen at once, the links of a chain, the
rounds of a what-if. Of a rung only the findings of the least reach count; all of them are struck, and singles are
looked for again.

**Effort** is the sum over all steps.

Sources. The looking model, and visibilities of 2, 2, 1.2 and 0.1, were fitted to people's mean solving times before
this project began; the factor for the digit just written, the sum over ways to see, `misses` and the 4 were chosen here
on 800 classic puzzles with the mean time of those who finished them, and for 177 a published difficulty (S.-W. Wang,
IEEE Access 12, 2024, 104254–104262, CC0; puzzles with even ids), by cross-validation: `tests/benchmarks/
grade_agreement.py` prints it, beside the measures of R. Pelánek (arXiv 1403.7373, 2014), whose two ideas - how few
openings there are, how hard the hardest deductions are - live on in the two parts of the sum.

A what-if's rounds write all singles at once, then read all marks at once, each as a whole (`follow.py`).

Limits. Only classic 9×9 puzzles have human data behind them, solved on screens, timed with pauses and only where
people finished; nine in ten needed nothing but singles. The ladder above the singles has little data behind its order
(72 puzzles), the rungs of the variants' own deductions have none: they are set by how many constraints must be held
together (N. Lee, G. Goodwin, P. Johnson-Laird, Thinking & Reasoning 14, 2008). Bands of different families are
therefore not comparable as minutes are.

One more given may make a puzzle harder by this measure: it can change which rung finds something first, and from there
the path is another. Of 3,000 cases 0.6 % rose by more than 5 %, and two by half; all large rises were of puzzles that
need chains. Redundant rules are not free either: a thermometer that is never needed still shows cells that see each
other and bounds that are struck at once, where a chain was wanted without it. Where singles suffice, four needless
thermometers left 159 of 168 classics within 5 %, and made the rest easier; where more is needed, hardly any (2 of 32).
That is how the marks help people, too: a puzzle is graded with everything that can be seen on the page.
`tests/benchmarks/grade_gates.py` prints these gates, each with its verdict.
"""

from __future__ import annotations

from dataclasses import dataclass

from bookmaker.grade.singles import Kind


@dataclass(frozen=True, slots=True)
class Weights:
    """The constants of the formula. Visibilities are whole hundredths, so that their sums depend on no order."""

    last: int = 200
    box: int = 200
    line: int = 120
    naked: int = 10
    misses: int = 50
    same_digit: int = 5
    stuck: float = 4.0

    def visible(self, kind: Kind) -> int:
        """How readily the eye falls on one way to see a placement."""
        return (self.last, self.box, self.line, self.naked)[kind - 1]

    def placing(self, empty: int, visible: int) -> float:
        """Looks until the first opening is found among `empty` cells; `visible` is that of all openings together."""
        return (empty + 1) * 100 / (self.misses + visible)

    def striking(self, empty: int, findings: int, reach: int) -> float:
        """Looks until the first of so many findings of one rung is found; `reach` as in `Finding`."""
        return self.stuck * (1 + reach) * (empty + 1) / (findings + 1)


WEIGHTS = Weights()

BEYOND = 20
"""Rounds charged for a step that the ladder did not reach."""
