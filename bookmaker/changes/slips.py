"""Slips: puzzles that differ from a puzzle by one thing that goes wrong when a puzzle is typed from paper.

In: a puzzle. Out: `Slip`s: the puzzle as it may have been meant, and which sort of slip would have made this one of it.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from functools import lru_cache

from bookmaker.changes.arrangement import Arrangement, same_mark
from bookmaker.changes.lines import lines_out_of_step, shifted_lines
from bookmaker.changes.neighbouring import changes_of, misread
from bookmaker.puzzle.grid import Grid
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules import kinds
from bookmaker.rules.common.contract import Rule, RuledPuzzle
from bookmaker.rules.common.parts import Form, Part, node_of
from bookmaker.source.diagnostics import Collector, Place


@dataclass(frozen=True, slots=True)
class Slip:
    """`meant` is the puzzle without the slip. `sort` is a key of `SLIPS`; `close` where it is easily made."""

    sort: str
    meant: RuledPuzzle
    close: bool = False


SLIPS = {
    "digit": "a digit misread",
    "swapped": "two neighbours changed places",
    "beside": "a given in the cell beside its own",
    "shifted": "a row or column shifted by one cell",
    "lines": "rows or columns out of step",
    "extra given": "a given too many",
    "left-out given": "a given left out",
    "figure": "a figure misread or one off",
    "turned": "a number with its digits turned round",
    "reversed": "a mark told from the wrong end",
    "moved": "a mark beside its place",
    "step": "a step of a chain missing, too many or astray",
    "cell": "a cell of an area missing, too many or astray",
    "sort": "one sort of mark for another",
    "kind": "one kind of rule for another",
    "extra mark": "a mark too many",
    "left-out mark": "a mark left out",
}
"""The sorts of slips, each with what went wrong."""


def slips_in_givens(puzzle: RuledPuzzle) -> Iterator[Slip]:
    """Slips in the picture of givens, but for a given left out."""
    grid, givens = puzzle.grid, puzzle.givens
    filled = [cell for cell in grid.cells if givens[cell]]
    for cell in filled:
        for digit, close in misread(givens[cell], grid.digits):
            yield Slip("digit", _with(puzzle, {cell: digit}), close)
    for cell in grid.cells:
        for near in grid.orthogonal(cell):
            if near > cell and givens[cell] != givens[near]:
                sort = "swapped" if givens[cell] and givens[near] else "beside"
                along = grid.row(near) == grid.row(cell)
                yield Slip(sort, _with(puzzle, {cell: givens[near], near: givens[cell]}), along)
    for digits, close in shifted_lines(grid, givens):
        yield Slip("shifted", replace(puzzle, givens=digits), close)
    for digits, close in lines_out_of_step(grid, givens):
        yield Slip("lines", replace(puzzle, givens=digits), close)
    for cell in filled:
        yield Slip("extra given", _with(puzzle, {cell: 0}))


def _with(puzzle: RuledPuzzle, changed: dict[int, int]) -> RuledPuzzle:
    return replace(puzzle, givens=tuple(changed.get(cell, digit) for cell, digit in enumerate(puzzle.givens)))


def slips_in_marks(puzzle: RuledPuzzle) -> Iterator[Slip]:
    """Slips in the marks, but for a mark left out. A manifest would not take all of them: see `as_typed`."""
    for number, rule in enumerate(puzzle.rules):
        grid = rule.laid_on(puzzle.grid)
        parts = rule.parts(grid)
        for at, part in enumerate(parts):
            for change in changes_of(part, rule, grid):
                made = rule.with_parts([*parts[:at], change.part, *parts[at + 1 :]], grid)
                yield from _slip(change.sort, puzzle, {number: made}, change.close)
            if rule.form is not Form.WHOLE:
                fewer = rule.with_parts([*parts[:at], *parts[at + 1 :]], grid) if len(parts) > 1 else None
                yield from _slip("extra mark", puzzle, {number: fewer})
                yield from _under_another(puzzle, number, at)
        yield from _another_kind(puzzle, number)


def _slip(sort: str, puzzle: RuledPuzzle, changed: dict[int, Rule | None], close: bool = False) -> Iterator[Slip]:
    """The slip, if anything is left of the puzzle."""
    made = (changed.get(number, rule) for number, rule in enumerate(puzzle.rules))
    rules = tuple(rule for rule in made if rule is not None)
    if rules or any(puzzle.givens):
        yield Slip(sort, Puzzle(puzzle.grid, puzzle.givens, rules), close)


def as_typed(slip: Slip) -> Slip | None:
    """The slip with its rules as a manifest would have them; None where one of them could not stand in any."""
    rules = [as_read(rule, slip.meant.grid) for rule in slip.meant.rules]
    if any(rule is None for rule in rules):
        return None
    return replace(slip, meant=replace(slip.meant, rules=tuple(rule for rule in rules if rule is not None)))


@lru_cache(maxsize=4096)
def as_read(rule: Rule, grid: Grid) -> Rule | None:
    """The rule as its own reader makes it; None where it objects, or where other marks come out: a picture of two areas
    that overlap loses a cell."""
    collector, grid = Collector(), rule.laid_on(grid)
    made = type(rule).read(node_of(rule.written(grid), Place("slip")), grid, collector)
    if made is None or collector.found:
        return None
    read = replace(made, square=rule.square)
    marks, wanted = ({(same_mark(p, rule), p.name, p.value) for p in each.parts(grid)} for each in (read, rule))
    return read if marks == wanted else None


def _under_another(puzzle: RuledPuzzle, number: int, at: int) -> Iterator[Slip]:
    """A mark that belongs to another of the puzzle's kinds."""
    rule = puzzle.rules[number]
    grid = rule.laid_on(puzzle.grid)
    parts = rule.parts(grid)
    for other_number, other in enumerate(puzzle.rules):
        if (
            other_number != number
            and other.square == rule.square
            and other.form is rule.form
            and other.figures == rule.figures
        ):
            left = rule.with_parts([*parts[:at], *parts[at + 1 :]], grid) if len(parts) > 1 else None
            more = other.with_parts([*other.parts(grid), parts[at]], grid)
            yield from _slip("kind", puzzle, {number: left, other_number: more}, close=True)


def _another_kind(puzzle: RuledPuzzle, number: int) -> Iterator[Slip]:
    """The same lines under the word of another kind. Words that have a part in common are close."""
    rule = puzzle.rules[number]
    grid = rule.laid_on(puzzle.grid)
    body = node_of(rule.written(grid), Place("slip"))
    taken = {other.kind for other in puzzle.rules}
    for kind, other in kinds().items():
        if kind in taken or other.form is not rule.form or not other.stands_on(grid):
            continue
        collector = Collector()
        read = other.read(body, grid, collector)
        if read is not None and not collector.found:
            alike = bool(set(kind.split("-")) & set(rule.kind.split("-")) - {"line"})
            yield from _slip("kind", puzzle, {number: replace(read, square=rule.square)}, alike)


def left_out_by(arranged: Arrangement, puzzle: RuledPuzzle) -> Iterator[tuple[int, Part]]:
    """Marks that would have to be there if all were arranged so: the number of the rule, and the mark without figures
    of its own. Those of an image are a guess. An image in another of several grids is none of this rule's."""
    for number, rule in enumerate(puzzle.rules):
        if rule.form is Form.WHOLE:
            continue
        laid = rule.laid_on(puzzle.grid)
        parts, own = rule.parts(laid), {*laid.cells}
        there = {same_mark(part, rule) for part in parts}
        for part in parts:
            for image in arranged.images_of(part, rule):
                if not own.issuperset(image.cells):
                    continue
                back = replace(image, cells=image.cells[::-1])
                if not {same_mark(image, rule), same_mark(back, rule)} & there:
                    yield number, image
                    if rule.directed and rule.form in (Form.CHAIN, Form.BORDER):
                        yield number, back
