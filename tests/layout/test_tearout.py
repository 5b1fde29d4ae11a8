"""Pads: a puzzle on the front of a leaf, its key on the back, an edge to tear or to file by."""

from __future__ import annotations

import re

import pytest

from bookmaker.book.pad import as_pad
from bookmaker.display.items import Document, Line, Rect
from bookmaker.language import catalogue
from bookmaker.layout import compose, load_layout
from bookmaker.layout.lengths import mm
from bookmaker.layout.specfile import read_layout
from bookmaker.source.diagnostics import BookErrors
from tests.layout.flat import flat
from tests.layout.sample_book import full_book, sample_book

PADS = ("a4-tear-out", "letter-tear-out")


def pad(name: str) -> Document:
    return compose(full_book(), load_layout(name))


@pytest.mark.parametrize("name", PADS)
def test_every_key_is_on_the_back_of_its_puzzle(name: str) -> None:
    found: dict[str, dict[str, int]] = {"grid": {}, "key": {}}
    for at, page in enumerate(pad(name).pages):
        for item in flat(page):
            for named in item.names:
                if match := re.fullmatch("(grid|key) (.+)", named):
                    found[match[1]][match[2]] = at
    assert found["grid"] and found["grid"].keys() == found["key"].keys()
    for puzzle, at in found["grid"].items():
        assert at % 2 == 0 and found["key"][puzzle] == at + 1  # pages are counted from 0: even ones are fronts


@pytest.mark.parametrize("name", PADS)
def test_nothing_is_printed_on_the_edge_but_its_marks(name: str) -> None:
    layout = load_layout(name)
    assert layout.tear_out
    edge = layout.tear_out.reach
    for at, page in enumerate(pad(name).pages):
        for item in flat(page):
            left, _, right, _ = item.box
            if not item.inside("tear-off edge"):
                assert left >= edge if at % 2 == 0 else right <= layout.width - edge, item


def test_holes_are_where_punches_make_them() -> None:
    """ISO 838: two holes of 6 mm, 80 mm apart, 12 mm from the edge; from memory."""
    layout = read_layout(
        "x", "based-on: a4-tear-out\nmargins: {inner: 25 mm}\ntear-out: {perforation: no, holes: two}\n", "x.yaml"
    )
    pages = compose(sample_book(), layout).pages
    for at, page in enumerate(pages):
        rings = [item for item in flat(page) if item.inside("tear-off edge")]
        if not rings:
            continue
        assert all(isinstance(ring.item, Rect) for ring in rings)
        middles = sorted(((ring.box[0] + ring.box[2]) / 2, (ring.box[1] + ring.box[3]) / 2) for ring in rings)
        x = mm(12) if at % 2 == 0 else layout.width - mm(12)
        assert [across for across, _ in middles] == pytest.approx([x, x], abs=0.5)
        assert [down - layout.height / 2 for _, down in middles] == pytest.approx([-mm(40), mm(40)], abs=0.5)
    assert any(item.inside("tear-off edge") for page in pages for item in flat(page))


def test_the_perforation_runs_from_edge_to_edge() -> None:
    layout = load_layout("a4-tear-out")
    lines = [item.item for page in pad("a4-tear-out").pages for item in flat(page) if item.inside("tear-off edge")]
    assert lines
    for line in lines:
        assert isinstance(line, Line) and line.stroke.dash
        assert (line.start[1], line.end[1]) == pytest.approx((0.0, layout.height), abs=0.5)


def test_an_edge_needs_its_margin() -> None:
    with pytest.raises(BookErrors) as caught:
        read_layout("x", "based-on: a4-tear-out\nmargins: {inner: 15 mm}\n", "x.yaml")
    (diagnostic,) = caught.value.diagnostics
    assert diagnostic.code == "no-room" and "16 mm" in diagnostic.hint and diagnostic.place.line == 2


PADDED = ("hints", "keys", "credits")
"""Of what the guide says otherwise in a pad."""


def test_the_guide_speaks_of_the_backs() -> None:
    book = full_book()
    said, meant = (" ".join(p for part in b.front for p in getattr(part, "paragraphs", ()) if isinstance(p, str))
                   for b in (book, as_pad(book)))  # fmt: skip
    words = catalogue("en")
    for in_a_book, in_a_pad in ((words.say(f"guide-{what}"), words.say(f"guide-{what}-in-pad")) for what in PADDED):
        assert in_a_book in said and in_a_pad not in said
        assert in_a_pad in meant and in_a_book not in meant
