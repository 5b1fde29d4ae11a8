"""Following a candidate in mind: what its placement leads to, in rounds of singles and of the rules' marks.

In: a `State` without openings and a candidate. Out: the `Clash` it ends in, or None. The state is not changed.

In a round all singles that are open at its start are written at once, then all marks are read from the same boards at
once, each as a whole (`marks.py`), so that the number of rounds depends on no order of cells, digits or marks. It goes
on as long as a round finds anything.
"""

from __future__ import annotations

from dataclasses import dataclass

from bookmaker.grade.marks import Mark, Strikes
from bookmaker.grade.state import Ground, State
from bookmaker.solve.problem import Automaton, Sum


@dataclass(frozen=True, slots=True)
class Clash:
    """After `rounds` rounds a house (`area`) has no place for a digit, a cell has no digit, or nothing fits a mark.

    `marked` says that marks emptied the cell; if one alone did, it is `mark`.
    """

    ground: Ground
    rounds: int
    area: str = ""
    digit: int = 0
    cell: int = -1
    mark: Mark | None = None
    marked: bool = False

    def words(self) -> str:
        """What is wrong, as a clause."""
        if self.area:
            return f"{self.area} has no place left for {self.ground.symbol(self.digit)}"
        if self.cell < 0 and self.mark:
            return f"nothing fits {self._named(self.mark)} any more"
        name = self.ground.grid.name(self.cell)
        if self.mark:
            return f"the {self.mark.noun} leaves no digit for {name}"
        return f"the marks leave no digit for {name}" if self.marked else f"no digit is left for {name}"

    def _named(self, mark: Mark) -> str:
        """“the X-sum of row 3”, “the arrow through r4c4”, “the cage at r1c2”."""
        if house := next((area.name for area in self.ground.areas if area.board == mark.board), ""):
            return f"the {mark.noun} of {house}"
        first = self.ground.grid.name(mark.cells[0])
        return f"the {mark.noun} {'through' if isinstance(mark.constraint, Sum | Automaton) else 'at'} {first}"


class Follower:
    """Follows candidates of one state; what the marks say of it before anything is tried is read only once."""

    def __init__(self, state: State) -> None:
        self.ground = state.ground
        self.boards = state.with_written()
        self.filled = state.ground.everywhere & ~state.empty
        self.marks = [mark for mark in state.ground.marks if not mark.settled(self.boards)]
        self.said: list[Strikes] = [mark.strikes(self.boards) for mark in self.marks]

    def follow(self, cell: int, digit: int, limit: int | None = None) -> Clash | None:
        """The clash that a candidate leads to within `limit` rounds (None: however many it takes), or None."""
        ground, peers, areas = self.ground, self.ground.peers, self.ground.area_boards
        boards, done = self.boards[:], self.filled
        digits = range(1, len(boards))
        forced = [0] * len(boards)
        forced[digit] = 1 << cell
        rounds = 0
        known = boards[:]  # in these no area lacks a place, and what stands alone is followed already
        read = boards[:]  # what the marks were read from
        while True:
            # What is forced is written: it goes from its peers, and other digits from its cells.
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
                    boards[d] &= ~peers[low.bit_length() - 1]
                    todo ^= low
            # The marks whose cells have changed are read, all from the same boards.
            struck: list[tuple[Mark, tuple[int, ...]]] = []
            if self.marks:
                changed = 0
                for d in digits:
                    changed |= read[d] ^ boards[d]
                for mark, said in zip(self.marks, self.said, strict=True):
                    if mark.board & changed:
                        said = mark.strikes(boards)
                    elif rounds:
                        continue
                    if said is None:
                        return Clash(ground, rounds, mark=mark)
                    if said:
                        struck.append((mark, said))
                read = boards[:]
                for _, strikes in struck:
                    for d in digits:
                        boards[d] &= ~strikes[d]
            # Singles in what is left, or a cell or a house that has nothing left.
            once = twice = 0
            for d in digits:
                twice |= once & boards[d]
                once |= boards[d]
            if once != ground.everywhere:
                return self._emptied(ground.everywhere & ~once, rounds, struck)
            naked = once & ~twice & ~done
            moved = naked
            for d in digits:
                board = boards[d]
                found = board & naked
                if board != known[d]:
                    known[d] = board
                    for area in areas:
                        x = board & area
                        if not x & (x - 1):
                            if not x:
                                name = ground.areas[areas.index(area)].name
                                return Clash(ground, rounds, area=name, digit=d)
                            found |= x & ~done
                forced[d] = found
                moved |= found
            if not moved and not struck:
                return None
            rounds += 1
            if limit is not None and rounds > limit:
                return None

    def _emptied(self, bare: int, rounds: int, struck: list[tuple[Mark, tuple[int, ...]]]) -> Clash:
        low = bare & -bare
        marks = [mark for mark, strikes in struck if any(board & low for board in strikes)]
        mark = marks[0] if len(marks) == 1 else None
        return Clash(self.ground, rounds, cell=low.bit_length() - 1, mark=mark, marked=bool(marks))


def follow(state: State, cell: int, digit: int, limit: int | None = None) -> Clash | None:
    """The clash that one candidate leads to, as `Follower.follow`."""
    return Follower(state).follow(cell, digit, limit)
