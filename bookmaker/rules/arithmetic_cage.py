"""Arithmetic cages: the number in the corner is the sum, product, difference or quotient of the digits inside.

Manifest: as cages are typed, with a `result` such as “12×”, “3−”, “2÷” or “11+”; a number alone leaves open which of
these it is. Digits may repeat where rows, columns and boxes allow it, unless `differ: yes` says otherwise. Differences
and quotients are of two cells, greater digit first (common practice, no source).
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from functools import lru_cache, reduce
from itertools import combinations, combinations_with_replacement
from math import comb, prod
from operator import or_
from random import Random

from bookmaker.language import Catalogue
from bookmaker.puzzle.bits import digits_in, mask_of
from bookmaker.puzzle.grid import CLASSIC, Grid
from bookmaker.puzzle.position import Position
from bookmaker.rules.common.caged import CagedRule, Cells
from bookmaker.rules.common.cagereading import Typed
from bookmaker.rules.common.contract import Deduction, Relabelling, Sample
from bookmaker.rules.common.deducing import house_sums
from bookmaker.rules.common.deducing.automata import Machine, machine
from bookmaker.rules.common.deducing.candidates import sees
from bookmaker.rules.common.deducing.combinations import combination_steps
from bookmaker.rules.common.deducing.enumeration import APART, can_be_filled, tried_out
from bookmaker.rules.common.deducing.house_sums import Block
from bookmaker.rules.common.drawing.fence import Texture
from bookmaker.rules.common.parts import Part
from bookmaker.rules.common.words.speech import cells_said
from bookmaker.solve.problem import Combination, Constraint, Different, Sum, relation
from bookmaker.source.diagnostics import Collector, quoted
from bookmaker.source.placed import Node, read_text

SUM, PRODUCT, DIFFERENCE, QUOTIENT = "+×−÷"

TYPED = {"+": SUM, "×": PRODUCT, "x": PRODUCT, "*": PRODUCT, "−": DIFFERENCE, "-": DIFFERENCE, "–": DIFFERENCE}
TYPED |= {"÷": QUOTIENT, "/": QUOTIENT, "": ""}
"""Signs as they are typed."""

CALLED = {SUM: "sum", PRODUCT: "product", DIFFERENCE: "difference", QUOTIENT: "quotient"}

LARGEST = 99_999
"""The greatest number that has room in a corner."""

LISTED = 7
"""So many cells of a cage have their combinations looked through."""

LISTABLE = 5000
"""So many sets of digits are told to the engine one by one."""

_RESULT = re.compile(r"([0-9]+) ?([+×x*−–/÷-]?)")


@dataclass(frozen=True, slots=True)
class Result:
    """What a corner says; without a sign it is left open which one is meant. A `number` of 0 says nothing."""

    number: int
    sign: str

    def signs(self, count: int) -> str:
        """The signs that it may have over so many cells."""
        return self.sign or (SUM + PRODUCT if count != 2 else SUM + PRODUCT + DIFFERENCE + QUOTIENT)

    def kept(self, digits: Sequence[int]) -> bool:
        """Is it what all the digits of a cage make?"""
        return any(_made(sign, digits) == self.number for sign in self.signs(len(digits)))


@dataclass(frozen=True)
class ArithmeticCage(CagedRule[Result]):
    """`cages` are cells in the grid's order, each with its result."""

    kind = "arithmetic-cage"
    title = "Arithmetic cages"
    noun = "arithmetic cage"
    typed = (
        "[cells: text, result: text]",
        "picture: picture, results: names, differ: switch",
        "cages: items, differ: switch",
    )
    example = """\
arithmetic-cage:
  - {cells: r1c1-r1c3 r2c1, result: 24×}
  - {cells: r5c5 r5c6, result: 2÷}
  - {cells: r7c2 r8c2, result: 3-}
  - {cells: r8c8 r8c9, result: 6}     # any of + − × ÷
"""
    figures = "number"
    figure_words = ("result", "results")
    options = ("differ",)
    # Longer dashes than a cage's, with dots between them.
    texture = Texture((0.2, 0.07, 0.04, 0.07))
    bare = Result(0, "")

    from_zero = True

    differ: bool = False

    @property
    def digits_differ(self) -> bool:
        return self.differ

    @classmethod
    def read_value(cls, node: Node, what: str, grid: Grid, collector: Collector) -> Result | None:
        text = read_text(node, what, collector)
        if text is None:
            return None
        found = _RESULT.fullmatch(text)
        if found and 0 < int(found[1][:9]) <= LARGEST:
            return Result(int(found[1]), TYPED[found[2]])
        said = f"{what} should be a number from 1 to {LARGEST}, with or without a sign, not {quoted(text)}"
        collector.error(node.place, "not-a-result", said, "such as 12×, 3-, 2÷, 11+ or 6")
        return None

    def check(self, typed: Sequence[Typed[Result]], grid: Grid, collector: Collector) -> None:
        for one in typed:
            result, cells = one.value or self.bare, one.area.cells
            name, shown = one.called(self.noun, grid), self.printed(result, grid)
            if result.sign in (DIFFERENCE, QUOTIENT) and len(cells) != 2:
                text = f"{name} has a {CALLED[result.sign]}, which takes two cells, not {len(cells)}"
                collector.error(one.place, "two-cells", text)
            elif not can_be_filled(grid, cells, _fits(result, len(cells), self.differ, grid)):
                collector.error(one.place, "cage-result", f"no digits make {shown} in {name}", APART)

    @classmethod
    def told(cls, value: Result) -> tuple[str, tuple[int, ...]]:
        return value.sign, (value.number,) if value.number else ()

    @classmethod
    def of_part(cls, part: Part) -> Result:
        return Result(sum(part.value), part.name if part.name in CALLED else "")

    @classmethod
    def typed_as(cls, value: Result, grid: Grid) -> str:
        return f"{value.number}{value.sign}" if value.number else ""

    def read_off(self, cells: Sequence[int], grid: Grid, digits: Sequence[int], rng: Random) -> Iterator[Part]:
        inside = [grid.worth(digits[cell]) for cell in cells]
        if self.differ and len(set(inside)) < len(inside):
            return
        for sign in Result(0, "").signs(len(inside)):
            made = _made(sign, inside)
            if 0 < made <= LARGEST:
                yield Part(tuple(sorted(cells)), sign, (made,))
                yield Part(tuple(sorted(cells)), "", (made,))

    def constraints(self, grid: Grid) -> Iterator[Constraint]:
        for cells, result in self.cages:
            if not result.number:
                if self.differ and len(cells) > 2:
                    yield Different(cells)
            elif len(cells) > 2 and (self.differ or all(sees(grid, *pair) for pair in combinations(cells, 2))):
                yield from _combined(cells, result, grid)
            elif len(cells) == 2:
                pairs = (
                    (a, b)
                    for a in grid.digits
                    for b in grid.digits
                    if a != b and result.kept((grid.worth(a), grid.worth(b)))
                )
                yield relation((cells,), grid.size, pairs)
            else:
                yield _made_by(cells, result, grid)

    def relabelling(self, grid: Grid) -> Relabelling:
        return "reversed" if all(result.sign in (SUM, DIFFERENCE) for _, result in self.cages) else "none"

    def holds(self, grid: Grid, digits: Sequence[int]) -> bool:
        for cells, result in self.cages:
            inside = [grid.worth(digits[cell]) for cell in cells]
            if self.differ and len(set(inside)) < len(inside):
                return False
            low, high = min(inside), max(inside)
            two = len(inside) == 2
            makes = {
                SUM: sum(inside) == result.number,
                PRODUCT: prod(inside) == result.number,
                DIFFERENCE: two and high - low == result.number,
                QUOTIENT: two and low > 0 and high == low * result.number,
            }
            if result.number and not (makes[result.sign] if result.sign else any(makes.values())):
                return False
        return True

    def sentence(self, words: Catalogue) -> str:
        made = {result.sign for _, result in self.cages}
        named = words.listed([words.say(f"result-{CALLED[sign]}") for sign in CALLED if sign in made], "or")
        pairs = any(len(cells) == 2 for cells, result in self.cages if not result.sign)
        return words.say(
            f"arithmetic-cage-sentence-{'signs' if named.count else 'unsigned'}",
            n=len(self.cages),
            results=named,
            unsigned=("pairs" if pairs else "larger") if "" in made else "none",
            larger="no" if all(len(cells) < 3 for cells, _ in self.cages) else "differ" if self.differ else "repeat",
        )

    def spoken(self, words: Catalogue, grid: Grid) -> Iterator[str]:
        for cells, result in self.cages:
            sort = CALLED[result.sign] if result.sign else "none"
            number = str(result.number)
            yield words.say("arithmetic-cage-spoken", sort=sort, number=number, cells=cells_said(words, grid, cells))

    @classmethod
    def sample(cls) -> Sample:
        return Sample(cls((((0, 1), Result(12, PRODUCT)), ((9, 10), Result(3, DIFFERENCE)))), CLASSIC, 2, 2)

    def key(self) -> Sample:
        """With signs that the puzzle has."""
        signs = list(dict.fromkeys(result.sign for _, result in self.cages)) or [PRODUCT]
        shown = {SUM: 7, PRODUCT: 12, DIFFERENCE: 3, QUOTIENT: 2, "": 6}
        places = ((0, 1), (9, 10))[: len(signs)]
        cages = tuple((cells, Result(shown[sign], sign)) for cells, sign in zip(places, signs, strict=False))
        return Sample(ArithmeticCage(cages, self.differ), CLASSIC, len(cages), 2)

    def deductions(self, position: Position) -> Iterator[Deduction]:
        """Combinations that make the result, what every combination holds, all fillings, and sums over houses."""
        for cells, result in self.cages:
            if result.number and any(position.masks[cell].bit_count() > 1 for cell in cells):
                yield from self._steps(position, cells, result)
        blocks = tuple(Block(cells, result.number) for cells, result in self.cages if result.sign == SUM)
        yield from house_sums.steps(position, blocks, self.kind)

    def _steps(self, position: Position, cells: Cells, result: Result) -> Iterator[Deduction]:
        grid = position.grid
        mark = self.refer(cells, result, grid)
        fits = _fits(result, len(cells), self.differ, grid)
        if len(cells) > LISTED:
            yield from tried_out(position, cells, fits, mark)
            return
        open_to = reduce(or_, (position.masks[cell] for cell in cells))
        ways = _ways(result, len(cells), open_to, self.differ or len(cells) == 2, grid)
        yield from combination_steps(position, cells, ways, mark, fits)


def _combined(cells: Cells, result: Result, grid: Grid) -> Iterator[Constraint]:
    """Different digits that make a result: their sets, where these can be listed."""
    if comb(grid.size, len(cells)) <= LISTABLE:
        yield Combination(cells, frozenset(_ways(result, len(cells), grid.all_digits, True, grid)))
    else:
        yield Different(cells)
        yield _made_by(cells, result, grid)


def _made_by(cells: Cells, result: Result, grid: Grid) -> Constraint:
    """Three and more digits that make a result, whether or not they differ."""
    if result.sign == SUM:
        total = grid.raised(result.number, len(cells))
        return Sum(tuple((cell, 1) for cell in cells), total, total)
    return _machine(result, len(cells), grid).over(cells)


def _made(sign: str, digits: Sequence[int]) -> int:
    """What digits make by a sign; 0 where they make no whole number."""
    if sign == SUM:
        return sum(digits)
    if sign == PRODUCT:
        return prod(digits)
    low, high = min(digits), max(digits)
    if sign == DIFFERENCE:
        return high - low
    return high // low if low and high % low == 0 else 0


@lru_cache(maxsize=2048)
def _ways(result: Result, count: int, open_to: int, differ: bool, grid: Grid) -> tuple[int, ...]:
    """The sets of digits, as masks, of all the choices that make a result, digits that repeat told once."""
    chosen = (combinations if differ else combinations_with_replacement)(digits_in(open_to), count)
    return tuple(dict.fromkeys(mask_of(way) for way in chosen if result.kept([*map(grid.worth, way)])))


@lru_cache(maxsize=512)
def _fits(result: Result, count: int, differ: bool, grid: Grid) -> Callable[[Sequence[int]], bool]:
    """May the digits so far still make the result; do all of them?"""
    signs, least = result.signs(count), grid.worth(1)

    def fits(written: Sequence[int]) -> bool:
        digits = [*map(grid.worth, written)]
        if differ and digits[-1] in digits[:-1]:
            return False
        left = count - len(digits)
        if not left:
            return result.kept(digits)
        return (
            (SUM in signs and sum(digits) + least * left <= result.number)
            or (PRODUCT in signs and 0 not in digits and result.number % prod(digits) == 0)
            or DIFFERENCE in signs
            or QUOTIENT in signs
        )

    return fits


@lru_cache(maxsize=512)
def _machine(result: Result, count: int, grid: Grid) -> Machine:
    """Reads the digits of three or more cells: their sum and their product so far, 0 where one can no longer be the
    result. Their order does not matter."""
    signs = result.signs(count)
    if result.number > count * grid.size:
        signs = PRODUCT  # too much for a sum
    start = int(SUM in signs), int(PRODUCT in signs)  # the sum is kept one too high, so that 0 is free

    def step(state: tuple[int, int], digit: int) -> tuple[int, int] | None:
        worth = grid.worth(digit)
        total, product = state[0] + worth if state[0] else 0, state[1] * worth
        after = total if total <= result.number + 1 else 0, product if product and result.number % product == 0 else 0
        return after if any(after) else None

    def accepts(state: tuple[int, int]) -> bool:
        return state[0] == result.number + 1 or state[1] == result.number

    return machine(grid.digits, start, step, accepts)
