"""How much looking a step takes: the formula of the grade."""

from __future__ import annotations

from collections.abc import Iterable

from bookmaker.grade.singles import Kind

VISIBLE = {Kind.LAST: 20, Kind.BOX: 20, Kind.LINE: 12, Kind.NAKED: 1}
"""How readily the eye falls on an opening of a kind, in tenths."""

STUCK = 2
"""How much longer a look lasts where pencil marks must be compared."""

BEYOND = 20
"""Rounds charged for a step that the ladder did not reach."""


def placing(empty: int, kinds: Iterable[Kind]) -> float:
    """Looks until the first of these openings is found among `empty` cells."""
    return (empty + 1) * 10 / (10 + sum(VISIBLE[kind] for kind in kinds))


def stuck(empty: int, findings: int, reach: int) -> float:
    """Looks until the first of so many findings of one rung is found, each worked out over `reach` rounds."""
    return STUCK * (1 + reach) * (empty + 1) / (findings + 1)
