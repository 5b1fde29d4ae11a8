"""A puzzle changed in its file: what is written reads as it was meant, and nothing else changes."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path
from random import Random

import pytest

from bookmaker.changes.slips import as_typed, slips_in_givens, slips_in_marks
from bookmaker.changes.textedits import changed_lines, changed_text, own_text
from bookmaker.changes.typed import find_typed
from bookmaker.manifest import load
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.rules.common.parts import Part

DEMO = Path(__file__).resolve().parents[2] / "demo_book"
IDS = [entry.id for entry in load(DEMO).entries]


def told(puzzle: RuledPuzzle) -> object:
    """Givens and marks, in whatever order these are typed."""
    rules = {
        (rule.kind, rule.square, frozenset(rule.parts(rule.laid_on(puzzle.grid))), *rule.said_options())
        for rule in puzzle.rules
    }
    return puzzle.grid, puzzle.givens, rules


@pytest.mark.parametrize("name", IDS)
def test_slips_of_every_demo_puzzle_typed_into_its_file(name: str, tmp_path: Path) -> None:
    typed = find_typed(DEMO, name)
    rng = Random(name)
    slips = [slip for slip in slips_in_givens(typed.puzzle) if slip.meant.givens != typed.puzzle.givens]
    in_marks = list(slips_in_marks(typed.puzzle))
    for slip in [*rng.sample(slips, 3), *rng.sample(in_marks, min(len(in_marks), 3))]:
        meant = as_typed(slip)
        if meant is None:
            continue
        text = changed_text(typed, meant.meant)
        alone = tmp_path / "alone.yaml"
        alone.write_text(own_text(typed, text), encoding="utf-8")
        assert told(find_typed(alone, name).puzzle) == told(meant.meant), slip.sort
        lines = [line for line, _, _ in changed_lines(typed, text)]
        assert lines
        assert all(typed.first < line <= typed.after + 2 for line in lines)


BRACKETS = """\
- id: a
  size: 4
  givens: |
    1 . . .
    . . . .
    . . . .
    . . . 2
  rules:
    thermometer: [r1c2-r1c4,  # the upper one
      r2c2-r2c4, r3c1-r3c3,  # two more
      r4c1-r4c3]
    palindrome:  # by hand
      - r2c1 r3c2  # a pair
"""


@pytest.mark.parametrize("gone", range(4))
def test_a_mark_that_goes_from_a_list_in_brackets_leaves_what_is_said_there(gone: int, tmp_path: Path) -> None:
    (tmp_path / "a.yaml").write_text(BRACKETS, encoding="utf-8")
    typed = find_typed(tmp_path / "a.yaml", "a")
    grid = typed.puzzle.grid
    thermometer, palindrome = typed.puzzle.rules
    parts = thermometer.parts(grid)
    fewer = thermometer.with_parts([*parts[:gone], *parts[gone + 1 :]], grid)
    text = changed_text(typed, replace(typed.puzzle, rules=(fewer, palindrome)))
    assert [line.partition("#")[2] for line in text.splitlines() if "#" in line] == [
        " the upper one",
        " two more",
        " by hand",
        " a pair",
    ]
    assert len(list(changed_lines(typed, text))) == (2 if gone == 3 else 1)


def test_a_mark_comes_to_the_end_of_a_list_in_brackets(tmp_path: Path) -> None:
    (tmp_path / "a.yaml").write_text(BRACKETS, encoding="utf-8")
    typed = find_typed(tmp_path / "a.yaml", "a")
    grid = typed.puzzle.grid
    thermometer, palindrome = typed.puzzle.rules
    more = thermometer.with_parts([*thermometer.parts(grid), Part((grid.cell(1, 0), grid.cell(2, 0)))], grid)
    text = changed_text(typed, replace(typed.puzzle, rules=(more, palindrome)))
    assert text == BRACKETS.replace("r4c1-r4c3]", "r4c1-r4c3, r2c1-r3c1]")
