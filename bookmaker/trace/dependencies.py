"""What the steps of a path rest on: a round strikes everything its rung shows, of which the path uses little.

In: a puzzle and its path. Out: for every elimination that something rests on, the candidates that matter. Found from
the end backwards: a placement rests on the candidates whose absence makes it a single, and these on the steps that
struck them. What an elimination rests on is tried out: earlier ones are taken back as long as its technique still finds
it, for the same reason.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass, field

from bookmaker.grade.solve_path import SolvePath, Step
from bookmaker.logic.singles import Opening, openings_kept
from bookmaker.logic.state import Ground, State, start
from bookmaker.logic.technique import Finding, ladder
from bookmaker.puzzle.position import Candidate
from bookmaker.reasons import Rung
from bookmaker.trace.budget import Budget
from bookmaker.trace.rounds import Round, rounds


@dataclass(frozen=True)
class Dependencies:
    """`eliminations` are those that are needed, by their number in the path, each with those of its candidates that
    matter; `rests` has, for every placement and every needed elimination, the candidates that must be gone for it."""

    eliminations: dict[int, tuple[Candidate, ...]]
    rests: dict[int, tuple[Candidate, ...]]
    striker: dict[Candidate, int] = field(init=False)
    """The needed elimination that takes a candidate."""

    def __post_init__(self) -> None:
        striker = {pair: index for index, pairs in self.eliminations.items() for pair in pairs}
        object.__setattr__(self, "striker", striker)

    def behind(self, index: int) -> frozenset[int]:
        """All eliminations that a step rests on, through however many others."""
        found: set[int] = set()
        todo = [index]
        while todo:
            for pair in self.rests.get(todo.pop(), ()):
                by = self.striker[pair]
                if by not in found:
                    found.add(by)
                    todo.append(by)
        return frozenset(found)


def dependencies(ground: Ground, path: SolvePath, budget: Budget, target: int | None = None) -> Dependencies:
    """Which eliminations of a path are needed, and for what; with a `target`, only those for this one placement. Raises
    TooMuch when the budget is spent."""
    walk = _Walk(ground, path, budget)
    eliminations: dict[int, tuple[Candidate, ...]] = {}
    rests: dict[int, tuple[Candidate, ...]] = {}
    wanted: dict[Candidate, None] = {}
    for this in reversed(list(rounds(path))):
        if this.places:
            for index in range(this.first, this.after):
                if target in (None, index):
                    rests[index] = walk.rivals_struck(index)
                    wanted |= dict.fromkeys(rests[index])
            continue
        for index, struck in _chosen(this, wanted):
            eliminations[index] = struck
            rests[index] = walk.rests_on(index, this.first, struck, wanted)
            wanted |= dict.fromkeys(rests[index])
    return Dependencies(dict(sorted(eliminations.items())), rests)


def opening_of(state: State, step: Step) -> Opening | None:
    """The single that a placing step writes down, as the state shows it; None where a mark or the proof gives it."""
    if step.rung > Rung.NAKED:
        return None
    (cell, digit), *_ = step.placed
    return next((found for found in openings_kept(state) if (found.cell, found.digit) == (cell, digit)), None)


def rivals_of(ground: Ground, opening: Opening) -> list[Candidate]:
    """The candidates whose absence makes it a single: its digit elsewhere in the house, or other digits in its cell."""
    if opening.kind is Rung.LAST:
        return []
    if opening.area is None:
        return [(opening.cell, digit) for digit in ground.grid.digits if digit != opening.digit]
    return [(cell, opening.digit) for cell in opening.area.cells if cell != opening.cell]


def _chosen(this: Round, wanted: dict[Candidate, None]) -> list[tuple[int, tuple[Candidate, ...]]]:
    """Few steps of a round that strike all that is wanted of it, those that strike the most of it first."""
    left = {pair for step in this.steps for pair in step.removed if pair in wanted}
    chosen: list[tuple[int, tuple[Candidate, ...]]] = []
    while left:
        at = max(range(len(this.steps)), key=lambda i: (len(left.intersection(this.steps[i].removed)), -i))
        pairs = tuple(pair for pair in this.steps[at].removed if pair in left)
        chosen.append((this.first + at, pairs))
        left.difference_update(pairs)
    return chosen


class _Walk:
    """A path walked once, with the boards as they stood before each step."""

    def __init__(self, ground: Ground, path: SolvePath, budget: Budget) -> None:
        self.ground, self.budget = ground, budget
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

    def rivals_struck(self, index: int) -> tuple[Candidate, ...]:
        """What a placement rests on: rivals that only an elimination has ruled out."""
        opening = opening_of(self.real[index], self.steps[index])
        return self.plain[index].present(rivals_of(self.ground, opening)) if opening else ()

    def rests_on(
        self, index: int, first: int, pairs: Sequence[Candidate], wanted: dict[Candidate, None]
    ) -> tuple[Candidate, ...]:
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
            self.budget.spend(self.ground)
            return again(without(gone))

        return tuple(_least(sorted(struck, key=lambda pair: pair not in wanted), enough))


def _finder(step: Step, pairs: Sequence[Candidate], state: State) -> Callable[[State], bool]:
    """Is an elimination, found in one state, found in another for the same reason?"""
    techniques = [technique for rung in ladder() for technique in rung if technique.rung == step.rung]

    def found(there: State) -> Iterator[Finding]:
        for technique in techniques:
            for finding in technique.find_for(there, step.removed):
                if set(pairs) <= set(finding.removed) and finding.reason().argues_as(step.reason):
                    yield finding

    here = next(found(state), None)
    if here and here.again:
        return here.again
    return lambda other: any(found(other))


def _least(items: list[Candidate], enough: Callable[[Iterable[Candidate]], bool]) -> list[Candidate]:
    """Items that are enough, no one of which can be spared, rather those that come first; all together are enough.

    Halves that are not needed go at once (U. Junker, QuickXplain, AAAI 2004).
    """
    return [] if not items or enough(()) else _least_beside([], items, False, enough)


def _least_beside(
    fixed: list[Candidate], rest: list[Candidate], changed: bool, enough: Callable[[Iterable[Candidate]], bool]
) -> list[Candidate]:
    """What is needed of the rest beside what is fixed; `changed`: more is fixed than when it was last tried."""
    if changed and enough(fixed):
        return []
    if len(rest) == 1:
        return rest
    half = len(rest) // 2
    second = _least_beside([*fixed, *rest[:half]], rest[half:], True, enough)
    first = _least_beside([*fixed, *second], rest[:half], bool(second), enough)
    return first + second
