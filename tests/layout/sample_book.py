"""The sample book of `tests/layout/sample/book.yaml`, proven once for all tests of a run."""

from __future__ import annotations

from functools import cache
from pathlib import Path

from bookmaker.book import Book, make_book
from bookmaker.manifest import load
from bookmaker.manifest.model import Manifest
from bookmaker.proof import Proof, prove_all

SAMPLE = Path(__file__).parent / "sample" / "book.yaml"


@cache
def sample_manifest() -> Manifest:
    return load(SAMPLE)


@cache
def sample_proofs() -> tuple[Proof, ...]:
    return prove_all(sample_manifest())


@cache
def sample_book() -> Book:
    return make_book(sample_manifest(), sample_proofs())


def picked(*ids: str) -> Book:
    """A book of a few of the sample's puzzles, in the order named."""
    by_id = {proof.entry.id: proof for proof in sample_proofs()}
    return make_book(sample_manifest(), [by_id[name] for name in ids], as_listed=True)
