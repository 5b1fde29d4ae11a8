"""The reason of a step."""

from __future__ import annotations

from dataclasses import dataclass

from bookmaker.reasons.claims import Claim, argument
from bookmaker.reasons.marks import Joined, MarkRef

MARK = "mark"
"""The technique of a step that a mark allows by itself."""


@dataclass(frozen=True, slots=True)
class Reason:
    """Which technique, which mark if it is one's own, and what it claims.

    `technique` is the key of its name (“naked-pair”). Steps that a mark allows by itself share the technique `MARK`;
    they differ by the mark's kind.
    """

    technique: str
    mark: MarkRef | None
    claim: Claim

    @property
    def kind(self) -> str:
        """The kind of rule whose mark it is; “” for a pattern."""
        return self.mark.kind if self.mark else ""

    def argues_as(self, other: Reason) -> bool:
        """Is it the same argument, perhaps on another board, where it finds other candidates?"""
        if self.technique != other.technique or type(self.claim) is not type(other.claim):
            return False
        return _same_mark(self.mark, other.mark) and argument(self.claim) == argument(other.claim)


def _same_mark(one: MarkRef | None, other: MarkRef | None) -> bool:
    """How many marks join in an argument may vary with the candidates."""
    if one is None or other is None:
        return one is other
    joined = isinstance(one.anchor, Joined) or isinstance(other.anchor, Joined)
    return one == other or (joined and one.kind == other.kind)
