"""Marks laid in pairs face each other across the centre and are true."""

from __future__ import annotations

from random import Random

import pytest

from bookmaker.puzzle.grid import CLASSIC
from bookmaker.rules.common.outside import Clue
from bookmaker.rules.limits import Limits
from bookmaker.rules.quadruple import Quadruple
from tests.makers.facing import facing_marks
from tests.rules.grids import random_solution

OUTSIDE = ("first-seen", "numbered-room", "sandwich", "skyscraper", "x-sum")


@pytest.mark.parametrize("kind", (*OUTSIDE, "quadruple", "limits", "diagonal-sum"))
def test_they_are_true(kind: str) -> None:
    rng = Random(f"true {kind}")
    for _ in range(5):
        solution = random_solution(CLASSIC, rng)
        assert facing_marks(kind, CLASSIC, solution, rng, 5).holds(CLASSIC, solution)


@pytest.mark.parametrize("kind", OUTSIDE)
def test_clues_face_each_other(kind: str) -> None:
    rng = Random(f"facing {kind}")
    rule = facing_marks(kind, CLASSIC, random_solution(CLASSIC, rng), rng, 4)
    clues: tuple[Clue, ...] = rule.clues  # type: ignore[attr-defined]
    ends = {(clue.side, clue.line) for clue in clues}
    opposite = {"left": "right", "right": "left", "top": "bottom", "bottom": "top"}
    assert len(ends) == 8
    assert ends == {(opposite[side], 8 - line) for side, line in ends}
    assert not any((opposite[side], line) in ends for side, line in ends)


def test_marks_in_the_grid_face_each_other() -> None:
    rng = Random("inside")
    solution = random_solution(CLASSIC, rng)
    rings = facing_marks("quadruple", CLASSIC, solution, rng, 4)
    limits = facing_marks("limits", CLASSIC, solution, rng, 4)
    assert isinstance(rings, Quadruple)
    assert isinstance(limits, Limits)
    corners = {ring.cells[0] for ring in rings.rings}
    cells = {limit.cell for limit in limits.limits}
    assert len(corners) == len(cells) == 8
    assert corners == {80 - corner - 10 for corner in corners}
    assert cells == {80 - cell for cell in cells}
