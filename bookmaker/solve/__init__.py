"""Constraints over cells in, a verdict out. Knows cells, digits and sets; no rule kind, no YAML."""
