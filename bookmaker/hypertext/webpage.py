"""The text edition as one web page, with headings and landmarks to move by.

In: a `Book`. Out: the bytes of an HTML file that needs no other.
"""

from __future__ import annotations

from collections.abc import Iterator
from importlib.resources import files
from xml.etree.ElementTree import Element

from bookmaker.book.contents import Book, HintPages, Part
from bookmaker.book.reading import Block, Heading, read_parts
from bookmaker.book.wording import edited_by
from bookmaker.hypertext.blocks import append_all, hint_section, sections, titled
from bookmaker.hypertext.elements import element, html

_AROUND = """\
:root { color-scheme: light dark; }
body { max-width: 40em; margin: 0 auto; padding: 1em; font-family: serif; }
a.skip:not(:focus) { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
"""


def stylesheet() -> str:
    """The style of the web page and the e-book."""
    return files(__package__).joinpath("reader.css").read_text(encoding="utf-8")


def web_page(book: Book) -> bytes:
    """The whole book on a page."""
    parts = [*read_parts(book)]
    head = (
        element("meta", charset="utf-8"),
        element("meta", name="viewport", content="width=device-width, initial-scale=1"),
        element("title", book.title),
        element("style", stylesheet() + _AROUND),
    )
    words, edited = book.words, edited_by(book.words, book.editor)
    contents = words.say("heading-contents")
    draft = element("p", words.say("draft")) if book.draft else None
    body = element(
        "body",
        element("a", words.say("skip-to-book"), href="#book", class_="skip"),
        element("header", titled(book.title, book.subtitle, edited), draft),
        element("nav", element("h2", contents), element("ul", _contents(parts)), aria_label=contents),
        append_all(element("main", id="book"), (made for part, blocks in parts for made in _part(part, blocks, book))),
    )
    return html(head, body, book.language)


def _part(part: Part, blocks: tuple[Block, ...], book: Book) -> Iterator[Element]:
    if isinstance(part, HintPages):
        yield hint_section(book.words, part, book.puzzles, _here, 2)
    else:
        yield from sections(book.words, blocks, _here, 2)


def _contents(parts: list[tuple[Part, tuple[Block, ...]]]) -> Iterator[Element]:
    for part, blocks in parts:
        if isinstance(part, HintPages):
            yield element("li", element("a", part.heading, href="#hints"))
            continue
        for block in blocks:
            if isinstance(block, Heading) and block.name and (block.level == 2 or block.name.startswith("puzzle-")):
                yield element("li", element("a", block.text, href=_here(block.name)))


def _here(name: str) -> str:
    return f"#{name}"
