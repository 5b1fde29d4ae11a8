"""How much faster two workers screen a long list than one.

    python tests/benchmarks/screen_speed.py [LINES] [ROUNDS]

The same list of drawn classics (400 lines unless said) goes through `bookmaker screen` with one worker and with two, in
turn, three rounds unless said; the best of each counts. Wanted: two workers are at least 1.7 times as fast by clock.
That holds on two cores that are free: the load is printed, and beside the clock the processor time, which tells what
two free cores would reach at best (the work of one worker over half the work of two, or over what the process in
charge has to do by itself). Exit code 1 if the clock says less than 1.7, or if the two reports differ.
"""

from __future__ import annotations

import json
import os
import sys
import tempfile
from itertools import cycle, islice
from pathlib import Path
from time import perf_counter
from typing import Any, NamedTuple

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))

from tests.makers.corpus import corpus

WANTED = 1.7
SCREEN = """
import resource, sys
from bookmaker.cli import main
try:
    main(standalone_mode=False)
finally:
    own, crew = (resource.getrusage(who) for who in (resource.RUSAGE_SELF, resource.RUSAGE_CHILDREN))
    print(own.ru_utime + own.ru_stime, crew.ru_utime + crew.ru_stime, file=sys.stderr)
"""


class Run(NamedTuple):
    """Seconds by the clock, and of processor time: of the process in charge, and of its workers."""

    clock: float
    own: float
    executor: float


def screened(listed: Path, report: Path, workers: int) -> Run:
    """Screen the list in a process of its own."""
    told = report.with_suffix(".told")
    words = ["screen", str(listed), "--out", str(report), "--workers", str(workers)]
    with told.open("wb") as stream:
        began = perf_counter()
        child = os.posix_spawn(
            sys.executable,
            [sys.executable, "-c", SCREEN, *words],
            {**os.environ, "PYTHONPATH": str(ROOT)},
            file_actions=[(os.POSIX_SPAWN_DUP2, stream.fileno(), 1), (os.POSIX_SPAWN_DUP2, stream.fileno(), 2)],
        )
        _, status = os.waitpid(child, 0)
        clock = perf_counter() - began
    said = told.read_text(encoding="utf-8")
    assert status == 0, said
    own, executor = said.splitlines()[-1].split()
    return Run(clock, float(own), float(executor))


def lines(report: Path) -> list[dict[str, Any]]:
    """The report without what differs between runs."""
    return [{**json.loads(line), "seconds": 0} for line in report.read_text(encoding="utf-8").splitlines()]


def main(count: int, rounds: int) -> int:
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        drawn = [puzzle.givens_text for puzzle, _ in corpus("classic", min(count, 100))]
        (folder / "list.txt").write_text("\n".join(islice(cycle(drawn), count)) + "\n", encoding="utf-8")
        runs: dict[int, list[Run]] = {1: [], 2: []}
        for number in range(rounds):
            for workers, done in runs.items():
                report = folder / f"{number}-{workers}.jsonl"
                done.append(run := screened(folder / "list.txt", report, workers))
                print(
                    f"{workers} worker{'s' if workers > 1 else ' '} {count} lines {run.clock:6.1f} s;  processor time "
                    f"{run.own:5.1f} s in charge, {run.executor:5.1f} s workers;  load {os.getloadavg()[0]:.1f}",
                    flush=True,
                )
        same = lines(folder / "0-1.jsonl") == lines(folder / "0-2.jsonl")
    by_clock = min(run.clock for run in runs[1]) / min(run.clock for run in runs[2])
    alone = min(run.own + run.executor for run in runs[1])
    at_best = alone / min(max(run.own, (run.own + run.executor) / 2) for run in runs[2])
    print(f"two workers: {by_clock:.2f} times as fast by the clock; by processor time {at_best:.2f} at best")
    print(f"wanted {WANTED}; {'the reports say the same' if same else 'THE REPORTS DIFFER'}")
    return 0 if same and by_clock >= WANTED else 1


if __name__ == "__main__":
    sys.exit(main(*(int(word) for word in [*sys.argv[1:], *("400", "3")[len(sys.argv) - 1 :]])))
