"""Whole books, printed in every layout that comes with bookmaker and read back from paper."""

from __future__ import annotations

from pathlib import Path

import pytest

from bookmaker.book import make_book
from bookmaker.ink.pdf import pdf_bytes
from bookmaker.layout import compose, compose_handout, compose_key, layout_names, load_layout
from bookmaker.manifest import load
from bookmaker.manifest.model import Manifest
from bookmaker.preflight import grids_in, inspect
from bookmaker.proof import Proof, prove_all

DEMO = Path(__file__).resolve().parents[2] / "demo_book"


@pytest.fixture(scope="module")
def manifest() -> Manifest:
    return load(DEMO)


@pytest.fixture(scope="module")
def proofs(manifest: Manifest) -> tuple[Proof, ...]:
    return prove_all(manifest)


def errors(file: bytes, proofs: tuple[Proof, ...]) -> list[str]:
    return [trouble.text for trouble in inspect(file, "book.pdf", proofs) if not trouble.warning]


@pytest.mark.parametrize("name", [name for name in layout_names() if "handout" not in name])
def test_books_and_keys(name: str, manifest: Manifest, proofs: tuple[Proof, ...]) -> None:
    book, layout = make_book(manifest, proofs), load_layout(name)
    whole, key = pdf_bytes(compose(book, layout)), pdf_bytes(compose_key(book, layout))
    assert errors(whole, proofs) == []
    assert errors(key, proofs) == []
    ids = sorted(entry.id for entry in manifest.entries)
    assert sorted(grid.id for grid in grids_in(whole) if grid.kind == "grid") == ids
    assert sorted(grid.id for grid in grids_in(whole) if grid.kind == "key") == ids
    assert sorted(grid.id for grid in grids_in(key)) == ids


@pytest.mark.parametrize("name", [name for name in layout_names() if "handout" in name])
def test_handouts(name: str, manifest: Manifest, proofs: tuple[Proof, ...]) -> None:
    sheets = pdf_bytes(compose_handout(make_book(manifest, proofs[:3], as_listed=True), load_layout(name)))
    assert errors(sheets, proofs) == []
    picked = sorted(proof.entry.id for proof in proofs[:3])
    assert sorted(grid.id for grid in grids_in(sheets) if grid.kind == "grid") == picked
    assert sorted(grid.id for grid in grids_in(sheets) if grid.kind == "key") == picked
