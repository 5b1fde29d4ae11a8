"""What `tests/benchmarks/fuzz.py` once found on grids that overlap or have holes, held from then on."""

from __future__ import annotations

from dataclasses import replace
from itertools import combinations
from pathlib import Path
from random import Random
from textwrap import indent

import pytest

from bookmaker.changes.arrangement import arrangements_of
from bookmaker.changes.slips import left_out_by
from bookmaker.changes.textedits import changed_text
from bookmaker.changes.typed import find_typed
from bookmaker.language import catalogue
from bookmaker.manifest import load
from bookmaker.manifest.written import givens_picture, puzzle_lines
from bookmaker.puzzle.grid import Grid
from bookmaker.puzzle.holed import holed_grid
from bookmaker.puzzle.overlapping import overlapping_grids
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules import kinds
from bookmaker.solve.compile import compile_problem
from bookmaker.solve.problem import Combination, Different, Problem
from bookmaker.source.diagnostics import BookErrors
from bookmaker.wishes.reading import load_wishes
from tests.rules.harness import read_entry


@pytest.mark.parametrize("box", [(2, 3), (3, 2)])
def test_the_boxes_of_grids_that_overlap_are_written(tmp_path: Path, box: tuple[int, int]) -> None:
    """Unusual boxes were left out: what `draft` wrote could not be read."""
    puzzle = Puzzle(grid := overlapping_grids(6, box, [(0, 0), box]), (0,) * len(grid.cells))
    (tmp_path / "a.yaml").write_text("\n".join(puzzle_lines(puzzle, {"id": "a"})) + "\n", encoding="utf-8")
    assert [entry.puzzle for entry in load(tmp_path / "a.yaml").entries] == [puzzle]


def alone() -> Grid:
    """A grid with holes on all sides of its first cell."""
    return holed_grid(
        4, 6, [(0, 1), (0, 2), (1, 0), (2, 0), (1, 1), (2, 3), (3, 2), (3, 3), (4, 4), (4, 5), (5, 4), (5, 5)]
    )


def test_a_cell_between_black_cells_is_no_peak() -> None:
    """The greatest of its neighbours was asked for, and it has none."""
    grid = alone()
    _, collector = read_entry("peaks: {greater: r1c1}", grid)
    assert [found.code for found in collector.found] == ["peaks-alone"]
    assert not list(kinds()["peaks"].blank(grid).read_off((0,), grid, (1, 2, 3, 4) * 6, Random(1)))


def test_no_clues_outside_are_wished_for_where_there_are_holes(tmp_path: Path) -> None:
    """`draft` laid them, and what it wrote could not be read."""
    picture = givens_picture(alone(), (0,) * 24)
    (tmp_path / "a.yaml").write_text(
        f"wish:\n  size: 4\n  holes: |\n{indent(picture, '    ')}\n  rules: [cage, parity-run]\n", encoding="utf-8"
    )
    with pytest.raises(BookErrors) as raised:
        load_wishes(tmp_path / "a.yaml")
    assert [found.code for found in raised.value.diagnostics] == ["holes-rule"]


def test_marks_drawn_around_black_cells_are_changed_in_the_picture(tmp_path: Path) -> None:
    """Black cells were counted as cells: `mend` and `tune` ended in a KeyError, or changed another sign."""
    holes = givens_picture(alone(), (0,) * 24)
    drawn = ".##...\n##aa..\n#b.#..\n.b##..\n....##\n....##"
    (tmp_path / "a.yaml").write_text(
        f"- id: a\n  size: 4\n  holes: |\n{indent(holes, '    ')}\n  rules:\n    open-cage:\n      picture: |\n"
        f"{indent(drawn, '        ')}\n      totals: {{a: even, b: odd}}\n",
        encoding="utf-8",
    )
    typed = find_typed(tmp_path / "a.yaml", "a")
    (rule,) = typed.puzzle.rules
    grid = typed.puzzle.grid
    first, second = rule.parts(grid)
    longer = replace(second, cells=(*second.cells, grid.cell(4, 1)))
    text = changed_text(typed, replace(typed.puzzle, rules=(rule.with_parts((first, longer), grid),)))
    changed = [line for line in text.splitlines() if line not in typed.text.splitlines()]
    assert [line.strip() for line in changed] == [".b..##"]


def test_a_clue_is_not_looked_for_in_another_grid() -> None:
    """Its image lay along a line of the other grid: `mend` ended in an IndexError."""
    grid = overlapping_grids(4, (2, 2), [(0, 0), (2, 2)])
    rule, _ = read_entry("skyscraper: {right: 1 . . .}", grid.square("A"))
    assert rule is not None
    puzzle = Puzzle(grid, (0,) * len(grid.cells), (replace(rule, square="A"),))
    images = [
        image for made in arrangements_of(grid) for image in made.images_of(rule.parts(grid.square("A"))[0], rule)
    ]
    assert any(not {*image.cells} <= {*grid.square("A").cells} for image in images)
    for made in arrangements_of(grid):
        for _, part in left_out_by(made, puzzle):
            assert rule.with_parts((part,), grid.square("A")).parts(grid.square("A")) == (part,)


def test_an_oval_between_black_cells_is_read_from_the_top_down() -> None:
    """Numbers that follow each other were taken for a row: here r1c4 is the last of its row, r2c4 the first."""
    rows = ["....###", "###....", "#....##", ".##.#..", "##.#...", "..##.#.", "...##.#"]
    holes = [(row, column) for row, line in enumerate(rows) for column, each in enumerate(line) if each == "#"]
    rule, collector = read_entry("arrow: [{circle: r1c4 r2c4, shafts: r3c5-r3c2 r4c1}]", holed_grid(4, 7, holes))
    assert rule is not None, collector.found
    assert "top down" in rule.sentence(catalogue("en"))


@pytest.mark.parametrize(
    ("line", "code"), [("tags: 39.22", "not-a-tag"), ("shown: Spring", "bad-date"), ("link: no page", "bad-link")]
)
def test_a_wish_has_only_lines_that_can_be_read_again(tmp_path: Path, line: str, code: str) -> None:
    """They were copied into what was drafted, which could then not be read."""
    (tmp_path / "a.yaml").write_text(f"wish:\n  size: 4\n  {line}\n", encoding="utf-8")
    with pytest.raises(BookErrors) as raised:
        load_wishes(tmp_path / "a.yaml")
    assert [found.code for found in raised.value.diagnostics] == [code]


@pytest.mark.parametrize("typed", ["square-block: {rows: [r1c2-r2c1]}", "quadruple: {r1c2-r2c1: 1 2}"])
def test_a_mark_does_not_lie_over_a_black_cell(typed: str) -> None:
    """What lay between the two corners was looked up, and ended in a KeyError."""
    grid = holed_grid(4, 5, [(0, 4), (1, 1), (2, 2), (3, 3), (4, 0)])
    _, collector = read_entry(typed, grid)
    assert [found.code for found in collector.found] == ["off-grid"] and "no cell" in collector.found[0].text


@pytest.mark.parametrize(("digits", "dear"), [(9, False), (16, True), (20, False)])
def test_sets_of_many_digits_are_charged_for(digits: int, dear: bool) -> None:
    """On 20 digits an answer took 20 ms and was charged 80 µs: `proof --count` went on for over 10 s, `--notes` for
    minutes."""
    line = Different(tuple(range(digits)))
    crossing = Different((0, *range(digits, 2 * digits - 1)))  # two houses that share a cell belong to no family
    engine, _ = compile_problem(Problem(2 * digits - 1, digits, (line, crossing)))
    assert engine.locals
    assert all((local.cost > 10 * len(local.cells)) == dear for local in engine.locals)


def test_few_sets_are_charged_one_by_one() -> None:
    sets = frozenset(sum(1 << digit - 1 for digit in some) for some in combinations(range(1, 21), 4) if sum(some) == 40)
    engine, _ = compile_problem(Problem(20, 20, (Combination((0, 1, 2, 3), sets),)))
    (local,) = engine.locals
    assert len(sets) <= local.cost <= len(sets) + 10 * len(local.cells)
