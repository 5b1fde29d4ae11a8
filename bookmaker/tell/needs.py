"""Which steps of a path are needed: a round strikes everything its rung shows, of which the path uses little.

In: a puzzle and its path. Out: for every strike that something rests on, the candidates it is needed for. Found from
the end backwards: a placement rests on the candidates whose absence makes it a single, and these on the steps that
struck them. What a strike rests on is tried out: earlier strikes are left away as long as its technique still finds
it, for the same reason.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass

from bookmaker.grade.model import SolvePath, Step
from bookmaker.grade.singles import Kind, Opening, openings
from bookmaker.grade.state import Ground, State, ground_of, start
from bookmaker.grade.technique import Finding, ladder
from bookmaker.puzzle.position import Candidate
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.tell.rounds import Round, rounds


@dataclass(frozen=True, slots=True)
class Needs:
    """What the steps of a path rest on.

    `strikes` are the strikes that are needed, by their number in the path, each with those of its candidates that
    matter. `rests` has, for every placement and every needed strike, the strikes without which it would not be there.
    """

    strikes: dict[int, tuple[Candidate, ...]]
    rests: dict[int, frozenset[int]]

    def behind(self, index: int) -> frozenset[int]:
        """All strikes that a step rests on, through however many others."""
        found: set[int] = set()
        todo = set(self.rests.get(index, ()))
        while todo:
            step = todo.pop()
            found.add(step)
            todo |= self.rests.get(step, frozenset()) - found
        return frozenset(found)


def needs_of(puzzle: RuledPuzzle, path: SolvePath, target: int | None = None) -> Needs:
    """Which strikes of a path are needed, and for what; with a `target`, only those for this one placement."""
    walk = _Walk(ground_of(puzzle), path)
    strikes: dict[int, tuple[Candidate, ...]] = {}
    rests: dict[int, set[Candidate]] = {}
    wanted: set[Candidate] = set()
    for this in reversed(list(rounds(path))):
        if this.places:
            for index in range(this.first, this.after):
                if target in (None, index):
                    rests[index] = walk.rivals_struck(index)
                    wanted |= rests[index]
            continue
        for index, struck in _chosen(this, wanted):
            strikes[index] = struck
            rests[index] = walk.rests_on(index, this.first, struck, wanted)
            wanted |= rests[index]
    striker = {pair: index for index, struck in strikes.items() for pair in struck}
    behind = {index: frozenset(striker[pair] for pair in pairs) for index, pairs in rests.items()}
    return Needs(dict(sorted(strikes.items())), behind)


def opening_of(state: State, step: Step) -> Opening | None:
    """The single that a placing step writes down, as the state shows it; None where a mark or the proof gives it."""
    if step.rung > Kind.NAKED:
        return None
    (cell, digit), *_ = step.placed
    return next((found for found in openings(state) if (found.cell, found.digit) == (cell, digit)), None)


def rivals_of(ground: Ground, opening: Opening) -> list[Candidate]:
    """The candidates whose absence makes it a single: its digit elsewhere in the house, or other digits in its cell."""
    if opening.kind is Kind.LAST:
        return []
    if opening.area is None:
        return [(opening.cell, digit) for digit in ground.grid.digits if digit != opening.digit]
    return [(cell, opening.digit) for cell in opening.area.cells if cell != opening.cell]


def _chosen(this: Round, wanted: set[Candidate]) -> list[tuple[int, tuple[Candidate, ...]]]:
    """Few steps of a round that strike all that is wanted of it, those that strike the most of it first."""
    left = {pair for step in this.steps for pair in step.removed} & wanted
    chosen: list[tuple[int, tuple[Candidate, ...]]] = []
    while left:
        at = max(range(len(this.steps)), key=lambda i: (len(left.intersection(this.steps[i].removed)), -i))
        pairs = tuple(pair for pair in this.steps[at].removed if pair in left)
        chosen.append((this.first + at, pairs))
        left.difference_update(pairs)
    return chosen


class _Walk:
    """A path walked once, with the boards as they stood before each step."""

    def __init__(self, ground: Ground, path: SolvePath) -> None:
        self.ground = ground
        self.steps = path.steps
        self.real: list[State] = []
        """Before each step: the boards as they are."""
        self.plain: list[State] = []
        """Before each step: the boards if nothing had ever been struck, only written."""
        state, plain = start(ground), start(ground)
        for step in path.steps:
            self.real.append(state.copy())
            self.plain.append(plain.copy())
            for cell, digit in step.placed:
                state.place(cell, digit)
                plain.place(cell, digit)
            state.remove(step.removed)

    def rivals_struck(self, index: int) -> set[Candidate]:
        """What a placement rests on: rivals that only a strike has ruled out."""
        opening = opening_of(self.real[index], self.steps[index])
        return set(self.plain[index].present(rivals_of(self.ground, opening))) if opening else set()

    def rests_on(self, index: int, first: int, pairs: Sequence[Candidate], wanted: set[Candidate]) -> set[Candidate]:
        """Few candidates struck before its round (which begins at `first`) with which it is found; rather those that
        are wanted anyway."""
        step, plain = self.steps[index], self.plain[index]
        struck = dict.fromkeys(pair for earlier in self.steps[:first] for pair in plain.present(earlier.removed))

        def without(gone: Iterable[Candidate]) -> State:
            state = plain.copy()
            state.remove(gone)
            return state

        again = _finder(step, pairs, without(struck))

        def enough(gone: Iterable[Candidate]) -> bool:
            return again(without(gone))

        return set(_least(sorted(struck, key=lambda pair: pair not in wanted), enough))


def _finder(step: Step, pairs: Sequence[Candidate], state: State) -> Callable[[State], bool]:
    """Is a strike, found in one state, found in another for the same reason?"""
    techniques = [technique for rung in ladder() for technique in rung if technique.rung == step.rung]

    def found(there: State) -> Iterator[Finding]:
        for technique in techniques:
            for finding in technique.find_for(there, step.removed):
                same = finding.technique == step.technique and set(pairs) <= set(finding.removed)
                if same and finding.words() == step.because:
                    yield finding

    here = next(found(state), None)
    if here and here.again:
        return here.again
    return lambda other: any(found(other))


def _least(items: list[Candidate], enough: Callable[[Iterable[Candidate]], bool]) -> list[Candidate]:
    """Items that are enough, no one of which can be left away, rather those that come first; all together are enough.

    Halves that are not needed go at once (U. Junker, QuickXplain, AAAI 2004).
    """
    if not items or enough(()):
        return []

    def within(fixed: list[Candidate], rest: list[Candidate], changed: bool) -> list[Candidate]:
        if changed and enough(fixed):
            return []
        if len(rest) == 1:
            return rest
        half = len(rest) // 2
        second = within([*fixed, *rest[:half]], rest[half:], True)
        first = within([*fixed, *second], rest[:half], bool(second))
        return first + second

    return within([], items, False)
