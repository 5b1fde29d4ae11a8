"""The package document: what the e-book is, which files it has, in which order they are read (EPUB 3.3, 5).

In: a `Record`, the names of files, the texts. Out: the element.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator, Sequence
from datetime import date
from pathlib import PurePosixPath
from xml.etree.ElementTree import Element, indent

from bookmaker.ebook.catalogue import DC, dublin_core
from bookmaker.ebook.record import ACCESS_MODES, FEATURES, HAZARD, PAGED, SUFFICIENT, Record
from bookmaker.hypertext.elements import element
from bookmaker.language import catalogue

MEDIA = {
    ".xhtml": "application/xhtml+xml",
    ".css": "text/css",
    ".svg": "image/svg+xml",
    ".png": "image/png",
    ".ttf": "font/ttf",
    ".txt": "text/plain",
}

ROLES = {"creator": "edt", "contributor": "ctb"}
"""What an editor and a setter are among MARC's relators."""


def package(
    record: Record, files: Iterable[str], spine: Sequence[str], cover: str, dated: date, printed: str
) -> Element:
    """The document. `spine` are the texts in order; `printed` says which edition the printed pages are those of, ""
    where none are marked."""
    ids = {file: f"f{number}" for number, file in enumerate(files, start=1)}
    manifest = element("manifest", (_item(file, name, cover) for file, name in ids.items()))
    order = element("spine", (element("itemref", idref=ids[file]) for file in spine))
    root = element("package", element("metadata", _metadata(record, dated, printed)), manifest, order, version="3.0")
    root.attrib |= {
        "xmlns": "http://www.idpf.org/2007/opf",
        "xmlns:dc": DC,
        "unique-identifier": "identifier",
        "xml:lang": record.language,
    }
    indent(root)
    return root


def _item(file: str, name: str, cover: str) -> Element:
    item = element("item", id=name, href=file)
    item.set("media-type", MEDIA[PurePosixPath(file).suffix])
    properties = {"nav.xhtml": "nav", cover: "cover-image"}.get(file)
    if properties:
        item.set("properties", properties)
    return item


def _metadata(record: Record, dated: date, printed: str) -> Iterator[Element]:
    for kind, text in (("main", record.title), ("subtitle", record.subtitle)):
        if text:
            yield element("dc:title", text, id=f"title-{kind}")
            yield element("meta", kind, property="title-type", refines=f"#title-{kind}")
    counts = Counter[str]()
    for name, text in dublin_core(record):
        if not text or name == "title":
            continue
        counts[name] += 1
        own = {"identifier": name, **dict.fromkeys(ROLES, f"{name}-{counts[name]}")}.get(name)
        yield element(f"dc:{name}", text, **({"id": own} if own else {}))
        if name in ROLES:
            yield element("meta", ROLES[name], property="role", refines=f"#{own}", scheme="marc:relators")
    yield element("meta", f"{dated.isoformat()}T00:00:00Z", property="dcterms:modified")
    said = [("accessMode", mode) for mode in ACCESS_MODES]
    said += [("accessModeSufficient", modes) for modes in SUFFICIENT]
    said += [("accessibilityFeature", feature) for feature in (*FEATURES, *(PAGED if printed else ()))]
    said += [("accessibilityHazard", HAZARD), ("accessibilitySummary", catalogue(record.language).say("accessibility"))]
    yield from (element("meta", text, property=f"schema:{name}") for name, text in said)
    if printed:
        yield element("meta", printed, property="pageBreakSource")
