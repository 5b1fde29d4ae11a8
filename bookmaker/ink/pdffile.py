"""A PDF file written object by object (ISO 32000-1, 7.5), so that nothing large is kept until the end.

In: bytes of objects, pages, fonts and what the catalogue has. Out: the file, on a stream. reportlab's own document
keeps every object and writes all in one go; this one is the same document, but what is `put` goes to the stream at
once (`objectwriter`), and `finish` writes what was left to reportlab (fonts, catalogue). In a `packed` file small
objects go into object streams (7.5.7): an element of the structure tree then takes a few bytes.

Here and in `pdffonts` stands all that is used of reportlab beyond its handbook: `RELIED_ON` lists it, and
`pyproject.toml` bounds the versions that it was tried with.
"""

from __future__ import annotations

from array import array
from collections.abc import Iterable, Mapping
from hashlib import md5
from string import ascii_uppercase
from typing import BinaryIO

from reportlab import rl_config
from reportlab.pdfbase import pdfdoc

from bookmaker.ink.objectwriter import ObjectWriter

RELIED_ON = {
    "reportlab.pdfbase.pdfdoc:PDFDocument": (
        "Reference", "objectcounter", "numberToId", "idToObject", "Catalog", "delayedFonts", "fontMapping",
        "compression", "encrypt",
    ),
    "reportlab.pdfbase.pdfdoc:PDFCatalog": ("__NoDefault__", "format"),
    "reportlab.pdfbase.pdfdoc": ("PDFDocument", "PDFIndirectObject", "PDFName", "PDFString", "PDFTrueTypeFont"),
    "reportlab.pdfbase.ttfonts:TTFont": ("splitString", "getSubsetInternalName", "addObjects"),
    "reportlab.rl_config": ("useA85",),
}  # fmt: skip
"""Classes and modules of reportlab, each with the names in it that this room goes by."""

rl_config.useA85 = 0  # streams stay binary: a fifth smaller

_HEADER = b"%%PDF-%d.%d\n%%\xe2\xe3\xcf\xd3\n"
"""The second line tells programs that pass files on that this is no text (ISO 32000-1, 7.5.2)."""

_BUNDLE = 2000
"""Objects in one object stream: the more, the smaller; readers unpack all of them to get one. So what only says how
pages are read aloud, and what leads from place to place, is bundled apart from the pages, which most readers want
alone."""

_SECTION = 100_000
"""Objects after which a section is written of where they lie; a reader unpacks it as a whole, in one megabyte."""


class PdfFile(pdfdoc.PDFDocument):  # type: ignore[misc] # reportlab is untyped
    """The file on its way to a binary stream; its pages come in order. It is PDF 1.7 if `packed`, else 1.4."""

    def __init__(self, stream: BinaryIO, language: str, packed: bool = False) -> None:
        version = (1, 7) if packed else (1, 4)
        super().__init__(compression=1, invariant=1, pdfVersion=version, lang=language)
        self.language = language
        self._packed = packed
        self._writer = ObjectWriter(stream, _HEADER % version)
        self._bundle: list[tuple[int, bytes]] = []
        self._ways: list[tuple[int, bytes]] = []
        self._aside: list[tuple[int, bytes]] = []
        self._pages = array("Q")
        self._tree = self.reserve()
        self.Catalog.Outlines = None  # reportlab has one that it keeps to the end

    def reserve(self) -> int:
        """The number of an object that is put later."""
        self.objectcounter += 1
        return int(self.objectcounter)

    def reserve_all(self, count: int) -> int:
        """The first of so many numbers one after the other, of objects that are put later."""
        self.objectcounter += count
        return int(self.objectcounter) - count + 1

    def put(self, body: bytes, number: int = 0) -> int:
        """Write an object, the one of that number if it was reserved; its number."""
        return self._put(body, number, self._bundle)

    def put_way(self, body: bytes, number: int = 0) -> int:
        """The same with an object that is wanted by whoever clicks, or looks for what leads where."""
        return self._put(body, number, self._ways)

    def put_aside(self, body: bytes, number: int = 0) -> int:
        """The same with an object that nobody needs who looks at a page."""
        return self._put(body, number, self._aside)

    def put_all_aside(self, objects: Iterable[tuple[int, bytes]]) -> None:
        """The same with many objects, each with the number reserved for it, of a packed file."""
        self._aside.extend(objects)
        while len(self._aside) >= _BUNDLE:
            self._put_bundle(self._aside)

    def _put(self, body: bytes, number: int, bundle: list[tuple[int, bytes]]) -> int:
        number = number or self.reserve()
        if self._packed:
            bundle.append((number, body))
            if len(bundle) == _BUNDLE:
                self._put_bundle(bundle)
        else:
            self._writer.put(number, body)
        return number

    def put_stream(self, entries: bytes, content: bytes) -> int:
        """Write a stream, packed, with these entries in its dictionary; its number."""
        number = self.reserve()
        self._writer.put_stream(number, entries, content)
        return number

    def put_plain(self, body: bytes) -> int:
        """Write an object now, in no bundle: streams, and what programs look for that know little of PDF."""
        number = self.reserve()
        self._writer.put(number, body)
        return number

    def put_page(self, operators: bytes, entries: bytes, notes: Iterable[int], images: Mapping[str, int]) -> int:
        """Write the next page: its content, entries such as its boxes, the numbers of its annotations and of its images
        by the names that the content calls them by; its number."""
        content = self.put_stream(b"", operators)
        named = b" ".join(b"/%s %d 0 R" % (name.encode(), number) for name, number in images.items())
        resources = b"/Font 1 0 R" + (b" /XObject << %s >>" % named if named else b"")
        linked = b" ".join(b"%d 0 R" % number for number in notes)
        page = self.put(
            b"<< /Type /Page /Parent %d 0 R %s /Contents %d 0 R /Resources << %s >>%s >>"
            % (self._tree, entries, content, resources, b" /Annots [%s]" % linked if linked else b"")
        )
        self._pages.append(page)
        if self._packed and self._writer.unlisted >= _SECTION:
            trailer = b"/Root %s" % self._root
            self._writer.put_section(self.reserve(), trailer)
        return page

    def catalogue(self, key: str, value: str) -> None:
        """Set an entry of the catalogue, its value as PDF writes it."""
        if key not in self.Catalog.__NoDefault__:
            self.Catalog.__NoDefault__ = [*self.Catalog.__NoDefault__, key]  # the only names that reportlab writes
        setattr(self.Catalog, key, value)

    def prefer(self, settings: Mapping[str, str]) -> None:
        """How viewers begin (ISO 32000-1, 12.2): names and values as PDF writes them."""
        self.catalogue("ViewerPreferences", f"<< {' '.join(f'/{name} {value}' for name, value in settings.items())} >>")

    def string(self, text: str) -> bytes:
        """A text as PDF writes it."""
        written: bytes = pdfdoc.PDFString(text).format(self)
        return written

    def finish(self, identity: str, information: Mapping[str, bytes]) -> None:
        """Write all that is left. `identity` is 32 hexadecimal figures; `information` the entries of the information
        dictionary, their values as PDF writes them."""
        for font in self.delayedFonts:
            font.addObjects(self)
        self._tag_subsets(identity)
        self.catalogue("Pages", f"{self._tree} 0 R")
        said = self.put(
            b"<< %s >>" % b" ".join(b"/%s %s" % (key.encode(), value) for key, value in information.items())
        )
        root = self._root
        kids = b" ".join(b"%d 0 R" % page for page in self._pages)
        self.put(b"<< /Type /Pages /Count %d /Kids [%s] >>" % (len(self._pages), kids), self._tree)
        done = 0
        while left := [*self.numberToId.items()][done:]:  # while an object is written, more may be made
            for number, name in left:
                self._left_over(number, pdfdoc.PDFIndirectObject(name, self.idToObject[name]).format(self))
            done += len(left)
        known = b"<%s>" % identity.encode("ascii")
        trailer = b"/Root %s /Info %d 0 R /ID [%s %s]" % (root, said, known, known)
        if not self._packed:
            self._writer.end_with_table(self.objectcounter + 1, trailer)
            return
        for waiting in filter(None, (self._bundle, self._ways, self._aside)):
            self._put_bundle(waiting)
        self._writer.put_section(self.reserve(), trailer)
        self._writer.end()

    def _tag_subsets(self, identity: str) -> None:
        """Give each subset of a font a tag that no other has, in this file or in another that may be bound up with it
        (9.6.4): reportlab counts them from AAAAAA in every file."""
        for font in self.idToObject["BasicFonts"].dict.values():
            named = font.BaseFont
            _, _, face = named.partition("+")
            figures = int.from_bytes(md5(f"{identity} {named}".encode(), usedforsecurity=False).digest(), "big")
            tag = "".join(ascii_uppercase[figures // 26**at % 26] for at in range(6))
            font.BaseFont = f"{tag}+{face}"
            self.idToObject[f"fontDescriptor:{named}"].dict["FontName"] = pdfdoc.PDFName(font.BaseFont)

    def _left_over(self, number: int, written: bytes) -> None:
        """Write an object that reportlab kept, as reportlab writes it but for a line's end after the bytes of a stream,
        which it leaves out (7.3.8.1 asks for one, and PDF/A insists)."""
        _, _, body = written.partition(b" obj\n")
        body, _, _ = body.rpartition(b"endobj")
        body = body.rstrip(b"\n")
        if body.endswith(b"endstream"):
            self._writer.put(number, body.removesuffix(b"endstream") + b"\nendstream")
        else:
            self.put(body, number)

    def _put_bundle(self, waiting: list[tuple[int, bytes]]) -> None:
        """Write the first of the objects that wait for it as an object stream."""
        self._writer.put_bundle(self.reserve(), waiting[:_BUNDLE])
        del waiting[:_BUNDLE]

    @property
    def _root(self) -> bytes:
        """What leads to the catalogue, which is written last."""
        named: bytes = self.Reference(self.Catalog).format(self)
        return named


def text_string(text: str) -> bytes:
    """A text as PDF keeps it outside pages (7.9.2.2): as it is, or in UTF-16 where it has more than ASCII."""
    if text.isascii():
        return b"(%s)" % text.translate(_ESCAPED).encode("ascii")
    return b"<%s>" % ("\ufeff" + text).encode("utf-16-be").hex().encode("ascii")


_ESCAPED = str.maketrans({"(": "\\(", ")": "\\)", "\\": "\\\\", "\n": "\\n", "\r": "\\r"})
