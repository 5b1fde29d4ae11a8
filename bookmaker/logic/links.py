"""Strong and weak links between candidates, and the shortest chains along them.

In: a `State`. Out: candidates (cell, digit) that fall to a chain of the fewest strong links, each with the ends of its
chain. A chain starts from a candidate taken as false; strong links lead from false to true, weak ones from true to
false. All weak links of a candidate are followed at once on the boards.
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import TypeAlias

from bookmaker.logic.state import State
from bookmaker.puzzle.bits import cells_on
from bookmaker.puzzle.position import Candidate

Strong: TypeAlias = dict[Candidate, list[Candidate]]
"""For each candidate those of which one is true if it is false."""

LONGEST = 8
"""Strong links of the longest chain that is looked for."""


def strong_links(state: State, cells: bool = True) -> Strong:
    """Digits with two places in a house; with `cells`, also cells with two digits."""
    links: dict[Candidate, dict[Candidate, None]] = {}

    def join(one: Candidate, other: Candidate) -> None:
        links.setdefault(one, {})[other] = None
        links.setdefault(other, {})[one] = None

    for digit in state.ground.grid.digits:
        board = state.boards[digit]
        for area in state.ground.areas:
            places = board & area.board
            if places.bit_count() == 2:
                one, other = cells_on(places)
                join((one, digit), (other, digit))
    if cells:
        for cell, mask in enumerate(state.masks()):
            if mask.bit_count() == 2:
                join((cell, mask.bit_length()), (cell, (mask & -mask).bit_length()))
    return {one: list(others) for one, others in links.items()}


def shortest(state: State, strong: Strong, single: bool) -> tuple[int, dict[Candidate, tuple[Candidate, Candidate]]]:
    """How many strong links the shortest chains have that strike something, and what falls with the chain's ends.

    With `single` a chain keeps to one digit. Chains of one link are left to simpler techniques.
    """
    trails = [_Trail(state, strong, start, single) for start in strong]
    for links in range(1, LONGEST + 1):
        fallen: dict[Candidate, tuple[Candidate, Candidate]] = {}
        going = []
        for trail in trails:
            ends = trail.advance()
            if links > 1:
                for end in ends:
                    for target in seen_by_both(state, trail.start, end):
                        if target not in fallen:
                            fallen[target] = (trail.start, end)
            if ends:
                going.append(trail)
        if fallen:
            return links, fallen
        trails = going
    return 0, {}


def shortest_to(
    state: State, strong: Strong, single: bool, target: Candidate
) -> tuple[int, tuple[Candidate, Candidate]] | None:
    """How many strong links the shortest chain has that strikes one candidate, and its ends; None if there is none."""
    cell, digit = target
    seen = state.ground.peers[cell]
    starts = (start for start in strong if (seen >> start[0] & 1 if start[1] == digit else start[0] == cell))
    trails = [_Trail(state, strong, start, single) for start in starts]
    for links in range(1, LONGEST + 1):
        going = []
        for trail in trails:
            ends = trail.advance()
            for end in ends if links > 1 else ():
                if target in seen_by_both(state, trail.start, end):
                    return links, (trail.start, end)
            if ends:
                going.append(trail)
        trails = going
    return None


class _Trail:
    """Everything that follows from a candidate being false, one strong link further each time."""

    __slots__ = ("false", "fresh", "parents", "single", "start", "state", "strong", "true")

    def __init__(self, state: State, strong: Strong, start: Candidate, single: bool) -> None:
        self.state, self.strong, self.start, self.single = state, strong, start, single
        self.false = [0] * len(state.boards)
        self.true = [0] * len(state.boards)
        self.false[start[1]] = 1 << start[0]
        self.fresh: list[Candidate] = [start]
        self.parents: dict[tuple[bool, Candidate], Candidate] = {}

    def advance(self) -> list[Candidate]:
        """The candidates that become true by one more strong link; then all that these make false."""
        new: list[Candidate] = []
        for false in self.fresh:
            for cell, digit in self.strong.get(false, ()):
                if not self.true[digit] >> cell & 1:
                    self.true[digit] |= 1 << cell
                    self.parents[True, (cell, digit)] = false
                    new.append((cell, digit))
        self.fresh = []
        boards, peers = self.state.boards, self.state.ground.peers
        for true in new:
            cell, digit = true
            struck = boards[digit] & peers[cell] & ~self.false[digit]
            self.false[digit] |= struck
            while struck:
                low = struck & -struck
                self._strike((low.bit_length() - 1, digit), true)
                struck ^= low
            if not self.single:
                bit = 1 << cell
                for other in range(1, len(boards)):
                    if other != digit and boards[other] & bit and not self.false[other] & bit:
                        self.false[other] |= bit
                        self._strike((cell, other), true)
        return new

    def _strike(self, false: Candidate, true: Candidate) -> None:
        if false in self.strong:
            self.parents[False, false] = true
            self.fresh.append(false)


def seen_by_both(state: State, one: Candidate, other: Candidate) -> Iterator[Candidate]:
    """Candidates that cannot be true with either of two (which may be one and the same)."""
    peers, boards = state.ground.peers, state.boards
    (cell, digit), (cell2, digit2) = one, other
    if digit == digit2:
        for target in cells_on(boards[digit] & peers[cell] & peers[cell2]):
            yield target, digit
    elif peers[cell] >> cell2 & 1:
        if boards[digit] >> cell2 & 1:
            yield cell2, digit
        if boards[digit2] >> cell & 1:
            yield cell, digit2
    if cell == cell2:
        for d in range(1, len(boards)):
            if d not in (digit, digit2) and boards[d] >> cell & 1:
                yield cell, d


def chain_between(state: State, strong: Strong, single: bool, ends: tuple[Candidate, Candidate]) -> list[Candidate]:
    """The candidates along the chain: false, true, false, true …"""
    start, end = ends
    trail = _Trail(state, strong, start, single)
    while (True, end) not in trail.parents:
        trail.advance()
    chain = [end]
    true = True
    while chain[-1] != start or true:
        chain.append(trail.parents[true, chain[-1]])
        true = not true
    return chain[::-1]
