"""Work shared among processes, its results in order.

In: items, and a way to begin the work on each that gives a standard `Future`. Out: each item with its result, in the
order of the items whatever finishes first. Only a few items are under way at a time, so memory stays flat.
"""

from __future__ import annotations

import multiprocessing
import os
import pickle
from collections import deque
from collections.abc import Callable, Iterator, Mapping
from concurrent.futures import Executor, Future, ProcessPoolExecutor
from contextlib import contextmanager, nullcontext
from functools import cached_property, lru_cache
from itertools import islice
from typing import Any, Generic, ParamSpec, TypeVar

from bookmaker.proof.cache import ROOMS_THAT_MATTER, code_version
from bookmaker.proof.pulse import heard, speak_up
from bookmaker.source.diagnostics import BookErrors, Diagnostic, Place
from bookmaker.stopping import held_back, serving

Item = TypeVar("Item")
Result = TypeVar("Result")
Given = ParamSpec("Given")
Value = TypeVar("Value")

AHEAD = 32
"""Items under way at most, where others do the work."""

_YIELD = 5
"""By how much the priority of a worker is lowered (POSIX, nice): where processors are short, the process in charge goes
first, and so does whatever else people do on the machine."""


class InProcess(Executor):
    """An executor that does the work here and now."""

    def submit(self, fn: Callable[Given, Result], /, *args: Given.args, **kwargs: Given.kwargs) -> Future[Result]:
        return done(fn(*args, **kwargs))


class Shared(Generic[Value]):
    """A value that goes along with many pieces of work, such as all puzzles of a book: to take it apart and put it
    together again with each of them would take time that grows with the square of the book. So it is packed once, and a
    worker unpacks it once; of several in turn it keeps the last."""

    def __init__(self, value: Value) -> None:
        self.value = value

    @cached_property
    def _packed(self) -> bytes:
        return pickle.dumps(self.value)

    def __reduce__(self) -> tuple[Callable[[bytes], Shared[Any]], tuple[bytes]]:
        return _unpacked, (self._packed,)


@lru_cache(maxsize=1)
def _unpacked(packed: bytes) -> Shared[Any]:
    return Shared(pickle.loads(packed))


def done(result: Result) -> Future[Result]:
    """A future whose result is there already."""
    future: Future[Result] = Future()
    future.set_result(result)
    return future


def ahead_of(executor: Executor) -> int:
    """How many items to begin beyond the one that is waited for. None where the work is done here: all that is begun
    would have to be finished first, and would be lost if it is stopped."""
    return 0 if isinstance(executor, InProcess) else AHEAD


@contextmanager
def processes(workers: int, say: Callable[[str], None] | None = None) -> Iterator[Executor]:
    """An executor with that many processes; one worker works in this process. On an interrupt or a fault they end at
    once.

    Where one proof runs long, signs of life are said: by one worker with `say`, by several on standard error.
    """
    if workers <= 1:
        with heard(say) if say else nullcontext():
            yield InProcess()
        return
    executor = _Crew(workers, initializer=_begin, initargs=(say is not None,))
    try:
        yield executor
    except BaseException:
        for process in multiprocessing.active_children():
            process.kill()  # nothing of what they do is to be finished, and no file is theirs
        executor.shutdown(wait=True, cancel_futures=True)
        raise
    executor.shutdown()


def in_order(
    items: Iterator[Item], begin: Callable[[Item], Future[Result]], ahead: int
) -> Iterator[tuple[Item, Result]]:
    """Each item with the result of its future, with up to `ahead` items begun beyond the one that is waited for; the
    first of them at once, before any is asked for."""
    under_way = deque((item, begin(item)) for item in islice(items, ahead))

    def results() -> Iterator[tuple[Item, Result]]:
        for item in items:
            under_way.append((item, begin(item)))
            first, future = under_way.popleft()
            yield first, future.result()
        while under_way:
            first, future = under_way.popleft()
            yield first, future.result()

    return results()


class _Crew(ProcessPoolExecutor):
    """Processes that no signal meets before they are ready to end by it without a word."""

    def submit(self, fn: Callable[Given, Result], /, *args: Given.args, **kwargs: Given.kwargs) -> Future[Result]:
        with held_back():
            return super().submit(fn, *args, **kwargs)


def _begin(heard: bool) -> None:
    """In a worker: the process that began it says what there is to say, and goes first."""
    serving()
    if hasattr(os, "nice"):
        os.nice(_YIELD)
    if heard:
        speak_up()


@contextmanager
def executor_on(address: str) -> Iterator[Executor]:
    """The workers of a running Dask scheduler at `address`, as a standard executor.

    A worker that dies loses nothing: the scheduler gives its work to another. Raises BookErrors where the extra
    “cluster” is not installed, where nothing answers at the address, or where workers have another bookmaker than this
    one: neither would understand what the other sends.
    """
    try:
        from distributed import Client
    except ImportError:
        hint = "install it with: pip install 'bookmaker[cluster]'"
        raise BookErrors([Diagnostic(Place("--on"), "no-cluster", "Dask is not installed here", hint)]) from None
    try:
        client = Client(address, timeout=10)
    except (OSError, ValueError) as error:
        said = f"no scheduler answers at {address}"
        raise BookErrors([Diagnostic(Place("--on"), "no-scheduler", said, str(error))]) from error
    with client:
        if strangers := _strangers(client.run):
            said = f"{strangers} of the workers at {address} have another version of bookmaker, or none"
            hint = "install the same version there, and start them anew"
            raise BookErrors([Diagnostic(Place("--on"), "other-version", said, hint)])
        yield client.get_executor(pure=False)


def _strangers(ask_all: Callable[..., Mapping[str, object]]) -> int:
    """How many workers do not have the code that runs here; `ask_all` has a function run by each of them."""
    answers = ask_all(code_of_this, on_error="return")
    return sum(answer != code_of_this() for answer in answers.values())


def code_of_this() -> str:
    """A hash of all of bookmaker that a worker needs."""
    return code_version(*ROOMS_THAT_MATTER)
