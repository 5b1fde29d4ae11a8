"""Diagnostics in order, and as a person reads them."""

from __future__ import annotations

import pickle
from pathlib import Path

import pytest

from bookmaker.manifest import load
from bookmaker.source.diagnostic_text import MOST_COLUMNS, MOST_SHOWN, shown
from bookmaker.source.diagnostics import BookErrors, Collector, Diagnostic, Place, in_file_order, nearest, quoted
from tests.manifest.books import GIVENS, HEAD, write


def lines(text: str) -> dict[tuple[str, int], str]:
    return {("book.yaml", number): line for number, line in enumerate(text.split("\n"), start=1)}


def as_shown(diagnostic: Diagnostic, text: str) -> str:
    source = lines(text)
    return shown([diagnostic], lambda file, line: source.get((file, line)))


def test_troubles_of_another_process_are_the_same() -> None:
    diagnostics = BookErrors(
        [Diagnostic(Place("b", 2), "x", "one"), Diagnostic(Place("a", 1), "y", "other", warning=True)]
    )
    assert pickle.loads(pickle.dumps(diagnostics)).diagnostics == diagnostics.diagnostics


def test_in_file_order_and_said_once() -> None:
    places = [Place("b", 1, 1), Place("a", 10, 1), Place("a", 9, 5), Place("a"), Place("a", 9, 5)]
    ordered = in_file_order(Diagnostic(place, "x", "y") for place in places)
    assert [str(t.place) for t in ordered] == ["a", "a:9:5", "a:10:1", "b:1:1"]


def test_warnings_alone_stop_nothing() -> None:
    collector = Collector()
    collector.warn(Place("a", 1, 1), "w", "look")
    collector.raise_errors()
    collector.error(Place("a", 2, 1), "e", "stop")
    with pytest.raises(BookErrors) as found:
        collector.raise_errors()
    assert [t.code for t in found.value.diagnostics] == ["e", "w"]


def test_nearest_word() -> None:
    assert nearest("thermometr", ["cage", "thermometer"]) == "did you mean “thermometer”?"
    assert nearest("A", ["a", "b"]) == "did you mean “a”?"
    assert nearest("xyz", ["cage", "arrow"]) == "known here: arrow, cage"


def test_quoted_words_stay_on_one_line_and_short() -> None:
    assert quoted("a\n b") == "“a b”"
    assert len(quoted("x" * 10_000)) <= 42


def test_carets_under_every_place_of_the_line() -> None:
    diagnostic = Diagnostic(Place("book.yaml", 2, 3), "c", "said", "mend", (Place("book.yaml", 2, 7),))
    assert as_shown(diagnostic, "one\n  5 . 5\n") == (
        "book.yaml:2:3: said [c]\n    2 |   5 . 5\n      |   ^   ^\n    mend"
    )


def test_places_on_several_lines() -> None:
    also = (Place("book.yaml", 3, 2), Place("book.yaml", 11, 1), Place("other.yaml", 1, 1))
    diagnostic = Diagnostic(Place("book.yaml", 2, 1), "c", "said", "", also)
    assert as_shown(diagnostic, "\n".join("abcdefghijk")) == (
        "book.yaml:2:1: said [c]\n     2 | b\n       | ^\n     3 | c\n       |  ^\n       ⋮\n    11 | k\n       | ^"
    )


def test_a_whole_file_has_no_excerpt() -> None:
    assert as_shown(Diagnostic(Place("book.yaml"), "c", "the file is empty"), "") == "book.yaml: the file is empty [c]"


def test_warnings_are_told_apart() -> None:
    diagnostic = Diagnostic(Place("book.yaml", 1, 1), "c", "odd", warning=True)
    assert as_shown(diagnostic, "x").startswith("book.yaml:1:1: worth a look: odd [c]\n")


def test_wide_and_combining_letters_do_not_shift_the_caret() -> None:
    """東 and 京 take two columns of a terminal each (Unicode East Asian Width: W), a combining accent takes none."""
    diagnostic = Diagnostic(Place("book.yaml", 1, 6), "c", "said")
    assert as_shown(diagnostic, "東京e\u0301 x").splitlines()[2] == "      | " + " " * 6 + "^"


def test_a_file_cannot_speak_to_the_terminal() -> None:
    diagnostic = Diagnostic(Place("book.yaml", 1, 2), "c", "said \x1b[31m")
    text = as_shown(diagnostic, "a\x1b]0;x\x07\tb\u202ec")
    assert "\x1b" not in text and "\x07" not in text and "\u202e" not in text and "\t" not in text
    assert "→b" in text


def test_long_lines_are_cut_around_the_caret() -> None:
    text = "".join(chr(ord("a") + i % 26) for i in range(5000))
    for column in (1, 60, 111, 2500, 5000):
        _, source, carets = as_shown(Diagnostic(Place("book.yaml", 1, column), "c", "said"), text).splitlines()
        assert len(source) <= MOST_COLUMNS + 10
        assert source[carets.index("^")] == text[column - 1]


def test_a_flood_is_counted() -> None:
    text = shown([Diagnostic(Place("a", 0), "c", f"n{i}") for i in range(MOST_SHOWN + 7)], lambda file, line: None)
    assert text.splitlines()[-1] == "… and 7 more like these"


# -- whole texts, from the file on disk to the lines on the terminal

GOLDEN: dict[str, tuple[str, str]] = {
    "givens clash": (
        HEAD
        + "- id: estuary\n  givens: |\n    . . .  . . .  . . .\n    . . .  . . .  . . .\n    5 . .  . 1 .  . 5 .\n"
        + "    . . .  . . .  . . .\n" * 6,
        """\
book.yaml:9:5: givens clash: row 3 has 5 twice (r3c1 and r3c8) [givens-clash]
    9 |     5 . .  . 1 .  . 5 .
      |     ^               ^
    one of the two is likely a slip
""",
    ),
    "misspelt words": (
        HEAD + f"- id: estuary\n  seter: S\n  givens: {GIVENS}\n  rules:\n    thermometr: r1c1-r1c4\n",
        """\
book.yaml:6:3: the puzzle has no “seter” [unknown-key]
    6 |   seter: S
      |   ^
    did you mean “setter”?
book.yaml:9:5: there is no rule kind “thermometr” [unknown-rule]
    9 |     thermometr: r1c1-r1c4
      |     ^
    did you mean “thermometer”?
""",
    ),
    "regions": (
        HEAD
        + "- id: jig\n  size: 4\n  givens: ................\n  regions: |\n    aabb\n    aabb\n    cccd\n    ccdd\n",
        """\
book.yaml:11:7: region c has 5 cells and region d has 3; each region should have 4 [region-size]
    11 |     cccd
       |       ^
    12 |     ccdd
       |      ^
    one of the cells marked is likely a slip for d
""",
    ),
    "two puzzles, one id": (
        HEAD + f"- id: tide\n  givens: {GIVENS}\n- id: tide\n  rules:\n    thermometer: r1c1-r1c4\n",
        """\
book.yaml:7:7: two puzzles have the id “tide”; the first is on line 5 [same-id]
    5 | - id: tide
      |       ^
      ⋮
    7 | - id: tide
      |       ^
    give one of them another id
""",
    ),
    "tab": (
        "book:\n\ttitle: Tides\n",
        """\
book.yaml:2:1: there is a tab here where spaces are needed [tab]
    2 | →title: Tides
      | ^
    indent lines with spaces, two for each step
""",
    ),
    "colon": (
        "book:\n  title: Tides: a book\n",
        """\
book.yaml:2:15: there is a second colon in this line; everything after the first is taken as text [colon]
    2 |   title: Tides: a book
      |               ^
    put text that begins with a sign, or contains “: ”, in quotes: 'like: this'
""",
    ),
    "include outside": (
        HEAD + "- include: ../more.yaml\n",
        """\
book.yaml:5:12: “../more.yaml” is not inside the book's folder [include-outside]
    5 | - include: ../more.yaml
      |            ^
    a book includes only files in its own folder or below, so that it can be moved as a whole
""",
    ),
    "one cell": (
        "book:\n  title: T\npuzzles:\n- id: a\n  givens: x\n",
        """\
book.yaml:5:11: in the givens, the number of cells is 1 and should be 81 [picture-size]
    5 |   givens: x
      |           ^
    draw 9 rows of 9, with a dot for an empty cell
""",
    ),
}


@pytest.mark.parametrize("name", GOLDEN)
def test_whole_texts(name: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    book, text = GOLDEN[name]
    write(tmp_path, {"book.yaml": book})
    monkeypatch.chdir(tmp_path)
    with pytest.raises(BookErrors) as found:
        load(Path("book.yaml"))
    assert shown(found.value.diagnostics) + "\n" == text


def test_files_are_named_as_the_user_named_them(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    write(tmp_path, {"club/book.yaml": HEAD + "- include: puzzles/a.yaml\n", "club/puzzles/a.yaml": "- id: a b\n"})
    monkeypatch.chdir(tmp_path)
    with pytest.raises(BookErrors) as found:
        load(Path("club"))
    first = shown(found.value.diagnostics).splitlines()[0]
    assert first.startswith(str(Path("club") / "puzzles" / "a.yaml") + ":1:3: ")
