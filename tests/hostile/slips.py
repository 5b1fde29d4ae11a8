"""Slips that are made with grids that overlap and grids with holes; and wishes for puzzles on them."""

from __future__ import annotations

import re
from collections.abc import Callable
from random import Random

from hypothesis import strategies as st

from bookmaker.manifest.written import puzzle_lines
from bookmaker.puzzle.grid import Grid
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules import kinds
from tests.hostile.other_shapes import grid_of

CELL = re.compile(r"\br[0-9]+c[0-9]+\b")
OF_ONE = re.compile(r"\bin [A-E]\b")
RULES = re.compile(r"^( *)  rules:\n", re.MULTILINE)
FIELDS = ("grids: r1c1 r3c4", "grids: r1c1", "grids:", "grids: [r1c1, r4c4]", "holes: none", "holes: |\n      #.\n",
          "boxes: none", "boxes: 1x4", "regions: none", "size: 5", "size: 9", "digits: from-zero", "letters: TIDES",
          "word: {cells: r1c1-r1c4, reads: TIDE}", "solution: |\n      ####")  # fmt: skip
RULE = ("in A:", "in B: yes", "in A: {in B: {knight: yes}}", "in B: {sandwich: {left: 1 2 3}}", "skyscraper: {top: 1}",
        "in E: {windows: yes}", "in : {king: yes}", "king: no", "in A: [king]", "thermometer: r1c1-r9c9",
        "in a: {diagonals: both}", "cage: {r1c1-r9c9: 45}")  # fmt: skip


def _another_cell(text: str, rng: Random) -> str:
    """One of the cells or corners that are named becomes another, comes twice or goes."""
    cell = f"r{rng.randint(0, 12)}c{rng.randint(0, 12)}"
    return _at_one(CELL, text, rng, lambda old: rng.choice([cell, cell, f"{old} {old}", f"{old}-{cell}", ""]))


def _another_letter(text: str, rng: Random) -> str:
    return _at_one(OF_ONE, text, rng, lambda _: rng.choice(["in A", "in B", "in F", "in", "in A B", "In A", "in Ä"]))


def _another_black_cell(text: str, rng: Random) -> str:
    """A black cell becomes another sign, or another sign a black cell."""
    sign, new = rng.choice(
        [("#", "."), ("#", "1"), ("#", ""), (r"(?<=\s)\.(?=\s)", "#"), (r"(?<=\s)\.(?=\s)", "#" * 9)]
    )
    return _at_one(re.compile(sign), text, rng, lambda _: new)


def _another_field(text: str, rng: Random) -> str:
    line = rng.choice(FIELDS)
    return _at_one(re.compile(r"^ *givens:", re.MULTILINE), text, rng, lambda old: f"    {line}\n{old}")


def _another_rule(text: str, rng: Random) -> str:
    line = rng.choice(RULE)
    if RULES.search(text):
        return _at_one(RULES, text, rng, lambda old: f"{old}      {line}\n")
    return f"{text}    rules:\n      {line}\n"


def _without_a_line(text: str, rng: Random) -> str:
    lines = text.splitlines(keepends=True)
    del lines[rng.randrange(len(lines))]
    return "".join(lines)


def _at_one(found: re.Pattern[str], text: str, rng: Random, new: Callable[[str], str]) -> str:
    """The text with something else at one of the places found; as it is where there is none."""
    places = list(found.finditer(text))
    if not places:
        return text
    one = rng.choice(places)
    return text[: one.start()] + new(one[0]) + text[one.end() :]


SLIPS = (_another_cell, _another_letter, _another_black_cell, _another_field, _another_rule, _without_a_line)


@st.composite
def slipped(draw: st.DrawFn, books: st.SearchStrategy[str]) -> str:
    """One of these books with one to three such slips."""
    text, rng = draw(books), Random(draw(st.integers(0, 2**40)))
    for _ in range(rng.randint(1, 3)):
        text = rng.choice(SLIPS)(text, rng)
    return text


@st.composite
def wishes(draw: st.DrawFn) -> str:
    """A wish for a puzzle with marks of one kind or two on such a grid, now and then with slips."""
    rng = Random(draw(st.integers(0, 2**40)))
    few = draw(st.lists(st.sampled_from(sorted(kinds())), max_size=2))
    lines = _grid_lines(grid_of(rng, large=False)) + [f"  rules: [{', '.join(few)}]"] * bool(few)
    lines += rng.sample(("  arrangement: none", "  givens: at most 20", "  band: Stroll to Hike", "  seed: 3"), 2)
    text = "wish:\n  puzzles: 1\n" + "\n".join(lines) + "\n"
    return rng.choice(SLIPS)(text, rng) if rng.random() < 0.3 else text


def _grid_lines(grid: Grid) -> list[str]:
    """What is said of the grid, as in a manifest."""
    lines = puzzle_lines(Puzzle(grid, (0,) * len(grid.cells)), {"id": "p0"})
    return lines[1 : lines.index("  givens: |")]
