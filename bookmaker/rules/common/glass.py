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
from bookmaker.rules.common.frame import Frame, Layer, Mark
from bookmaker.rules.common.strokes import BODY, HALO, THIN, halo, joined, trace, tube

TUBE = 0.3
"""Width of the tube in cells."""

BULB = 0.36
"""Radius of the bulb in cells."""

TICK = 0.1
"""How far the ticks across an empty glass stand from the border between its cells, in cells."""


def thermometers(frame: Frame, chains: Sequence[Chain], filled: bool) -> Iterator[Mark]:
    """All glasses. Empty ones have a second ring inside the bulb and ticks across the tube, so that a copy too dark or
    too light still tells."""
    rim = frame.thin() + 0.15
    width, radius = TUBE * frame.cell, BULB * frame.cell
    body = BODY if filled else 1.0
    for glass in joined(chains):
        ways = [[frame.centre(cell) for cell in chain] for chain in glass]
        bulbs = [frame.centre(bulb) for bulb in dict.fromkeys(chain[0] for chain in glass)]
        tubes = [tube(way, width, rim, body) for way in ways]
        items = [halo(frame, way, width) for way in ways]
        items += [circle(bulb, radius + HALO * frame.cell, fill=1.0) for bulb in bulbs]
        items += [outline for outline, _ in tubes]
        items += [circle(bulb, radius - rim / 2, Stroke(rim, THIN), body) for bulb in bulbs]
        items += [inside for _, inside in tubes]
        if not filled:
            items += [circle(bulb, radius - rim, fill=body) for bulb in bulbs]
            items += [circle(bulb, radius * 0.84, Stroke(rim, THIN)) for bulb in bulbs]
            items += [tick for chain in glass for tick in _ticks(frame, chain, width - rim, Stroke(rim, THIN))]
        else:
            items += [circle(bulb, radius - rim, fill=body) for bulb in bulbs]
        yield from (Mark(Layer.LINE, item) for item in items)


def _ticks(frame: Frame, chain: Chain, width: float, pen: Stroke) -> Iterator[Item]:
    """A sign of equality across the glass at both sides of every border."""
    way = trace(frame, chain)
    for before, after in pairwise(way.stops):
        for at in (-TICK * frame.cell, TICK * frame.cell):
            middle = (before + after) / 2 + at
            yield Line(way.beside(middle, width / 2), way.beside(middle, -width / 2), pen)
