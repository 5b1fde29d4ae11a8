"""What a PDF says of itself to catalogues and presses: XMP metadata and the printing condition.

In: a file and its document. Out: the file with a metadata stream (ISO 16684-1) and an output intent (ISO 32000-1,
14.11.5). For greys alone the intent names no condition of a registry, for those all print in four colours; it says
“Custom” and carries a profile of black ink on paper. Colours for a screen are those of sRGB, colours for a press those
of a printing condition, which is named as its registry does. Metadata stands twice, in the information dictionary and
as XMP, and says the same.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from html import escape
from types import MappingProxyType

from bookmaker.display.items import Document
from bookmaker.ink.conditions import REGISTRY, Condition
from bookmaker.ink.pdffile import PdfFile
from bookmaker.ink.profiles import CONDITION, SCREEN, grey_profile, screen_profile

MAKER = "bookmaker"

PDF = "http://ns.adobe.com/pdf/1.3/"

GREYS = Condition("Custom", CONDITION, registered=False, profile=grey_profile())

ON_SCREEN = Condition("Custom", SCREEN, registered=False, profile=screen_profile())

_COLOURS = {b"GRAY": b"/N 1 /Alternate /DeviceGray", b"RGB ": b"/N 3 /Alternate /DeviceRGB", b"CMYK": b"/N 4"}


def add_intent(file: PdfFile, condition: Condition, *kinds: bytes) -> None:
    """Say what the colours of the file mean; `kinds` are the subtypes of output intents, as PDF writes them."""
    said = file.string(condition.about)
    entries = b"/OutputConditionIdentifier %s /OutputCondition %s /Info %s" % (file.string(condition.name), said, said)
    if condition.registered:
        entries += b" /RegistryName %s" % file.string(REGISTRY)
    if condition.profile:
        space = _COLOURS[condition.profile[16:20]]
        entries += b" /DestOutputProfile %d 0 R" % file.put_stream(space, condition.profile)
    intents = [file.put(b"<< /Type /OutputIntent /S %s %s >>" % (kind, entries)) for kind in kinds]
    file.catalogue("OutputIntents", f"[{' '.join(f'{intent} 0 R' for intent in intents)}]")


def add_metadata(
    file: PdfFile,
    document: Document,
    fingerprint: str,
    spaces: Mapping[str, str] = MappingProxyType({}),
    promises: Iterable[str] = (),
) -> None:
    """Add the XMP packet. `promises` are further properties, as XML, that name the standards the file keeps, `spaces`
    their namespaces by prefix; `fingerprint` is 32 hexadecimal figures."""
    packet = _packet(document, fingerprint, spaces, promises).encode()
    unpacked = b"<< /Type /Metadata /Subtype /XML /Length %d >>\nstream\n%s\nendstream" % (len(packet), packet)
    file.catalogue("Metadata", f"{file.put_plain(unpacked)} 0 R")


@dataclass(frozen=True, slots=True)
class Foreign:
    """A property of a standard that PDF/A does not know, which a packet has to describe (ISO 19005-1, 6.7.8)."""

    schema: str
    space: str
    prefix: str
    name: str
    kind: str
    about: str


ARCHIVED = {
    "pdfaid": "http://www.aiim.org/pdfa/ns/id/",
    "pdfaExtension": "http://www.aiim.org/pdfa/ns/extension/",
    "pdfaSchema": "http://www.aiim.org/pdfa/ns/schema#",
    "pdfaProperty": "http://www.aiim.org/pdfa/ns/property#",
}
"""Namespaces of what PDF/A says of a file and of foreign properties, by prefix."""


def archived(part: int, conformance: str) -> Iterator[str]:
    """That a file keeps a part of PDF/A."""
    yield f"<pdfaid:part>{part}</pdfaid:part>"
    yield f"<pdfaid:conformance>{conformance}</pdfaid:conformance>"


def described(foreign: Iterable[Foreign]) -> Iterator[str]:
    """What the foreign properties of a packet are."""
    yield "<pdfaExtension:schemas><rdf:Bag>"
    for each in foreign:
        yield '<rdf:li rdf:parseType="Resource">'
        yield f"<pdfaSchema:schema>{each.schema}</pdfaSchema:schema>"
        yield f"<pdfaSchema:namespaceURI>{each.space}</pdfaSchema:namespaceURI>"
        yield f"<pdfaSchema:prefix>{each.prefix}</pdfaSchema:prefix>"
        yield '<pdfaSchema:property><rdf:Seq><rdf:li rdf:parseType="Resource">'
        yield f"<pdfaProperty:name>{each.name}</pdfaProperty:name>"
        yield f"<pdfaProperty:valueType>{each.kind}</pdfaProperty:valueType>"
        yield "<pdfaProperty:category>internal</pdfaProperty:category>"
        yield f"<pdfaProperty:description>{each.about}</pdfaProperty:description>"
        yield "</rdf:li></rdf:Seq></pdfaSchema:property></rdf:li>"
    yield "</rdf:Bag></pdfaExtension:schemas>"


def _packet(document: Document, fingerprint: str, spaces: Mapping[str, str], promises: Iterable[str]) -> str:
    said = "\n".join((*_said(document, fingerprint), *promises))
    named = "".join(f' xmlns:{name}="{address}"' for name, address in {**_NAMESPACES, **spaces}.items())
    return (
        '<?xpacket begin="\ufeff" id="W5M0MpCehiHzreSzNTczkc9d"?>\n'
        '<x:xmpmeta xmlns:x="adobe:ns:meta/">\n'
        '<rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">\n'
        f'<rdf:Description rdf:about=""{named}>\n{said}\n</rdf:Description>\n'
        '</rdf:RDF>\n</x:xmpmeta>\n<?xpacket end="r"?>\n'
    )


def _said(document: Document, fingerprint: str) -> Iterator[str]:
    identity = "-".join(fingerprint[a:b] for a, b in ((0, 8), (8, 12), (12, 16), (16, 20), (20, 32)))
    yield "<dc:format>application/pdf</dc:format>"
    yield f"<dc:title>{_alternatives(document.title)}</dc:title>"
    yield f"<dc:language><rdf:Bag><rdf:li>{escape(document.language, quote=False)}</rdf:li></rdf:Bag></dc:language>"
    if document.author:
        yield f"<dc:creator><rdf:Seq><rdf:li>{escape(document.author, quote=False)}</rdf:li></rdf:Seq></dc:creator>"
    if document.subject:
        yield f"<dc:description>{_alternatives(document.subject)}</dc:description>"
    yield f"<xmp:CreatorTool>{MAKER}</xmp:CreatorTool>"
    if document.created:
        day = f"{document.created.isoformat()}T00:00:00Z"
        yield from (f"<xmp:{which}Date>{day}</xmp:{which}Date>" for which in ("Create", "Modify", "Metadata"))
    yield f"<xmpMM:DocumentID>uuid:{identity}</xmpMM:DocumentID>"
    yield "<xmpMM:VersionID>1</xmpMM:VersionID>"
    yield "<xmpMM:RenditionClass>default</xmpMM:RenditionClass>"
    yield f"<pdf:Producer>{MAKER}</pdf:Producer>"


_NAMESPACES = {
    "dc": "http://purl.org/dc/elements/1.1/",
    "xmp": "http://ns.adobe.com/xap/1.0/",
    "xmpMM": "http://ns.adobe.com/xap/1.0/mm/",
    "pdf": PDF,
}


def _alternatives(text: str) -> str:
    return f'<rdf:Alt><rdf:li xml:lang="x-default">{escape(text, quote=False)}</rdf:li></rdf:Alt>'
