"""The same book gives the same bytes: wherever it lies, whoever prints it, however many help."""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
from hashlib import sha256
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parent.parent
BOOKMAKER = "from bookmaker.cli import main; main()"
BOOK = ROOT / "tests" / "layout" / "sample" / "book.yaml"

PRINTINGS = (
    ("book.yaml", "printed", {"LC_ALL": "C", "TZ": "UTC", "PYTHONHASHSEED": "1"}, 1),
    (
        "a böok/in a far folder/book.yaml",
        "näher",
        {"LC_ALL": "C.UTF-8", "TZ": "Pacific/Chatham", "PYTHONHASHSEED": "77", "COLUMNS": "40"},
        2,
    ),
)
COMMANDS = (
    ("typeset", "--booklet", "--contact"),
    ("typeset", "--edition", "press", "--date", "2026-03-14", "--layout", "a5-book"),
    ("typeset", "--edition", "ebook", "--date", "2026-03-14", "--text", "--braille"),
)


@pytest.fixture(scope="module")
def printings(tmp_path_factory: pytest.TempPathFactory) -> list[dict[str, str]]:
    """For each printing the hash of each file, every file from proofs made afresh."""
    found = []
    for number, (place, out, environment, workers) in enumerate(PRINTINGS):
        folder = tmp_path_factory.mktemp(f"printing{number}")
        book = folder / place
        book.parent.mkdir(parents=True, exist_ok=True)
        shutil.copy(BOOK, book)
        clean = {key: value for key, value in os.environ.items() if not key.startswith(("LC_", "LANG", "PYTHON"))}
        settings = {**clean, "PYTHONPATH": str(ROOT), "BOOKMAKER_CACHE": str(folder / "cache"), **environment}
        for name, *options in COMMANDS:
            subprocess.run(
                [sys.executable, "-c", BOOKMAKER, name, str(book), "--out", out, "--workers", str(workers), *options],
                cwd=folder,
                env=settings,
                check=True,
                capture_output=True,
            )
        files = sorted((folder / out).iterdir())
        found.append({file.name: sha256(file.read_bytes()).hexdigest() for file in files})
    return found


@pytest.mark.slow
def test_folders_hash_seeds_locales_time_zones_and_workers_make_no_difference(printings: list[dict[str, str]]) -> None:
    names = ["book-braille.txt", "book-press.pdf", "book.epub", "book.html", "book.pdf", "book.txt", "booklet.pdf"]
    names += ["contact.png", "key-press.pdf", "key.pdf"]
    first, second = printings
    assert sorted(first) == names
    assert first == second
