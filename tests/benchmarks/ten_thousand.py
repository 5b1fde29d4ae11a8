"""Are the keys right on paper? Puzzles by the thousand are typeset, read back and solved again by another prover.

    python tests/benchmarks/ten_thousand.py [PUZZLES]

10,000 unless said: classics and every rule kind in turn, on 9×9 and 6×6 grids, from fixed seeds, with few needless
givens, in books of 100. Each book goes from the engine's verdicts to the bytes of its PDF; grades would take most of
the time and are no part of a key, so they are made up. From these bytes alone the grids and keys are read by position;
OR-Tools CP-SAT, from its own words for the rules, then proves that the printed givens have one solution, and that it is
the printed key. Exit code 1 unless there is no difference at all.
"""

from __future__ import annotations

import sys
from collections.abc import Iterator
from dataclasses import replace
from itertools import islice
from pathlib import Path
from random import Random
from time import monotonic

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))

from bookmaker.book import make_book
from bookmaker.crosscheck import second_opinion
from bookmaker.grade.solve_path import Grade, SolvePath
from bookmaker.ink.pdf import pdf_bytes
from bookmaker.layout import compose, load_layout
from bookmaker.manifest.entries import Entry, Manifest
from bookmaker.preflight import PrintedGrid, inspect
from bookmaker.proof import Proof
from bookmaker.puzzle.grid import CLASSIC, boxed_grid
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules import kinds, problem_of
from bookmaker.rules.common.contract import Rule, RuledPuzzle
from bookmaker.solve import prove
from bookmaker.solve.problem import Problem
from bookmaker.solve.verdict import Several, Solution, Unique
from bookmaker.source.diagnostics import Place
from tests.digits import digits_from
from tests.layout.sample_book import sample_manifest
from tests.makers.grow import with_givens
from tests.rules.grids import random_solution
from tests.rules.harness import instances

BOOK = 100
BUDGET = 300
"""Nodes of a search, while a puzzle is made, before it gets another given."""

LAYOUTS = ("a4-book", "a4-book-two", "a4-book-four", "a5-book", "letter-book")
"""One for each book in turn."""


def puzzles() -> Iterator[RuledPuzzle]:
    """Puzzles without end, each with one solution."""
    number = 0
    while True:
        for kind in ("classic", *kinds()):
            number += 1
            rng = Random(f"{kind} {number}")
            grid = CLASSIC if number % 4 else boxed_grid(6, 2, 3)
            rules: tuple[Rule, ...] = ()
            if kind == "classic":
                solution = random_solution(grid, rng)
            else:
                made = next(iter(instances(kind, grid, rng, 1)), None)
                if made is None:
                    continue
                solution, rules = made[0], (made[1],)
            bare: RuledPuzzle = Puzzle(grid, (0,) * len(grid.cells), rules)
            yield replace(bare, givens=settling_givens(problem_of(bare), solution, rng))


def settling_givens(problem: Problem, solution: Solution, rng: Random) -> tuple[int, ...]:
    """A few random givens, and then one after the other where two solutions differ, until there is one only.

    So a puzzle takes a dozen quick proofs; to take every needless given away would take a proof for each cell.
    """
    cells = range(problem.cells)
    shown = set(rng.sample(cells, problem.cells // 6))
    while True:
        verdict = prove(with_givens(problem, [solution[c] if c in shown else 0 for c in cells]), BUDGET)
        match verdict:
            case Unique():
                return tuple(solution[c] if c in shown else 0 for c in cells)
            case Several():
                doubtful = verdict.differing
            case _:  # too long a search: the next given comes from anywhere
                doubtful = tuple(c for c in cells if c not in shown)
        shown.add(rng.choice(sorted(set(doubtful) - shown)))


def differences(manifest: Manifest, layout: str) -> Iterator[str]:
    """What is not right in a book's PDF, a line each."""
    made_up = Grade(SolvePath((), True), 100.0, 2, False)
    proofs = [Proof(entry, prove(problem_of(entry.puzzle)), made_up) for entry in manifest.entries]
    content = pdf_bytes(compose(make_book(manifest, proofs), load_layout(layout)))
    printed = inspect(content, "book.pdf").printed
    grids = {found.id: found for found in printed if found.kind == "grid"}
    keys = {found.id: found for found in printed if found.kind == "key"}
    for entry in manifest.entries:
        if entry.id not in grids or entry.id not in keys:
            yield f"{entry.id}: not printed"
            continue
        puzzle = entry.puzzle
        givens, key = _digits(grids[entry.id]), _digits(keys[entry.id])
        if givens != puzzle.givens:
            yield f"{entry.id}: other givens are printed"
            continue
        found = second_opinion(replace(puzzle, givens=givens))
        if not isinstance(found, Unique) or found.solution != key:
            yield f"{entry.id}: the printed key is {key}, but the other prover says {found}"


def _digits(printed: PrintedGrid) -> tuple[int, ...]:
    return digits_from("".join(symbol or "." for symbol in printed.symbols))


def main() -> int:
    wanted = int(sys.argv[1]) if len(sys.argv) > 1 else 10_000
    source, began, done, wrong = puzzles(), monotonic(), 0, 0
    while done < wanted:
        count = min(BOOK, wanted - done)
        listed = enumerate(islice(source, count), start=done + 1)
        entries = tuple(Entry(f"p{number}", puzzle, Place("list", number)) for number, puzzle in listed)
        layout = LAYOUTS[done // BOOK % len(LAYOUTS)]
        for line in differences(replace(sample_manifest(), entries=entries), layout):
            wrong += 1
            print(line)
        done += count
        print(f"{done} puzzles, {wrong} differences, {monotonic() - began:.0f} s ({layout})", flush=True)
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main())
