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
