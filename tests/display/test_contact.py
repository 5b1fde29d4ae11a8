"""Contact sheets: every page in its place, facing pages side by side."""

from __future__ import annotations

import pytest
from PIL import ImageChops

from bookmaker.display.contact import contact_sheet, picture_page
from bookmaker.display.items import Group, Page, Rect, Text
from bookmaker.ink.png import page_picture


def pages(count: int) -> list[Page]:
    return [Page(100, 200, (Rect(0, 0, 150, 20, fill=0.0),), str(number)) for number in range(1, count + 1)]


def test_pairs_touch_and_the_first_page_stands_at_the_right() -> None:
    sheet = contact_sheet(pages(4), across=4, scale=0.5)
    places = [(group.dx, group.dy) for group in sheet.items if isinstance(group, Group)]
    xs = [x for x, _ in places]
    assert xs[0] == xs[1] - 50 - 14  # page 1, then a new pair
    assert xs[2] == xs[1] + 50  # pages 2 and 3 touch
    assert places[0][1] == places[1][1] == places[2][1] < places[3][1]
    assert places[3][0] == 14
    assert [item.text for item in sheet.items if isinstance(item, Text)] == ["1", "2", "3", "4"]


def test_nothing_reaches_beyond_its_page_or_the_sheet() -> None:
    sheet = contact_sheet(pages(1), across=2, scale=0.5)
    assert sheet.width == 14 + 2 * 50 + 14
    black = page_picture(sheet, 72).point(lambda level: 255 if level < 40 else 0)
    left, top, right, bottom = black.getbbox()
    # a bar of 150 × 20 on a page of 100, at half size
    assert (left, top, right, bottom) == (64, 14, 114, 24)


@pytest.mark.parametrize(("count", "across"), [(0, 2), (3, 3), (3, 0)])
def test_what_it_does_not_take(count: int, across: int) -> None:
    with pytest.raises(ValueError, match="contact sheet"):
        contact_sheet(pages(count), across)


def test_a_page_around_a_drawing() -> None:
    page = picture_page((Rect(0, 0, 30, 20, fill=0.0),), 30, 20, margin=5)
    assert (page.width, page.height) == (40, 30)
    assert ImageChops.invert(page_picture(page, 72)).getbbox() == (5, 5, 35, 25)
