"""One contract for all rule kinds: every file in `bookmaker/rules/` is found by looking and must keep it.

In words:
- it has a file of cases (what that holds is said in `harness`);
- its words are there: a sentence with a capital and a full stop, right for one mark and for several, and a primer of at
  least two sentences;
- its example reads on a 9×9 grid without diagnostic, and each misuse reports its own diagnostic at its own place;
- its marks stay inside the grid and the margins it claims; no hairline is under 0.25 pt (common practice, no source);
  what is light is light enough for pencil, what carries meaning is dark enough to be seen, and what is dark is small or
  thin; it has a sample for the key unless it draws nothing;
- a filled grid keeps its constraints exactly if it keeps its plain predicate, also where only two neighbouring digits
  have changed places;
- the engine and OR-Tools CP-SAT, which is told the rule's definition in `bookmaker/crosscheck/`, find the same
  solutions of random puzzles, and the definition agrees with the plain predicate on large grids too;
- its deductions never take away a digit of the solution, and the ones written down in the cases are found.
"""

from __future__ import annotations

import re
from dataclasses import replace
from itertools import islice
from random import Random

import pytest

from bookmaker.crosscheck import second_opinion
from bookmaker.display.colour import grey_of
from bookmaker.language import catalogue
from bookmaker.puzzle.grid import CLASSIC, SYMBOLS, Grid, boxed_grid
from bookmaker.puzzle.position import Position
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.reasons import Rung
from bookmaker.rules import keeps_all, kinds, problem_of
from bookmaker.rules.common.contract import Rule
from bookmaker.rules.common.drawing.frame import Frame, Layer
from bookmaker.solve import prove, solutions
from bookmaker.solve.verdict import NoSolution, Prover, Unique
from bookmaker.source.cells import read_cells
from bookmaker.source.diagnostics import Collector, Place
from bookmaker.source.placed import Word
from tests.rules.cpsat import cp_solutions
from tests.rules.grids import GRIDS, MIDDLE, SMALL, Solution, near_misses, random_solution
from tests.rules.harness import cases_of, digits_as_mask, inks, instances, only_rule, place_of, read_entry, sound_entry

pytestmark = pytest.mark.parametrize("kind", kinds())


def test_it_has_words(kind: str) -> None:
    rule = kinds()[kind]
    assert re.fullmatch(r"[a-z]+(-[a-z]+)*", rule.kind)
    assert rule.title[0].isupper()
    assert rule.noun
    assert rule.noun[0].islower() or rule.noun[1:2].isupper() or rule.noun[1:2] in "- ", rule.noun
    primer = rule.primer(catalogue("en"))
    assert len(re.findall(r"[.!?](?:\s|$)", primer)) >= 2
    assert primer == " ".join(primer.split())
    assert primer.endswith(".")


def test_its_sentence_fits_one_and_many(kind: str) -> None:
    said = []
    for entry, sentence in cases_of(kind).SENTENCES:
        words = sound_entry(entry).sentence(catalogue("en"))
        assert words == sentence
        assert words[0].isupper()
        assert words.endswith(".")
        assert words == " ".join(words.split())
        assert "(s)" not in words
        said.append(words)
    assert said
    assert len(set(said)) == len(said)


def test_its_example_reads(kind: str) -> None:
    rule = sound_entry(kinds()[kind].example)
    assert type(rule) is kinds()[kind]
    assert kinds()[kind].example.endswith("\n")


def test_each_misuse_has_its_trouble_at_its_place(kind: str) -> None:
    misuses = cases_of(kind).MISUSES
    assert misuses
    for entry, code, piece in misuses:
        rule, collector = read_entry(entry)
        found = [(t.code, t.place) for t in collector.found]
        assert rule is None, entry
        assert (code, Place("entry.yaml", *place_of(entry, piece))) in found, (entry, collector.found)
        assert all(diagnostic.text for diagnostic in collector.found)


@pytest.mark.parametrize("side", [9.0, 34.0])
def test_its_marks_keep_to_their_room_and_greys(kind: str, side: float) -> None:
    rng = Random(f"marks {kind}")
    drawn = [(rule, grid) for grid in GRIDS for _, rule in instances(kind, grid, rng, 2)]
    for rule, grid in [(sound_entry(kinds()[kind].example), CLASSIC), *drawn]:
        frame, room = Frame(grid, side), rule.margins(grid)
        slack = 0.6
        for mark in rule.marks(frame):
            assert mark.layer is not Layer.GRID
            for ink in inks(mark.item):
                assert ink.left >= -room.left * side - slack, ink
                assert ink.top >= -room.top * side - slack, ink
                assert ink.right <= frame.sides.right + room.right * side + slack, ink
                assert ink.bottom <= frame.sides.bottom + room.bottom * side + slack, ink
                if ink.stroke is not None:
                    assert ink.stroke.width >= 0.25
                    assert grey_of(ink.stroke.colour) <= 0.55 or grey_of(ink.stroke.colour) >= 0.80, ink
                if ink.text:
                    assert ink.fill is not None
                    assert grey_of(ink.fill) <= 0.45
                elif ink.fill is not None and grey_of(ink.fill) < 0.80:
                    assert grey_of(ink.fill) <= 0.55
                    assert ink.extent <= 0.36 * side, "a dark area that pencil can't be read on"


def test_its_sample_shows_its_marks(kind: str) -> None:
    rule = kinds()[kind]
    sample = rule.sample()
    drawn = list(sound_entry(rule.example).marks(Frame(CLASSIC, 20.0)))
    assert (sample is not None) == bool(drawn)
    if sample is not None:
        assert type(sample.rule) is rule
        # Four for the diagonals: no grid with fewer rows has both of them full, and the primer fills its samples.
        assert 1 <= sample.rows <= 4
        assert 1 <= sample.columns <= 4
        marks = list(sample.rule.marks(Frame(sample.grid, 20.0)))
        assert marks
        room = sample.rule.margins(sample.grid)
        for ink in (ink for mark in marks for ink in inks(mark.item)):
            assert ink.left >= -room.left * 20 - 1, ink
            assert ink.top >= -room.top * 20 - 1, ink
            assert ink.right <= 20 * (sample.columns + room.right) + 1, ink
            assert ink.bottom <= 20 * (sample.rows + room.bottom) + 1, ink


def test_constraints_agree_with_the_plain_predicate(kind: str) -> None:
    rng = Random(f"agree {kind}")
    answers = {True: 0, False: 0}
    for grid in GRIDS:
        for solution, rule in instances(kind, grid, rng, 3):
            assert rule.holds(grid, solution)
            for digits in (solution, random_solution(grid, rng), *near_misses(grid, solution, rng)):
                said = rule.holds(grid, digits)
                answers[said] += 1
                verdict = prove(only_rule(rule, grid, digits))
                assert isinstance(verdict, Unique if said else NoSolution), (rule, digits)
                puzzle = Puzzle(grid, digits, (rule,))
                assert isinstance(prove(problem_of(puzzle)), Unique if said else NoSolution)
                assert keeps_all(puzzle, digits) is said
    assert answers[True] >= 3
    assert answers[False] >= 3


@pytest.mark.parametrize(
    ("grid", "givens", "puzzles", "limit"),
    [(SMALL, (0, 5), 6, 300), (MIDDLE, (6, 16), 5, 100), (CLASSIC, (24, 34), 6, 12)],
    ids=["4x4", "6x6", "9x9"],
)
def test_engine_and_cpsat_find_the_same_solutions(
    kind: str, grid: Grid, givens: tuple[int, int], puzzles: int, limit: int
) -> None:
    rng = Random(f"prove {kind} {grid.size}")
    compared = 0
    for solution, rule in instances(kind, grid, rng, puzzles):
        shown = set(rng.sample(grid.cells, rng.randint(*givens)))
        puzzle = Puzzle(grid, tuple(d if c in shown else 0 for c, d in enumerate(solution)), (rule,))
        ours = set(islice(solutions(problem_of(puzzle)), limit))
        theirs = cp_solutions(puzzle, limit)
        assert len(ours) == len(theirs), rule
        assert all(keeps_all(puzzle, digits) for digits in ours | theirs)
        if len(ours) < limit:
            assert ours == theirs
            assert solution in ours
        compared += 1
    assert compared or grid is not CLASSIC


@pytest.mark.parametrize("grid", [MIDDLE, CLASSIC, boxed_grid(12, 3, 4)], ids=["6x6", "9x9", "12x12"])
def test_its_definition_agrees_with_the_plain_predicate(kind: str, grid: Grid) -> None:
    if grid.size > 9 and hasattr(cases_of(kind), "grow"):
        pytest.skip("growing a large solution under this rule takes too long")
    rng = Random(f"define {kind} {grid.size}")
    for solution, rule in instances(kind, grid, rng, 1):
        for digits in (solution, *islice(near_misses(grid, solution, rng), 12)):
            said = second_opinion(Puzzle(grid, digits, (rule,)))
            expected: Unique | NoSolution = Unique(digits) if rule.holds(grid, digits) else NoSolution()
            assert said == replace(expected, prover=Prover.AUDIT), (rule, digits)


def test_its_deductions_are_sound(kind: str) -> None:
    rng = Random(f"deduce {kind}")
    for grid, wanted in ((SMALL, 4), (MIDDLE, 4), (CLASSIC, 6)):
        for solution, rule in instances(kind, grid, rng, wanted):
            for share in (0.0, 0.1, 0.2, 0.3, 0.45, 0.6, 0.8, 1.0):
                _demand_sound(rule, _position(grid, solution, rng, share), solution)


def _position(grid: Grid, solution: Solution, rng: Random, share: float) -> Position:
    """Candidates that hold the solution's digits and a share of the others."""
    boards = [0] + [
        sum(1 << cell for cell in grid.cells if solution[cell] == digit or rng.random() < share)
        for digit in grid.digits
    ]
    return Position(grid, tuple(boards))


def _demand_sound(rule: Rule, position: Position, solution: Solution) -> None:
    for step in rule.deductions(position):
        assert step.removed
        assert step.cells
        assert Rung.SIMPLE <= step.rung <= Rung.WHOLE
        assert step.held >= 1
        assert step.mark.kind == rule.kind
        for cell, digit in step.removed:
            assert position.may(cell, digit), (step, "was gone already")
            assert solution[cell] != digit, (rule, step, position.masks)


def test_its_known_deductions_are_found(kind: str) -> None:
    deductions = cases_of(kind).DEDUCTIONS
    for entry, candidates, expected in deductions:
        rule = sound_entry(entry)
        masks = [CLASSIC.all_digits for _ in CLASSIC.cells]
        for cells, digits in candidates.items():
            for cell in cells_of(cells):
                masks[cell] = digits_as_mask(digits)
        boards = tuple(
            sum(1 << cell for cell in CLASSIC.cells if digit and masks[cell] >> (digit - 1) & 1) for digit in range(10)
        )
        found = {pair for step in rule.deductions(Position(CLASSIC, boards)) for pair in step.removed}
        wanted = {
            (cell, SYMBOLS.index(digit) + 1)
            for cells, digits in expected.items()
            for cell in cells_of(cells)
            for digit in digits
        }
        assert wanted
        assert wanted <= found, (entry, sorted(wanted - found))


def cells_of(text: str) -> tuple[int, ...]:
    collector = Collector()
    cells = read_cells(Word(Place("cases"), text), CLASSIC, collector)
    assert cells is not None, collector.found
    return cells
