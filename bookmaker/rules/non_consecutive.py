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

    def barred(self, digit: int) -> tuple[int, int]:
        return digit - 1, digit + 1

    def clash(self, one: int, other: int) -> bool:
        return abs(one - other) == 1

    def sentence(self) -> str:
        return f"{self.touching()} never hold consecutive digits."

    @classmethod
    def primer(cls) -> str:
        return (
            "No two cells that share a side hold consecutive digits: beside a 5 there is neither a 4 nor a 6. So "
            "every digit you write rules out two digits in each of its neighbours. When a digit has only two places "
            "left in a row, with one cell between them, that cell cannot hold a digit one above or below it."
        )
