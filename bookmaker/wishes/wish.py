"""A wish as data. Made by `wishes.reading`, or by whoever wants a puzzle; nothing later changes it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Literal, TypeAlias

from bookmaker.puzzle.grid import CLASSIC, Grid
from bookmaker.rules.common.contract import Rule
from bookmaker.source.diagnostics import Place
from bookmaker.wishes.span import Span

ANY_BAND = Span(1, 5)

Where: TypeAlias = Literal["", "early", "middle", "late"]


@dataclass(frozen=True, slots=True)
class Amount:
    """How many marks, and of how many cells each: from and to."""

    least: int
    most: int
    shortest: int
    longest: int


@dataclass(frozen=True, slots=True)
class RuleWish:
    """A rule that is wanted.

    `rule` has its marks drawn if `amount` is None, else it is the rule before it has marks. With `places`, these cells
    carry the marks, and their figures are read off the solution. With `shapes`, marks of these shapes are used, moved
    and turned; else they are drawn by chance.
    """

    rule: Rule
    amount: Amount | None = None
    places: tuple[tuple[int, ...], ...] = ()
    shapes: tuple[tuple[int, ...], ...] = ()


@dataclass(frozen=True)
class Wish:
    """What puzzles should be. Everything has a value that asks for nothing.

    `pattern` are the cells of the givens, if they are fixed; `fixed` are digits that must be given, 0 elsewhere;
    `difficulty` is on the scale on which a band is the number before the point. `want` are techniques, each by its
    names in a path, with how often they should come; `refused` ones must not come; with `singles_only`, nothing comes
    but singles and what marks say by themselves. Bottlenecks are counted and stand in a part of the path.
    `texts` are the puzzle's lines in the manifest by name, in which “{number}” counts the puzzles.
    """

    grid: Grid = CLASSIC
    rules: tuple[RuleWish, ...] = ()
    puzzles: int = 1
    arrangement: str = "half-turn"
    pattern: tuple[int, ...] = ()
    fixed: tuple[int, ...] = ()
    givens: Span | None = None
    bands: Span = ANY_BAND
    difficulty: Span | None = None
    want: Mapping[tuple[str, ...], Span] = field(default_factory=dict)
    refused: frozenset[str] = frozenset()
    singles_only: bool = False
    bottlenecks: Span | None = None
    where: Where = ""
    openings: Span | None = None
    mirrored: bool = False
    idle_marks: bool = False
    texts: Mapping[str, str] = field(default_factory=dict)
    tags: tuple[str, ...] = ()
    seed: int = 1
    place: Place = field(default=Place("wish"))

    @property
    def marked(self) -> bool:
        """Does it ask for any rule?"""
        return bool(self.rules)
