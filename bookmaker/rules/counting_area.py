"""Counting areas: how often digits stand in an area, or how many different ones it has.

Manifest: as cages are typed, with a `count`: the digits that stand there, each as often as it is written (“7 7” is two
sevens, no more and no fewer), or “3 different”. Other digits are free; digits may repeat.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from functools import lru_cache
from itertools import combinations
from math import comb
from random import Random

from bookmaker.language import Catalogue
from bookmaker.puzzle.bits import digits_in, mask_of
from bookmaker.puzzle.grid import CLASSIC, Grid
from bookmaker.puzzle.position import Position
from bookmaker.reasons import MarkRef, Rung
from bookmaker.reasons.bymark import NoFilling, OneCombination, OnlyDigits, OnlyIn
from bookmaker.rules.common.caged import CagedRule, Cells
from bookmaker.rules.common.cagereading import Typed
from bookmaker.rules.common.contract import Deduction, Sample
from bookmaker.rules.common.deducing.candidates import removed_by, sees
from bookmaker.rules.common.deducing.enumeration import APART, can_be_filled, tried_out
from bookmaker.rules.common.drawing.fence import Texture
from bookmaker.rules.common.parts import Part
from bookmaker.rules.common.reading import parts_of, read_digits
from bookmaker.rules.common.words.letters import in_letters
from bookmaker.rules.common.words.speech import cells_said
from bookmaker.rules.common.words.wording import number
from bookmaker.solve.problem import Constraint, Count, Different, DifferentCount
from bookmaker.source.diagnostics import Collector
from bookmaker.source.placed import Node, Word

DIFFERENT = "different"

HOW = "such as “1 1 5”, or “3 different”"

TRIED = 6
"""So many cells are tried out as a whole."""

MOST_SETS = 70_000
"""So many sets of digits are told apart when all fillings of an area with a number of different ones are followed."""

PLACES = 10
"""So many places of a digit are looked through for all that fit together."""

_DIFFERENT = re.compile(r"([0-9]{1,3}) +different")


@dataclass(frozen=True, slots=True)
class Tally:
    """What a corner says: `digits` in rising order, each as often as it stands in the area; or the number of
    `different` ones, 0 where that is not said."""

    digits: tuple[int, ...] = ()
    different: int = 0


@dataclass(frozen=True)
class CountingArea(CagedRule[Tally]):
    """`cages` are areas, each with its tally."""

    kind = "counting-area"
    title = "Counting areas"
    noun = "counting area"
    typed = ("[cells: text, count: text]", "picture: picture, counts: names")
    relabels = "any"
    example = """\
counting-area:
  - {cells: r2c2-r2c4 r3c3-r4c3, count: 7 7}         # two sevens exactly
  - {cells: r6c6 r6c7 r7c7 r7c6, count: 2 different}
"""
    figures = "digits"
    figure_words = ("count", "counts")
    usual_cells = (3, 6)
    texture = Texture((0.0, 0.115), 1.9, "round")
    bare = Tally()

    from_zero = True
    lettered = True

    @property
    def digits_differ(self) -> bool:
        return False

    @classmethod
    def read_value(cls, node: Node, what: str, grid: Grid, collector: Collector) -> Tally | None:
        found = _DIFFERENT.fullmatch(node.value) if isinstance(node, Word) else None
        if found and isinstance(node, Word):
            if 0 < int(found[1]) <= grid.size:
                return Tally((), int(found[1]))
            text = f"{what} should name 1 to {grid.size} different digits, not {found[1]}"
            collector.error(node.place, "out-of-range", text)
            return None
        words = [part.value.upper() for part in parts_of(node)] if isinstance(node, Word) else []
        if any(len(word) > 2 and word.isalpha() and not {*word} <= {*grid.symbols} for word in words):
            collector.error(node.place, "not-digits", f"{what} should be digits, or how many different ones", HOW)
            return None
        digits = read_digits(node, what, grid, collector)
        return None if digits is None else Tally(tuple(sorted(digits)))

    def check(self, typed: Sequence[Typed[Tally]], grid: Grid, collector: Collector) -> None:
        for one in typed:
            tally, cells = one.value or Tally(), one.area.cells
            count = len(tally.digits) or tally.different
            name = one.called(self.noun, grid)
            if count > len(cells):
                what = "digits" if tally.digits else "different digits"
                text = f"{name} can't hold {number(count)} {what}: it has {number(len(cells))} cells"
                collector.error(one.place, "area-crowd", text.replace("one cells", "one cell"))
            elif tally.different < len(cells) and not _countable(tally.different, grid.size):
                most = max(n for n in grid.digits if _countable(n, grid.size))
                text = f"{name} counts {number(tally.different)} different digits, which is too many in so large a grid"
                hint = f"an area counts up to {number(most)} here, or as many as it has cells"
                collector.error(one.place, "area-different", text, hint)
            elif not can_be_filled(grid, cells, _fits(tally, len(cells))):
                text = f"no digits fit the count of {name}, even in an empty grid"
                collector.error(one.place, "area-count", text, APART)

    @classmethod
    def told(cls, value: Tally) -> tuple[str, tuple[int, ...]]:
        return (DIFFERENT, (value.different,)) if value.different else ("", value.digits)

    @classmethod
    def of_part(cls, part: Part) -> Tally:
        return Tally((), sum(part.value)) if part.name == DIFFERENT else Tally(tuple(sorted(part.value)))

    @classmethod
    def typed_as(cls, value: Tally, grid: Grid) -> str:
        return f"{value.different} different" if value.different else " ".join(map(grid.symbol, value.digits))

    @classmethod
    def printed(cls, value: Tally, grid: Grid) -> str:
        return f"{value.different}≠" if value.different else cls.typed_as(value, grid)

    def read_off(self, cells: Sequence[int], grid: Grid, digits: Sequence[int], rng: Random) -> Iterator[Part]:
        """How many digits differ; each digit that is there more than once; one that is there once."""
        inside, at = [digits[cell] for cell in cells], tuple(sorted(cells))
        if _countable(differ := len(set(inside)), grid.size) or differ == len(at):
            yield Part(at, DIFFERENT, (differ,))
        for digit in sorted({digit for digit in inside if inside.count(digit) > 1}):
            yield Part(at, "", (digit,) * inside.count(digit))
        once = [digit for digit in inside if inside.count(digit) == 1]
        if once:
            yield Part(at, "", (rng.choice(once),))

    def constraints(self, grid: Grid) -> Iterator[Constraint]:
        for cells, tally in self.cages:
            for digit in sorted(set(tally.digits)):
                times = tally.digits.count(digit)
                yield Count(cells, 1 << (digit - 1), times, times)
            if tally.different == len(cells) > 1:
                yield Different(cells)
            elif tally.different:
                yield DifferentCount(cells, tally.different, tally.different)

    def holds(self, grid: Grid, digits: Sequence[int]) -> bool:
        for cells, tally in self.cages:
            inside = [digits[cell] for cell in cells]
            if any(inside.count(digit) != tally.digits.count(digit) for digit in tally.digits):
                return False
            if tally.different and len(set(inside)) != tally.different:
                return False
        return True

    def sentence(self, words: Catalogue) -> str:
        counts, differs = (any(bool(getattr(t, name)) for _, t in self.cages) for name in ("digits", "different"))
        among = "both" if counts and differs else "different" if differs else "counts"
        return words.say(f"counting-area-sentence-{among}", n=len(self.cages))

    def spoken(self, words: Catalogue, grid: Grid) -> Iterator[str]:
        for cells, tally in self.cages:
            digits = words.listed(map(grid.symbol, tally.digits))
            said = cells_said(words, grid, cells)
            told = words.say("counting-area-spoken", different=tally.different or 0, digits=digits, cells=said)
            yield in_letters(words, told, grid)

    @classmethod
    def sample(cls) -> Sample:
        return Sample(cls((((0, 1, 9), Tally((), 3)), ((18, 27, 28), Tally((7, 7))))), CLASSIC, 4, 2)

    def key(self) -> Sample:
        sorts = {bool(tally.different) for _, tally in self.cages}
        if len(sorts) == 2:
            return Sample(CountingArea((((0, 1, 9, 10), Tally((), 3)), ((18, 19), Tally((7,))))), CLASSIC, 3, 2)
        tally = Tally((), 2) if sorts == {True} else Tally((7, 7))
        return Sample(CountingArea((((0, 1, 9), tally),)), CLASSIC, 2, 2)

    def deductions(self, position: Position) -> Iterator[Deduction]:
        """Places of the digits that are counted, and how they fit together; digits that are the only ones left; then
        all fillings of a small area."""
        for cells, tally in self.cages:
            if all(position.masks[cell].bit_count() == 1 for cell in cells):
                continue
            mark = self.refer(cells, tally, position.grid)
            found = [*_full(position, cells, tally, mark)]
            for digit in sorted(set(tally.digits)):
                found += _placed(position, cells, digit, tally.digits.count(digit), mark)
            yield from found
            if not found and len(cells) <= TRIED:
                yield from tried_out(position, cells, _fits(tally, len(cells)), mark)


def _full(position: Position, cells: Cells, tally: Tally, mark: MarkRef) -> Iterator[Deduction]:
    """An area that has room for its digits and no others."""
    masks = position.masks
    if tally.different:
        sure = 0
        for cell in cells:
            sure |= masks[cell] if masks[cell].bit_count() == 1 else 0
        removed = removed_by(position, dict.fromkeys(cells, sure)) if sure.bit_count() == tally.different else ()
        if removed:
            where = tuple(sorted({cell for cell, _ in removed}))
            yield Deduction(Rung.SIMPLE, len(cells), cells, removed, mark, OnlyDigits(where, digits_in(sure)))
    elif len(tally.digits) == len(cells):
        removed = removed_by(position, dict.fromkeys(cells, mask_of(tally.digits)))
        if removed:
            claim = OneCombination(tuple(sorted(set(tally.digits))))
            yield Deduction(Rung.SIMPLE, len(cells), cells, removed, mark, claim)


def _placed(position: Position, cells: Cells, digit: int, times: int, mark: MarkRef) -> Iterator[Deduction]:
    """Where so many of a digit can stand: all its places, the settled ones, or those that fit together."""
    bit, grid, masks = 1 << (digit - 1), position.grid, position.masks
    places = tuple(cell for cell in cells if masks[cell] & bit)
    settled = tuple(cell for cell in places if masks[cell] == bit)
    rung, kept = Rung.SIMPLE, places
    if len(settled) == times:
        removed = removed_by(position, {cell: ~bit for cell in places if cell not in settled})
        kept = settled
    elif len(places) == times:
        removed = removed_by(position, dict.fromkeys(places, bit))
    else:
        rung, removed = Rung.PAIR, ()
    if not removed and len(places) <= PLACES:
        left = [cell for cell in places if cell not in settled]
        ways = (
            [
                {*settled, *more}
                for more in combinations(left, times - len(settled))
                if not any(sees(grid, *pair) for pair in combinations((*settled, *more), 2))
            ]
            if len(settled) <= times
            else []
        )
        if not ways:
            return
        some, sure = set.union(*ways), set.intersection(*ways)
        removed = removed_by(position, {c: bit if c in sure else ~bit for c in places if c in sure or c not in some})
        if removed:
            yield Deduction(rung, len(places), cells, removed, mark, NoFilling(cells))
    elif removed:
        yield Deduction(rung, times, cells, removed, mark, OnlyIn((digit,), kept))


@lru_cache(maxsize=512)
def _fits(tally: Tally, count: int) -> Callable[[Sequence[int]], bool]:
    """May the digits so far still come to the tally; do all of them?"""
    wanted = {digit: tally.digits.count(digit) for digit in tally.digits}

    def fits(digits: Sequence[int]) -> bool:
        left = count - len(digits)
        if tally.different:
            here = len(set(digits))
            return here <= tally.different <= here + left
        missing = [times - digits.count(digit) for digit, times in wanted.items()]
        return min(missing) >= 0 and sum(missing) <= left

    return fits


def _countable(different: int, size: int) -> bool:
    """Are there few enough sets of so many digits and fewer?"""
    return sum(comb(size, count) for count in range(different + 1)) <= MOST_SETS
