"""Pages that are drawn when they are asked for."""

from __future__ import annotations

import pytest

from bookmaker.display.items import Page
from bookmaker.layout.drawing import Pages

DRAWN: list[int] = []


def draw(at: int) -> Page:
    DRAWN.append(at)
    return Page(1, 1, (), str(at))


def test_they_are_a_sequence() -> None:
    pages = Pages(5, draw)
    assert len(pages) == 5
    assert pages[0].label == "0" and pages[-1].label == "4"
    assert [page.label for page in pages] == list("01234")
    assert [page.label for page in pages[1:-1]] == list("123")
    with pytest.raises(IndexError):
        pages[5]


def test_none_is_drawn_before_it_is_asked_for() -> None:
    DRAWN.clear()
    pages = Pages(1_000_000, draw)
    assert not DRAWN
    assert pages[7].label == pages[7].label == "7"
    assert DRAWN == [7, 7]
