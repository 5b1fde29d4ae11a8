"""The tools that rule kinds share: fillings, sums, house sums, ways along a chain."""

from __future__ import annotations

from dataclasses import replace
from itertools import permutations, product
from math import isclose, sqrt
from random import Random

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from sympy import Poly, symbols

from bookmaker.puzzle.bits import digits_in, span_mask
from bookmaker.puzzle.grid import CLASSIC, Grid, boxed_grid
from bookmaker.puzzle.position import Position
from bookmaker.reasons.bymark import LeftOver
from bookmaker.rules import marks_of
from bookmaker.rules.common.deducing.candidates import locked_out, sees
from bookmaker.rules.common.deducing.enumeration import unsupported_candidates
from bookmaker.rules.common.deducing.house_sums import Block, steps
from bookmaker.rules.common.deducing.sums import different_limits, digit_sets, open_limits, sum_limits
from bookmaker.rules.common.drawing.frame import Frame, Layer
from bookmaker.rules.common.drawing.strokes import Trace, joined
from bookmaker.rules.common.words.wording import cells_listed, counted, listed, number, sentence_case
from tests.rules.grids import SMALL, random_solution
from tests.rules.harness import inks, sound_entry

exact = settings(derandomize=True, deadline=None, max_examples=60)


def position(grid: Grid, masks: dict[int, int]) -> Position:
    """A position in which every cell not named is open."""
    boards = [
        sum(1 << cell for cell in grid.cells if masks.get(cell, grid.all_digits) >> (digit - 1) & 1)
        for digit in grid.digits
    ]
    return Position(grid, (0, *boards))


def test_numbers_and_lists_read_as_words() -> None:
    assert number(3) == "three"
    assert number(14) == "14"
    assert counted(1, "cell") == "one cell"
    assert counted(2, "house", "houses") == "two houses"
    assert [listed([]), listed(["a"]), listed(["a", "b"]), listed("abc", "or")] == ["", "a", "a and b", "a, b or c"]
    assert cells_listed(CLASSIC, (0, 10)) == "r1c1 and r2c2"
    assert sentence_case("x is 9A") == "X is 9A"


def test_spans_of_digits() -> None:
    spans = (2, 4), (5, 5), (-3, 1), (4, 2)
    assert [digits_in(span_mask(least, most)) for least, most in spans] == [(2, 3, 4), (5,), (1,), ()]


@given(st.data())
@exact
def test_never_stand_agrees_with_listing_every_filling(data: st.DataObject) -> None:
    """Against plain enumeration of all fillings, on a 4×4 grid, for a sum over any four cells."""
    cells = data.draw(st.permutations(list(SMALL.cells)))[:4]
    masks = {cell: data.draw(st.integers(1, 15)) for cell in cells}
    total = data.draw(st.integers(4, 16))
    here = position(SMALL, masks)

    def fits(digits: list[int]) -> bool:
        return sum(digits) == total if len(digits) == len(cells) else sum(digits) < total

    fillings = [
        filling
        for filling in product(*(digits_in(masks[cell]) for cell in cells))
        if sum(filling) == total
        and all(filling[i] != filling[j] for i in range(4) for j in range(i) if sees(SMALL, cells[i], cells[j]))
    ]
    gone = {
        (cell, digit)
        for i, cell in enumerate(cells)
        for digit in digits_in(masks[cell])
        if all(filling[i] != digit for filling in fillings)
    }
    assert set(unsupported_candidates(here, cells, fits)) == gone  # type: ignore[arg-type]


def test_never_stand_gives_up_on_what_is_too_large() -> None:
    """Nine cells whose only fault shows at the last one: a person would not list these, nor does the cap allow it."""
    row = CLASSIC.rows[0].cells
    assert unsupported_candidates(position(CLASSIC, {}), row, lambda digits: len(digits) < 9, cap=500) == ()


def test_cage_combinations_are_the_coefficients_of_a_gaussian_binomial() -> None:
    """Sympy expands ∏(1 + y·xᵈ); the coefficient of yᵏxˢ is the number of sets of k digits with sum s."""
    x, y = symbols("x y")
    product_of_digits = 1
    for digit in range(1, 10):
        product_of_digits *= 1 + y * x**digit
    coefficients = Poly(product_of_digits, x, y).as_dict()
    counts = {
        (count, total): len(digit_sets(CLASSIC.all_digits, count, total))
        for count in range(1, 10)
        for total in range(1, 46)
    }
    assert {(k, s): n for (k, s), n in counts.items() if n} == {
        (k, s): n for (s, k), n in coefficients.items() if k > 0
    }
    # For two to eight cells: 119 possible pairs of size and sum, 33 of them with one combination (the same expansion).
    usual = [n for (k, _), n in counts.items() if 2 <= k <= 8 and n]
    assert (len(usual), usual.count(1)) == (119, 33)


@pytest.mark.parametrize("count", range(1, 10))
def test_limits_of_different_digits_are_met(count: int) -> None:
    sums = [total for total in range(1, 46) if digit_sets(CLASSIC.all_digits, count, total)]
    assert different_limits(count, CLASSIC) == (sums[0], sums[-1])
    assert open_limits(CLASSIC, CLASSIC.rows[4].cells[:count]) == (sums[0], sums[-1])
    from_zero = replace(CLASSIC, symbols="", first=0)
    assert different_limits(count, from_zero) == (sums[0] - count, sums[-1] - count)
    assert open_limits(from_zero, CLASSIC.rows[4].cells[:count]) == (sums[0] - count, sums[-1] - count)


def test_limits_group_cells_that_see_each_other() -> None:
    """Two pairs in two boxes of one row: the row makes 1 + 2 + 3 + 4 of them, not twice 1 + 2."""
    assert open_limits(CLASSIC, (0, 1, 4, 5)) == (10, 30)
    assert open_limits(CLASSIC, (0, 10, 40, 50)) == (6, 34)
    assert sum_limits(position(CLASSIC, {0: 0b1100, 1: 0b100}), (0, 1)) == (7, 7)


@given(st.integers(0, 10**6))
@exact
def test_limits_hold_for_every_solution(seed: int) -> None:
    rng = Random(seed)
    solution = random_solution(SMALL, rng)
    masks = {cell: 1 << (solution[cell] - 1) | rng.randrange(16) for cell in SMALL.cells}
    cells = rng.sample(SMALL.cells, rng.randint(1, 6))
    for grid in (SMALL, replace(SMALL, symbols="", first=0)):
        least, most = sum_limits(position(grid, masks), cells)
        assert least <= sum(grid.worth(solution[cell]) for cell in cells) <= most


def test_a_digit_that_some_cells_hold_is_locked_out_of_what_sees_them_all() -> None:
    removed = locked_out(position(CLASSIC, {}), (0, 1), 7)
    assert {CLASSIC.name(cell) for cell, _ in removed} == {
        *(f"r1c{c}" for c in range(3, 10)),
        *(f"r{r}c{c}" for r in (2, 3) for c in (1, 2, 3)),
    }


def test_house_sums_give_the_cell_left_over() -> None:
    """A row of the 4×4 grid makes 10, two rows make 20: what the blocks leave, or put outside, is the rest."""
    inside = next(steps(position(SMALL, {}), (Block((0, 1, 2), 6),), "cage"))
    assert inside.claim == LeftOver((SMALL.rows[0].ref,), total=10, within=6, beyond=False, cells=(3,))
    assert {digit for cell, digit in inside.removed if cell == 3} == {1, 2, 3}
    over = (Block((0, 1), 5), Block((2, 3, 7), 8))
    found = {step.claim: step.removed for step in steps(position(SMALL, {}), over, "cage")}
    claim = LeftOver((SMALL.rows[0].ref,), total=10, within=13, beyond=True, cells=(7,))
    assert found[claim] == ((7, 1), (7, 2), (7, 4))


def test_a_way_is_measured_along_its_bends() -> None:
    way = Trace([(0, 0), (10, 0), (10, 10), (20, 20)])
    assert isclose(way.length, 20 + 10 * sqrt(2))
    assert way.at(15) == ((10.0, 5.0), (0.0, 1.0))
    assert way.between(5, 15) == ((5.0, 0.0), (10, 0), (10.0, 5.0))
    assert way.beside(15, 2) == (8.0, 5.0)
    assert way.steps(9)[0] == 0
    assert isclose(way.steps(9)[-1], way.length)
    longer = way.beyond(3, sqrt(2))
    assert longer.points[0] == (-3.0, 0.0)
    assert all(isclose(a, b) for a, b in zip(longer.points[-1], (21, 21), strict=True))


def test_chains_that_share_cells_are_joined_whatever_their_order() -> None:
    chains = [(0, 1), (5, 6), (1, 2), (2, 5), (7, 8)]
    for order in permutations(chains):
        groups = {frozenset(group) for group in joined(order)}
        assert groups == {frozenset(chains[:4]), frozenset(chains[4:])}


def test_regions_of_another_shape_count_too() -> None:
    assert sees(boxed_grid(6, 2, 3), 0, 8)
    assert not sees(boxed_grid(6, 3, 2), 0, 8)


@pytest.mark.parametrize("total", [9, 23])
def test_a_ring_covers_no_total(total: int) -> None:
    """Where a corner quadruple stands at the first cell of a cage, the cage's total is drawn beside it."""
    cage = sound_entry(f"cage: {{cells: r2c2-r2c4, total: {total}}}")
    ring = sound_entry("quadruple: {r1c1-r2c2: 1 2 5}")
    side = 20.0
    marks = list(marks_of([cage, ring], Frame(CLASSIC, side)))
    (ring_ink,) = (ink for mark in marks if mark.layer == Layer.BORDER for ink in inks(mark.item) if not ink.text)
    (total_ink,) = (ink for mark in marks if mark.layer == Layer.FIGURE for ink in inks(mark.item) if ink.text)
    alone = [ink for mark in marks_of([cage], Frame(CLASSIC, side)) for ink in inks(mark.item) if ink.text]
    assert total_ink.left > ring_ink.right
    assert total_ink.right < 2 * side
    assert [ink.left < ring_ink.right for ink in alone] == [True]
