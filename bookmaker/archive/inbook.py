"""Look-alikes within one book: the same puzzle twice in disguise is hardly ever meant.

In: proofs. Out: for each puzzle that looks like an earlier one a sentence about it; and the diagnostics of a book.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterator, Sequence
from concurrent.futures import Executor
from dataclasses import dataclass

from bookmaker.archive.likeness import likeness_each
from bookmaker.proof import Proof
from bookmaker.proof.cache import Store
from bookmaker.source.diagnostics import Diagnostic
from bookmaker.symmetry import Move, mapping
from bookmaker.symmetry.moves import words_of
from bookmaker.symmetry.outline import outline_of


@dataclass(frozen=True, slots=True)
class Disguise:
    """Two puzzles of a book that are the same, and the move that carries the first to the second."""

    first: Proof
    second: Proof
    move: Move

    @property
    def words(self) -> str:
        """“the same puzzle as “ebb”, a half turn; digits 1 → 2, 2 → 1”."""
        return f"the same puzzle as “{self.first.entry.id}”: {'; '.join(words_of(self.move))}"


def disguises(
    proofs: Sequence[Proof],
    store: Store,
    executor: Executor | None = None,
    watch: Callable[[int, int], None] = lambda done, of: None,
) -> Iterator[Disguise]:
    """Every puzzle that is the same as an earlier one, in the order of the proofs. Compared are those whose outline
    others share; `watch` is told how many of them are, of how many."""
    solved = [(proof, solution) for proof in proofs if (solution := proof.solution) is not None]
    outlines = [outline_of(proof.entry.puzzle) for proof, _ in solved]
    shared = Counter(outlines)
    alike = [pair for pair, outline in zip(solved, outlines, strict=True) if shared[outline] > 1]
    first: dict[str, Proof] = {}
    asked = ((proof.entry.puzzle, solution) for proof, solution in alike)
    looks = likeness_each(asked, store, executor)
    for done, ((proof, solution), keys) in enumerate(zip(alike, looks, strict=True), start=1):
        watch(done, len(alike))
        before = first.setdefault(keys.puzzle, proof) if keys else proof
        if before is not proof and before.solution is not None:
            move = mapping(before.entry.puzzle, before.solution, proof.entry.puzzle, solution)
            assert move is not None, "equal keys have a move"
            yield Disguise(before, proof, move)


def troubles_of(found: Sequence[Disguise], press: bool) -> Iterator[Diagnostic]:
    """What to say of them: a warning, for the press a mistake. Puzzles that are the same as they stand were told of
    when the manifest was read, so they are told of again only where they stop the book."""
    for disguise in found:
        entry = disguise.second.entry
        if press or disguise.first.entry.puzzle != entry.puzzle:
            said = f"“{entry.id}” is {disguise.words}"
            yield Diagnostic(entry.place, "look-alike", said, "take one of the two out", warning=not press)
