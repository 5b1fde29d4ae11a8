"""Verdicts and counts that others have published. The source stands beside each."""

from __future__ import annotations

import re
from itertools import combinations
from math import comb, factorial

import networkx
import pytest

from bookmaker.solve import counting, prove, solutions, tally
from bookmaker.solve.candidates import candidate_layout
from bookmaker.solve.placement import peers_of
from bookmaker.solve.problem import Allowed, Combination, Constraint, Different, Problem, Sum, relation
from bookmaker.solve.verdict import Several, Tally, Unique
from tests.published import (
    APART_GRIDS,
    APART_WITH_A_GIVEN,
    MISPRINT,
    MISPRINT_SOLUTIONS,
    PULP,
    PULP_SISTER,
    PULP_SISTER_SOLUTIONS,
    PULP_SOLVED,
    SEVENTEEN,
    SEVENTEEN_SOLVED,
    published_lines,
)
from tests.solve.boards import boxed, classic, diagonals, digits_of, givens, latin, square


def test_a_17_clue_grid_has_one_solution() -> None:
    verdict = prove(classic(SEVENTEEN))
    assert isinstance(verdict, Unique)
    assert verdict.solution == digits_of(SEVENTEEN_SOLVED)


def test_its_misprint_has_9734_solutions() -> None:
    misprint = classic(MISPRINT)
    assert isinstance(prove(misprint), Several)
    assert tally(misprint, 20_000) == Tally(MISPRINT_SOLUTIONS, complete=True)


def _reductions(text: str) -> list[str]:
    return [text[:i] + "." + text[i + 1 :] for i, digit in enumerate(text) if digit not in ".0 "]


def test_no_16_clue_reduction_has_one_solution() -> None:
    reductions = _reductions(SEVENTEEN)
    assert len(reductions) == 17
    assert all(isinstance(prove(classic(text)), Several) for text in reductions)


def test_no_16_clue_reduction_of_a_list_has_one_solution() -> None:
    for text in published_lines("seventeen.txt"):
        assert isinstance(prove(classic(text)), Unique)
        assert all(isinstance(prove(classic(reduced)), Several) for reduced in _reductions(text))


def test_pulp_example_and_its_sister() -> None:
    verdict = prove(classic(PULP))
    assert isinstance(verdict, Unique)
    assert verdict.solution == digits_of(PULP_SOLVED)
    assert tally(classic(PULP_SISTER), 100) == Tally(PULP_SISTER_SOLUTIONS, complete=True)
    assert digits_of(PULP_SOLVED) in set(solutions(classic(PULP_SISTER)))


def test_cages_of_csplib_057() -> None:
    """CSPLib problem 057 (CC BY 4.0); that it has one solution, and which, was found with OR-Tools CP-SAT."""
    cages = []
    for line in published_lines("csplib057.txt"):
        cells = tuple((int(row) - 1) * 9 + int(column) - 1 for row, column in re.findall(r"r(\d)c(\d)", line))
        cages.append(_cage(cells, int(line.split()[0])))
    assert len(cages) == 29
    verdict = prove(square(9, *boxed(9, 3, 3), *cages))
    assert isinstance(verdict, Unique)
    solved = "215647398 368952174 794381652 586274931 142593867 973816425 821739546 659428713 437165289"
    assert verdict.solution == digits_of(solved)


def _sets(size: int, total: int) -> frozenset[int]:
    chosen = (digits for digits in combinations(range(1, 10), size) if sum(digits) == total)
    return frozenset(sum(1 << digit - 1 for digit in digits) for digits in chosen)


def _cage(cells: tuple[int, ...], total: int) -> Combination:
    return Combination(cells, _sets(len(cells), total))


def test_sudoku_grids_of_order_four() -> None:
    """OEIS A107739: 288 grids of 4×4."""
    assert tally(square(4, *boxed(4, 2, 2)), 1000) == Tally(288, complete=True)


def test_sudoku_grids_of_order_six() -> None:
    """OEIS A291187: 28,200,960 grids of 6×6 with 2×3 boxes.

    First rows are alike by relabelling; rows 3 and 4, rows 5 and 6, and these two bands can change places.
    """
    first_row = givens([*range(1, 7), *[0] * 30])
    in_order = relation([(12, 18), (24, 30), (12, 24)], 6, combinations(range(1, 7), 2))
    counted = tally(square(6, *boxed(6, 2, 3), *first_row, in_order), 10**5)
    assert counted.complete
    assert counted.solutions * factorial(6) * 2**3 == 28_200_960


@pytest.mark.parametrize(("size", "count"), [(1, 1), (2, 2), (3, 12), (4, 576)])
def test_latin_squares(size: int, count: int) -> None:
    """OEIS A002860."""
    assert tally(square(size, *latin(size)), 1000) == Tally(count, complete=True)


@pytest.mark.parametrize(("size", "count"), [(5, 161_280), (6, 812_851_200)])
def test_larger_latin_squares_by_symmetry(size: int, count: int) -> None:
    """OEIS A002860; rows and columns are permuted until the first row and the first column are in order."""
    edges = [column + 1 if row == 0 else row + 1 if column == 0 else 0 for row in range(size) for column in range(size)]
    reduced = tally(square(size, *latin(size), *givens(edges)), 10**5)
    assert reduced.complete
    assert reduced.solutions * factorial(size) * factorial(size - 1) == count


@pytest.mark.parametrize(("size", "count"), [(4, 48), (5, 960), (6, 92_160)])
def test_diagonal_latin_squares(size: int, count: int) -> None:
    """OEIS A274806: both diagonals hold all digits; first rows are alike by relabelling."""
    first_row = givens([*range(1, size + 1), *[0] * (size * size - size)])
    counted = tally(square(size, *latin(size), *diagonals(size), *first_row), 10**4)
    assert counted.complete
    assert counted.solutions * factorial(size) == count


def test_pandiagonal_latin_squares() -> None:
    """OEIS A342306: 240 of order 5, in which the broken diagonals hold all digits too."""
    broken = [
        Different(tuple(row * 5 + (start + way * row) % 5 for row in range(5))) for start in range(5) for way in (1, -1)
    ]
    assert tally(square(5, *latin(5), *broken), 1000) == Tally(240, complete=True)


def test_magic_squares_of_order_three() -> None:
    """OEIS A006052: one, in eight positions."""
    lines = [(0, 1, 2), (3, 4, 5), (6, 7, 8), (0, 3, 6), (1, 4, 7), (2, 5, 8), (0, 4, 8), (2, 4, 6)]
    sums = [Sum(tuple((cell, 1) for cell in line), 15, 15) for line in lines]
    problem = Problem(9, 9, (Different(tuple(range(9))), *sums))
    assert tally(problem, 100) == Tally(8, complete=True)


@pytest.mark.slow
def test_king_knight_and_no_consecutive_neighbours() -> None:
    """72 grids of 9×9, and 8 with any one digit given."""

    def pairs(*moves: tuple[int, int]) -> list[tuple[int, int]]:
        return [
            (row * 9 + column, (row + down) * 9 + column + across)
            for down, across in moves
            for row in range(9)
            for column in range(9)
            if row + down < 9 and 0 <= column + across < 9
        ]

    unlike = [(a, b) for a in range(1, 10) for b in range(1, 10) if a != b]
    apart = [(a, b) for a, b in unlike if abs(a - b) != 1]
    king_and_knight = relation(pairs((1, 1), (1, -1), (1, 2), (1, -2), (2, 1), (2, -1)), 9, unlike)
    neighbours = relation(pairs((0, 1), (1, 0)), 9, apart)
    empty: tuple[Constraint, ...] = (*boxed(9, 3, 3), king_and_knight, neighbours)
    effort = 10 * counting.EFFORT
    assert tally(square(9, *empty), 1000, effort=effort) == Tally(APART_GRIDS, complete=True)
    given = Allowed((40,), 1 << 4)
    assert tally(square(9, *empty, given), 1000, effort=effort) == Tally(APART_WITH_A_GIVEN, complete=True)


@pytest.mark.parametrize("size", range(1, 10))
def test_fillings_of_a_thermometer(size: int) -> None:
    """C(9, n) ways to fill n rising cells; cell i of n holds from i to 9 − n + i (common practice, no source)."""
    rising = relation([(cell, cell + 1) for cell in range(size - 1)], 9, combinations(range(1, 10), 2))
    found = list(solutions(Problem(size, 9, (rising,))))
    assert len(found) == len(set(found)) == comb(9, size)
    for cell in range(size):
        assert {digits[cell] for digits in found} == set(range(cell + 1, 10 - size + cell + 1))


@pytest.mark.parametrize(
    ("size", "first", "counts"),
    [
        # Coefficients of a Gaussian binomial; confirmed with sympy.
        (2, 3, [1, 1, 2, 2, 3, 3, 4, 4, 4, 3, 3, 2, 2, 1, 1]),
        (3, 6, [1, 1, 2, 3, 4, 5, 7, 7, 8, 8, 8, 7, 7, 5, 4, 3, 2, 1, 1]),
        (4, 10, [1, 1, 2, 3, 5, 6, 8, 9, 11, 11, 12, 11, 11, 9, 8, 6, 5, 3, 2, 1, 1]),
    ],
)
def test_cage_combinations(size: int, first: int, counts: list[int]) -> None:
    """Different cells with a sum, put in rising order, give each combination once."""
    cells = tuple(range(size))
    rising = relation([(cell, cell + 1) for cell in cells[:-1]], 9, combinations(range(1, 10), 2))
    for total, count in enumerate(counts, start=first):
        cage = Sum(tuple((cell, 1) for cell in cells), total, total)
        assert tally(Problem(size, 9, (Different(cells), cage, rising)), 100).solutions == count


def test_peers_are_those_of_networkx() -> None:
    """networkx.sudoku_graph(3): 81 nodes, 810 edges, degree 20."""
    graph = networkx.sudoku_graph(3)
    assert graph.number_of_edges() == 810
    layout = candidate_layout(81, 9)
    peers = peers_of(layout, [house.cells for house in boxed(9, 3, 3)])
    for cell in range(81):
        assert {other for other in range(81) if peers[cell] >> layout.places[other] & 1} == set(graph[cell])


def test_a_count_whose_effort_runs_out_says_at_least() -> None:
    """Counted, not timed: the same number everywhere, and more of it with more effort."""
    empty = square(9, *boxed(9, 3, 3))
    found = []
    for effort in (20_000, 40_000):
        found.append(tally(empty, 10**9, effort=effort))
        assert found[-1] == tally(empty, 10**9, effort=effort)
    assert not any(each.complete for each in found)
    assert 0 < found[0].solutions < found[1].solutions
