"""A puzzle while it is drafted: a solution, rules that are true on it, and the proofs about givens that are asked again
and again.

Givens are a board: a whole number with one bit for each cell. A grid other than the solution that keeps the rules is
remembered by the board of the cells in which it differs: it is shut out by givens that stand in one of these. So most
questions are answered without a proof.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field

from bookmaker.changes.arrangement import Arrangement, same_mark
from bookmaker.puzzle.bits import board_of, cells_on
from bookmaker.puzzle.grid import Grid
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules import problem_of
from bookmaker.rules.common.contract import Rule, RuledPuzzle
from bookmaker.rules.common.parts import Part
from bookmaker.solve import prove
from bookmaker.solve.problem import Allowed, Constraint, Problem
from bookmaker.solve.verdict import NoSolution, Several, Solution, Unique

GUESSES = 300
"""Guesses for a proof; a puzzle that takes more is not for people, so it counts as not proven."""


@dataclass(slots=True)
class Others:
    """Grids other than the solution that keep some constraints: `asked` with any givens of the solution."""

    grid: Grid
    solution: Solution
    asked: tuple[Constraint, ...]
    met: list[int] = field(default_factory=list)
    """Boards of the cells in which those that were met differ from the solution."""

    def left_by(self, board: int) -> bool | None:
        """Do the givens of a board leave another grid? None where the proof takes too long."""
        if any(not differing & board for differing in self.met):
            return True
        given = tuple(Allowed((cell,), 1 << (self.solution[cell] - 1)) for cell in cells_on(board))
        verdict = prove(Problem(len(self.grid.cells), self.grid.size, (*self.asked, *given)), GUESSES)
        match verdict:
            case Several(first, second):
                self.met += [self._differing(other) for other in (first, second) if other != self.solution]
                return True
            case Unique() | NoSolution():
                return False
        return None

    def _differing(self, other: Solution) -> int:
        return board_of(cell for cell, digit in enumerate(other) if digit != self.solution[cell])


@dataclass(frozen=True, slots=True)
class Needed:
    """A mark, or a rule whose marks can't be told apart, and the grids that come in where it is left out."""

    rule: int
    part: Part | None
    others: Others


class Sketch:
    """Rules and a solution that they are true on."""

    def __init__(self, grid: Grid, rules: Sequence[Rule], solution: Solution, arranged: Arrangement) -> None:
        self.grid, self.rules, self.solution, self.arranged = grid, tuple(rules), solution, arranged
        self.others = Others(grid, solution, self._asked(self.rules))
        self.needed = [Needed(at, part, self._without(at, part)) for at, part in self._marks()]

    def puzzle(self, board: int) -> RuledPuzzle:
        """The puzzle with the givens of a board."""
        givens = tuple(digit if board >> cell & 1 else 0 for cell, digit in enumerate(self.solution))
        return Puzzle(self.grid, givens, self.rules)

    def unique(self, board: int) -> bool:
        """Do these givens leave no other grid?"""
        return self.others.left_by(board) is False

    def idle(self, board: int) -> list[Needed]:
        """The marks without which these givens leave no other grid either."""
        return [needed for needed in self.needed if not needed.others.left_by(board)]

    def dropping(self, idle: Iterable[Needed]) -> Sketch | None:
        """The sketch without the orbits of these marks; None where whole rules would go."""
        rules = list(self.rules)
        for needed in idle:
            rule = rules[needed.rule]
            if needed.part is None:
                return None
            gone = {same_mark(image, rule) for image in self.arranged.images_of(needed.part, rule)}
            rules[needed.rule] = rule.with_parts(
                [part for part in rule.parts(self.grid) if same_mark(part, rule) not in gone], self.grid
            )
        return Sketch(self.grid, rules, self.solution, self.arranged)

    def _marks(self) -> list[tuple[int, Part | None]]:
        found: list[tuple[int, Part | None]] = []
        for at, rule in enumerate(self.rules):
            parts = () if rule.marks_all else rule.parts(self.grid)
            found += [(at, part) for part in parts] or [(at, None)]
        return found

    def _without(self, at: int, part: Part | None) -> Others:
        rules = list(self.rules)
        if part is None:
            del rules[at]
        else:
            left = [other for other in rules[at].parts(self.grid) if other != part]
            rules[at : at + 1] = [rules[at].with_parts(left, self.grid)] if left else []
        return Others(self.grid, self.solution, self._asked(rules))

    def _asked(self, rules: Sequence[Rule]) -> tuple[Constraint, ...]:
        bare: RuledPuzzle = Puzzle(self.grid, (0,) * len(self.grid.cells), tuple(rules))
        return problem_of(bare).constraints
