"""Bands: five grades of difficulty, by cut points of the effort that are kept as data and never re-cut for a book."""

from __future__ import annotations

VERSION = 1

CUTS = (250.0, 400.0, 650.0, 1200.0)
"""Efforts from which bands 2 to 5 begin."""


def band_of(effort: float) -> int:
    """The band, 1 to 5."""
    return 1 + sum(effort >= cut for cut in CUTS)
