"""No doubles: cells that share a side never hold a digit and its double, in the whole grid.

Manifest: `no-doubles: yes`, or `{diagonal: yes}` for cells that touch at a corner as well.
"""

from __future__ import annotations

from dataclasses import dataclass

from bookmaker.rules.common.barred import BarredRule


@dataclass(frozen=True)
class NoDoubles(BarredRule):
    """No digit stands beside its double."""

    kind = "no-doubles"
    title = "No doubles"
    noun = "ban on doubles"
    relabels = "none"
    example = "no-doubles: yes\n"

    def barred(self, digit: int) -> tuple[int, ...]:
        return (2 * digit,) if digit % 2 else (2 * digit, digit // 2)

    def clash(self, one: int, other: int) -> bool:
        return one == 2 * other or other == 2 * one

    def sentence(self) -> str:
        return f"{self.touching()} never hold a digit and its double."

    @classmethod
    def primer(cls) -> str:
        return (
            "No two cells that share a side hold a digit and its double: beside a 4 there is neither a 2 nor an 8. On "
            "a 9×9 grid 5, 7 and 9 may stand beside any digit; it is 1, 2, 4 and 8, and 3 and 6, that have to keep "
            "apart. A cell beside every place of a 4 in a row can be neither 2 nor 8."
        )
