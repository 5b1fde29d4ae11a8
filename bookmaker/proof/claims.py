"""What is claimed of a solution beside the proven one: a slip in typing that leaves a puzzle unique shows only here.

In: proofs. Out: a diagnostic for each puzzle whose `solution:` is another one, at the first digit that differs, and for
each whose solution does not spell its `word:`.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from bookmaker.manifest.entries import Entry, HiddenWord
from bookmaker.proof.findings import Proof
from bookmaker.rules.common.words.wording import cells_listed
from bookmaker.solve.verdict import Solution
from bookmaker.source.diagnostics import Diagnostic

NAMED = 8
"""Cells named in a message; the others are only counted."""


def wrong_claims(proofs: Iterable[Proof]) -> Iterator[Diagnostic]:
    """What differs, in the order of the proofs; a puzzle without a proven solution has nothing to be compared with."""
    for proof in proofs:
        entry, solution = proof.entry, proof.solution
        if entry.word is not None and solution is not None:
            yield from _misspelt(entry, entry.word, solution)
        claimed = entry.solution
        if claimed is None or solution is None or claimed.digits == solution:
            continue
        grid = entry.puzzle.grid
        cells = [cell for cell in grid.cells if claimed.digits[cell] != solution[cell]]
        named = cells_listed(grid, cells[:NAMED])
        more = f" and in {len(cells) - NAMED} more cells" if len(cells) > NAMED else ""
        said = f"“{entry.title or entry.id}” has one solution, but not the setter's: they differ in {named}{more}"
        hint = "a given or a mark is likely mistyped; compare the puzzle with what the setter sent"
        first, *others = (claimed.place(cell) for cell in cells)
        yield Diagnostic(first, "other-solution", said, hint, tuple(others))


def _misspelt(entry: Entry, word: HiddenWord, solution: Solution) -> Iterator[Diagnostic]:
    grid = entry.puzzle.grid
    reads = "".join(grid.symbol(solution[cell]) for cell in word.cells)
    if reads != word.text:
        said = f"the solution of “{entry.title or entry.id}” reads {reads} in these cells, not {word.text}"
        yield Diagnostic(word.place, "other-word", said, "the word, its cells or a given is likely mistyped")
