"""How a single is seen: which digits leave it alone in its house, or leave its cell no other."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from typing import TypeAlias

from bookmaker.logic.singles import Opening
from bookmaker.logic.state import Area, State
from bookmaker.puzzle.bits import cells_on
from bookmaker.puzzle.grid import HouseRef
from bookmaker.puzzle.position import Candidate
from bookmaker.reasons import Reason, Rung
from bookmaker.trace.traced import View

TakenBy: TypeAlias = Callable[[Candidate], Reason | None]
"""The reason of the told elimination that took a candidate; None where something else did."""


def view_of(opening: Opening, state: State, taken_by: TakenBy) -> View:
    """How a single is seen on the board as it stands; `taken_by` has the reason of the elimination that took a
    candidate."""
    match opening.kind:
        case Rung.BOX | Rung.LINE if opening.area:
            return _lookers(opening, opening.area, state, taken_by)
        case Rung.NAKED:
            return _holders(opening, state, taken_by)
    return View()


def _lookers(opening: Opening, area: Area, state: State, taken_by: TakenBy) -> View:
    """Few cells that hold the digit and together see every other empty cell of the house."""
    peers = state.ground.peers
    left = area.board & state.empty & ~(1 << opening.cell)
    standing = list(cells_on(state.stood[opening.digit]))
    chosen: list[int] = []
    while left:
        best = max(standing, key=lambda cell: ((peers[cell] & left).bit_count(), -cell), default=None)
        if best is None or not peers[best] & left:
            break
        chosen.append(best)
        left &= ~peers[best]
    struck = {taken_by((cell, opening.digit)) is not None for cell in cells_on(left)}
    return View(tuple(sorted(chosen)), struck=True in struck, marked=False in struck)


def _holders(opening: Opening, state: State, taken_by: TakenBy) -> View:
    """Houses of the cell with the digits they hold, each digit named once, the fullest house first; then the digits
    that were eliminated."""
    ground = state.ground
    homes = [ground.areas[i] for i in ground.areas_of[opening.cell]]
    left = {digit for digit in ground.grid.digits if digit != opening.digit}
    holders: list[tuple[HouseRef | None, tuple[int, ...]]] = []
    while left:
        area, digits = max(((area, _held(state, area.board, left)) for area in homes), key=lambda pair: len(pair[1]))
        if not digits:
            break
        holders.append((area.ref, digits))
        left.difference_update(digits)
    if others := _held(state, ground.peers[opening.cell], left):
        holders.append((None, others))
        left.difference_update(others)
    strikers: dict[Reason | None, list[int]] = {}
    for digit in sorted(left):
        by = taken_by((opening.cell, digit))
        strikers.setdefault(by, []).append(digit)
    return View(holders=tuple(holders), strikers=tuple((reason, tuple(digits)) for reason, digits in strikers.items()))


def _held(state: State, board: int, digits: Iterable[int]) -> tuple[int, ...]:
    return tuple(digit for digit in sorted(digits) if state.stood[digit] & board)
