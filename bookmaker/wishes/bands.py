"""Bands as people say them: “Ramble”, “Ramble to Climb”.

In: a node. Out: the numbers of the bands, from and to; after a diagnostic any band.
"""

from __future__ import annotations

from bookmaker.phrases.bands import BAND_NAMES
from bookmaker.source.diagnostics import Collector, nearest, quoted
from bookmaker.source.placed import Node, Word
from bookmaker.wishes.span import Span
from bookmaker.wishes.wish import ANY_BAND


def read_bands(node: Node, collector: Collector) -> Span:
    """One band, or one “to” another."""
    names = [name.strip() for name in node.value.split(" to ")] if isinstance(node, Word) else []
    places = []
    for name in names:
        near = [band for band in BAND_NAMES if band.lower() == name.lower()]
        if near:
            places.append(BAND_NAMES.index(near[0]) + 1)
        else:
            collector.error(node.place, "unknown-band", f"there is no band {quoted(name)}", nearest(name, BAND_NAMES))
            return ANY_BAND
    if not 1 <= len(places) <= 2 or places != sorted(places):
        collector.error(
            node.place, "bands", "“band” should be a band, or two as in “Ramble to Climb”", ", ".join(BAND_NAMES)
        )
        return ANY_BAND
    return Span(places[0], places[-1])
