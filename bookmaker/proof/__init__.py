"""Proof of a puzzle: verdict, re-check, count and grade, in one value.

In: an entry of a manifest. Out: a `Proof`. Every solution the engine finds is checked again by the rules' own plain
predicates before anybody sees it.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from time import perf_counter

from bookmaker.grade import grade
from bookmaker.manifest.model import Entry, Manifest
from bookmaker.proof.model import Proof
from bookmaker.rules import keeps_all, problem_of
from bookmaker.solve import prove, tally
from bookmaker.solve.verdict import Several, Solution, Tally, Undecided, Unique, Verdict

__all__ = ["EngineFault", "Proof", "prove_all", "prove_entry"]


class EngineFault(Exception):
    """The engine and a rule's plain predicate disagree: a fault of ours, and the book must not be printed."""


def prove_entry(entry: Entry, count: int = 0) -> Proof:
    """Prove and grade one puzzle; with `count`, also count its solutions exactly up to that many.

    Raises EngineFault if a solution does not stand up to the re-check.
    """
    began = perf_counter()
    problem = problem_of(entry.puzzle)
    verdict = prove(problem)
    for solution in _shown_by(verdict):
        if not keeps_all(entry.puzzle, solution):
            raise EngineFault(f"the solution found for “{entry.id}” breaks a rule; please report this puzzle")
    counted: Tally | None = None
    if count:
        counted = tally(problem, count) if isinstance(verdict, Several | Undecided) else _known_tally(verdict)
    graded = grade(entry.puzzle, verdict.solution) if isinstance(verdict, Unique) else None
    return Proof(entry, verdict, graded, counted, perf_counter() - began)


def prove_all(
    manifest: Manifest, count: int = 0, watch: Callable[[int, int], None] = lambda done, of: None
) -> tuple[Proof, ...]:
    """Proofs of all puzzles in the order listed; `watch` is told how many are done, of how many."""
    proofs = []
    for done, entry in enumerate(manifest.entries, start=1):
        proofs.append(prove_entry(entry, count))
        watch(done, len(manifest.entries))
    return tuple(proofs)


def _shown_by(verdict: Verdict) -> Iterator[Solution]:
    match verdict:
        case Unique(solution):
            yield solution
        case Several(first, second):
            yield first
            yield second
        case Undecided(_, found) if found is not None:
            yield found


def _known_tally(verdict: Verdict) -> Tally:
    return Tally(1 if isinstance(verdict, Unique) else 0, complete=True)
