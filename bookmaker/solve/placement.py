"""What follows at once from placing a digit: the candidates it rules out, as one mask.

In: which cells must differ, and which pairs of cells stand in a relation. Out: `PlacementMasks`, a table from a
candidate's bit to the mask of candidates that stay, so that `state &= table[bit]` places a digit.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence

from bookmaker.solve.candidates import CandidateLayout

Forbidding = tuple[int, tuple[int, ...]]
"""Where the field of another cell begins, and for each digit here (1 at index 0) the mask it may then not hold."""


class PlacementMasks(dict[int, int]):
    """Masks to keep, by candidate bit. They are worked out when first asked for: a search needs few of them."""

    def __init__(self, layout: CandidateLayout, peers: Sequence[int]) -> None:
        super().__init__()
        self.layout = layout
        self.peers = peers
        """For each cell the lowest bits of the cells that must differ from it."""

    def __missing__(self, bit: int) -> int:
        layout = self.layout
        cell, digit = divmod(bit, layout.width)
        gone = self.peers[cell] << digit | (layout.full ^ 1 << digit) << layout.places[cell]
        keep = self[bit] = layout.everything ^ gone
        return keep


class ExtendedPlacementMasks(PlacementMasks):
    """The masks of a grid's houses, which many problems share, together with a problem's own constraints.

    `related` has only the cells that a constraint of the problem's own binds to others.
    """

    def __init__(self, base: PlacementMasks, peers: Sequence[int], related: Mapping[int, Sequence[Forbidding]]) -> None:
        super().__init__(base.layout, peers)
        self.base = base
        self.related = related

    def __missing__(self, bit: int) -> int:
        layout = self.layout
        cell, digit = divmod(bit, layout.width)
        gone = 0 if self.peers is self.base.peers else self.peers[cell] << digit
        for at, forbidden in self.related.get(cell, ()):
            gone |= forbidden[digit] << at
        keep = self.base[bit]
        if gone:
            keep &= layout.everything ^ gone
        self[bit] = keep
        return keep


def peers_of(layout: CandidateLayout, groups: Iterable[Sequence[int]], known: Sequence[int] | None = None) -> list[int]:
    """For each cell the lowest bits of the cells that share a group with it, and so must differ from it.

    With `known` peers, those are in it too.
    """
    peers = list(known) if known else [0] * layout.cells
    for group in groups:
        together = 0
        for cell in group:
            together |= 1 << cell * layout.width
        for cell in group:
            peers[cell] |= together & ~(1 << cell * layout.width)
    return peers
