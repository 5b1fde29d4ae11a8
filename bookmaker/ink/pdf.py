"""A document as a PDF file.

In: a `Document`. Out: a file on a stream: vector pages, fonts embedded as subsets, greys as DeviceGray, with title,
language and page labels. For screens it is PDF 1.7 with outline, named destinations, links and the `structure` that
readers go by who do not see the pages, as PDF/UA-1 asks for; for the press, and for sheets to be folded, it is PDF 1.4
without. What the standards ask for besides, `pdfx` and `pdfua` add. Pages are drawn and written one after the other,
and none is kept. The same document gives the same bytes.
"""

from __future__ import annotations

from collections.abc import Callable
from hashlib import md5
from io import BytesIO
from typing import BinaryIO
from urllib.parse import quote

from bookmaker.display.items import Document, Link, Page
from bookmaker.ink.conditions import USUAL, Condition
from bookmaker.ink.content import Area, Content
from bookmaker.ink.form import Form
from bookmaker.ink.labels import Stretch, stretches
from bookmaker.ink.metadata import ARCHIVED, GREYS, MAKER, ON_SCREEN, add_intent, add_metadata, archived
from bookmaker.ink.operators import number
from bookmaker.ink.pdffile import PdfFile, text_string
from bookmaker.ink.pdfua import make_pdfua
from bookmaker.ink.pdfx import VERSION, make_pdfx
from bookmaker.ink.structure import Structure
from bookmaker.ink.ways import Ways


def pdf_bytes(document: Document, press: bool = False, condition: Condition = USUAL) -> bytes:
    """The PDF file as bytes; raises what `write_pdf` does."""
    stream = BytesIO()
    write_pdf(document, stream, press, condition=condition)
    return stream.getvalue()


def write_pdf(
    document: Document,
    stream: BinaryIO,
    press: bool = False,
    watch: Callable[[int, int], None] = lambda done, of: None,
    condition: Condition = USUAL,
) -> None:
    """Write the PDF file, to be read on a screen or, as PDF/X-1a and without anything to click on, for the `press`.

    Colours for the press are those of a printing `condition`, which a file in greys does not name. `watch` is told how
    many pages are drawn, of how many. Raises ValueError if a link or bookmark leads nowhere or an
    anchor's name stands twice; for the press, if the document has no date.
    """
    spoken = not press and not document.folded
    file = PdfFile(stream, document.language, packed=spoken)
    structure = Structure(file) if spoken else None
    file.prefer(_PREFERRED | (_AS_LARGE_AS_IT_IS if document.folded else {}))
    fingerprint = md5(repr((document.title, document.author, document.created, press)).encode(), usedforsecurity=False)
    content, form, ways, labels = Content(file, structure, condition if press else None), Form(file), Ways(file), []
    for page in document.pages:
        operators, areas = content.page(page.items, *_corner(page))
        fingerprint.update(operators)
        notes = [] if press else [_note(area, page, file, structure, form) for area in areas]
        entries = _boxes(page)
        if structure is not None:
            entries += b" /Tabs /S /StructParents %d" % structure.end_page()
        drawn = file.put_page(operators, entries, notes, content.images)
        if structure is not None:
            structure.put_page(drawn)
        if not press:
            links = (area.what for area in areas if isinstance(area.what, Link))
            ways.want(link.target for link in links if not link.outward)
            for anchor in page.anchors:
                left, top = _on_sheet(page, anchor.x, anchor.y)
                ways.lead(anchor.name, drawn, number(left), number(top))
        labels.append(page.label)
        watch(len(labels), len(document.pages))
    if not press:
        ways.finish(document.bookmarks)
    numbered = " ".join(f"{stretch.first} {_label(stretch, file)}" for stretch in stretches(tuple(labels)))
    file.catalogue("PageLabels", f"<< /Nums [{numbered}] >>")
    identity = fingerprint.hexdigest()
    if press:
        make_pdfx(file, document, identity, condition if content.coloured else None)
    if structure is not None:
        structure.finish()
        form.finish()
        make_pdfua(file, document, identity, content.coloured)
    elif not press:
        add_intent(file, ON_SCREEN if content.coloured else GREYS, b"/GTS_PDFA1")
        add_metadata(file, document, identity, ARCHIVED, archived(1, "B"))
    file.finish(identity, _information(document, press, file))


_PREFERRED = {"DisplayDocTitle": "true"}

_AS_LARGE_AS_IT_IS = {"PrintScaling": "/None", "Duplex": "/DuplexFlipShortEdge"}
"""What a print dialogue begins with, or sheets do not fold (ISO 32000-1, table 150)."""


def _corner(page: Page) -> tuple[float, float]:
    """The top left corner of the trim on its sheet, in PDF's coordinates: points from the bottom left, y up."""
    edge = max(page.sheet, page.bleed)
    return edge, page.height + edge


def _on_sheet(page: Page, x: float, y: float) -> tuple[float, float]:
    """A point of the page in PDF's coordinates."""
    left, top = _corner(page)
    return left + x, top - y


def _boxes(page: Page) -> bytes:
    """The sheet, the trim and the bleed as entries of a page."""
    edge, high = _corner(page)
    bleed = edge - page.bleed
    boxes = {
        "MediaBox": (0, 0, page.width + 2 * edge, high + edge),
        "BleedBox": (bleed, bleed, edge + page.width + page.bleed, high + page.bleed),
        "TrimBox": (edge, edge, edge + page.width, high),
    }
    return " ".join(f"/{name} [{' '.join(map(number, box))}]" for name, box in boxes.items()).encode()


def _label(stretch: Stretch, file: PdfFile) -> str:
    """How pages are numbered from one on."""
    said = [f"/S /{_NUMERALS[stretch.style]} /St {stretch.start}"] if stretch.style else []
    said += [f"/P {file.string(stretch.prefix).decode('latin-1')}"] if stretch.prefix else []
    return f"<< {' '.join(said)} >>"


_IN_ADDRESSES = "%/:?#[]@!$&'()*+,;=~"
"""What stands in an address as it is, besides letters and figures (RFC 3986, 2.2 and 2.3)."""

_NUMERALS = {"ARABIC": "D", "ROMAN_LOWER": "r", "ROMAN_UPPER": "R"}


def _note(area: Area, page: Page, file: PdfFile, structure: Structure | None, form: Form) -> int:
    """Write a clickable area or a field; its number."""
    left, bottom, right, top = *_on_sheet(page, area.left, area.bottom), *_on_sheet(page, area.right, area.top)
    corners, note, key = " ".join(map(number, (left, bottom, right, top))).encode(), file.reserve(), 0
    if structure is not None and area.element is not None:
        key = structure.note(area.element, note)
    if not isinstance(area.what, Link):
        form.put(area.what, corners, note, key)
        return note
    link = area.what
    leads = b"/Dest " + text_string(link.target)
    if link.outward:
        leads = b"/A << /S /URI /URI %s >>" % text_string(quote(link.target, _IN_ADDRESSES))
    said = b"/Type /Annot /Subtype /Link /Border [0 0 0] /Rect [%s] %s" % (corners, leads)
    if structure is not None:
        said += b" /F 4 /Contents %s /StructParent %d" % (text_string(link.said or link.target), key)
    return file.put_way(b"<< %s >>" % said, note)


def _information(document: Document, press: bool, file: PdfFile) -> dict[str, bytes]:
    """The entries of the information dictionary: no date but the document's own."""
    said = {"Title": document.title, "Author": document.author, "Subject": document.subject}
    said |= {"Producer": MAKER, "Creator": MAKER}
    if press:
        said["GTS_PDFXVersion"] = VERSION
    if document.created:
        said["CreationDate"] = said["ModDate"] = f"D:{document.created:%Y%m%d}000000Z"
    return {key: file.string(text) for key, text in said.items() if text} | {"Trapped": b"/False"}
