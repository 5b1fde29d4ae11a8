"""The keys of look-alikes, kept between runs with the proofs.

In: puzzles, with their solutions where they are known. Out: their keys, None for a puzzle without exactly one solution.
"""

from __future__ import annotations

import json
from collections.abc import Iterator
from concurrent.futures import Executor, Future

from bookmaker.proof.cache import NoStore, Store, code_version, hash_of
from bookmaker.proof.executors import AHEAD, InProcess, done, in_order
from bookmaker.rules import problem_of
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.solve import prove
from bookmaker.solve.verdict import Solution, Unique
from bookmaker.symmetry import Keys, keys_of

ROOMS = ("puzzle", "solve", "rules", "symmetry", "archive/likeness.py")
"""Any change of code in these makes kept keys stale."""

KEEP_AFTER = 256

Asked = tuple[RuledPuzzle, Solution | None]


def likeness(puzzle: RuledPuzzle, solution: Solution | None = None) -> Keys | None:
    """The keys of a puzzle; it is solved first where its solution is not known."""
    if solution is None:
        verdict = prove(problem_of(puzzle))
        solution = verdict.solution if isinstance(verdict, Unique) else None
    return keys_of(puzzle, solution) if solution is not None else None


def likeness_each(
    asked: Iterator[Asked], store: Store | None = None, executor: Executor | None = None
) -> Iterator[Keys | None]:
    """The keys of each puzzle in turn, from the store where it has them."""
    kept, workers = store or NoStore(), executor or InProcess()
    fresh: list[tuple[str, str]] = []

    def begin(item: tuple[Asked, str, str | None]) -> Future[Keys | None]:
        (puzzle, solution), _, known = item
        found = _from_text(known)
        return done(found) if found else workers.submit(likeness, puzzle, solution)

    items = ((one, key, kept.get(key)) for one in asked for key in [_key_of(one[0])])
    try:
        for (_, key, known), keys in in_order(items, begin, AHEAD if executor else 0):
            if keys is not None and known is None:
                fresh.append((key, json.dumps([keys.puzzle, keys.solution, keys.marks])))
                if len(fresh) >= KEEP_AFTER:
                    kept.put(fresh)
                    fresh = []
            yield keys
    finally:
        if fresh:
            kept.put(fresh)


def _key_of(puzzle: RuledPuzzle) -> str:
    grid = puzzle.grid
    return hash_of(
        "likeness",
        code_version(*ROOMS),
        repr((*grid.shape, grid.symbols, grid.first, puzzle.givens, puzzle.rules)),
    )


def _from_text(text: str | None) -> Keys | None:
    try:
        puzzle, solution, marks = json.loads(text) if text else ("", "", "")
    except ValueError:
        return None
    return Keys(str(puzzle), str(solution), str(marks)) if puzzle else None
