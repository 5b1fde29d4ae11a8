"""Does a file that says it is PDF/X keep that promise (ISO 15930: the checklist shared by X-1a, X-3 and X-4)?

In: a PDF's catalogue and pages. Out: findings. Fonts, boxes and colours are looked at in every file by `checks`; a file
that makes no such promise is passed over here.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import Any

from pypdf import PageObject, PdfReader

from bookmaker.preflight.findings import Findings

_VERSION = re.compile(rb"PDF/X-[0-9][0-9a-z:]*")
_NEEDED = ("/Title", "/CreationDate", "/ModDate")


def promised(reader: PdfReader) -> str:
    """The version of PDF/X that a file says it is; empty for other files. X-4 says it in its XMP alone."""
    information: Any = reader.metadata or {}
    if "/GTS_PDFXVersion" in information:
        return str(information["/GTS_PDFXVersion"])
    packet = reader.root_object.get("/Metadata")
    found = _VERSION.search(packet.get_object().get_data()) if packet is not None else None
    return found[0].decode("ascii") if found else ""


def check_pdfx(reader: PdfReader, findings: Findings) -> None:
    """Note every breach; all have the code “pdfx”."""
    version = promised(reader)
    if not version:
        return
    for text in _file(reader):
        findings.add(0, "pdfx", f"the file says it is {version}, but {text}", "print it again, or ask the maker")
    for number, page in enumerate(reader.pages, start=1):
        for text in _page(page, layered=not version.startswith("PDF/X-1")):
            findings.add(number, "pdfx", f"the file says it is {version}, but {text}")


def _file(reader: PdfReader) -> Iterator[str]:
    information: Any = reader.metadata or {}
    root = reader.root_object
    intents = [intent for intent in _listed(root, "/OutputIntents") if intent.get("/S") == "/GTS_PDFX"]
    if len(intents) != 1:
        yield "it does not name one printing condition as its output intent"
    for intent in intents:
        condition = intent.get("/OutputConditionIdentifier", "")
        if not condition:
            yield "its output intent has no condition identifier"
        if "/DestOutputProfile" not in intent and condition in ("", "Custom"):
            yield "the printing condition it names is in no registry, and no profile describes it"
    for key in _NEEDED:
        if not information.get(key):
            yield f"its metadata has no {key[1:]}"
    if information.get("/Trapped") not in ("/True", "/False"):
        yield "it does not say whether it is trapped"
    if "/ID" not in reader.trailer:
        yield "it has no identifier"
    names = _entries(root, "/Names")
    if "/OpenAction" in root or "/AA" in root or "/JavaScript" in names:
        yield "it holds actions or scripts"


def _page(page: PageObject, layered: bool) -> Iterator[str]:
    """What a page breaks; `layered` versions allow transparency."""
    if ("/TrimBox" in page) == ("/ArtBox" in page):
        yield "a page needs a TrimBox or an ArtBox, not both"
    bleed = page.bleedbox
    for note in _listed(page, "/Annots"):
        left, bottom, right, top = map(float, note["/Rect"])
        if left < bleed.right and right > bleed.left and bottom < bleed.top and top > bleed.bottom:
            yield f"a {str(note.get('/Subtype', '/note'))[1:].lower()} lies on the page"
    if "/AA" in page:
        yield "a page holds actions"
    if not layered and _transparent(page):
        yield "something on a page is transparent"


def _transparent(page: PageObject) -> bool:
    resources = _entries(page, "/Resources")
    states = [state.get_object() for state in _entries(resources, "/ExtGState").values()]
    things = [thing.get_object() for thing in _entries(resources, "/XObject").values()]
    return (
        any(_entries(holder, "/Group").get("/S") == "/Transparency" for holder in (page, *things))
        or any("/SMask" in thing for thing in things)
        or any(state.get("/CA", 1) != 1 or state.get("/ca", 1) != 1 for state in states)
        or any(state.get("/SMask", "/None") != "/None" for state in states)
        or any(state.get("/BM", "/Normal") not in ("/Normal", "/Compatible") for state in states)
    )


def _entries(holder: Any, key: str) -> dict[str, Any]:
    """The dictionary under a key; an empty one where there is none."""
    found: dict[str, Any] = holder[key].get_object() if key in holder else {}
    return found


def _listed(holder: Any, key: str) -> list[Any]:
    """The members of the array under a key; none where there is none."""
    return [entry.get_object() for entry in holder[key].get_object()] if key in holder else []
