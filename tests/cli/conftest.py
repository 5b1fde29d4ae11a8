"""A small book that commands are tried on."""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.cli.running import run
from tests.published import WORKED

GIVENS = WORKED


@pytest.fixture(scope="session")
def folder(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The folder of a book of one puzzle, “worked”, with its PDF files in “printed”."""
    folder = tmp_path_factory.mktemp("book")
    heading = "book: {title: One, permission: made for this test, hints: no}"
    puzzle = f"{{id: worked, title: Worked, givens: '{GIVENS}'}}"
    (folder / "book.yaml").write_text(f"{heading}\npuzzles: [{puzzle}]\n", encoding="utf-8")
    result = run("typeset", folder, "--out", folder / "printed")
    assert result.exit_code == 0, result.output
    return folder
