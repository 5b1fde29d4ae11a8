"""The ladder's rungs, from the easiest to see to what lies beyond it."""

from __future__ import annotations

from enum import IntEnum


class Rung(IntEnum):
    """Steps of one rung are about equally hard to find; those up to `NAKED` place a digit."""

    LAST = 1
    """The last empty cell of a house."""
    BOX = 2
    """A hidden single in a box."""
    LINE = 3
    """A hidden single in a row, a column or a house that a rule adds."""
    NAKED = 4
    """A naked single."""
    SIMPLE = 5
    """Locked candidates; one line's bounds, one cage's combinations: what one mark says by itself."""
    PAIR = 6
    """Pairs; one sum line's limits, sums over houses."""
    WHOLE = 7
    """Triples and quads; a whole shape enumerated; a cell seen by all places of a digit."""
    FISH = 8
    WING = 9
    CHAIN = 10
    WHAT_IF = 11
    BEYOND = 12
    """A step that the ladder does not reach: its digit is taken from the proof."""
