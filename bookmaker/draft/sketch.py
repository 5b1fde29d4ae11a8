"""A puzzle while it is drafted: a solution with all givens and marks that there could be, and which of them there are.

A choice of givens and marks is a board: a whole number with one bit for each cell, and above these one for each mark.
A grid other than the solution is remembered by the board of the givens and marks that it breaks: it is shut out by a
choice that has one of these. So most questions whether a choice leaves one solution are answered without a proof.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from random import Random

from bookmaker.changes.arrangement import Arrangement, same_mark
from bookmaker.draft.patience import Patience
from bookmaker.puzzle.bits import board_of, cells_on
from bookmaker.puzzle.grid import Grid
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules.common.contract import Rule, RuledPuzzle
from bookmaker.rules.common.parts import Form, Part
from bookmaker.solve.problem import Allowed, Constraint, Different, Problem
from bookmaker.solve.proving import proven
from bookmaker.solve.verdict import NoSolution, Several, Solution, Undecided, Unique

GUESSES = 60
"""Guesses for a proof; a puzzle that takes more is not for people, so it counts as not proven."""


@dataclass(frozen=True, slots=True)
class Mark:
    """A mark of the rule with this number, or, where marks can't be told apart, all that the rule asks."""

    rule: int
    part: Part | None
    asked: tuple[Constraint, ...]


class Sketch:
    """Rules with all their marks, true on a solution."""

    def __init__(
        self,
        grid: Grid,
        rules: Sequence[Rule],
        solution: Solution,
        arranged: Arrangement,
        besides: Sequence[Constraint] = (),
        guesses: int = GUESSES,
        patience: Patience | None = None,
    ) -> None:
        """`besides` is asked whatever is chosen, as the houses are; a proof may take so many guesses, and `patience` is
        told what it has cost."""
        self.grid, self.rules, self.solution, self.arranged = grid, tuple(rules), solution, arranged
        self.patience = patience or Patience()
        self.guesses = guesses
        self.marks = tuple(self._take_apart())
        cells = len(grid.cells)
        self.cells = (1 << cells) - 1
        """The board of all givens and no mark."""
        self.everything = (1 << cells + len(self.marks)) - 1
        self.given_orbits = tuple(board_of(orbit) for orbit in arranged.orbits)
        self.mark_orbits = tuple(self._mark_orbits())
        self.open = self.cells
        """The givens that there may be."""
        self.kept = 0
        """The givens that there must be."""
        self._met: list[int] = []
        self._houses = (*(Different(house.cells) for house in grid.houses), *besides)

    @property
    def offered(self) -> int:
        """All givens that there may be, and all marks."""
        return self.open | self.everything & ~self.cells

    def puzzle(self, board: int) -> RuledPuzzle:
        """The puzzle of a choice."""
        givens = tuple(digit if board >> cell & 1 else 0 for cell, digit in enumerate(self.solution))
        rules = []
        for number, rule in enumerate(self.rules):
            here = [mark for at, mark in self.numbered(board) if mark.rule == number]
            if here and here[0].part is None:
                rules.append(rule)
            elif here:
                rules.append(rule.with_parts([mark.part for mark in here if mark.part], rule.laid_on(self.grid)))
        return Puzzle(self.grid, givens, tuple(rules))

    def numbered(self, board: int) -> Iterator[tuple[int, Mark]]:
        """The marks of a choice, each with its bit."""
        for bit in cells_on(board & ~self.cells):
            yield bit, self.marks[bit - len(self.grid.cells)]

    def leaves_others(self, board: int) -> bool | None:
        """Does a choice leave a grid other than the solution? None where the proof takes too long."""
        if any(not broken & board for broken in self._met):
            return True
        verdict, spent = proven(self._problem(board), budget=self.guesses)
        self.patience.look(spent)
        match verdict:
            case Several(first, second):
                self._met += [self._broken_by(other) for other in (first, second) if other != self.solution]
                return True
            case Undecided():
                return None
            case Unique() | NoSolution():
                return False

    def unique(self, board: int) -> bool:
        """Is it proven that a choice leaves the solution alone?"""
        return self.leaves_others(board) is False

    def left_by(self, board: int) -> list[int]:
        """The boards of the other grids that a choice leaves, of those that were met."""
        return [broken for broken in self._met if not broken & board]

    def idle(self, board: int) -> list[int]:
        """The bits of marks that can be left out of a choice, each for itself."""
        return [bit for bit, _ in self.numbered(board) if not self.leaves_others(board & ~(1 << bit))]

    def thinned(self, board: int, orbits: Sequence[int]) -> int:
        """A choice without all of these orbits that can be spared, tried in their order."""
        for orbit in orbits:
            if orbit & board and not orbit & self.kept and self.unique(board & ~orbit):
                board &= ~orbit
        return board

    @staticmethod
    def shuffled(orbits: Sequence[int], rng: Random) -> list[int]:
        """Orbits in random order."""
        return rng.sample(orbits, len(orbits))

    def sparing(self, board: int, rng: Random) -> list[int]:
        """Orbits of givens in random order, those on the shapes of a board first: what is told there by a given is
        not left for the shape to tell."""
        shaped = self.shaped(board)
        return sorted(self.shuffled(self.given_orbits, rng), key=lambda orbit: not orbit & shaped)

    def shaped(self, board: int) -> int:
        """The cells on lines and in areas of a choice."""
        shapes = (
            mark.part for _, mark in self.numbered(board) if self.rules[mark.rule].form in (Form.CHAIN, Form.AREA)
        )
        return board_of({cell for part in shapes if part for cell in part.cells})

    def closed(self, board: int) -> int:
        """The givens of a board with all orbits that it touches."""
        return sum(orbit for orbit in self.given_orbits if orbit & board)

    def count(self, board: int, rule: int) -> int:
        """How many marks of a rule a choice has."""
        return sum(mark.rule == rule for _, mark in self.numbered(board))

    def marks_of(self, rule: int) -> int:
        """The board of all marks of a rule."""
        return sum(1 << bit for bit, mark in self.numbered(self.everything) if mark.rule == rule)

    def _problem(self, board: int) -> Problem:
        given = [Allowed((cell,), 1 << (self.solution[cell] - 1)) for cell in cells_on(board & self.cells)]
        asked = [made for _, mark in self.numbered(board) for made in mark.asked]
        return Problem(len(self.grid.cells), self.grid.size, (*self._houses, *given, *asked))

    def _take_apart(self) -> Iterator[Mark]:
        for number, rule in enumerate(self.rules):
            # Where marks say something together that none says alone, all of them are one choice.
            grid = rule.laid_on(self.grid)
            together = rule.marks_all or any(True for _ in rule.asked_besides(grid))
            parts = () if together else rule.parts(grid)
            if not parts:
                yield Mark(number, None, tuple(rule.constraints(grid)))
            for part in parts:
                yield Mark(number, part, tuple(rule.asked_by(part, grid)))

    def _mark_orbits(self) -> Iterator[int]:
        bits = {
            (mark.rule, mark.part and same_mark(mark.part, self.rules[mark.rule])): bit
            for bit, mark in self.numbered(self.everything)
        }
        seen = 0
        for bit, mark in self.numbered(self.everything):
            if seen >> bit & 1:
                continue
            rule = self.rules[mark.rule]
            images = self.arranged.images_of(mark.part, rule) if mark.part else ()
            orbit = 1 << bit
            for image in images:
                back = replace(image, cells=image.cells[::-1])
                ways = (bits.get((mark.rule, same_mark(way, rule))) for way in (image, back))
                orbit |= 1 << next((found for found in ways if found is not None), bit)
            seen |= orbit
            yield orbit

    def _broken_by(self, other: Solution) -> int:
        board = board_of(cell for cell, digit in enumerate(other) if digit != self.solution[cell])
        for bit, mark in self.numbered(self.everything):
            rule = self.rules[mark.rule]
            grid = rule.laid_on(self.grid)
            kept = rule.keeps(mark.part, grid, other) if mark.part else rule.holds(grid, other)
            board |= 0 if kept else 1 << bit
        return board
