"""How many of some cells hold a digit of a set.

In: the set and the limits. Out: a filter that is exact (a count asks each cell only yes or no).
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class CountWithin:
    """Between `least` and `most` of the cells hold a digit of the mask `digits`; `weights` count repeated cells."""

    digits: int
    least: int
    most: int
    weights: tuple[int, ...]

    def narrow(self, masks: Sequence[int]) -> tuple[list[int], int] | None:
        digits = self.digits
        surely = sum(weight for mask, weight in zip(masks, self.weights, strict=True) if not mask & ~digits)
        perhaps = sum(weight for mask, weight in zip(masks, self.weights, strict=True) if mask & digits)
        if surely > self.most or perhaps < self.least:
            return None
        kept = list(masks)
        for i, (mask, weight) in enumerate(zip(masks, self.weights, strict=True)):
            if mask & digits and mask & ~digits:
                if surely + weight > self.most:
                    kept[i] &= ~digits
                if perhaps - weight < self.least:
                    kept[i] &= digits
        if kept != masks:
            return self.narrow(kept)  # a cell that was settled may settle others
        single = digits & digits - 1 == 0
        return kept, digits if single and self.least > 0 else 0
