"""How a book is dressed: the colours of its cover, and the ornament that its puzzles are drawn into. Lengths in points.

`themefile` reads one from `layouts/themes/<name>.yaml`; whoever draws only asks it. Nothing in a theme carries meaning.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Literal, TypeAlias

from bookmaker.display.colour import Colour, grey_of
from bookmaker.source.diagnostics import Place

Pattern: TypeAlias = Literal["field", "patchwork", "terraces", "bands", "mosaic"]
"""How ornament is laid out: over the whole sheet; on boxes in two grounds; on steps that rise to the right; on stripes
between plain ones; as small squares where digits are given."""


@dataclass(frozen=True, slots=True)
class Palette:
    """Colours: of the `ground` and of a second `tone` of it, of the `panel` that words stand on and of the `words`, and
    of the `marks`, which are taken in turn."""

    ground: Colour
    tone: Colour
    panel: Colour
    words: Colour
    marks: tuple[Colour, ...]

    @property
    def in_black(self) -> Palette:
        """The same as a press sees it that has black ink only."""
        marks = tuple(grey_of(colour) for colour in self.marks)
        return Palette(grey_of(self.ground), grey_of(self.tone), grey_of(self.panel), grey_of(self.words), marks)


@dataclass(frozen=True, slots=True)
class Theme:
    """A theme. `across` is how many cells of the pattern go across a page, `weight` how heavy its lines are beside the
    usual, `digits` the font of its figures. `inside` are the colours of the ornament between the puzzles."""

    name: str
    about: str
    cover: Palette
    inside: Palette
    pattern: Pattern
    across: int
    weight: float
    digits: str
    place: Place

    @property
    def in_black(self) -> Theme:
        """The theme for pages that are printed in black only; its cover keeps its colours."""
        return replace(self, inside=self.inside.in_black)
