"""Hostile files by the thousand at every door, and every command typed for books from a grammar: no traceback, no hang,
nothing written elsewhere, memory bounded.

    python tests/benchmarks/fuzz.py [CASES] [DOOR ...]

CASES is for all doors together, 100,000 unless said. Each door takes its cases in batches, each in a process of its own
with a limit on memory; a case that takes more than ten seconds of the processor ends
its batch. What fails is shown smallest first, as
hypothesis found it. At the end stands a table of all doors. Exit code 1 if anything failed.
"""

from __future__ import annotations

import os
import resource
import signal
import subprocess
import sys
import tempfile
from collections.abc import Callable
from pathlib import Path
from time import monotonic, process_time
from typing import Any

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))

from hypothesis import HealthCheck, Phase, given, seed, settings
from hypothesis import strategies as st

from tests.hostile import books, commands, doors
from tests.hostile.damage import damaged, swapped

BATCH = 500
SECONDS = 10
"""Of processor time; a case must not last longer."""

MEMORY = 3_000_000_000
"""Bytes of address space for a batch, the libraries included."""


def _harmed(wholes: Callable[[], tuple[bytes, ...]]) -> st.SearchStrategy[bytes]:
    return st.deferred(lambda: st.sampled_from(wholes()).flatmap(lambda whole: damaged(whole) | swapped(whole)))


def _layouts() -> tuple[bytes, ...]:
    return tuple(text.encode() for text in doors.layout_texts())


DOORS: dict[str, tuple[int, st.SearchStrategy[Any], Callable[[Path, Any], None]]] = {
    "sound books": (9, books.sound(), doors.sound_book),
    "nearly sound books": (16, books.nearly_sound(), doors.book),
    "hostile books": (13, books.HOSTILE, doors.book),
    "mixed marks": (8, books.mixed(), doors.whole_book),
    "books printed": (2, books.sound() | books.nearly_sound(), doors.printed_book),
    "books read aloud": (2, books.sound(), doors.spoken_book),
    "spreadsheets": (4, _harmed(doors.tables), doors.table),
    "briefs": (4, _harmed(doors.briefs), lambda folder, found: doors.brief(folder, found.decode(errors="replace"))),
    "layouts": (6, _harmed(_layouts), lambda _, found: doors.layout(found.decode(errors="replace"))),
    "fonts": (4, _harmed(doors.fonts), doors.font),
    "pictures": (6, _harmed(doors.pictures), doors.picture),
    "tables of times": (2, _harmed(doors.results), doors.times),
    "calibrations": (2, _harmed(lambda: (doors.CALIBRATION.encode(),)), doors.calibration),
    "PDF files": (8, _harmed(doors.pdfs), lambda _, found: doors.pdf(found)),
    **{f"“{door}” typed": (1, commands.typed(door), commands.command) for door in commands.WORDS},
}
"""For each door its share of the cases in percent, what comes in, and who receives it."""


def batch(name: str, number: int, cases: int) -> None:
    """Run one batch here; prints its memory (MB) and its slowest case (seconds). Raises what the first failure did."""
    _, drawn, receive = DOORS[name]
    resource.setrlimit(resource.RLIMIT_AS, (MEMORY, MEMORY))
    signal.signal(signal.SIGPROF, _too_long)
    slowest = 0.0

    with tempfile.TemporaryDirectory() as folder:
        os.environ["BOOKMAKER_CACHE"] = f"{folder}/cache"
        os.chdir(folder)
        Path("case").mkdir()

        @seed(number)
        @settings(
            max_examples=cases,
            deadline=None,
            database=None,
            phases=[Phase.generate, Phase.shrink],
            suppress_health_check=list(HealthCheck),
        )
        @given(drawn)
        def case(found: Any) -> None:
            nonlocal slowest
            signal.setitimer(signal.ITIMER_PROF, SECONDS)
            began = process_time()
            try:
                receive(Path("case"), found)
            finally:
                signal.setitimer(signal.ITIMER_PROF, 0)
            slowest = max(slowest, process_time() - began)

        case()
        assert {path.name for path in Path().iterdir()} <= {"case", "cache"}
    print(resource.getrusage(resource.RUSAGE_SELF).ru_maxrss // 1024, slowest)


def _too_long(*_: object) -> None:
    raise AssertionError(f"more than {SECONDS} seconds")


def main() -> int:
    if sys.argv[1:2] == ["--batch"]:
        batch(sys.argv[2], int(sys.argv[3]), int(sys.argv[4]))
        return 0
    total = int(sys.argv[1]) if len(sys.argv) > 1 else 100_000
    rows = []
    for name in sys.argv[2:] or list(DOORS):
        cases, began, found, most, slowest = max(1, total * DOORS[name][0] // 100), monotonic(), 0, 0, 0.0
        for number, first in enumerate(range(0, cases, BATCH)):
            size = min(BATCH, cases - first)
            command = [sys.executable, __file__, "--batch", name, str(number), str(size)]
            done = subprocess.run(command, capture_output=True, text=True, check=False)
            if done.returncode:
                found += 1
                print(f"{name}, batch {number}:\n{done.stderr[-3000:]}", flush=True)
            else:
                memory, longest = done.stdout.split()[-2:]
                most, slowest = max(most, int(memory)), max(slowest, float(longest))
        rows.append((name, cases, found, slowest, most))
        print(f"{name}: {cases} cases in {monotonic() - began:.0f} s", flush=True)
    print(f"\n{'door':22}{'cases':>8}{'findings':>10}{'slowest':>10}{'memory':>9}")
    for name, cases, found, slowest, most in rows:
        print(f"{name:22}{cases:8,}{found:10}{slowest:8.1f} s{most:6} MB")
    print(f"{'together':22}{sum(row[1] for row in rows):8,}{sum(row[2] for row in rows):10}")
    return 1 if any(row[2] for row in rows) else 0


if __name__ == "__main__":
    sys.exit(main())
