"""Nothing that is shown moves a cursor, orders a terminal about or turns letters round, wherever it was typed.

Outside: the categories and names of Python's own table of Unicode, and not the ranges of the room.
"""

from __future__ import annotations

import sys
from pathlib import Path
from unicodedata import bidirectional, category
from xml.etree import ElementTree

import pytest

from bookmaker.display.items import Group, Page
from bookmaker.ink.svg import svg_text
from bookmaker.manifest import load
from bookmaker.source.diagnostic_text import shown
from bookmaker.source.diagnostics import BookErrors, Diagnostic, Place
from bookmaker.visible import visible
from tests.cli.running import run

TURNING = {"LRE", "RLE", "LRO", "RLO", "PDF", "LRI", "RLI", "FSI", "PDI"}
"""Unicode Standard Annex #9, table 4: explicit directional formatting."""

ORDERS = ("\x07", "\x1b[2J", "\x85", "\x9b2J", "\x9d0;t\x9c", "\u202e", "\u2066", "\u2028", "\udc9b")

BOOK = 'book:\n  title: T\npuzzles:\n- id: a\n  title: "{}"\n  givens: ' + "." * 81 + "\n"


def test_no_control_direction_or_separator_is_left() -> None:
    for number in range(sys.maxunicode + 1):
        char = chr(number)
        hidden = category(char) in ("Cc", "Cs", "Zl", "Zp") or bidirectional(char) in TURNING
        if hidden and char not in "\t\n":
            assert visible(char) == "\N{REPLACEMENT CHARACTER}", hex(number)
        elif char.isprintable():
            assert visible(char) == char, hex(number)


@pytest.mark.parametrize("typed", [order for order in ORDERS if order not in ("\x85", "\u2028")], ids=ascii)
@pytest.mark.parametrize("field", ["title", "setter"])
def test_the_manifest_is_told_where_one_stands(tmp_path: Path, field: str, typed: str) -> None:
    written = "".join(f"\\u{ord(char):04x}" if not char.isprintable() else char for char in typed)
    text = BOOK.format("Low" + written).replace('  title: "', f'  {field}: "')
    (tmp_path / "book.yaml").write_text(text, encoding="utf-8")
    with pytest.raises(BookErrors) as told:
        load(tmp_path)
    found = told.value.diagnostics[0]
    assert (found.code, found.place.line) == ("stray-character", 5)
    assert found.place.column == text.splitlines()[4].index("\\u") + 1
    assert f"U+{ord(typed[0]):04X}" in found.text


def test_band_names_hold_none(tmp_path: Path) -> None:
    bands = 'bands: [one, two, three, four, "fi\\u009bve"]'
    (tmp_path / "book.yaml").write_text(BOOK.format("Low").replace("book:\n", f"book:\n  {bands}\n"), encoding="utf-8")
    with pytest.raises(BookErrors) as told:
        load(tmp_path)
    (found,) = (diagnostic for diagnostic in told.value.diagnostics if not diagnostic.warning)
    assert (found.code, found.place.line, found.place.column) == ("stray-character", 2, bands.index("\\u") + 3)


@pytest.mark.parametrize("order", ORDERS, ids=ascii)
def test_a_trouble_shows_none(order: str) -> None:
    diagnostic = Diagnostic(Place(f"bo{order}ok.yaml", 1, 1), "x", f"wrong{order}", f"mend{order}")
    said = shown([diagnostic], lambda file, line: f"a: {order}b")
    assert order not in said
    assert all(char.isprintable() or char == "\n" for char in said)


@pytest.mark.skipif(sys.platform == "win32", reason="no such names there")
@pytest.mark.parametrize("order", [order for order in ORDERS if order != "\udc9b"], ids=ascii)
def test_names_of_files_are_shown_without(tmp_path: Path, order: str) -> None:
    """Also in what the parser of options says, which no command has in its hands."""
    folder = tmp_path / f"a{order}b"
    said = run("proof", folder).output
    assert "does not exist" in said
    (tmp_path / "list.txt").write_text("." * 81 + "\n")
    said += run("proof", (tmp_path / "list.txt").rename(tmp_path / f"l{order}t.txt"), "--json", "-").output
    said += run("start", folder).output
    assert "wrote" in said
    assert all(char.isprintable() or char in "\t\n" for char in said)


def test_a_label_of_a_picture_holds_none() -> None:
    """XML 1.0 allows no C0 at all: with one in it, the picture could not be read."""
    page = Page(100.0, 100.0, (Group((), name="Low\x1b\x9b\u202eTide"),), "1")
    (named,) = (node for node in ElementTree.fromstring(svg_text(page)).iter() if node.get("aria-label"))
    assert named.get("aria-label") == "Low\ufffd\ufffd\ufffdTide"
