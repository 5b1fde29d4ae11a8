"""Why a step holds, as values: a technique, perhaps a mark, and a claim about cells and digits. No words.

Rules and techniques build reasons; only the room `phrases` turns them into sentences. Steps are told apart by their
reasons, which are equal exactly if they say the same.
"""

from bookmaker.reasons.claims import Claim
from bookmaker.reasons.marks import MarkRef
from bookmaker.reasons.reason import Reason
from bookmaker.reasons.rungs import Rung

__all__ = ["Claim", "MarkRef", "Reason", "Rung"]
