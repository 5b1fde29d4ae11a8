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
    places = {entry.id: index for index, entry in enumerate(manifest.entries)}

    def key(proof: Proof) -> tuple[float, ...]:
        effort = proof.grade.effort if proof.grade else inf
        at = places[proof.entry.id]
        match manifest.order:
            case "effort":
                return effort, at
            case "listed":
                return (at,)
            case "chapters":
                chapter = proof.entry.chapter
                listed = any(each.listed for each in manifest.chapters[chapter : chapter + 1])
                return (chapter, at) if listed else (chapter, effort, at)

    return tuple(sorted(proofs, key=key))
