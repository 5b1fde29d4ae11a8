"""The names of the bands of difficulty."""

from __future__ import annotations

BAND_NAMES = ("Stroll", "Ramble", "Hike", "Climb", "Summit")
"""Our names for the five bands of difficulty, easiest first; a manifest may rename them."""
