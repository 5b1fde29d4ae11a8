"""Marks in words: every kind says all of its marks, and a listener who knows its sentence has the same rule.

The listener of `tests/listening.py` builds rules from the words alone; it shares no code with what reads manifests.
"""

from __future__ import annotations

import re
from random import Random

import pytest

from bookmaker.language import catalogue
from bookmaker.puzzle.grid import CLASSIC, Grid, boxed_grid
from bookmaker.rules import kinds
from bookmaker.rules.common.drawing.frame import Frame
from bookmaker.rules.common.words.speech import borders_said, cells_said, line_said
from tests.listening import cells, heard, told
from tests.rules.grids import GRIDS
from tests.rules.harness import cases_of, instances, sound_entry

MANIFEST = re.compile(r"[rR]\d+[cC]\d+|picture|all-marked|\bboth\b|\byes\b|^\w+-?\w*: \.|[{}\[\]|]")
"""What a setter types and nobody should hear."""


@pytest.mark.parametrize("kind", kinds())
def test_a_listener_has_the_same_rule(kind: str) -> None:
    rng = Random(f"spoken {kind}")
    entries = [kinds()[kind].example, *(entry for entry, _ in cases_of(kind).SENTENCES)]
    rules = [(sound_entry(entry), CLASSIC) for entry in entries]
    rules += [(rule, grid) for grid in GRIDS for _, rule in instances(kind, grid, rng, 4)]
    for rule, grid in rules:
        marks = [*rule.spoken(catalogue("en"), grid)]
        assert bool(marks) == any(True for _ in rule.marks(Frame(grid, 20.0))), rule
        for mark in marks:
            assert mark[0].isupper() and mark[-1].isalnum(), mark
            assert mark == " ".join(mark.split()) and mark.isprintable()
            assert not MANIFEST.search(mark), mark
        assert len(set(marks)) == len(marks)
        again = heard(rule.title, rule.sentence(catalogue("en")), marks, grid)
        assert type(again) is type(rule)
        assert told(again) == told(rule), (marks, again, rule)


@pytest.mark.parametrize(
    ("area", "said"),
    [
        ([0], "row 1 column 1"),
        ([0, 1, 9], "row 1 columns 1 and 2, row 2 column 1"),
        ([0, 1, 9, 10], "rows 1 and 2 columns 1 and 2"),
        ([8, 17, 26], "rows 1 to 3 column 9"),
        ([0, 1, 2, 4, 9], "row 1 columns 1 to 3 and 5, row 2 column 1"),
        ([0, 2, 4, 9], "row 1 columns 1, 3 and 5; row 2 column 1"),
        ([0, 18], "row 1 column 1, row 3 column 1"),
    ],
)
def test_cells_in_words(area: list[int], said: str) -> None:
    assert cells_said(catalogue("en"), CLASSIC, area[::-1]) == said


@pytest.mark.parametrize(
    ("chain", "said"),
    [
        ((0, 1, 2, 3, 13), "row 1 columns 1 to 4, row 2 column 5"),
        ((3, 2), "row 1 columns 4 to 3"),
        ((36, 27, 28), "rows 5 to 4 column 1, row 4 column 2"),
        ((0, 10, 20, 21), "row 1 column 1 diagonally to row 3 column 3, row 3 column 4"),
        ((0, 10, 11), "row 1 column 1, row 2 columns 2 to 3"),
    ],
)
def test_lines_in_words(chain: tuple[int, ...], said: str) -> None:
    assert line_said(catalogue("en"), CLASSIC, chain) == said


def test_borders_in_words() -> None:
    pairs = [(3, 4), (1, 0), (9, 18), (10, 11)]
    assert [*borders_said(catalogue("en"), CLASSIC, "dots-spoken-white", pairs)] == [
        "White dots in row 1 between columns 1 and 2, 4 and 5",
        "White dot in row 2 between columns 2 and 3",
        "White dot in column 1 between rows 2 and 3",
    ]


@pytest.mark.parametrize("grid", [boxed_grid(16, 4, 4), Grid(5, ())])
def test_every_line_through_a_grid_can_be_followed(grid: Grid) -> None:
    rng = Random(f"lines {grid.size}")
    for _ in range(200):
        chain = [rng.randrange(len(grid.cells))]
        while len(chain) < 12:
            near = [cell for cell in grid.cells if cell not in chain and grid.touching(chain[-1], cell)]
            if not near:
                break
            chain.append(rng.choice(near))
        assert cells(grid, line_said(catalogue("en"), grid, chain)) == tuple(chain)
        some = rng.sample([*grid.cells], 12)
        assert sorted(cells(grid, cells_said(catalogue("en"), grid, some))) == sorted(some)
