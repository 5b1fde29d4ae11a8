"""The names of the bands of difficulty."""

from __future__ import annotations

from bookmaker.language import catalogue

BANDS = (1, 2, 3, 4, 5)


def band_names(language: str = "en") -> tuple[str, ...]:
    """Our names for the five bands of difficulty, easiest first; a manifest may rename them."""
    words = catalogue(language)
    return tuple(words.say(f"band-{band}") for band in BANDS)


BAND_NAMES = ("Stroll", "Ramble", "Hike", "Climb", "Summit")
"""The same in English, as the program's own messages have them."""
