"""Ruled out either way: each place of a digit in a house, or each digit of a cell, keeps a candidate out.

Some by plain sight, some by a mark; no mark is read after another. Nothing is supposed: it is what a solver sees who
looks from the few places of a digit, or from a cell with few digits, at the marks around. Where a candidate alone
leaves a mark without a filling, that is said instead.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from functools import partial

from bookmaker.logic.state import State
from bookmaker.logic.technique import Finding, Technique
from bookmaker.puzzle.bits import cells_on
from bookmaker.puzzle.grid import HouseRef
from bookmaker.puzzle.position import Candidate
from bookmaker.reasons import MarkRef, Reason, Rung
from bookmaker.reasons.bymark import NoFilling
from bookmaker.reasons.reason import MARK
from bookmaker.reasons.throughmarks import EitherWay

Options = tuple[Candidate, ...]


class EitherWayTechnique(Technique):
    """Up to four places or digits, which a person can check one after the other; the fewer, the nearer."""

    name = "either-way"
    rung = Rung.CHAIN
    most = 4

    def find(self, state: State) -> Iterator[Finding]:
        return self.find_for(
            state, tuple((cell, digit) for digit in state.ground.grid.digits for cell in cells_on(state.boards[digit]))
        )

    def find_for(self, state: State, removed: tuple[Candidate, ...]) -> Iterator[Finding]:
        if not state.ground.readers:
            return
        fallen: dict[tuple[HouseRef | None, Options], list[Candidate]] = {}
        for target in removed:
            if broken := state.consequences().of(target).broken:
                yield self._unfit(broken, target)
            elif ways := self._ways(state, target):
                fallen.setdefault(ways, []).append(target)
        for (house, options), targets in fallen.items():
            yield self._finding(state, house, options, _with_others(state, options, targets))

    def _ways(self, state: State, target: Candidate) -> tuple[HouseRef | None, Options] | None:
        """The fewest places of a digit in a house, or digits of a cell, all of which a candidate would rule out."""
        gone = state.consequences().of(target).gone
        best: tuple[HouseRef | None, Options] | None = None
        fewest = self.most + 1
        everything = 0
        for digit, struck in enumerate(gone):
            everything |= struck
            if not struck:
                continue
            standing = state.boards[digit]
            for area in state.ground.areas:
                places = standing & area.board
                if places and not places & ~struck and places.bit_count() < fewest:
                    fewest = places.bit_count()
                    best = area.ref, tuple((cell, digit) for cell in cells_on(places))
        digits = state.ground.grid.digits
        for cell in cells_on(everything & ~(1 << target[0])):
            held = [digit for digit in digits if state.boards[digit] >> cell & 1]
            if len(held) < fewest and all(gone[digit] >> cell & 1 for digit in held):
                fewest = len(held)
                best = None, tuple((cell, digit) for digit in held)
        return best

    def _finding(self, state: State, house: HouseRef | None, options: Options, targets: Options) -> Finding:
        cells = tuple(dict.fromkeys(cell for cell, _ in options))
        reason = partial(_reason, self.name, state.copy(), house, options, targets)
        again = partial(_again, house, options, targets)
        return Finding(self.rung, cells, targets, reason, reach=len(options) - 1, again=again)

    def _unfit(self, mark: MarkRef, target: Candidate) -> Finding:
        reason = partial(Reason, MARK, mark, NoFilling(mark.cells))
        return Finding(self.rung, mark.cells or (target[0],), (target,), reason, reach=1)


def _with_others(state: State, options: Options, targets: Sequence[Candidate]) -> Options:
    """Some candidates that go, and what else the options all rule out by the same marks."""
    follows = state.consequences()
    others = state.boards[:]
    for option in options:
        others = [board & gone for board, gone in zip(others, follows.of(option).gone, strict=True)]
    by, seen = follows.marks_between((target, option) for target in targets for option in options)
    more = []
    for digit, board in enumerate(others):
        for cell in cells_on(board):
            marks, plainly = follows.marks_between(((cell, digit), option) for option in options)
            if (cell, digit) not in targets and {*marks} <= {*by} and plainly <= seen:
                more.append((cell, digit))
    return *targets, *more


def _reason(name: str, state: State, house: HouseRef | None, options: Options, targets: Options) -> Reason:
    by, seen = state.consequences().marks_between((target, option) for target in targets for option in options)
    return Reason(name, None, EitherWay(options, house, by, seen))


def _again(house: HouseRef | None, options: Options, targets: Options, other: State) -> bool:
    """Are these all the options in another state, too, and does each target rule them out?"""
    if house:
        _, digit = options[0]
        home = other.ground.area_called[house].board
        there: Iterable[Candidate] = [(cell, digit) for cell in cells_on(other.boards[digit] & home)]
    else:
        cell, _ = options[0]
        there = [(cell, digit) for digit in other.ground.grid.digits if other.boards[digit] >> cell & 1]
    if {*there} != {*options}:
        return False
    follows = other.consequences()
    return all(any(True for _ in follows.between(target, option)) for target in targets for option in options)
