"""How long an attempt at a wish may take: so much effort, which is counted, and until a moment, if there is one.

In: what was spent. Out: nothing, or an end to the attempt: `Missed` where it took more than any should, which is the
same on every machine; `OutOfTime` where the time is up that somebody gave.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from math import inf
from time import monotonic

ATTEMPT = 1_000_000
"""Effort (`Meter.effort`) for one attempt and each cell of its grid, about a minute for 9×9, where most take a second;
far above what any puzzle takes that comes to something."""

LOOK = 50
"""Effort that every look is charged, for something was done since the last one."""


class Missed(Exception):
    """An attempt has come to nothing; `why` is one of the reasons in `telling.REASONS`."""

    def __init__(self, why: str) -> None:
        super().__init__(why)
        self.why = why


class OutOfTime(Exception):
    """The time is up, and nothing is known of the attempt."""


@dataclass
class Patience:
    """Whoever works looks now and then, and says what proofs and grades have cost. The seconds count from now on."""

    seconds: float = inf
    most: float = inf
    spent: int = 0
    _until: float = field(init=False)

    def __post_init__(self) -> None:
        self._until = monotonic() + self.seconds

    def look(self, spent: int = 0) -> None:
        """Go on, if neither the effort nor the time is used up."""
        self.spent += spent + LOOK
        if self.spent > self.most:
            raise Missed("long")
        if monotonic() > self._until:
            raise OutOfTime


def patience_for(cells: int, seconds: float = inf) -> Patience:
    """What an attempt may take on a grid of so many cells."""
    return Patience(seconds, ATTEMPT * cells)
