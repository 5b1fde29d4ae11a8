"""Texts as PDF operators (ISO 32000-1, 9.4), and the cells of tables, most of which hold one character.

In: texts and cells, and the font that is in use. Out: operators, and the font in use after them. Those of one character
are kept: the digits of grids come again and again.
"""

from __future__ import annotations

from collections.abc import Iterable
from typing import NamedTuple, TypeAlias

from bookmaker.display.colour import Colour
from bookmaker.display.items import Group, Item, Link, Point, Tagged, Text
from bookmaker.display.recurring import Recurring
from bookmaker.display.tags import Role
from bookmaker.geometry import text_start
from bookmaker.ink.operators import at, hexadecimal, number
from bookmaker.ink.pdffile import PdfFile
from bookmaker.ink.pdffonts import GlyphCodes
from bookmaker.ink.structure import Leaf, Structure, type_of

_KEPT = 8000
"""Characters in their places, and cells."""

Font: TypeAlias = tuple[str, float]
"""A font as the page's resources call it, and its size."""


class Single(NamedTuple):
    """A text of one character: its operators with the font named and without."""

    font: Font
    named: str
    unnamed: str

    def after(self, font: Font) -> str:
        """Its operators where that font is in use."""
        return self.unnamed if font == self.font else self.named


class Cell(NamedTuple):
    """An element that is one piece of marked content, as operators, %d for the number of that content: what begins it;
    and, if it holds one character or nothing, all of them, with the character's font named and without."""

    items: tuple[Item, ...]
    leaf: Leaf
    begin: str
    colour: Colour | None = None
    font: Font | None = None
    named: str = ""
    unnamed: str = ""


class Lettering:
    """Makes the texts of one file, and the cells, if it has a structure."""

    def __init__(self, file: PdfFile, structure: Structure | None = None) -> None:
        self._codes = GlyphCodes(file)
        self._structure = structure
        self.single = Recurring(self._of_single, _KEPT)
        self.cell = Recurring(self._of_cell, _KEPT)

    def text(self, text: Text, font: Font, shift: Point) -> tuple[str, Font]:
        """The operators of a text that is moved by so much, where that font is in use; and the font in use after it."""
        spaced = text.letter_space and len(text.text) > 1
        letter_space = f"{number(text.letter_space)} Tc\n" if spaced else ""
        word_space = f"{number(text.word_space)} Tw\n" if text.word_space else ""
        shown = []
        for resource, glyphs in self._codes.shown(text.text, text.font):
            if font != (resource, text.size):
                font = resource, text.size
                shown.append(f"{resource} {number(text.size)} Tf")
            shown.append(glyphs)
        back = ("0 Tc\n" if letter_space else "") + ("0 Tw\n" if word_space else "")
        start, run = at((text_start(text) + shift[0], text.y + shift[1])), "\n".join(shown)
        run = f"BT\n{letter_space}{word_space}{start} Td\n{run}\n{back}ET"
        if spaced:  # a reader shall find the word, not its letters one by one
            run = f"/Span << /ActualText <{hexadecimal(text.text)}> >> BDC\n{run}\nEMC"
        return run, font

    def _of_single(self, text: Text) -> Single:
        ((resource, glyphs),) = self._codes.shown(text.text, text.font)
        start = f"BT\n{at((text_start(text), text.y))} Td"
        named = f"{start}\n{resource} {number(text.size)} Tf\n{glyphs}\nET"
        return Single((resource, text.size), named, f"{start}\n{glyphs}\nET")

    def _of_cell(self, element: Item) -> Cell | None:
        """The element as a cell; None where it is not one piece of marked content to which nothing is added: empty, or
        the cell of a table that holds text."""
        if self._structure is None or not isinstance(element, Tagged) or not is_one_piece(element):
            return None
        items, leaf = element.items, self._structure.leaf(element.tag)
        begin = f"/{type_of(element.tag)} << /MCID %d >> BDC"
        if not items:
            return Cell(items, leaf, begin, unnamed=f"{begin}\nEMC")
        if len(items) == 1 and isinstance(text := items[0], Text) and len(text.text) == 1:
            font, named, unnamed = self.single(text)
            return Cell(items, leaf, begin, text.colour, font, f"{begin}\n{named}\nEMC", f"{begin}\n{unnamed}\nEMC")
        return Cell(items, leaf, begin)


def is_one_piece(element: Tagged) -> bool:
    """Is it empty, or a cell that holds text: one piece of marked content to which nothing is added?"""
    return not element.items or (
        element.tag.role is Role.CELL and all(isinstance(item, Text) for item in element.items)
    )


def is_moved_text(group: Group) -> bool:
    """Does the group hold nothing but text and links, at most moved, and without a name?"""
    return group.scale == 1.0 and not (group.turn or group.clip or group.name) and _are_texts(group.items)


def _are_texts(items: Iterable[Item]) -> bool:
    for item in items:
        if isinstance(item, Tagged):
            if item.tag.role is Role.CELL or not _are_texts(item.items):
                return False
        elif not isinstance(item, (Text, Link)):
            return False
    return True
