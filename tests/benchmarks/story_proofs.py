"""Is every told sentence true where it is told? Whole stories proved sentence by sentence.

usage: python tests/benchmarks/story_proofs.py [COUNT] [SEED]

`tests/tell/proving.py` walks each story and proves every sentence on the board on which it is told. All puzzles of the
demo book, COUNT (200) with marks of every rule kind in turn, and as many classics of ../shared/data, the hard ones
first. Each is told in full and, where what-ifs are folded, as it is read. Exits with 1 at a fault.
"""

from __future__ import annotations

import sys
from collections.abc import Iterator
from pathlib import Path
from time import perf_counter

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))

from bookmaker.manifest import load
from bookmaker.manifest.entries import Entry
from bookmaker.proof import prove_entry
from bookmaker.source.diagnostics import Place
from bookmaker.tell import tell
from tests.benchmarks.grade_soundness import classics, of_every_kind
from tests.tell.proving import faults


def entries(count: int, seed: int) -> Iterator[tuple[str, Iterator[Entry]]]:
    """The puzzles, by where they are from."""
    place = Place("book.yaml")
    yield "demo book", iter(load(ROOT / "demo_book").entries)
    yield (
        "every kind",
        (
            Entry(f"{puzzle.rules[0].kind}-{number}", puzzle, place)
            for number, (puzzle, _) in enumerate(of_every_kind(count, seed), start=1)
        ),
    )
    yield (
        "classics",
        (
            Entry(f"classic-{number}", puzzle, place)
            for number, (puzzle, _) in enumerate(classics(count, seed), start=1)
        ),
    )


def main(count: int, seed: int) -> None:
    began = perf_counter()
    stories = sentences = wrong = 0
    for name, puzzles in entries(count, seed):
        for entry in puzzles:
            proof = prove_entry(entry)
            if proof.grade is None:
                continue
            told = {
                tuple(said.text for said in story.passages): story for story in (tell(proof, full=True), tell(proof))
            }
            for story in told.values():
                stories += 1
                sentences += sum(len(passage.sentences) for passage in story.passages)
                for fault in faults(proof, story):
                    wrong += 1
                    print(f"{name}, {entry.id}: {fault}\n  {entry.puzzle.givens_text} {entry.puzzle.rules}", flush=True)
        print(f"{name}: {stories} stories so far, {perf_counter() - began:.0f} s", flush=True)
    print(f"stories {stories}, sentences {sentences}, faults {wrong}")
    sys.exit(bool(wrong))


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 200, int(sys.argv[2]) if len(sys.argv) > 2 else 0)
