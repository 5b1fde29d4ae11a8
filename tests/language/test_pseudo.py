"""In a language that nobody speaks no string of English is left, and no box is too tight for words a third longer."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest

from bookmaker.book import Book, make_book
from bookmaker.book.contest import enter_contest
from bookmaker.book.textedition import braille_edition, text_edition
from bookmaker.display.items import Document, Text
from bookmaker.hypertext.webpage import web_page
from bookmaker.layout import compose, compose_cover, compose_handout, compose_key, layout_names, load_layout
from bookmaker.layout.sheets.crib import compose_crib
from bookmaker.layout.sheets.handout import compose_marker
from bookmaker.manifest.entries import Manifest
from bookmaker.phrases.bands import band_names
from bookmaker.tell import tell
from bookmaker.tell.formats import as_markdown, as_text
from bookmaker.tell.scenes import ends_of, scenes_of
from tests.language.pseudo import CODE, speak
from tests.layout.flat import flat
from tests.layout.sample_book import full_book, sample_manifest, sample_proofs

WORD = re.compile(r"[^\W\d_]{3,}")

ACCENTED = re.compile("[áéíóúýÁÉÍÓÚÝ]")

BOOKS = [name for name in layout_names() if load_layout(name).use == "book"]


@pytest.fixture
def manifest(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Manifest:
    """The sample book with every part, in the pseudo-language."""
    speak(tmp_path, monkeypatch)
    published = replace(sample_manifest().publication, language=CODE, half_title=True, primer=True, index=True)
    return replace(sample_manifest(), publication=published, band_names=band_names(CODE))


@pytest.fixture
def book(manifest: Manifest) -> Book:
    return make_book(manifest, sample_proofs())


def typed(book: Book) -> set[str]:
    """The words that the editor typed, and names that stay as they are."""
    manifest = sample_manifest()
    texts = [manifest.title, manifest.subtitle, manifest.editor, "ISBN DRAFT"]
    for entry in manifest.entries:
        texts += [entry.title, entry.setter, entry.note, entry.permission, entry.link]
    texts += ["January February March April May June July August September October November December"]
    return {word.casefold() for text in texts for word in WORD.findall(text)}


def english(words: str, known: set[str]) -> set[str]:
    """The words of a text that are in no language but English: without an accent, and not the editor's. Digits from ten
    on, A to G, are no words, and the parts of a hyphenated one are looked at together."""
    whole = words.replace("- ", "")
    found = {word for word in WORD.findall(whole) if not ACCENTED.search(word) and word.casefold() not in known}
    return {word for word in found if not {*word} <= {*"ABCDEFG"}}


def printed(document: Document) -> Iterator[str]:
    """Every text on the pages, and what is said in place of what is drawn."""
    for page in document.pages:
        yield from (one.item.text for one in flat(page) if isinstance(one.item, Text))


def outside_page(document: Document) -> list[str]:
    return [
        one.item.text
        for page in document.pages
        for one in flat(page)
        if isinstance(one.item, Text) and not (one.box[0] >= -1 and one.box[2] <= page.width + 1)
    ]


@pytest.mark.parametrize("name", BOOKS)
def test_a_book_in_every_layout(name: str, book: Book) -> None:
    document = compose(book, load_layout(name))
    assert outside_page(document) == []
    if name in ("a4-book", "a4-tear-out"):
        assert english(" ".join(printed(document)), typed(book)) == set()


def test_sheets_covers_and_keys(book: Book) -> None:
    a4, handout = load_layout("a4-book"), load_layout("a4-handout")
    contest = enter_contest(book)
    made = [compose_key(book, a4), compose_cover(book, a4, 64), compose_handout(book, handout)]
    made += [compose_handout(contest, handout), compose_marker(contest, handout)]
    for document in made:
        assert outside_page(document) == []
        assert english(" ".join(printed(document)), typed(book)) == set()


def test_editions_in_words(book: Book) -> None:
    known = typed(book) | {"example", "https"}
    page = re.sub(r"<style>.*?</style>", "", web_page(book).decode(), flags=re.DOTALL)
    for text in (text_edition(book), re.sub(r"<[^>]*>", " ", page)):
        assert english(text, known) == set()
    assert english(braille_edition(book), known) == set()


def test_stories_and_cribs(manifest: Manifest, book: Book) -> None:
    by_id = {puzzle.id: puzzle for puzzle in book.puzzles}
    for proof in sample_proofs()[:6]:
        story = tell(proof, manifest.band_names, full=True, language=CODE)
        assert english(as_text(story) + as_markdown(story), typed(book)) == set()
        layout = load_layout("a4-book").speaking(CODE)
        crib = compose_crib(by_id[proof.entry.id], story, scenes_of(proof, story), *ends_of(proof, story), layout)
        assert outside_page(crib) == []
        assert english(" ".join(printed(crib)), typed(book)) == set()


def test_the_test_can_fail() -> None:
    assert english(" ".join(printed(compose(full_book(), load_layout("a4-book")))), set())
