"""Slips of a hand that changes puzzles in a book: each has one message, at its place, that says how to mend it."""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.manifest.books import HEAD, read, troubles_of

BOOK = """\
book:
  title: Slack Water
  permission: Made for this test.

puzzles:
  - id: first-light
    title: First Light
    note: For whoever arrives early.
    size: 6
    givens: |
      . 5 .  . 4 .
      . 1 .  3 . .

      6 . .  . . .
      . . .  . . 6

      . . 2  . 5 .
      . 3 .  . 1 .

  - id: mooring-line
    title: Mooring Line
    setter: Sandpiper
    givens: |
      . . .  . . .  2 . .
      9 . .  . 8 7  1 . .
      1 . 5  . 9 4  . 7 .

      . 2 7  5 . .  4 . .
      8 4 .  . 7 .  . 3 2
      . . 9  . . 1  7 8 .

      . 8 .  1 6 .  9 . 4
      . . 6  7 4 .  . . 3
      . . 4  . . .  . . .
    rules:
      thermometer:
        - r1c1-r1c3
      cage:
        - {cells: r8c8 r8c9, total: 12}
"""

ROW = "      9 . .  . 8 7  1 . .\n"
"""The second row of the second puzzle."""

# What is typed, and what is typed instead, with ▸ where the one diagnostic should point; its code; a part of its hint.
SLIPS: dict[str, tuple[str, str, str, str]] = {
    "a colon in a title": ("Mooring Line", "Mooring▸: Line", "colon", "in quotes"),
    "curved quotes around a colon": ("Mooring Line", "“Mooring▸: Line”", "colon", "put straight quotes around"),
    "an apostrophe first": ("Mooring Line", "▸'Twas Low Tide", "open-quote", "in double quotes"),
    "two apostrophes": ("Mooring Line", "▸'Twas\n    note: Don't hurry.", "open-quote", "in double quotes"),
    "no colon": ("setter: S", "▸setter S", "no-colon", "write “setter: Sandpiper”"),
    "a semicolon": ("setter: S", "▸setter; S", "no-colon", "write “setter: Sandpiper”"),
    "an equals sign": ("givens: |\n      . . .", "▸givens = |\n      . . .", "no-colon", "write “givens: |”"),
    "no space after a colon": ("setter: S", "setter:▸S", "no-space", "write “setter: …”"),
    "a remark of another kind": ("setter: S", "▸// new\n    setter: S", "no-colon", "begins with “#”"),
    "spaces from a web page": ("    setter: S", "▸\u00a0\u00a0\u00a0 setter: S", "odd-space", "type the spaces again"),
    "such a space after a colon": ("setter: S", "setter:▸\u00a0S", "odd-space", "type the spaces again"),
    "a tab": ("    setter: S", "▸\tsetter: S", "tab", "with spaces"),
    "a tab before a row": (ROW, "▸\t" + ROW.lstrip(), "tab", "with spaces"),
    "one space too many": ("    setter: S", "     ▸setter: S", "indent", "start in the same column"),
    "one space too few": ("    setter: S", "   ▸setter: S", "indent", "start in the same column"),
    "a puzzle out of line": ("  - id: moor", "   ▸- id: moor", "indent", "start in the same column"),
    "a dash forgotten": ("  - id: moor", "    ▸id: moor", "repeated-key", "put a dash before it"),
    "a dash forgotten further left": ("  - id: moor", "  ▸id: moor", "indent", "put a dash before it"),
    "no space after a dash": ("- id: moor", "▸-id: moor", "dash", "“- id: estuary”"),
    "a long dash": ("- id: moor", "▸– id: moor", "dash", "“- id: estuary”"),
    "a bullet": ("- id: moor", "▸• id: moor", "dash", "“- id: estuary”"),
    "“puzzles” forgotten": ("puzzles:\n  -", "  ▸-", "indent", "perhaps “puzzles:” is missing"),
    "“puzzles” set in": ("puzzles:", "  ▸puzzles:", "lost-name", "in the first column"),
    "an id twice": ("mooring-line", "▸first-light", "same-id", "another id"),
    "an id in curved quotes": ("mooring-line", "▸“mooring”", "bad-id", "such as “mooring”"),
    "no id": ("- id: mooring-line\n    title", "- ▸title", "missing-key", "add a line “id: …”"),
    "a size with a cross": ("size: 6", "size: ▸6x6", "not-a-number", "write one from 4 to 25"),
    "no size": ("    size: 6\n    givens: |\n      .", "    givens: |\n      ▸.", "picture-size", "say “size: 6”"),
    "a row too long": (ROW, "      ▸9 . .  . 8 7  1 . . .\n", "picture-size", "draw 9 rows of 9"),
    "a row too short": (ROW, "      ▸9 . .  . 8 7  1 .\n", "picture-size", "draw 9 rows of 9"),
    "a row forgotten": (
        "      . . 6  7 4 .  . . 3\n      . . 4",
        "      ▸. . 4",
        "picture-size",
        "draw 9 rows of 9",
    ),
    "commas in a row": (ROW, "      ▸9,.,.,.,8,7,1,.,.\n", "picture-size", "no “,” between cells"),
    "dots that grew together": (ROW, "      ▸9 . .  . 8 7  1 …\n", "picture-size", "type the dots one by one"),
    "underlines for empty cells": (ROW, "      ▸9 _ _  _ 8 7  1 _ _\n", "picture-size", "“_” only helps the eye"),
    "a row in quotes": (ROW, '      ▸"9 . .  . 8 7  1 . ."\n', "picture-size", "without quotation marks"),
    "letters for noughts": (ROW, "      9 ▸O O  O 8 7  1 O O\n", "not-a-digit", "an empty cell is a dot"),
    "a row at the margin": ("  . . .  . . .  2", "▸. . .  . . .  2", "no-colon", "indented further than that"),
    "“Givens” with a capital": ("givens: |\n      . . .", "▸Givens: |\n      . . .", "unknown-key", "“givens”?"),
    "“rule” for “rules”": ("rules:", "▸rule:", "unknown-key", "“rules”?"),
    "“rules” forgotten": ("    rules:\n      thermo", "      ▸thermo", "lost-name", "go under “rules:”"),
    "a rule not set in": (
        "      thermometer:\n        - r1c1-r1c3\n      cage:\n        - {",
        "    ▸thermometer:\n    - r1c1-r1c3\n    cage:\n    - {",
        "lost-rule",
        "indent the kinds of rules below it",
    ),
    "lines without dashes": (
        "        - r1c1-r1c3\n",
        "        ▸r1c1-r1c3\n        r5c5-r5c7\n",
        "chain-jumps",
        "after a dash",
    ),
    "a comma between cells": ("r8c8 r8c9", "r8c8, ▸r8c9", "comma", "leave it out here"),
    "commas between cells": ("r8c8 r8c9", "r7c8, ▸r8c8, r8c9", "comma", "leave it out here"),
    "no comma between names": ("r8c9, total", "r8c9 ▸total", "comma", "put a comma between two items"),
    "no braces": ("{cells: r8c8 r8c9, total: 12}", "cells: r8c8 r8c9, total▸: 12", "colon", "go in braces"),
    "a brace not closed": (
        "{cells: r8c8 r8c9, total: 12}",
        "▸{cells: r8c8 r8c9, total: 12",
        "open-bracket",
        "with “}”",
    ),
    "a bar without a space": ("givens: |\n      . . .", "givens:▸|\n      . . .", "no-space", "write “givens: |”"),
    "another sign for the bar": ("givens: |\n      . . .", "givens: ▸I\n      . . .", "no-bar", "write “givens: |”"),
    "no colon in braces": ("total: 12", "total▸ 12", "no-colon", "write “total: 12”"),
    "“picture” forgotten": (
        "        - {cells: r8c8 r8c9, total: 12}\n",
        "          ▸aa.......\n          .........\n        totals: {a: 12}\n",
        "lost-name",
        "or “picture: |”",
    ),
    "a file in place of puzzles": (
        BOOK[BOOK.index("puzzles:") :],
        "puzzles: ▸more.yaml\n",
        "not-a-list",
        "“- include: more.yaml”",
    ),
    "“chapter” for “chapters”": (
        "\n\npuzzles:\n",
        "\n  order: chapters\n\n▸chapter:\n",
        "unknown-key",
        "did you mean “chapters”?",
    ),
    "text after a bar": ("note: For", "note: | ▸For", "block", "on the next line"),
    "a note that goes on": ("early.", "early\n    ▸and stays.", "no-colon", "indent it further"),
    "a second colon further on": ("early.", "early\n      ▸and: stays.", "indent", "goes in quotes"),
    "a picture after quotes": (
        "setter: Sandpiper\n    givens: |\n      .",
        "setter: 'Sandpiper'\n      ▸.",
        "indent",
        "begins with a line such as “givens: |”",
    ),
    # -- a picture that YAML takes for more of the text above it
    "no “givens” after the setter": (
        "Sandpiper\n    givens: |\n      .",
        "Sandpiper\n      ▸.",
        "lost-name",
        "“givens: |”",
    ),
    "no “givens” after the title": (
        "Line\n    setter: Sandpiper\n    givens: |\n      .",
        "Line\n      ▸.",
        "lost-name",
        "in the same column as “title”",
    ),
    "no “givens” after the id": (
        "line\n    title: Mooring Line\n    setter: Sandpiper\n    givens: |\n      .",
        "line\n      ▸.",
        "lost-name",
        "in the same column as “id”",
    ),
    "no “givens” after the size": ("size: 6\n    givens: |\n      .", "size: 6\n      ▸.", "lost-name", "as “size”"),
    "no “givens” after a name left empty": (
        "setter: Sandpiper\n    givens: |\n      .",
        "setter:\n      ▸.",
        "lost-name",
        "as “setter”",
    ),
    "no “givens” after a note": (
        "note: For whoever arrives early.\n    size: 6\n    givens: |\n      .",
        "size: 6\n    note: For whoever\n      arrives early.\n      ▸.",
        "lost-name",
        "as “note”",
    ),
    "no “givens” after a note with a bar": (
        "note: For whoever arrives early.\n    size: 6\n    givens: |\n      .",
        "size: 6\n    note: |\n      Early.\n\n      ▸.",
        "lost-name",
        "as “note”",
    ),
    "“givens” set in below a note": (
        "note: For whoever arrives early.\n    size: 6\n    givens: |\n",
        "size: 6\n    note: |\n      Early.\n      ▸givens: |\n",
        "lost-name",
        "in the same column as “note”",
    ),
}


@pytest.mark.parametrize("name", SLIPS)
@pytest.mark.parametrize("line_end", ["\n", "\r\n"], ids=["", "Windows"])
def test_a_slip_is_told_once_with_how_to_mend_it(name: str, line_end: str, tmp_path: Path) -> None:
    old, new, code, hint = SLIPS[name]
    assert old in BOOK
    marked = BOOK.replace(old, new, 1)
    before = marked.partition("▸")[0].split("\n")
    text = marked.replace("▸", "").replace("\n", line_end)
    (diagnostic,) = troubles_of(tmp_path, {"book.yaml": text})
    at = (diagnostic.code, diagnostic.place.line, diagnostic.place.column)
    assert at == (code, len(before), len(before[-1]) + 1), diagnostic
    assert hint in diagnostic.hint


PATCH = """- id: patch
  title: Patch
  size: 4
  regions: |
    aaab
    acbb
    ccdb
    cddd
  givens: |
    1 . . .
    . . . .
    . . . .
    . . . 4
"""


def lost(tmp_path: Path, text: str) -> list[tuple[int, str]]:
    found = troubles_of(tmp_path, {"book.yaml": HEAD + text})
    return [(diagnostic.place.line - 4, diagnostic.hint) for diagnostic in found if diagnostic.code == "lost-name"]


def test_a_picture_lost_in_another_picture(tmp_path: Path) -> None:
    assert lost(tmp_path, PATCH.replace("  givens: |\n", "")) == [
        (9, "write “givens: |” above it, in the same column as “regions”")
    ]


def test_a_lost_picture_with_ruling(tmp_path: Path) -> None:
    ruled = PATCH.replace("  givens: |\n", "").replace(
        "    . . . .\n    . . . 4", "    ----+----\n    . . . .\n    . . . 4"
    )
    assert lost(tmp_path, ruled) == [(9, "write “givens: |” above it, in the same column as “regions”")]


def test_two_pictures_lost_at_once(tmp_path: Path) -> None:
    assert lost(tmp_path, PATCH.replace("  givens: |\n", "").replace("  regions: |\n", "")) == [
        (4, "write “regions: |” above it, in the same column as “size”"),
        (8, "write “givens: |” above it, in the same column as “size”"),
    ]


def test_a_puzzle_that_is_set_in_too_far(tmp_path: Path) -> None:
    assert lost(tmp_path, PATCH + "    - id: two\n      title: Two\n") == [
        (14, "a new item of the list begins in the column of the dashes above")
    ]


def test_what_else_is_wrong_with_a_lost_picture_is_told_too(tmp_path: Path) -> None:
    text = BOOK.replace("    givens: |\n      . . .", "      . . .").replace(ROW, "      9 . .  . 8 7  1 . 9\n")
    assert [diagnostic.code for diagnostic in troubles_of(tmp_path, {"book.yaml": text})] == [
        "lost-name",
        "givens-clash",
    ]


@pytest.mark.parametrize(
    ("old", "new"),
    [
        ("  size", "  note: |\n    Bring\n    cake,\n    dear\n    lads,\n    please\n  size"),
        ("  size", "  note: |\n    Row by row:\n    1 2\n    3 4\n    5 6\n    7 8\n  size"),
        ("aaab\n    acbb\n    ccdb\n    cddd", "1112\n    1322\n    3342\n    3444"),
        ("1 . . .\n    . . . .\n    . . . .\n    . . . 4", "1...............  # one line is enough"),
    ],
    ids=["a list of words", "small sums", "regions drawn with digits", "givens in one line"],
)
def test_what_only_looks_like_a_lost_picture_is_left_alone(old: str, new: str, tmp_path: Path) -> None:
    assert old in PATCH
    text = PATCH.replace("givens: |\n    1", "givens: 1") if "#" in new else PATCH
    (entry,) = read(tmp_path, {"book.yaml": HEAD + text.replace(old, new)}).entries
    assert entry.puzzle.grid.called == "irregular"
    assert entry.puzzle.givens[0] == 1


def test_a_row_missing_in_regions_is_not_to_be_drawn_with_dots(tmp_path: Path) -> None:
    """Regions refuse dots: every cell belongs to one."""
    rows = ["aabb", "aabb", "ccdd"]
    picture = "".join(f"    {row}\n" for row in rows)
    book = HEAD + f"- id: a\n  size: 4\n  regions: |\n{picture}  givens: {'.' * 16}\n"
    (found,) = troubles_of(tmp_path, {"book.yaml": book})
    assert found.code == "picture-size"
    assert found.hint == "draw 4 rows of 4, with a letter for each cell"
