"""What cannot stand together, against trying all sets of statements on small grids."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from itertools import combinations
from random import Random

import pytest

from bookmaker.changes.elements import Element, MarkOf, elements_of, named, problem_with
from bookmaker.mend.case import Case
from bookmaker.mend.conflicts import MOST, conflicts
from bookmaker.mend.hitting import hitting_sets, lower_bound
from bookmaker.mend.limit import Seconds
from bookmaker.puzzle.grid import CLASSIC, Grid, boxed_grid
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.rules.thermometer import Thermometer
from bookmaker.solve import prove
from bookmaker.solve.verdict import NoSolution
from tests.digits import digits_from

SMALL = boxed_grid(4, 2, 2)


def clash(elements: Iterable[Element], grid: Grid) -> bool:
    return isinstance(prove(problem_with(elements, grid)), NoSolution)


def broken_puzzles(count: int) -> Iterator[RuledPuzzle]:
    """Small puzzles with eight givens, one of them wrong, and a thermometer."""
    rng = Random("clash")
    while count:
        chain = rng.choice([(0, 1, 2), (5, 6, 10), (15, 11, 7, 3), (12, 9, 6)])
        givens = [0] * 16
        for cell in rng.sample(range(16), 7):
            givens[cell] = rng.randint(1, 4)
        puzzle = Puzzle(SMALL, tuple(givens), (Thermometer((chain,)),))
        if clash(elements_of(puzzle), SMALL):
            count -= 1
            yield puzzle


def smallest(puzzle: RuledPuzzle, wanted: Callable[[Sequence[Element]], bool]) -> set[frozenset[Element]]:
    """All smallest sets of the puzzle's statements for which `wanted` is true."""
    elements = elements_of(puzzle)
    for size in range(1, len(elements) + 1):
        found = [frozenset(some) for some in combinations(elements, size) if wanted(some)]
        if found:
            return set(found)
    return set()


@pytest.mark.parametrize("puzzle", list(broken_puzzles(12)), ids=lambda puzzle: puzzle.givens_text)
def test_the_smallest_clashes_and_the_least_to_take_away(puzzle: RuledPuzzle) -> None:
    elements = elements_of(puzzle)
    found = conflicts(Case(puzzle, Seconds(30.0)))
    clashes = smallest(puzzle, lambda some: clash(some, SMALL))
    assert found.smallest
    assert len(found.clashing) == min(MOST, len(clashes))
    assert {frozenset(some) for some in found.clashing} <= clashes
    gone = smallest(puzzle, lambda some: not clash([e for e in elements if e not in some], SMALL))
    assert found.least
    assert len(found.too_much) == min(MOST, len(gone))
    assert {frozenset(some) for some in found.too_much} <= gone


def test_hitting_sets_are_all_there_are() -> None:
    rng = Random(3)
    for _ in range(60):
        sets = [
            sum(1 << member for member in rng.sample(range(8), rng.randint(1, 4))) for _ in range(rng.randint(1, 6))
        ]
        every = [one for one in range(256) if all(one & other for other in sets)]
        least = min(one.bit_count() for one in every)
        assert lower_bound(sets) <= least
        assert not list(hitting_sets(sets, least - 1))
        assert sorted(hitting_sets(sets, least)) == [one for one in every if one.bit_count() == least]


def test_statements_are_called_what_is_printed() -> None:
    puzzle = Puzzle(CLASSIC, digits_from("5" + "." * 80), (Thermometer(((1, 2, 3),)),))
    assert [named(element, CLASSIC) for element in elements_of(puzzle)] == [
        "the 5 at r1c1",
        "the thermometer from r1c2 to r1c4",
    ]
    assert isinstance(elements_of(puzzle)[1], MarkOf)
