"""Chains that marks hold together: from true to false leads also what one mark rules out.

In: a `State`. Out: as in `links.py` candidates that fall to a chain of the fewest strong links. What is true rules out
what goes with it at once (`consequences.py`).
"""

from __future__ import annotations

from collections.abc import Iterator

from bookmaker.logic.links import LONGEST, Strong
from bookmaker.logic.state import State
from bookmaker.puzzle.bits import cells_on
from bookmaker.puzzle.position import Candidate

Ends = tuple[Candidate, Candidate]


def shortest_through_marks(
    state: State, strong: Strong, target: Candidate | None = None
) -> tuple[int, dict[Candidate, Ends]]:
    """How many strong links the shortest chains have that strike something (`target`, if one is named), and what falls
    with the chain's ends."""
    trails = [Trail(state, strong, start) for start in strong]
    for links in range(1, LONGEST + 1):
        fallen: dict[Candidate, Ends] = {}
        going = []
        for trail in trails:
            ends = trail.advance()
            for end in ends if links > 1 else ():
                for pair in ruled_out_by_both(state, trail.start, end):
                    if pair not in fallen and target in (None, pair):
                        fallen[pair] = trail.start, end
            if ends:
                going.append(trail)
        if fallen:
            return links, fallen
        trails = going
    return 0, {}


def ruled_out_by_both(state: State, one: Candidate, other: Candidate) -> Iterator[Candidate]:
    """Candidates that stand and cannot be true with either of two."""
    follows = state.consequences()
    first, second = follows.of(one).gone, follows.of(other).gone
    for digit, board in enumerate(state.boards):
        for cell in cells_on(board & first[digit] & second[digit]):
            yield cell, digit


def chain_through_marks(state: State, strong: Strong, ends: Ends) -> list[Candidate]:
    """The candidates along the chain: false, true, false, true …"""
    start, end = ends
    trail = Trail(state, strong, start)
    while end not in trail.true:
        trail.advance()
    chain = [end]
    while True:
        chain.append(trail.true[chain[-1]])
        if chain[-1] == start:
            return chain[::-1]
        chain.append(trail.false[chain[-1]])


class Trail:
    """Everything that follows from a candidate being false, one strong link further each time."""

    __slots__ = ("_gone", "false", "fresh", "start", "state", "strong", "true")

    def __init__(self, state: State, strong: Strong, start: Candidate) -> None:
        self.state, self.strong, self.start = state, strong, start
        self.fresh = [start]
        self.true: dict[Candidate, Candidate] = {}
        """What is true, each with the false candidate that makes it so."""
        self.false: dict[Candidate, Candidate] = {}
        """What is false and leads on, each with the true candidate that makes it so."""
        self._gone = [0] * len(state.boards)

    def advance(self) -> list[Candidate]:
        """The candidates that become true by one more strong link; then all that these rule out."""
        new: list[Candidate] = []
        for false in self.fresh:
            for true in self.strong[false]:
                if true not in self.true:
                    self.true[true] = false
                    new.append(true)
        self.fresh = []
        follows, boards = self.state.consequences(), self.state.boards
        for true in new:
            for digit, gone in enumerate(follows.of(true).gone):
                fresh = boards[digit] & gone & ~self._gone[digit]
                self._gone[digit] |= fresh
                for cell in cells_on(fresh):
                    false = cell, digit
                    if false in self.strong and false != self.start:
                        self.false[false] = true
                        self.fresh.append(false)
        return new
