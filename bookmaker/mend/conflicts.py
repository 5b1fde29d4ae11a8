"""Why a puzzle has no solution: what cannot stand together, and what would have to go.

In: a puzzle without a solution. Out: the smallest sets of givens and marks that clash, and the smallest sets without
which the rest has a solution; all of them up to a bound, and whether they are proven to be the smallest.

The two kinds of set answer each other (R. Reiter, "A theory of diagnosis from first principles", Artificial
Intelligence 32, 1987): what goes must hit every clash, and every clash must hit what any filled grid breaks.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from random import Random

from bookmaker.changes.elements import Element
from bookmaker.mend.case import Case, Elements
from bookmaker.mend.hitting import hitting_sets, lower_bound

MOST = 6
"""So many sets of each kind are told."""

LARGEST = 12
"""Clashes are proven to be the smallest up to this size."""

CORES = 12
"""Clashes that are taken from different ends."""


@dataclass(frozen=True)
class Conflicts:
    """`clashing` sets cannot hold together; without one of the sets of `too_much` all others can.

    `smallest` says whether no smaller set clashes, `tight` whether the first of them clashes no more once any of its
    statements is taken away, `least` whether no fewer can go.
    """

    clashing: tuple[tuple[Element, ...], ...]
    smallest: bool
    tight: bool
    too_much: tuple[tuple[Element, ...], ...]
    least: bool


def conflicts(case: Case) -> Conflicts:
    """Look for both kinds of set, with half of the case's limit for each."""
    order = sorted(case.elements, key=repr)
    bits = {element: 1 << number for number, element in enumerate(order)}

    def board(elements: Iterable[Element]) -> int:
        return sum(bits[element] for element in elements)

    def told(boards: Sequence[int]) -> tuple[tuple[Element, ...], ...]:
        return tuple(tuple(element for element in order if bits[element] & one) for one in boards[:MOST])

    rng = Random(0)
    for _ in range(CORES):
        if not case.limit.over(1 / 4):
            case.core_of(rng.sample(order, len(order)), 1 / 2)
    gone, least = _least(case, order, board)
    cores, smallest = _smallest(case, order, board)
    tight = smallest or any(board(core) == cores[0] for core in case.tight)
    return Conflicts(told(cores), smallest, tight, told(gone), least)


Board = Callable[[Iterable[Element]], int]


def _least(case: Case, order: Sequence[Element], board: Board) -> tuple[list[int], bool]:
    """The smallest sets without which the rest has a solution: hitting sets of all clashes, tried one after the other;
    one without which the rest still clashes shows a clash that was not known."""
    rng = Random(0)
    size = 1
    found: list[int] = []
    while not case.limit.over(1 / 2) and not found:
        known = len(case.cores)
        size = max(size, lower_bound([board(core) for core in case.cores]))
        for gone in hitting_sets([board(core) for core in case.cores], size, lambda: case.limit.over(1 / 2)):
            rest = [element for element in order if not board([element]) & gone]
            if case.solutions_of(rest):
                found.append(gone)
            else:
                case.core_of(rng.sample(rest, len(rest)), 1 / 2)
                if len(case.cores) > known:
                    break
        else:
            size += 1
            continue
        if len(case.cores) > known:
            found = []
    return sorted(found, key=int.bit_count), bool(found) and not case.limit.over(1 / 2)


def _smallest(case: Case, order: Sequence[Element], board: Board) -> tuple[list[int], bool]:
    """The smallest clashes: hitting sets of what the grids met break; one that does not clash shows another grid."""
    best = min(map(len, case.cores), default=0)
    size = 1
    while size <= min(best, LARGEST) and not case.limit.over():
        broken = [board(statements) for statements in case.met.values()]
        size = max(size, lower_bound(broken))
        met = len(case.met)
        found = []
        for clash in hitting_sets(broken, size, case.limit.over):
            some = [element for element in order if board([element]) & clash]
            if case.clash(some):
                found.append(clash)
            elif _meet_one_more(case, some, order):
                break
            if len(found) == MOST:
                break
        if len(case.met) > met:
            continue
        if found and not case.limit.over():
            return found, True
        size += 1
    cores = sorted({board(core) for core in case.cores}, key=int.bit_count)
    return cores, False


def _meet_one_more(case: Case, some: Sequence[Element], order: Sequence[Element]) -> bool:
    """Meet a grid that keeps some statements and, one after the other, as many of the others as the limit allows."""
    kept: Elements = frozenset(some)
    before = len(case.met)
    for _ in range(len(order)):
        found = case.solutions_of(kept)
        if not found:
            return False
        broken = case.met[found[0]]
        kept = frozenset(order) - broken
        left = (e for e in order if e in broken and not case.limit.over())
        further = next((e for e in left if not case.clash([*kept, e])), None)
        if further is None:
            break
        kept |= {further}
    return len(case.met) > before
