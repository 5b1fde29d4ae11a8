"""Measuring text: what layout asks of the fonts.

In: a text, a font's name from `fonts/fonts.yaml`, a size in points. Out: lengths in points; heights per em.
"""

from __future__ import annotations

from bookmaker.typeface import font_files, typeface


class FontBook:
    """The fonts that come with bookmaker. Every method raises KeyError for an unknown font name."""

    @property
    def names(self) -> tuple[str, ...]:
        """What fonts there are."""
        return tuple(font_files())

    def width(self, text: str, font: str, size: float, letter_space: float = 0.0, word_space: float = 0.0) -> float:
        """Length in points of a run of text, kerned, exactly as ink sets it.

        `letter_space` points stand between any two characters (not after the last), `word_space` points are added
        to each space.
        """
        return typeface(font).length(text, size, letter_space, word_space)

    def figure_height(self, font: str) -> float:
        """Height of a digit per em, without the overshoot of the round ones."""
        return typeface(font).figure_height

    def cap_height(self, font: str) -> float:
        """Height of a capital letter per em."""
        return typeface(font).cap_height

    def x_height(self, font: str) -> float:
        """Height of a small letter per em."""
        return typeface(font).x_height

    def ascent(self, font: str) -> float:
        """Height of the tall small letters per em."""
        return typeface(font).ascent

    def descent(self, font: str) -> float:
        """Depth of letters under the baseline per em, as a positive number."""
        return typeface(font).descent

    def missing(self, text: str, font: str) -> str:
        """The characters of a text that the font cannot print, each once, in order of appearance."""
        return typeface(font).missing(text)
