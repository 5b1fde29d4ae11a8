"""Following a candidate in mind: what its placement leads to, in rounds of singles and of the rules' marks.

In: a `State` without openings and a candidate. Out: the `Clash` it ends in, or None. The state is not changed.
"""

from __future__ import annotations

from dataclasses import dataclass

from bookmaker.grade.marks import sweep
from bookmaker.grade.state import Ground, State


@dataclass(frozen=True, slots=True)
class Clash:
    """After `rounds` rounds a house has no place for a digit, a cell has no digit, or two singles see each other."""

    ground: Ground
    rounds: int
    area: str = ""
    digit: int = 0
    cell: int = -1

    def words(self) -> str:
        """What is wrong, as a clause."""
        if self.area:
            return f"{self.area} has no place left for {self.ground.symbol(self.digit)}"
        if self.cell >= 0:
            return f"no digit is left for {self.ground.grid.name(self.cell)}"
        return "a mark cannot be satisfied"


def follow(state: State, cell: int, digit: int, limit: int | None = None) -> Clash | None:
    """The clash that a candidate leads to within `limit` rounds (None: however many it takes), or None."""
    ground = state.ground
    boards = [may | stood for may, stood in zip(state.boards, state.stood, strict=True)]
    digits = range(1, len(boards))
    done = ground.everywhere & ~state.empty
    forced = [0] * len(boards)
    forced[digit] = 1 << cell
    rounds = 0
    known = boards[:]  # in these no area lacks a place, and what stands alone is followed already
    while True:
        once = twice = 0
        for todo in forced:
            twice |= once & todo
            once |= todo
        done |= once
        for d in digits:
            todo = forced[d]
            boards[d] &= ~(once & ~todo | twice)
            while todo:
                low = todo & -todo
                boards[d] &= ~ground.peers[low.bit_length() - 1]
                todo ^= low
        if ground.marks and not sweep(ground, boards):
            return Clash(ground, rounds)
        once = twice = 0
        for d in digits:
            twice |= once & boards[d]
            once |= boards[d]
        if once != ground.everywhere:
            bare = ground.everywhere & ~once
            return Clash(ground, rounds, cell=(bare & -bare).bit_length() - 1)
        naked = once & ~twice & ~done
        moved = naked
        for d in digits:
            board = boards[d]
            found = board & naked
            if board != known[d]:
                known[d] = board
                for area in ground.areas:
                    x = board & area.board
                    if not x & (x - 1):
                        if not x:
                            return Clash(ground, rounds, area=area.name, digit=d)
                        found |= x & ~done
            forced[d] = found
            moved |= found
        if not moved:
            return None
        rounds += 1
        if limit is not None and rounds > limit:
            return None
