"""What a layout reads from files before its first page: the fonts of its types, kerned, and where words part.

In: a layout that speaks its language. Out: nothing, but all of it is kept. It takes a fifth of a second, which passes
unseen where workers are at the puzzles meanwhile.
"""

from __future__ import annotations

from dataclasses import fields

from bookmaker.hyphenation import pieces
from bookmaker.layout.setting.fonts import FontBook
from bookmaker.layout.spec import Layout, Type

SPECIMEN = "Waterways"
"""A word that is kerned, and long enough to be parted."""


def make_ready(layout: Layout) -> None:
    """Set a word in every type of the layout."""
    for role in fields(layout.type):
        type: Type = getattr(layout.type, role.name)
        FontBook().width(SPECIMEN, type.font, type.size)
        if type.language:
            pieces(SPECIMEN, type.language)
