"""The engine and OR-Tools CP-SAT find the same solutions of random small problems made of every primitive."""

from __future__ import annotations

from itertools import combinations
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bookmaker.solve import prove, solutions, tally
from bookmaker.solve.problem import (
    Allowed,
    Automaton,
    Combination,
    Constraint,
    Count,
    Different,
    DifferentCount,
    Problem,
    Sum,
    relation,
)
from bookmaker.solve.verdict import NoSolution, Prover, Several, Tally, Unique
from tests.solve.boards import boxed, latin, square
from tests.solve.oracle import all_solutions

Draw = Any

RELATIONS = (
    lambda a, b: a < b,
    lambda a, b: a <= b,
    lambda a, b: a != b,
    lambda a, b: a == b,
    lambda a, b: abs(a - b) == 1,
    lambda a, b: abs(a - b) != 1,
    lambda a, b: abs(a - b) >= 2,
    lambda a, b: a + b == 5,
    lambda a, b: a == 2 * b or b == 2 * a,
)

KINDS = "different", "relation", "combination", "sum", "count", "different count", "automaton", "allowed"

MOST = 5**6 + 1
"""More solutions than any of the problems has."""


@st.composite
def constraints(draw: Draw, cells: int, digits: int) -> Constraint:
    """One constraint of any primitive; automata and counts of both kinds may visit a cell twice."""
    some = st.lists(st.integers(0, cells - 1), min_size=1, max_size=5, unique=True).map(tuple)
    often = st.lists(st.integers(0, cells - 1), min_size=1, max_size=5).map(tuple)
    masks = st.integers(1, (1 << digits) - 1)
    kind = draw(st.sampled_from(KINDS))
    if kind == "different":
        return Different(draw(some))
    if kind == "relation":
        every = [(a, b) for a in range(1, digits + 1) for b in range(1, digits + 1)]
        keeps = draw(
            st.one_of(
                st.sampled_from(RELATIONS).map(lambda holds: [pair for pair in every if holds(*pair)]),
                st.lists(st.sampled_from(every), max_size=len(every)),
            )
        )
        pairs = draw(st.lists(st.tuples(st.integers(0, cells - 1), st.integers(0, cells - 1)), min_size=1, max_size=3))
        return relation(pairs, digits, keeps)
    if kind == "combination":
        chosen = draw(some.filter(lambda chosen: len(chosen) <= digits))
        every_set = [sum(1 << bit for bit in bits) for bits in combinations(range(digits), len(chosen))]
        return Combination(chosen, draw(st.frozensets(st.sampled_from(every_set), min_size=1)))
    least = draw(st.integers(-4, 14))
    most = least + draw(st.integers(0, 4))
    if kind == "sum":
        factors = st.sampled_from((1, 1, 1, 1, -1, 2, -3, 10))
        return Sum(tuple((cell, draw(factors)) for cell in draw(often)), least, most)
    if kind == "count":
        fewest = draw(st.integers(0, 3))
        return Count(draw(often), draw(masks), fewest, fewest + draw(st.integers(0, 2)))
    if kind == "different count":
        fewest = draw(st.integers(0, 4))
        return DifferentCount(draw(often), fewest, fewest + draw(st.integers(0, 1)))
    if kind == "automaton":
        states = draw(st.integers(1, 4))
        rows = st.tuples(st.just(-1), *[st.integers(-1, states - 1)] * digits)
        accept = draw(st.frozensets(st.integers(0, states - 1), min_size=1))
        return Automaton(draw(often), tuple(draw(rows) for _ in range(states)), accept)
    return Allowed(draw(some), draw(masks))


@st.composite
def small_problems(draw: Draw) -> Problem:
    """A few cells under a few constraints."""
    cells, digits = draw(st.integers(2, 6)), draw(st.integers(2, 5))
    return Problem(cells, digits, tuple(draw(st.lists(constraints(cells, digits), min_size=1, max_size=6))))


@st.composite
def small_squares(draw: Draw) -> Problem:
    """A square of four with constraints of every kind on it, where houses, sweeps and sums work together."""
    houses = draw(st.sampled_from((latin(4), boxed(4, 2, 2))))
    return square(4, *houses, *draw(st.lists(constraints(16, 4), min_size=1, max_size=4)))


def _agree(problem: Problem) -> None:
    wanted = all_solutions(problem)
    found = list(solutions(problem))
    assert set(found) == wanted
    assert len(found) == len(wanted)
    assert tally(problem, MOST) == Tally(len(wanted), complete=True)
    for verdict in (prove(problem), prove(problem, effort=0)):
        match verdict:
            case NoSolution():
                assert not wanted
            case Unique(solution):
                assert wanted == {solution}
            case Several(first, second, _, prover):
                assert {first, second} <= wanted
                assert first != second
                if prover is Prover.LEARNING:
                    assert [first, second] == found[:2]
            case other:
                raise AssertionError(other)


@pytest.mark.slow
@settings(max_examples=150, deadline=None, derandomize=True)
@given(small_problems())
def test_small_problems(problem: Problem) -> None:
    _agree(problem)


@settings(max_examples=60, deadline=None, derandomize=True)
@given(small_squares())
def test_small_squares(problem: Problem) -> None:
    _agree(problem)
