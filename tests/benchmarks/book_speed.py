"""How long a large book takes, and how much memory, beside replaying its pages through reportlab alone.

    python tests/benchmarks/book_speed.py [PUZZLES …]
    python tests/benchmarks/book_speed.py --classics [PUZZLES …] [--beside CHECKOUT]

The first makes a book of that many puzzles (default 30 and 300), the demo book's seen in eight ways over and over, in
the steps of `bookmaker typeset` by one process, each timed: manifest, puzzles from the store, planning, PDF, preflight.
Then the same pages are drawn item by item with the methods of reportlab's canvas, which is what any program on
reportlab would have to do. Each of three rounds is a process of its own; what counts is the least processor time of
each step, and the peak memory before the replay. Wanted for 300 puzzles: 1.5 replays, 300 MB; and a puzzle costs the
same in books of any size.

The second runs the command itself, with two workers, on a list of classics (default 1,000; 10,000 takes minutes) in the
layout 6x9-book, cold and then warm; with `--beside`, in turn with the bookmaker of another checkout. It prints the
clock, the processor time of the process in charge and of its workers, their memory, and what two free cores would need
at best; and the same in replays of the book's items. Wanted: 10,000 puzzles in 500 MB, linear.
"""

from __future__ import annotations

import gc
import json
import os
import resource
import subprocess
import sys
import tempfile
from collections.abc import Callable
from io import BytesIO
from itertools import cycle, islice
from pathlib import Path
from random import Random
from time import perf_counter, process_time
from typing import Any, TypeVar

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))

from bookmaker.__main__ import COLLECT_AFTER
from bookmaker.book import bind
from bookmaker.book.gathering import gather
from bookmaker.ink.pdf import write_pdf
from bookmaker.layout import compose, load_layout
from bookmaker.manifest import load
from bookmaker.manifest.written import puzzle_lines
from bookmaker.preflight import inspect
from bookmaker.proof.cache import FileStore
from bookmaker.proof.executors import InProcess
from tests.benchmarks.replay import replay
from tests.makers.corpus import corpus
from tests.makers.turned import is_seen_alike, turned, views

T = TypeVar("T")

ROUNDS = 3


class Clock:
    """Processor time of each step."""

    def __init__(self) -> None:
        self.spent: dict[str, float] = {}

    def timed(self, step: str, work: Callable[[], T]) -> T:
        began = process_time()
        made = work()
        self.spent[step] = process_time() - began
        return made


def write_book(folder: Path, count: int) -> None:
    """A manifest with the demo book's puzzles, each seen in eight ways, then all of them again under other names."""
    entries = load(ROOT / "demo_book").entries
    listed = []
    for at in range(count):
        copy, number = divmod(at, len(entries))
        entry = entries[number]
        alike = [view for view in views(entry.puzzle.grid) if is_seen_alike(entry.puzzle, view)]
        puzzle = turned(entry.puzzle, alike[copy % len(alike)])
        texts = {"id": f"{entry.id}-{copy}", "title": f"{entry.title} {copy + 1}", "setter": entry.setter}
        listed += puzzle_lines(puzzle, texts | {"note": entry.note})
    (folder / "many.yaml").write_text("\n".join(listed) + "\n", encoding="utf-8")
    heading = "book: {title: Many, layout: a4-book, permission: for this benchmark}"
    (folder / "book.yaml").write_text(f"{heading}\npuzzles: [include: many.yaml]\n", encoding="utf-8")


def once(folder: Path, store: FileStore, layout_name: str = "") -> dict[str, Any]:
    """Make the book in this process; the processor time of each step, and the memory."""
    gc.set_threshold(COLLECT_AFTER)  # as every command does
    clock = Clock()
    manifest = clock.timed("manifest", lambda: load(folder))
    gathered = clock.timed(
        "puzzles", lambda: [*gather(manifest.entries, manifest.band_names, True, store, InProcess())]
    )
    layout = load_layout(layout_name or manifest.layout)
    document = clock.timed("planning", lambda: compose(bind(manifest, gathered), layout))
    file = BytesIO()
    clock.timed("PDF", lambda: write_pdf(document, file))
    proofs = [proof for proof, _ in gathered]
    report = clock.timed("preflight", lambda: inspect(file.getvalue(), "book.pdf", proofs))
    assert report.sound and len(report.printed) == 2 * len(proofs)
    peak = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1000
    pages = tuple(document.pages)
    clock.timed("replay", lambda: replay(pages))
    return {"spent": clock.spent, "pages": len(pages), "MB": len(file.getvalue()) / 1e6, "peak": peak}


def measure(count: int, folder: Path) -> tuple[float, float, float]:
    """Print the steps for a book of that many puzzles; its milliseconds, its time in replays and its peak memory."""
    write_book(folder, count)
    _child("--once", folder)  # the store has the puzzles from here on
    rounds = [_child("--once", folder) for _ in range(ROUNDS)]
    first = rounds[0]
    spent = {step: min(made["spent"][step] for made in rounds) for step in first["spent"]}
    base = spent.pop("replay")
    whole = sum(spent.values())
    print(f"{count} puzzles, {first['pages']} pages, {first['MB']:.2f} MB")
    for step, seconds in {**spent, "all of it": whole, "replay": base}.items():
        each = 1000 * seconds / count
        print(f"  {step:<10} {seconds:7.2f} s  {seconds / base:5.2f} × replay  {each:6.2f} ms a puzzle")
    peak = max(made["peak"] for made in rounds)
    print(f"  peak memory {peak:.0f} MB", flush=True)
    return 1000 * whole, whole / base, peak


def _child(*words: object) -> Any:
    """Do a task in a process of its own, so that none finds warm what another has warmed."""
    done = subprocess.run([sys.executable, __file__, *map(str, words)], check=True, stdout=subprocess.PIPE)
    return json.loads(done.stdout)


def steps(counts: list[int]) -> None:
    found = {}
    with tempfile.TemporaryDirectory() as folder:
        for count in counts:
            found[count] = measure(count, Path(folder))
    print("puzzles  ms a puzzle  × replay  peak MB  kB a puzzle more")
    before = (0, 0.0)
    for count, (spent, share, peak) in found.items():
        more = f"{1000 * (peak - before[1]) / (count - before[0]):16.0f}" if before[0] else ""
        print(f"{count:7}  {spent / count:11.2f}  {share:8.2f}  {peak:7.0f}  {more}")
        before = (count, peak)


COMMAND = """
import json, resource, sys
from bookmaker.__main__ import run
try:
    run()
finally:
    own, crew = (resource.getrusage(who) for who in (resource.RUSAGE_SELF, resource.RUSAGE_CHILDREN))
    spent = [used.ru_utime + used.ru_stime for used in (own, crew)]
    print(json.dumps([*spent, own.ru_maxrss / 1000, crew.ru_maxrss / 1000]))
"""


def write_list(file: Path, count: int) -> None:
    """Classics of all difficulties; after a thousand the same again, their digits renamed."""
    drawn = [puzzle.givens_text for puzzle, _ in corpus("classic", min(count, 1000))]
    random = Random(5)
    lines = []
    for number, givens in enumerate(islice(cycle(drawn), count)):
        names = "".join(random.sample("123456789", 9)) if number >= len(drawn) else "123456789"
        lines.append(givens.translate(str.maketrans("123456789", names)))
    file.write_text("\n".join(lines) + "\n", encoding="utf-8")


def typeset(checkout: Path, listed: Path, cache: Path) -> tuple[float, float, float, float, float]:
    """Seconds by the clock, of the process in charge and of its workers; the memory of that process and of a worker."""

    def run(list: Path, settings: dict[str, str]) -> str:
        words = ["typeset", str(list), "--out", str(cache / "out"), "--layout", "6x9-book", "--workers", "2"]
        done = subprocess.run(
            [sys.executable, "-c", COMMAND, *words],
            cwd=cache,
            env=settings,
            check=True,
            stdout=subprocess.PIPE,
            stderr=subprocess.DEVNULL,
            text=True,
        )
        return done.stdout

    settings = {**os.environ, "PYTHONPATH": str(checkout), "BOOKMAKER_CACHE": str(cache)}
    settings |= {"PYTHONPYCACHEPREFIX": str(cache / "compiled"), "PYTHONDONTWRITEBYTECODE": ""}
    write_list(cache / "short.txt", 20)
    run(cache / "short.txt", {**settings, "BOOKMAKER_CACHE": str(cache / "another")})  # users have modules compiled
    began = perf_counter()
    printed = run(listed, settings)
    return perf_counter() - began, *json.loads(printed.splitlines()[-1])


def commands(counts: list[int], checkouts: list[Path]) -> None:
    for count in counts:
        with tempfile.TemporaryDirectory() as name:
            folder = Path(name)
            write_list(folder / "list.txt", count)
            print(f"{count} classics, two workers, load {os.getloadavg()[0]:.1f}")
            for age in ("cold", "warm"):
                for number, checkout in enumerate(checkouts):
                    cache = folder / str(number)
                    cache.mkdir(exist_ok=True)
                    clock, own, executor, memory, worker = typeset(checkout, folder / "list.txt", cache)
                    print(
                        f"  {age} {'beside' if number else 'here  '}  {clock:6.1f} s by the clock;  processor time "
                        f"{own:5.1f} s in charge, {executor:5.1f} s workers;  {memory:.0f} and {worker:.0f} MB",
                        flush=True,
                    )
            base = _child("--once", folder / "list.txt", folder / "0", "6x9-book")["spent"]["replay"]
            print(f"  a replay of its items takes {base:.1f} s of processor time", flush=True)


if __name__ == "__main__":
    match sys.argv[1:]:
        case ["--once", book]:
            print(json.dumps(once(Path(book), FileStore(Path(book) / "proofs.sqlite"))))
        case ["--once", book, cache, layout]:
            print(json.dumps(once(Path(book), FileStore(Path(cache) / "proofs.sqlite"), layout)))
        case ["--classics", *numbers, "--beside", other]:
            commands([*map(int, numbers)] or [1000], [ROOT, Path(other).resolve()])
        case ["--classics", *numbers]:
            commands([*map(int, numbers)] or [1000], [ROOT])
        case numbers:
            steps(sorted(map(int, numbers)) or [30, 300])
