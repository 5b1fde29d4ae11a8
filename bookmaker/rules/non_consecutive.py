"""Non-consecutive: cells that share a side never hold consecutive digits, in the whole grid.

Manifest: `non-consecutive: yes`, or `{diagonal: yes}` for cells that touch at a corner as well.
"""

from __future__ import annotations

from dataclasses import dataclass

from bookmaker.rules.common.barred import BarredRule


@dataclass(frozen=True)
class NonConsecutive(BarredRule):
    """Neighbours are never consecutive."""

    kind = "non-consecutive"
    title = "Non-consecutive"
    noun = "non-consecutive rule"
    relabels = "reversed"
    from_zero = True
    example = "non-consecutive: yes\n"

    def barred(self, worth: int) -> tuple[int, int]:
        return worth - 1, worth + 1

    def clash(self, one: int, other: int) -> bool:
        return abs(one - other) == 1
