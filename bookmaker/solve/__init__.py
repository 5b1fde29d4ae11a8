"""Constraints over cells in, a verdict out. Knows cells, digits and sets; no rule kind, no YAML."""

from bookmaker.solve.counting import tally
from bookmaker.solve.proving import prove
from bookmaker.solve.search import solutions

__all__ = ["prove", "solutions", "tally"]
