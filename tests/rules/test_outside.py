"""Clues outside the grid: which cells they look along, and room for several kinds at one side."""

from __future__ import annotations

from dataclasses import replace
from itertools import combinations, permutations
from random import Random

import pytest

from bookmaker.crosscheck.common import line_from
from bookmaker.display.items import Text
from bookmaker.puzzle.grid import CLASSIC, Grid, boxed_grid
from bookmaker.puzzle.position import Position
from bookmaker.rules import kinds, margins_of, marks_of
from bookmaker.rules.common.clue import SIDES, Clue
from bookmaker.rules.common.contract import Rule
from bookmaker.rules.common.drawing.frame import Frame, Margins
from bookmaker.rules.common.outside import whole_line
from bookmaker.rules.diagonal_sum import Diagonal, DiagonalSum
from bookmaker.typeface import typeface
from tests.rules.grids import MIDDLE, random_solution
from tests.rules.harness import Ink, inks, lay, sound_entry

OUTSIDE = (
    "diagonal-sum",
    "first-seen",
    "frame-product",
    "frame-sum",
    "numbered-room",
    "parity-run",
    "rise-or-fall",
    "rising-run",
    "sandwich",
    "skyscraper",
    "x-sum",
)
CELL = 24.0


def laid(kind: str, grid: Grid, seed: str) -> Rule:
    rng = Random(seed)
    rule = lay(kind, grid, random_solution(grid, rng), rng)
    assert rule is not None
    return rule


def boxes(rules: list[Rule], grid: Grid) -> list[Ink]:
    """What the rules draw, figures as wide as they are in their font."""
    found = []
    for mark in marks_of(rules, Frame(grid, CELL)):
        for ink in inks(mark.item):
            if isinstance(mark.item, Text):
                half = mark.item.size * sum(map(typeface(mark.item.font).advance, mark.item.text)) / 2
                ink = replace(ink, left=mark.item.x - half, right=mark.item.x + half)
            found.append(ink)
    return found


def overlap(one: Ink, other: Ink) -> bool:
    across = min(one.right, other.right) - max(one.left, other.left)
    down = min(one.bottom, other.bottom) - max(one.top, other.top)
    return across > 0.1 and down > 0.1


@pytest.mark.parametrize("side", SIDES)
def test_a_clue_looks_along_its_line_from_its_side(side: str) -> None:
    for line in range(6):
        assert list(Clue(side, line, 1).cells(MIDDLE)) == line_from(MIDDLE, side, line)  # type: ignore[arg-type]


def test_steps_name_where_a_clue_stands() -> None:
    assert Clue("left", 2, 12).where == "left of row 3"
    assert Clue("right", 0, 12).where == "right of row 1"
    assert Clue("top", 3, 12).where == "above column 4"
    assert Clue("bottom", 8, 12).where == "below column 9"


def test_every_outside_kind_claims_a_margin() -> None:
    examples = {kind: sound_entry(rule.example) for kind, rule in kinds().items()}
    found = {kind for kind, rule in examples.items() if rule.margins(CLASSIC) != Margins()}
    assert found == set(OUTSIDE)


@pytest.mark.parametrize("pair", list(permutations(OUTSIDE, 2)), ids="+".join)
def test_two_kinds_at_one_side_never_collide(pair: tuple[str, str]) -> None:
    """Whatever their order: each keeps to lanes of its own, and both to the room they claim together."""
    for grid in (MIDDLE, CLASSIC):
        rules = [laid(kind, grid, f"{kind} lanes") for kind in pair]
        room, side = margins_of(rules, grid), CELL * grid.size
        drawn = boxes(rules, grid)
        for ink in drawn:
            assert ink.left >= -room.left * CELL
            assert ink.top >= -room.top * CELL
            assert ink.right <= side + room.right * CELL
            assert ink.bottom <= side + room.bottom * CELL
            assert ink.right <= 0.5 or ink.left >= side - 0.5 or ink.bottom <= 0.5 or ink.top >= side - 0.5
        first = sorted(rules, key=lambda rule: not rule.hugs_grid)[0]
        inner = len(boxes([first], grid))
        assert not [(a, b) for a in drawn[:inner] for b in drawn[inner:] if overlap(a, b)]


def test_diagonal_sums_that_share_a_place_stay_apart() -> None:
    """Between two columns stand the arrow down-right of the one and the arrow down-left of the other."""
    for grid, total in ((CLASSIC, 45), (boxed_grid(16, 4, 4), 108)):
        ends = [
            Diagonal(total, grid.cell(0, 5), "down-right"),
            Diagonal(total, grid.cell(0, 3), "down-left"),
            Diagonal(total, grid.cell(5, 0), "down-right"),
            Diagonal(total, grid.cell(3, 0), "up-right"),
            Diagonal(total, grid.cell(5, grid.size - 1), "down-left"),
            Diagonal(total, grid.cell(3, grid.size - 1), "up-left"),
        ]
        alone = [boxes([DiagonalSum((end,))], grid) for end in ends]
        for one, other in combinations(alone, 2):
            assert not [(a, b) for a in one for b in other if overlap(a, b)]


def test_a_wide_open_line_is_not_written_out() -> None:
    """Only where few candidates are left would a person list all ways to fill a line."""
    everywhere = (0, *[(1 << 81) - 1] * 9)
    assert not list(whole_line(Clue("left", 0, 1), Position(CLASSIC, everywhere), "count", lambda line: line[0] == 9))
