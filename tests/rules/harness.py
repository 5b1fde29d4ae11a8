"""What the contract test needs: the cases of a kind, entries read as a manifest reads them, and marks measured.

A file of cases, `tests/rules/cases/<file>.py` for `bookmaker/rules/<file>.py`, holds:

- `CELLS`, how many cells a mark has, and `options(grid, rng)`, what holds for all marks, where these matter; or, where
  marks as `bookmaker draft` lays them leave something out, `lay(grid, solution, rng) -> Rule | None`: marks that are
  true on this solution, as many as a printed puzzle has; None where this solution (or size of grid) carries none.
- `MISUSES`: triples of a whole entry as typed (“thermometer: r1c1 r5c5”), the code of its diagnostic, and the piece of
  the text at whose first character the diagnostic must stand.
- `DEDUCTIONS`: triples of an entry; candidates as {"r1c1-r1c3": "123"} on a 9×9 grid that is otherwise open; and the
  removals {"r1c1": "23"} that must be found, each digit written as printed. What a comment says of them is worked out
  by arithmetic unless it says otherwise.
- `FROM_ZERO`, where a 0 makes a difference: such triples again, on a 9×9 grid of the digits 0 to 8.
- `SENTENCES`: pairs of an entry and its sentence on the page; with one mark and with several, where marks count.
- `grow(grid, rng) -> solution | None`, only where a random solution would hardly ever do (the diagonals).
"""

from __future__ import annotations

import importlib
from collections.abc import Iterator
from dataclasses import dataclass, replace
from math import cos, radians, sin
from random import Random
from types import ModuleType
from typing import Any

from bookmaker.changes.arrangement import arrangement
from bookmaker.display.colour import Colour, grey_of
from bookmaker.display.items import Close, Curve, Group, Item, Line, Path, Point, Rect, Stroke, Text
from bookmaker.draft.laying import Ground
from bookmaker.draft.laying import lay as lay_marks
from bookmaker.puzzle.grid import CLASSIC, SYMBOLS, Grid
from bookmaker.rules import kinds
from bookmaker.rules.common.contract import Rule
from bookmaker.solve import solutions
from bookmaker.solve.problem import Allowed, Different, Problem
from bookmaker.source.diagnostics import Collector
from bookmaker.source.placed import Table
from bookmaker.source.yamlfile import parse_yaml
from bookmaker.wishes.wish import Amount
from tests.rules.grids import Solution, random_solution


def cases_of(kind: str) -> ModuleType:
    """The kind's file of cases; ModuleNotFoundError where it has none."""
    file = kinds()[kind].__module__.rpartition(".")[2]
    return importlib.import_module(f"tests.rules.cases.{file}")


def lay(kind: str, grid: Grid, solution: Solution, rng: Random) -> Rule | None:
    """Marks of a kind that are true on a solution; None where it carries none."""
    cases: Any = cases_of(kind)
    if hasattr(cases, "lay"):
        laid: Rule | None = cases.lay(grid, solution, rng)
        return laid
    options = cases.options(grid, rng) if hasattr(cases, "options") else {}
    rule = kinds()[kind].blank(grid).with_options(options)
    shortest, longest = getattr(cases, "CELLS", (3, 7))
    places = len(rule.places(grid))
    most = rng.randint(1, max(1, places * 2 // 5)) if places else max(2, grid.size // 2)
    amount = Amount(1, most, min(shortest, grid.size), min(longest, grid.size))
    return lay_marks(rule, Ground(grid, arrangement("none", grid), solution), amount, rng)


def read_entry(text: str, grid: Grid = CLASSIC) -> tuple[Rule | None, Collector]:
    """A rule from one entry “kind: body”, with the collector that holds what was wrong."""
    collector = Collector()
    tree = parse_yaml(text, "entry.yaml", collector)
    if tree is None:
        return None, collector
    assert isinstance(tree, Table), text
    ((key, body),) = tree.entries
    return kinds()[key.value].read(body, grid, collector), collector


def sound_entry(text: str, grid: Grid = CLASSIC) -> Rule:
    """A rule from an entry without diagnostic."""
    rule, collector = read_entry(text, grid)
    assert rule is not None, [(str(t.place), t.code, t.text) for t in collector.found]
    assert not collector.found
    return rule


def place_of(text: str, piece: str) -> tuple[int, int]:
    """Line and column, from 1, at which a piece of text begins."""
    before = text[: text.index(piece)]
    return before.count("\n") + 1, len(before) - (before.rfind("\n") + 1) + 1


def instances(kind: str, grid: Grid, rng: Random, wanted: int) -> Iterator[tuple[Solution, Rule]]:
    """Up to `wanted` solutions with marks laid on them."""
    cases: Any = cases_of(kind)
    found = 0
    for _ in range(wanted * 4):
        solution = cases.grow(grid, rng) if hasattr(cases, "grow") else random_solution(grid, rng)
        rule = lay(kind, grid, solution, rng) if solution is not None else None
        if rule is not None:
            found += 1
            yield solution, rule
        if found == wanted:
            return


def from_zero(kind: str, plain: Grid, rng: Random, wanted: int) -> Iterator[tuple[Grid, Solution, Rule]]:
    """Filled grids from 0 with true marks of a kind."""
    grid = replace(plain, symbols="", first=0)
    return ((grid, solution, rule) for solution, rule in instances(kind, grid, rng, wanted) if rule.suits(grid))


def grown_with(rule: Rule, grid: Grid, rng: Random) -> Solution | None:
    """A random solution of the empty grid under a rule, from the engine; None if there is none."""
    houses = tuple(Different(house.cells) for house in grid.houses)
    problem = Problem(len(grid.cells), grid.size, (*houses, *rule.constraints(grid)))
    return next(iter(solutions(problem, rng)), None)


def only_rule(rule: Rule, grid: Grid, digits: Solution) -> Problem:
    """The rule's own constraints on a grid in which every cell is fixed; no houses."""
    fixed = tuple(Allowed((cell,), 1 << (digit - 1)) for cell, digit in enumerate(digits))
    return Problem(len(grid.cells), grid.size, (*fixed, *rule.constraints(grid)))


def digits_as_mask(text: str) -> int:
    """The set of the digits in a piece of text as a mask."""
    return sum(1 << SYMBOLS.index(character) for character in set(text))


@dataclass(frozen=True)
class Ink:
    """One thing drawn: the corners of its box in points, and the pens and fills it uses."""

    left: float
    top: float
    right: float
    bottom: float
    stroke: Stroke | None
    fill: Colour | None
    text: bool = False

    @property
    def extent(self) -> float:
        return max(self.right - self.left, self.bottom - self.top)


def inks(item: Item) -> Iterator[Ink]:
    """Everything an item draws, groups opened. Curves are boxed by their control points, so never too small."""
    if isinstance(item, Group):
        for inner in item.items:
            for ink in inks(inner):
                corners = [(ink.left, ink.top), (ink.right, ink.top), (ink.left, ink.bottom), (ink.right, ink.bottom)]
                yield _ink([_moved(item, corner) for corner in corners], None, ink.fill, ink.text, ink.stroke)
    elif isinstance(item, Line):
        yield _ink([item.start, item.end], item.stroke)
    elif isinstance(item, Rect):
        yield _ink([(item.x, item.y), (item.x + item.width, item.y + item.height)], item.stroke, item.fill)
    elif isinstance(item, Path):
        points = [
            point
            for segment in item.segments
            if not isinstance(segment, Close)
            for point in ((segment.first, segment.second, segment.to) if isinstance(segment, Curve) else (segment.to,))
        ]
        yield _ink(points, item.stroke, item.fill)
    elif isinstance(item, Text):
        width = 0.58 * item.size * len(item.text)
        left = item.x - {"start": 0.0, "middle": 0.5, "end": 1.0}[item.anchor] * width
        yield _ink([(left, item.y - 0.72 * item.size), (left + width, item.y)], None, grey_of(item.colour), text=True)
    else:
        raise AssertionError(f"a rule draws no {type(item).__name__}")


def _moved(group: Group, point: Point) -> Point:
    turn = radians(group.turn)
    x, y = point[0] * group.scale, point[1] * group.scale
    return group.dx + x * cos(turn) - y * sin(turn), group.dy + x * sin(turn) + y * cos(turn)


def _ink(
    points: list[Point], pen: Stroke | None, fill: Colour | None = None, text: bool = False, said: Stroke | None = None
) -> Ink:
    half = pen.width / 2 if pen else 0.0
    xs, ys = [x for x, _ in points], [y for _, y in points]
    return Ink(min(xs) - half, min(ys) - half, max(xs) + half, max(ys) + half, pen or said, fill, text)
