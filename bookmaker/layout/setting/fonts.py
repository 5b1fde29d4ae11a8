"""Measuring text: what layout asks of the fonts.

In: a text, a font's name from `fonts/fonts.yaml`, a size in points. Out: lengths in points; heights per em.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import assert_never

from bookmaker.display.items import Close, Curve, Move, Point, Segment, Straight
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

    def outline(self, character: str, font: str, size: float, x: float = 0.0) -> tuple[Segment, ...]:
        """A character's outline in points, y down, from the point (x, 0) on its baseline."""

        def at(point: Point) -> Point:
            return x + point[0] * size, -point[1] * size

        return tuple(_moved(segment, at) for segment in typeface(font).outline(character))


def _moved(segment: Segment, at: Callable[[Point], Point]) -> Segment:
    match segment:
        case Move(to):
            return Move(at(to))
        case Straight(to):
            return Straight(at(to))
        case Curve(first, second, to):
            return Curve(at(first), at(second), at(to))
        case Close():
            return segment
        case _ as never:
            assert_never(never)
