"""A document as a PDF file.

In: a `Document`. Out: the bytes of a PDF 1.4 file: vector pages, fonts embedded as subsets, DeviceGray only, with
title, language and page labels; for screens also outline, named destinations and links, for the press what `pdfx` adds.
The same document gives the same bytes.
"""

from __future__ import annotations

from collections import Counter
from datetime import date
from hashlib import md5
from typing import Any

from reportlab import rl_config
from reportlab.pdfbase import pdfdoc
from reportlab.pdfgen.canvas import Canvas

from bookmaker.display.items import Document, Page
from bookmaker.ink.content import Content, number
from bookmaker.ink.labels import stretches
from bookmaker.ink.pdffonts import embeddable
from bookmaker.ink.pdfx import MAKER, VERSION, make_pdfx
from bookmaker.typeface import font_files

rl_config.useA85 = 0  # streams stay binary: a fifth smaller


def pdf_bytes(document: Document, press: bool = False) -> bytes:
    """The PDF file, to be read on a screen or, as PDF/X-1a and without anything to click on, for the `press`.

    Raises ValueError if a link or bookmark leads nowhere or an anchor's name stands twice; for the press, if the
    document has no date.
    """
    first_font = next(iter(font_files()))
    canvas = Canvas(
        "",
        pageCompression=1,
        invariant=1,
        pdfVersion=(1, 4),
        lang=document.language,
        initialFontName=embeddable(first_font).fontName,  # else reportlab puts Helvetica into every page
    )
    canvas._doc.info = _Information(document, press)
    canvas.setViewerPreference("DisplayDocTitle", "true")
    if document.folded:  # what a print dialogue begins with (ISO 32000-1, table 150)
        canvas.setViewerPreference("PrintScaling", "None")
        canvas.setViewerPreference("Duplex", "DuplexFlipShortEdge")
    fingerprint = md5(repr((document.title, document.author, document.created, press)).encode(), usedforsecurity=False)
    content = Content(canvas)
    targets = None if press else _outline(canvas, document)
    for page in document.pages:
        _draw_page(canvas, page, content, targets, fingerprint)
    if targets is not None:
        _name_destinations(canvas, document, targets)
    for stretch in stretches(tuple(page.label for page in document.pages)):
        canvas.addPageLabel(stretch.first, stretch.style, stretch.start, stretch.prefix or None)
    identity = fingerprint.hexdigest()
    if press:
        make_pdfx(canvas, document, identity)
    # reportlab's own would change with the environment
    canvas._doc._ID = f"[<{identity}> <{identity}>]\n".encode()
    file: bytes = canvas.getpdfdata()
    return file


class _Targets:
    """Where things lead: the keys of bookmarks by the anchor they lead to, and all anchors that anything leads to."""

    def __init__(self) -> None:
        self.bookmarks: dict[str, list[str]] = {}
        self.wanted: set[str] = set()


def _outline(canvas: Any, document: Document) -> _Targets:
    targets = _Targets()
    for at, bookmark in enumerate(document.bookmarks):
        key = f"bookmark {at}"
        targets.bookmarks.setdefault(bookmark.target, []).append(key)
        targets.wanted.add(bookmark.target)
        canvas.addOutlineEntry(bookmark.title, key, bookmark.level)
    return targets


def _draw_page(canvas: Any, page: Page, content: Content, targets: _Targets | None, fingerprint: Any) -> None:
    """Draw a page and add its operators to the fingerprint; where there are targets, add links and anchors."""
    edge = max(page.sheet, page.bleed)
    high = page.height + edge
    canvas.setPageSize((page.width + 2 * edge, page.height + 2 * edge))
    canvas.setTrimBox((edge, edge, edge + page.width, high))
    bleed = edge - page.bleed
    canvas.setBleedBox((bleed, bleed, edge + page.width + page.bleed, high + page.bleed))
    canvas.translate(edge, high)
    links = content.page(page.items)
    if targets is not None:
        for left, top, right, bottom, target in links:
            area = edge + left, high - bottom, edge + right, high - top
            canvas._addAnnotation(_Jump(area, canvas._bookmarkReference(target)))
            targets.wanted.add(target)
        for anchor in page.anchors:
            for key in (anchor.name, *targets.bookmarks.get(anchor.name, ())):
                canvas.bookmarkPage(key, fit="XYZ", left=edge + anchor.x, top=high - anchor.y)
    _close_page(canvas, fingerprint)


def _close_page(canvas: Any, fingerprint: Any) -> None:
    """End the page and compress it at once: left to reportlab, all pages would lie in memory in full until the end."""
    canvas.showPage()
    page = canvas._doc.Pages.pages[-1]
    page.Rotate = page.Trans = None  # nothing is turned and nothing moves
    squeezed = pdfdoc.PDFDictionary({"Filter": pdfdoc.PDFArray([pdfdoc.PDFName("FlateDecode")])})
    operators = page.stream.encode()
    fingerprint.update(operators)
    page.Contents = pdfdoc.PDFStream(squeezed, pdfdoc.PDFZCompress.encode(operators))
    page.stream = None


def _name_destinations(canvas: Any, document: Document, targets: _Targets) -> None:
    """Let others lead to the anchors by name (“book.pdf#key-12”), once all that leads somewhere is known to arrive."""
    names = Counter(anchor.name for page in document.pages for anchor in page.anchors)
    nowhere = sorted(targets.wanted - set(names))
    if nowhere:
        raise ValueError(f"links or bookmarks that lead nowhere: {', '.join(nowhere)}")
    twice = sorted(name for name, count in names.items() if count > 1)
    if twice:
        raise ValueError(f"anchors that stand twice: {', '.join(twice)}")
    if names:
        tree = [part for name in sorted(names) for part in (pdfdoc.PDFString(name), canvas._bookmarkReference(name))]
        branch = pdfdoc.PDFDictionary({"Names": pdfdoc.PDFArray(tree)})
        canvas.setCatalogEntry("Names", pdfdoc.PDFDictionary({"Dests": branch}))


class _Jump(pdfdoc.PDFObject):  # type: ignore[misc] # reportlab is untyped
    """A clickable area. reportlab's own says the same, but takes several times as long, and a book has many."""

    def __init__(self, area: tuple[float, float, float, float], destination: Any) -> None:
        self.area = area
        self.destination = destination

    def format(self, document: Any) -> bytes:
        leads = pdfdoc.format(self.destination, document).decode("ascii")
        corners = " ".join(map(number, self.area))
        return f"<< /Type /Annot /Subtype /Link /Border [0 0 0] /Rect [{corners}] /Dest {leads} >>".encode("ascii")


class _Information(pdfdoc.PDFInfo):  # type: ignore[misc] # reportlab is untyped
    """The document's information dictionary, without the dates that reportlab would invent."""

    def __init__(self, document: Document, press: bool) -> None:
        super().__init__()
        self.press = press
        self.title, self.author, self.subject = document.title, document.author, document.subject
        self.created: date | None = document.created

    def format(self, document: Any) -> bytes:
        said = {"Title": self.title, "Author": self.author, "Subject": self.subject}
        entries: dict[str, Any] = {key: pdfdoc.PDFString(text) for key, text in said.items() if text}
        entries["Producer"] = entries["Creator"] = pdfdoc.PDFString(MAKER)
        entries["Trapped"] = pdfdoc.PDFName("False")
        if self.press:
            entries["GTS_PDFXVersion"] = pdfdoc.PDFString(VERSION)
        if self.created:
            entries["CreationDate"] = entries["ModDate"] = pdfdoc.PDFString(f"D:{self.created:%Y%m%d}000000Z")
        formatted: bytes = pdfdoc.PDFDictionary(entries).format(document)
        return formatted
