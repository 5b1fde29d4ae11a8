"""Whole books, printed in every layout that comes with bookmaker and read back from paper."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest

from bookmaker.book import make_book
from bookmaker.ink.pdf import pdf_bytes
from bookmaker.layout import compose, compose_handout, compose_key, layout_names, load_layout
from bookmaker.manifest import load
from bookmaker.manifest.entries import Manifest
from bookmaker.preflight import Report, inspect
from bookmaker.proof import Proof, prove_all
from bookmaker.proof.executors import processes

DEMO = Path(__file__).resolve().parents[2] / "demo_book"


@pytest.fixture(scope="module")
def manifest() -> Manifest:
    return load(DEMO)


@pytest.fixture(scope="module")
def proofs(manifest: Manifest) -> tuple[Proof, ...]:
    return prove_all(manifest.entries)


def sound(file: bytes, proofs: tuple[Proof, ...]) -> Report:
    """What preflight saw in a file that it finds nothing wrong with."""
    report = inspect(file, "book.pdf", proofs)
    assert [diagnostic.text for diagnostic in report.diagnostics if not diagnostic.warning] == []
    return report


def ids(report: Report, kind: str) -> list[str]:
    return sorted(grid.id for grid in report.printed if grid.kind == kind)


def test_workers_read_what_one_reads(manifest: Manifest, proofs: tuple[Proof, ...], tmp_path: Path) -> None:
    """Marks that are found, and those that are not: of one puzzle the book has others than were printed."""
    few = [*(proof for proof in proofs if proof.entry.puzzle.rules)][:4]
    file = tmp_path / "handout.pdf"
    file.write_bytes(pdf_bytes(compose_handout(make_book(manifest, few, as_listed=True), load_layout("a4-handout"))))
    marked = few[0]
    entry = replace(marked.entry, puzzle=replace(marked.entry.puzzle, rules=()))
    for known in (few, [replace(proof, entry=entry) if proof is marked else proof for proof in few]):
        with processes(2) as executor:
            shared = inspect(file, "handout.pdf", known, executor=executor)
        assert shared == inspect(file, "handout.pdf", known) and shared.marks
        assert shared.sound == (known is few)


@pytest.mark.slow
@pytest.mark.parametrize("name", [name for name in layout_names() if "handout" not in name])
def test_books_and_keys(name: str, manifest: Manifest, proofs: tuple[Proof, ...]) -> None:
    book, layout = make_book(manifest, proofs), load_layout(name)
    whole, key = sound(pdf_bytes(compose(book, layout)), proofs), sound(pdf_bytes(compose_key(book, layout)), proofs)
    listed = sorted(entry.id for entry in manifest.entries)
    assert ids(whole, "grid") == ids(whole, "key") == ids(key, "key") == listed
    assert ids(key, "grid") == []


@pytest.mark.parametrize("name", [name for name in layout_names() if "handout" in name])
def test_handouts(name: str, manifest: Manifest, proofs: tuple[Proof, ...]) -> None:
    sheets = sound(
        pdf_bytes(compose_handout(make_book(manifest, proofs[:3], as_listed=True), load_layout(name))), proofs
    )
    assert ids(sheets, "grid") == ids(sheets, "key") == sorted(proof.entry.id for proof in proofs[:3])
