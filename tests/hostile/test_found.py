"""What `tests/benchmarks/fuzz.py` once found, held from then on."""

from __future__ import annotations

import signal
from collections.abc import Callable
from dataclasses import replace
from itertools import count
from pathlib import Path
from random import Random

import pytest

import bookmaker.proof
from bookmaker.crosscheck import second_opinion
from bookmaker.manifest import load
from bookmaker.manifest.written import puzzle_lines
from bookmaker.mend.case import Case
from bookmaker.mend.conflicts import conflicts
from bookmaker.mend.cures import search
from bookmaker.mend.limit import Effort, Seconds
from bookmaker.proof import find_out, prove_all
from bookmaker.puzzle.grid import CLASSIC, Grid, boxed_grid
from bookmaker.puzzle.position import Position
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules import kinds, problem_of
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.rules.common.deducing.enumeration import _never_stand
from bookmaker.rules.common.parts import Form
from bookmaker.solve import prove
from bookmaker.solve.verdict import Several, Solution, Tally, Undecided, Unique
from bookmaker.source.diagnostics import Collector
from bookmaker.source.placed import Table, Word
from bookmaker.source.yamlfile import parse_yaml
from bookmaker.symmetry.forms import forms_of
from bookmaker.symmetry.moves import TURNS, turned_cells
from tests.hostile.books import laid_on
from tests.hostile.counted import at_most
from tests.rules.harness import instances, sound_entry


@pytest.mark.parametrize("size", [5, 7, 9, 11])
def test_a_latin_square_is_written_as_it_is_read(tmp_path: Path, size: int) -> None:
    """Where no boxes fit, “boxes: none” was left out, and what `draft` had written could not be read."""
    puzzle = Puzzle(Grid(size, ()), (0,) * size**2, ())
    (tmp_path / "a.yaml").write_text("\n".join(puzzle_lines(puzzle, {"id": "a"})) + "\n", encoding="utf-8")
    assert [entry.puzzle for entry in load(tmp_path / "a.yaml").entries] == [puzzle]


@pytest.mark.parametrize("kind", ["cage", "arithmetic-cage", "diagonal-sum", "equal-part-line", "consecutive-line"])
def test_sums_on_the_largest_grid_are_proven_at_once(kind: str) -> None:
    """Sets of all sets of 21 digits took 19 seconds to make, of 24 they took half a gigabyte."""
    rng = Random(3)
    laid = laid_on(kind, boxed_grid(25, 5, 5), rng)
    assert laid is not None
    grid, solution, rule = laid
    givens = tuple(digit if rng.random() < 0.9 else 0 for digit in solution)
    with at_most(2_000_000):
        verdict = prove(problem_of(Puzzle(grid, givens, (rule,))))
    assert isinstance(verdict, Unique) and verdict.solution == solution


def test_a_long_cage_on_the_largest_grid_is_proven_and_graded_at_once(tmp_path: Path) -> None:
    """All sets of 13 of 25 digits were gone through at every step: half a minute, and all the memory there was."""
    plain = boxed_grid(25, 5, 5)
    laid = laid_on("thermometer", plain, Random(2))
    assert laid is not None
    grid, solution, _ = laid
    cells, rng = tuple(range(13)), Random(1)
    givens = tuple(0 if cell in cells or rng.random() < 0.1 else digit for cell, digit in enumerate(solution))
    total = sum(grid.worth(solution[cell]) for cell in cells)
    lines = puzzle_lines(Puzzle(grid, givens, ()), {"id": "a"})
    lines += ["  rules:", f"    cage: [{{cells: r1c1-r1c13, total: {total}}}]"]
    (tmp_path / "a.yaml").write_text("\n".join(lines) + "\n", encoding="utf-8")
    with at_most(1_000_000):
        (proof,) = prove_all(load(tmp_path / "a.yaml").entries)
    assert proof.solution == solution and proof.grade is not None


def test_an_automaton_is_not_read_backwards_without_end() -> None:
    """An X-sum on a 15×15 grid, read from the other end, has states without number: a minute, and two gigabytes."""
    grid = boxed_grid(15, 3, 5)
    rule = sound_entry("x-sum: {left: 65 . . . . 73 . . . . . . . . 120}", grid)
    puzzle = Puzzle(grid, (0,) * 225, (rule,))
    with at_most(1_000_000):
        forms = forms_of(puzzle, tuple(grid.cells), tuple(range(16)))
    turned = turned_cells(TURNS["half"], 15)
    other = sound_entry("x-sum: {right: 120 . . . . . . . . 73 . . . . 65}", grid)
    moved = forms_of(puzzle, turned, tuple(range(16)))
    assert moved == forms_of(Puzzle(grid, (0,) * 225, (other,)), tuple(grid.cells), tuple(range(16))) != forms


def test_clues_on_the_largest_grid_are_compared_with_their_images_at_once(tmp_path: Path) -> None:
    """A solution that a turn maps to itself: each of its X-sums was laid out cell by cell, twice, and from both ends.
    Fourteen clues took ten seconds."""
    grid = boxed_grid(25, 5, 5)
    solution = tuple(
        (5 * (grid.row(cell) % 5) + grid.row(cell) // 5 + grid.column(cell)) % 25 + 1 for cell in grid.cells
    )
    rows = [solution[at : at + 25] for at in range(0, 625, 25)]
    clues = " ".join("." if at % 3 else str(sum(line[: line[0]])) for at, line in enumerate(rows))
    lines = puzzle_lines(Puzzle(grid, solution), {"id": "a"})
    lines += ["  rules:", f"    x-sum: {{left: {clues}}}"]
    (tmp_path / "a.yaml").write_text("\n".join(lines) + "\n", encoding="utf-8")
    with at_most(20_000_000):
        (proof,) = prove_all(load(tmp_path / "a.yaml").entries)
    assert proof.solution == solution and proof.grade is not None


def test_what_dots_ask_is_made_once() -> None:
    """It was made anew at every look, so that no filling was ever remembered: 18 seconds for one hard puzzle."""
    rule = sound_entry("dots: {white: r1c1-r1c2 r1c2-r1c3 r1c3-r1c4}")
    everywhere, string = (1 << 81) - 1, 0b1111
    boards = (0, *(everywhere if digit in (4, 5, 6, 7) else everywhere & ~string for digit in CLASSIC.digits))
    position = Position(CLASSIC, boards)
    first = list(rule.deductions(position))
    before = _never_stand.cache_info()
    assert list(rule.deductions(position)) == first
    after = _never_stand.cache_info()
    assert after.hits > before.hits and after.misses == before.misses


FREE = [kind for kind, rule in sorted(kinds().items()) if rule.form in (Form.CHAIN, Form.AREA)]


@pytest.mark.parametrize("kind", FREE)
def test_mend_may_try_cells_that_no_mark_of_the_kind_has(kind: str) -> None:
    """An extra region tried as a square block was an IndexError: a slip is tried before it is known to be typed so."""
    grid, rng = boxed_grid(9, 3, 3), Random(5)
    laid = next(iter(instances(kind, grid, rng, 1)), None)
    assert laid is not None
    solution, rule = laid
    for part in rule.parts(grid):
        for cells in ((0,), (0, 1), (0, 9, 10), (0, 1, 2, 11, 10), tuple(range(9)), tuple(range(10))):
            assert rule.keeps(replace(part, cells=cells), grid, solution) in (True, False)


@pytest.mark.parametrize(("size", "circles"), [(9, [1, 2]), (12, [1])])
def test_an_oval_is_laid_only_where_every_digit_is_one_figure(size: int, circles: list[int]) -> None:
    """On 12×12, what `draft` had written with an oval was refused by whatever read it."""
    grid = Grid(size, ())
    blank, across = kinds()["arrow"].blank(grid), (0, 1, 2, 3)
    oval = blank.read_off(across, grid, (1, 2, 8, 4, *(1,) * size**2), Random(1))
    circle = blank.read_off(across, grid, (9, 2, 3, 4, *(1,) * size**2), Random(1))
    assert sorted(part.value[0] for part in (*oval, *circle)) == circles


def test_a_mistake_after_a_lost_comma_is_placed_on_its_own_line() -> None:
    """What was split off from a value began on one line and went on on the next; the column lay beyond the first."""
    collector = Collector()
    tree = parse_yaml("{h: 3, i\n  different}", "a.yaml", collector)
    assert isinstance(tree, Table)
    ((_, value),) = tree.entries
    assert isinstance(value, Word) and value.value == "3 i different"
    places = [value.at_offset(value.value.index(word)) for word in ("3", "i d", "diff")]
    assert [(place.line, place.column) for place in places] == [(1, 5), (1, 8), (2, 3)]


def test_ctrl_c_is_answered_after_a_second_opinion() -> None:
    """CP-SAT took the signal for itself and gave it back to the system: the command died without a word."""
    pytest.importorskip("ortools")
    before = signal.getsignal(signal.SIGINT)
    met: list[int] = []
    signal.signal(signal.SIGINT, lambda number, _: met.append(number))
    try:
        assert isinstance(second_opinion(Puzzle(boxed_grid(4, 2, 2), (0,) * 16, ())), Several)
        signal.raise_signal(signal.SIGINT)
    finally:
        signal.signal(signal.SIGINT, before)
    assert met == [signal.SIGINT]


@pytest.mark.parametrize("look", [search, conflicts])
def test_time_to_mend_is_kept_where_every_small_clash_is_hard(look: Callable[[Case], object]) -> None:
    """One second asked for took 15 until a clash was as small as can be, and 16 more to say what clashes. Here a
    hundredth of a second goes by from one look at the clock to the next."""
    (entry,) = load(Path(__file__).with_name("slow_clash.yaml")).entries
    asked = count()
    case = Case(entry.puzzle, Seconds(0.2, lambda: next(asked) / 100))
    look(case)
    assert case.proofs < next(asked) < 100


def test_cures_for_the_review_page_are_looked_for_with_a_counted_effort() -> None:
    """They were timed: four seconds and more on every machine, other cures on each, ten seconds for the whole page."""
    (entry,) = load(Path(__file__).with_name("slow_clash.yaml")).entries
    looks = []
    for look in (search, conflicts) * 2:
        limit = Effort(400_000)
        told = look(Case(entry.puzzle, limit))
        looks.append((limit.spent, str(told)))
    assert looks[:2] == looks[2:]
    assert all(300_000 < spent < 600_000 for spent, _ in looks)  # a part is kept for the grades of cures


@pytest.mark.parametrize("found", [None, tuple(range(1, 82))])
def test_what_could_not_be_decided_is_not_counted(monkeypatch: pytest.MonkeyPatch, found: Solution | None) -> None:
    """Five seconds to no end were followed by four of counting to no end."""
    monkeypatch.setattr(bookmaker.proof, "prove", lambda problem: Undecided(10, found))
    monkeypatch.setattr(bookmaker.proof, "tally", lambda *counted: pytest.fail("it was counted"))
    empty: RuledPuzzle = Puzzle(CLASSIC, (0,) * 81)
    assert find_out(empty, count=100).tally == Tally(1 if found else 0, complete=False)
