"""Paragraphs in which some words are slanted or bold.

In: runs of one style each, type, the width of a column. Out: rows as `text.paragraph` makes them; the styles are the
slanted and the bold of the type's own family.
"""

from __future__ import annotations

from itertools import groupby

from bookmaker.display.items import Item, Text
from bookmaker.display.tags import PARAGRAPH
from bookmaker.hyphenation import pieces
from bookmaker.layout.setting.linebreak import line_lengths
from bookmaker.layout.setting.text import DROP, FONTS, HYPHEN, Row
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
    parts = [part for word in _words(runs, type) for part in _parted(word, type.language)]
    widths = [sum(FONTS.width(letters, font, type.size) for letters, font in word) for word, _ in parts]
    joined = [follows for _, follows in parts]
    space, hyphen = FONTS.width(" ", type.font, type.size), FONTS.width(HYPHEN, type.font, type.size)
    rows: list[Row] = []
    at, counts = 0, line_lengths(widths, space, measure, joined, hyphen)
    for index, count in enumerate(counts):
        end = at + count
        words = _rejoined(parts[at:end])
        if end < len(parts) and joined[end]:
            words[-1].append((HYPHEN, words[-1][-1][1]))
        items = tuple(_line(words, type, x, type.leading - DROP * line))
        at = end
        last = len(counts) - 1
        rows.append(
            Row(
                type.leading,
                items,
                tied=last > 0 and index in (0, last - 1),
                tags=(PARAGRAPH.further if index else PARAGRAPH,),
            )
        )
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


def _parted(word: list[Piece], language: str) -> list[tuple[list[Piece], bool]]:
    """The parts of a word, each with whether it goes on from the one before; a word of two fonts stays whole."""
    if len(word) > 1 or not language:
        return [(word, False)]
    ((letters, font),) = word
    return [([(part, font)], at > 0) for at, part in enumerate(pieces(letters, language))]


def _rejoined(parts: list[tuple[list[Piece], bool]]) -> list[list[Piece]]:
    """The words of one line; its first part begins one even where it goes on from the line before."""
    words: list[list[Piece]] = []
    for part, follows in parts:
        if follows and words:
            ((letters, font),), ((more, _),) = words[-1], part
            words[-1] = [(letters + more, font)]
        else:
            words.append([*part])
    return words


def _line(words: list[list[Piece]], type: Type, x: float, y: float) -> list[Item]:
    """Neighbouring words of one font make one text, so that they can be searched for and copied."""
    space = FONTS.width(" ", type.font, type.size)
    row: list[Piece] = []
    for index, word in enumerate(words):
        if index:
            before = row[-1][1]
            row.append((" ", before if before == word[0][1] else ""))
        row += word
    items: list[Item] = []
    for font, group in groupby(row, key=lambda piece: piece[1]):
        text = "".join(letters for letters, _ in group)
        if font:
            items.append(Text(x, y, text, font, type.size))
        x += FONTS.width(text, font, type.size) if font else space
    return items
