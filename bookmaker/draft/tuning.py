"""A puzzle tuned: the least changes that bring it where it is wished to be.

In: a puzzle with its solution, and a wish for its band, difficulty, givens or techniques. Out: changes of one or two
givens or marks (added, taken away, moved by one) that keep its solution and its arrangement, the least first. What is
arranged with a given or mark changes with it.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from concurrent.futures import Executor, Future
from dataclasses import dataclass
from itertools import combinations
from random import Random
from time import monotonic

from bookmaker.changes.arrangement import Arrangement, arranged_as, arrangement
from bookmaker.changes.neighbouring import changes_of
from bookmaker.draft.laying import is_sound
from bookmaker.draft.sketch import Sketch
from bookmaker.grade import grade
from bookmaker.grade.solve_path import Grade
from bookmaker.proof.executors import in_order
from bookmaker.puzzle.bits import cells_on
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.common.contract import Rule, RuledPuzzle
from bookmaker.rules.common.parts import Form, Part
from bookmaker.solve.verdict import Solution
from bookmaker.wishes.judge import Amiss, amiss
from bookmaker.wishes.wish import Wish


@dataclass(frozen=True, slots=True)
class Change:
    """Bits of a sketch that go, and bits that come; `size` is how many givens and marks are touched."""

    gone: int
    come: int

    @property
    def size(self) -> int:
        return (self.gone | self.come).bit_count()


@dataclass(frozen=True)
class Tuned:
    """A puzzle that came out, with its grade; `changes` is one or two."""

    puzzle: RuledPuzzle
    grade: Grade
    changes: int


class Tuning:
    """`tried` and `untried` count the changes whose result was looked at, and those for which no time was left."""

    def __init__(self, puzzle: RuledPuzzle, solution: Solution, wish: Wish) -> None:
        self.puzzle, self.solution, self.wish = puzzle, solution, wish
        self.arranged = _arrangement(puzzle)
        rules = [_with_others(rule, puzzle.grid, solution, self.arranged) for rule in puzzle.rules]
        self.sketch = Sketch(puzzle.grid, rules, solution, self.arranged)
        grid = puzzle.grid
        own = {(number, part) for number, rule in enumerate(puzzle.rules) for part in rule.parts(rule.laid_on(grid))}
        marks = sum(
            1 << bit
            for bit, mark in self.sketch.numbered(self.sketch.everything)
            if mark.part is None or (mark.rule, mark.part) in own
        )
        givens = sum(1 << cell for cell, digit in enumerate(puzzle.givens) if digit)
        self.board = givens | marks
        self.tried = self.untried = 0

    def results(self, executor: Executor, ahead: int, until: float) -> Iterator[Tuned]:
        """Puzzles that are as wished, the least changes first; what is graded is shared among the workers."""
        singles = sorted(set(_singles(self.sketch, self.board)), key=lambda change: (change.size, change.come))
        for number, changes in ((1, [(one,) for one in singles]), (2, list(_doubles(singles)))):
            boards = self._boards(changes, until)

            def begin(board: int) -> Future[tuple[Grade, list[Amiss]]]:
                return executor.submit(_looked_at, self.sketch.puzzle(board), self.solution, self.wish)

            for board, (graded, wrong) in in_order(boards, begin, ahead):
                if not wrong:
                    yield Tuned(self.sketch.puzzle(board), graded, number)

    def _boards(self, changes: Sequence[tuple[Change, ...]], until: float) -> Iterator[int]:
        """The choices that changes lead to and that leave one solution, each once."""
        seen = {self.board}
        for at, some in enumerate(changes):
            if monotonic() > until:
                self.untried += len(changes) - at
                return
            board = self.board
            for change in some:
                board = board & ~change.gone | change.come
            self.tried += 1
            if board in seen:
                continue
            seen.add(board)
            if self.sketch.unique(board) and all(
                is_sound(r, self.puzzle.grid) for r in self.sketch.puzzle(board).rules
            ):
                yield board


def _looked_at(puzzle: RuledPuzzle, solution: Solution, wish: Wish) -> tuple[Grade, list[Amiss]]:
    """Done by a worker."""
    graded = grade(puzzle, solution)
    return graded, amiss(wish, puzzle, solution, graded)


def _arrangement(puzzle: RuledPuzzle) -> Arrangement:
    """The arrangement of the givens, if the marks keep it as well; else none."""
    grid = puzzle.grid
    found = arranged_as((cell for cell, digit in enumerate(puzzle.givens) if digit), grid)
    for rule in puzzle.rules:
        marks = rule.parts(rule.laid_on(grid))
        there = {frozenset(part.cells) for part in marks}
        parts = () if rule.form is Form.WHOLE or rule.marks_all else marks
        if any(frozenset(image.cells) not in there for part in parts for image in found.images_of(part, rule)):
            return arrangement("none", grid)
    return found


def _with_others(rule: Rule, grid: Grid, solution: Solution, arranged: Arrangement) -> Rule:
    """The rule with its own marks and, after them, all true ones that a small change could bring, with their images."""
    if rule.form is Form.WHOLE or rule.marks_all:
        return rule
    rng, grid = Random(0), rule.laid_on(grid)
    own = rule.parts(grid)
    others: dict[Part, None] = {}
    for cells in rule.places(grid):
        others |= dict.fromkeys(rule.read_off(cells, grid, solution, rng))
    for part in own:
        for change in changes_of(part, rule, grid):
            if change.sort in ("moved", "step", "cell") and not rule.places(grid):
                found = _true_at(change.part, rule, grid, solution)
                others |= dict.fromkeys(found)
    whole = [part for part in others if part not in own and _images(part, rule, arranged, grid, solution)]
    images = [image for part in whole for image in _images(part, rule, arranged, grid, solution)]
    return rule.with_parts(list(dict.fromkeys([*own, *whole, *images])), grid)


def _true_at(part: Part, rule: Rule, grid: Grid, solution: Solution) -> list[Part]:
    """The mark at the cells of this one that is true, if there is one: with its total read off, or as it is."""
    if rule.form is Form.AREA:
        return list(rule.read_off(part.cells, grid, solution, Random(0)))
    return [part] if rule.keeps(part, grid, solution) else []


def _images(part: Part, rule: Rule, arranged: Arrangement, grid: Grid, solution: Solution) -> list[Part]:
    """The mark with true ones at all of its images; none if one of these is not true."""
    found = []
    for image in arranged.images_of(part, rule):
        true = _true_at(image, rule, grid, solution) or list(rule.read_off(image.cells, grid, solution, Random(0)))
        if not true:
            return []
        found.append(part if image == part else true[0])
    return found


def _singles(sketch: Sketch, board: int) -> Iterator[Change]:
    """An orbit of givens or of marks that goes, one that comes, and one for another beside it."""
    for orbits in (sketch.given_orbits, sketch.mark_orbits):
        here = [orbit for orbit in orbits if not orbit & ~board]
        away = [orbit for orbit in orbits if not orbit & board]
        yield from (Change(orbit, 0) for orbit in here)
        yield from (Change(0, orbit) for orbit in away)
        yield from (
            Change(old, new)
            for old in here
            for new in away
            if old.bit_count() == new.bit_count() and _beside(sketch, old, new)
        )


def _beside(sketch: Sketch, old: int, new: int) -> bool:
    """Is each mark or given of one orbit next to, or partly the same as, one of the other?"""
    grid = sketch.grid
    return all(
        any(_close(grid, _cells(sketch, one), _cells(sketch, other)) for other in cells_on(new))
        for one in cells_on(old)
    )


def _cells(sketch: Sketch, bit: int) -> tuple[int, ...]:
    cells = len(sketch.grid.cells)
    if bit < cells:
        return (bit,)
    part = sketch.marks[bit - cells].part
    return part.cells if part else ()


def _close(grid: Grid, one: Sequence[int], other: Sequence[int]) -> bool:
    """Do two places differ by one step: a cell beside another, a shape with all but one cell in common or moved?"""
    if len(set(one) ^ set(other)) <= 2 and set(one) & set(other):
        return True
    if len(one) != len(other):
        return False
    steps = {(grid.row(b) - grid.row(a), grid.column(b) - grid.column(a)) for a, b in zip(one, other, strict=True)}
    return len(steps) == 1 and max(map(abs, steps.pop())) <= 1


def _doubles(singles: Iterable[Change]) -> Iterator[tuple[Change, Change]]:
    """Two changes that do not touch the same things, the smaller first."""
    pairs = combinations(singles, 2)
    apart = [(a, b) for a, b in pairs if not (a.gone | a.come) & (b.gone | b.come)]
    return iter(sorted(apart, key=lambda pair: pair[0].size + pair[1].size))
