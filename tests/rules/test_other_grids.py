"""Rules on grids of other sizes and shapes than the everyday one: what fits there, and what is refused."""

from __future__ import annotations

import pytest

from bookmaker.puzzle.grid import Grid, boxed_grid, irregular_grid
from tests.rules.grids import MIDDLE, SMALL
from tests.rules.harness import read_entry, sound_entry

IRREGULAR = irregular_grid(6, "AAABBBAACCBBDACCEBDDCCEEDFFFEEDDFFFE")
LATIN = Grid(5, ())
LARGE = boxed_grid(16, 4, 4)


@pytest.mark.parametrize(
    ("entry", "grid", "code"),
    [
        ("windows: yes", MIDDLE, "windows-grid"),
        ("windows: yes", IRREGULAR, "windows-grid"),
        ("windows: yes", LATIN, "windows-grid"),
        ("disjoint-groups: yes", IRREGULAR, "groups-grid"),
        ("disjoint-groups: yes", LATIN, "groups-grid"),
        # On 4×4 the greatest sum of two digits is 7; on 5×5 it is 9.
        ("sum-marks: {X: r1c1-r1c2}", SMALL, "mark-large"),
        ("sum-marks: {X: r1c1-r1c2}", LATIN, "mark-large"),
        ("limits: {r1c1: 5}", SMALL, "not-a-digit"),
        ("extra-region: r1c1-r1c4 r2c1", SMALL, "region-large"),
        ("parity: {even: r1c1-r1c3}", LATIN, "parity-crowd"),
    ],
)
def test_what_a_grid_cannot_carry_is_said(entry: str, grid: Grid, code: str) -> None:
    rule, collector = read_entry(entry, grid)
    assert rule is None
    assert [diagnostic.code for diagnostic in collector.found] == [code]


def test_many_different_digits_in_a_large_grid_are_not_counted() -> None:
    grid, area = boxed_grid(25, 5, 5), "{cells: r1c1-r1c9, count: %s different}"
    for count in (5, 9):  # few; as many as there are cells, which need only differ
        assert sound_entry(f"counting-area: {area % count}", grid)
    rule, collector = read_entry(f"counting-area: {area % 8}", grid)
    assert rule is None
    assert [(found.code, found.hint) for found in collector.found] == [
        ("area-different", "an area counts up to five here, or as many as it has cells")
    ]


def test_small_and_large_grids_have_windows_too() -> None:
    assert [len(sound_entry("windows: yes", grid).houses(grid)) for grid in (SMALL, LARGE)] == [1, 9]
    (window,) = sound_entry("windows: yes", SMALL).houses(SMALL)
    assert window.cells == (5, 6, 9, 10)


def test_disjoint_groups_of_oblong_boxes() -> None:
    groups = sound_entry("disjoint-groups: yes", MIDDLE).houses(MIDDLE)
    assert len(groups) == 6
    assert groups[0].cells == (0, 3, 12, 15, 24, 27)
    assert groups[4].name == "the fifth cells of the boxes"


def test_low_and_high_leave_out_the_middle() -> None:
    def allowed(entry: str, grid: Grid) -> list[int]:
        (made,) = sound_entry(entry, grid).constraints(grid)
        return [digit for digit in grid.digits if made.digits >> (digit - 1) & 1]

    assert allowed("limits: {r1c1: low}", LATIN) == [1, 2]
    assert allowed("limits: {r1c1: high}", LATIN) == [4, 5]
    assert allowed("limits: {r1c1: high}", MIDDLE) == [4, 5, 6]
    assert allowed("limits: {r1c1: A-G}", LARGE) == list(range(10, 17))
    assert allowed("limits: {r1c1: not 1-9 g}", LARGE) == list(range(10, 16))
