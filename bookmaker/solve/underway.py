"""How far the work of this process has come, for whoever waits for it.

In: a stage says how to ask for its effort when it begins. Out: the effort so far, read from another thread at any time.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from enum import Enum, auto


class Unit(Enum):
    """What an effort is counted in."""

    GUESSES = auto()
    STEPS = auto()


@dataclass(frozen=True, slots=True)
class Effort:
    """What was spent, of how much; `budget` is None where there is no bound."""

    unit: Unit
    spent: int
    budget: int | None


_latest: Callable[[], Effort] | None = None


def begin(effort: Callable[[], Effort] | None) -> None:
    """A stage begins, or with None all have ended."""
    global _latest
    _latest = effort


def effort() -> Effort | None:
    """The effort of the latest stage; None where there is none."""
    latest = _latest
    return None if latest is None else latest()
