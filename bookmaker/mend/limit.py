"""How long a puzzle is looked into: so many seconds, as somebody asks; or so much effort, the same on every machine.

In: what has been spent. Out: whether it is enough.
"""

from __future__ import annotations

from abc import ABC, abstractmethod
from collections.abc import Callable
from dataclasses import dataclass, field
from time import monotonic

LOOK = 300
"""Effort (`Meter.effort`) that every question is charged, for something was done since the last one."""


class Limit(ABC):
    """Whoever works asks now and then whether it is `over`, and says what proofs have cost."""

    @abstractmethod
    def over(self, share: float = 1.0) -> bool:
        """Is this share of it used up?"""

    @abstractmethod
    def spend(self, effort: int) -> None:
        """A proof has taken such an effort (`Meter.effort`)."""


@dataclass
class Seconds(Limit):
    """So many seconds by a clock, from now on."""

    seconds: float
    clock: Callable[[], float] = monotonic
    began: float = field(init=False)

    def __post_init__(self) -> None:
        self.began = self.clock()

    def over(self, share: float = 1.0) -> bool:
        return self.clock() > self.began + share * self.seconds

    def spend(self, effort: int) -> None:
        """The clock knows."""


@dataclass
class Effort(Limit):
    """So much effort, in all that is done under it."""

    most: int
    spent: int = 0

    def over(self, share: float = 1.0) -> bool:
        self.spent += LOOK
        return self.spent > share * self.most

    def spend(self, effort: int) -> None:
        self.spent += effort
