"""Kinds that fence off areas and write something in the corner of each: cages of every sort. The base they share.

A kind says what may stand in a corner, how it is typed and printed, and what it asks. Areas hang together by sides and
share no cell with others of the kind.
"""

from __future__ import annotations

from abc import abstractmethod
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from typing import Any, ClassVar, Generic, Self, TypeVar

from bookmaker.puzzle.grid import Grid
from bookmaker.reasons import MarkRef
from bookmaker.rules.common.area import LETTERS, picture
from bookmaker.rules.common.cagereading import LISTED, Reader, Typed, check_apart
from bookmaker.rules.common.contract import Rule
from bookmaker.rules.common.drawing.fence import INSET, Texture, corner_claim, corner_figures, fence
from bookmaker.rules.common.drawing.frame import Frame, Layer, Mark
from bookmaker.rules.common.drawing.places import Outlined, PlaceClaim
from bookmaker.rules.common.parts import Form, Part, Written, runs
from bookmaker.source.diagnostics import Collector
from bookmaker.source.placed import Node, Table, read_switch

Value = TypeVar("Value")

Cells = tuple[int, ...]

DRAWN_FROM = 5
"""So many cages are typed as a picture rather than a list."""


@dataclass(frozen=True)
class CagedRule(Rule, Generic[Value]):
    """`cages` are cells in the grid's order, each with what its corner says: `bare` where that is nothing."""

    form = Form.AREA
    usual_cells = (2, 4)
    figure_words: ClassVar[tuple[str, str]] = ("total", "totals")
    """What is typed for a corner is called, of one cage and of several."""
    texture: ClassVar[Texture]
    firm: ClassVar[bool] = False
    """Does its fence keep its place where other areas overlap it?"""
    bare: ClassVar[Any]
    """What the corner of a cage says that has nothing in it."""
    needs_figure: ClassVar[bool] = True
    """Must there be something in every corner?"""

    cages: tuple[tuple[Cells, Value], ...]

    @classmethod
    def read(cls, body: Node, grid: Grid, collector: Collector) -> Self | None:
        errors = sum(1 for _ in collector.errors())

        def value(node: Node, what: str) -> Value | None:
            return cls.read_value(node, what, grid, collector)

        typed = list(Reader(cls.noun, *cls.figure_words, cls.options, value).areas(body, grid, collector))
        switches = {name: node for name in cls.options if isinstance(body, Table) and (node := body.get(name))}
        options = {name: bool(read_switch(node, name, collector)) for name, node in switches.items()}
        rule = cls(()).with_options(options)
        check_apart(typed, cls.noun, grid, collector, rule.digits_differ)
        if cls.needs_figure and sum(1 for _ in collector.errors()) == errors:
            for one in (one for one in typed if one.value is None):
                text = f"{one.called(cls.noun, grid)} has no {cls.figure_words[0]}"
                collector.error(one.place, "no-figure", text, f"write it under “{cls.figure_words[0]}:”")
        if sum(1 for _ in collector.errors()) == errors:
            rule.check(typed, grid, collector)
        if sum(1 for _ in collector.errors()) > errors:
            return None
        cages = tuple((one.area.cells, cls.bare if one.value is None else one.value) for one in typed)
        return replace(rule, cages=cages)

    @classmethod
    @abstractmethod
    def read_value(cls, node: Node, what: str, grid: Grid, collector: Collector) -> Value | None:
        """What is typed for a corner; None after a diagnostic."""

    def check(self, typed: Sequence[Typed[Value]], grid: Grid, collector: Collector) -> None:
        """Diagnostics of cages that no digits fill, or that say something else that can't be."""

    @classmethod
    @abstractmethod
    def told(cls, value: Value) -> tuple[str, tuple[int, ...]]:
        """The `name` and the `value` of a `Part`."""

    @classmethod
    @abstractmethod
    def of_part(cls, part: Part) -> Value:
        """The same back again; `bare` where a part has neither."""

    @classmethod
    @abstractmethod
    def typed_as(cls, value: Value, grid: Grid) -> str:
        """A corner as a person types it; empty where it says nothing."""

    @classmethod
    def printed(cls, value: Value, grid: Grid) -> str:
        """A corner as it is printed."""
        return cls.typed_as(value, grid)

    @classmethod
    def blank(cls, grid: Grid) -> Self:
        return cls(())

    def parts(self, grid: Grid) -> tuple[Part, ...]:
        return tuple(Part(cells, *self.told(value)) for cells, value in self.cages)

    def with_parts(self, parts: Sequence[Part], grid: Grid) -> Self:
        return replace(self, cages=tuple((tuple(sorted(part.cells)), self.of_part(part)) for part in parts))

    def figure(self, part: Part, grid: Grid) -> str:
        return self.typed_as(self.of_part(part), grid)

    def written(self, grid: Grid) -> Written:
        one, several = self.figure_words
        options = self.said_options()
        if DRAWN_FROM <= len(self.cages) <= len(LETTERS):
            letters = dict(zip(LETTERS, sorted(self.cages, key=lambda cage: cage[0]), strict=False))
            figures: dict[str, Written] = {
                letter: text for letter, (_, v) in letters.items() if (text := self.typed_as(v, grid))
            }
            drawn = picture({letter: cells for letter, (cells, _) in letters.items()}, grid)
            if not figures and not options:
                return drawn
            return {"picture": drawn} | ({several: figures} if figures else {}) | options
        listed = ((runs(grid, cells, slanting=False), self.typed_as(value, grid)) for cells, value in self.cages)
        items: list[Written] = [{"cells": cells, one: text} if text else cells for cells, text in listed]
        return {LISTED: items, **options} if options else items

    def marks(self, frame: Frame) -> Iterator[Mark]:
        for cells, value in self.cages:
            of = (f"the {self.noun} at {frame.grid.name(cells[0])}",)
            yield from fence(frame, cells, self.texture, of)
            if text := self.printed(value, frame.grid):
                for item in corner_figures(frame, cells[0], text):
                    yield Mark(Layer.FIGURE, item, of)

    def claims(self, grid: Grid) -> Iterator[PlaceClaim]:
        for cells, value in self.cages:
            yield Outlined(cells, INSET, self.firm)
            if text := self.printed(value, grid):
                yield corner_claim(cells[0], text)

    def references(self, grid: Grid) -> tuple[MarkRef, ...]:
        return tuple(self.refer(cells, value, grid) for cells, value in self.cages)

    def refer(self, cells: Cells, value: Value, grid: Grid) -> MarkRef:
        """A cage as a step refers to it."""
        return MarkRef.at(self.kind, cells, self.printed(value, grid))
