"""Chains of groups, held together by marks as well.

In: a `State`. Out: as in `links.py` what falls to a chain of the fewest strong links. Here a link is from a group of
cells, one of which has a digit, to another: the two groups are all of the digit's places in a house; or the cells of a
house have one digit more between them than they are, so that each digit that they miss brings in all the others. And
what is true rules out what goes with it at once, by a mark or in plain sight (`consequences.py`).
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import combinations
from typing import TypeAlias

from bookmaker.logic.links import LONGEST
from bookmaker.logic.state import State
from bookmaker.logic.subsets import joined
from bookmaker.puzzle.bits import board_of, cells_on, digits_in
from bookmaker.puzzle.grid import HouseRef
from bookmaker.puzzle.position import Candidate

Group: TypeAlias = tuple[int, int]
"""A board and a digit that stands in one of its cells, if the group is true."""

MOST = 3
"""Cells of the largest group, and of the largest set of cells with one digit more than they are."""


@dataclass(frozen=True, slots=True)
class Why:
    """What makes a strong link: the groups are all places in the house; without one, all in these cells."""

    house: HouseRef | None
    among: tuple[int, ...] = ()

    def joins(self, state: State, one: Group, other: Group) -> bool:
        """Does it join these groups in this state?"""
        (board, digit), (board2, digit2) = one, other
        if self.house:
            home = state.ground.area_called[self.house].board
            return not board & board2 and state.boards[digit] & home == board | board2
        within = board_of(self.among)
        held = sum(1 for places in state.boards if places & within)
        both = state.boards[digit] & within == board and state.boards[digit2] & within == board2
        return both and held == len(self.among) + 1


Links: TypeAlias = dict[Group, dict[Group, Why]]
"""For each group those of which one is true if it is false."""


def group_links(state: State) -> Links:
    """All strong links of a state."""
    links: Links = {}
    for one, other, why in (*_by_places(state), *_by_digits(state)):
        links.setdefault(one, {}).setdefault(other, why)
        links.setdefault(other, {}).setdefault(one, why)
    return links


def _by_places(state: State) -> Iterator[tuple[Group, Group, Why]]:
    """A digit's places in a house in two parts, each a cell or shared with another house."""
    for digit in state.ground.grid.digits:
        for area in state.ground.areas:
            places = state.boards[digit] & area.board
            if places.bit_count() < 2:
                continue
            parts = {1 << cell for cell in cells_on(places)}
            if places.bit_count() > 2:
                parts |= {places & other.board for other in state.ground.areas} - {0, places}
            for part in sorted(parts):
                rest = places & ~part
                if part < rest and rest in parts and max(part.bit_count(), rest.bit_count()) <= MOST:
                    yield (part, digit), (rest, digit), Why(area.ref)


def _by_digits(state: State) -> Iterator[tuple[Group, Group, Why]]:
    """Cells of a house with one digit more than they are."""
    masks = state.masks()
    done: set[tuple[int, ...]] = set()
    for area in state.ground.areas:
        for size in range(1, MOST + 1):
            few = [cell for cell in area.cells if 2 <= masks[cell].bit_count() <= size + 1]
            for cells in combinations(sorted(few), size):
                held = joined(masks[cell] for cell in cells)
                if held.bit_count() != size + 1 or cells in done:
                    continue
                done.add(cells)
                within = board_of(cells)
                groups = [(state.boards[digit] & within, digit) for digit in digits_in(held)]
                for one, other in combinations(groups, 2):
                    yield one, other, Why(None, cells)


class Network:
    """The strong links of a state, and what each group rules out, remembered; changes of the state do not reach it.

    Candidates are bits of one number, digit after digit, so that it takes one step to see what two groups rule out.
    """

    def __init__(self, state: State) -> None:
        self.boards = tuple(state.boards)
        self.follows = state.consequences()
        self.strong = group_links(state)
        self._width = len(state.ground.grid.cells)
        self._gone: dict[Group, int] = {}
        self._weak: dict[Group, list[Group]] = {}
        self._bits = {group: self._bit((0, group[1])) * group[0] for group in self.strong}
        self._with_first: dict[int, list[tuple[int, int, Group]]] = {}
        """For the first candidate of groups, by its bit, each group with its number and all its candidates."""
        for number, (group, bits) in enumerate(self._bits.items()):
            self._with_first.setdefault((bits & -bits).bit_length() - 1, []).append((number, bits, group))
        self._firsts = joined(bits & -bits for bits in self._bits.values())

    def _bit(self, candidate: Candidate) -> int:
        cell, digit = candidate
        return 1 << digit * self._width + cell

    def gone(self, group: Group) -> int:
        """The candidates that cannot be true with any cell of a group."""
        if group not in self._gone:
            board, digit = group
            self._gone[group] = -1
            for cell in cells_on(board):
                boards = self.follows.of((cell, digit)).gone
                self._gone[group] &= sum(gone << no * self._width for no, gone in enumerate(boards) if gone)
        return self._gone[group]

    def weak(self, group: Group) -> list[Group]:
        """The groups that are false if this one is true, as far as they lead on."""
        if group not in self._weak:
            gone = self.gone(group)
            near = (each for at in cells_on(gone & self._firsts) for each in self._with_first[at])
            ruled_out = sorted((number, other) for number, bits, other in near if not bits & ~gone)
            self._weak[group] = [other for _, other in ruled_out]
        return self._weak[group]

    def ruled_out_by_both(self, one: Group, other: Group) -> Iterator[Candidate]:
        """Candidates that stand and cannot be true with either of two groups."""
        return self._candidates(self.gone(one) & self.gone(other))

    def _candidates(self, bits: int) -> Iterator[Candidate]:
        for bit in cells_on(bits):
            yield bit % self._width, bit // self._width

    def shortest(self, target: Candidate | None = None) -> tuple[int, dict[Candidate, tuple[Group, ...]]]:
        """How many strong links the shortest chains have that strike something (`target`, if one is named), and what
        falls with its chain: false, true, false, true …"""
        wanted = -1 if target is None else self._bit(target)
        trails = [_Trail(self, start) for start in self.strong if self.gone(start) & wanted]
        for links in range(1, LONGEST + 1):
            fallen: dict[Candidate, tuple[Group, ...]] = {}
            going, open_still = [], wanted
            for trail in trails:
                ends = trail.advance()
                here = self.gone(trail.start) & open_still if links > 1 else 0
                for end in ends if here else ():
                    if both := here & self.gone(end):
                        fallen |= dict.fromkeys(self._candidates(both), trail.to(end))
                        open_still &= ~both
                        here &= ~both
                if ends:
                    going.append(trail)
            if fallen:
                return links, fallen
            trails = going
        return 0, {}


class _Trail:
    """Everything that follows from a group being false, one strong link further each time."""

    __slots__ = ("_false", "_fresh", "_network", "_true", "start")

    def __init__(self, network: Network, start: Group) -> None:
        self._network, self.start = network, start
        self._fresh = [start]
        self._true: dict[Group, Group] = {}
        """What is true, each with the false group that makes it so."""
        self._false: dict[Group, Group | None] = {start: None}
        """What is false and leads on, each with the true group that makes it so."""

    def advance(self) -> list[Group]:
        """The groups that become true by one more strong link; then all that these rule out."""
        new: list[Group] = []
        for false in self._fresh:
            for true in self._network.strong[false]:
                if true not in self._true:
                    self._true[true] = false
                    new.append(true)
        self._fresh = []
        for true in new:
            for false in self._network.weak(true):
                if false not in self._false:
                    self._false[false] = true
                    self._fresh.append(false)
        return new

    def to(self, end: Group) -> tuple[Group, ...]:
        """The chain to a group that is true."""
        chain, true = [end], end
        while True:
            false = self._true[true]
            chain.append(false)
            before = self._false[false]
            if before is None:
                return tuple(chain[::-1])
            chain.append(before)
            true = before
