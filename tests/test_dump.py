"""The dump says everything that is drawn, stably and to a hundredth of a point."""

from __future__ import annotations

from dataclasses import replace

from bookmaker.display.items import Group, Line, Page, Rect, Stroke, Text
from tests.dump import dump, dump_page
from tests.ink.specimen import document, specimen

EXPECTED = """\
page “iv” 100 × 50.26 bleed 9 sheet 9
  line 0,0 to 10,0.33 stroke 0.5 grey 0 dash 2 1.5 round
  group “grid 1” at 5,5 scale 2 turn 90
    inside rect 0,0 9 × 9
    rect 0,0 4 × 5 radius 1 fill 0.8 stroke 1 grey 0.25 round
    text 1,2 middle serif 11 “say “no”” grey 0.3 letter space 0.5 word space -0.25
"""


def test_how_a_page_reads() -> None:
    items = (
        Line((0, -0.001), (10, 1 / 3), Stroke(0.5, 0, (2, 1.5), "round")),
        Group(
            (
                Rect(0, 0, 4, 5, Stroke(1, 0.25, join="round"), 0.8, 1),
                Text(1, 2, "say “no”", "serif", 11, 0.3, "middle", 0.5, -0.25),
            ),
            5,
            5,
            2,
            90,
            Rect(0, 0, 9, 9),
            "grid 1",
        ),
    )
    assert dump_page(Page(100, 50.256, items, "iv", (), 9, 9)) == EXPECTED


def test_every_change_that_can_be_seen_is_seen() -> None:
    page = specimen()
    whole = dump_page(page)
    for index in range(len(page.items)):
        assert dump_page(replace(page, items=page.items[:index] + page.items[index + 1 :])) != whole


def test_a_document_lists_its_parts() -> None:
    text = dump(document())
    assert text == dump(document())
    assert text.startswith("document “Title – té” by “An Author”, about “A subject”, en-GB\ncreated 2026-03-09\n")
    assert "\n  bookmark “Below it” to second\n" in text
    assert text.count("\npage “") == 3
    assert "  anchor second at 10,20\n" in text
