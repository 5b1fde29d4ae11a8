"""Placing groups and letters, against formulas of plane geometry."""

from __future__ import annotations

from itertools import pairwise
from math import hypot, pi

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bookmaker.display.items import Close, Group, Move, Rect, Straight, Text
from bookmaker.display.shapes import circle
from bookmaker.geometry import IDENTITY, Contour, flattened, letters, moved, outline, placing, text_start, within
from bookmaker.layout.setting.fonts import FontBook

numbers = st.floats(-100, 100)


def test_a_group_moves_scales_and_turns_clockwise() -> None:
    group = Group((), dx=10, dy=20, scale=2, turn=90)
    # right becomes down, down becomes left
    assert moved(placing(group), (1, 0)) == pytest.approx((10, 22))
    assert moved(placing(group), (0, 1)) == pytest.approx((8, 20))


@settings(derandomize=True, deadline=None, max_examples=50)
@given(numbers, numbers, numbers, numbers, st.floats(0.1, 4), st.floats(-360, 360))
def test_matrices_in_a_row(x: float, y: float, dx: float, dy: float, scale: float, turn: float) -> None:
    one, other = placing(Group((), dx, dy, scale, turn)), placing(Group((), dy, x, 1.5, 30))
    assert moved(within(one, other), (x, y)) == pytest.approx(moved(one, moved(other, (x, y))), abs=1e-6)
    assert within(IDENTITY, one) == one


@pytest.mark.parametrize("tolerance", [0.5, 0.1, 0.01])
@pytest.mark.parametrize("radius", [0.3, 5, 200])
def test_flattened_curves_stay_close(radius: float, tolerance: float) -> None:
    (contour,) = flattened(circle((0, 0), radius).segments, IDENTITY, tolerance)
    assert contour.closed
    ring = [*contour.points, contour.points[0]]
    middles = [((ax + bx) / 2, (ay + by) / 2) for (ax, ay), (bx, by) in pairwise(ring)]
    # four Bézier curves with these handles stray 0.027 % from a true circle
    assert max(abs(hypot(x, y) - radius) for x, y in middles) <= tolerance + 0.0003 * radius


def test_stretches_open_closed_and_single() -> None:
    segments = (Move((0, 0)), Straight((1, 0)), Close(), Straight((5, 5)), Move((9, 9)), Move((2, 2)), Straight((3, 3)))
    assert flattened(segments, IDENTITY, 0.1) == [
        Contour(((0, 0), (1, 0)), True),
        Contour(((0, 0), (5, 5)), False),
        Contour(((2, 2), (3, 3)), False),
    ]


def test_round_corners_never_exceed_the_sides() -> None:
    (wide,) = flattened(outline(Rect(0, 0, 100, 10, radius=50)), IDENTITY, 0.01)
    ring = pairwise((*wide.points, wide.points[0]))
    area = abs(sum(ax * by - bx * ay for (ax, ay), (bx, by) in ring)) / 2  # the shoelace formula
    assert area == pytest.approx(90 * 10 + pi * 25, rel=0.01)


def test_letters_stand_where_the_measure_says() -> None:
    text = Text(100, 0, "To a b", "serif", 10, anchor="end", letter_space=1, word_space=2)
    placed = letters(text)
    book = FontBook()
    assert [character for character, _ in placed] == list("Toab")
    assert placed[0][1] == text_start(text) == pytest.approx(100 - book.width("To a b", "serif", 10, 1, 2))
    assert placed[1][1] - placed[0][1] == pytest.approx(
        book.width("To", "serif", 10) - book.width("o", "serif", 10) + 1
    )
    assert placed[-1][1] + book.width("b", "serif", 10) == pytest.approx(100)
