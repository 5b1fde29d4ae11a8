"""The trail: a path without the strikes that nothing rests on, each step with what a presenter sees at it.

In: a puzzle and its path. Out: `Told` steps in order. Every one of them follows from the givens and those before it.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

from bookmaker.grade.model import SolvePath, Step
from bookmaker.grade.singles import Kind, Opening
from bookmaker.grade.state import Area, State, ground_of, start
from bookmaker.puzzle.bits import cells_on
from bookmaker.puzzle.position import Candidate
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.tell.needs import Needs, opening_of, rivals_of


@dataclass(frozen=True, slots=True)
class View:
    """Why a cell's digit is forced.

    A hidden single: the cells whose digits look into its house, and whether they leave rivals that were `struck` or
    that marks forbid (`marked`). A naked single: houses with the digits they hold (no name: other cells that it sees),
    then the digits that were struck, by technique (no name: its own mark forbids them).
    """

    lookers: tuple[int, ...] = ()
    struck: bool = False
    marked: bool = False
    holders: tuple[tuple[str, tuple[int, ...]], ...] = ()
    strikers: tuple[tuple[str, tuple[int, ...]], ...] = ()


@dataclass(frozen=True, slots=True)
class Told:
    """A step of the path that is told. `index` is its number in the path, from 0.

    `removed` are the candidates it is needed for. A placement has its `kind` (None for a digit taken from the proof)
    and, unless it is a naked single, its house; `since` is the number of the told step that made it a single, -1 if
    the givens do. `closes` are names of houses that it fills, `of_digit` counts its digit on the board afterwards.
    """

    index: int
    step: Step
    removed: tuple[Candidate, ...] = ()
    kind: Kind | None = None
    area: Area | None = None
    since: int = -1
    closes: tuple[str, ...] = ()
    of_digit: int = 0
    view: View = View()

    @property
    def places(self) -> bool:
        """Does it place a digit?"""
        return bool(self.step.placed)

    @property
    def cell(self) -> int:
        """The cell that is filled."""
        return self.step.placed[0][0]

    @property
    def digit(self) -> int:
        """The digit that is written."""
        return self.step.placed[0][1]


def trail(puzzle: RuledPuzzle, path: SolvePath, needs: Needs, target: int | None = None) -> tuple[Told, ...]:
    """The told steps of a path; with a `target`, of its placements only this one."""
    ground = ground_of(puzzle)
    state, lean = start(ground), start(ground)
    gone: dict[Candidate, int] = {}
    written: dict[int, int] = {}
    told: list[Told] = []
    for index, step in enumerate(path.steps):
        if step.placed and target in (None, index):
            opening = opening_of(state, step)
            placement = _placement(index, step, opening, lean, gone, written) if opening else Told(index, step)
            told.append(replace(placement, view=_view(opening, lean, path, gone)) if opening else placement)
        elif index in needs.strikes:
            told.append(Told(index, step, removed=needs.strikes[index]))
        before = lean.boards[:]
        for cell, digit in step.placed:
            state.place(cell, digit)
            lean.place(cell, digit)
            written[cell] = index
        state.remove(step.removed)
        lean.remove(needs.strikes.get(index, ()))
        for digit in ground.grid.digits:
            for cell in cells_on(before[digit] & ~lean.boards[digit]):
                gone[cell, digit] = index
    return tuple(told)


def _placement(
    index: int, step: Step, opening: Opening, lean: State, gone: dict[Candidate, int], written: dict[int, int]
) -> Told:
    """What is seen at a placement, from the board before it."""
    ground, bit = lean.ground, 1 << opening.cell
    since = max((gone.get(rival, -1) for rival in rivals_of(ground, opening)), default=-1)
    if opening.kind is Kind.LAST and opening.area:
        since = max(written.get(cell, -1) for cell in opening.area.cells if cell != opening.cell)
    closes = tuple(area.name for area in ground.areas if area.board & lean.empty == bit)
    return Told(
        index,
        step,
        kind=opening.kind,
        area=opening.area,
        since=since,
        closes=closes,
        of_digit=lean.stood[opening.digit].bit_count() + 1,
    )


def _view(opening: Opening, state: State, path: SolvePath, gone: dict[Candidate, int]) -> View:
    match opening.kind:
        case Kind.BOX | Kind.LINE if opening.area:
            return _lookers(opening, opening.area, state, gone)
        case Kind.NAKED:
            holders = _holders(opening, state)
            known = {opening.digit, *(digit for _, digits in holders for digit in digits)}
            strikers: dict[str, list[int]] = {}
            for digit in state.ground.grid.digits:
                if digit not in known:
                    by = gone.get((opening.cell, digit), -1)
                    strikers.setdefault(path.steps[by].technique if by >= 0 else "", []).append(digit)
            return View(holders=holders, strikers=tuple((name, tuple(digits)) for name, digits in strikers.items()))
    return View()


def _lookers(opening: Opening, area: Area, state: State, gone: dict[Candidate, int]) -> View:
    """Few cells that hold the digit and together see every other empty cell of the house."""
    ground = state.ground
    left = area.board & state.empty & ~(1 << opening.cell)
    standing = list(cells_on(state.stood[opening.digit]))
    chosen: list[int] = []
    while left:
        best = max(standing, key=lambda cell: ((ground.peers[cell] & left).bit_count(), -cell), default=None)
        if best is None or not ground.peers[best] & left:
            break
        chosen.append(best)
        left &= ~ground.peers[best]
    by_strikes = {(cell, opening.digit) in gone for cell in cells_on(left)}
    return View(tuple(sorted(chosen)), True in by_strikes, False in by_strikes)


def _holders(opening: Opening, state: State) -> tuple[tuple[str, tuple[int, ...]], ...]:
    """Houses of the cell with the digits they hold, each digit named once, the fullest house first."""
    ground = state.ground
    homes = [ground.areas[i] for i in ground.areas_of[opening.cell]]
    left = {d for d in ground.grid.digits if d != opening.digit}
    holders: list[tuple[str, tuple[int, ...]]] = []
    while left:
        held = [(area, _held(area.board, left, state)) for area in homes]
        area, digits = max(held, key=lambda pair: len(pair[1]))
        if not digits:
            break
        holders.append((area.name, digits))
        left.difference_update(digits)
    if others := _held(ground.peers[opening.cell], left, state):
        holders.append(("", others))
    return tuple(holders)


def _held(board: int, digits: set[int], state: State) -> tuple[int, ...]:
    return tuple(digit for digit in sorted(digits) if state.stood[digit] & board)
