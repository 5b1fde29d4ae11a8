"""The texts of an e-book: a file for each part and each puzzle, so that a puzzle begins on a screen of its own.

In: a `Book` and its pictures. Out: `Text` values in reading order. Hints and keys share files, a few dozen to each.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from itertools import groupby
from xml.etree.ElementTree import Element

from bookmaker.book.contents import (
    Book,
    BookPuzzle,
    Chapter,
    Credits,
    Foreword,
    Glossary,
    HintPages,
    ImprintPage,
    Index,
    Keys,
    Part,
    TitlePage,
)
from bookmaker.book.reading import Block, Board, Heading, Listing, puzzle_read, read_parts
from bookmaker.book.wording import edited_by
from bookmaker.ebook.pictures import Pictures
from bookmaker.hypertext.blocks import (
    append_all,
    bullets,
    elements_of,
    hint_section,
    leading,
    sections,
    titled,
)
from bookmaker.hypertext.elements import element
from bookmaker.hypertext.tables import table_of
from bookmaker.language import Catalogue

TOGETHER = 24
"""Puzzles whose hints, or keys, stand in one file."""

KEY_BLOCKS = 2
"""Of each key: its heading, and its digits or what is wrong."""

ROLES = {
    Foreword: ("foreword", "doc-foreword"),
    Glossary: ("glossary", "doc-glossary"),
    Credits: ("credits", "doc-credits"),
    Index: ("index", "doc-index"),
}
"""What a part is, in the words of EPUB's structural semantics and of DPUB-ARIA 1.1."""


@dataclass(frozen=True, slots=True)
class Text:
    """A file: its name, title and body; `entries` are what the contents list of it (level, name of the place, words),
    `matter` the part of a book that it belongs to."""

    file: str
    title: str
    body: Element
    entries: tuple[tuple[int, str, str], ...]
    matter: str = "bodymatter"


def address(name: str) -> str:
    """Where a heading of that name stands: file and place."""
    kind, _, number = name.partition("-")
    file = name
    if kind in ("key", "hints") and number:
        file = f"{'keys' if kind == 'key' else kind}-{(int(number) - 1) // TOGETHER + 1}"
    elif kind in ("keys", "hints"):
        file = f"{kind}-1"
    return f"{file}.xhtml#{name}"


def texts_of(book: Book, pictures: Pictures, cover: str) -> Iterator[Text]:
    """All texts, beginning with the cover, a picture of that name."""
    named = ", ".join(said for said in (book.title, book.subtitle, book.editor) if said)
    words = book.words
    image = element("img", src=cover, alt=words.say("cover-of", title=named), class_="cover")
    yield Text(
        "cover.xhtml", words.say("cover"), element("body", element("section", image, epub_type="cover")), (), "cover"
    )
    publisher = next((part.publisher for part in book.front if isinstance(part, TitlePage)), "")
    title = element(
        "section",
        titled(book.title, book.subtitle, edited_by(words, book.editor)),
        element("p", words.say("draft")) if book.draft else None,
        element("p", publisher) if publisher else None,
        id="title",
        epub_type="titlepage",
    )
    yield Text(
        "title.xhtml", book.title, element("body", title), ((0, "title", words.say("title-page")),), "frontmatter"
    )
    front = set(map(id, book.front))
    for part, blocks in read_parts(book, pictured=True):
        yield from _part(part, blocks, book, pictures, "frontmatter" if id(part) in front else "bodymatter")


def _part(part: Part, blocks: Sequence[Block], book: Book, pictures: Pictures, matter: str) -> Iterator[Text]:
    words = book.words
    match part:
        case ImprintPage():
            heading = words.say("heading-imprint")
            told = (made for block in blocks for made in elements_of(words, block, address))
            made = element("section", element("h1", heading), told, id="imprint", epub_type="copyright-page")
            yield Text("imprint.xhtml", heading, element("body", made), ((0, "imprint", heading),), matter)
        case Chapter():
            yield from _chapter(words, part, pictures)
        case HintPages():
            for number, some in _shared_out(puzzle for puzzle in book.puzzles if puzzle.hints):
                yield _shared("hints", number, part.heading, hint_section(words, part, some, address, 1))
        case Keys():
            first, *keys = blocks
            for number, some in _shared_out(book.puzzles):
                count = KEY_BLOCKS * len(some)
                (section,) = sections(words, (first, *keys[:count]), address, 1)
                keys = keys[count:]
                yield _shared("keys", number, part.heading, section)
        case _:
            top = next(block for block in blocks if isinstance(block, Heading))
            drawn = sections(words, blocks, address, 1, lambda figure: pictures.figure(figure.figure, figure.text))
            body = append_all(element("body"), drawn)
            if type(part) in ROLES:
                kind, role = ROLES[type(part)]
                body[0].attrib.update({"epub:type": kind, "role": role})
            last = "backmatter" if isinstance(part, Glossary | Credits | Index) else matter
            yield Text(f"{top.name}.xhtml", top.text, body, ((0, top.name, top.text),), last)


def _chapter(words: Catalogue, chapter: Chapter, pictures: Pictures) -> Iterator[Text]:
    depth = 0
    if chapter.title:
        name = f"chapter-{chapter.number}"
        title = words.say("chapter-titled", number=str(chapter.number), title=chapter.title)
        note = element("p", chapter.note) if chapter.note else None
        opening = element("section", element("h1", title), note, id=name, epub_type="chapter", role="doc-chapter")
        yield Text(f"{name}.xhtml", title, element("body", opening), ((0, name, title),))
        depth = 1
    for puzzle in chapter.puzzles:
        name, title = f"puzzle-{puzzle.number}", words.say("puzzle-named", name=puzzle.named(words))
        yield Text(f"{name}.xhtml", title, element("body", _puzzle(words, puzzle, pictures)), ((depth, name, title),))


def _puzzle(words: Catalogue, puzzle: BookPuzzle, pictures: Pictures) -> Element:
    """Rules beside samples of their marks, then the grid as a picture; its marks in words and its digits unfold."""
    section = element("section", id=f"puzzle-{puzzle.number}", class_="puzzle")
    told: list[Element] = []
    for block in puzzle_read(words, puzzle, 2):
        match block:
            case Heading():
                section.append(element("h1", block.text))
            case Listing():
                sample = (pictures.mark(block.mark), " ") if block.mark else ()
                section.append(element("p", sample, block.text, class_="rule"))
                told += [bullets(block.items)] * bool(block.items)
            case Board():
                section.append(element("p", pictures.grid(puzzle)))
                if told:
                    section.append(element("details", element("summary", words.say("grid-in-words")), told))
                table = table_of(words, block)
                section.append(element("details", element("summary", words.say("grid-as-table")), table))
            case _:
                append_all(section, elements_of(words, block, address))
    section.append(leading(words, puzzle, address))
    return section


def _shared(name: str, number: int, heading: str, section: Element) -> Text:
    """One of the files that hints or keys share; the contents list the first."""
    entries = ((0, name, heading),) if number == 1 else ()
    return Text(f"{name}-{number}.xhtml", heading, element("body", section), entries)


def _shared_out(puzzles: Iterable[BookPuzzle]) -> Iterator[tuple[int, list[BookPuzzle]]]:
    """Puzzles by the file that they share, counted from 1."""
    for number, some in groupby(puzzles, key=lambda puzzle: (puzzle.number - 1) // TOGETHER + 1):
        yield number, [*some]
