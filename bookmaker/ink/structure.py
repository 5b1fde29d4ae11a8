"""The structure of a PDF (ISO 32000-1, 14.7 and 14.8): what its readers who do not see the pages go by.

In: tags, opened and closed around what is drawn, page after page. Out: a tree of elements in reading order, the parent
tree that leads back from what is drawn, and their entries in the catalogue, as PDF/UA-1 (ISO 14289-1) asks for them. An
element is written as soon as nothing can be added to it, so that a long book needs little memory.
"""

from __future__ import annotations

from array import array
from collections.abc import Iterator, Sequence
from operator import itemgetter
from typing import NamedTuple

from bookmaker.display.tags import OUR_LANGUAGE, Role, Tag
from bookmaker.ink.pdffile import PdfFile, text_string
from bookmaker.language import spoken

_TYPES = {
    Role.PART: "Part", Role.SECTION: "Sect", Role.PARAGRAPH: "P", Role.LIST: "L", Role.ENTRY: "LI", Role.LABEL: "Lbl",
    Role.BODY: "LBody", Role.CONTENTS: "TOC", Role.CONTENTS_ENTRY: "TOCI", Role.REFERENCE: "Reference",
    Role.LINK: "Link", Role.FIGURE: "Figure", Role.TABLE: "Table", Role.ROW: "TR", Role.COLUMN_HEAD: "TH",
    Role.ROW_HEAD: "TH", Role.CELL: "TD", Role.FIELD: "Form",
}  # fmt: skip
"""Standard structure types (14.8.4); that of a heading has its level."""

_SCOPES = {Role.COLUMN_HEAD: b"Column", Role.ROW_HEAD: b"Row"}

_AROUND = (Role.PART, Role.SECTION)
"""Each of them sets the headings in it one level lower, down to the sixth."""

_KEPT = 2000
"""Tags of which it is kept how they are written."""

_LEAF = 500
"""Entries in one leaf of the parent tree."""

Box = tuple[float, float, float, float]
"""Left, bottom, right, top on the sheet."""


class Element:
    """An element that is not written yet. `kids` are other elements and what is drawn, each with its order; `mixed` if
    they are not of one order."""

    __slots__ = ("box", "kids", "labelled", "latest", "level", "mixed", "number", "parent", "tag", "type")

    def __init__(self, number: int, type: str, tag: Tag | None, parent: Element | None, level: int) -> None:
        self.number, self.type, self.tag, self.parent, self.level = number, type, tag, parent, level
        self.kids: list[tuple[int, int, int, int]] = []
        self.latest: dict[int, Element] = {}
        self.box: Box | None = None
        self.labelled = self.mixed = False


_ELEMENT, _DRAWN, _NOTE = range(3)
"""What a kid is; its value is the number of an element, of marked content, or of an annotation."""


class Leaf(NamedTuple):
    """How an element is written that holds one piece of content, %d for the numbers of its parent, of its page and of
    that content: the cells of tables come again and again with the same tag."""

    order: int
    written: bytes


class Structure:
    """The tree of one file."""

    def __init__(self, file: PdfFile) -> None:
        self._file = file
        self._root = file.reserve()
        self._document = Element(file.reserve(), "Document", None, None, 1)
        self._here = self._document
        self._done: list[Element] = []
        self._waiting: list[tuple[int, int, int, Sequence[Leaf]]] = []
        self._parents = array("Q")
        self._on_page: list[int] = []
        self._page = 0
        self._pages = array("Q")
        scopes = {role: file.put_aside(b"<< /O /Table /Scope /%s >>" % scope) for role, scope in _SCOPES.items()}
        self._scopes = {role: b"/A %d 0 R" % scope for role, scope in scopes.items()}  # shared by all tables
        self._said: dict[Tag, bytes] = {}

    def open(self, tag: Tag) -> Element:
        """Begin an element, or go on with it, inside the one that is open."""
        parent, order = self._here, tag.order
        before = parent.latest.get(order)
        if tag.goes_on and before is not None and before.tag is not None and before.tag.role is tag.role:
            self._here = before
            return before
        if before is not None:
            self._end(before)
        if tag.role is Role.LABEL and parent.parent is not None:
            parent.parent.labelled = True  # the list whose entry has the label
        around = tag.role in _AROUND
        type = f"H{min(parent.level, 6)}" if tag.role is Role.HEADING else _TYPES[tag.role]
        made = Element(self._file.reserve(), type, tag, parent, parent.level + around)
        self._add(parent, order, made.number)
        parent.latest[order] = self._here = made
        return made

    def leaf(self, tag: Tag) -> Leaf:
        """An element of one piece of marked content, to which nothing is added."""
        words = self._words(tag).replace(b"%", b"%%")
        return Leaf(tag.order, b"<</S/%s/P %%d 0 R/Pg %%d 0 R/K %%d%s>>" % (type_of(tag).encode(), words))

    def put(self, leaf: Leaf) -> int:
        """Put such an element; the number of its content, which may be empty: without it, some readers would not find
        the element on the page."""
        number = self._file.reserve()
        self._follow(leaf.order, number)
        return self._hold(number, self._here.number, [leaf])

    def put_rows(self, rows: Sequence[tuple[Tag, int]], leaves: Sequence[Leaf]) -> int:
        """Put elements that hold nothing but so many of such elements each, one after the other; the number of the
        first one's content, from which those of the others count on."""
        content, begun = len(self._on_page), 0
        for tag, count in rows:
            number = self._file.reserve_all(1 + count)
            self._follow(tag.order, number)
            first = number + 1
            said = type_of(tag).encode(), self._here.number, _all(range(first, first + count)), self._words(tag)
            self._file.put_aside(b"<</S/%s/P %d 0 R/K[%s]%s>>" % said, number)
            self._hold(first, number, leaves[begun : begun + count])
            begun += count
        return content

    def _hold(self, first: int, parent: int, leaves: Sequence[Leaf]) -> int:
        content = len(self._on_page)
        self._waiting.append((first, parent, content, leaves))
        self._on_page.extend(range(first, first + len(leaves)))
        return content

    def _follow(self, order: int, number: int) -> None:
        """Add an element to which nothing is added to the open one."""
        parent = self._here
        if parent.latest and (before := parent.latest.pop(order, None)) is not None:
            self._end(before)
        self._add(parent, order, number)

    @staticmethod
    def _add(parent: Element, order: int, number: int) -> None:
        if parent.kids and parent.kids[0][0] != order:
            parent.mixed = True
        parent.kids.append((order, _ELEMENT, number, 0))

    def close(self) -> None:
        """Leave the element that is open; what goes on may come back to it."""
        assert self._here.parent is not None
        self._here = self._here.parent

    @property
    def here(self) -> Element:
        """The element that is open."""
        return self._here

    def draw(self) -> tuple[str, int]:
        """The type of the open element and the number of the marked content that is drawn next and belongs to it."""
        number = len(self._on_page)
        self._on_page.append(self._here.number)
        self._here.kids.append((0, _DRAWN, number, self._page))
        return self._here.type, number

    def note(self, element: Element, annotation: int) -> int:
        """Let an annotation belong to an element; the key of both in the parent tree."""
        element.kids.append((0, _NOTE, annotation, self._page))
        self._parents.append(element.number)
        return len(self._parents) - 1

    def end_page(self) -> int:
        """All that belongs to a page is drawn; its key in the parent tree."""
        self._parents.append(self._file.put_aside(b"[%s]" % _all(self._on_page)))
        self._on_page.clear()
        self._page += 1
        return len(self._parents) - 1

    def put_page(self, page: int) -> None:
        """Note the number of the page that ended last, and write the elements that ended on it."""
        self._pages.append(page)
        for first, parent, content, leaves in self._waiting:
            self._file.put_all_aside(
                [(first + at, written % (parent, page, content + at)) for at, (_, written) in enumerate(leaves)]
            )
        self._waiting.clear()
        for element in self._done:
            self._write(element)
        self._done.clear()

    def finish(self) -> None:
        """Write the rest of the tree, and what the catalogue says of it."""
        assert self._here is self._document
        self._end(self._document)
        for element in self._done:
            self._write(element)
        leaves = [*self._parent_tree()]
        tree = self._file.put_aside(b"<< /Kids [%s] >>" % _all(leaves))
        said = b"<< /Type /StructTreeRoot /K %d 0 R /ParentTree %d 0 R /ParentTreeNextKey %d >>"
        self._file.put_aside(said % (self._document.number, tree, len(self._parents)), self._root)
        self._file.catalogue("StructTreeRoot", f"{self._root} 0 R")
        self._file.catalogue("MarkInfo", "<< /Marked true >>")

    def _parent_tree(self) -> Iterator[int]:
        for start in range(0, len(self._parents), _LEAF):
            held = self._parents[start : start + _LEAF]
            listed = b" ".join(b"%d %d 0 R" % pair for pair in enumerate(held, start=start))
            yield self._file.put_aside(b"<< /Limits [%d %d] /Nums [%s] >>" % (start, start + len(held) - 1, listed))

    def _end(self, element: Element) -> None:
        """Nothing more belongs to an element, nor to those in it."""
        for last in element.latest.values():
            self._end(last)
        element.latest.clear()
        self._done.append(element)

    def _write(self, element: Element) -> None:
        kids, home = element.kids, None
        if element.mixed:
            kids = sorted(kids, key=_order)
        for _, what, _, page in kids:
            if what != _ELEMENT:
                home = page
                break
        if home is None:
            held = b"/K[%s]" % _all([value for _, _, value, _ in kids]) if kids else b""
        elif len(kids) == 1 and kids[0][1] == _DRAWN:
            held = b"/Pg %d 0 R/K %d" % (self._pages[home], kids[0][2])
        else:
            held = b"/Pg %d 0 R/K[%s]" % (self._pages[home], b" ".join([self._kid(kid, home) for kid in kids]))
        parent = element.parent.number if element.parent else self._root
        said = b"" if element.tag is None else self._words(element.tag)
        if element.box is not None:
            said += b"/A<</O/Layout/BBox[%.2f %.2f %.2f %.2f]>>" % element.box
        if element.type == "L":
            said += b"/A<</O/List/ListNumbering/%s>>" % (b"Decimal" if element.labelled else b"None")
        self._file.put_aside(b"<</S/%s/P %d 0 R%s%s>>" % (element.type.encode(), parent, held, said), element.number)

    def _kid(self, kid: tuple[int, int, int, int], home: int) -> bytes:
        _, what, value, page = kid
        if what == _ELEMENT:
            return b"%d 0 R" % value
        there = b"" if page == home else b"/Pg %d 0 R" % self._pages[page]
        if what == _NOTE:
            return b"<</Type/OBJR/Obj %d 0 R%s>>" % (value, there)
        return b"<</Type/MCR/MCID %d%s>>" % (value, there) if there else b"%d" % value

    def _words(self, tag: Tag) -> bytes:
        """What is said of an element by its tag alone."""
        if (kept := self._said.get(tag)) is not None:
            return kept
        said = b""
        if tag.said:
            said += (b"/Alt" if tag.role is Role.FIGURE else b"/ActualText") + text_string(tag.said)
        language = spoken(self._file.language) if tag.language == OUR_LANGUAGE else tag.language
        if language and not _same_language(language, self._file.language):
            said += b"/Lang" + text_string(language)
        said += self._scopes.get(tag.role, b"")
        if len(self._said) > _KEPT:
            self._said.clear()
        self._said[tag] = said
        return said


def type_of(tag: Tag) -> str:
    """The standard structure type of an element that is no heading."""
    return _TYPES[tag.role]


def _all(numbers: Sequence[int]) -> bytes:
    """References to these objects."""
    return (b"%d 0 R " * len(numbers) % tuple(numbers)).rstrip()


_order = itemgetter(0)


def _same_language(one: str, other: str) -> bool:
    return one.partition("-")[0].lower() == other.partition("-")[0].lower()
