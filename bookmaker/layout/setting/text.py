"""Setting text: paragraphs into lines, lines into items on the baseline grid.

In: text, type, the width of a column. Out: `Row`s, one a line, which `flow` stacks into columns without leaving a line
of a paragraph alone.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import dataclass
from functools import lru_cache
from typing import Literal, TypeAlias

from bookmaker.display.colour import Grey
from bookmaker.display.items import Item, Link, Text, tagged
from bookmaker.display.tags import LINK, PARAGRAPH, Tags, further
from bookmaker.hyphenation import pieces
from bookmaker.layout.setting.fonts import FontBook
from bookmaker.layout.setting.linebreak import line_lengths
from bookmaker.layout.spec import Type

FONTS = FontBook()
HYPHEN = "-"
DROP = 0.28
"""How far a baseline lies above the foot of its row, as a share of the row's height on the baseline grid."""


Labels: TypeAlias = Mapping[str, str]
"""The printed page number of every anchor."""


@dataclass(frozen=True, slots=True)
class PageNumber:
    """The number of the page that holds an anchor, after a few `words`; a link to it, in elements of these tags. Known
    when all pages are."""

    x: float
    y: float
    words: str
    target: str
    type: Type
    grey: Grey = 0.0
    anchor: Literal["start", "end"] = "end"
    tags: Tags = (PARAGRAPH,)

    def items(self, labels: Labels) -> Iterator[Item]:
        """The text with its link; nothing where the publication has no such page."""
        if self.target not in labels:
            return
        text = self.words + labels[self.target]
        wide = width(text, self.type)
        left = self.x - wide if self.anchor == "end" else self.x
        said = text if self.words else f"page {text}"
        yield tagged(
            (*self.tags, LINK),
            Text(self.x, self.y, text, self.type.font, self.type.size, self.grey, self.anchor),
            Link(left, self.y - self.type.size, wide, 1.3 * self.type.size, self.target, said),
        )


@dataclass(frozen=True, slots=True)
class Later:
    """Items that are made when they are drawn: those of a long book would take much memory until then."""

    make: Callable[[], Iterable[Item | PageNumber]]

    def __iter__(self) -> Iterator[Item | PageNumber]:
        return iter(self.make())


@dataclass(frozen=True, slots=True)
class Row:
    """A strip of a column: items from its top left corner, and its height.

    A `tied` row stays with the row below it. `anchors` are names that lead to the row. `tags` are the elements that all
    of it belongs to; without any, its items say for themselves what they are.
    """

    height: float
    items: tuple[Item | PageNumber, ...] | Later = ()
    tied: bool = False
    anchors: tuple[str, ...] = ()
    tags: Tags = ()

    @property
    def told(self) -> tuple[Item, ...]:
        """The items inside their elements, to stand on one row with those of others."""
        items = tuple(self.drawn({}))
        return (tagged(self.tags, *items),) if self.tags else items

    def drawn(self, labels: Labels) -> Iterator[Item]:
        """The items, page numbers filled in."""
        for item in self.items:
            if isinstance(item, PageNumber):
                yield from item.items(labels)
            else:
                yield item


@lru_cache(maxsize=20_000)
def broken(text: str, font: str, size: float, measure: float, language: str = "") -> tuple[str, ...]:
    """The lines of a paragraph set flush left in a column of this width; hyphenated if a language is named."""
    if text and "" not in text.split(" ") and FONTS.width(text, font, size) <= measure:
        return (text,)
    found: list[str] = []
    joined: list[bool] = []
    for word in text.split(" "):
        parts = pieces(word, language) if language else (word,)
        for at, part in enumerate(parts):
            cut = _that_fit(part, font, size, measure) if part else []
            found += cut
            joined += [at > 0, *[False] * (len(cut) - 1)] if cut else []
    widths = [FONTS.width(piece, font, size) for piece in found]
    space, hyphen = FONTS.width(" ", font, size), FONTS.width(HYPHEN, font, size)
    lines, at = [], 0
    for count in line_lengths(widths, space, measure, joined, hyphen):
        end = at + count
        line = "".join(
            piece if follows or index == 0 else f" {piece}"
            for index, (piece, follows) in enumerate(zip(found[at:end], joined[at:end], strict=True))
        )
        lines.append(line + HYPHEN if end < len(found) and joined[end] else line)
        at = end
    return tuple(lines)


def width(text: str, type: Type, letter_space: float = 0.0) -> float:
    """Length of a run of text in points."""
    return FONTS.width(text, type.font, type.size, letter_space)


def cut(text: str, type: Type, room: float, letter_space: float = 0.0) -> str:
    """The text, or as many of its words as fit in `room` points with an ellipsis after them; one word always stays."""
    words = text.split(" ")
    short = text
    while len(words) > 1 and width(short, type, letter_space) > room:
        words.pop()
        short = " ".join(words).rstrip(" ,;:–") + " …"
    return short


def paragraph(
    text: str,
    type: Type,
    measure: float,
    line: float,
    x: float = 0.0,
    grey: Grey = 0.0,
    tags: Tags = (PARAGRAPH,),
) -> tuple[Row, ...]:
    """Rows of a paragraph, their baselines on a grid of `line` points; first and last pairs of lines are tied."""
    lines = broken(text, type.font, type.size, measure, type.language)
    last = len(lines) - 1
    return tuple(
        Row(
            type.leading,
            (Text(x, type.leading - DROP * line, words, type.font, type.size, grey),),
            tied=last > 0 and index in (0, last - 1),
            tags=further(tags) if index else tags,
        )
        for index, words in enumerate(lines)
    )


def widest_word(text: str, font: str, size: float) -> float:
    """The width in points of the longest word."""
    return max((FONTS.width(word, font, size) for word in text.split(" ")), default=0.0)


def _that_fit(word: str, font: str, size: float, measure: float) -> list[str]:
    """A word in pieces no wider than the column: itself, but for an endless one, which is cut wherever it must be."""
    pieces = []
    while len(word) > 1 and FONTS.width(word, font, size) > measure:
        fits = (n for n in range(len(word) - 1, 1, -1) if FONTS.width(_cut_off(word, n), font, size) <= measure)
        cut = next(fits, 1)
        pieces.append(_cut_off(word, cut))
        word = word[cut:]
    return [*pieces, word]


def _cut_off(word: str, at: int) -> str:
    """The beginning of a word, with a hyphen unless a dash or a stroke stands there already."""
    return word[:at] if word[at - 1] in "-–—/" else word[:at] + HYPHEN
