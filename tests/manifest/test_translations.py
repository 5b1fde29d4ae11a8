"""A book typed in several languages prints one of them."""

from __future__ import annotations

from pathlib import Path

import pytest

from bookmaker.manifest import load
from bookmaker.manifest.entries import Manifest
from bookmaker.source.diagnostics import BookErrors

GIVENS = "53..7.... 6..195... .98....6. 8...6...3 4..8.3..1 7...2...6 .6....28. ...419..5 ....8..79"

BOOK = f"""\
book:
  title: {{en: Low Tide, de: Ebbe}}
  subtitle: Two puzzles
  language: de
  imprint:
    rights: {{fr: Tous droits réservés, en: All rights reserved}}
chapters:
  - title: {{de-AT: Am Kai, en: On the Quay}}
    puzzles:
      - id: one
        title: {{en: One, nl: Een}}
        permission: {{state: granted, printed: {{en: with thanks, de: mit Dank}}}}
        givens: |
          {GIVENS.replace(" ", chr(10) + 10 * " ")}
"""


def made(folder: Path, language: str = "") -> Manifest:
    (folder / "book.yaml").write_text(BOOK, encoding="utf-8")
    return load(folder, language=language)


def test_a_book_is_printed_in_its_own_language(tmp_path: Path) -> None:
    book = made(tmp_path)
    imprint = book.publication.imprint
    assert (book.title, book.subtitle, book.publication.language) == ("Ebbe", "Two puzzles", "de")
    assert imprint and imprint.rights == "All rights reserved"  # English where the language is missing
    assert book.chapters[0].title == "Am Kai"  # of another country
    assert (book.entries[0].title, book.entries[0].permission) == ("One", "mit Dank")


def test_or_in_another_that_is_asked_for(tmp_path: Path) -> None:
    book = made(tmp_path, "fr")
    imprint = book.publication.imprint
    assert (book.title, book.publication.language) == ("Low Tide", "fr")
    assert imprint and imprint.rights == "Tous droits réservés"
    assert (book.chapters[0].title, book.entries[0].title) == ("On the Quay", "One")
    assert made(tmp_path, "nl").entries[0].title == "Een"


def test_bands_are_called_as_in_the_language_that_is_printed(tmp_path: Path) -> None:
    assert made(tmp_path, "en-US").band_names[0] == "Stroll"
    (tmp_path / "list.txt").write_text(GIVENS.replace(" ", "") + "\n", encoding="utf-8")
    assert load(tmp_path / "list.txt", language="fr").publication.language == "fr"


def test_a_table_of_something_else_is_still_a_mistake(tmp_path: Path) -> None:
    (tmp_path / "book.yaml").write_text(BOOK.replace("{en: Low Tide, de: Ebbe}", "{low: tide}"), encoding="utf-8")
    with pytest.raises(BookErrors):
        load(tmp_path)


def test_a_mistyped_language_is_one_message_at_its_code(tmp_path: Path) -> None:
    (tmp_path / "book.yaml").write_text(BOOK.replace("nl: Een", "nll: Een"), encoding="utf-8")
    with pytest.raises(BookErrors) as found:
        load(tmp_path)
    assert [(d.code, d.place.line, d.hint) for d in found.value.diagnostics] == [
        ("unknown-language", 11, "did you mean “nl”?")
    ]
