"""A path as it is told: the placements in their order, and of the eliminations those that they need.

In: a puzzle and its path. Out: `Traced` steps, each with its reason on the board as it stands in the telling.
"""

from bookmaker.trace.budget import TooMuch
from bookmaker.trace.hardest import hardest
from bookmaker.trace.traced import Traced, View, names_region
from bookmaker.trace.tracing import trace, trace_to

__all__ = ["TooMuch", "Traced", "View", "hardest", "names_region", "trace", "trace_to"]
