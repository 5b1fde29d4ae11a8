"""Proof of puzzles: verdict, re-check, count and grade, in one value each.

In: entries of a manifest. Out: `Proof`s. Every solution, found now or kept from an earlier run, is checked by the
rules' own plain predicates before anybody sees it.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from concurrent.futures import Executor, Future
from dataclasses import replace
from time import perf_counter
from typing import TypeGuard

from bookmaker.grade import grade
from bookmaker.manifest.entries import Entry
from bookmaker.proof.cache import NoStore, Store, key_of
from bookmaker.proof.executors import InProcess, ahead_of, done, in_order
from bookmaker.proof.findings import Proof
from bookmaker.proof.kept import believable, checked
from bookmaker.proof.pulse import at_work, stage
from bookmaker.proof.record import Findings, to_text
from bookmaker.rules import keeps_all, problem_of
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.solve import prove, tally
from bookmaker.solve.problem import Problem
from bookmaker.solve.verdict import Several, Solution, Tally, Undecided, Unique, Verdict
from bookmaker.trace import hardest

__all__ = ["EngineFault", "Proof", "find_out", "prove_all", "prove_each", "prove_entry"]

KEEP_AFTER = 16
"""Proofs are put into the store after so many, so that a run that is stopped has kept most of its work."""


class EngineFault(Exception):
    """The engine and a rule's plain predicate disagree: a fault of ours, and the book must not be printed."""


def find_out(puzzle: RuledPuzzle, count: int = 0, with_hardest: bool = True, known: Findings | None = None) -> Findings:
    """Prove and grade one puzzle; with `count`, also count its solutions, up to that many. Its hardest step, which
    takes a fourth of the time, may be left out, and be added to what is `known`."""
    found = known or _found(puzzle, count)
    if not (with_hardest and found.grade and isinstance(found.verdict, Unique)):
        return found
    return replace(found, hardest=hardest(puzzle, found.verdict.solution, found.grade.path))


def _found(puzzle: RuledPuzzle, count: int) -> Findings:
    problem = problem_of(puzzle)
    verdict = prove(problem)
    counted: Tally | None = None
    if count:
        counted = _counted(problem, verdict, count)
    if not isinstance(verdict, Unique):
        return Findings(verdict, None, counted)
    stage("being graded")
    return Findings(verdict, grade(puzzle, verdict.solution), counted)


def prove_entry(entry: Entry, count: int = 0) -> Proof:
    """The proof of one puzzle, found now. Raises EngineFault if a solution does not stand up to the re-check."""
    (proof,) = prove_each(iter([entry]), count)
    return proof


def prove_all(
    entries: Sequence[Entry],
    count: int = 0,
    watch: Callable[[int, int], None] = lambda done, of: None,
    store: Store | None = None,
    executor: Executor | None = None,
) -> tuple[Proof, ...]:
    """Proofs of all entries in their order; `watch` is told how many are done, of how many."""
    proofs = []
    for proof in prove_each(iter(entries), count, store, executor):
        proofs.append(proof)
        watch(len(proofs), len(entries))
    return tuple(proofs)


def prove_each(
    entries: Iterator[Entry],
    count: int = 0,
    store: Store | None = None,
    executor: Executor | None = None,
    with_hardest: bool = True,
) -> Iterator[Proof]:
    """Proofs one after the other, in the order of the entries; entries are taken only a few ahead. They may do without
    the hardest step.

    Findings come from `store` where it has them. What is missing is found out by `executor` if there is one, else here;
    and also here where the answer of a crew is not what it should be.
    """
    kept, workers = store or NoStore(), executor or InProcess()
    fresh: list[tuple[str, str]] = []

    def begin(asked: tuple[Entry, str, Findings | None]) -> Future[tuple[Findings, float]]:
        entry, _, known = asked
        if enough(known):
            return done((known, 0.0))
        return workers.submit(_timed, entry.id, entry.puzzle, count, with_hardest, known)

    def enough(known: Findings | None) -> TypeGuard[Findings]:
        return known is not None and not (with_hardest and _lacks_hardest(known))

    asked = ((entry, key, _known(entry, kept.get(key), count)) for entry, key in _with_keys(entries, count))
    try:
        for (entry, key, known), answer in in_order(asked, begin, ahead_of(workers)):
            here = enough(known) or isinstance(workers, InProcess)
            found, seconds = answer if here else _trusted(entry, answer, count, with_hardest, known)
            if not enough(known):
                if not _sound(entry.puzzle, found):
                    raise EngineFault(f"the solution found for “{entry.id}” breaks a rule; please report this puzzle")
                fresh.append((key, to_text(found)))
                if len(fresh) >= KEEP_AFTER:
                    kept.put(fresh)
                    fresh = []
            yield Proof(entry, found.verdict, found.grade, found.tally, found.hardest, seconds)
    finally:
        if fresh:
            kept.put(fresh)


def _with_keys(entries: Iterator[Entry], count: int) -> Iterator[tuple[Entry, str]]:
    return ((entry, key_of(entry.puzzle, count)) for entry in entries)


def _lacks_hardest(found: Findings) -> bool:
    return found.hardest is None and found.grade is not None and bool(found.grade.path.steps)


def _timed(
    name: str, puzzle: RuledPuzzle, count: int, with_hardest: bool, known: Findings | None
) -> tuple[Findings, float]:
    began = perf_counter()
    with at_work(name):
        return find_out(puzzle, count, with_hardest, known), perf_counter() - began


def _trusted(
    entry: Entry, answer: object, count: int, with_hardest: bool, known: Findings | None
) -> tuple[Findings, float]:
    """What another process has answered, if it is an answer and stands up to a check; else what is found out here."""
    match answer:
        case (Findings() as found, float(seconds)) if believable(
            entry.puzzle, found, count, lambda findings: _sound(entry.puzzle, findings)
        ) and not (with_hardest and _lacks_hardest(found)):
            return found, seconds
    return _timed(entry.id, entry.puzzle, count, with_hardest, known)


def _known(entry: Entry, kept: str | None, count: int) -> Findings | None:
    """The findings in a record that was kept, if it is one and they are sound; what they say of solutions is proven."""
    if kept is None:
        return None
    with at_work(entry.id):
        return checked(entry.puzzle, kept, count, prove, lambda findings: _sound(entry.puzzle, findings))


def _sound(puzzle: RuledPuzzle, findings: Findings) -> bool:
    """Does every solution in the findings keep all rules?"""
    return all(keeps_all(puzzle, solution) for solution in _shown_by(findings.verdict))


def _shown_by(verdict: Verdict) -> Iterator[Solution]:
    match verdict:
        case Unique(solution):
            yield solution
        case Several(first, second):
            yield first
            yield second
        case Undecided(_, found) if found is not None:
            yield found


def _counted(problem: Problem, verdict: Verdict, limit: int) -> Tally:
    """How many solutions there are, up to the limit. What could not be decided is not counted either: that would take
    as long once more, and come to nothing."""
    match verdict:
        case Several():
            stage("being counted out")
            return tally(problem, limit)
        case Undecided(_, found):
            return Tally(1 if found else 0, complete=False)
        case _:
            return Tally(1 if isinstance(verdict, Unique) else 0, complete=True)
