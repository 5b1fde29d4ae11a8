"""What follows at once from writing a digit: the candidates it rules out, as one mask.

In: which cells must differ, and which pairs of cells stand in a relation. Out: `Consequences`, a table from a
candidate's bit to the mask of candidates that stay, so that `state &= table[bit]` writes a digit down.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from bookmaker.solve.fields import Fields

Forbidding = tuple[int, tuple[int, ...]]
"""Another cell, and for each digit here (member 0 unused) the mask of digits that cell may then hold."""


class Consequences(dict[int, int]):
    """Masks to keep, by candidate bit. They are worked out when first asked for: a search writes few of them."""

    def __init__(self, layout: Fields, peers: Sequence[int], related: Sequence[Sequence[Forbidding]] = ()) -> None:
        super().__init__()
        self.layout = layout
        self.peers = peers
        self.related = related

    def __missing__(self, bit: int) -> int:
        layout = self.layout
        cell, digit = divmod(bit, layout.width)
        gone = self.peers[cell] << digit | (layout.full ^ 1 << digit) << cell * layout.width
        if self.related:
            for other, beside in self.related[cell]:
                forbidden = layout.full & ~beside[digit + 1]
                gone |= forbidden << other * layout.width
        keep = self[bit] = ~gone
        return keep


def peers_of(layout: Fields, groups: Iterable[Iterable[int]]) -> list[int]:
    """For each cell the lowest bits of the cells that share a group with it, and so must differ from it."""
    peers = [0] * layout.cells
    add_peers(layout, peers, groups)
    return peers


def add_peers(layout: Fields, peers: list[int], groups: Iterable[Iterable[int]]) -> None:
    """Add groups of cells that must differ to a table of peers."""
    for group in groups:
        bits = {cell: 1 << cell * layout.width for cell in group}
        together = sum(bits.values())
        for cell, bit in bits.items():
            peers[cell] |= together ^ bit
