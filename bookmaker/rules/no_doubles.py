"""No doubles: cells that share a side never hold a digit and its double, in the whole grid.

Manifest: `no-doubles: yes`, or `{diagonal: yes}` for cells that touch at a corner as well. 0 is its own double, so no
two 0s touch then.
"""

from __future__ import annotations

from dataclasses import dataclass

from bookmaker.language import Catalogue
from bookmaker.rules.common.barred import BarredRule


@dataclass(frozen=True)
class NoDoubles(BarredRule):
    """No digit stands beside its double."""

    kind = "no-doubles"
    title = "No doubles"
    noun = "ban on doubles"
    relabels = "none"
    from_zero = True
    example = "no-doubles: yes\n"

    def of_zero(self, words: Catalogue) -> str:
        return words.say("no-doubles-zero") if self.diagonal else ""

    def barred(self, worth: int) -> tuple[int, ...]:
        return (2 * worth,) if worth % 2 else (2 * worth, worth // 2)

    def clash(self, one: int, other: int) -> bool:
        return one == 2 * other or other == 2 * one
