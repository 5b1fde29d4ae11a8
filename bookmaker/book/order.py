"""The order of the puzzles in a book.

In: a manifest and the proofs of its puzzles, in any order. Out: the proofs in book order. Puzzles of equal difficulty
keep the order in which the manifest lists them; a puzzle without a grade comes last.
"""

from __future__ import annotations

from collections.abc import Iterable
from math import inf

from bookmaker.manifest.model import Manifest
from bookmaker.proof.model import Proof


def in_book_order(manifest: Manifest, proofs: Iterable[Proof]) -> tuple[Proof, ...]:
    """Proofs by difficulty, as listed, or in chapters each by difficulty, as the manifest says."""
    listed = {entry.id: index for index, entry in enumerate(manifest.entries)}

    def key(proof: Proof) -> tuple[float, ...]:
        difficulty = proof.grade.difficulty if proof.grade else inf
        at = listed[proof.entry.id]
        match manifest.order:
            case "difficulty":
                return difficulty, at
            case "listed":
                return (at,)
            case "chapters":
                return proof.entry.chapter, difficulty, at

    return tuple(sorted(proofs, key=key))
