"""Marks found in pixels: a stack of rules printed as PDF, drawn by another program's eyes, and looked over.

A mark is found where its declared shape is dark on the page and would not be if its own rule were not drawn. So a line
that lies exactly on another is found under neither. The declared shape is what is dark of its items
(`bookmaker.sight`); what covers what is not asked of the code that works it out for the composer.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from io import BytesIO
from itertools import groupby
from typing import Any

import pypdfium2
from PIL import Image as Raster
from PIL import ImageChops, ImageFilter

from bookmaker.display.items import Document, Group, Item, Page
from bookmaker.ink.pdf import pdf_bytes
from bookmaker.layout.art.gridart import painted
from bookmaker.puzzle.grid import CLASSIC
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules.common.contract import Rule
from bookmaker.rules.common.drawing.frame import Mark
from bookmaker.sight import shapes

DPI = 150
"""Coarse as a copy is."""

DARK, DIFFERENT = 150, 50
"""Of 255: darker than that is ink, and by how much ink of one's own has to change a pixel nearby."""

STROKES, SOLID = 0.55, 0.65
"""So much has to be found of a mark's strokes, and of each of its figures and filled signs. A little less than the
composer asks for, since at this size a pixel is as wide as a stroke."""

ROOM = 1.7
"""Cells outside the grid at its left and top that are looked at."""

Names = tuple[str, ...]


@dataclass
class Sighting:
    """Points of one part of a mark: all that the mark alone shows, and those found on the page."""

    least: float
    shown: int = 0
    found: int = 0


@dataclass
class Stack:
    """Some rules drawn together, with cells of `cell` points; `drawn` has each item with its rule and mark."""

    rules: tuple[Rule, ...]
    cell: float
    weight: float = 1.0
    drawn: list[tuple[Item, tuple[Rule, Mark] | None]] = field(init=False)

    def __post_init__(self) -> None:
        empty = Puzzle(CLASSIC, (0,) * len(CLASSIC.cells), self.rules)
        self.drawn = [*painted(empty, self.cell, weight=self.weight)]

    def owner(self, rule: Rule, mark: Mark) -> object:
        """Whom a mark is told from: the other rule or, where there is one rule, its other marks."""
        return id(rule) if len(self.rules) > 1 else mark.of

    def owners(self) -> list[object]:
        return [*dict.fromkeys(self.owner(*owned) for _, owned in self.drawn if owned)]

    def page(self, only: object = None, without: object = None, bare: bool = False) -> Page:
        """The stack on a page; `only` what one owner drew, without lines of the grid, or `without` that; or the grid
        `bare`."""
        items = tuple(
            item
            for item, owned in self.drawn
            if (only is None or (owned is not None and self.owner(*owned) == only))
            and (without is None or owned is None or self.owner(*owned) != without)
            and not (bare and owned)
        )
        side = (CLASSIC.size + ROOM + 0.3) * self.cell
        return Page(side, side, (Group(items, ROOM * self.cell, ROOM * self.cell),), "")

    def pages(self) -> Iterator[Page]:
        yield self.page()
        yield self.page(bare=True)
        for owner in self.owners():
            yield self.page(only=owner)
            yield self.page(without=owner)


def sightings(stack: Stack, pictures: Sequence[Raster.Image]) -> dict[tuple[Names, str, int], Sighting]:
    """What is found of each part of each mark; each figure and filled sign is a part of its own, numbered from 1. Where
    a line of the grid lies on a dark sign, nothing is found and nothing lost.

    `pictures` are those of `stack.pages()`.
    """
    seen: dict[tuple[Names, str, int], Sighting] = {}
    whole: Any = pictures[0].filter(ImageFilter.MinFilter(3)).load()
    lines: Any = pictures[1].load()
    for number, owner in enumerate(stack.owners(), start=1):
        alone, others = pictures[2 * number : 2 * number + 2]
        mine: Any = alone.filter(ImageFilter.MinFilter(3)).load()
        own: Any = ImageChops.difference(pictures[0], others).filter(ImageFilter.MaxFilter(3)).load()
        for item, owned in stack.drawn:
            if owned is None or stack.owner(*owned) != owner:
                continue
            mark = owned[1]
            for shape in shapes((Group((item,), ROOM * stack.cell, ROOM * stack.cell),)):
                least = SOLID if shape.solid else min(STROKES, mark.least or STROKES)
                key = mark.of, mark.part, len(seen) + 1 if shape.solid else 0
                part = seen.setdefault(key, Sighting(least))
                for x, y in shape.points:
                    pixel = int(x * DPI / 72), int(y * DPI / 72)
                    if not all(0 <= place < alone.width for place in pixel) or mine[pixel] >= DARK:
                        continue
                    if not (shape.solid and lines[pixel] < DARK):
                        part.shown += 1
                        part.found += whole[pixel] < DARK and own[pixel] > DIFFERENT
    return seen


def unseen(stacks: Sequence[Stack]) -> list[list[str]]:
    """For each stack what is not found: the name of the mark, its part, and the share that was found."""
    counts = [len([*stack.pages()]) for stack in stacks]
    pages = tuple(page for stack in stacks for page in stack.pages())
    pictures = iter(_pictures(pages))
    told = []
    for stack, count in zip(stacks, counts, strict=True):
        found = sightings(stack, [next(pictures) for _ in range(count)])
        told.append(
            [
                f"{of[0]} {part}: {one.found / one.shown:.2f}"
                for (of, part, _), one in found.items()
                if one.found < one.least * one.shown
            ]
        )
        dark = {of for (of, _, _), one in found.items() if one.shown}
        drawn = {owned[1].of for _, owned in stack.drawn if owned}
        told[-1] += [f"{of[0]}: shows nothing dark" for of in sorted(drawn - dark)]
    return told


def _pictures(pages: Sequence[Page]) -> Iterator[Raster.Image]:
    """The pages as another program draws them. Pages of one size come in one file."""
    for _, group in groupby(pages, key=lambda page: page.width):
        with pypdfium2.PdfDocument(BytesIO(pdf_bytes(Document("stacks", "", "", tuple(group))))) as pdf:
            for page in pdf:
                yield page.render(scale=DPI / 72, grayscale=True).to_pil().convert("L")
