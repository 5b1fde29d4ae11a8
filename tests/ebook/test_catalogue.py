"""The record of a book for catalogues: JSON-LD and Dublin Core, with what is known and nothing else."""

from __future__ import annotations

import json
from dataclasses import replace
from datetime import date
from pathlib import Path
from xml.etree.ElementTree import fromstring

from bookmaker.ebook import catalogue_bytes, record_of
from bookmaker.manifest.publication import Imprint
from tests.layout.sample_book import full_book, sample_book

DC = "{http://purl.org/dc/elements/1.1/}"
DATED = date(2026, 3, 14)


def test_json_ld_is_a_book_of_schema_org() -> None:
    record = record_of(full_book(), DATED, ebook=False)
    said = json.loads(catalogue_bytes(record, Path("a.json"), ebook=False, pages=40))
    assert (said["@context"], said["@type"]) == ("https://schema.org", "Book")
    assert (said["name"], said["isbn"], said["numberOfPages"]) == (full_book().title, "9780110002224", 40)
    assert (said["datePublished"], said["bookEdition"], said["inLanguage"]) == ("2026-03-14", "Second edition", "en")
    assert "accessMode" not in said and "bookFormat" not in said


def test_the_e_book_says_how_it_can_be_read() -> None:
    record = record_of(full_book(), DATED, ebook=True)
    said = json.loads(catalogue_bytes(record, Path("a.jsonld"), ebook=True, pages=40))
    assert said["bookFormat"] == "https://schema.org/EBook"
    assert "numberOfPages" not in said and "isbn" not in said
    assert ["textual"] in [one["itemListElement"] for one in said["accessModeSufficient"]]


def test_dublin_core_has_the_same() -> None:
    imprint = replace(full_book().imprint or Imprint(), ebook_isbn="978-0-11-000223-1")
    book = replace(full_book(), imprint=imprint)
    root = fromstring(catalogue_bytes(record_of(book, DATED, ebook=True), Path("a.xml"), ebook=True, pages=40))
    said = {one.tag.removeprefix(DC): one.text for one in root}
    assert said["title"] == f"{book.title}: {book.subtitle}"
    assert (said["creator"], said["publisher"], said["rights"]) == (book.editor, "Attic Press", "© 2026 Attic Press")
    assert (said["identifier"], said["source"]) == ("urn:isbn:9780110002231", "urn:isbn:9780110002224")
    assert (said["date"], said["format"], said["type"]) == ("2026-03-14", "application/epub+zip", "Text")


def test_what_is_not_known_is_left_out_and_the_name_of_a_book_stays() -> None:
    record = record_of(sample_book(), None, ebook=False)
    assert record == record_of(sample_book(), None, ebook=False)
    assert record.identifier != record_of(sample_book(), None, ebook=True).identifier
    said = json.loads(catalogue_bytes(record, Path("a.json"), ebook=False, pages=1))
    assert not {"isbn", "publisher", "datePublished", "copyrightNotice"} & set(said)
    assert all(said.values())
