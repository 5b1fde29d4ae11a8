"""A puzzle seen another way is the same puzzle: one solution, and the same effort."""

from __future__ import annotations

from pathlib import Path

import pytest

from bookmaker.grade import grade
from bookmaker.manifest import load
from bookmaker.puzzle.grid import CLASSIC, Grid, boxed_grid
from bookmaker.rules import keeps_all, problem_of
from bookmaker.solve import prove
from bookmaker.solve.verdict import Unique
from tests.makers.turned import as_seen, is_seen_alike, turned, views

DEMO = Path(__file__).resolve().parents[2] / "demo_book"


def test_eight_views_all_different_and_the_first_as_it_is() -> None:
    for size in (4, 6, 9):
        seen = [view.move for view in views(Grid(size, ()))]
        assert len(set(seen)) == 8
        assert seen[0] == tuple(range(size * size))
        assert {tuple(a[b] for b in c) for a in seen for c in seen} == set(seen)  # a group


def test_each_demo_puzzle_is_the_same_seen_another_way() -> None:
    moved = 0
    for number, entry in enumerate(load(DEMO).entries):
        before = prove(problem_of(entry.puzzle))
        assert isinstance(before, Unique)
        alike = [view for view in views(entry.puzzle.grid) if is_seen_alike(entry.puzzle, view)]
        view = alike[number % len(alike)]
        puzzle = turned(entry.puzzle, view)
        moved += puzzle != entry.puzzle
        after = prove(problem_of(puzzle))
        assert isinstance(after, Unique), entry.title
        assert after.solution == as_seen(before.solution, view), entry.title
        assert keeps_all(puzzle, after.solution)
        if number % 3 == 0:
            one, other = grade(entry.puzzle, before.solution), grade(puzzle, after.solution)
            assert other.effort == pytest.approx(one.effort, rel=0.01), entry.title
    assert moved > 35


def test_arrows_in_cells_point_another_way_in_each_view() -> None:
    puzzle = next(
        entry.puzzle for entry in load(DEMO).entries if any(rule.kind == "pointing" for rule in entry.puzzle.rules)
    )
    seen = [turned(puzzle, view) for view in views(puzzle.grid)]
    assert all(isinstance(prove(problem_of(other)), Unique) for other in seen)


def test_boxes_stand_the_other_way_round_where_the_grid_is_laid_on_its_side() -> None:
    from bookmaker.puzzle.puzzle import Puzzle

    grid = boxed_grid(6, 2, 3)
    boxes = {turned(Puzzle(grid, (0,) * 36), view).grid.box for view in views(grid)}
    assert boxes == {(2, 3), (3, 2)}
    assert turned(Puzzle(CLASSIC, (0,) * 81), views(CLASSIC)[3]).grid == CLASSIC
