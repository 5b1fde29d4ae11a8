"""One small faulty book for each message: its code, its place and its words."""

from __future__ import annotations

import os
from pathlib import Path

import pytest

from bookmaker.source import file_limits as limits
from tests.manifest.books import GIVENS, HEAD, troubles_of, write

EMPTY = ". " * 81
CHAIN = HEAD + f"- id: a\n  givens: {GIVENS}\n  rules:\n    thermometer:\n"
CAGE = HEAD + f"- id: a\n  givens: {GIVENS}\n  rules:\n    cage:\n"
ROW = "    .........\n"
SMALL = HEAD + "- id: a\n  size: 4\n  givens: ................\n"

# What the book holds; the code, line and column of its one diagnostic; its text.
CASES: dict[str, tuple[str, str, int, int, str]] = {
    # -- the book as a whole
    "unknown key": (HEAD.replace("puzzles", "puzzels"), "unknown-key", 4, 1, "a manifest has no “puzzels”"),
    "unknown key of the book": (
        HEAD.replace("  permission", "  permision") + f"- {{id: a, givens: {GIVENS}}}\n",
        "unknown-key",
        3,
        3,
        "the book has no “permision”",
    ),
    "no title": (
        f"book:\n  editor: E\npuzzles:\n- id: a\n  givens: {GIVENS}\n",
        "missing-key",
        2,
        3,
        "the book needs “title”",
    ),
    "empty title": (
        f"book:\n  title:\npuzzles:\n- id: a\n  givens: {GIVENS}\n",
        "no-value",
        2,
        9,
        "the book's title is left empty",
    ),
    "no puzzles": (HEAD, "no-puzzles", 0, 0, "the book has no puzzles"),
    "not a list": (HEAD + "  seven\n", "not-a-list", 5, 3, "a list of puzzles should stand here"),
    "no manifest": ("just words", "not-a-table", 1, 1, "a manifest should be lines of “name: value”"),
    "unknown order": (
        f"book: {{title: T, order: efort}}\npuzzles:\n- id: a\n  givens: {GIVENS}\n",
        "unknown-word",
        1,
        25,
        "“order” can't be “efort”",
    ),
    "order without chapters": (
        f"book: {{title: T, order: chapters}}\npuzzles:\n- id: a\n  givens: {GIVENS}\n",
        "no-chapters",
        1,
        25,
        "the order is by chapters, but there are none",
    ),
    "chapters in another order": (
        f"book: {{title: T, order: listed}}\nchapters:\n- title: C\n  puzzles:\n  - id: a\n    givens: {GIVENS}\n",
        "order-chapters",
        1,
        25,
        "“order: listed” does not go with chapters",
    ),
    "chapters beside puzzles": (
        HEAD + f"- id: a\n  givens: {GIVENS}\nchapters:\n- title: C\n  puzzles:\n  - id: b\n    givens: {GIVENS}\n",
        "chapters-and-puzzles",
        5,
        1,
        "a book has either chapters or one list of puzzles, not both",
    ),
    "chapter without puzzles": (
        "book:\n  title: T\nchapters:\n- title: C\n",
        "missing-key",
        4,
        3,
        "the chapter needs “puzzles”",
    ),
    "chapter with an empty title": (
        f"book:\n  title: T\nchapters:\n- title:\n  puzzles:\n  - id: a\n    givens: {GIVENS}\n",
        "no-value",
        4,
        9,
        "the chapter's title is left empty",
    ),
    "four bands": (
        f"book: {{title: T, bands: [a, b, c, d]}}\npuzzles:\n- id: a\n  givens: {GIVENS}\n",
        "bands",
        1,
        25,
        "“bands” should name five bands, not 4",
    ),
    "two bands alike": (
        f"book: {{title: T, bands: [a, b, c, d, a]}}\npuzzles:\n- id: a\n  givens: {GIVENS}\n",
        "bands",
        1,
        38,
        "two bands are called “a”",
    ),
    "a table for text": (
        f"book:\n  title: {{Tides: high}}\npuzzles:\n- id: a\n  givens: {GIVENS}\n",
        "not-text",
        2,
        10,
        "“title” should be a piece of text",
    ),
    "long title": (
        f"book:\n  title: {'x' * 201}\npuzzles:\n- id: a\n  givens: {GIVENS}\n",
        "text-long",
        2,
        10,
        "“title” has 201 characters; there is room for 200",
    ),
    "bell in a title": (
        f'book:\n  title: "ab\\ac"\npuzzles:\n- id: a\n  givens: {GIVENS}\n',
        "stray-character",
        2,
        13,
        "“title” holds a character that cannot be printed (U+0007)",
    ),
    # -- a puzzle
    "unknown key of a puzzle": (
        HEAD + f"- id: a\n  given: {GIVENS}\n  rules: {{windows: yes}}\n",
        "unknown-key",
        6,
        3,
        "the puzzle has no “given”",
    ),
    "no id": (HEAD + f"- givens: {GIVENS}\n", "missing-key", 5, 3, "the puzzle needs “id”"),
    "bad id": (HEAD + f"- id: a b\n  givens: {GIVENS}\n", "bad-id", 5, 7, "“a b” cannot be an id"),
    "umlaut in an id": (HEAD + f"- id: Möwe 2\n  givens: {GIVENS}\n", "bad-id", 5, 7, "“Möwe 2” cannot be an id"),
    "empty id": (HEAD + f"- id:\n  givens: {GIVENS}\n", "no-value", 5, 6, "“id” is left empty"),
    "same id": (
        HEAD + f"- id: Tide\n  givens: {GIVENS}\n- id: tide\n  givens: {EMPTY}\n",
        "same-id",
        7,
        7,
        "two puzzles have the id “tide”; the first is on line 5",
    ),
    "a date backwards": (
        HEAD + f"- id: a\n  shown: 14.3.2026\n  givens: {GIVENS}\n",
        "bad-date",
        6,
        10,
        "“14.3.2026” is not a date",
    ),
    "no such day": (
        HEAD + f"- id: a\n  shown: 2026-02-30\n  givens: {GIVENS}\n",
        "bad-date",
        6,
        10,
        "there is no such day as 2026-02-30",
    ),
    "no givens": (HEAD + "- id: a\n", "missing-key", 5, 3, "the puzzle needs “givens”"),
    "a puzzle of one word": (
        HEAD + "- estuary\n",
        "not-a-table",
        5,
        3,
        "the puzzle should be lines of “name: value”",
    ),
    # -- the grid
    "size in words": (
        HEAD + "- id: a\n  size: nine\n",
        "not-a-number",
        6,
        9,
        "“size” should be a whole number, not “nine”",
    ),
    "size too large": (HEAD + "- id: a\n  size: 26\n", "out-of-range", 6, 9, "“size” should be from 4 to 25, not 26"),
    "size beyond all numbers": (
        HEAD + f"- id: a\n  size: {'9' * 5000}\n",
        "not-a-number",
        6,
        9,
        f"“size” should be a whole number, not “{'9' * 36} …”",
    ),
    "boxes that don't fit": (
        HEAD + f"- id: a\n  size: 6\n  boxes: 3x3\n  givens: {'.' * 36}\n",
        "bad-boxes",
        7,
        10,
        "3×3 boxes do not fill a 6×6 grid",
    ),
    "boxes in words": (
        HEAD + f"- id: a\n  boxes: square\n  givens: {GIVENS}\n",
        "bad-boxes",
        6,
        10,
        "“square” is not a shape of box",
    ),
    "no usual boxes": (
        HEAD + f"- id: a\n  size: 5\n  givens: {'.' * 25}\n",
        "no-boxes",
        6,
        9,
        "no box fits a 5×5 grid",
    ),
    "boxes and regions": (
        HEAD + "- id: a\n  size: 4\n  boxes: 2x2\n  regions: aabbaabbccddccdd\n  givens: ................\n",
        "boxes-and-regions",
        7,
        10,
        "the grid has either boxes or regions, not both",
    ),
    "region in pieces": (
        SMALL + "  regions: |\n    aabb\n    abba\n    ccdd\n    ccdd\n",
        "region-apart",
        10,
        8,
        "region a is in pieces: r2c4 does not touch the rest of it",
    ),
    "region with a dot": (
        SMALL + "  regions: |\n    aabb\n    aabb\n    ccdd\n    ccd.\n",
        "region-open",
        12,
        8,
        "every cell belongs to a region, and this one shows a dot",
    ),
    "regions as a list": (
        SMALL + "  regions: [aabb, aabb, ccdd, ccdd]\n",
        "not-a-picture",
        8,
        12,
        "“regions” should be a picture of letters",
    ),
    # -- the givens
    "short row": (
        HEAD + "- id: a\n  givens: |\n" + ROW * 8 + "    ........\n",
        "picture-size",
        15,
        5,
        "in the givens, row 9 has 8 cells and should have 9",
    ),
    "a row too few": (
        HEAD + "- id: a\n  givens: |\n" + ROW * 8,
        "picture-size",
        14,
        5,
        "in the givens, the number of rows is 8 and should be 9",
    ),
    "another size": (
        HEAD + "- id: a\n  size: 6\n  givens: |\n" + ROW * 8,
        "picture-size",
        8,
        5,
        "in the givens, each row has 9 cells and should have 6",
    ),
    "one line too short": (
        HEAD + f"- id: a\n  givens: {GIVENS[1:]}\n",
        "picture-size",
        6,
        11,
        "in the givens, the number of cells is 80 and should be 81",
    ),
    "digit too large": (
        HEAD + f"- id: a\n  size: 6\n  givens: '{'.' * 20}7{'.' * 15}'\n",
        "digit-large",
        7,
        32,
        "7 is too large for a 6×6 grid",
    ),
    "not a digit": (HEAD + f"- id: a\n  givens: {GIVENS[:80]}?\n", "not-a-digit", 6, 91, "“?” is not a digit"),
    "the same stray letter three times": (
        HEAD + f"- id: a\n  givens: {GIVENS[:78]}xxx\n",
        "not-a-digit",
        6,
        89,
        "“x” is not a digit",
    ),
    "clash in a column": (
        HEAD + "- id: a\n  givens: |\n    1........\n" + ROW * 7 + "    1........\n",
        "givens-clash",
        7,
        5,
        "givens clash: column 1 has 1 twice (r1c1 and r9c1)",
    ),
    "clash in a box": (
        HEAD + "- id: a\n  givens: |\n    1........\n    .1.......\n" + ROW * 7,
        "givens-clash",
        7,
        5,
        "givens clash: the top left box has 1 twice (r1c1 and r2c2)",
    ),
    "clash on windows": (
        HEAD
        + "- id: a\n  givens: |\n"
        + ROW
        + "    .1.......\n"
        + ROW
        + "    ...1.....\n"
        + ROW * 5
        + "  rules: {windows: yes}\n",
        "givens-clash",
        8,
        6,
        "givens clash: the window at r2c2 has 1 twice (r2c2 and r4c4)",
    ),
    "givens as a list": (
        HEAD + "- id: a\n  givens:\n    - 12\n",
        "not-a-picture",
        7,
        5,
        "“givens” should be a picture of the grid",
    ),
    # -- rules
    "unknown rule": (
        HEAD + f"- id: a\n  givens: {GIVENS}\n  rules:\n    thermometers: r1c1-r1c4\n",
        "unknown-rule",
        8,
        5,
        "there is no rule kind “thermometers”",
    ),
    "rules as a list": (
        HEAD + f"- id: a\n  givens: {GIVENS}\n  rules: [windows]\n",
        "not-a-table",
        7,
        10,
        "“rules” should be lines of “kind: what is marked”",
    ),
    "off the grid": (
        CHAIN + "    - r1c1 r1c2-r1c10\n",
        "off-grid",
        9,
        17,
        "r1c10 is off the grid, which has 9 rows and 9 columns",
    ),
    "row nought": (
        CHAIN + "    - r0c5 r1c5\n",
        "off-grid",
        9,
        7,
        "r0c5 is off the grid, which has 9 rows and 9 columns",
    ),
    "not a cell": (CHAIN + "    - r1c1 b2\n", "not-a-cell", 9, 12, "“b2” is not a cell"),
    "a number beyond all rows": (
        CHAIN + f"    - r{'1' * 5000}c1\n",
        "not-a-cell",
        9,
        7,
        f"“r{'1' * 35} …” is not a cell",
    ),
    "crooked run": (CHAIN + "    - r1c1 r1c2-r3c5\n", "crooked-run", 9, 12, "“r1c2-r3c5” is not a straight run"),
    "a chain that jumps": (
        CHAIN + "    - r1c1 r1c3\n",
        "chain-jumps",
        9,
        7,
        "the thermometer jumps from r1c1 to r1c3, which do not touch",
    ),
    "a chain that returns": (
        CHAIN + "    - r1c1-r1c3 r2c2 r1c1\n",
        "chain-returns",
        9,
        7,
        "the thermometer visits r1c1 twice",
    ),
    # -- files
    "tab": ("book:\n\ttitle: T\n", "tab", 2, 1, "there is a tab here where spaces are needed"),
    "same key twice": (
        HEAD + f"- id: a\n  givens: {GIVENS}\n  id: b\n",
        "repeated-key",
        7,
        3,
        "“id” appears twice; the first is on line 5",
    ),
    "empty file": ("", "empty-file", 0, 0, "the file is empty"),
    "include that is missing": (
        HEAD + "- include: seven.yaml\n",
        "no-file",
        5,
        12,
        "there is no file “FOLDER/seven.yaml”",
    ),
    "include in a missing folder": (
        HEAD + "- include: more/seven.yaml\n",
        "no-file",
        5,
        12,
        "there is no folder “FOLDER/more”",
    ),
    "include that leaves": (
        HEAD + "- include: ../other/book.yaml\n",
        "include-outside",
        5,
        12,
        "“../other/book.yaml” is not inside the book's folder",
    ),
    "absolute include": (
        HEAD + "- include: /etc/passwd\n",
        "include-outside",
        5,
        12,
        "“/etc/passwd” is not inside the book's folder",
    ),
    "include from a drive": (
        HEAD + "- include: C:\\books\\a.yaml\n",
        "include-outside",
        5,
        12,
        "“C:\\books\\a.yaml” is not inside the book's folder",
    ),
    "backslashes": (HEAD + "- include: more\\a.yaml\n", "include-name", 5, 12, "“more\\a.yaml” has backslashes"),
    "include of itself": (
        HEAD + "- include: book.yaml\n",
        "include-loop",
        5,
        12,
        "“book.yaml” includes itself, directly or by way of others",
    ),
    "include of nothing": (HEAD + "- include:\n", "no-value", 5, 11, "“include” names no file"),
    "include with company": (
        HEAD + f"- id: a\n  include: a.yaml\n- id: b\n  givens: {GIVENS}\n",
        "unknown-key",
        5,
        3,
        "“id” cannot stand beside “include”",
    ),
}


@pytest.mark.parametrize("name", CASES)
def test_each_slip_has_its_message(name: str, tmp_path: Path) -> None:
    book, code, line, column, text = CASES[name]
    write(tmp_path, {"a.yaml": f"- id: z\n  givens: {EMPTY}\n"})
    found = troubles_of(tmp_path, {"book.yaml": book})
    said = [(t.code, t.place.line, t.place.column, t.text.replace(str(tmp_path), "FOLDER")) for t in found]
    assert said == [(code, line, column, text)]
    assert found[0].place.file == str(tmp_path / "book.yaml")


def _region_sizes(tmp_path: Path, rows: str) -> list[tuple[str, str, list[tuple[int, int]]]]:
    """What is said of a picture whose first row is line 9 of the book, with each place pointed at."""
    picture = "".join(f"    {row}\n" for row in rows.split())
    found = troubles_of(tmp_path, {"book.yaml": SMALL + "  regions: |\n" + picture})
    assert {t.code for t in found} == {"region-size"}
    return [(t.text, t.hint, [(place.line, place.column) for place in (t.place, *t.also)]) for t in found]


@pytest.mark.parametrize(
    ("rows", "text", "hint", "marked"),
    [
        ("dabb aabb ccdd ccdd", "region d has 5 cells and region a has 3", "r1c1 is likely a slip for a", [(9, 5)]),
        ("xabb aabb ccdd ccdd", "region x has 1 cell and region a has 3", "r1c1 is likely a slip for a", [(9, 5)]),
        (
            "aabb aabb cccd ccdd",
            "region c has 5 cells and region d has 3",
            "one of the cells marked is likely a slip for d",
            [(11, 7), (12, 6)],
        ),
    ],
)
def test_a_letter_of_the_regions_that_is_wrong_has_one_message(
    rows: str, text: str, hint: str, marked: list[tuple[int, int]], tmp_path: Path
) -> None:
    assert _region_sizes(tmp_path, rows) == [(f"{text}; each region should have 4", hint, marked)]


def test_regions_of_the_wrong_size_point_at_their_cells(tmp_path: Path) -> None:
    hint = "the picture needs 4 letters, 4 cells each"
    assert _region_sizes(tmp_path, "aabb aaab cccd cccd") == [
        (f"region {letter} has {count} cells and should have 4", hint, cells)
        for letter, count, cells in (
            ("a", 5, [(9, 5), (9, 6), (10, 5), (10, 6), (10, 7)]),
            ("b", 3, [(9, 7), (9, 8), (10, 8)]),
            ("c", 6, [(11, 5), (11, 6), (11, 7), (12, 5), (12, 6), (12, 7)]),
            ("d", 2, [(11, 8), (12, 8)]),
        )
    ]


def test_two_regions_of_the_wrong_size_that_no_one_cell_mends_are_told_apart(tmp_path: Path) -> None:
    told = [text for text, _, _ in _region_sizes(tmp_path, "aaaa abbb cccb dddc")]
    assert told == ["region a has 5 cells and should have 4", "region d has 3 cells and should have 4"]


def test_a_cage_total_that_cannot_be(tmp_path: Path) -> None:
    """Two cells of a cage hold different digits, so they add up to 3 to 17 on a 9×9 grid (checks.md)."""
    found = troubles_of(tmp_path, {"book.yaml": CAGE + "    - {cells: r1c1 r1c2, total: 18}\n"})
    assert [(t.place.line, t.place.column) for t in found] == [
        (9, 1 + "    - {cells: r1c1 r1c2, total: 18}".index("18"))
    ]
    assert "18" in found[0].text


def test_every_trouble_is_reported_at_once_in_file_order(tmp_path: Path) -> None:
    book = HEAD + "- id: a b\n  size: 99\n- include: x.yaml\n- id: c\n  shown: now\n  givens: 5\n  colour: red\n"
    found = troubles_of(tmp_path, {"book.yaml": book, "x.yaml": "- id: q\n  givens: x\n"})
    assert [(Path(t.place.file).name, t.place.line, t.code) for t in found] == [
        ("book.yaml", 5, "bad-id"),
        ("book.yaml", 6, "out-of-range"),
        ("book.yaml", 9, "bad-date"),
        ("book.yaml", 10, "picture-size"),
        ("book.yaml", 11, "unknown-key"),
        ("x.yaml", 2, "picture-size"),
    ]


def test_clash_of_three_is_said_once(tmp_path: Path) -> None:
    givens = "5..5....5" + "." * 72
    found = troubles_of(tmp_path, {"book.yaml": HEAD + f"- id: a\n  givens: {givens}\n"})
    assert [t.text for t in found] == ["givens clash: row 1 has 5 three times (r1c1, r1c4 and r1c9)"]


# -- files


def test_text_in_another_encoding(tmp_path: Path) -> None:
    found = troubles_of(tmp_path, {"book.yaml": "book:\n  title: café\n".encode("latin-1")})
    assert [(t.code, t.place.line, t.place.column) for t in found] == [("not-utf-8", 2, 13)]
    assert "Save as" in found[0].hint


def test_sixteen_bit_text(tmp_path: Path) -> None:
    found = troubles_of(tmp_path, {"book.yaml": "book:\n  title: T\n".encode("utf-16")})
    assert [(t.code, t.text) for t in found] == [("not-utf-8", "the file is saved as UTF-16, not as UTF-8")]


def test_swelling_file(tmp_path: Path) -> None:
    lines = ["a: &a [x, x, x, x, x, x, x, x, x]"]
    lines += [f"{b}: &{b} [{', '.join(['*' + a] * 9)}]" for a, b in zip("abcdefgh", "bcdefghi", strict=True)]
    found = troubles_of(tmp_path, {"book.yaml": "\n".join(lines)})
    assert [(t.code, t.place.line, t.place.column) for t in found] == [("alias", 1, 4)]


def test_a_link_out_of_the_folder(tmp_path: Path) -> None:
    write(tmp_path, {"else/secret.yaml": f"- id: a\n  givens: {GIVENS}\n", "book/x": ""})
    (tmp_path / "book" / "more").symlink_to(tmp_path / "else")
    found = troubles_of(tmp_path / "book", {"book.yaml": HEAD + "- include: more/secret.yaml\n"})
    assert [(t.code, t.place.line) for t in found] == [("include-outside", 5)]
    assert "link" in found[0].text


def test_a_link_that_goes_in_circles(tmp_path: Path) -> None:
    (tmp_path / "a.yaml").symlink_to(tmp_path / "b.yaml")
    (tmp_path / "b.yaml").symlink_to(tmp_path / "a.yaml")
    found = troubles_of(tmp_path, {"book.yaml": HEAD + "- include: a.yaml\n"})
    assert [(t.code, t.place.line) for t in found] == [("no-file", 5)]


def test_a_circle_of_files(tmp_path: Path) -> None:
    files: dict[str, str | bytes] = {
        "book.yaml": HEAD + "- include: more/a.yaml\n",
        "more/a.yaml": "- include: b.yaml\n",
        "more/b.yaml": "- include: a.yaml\n",
    }
    found = troubles_of(tmp_path, files)
    assert [(Path(t.place.file).name, t.code) for t in found] == [("b.yaml", "include-loop")]


def test_the_same_file_twice(tmp_path: Path) -> None:
    files: dict[str, str | bytes] = {
        "book.yaml": HEAD + "- include: a.yaml\n" * 2,
        "a.yaml": f"- id: a\n  givens: {GIVENS}\n",
    }
    found = troubles_of(tmp_path, files)
    assert [(t.code, t.place.line) for t in found] == [("include-twice", 6)]
    assert found[0].text.endswith(":5:12")


def test_files_in_files_in_files(tmp_path: Path) -> None:
    depth = limits.INCLUDE_DEPTH
    files: dict[str, str | bytes] = {f"{i}.yaml": f"- include: {i + 1}.yaml\n" for i in range(depth + 1)}
    files |= {"book.yaml": HEAD + "- include: 0.yaml\n", f"{depth + 1}.yaml": f"- id: a\n  givens: {GIVENS}\n"}
    found = troubles_of(tmp_path, files)
    assert [(Path(t.place.file).name, t.code) for t in found] == [(f"{depth - 1}.yaml", "include-deep")]


def test_limits(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("bookmaker.source.textfile.FILE_BYTES", 1000)
    assert [t.code for t in troubles_of(tmp_path, {"book.yaml": "#" * 1001})] == ["file-large"]
    monkeypatch.setattr(limits, "FILES", 2)
    files: dict[str, str | bytes] = {f"{i}.yaml": f"- id: p{i}\n  givens: {GIVENS}\n" for i in range(2)}
    files["book.yaml"] = HEAD + "- include: 0.yaml\n- include: 1.yaml\n"
    assert [t.code for t in troubles_of(tmp_path, files)] == ["include-many"]
    monkeypatch.setattr(limits, "PUZZLES", 1)
    book = HEAD + f"- id: a\n  givens: {GIVENS}\n- id: b\n  givens: {EMPTY}\n"
    assert [t.code for t in troubles_of(tmp_path, {"book.yaml": book})] == ["many-puzzles"]


def test_a_folder_without_a_book(tmp_path: Path) -> None:
    found = troubles_of(tmp_path, {"x": ""}, name=".")
    assert [(t.code, t.text) for t in found] == [("no-file", "there is no book.yaml in this folder")]


def test_something_that_is_not_an_ordinary_file(tmp_path: Path) -> None:
    os.mkfifo(tmp_path / "pipe.yaml")
    found = troubles_of(tmp_path, {"book.yaml": HEAD + "- include: pipe.yaml\n"})
    assert [(t.code, t.place.line) for t in found] == [("unreadable", 5)]


# -- plain lists


@pytest.mark.parametrize(
    ("text", "code", "line", "column"),
    [
        ("# nothing\n\n", "empty-file", 0, 0),
        (f"{GIVENS}\n{GIVENS[1:]} Short\n", "list-line", 2, 1),
        (f"{GIVENS}\n  {GIVENS[:80]}x\n", "not-a-digit", 2, 83),
        ("11" + "." * 79, "givens-clash", 1, 1),
        ("book:\n  title: T", "no-list", 0, 0),
    ],
)
def test_slips_in_a_plain_list(text: str, code: str, line: int, column: int, tmp_path: Path) -> None:
    found = troubles_of(tmp_path, {"list.txt": text}, "list.txt")
    assert (found[0].code, found[0].place.line, found[0].place.column) == (code, line, column)


@pytest.mark.parametrize("text", ["Dear table,\nbring pencils.\n\nThe Pilot\n", "%PDF-1.4\n1 0 obj\n"])
def test_a_file_that_is_no_list_at_all_is_told_once(tmp_path: Path, text: str) -> None:
    (found,) = troubles_of(tmp_path, {"list.txt": text}, "list.txt")
    assert (found.code, found.place.line) == ("no-list", 0)


def test_an_id_is_suggested(tmp_path: Path) -> None:
    (found,) = troubles_of(tmp_path, {"book.yaml": HEAD + f"- id: Möwe_2 \n  givens: {GIVENS}\n"})
    assert "such as “Mowe-2”" in found.hint


def test_a_stray_letter_is_shown_wherever_it_stands(tmp_path: Path) -> None:
    (found,) = troubles_of(tmp_path, {"book.yaml": HEAD + f"- id: a\n  givens: {GIVENS[:78]}xxx\n"})
    assert [place.column for place in found.also] == [90, 91]
