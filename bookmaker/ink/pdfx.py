"""What makes a sound PDF a PDF/X-1a:2003 file (ISO 15930-4), ready for any press.

In: a file whose pages are drawn, and the document. Out: the file with the entries the standard asks for.

Of the PDF/X family X-1a is the right one here: it asks for the least of whoever prints the file. What X-4
(ISO 15930-7) adds, transparency, layers and colours to be converted at the press, no page of ours has. The output
intent of a file in greys names no condition of a registry, for those all print in four colours; it says “Custom”, as
ISO 32000-1 (14.11.5) provides, and carries a profile of black ink on paper (`profiles`). A file with colours names the
condition that these are for. Links, bookmarks and named places are left out by `pdf`. Metadata stands twice, in the
information dictionary and as XMP (ISO 16684-1), and says the same. Where the file carries a profile, nothing keeps it
from being PDF/A-1b (ISO 19005-1) as well, to be kept as it went to press, and it says so.
"""

from __future__ import annotations

from bookmaker.display.items import Document
from bookmaker.ink.conditions import Condition
from bookmaker.ink.metadata import ARCHIVED, GREYS, PDF, Foreign, add_intent, add_metadata, archived, described
from bookmaker.ink.pdffile import PdfFile

VERSION = "PDF/X-1a:2003"


def make_pdfx(file: PdfFile, document: Document, fingerprint: str, condition: Condition | None) -> None:
    """Add output intent and XMP; `fingerprint` is 32 hexadecimal figures, `condition` None for a file in greys.

    Raises ValueError without a date.
    """
    if document.created is None:
        raise ValueError(f"{VERSION} needs the date the document was created")
    condition = condition or GREYS
    kinds = (b"/GTS_PDFX", b"/GTS_PDFA1") if condition.profile else (b"/GTS_PDFX",)
    add_intent(file, condition, *kinds)
    kept = archived(1, "B") if condition.profile else ()
    add_metadata(file, document, fingerprint, {"pdfx": _PDFX, **ARCHIVED}, (*_PROMISES, *kept, *_DESCRIBED))


_PDFX = "http://ns.adobe.com/pdfx/1.3/"

_PROMISES = (
    "<pdf:Trapped>False</pdf:Trapped>",
    f"<pdfx:GTS_PDFXVersion>{VERSION}</pdfx:GTS_PDFXVersion>",
)

_DESCRIBED = tuple(
    described(
        [
            Foreign("PDF", PDF, "pdf", "Trapped", "Text", "Whether the file was trapped"),
            Foreign("PDF/X", _PDFX, "pdfx", "GTS_PDFXVersion", "Text", "The version of PDF/X that the file keeps"),
        ],
    )
)
