"""A mark changed by one thing: moved, turned round, one cell longer or shorter, another figure, another sort.

In: a mark of a rule. Out: `Change`s of it, each the mark as it might have been and what sort of change that is. Whether
a manifest would take the changed rule is not looked at here.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace

from bookmaker.puzzle.grid import Grid
from bookmaker.rules.common.contract import Rule
from bookmaker.rules.common.parts import Form, Part

LOOK_ALIKE = (frozenset({1, 7}), frozenset({3, 8}), frozenset({5, 6}), frozenset({6, 9}))
"""Digits that are taken for each other in handwriting."""

STEPS = tuple((down, across) for down in (-1, 0, 1) for across in (-1, 0, 1) if down or across)


@dataclass(frozen=True, slots=True)
class Change:
    """A mark as it might have been. `sort` is a key of `slips.SLIPS`; `close` where it is an easy slip of its sort."""

    sort: str
    part: Part
    close: bool = False


def changes_of(part: Part, rule: Rule, grid: Grid) -> Iterator[Change]:
    """Every mark that differs from this one by one slip of the pen."""
    yield from _figures(part, rule, grid)
    yield from _sorts(part, rule, grid)
    if rule.directed and (rule.form is not Form.CHAIN or len(part.value) == 0 or part.value == (1,)):
        yield Change("reversed", replace(part, cells=part.cells[::-1]))
    for cells in _moved(part, rule, grid):
        yield Change("moved", replace(part, cells=cells))
    match rule.form:
        case Form.CHAIN:
            yield from _chains(part, rule, grid)
        case Form.AREA:
            yield from _areas(part, grid)


def misread(digit: int, digits: range) -> Iterator[tuple[int, bool]]:
    """What a digit may have been, and whether the two look alike."""
    return ((other, {digit, other} in LOOK_ALIKE) for other in digits if other != digit)


def _figures(part: Part, rule: Rule, grid: Grid) -> Iterator[Change]:
    if rule.figures == "number" and part.value:
        yield from (
            Change(sort, replace(part, value=(number,)), close) for number, sort, close in _numbers(*part.value)
        )
    if rule.figures == "digits":
        for at, digit in enumerate(part.value):
            for other, close in misread(digit, grid.digits):
                value = (*part.value[:at], other, *part.value[at + 1 :])
                yield Change("figure", replace(part, value=tuple(sorted(value))), close)


def _numbers(number: int) -> Iterator[tuple[int, str, bool]]:
    """Other numbers that it may have been: its digits turned, one more or less, one of its digits misread."""
    text = str(number)
    seen = {number}

    def fresh(other: str, sort: str, close: bool) -> Iterator[tuple[int, str, bool]]:
        if other[0] != "0" and int(other) not in seen:
            seen.add(int(other))
            yield int(other), sort, close

    if len(text) == 2:
        yield from fresh(text[::-1], "turned", True)
    for near in (number - 1, number + 1):
        if near > 0:
            yield from fresh(str(near), "figure", True)
    for at, sign in enumerate(text):
        for other in "1234567890":
            close = {int(sign), int(other)} in LOOK_ALIKE
            yield from fresh(text[:at] + other + text[at + 1 :], "figure", close)


def _sorts(part: Part, rule: Rule, grid: Grid) -> Iterator[Change]:
    """Another of the kind's sorts."""
    if rule.form is Form.TWINS:
        return
    names = [name for name, _ in getattr(rule, "sorts", ())] or (["", "not"] if part.name in ("", "not") else [])
    if rule.form is Form.CELL or (rule.form is Form.BORDER and part.name):
        for name in names:
            if name != part.name and (rule.figures == "digits" or name != "not"):
                yield Change("sort", replace(part, name=name))


def _moved(part: Part, rule: Rule, grid: Grid) -> Iterator[tuple[int, ...]]:
    """The same mark one cell, border or line away."""
    if places := rule.places(grid):
        mine = set(part.cells)
        for cells in places:
            if set(cells) != mine and _near(part.cells, cells, rule.form, grid):
                yield cells
                if rule.directed and rule.form is Form.BORDER:
                    yield cells[::-1]
        return
    for down, across in STEPS:
        at = [(grid.row(cell) + down, grid.column(cell) + across) for cell in part.cells]
        if all(grid.inside(*place) for place in at):
            yield tuple(grid.cell(*place) for place in at)


def _near(one: tuple[int, ...], other: tuple[int, ...], form: Form, grid: Grid) -> bool:
    """Are two places next to each other? Lines that clues look along are if they begin so and run the same way."""
    if form is Form.EDGE:
        return other[0] in grid.orthogonal(one[0]) and _way(one, grid) == _way(other, grid)
    (row, column), (other_row, other_column) = (
        (sum(map(grid.row, cells)) / len(cells), sum(map(grid.column, cells)) / len(cells)) for cells in (one, other)
    )
    return abs(row - other_row) <= 1 and abs(column - other_column) <= 1


def _way(line: tuple[int, ...], grid: Grid) -> tuple[int, int]:
    """How many rows down and columns across a line goes with each step."""
    return grid.row(line[1]) - grid.row(line[0]), grid.column(line[1]) - grid.column(line[0])


def _chains(part: Part, rule: Rule, grid: Grid) -> Iterator[Change]:
    """A step missing or too many, or one cell beside where it should be."""
    cells, rim = part.cells, sum(part.value)  # of an arrow, the circle's cells stay
    touching = [other for other in grid.cells if grid.touching(cells[-1], other) and other not in cells]
    for other in touching:
        yield Change("step", replace(part, cells=(*cells, other)), close=True)
    if not rim:
        for other in grid.cells:
            if grid.touching(cells[0], other) and other not in cells:
                yield Change("step", replace(part, cells=(other, *cells)), close=True)
    for at in range(rim, len(cells)):
        left = cells[:at] + cells[at + 1 :]
        before, after = cells[at - 1] if at else None, cells[at + 1] if at + 1 < len(cells) else None
        if before is None or after is None or grid.touching(before, after):
            yield Change("step", replace(part, cells=left), close=before is None or after is None)
        for other in grid.cells:
            if other in cells or not all(end is None or grid.touching(end, other) for end in (before, after)):
                continue
            if grid.touching(cells[at], other):
                yield Change("step", replace(part, cells=(*cells[:at], other, *cells[at + 1 :])))
        if before is not None and at > rim:
            for other in grid.cells:
                if other not in cells and grid.touching(before, other) and grid.touching(cells[at], other):
                    yield Change("step", replace(part, cells=(*cells[:at], other, *cells[at:])))


def _areas(part: Part, grid: Grid) -> Iterator[Change]:
    """A cell too many or left out, or one beside where it should be."""
    inside = set(part.cells)
    edge = sorted({near for cell in inside for near in grid.orthogonal(cell)} - inside)
    for cell in edge:
        yield Change("cell", replace(part, cells=tuple(sorted((*part.cells, cell)))))
    for gone in part.cells if len(inside) > 1 else ():
        left = tuple(cell for cell in part.cells if cell != gone)
        yield Change("cell", replace(part, cells=left))
        for cell in edge:
            if grid.touching(cell, gone):
                yield Change("cell", replace(part, cells=tuple(sorted((*left, cell)))))
