"""Full houses, all digits at once: hidden singles and locked candidates by folding the whole grid over itself.

In: the houses of a problem that hold every digit. Out: `Houses`, which answers for a whole state at a time.

Rows are one shape laid down at many places; so are columns, and so are boxes. Such a family is folded: shifting the
state by the distance between two cells of the shape lays them over each other in every house and for every digit,
and two saturating counters (“once”, “twice”) tell how many of the cells hold a digit. A house is folded in two
stages where it can be, first within segments (three cells of a row that share a box), then over the segments of
the house. A segment that belongs to two families gives locked candidates: if a digit of one house stands in one
segment only, the other segments of the other house lose it.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from bookmaker.solve.candidates import CandidateLayout

Cells = tuple[int, ...]


@dataclass(frozen=True, slots=True)
class Line:
    """A family of houses made of segments: shifts from a house's first segment to its others, and where it starts."""

    shifts: tuple[int, ...]
    starts: int


@dataclass(frozen=True, slots=True)
class Segments:
    """Equal pieces of houses: shifts from a piece's first cell to its others, where the pieces start, and the
    families they make up. `counted` are those whose hidden singles are looked for here and not elsewhere."""

    shifts: tuple[int, ...]
    starts: int
    counted: tuple[Line, ...]
    crossings: tuple[tuple[Line, Line], ...]


@dataclass(frozen=True, slots=True)
class Houses:
    """The families of full houses of a problem, ready for folding; `lone` are the houses that belong to none."""

    segments: tuple[Segments, ...]
    lone: tuple[Cells, ...]

    def hidden(self, state: int) -> int:
        """Every candidate that is the only place of its digit in some house; -1 if a digit has no place left."""
        found = 0
        for part in self.segments:
            once, twice = state, 0
            for shift in part.shifts:
                other = state >> shift
                twice |= once & other
                once |= other
            once &= part.starts
            twice &= part.starts
            laid = 0
            for line in part.counted:
                any_, many = once, twice
                for shift in line.shifts:
                    other = once >> shift
                    many |= any_ & other | twice >> shift
                    any_ |= other
                starts = line.starts
                if any_ & starts != starts:
                    return -1
                single = starts ^ (starts & many)
                laid |= single
                for shift in line.shifts:
                    laid |= single << shift
            found |= laid
            for shift in part.shifts:
                found |= laid << shift
        return found & state

    def locked(self, state: int) -> int:
        """Every candidate that locked candidates rule out."""
        out = 0
        for part in self.segments:
            if not part.crossings:
                continue
            present = state
            for shift in part.shifts:
                present |= state >> shift
            present &= part.starts
            gone = 0
            for one, other in part.crossings:
                gone |= _confined(present, one, other)
            if gone:
                out |= _laid(gone, part.shifts)
        return out & state

    def doubles(self, state: int) -> int:
        """The two places of some digit that has exactly two in a house; 0 if there is none."""
        for part in self.segments:
            once, twice, thrice = state, 0, 0
            for shift in part.shifts:
                other = state >> shift
                thrice |= twice & other
                twice |= once & other
                once |= other
            once, twice, thrice = once & part.starts, twice & part.starts, thrice & part.starts
            for line in part.counted:
                one, two, three = once, twice, thrice
                for shift in line.shifts:
                    once_there, twice_there = once >> shift, twice >> shift
                    three |= thrice >> shift | two & once_there | one & twice_there
                    two |= twice_there | one & once_there
                    one |= once_there
                pairs = (two ^ (two & three)) & line.starts
                if pairs:
                    return _laid(_laid(pairs & -pairs, line.shifts), part.shifts) & state
        return 0


def _laid(starts: int, shifts: tuple[int, ...]) -> int:
    """Each start together with what lies at the shifts from it."""
    total = starts
    for shift in shifts:
        total |= starts << shift
    return total


def _confined(present: int, one: Line, other: Line) -> int:
    """Segments that lose a digit because in a crossing house of family `one` it stands in a single segment."""
    any_, many = present, 0
    for shift in one.shifts:
        there = present >> shift
        many |= any_ & there
        any_ |= there
    single = one.starts ^ (one.starts & many)
    if not single:
        return 0
    locked = _laid(single, one.shifts) & present
    crossed = locked
    for shift in other.shifts:
        crossed |= locked >> shift
    crossed &= other.starts
    return (_laid(crossed, other.shifts) & present) ^ locked


def gather(layout: CandidateLayout, houses: Iterable[Cells]) -> Houses:
    """Sort full houses into families of one shape and find the segments that the families share."""
    families: dict[Cells, list[int]] = {}
    for house in dict.fromkeys(tuple(sorted(house)) for house in houses):
        families.setdefault(tuple(cell - house[0] for cell in house), []).append(house[0])
    shapes = {shape: firsts for shape, firsts in families.items() if len(firsts) >= 3}
    lone = tuple(
        tuple(first + offset for offset in shape)
        for shape, firsts in families.items()
        if shape not in shapes
        for first in firsts
    )
    return Houses(tuple(_segments(layout, shapes)), lone)


def _segments(layout: CandidateLayout, families: dict[Cells, list[int]]) -> Iterable[Segments]:
    """Segments shared by two families first, then the families that share none, folded by themselves."""
    counted: set[Cells] = set()
    order = list(families)
    for i, shape in enumerate(order):
        for other in order[i + 1 :]:
            piece = _shared_piece(shape, families[shape], other, families[other])
            if piece is None:
                continue
            lines = {s: _line(layout, s, families[s], piece) for s in (shape, other)}
            fresh = tuple(line for s, line in lines.items() if s not in counted)
            counted.update(lines)
            both = (lines[shape], lines[other])
            yield Segments(
                tuple(offset * layout.width for offset in piece[1:]),
                layout.bits(_starts(shape, families[shape], piece) or ()),
                fresh,
                (both, both[::-1]),
            )
    for shape in order:
        if shape not in counted:
            piece = next((p for p in _pieces(shape) if _split(shape, p) is not None), (0,))
            yield Segments(
                tuple(offset * layout.width for offset in piece[1:]),
                layout.bits(_starts(shape, families[shape], piece) or ()),
                (_line(layout, shape, families[shape], piece),),
                (),
            )


def _pieces(shape: Cells) -> Iterable[Cells]:
    """Evenly spaced pieces that a shape might be made of, longest first."""
    step = shape[1] - shape[0] if len(shape) > 1 else 1
    lengths = [length for length in range(len(shape) // 2, 1, -1) if len(shape) % length == 0]
    return (tuple(step * i for i in range(length)) for length in lengths)


def _split(shape: Cells, piece: Cells) -> Sequence[int] | None:
    """Where copies of the piece must lie to make up the shape; None if they cannot."""
    left, starts = set(shape), []
    while left:
        start = min(left)
        copy = {start + offset for offset in piece}
        if not copy <= left:
            return None
        left -= copy
        starts.append(start)
    return starts


def _starts(shape: Cells, firsts: Sequence[int], piece: Cells) -> set[int] | None:
    """First cells of all pieces of a family; None if the shape is not made of such pieces."""
    offsets = _split(shape, piece)
    return None if offsets is None else {first + offset for first in firsts for offset in offsets}


def _shared_piece(shape: Cells, firsts: Sequence[int], other: Cells, other_firsts: Sequence[int]) -> Cells | None:
    """The longest piece of which both families are made in the same places."""
    for piece in _pieces(shape):
        starts = _starts(shape, firsts, piece)
        if starts is not None and starts == _starts(other, other_firsts, piece):
            return piece
    return None


def _line(layout: CandidateLayout, shape: Cells, firsts: Sequence[int], piece: Cells) -> Line:
    offsets = _split(shape, piece) or ()
    return Line(tuple(offset * layout.width for offset in offsets[1:]), layout.bits(firsts))
