"""Clones: areas of one shape hold the same digits in the same places.

Manifest: a picture in which the areas that are clones of each other carry one letter, or for each letter a list of
two or more areas. Shapes are moved, never turned or mirrored.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from itertools import combinations
from random import Random
from typing import Self, TypeAlias

from bookmaker.display.items import Stroke
from bookmaker.language import Catalogue
from bookmaker.puzzle.grid import Grid
from bookmaker.puzzle.position import Position
from bookmaker.reasons import MarkRef, Rung
from bookmaker.reasons.bymark import SameDigit
from bookmaker.reasons.marks import Lettered
from bookmaker.rules.common.area import Area, hatching, is_picture, lettered, outline, read_area, read_letters
from bookmaker.rules.common.contract import Deduction, Rule, Sample
from bookmaker.rules.common.deducing.candidates import alike, sees
from bookmaker.rules.common.drawing.frame import Frame, Layer, Mark
from bookmaker.rules.common.drawing.places import Box, InCell, Outlined, PlaceClaim
from bookmaker.rules.common.drawing.strokes import THIN
from bookmaker.rules.common.parts import Form, Part, Written, runs
from bookmaker.rules.common.words.speech import cell_said
from bookmaker.rules.common.words.wording import cells_listed
from bookmaker.solve.problem import Constraint, relation
from bookmaker.source.diagnostics import Collector
from bookmaker.source.placed import Node, Table, Word, read_items

INSET = 0.1
"""How far the outline runs inside the cells' edges, in cells."""

SPOTS = (
    Box(0.11, 0.64, 0.36, 0.89),
    Box(0.135, 0.62, 0.385, 0.87),
    Box(0.11, 0.68, 0.32, 0.89),
    Box(0.135, 0.66, 0.345, 0.87),
    Box(0.27, 0.72, 0.48, 0.93),
    Box(0.1, 0.4, 0.31, 0.61),
)
"""Where the letter may stand in its cell: in the bottom left corner, or near it."""

Group: TypeAlias = tuple[tuple[int, ...], ...]
"""Two or more areas of one shape; cells in the grid's order, so that those at one index are twins."""


@dataclass(frozen=True)
class Clone(Rule):
    """`groups` of clones, each with the letter in `letters` that is printed in its areas."""

    kind = "clone"
    title = "Clones"
    noun = "clone"
    typed = ("picture", "*: lines")
    relabels = "any"
    from_zero = True
    lettered = True
    example = """\
clone:
  A:
    - r1c2 r2c2 r2c3
    - r6c5 r7c5 r7c6
"""
    form = Form.TWINS
    usual_cells = (2, 4)

    groups: tuple[Group, ...]
    letters: tuple[str, ...]

    @classmethod
    def read(cls, body: Node, grid: Grid, collector: Collector) -> Self | None:
        named = _areas_by_letter(body, grid, collector)
        if named is None:
            return None
        checked = [_sound(letter, areas, grid, collector) for letter, areas in named.items()]
        home: dict[int, str] = {}
        apart = True
        for letter, areas in named.items():
            for area in areas:
                shared = [cell for cell in area.cells if cell in home]
                if shared:
                    text = f"{grid.name(shared[0])} lies in two clone areas, of {home[shared[0]]} and {letter}"
                    collector.error(area.place, "clone-overlap", text)
                    apart = False
                home.update(dict.fromkeys(area.cells, letter))
        if not all(checked) or not apart:
            return None
        return cls(tuple(tuple(area.cells for area in areas) for areas in named.values()), tuple(named))

    @classmethod
    def blank(cls, grid: Grid) -> Self:
        return cls((), ())

    def parts(self, grid: Grid) -> tuple[Part, ...]:
        """The areas of a letter one after the other; the value of a part says how many."""
        return tuple(
            Part(tuple(cell for cells in group for cell in cells), letter, (len(group),))
            for letter, group in zip(self.letters, self.groups, strict=True)
        )

    def with_parts(self, parts: Sequence[Part], grid: Grid) -> Self:
        return replace(self, groups=tuple(map(_areas, parts)), letters=tuple(part.name for part in parts))

    def written(self, grid: Grid) -> Written:
        named = zip(self.letters, self.groups, strict=True)
        return {letter: [runs(grid, cells, slanting=False) for cells in group] for letter, group in named}

    def read_off(self, cells: Sequence[int], grid: Grid, digits: Sequence[int], rng: Random) -> Iterator[Part]:
        """Two areas, one after the other."""
        half = len(cells) // 2
        if [digits[cell] for cell in cells[:half]] == [digits[cell] for cell in cells[half:]]:
            yield Part(tuple(cells), "A", (2,))

    def constraints(self, grid: Grid) -> Iterator[Constraint]:
        same = [(digit, digit) for digit in grid.digits]
        for first, *others in self.groups:
            for other in others:
                yield relation(zip(first, other, strict=True), grid.size, same)

    def meaning(self, grid: Grid) -> Iterator[Constraint]:
        """Any two areas of a group are the same, whichever was typed first."""
        same = [(digit, digit) for digit in grid.digits]
        for one, other in (pair for group in self.groups for pair in combinations(group, 2)):
            yield relation(zip(one, other, strict=True), grid.size, same)

    def holds(self, grid: Grid, digits: Sequence[int]) -> bool:
        return all(
            [digits[cell] for cell in one] == [digits[cell] for cell in other]
            for group in self.groups
            for one, other in combinations(group, 2)
        )

    def sentence(self, words: Catalogue) -> str:
        if len(self.groups) == 1:
            areas = len(self.groups[0])
            return words.say("clone-sentence", n=areas, number=words.number(areas))
        return words.say("clone-sentence-letters")

    def spoken(self, words: Catalogue, grid: Grid) -> Iterator[str]:
        for letter, group in zip(self.letters, self.groups, strict=True):
            twins = []
            for cells in zip(*group, strict=True):
                alike = words.joined([cell_said(words, grid, cell) for cell in cells], "alike")
                twins.append(alike)
            yield words.say("clone-spoken", letter=letter, twins="; ".join(twins))

    def marks(self, frame: Frame) -> Iterator[Mark]:
        hatch, edge = Stroke(max(0.25, frame.thin() * 0.6), THIN), Stroke(frame.thin() + 0.2)
        for letter, group in zip(self.letters, self.groups, strict=True):
            for cells in group:
                of = (f"clone {letter} at {frame.grid.name(cells[0])}",)
                inset = frame.inset(cells, INSET)
                yield Mark(Layer.FILL, hatching(frame, cells, inset, hatch), of, "hatching", 0.35)
                yield Mark(Layer.FILL, outline(frame, cells, inset, edge), of)
                for item in lettered(frame, InCell(cells[0], SPOTS, letter), letter):
                    yield Mark(Layer.FIGURE, item, of)

    def claims(self, grid: Grid) -> Iterator[PlaceClaim]:
        for letter, group in zip(self.letters, self.groups, strict=True):
            for cells in group:
                yield Outlined(cells, INSET)
                yield InCell(cells[0], SPOTS, letter)

    @classmethod
    def sample(cls) -> Sample:
        # A grid without boxes, so that twins have room in two columns.
        return Sample(cls((((0, 4), (5, 9)),), ("A",)), Grid(4, ()), 3, 2)

    def deductions(self, position: Position) -> Iterator[Deduction]:
        """Twins keep only the digits that each of them can hold."""
        for letter, group in zip(self.letters, self.groups, strict=True):
            for twins in zip(*group, strict=True):
                removed = alike(position, twins)
                if removed:
                    mark = self._refer(letter, group)
                    yield Deduction(Rung.SIMPLE, len(twins), twins, removed, mark, SameDigit(twins))

    def references(self, grid: Grid) -> tuple[MarkRef, ...]:
        return tuple(self._refer(*named) for named in zip(self.letters, self.groups, strict=True))

    def _refer(self, letter: str, group: Group) -> MarkRef:
        return MarkRef(self.kind, tuple(cell for area in group for cell in area), Lettered(letter), letter)


def _areas(part: Part) -> Group:
    (count,) = part.value
    size = len(part.cells) // count
    return tuple(tuple(sorted(part.cells[start : start + size])) for start in range(0, len(part.cells), size))


def _areas_by_letter(body: Node, grid: Grid, collector: Collector) -> dict[str, list[Area]] | None:
    if isinstance(body, Word) and is_picture(body, grid):
        letters = read_letters(body, "the clone", grid, collector)
        if letters is None:
            return None
        return {a.letter: [Area(cells, a.place, a.letter) for cells in grid.pieces(a.cells)] for a in letters}
    if not isinstance(body, Table):
        hint = "write a letter and a colon, and under it the areas as a list; or draw them as a picture"
        collector.error(body.place, "not-clones", "clones are listed by letter", hint)
        return None
    named: dict[str, list[Area]] = {}
    sound = bool(body.entries)
    for key, value in body.entries:
        if len(key.value) != 1 or not key.value.isalpha():
            collector.error(key.place, "clone-letter", f"a clone is named by one letter, not “{key.value}”")
            sound = False
        what = f"clone {key.value}"
        areas = [read_area(node, what, grid, collector) for node in read_items(value, what, collector)]
        named[key.value] = [area for area in areas if area is not None]
        sound &= bool(areas) and len(named[key.value]) == len(areas)
    return named if sound else None


def _sound(letter: str, areas: list[Area], grid: Grid, collector: Collector) -> bool:
    """Are these clones of each other, and is there room for the same digits in all of them?"""
    first = areas[0]
    if len(areas) < 2:
        hint = "areas that share a side are one area in a picture; list these by their cells"
        collector.error(first.place, "clone-alone", f"clone {letter} is a single area and needs at least two", hint)
        return False
    for area in areas[1:]:
        if _shape(first, grid) != _shape(area, grid):
            at = grid.name(first.cells[0]), grid.name(area.cells[0])
            text = f"the areas of clone {letter} at {at[0]} and {at[1]} differ in shape"
            collector.error(area.place, "clone-shape", text, "clones are moved, never turned or mirrored")
            return False
    for one, other in combinations(areas, 2):
        clash = next((pair for pair in zip(one.cells, other.cells, strict=True) if sees(grid, *pair)), None)
        if clash:
            text = f"clone {letter} asks for the same digit at {cells_listed(grid, clash)}, which can't be equal"
            collector.error(other.place, "clone-clash", text, "they share a row, a column or a region")
            return False
    return True


def _shape(area: Area, grid: Grid) -> list[tuple[int, int]]:
    row, column = grid.row(area.cells[0]), grid.column(area.cells[0])
    return [(grid.row(cell) - row, grid.column(cell) - column) for cell in area.cells]
