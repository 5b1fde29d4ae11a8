"""Slips as they would be typed: what no manifest can say is none."""

from __future__ import annotations

import pytest

from bookmaker.changes.elements import elements_of, problem_with
from bookmaker.changes.slips import as_read, as_typed, slips_in_marks
from bookmaker.manifest.example import example_rule
from bookmaker.puzzle.grid import CLASSIC
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules import kinds, problem_of
from bookmaker.rules.cage import Cage
from bookmaker.rules.limits import Limit, Limits
from bookmaker.solve import prove
from bookmaker.solve.verdict import Unique
from tests.published import PULP_SOLVED


@pytest.mark.parametrize("kind", kinds())
def test_a_kind_s_example_is_read_as_it_is(kind: str) -> None:
    rule = example_rule(kinds()[kind])
    read = as_read(rule, CLASSIC)
    assert read is not None
    assert set(read.parts(CLASSIC)) == set(rule.parts(CLASSIC))


def test_areas_that_overlap_are_not_typed() -> None:
    apart = ((0, 1), 3), ((3, 4), 5), ((6, 7), 7), ((18, 19), 9), ((21, 22), 11)
    assert as_read(Cage(apart), CLASSIC) is not None
    assert as_read(Cage((((0, 1, 3), 8), *apart[1:])), CLASSIC) is None


def test_two_limits_in_one_cell_are_not_typed() -> None:
    one, other = Limit(14, 0b11, False), Limit(14, 0b1100, False)
    assert as_read(Limits((one,)), CLASSIC) is not None
    assert as_read(Limits((one, other)), CLASSIC) is None


@pytest.mark.parametrize("kind", kinds())
def test_a_slip_asks_the_same_as_it_is_typed(kind: str) -> None:
    """The statements that a slip is judged by, against the constraints of the rules as they are read."""
    givens = tuple(int(digit) if at % 3 else 0 for at, digit in enumerate(PULP_SOLVED))
    puzzle = Puzzle(CLASSIC, givens, (example_rule(kinds()[kind]),))
    for slip in list(slips_in_marks(puzzle))[:40]:
        typed = as_typed(slip)
        if typed is not None:
            asked = prove(problem_with(elements_of(slip.meant), CLASSIC))
            assert isinstance(asked, Unique) == isinstance(prove(problem_of(typed.meant)), Unique), slip
