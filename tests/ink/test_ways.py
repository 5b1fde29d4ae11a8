"""Names that lead to places, and the outline, as PDF has them."""

from __future__ import annotations

from io import BytesIO
from typing import Any

import pikepdf
import pytest
from hypothesis import given
from hypothesis import strategies as st
from pypdf import PdfReader

from bookmaker.display.items import Anchor, Bookmark, Document, Link, Page
from bookmaker.ink import ways
from bookmaker.ink.pdf import pdf_bytes


def made(names: list[str], levels: list[int] | None = None) -> bytes:
    """A file of one page with anchors of these names, and bookmarks of these levels to the first of them."""
    anchors = tuple(Anchor(name, 0, at) for at, name in enumerate(names))
    bookmarks = tuple(Bookmark(f"{at}: é (one)", names[0], level) for at, level in enumerate(levels or []))
    return pdf_bytes(Document("t", "", "", (Page(99, 99, (), "1", anchors),), bookmarks))


WORDS = st.text(st.characters(codec="utf-8", exclude_categories=("Cc",)), min_size=1)


@given(st.lists(WORDS, min_size=1, max_size=40, unique=True))
def test_names_are_in_the_order_of_their_bytes_and_between_the_limits_of_their_leaf(names: list[str]) -> None:
    """ISO 32000-1, 7.9.6: whoever looks a name up goes by that order."""
    with pytest.MonkeyPatch.context() as patch, pikepdf.open(BytesIO(_in_small_leaves(patch, names))) as pdf:
        listed = []
        for leaf in pdf.Root.Names.Dests.Kids:
            held = [bytes(name) for name in list(leaf.Names)[::2]]
            assert [bytes(limit) for limit in leaf.Limits] == [held[0], held[-1]] and len(held) <= 3
            listed += held
        assert listed == sorted(listed)
        assert sorted(str(pikepdf.String(name)) for name in listed) == sorted(names)


def _in_small_leaves(patch: pytest.MonkeyPatch, names: list[str]) -> bytes:
    patch.setattr(ways, "_LEAF", 3)
    return made(names)


@st.composite
def steps(draw: st.DrawFn) -> list[int]:
    """Levels, none more than one deeper than the one before."""
    found = [0]
    for _ in range(draw(st.integers(0, 30))):
        found.append(draw(st.integers(0, found[-1] + 1)))
    return found


@given(steps())
def test_the_outline_hangs_together(levels: list[int]) -> None:
    """ISO 32000-1, tables 152 and 153: each entry knows what is beside, above and below it."""
    file = made(["here"], levels)
    with pikepdf.open(BytesIO(file)) as pdf:
        seen: list[tuple[str, int]] = []
        assert _walk(pdf.Root.Outlines, -1, seen) == len(levels)
        assert seen == [(f"{at}: é (one)", level) for at, level in enumerate(levels)]
    reader = PdfReader(BytesIO(file), strict=True)
    assert _flat(reader.outline, 0) == seen


def _walk(above: Any, level: int, seen: list[tuple[str, int]]) -> int:
    """Note what is below an entry, in order; how many that are."""
    before, here, count = None, above.get("/First"), 0
    while here is not None:
        seen.append((str(here.Title), level + 1))
        assert here.Parent.objgen == above.objgen
        assert here.get("/Prev") is None if before is None else here.Prev.objgen == before.objgen
        count += 1 + _walk(here, level + 1, seen)
        before, here = here, here.get("/Next")
    assert above.get("/Last") is None if before is None else above.Last.objgen == before.objgen
    assert int(above.get("/Count", 0)) == count
    return count


def _flat(entries: list[Any], level: int) -> list[tuple[str, int]]:
    found = []
    for entry in entries:
        found += _flat(entry, level + 1) if isinstance(entry, list) else [(entry.title, level)]
    return found


def test_bookmarks_go_down_one_level_at_a_time() -> None:
    for levels in ([1], [0, 2]):
        with pytest.raises(ValueError, match="a bookmark of level"):
            made(["here"], levels)


def test_whoever_wants_a_page_alone_unpacks_no_ways() -> None:
    """An object stream is unpacked whole for one object in it, and preflight would keep all links of a book."""
    links = tuple(Link(0, 9 * at, 9, 9, "here", "there") for at in range(9))
    file = pdf_bytes(
        Document("t", "", "", (Page(99, 99, links, "1", (Anchor("here", 0, 0),)),), (Bookmark("a", "here"),))
    )
    with pikepdf.open(BytesIO(file)) as pdf:
        streams = [each for each in pdf.objects if isinstance(each, pikepdf.Stream)]
        bundles = [each.read_bytes() for each in streams if each.get("/Type") == "/ObjStm"]
    (pages,) = (bundle for bundle in bundles if b"/Type /Page " in bundle)
    (clicked,) = (bundle for bundle in bundles if b"/Type /Annot" in bundle)
    assert b"/Names" not in pages.replace(b"/Names << /Dests", b"") and b"/Title (a" not in pages
    assert clicked.count(b"/Annot ") == 9 and b"/Limits" in clicked and b"/Type /Page " not in clicked
