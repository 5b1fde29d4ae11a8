"""Contact sheets: every page in its place, facing pages side by side."""

from __future__ import annotations

import pytest
from PIL import Image as Raster

from bookmaker.display.items import Document, Page, Rect
from bookmaker.ink.contact import GAP, LABEL, contact_sheet
from bookmaker.ink.pdf import pdf_bytes

WIDE, HIGH = 60, 120
"""A page of 144 × 288 points at 30 pixels an inch."""

PAGES = [Page(144, 288, (Rect(0, 0, 216, 24, fill=0.0),), str(number)) for number in range(1, 5)]


def sheet(pages: list[Page], across: int) -> Raster.Image:
    return contact_sheet(pdf_bytes(Document("", "", "", tuple(pages))), across)


def bars(picture: Raster.Image) -> list[tuple[int, int, int]]:
    """Where the black bars of the pages lie: left, right, top."""
    found = []
    for top in range(GAP, picture.height, HIGH + GAP + LABEL):
        line = [picture.getpixel((x, top + 5)) < 40 for x in range(picture.width)]
        starts = [x for x in range(1, picture.width) if line[x] and not line[x - 1]]
        found += [(start, start + line[start:].index(False), top) for start in starts]
    return found


def test_pairs_share_a_line_and_the_first_page_stands_at_the_right() -> None:
    picture = sheet(PAGES, across=4)
    assert picture.width == 4 * WIDE + 3 * GAP
    assert picture.height == 2 * (HIGH + GAP + LABEL) + GAP
    first, second, third, fourth = bars(picture)
    assert first[:2] == (GAP + WIDE, GAP + 2 * WIDE - 2)  # its frame is grey
    assert second[0] == GAP + 2 * WIDE + GAP + 1 and third[0] - second[1] == 1
    assert fourth == (GAP + 1, GAP + WIDE - 1, GAP + HIGH + GAP + LABEL)


def test_what_lies_beyond_the_trim_is_not_shown() -> None:
    spread = [Page(144, 288, (Rect(-9, -9, 162, 306, fill=0.0),), "1", bleed=9, sheet=30)]
    picture = sheet(spread, across=2)
    black = picture.point(lambda level: 255 if level < 40 else 0)
    assert picture.width == 2 * WIDE + 2 * GAP
    assert black.getbbox()[:2] == (GAP + WIDE, GAP + 1)
    assert black.crop((0, 0, picture.width, GAP + HIGH)).getbbox()[3] == GAP + HIGH - 1


def test_labels_stand_under_their_pages() -> None:
    picture = sheet(PAGES[:1], across=2)
    words = picture.crop((0, GAP + HIGH + 1, picture.width, picture.height)).point(lambda level: 255 - level)
    left, _, right, _ = words.getbbox()
    assert (left + right) / 2 == pytest.approx(GAP + 1.5 * WIDE, abs=2)


@pytest.mark.parametrize("across", [3, 0])
def test_what_it_does_not_take(across: int) -> None:
    with pytest.raises(ValueError, match="contact sheet"):
        sheet(PAGES, across)
