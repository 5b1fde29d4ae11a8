"""Is a finished PDF ready for the press: the checks, each one function.

In: a PDF's pages and what is painted on them. Out: diagnostics, each naming the pages it is found on. The limits are
common practice of the trade where no standard is named.
"""

from __future__ import annotations

from collections.abc import Iterable

import pikepdf

from bookmaker.preflight.findings import Findings
from bookmaker.preflight.inks import Inks, faults_of_colour, faults_of_picture
from bookmaker.preflight.painted import Colour, Painted, Picture, Run, Stroke
from bookmaker.preflight.pdffont import PdfFont
from bookmaker.preflight.pdfx import check_pdfx, information

MM = 72 / 25.4

HAIRLINE = 0.25
"""The thinnest stroke in points that presses and copiers keep (common practice, no source)."""

SAFE = 5 * MM
"""How far text keeps from the trim, in points (common practice, no source)."""

COARSE, FINE = 150, 300
"""Pixels per inch at the printed size under which a picture is refused, and under which it draws a warning (common
practice, no source)."""

ROUNDING = 0.01
"""Lengths in points nearer than this are equal."""


def check_file(pdf: pikepdf.Pdf, folded: bool, findings: Findings) -> None:
    """Look at a file as a whole; `folded` sheets need a multiple of four pages."""
    _file(pdf, findings)
    if folded:
        _fold(len(pdf.pages), findings)
    check_pdfx(pdf, findings)
    _sizes(pdf.pages, findings)


def check_page(number: int, page: pikepdf.Page, items: Iterable[Painted], inks: Inks, findings: Findings) -> None:
    """Look at one page, counted from 1, and what is painted on it, in a file that may use these `inks`."""
    _boxes(page, number, findings)
    safe = _safe_area(page)
    fonts = dict[int, PdfFont]()
    for item in items:
        if isinstance(item, Run):
            _text(item, number, safe, findings)
            fonts[id(item.font)] = item.font
        else:
            _item(item, number, inks, findings)
    for font in fonts.values():
        _font(font, number, findings)


def damaged(number: int, findings: Findings) -> None:
    """Note that a page cannot be read, or not in reasonable time; page 0 is the file as a whole."""
    what = "not all that is printed on it can be read" if number else "the file is damaged"
    findings.add(number, "damaged", what, "print it again, or open it in a viewer and see what is lacking")


def _file(pdf: pikepdf.Pdf, findings: Findings) -> None:
    """Metadata and protection."""
    if not str(information(pdf).get("/Title", "")):
        findings.add(0, "no-title", "the file has no title", "readers and libraries show it instead of the file’s name")
    if "/Lang" not in pdf.Root:
        hint = "screen readers then guess how to pronounce the text"
        findings.add(0, "no-language", "the file does not say its language", hint, warning=True)
    if pdf.is_encrypted:
        findings.add(0, "protected", "the file is protected", "presses cannot place protected pages")


def _fold(count: int, findings: Findings) -> None:
    """Do the pages fill the folded sheets?"""
    blank = -count % 4
    if blank and count > 2:
        stay = "page stays" if blank == 1 else "pages stay"
        text = f"the page count, {count}, is not a multiple of four: once folded, {blank} {stay} blank"
        findings.add(0, "fold", text, warning=True)


def _sizes(pages: Iterable[pikepdf.Page], findings: Findings) -> None:
    """Every page says where it is cut, and all are cut to one size; the odd ones out are named."""
    sizes: dict[tuple[float, float], list[int]] = {}
    for number, page in enumerate(pages, start=1):
        if "/TrimBox" not in page.obj:
            findings.add(number, "no-trim", "there is no TrimBox to say where it is cut", warning=True)
        trim = pikepdf.Rectangle(page.trimbox)
        size = round(trim.width, 1), round(trim.height, 1)
        sizes.setdefault(size, []).append(number)
    if len(sizes) > 1:
        usual = max(sizes, key=lambda size: len(sizes[size]))
        for size, numbers in sizes.items():
            if size != usual:
                text = f"{size[0]:g} × {size[1]:g} pt, but most pages are {usual[0]:g} × {usual[1]:g} pt"
                for number in numbers:
                    findings.add(number, "page-size", text, "a bound book has one page size")


def _boxes(page: pikepdf.Page, number: int, findings: Findings) -> None:
    """MediaBox ⊇ BleedBox ⊇ TrimBox (ISO 32000-1, 14.11.2)."""
    for inner, outer in (("TrimBox", "BleedBox"), ("BleedBox", "MediaBox"), ("CropBox", "MediaBox")):
        small, large = (pikepdf.Rectangle(getattr(page, name.lower())) for name in (inner, outer))
        beyond = max(large.llx - small.llx, large.lly - small.lly, small.urx - large.urx, small.ury - large.ury)
        if beyond > ROUNDING:
            findings.add(number, "boxes", f"its {inner} reaches {beyond:.2f} pt beyond its {outer}")


def _safe_area(page: pikepdf.Page) -> tuple[float, float, float, float]:
    trim = pikepdf.Rectangle(page.trimbox)
    return trim.llx + SAFE, trim.lly + SAFE, trim.urx - SAFE, trim.ury - SAFE


def _item(item: Painted, page: int, inks: Inks, findings: Findings) -> None:
    match item:
        case Stroke(width) if width < HAIRLINE - 0.001:
            text = f"a line of {width:.2f} pt is thinner than {HAIRLINE} pt"
            findings.add(page, "hairline", text, "it may vanish in print or on a copier")
        case Picture():
            _picture(item, page, findings)
            for fault in faults_of_picture(item, inks):
                findings.add(page, *fault)
        case Colour():
            for fault in faults_of_colour(item, inks):
                findings.add(page, *fault)


def _font(font: PdfFont, page: int, findings: Findings) -> None:
    if font.damaged:
        hint = "install the font again, and print the file again"
        findings.add(page, "font-damaged", f"the font {font.name} is damaged", hint)
    if not font.embedded:
        hint = "a press without this font will substitute another"
        findings.add(page, "font-missing", f"the font {font.name} is not embedded", hint)
    elif not font.subset:
        findings.add(page, "font-whole", f"the font {font.name} is embedded whole, not as a subset", warning=True)


def _text(run: Run, page: int, safe: tuple[float, float, float, float], findings: Findings) -> None:
    if run.setting.lacking:
        hint = f"some text uses a character that {run.font.name} does not have"
        findings.add(page, "missing-glyph", "an empty box is printed for a character", hint)
    box = run.box()
    if box is None:
        return
    left, bottom, right, top = safe
    x0, y0, x1, y1 = box
    if left <= x0 and bottom <= y0 and x1 <= right and y1 <= top:  # as nearly all text does
        return
    beyond = max(left - x0, bottom - y0, x1 - right, y1 - top)
    # text that lies wholly beyond the trim is a slug line: cut off on purpose
    if beyond > ROUNDING and max(left - x1, bottom - y1, x0 - right, y0 - top) < SAFE:
        text = f"text reaches into the {SAFE / MM:g} mm along the trim"
        findings.add(page, "safe-area", text, "it may be cut off; give the page wider margins")


def _picture(picture: Picture, page: int, findings: Findings) -> None:
    across, down = (
        72 * pixels / max(points, 0.01) for pixels, points in zip(picture.pixels, picture.printed, strict=True)
    )
    fine = min(across, down)
    if fine < FINE:
        width, height = picture.pixels
        text = f"a picture of {width} × {height} pixels is printed at {fine:.0f} pixels per inch"
        hint = f"print it smaller or use a finer one; {FINE} is good"
        findings.add(page, "resolution", text, hint, warning=fine >= COARSE)
