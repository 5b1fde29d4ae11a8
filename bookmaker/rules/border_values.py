"""Border values: the sum, difference, product or quotient of the two digits beside a number.

Manifest: what is worked out and what comes of it, a colon, and a list of pairs: `sum 7: r1c1-r1c2 r4c4-r5c4`. With
`all-marked: yes` every pair that has one of these values is marked, so that absence counts. A 0 has no quotient with
any digit, and the product 0.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from functools import cache, lru_cache
from random import Random
from typing import NamedTuple, Self

from bookmaker.display.items import Rect, Stroke
from bookmaker.language import Catalogue
from bookmaker.puzzle.grid import CLASSIC, Grid
from bookmaker.puzzle.position import Position
from bookmaker.reasons import MarkRef
from bookmaker.rules.common.border import LEAVE_OUT, read_marks
from bookmaker.rules.common.contract import Deduction, Relabelling, Rule, Sample
from bookmaker.rules.common.deducing import house_sums
from bookmaker.rules.common.deducing.house_sums import Block
from bookmaker.rules.common.drawing.frame import Frame, Layer, Mark
from bookmaker.rules.common.drawing.places import OnBorder, PlaceClaim
from bookmaker.rules.common.neighbours import BorderMarks, MarkKind, Pair, neighbours, pair_of
from bookmaker.rules.common.parts import Form, Part, Written, runs
from bookmaker.rules.common.words.speech import borders_said
from bookmaker.rules.common.words.wording import cells_listed
from bookmaker.solve.problem import Constraint
from bookmaker.source.diagnostics import Collector
from bookmaker.source.placed import Node, Table

SIGNS = {"sum": "+", "difference": "−", "product": "×", "quotient": "/"}
"""What may be worked out of two digits, each with the sign printed before what comes of it."""

WIDTHS, HIGH = (0.38, 0.5), 0.29
"""Of a box with one figure and with two, and its height, in cells."""

_ENTRY = re.compile(rf"product 0|({'|'.join(SIGNS)}) ([1-9]\d{{0,3}})")


class Worth(NamedTuple):
    """What is worked out (a word of `SIGNS`) and what comes of it."""

    sort: str
    number: int


@dataclass(frozen=True)
class BorderValues(Rule):
    """`values` are pairs of cells that share a side, in the grid's order, each with what is written there."""

    kind = "border-values"
    title = "Border values"
    noun = "border value"
    typed = ("*: lines, all-marked: switch",)
    example = """\
border-values:
  sum 7: r1c1-r1c2 r4c4-r5c4
  difference 5: r2c7-r2c8
  product 12: r6c2-r6c3
  quotient 4: r8c5-r9c5
  all-marked: no
"""
    form = Form.BORDER
    figures = "number"
    sorts = tuple((sort, sort) for sort in SIGNS)
    options = ("all-marked",)
    from_zero = True

    values: tuple[tuple[Pair, Worth], ...]
    all_marked: bool = False

    @classmethod
    def read(cls, body: Node, grid: Grid, collector: Collector) -> Self | None:
        kinds = _read_worths(body, grid, collector)
        marks = read_marks(body, "border-values", kinds, grid, collector) if kinds is not None else None
        if marks is None:
            return None
        worths = {name: _worth(name) for name in marks[0]}
        return cls(tuple((pair, worths[name]) for name, pairs in marks[0].items() for pair in pairs), marks[1])

    @classmethod
    def blank(cls, grid: Grid) -> Self:
        return cls(())

    @property
    def marks_all(self) -> bool:
        return self.all_marked

    def parts(self, grid: Grid) -> tuple[Part, ...]:
        return tuple(Part(pair, worth.sort, (worth.number,)) for pair, worth in self.values)

    def with_parts(self, parts: Sequence[Part], grid: Grid) -> Self:
        return replace(self, values=tuple((pair_of(part), Worth(part.name, *part.value)) for part in parts))

    def asked_by(self, part: Part, grid: Grid) -> Iterator[Constraint]:
        return replace(self.with_parts((part,), grid), all_marked=False).constraints(grid)

    def keeps(self, part: Part, grid: Grid, digits: Sequence[int]) -> bool:
        one, other = (grid.worth(digits[cell]) for cell in part.cells)
        return Worth(part.name, *part.value) in _worths(one, other)

    def asked_besides(self, grid: Grid) -> Iterator[Constraint]:
        return self._marked().asked_where_missing(grid)

    def written(self, grid: Grid) -> Written:
        lines: dict[str, Written] = {
            f"{worth.sort} {worth.number}": " ".join(runs(grid, pair) for pair in pairs)
            for worth, pairs in self._by_worth().items()
        }
        return lines | self.said_options()

    def places(self, grid: Grid) -> tuple[Pair, ...]:
        return neighbours(grid)

    def read_off(self, cells: Sequence[int], grid: Grid, digits: Sequence[int], rng: Random) -> Iterator[Part]:
        """Each value that the two digits have; where all are marked, only the values that the rule has already, or
        those of `usual`."""
        one, other = (grid.worth(digits[cell]) for cell in cells)
        wanted = self._by_worth() or _usual(grid)
        for worth in _worths(one, other):
            if worth in wanted or not self.all_marked:
                yield Part(tuple(cells), worth.sort, (worth.number,))

    def constraints(self, grid: Grid) -> Iterator[Constraint]:
        return self._marked().asked(grid)

    def relabelling(self, grid: Grid) -> Relabelling:
        return "reversed" if all(worth.sort in ("sum", "difference") for worth in self._by_worth()) else "none"

    def holds(self, grid: Grid, digits: Sequence[int]) -> bool:
        written = dict(self.values)
        for cell in grid.cells:
            for other in (other for other in grid.orthogonal(cell) if other > cell):
                low, high = sorted((grid.worth(digits[cell]), grid.worth(digits[other])))
                true = [("sum", low + high), ("difference", high - low), ("product", low * high)]
                if low and high % low == 0:
                    true.append(("quotient", high // low))
                if (cell, other) in written:
                    if written[cell, other] not in true:
                        return False
                elif self.all_marked and any(value in true for value in written.values()):
                    return False
        return True

    def sentence(self, words: Catalogue) -> str:
        sorts = [sort for sort in SIGNS if any(worth.sort == sort for worth in self._by_worth())]
        never = []
        for sort in sorts:
            numbers = words.listed(map(str, self._numbers(sort)), "or")
            never.append(words.say(f"border-values-never-{sort}", numbers=numbers))
        return words.say(
            "border-values-sentence-all" if self.all_marked else "border-values-sentence",
            n=len(self.values),
            results=words.listed([words.say(f"border-values-{sort}", sign=SIGNS[sort]) for sort in sorts], "or"),
            never=words.listed(never, "or"),
        )

    def spoken(self, words: Catalogue, grid: Grid) -> Iterator[str]:
        for worth, pairs in sorted(self._by_worth().items()):
            yield from borders_said(words, grid, f"border-values-spoken-{worth.sort}", pairs, number=str(worth.number))

    def marks(self, frame: Frame) -> Iterator[Mark]:
        rim = Stroke(frame.thin())
        for pair, worth in self.values:
            of = (f"the {worth.sort} {worth.number} between {cells_listed(frame.grid, pair)}",)
            (x, y), scale = frame.seat(*pair)
            text = SIGNS[worth.sort] + str(worth.number)
            wide, high = _wide(worth) * scale * frame.cell, HIGH * scale * frame.cell
            yield Mark(Layer.BORDER, Rect(x - wide / 2, y - high / 2, wide, high, rim, 1.0), of)
            yield Mark(Layer.BORDER, frame.figures((x, y), text, 0.2 * scale, font=frame.narrow, mark=True), of)

    def claims(self, grid: Grid) -> Iterator[PlaceClaim]:
        for pair, worth in self.values:
            size = _wide(worth) + 0.02, HIGH + 0.02
            yield OnBorder(pair, *(size[::-1] if pair[1] == pair[0] + 1 else size))

    @classmethod
    def sample(cls) -> Sample:
        return Sample(cls(_SHOWN), CLASSIC, 2, 2)

    def key(self) -> Sample | None:
        """Only the sorts that are there."""
        there = {worth.sort for worth in self._by_worth()}
        shown = tuple(value for value in _SHOWN if value[1].sort in there)
        return Sample(BorderValues(shown), CLASSIC, 2 if len(there) > 1 or "sum" not in there else 1, 2)

    def references(self, grid: Grid) -> tuple[MarkRef, ...]:
        return self._marked().references(grid)

    def deductions(self, position: Position) -> Iterator[Deduction]:
        """Digits without a partner at a number, or where one is missing; strings of numbers worked through; and what
        sums leave over in a house."""
        yield from self._marked().deductions(position)
        yield from house_sums.steps(position, _blocks(self.values), self.kind)

    def _by_worth(self) -> Mapping[Worth, tuple[Pair, ...]]:
        """The pairs at which each value is written, in the order of their first."""
        found: dict[Worth, tuple[Pair, ...]] = {}
        for pair, worth in self.values:
            found[worth] = (*found.get(worth, ()), pair)
        return found

    def _numbers(self, sort: str) -> list[int]:
        return sorted(worth.number for worth in self._by_worth() if worth.sort == sort)

    def _marked(self) -> BorderMarks:
        pairs = tuple((_kind(worth), pairs) for worth, pairs in self._by_worth().items())
        return BorderMarks(self.kind, pairs, self.all_marked)


_SHOWN: tuple[tuple[Pair, Worth], ...] = (
    ((0, 1), Worth("sum", 9)),
    ((0, 9), Worth("difference", 2)),
    ((1, 10), Worth("product", 12)),
    ((9, 10), Worth("quotient", 2)),
)
"""What the key to the marks shows: 6 and 3 over 8 and 4."""


@cache
def _kind(worth: Worth) -> MarkKind:
    """A value as a mark between two cells."""
    keeps: dict[str, Callable[[int, int], bool]] = {
        "sum": lambda a, b: a + b == worth.number,
        "difference": lambda a, b: abs(a - b) == worth.number,
        "product": lambda a, b: a * b == worth.number,
        "quotient": lambda a, b: a != b and max(a, b) == min(a, b) * worth.number,
    }
    return MarkKind(f"the {worth.sort} {worth.number}", keeps[worth.sort], worth.sort, str(worth.number))


def _worths(one: int, other: int) -> Iterator[Worth]:
    """Every value of two different digits, by what they are worth."""
    low, high = sorted((one, other))
    yield Worth("sum", low + high)
    yield Worth("difference", high - low)
    yield Worth("product", low * high)
    if low and high % low == 0:
        yield Worth("quotient", high // low)


def _usual(grid: Grid) -> tuple[Worth, ...]:
    """What is marked where all are to be and no value is named: the sum of lowest and highest digit, and a third of
    them as a difference."""
    return Worth("sum", grid.worth(1) + grid.worth(grid.size)), Worth("difference", max(1, grid.size // 3))


def _wide(worth: Worth) -> float:
    """Width of the box of a value."""
    return WIDTHS[worth.number > 9]


@lru_cache(maxsize=256)
def _blocks(values: tuple[tuple[Pair, Worth], ...]) -> tuple[Block, ...]:
    """The pairs whose sum is written: of those that share a cell the first."""
    found: dict[int, Block] = {}
    for pair, worth in values:
        if worth.sort == "sum" and not found.keys() & {*pair}:
            found |= dict.fromkeys(pair, Block(pair, worth.number))
    return tuple(dict.fromkeys(found.values()))


def _worth(name: str) -> Worth:
    sort, number = name.split()
    return Worth(sort, int(number))


def _read_worths(body: Node, grid: Grid, collector: Collector) -> dict[str, MarkKind] | None:
    """The values named in a body, each with what it asks; None after any diagnostic."""
    if not isinstance(body, Table):
        collector.error(body.place, "not-a-table", "border-values should be lines of “sum 7: r1c1-r1c2”", _HINT)
        return None
    kinds: dict[str, MarkKind] = {}
    for key, _ in body.entries:
        found = _ENTRY.fullmatch(key.value)
        if found:
            kinds[key.value] = _kind(_worth(key.value))
        elif key.value != "all-marked":
            collector.error(key.place, "unknown-value", f"border-values can't read “{key.value}”", _HINT)
            return None
    if not kinds:
        collector.error(body.place, "no-marks", "border-values names no value", LEAVE_OUT)
    return kinds or None


_HINT = "a value is written “sum 7”, “difference 2”, “product 12” or “quotient 3”"
