"""Marks that all matter, and room for givens that leave each its work.

In: a sketch, and how many marks of each rule are wanted. Out: a choice of givens and marks that leaves one solution and
in which no mark can be spared, also not for itself alone; and the board of the cells where givens may stand without
making a mark idle. A mark matters if without it another grid comes in, so no given may stand where that grid differs.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from random import Random

from bookmaker.draft.sketch import Sketch

Counts = Mapping[int, tuple[int, int]]
"""By a rule's number, how many of its marks are wanted, from and to. Rules that are not named keep all."""

ATTEMPTS = 16
"""Numbers of givens for which marks are chosen."""

SWAPS = 6
"""How often an idle mark makes room for others before the next attempt."""

CHOICES = 4
"""Ways to choose grids for the marks to shut out."""


def chosen(sketch: Sketch, counts: Counts, rng: Random) -> int | None:
    """A choice in which every mark matters, in numbers as wanted; None where that fails."""
    fewest = sketch.thinned(sketch.offered, sketch.shuffled(sketch.given_orbits, rng)) & sketch.cells
    more = [orbit for orbit in sketch.shuffled(sketch.given_orbits, rng) if not orbit & (fewest | ~sketch.open)]
    optional = [orbit for orbit in sketch.mark_orbits if all(mark.rule in counts for _, mark in sketch.numbered(orbit))]
    low, high = 0, len(more)
    for _ in range(ATTEMPTS if optional else 1):
        # The fewer givens there are, the more marks are needed.
        at = rng.randint(low, max(low, (low + high) // 2)) if optional else 0
        board = fewest | sum(more[:at]) | sketch.offered & ~sketch.cells
        board = sketch.thinned(board, sketch.shuffled(optional, rng))
        board = sketch.thinned(board, sketch.sparing(board, rng))
        too_few, too_many = _astray(sketch, board, counts)
        if too_few and at == 0:
            return None
        if too_few or too_many:
            low, high = (low, max(at - 1, low)) if too_few else (at + 1, max(high, at + 1))
            continue
        found = _without_idle(sketch, board, optional, counts, rng)
        if found is not None:
            return found
    return None


def _astray(sketch: Sketch, board: int, counts: Counts) -> tuple[bool, bool]:
    """Are marks of some rule too few; too many?"""
    numbers = {rule: sketch.count(board, rule) for rule in counts}
    too_few = any(numbers[rule] < least for rule, (least, _) in counts.items())
    return too_few, any(numbers[rule] > most for rule, (_, most) in counts.items())


def _without_idle(sketch: Sketch, board: int, optional: Sequence[int], counts: Counts, rng: Random) -> int | None:
    """The choice with other marks for those that matter only together with their images."""
    barred = 0
    for _ in range(SWAPS):
        idle = sketch.idle(board)
        if not idle:
            return board
        bad = next((orbit for orbit in optional if orbit >> idle[0] & 1), 0)
        if not bad:
            return None
        barred |= bad
        here = [orbit for orbit in optional if orbit & board & ~bad]
        away = [orbit for orbit in optional if not orbit & (board | barred)]
        # Those that are there already go last, so that only what takes the place of the bad one comes in.
        ways = [*sketch.shuffled(away, rng), *sketch.shuffled(here, rng)]
        board = board & ~bad | sum(away)
        if not sketch.unique(board):
            board = _completed(sketch, board, rng)
        board = sketch.thinned(sketch.thinned(board, ways), sketch.shuffled(sketch.given_orbits, rng))
        if any(_astray(sketch, board, counts)):
            return None
    return None


def _completed(sketch: Sketch, board: int, rng: Random) -> int:
    """A choice with givens added, orbit by orbit, until it leaves one solution."""
    for orbit in sketch.shuffled(sketch.given_orbits, rng):
        if sketch.unique(board):
            break
        board |= orbit if any(orbit & broken for broken in sketch.left_by(board)) else 0
    return board if sketch.unique(board) else board | sketch.open


def room_for_givens(sketch: Sketch, board: int, rng: Random) -> int:
    """The cells where givens may be added to a choice in which every mark matters, so that each goes on to matter."""
    for _ in range(CHOICES):
        shut = 0
        bits = [bit for bit, _ in sketch.numbered(board)]
        for bit in rng.sample(bits, len(bits)):
            boards = [sketch.closed(broken) for broken in sketch.left_by(board & ~(1 << bit))]
            near = min(rng.sample(boards, min(len(boards), 4)), key=lambda cells: (cells & ~shut).bit_count())
            shut |= _nearer(sketch, board, bit, near, shut, rng)
        if sketch.unique(board | sketch.open & ~shut):
            return sketch.open & ~shut
    return board & sketch.cells


def _nearer(sketch: Sketch, board: int, bit: int, differing: int, shut: int, rng: Random) -> int:
    """The cells, within these, where a grid differs that only this mark shuts out: as few as can easily be found beyond
    those that are `shut` already."""
    size = differing.bit_count()
    while size > 2:
        size = (size + 1) // 2
        for more in _pieces(sketch, differing & ~shut, size, rng):
            given = board | sketch.open & ~differing | more
            if sketch.leaves_others(given & ~(1 << bit)):
                found = (sketch.closed(broken) for broken in sketch.left_by(given & ~(1 << bit)))
                differing = min(found, key=int.bit_count)
                break
    return differing


def _pieces(sketch: Sketch, cells: int, size: int, rng: Random) -> Iterator[int]:
    """Cells in pieces of about so many, orbit by orbit in random order."""
    piece = 0
    for orbit in sketch.shuffled(sketch.given_orbits, rng):
        if orbit & cells:
            piece |= orbit & cells
            if piece.bit_count() >= size:
                yield piece
                piece = 0
    if piece:
        yield piece
