"""Hostile files by the thousand at every door, and every command typed for books from a grammar: no traceback, no hang,
nothing written elsewhere, memory bounded.

    python tests/benchmarks/fuzz.py [CASES] [--from SEED] [--into FILE] [--door NAME ...] [--show DOOR SEED SIZE NUMBER]

CASES is for all doors together, 200,000 unless said, shared among them as `DOORS` says: cheap doors get more than dear
ones. Each door takes its cases in batches, each in a process of its own, split off from this one, with a limit on
memory; a case must not take more than ten seconds of the processor. What a batch draws follows from its seed alone, so
that a finding can be drawn again (`--show`). Each batch leaves a line in FILE; a run into the same FILE passes over
those that are in it already. At the end stands a table of all doors. Exit code 1 if anything failed.
"""

from __future__ import annotations

import argparse
import gc
import json
import multiprocessing
import os
import resource
import signal
import sys
import tempfile
import traceback
from collections.abc import Callable, Iterator
from contextlib import suppress
from functools import partial
from multiprocessing.connection import Connection
from pathlib import Path
from threading import active_count
from time import monotonic, process_time
from typing import Any

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))

from hypothesis import HealthCheck, Phase, given, seed, settings
from hypothesis import strategies as st

from tests.hostile import books, commands, doors, shaped
from tests.hostile.damage import damaged, swapped
from tests.hostile.slips import wishes

ROUNDS = 50
"""In so many batches each door takes its cases, all doors in turn."""

LEAST = 10
"""Cases in a batch."""

SECONDS = 10
"""Of processor time; a case must not last longer."""

PATIENCE = 600
"""Seconds by the clock after which a case that does nothing is given up."""

MEMORY = 3_000_000_000
"""Bytes of address space for a batch, the libraries included."""


def _harmed(wholes: Callable[[], tuple[bytes, ...]]) -> st.SearchStrategy[bytes]:
    return st.deferred(lambda: st.sampled_from(wholes()).flatmap(lambda whole: damaged(whole) | swapped(whole)))


def _layouts() -> tuple[bytes, ...]:
    return tuple(text.encode() for text in doors.layout_texts())


def _brief(folder: Path, found: bytes | str) -> None:
    doors.brief(folder, found if isinstance(found, str) else found.decode(errors="replace"))


Receive = Callable[[Path, Any], None]

DOORS: dict[str, tuple[int, st.SearchStrategy[Any], Receive]] = {
    "sound books": (70, books.sound(), doors.sound_book),
    "nearly sound books": (120, books.nearly_sound(), doors.book),
    "hostile books": (100, books.HOSTILE, doors.book),
    "heads of books": (80, books.headed(), doors.book),
    "other shapes": (60, books.of_other_shapes() | books.fit_for_print(), doors.sound_book),
    "slips with them": (60, books.SLIPPED, doors.book),
    "clashes on them": (10, books.clashing_shapes(), doors.whole_book),
    "mixed marks": (4, books.mixed(), doors.whole_book),
    "large grids": (3, books.sound(books.LARGE, 1), doors.whole_book),
    "books printed": (
        20,
        books.sound() | books.fit_for_print() | books.headed() | books.nearly_sound(),
        doors.printed_book,
    ),
    "books read aloud": (15, books.sound() | books.fit_for_print(), doors.spoken_book),
    "books at the desk": (15, st.lists(books.sound() | books.nearly_sound() | books.SLIPPED, max_size=3), doors.desk),
    "spreadsheets": (80, _harmed(doors.tables), doors.table),
    "briefs": (90, _harmed(doors.briefs) | shaped.files("brief"), _brief),
    "wishes": (90, shaped.files("wish") | wishes(), doors.wish),
    "layouts": (
        30,
        _harmed(_layouts).map(lambda raw: raw.decode(errors="replace")) | shaped.files("layout"),
        lambda _, found: doors.layout(found),
    ),
    "themes": (20, shaped.files("theme"), lambda _, found: doors.theme(found)),
    "fonts": (70, _harmed(doors.fonts), doors.font),
    "pictures": (100, _harmed(doors.pictures), doors.picture),
    "tables of times": (60, _harmed(doors.results), doors.times),
    "calibrations": (60, _harmed(lambda: (doors.CALIBRATION.encode(),)), doors.calibration),
    "PDF files": (35, _harmed(doors.pdfs), lambda _, found: doors.pdf(found)),
    "sheets filled in": (40, _harmed(doors.sheets), doors.sheet),
    **{
        f"“{door}” typed": (1 if door in ("review", "mend", "tune") else 3, commands.typed(door), commands.command)
        for door in commands.WORDS
    },
}
"""For each door its share of the cases, what comes in, and who receives it."""


def batch(name: str, number: int, cases: int) -> dict[str, Any]:
    """Run one batch here: its cases, what failed, its slowest case (seconds of the processor), what all cases took
    together, and its memory (MB)."""
    _, drawn, receive = DOORS[name]
    resource.setrlimit(resource.RLIMIT_AS, (MEMORY, MEMORY))
    signal.signal(signal.SIGPROF, _too_long)
    signal.signal(signal.SIGALRM, _too_long)
    count, slowest, together = 0, 0.0, 0.0
    findings: list[dict[str, Any]] = []

    def case(found: Any) -> None:
        nonlocal count, slowest, together
        count += 1
        signal.setitimer(signal.ITIMER_PROF, SECONDS)
        signal.setitimer(signal.ITIMER_REAL, PATIENCE)
        began = process_time()
        try:
            receive(Path("case"), found)
        except BaseException as error:
            findings.append({"case": count, "found": repr(found), "trace": traceback.format_exc()[-3000:]})
            if isinstance(error, KeyboardInterrupt):
                raise
        finally:
            signal.setitimer(signal.ITIMER_PROF, 0)
            signal.setitimer(signal.ITIMER_REAL, 0)
        took = process_time() - began
        slowest, together = max(slowest, took), together + took
        if took > SECONDS and not (findings and findings[-1]["case"] == count):
            findings.append({"case": count, "found": repr(found), "trace": f"{took:.1f} seconds"})

    with tempfile.TemporaryDirectory() as folder:
        os.environ["BOOKMAKER_CACHE"] = f"{folder}/cache"
        os.chdir(folder)
        Path("case").mkdir()
        _drawing(number, cases, drawn, case)
        strange = {path.name for path in Path().iterdir()} - {"case", "cache"}
        if strange:
            findings.append({"case": 0, "found": "", "trace": f"written elsewhere: {strange}"})
        os.chdir(ROOT)
    memory = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss // 1024
    return {"cases": count, "findings": findings, "slowest": slowest, "together": together, "memory": memory}


def _drawing(number: int, cases: int, drawn: st.SearchStrategy[Any], case: Callable[[Any], None]) -> None:
    @seed(number)
    @settings(
        max_examples=cases,
        deadline=None,
        database=None,
        phases=[Phase.generate],
        suppress_health_check=list(HealthCheck),
    )
    @given(drawn)
    def each(found: Any) -> None:
        case(found)

    each()


def _too_long(number: int, _: object) -> None:
    raise AssertionError(f"more than {SECONDS if number == signal.SIGPROF else PATIENCE} seconds")


def warm(names: list[str]) -> None:
    """Go through every door a few times, so that what is read in once is there for all batches."""
    with tempfile.TemporaryDirectory() as folder:
        os.environ["BOOKMAKER_CACHE"] = f"{folder}/cache"
        os.chdir(folder)
        Path("case").mkdir()
        for name in names:
            with suppress(Exception):
                _drawing(0, 3, DOORS[name][1], partial(DOORS[name][2], Path("case")))
        os.chdir(ROOT)
    assert active_count() == 1, "a process with threads must not be split"
    gc.collect()
    gc.freeze()


def split_off(name: str, number: int, cases: int) -> dict[str, Any]:
    """A batch in a process of its own; one that dies is a finding."""
    fork = multiprocessing.get_context("fork")
    here, there = fork.Pipe(duplex=False)
    process = fork.Process(target=_send, args=(there, name, number, cases))
    process.start()
    there.close()
    try:
        told: dict[str, Any] = here.recv()
    except EOFError:
        told = {"cases": 0, "slowest": 0.0, "together": 0.0, "memory": 0, "findings": []}
    process.join()
    if process.exitcode:
        told["findings"].append({"case": 0, "found": "", "trace": f"the process ended with {process.exitcode}"})
    return {"door": name, "seed": number, "size": cases, **told}


def _send(there: Connection, name: str, number: int, cases: int) -> None:
    there.send(batch(name, number, cases))


def planned(total: int, first: int, names: list[str]) -> Iterator[tuple[str, int, int]]:
    """Door, seed and size of every batch, so that all doors are at the same share of their cases at any time."""
    shares = sum(DOORS[name][0] for name in names)
    plan = []
    for name in names:
        cases = max(1, total * DOORS[name][0] // shares)
        size = max(LEAST, -(-cases // ROUNDS))
        for number, begun in enumerate(range(0, cases, size)):
            plan.append((begun / cases, name, first + number, min(size, cases - begun)))
    yield from ((name, number, size) for _, name, number, size in sorted(plan, key=lambda one: one[0]))


def table(rows: list[dict[str, Any]]) -> str:
    lines = [f"{'door':22}{'cases':>9}{'findings':>10}{'slowest':>11}{'a case':>10}{'memory':>10}"]
    for name in DOORS:
        if mine := [row for row in rows if row["door"] == name]:
            cases, found = sum(row["cases"] for row in mine), sum(len(row["findings"]) for row in mine)
            slowest, memory = max(row["slowest"] for row in mine), max(row["memory"] for row in mine)
            each = 1000 * sum(row["together"] for row in mine) / max(1, cases)
            lines.append(f"{name:22}{cases:9,}{found:10}{slowest:9.2f} s{each:7.1f} ms{memory:7} MB")
    cases, found = sum(row["cases"] for row in rows), sum(len(row["findings"]) for row in rows)
    return "\n".join([*lines, f"{'together':22}{cases:9,}{found:10}"])


def show(name: str, number: int, size: int, wanted: int) -> None:
    """Print a case that a batch draws."""
    drawn: list[Any] = []
    _drawing(number, size, DOORS[name][1], drawn.append)
    found = drawn[wanted - 1]
    print(found if isinstance(found, str) else repr(found))


def main() -> int:
    parser = argparse.ArgumentParser()
    parser.add_argument("cases", type=int, nargs="?", default=200_000)
    parser.add_argument("--from", dest="first", type=int, default=0)
    parser.add_argument("--into", type=Path)
    parser.add_argument("--door", action="append", choices=DOORS)
    parser.add_argument("--show", nargs=4)
    asked = parser.parse_args()
    if asked.show:
        show(asked.show[0], *map(int, asked.show[1:]))
        return 0
    rows: list[dict[str, Any]] = []
    if asked.into and asked.into.exists():
        rows = [json.loads(line) for line in asked.into.read_text("utf-8").splitlines()]
    done = {(row["door"], row["seed"], row["size"]) for row in rows}
    warm(asked.door or list(DOORS))
    began = monotonic()
    for step in planned(asked.cases, asked.first, asked.door or list(DOORS)):
        if step in done:
            continue
        row = split_off(*step)
        rows.append(row)
        if asked.into:
            with asked.into.open("a", encoding="utf-8") as stream:
                stream.write(json.dumps(row) + "\n")
        for finding in row["findings"][:3]:
            print(
                f"{step[0]}, seed {step[1]}, case {finding['case']} of {step[2]}:\n{finding['trace'][-800:]}",
                flush=True,
            )
    print(f"\n{table(rows)}\n{monotonic() - began:.0f} s")
    return 1 if any(row["findings"] for row in rows) else 0


if __name__ == "__main__":
    sys.exit(main())
