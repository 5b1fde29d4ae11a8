"""Fenced areas as typed: a picture of letters with a table of figures, or a list of cells, each with its figure or not.

In: a manifest body. Out: areas with what is typed for them and where; or diagnostics. What figures may be, a kind says.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from typing import Generic, TypeVar

from bookmaker.puzzle.grid import Grid
from bookmaker.rules.common.area import Area, is_picture, read_area, read_letters
from bookmaker.rules.common.words.wording import counted
from bookmaker.source.diagnostics import Collector, Place, nearest
from bookmaker.source.placed import Node, Table, Word, read_fields, read_items

Value = TypeVar("Value")

LISTED = "cages"
"""The name of the list, where options stand beside it."""


@dataclass(frozen=True, slots=True)
class Typed(Generic[Value]):
    """An area with its figure, None where it has none, and where that stands."""

    area: Area
    value: Value | None
    place: Place

    def called(self, noun: str, grid: Grid) -> str:
        """“cage a”, “the cage at r1c1”."""
        return f"{noun} {self.area.letter}" if self.area.letter else f"the {noun} at {grid.name(self.area.cells[0])}"


@dataclass(frozen=True, slots=True)
class Reader(Generic[Value]):
    """How a kind is typed: its `noun`, the word for the figure of one area and of several, its options; and how a
    figure is read, with what it is called."""

    noun: str
    figure: str
    figures: str
    options: tuple[str, ...]
    value: Callable[[Node, str], Value | None]

    def areas(self, body: Node, grid: Grid, collector: Collector) -> Iterator[Typed[Value]]:
        """Areas as typed, as far as they can be read."""
        if isinstance(body, Word) and is_picture(body, grid):
            for area in read_letters(body, f"the {self.noun}", grid, collector) or ():
                yield Typed(area, None, area.place)
        elif isinstance(body, Table) and (body.get("picture") or body.get(self.figures)):
            yield from self._drawn(body, grid, collector)
        elif isinstance(body, Table) and any(body.get(name) for name in (LISTED, *self.options)):
            fields = read_fields(body, f"a list of {self.noun}s", collector, (LISTED, *self.options), (LISTED,))
            if LISTED in fields:
                yield from self._listed(fields[LISTED], grid, collector)
        else:
            yield from self._listed(body, grid, collector)

    def _listed(self, body: Node, grid: Grid, collector: Collector) -> Iterator[Typed[Value]]:
        items = (body,) if isinstance(body, Table) else read_items(body, f"the {self.noun}", collector)
        if not items:
            text = f"no {self.noun} is listed here"
            collector.error(body.place, "no-areas", text, "name one, or leave out the whole entry")
        for item in items:
            area, value, place = self._item(item, grid, collector)
            if area is not None:
                yield Typed(area, value, place)

    def _item(self, item: Node, grid: Grid, collector: Collector) -> tuple[Area | None, Value | None, Place]:
        if not isinstance(item, Table):
            return read_area(item, f"the {self.noun}", grid, collector), None, item.place
        fields = read_fields(item, f"a {self.noun}", collector, ("cells", self.figure), ("cells",))
        area = read_area(fields["cells"], f"the {self.noun}", grid, collector) if "cells" in fields else None
        if self.figure not in fields:
            return area, None, item.place if area is None else area.place
        figure = fields[self.figure]
        return area, self.value(figure, f"the {self.figure}"), figure.place

    def _drawn(self, body: Table, grid: Grid, collector: Collector) -> Iterator[Typed[Value]]:
        what = f"a picture of {self.noun}s"
        fields = read_fields(body, what, collector, ("picture", self.figures, *self.options), ("picture",))
        picture = fields.get("picture")
        if picture is None:
            return
        if not isinstance(picture, Word):
            text = f"the picture of {self.noun}s should be a block of text after “picture: |”"
            collector.error(picture.place, "not-text", text)
            return
        areas = read_letters(picture, f"the {self.noun}", grid, collector)
        if areas is None:
            return
        found = self._figures(fields.get(self.figures), [area.letter for area in areas], collector)
        for area in areas:
            value, place = found.get(area.letter, (None, area.place))
            yield Typed(area, value, place)

    def _figures(
        self, table: Node | None, letters: Sequence[str], collector: Collector
    ) -> Mapping[str, tuple[Value, Place]]:
        if table is None:
            return {}
        if not isinstance(table, Table):
            text = f"the {self.figures} should be lines of “letter: {self.figure}”"
            collector.error(table.place, "not-a-table", text, "or all in one line, in braces: {a: 12, b: 9}")
            return {}
        found: dict[str, tuple[Value, Place]] = {}
        for letter, node in table.entries:
            value = self.value(node, f"the {self.figure} of {self.noun} {letter.value}")
            if letter.value not in letters:
                text = f"there is no {self.noun} “{letter.value}” in the picture"
                collector.error(letter.place, "unknown-letter", text, nearest(letter.value, letters))
            elif value is not None:
                found[letter.value] = value, node.place
        return found


def check_apart(typed: Sequence[Typed[Value]], noun: str, grid: Grid, collector: Collector, differ: bool) -> None:
    """What no fenced area may be: in pieces, over another, or larger than there are digits where these `differ`."""
    owner: dict[int, Area] = {}
    for one in typed:
        area, name = one.area, one.called(noun, grid)
        pieces = grid.pieces(area.cells)
        if len(pieces) > 1:
            text = f"{name} is in pieces: {grid.name(pieces[1][0])} shares no side with the cells before it"
            hint = f"use another letter for another {noun}" if area.letter else f"list it as two {noun}s"
            collector.error(area.place, "cage-split", text, hint)
        taken = next((cell for cell in area.cells if cell in owner), None)
        if taken is not None:
            text = f"{name} overlaps the {noun} at {grid.name(owner[taken].cells[0])} in {grid.name(taken)}"
            collector.error(area.place, "cages-overlap", text)
        owner.update(dict.fromkeys(area.cells, area))
        if differ and len(area.cells) > grid.size:
            text = f"{name} has {counted(len(area.cells), 'cell')}, but there are only {grid.size} different digits"
            collector.error(area.place, "cage-large", text)
