"""Sound books: what is read, in which order, with which warnings."""

from __future__ import annotations

from pathlib import Path

import pytest

from bookmaker.manifest import load
from bookmaker.manifest.dates import When
from bookmaker.manifest.entries import Chapter
from bookmaker.phrases.bands import BAND_NAMES
from bookmaker.puzzle.grid import CLASSIC, boxed_grid
from bookmaker.rules.thermometer import Thermometer
from tests.digits import digits_from
from tests.manifest.books import GIVENS, HEAD, read, troubles_of, write

FULL = """\
book:
  title: The Tide
    Tables
  subtitle: puzzles from the quay
  editor: The harbour club
  layout: a5-book
  order: listed
  bands: [Calm, Breeze, Wind, Gale, Storm]
puzzles:
  - id: estuary-2
    title: Estuary
    setter: A. Setter
    shown: 2026-03-14
    permission: by kind permission of the setter
    note: |
      Begin  low.

      Then wait.
    givens: |
      . . . | 8 . 1 | . . .
      . . . | . . . | . 4 3
      5 . . | . . . | . . .
      ------+-------+------
      . . . | . 7 . | 8 . .
      . . . | . . . | 1 . .
      . 2 . | . 3 . | . . .
      ------+-------+------
      6 . . | . . . | . 7 5
      . . 3 | 4 . . | . . .
      . . . | 2 . . | 6 . .
    rules:
      thermometer:
        - r1c1-r1c3 r2c3
        - r9c9–r7c9
  - id: six
    size: 6
    boxes: 3 × 2
    givens: 1..... ...... ...... ...... ...... .....6
"""


def test_everything_that_can_be_said(tmp_path: Path) -> None:
    book = read(tmp_path, {"book.yaml": FULL})
    assert (book.title, book.subtitle, book.editor) == ("The Tide Tables", "puzzles from the quay", "The harbour club")
    assert (book.layout, book.order) == ("a5-book", "listed")
    assert book.layout_place is not None and (book.layout_place.line, book.layout_place.column) == (6, 11)
    assert book.band_names == ("Calm", "Breeze", "Wind", "Gale", "Storm")
    estuary, six = book.entries
    assert (estuary.id, estuary.title, estuary.setter) == ("estuary-2", "Estuary", "A. Setter")
    assert (estuary.shown, estuary.permission) == (When(2026, 3, 14), "by kind permission of the setter")
    assert estuary.note == "Begin low.\n\nThen wait."
    assert (estuary.place.line, estuary.place.column) == (10, 9)
    assert estuary.puzzle.grid == CLASSIC
    assert estuary.puzzle.givens == digits_from(GIVENS)
    assert estuary.puzzle.rules == (Thermometer(((0, 1, 2, 11), (80, 71, 62))),)
    assert six.puzzle.grid == boxed_grid(6, 3, 2)
    assert (six.puzzle.givens[0], six.puzzle.givens[35], sum(six.puzzle.givens)) == (1, 6, 7)
    assert [(t.code, t.place.line) for t in book.warnings] == [("no-permission", 0)]


def test_what_need_not_be_said(tmp_path: Path) -> None:
    book = read(
        tmp_path, {"book.yaml": f"book: {{title: T, editor: }}\npuzzles:\n- id: a\n  note:\n  givens: {GIVENS}\n"}
    )
    assert (book.order, book.layout, book.layout_place, book.band_names, book.chapters) == (
        "difficulty",
        "",
        None,
        BAND_NAMES,
        (),
    )
    (entry,) = book.entries
    assert (entry.title, entry.setter, entry.shown, entry.permission, entry.note) == ("", "", None, "", "")
    assert entry.puzzle.rules == ()


def test_a_permission_line_for_all(tmp_path: Path) -> None:
    book = read(
        tmp_path,
        {"book.yaml": HEAD + f"- id: a\n  givens: {GIVENS}\n- id: b\n  permission: by B\n  givens: {'.' * 81}\n"},
    )
    assert [entry.permission for entry in book.entries] == ["by permission", "by B"]
    assert book.warnings == ()


def test_chapters(tmp_path: Path) -> None:
    puzzle = "  - id: {}\n    givens: " + GIVENS + "\n"
    text = (
        "book:\n  title: T\nchapters:\n- title: Low\n  note: at dawn\n  puzzles:\n"
        + puzzle.format("a")
        + puzzle.format("b")
    )
    text += "- title: High\n  puzzles:\n" + puzzle.format("c")
    book = read(tmp_path, {"book.yaml": text})
    assert book.order == "chapters"
    assert book.chapters == (Chapter("Low", "at dawn"), Chapter("High"))
    assert [(entry.id, entry.chapter) for entry in book.entries] == [("a", 0), ("b", 0), ("c", 1)]


@pytest.mark.parametrize(
    "included",
    [
        f"- id: b\n  givens: {GIVENS}\n- id: c\n  givens: {GIVENS}\n",
        f"puzzles:\n- id: b\n  givens: {GIVENS}\n- id: c\n  givens: {GIVENS}\n",
        "- include: deep/b.yaml\n- include: deep/c.yaml\n",
    ],
    ids=["list", "under puzzles", "further includes"],
)
def test_included_files_stand_where_they_are_named(included: str, tmp_path: Path) -> None:
    files: dict[str, str | bytes] = {
        "book.yaml": HEAD + f"- id: a\n  givens: {GIVENS}\n- include: more/some.yaml\n- id: d\n  givens: {GIVENS}\n",
        "more/some.yaml": included,
        "more/deep/b.yaml": f"id: b\ngivens: {GIVENS}\n",
        "more/deep/c.yaml": f"id: c\ngivens: {GIVENS}\n",
    }
    book = read(tmp_path, files)
    assert [entry.id for entry in book.entries] == ["a", "b", "c", "d"]
    assert Path(book.entries[1].place.file).is_relative_to(tmp_path / "more")


def test_a_folder_and_a_byte_order_mark_and_windows_line_ends(tmp_path: Path) -> None:
    text = (HEAD + f"- id: a\n  givens: {GIVENS}\n").replace("\n", "\r\n")
    book = read(tmp_path, {"book.yaml": b"\xef\xbb\xbf" + text.encode()}, name=".")
    assert (book.title, book.place.file) == ("Tides", str(tmp_path / "book.yaml"))
    assert (book.entries[0].place.line, book.entries[0].place.column) == (5, 7)


@pytest.mark.parametrize("text", [f"id: a\ngivens: {GIVENS}\n", f"- id: a\n  givens: {GIVENS}\n"])
def test_a_file_of_puzzles_alone_is_a_book_too(text: str, tmp_path: Path) -> None:
    book = read(tmp_path, {"estuary.yaml": text}, "estuary.yaml")
    assert (book.title, [entry.id for entry in book.entries]) == ("estuary", ["a"])


def test_a_plain_list(tmp_path: Path) -> None:
    text = f"# from the club\n\n{GIVENS}\n  {GIVENS.replace('0', '.')[::-1]}  Low Tide #2\n{'.' * 81} # none yet\n"
    book = read(tmp_path, {"list.txt": text}, "list.txt")
    assert (book.title, book.order) == ("list", "difficulty")
    assert [(e.id, e.title, e.place.line, e.place.column) for e in book.entries] == [
        ("1", "", 3, 1),
        ("2", "Low Tide #2", 4, 3),
        ("3", "", 5, 1),
    ]
    assert book.entries[0].puzzle.givens == digits_from(GIVENS)
    assert [t.code for t in book.warnings] == ["no-permission"]


def test_the_same_puzzle_under_two_ids_draws_a_warning(tmp_path: Path) -> None:
    dots = GIVENS.replace("0", ".")
    book = read(tmp_path, {"book.yaml": HEAD + f"- id: a\n  givens: {GIVENS}\n- id: b\n  givens: {dots}\n"})
    assert [(t.code, t.place.line) for t in book.warnings] == [("same-puzzle", 7)]


def test_a_puzzle_with_rules_needs_no_givens(tmp_path: Path) -> None:
    book = read(tmp_path, {"book.yaml": HEAD + "- id: a\n  rules:\n    thermometer: r1c1-r1c4\n"})
    assert set(book.entries[0].puzzle.givens) == {0}


def test_grids_of_every_size(tmp_path: Path) -> None:
    def puzzle(size: int) -> str:
        boxes = "" if size in (4, 6, 8, 9, 10, 12, 14, 15, 16) else "  boxes: none\n"
        return f"- id: p{size}\n  size: {size}\n{boxes}  givens: {'.' * (size * size)}\n"

    book = read(tmp_path, {"book.yaml": HEAD + "".join(puzzle(size) for size in range(4, 17))})
    assert [entry.puzzle.grid.size for entry in book.entries] == list(range(4, 17))
    assert all(len(region) == e.puzzle.grid.size for e in book.entries for region in e.puzzle.grid.regions)
    assert [e.puzzle.grid.size for e in book.entries if not e.puzzle.grid.regions] == [5, 7, 11, 13]


def test_letters_for_digits_above_nine(tmp_path: Path) -> None:
    book = read(tmp_path, {"book.yaml": HEAD + f"- id: a\n  size: 16\n  givens: Gg{'.' * 254}\n".replace("Gg", "Ga")})
    assert book.entries[0].puzzle.givens[:3] == (16, 10, 0)


def test_regions_of_any_letters(tmp_path: Path) -> None:
    regions = "    aaab\n    acbb\n    ccdb\n    cddd\n"
    book = read(tmp_path, {"book.yaml": HEAD + f"- id: a\n  size: 4\n  regions: |\n{regions}  givens: {'.' * 16}\n"})
    grid = book.entries[0].puzzle.grid
    assert grid.box is None
    assert grid.region_of == (0, 0, 0, 1, 0, 2, 1, 1, 2, 2, 3, 1, 2, 3, 3, 3)


def test_a_link_to_a_book_includes_from_the_folder_it_stands_in(tmp_path: Path) -> None:
    files: dict[str, str | bytes] = {
        "store/one.yaml": HEAD + "- include: a.yaml\n",
        "desk/a.yaml": f"id: a\ngivens: {GIVENS}\n",
    }
    write(tmp_path, files)
    (tmp_path / "desk" / "book.yaml").symlink_to(tmp_path / "store" / "one.yaml")
    assert [entry.id for entry in load(tmp_path / "desk").entries] == ["a"]


def test_a_manifest_may_end_in_yml(tmp_path: Path) -> None:
    text = HEAD + f"- id: a\n  givens: {GIVENS}\n"
    write(tmp_path, {"book.yml": text})
    assert [entry.id for entry in load(tmp_path).entries] == ["a"]
    write(tmp_path, {"book.yaml": text})
    (found,) = troubles_of(tmp_path, {}, name=".")
    assert (found.code, found.text) == ("two-books", "there is a book.yaml and a book.yml in this folder")
