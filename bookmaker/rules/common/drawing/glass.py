"""Thermometers drawn: a glass tube with a round bulb at its start, filled grey or left empty.

Chains that share a cell are one glass without seams; glasses that only cross are held apart by a white edge, so that
the later seems to lie over the earlier.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise

from bookmaker.display.items import Item, Line, Stroke
from bookmaker.display.shapes import circle
from bookmaker.rules.common.chain import Chain
from bookmaker.rules.common.drawing.frame import Frame, Layer, Mark
from bookmaker.rules.common.drawing.places import Along, Around, PlaceClaim
from bookmaker.rules.common.drawing.strokes import BODY, HALF_SEEN, HALO, THIN, halo, joined, middles, trace, tube
from bookmaker.rules.common.words.wording import ends_named

TUBE = 0.3
"""Width of the tube in cells."""

BULB = 0.36
"""Radius of the bulb in cells."""

RIM = 0.058
"""How far the second ring of an empty bulb lies inside the first, in cells."""

TICK = 0.12
"""How far the ticks across an empty glass stand from the border between its cells, in cells."""


def glass_claims(chains: Sequence[Chain], filled: bool) -> Iterator[PlaceClaim]:
    """The room that glasses ask for: ticks of empty ones stand at the borders."""
    for bundle, glass in enumerate(joined(chains)):
        for chain in glass:
            yield Around(chain[0], BULB, rim=0.0 if filled else RIM)
            signs = () if filled else tuple(pairwise(chain))
            yield Along(chain, TUBE / 2, signs, TUBE / 2, bundle)


def thermometers(frame: Frame, chains: Sequence[Chain], filled: bool, noun: str) -> Iterator[Mark]:
    """All glasses. Empty ones have a second ring inside the bulb and ticks across the tube, so that a copy too dark or
    too light still tells."""
    rim = frame.thin() + 0.15
    body = BODY if filled else 1.0
    pen = Stroke(rim, THIN)
    for glass in joined(chains):
        of = tuple(f"the {noun} {ends_named(frame.grid, chain)}" for chain in glass)
        scale = frame.lane(glass[0]).scale
        width = TUBE * scale * frame.cell
        ways = [middles(frame, chain) for chain in glass]
        radii = {chain[0]: frame.radius(chain[0], BULB) * frame.cell for chain in glass}
        bulbs = {frame.centre(cell): radius for cell, radius in radii.items()}
        tubes = [tube(way, width, rim, body) for way in ways]
        items: list[tuple[Item, str]] = [(halo(frame, way, width), "") for way in ways]
        items += [(circle(bulb, radius + HALO * frame.cell, fill=1.0), "") for bulb, radius in bulbs.items()]
        items += [(outline, "") for outline, _ in tubes]
        items += [(circle(bulb, radius - rim / 2, pen, body), "bulb") for bulb, radius in bulbs.items()]
        items += [(inside, "") for _, inside in tubes]
        items += [(circle(bulb, radius - rim, fill=body), "") for bulb, radius in bulbs.items()]
        if not filled:
            items += [(circle(bulb, radius - RIM * frame.cell, pen), "bulb") for bulb, radius in bulbs.items()]
            items += [(tick, "ticks") for chain in glass for tick in _ticks(frame, chain, width - rim, pen)]
        least = {"bulb": HALF_SEEN, "ticks": HALF_SEEN}
        yield from (Mark(Layer.TUBE, item, of, part, least.get(part)) for item, part in items)


def _ticks(frame: Frame, chain: Chain, width: float, pen: Stroke) -> Iterator[Item]:
    """A sign of equality across the glass at both sides of every border, or before a ring that stands there."""
    way = trace(frame, chain)
    for cells, (before, after) in zip(pairwise(chain), pairwise(way.stops), strict=True):
        ring = frame.ringed(*cells)
        back = ring + 0.4 * TICK if ring else 0.0
        for at in (-TICK, 0.4 * TICK - TICK if ring else TICK):
            middle = (before + after) / 2 + (at - back) * frame.cell
            yield Line(way.beside(middle, width / 2), way.beside(middle, -width / 2), pen)
