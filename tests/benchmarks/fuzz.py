"""Hostile files by the thousand at every door: no traceback, no hang, nothing written elsewhere, memory bounded.

    python tests/benchmarks/fuzz.py [CASES] [DOOR ...]

CASES is for all doors together, 100,000 unless said. Each door takes its cases in batches, each in a process of its own
with a limit on memory; a case that lasts more than ten seconds ends its batch. What fails is shown smallest first, as
hypothesis found it. Exit code 1 if anything failed.
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
from time import monotonic
from typing import Any

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))

from hypothesis import HealthCheck, Phase, given, seed, settings
from hypothesis import strategies as st

from tests.hostile import books, doors
from tests.hostile.damage import damaged, swapped

BATCH = 500
SECONDS = 10
"""A case must not last longer."""

MEMORY = 3_000_000_000
"""Bytes of address space for a batch, the libraries included."""


def _harmed(wholes: Callable[[], tuple[bytes, ...]]) -> st.SearchStrategy[bytes]:
    return st.deferred(lambda: st.sampled_from(wholes()).flatmap(lambda whole: damaged(whole) | swapped(whole)))


def _layouts() -> tuple[bytes, ...]:
    return tuple(text.encode() for text in doors.layout_texts())


DOORS: dict[str, tuple[int, st.SearchStrategy[Any], Callable[[Path, Any], None]]] = {
    "sound books": (14, books.sound(), doors.sound_book),
    "nearly sound books": (22, books.nearly_sound(), doors.book),
    "hostile books": (20, books.HOSTILE, doors.book),
    "books printed": (2, books.sound() | books.nearly_sound(), doors.printed_book),
    "books read aloud": (2, books.sound(), doors.spoken_book),
    "spreadsheets": (4, _harmed(doors.tables), doors.table),
    "briefs": (4, _harmed(doors.briefs), lambda folder, found: doors.brief(folder, found.decode(errors="replace"))),
    "layouts": (8, _harmed(_layouts), lambda _, found: doors.layout(found.decode(errors="replace"))),
    "fonts": (4, _harmed(doors.fonts), doors.font),
    "pictures": (6, _harmed(doors.pictures), doors.picture),
    "tables of times": (2, _harmed(doors.results), doors.times),
    "calibrations": (2, _harmed(lambda: (doors.CALIBRATION.encode(),)), doors.calibration),
    "PDF files": (10, _harmed(doors.pdfs), lambda _, found: doors.pdf(found)),
}
"""For each door its share of the cases in percent, what comes in, and who receives it."""


def batch(name: str, number: int, cases: int) -> None:
    """Run one batch here; prints its memory (MB) and its slowest case (seconds). Raises what the first failure did."""
    _, drawn, receive = DOORS[name]
    resource.setrlimit(resource.RLIMIT_AS, (MEMORY, MEMORY))
    signal.signal(signal.SIGALRM, _too_long)
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
            signal.alarm(SECONDS)
            began = monotonic()
            try:
                receive(Path("case"), found)
            finally:
                signal.alarm(0)
            slowest = max(slowest, monotonic() - began)

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
    failed = 0
    for name in sys.argv[2:] or list(DOORS):
        cases, began, most, slowest = max(1, total * DOORS[name][0] // 100), monotonic(), 0, 0.0
        for number, first in enumerate(range(0, cases, BATCH)):
            size = min(BATCH, cases - first)
            command = [sys.executable, __file__, "--batch", name, str(number), str(size)]
            done = subprocess.run(command, capture_output=True, text=True, check=False)
            if done.returncode:
                failed += 1
                print(f"{name}, batch {number}:\n{done.stderr[-3000:]}", flush=True)
            else:
                memory, longest = done.stdout.split()[-2:]
                most, slowest = max(most, int(memory)), max(slowest, float(longest))
        took = f"{monotonic() - began:.0f} s, the slowest {slowest:.1f} s"
        print(f"{name}: {cases} cases, {took}, at most {most} MB", flush=True)
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main())
