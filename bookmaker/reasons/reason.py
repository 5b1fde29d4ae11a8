"""The reason of a step."""

from __future__ import annotations

from dataclasses import dataclass

from bookmaker.reasons.claims import Claim
from bookmaker.reasons.marks import MarkRef

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
