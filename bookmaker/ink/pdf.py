"""A document as a PDF file.

In: a `Document`. Out: the bytes of a PDF 1.4 file: vector pages, fonts embedded as subsets, DeviceGray only, with
title and language, page labels, outline, named destinations and links. The same document gives the same bytes.
"""

from __future__ import annotations

from collections import Counter
from datetime import date
from hashlib import md5
from io import BytesIO
from typing import Any

from reportlab import rl_config
from reportlab.pdfbase import pdfdoc
from reportlab.pdfgen.canvas import Canvas

from bookmaker.display.items import Document, Page
from bookmaker.ink.content import Content
from bookmaker.ink.labels import stretches
from bookmaker.ink.pdffonts import GlyphCodes, embeddable
from bookmaker.typeface import font_files

rl_config.useA85 = 0  # streams stay binary: a fifth smaller


def pdf_bytes(document: Document) -> bytes:
    """The PDF file. Raises ValueError if a link or bookmark leads nowhere or an anchor's name stands twice."""
    file = BytesIO()
    first_font = next(iter(font_files()))
    canvas = Canvas(
        file,
        pageCompression=1,
        invariant=1,
        pdfVersion=(1, 4),
        lang=document.language,
        initialFontName=embeddable(first_font).fontName,  # else reportlab puts Helvetica into every page
    )
    canvas._doc.info = _Information(document)
    canvas.setViewerPreference("DisplayDocTitle", "true")
    titles: dict[str, list[str]] = {}
    for number, bookmark in enumerate(document.bookmarks):
        key = f"bookmark {number}"
        titles.setdefault(bookmark.target, []).append(key)
        canvas.addOutlineEntry(bookmark.title, key, bookmark.level)
    wanted = set(titles)
    fingerprint = md5(repr((document.title, document.author, document.created)).encode(), usedforsecurity=False)
    codes = GlyphCodes(canvas)
    for page in document.pages:
        wanted |= _draw_page(canvas, page, codes, titles, fingerprint)
    _check_targets(document, wanted)
    for stretch in stretches(tuple(page.label for page in document.pages)):
        canvas.addPageLabel(stretch.first, stretch.style, stretch.start, stretch.prefix or None)
    _name_destinations(canvas, document)
    # reportlab's own would change with the environment
    canvas._doc._ID = f"[<{fingerprint.hexdigest()}> <{fingerprint.hexdigest()}>]\n".encode()
    canvas.save()
    return file.getvalue()


def _draw_page(canvas: Any, page: Page, codes: GlyphCodes, titles: dict[str, list[str]], fingerprint: Any) -> set[str]:
    """Draw a page, add its operators to the fingerprint, and return where its links lead.

    `titles` has the outline's keys for each anchor.
    """
    edge = max(page.sheet, page.bleed)
    high = page.height + edge
    canvas.setPageSize((page.width + 2 * edge, page.height + 2 * edge))
    canvas.setTrimBox((edge, edge, edge + page.width, high))
    bleed = edge - page.bleed
    canvas.setBleedBox((bleed, bleed, edge + page.width + page.bleed, high + page.bleed))
    canvas.translate(edge, high)
    content = Content(canvas, codes)
    content.draw(page.items)
    for left, top, right, bottom, target in content.links:
        canvas.linkRect("", target, (edge + left, high - bottom, edge + right, high - top), relative=0)
    for anchor in page.anchors:
        for key in (anchor.name, *titles.get(anchor.name, ())):
            canvas.bookmarkPage(key, fit="XYZ", left=edge + anchor.x, top=high - anchor.y)
    fingerprint.update("\n".join(canvas._code).encode())
    canvas.showPage()
    return {target for *_, target in content.links}


def _check_targets(document: Document, wanted: set[str]) -> None:
    names = Counter(anchor.name for page in document.pages for anchor in page.anchors)
    nowhere = sorted(wanted - set(names))
    if nowhere:
        raise ValueError(f"links or bookmarks that lead nowhere: {', '.join(nowhere)}")
    twice = sorted(name for name, count in names.items() if count > 1)
    if twice:
        raise ValueError(f"anchors that stand twice: {', '.join(twice)}")


def _name_destinations(canvas: Any, document: Document) -> None:
    """Let others lead to the anchors by name (“book.pdf#key-12”)."""
    names = sorted(anchor.name for page in document.pages for anchor in page.anchors)
    if names:
        tree = [part for name in names for part in (pdfdoc.PDFString(name), canvas._bookmarkReference(name))]
        branch = pdfdoc.PDFDictionary({"Names": pdfdoc.PDFArray(tree)})
        canvas.setCatalogEntry("Names", pdfdoc.PDFDictionary({"Dests": branch}))


class _Information(pdfdoc.PDFInfo):  # type: ignore[misc] # reportlab is untyped
    """The document's information dictionary, without the dates that reportlab would invent."""

    def __init__(self, document: Document) -> None:
        super().__init__()
        self.title, self.author, self.subject = document.title, document.author, document.subject
        self.created: date | None = document.created

    def format(self, document: Any) -> bytes:
        said = {"Title": self.title, "Author": self.author, "Subject": self.subject}
        entries: dict[str, Any] = {key: pdfdoc.PDFString(text) for key, text in said.items() if text}
        entries["Producer"] = entries["Creator"] = pdfdoc.PDFString("bookmaker")
        entries["Trapped"] = pdfdoc.PDFName("False")
        if self.created:
            entries["CreationDate"] = entries["ModDate"] = pdfdoc.PDFString(f"D:{self.created:%Y%m%d}000000Z")
        formatted: bytes = pdfdoc.PDFDictionary(entries).format(document)
        return formatted
