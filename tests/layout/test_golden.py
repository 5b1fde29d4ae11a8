"""Pages as text, item by item, beside those kept in `golden/`: any change on paper shows as a change of lines.

After a change that was meant: `RENEW_GOLDEN=1 python -m pytest tests/layout/test_golden.py`, and read the difference.
"""

import os
from dataclasses import replace
from hashlib import sha256
from pathlib import Path

import pytest

from bookmaker.book import make_book
from bookmaker.display.dump import dump
from bookmaker.grade.model import Grade, SolvePath
from bookmaker.layout import compose, compose_handout, compose_key, load_layout
from tests.layout.sample_book import sample_manifest, sample_proofs

GOLDEN = Path(__file__).parent / "golden"


def small_book(as_listed=False):
    """Two puzzles, their grades made up, so that only the pages are under test."""
    proofs = [
        replace(proof, grade=Grade(SolvePath((), True), 100.0 * band, band, False))
        for band, proof in enumerate((p for p in sample_proofs() if p.entry.id in ("morning", "stairs")), start=2)
    ]
    return make_book(sample_manifest(), proofs, as_listed=as_listed)


@pytest.mark.parametrize(
    ("name", "make"),
    [
        ("a5-book", lambda: compose(small_book(), load_layout("a5-book"))),
        ("a4-book-two-key", lambda: compose_key(small_book(), load_layout("a4-book-two"))),
        ("a4-handout", lambda: compose_handout(small_book(as_listed=True), load_layout("a4-handout"))),
    ],
)
def test_pages_are_as_they_were(name, make):
    file = GOLDEN / f"{name}.txt"
    drawn = dump(make())
    if os.environ.get("RENEW_GOLDEN"):
        file.write_text(drawn, encoding="utf-8")
    assert drawn.splitlines() == file.read_text(encoding="utf-8").splitlines()


def test_the_whole_book_is_pinned_by_its_hash():
    """The same pages in one line: a difference in a file of a thousand lines can be read over, this can't."""
    layout = load_layout("a5-book")
    found = sha256((dump(compose(small_book(), layout)) + dump(compose_key(small_book(), layout))).encode()).hexdigest()
    file = GOLDEN / "small-book.sha256"
    if os.environ.get("RENEW_GOLDEN"):
        file.write_text(found + "\n", encoding="utf-8")
    assert found == file.read_text(encoding="utf-8").strip()
