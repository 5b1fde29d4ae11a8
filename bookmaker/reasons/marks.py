"""Which mark of which rule is meant, by what is printed and where. No words.

A `MarkRef` names a mark for a reader: the thermometer from r1c1 to r4c1, the cage of 17 at r1c2, the X-sum 23 at the
left of row 3. Equal references are the same mark.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from typing import TypeAlias

from bookmaker.reasons.roles import Cell, Cells


@dataclass(frozen=True, slots=True)
class Line:
    """From its first cell to its last."""

    first: Cell
    last: Cell


@dataclass(frozen=True, slots=True)
class At:
    """At a cell, or an area that is called by its first cell."""

    cell: Cell


@dataclass(frozen=True, slots=True)
class Between:
    """On the border, or at the corner, between two cells."""

    one: Cell
    other: Cell


@dataclass(frozen=True, slots=True)
class Outside:
    """Outside the grid: at the “left” or “right” of a row, at the “top” or “bottom” of a column, counted from 1.
    `square` is the letter of the grid where several overlap."""

    side: str
    line: int
    square: str = ""


@dataclass(frozen=True, slots=True)
class Slanting:
    """Outside the grid at the end of a diagonal that starts in a cell and goes “down-right”, “up-left” …"""

    start: Cell
    way: str


@dataclass(frozen=True, slots=True)
class Lettered:
    """By the letter printed in it."""

    letter: str


@dataclass(frozen=True, slots=True)
class Joined:
    """Several marks of one kind that hang together, by the cells that they join."""

    cells: Cells


@dataclass(frozen=True, slots=True)
class Whole:
    """In the whole grid: a rule that draws nothing."""


Anchor: TypeAlias = Line | At | Between | Outside | Slanting | Lettered | Joined | Whole


@dataclass(frozen=True, slots=True)
class MarkRef:
    """A mark of a rule `kind`: its `cells` in order, where it is anchored, its `value` as printed (“17”, “2457”), and
    its `variety` where a kind has several marks (“white”, “black”, “missing”)."""

    kind: str
    cells: Cells
    anchor: Anchor
    value: str = ""
    variety: str = ""

    @classmethod
    def line(cls, kind: str, cells: Sequence[Cell]) -> MarkRef:
        """A line through cells."""
        return cls(kind, tuple(cells), Line(cells[0], cells[-1]))

    @classmethod
    def at(cls, kind: str, cells: Sequence[Cell], value: str = "", variety: str = "") -> MarkRef:
        """A mark in a cell, or an area."""
        return cls(kind, tuple(cells), At(cells[0]), value, variety)

    @classmethod
    def between(cls, kind: str, pair: Sequence[Cell], value: str = "", variety: str = "") -> MarkRef:
        """A mark between two cells, the first and the last of those named."""
        return cls(kind, tuple(pair), Between(pair[0], pair[-1]), value, variety)

    @classmethod
    def joined(cls, kind: str, cells: Iterable[Cell], variety: str = "") -> MarkRef:
        """Marks that join these cells."""
        named = tuple(cells)
        return cls(kind, named, Joined(named), variety=variety)

    @classmethod
    def whole(cls, kind: str) -> MarkRef:
        """A rule that holds everywhere."""
        return cls(kind, (), Whole())
