"""What a collection lacked, as wishes.

In: a file with a list under `lacks:`, or `Lack`s from whoever assembles collections. Out: wishes for just that.

    lacks:
      - {kind: cage, band: Summit, puzzles: 2}
      - {band: Stroll, size: 6}
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field

from bookmaker.manifest.gridfields import read_grid
from bookmaker.placed import Node, read_fields, read_items, read_whole
from bookmaker.puzzle.grid import CLASSIC, Grid
from bookmaker.rules import kinds
from bookmaker.trouble import Desk, Place
from bookmaker.wishes.bands import read_bands
from bookmaker.wishes.model import ANY_BAND, Wish
from bookmaker.wishes.rulewishes import by_chance, read_kinds
from bookmaker.wishes.span import Span

FROM_SUMMIT = 5
"""Up to this band puzzles are drafted that need no what-if."""


@dataclass(frozen=True, slots=True)
class Lack:
    """So many puzzles of these kinds (none: classics), in these bands, on this grid, that were not there."""

    kinds: tuple[str, ...] = ()
    bands: Span = ANY_BAND
    puzzles: int = 1
    grid: Grid = CLASSIC
    place: Place = field(default=Place("lacks"))


def wishes_for(lacks: Sequence[Lack], seed: int = 1) -> tuple[Wish, ...]:
    """A wish for each lack. Raises KeyError for a kind that there is not."""
    return tuple(
        Wish(
            grid=lack.grid,
            rules=tuple(by_chance(kinds()[kind], lack.grid) for kind in lack.kinds),
            puzzles=lack.puzzles,
            bands=lack.bands,
            refused=frozenset({"what-if"}) if lack.bands.most < FROM_SUMMIT else frozenset(),
            texts={"id": f"{'-'.join(lack.kinds) or 'classic'}-{number}-{{number}}"},
            seed=seed,
            place=lack.place,
        )
        for number, lack in enumerate(lacks, start=1)
    )


def read_lacks(node: Node, desk: Desk) -> tuple[Lack, ...]:
    """The list under `lacks:`; faulty items are reported and left out."""
    found = []
    for item in read_items(node, "“lacks”", desk):
        before = len(desk.found)
        fields = read_fields(item, "a lack", desk, ("kind", "band", "puzzles", "size", "boxes"))
        grid = read_grid(fields, item.place, desk)
        named = read_kinds(fields["kind"], desk) if "kind" in fields else ()
        bands = read_bands(fields["band"], desk) if "band" in fields else ANY_BAND
        puzzles = read_whole(fields["puzzles"], "“puzzles”", desk, 1, 1000) if "puzzles" in fields else 1
        if len(desk.found) == before and grid is not None and puzzles is not None:
            found.append(Lack(named, bands, puzzles, grid, item.place))
    return tuple(found)
