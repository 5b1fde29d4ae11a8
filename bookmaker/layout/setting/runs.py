"""Paragraphs in which some words are slanted or bold.

In: runs of one style each, type, the width of a column. Out: rows as `text.paragraph` makes them; the styles are the
slanted and the bold of the type's own family.
"""

from __future__ import annotations

from itertools import groupby

from bookmaker.display.items import Item, Text
from bookmaker.layout.setting.linebreak import line_lengths
from bookmaker.layout.setting.text import DROP, FONTS, Row
from bookmaker.layout.spec import Type
from bookmaker.manifest.markup import Runs, Style

Piece = tuple[str, str]
"""Letters of one word with their font."""


def font_of(style: Style, type: Type) -> str:
    """The font of a style beside this type; the type's own where its family has no other."""
    name = type.font if style == "plain" else f"{type.font}-{style}"
    return name if name in FONTS.names else type.font


def marked_paragraph(runs: Runs, type: Type, measure: float, line: float, x: float = 0.0) -> tuple[Row, ...]:
    """Rows of a paragraph, the first two and the last two tied."""
    words = _words(runs, type)
    widths = [sum(FONTS.width(letters, font, type.size) for letters, font in word) for word in words]
    space = FONTS.width(" ", type.font, type.size)
    rows: list[Row] = []
    at, counts = 0, line_lengths(widths, space, measure)
    for index, count in enumerate(counts):
        items = tuple(_line(words[at : at + count], type, x, type.leading - DROP * line))
        at += count
        last = len(counts) - 1
        rows.append(Row(type.leading, items, tied=last > 0 and index in (0, last - 1)))
    return tuple(rows)


def _words(runs: Runs, type: Type) -> list[list[Piece]]:
    """Words as they stand between spaces, each in pieces of one font."""
    words: list[list[Piece]] = [[]]
    for run in runs:
        font = font_of(run.style, type)
        for index, letters in enumerate(run.text.split(" ")):
            if index:
                words.append([])
            if letters:
                words[-1].append((letters, font))
    return [word for word in words if word]


def _line(words: list[list[Piece]], type: Type, x: float, y: float) -> list[Item]:
    """Neighbouring words of one font make one text, so that they can be searched for and copied."""
    space = FONTS.width(" ", type.font, type.size)
    pieces: list[Piece] = []
    for index, word in enumerate(words):
        if index:
            pieces.append((" ", word[0][1] if pieces[-1][1] == word[0][1] else ""))
        pieces += word
    items: list[Item] = []
    for font, group in groupby(pieces, key=lambda piece: piece[1]):
        text = "".join(letters for letters, _ in group)
        if font:
            items.append(Text(x, y, text, font, type.size))
        x += FONTS.width(text, font, type.size) if font else space
    return items
