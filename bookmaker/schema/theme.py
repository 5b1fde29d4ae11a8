"""A theme file, as JSON Schema, made as that of a layout is: its reader is asked for a theme by sections that note it.

What a line is for, the comments of the theme `harbour-night` say.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import TypeVar

from bookmaker.layout.explained import explained
from bookmaker.layout.themefile import INKS, MOST_MARKS, NEEDED, PALETTE, theme_from
from bookmaker.schema import shapes
from bookmaker.schema.layout import ANYWHERE, Noted
from bookmaker.schema.shapes import Shape
from bookmaker.source.placed import Node

T = TypeVar("T")

COLOUR = shapes.matching(INKS)


def theme() -> Shape:
    """The whole file of a theme."""
    top = _Noted(NEEDED, ())
    theme_from(top, "", ANYWHERE)
    return top.shape(explained("themes/harbour-night.yaml"))


class _Noted(Noted):
    """A section that knows colours."""

    def value(self, name: str, read: Callable[[Node], T | None], stand_in: T) -> T:
        if name == "marks":
            self.noted[name] = {"type": "array", "items": COLOUR, "minItems": 2, "maxItems": MOST_MARKS}
            return stand_in
        if name in PALETTE:
            self.noted[name] = COLOUR
            return stand_in
        return super().value(name, read, stand_in)
