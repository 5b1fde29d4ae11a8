"""Following a candidate in mind: what its placement leads to, in rounds of singles and of the rules' marks.

In: a `State` without openings and a candidate. Out: the `Clash` it ends in, or None. The state is not changed. What
leads there step by step is worked out where it is told (`refutation.py`).

In a round all singles that are open at its start are written at once, then all marks are read from the same boards at
once, each as a whole (`marks.py`), so that the number of rounds depends on no order of cells, digits or marks. It goes
on as long as a round finds anything.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from bookmaker.logic.mark_readings import Mark, Strikes
from bookmaker.logic.state import Area, Ground, State
from bookmaker.puzzle.position import Candidate
from bookmaker.reasons.whatif import End, NoDigit, NoPlace, NothingFits

FOLLOWED = 4
"""Effort for each candidate followed and each cell of the grid, fitted to times."""


@dataclass(frozen=True, slots=True)
class Clash:
    """What a candidate ends in, after so many rounds: a house without a place for a digit, a cell without a digit, or a
    mark that nothing fits; of the mark that does it, if one alone does, its whole constraint."""

    rounds: int
    area: Area | None = None
    digit: int = 0
    cell: int = -1
    mark: Mark | None = None
    marked: bool = False

    def end(self, ground: Ground) -> End:
        """The same as a part of a reason."""
        if self.area:
            return NoPlace(self.area.ref, self.digit)
        if self.cell < 0 and self.mark:
            return NothingFits(ground.reference(self.mark.rule, self.mark.cells))
        mark = ground.reference(self.mark.rule, (self.cell,)) if self.mark else None
        return NoDigit(self.cell, mark, self.marked)


class Follower:
    """Follows candidates of one state; what the marks say of it before anything is tried is read only once."""

    def __init__(self, state: State) -> None:
        self.ground = state.ground
        self.boards = state.with_written()
        self.digits = range(1, len(self.boards))
        self.filled = state.ground.everywhere & ~state.empty
        self.marks = [mark for mark in state.ground.marks if not mark.settled(self.boards)]
        self.said: list[Strikes] = [mark.strikes(self.boards) for mark in self.marks]

    def follow(self, cell: int, digit: int, limit: int | None = None) -> Clash | None:
        """The clash that a candidate leads to within `limit` rounds (None: however many it takes), or None."""
        self.ground.look(FOLLOWED * len(self.ground.grid.cells))
        trial = _Trial(self, cell, digit)
        while limit is None or trial.rounds <= limit:
            clash = trial.round()
            if clash or not trial.goes_on:
                return clash
        return None

    def nearest(self, tried: Iterable[Candidate]) -> list[tuple[Candidate, Clash]]:
        """Of many candidates those that clash after the fewest rounds. All are followed at the same pace."""
        going = [(pair, _Trial(self, *pair)) for pair in tried]
        self.ground.look(FOLLOWED * len(self.ground.grid.cells) * len(going))
        while going:
            ended = [(pair, clash) for pair, trial in going if (clash := trial.round())]
            if ended:
                return ended
            going = [(pair, trial) for pair, trial in going if trial.goes_on]
        return []


class _Trial:
    """One candidate followed in mind: the boards as they stand after so many rounds."""

    __slots__ = ("boards", "digits", "done", "follower", "forced", "ground", "known", "read", "rounds", "struck")

    def __init__(self, follower: Follower, cell: int, digit: int) -> None:
        self.follower, self.ground, self.digits = follower, follower.ground, follower.digits
        self.boards = follower.boards[:]
        self.done = follower.filled
        self.known = self.boards[:]
        """In these no area lacks a place, and what stands alone is followed already."""
        self.read = self.boards[:]
        """What the marks were read from."""
        self.forced = [0] * len(self.boards)
        """By digit the cells where it is to be written next."""
        self.forced[digit] = 1 << cell
        self.struck: list[tuple[Mark, tuple[int, ...]]] = []
        """What the marks struck in this round."""
        self.rounds = 0

    @property
    def goes_on(self) -> bool:
        """Did the last round find anything?"""
        return bool(self.struck) or any(self.forced)

    def round(self) -> Clash | None:
        """Write what is forced, read the marks, look for singles; the clash that shows, if one does."""
        self.write()
        unfit = self.read_marks() if self.follower.marks else None
        clash = Clash(self.rounds, mark=unfit) if unfit else self.singles()
        self.rounds += 1
        return clash

    def write(self) -> None:
        """What is forced goes from its peers, and other digits from its cells."""
        boards, forced, peers = self.boards, self.forced, self.ground.peers
        once = twice = 0
        for todo in forced:
            twice |= once & todo
            once |= todo
        for d in self.digits:
            todo = forced[d]
            boards[d] &= ~(once & ~todo | twice)
            while todo:
                low = todo & -todo
                boards[d] &= ~peers[low.bit_length() - 1]
                todo ^= low
        self.done |= once

    def read_marks(self) -> Mark | None:
        """Strike what the marks rule out, all read from the same boards; a mark that nothing fits, if there is one."""
        boards, read, digits = self.boards, self.read, self.digits
        changed = 0
        for d in digits:
            changed |= read[d] ^ boards[d]
        self.struck = []
        for mark, said in zip(self.follower.marks, self.follower.said, strict=True):
            if mark.board & changed:
                said = mark.strikes(boards)
            elif self.rounds:
                continue
            if said is None:
                return mark
            if said:
                self.struck.append((mark, said))
        self.read = boards[:]
        for _, strikes in self.struck:
            for d in digits:
                boards[d] &= ~strikes[d]
        return None

    def singles(self) -> Clash | None:
        """Singles are forced next, all that are open now; the clash where a cell or a house has nothing left."""
        ground, boards, known = self.ground, self.boards, self.known
        everywhere, by_cell = ground.area_boards, ground.boards_of
        once = twice = 0
        for d in self.digits:
            twice |= once & boards[d]
            once |= boards[d]
        if once != ground.everywhere:
            return self.emptied(ground.everywhere & ~once)
        naked = once & ~twice & ~self.done
        for d in self.digits:
            board = boards[d]
            found = board & naked
            if gone := known[d] & ~board:
                known[d] = board
                lone = not gone & (gone - 1)
                for area in by_cell[gone.bit_length() - 1] if lone else everywhere:
                    x = board & area
                    if not x & (x - 1):
                        if not x:
                            return Clash(self.rounds, area=ground.areas[everywhere.index(area)], digit=d)
                        found |= x & ~self.done
            self.forced[d] = found
        return None

    def emptied(self, bare: int) -> Clash:
        """The clash of the first cell that has nothing left."""
        low = bare & -bare
        marks = [mark for mark, strikes in self.struck if any(board & low for board in strikes)]
        mark = marks[0] if len(marks) == 1 else None
        return Clash(self.rounds, cell=low.bit_length() - 1, mark=mark, marked=bool(marks))


def follow(state: State, cell: int, digit: int, limit: int | None = None) -> Clash | None:
    """The clash that one candidate leads to, as `Follower.follow`."""
    return Follower(state).follow(cell, digit, limit)
