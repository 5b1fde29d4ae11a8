"""How much looking a step takes: the formula of the grade, its sources and its limits.

Effort is counted in *looks*: cells a person looks at before the next step is found. Finding the first of m things
among L places looked at in random order takes (L + 1) / (m + 1) looks on average; here each opening counts by how
visible it is.

**Placing a digit**, L cells being empty:

    looks = (L + 1) / (1 + Σ visible)

over all openings there are now. An opening's visibility is the sum over the ways to see it: the last empty cell of a
house 2, a hidden single in a box 2, a hidden single in a row, column or added house 1.2, a naked single 0.05; twelve
times that for the digit just written, since people go on with a digit while it gives something. A cell that this very
digit has opened counts half until the next is found: it could not be seen when the eye last passed there. So a chain of
steps of which each waits for the one before is harder than as many that could be taken in any order.

Which opening is found first is chance in proportion to visibility; the effort is the mean over solvers whose luck
belongs to the cells (`simulation.py`), and so exactly repeatable, and the same however the grid is turned.

Where all that is open is less visible than one hidden single, who has found one lone naked single finds the next
sooner: such steps take together the root of the sum of their squares, so that k alike take √k times the looks of one.

**Striking candidates**, when no digit can be placed, by the lowest rung of the ladder that finds anything:

    looks = (1 + reach) · (L + 1) / (1 + shown)

That there is nothing simpler is known only when every cell was looked at, so it does not matter how many findings there
are; but what one mark shows by itself (rung 5) stands on the page to be looked at, so those `shown` count as openings
of visibility 1 do. `reach` is how far a person must think ahead (`Finding.reach`): 0 for a pattern seen at once, the
links of a chain, the rounds of a what-if. Of a rung only the findings of the least reach count; all of them are struck,
and singles are looked for again. What was found once is found sooner here, too: the steps of one rung take together
the root of the sum of their squares.

**Effort** is the sum over all steps.

Sources. The looking model, and visibilities of 2, 2, 1.2 and 0.1, were fitted to people's mean solving times before
this project began. Half that of a naked single, the factor for the digit just written, the half for what it opens, the
sum over ways to see, the 1 beside it and the weight of striking were chosen here on 800 classic puzzles with the mean
time of those who finished them, and for 177 a published difficulty (S.-W. Wang, IEEE Access 12, 2024, 104254–104262,
CC0; puzzles with even ids), by cross-validation: `tests/benchmarks/grade_agreement.py` prints it, beside the measures
of R. Pelánek (arXiv 1403.7373, 2014), whose two ideas - how few openings there are, how hard the hardest deductions are
- live on in the two parts of the sum.

A what-if's rounds write all singles at once, then read all marks at once, each as a whole (`follow.py`).

Limits. Only classic 9×9 puzzles have human data behind them, solved on screens, timed with pauses and only where
people finished; nine in ten needed nothing but singles. The ladder above the singles has little data behind its order
(72 puzzles), the rungs of the variants' own deductions have none: they are set by how many constraints must be held
together (N. Lee, G. Goodwin, P. Johnson-Laird, Thinking & Reasoning 14, 2008). Bands of different families are
therefore not comparable as minutes are.

One more given may make a puzzle harder by this measure: it can change which rung finds something first, and from there
the path is another. Of 7,800 cases 0.5 % rose by more than 5 %, the most by 19.9 %.

Redundant marks are read like all others, since who solves the puzzle cannot know that they are. Thermometers that say
nothing where a puzzle is stuck leave the effort as it was in 192 of 200. Those that show cells which see each other, or
bounds that are struck at once where a chain was wanted, help: where singles suffice, four needless ones left 160 of 168
classics within 5 %, where more is needed none of 32; all others became easier.

`tests/benchmarks/grade_gates.py` prints these gates, each with its verdict.
"""

from __future__ import annotations

from dataclasses import dataclass

from bookmaker.reasons import Rung


@dataclass(frozen=True, slots=True)
class Weights:
    """The constants of the formula. Visibilities are whole hundredths, so that their sums depend on no order."""

    last: int = 200
    box: int = 200
    line: int = 120
    naked: int = 5
    misses: int = 100
    same_digit: int = 12
    fresh: float = 0.5
    """A power of two keeps the sums exact."""
    stuck: float = 1.0

    def visible(self, kind: Rung) -> int:
        """How readily the eye falls on one way to see a placement."""
        return (self.last, self.box, self.line, self.naked)[kind - 1]

    def placing(self, empty: int, visible: float) -> float:
        """Looks until the first opening is found among `empty` cells; `visible` is that of all openings together."""
        return (empty + 1) * 100 / (self.misses + visible)

    def striking(self, empty: int, reach: int, shown: int = 0) -> float:
        """Looks until something is found to strike; `reach` as in `Finding`, `shown` findings are marks' own."""
        return self.stuck * (1 + reach) * (empty + 1) / (1 + shown)


class Practice:
    """What was found once is found sooner: the steps of one rung take together the root of the sum of their squares."""

    def __init__(self) -> None:
        self._squares: dict[int, float] = {}

    def looks(self, rung: int, looks: float) -> float:
        """What a step adds that would take so many looks if it were the first of its rung."""
        before = self._squares.get(rung, 0.0)
        self._squares[rung] = before + looks * looks
        return float((before + looks * looks) ** 0.5 - before**0.5)


WEIGHTS = Weights()

BEYOND_REACH = 20
"""The reach charged for a step that the ladder did not reach."""
