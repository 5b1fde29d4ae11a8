"""The pictures of an e-book: grids, samples of marks and worked figures as SVG, the front of the cover as PNG.

In: puzzles, samples, a book. Out: names of files and their bytes; a picture that is needed twice is there once.
"""

from __future__ import annotations

from collections import Counter
from xml.etree.ElementTree import Element

from bookmaker.book.contents import Book, BookPuzzle, WorkedFigure
from bookmaker.book.reading import grid_read, rows_read
from bookmaker.display.items import Document, Group, Page, Rect
from bookmaker.hypertext.elements import allowed, element
from bookmaker.ink.pdf import pdf_bytes
from bookmaker.ink.pixels import page_pictures, png_bytes
from bookmaker.ink.svg import svg_text
from bookmaker.language import Catalogue, catalogue
from bookmaker.layout import Layout, compose_cover
from bookmaker.layout.art.swatch import figure_size, swatch, swatch_size, worked_figure
from bookmaker.layout.sheets.single_picture import grid_picture
from bookmaker.rules.common.contract import Sample

COVER_HIGH = 2000
"""Height of the cover in pixels (common practice, no source)."""

CELL, EDGE = 30.0, 2.0
"""Width of a cell of samples and figures, and white around them, in points."""

MARK, FIGURE = 1.8, 2.3
"""Width of a cell of a sample beside words and of a figure by itself, in ems."""


class Pictures:
    """Draws pictures as they are asked for and keeps their files."""

    def __init__(self, language: str = "en") -> None:
        self.language = language
        self.words = catalogue(language)
        self.files: dict[str, bytes] = {}
        self._names: dict[bytes, str] = {}
        self._taken = Counter[str]()

    def grid(self, puzzle: BookPuzzle) -> Element:
        """The grid of a puzzle."""
        page = grid_picture(puzzle.puzzle, f"grid {puzzle.id}", language=self.language)
        name = self.words.say("puzzle-named", name=puzzle.named(self.words))
        content = svg_text(page, allowed(name), allowed(told(self.words, puzzle))).encode()
        how = "picture-told-in-words" if grid_read(self.words, puzzle.puzzle) else "picture-told-as-table"
        alt = self.words.say(how, number=str(puzzle.number))
        file = self._kept(f"puzzle-{puzzle.number}", content)
        return element("img", src=file, alt=alt, class_="paper board")

    def mark(self, sample: Sample) -> Element:
        """A sample of a mark beside words that say the same."""
        wide, high = swatch_size(sample, CELL)
        return self._sample(
            Group((swatch(sample, CELL),), EDGE, EDGE), wide, high, MARK, "", f"mark-{sample.rule.kind}"
        )

    def figure(self, figure: WorkedFigure, text: str) -> Element:
        """A worked figure."""
        wide, high = figure_size(figure, CELL)
        drawn = Group((worked_figure(figure, CELL),), EDGE, EDGE)
        return self._sample(drawn, wide, high, FIGURE, text, f"figure-{figure.sample.rule.kind}")

    def _sample(self, drawn: Group, wide: float, high: float, ems: float, alt: str, name: str) -> Element:
        content = svg_text(Page(wide + 2 * EDGE, high + 2 * EDGE, (drawn,), ""), alt).encode()
        width = f"width: {ems * (wide + 2 * EDGE) / CELL:.2f}em"
        return element("img", src=self._kept(name, content), alt=alt, class_="paper", style=width)

    def _kept(self, name: str, content: bytes) -> str:
        if content not in self._names:
            self._taken[name] += 1
            again = self._taken[name]
            file = f"images/{name}{f'-{again}' if again > 1 else ''}.svg"
            self._names[content] = file
            self.files[file] = content
        return self._names[content]


def told(words: Catalogue, puzzle: BookPuzzle) -> str:
    """What is on a grid: its regions and marks in words, then its digits row by row."""
    grid = puzzle.puzzle.grid
    said = [*grid_read(words, puzzle.puzzle)]
    said += rows_read(words, grid, puzzle.puzzle.givens)
    return ". ".join(said) + "."


def cover_picture(book: Book, layout: Layout, pages: int) -> bytes:
    """The front of the printed cover as a PNG file."""
    (sheet,) = compose_cover(book, layout, pages).pages
    left = sheet.width - layout.width
    front = Group(sheet.items, -left, clip=Rect(left, 0.0, layout.width, sheet.height))
    page = Page(layout.width, sheet.height, (front,), "")
    dpi = 72 * COVER_HIGH / sheet.height
    (picture,) = page_pictures(pdf_bytes(Document(book.title, "", "", (page,))), dpi)
    return png_bytes(picture, dpi)
