"""What a tagged PDF says of itself: that it is PDF/UA-1 (ISO 14289-1), for every reader, and PDF/A-2u (ISO 19005-2).

In: a file with its structure tree, and the document. Out: the file with output intent and XMP. PDF/A asks that the
properties of other standards be described in the packet itself.
"""

from __future__ import annotations

from bookmaker.display.items import Document
from bookmaker.ink.metadata import ARCHIVED, GREYS, ON_SCREEN, Foreign, add_intent, add_metadata, archived, described
from bookmaker.ink.pdffile import PdfFile


def make_pdfua(file: PdfFile, document: Document, fingerprint: str, coloured: bool) -> None:
    """Add what both standards want to be said; `fingerprint` is 32 hexadecimal figures."""
    add_intent(file, ON_SCREEN if coloured else GREYS, b"/GTS_PDFA1")
    add_metadata(file, document, fingerprint, _SPACES, _PROMISES)


_SPACES = {"pdfuaid": "http://www.aiim.org/pdfua/ns/id/", **ARCHIVED}

_PROMISES = (
    "<pdfuaid:part>1</pdfuaid:part>",
    *archived(2, "U"),
    *described(
        [
            Foreign(
                "PDF/UA identification",
                _SPACES["pdfuaid"],
                "pdfuaid",
                "part",
                "Integer",
                "The part of PDF/UA that the file keeps",
            )
        ],
    ),
)
