"""Flattening, placing and stroking, against formulas of plane geometry."""

from __future__ import annotations

from itertools import pairwise
from math import cos, hypot, pi, sin
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bookmaker.display.items import Close, Group, Move, Path, Rect, Straight, Stroke, Text
from bookmaker.display.shapes import circle, polyline
from bookmaker.geometry import IDENTITY, Contour, flattened, letters, moved, outline, placing, text_start, within
from bookmaker.ink.raster import covered
from bookmaker.ink.stroking import stroked
from bookmaker.layout.setting.fonts import FontBook

numbers = st.floats(-100, 100)


def area(polygons: list[tuple[tuple[float, float], ...]], evenodd: bool = False) -> float:
    """Covered area in square pixels, from the raster."""
    coverage = covered(polygons, evenodd)
    return sum(coverage.mask.tobytes()) / 255 if coverage else 0.0


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
    wide = flattened(outline(Rect(0, 0, 100, 10, radius=50)), IDENTITY, 0.01)
    assert area([wide[0].points]) == pytest.approx(90 * 10 + pi * 25, rel=0.01)


@pytest.mark.parametrize(("cap", "expected"), [("butt", 40 * 6), ("square", 46 * 6), ("round", 40 * 6 + pi * 9)])
def test_ends(cap: Any, expected: float) -> None:
    line = [Contour(((10.0, 10.0), (50.0, 10.0)), False)]
    assert area(stroked(line, Stroke(6, cap=cap), 0.02)) == pytest.approx(expected, rel=0.005)


@pytest.mark.parametrize(("join", "corner"), [("miter", 9.0), ("bevel", 4.5), ("round", pi * 9 / 4)])
@pytest.mark.parametrize("down", [1, -1])
def test_corners(join: Any, corner: float, down: int) -> None:
    bend = [Contour(((50.0, 50.0), (90.0, 50.0), (90.0, 50.0 + 40.0 * down)), False)]
    # two boxes of 40 × 6 share a square of 3 × 3; the corner fills the square outside
    assert area(stroked(bend, Stroke(6, join=join), 0.02)) == pytest.approx(2 * 240 - 9 + corner, rel=0.005)


def test_a_corner_too_sharp_is_cut_off() -> None:
    # PDF's limit of 10 is an angle of 2·asin(1/10) = 11.48 degrees (ISO 32000-1, 8.4.3.5)
    def height(degrees: float) -> float:
        angle = degrees * pi / 180
        needle = [Contour(((0.0, 0.0), (100.0, 0.0), (100 - 100 * cos(angle), 100 * sin(angle))), False)]
        return max(x for polygon in stroked(needle, Stroke(2), 0.02) for x, _ in polygon)

    assert height(12) > 108
    assert height(11) < 101.1


def test_a_closed_square_has_four_corners_and_no_ends() -> None:
    square = flattened(outline(Rect(10, 10, 40, 40)), IDENTITY, 0.1)
    assert area(stroked(square, Stroke(4), 0.1)) == pytest.approx(44 * 44 - 36 * 36)


def test_dashes() -> None:
    line = [Contour(((0.0, 5.0), (20.0, 5.0)), False)]
    assert area(stroked(line, Stroke(2, dash=(3, 2)), 0.1)) == pytest.approx(4 * 3 * 2)
    # an odd list alternates: 3 on, 2 off, 1 on, 3 off, 2 on, 1 off, 3 on, 2 off, 1 on, 2 of 3 off
    assert area(stroked(line, Stroke(2, dash=(3, 2, 1)), 0.1)) == pytest.approx((3 + 1 + 2 + 3 + 1) * 2)


def test_dashes_go_on_around_corners() -> None:
    bend = [Contour(((0.0, 10.0), (10.0, 10.0), (10.0, 20.0)), False)]
    xs = [point for polygon in stroked(bend, Stroke(2, dash=(8, 4)), 0.1) for point in polygon]
    # the second dash begins 12 along: 2 under the corner
    assert min(y for x, y in xs if x > 8.5) == pytest.approx(12)


def test_dots_have_no_length() -> None:
    line = [Contour(((5.0, 5.0), (25.0, 5.0)), False)]
    dots = stroked(line, Stroke(4, dash=(0, 10), cap="round"), 0.01)
    assert area(dots) == pytest.approx(2 * pi * 4, rel=0.02)
    assert area(stroked(line, Stroke(4, dash=(0, 10)), 0.01)) == 0


def test_coverage_is_exact() -> None:
    coverage = covered([((2.25, 1.5), (4.5, 1.5), (4.5, 3.0), (2.25, 3.0))])
    assert coverage is not None and (coverage.x, coverage.y) == (2, 1)
    assert list(coverage.mask.tobytes()) == [96, 128, 64, 191, 255, 128]


def test_winding_and_even_odd() -> None:
    big, small = ((0, 0), (10, 0), (10, 10), (0, 10)), ((2, 2), (5, 2), (5, 5), (2, 5))
    assert area([big, small]) == 100
    assert area([big, small], evenodd=True) == 91
    assert area([big, small[::-1]]) == 91


def test_nothing_covers_nothing() -> None:
    assert covered([]) is None
    assert covered([((0, 0), (1, 1))]) is None
    assert covered([((0, 1), (5, 1), (9, 1))]) is None


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


def test_an_open_path_is_filled_as_if_closed() -> None:
    path = polyline([(0, 0), (10, 0), (10, 10)], None, 0.0)
    assert isinstance(path, Path)
    assert area([c.points for c in flattened(path.segments, IDENTITY, 0.1)]) == pytest.approx(50, rel=0.01)
