"""Openings: cells whose digit can be written down now, each by its most visible derivation.

In: a `State`. Out: `Opening`s. Kinds from the most to the least visible: the last empty cell of a house, a hidden
single in a box, a hidden single in a line (rows, columns, and houses that rules add), a naked single.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import IntEnum

from bookmaker.grade.state import Area, State


class Kind(IntEnum):
    """Derivations of a placement; the value is the rung."""

    LAST = 1
    BOX = 2
    LINE = 3
    NAKED = 4


NAMES = {
    Kind.LAST: "last empty cell",
    Kind.BOX: "hidden single",
    Kind.LINE: "hidden single",
    Kind.NAKED: "naked single",
}
"""Trade names of the kinds."""


@dataclass(frozen=True, slots=True)
class Opening:
    """`area` is the house in which the digit is hidden or the cell is last; None for a naked single."""

    kind: Kind
    cell: int
    digit: int
    area: Area | None


def openings(state: State) -> list[Opening]:
    """All openings, the most visible kinds first; each cell once, by the first area that shows it."""
    ground, boards, empty = state.ground, state.boards, state.empty
    found: list[Opening] = []
    taken = 0
    digits = range(1, len(boards))
    for area in ground.areas:
        x = area.board & empty
        if x and not x & (x - 1) and not x & taken:
            for digit in digits:
                if boards[digit] & x:
                    taken |= x
                    found.append(Opening(Kind.LAST, x.bit_length() - 1, digit, area))
                    break
    for kind, alone in ((Kind.BOX, ground.alone_in_boxes), (Kind.LINE, ground.alone_in_lines)):
        for digit in digits:
            for x, area in alone[boards[digit]]:
                if not x & taken:
                    taken |= x
                    found.append(Opening(kind, x.bit_length() - 1, digit, area))
    once = twice = 0
    for digit in digits:
        twice |= once & boards[digit]
        once |= boards[digit]
    naked = once & ~twice & ~taken
    if naked:
        for digit in digits:
            x = boards[digit] & naked
            while x:
                low = x & -x
                found.append(Opening(Kind.NAKED, low.bit_length() - 1, digit, None))
                x ^= low
    return found


def words(state: State, opening: Opening) -> str:
    """Why the opening's digit stands there, as a clause."""
    name = state.ground.grid.name(opening.cell)
    symbol = state.ground.symbol(opening.digit)
    match opening.kind:
        case Kind.LAST if opening.area:
            return f"{name} is the last empty cell of {opening.area.name}"
        case Kind.BOX | Kind.LINE if opening.area:
            return f"in {opening.area.name} only {name} can hold {symbol}"
    return f"{symbol} is the only digit left for {name}"
