"""One page's display items as PDF operators (ISO 32000-1, annex A), each with its operands on a line of its own.

In: display items. Out: the bytes of the page's content, and the areas of links and fields on it. The items' origin is
the top left corner of the trim; y is negated on the way, so that text stands upright without a mirrored matrix. Greys
are DeviceGray; inks are DeviceCMYK for a press and DeviceRGB for a screen. With a `Structure`, all that is painted is
marked as part of one of its elements or, where no tag is around it, as an artifact.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from itertools import chain
from typing import Literal, NamedTuple, TypeAlias, assert_never

from bookmaker.display.colour import Colour, Ink
from bookmaker.display.items import (
    Field,
    Group,
    Image,
    Item,
    Line,
    Link,
    Path,
    Rect,
    Segment,
    Stroke,
    Tagged,
    Text,
    holds_elements,
)
from bookmaker.display.recurring import Recurring
from bookmaker.display.tags import FIELD, HOLDERS, LINK, Role, Tag
from bookmaker.geometry import IDENTITY, Matrix, box_in, placing, within
from bookmaker.ink.conditions import Condition
from bookmaker.ink.images import Images
from bookmaker.ink.lettering import Cell, Lettering, is_moved_text, is_one_piece
from bookmaker.ink.operators import at, hexadecimal, number, path_of, placed, rectangle
from bookmaker.ink.pdffile import PdfFile
from bookmaker.ink.pens import changed_to, filled_with
from bookmaker.ink.structure import Element, Structure

MARK = "Bookmaker"
"""The tag of the marked content that holds a named group; its property list has the name under /Name."""

_PATHS = 500
"""Paths whose operators are kept: the lines of grids, which are few but come again and again, pass among the profiles
of puzzles, which are long and come once."""


class Area(NamedTuple):
    """Where a link or a field lies on its page, what it is, and the element it belongs to if there are any."""

    left: float
    top: float
    right: float
    bottom: float
    what: Link | Field
    element: Element | None


Owner: TypeAlias = Element | Literal["artifact"] | None
"""What is painted belongs to an element or to none of them; None where there is no structure."""


class Content:
    """Makes the content of a file's pages, one after the other.

    `images` has the numbers of the images on the page made last, by the names that its content calls them by;
    `coloured` says whether anything but greys has been painted. With a `condition`, colours are those of that press.
    """

    def __init__(self, file: PdfFile, structure: Structure | None = None, condition: Condition | None = None) -> None:
        self._structure = structure
        self._condition = condition
        self.coloured = False
        self._letters = Lettering(file, structure)
        self._path: Recurring[tuple[Segment, ...], str] = Recurring(path_of, _PATHS)
        self._images = Images(file, condition)
        self._begin()

    def _begin(self) -> None:
        self._operators: list[str] = []
        self._put: Callable[[str], None] = self._operators.append
        self.images: dict[str, int] = {}
        self._areas: list[Area] = []
        self._matrix: Matrix = IDENTITY
        self._shift = (0.0, 0.0)
        self._stroke = Stroke(1.0)
        self._fill: Colour = 0.0
        self._font = ("", 0.0)
        self._left = self._top = 0.0
        self._owner: Owner = "artifact" if self._structure else None
        self._open: Owner = None

    def page(self, items: Iterable[Item], left: float, top: float) -> tuple[bytes, list[Area]]:
        """The content that draws these items, their origin at a point of the sheet; and where links and fields lie."""
        self._begin()
        self._left, self._top = left, top
        self._put(f"1 0 0 1 {number(left)} {number(top)} cm")
        self._draw(items)
        self._leave(None)
        return "\n".join(self._operators).encode("ascii"), self._areas

    def _draw(self, items: Iterable[Item]) -> None:
        for item in items:
            match item:  # the most frequent first
                case Tagged():
                    self._tagged(item)
                case Text():
                    self._text(item)
                case Line(start, end, stroke):
                    self._mark()
                    self._pen(stroke)
                    self._put(f"{at(start)} m\n{at(end)} l\nS")
                case Rect():
                    self._mark()
                    self._shape(rectangle(item), item.stroke, item.fill, "")
                case Path():
                    self._mark()
                    self._shape(self._path(item.segments), item.stroke, item.fill, "*")
                case Image():
                    self._mark()
                    self._image(item)
                case Group():
                    self._group(item)
                case Link():
                    self._area(item, LINK)
                case Field():
                    self._area(item, FIELD)
                case _ as never:
                    assert_never(never)

    def _shape(self, path: str, stroke: Stroke | None, fill: Colour | None, rule: str) -> None:
        if fill is not None:
            self._paint(fill)
        if stroke is not None:
            self._pen(stroke)
        match stroke is not None, fill is not None:
            case True, True:
                self._put(f"{path}\nB{rule}")
            case True, False:
                self._put(f"{path}\nS")
            case False, True:
                self._put(f"{path}\nf{rule}")

    def _text(self, text: Text) -> None:
        if not text.text:
            return
        self._mark()
        self._paint(text.colour)
        if len(text.text) == 1 and self._shift == (0.0, 0.0):
            single = self._letters.single(text)
            self._put(single.after(self._font))
            self._font = single.font
        else:
            run, self._font = self._letters.text(text, self._font, self._shift)
            self._put(run)

    def _image(self, image: Image) -> None:
        self.coloured |= image.coloured
        stored = self._images.stored(image)
        name = f"Im{stored}"
        self.images[name] = stored
        self._put(f"q\n{number(image.width)} 0 0 {number(image.height)} {at((image.x, image.y + image.height))} cm")
        self._put(f"/{name} Do\nQ")

    def _group(self, group: Group) -> None:
        """What a group holds; a name makes it marked content."""
        matrix = placing(group)
        if is_moved_text(group):
            self._lines(group, matrix)
            return
        if self._open == "artifact" or (group.name and holds_elements(group.items)):
            self._leave(None)
        around = self._open
        if group.name:
            self._put(f"/{MARK} << /Name <{hexadecimal(group.name)}> >> BDC")
        if matrix == IDENTITY and group.clip is None:
            self._draw(group.items)
            self._leave(around)
        else:
            self._set_apart(group, matrix, around)
        if group.name:
            self._put("EMC")

    def _lines(self, group: Group, matrix: Matrix) -> None:
        """Write lines of text where they come to stand, without moving the origin: a page has many of them."""
        before, around = self._matrix, self._open
        self._matrix, self._shift = within(before, matrix), (group.dx, group.dy)
        self._draw(group.items)
        self._matrix, self._shift = before, (0.0, 0.0)
        if self._open != "artifact":
            self._leave(around)

    def _set_apart(self, group: Group, matrix: Matrix, around: Owner) -> None:
        """Draw what a group holds as it is placed and clipped, inside `q … Q`."""
        before = self._matrix, self._stroke, self._fill, self._font
        self._matrix = within(self._matrix, matrix)
        self._put("q")
        if matrix != IDENTITY:
            self._put(placed(matrix))
        if isinstance(group.clip, Rect):
            self._put(f"{rectangle(group.clip)}\nW\nn")
        elif group.clip is not None:
            self._put(f"{path_of(group.clip.segments)}\nW*\nn")
        self._draw(group.items)
        self._leave(around)
        self._put("Q")
        self._matrix, self._stroke, self._fill, self._font = before

    def _tagged(self, element: Tagged) -> None:
        """What an element holds; a cell or a figure may be without anything painted."""
        structure = self._structure
        if structure is None:
            self._draw(element.items)
            return
        if self._open is not None:
            self._leave(None)
        if is_one_piece(element) and (cell := self._letters.cell(element)):
            self._put_cells([cell], structure.put(cell.leaf))
            return
        around, made = self._owner, structure.open(element.tag)
        self._owner = "artifact" if element.tag.role in HOLDERS else made
        if element.tag.box:
            x, y, width, height = element.tag.box
            left, top, right, bottom = box_in(self._matrix, x, y, width, height)
            made.box = self._left + left, self._top - bottom, self._left + right, self._top - top
        if element.tag.role is Role.TABLE:
            self._table(element.items, structure)
        else:
            self._draw(element.items)
        self._leave(None)
        structure.close()
        self._owner = around

    def _table(self, items: Sequence[Item], structure: Structure) -> None:
        """What a table holds: mostly nothing but rows of cells, which are put together."""
        rows = [item for item in items if isinstance(item, Tagged) and item.tag.role is Role.ROW]
        found = self._letters.cell.all(chain.from_iterable([row.items for row in rows]))
        cells = [cell for cell in found if cell]
        if len(rows) == len(items) and len(cells) == len(found):
            lengths = [(row.tag, len(row.items)) for row in rows]
            self._put_cells(cells, structure.put_rows(lengths, [cell.leaf for cell in cells]))
        else:
            self._draw(items)

    def _put_cells(self, cells: Sequence[Cell], first: int) -> None:
        """Put cells whose content is numbered from `first` on."""
        ready: list[str] = []
        for which, (items, _, begin, colour, font, named, unnamed) in enumerate(cells, start=first):
            if not items or (font == self._font and colour == self._fill):
                ready.append(unnamed)
            elif font is not None and colour == self._fill:
                ready.append(named)
                self._font = font
            else:
                self._put_ready(ready, which)
                self._put(begin % which)
                self._open = self._owner  # what is painted now is marked already
                self._draw(items)
                self._open = None
                self._put("EMC")
        self._put_ready(ready, first + len(cells))

    def _put_ready(self, cells: list[str], end: int) -> None:
        """Put cells whose content is numbered up to an `end`, and forget them."""
        if cells:
            self._put("\n".join(cells) % tuple(range(end - len(cells), end)))
            cells.clear()

    def _mark(self) -> None:
        """What is painted next belongs to the element that is open, or is an artifact: say so where it is new."""
        owner = self._owner
        if owner is self._open:
            return
        self._leave(None)
        self._open = owner
        if isinstance(owner, Element) and self._structure is not None:
            type, number = self._structure.draw()
            self._put(f"/{type} << /MCID {number} >> BDC")
        else:
            self._put("/Artifact BMC")

    def _leave(self, around: Owner) -> None:
        """End what is marked, unless it was so around what was painted last."""
        if self._open is not None and self._open is not around:
            self._put("EMC")
            self._open = None

    def _area(self, item: Link | Field, tag: Tag) -> None:
        """What can be clicked on is an element by itself where no other says that it is one."""
        owner = self._owner if isinstance(self._owner, Element) else None
        if self._structure is not None and (owner is None or owner.tag is None or owner.tag.role is not tag.role):
            owner = self._structure.open(tag)
            self._structure.close()
        self._areas.append(Area(*box_in(self._matrix, item.x, item.y, item.width, item.height), item, owner))

    def _pen(self, stroke: Stroke) -> None:
        before, self._stroke = self._stroke, stroke
        if stroke != before:
            self.coloured |= isinstance(stroke.colour, Ink)
            self._put(changed_to(stroke, before, self._condition is not None))

    def _paint(self, colour: Colour) -> None:
        if colour != self._fill:
            self._fill = colour
            self.coloured |= isinstance(colour, Ink)
            self._put(filled_with(colour, self._condition is not None))
