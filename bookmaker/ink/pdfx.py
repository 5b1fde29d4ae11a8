"""What makes a sound black-only PDF a PDF/X-1a:2003 file (ISO 15930-4), ready for any press.

In: a file whose pages are drawn, and the document. Out: the file with the entries the standard asks for.

Of the PDF/X family X-1a is the right one here: it asks for the least of whoever prints the file. What X-4
(ISO 15930-7) adds, transparency, layers and colours to be converted at the press, no page of ours has. The output
intent names no condition of a registry, for those all print in four colours; it says “Custom”, as ISO 32000-1 (14.11.5)
provides, and carries a profile of black ink on paper (`greyprofile`). Links, bookmarks and named places are left out by
`pdf`. Metadata stands twice, in the information dictionary and as XMP (ISO 16684-1), and says the same.
"""

from __future__ import annotations

from datetime import date
from xml.sax.saxutils import escape

from bookmaker.display.items import Document
from bookmaker.ink.greyprofile import CONDITION, grey_profile
from bookmaker.ink.pdffile import PdfFile

VERSION = "PDF/X-1a:2003"

MAKER = "bookmaker"


def make_pdfx(file: PdfFile, document: Document, fingerprint: str) -> None:
    """Add output intent and XMP; `fingerprint` is 32 hexadecimal figures. Raises ValueError without a date."""
    if document.created is None:
        raise ValueError(f"{VERSION} needs the date the document was created")
    profile = file.put_stream(b"/N 1 /Alternate /DeviceGray", grey_profile())
    said = file.string(CONDITION)
    intent = file.put(
        b"<< /Type /OutputIntent /S /GTS_PDFX /OutputConditionIdentifier (Custom) /OutputCondition %s /Info %s "
        b"/DestOutputProfile %d 0 R >>" % (said, said, profile)
    )
    file.catalogue("OutputIntents", f"[{intent} 0 R]")
    packet = _xmp(document, document.created, fingerprint).encode()
    unpacked = b"<< /Type /Metadata /Subtype /XML /Length %d >>\nstream\n%s\nendstream" % (len(packet), packet)
    file.catalogue("Metadata", f"{file.put(unpacked)} 0 R")


def _xmp(document: Document, created: date, fingerprint: str) -> str:
    """The metadata as an XMP packet."""
    day = f"{created.isoformat()}T00:00:00Z"
    identity = "-".join(fingerprint[a:b] for a, b in ((0, 8), (8, 12), (12, 16), (16, 20), (20, 32)))
    said = [
        "<dc:format>application/pdf</dc:format>",
        f"<dc:title>{_alternatives(document.title)}</dc:title>",
        f"<dc:language><rdf:Bag><rdf:li>{escape(document.language)}</rdf:li></rdf:Bag></dc:language>",
    ]
    if document.author:
        said.append(f"<dc:creator><rdf:Seq><rdf:li>{escape(document.author)}</rdf:li></rdf:Seq></dc:creator>")
    if document.subject:
        said.append(f"<dc:description>{_alternatives(document.subject)}</dc:description>")
    said += [
        f"<xmp:CreatorTool>{MAKER}</xmp:CreatorTool>",
        *(f"<xmp:{which}Date>{day}</xmp:{which}Date>" for which in ("Create", "Modify", "Metadata")),
        f"<xmpMM:DocumentID>uuid:{identity}</xmpMM:DocumentID>",
        "<xmpMM:VersionID>1</xmpMM:VersionID>",
        "<xmpMM:RenditionClass>default</xmpMM:RenditionClass>",
        f"<pdf:Producer>{MAKER}</pdf:Producer>",
        "<pdf:Trapped>False</pdf:Trapped>",
        f"<pdfx:GTS_PDFXVersion>{VERSION}</pdfx:GTS_PDFXVersion>",
    ]
    spaces = "".join(f' xmlns:{name}="{address}"' for name, address in _NAMESPACES.items())
    return (
        '<?xpacket begin="\ufeff" id="W5M0MpCehiHzreSzNTczkc9d"?>\n'
        '<x:xmpmeta xmlns:x="adobe:ns:meta/">\n'
        '<rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">\n'
        f'<rdf:Description rdf:about=""{spaces}>\n{chr(10).join(said)}\n</rdf:Description>\n'
        '</rdf:RDF>\n</x:xmpmeta>\n<?xpacket end="r"?>\n'
    )


_NAMESPACES = {
    "dc": "http://purl.org/dc/elements/1.1/",
    "xmp": "http://ns.adobe.com/xap/1.0/",
    "xmpMM": "http://ns.adobe.com/xap/1.0/mm/",
    "pdf": "http://ns.adobe.com/pdf/1.3/",
    "pdfx": "http://ns.adobe.com/pdfx/1.3/",
}


def _alternatives(text: str) -> str:
    return f'<rdf:Alt><rdf:li xml:lang="x-default">{escape(text)}</rdf:li></rdf:Alt>'
