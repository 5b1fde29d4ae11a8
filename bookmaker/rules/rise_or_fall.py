"""Rising or falling: bars outside the grid tell that the nearest three digits rise, or fall, from that side.

Manifest: by side, a row of `rise` and `fall` with dots for none. `cells` says how many digits it is
about, if not three. With `all-marked: yes` every end that rises or falls has its bars, so that absence counts; with
none anywhere it is the whole rule.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator, Sequence
from dataclasses import dataclass, replace
from functools import cache
from itertools import pairwise
from random import Random
from typing import get_args

from bookmaker.display.items import Line, Stroke
from bookmaker.language import Catalogue
from bookmaker.puzzle.grid import CLASSIC, Grid
from bookmaker.puzzle.position import Position
from bookmaker.reasons import MarkRef, Rung
from bookmaker.reasons.bymark import NoFilling
from bookmaker.rules.common.clue import Clue, Placed, Side, clue_along, lines_seen
from bookmaker.rules.common.comparison import bounds, trouble_together
from bookmaker.rules.common.contract import Deduction, Sample
from bookmaker.rules.common.deducing.automata import Machine, machine
from bookmaker.rules.common.deducing.enumeration import unsupported_candidates
from bookmaker.rules.common.drawing.clueplaces import INK, middle_of
from bookmaker.rules.common.drawing.frame import Frame, Layer, Mark
from bookmaker.rules.common.nearest import NearRule
from bookmaker.rules.common.neighbours import MISSING, Pair
from bookmaker.rules.common.parts import Part
from bookmaker.solve.problem import Constraint, relation
from bookmaker.source.diagnostics import Collector, Place, quoted

FALL, RISE = 0, 1

WORDS = ("fall", "rise")
"""What is typed, by the value of a clue."""

THREE = 3
"""How many digits it is about where nothing is said."""

STEP, WEIGHT, SHORT, LONG = 0.16, 0.07, 0.13, 0.46
"""From bar to bar, how heavy they are, and how long the shortest and the longest are, in cells."""


@dataclass(frozen=True)
class RiseOrFall(NearRule):
    """Each clue's value is `RISE` or `FALL`, as seen from its side."""

    kind = "rise-or-fall"
    title = "Rising or falling"
    noun = "slope"
    typed = ("left: text, right: text, top: text, bottom: text, cells: whole, all-marked: switch",)
    relabels = "reversed"
    from_zero = True
    example = """\
rise-or-fall:
  left: rise . . fall . . . . rise
  top: . . fall . . . rise . .
  all-marked: no
"""
    figures = ""
    options = ("all-marked",)
    room = (0.66, 0.66)
    fewest = THREE

    all_marked: bool = False

    @classmethod
    def usually(cls, grid: Grid) -> tuple[int, int]:
        return THREE, THREE

    @classmethod
    def read_clue(cls, text: str, place: Place, grid: Grid, collector: Collector) -> Collection[int]:
        if text in WORDS:
            return (WORDS.index(text),)
        said = f"{quoted(text)} is neither rise nor fall"
        collector.error(place, "unknown-word", said, "a dot stands for an end without bars")
        return ()

    @classmethod
    def values_on(cls, line: Sequence[int], grid: Grid) -> Collection[int]:
        return [value for value in (FALL, RISE) if _goes(value, line)]

    def check(self, placed: Placed, grid: Grid, collector: Collector) -> None:
        known: list[Pair] = []
        for clue, place in placed.items():
            known += self._comparisons(clue, grid)
            trouble = trouble_together(known, grid)
            if trouble:
                text = f"the bars {clue.where} do not go with those before them"
                collector.error(place, "clues-contradict", text, trouble)
                return

    @property
    def marks_all(self) -> bool:
        return self.all_marked

    def parts(self, grid: Grid) -> tuple[Part, ...]:
        return tuple(Part(clue.cells(grid), WORDS[clue.value]) for clue in self.clues)

    def with_parts(self, parts: Sequence[Part], grid: Grid) -> RiseOrFall:
        clues = (clue_along(part.cells, WORDS.index(part.name), grid) for part in parts)
        return replace(self, clues=tuple(clues))

    def read_off(self, cells: Sequence[int], grid: Grid, digits: Sequence[int], rng: Random) -> Iterator[Part]:
        for part in super().read_off(cells, grid, digits, rng):
            yield Part(part.cells, WORDS[part.value[0]])

    def keeps(self, part: Part, grid: Grid, digits: Sequence[int]) -> bool:
        return part in self.read_off(part.cells, grid, digits, Random(0))

    def asked_by(self, part: Part, grid: Grid) -> Iterator[Constraint]:
        return replace(self.with_parts((part,), grid), all_marked=False).constraints(grid)

    def asked_besides(self, grid: Grid) -> Iterator[Constraint]:
        for clue in self._bare(grid):
            yield _turning(grid.size).over(self.near(clue, grid))

    def constraints(self, grid: Grid) -> Iterator[Constraint]:
        pairs = [pair for clue in self.clues for pair in self._comparisons(clue, grid)]
        if pairs:
            yield relation(pairs, grid.size, ((a, b) for a in grid.digits for b in grid.digits if a > b))
        yield from self.asked_besides(grid)

    def holds(self, grid: Grid, digits: Sequence[int]) -> bool:
        said = {(clue.house, clue.side): clue.value for clue in self.clues}
        for end in _ends(grid):
            near = [digits[cell] for cell in end.cells(grid)]
            near = near[: self.in_row if end.side in ("left", "right") else self.in_column]
            value = said.get((end.house, end.side))
            if value == RISE and near != sorted(set(near)):
                return False
            if value == FALL and near[::-1] != sorted(set(near)):
                return False
            if value is None and self.all_marked and near in (sorted(near), sorted(near, reverse=True)):
                return False
        return True

    def sentence(self, words: Catalogue) -> str:
        few = words.number(self.in_row)
        if not self.clues:
            return words.say("rise-or-fall-sentence-none", number=few)
        values = {clue.value for clue in self.clues}
        way = "both" if len(values) == 2 else "rise" if RISE in values else "fall"
        line, every = lines_seen(self.clues), "yes" if self.all_marked else "no"
        return words.say(f"rise-or-fall-sentence-{way}", number=few, line=line, all=every)

    def clue_typed(self, value: int, grid: Grid) -> str:
        return WORDS[value]

    def clue_said(self, words: Catalogue, value: int, grid: Grid) -> str:
        return words.say(f"rise-or-fall-{('falls', 'rises')[value]}")

    def marks(self, frame: Frame) -> Iterator[Mark]:
        pen = Stroke(WEIGHT * frame.cell, INK)
        for clue in self.clues:
            of = (f"the bars {clue.where}",)
            x, y = middle_of(clue, frame, *self.room)
            count = self.seen(clue)
            outwards = clue.side in ("right", "bottom")
            for at in range(count):
                nearness = count - 1 - at if outwards else at
                larger = nearness if clue.value == RISE else count - 1 - nearness
                half = (SHORT + (LONG - SHORT) * larger / (count - 1)) / 2 * frame.cell
                along = (at - (count - 1) / 2) * min(STEP, 0.56 / count) * frame.cell
                if clue.along_row:
                    bar = Line((x + along, y - half), (x + along, y + half), pen)
                else:
                    bar = Line((x - half, y + along), (x + half, y + along), pen)
                yield Mark(Layer.BORDER, bar, of)

    @classmethod
    def sample(cls) -> Sample:
        return Sample(cls((Clue("left", 0, RISE), Clue("left", 1, FALL))), CLASSIC, 2, 3)

    def key(self) -> Sample | None:
        values = sorted({clue.value for clue in self.clues}, reverse=True)
        shown = tuple(Clue("left", row, value) for row, value in enumerate(values))
        return Sample(replace(self, clues=shown, all_marked=False), CLASSIC, len(shown), 3) if shown else None

    def deductions(self, position: Position) -> Iterator[Deduction]:
        """Bounds along the rises and falls; digits that would make an unmarked end rise or fall."""
        grid = position.grid
        owner = {pair: clue for clue in self.clues for pair in self._comparisons(clue, grid)}

        def refer(pairs: Sequence[Pair]) -> MarkRef:
            clues = list(dict.fromkeys(owner[pair] for pair in pairs))
            if len(clues) == 1:
                return self._refer(clues[0], grid)
            return MarkRef.joined(self.kind, dict.fromkeys(cell for pair in pairs for cell in pair))

        yield from bounds(position, tuple(owner), refer)
        for clue in self._bare(grid):
            cells = self.near(clue, grid)
            removed = unsupported_candidates(position, cells, _turns)
            if removed:
                mark = self._refer(clue, grid, MISSING)
                yield Deduction(Rung.PAIR, len(cells), cells, removed, mark, NoFilling(cells))

    def references(self, grid: Grid) -> tuple[MarkRef, ...]:
        there = tuple(self._refer(clue, grid) for clue in self.clues)
        return there + tuple(self._refer(clue, grid, MISSING) for clue in self._bare(grid))

    def _refer(self, clue: Clue, grid: Grid, variety: str = "") -> MarkRef:
        anchor = clue.refer(self.kind, grid).anchor
        return MarkRef(self.kind, self.near(clue, grid), anchor, variety=variety or WORDS[clue.value])

    def _comparisons(self, clue: Clue, grid: Grid) -> list[Pair]:
        """Neighbours along the cells of a clue, the greater first."""
        return [(b, a) if clue.value == RISE else (a, b) for a, b in pairwise(self.near(clue, grid))]

    def _bare(self, grid: Grid) -> list[Clue]:
        """The ends without bars, where these say as much."""
        marked = {(clue.side, clue.line) for clue in self.clues}
        return [end for end in _ends(grid) if (end.side, end.line) not in marked] if self.all_marked else []


def _ends(grid: Grid) -> list[Clue]:
    """Every end of a row or column, as a clue."""
    return [Clue(side, line, 0) for side in get_args(Side) for line in range(grid.size)]


def _goes(value: int, line: Sequence[int]) -> bool:
    """Do digits all rise, or all fall?"""
    return all((a < b) is (value == RISE) and a != b for a, b in pairwise(line))


def _turns(line: Sequence[int]) -> bool:
    """Can digits that begin so still do neither, and do they if there are three or more?"""
    return len(line) < THREE or not (_goes(RISE, line) or _goes(FALL, line))


@cache
def _turning(size: int) -> Machine:
    """States: the last digit, which way it went, and whether it went both ways (0 for what is not known yet)."""

    def step(state: tuple[int, int, bool], digit: int) -> tuple[int, int, bool] | None:
        last, way, turned = state
        if digit == last:
            return None
        if turned or last == 0:
            return (0, 0, True) if turned else (digit, 0, False)
        now = 1 if digit > last else -1
        return (0, 0, True) if way == -now else (digit, now, False)

    return machine(range(1, size + 1), (0, 0, False), step, lambda state: state[2])
