"""Lines and arrows on grids that are not the everyday one: what they refuse there, and what they are called."""

from __future__ import annotations

import pytest

from bookmaker.puzzle.grid import Grid, boxed_grid, irregular_grid
from tests.rules.grids import SMALL
from tests.rules.harness import read_entry, sound_entry

LATIN = Grid(5, ())
LARGE = boxed_grid(12, 3, 4)
IRREGULAR = irregular_grid(4, "aaabacbbccbdcddd")


@pytest.mark.parametrize(
    ("entry", "grid", "code"),
    [
        ("region-sum-line: r1c1-r1c4", LATIN, "no-regions"),
        ("difference-line: r1c1-r1c3", SMALL, "difference-large"),
        ("arrow:\n  - {circle: r1c1 r1c2, shafts: r2c1-r6c1}", LARGE, "oval-size"),
        ("cage:\n  - {cells: r1c1-r1c4, total: 11}", SMALL, "cage-total"),
        ("cage: r1c1-r1c4 r2c4", SMALL, "cage-large"),
    ],
)
def test_what_a_grid_can_not_carry_is_refused(entry: str, grid: Grid, code: str) -> None:
    rule, desk = read_entry(entry, grid)
    assert rule is None
    assert [trouble.code for trouble in desk.found] == [code]


def test_regions_that_are_no_boxes_are_called_regions() -> None:
    line = sound_entry("region-sum-line: r1c3 r2c2", IRREGULAR)
    assert line.sentence() == "On the region-sum line, the digits of each visit to a region add up to the same sum."
    assert line.holds(IRREGULAR, (1, 2, 3, 4, 4, 3, 2, 1, *(0,) * 8))
    assert not line.holds(IRREGULAR, (1, 2, 3, 4, 3, 4, 1, 2, *(0,) * 8))


def test_a_given_difference_makes_the_line_fit_a_small_grid() -> None:
    rule = sound_entry("difference-line:\n  lines: r1c1-r1c3\n  least: 2", SMALL)
    assert rule.holds(SMALL, (1, 3, 1, 2, *(0,) * 12))
    assert not rule.holds(SMALL, (1, 3, 2, 4, *(0,) * 12))
