"""Work shared among processes: order, flat memory, the same bytes, and an end at once when interrupted."""

from __future__ import annotations

import os
import pickle
import signal
import subprocess
import sys
import time
from collections.abc import Iterator
from concurrent.futures import Future, ThreadPoolExecutor
from dataclasses import replace
from pathlib import Path

from bookmaker.manifest.entries import Entry
from bookmaker.proof import prove_all
from bookmaker.proof.executors import InProcess, Shared, in_order, processes
from bookmaker.puzzle.grid import CLASSIC
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.source.diagnostics import Place
from tests.digits import digits_from
from tests.proof.test_cache import NONE, SEVERAL, UNIQUE


def test_results_come_in_the_order_of_the_items() -> None:
    with ThreadPoolExecutor(4) as executor:

        def work(item: int) -> int:
            time.sleep(0.02 if item % 3 == 0 else 0)
            return item * 10

        def begin(item: int) -> Future[int]:
            return executor.submit(work, item)

        assert list(in_order(iter(range(20)), begin, 5)) == [(item, item * 10) for item in range(20)]


def test_items_are_taken_only_a_few_ahead() -> None:
    taken = 0

    def items() -> Iterator[int]:
        nonlocal taken
        for item in range(100):
            taken += 1
            yield item

    results = in_order(items(), lambda item: InProcess().submit(abs, item), 3)
    assert taken == 3  # before any is asked for
    for handed, _ in enumerate(results, start=1):
        assert taken <= handed + 3


def test_one_worker_and_two_say_the_same() -> None:
    texts = (UNIQUE, SEVERAL, NONE, UNIQUE)
    entries = [Entry(str(i), Puzzle(CLASSIC, digits_from(t)), Place("list", i + 1)) for i, t in enumerate(texts)]
    said = []
    for workers in (1, 2):
        with processes(workers) as executor:
            said.append([replace(proof, seconds=0.0) for proof in prove_all(entries, executor=executor)])
    assert said[0] == said[1]


def _gone(group: int) -> bool:
    """Is the whole group of processes gone? From Python 3.14 on the one that forks workers takes a moment to end."""
    for _ in range(50):
        try:
            os.killpg(group, 0)
        except ProcessLookupError:
            return True
        time.sleep(0.1)
    return False


class Counted:
    """A value that notes how often it is packed and unpacked."""

    packed, unpacked = 0, 0

    def __getstate__(self) -> dict[str, str]:
        Counted.packed += 1
        return {"said": "hello"}

    def __setstate__(self, state: dict[str, str]) -> None:
        Counted.unpacked += 1
        self.__dict__ |= state


def _met(shared: Shared[Counted]) -> tuple[int, int, str]:
    return os.getpid(), Counted.unpacked, shared.value.__dict__["said"]


def test_what_is_shared_is_packed_once_and_unpacked_once_by_each_worker() -> None:
    Counted.packed = 0
    shared = Shared(Counted())
    with processes(2) as executor:
        met = {future.result() for future in [executor.submit(_met, shared) for _ in range(40)]}
    assert Counted.packed == 1
    assert {(times, said) for _, times, said in met} == {(1, "hello")} and len(met) <= 2


def test_of_several_that_are_shared_each_is_itself() -> None:
    one, other = (pickle.loads(pickle.dumps(Shared(words))) for words in (["one"], ["other"]))
    assert (one.value, other.value) == (["one"], ["other"])


def test_an_interrupt_ends_at_once_and_leaves_nothing(tmp_path: Path) -> None:
    (tmp_path / "list.txt").write_text((UNIQUE + "\n") * 2000)
    heard = "import signal; signal.signal(signal.SIGINT, signal.default_int_handler)"  # in the background it may be off
    words = [sys.executable, "-c", f"{heard}; from bookmaker.cli import main; main()", "proof", "list.txt"]
    run = subprocess.Popen(
        [*words, "--fresh", "--workers", "2", "--json", "report.json"],
        cwd=tmp_path,
        env={**os.environ, "PYTHONPATH": str(Path(__file__).resolve().parents[2])},
        stderr=subprocess.PIPE,
        text=True,
        start_new_session=True,
    )
    assert run.stderr is not None
    while "proved" not in run.stderr.readline():
        assert run.poll() is None
    run.send_signal(signal.SIGINT)
    run.wait(timeout=10)
    assert run.returncode != 0
    assert sorted(path.name for path in tmp_path.iterdir()) == ["list.txt"]
    assert _gone(run.pid)
