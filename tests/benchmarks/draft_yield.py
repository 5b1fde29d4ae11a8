"""How many puzzles a minute `bookmaker draft` yields, by kind, and whether they are what they should be.

    python tests/benchmarks/draft_yield.py [--each 3] [--classics 12] [--most 60] [--kind KIND …] [--printed 100]

Time is processor time, so that other work on the machine counts as little as can be; a minute of two cores has 120
seconds of it. Every kind is wished for in the bands from Stroll to Climb, without what-ifs, its marks in the usual
numbers, givens and marks in the half-turn arrangement, no mark idle; classics in each band by itself. What comes out
is proved by the second prover and printed in a book, whose grids, marks and keys are read back from the PDF. Goals:
classics at least 60 a minute in each band, every kind at least 4.
"""

from __future__ import annotations

import sys
from argparse import ArgumentParser
from pathlib import Path
from subprocess import run
from tempfile import TemporaryDirectory
from time import process_time

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))

from bookmaker.crosscheck import second_opinion
from bookmaker.draft.attempt import Drafted, attempt
from bookmaker.manifest.written import puzzle_lines
from bookmaker.phrases.bands import BAND_NAMES
from bookmaker.puzzle.grid import CLASSIC
from bookmaker.rules import kinds
from bookmaker.solve.verdict import Unique
from bookmaker.wishes.rulewishes import by_chance
from bookmaker.wishes.span import Span
from bookmaker.wishes.wish import Wish

CORES = 2
STROLL, CLIMB = 1, 4
CLASSICS, KINDS = 60.0, 4.0


def yielded(wish: Wish, wanted: int, most: float) -> tuple[list[Drafted], int, float]:
    """Puzzles that meet the wish, up to so many or for so many seconds; the attempts they took, and the seconds."""
    found: list[Drafted] = []
    began, number = process_time(), 0
    while len(found) < wanted and process_time() - began < most:
        made = attempt(wish, number)
        number += 1
        if isinstance(made, Drafted) and not made.amiss:
            found.append(made)
    return found, number, process_time() - began


def printed(drafted: list[Drafted]) -> bool:
    """Are these puzzles printed as they were drafted, as far as can be read back from the PDF?"""
    with TemporaryDirectory() as place:
        lines = ["book: {title: Drafted, permission: made for this benchmark, hints: no}", "puzzles:"]
        for number, each in enumerate(drafted, start=1):
            texts = {"id": f"drafted-{number}", "title": f"Drafted {number}", "setter": "bookmaker"}
            lines += [f"  {line}" for line in puzzle_lines(each.puzzle, texts)]
        (Path(place) / "book.yaml").write_text("\n".join(lines) + "\n", encoding="utf-8")
        out = Path(place) / "out"
        commands: list[list[str]] = [
            ["typeset", place, "--out", str(out)],
            ["preflight", str(out / "book.pdf"), "--against", place],
        ]
        for command in commands:
            done = run([sys.executable, "-m", "bookmaker", *command], cwd=ROOT, capture_output=True, text=True)
            print(*(done.stdout if not done.returncode else done.stderr).strip().splitlines()[-12:], sep="\n")
            if done.returncode:
                return False
    return True


def main() -> int:
    parser = ArgumentParser()
    parser.add_argument("--each", type=int, default=3)
    parser.add_argument("--classics", type=int, default=12)
    parser.add_argument("--most", type=float, default=60.0, help="seconds for each line")
    parser.add_argument("--kind", action="append")
    parser.add_argument("--printed", type=int, default=100)
    asked = parser.parse_args()
    wished: list[tuple[str, Wish, int, float]] = []
    if not asked.kind:
        for band in range(STROLL, CLIMB + 1):
            wish = Wish(bands=Span(band, band), refused=frozenset({"what-if"}))
            wished.append((f"classic, {BAND_NAMES[band - 1]}", wish, asked.classics, CLASSICS))
    for kind in asked.kind or kinds():
        rules = (by_chance(kinds()[kind], CLASSIC),)
        wish = Wish(rules=rules, bands=Span(STROLL, CLIMB), refused=frozenset({"what-if"}))
        wished.append((kind, wish, asked.each, KINDS))
    every: list[Drafted] = []
    missed: list[str] = []
    print(f"{'':22} {'a minute':>9} {'attempts each':>14}  bands")
    for name, wish, wanted, goal in wished:
        found, attempts, seconds = yielded(wish, wanted, asked.most)
        every += found
        rate = len(found) * CORES * 60 / seconds
        bands = " ".join(str(each.grade.band) for each in found)
        print(f"{name:22} {rate:9.1f} {attempts / max(len(found), 1):14.1f}  {bands}", flush=True)
        if rate < goal:
            missed.append(name)
    wrong = 0
    for each in every:
        verdict = second_opinion(each.puzzle)
        wrong += not (isinstance(verdict, Unique) and verdict.solution == each.solution)
    print(f"{len(every)} puzzles proved by the second prover: {wrong or 'none'} otherwise", flush=True)
    sound = printed(every[: asked.printed])
    print("goals (classics 60 a minute, each kind 4):", f"missed by {', '.join(missed)}" if missed else "met")
    return 1 if missed or wrong or not sound else 0


if __name__ == "__main__":
    sys.exit(main())
