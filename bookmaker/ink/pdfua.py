"""What a tagged PDF says of itself: that it is PDF/UA-1 (ISO 14289-1), for every reader, and PDF/A-2u (ISO 19005-2).

In: a file with its structure tree, and the document. Out: the file with output intent and XMP. PDF/A asks that the
properties of other standards be described in the packet itself.
"""

from __future__ import annotations

from bookmaker.display.items import Document
from bookmaker.ink.metadata import GREYS, ON_SCREEN, add_intent, add_metadata
from bookmaker.ink.pdffile import PdfFile


def make_pdfua(file: PdfFile, document: Document, fingerprint: str, coloured: bool) -> None:
    """Add what both standards want to be said; `fingerprint` is 32 hexadecimal figures."""
    add_intent(file, b"/GTS_PDFA1", ON_SCREEN if coloured else GREYS)
    add_metadata(file, document, fingerprint, _SPACES, _PROMISES)


_SPACES = {
    "pdfuaid": "http://www.aiim.org/pdfua/ns/id/",
    "pdfaid": "http://www.aiim.org/pdfa/ns/id/",
    "pdfaExtension": "http://www.aiim.org/pdfa/ns/extension/",
    "pdfaSchema": "http://www.aiim.org/pdfa/ns/schema#",
    "pdfaProperty": "http://www.aiim.org/pdfa/ns/property#",
}

_PROMISES = (
    "<pdfuaid:part>1</pdfuaid:part>",
    "<pdfaid:part>2</pdfaid:part>",
    "<pdfaid:conformance>U</pdfaid:conformance>",
    '<pdfaExtension:schemas><rdf:Bag><rdf:li rdf:parseType="Resource">',
    "<pdfaSchema:schema>PDF/UA identification</pdfaSchema:schema>",
    f"<pdfaSchema:namespaceURI>{_SPACES['pdfuaid']}</pdfaSchema:namespaceURI>",
    "<pdfaSchema:prefix>pdfuaid</pdfaSchema:prefix>",
    '<pdfaSchema:property><rdf:Seq><rdf:li rdf:parseType="Resource">',
    "<pdfaProperty:name>part</pdfaProperty:name>",
    "<pdfaProperty:valueType>Integer</pdfaProperty:valueType>",
    "<pdfaProperty:category>internal</pdfaProperty:category>",
    "<pdfaProperty:description>The part of PDF/UA that the file keeps</pdfaProperty:description>",
    "</rdf:li></rdf:Seq></pdfaSchema:property></rdf:li></rdf:Bag></pdfaExtension:schemas>",
)
