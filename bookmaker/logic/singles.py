"""Openings: cells whose digit can be written down now, each by its most visible derivation.

In: a `State`. Out: `Opening`s. Kinds from the most to the least visible: the last empty cell of a house, a hidden
single in a box, a hidden single in a line (rows, columns, and houses that rules add), a naked single.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from bookmaker.logic.state import Area, State
from bookmaker.reasons import Reason, Rung
from bookmaker.reasons.singles import HiddenSingle, LastCell, NakedSingle


class Opening(NamedTuple):
    """`kind` is the rung of its derivation, from `LAST` to `NAKED`; `area` is the house in which the digit is hidden or
    the cell is last, None for a naked single."""

    kind: Rung
    cell: int
    digit: int
    area: Area | None


def openings(state: State) -> list[Opening]:
    """All openings, the most visible kinds first; each cell once, by the first area that shows it."""
    ground, boards, empty = state.ground, state.boards, state.empty
    found: list[Opening] = []
    taken = 0
    digits = range(1, len(boards))
    for board, area in zip(ground.area_boards, ground.areas, strict=True):
        x = board & empty
        if x and not x & (x - 1) and not x & taken:
            for digit in digits:
                if boards[digit] & x:
                    taken |= x
                    found.append(Opening(Rung.LAST, x.bit_length() - 1, digit, area))
                    break
    for kind, alone in ((Rung.BOX, ground.alone_in_boxes), (Rung.LINE, ground.alone_in_lines)):
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
                found.append(Opening(Rung.NAKED, low.bit_length() - 1, digit, None))
                x ^= low
    return found


def openings_kept(state: State) -> Sequence[Opening]:
    """The same, kept with the ground: the boards of a path are looked at again when its steps are told."""
    kept, key = state.ground.opened, (state.empty, *state.boards)
    found: Sequence[Opening] | None = kept.get(key)
    if found is None:
        kept[key] = found = openings(state)
    return found


def single(opening: Opening) -> Reason:
    """Why the opening's digit stands there."""
    cell, digit, area = opening.cell, opening.digit, opening.area
    if area is None:
        return Reason("naked-single", None, NakedSingle(cell, digit))
    if opening.kind is Rung.LAST:
        return Reason("last-cell", None, LastCell(area.ref, cell, digit))
    return Reason("hidden-single", None, HiddenSingle(area.ref, cell, digit))
