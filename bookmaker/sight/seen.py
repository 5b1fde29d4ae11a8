"""What is left of each mark under all that is painted after it.

The shape of a mark is what is dark of it: it is looked for at points spread over its strokes, figures and filled signs.
A point is lost where anything painted later covers it, whatever its grey: white hides, and a line on a line makes one
of the two. What the mark itself paints over (the body of a tube over its outline) was never meant to be seen.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from itertools import islice

from bookmaker.sight.shapes import Shape

LEFT_OF_STROKES = 0.6
"""So much of a mark's strokes has to be left beside the other marks. A line may be crossed, a ring stand on it."""

LEFT_UNDER_DIGITS = 0.3
"""So much of them has to be left under the digits as well, which stand on every line through their cells."""

LEFT_OF_SOLID = 0.8
"""So much of a figure or of a small filled sign has to be left: half a figure is another one."""

CLEARLY = 0.85
"""Where so much is left even if all that lies near covers its whole box, the mark is seen."""


@dataclass(frozen=True, slots=True)
class Drawn:
    """A shape and whose it is: the names of its mark, none for the grid's own lines and digits, and which part of it.

    `least` is the share of it that has to be left, where it is not the usual one. What is `of_grid` may have a name as
    well, so that it is looked at, but is no mark.
    """

    shape: Shape
    of: tuple[str, ...] = ()
    part: str = ""
    least: float | None = None
    of_grid: bool = False


@dataclass(frozen=True, slots=True)
class Hidden:
    """Too little is left of a mark, or of one part or figure of it: `left` of 1. `by` is what hides most of it, nothing
    for digits and lines of the grid."""

    of: tuple[str, ...]
    part: str
    left: float
    by: tuple[str, ...]


@dataclass(slots=True)
class _Tally:
    """Points of shapes: all of them, those left beside other marks, those left under everything; and what hides."""

    all: int = 0
    beside: int = 0
    left: int = 0
    by: Counter[tuple[str, ...]] = field(default_factory=Counter)


def hidden(painted: Sequence[Drawn]) -> list[Hidden]:
    """The marks of which too little is seen: figures and filled signs one by one, strokes of a part together."""
    parts: dict[tuple[object, ...], list[tuple[int, Drawn]]] = {}
    for at, drawn in enumerate(painted):
        if drawn.of:
            alone = at if drawn.shape.solid else None
            parts.setdefault((drawn.of, drawn.part, alone), []).append((at, drawn))
    later = _Later(painted)
    return [lost for part in parts.values() for lost in _lost(part, later)]


def _lost(part: Sequence[tuple[int, Drawn]], later: _Later) -> Iterable[Hidden]:
    """The part, if too little of it is left."""
    over = [(drawn, later.over(at, drawn)) for at, drawn in part]
    if all(other.of == drawn.of for drawn, others in over for other in others):
        return
    points = [(point, others) for drawn, others in over for point in drawn.shape.points]
    of, name, solid = part[0][1].of, part[0][1].part, part[0][1].shape.solid
    clear = sum(not any(other.of != of and other.shape.near(point) for other in others) for point, others in points)
    if clear >= CLEARLY * len(points):
        return
    tally = _Tally()
    for point, others in points:
        covers = [other for other in others if other.shape.covers(point)]
        if not any(other.of == of for other in covers):
            tally.all += 1
            tally.left += not covers
            tally.beside += not any(other.of and not other.of_grid for other in covers)
            tally.by.update(other.of for other in covers)
    if solid:
        if tally.left < LEFT_OF_SOLID * tally.all:
            yield _hidden(of, name, tally.left, tally)
    elif tally.beside < (part[0][1].least or LEFT_OF_STROKES) * tally.all:
        yield _hidden(of, name, tally.beside, tally)
    elif tally.left < LEFT_UNDER_DIGITS * tally.all:
        yield _hidden(of, name, tally.left, tally)


def _hidden(of: tuple[str, ...], part: str, left: int, tally: _Tally) -> Hidden:
    ((by, _),) = tally.by.most_common(1)
    return Hidden(of, part, left / tally.all, by)


Squares = dict[tuple[int, int], list[tuple[int, Drawn]]]


class _Later:
    """What is painted after a shape, looked up by place: all that hides, and dark strokes of the grid, which cross what
    they cross but spoil a figure."""

    def __init__(self, painted: Sequence[Drawn]) -> None:
        self._all: Squares = {}
        self._lines: Squares = {}
        first = next((at for at, drawn in enumerate(painted) if drawn.of), len(painted))
        for at, drawn in islice(enumerate(painted), first + 1, None):  # what lies under all marks hides none
            squares = self._all if drawn.of or not _dark_stroke(drawn.shape) else self._lines
            for square in drawn.shape.squares:
                squares.setdefault(square, []).append((at, drawn))

    def over(self, at: int, drawn: Drawn) -> list[Drawn]:
        """What is painted after number `at` and can take something from it. From a dark sign, a dark stroke can't."""
        shape, found = drawn.shape, dict[int, Drawn]()
        left, top, right, bottom = shape.box
        sign = shape.solid and not shape.letter
        for squares in (self._all, self._lines) if shape.letter else (self._all,):
            for square in shape.squares:
                for index, other in reversed(squares.get(square, ())):
                    if index <= at:
                        break
                    box = other.shape.box
                    if box[0] < right and left < box[2] and box[1] < bottom and top < box[3]:
                        found[index] = other
        return [found[index] for index in sorted(found) if not (sign and _dark_stroke(found[index].shape))]


def _dark_stroke(shape: Shape) -> bool:
    return shape.fill is None and shape.dark
