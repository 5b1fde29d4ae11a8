"""The sample book of `tests/layout/sample/book.yaml`, proven once for all tests of a run."""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from functools import cache
from pathlib import Path

from bookmaker.book import Book, make_book
from bookmaker.manifest import load
from bookmaker.manifest.entries import Chapter, Manifest
from bookmaker.manifest.markup import Run
from bookmaker.manifest.publication import Imprint, Publication
from bookmaker.proof import Proof, prove_all
from bookmaker.solve.verdict import NoSolution, Several

SAMPLE = Path(__file__).parent / "sample" / "book.yaml"


@cache
def sample_manifest() -> Manifest:
    return load(SAMPLE)


@cache
def sample_proofs() -> tuple[Proof, ...]:
    return prove_all(sample_manifest().entries)


@cache
def sample_book() -> Book:
    return make_book(sample_manifest(), sample_proofs())


@cache
def full_book() -> Book:
    """The sample with every part that a manifest can ask for."""
    publication = Publication(
        half_title=True,
        imprint=Imprint("Attic Press", "Second edition", date(2026, 3, 14), "978-0-11-000222-4", "© 2026 Attic Press"),
        foreword=((Run("It "), Run("rained", "italic"), Run(", and "), Run("rained", "bold"), Run(".")),) * 3,
        primer=True,
        index=True,
        fold=16,
        link="https://example.org/attic",
    )
    return make_book(replace(sample_manifest(), publication=publication), sample_proofs())


@cache
def chapter_draft() -> Book:
    """A draft in two chapters, two of its puzzles broken."""
    chapters = (Chapter("The Low Rooms", "What stands in the house itself."), Chapter("Under the Roof"))
    proofs = [
        replace(proof, entry=replace(proof.entry, chapter=int(bool(proof.entry.puzzle.rules))))
        for proof in sample_proofs()
    ]
    several = Several(proofs[1].solution or (), proofs[1].solution or ())
    proofs[1] = replace(proofs[1], verdict=several, grade=None)
    proofs[2] = replace(proofs[2], verdict=NoSolution(), grade=None)
    manifest = replace(sample_manifest(), order="chapters", chapters=chapters)
    return make_book(manifest, proofs, draft=True)


def picked(*ids: str) -> Book:
    """A book of a few of the sample's puzzles, in the order named."""
    by_id = {proof.entry.id: proof for proof in sample_proofs()}
    return make_book(sample_manifest(), [by_id[name] for name in ids], as_listed=True)
