"""The order of the puzzles in a book.

In: a manifest and the proofs of its puzzles, in any order. Out: the proofs in book order. Puzzles of equal difficulty
keep the order in which the manifest lists them; a puzzle without a grade comes last.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from math import inf

from bookmaker.manifest.entries import Entry, Manifest
from bookmaker.proof.findings import Proof


def in_book_order(manifest: Manifest, proofs: Iterable[Proof]) -> tuple[Proof, ...]:
    """Proofs by difficulty, as listed, or in chapters each by difficulty, as the manifest says."""
    place = place_in_book(manifest)
    return tuple(sorted(proofs, key=lambda proof: place(proof.entry, proof.grade.difficulty if proof.grade else inf)))


def place_in_book(manifest: Manifest) -> Callable[[Entry, float], tuple[float, ...]]:
    """What tells where an entry of that difficulty stands: of two the one with the lesser value comes first."""
    places = {entry.id: index for index, entry in enumerate(manifest.entries)}

    def key(entry: Entry, difficulty: float) -> tuple[float, ...]:
        at = places[entry.id]
        match manifest.order:
            case "difficulty":
                return difficulty, at
            case "listed":
                return (at,)
            case "chapters":
                listed = any(each.listed for each in manifest.chapters[entry.chapter : entry.chapter + 1])
                return (entry.chapter, at) if listed else (entry.chapter, difficulty, at)

    return key
