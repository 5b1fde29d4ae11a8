"""Why a puzzle has no solution: givens and marks that cannot all hold, none of which could be spared.

In: a puzzle without a solution. Out: a `Contradiction`. Each given and each mark is left out in turn, and stays out
if the rest still contradicts itself; what is left is the slip, or stands beside it. All of it is bounded by an effort,
counted and not timed; where that runs out, what clashes is somewhere among the givens and marks that are left.
"""

from __future__ import annotations

from dataclasses import dataclass

from bookmaker.puzzle.position import Candidate
from bookmaker.review.shapes import Shape, shapes_of
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.rules.common.words.wording import listed, number
from bookmaker.solve.problem import Allowed, Constraint, Different, Problem
from bookmaker.solve.proving import refuted

EACH = 300_000
"""Effort (`Meter.effort`) of one proof that the rest contradicts itself: about a fifth of a second."""

ALL = 4_000_000
"""Effort of all proofs for one puzzle: about three seconds."""

SETTING_UP = 10_000
"""Effort that each proof is charged before it begins, for its problem has to be compiled."""

SAID = 6
"""Givens and marks that a sentence lists; the others are counted."""


@dataclass(frozen=True, slots=True)
class Contradiction:
    """Givens (cell, digit) and marks that, with the houses of the grid, leave no solution.

    `least` says that none of them could be spared; else the effort ran out before that was shown of each.
    """

    givens: tuple[Candidate, ...]
    shapes: tuple[Shape, ...]
    least: bool


def contradiction(puzzle: RuledPuzzle) -> Contradiction:
    """What cannot all hold; marks alone are preferred to givens, and what is listed first to what follows."""
    houses: list[Constraint] = [Different(house.cells) for house in puzzle.grid.houses]
    givens = [(cell, digit) for cell, digit in enumerate(puzzle.givens) if digit]
    shapes = [shape for rule in puzzle.rules for shape in shapes_of(rule, puzzle)]
    left, least = ALL, True

    def contradicts(givens: list[Candidate], shapes: list[Shape]) -> bool:
        nonlocal left, least
        left -= SETTING_UP
        if left <= 0:
            least = False
            return False
        written = [Allowed((cell,), 1 << (digit - 1)) for cell, digit in givens]
        asked = [made for shape in shapes for made in shape.constraints]
        problem = Problem(len(puzzle.grid.cells), puzzle.grid.size, (*houses, *written, *asked))
        answer, spent = refuted(problem, min(EACH, left))
        left -= spent
        least = least and answer is not None
        return answer is True

    for given in reversed(givens.copy()):
        rest = [other for other in givens if other is not given]
        if contradicts(rest, shapes):
            givens = rest
    for shape in reversed(shapes.copy()):
        fewer = [other for other in shapes if other is not shape]
        if contradicts(givens, fewer):
            shapes = fewer
    return Contradiction(tuple(givens), tuple(shapes), least)


def contradiction_words(found: Contradiction, puzzle: RuledPuzzle) -> str:
    """The contradiction as the end of a sentence: “the given 5 at r1c1 and the even cell at r1c1 can't all hold”.

    Where the effort ran out: “what clashes is among the given …”.
    """
    grid = puzzle.grid
    said = [f"the given {grid.symbol(digit)} at {grid.name(cell)}" for cell, digit in found.givens]
    for shape in found.shapes:
        ends = dict.fromkeys((shape.cells[0], shape.cells[-1]))
        said.append(f"the {shape.noun} at {'–'.join(grid.name(cell) for cell in ends)}")
    if len(said) > SAID:
        said = [*said[: SAID - 1], f"{number(len(said) - SAID + 1)} more givens or marks"]
    if not found.least:
        return f"what clashes is among {listed(said)}"
    return f"{listed(said)} can't {'all ' if len(said) > 2 else 'both ' if len(said) == 2 else ''}hold"
