"""Constraints over cells in, a verdict out. Knows cells, digits and sets; no rule kind, no YAML."""

from bookmaker.solve.search import prove, solutions, tally

__all__ = ["prove", "solutions", "tally"]
