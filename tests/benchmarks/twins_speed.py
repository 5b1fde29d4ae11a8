"""How fast look-alikes are found: `python tests/benchmarks/twins_speed.py [PUZZLES]`.

Classics are drawn from a seed (10,000 unless said), a tenth of them scrambled copies of others. Printed are: the time
of a key beside that of a proof, in one run; the time of growing lists, which should grow as they do; whether every copy
is found and nothing else; and how long a new puzzle takes against a kept list, ten times as long as the first one, with
the start of Python and without. Wanted: 10,000 in under 60 s on one core, a new one against 100,000 in under a second.
All seconds are processor time. Exit code 1 where a copy is missed or a pair is wrong.
"""

from __future__ import annotations

import os
import subprocess
import sys
import tempfile
from pathlib import Path
from random import Random
from time import process_time

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))

from bookmaker.archive.likeness import likeness
from bookmaker.archive.lookalikes import members_of, same_among
from bookmaker.proof.cache import FileStore
from bookmaker.puzzle.grid import CLASSIC
from bookmaker.puzzle.puzzle import Puzzle, digits_text
from bookmaker.rules import problem_of
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.solve import prove
from bookmaker.solve.verdict import Unique
from bookmaker.source.diagnostics import Collector
from bookmaker.symmetry import keys_of
from tests.grade.turns import turned
from tests.makers.grow import empty_grid, random_solution

CLUES = 32


def drawn(rng: Random) -> tuple[int, ...]:
    """A classic with some 32 givens and one solution."""
    empty = empty_grid(CLASSIC)
    while True:
        solution = random_solution(empty, rng)
        shown = set(rng.sample(CLASSIC.cells, CLUES + 4))
        givens = tuple(digit if cell in shown else 0 for cell, digit in enumerate(solution))
        if isinstance(prove(problem_of(Puzzle(CLASSIC, givens))), Unique):
            return givens


def a_list(count: int, seed: int) -> list[tuple[int, ...]]:
    """Puzzles of which each tenth is a copy of an earlier one."""
    rng = Random(seed)
    puzzles: list[tuple[int, ...]] = []
    for number in range(count):
        puzzles.append(turned(rng.choice(puzzles), rng) if number % 10 == 9 else drawn(rng))
    return puzzles


def key_beside_proof(puzzles: list[tuple[int, ...]]) -> None:
    ruled: list[RuledPuzzle] = [Puzzle(CLASSIC, givens) for givens in puzzles]
    began = process_time()
    verdicts = [prove(problem_of(puzzle)) for puzzle in ruled]
    between = process_time()
    for puzzle, verdict in zip(ruled, verdicts, strict=True):
        assert isinstance(verdict, Unique)
        keys_of(puzzle, verdict.solution)
    keys, proofs = process_time() - between, between - began
    print(f"a key takes {1000 * keys / len(ruled):.2f} ms, {keys / proofs:.1f} times a proof", flush=True)


def main() -> None:
    count = int(sys.argv[1]) if len(sys.argv) > 1 else 10_000
    puzzles = a_list(count, 1)
    lines = [digits_text(givens) for givens in puzzles]
    key_beside_proof(puzzles[:1000])
    faulty = False
    with tempfile.TemporaryDirectory() as folder:
        home = Path(folder)
        for size in (count // 8, count // 4, count // 2, count):
            store = FileStore(home / f"{size}.sqlite")
            file = home / f"list-{size}.txt"
            file.write_text("\n".join(lines[:size]) + "\n", encoding="utf-8")
            began = process_time()
            members = members_of([file], store, None, Collector()).members
            read = process_time()
            groups = list(same_among(members))
            done = process_time()
            copies = sum(len(group.members) - 1 for group in groups)
            faulty |= copies != size // 10
            print(
                f"{size} puzzles: keys {read - began:.1f} s, {copies} copies proven in {done - read:.1f} s", flush=True
            )
        long = home / "long.txt"
        long.write_text("\n".join(lines * 10) + "\n", encoding="utf-8")
        store = FileStore(home / "proofs.sqlite")
        members_of([long], store, None, Collector())
        new = home / "new.txt"
        new.write_text(lines[-1] + "\n", encoding="utf-8")
        began = process_time()
        fresh = members_of([new], store, None, Collector()).members
        old = members_of([long], store, None, Collector(), fresh).members
        found = list(same_among([*fresh, *old], mixed=True))
        print(f"one new puzzle against {10 * count}: {process_time() - began:.2f} s", flush=True)
        faulty |= len(found) != 1
        words = ["twins", str(new), "--against", str(long), "--exact"]
        code = "import resource, sys; from bookmaker.cli import main; main(sys.argv[1:], standalone_mode=False)"
        before = os.times()
        subprocess.run(
            [sys.executable, "-c", code, *words],
            env={**os.environ, "BOOKMAKER_CACHE": folder, "PYTHONPATH": str(ROOT)},
            stdout=subprocess.DEVNULL,
            stderr=subprocess.DEVNULL,
            check=False,
        )
        after = os.times()
        spent = after.children_user + after.children_system - before.children_user - before.children_system
        print(f"the same from the command line: {spent:.2f} s", flush=True)
    assert likeness(Puzzle(CLASSIC, puzzles[0])) is not None
    sys.exit(int(faulty))


if __name__ == "__main__":
    main()
