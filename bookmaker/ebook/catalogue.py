"""The record of a book for a catalogue: JSON-LD in the terms of schema.org, and Dublin Core.

In: a `Record`. Out: the bytes of a file, its kind by the end of its name.
"""

from __future__ import annotations

import json
from collections.abc import Iterator
from pathlib import PurePath
from xml.etree.ElementTree import indent

from bookmaker.ebook.record import ACCESS_MODES, FEATURES, HAZARD, PAGED, SUFFICIENT, Record
from bookmaker.hypertext.elements import element, xml
from bookmaker.language import catalogue

CATALOGUES = (".json", ".jsonld", ".xml")
"""Ends of names: the first two for JSON-LD, the last for Dublin Core."""

DC = "http://purl.org/dc/elements/1.1/"


def catalogue_bytes(record: Record, file: PurePath, ebook: bool, pages: int) -> bytes:
    """The file of that name. `pages` are those of the printed edition."""
    if file.suffix.lower() == ".xml":
        return _dublin_core(record, ebook)
    return (json.dumps(_schema(record, ebook, pages), ensure_ascii=False, indent=2) + "\n").encode()


def _schema(record: Record, ebook: bool, pages: int) -> dict[str, object]:
    """schema.org/Book, without what is not known."""
    said: dict[str, object] = {
        "@context": "https://schema.org",
        "@type": "Book",
        "identifier": record.identifier,
        "name": record.title,
        "alternativeHeadline": record.subtitle,
        "isbn": record.isbn,
        "bookEdition": record.edition,
        "editor": record.editor,  # a person or a group: that is not known
        "contributor": [*record.setters],
        "publisher": {"@type": "Organization", "name": record.publisher} if record.publisher else "",
        "datePublished": record.dated.isoformat() if record.dated else "",
        "inLanguage": record.language,
        "about": catalogue(record.language).say("subject"),
        "description": record.description,
        "copyrightNotice": record.rights,
    }
    if ebook:
        said |= {
            "bookFormat": "https://schema.org/EBook",
            "accessMode": [*ACCESS_MODES],
            "accessModeSufficient": [
                {"@type": "ItemList", "itemListElement": modes.split(",")} for modes in SUFFICIENT
            ],
            "accessibilityFeature": [*FEATURES, *PAGED],
            "accessibilityHazard": [HAZARD],
            "accessibilitySummary": catalogue(record.language).say("accessibility"),
        }
    else:
        said["numberOfPages"] = pages
    return {key: value for key, value in said.items() if value}


def _dublin_core(record: Record, ebook: bool) -> bytes:
    root = element("metadata", (element(f"dc:{name}", text) for name, text in dublin_core(record) if text))
    root.append(element("dc:type", "Text"))
    if ebook:
        root.append(element("dc:format", "application/epub+zip"))
    root.set("xmlns:dc", DC)
    indent(root)
    return xml(root)


def dublin_core(record: Record) -> Iterator[tuple[str, str]]:
    """Names of Dublin Core and what they hold, "" where nothing is known."""
    title = f"{record.title}: {record.subtitle}" if record.subtitle else record.title
    yield "title", title
    yield "creator", record.editor
    yield from (("contributor", setter) for setter in record.setters)
    yield "identifier", record.identifier
    yield "language", record.language
    yield "publisher", record.publisher
    yield "date", record.dated.isoformat() if record.dated else ""
    yield "rights", record.rights
    yield "description", record.description
    yield "subject", catalogue(record.language).say("subject")
    yield "source", f"urn:isbn:{record.printed}" if record.printed and record.printed != record.isbn else ""
