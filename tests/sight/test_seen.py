"""What is left of a shape under what is painted after it."""

from __future__ import annotations

from math import pi

import pytest

from bookmaker.display.items import Group, Item, Line, Path, Rect, Stroke, Text
from bookmaker.display.shapes import circle, polyline
from bookmaker.sight import Drawn, Hidden, hidden, shapes

PEN = Stroke(0.7)

ONE, OTHER = ("the one",), ("the other",)


def drawn(*marks: tuple[Item, tuple[str, ...]], part: str = "", least: float | None = None) -> list[Drawn]:
    return [Drawn(shape, of, part, least) for item, of in marks for shape in shapes((item,))]


def lost(*marks: tuple[Item, tuple[str, ...]]) -> list[Hidden]:
    return hidden(drawn(*marks))


@pytest.mark.parametrize("shift", [0.0, 0.4, 0.5, 0.7])
def test_the_share_that_is_left_is_the_share_of_the_length(shift: float) -> None:
    """A stroke 40 points long under a white box that hides all but `shift` of it: 0.6 has to be left."""
    line = Line((0, 0), (40, 0), PEN)
    found = lost((line, ONE), (Rect(40 * shift, -5, 60, 10, fill=1.0), OTHER))
    assert [one.of for one in found] == ([ONE] if shift < 0.6 else [])
    if found:
        assert found[0].left == pytest.approx(shift, abs=0.05)
        assert found[0].by == OTHER


def test_what_is_painted_before_hides_nothing() -> None:
    assert lost((Rect(-5, -5, 60, 10, fill=1.0), OTHER), (Line((0, 0), (40, 0), PEN), ONE)) == []


def test_a_line_on_a_line_hides_it_though_both_are_dark() -> None:
    (found,) = lost((Line((0, 0), (40, 0), PEN), ONE), (Line((0, 0.1), (40, 0.1), PEN), OTHER))
    assert (found.of, found.by, found.left) == (ONE, OTHER, 0.0)


def test_a_line_across_hides_next_to_nothing() -> None:
    assert lost((Line((0, 0), (40, 0), PEN), ONE), (Line((20, -20), (20, 20), Stroke(6)), OTHER)) == []


def test_a_circle_half_under_a_box() -> None:
    (found,) = lost((circle((0, 0), 20, PEN), ONE), (Rect(-30, -30, 30, 60, fill=0.9), OTHER))
    assert found.left == pytest.approx(0.5, abs=0.04)


def test_what_a_mark_paints_over_itself_was_never_to_be_seen() -> None:
    """A tube: an outline, and a body over all but its edges."""
    way = [(0.0, 0.0), (40.0, 0.0)]
    tube = (polyline(way, Stroke(8.0, 0.2)), ONE), (polyline(way, Stroke(7.0, 0.9)), ONE)
    assert lost(*tube) == []
    (found,) = lost(*tube, (Rect(-5, -5, 60, 4.5, fill=1.0), OTHER))
    assert found.left == pytest.approx(0.5, abs=0.05)


def test_a_figure_has_to_be_left_whole() -> None:
    figures = Text(0, 10, "2457", "sans", 10)
    assert lost((figures, ONE)) == []
    (found,) = lost((figures, ONE), (circle((19.5, 6.5), 4, PEN, 1.0), OTHER))
    assert found.of == ONE and found.left < 0.3


def test_the_grids_lines_spoil_a_figure_but_no_sign() -> None:
    rule = Line((0, 6.5), (10, 6.5), Stroke(3.0)), ()
    assert [one.of for one in lost((Text(1, 10, "8", "sans", 10), ONE), rule)] == [ONE]
    assert lost((Rect(1, 2, 8, 8, fill=0.2), ONE), rule) == []
    assert lost((Line((0, 6.5), (10, 6.5), PEN), ONE), rule) == [], "no mark runs along a line of the grid"


def test_strokes_under_digits_may_lose_more_than_beside_marks() -> None:
    line, box = Line((0, 0), (40, 0), PEN), Rect(15, -5, 60, 10, fill=1.0)
    assert lost((line, ONE), (box, ())) == []
    assert len(lost((line, ONE), (box, OTHER))) == 1


def test_a_texture_says_how_much_of_it_must_be_left() -> None:
    line, box = Line((0, 0), (40, 0), PEN), Rect(18, -5, 60, 10, fill=1.0)
    with_least = [*drawn((line, ONE), least=0.35), *drawn((box, OTHER))]
    assert hidden(with_least) == []
    assert len(lost((line, ONE), (box, OTHER))) == 1


def test_a_part_is_looked_at_by_itself() -> None:
    """A short head at the end of a long shaft."""
    shaft, head = Line((0, 0), (60, 0), PEN), polyline([(56, -3), (60, 0), (56, 3)], PEN)
    cover = Rect(54, -5, 10, 10, fill=1.0)
    assert lost((shaft, ONE), (head, ONE), (cover, OTHER)) == []
    found = hidden([*drawn((shaft, ONE)), *drawn((head, ONE), part="head"), *drawn((cover, OTHER))])
    assert [(one.of, one.part, one.left) for one in found] == [(ONE, "head", 0.0)]


def test_groups_are_moved_scaled_and_turned() -> None:
    """A quarter turn takes the line from under the box."""
    line = Line((10, 0), (40, 0), PEN)
    box = Rect(5, -5, 60, 10, fill=1.0)
    assert len(lost((Group((line,)), ONE), (box, OTHER))) == 1
    assert lost((Group((line,), turn=90), ONE), (box, OTHER)) == []
    assert lost((Group((line,), dy=20), ONE), (box, OTHER)) == []
    (found,) = lost((Group((line,), scale=2.0), ONE), (box, OTHER))
    assert found.left == pytest.approx((80 - 65) / 60, abs=0.05)


def test_a_filled_path_covers_what_lies_inside_it_by_the_even_odd_rule() -> None:
    ring = Path((*circle((0, 0), 20).segments, *circle((0, 0), 10).segments), None, 1.0)
    inner, outer = circle((0, 0), 5, PEN), circle((0, 0), 15, PEN)
    assert [one.of for one in lost((inner, ONE), (outer, OTHER), (ring, ("ring",)))] == [OTHER]


def test_points_of_a_stroke_are_spread_along_its_whole_length() -> None:
    (shape,) = shapes((circle((50, 50), 10, PEN),))
    assert len(shape.points) >= 2 * pi * 10 / 3
    assert {(round(x > 50), round(y > 50)) for x, y in shape.points} == {(0, 0), (0, 1), (1, 0), (1, 1)}
    assert all(abs(((x - 50) ** 2 + (y - 50) ** 2) ** 0.5 - 10) < 0.15 for x, y in shape.points)
