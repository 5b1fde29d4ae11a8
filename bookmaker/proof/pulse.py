"""Signs of life while one proof runs long: what is being done, how much of its budget is left, for how long.

In: the name of the puzzle and the stage its proof is at, told by whoever works on it. Out: now and then a line, said by
a thread of its own. Each process that proves has its own pulse.
"""

from __future__ import annotations

import sys
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from threading import Event, Thread
from time import monotonic

from bookmaker.solve import underway
from bookmaker.solve.underway import Unit
from bookmaker.visible import visible

PATIENCE = 1.0
"""Seconds without a sign."""

BEAT = 0.5
"""Seconds between two looks."""

SEARCHING = "being proven"

EFFORTS = {Unit.GUESSES: "guesses made", Unit.STEPS: "steps of the learning prover taken"}
"""Efforts in the reader's words."""


@dataclass(slots=True)
class _Now:
    """What this process is at."""

    name: str = ""
    stage: str = SEARCHING
    began: float = 0.0
    said: float = 0.0


_now = _Now()


@contextmanager
def at_work(name: str) -> Iterator[None]:
    """Work on the puzzle of that name."""
    underway.begin(None)
    _now.name, _now.stage, _now.began, _now.said = name, SEARCHING, monotonic(), monotonic()
    try:
        yield
    finally:
        _now.name = ""


def stage(words: str) -> None:
    """The work has come to this: “being graded”."""
    _now.stage = words
    underway.begin(None)


def sign(now: float) -> str | None:
    """The line to say at this moment, if it is time for one."""
    if not _now.name or now - _now.said < PATIENCE:
        return None
    _now.said = now
    return f"“{_now.name}” is {_now.stage}: {now - _now.began:.0f} s{_spent()}"


def _spent() -> str:
    effort = underway.effort()
    if effort is None:
        return ""
    spent, budget, words = effort.spent, effort.budget, EFFORTS[effort.unit]
    return f", {spent:,} of {budget:,} {words}, {budget - spent:,} left" if budget else f", {spent:,} {words}"


@contextmanager
def heard(say: Callable[[str], None]) -> Iterator[None]:
    """Say signs of life until the work is done."""
    ended = Event()
    thread = Thread(target=_beat, args=(say, ended), daemon=True)
    thread.start()
    try:
        yield
    finally:
        ended.set()
        thread.join()


def speak_up() -> None:
    """Say signs of life on standard error, in a process that works for another."""
    Thread(
        target=_beat, args=(lambda line: print(visible(line), file=sys.stderr, flush=True), Event()), daemon=True
    ).start()


def _beat(say: Callable[[str], None], ended: Event) -> None:
    while not ended.wait(BEAT):
        if line := sign(monotonic()):
            say(line)
