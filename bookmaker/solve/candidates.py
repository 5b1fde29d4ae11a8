"""All candidates of a grid in one whole number.

Each cell has a field of `digits` + 1 bits: bit d - 1 of the field says that digit d may still stand there. The top
bit of a field is a guard and stays clear in a state, so that one addition or subtraction works on every field at
once without a carry or a borrow running over into the next cell. A state is therefore a plain int: copying it is
free, and one `&` takes a digit from all its peers. Masks are written as what stays, never as what goes: Python
takes twice as long over a negative number as over a positive one.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from functools import cache

WORD = 30
"""Bits that Python reads from a whole number at once."""


class _Digits(dict[int, tuple[int, ...]]):
    """The digits in a stretch of a few decided cells. Each is worked out once: they are few."""

    def __init__(self, digits: int, cells: int) -> None:
        super().__init__()
        self._full = (1 << digits) - 1
        self._places = range(0, cells * (digits + 1), digits + 1)

    def __missing__(self, stretch: int) -> tuple[int, ...]:
        digits = self[stretch] = tuple((stretch >> at & self._full).bit_length() for at in self._places)
        return digits


@dataclass(frozen=True, eq=False)
class CandidateLayout:
    """Where the candidates stand in a state, and the constants that whole-grid arithmetic needs.

    `candidate_layout` makes one for each size, so that they are compared and hashed by identity.
    """

    cells: int
    digits: int
    width: int
    """Bits from one cell to the next."""
    full: int
    """The mask of all digits."""
    lows: int
    """The lowest bit of every field."""
    guards: int
    """The guard bit of every field."""
    everything: int
    """The state in which every cell may hold every digit."""
    places: tuple[int, ...]
    """For each cell, where its field begins."""
    wholes: tuple[int, ...]
    """For each cell, all its candidates."""
    units: tuple[int, ...]
    """For each bit of a state, the state in which it alone is set."""
    owners: tuple[int, ...]
    """For each bit of a state, the guard of its cell."""
    _stretch: int
    """Bits of a few cells that make a machine word."""
    _stretches: tuple[int, ...]
    """Where such stretches of cells begin."""
    _read: _Digits

    def bits(self, cells: Iterable[int]) -> int:
        """All candidates of some cells."""
        total = 0
        for cell in cells:
            total |= self.wholes[cell]
        return total

    def filled(self, state: int) -> tuple[int, ...]:
        """The digit of each cell of a state in which every cell has one candidate."""
        stretch, read = self._stretch, self._read
        found: list[int] = []
        for at in self._stretches:
            found += read[state >> at & stretch]
        return tuple(found[: self.cells])


@cache
def candidate_layout(cells: int, digits: int) -> CandidateLayout:
    """The layout for this number of cells and digits."""
    width, full = digits + 1, (1 << digits) - 1
    places = tuple(range(0, cells * width, width))
    lows = replicate(1, places)
    wholes = tuple(full << at for at in places)
    units = tuple(1 << bit for bit in range(cells * width))
    owners = tuple(1 << at + digits for at in places for _ in range(width))
    together = max(WORD // width, 1)
    return CandidateLayout(
        cells,
        digits,
        width,
        full,
        lows,
        lows << digits,
        lows * full,
        places,
        wholes,
        units,
        owners,
        (1 << together * width) - 1,
        places[::together],
        _Digits(digits, together),
    )


def replicate(bits: int, shifts: Iterable[int]) -> int:
    """`bits` repeated at each shift."""
    total = 0
    for shift in shifts:
        total |= bits << shift
    return total


def each_bit(bits: int) -> Iterator[int]:
    """The positions of the bits that are set, from the highest down."""
    while bits:
        top = bits.bit_length() - 1
        yield top
        bits ^= 1 << top


@cache
def places_in(mask: int) -> tuple[int, ...]:
    """The places of a mask's bits, from the lowest up. Kept, for masks of digits are few."""
    return tuple(bit for bit in range(mask.bit_length()) if mask >> bit & 1)


@cache
def units_in(mask: int) -> tuple[int, ...]:
    """The bits of a mask, each alone, from the lowest up. Kept, for masks of digits are few."""
    return tuple(1 << place for place in places_in(mask))
