"""The order of the puzzles in a book.

In: a manifest and the proofs of its puzzles, in any order. Out: the proofs in book order. Puzzles of equal effort keep
the order in which the manifest lists them; a puzzle without a grade comes last.
"""

from __future__ import annotations

from collections.abc import Iterable
from math import inf

from bookmaker.manifest.model import Manifest
from bookmaker.proof.model import Proof


def in_book_order(manifest: Manifest, proofs: Iterable[Proof]) -> tuple[Proof, ...]:
    """Proofs by effort, as listed, or in chapters each by effort, as the manifest says."""
    listed = {entry.id: index for index, entry in enumerate(manifest.entries)}

    def key(proof: Proof) -> tuple[float, ...]:
        effort = proof.grade.effort if proof.grade else inf
        at = listed[proof.entry.id]
        match manifest.order:
            case "effort":
                return effort, at
            case "listed":
                return (at,)
            case "chapters":
                chapter = proof.entry.chapter
                return (chapter, at) if manifest.chapters[chapter].listed else (chapter, effort, at)

    return tuple(sorted(proofs, key=key))
