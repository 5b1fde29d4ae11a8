"""A PDF file written object by object (ISO 32000-1, 7.5), so that nothing large is kept until the end.

In: bytes of objects, pages, fonts and what the catalogue has. Out: the file, on a stream. reportlab's own document
keeps every object and writes all in one go; this one is the same document, but what is `put` goes to the stream at
once, and `finish` writes what was left to reportlab (fonts, outline, catalogue) and the table of where every object
lies.

Here and in `pdffonts` stands all that is used of reportlab beyond its handbook: `RELIED_ON` lists it, and
`pyproject.toml` bounds the versions that it was tried with.
"""

from __future__ import annotations

import zlib
from array import array
from collections.abc import Iterable, Mapping
from typing import BinaryIO

from reportlab import rl_config
from reportlab.pdfbase import pdfdoc

RELIED_ON = {
    "reportlab.pdfbase.pdfdoc:PDFDocument": (
        "Reference", "objectcounter", "numberToId", "idToObject", "Catalog", "Outlines", "delayedFonts", "fontMapping",
        "compression", "encrypt",
    ),
    "reportlab.pdfbase.pdfdoc:PDFOutlines": ("addOutlineEntry", "prepare", "ready"),
    "reportlab.pdfbase.pdfdoc:PDFCatalog": ("__NoDefault__", "format"),
    "reportlab.pdfbase.pdfdoc": ("PDFDocument", "PDFIndirectObject", "PDFString"),
    "reportlab.pdfbase.ttfonts:TTFont": ("splitString", "getSubsetInternalName", "addObjects"),
    "reportlab.rl_config": ("useA85",),
}  # fmt: skip
"""Classes and modules of reportlab, each with the names in it that this room goes by."""

rl_config.useA85 = 0  # streams stay binary: a fifth smaller

VERSION = (1, 4)

_HEADER = b"%%PDF-%d.%d\n%%\xe2\xe3\xcf\xd3\n" % VERSION
"""The second line tells programs that pass files on that this is no text (ISO 32000-1, 7.5.2)."""


class PdfFile(pdfdoc.PDFDocument):  # type: ignore[misc] # reportlab is untyped
    """The file on its way to a binary stream; its pages come in order."""

    def __init__(self, stream: BinaryIO, language: str) -> None:
        super().__init__(compression=1, invariant=1, pdfVersion=VERSION, lang=language)
        self._stream = stream
        self._written = 0
        self._places = array("Q")
        self._pages = array("Q")
        self._destinations: dict[str, str] = {}
        self._bookmarks = 0
        self._write(_HEADER)
        self._tree = self._next()

    def put(self, body: bytes) -> int:
        """Write an object now; its number."""
        number = self._next()
        self._object(number, body)
        return number

    def put_stream(self, entries: bytes, content: bytes) -> int:
        """Write a stream, packed, with these entries in its dictionary; its number."""
        packed = zlib.compress(content)
        head = b"<< %s /Filter /FlateDecode /Length %d >>\nstream\n" % (entries, len(packed))
        return self.put(head + packed + b"\nendstream")

    def put_page(self, operators: bytes, boxes: bytes, notes: Iterable[int], images: Mapping[str, int]) -> int:
        """Write the next page: its content, its boxes as entries, the numbers of its annotations and of its images by
        the names that the content calls them by; its number."""
        content = self.put_stream(b"", operators)
        named = b" ".join(b"/%s %d 0 R" % (name.encode(), number) for name, number in images.items())
        resources = b"/Font 1 0 R" + (b" /XObject << %s >>" % named if named else b"")
        linked = b" ".join(b"%d 0 R" % number for number in notes)
        page = self.put(
            b"<< /Type /Page /Parent %d 0 R %s /Contents %d 0 R /Resources << %s >>%s >>"
            % (self._tree, boxes, content, resources, b" /Annots [%s]" % linked if linked else b"")
        )
        self._pages.append(page)
        return page

    def catalogue(self, key: str, value: str) -> None:
        """Set an entry of the catalogue, its value as PDF writes it."""
        if key not in self.Catalog.__NoDefault__:
            self.Catalog.__NoDefault__ = [*self.Catalog.__NoDefault__, key]  # the only names that reportlab writes
        setattr(self.Catalog, key, value)

    def prefer(self, settings: Mapping[str, str]) -> None:
        """How viewers begin (ISO 32000-1, 12.2): names and values as PDF writes them."""
        self.catalogue("ViewerPreferences", f"<< {' '.join(f'/{name} {value}' for name, value in settings.items())} >>")

    def lead(self, name: str, page: int, left: str, top: str) -> None:
        """Let a name lead to a place on the page of that number."""
        self._destinations[name] = f"[{page} 0 R /XYZ {left} {top} null]"

    def bookmark(self, title: str, target: str, level: int) -> None:
        """Add an entry to the outline; `target` is a name that leads somewhere by the time the file is finished."""
        self._bookmarks += 1
        self.Outlines.addOutlineEntry(f"{self._bookmarks} {target}", level, title)  # a name may have several

    def name_places(self) -> None:
        """Let links in this and other files lead to the names (ISO 32000-1, 12.3.2.3; “book.pdf#key-12”)."""
        places = sorted(self._destinations.items())
        if places:
            listed = b" ".join(b"%s %s" % (self.string(name), place.encode()) for name, place in places)
            self.catalogue("Names", f"<< /Dests {self.put(b'<< /Names [%s] >>' % listed)} 0 R >>")

    def string(self, text: str) -> bytes:
        """A text as PDF writes it."""
        written: bytes = pdfdoc.PDFString(text).format(self)
        return written

    def finish(self, identity: str, information: Mapping[str, bytes]) -> None:
        """Write all that is left. `identity` is 32 hexadecimal figures; `information` the entries of the information
        dictionary, their values as PDF writes them."""
        for font in self.delayedFonts:
            font.addObjects(self)
        self.catalogue("Pages", f"{self._tree} 0 R")
        said = self.put(
            b"<< %s >>" % b" ".join(b"/%s %s" % (key.encode(), value) for key, value in information.items())
        )
        root = self.Reference(self.Catalog).format(self)
        self.Outlines.prepare(self, self)
        if self.Outlines.ready < 0:
            self.Catalog.Outlines = None
        kids = b" ".join(b"%d 0 R" % page for page in self._pages)
        self._object(self._tree, b"<< /Type /Pages /Count %d /Kids [%s] >>" % (len(self._pages), kids))
        number = 0
        while number < self.objectcounter:  # while an object is written, more may be made
            number += 1
            if name := self.numberToId.get(number):
                self._place(number)
                self._write(pdfdoc.PDFIndirectObject(name, self.idToObject[name]).format(self))
        table = self._written
        self._write(b"xref\n0 %d\n0000000000 65535 f \n" % (number + 1))
        for place in self._places[1:]:
            self._write(b"%010d 00000 n \n" % place)
        known = b"<%s>" % identity.encode("ascii")
        self._write(
            b"trailer\n<< /Size %d /Root %s /Info %d 0 R /ID [%s %s] >>\n" % (number + 1, root, said, known, known)
        )
        self._write(b"startxref\n%d\n%%%%EOF\n" % table)

    def _next(self) -> int:
        """The number of the next object."""
        self.objectcounter += 1
        return int(self.objectcounter)

    def _bookmarkReference(self, name: str) -> str:  # noqa: N802  (what reportlab's outline asks a canvas for)
        return self._destinations[name.partition(" ")[2]]

    def _object(self, number: int, body: bytes) -> None:
        self._place(number)
        self._write(b"%d 0 obj\n%s\nendobj\n" % (number, body))

    def _place(self, number: int) -> None:
        """The object of that number begins here."""
        if len(self._places) <= number:
            self._places.extend([0] * (number + 1 - len(self._places)))
        self._places[number] = self._written

    def _write(self, content: bytes) -> None:
        self._stream.write(content)
        self._written += len(content)
