"""The rating as it is printed: moments of the path, and the narrow ones among them."""

from __future__ import annotations

from typing import Any

from bookmaker.book.rating import rating_of
from bookmaker.grade.solve_path import Grade, SolvePath, Step
from bookmaker.puzzle.grid import CLASSIC
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.reasons import Reason, Rung
from bookmaker.reasons.patterns import NakedSubset
from bookmaker.reasons.singles import NakedSingle

NAMES = ("a", "b", "c", "d", "e")
SUBSET = NakedSubset((0, 1), (1, 2), CLASSIC.rows[0].ref)


def rated(*efforts: float, struck: int = -1, rung: int = 4) -> Any:
    """The rating of a path that fills one cell a step; before step `struck` two strikes share ten looks."""
    steps = []
    for at, effort in enumerate(efforts):
        empty = 81 - at
        if at == struck:
            steps += [Step(Reason("naked-pair", None, SUBSET), Rung.PAIR, (0,), (), ((0, 1),), 2, empty, 5.0)] * 2
        reason = Reason("naked-single", None, NakedSingle(at, 1))
        steps.append(Step(reason, Rung.NAKED, (at,), ((at, 1),), (), 1, empty, effort))
    path = SolvePath(tuple(steps), True)
    return rating_of(Puzzle(CLASSIC, (0,) * 81), Grade(path, path.effort, 2, True), NAMES)


def test_strikes_up_to_the_next_placement_are_one_moment() -> None:
    rating = rated(1.0, 2.0, 3.0, struck=1)
    assert rating.profile == (1.0, 10.0, 2.0, 3.0)
    assert (rating.band_name, rating.steps) == ("b", 5)


def test_moments_that_stand_out_are_marked_three_at_most() -> None:
    efforts = [1.0] * 60
    for at, effort in ((5, 80.0), (15, 90.0), (25, 70.0), (35, 60.0)):
        efforts[at] = effort
    assert rated(*efforts).narrow == (5, 15, 25)
    assert rated(*[1.0] * 60).narrow == ()


def test_of_two_side_by_side_the_harder_is_marked() -> None:
    efforts = [1.0] * 50
    efforts[10], efforts[12], efforts[30] = 80.0, 90.0, 70.0
    assert rated(*efforts).narrow == (12, 30)


def test_a_path_without_steps() -> None:
    assert rated().profile == rated().narrow == ()
