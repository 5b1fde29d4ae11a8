"""Room that marks ask for where several may meet, and the places they are given.

A rule says what it wants with claims, without knowing of other rules; `allot` decides for all of them at once. All
lengths are in cells, so that a puzzle is drawn alike at every size. In a cell, (0, 0) is its top left corner.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import NamedTuple, TypeAlias

Pair: TypeAlias = tuple[int, int]

Chain: TypeAlias = tuple[int, ...]


class Box(NamedTuple):
    """A place in a cell."""

    left: float
    top: float
    right: float
    bottom: float

    def meets(self, other: Box) -> float:
        """The area that two boxes share."""
        across = min(self.right, other.right) - max(self.left, other.left)
        down = min(self.bottom, other.bottom) - max(self.top, other.top)
        return across * down if across > 0 and down > 0 else 0.0


@dataclass(frozen=True, slots=True)
class OnBorder:
    """A mark that sits on the border of two cells, in the grid's order: `long` along it, `wide` across it."""

    pair: Pair
    long: float
    wide: float


@dataclass(frozen=True, slots=True)
class OnCorner:
    """A mark around the corner of four cells, in the grid's order. It stands where it is: others make room."""

    cells: tuple[int, ...]
    radius: float


@dataclass(frozen=True, slots=True)
class InCell:
    """Figures or a sign that may stand in one of several boxes of a cell, the one liked best first.

    `what` tells those apart that one rule has in one cell. A `late` one chooses after all others.
    """

    cell: int
    boxes: tuple[Box, ...]
    what: str = ""
    late: bool = False


@dataclass(frozen=True, slots=True)
class Around:
    """A shape around the middle of a cell that reaches `radius` from it, and `rim` inwards from there. Those of less
    `depth` lie around the others: 0 is a sign of the cell, 1 an open end of a line, 2 a filled one, which would hide
    what is around it."""

    cell: int
    radius: float
    depth: int = 2
    rim: float = 0.0


@dataclass(frozen=True, slots=True)
class Outlined:
    """An outline inside the edges of an area, `inset` from them; a `firm` one does not move."""

    cells: tuple[int, ...]
    inset: float
    firm: bool = False


@dataclass(frozen=True, slots=True)
class Along:
    """A line through the middles of a chain's cells that reaches `half` to both sides; a `firm` one does not move.

    `signs` are the pairs of cells between which it has a sign of its own, which reaches `sign` along their border.
    Lines of one rule with the same `bundle` lie on each other on purpose.
    """

    chain: Chain
    half: float
    signs: tuple[Pair, ...] = ()
    sign: float = 0.0
    bundle: int = -1
    firm: bool = False


PlaceClaim: TypeAlias = OnBorder | OnCorner | InCell | Around | Outlined | Along


class Seat(NamedTuple):
    """A place on a border: how far from its middle, to the right or down, and how large the mark may be there."""

    along: float = 0.0
    scale: float = 1.0


class Lane(NamedTuple):
    """How far to the right of the middle of its way a line runs, and how broad it may be."""

    aside: float = 0.0
    scale: float = 1.0


@dataclass(frozen=True, slots=True)
class Places:
    """What the claims of one rule were given. What is not named here stands where it likes best."""

    seats: dict[Pair, Seat] = field(default_factory=dict)
    boxes: dict[InCell, Box] = field(default_factory=dict)
    radii: dict[int, float] = field(default_factory=dict)
    insets: dict[tuple[int, ...], float] = field(default_factory=dict)
    lanes: dict[Chain, Lane] = field(default_factory=dict)
    ringed: dict[Pair, float] = field(default_factory=dict)
    """Pairs of cells that touch at a corner with a mark around it, and the radius of that mark."""


FREE = Places()
"""Every mark alone in its grid."""
