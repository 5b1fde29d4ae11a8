"""Puzzles without a permission line are pointed out in one line for all of them, after what is wrong."""

from __future__ import annotations

from pathlib import Path

import pytest

from bookmaker.manifest import load
from bookmaker.source.diagnostic_text import shown
from bookmaker.source.diagnostics import BookErrors
from tests.manifest.books import GIVENS, write

HEAD = "book:\n  title: Tides\npuzzles:\n"


def puzzles(count: int) -> str:
    return "".join(f"- id: p{at}\n  givens: {at % 9 + 1}{'.' * 80}\n" for at in range(count))


@pytest.mark.parametrize(
    ("count", "said"),
    [
        (1, "“p0” has no “permission:” line"),
        (3, "3 puzzles (p0, p1, p2) have no “permission:” line"),
        (9, "9 puzzles (p0, p1, p2 …) have no “permission:” line"),
    ],
)
def test_one_line_for_all(count: int, said: str, tmp_path: Path) -> None:
    write(tmp_path, {"book.yaml": HEAD + puzzles(count)})
    (line,) = shown(load(tmp_path).warnings).splitlines()
    assert line.startswith(f"{tmp_path / 'book.yaml'}: worth a look: {said}")


def test_a_line_of_the_book_or_of_the_puzzle_is_enough(tmp_path: Path) -> None:
    own = f"- id: own\n  permission: by leave\n  givens: {GIVENS}\n"
    write(tmp_path, {"book.yaml": HEAD + own})
    assert load(tmp_path).warnings == ()
    write(tmp_path, {"book.yaml": HEAD.replace("puzzles", "  permission: ours\npuzzles") + puzzles(2)})
    assert load(tmp_path).warnings == ()


def test_it_comes_after_what_is_wrong(tmp_path: Path) -> None:
    write(tmp_path, {"book.yaml": HEAD + puzzles(2) + "- id: p9\n  givens: 12\n"})
    with pytest.raises(BookErrors) as found:
        load(tmp_path)
    assert [diagnostic.warning for diagnostic in found.value.diagnostics] == [False, True]
    assert len(shown(found.value.diagnostics[1:]).splitlines()) == 1


def test_a_plain_list_has_no_room_for_them(tmp_path: Path) -> None:
    write(tmp_path, {"list.txt": f"{GIVENS}\n"})
    (warning,) = load(tmp_path / "list.txt").warnings
    assert warning.text == "a plain list has no permission lines"
