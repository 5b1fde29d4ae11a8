"""Is every strike right? All techniques walked over thousands of puzzles, set against the proven solutions.

usage: python tests/benchmarks/grade_soundness.py [COUNT] [SEED]

At each stuck position of a puzzle's path all techniques of the ladder are asked, not only those of the lowest rung.
Nothing they strike may be in the solution, and each must still stand. Each what-if is replayed by a plain follower of
its own (sets of digits; rounds of singles and marks), which must end in a contradiction after as many rounds. COUNT
puzzles in all (2,000): a quarter each with marks of every rule kind in turn, and from the thermometers and cages of the
corpus; the rest classics of ../shared/data, the hard ones first, or of the corpus where there are none. Exits with 1 at
a fault.
"""

from __future__ import annotations

import sys
from collections import Counter
from collections.abc import Iterator
from pathlib import Path
from random import Random
from time import perf_counter

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))

from bookmaker.puzzle.grid import CLASSIC
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules import kinds, problem_of
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.solve import prove
from bookmaker.solve.verdict import Solution, Unique
from tests.digits import digits_from
from tests.grade.sound import faults
from tests.makers.corpus import BACK, corpus
from tests.makers.grow import empty_grid, needed_givens, random_solution
from tests.rules.harness import cases_of, lay

DATA = ROOT.parent / "shared" / "data"


def classics(count: int, seed: int) -> Iterator[tuple[RuledPuzzle, Solution]]:
    """Classics that need more than looking, then everyday ones; of the corpus where the files are absent or used up."""
    texts: list[str] = []
    if DATA.exists():
        texts += (DATA / "classic-hard.txt").read_text().split()
        texts += (DATA / "classic-17.txt").read_text().split()
        texts += [line.split("\t")[1] for line in (DATA / "solving-times.tsv").read_text().splitlines()[1:]]
    first = seed * count % max(len(texts), 1)
    for text in texts[first : first + count]:
        puzzle: RuledPuzzle = Puzzle(CLASSIC, digits_from(text))
        verdict = prove(problem_of(puzzle))
        assert isinstance(verdict, Unique), text
        yield puzzle, verdict.solution
    yield from corpus("classic", max(count - len(texts), 0), seed=3 + seed)


def of_every_kind(count: int, seed: int) -> Iterator[tuple[RuledPuzzle, Solution]]:
    """Puzzles with marks read off a solution, a kind after the other and from the first again; some givens put back."""
    names = sorted(kinds())
    for number in range(count):
        kind = names[number % len(names)]
        rng = Random(f"{kind} {seed} {number}")
        cases = cases_of(kind)
        grow = getattr(cases, "grow", lambda grid, rng: random_solution(empty_grid(grid), rng))
        rule = None
        while rule is None:
            solution = grow(CLASSIC, rng)
            rule = None if solution is None else lay(kind, CLASSIC, solution, rng)
        bare: RuledPuzzle = Puzzle(CLASSIC, (0,) * 81, (rule,))
        givens = list(needed_givens(problem_of(bare), solution, rng, budget=200))
        taken = [cell for cell, digit in enumerate(givens) if not digit]
        for cell in rng.sample(taken, rng.randint(0, 2 * BACK)):
            givens[cell] = solution[cell]
        yield Puzzle(CLASSIC, tuple(givens), bare.rules), solution


def main(count: int, seed: int) -> None:
    began = perf_counter()
    quarter = count // 4
    parts = {
        "every kind": of_every_kind(quarter, seed),
        "thermometers": corpus("relations", quarter, seed=3 + seed),
        "cages": corpus("sums", quarter, seed=3 + seed),
        "classics": classics(count - 3 * quarter, seed),
    }
    wrong = 0
    for name, puzzles in parts.items():
        found: Counter[str] = Counter()
        number = 0
        for number, (puzzle, solution) in enumerate(puzzles, start=1):
            for fault in faults(puzzle, solution, found):
                wrong += 1
                told = ", ".join(rule.kind for rule in puzzle.rules)
                print(f"{name} {number} {told}: {fault}", flush=True)
        told = ", ".join(f"{technique} {times}" for technique, times in found.most_common())
        print(f"{name}: {number} puzzles, {found.total()} findings: {told}", flush=True)
    print(f"{wrong} faults (wanted 0), {perf_counter() - began:.0f} s")
    sys.exit(bool(wrong))


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 2_000, int(sys.argv[2]) if len(sys.argv) > 2 else 0)
