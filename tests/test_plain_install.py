"""What the README's first command installs is enough: nothing that only the tests bring is needed, or missed badly."""

from __future__ import annotations

from pathlib import Path
from typing import Literal

import pikepdf
import pytest

from tests.plain import hidden_modules, plain_distributions, run_plainly


def test_the_environment_is_the_plain_one() -> None:
    assert {"bookmaker", "pypdf", "reportlab", "click"} <= plain_distributions()
    assert {"pytest", "pikepdf", "ortools"} <= hidden_modules()
    assert not {"pypdf", "reportlab", "yaml", "PIL"} & hidden_modules()


@pytest.fixture(scope="module")
def printed(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A small book, begun and printed."""
    folder = tmp_path_factory.mktemp("plain")
    begun = run_plainly(["start", "book"], folder)
    assert begun.returncode == 0, begun.stderr
    run = run_plainly(["typeset", "book", "--out", "printed"], folder)
    assert run.returncode == 0, run.stderr
    return folder / "printed" / "book.pdf"


def test_a_printed_book_is_read_back(printed: Path) -> None:
    run = run_plainly(["preflight", printed, "--against", printed.parent.parent / "book"], printed.parent)
    assert run.returncode == 0, run.stderr
    assert "match the book, with" in run.stdout


@pytest.mark.parametrize("password", ["", "low tide"], ids=["none to open", "one to open"])
@pytest.mark.parametrize("revision", [3, 4, 6], ids=["RC4", "AES-128", "AES-256"])
def test_a_protected_file_is_told_in_plain_words(
    printed: Path, tmp_path: Path, revision: Literal[3, 4, 6], password: str
) -> None:
    aes = revision > 3
    locked = pikepdf.Encryption(owner="editor", user=password, R=revision, aes=aes, metadata=aes)
    with pikepdf.open(printed) as pdf:
        pdf.save(tmp_path / "locked.pdf", encryption=locked)
    run = run_plainly(["preflight", "locked.pdf"], tmp_path)
    assert run.returncode == 1
    assert "locked.pdf: the file is protected" in run.stderr
    assert "presses cannot place protected pages" in run.stderr
    assert "Traceback" not in run.stderr + run.stdout
