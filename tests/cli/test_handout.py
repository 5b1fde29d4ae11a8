"""`handout` and `typeset --booklet` as a host types them."""

from __future__ import annotations

from pathlib import Path

import pytest

from bookmaker.preflight import inspect
from tests.cli.running import run


def printed(path: Path) -> list[tuple[int, str]]:
    """Page and kind of every grid in a file."""
    return [(grid.page, grid.kind) for grid in inspect(path.read_bytes(), path.name).printed]


@pytest.mark.parametrize(
    ("key", "grids"),
    [
        (None, [(1, "grid"), (2, "key")]),
        ("last", [(1, "grid"), (2, "key")]),
        ("reverse", [(1, "grid"), (2, "key")]),
        ("foot", [(1, "grid"), (1, "key")]),
        ("none", [(1, "grid")]),
    ],
)
def test_the_key_stands_where_it_is_wanted(
    folder: Path, tmp_path: Path, key: str | None, grids: list[tuple[int, str]]
) -> None:
    file = tmp_path / "sheet.pdf"
    result = run("handout", folder, "--pick", "worked", "--out", file, *(["--key", key] if key else []))
    assert result.exit_code == 0, result.output
    assert printed(file) == grids


def test_a_contest_writes_a_second_file_for_the_marker(folder: Path, tmp_path: Path) -> None:
    result = run(
        "handout", folder, "--pick", "worked", "--out", tmp_path / "evening.pdf", "--contest", "--points", "30"
    )
    assert result.exit_code == 0, result.output
    assert sorted(path.name for path in tmp_path.iterdir()) == ["evening-marker.pdf", "evening.pdf"]
    assert printed(tmp_path / "evening.pdf") == [(1, "grid")]
    assert printed(tmp_path / "evening-marker.pdf") == [(2, "key")]


@pytest.mark.parametrize(
    ("options", "said"),
    [
        (["--contest", "--points", "10,20"], "one puzzle picked, but 2 given"),
        (["--contest", "--points", "many"], "whole numbers from 1 to 999"),
        (["--contest", "--points", "0"], "whole numbers from 1 to 999"),
        (["--points", "10"], "add --contest"),
        (["--contest", "--key", "foot"], "leave out --key"),
    ],
)
def test_options_that_do_not_go_together(folder: Path, tmp_path: Path, options: list[str], said: str) -> None:
    result = run("handout", folder, "--pick", "worked", "--out", tmp_path / "sheet.pdf", *options)
    assert result.exit_code == 2 and said in " ".join(result.stderr.split())
    assert not list(tmp_path.iterdir())


@pytest.mark.parametrize("options", [["--booklet"], ["--layout", "half-letter-booklet"]])
def test_a_booklet_stands_beside_the_book(folder: Path, tmp_path: Path, options: list[str]) -> None:
    result = run("typeset", folder, "--out", tmp_path, *options)
    assert result.exit_code == 0, result.output
    assert sorted(path.name for path in tmp_path.iterdir()) == ["book.pdf", "booklet.pdf", "key.pdf"]
    book, booklet = (inspect((tmp_path / f"{name}.pdf").read_bytes(), name) for name in ("book", "booklet"))
    sheets = -(-book.pages // 4)
    assert booklet.pages == 2 * sheets
    assert f"fold {sheets} sheets" in result.stdout
    assert sorted(grid.kind for grid in booklet.printed) == ["grid", "key"]


def test_a_press_gets_no_booklet(folder: Path, tmp_path: Path) -> None:
    press = ("typeset", folder, "--out", tmp_path, "--edition", "press", "--date", "2026-03-14")
    assert run(*press, "--booklet").exit_code == 2
    assert not list(tmp_path.iterdir())
    result = run(*press, "--layout", "a5-booklet")
    assert result.exit_code == 0, result.output
    assert sorted(path.name for path in tmp_path.iterdir()) == ["book-press.pdf", "key-press.pdf"]
