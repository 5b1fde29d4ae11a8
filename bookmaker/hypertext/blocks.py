"""Blocks of a book → elements, in sections one inside the other as their headings go.

In: blocks, where links lead, how deep the first heading is. Out: elements for the body of a document.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable, Iterator
from typing import TypeAlias, assert_never
from xml.etree.ElementTree import Element

from bookmaker.book import wording
from bookmaker.book.contents import BookPuzzle, HintPages
from bookmaker.book.reading import (
    Block,
    Board,
    Figure,
    Found,
    Heading,
    Listing,
    Numbered,
    Words,
    hints_read,
)
from bookmaker.hypertext.elements import Content, add, element
from bookmaker.hypertext.tables import table_of
from bookmaker.language import Catalogue
from bookmaker.manifest.markup import Run

Leads: TypeAlias = Callable[[str], str]
"""From the name of a heading to the address of the place where it stands."""

Drawn: TypeAlias = Callable[[Figure], Element]
"""From a figure to its picture."""

STYLES = {"italic": "i", "bold": "b"}

_HOST = r"(?:[A-Za-z0-9](?:[A-Za-z0-9-]*[A-Za-z0-9])?\.)+[A-Za-z]{2,}(?::\d+)?"
_STEP = r"(?:[A-Za-z0-9_.~!$&'()*+,;=:@/-]|%[0-9A-Fa-f]{2})*"
_ADDRESS = re.compile(rf"https?://{_HOST}(?:/{_STEP})?(?:\?{_STEP})?(?:#{_STEP})?")
"""Addresses that are sure to be in order (RFC 3986); others stand there as plain words."""


def sections(
    words: Catalogue, blocks: Iterable[Block], leads: Leads, first: int, drawn: Drawn | None = None
) -> Iterator[Element]:
    """Blocks as elements; every heading begins a section. A heading of level 2 has the rank `first`. Figures are left
    out where nothing draws them."""
    open_ones: list[tuple[int, Element]] = []
    for block in blocks:
        if isinstance(block, Heading):
            while open_ones and open_ones[-1][0] >= block.level:
                open_ones.pop()
            rank = block.level - 2 + first
            section = element("section", element(f"h{rank}", block.text), **({"id": block.name} if block.name else {}))
            if open_ones:
                open_ones[-1][1].append(section)
            else:
                yield section
            open_ones.append((block.level, section))
            continue
        for made in elements_of(words, block, leads, drawn):
            if open_ones:
                open_ones[-1][1].append(made)
            else:
                yield made


def elements_of(words: Catalogue, block: Block, leads: Leads, drawn: Drawn | None = None) -> Iterator[Element]:
    """A block that is no heading; what surrounds a puzzle leads to its hints and its key and back."""
    match block:
        case Heading():
            pass
        case Figure():
            if drawn:
                yield element("p", drawn(block))
        case Words():
            yield element("p", (_run(run) for run in block.runs))
        case Listing():
            yield element("p", block.text)
            if block.items:
                yield bullets(block.items)
        case Found():
            yield element("p", f"{block.name}: ", _figures(words, block.puzzles, leads))
        case Numbered():
            for puzzle, text in block.entries:
                after = words.say("titled", title="", what=text)
                yield element("p", to_puzzle(words, puzzle, str(puzzle.number), leads), after)
        case Board():
            puzzle = block.puzzle
            yield table_of(words, block)
            yield leading(words, puzzle, leads) if block.solution is None else element("p", back(words, puzzle, leads))
        case _ as never:
            assert_never(never)


def bullets(items: Iterable[str]) -> Element:
    """A list."""
    return element("ul", (element("li", item) for item in items))


def leading(words: Catalogue, puzzle: BookPuzzle, leads: Leads) -> Element:
    """From a puzzle to its hints, if there are any, and to its key."""
    number = str(puzzle.number)
    hints = element("a", words.say("hints-for", name=number), href=leads(f"hints-{number}"))
    key = element("a", words.say("key-to", name=number), href=leads(f"key-{number}"))
    return element("p", *((hints, " · ") if puzzle.hints else ()), key, class_="leads")


def back(words: Catalogue, puzzle: BookPuzzle, leads: Leads) -> Element:
    """From elsewhere to a puzzle."""
    return to_puzzle(words, puzzle, words.say("back-to", number=str(puzzle.number)), leads)


def to_puzzle(words: Catalogue, puzzle: BookPuzzle, text: str, leads: Leads) -> Element:
    """A link to a puzzle; one that is only its number is told as what it is."""
    number = str(puzzle.number)
    said = {"aria_label": words.say("puzzle-numbered", number=number)} if text == number else {}
    return element("a", text, href=leads(f"puzzle-{puzzle.number}"), **said)


def hints_unfolding(words: Catalogue, puzzle: BookPuzzle, leads: Leads, rank: int) -> Element:
    """The hints of a puzzle, each to be opened by itself."""
    name = f"hints-{puzzle.number}"
    told = (
        element("details", element("summary", title), element("p", hint))
        for title, hint in zip(wording.hint_levels(words), hints_read(puzzle), strict=True)
    )
    heading = element(f"h{rank}", words.say("hints-for", name=puzzle.named(words)))
    return element("section", heading, told, element("p", back(words, puzzle, leads)), id=name)


def hint_section(words: Catalogue, part: HintPages, puzzles: Iterable[BookPuzzle], leads: Leads, rank: int) -> Element:
    """The hints of some puzzles under the heading of their part."""
    told = (hints_unfolding(words, puzzle, leads, rank + 1) for puzzle in puzzles if puzzle.hints)
    return element(
        "section", element(f"h{rank}", part.heading), element("p", words.say("hints-note-text")), told, id="hints"
    )


def _run(run: Run) -> Content:
    """Words of one style; an address alone leads there."""
    if run.style in STYLES:
        return element(STYLES[run.style], run.text)
    return element("a", run.text, href=run.text) if _ADDRESS.fullmatch(run.text) else run.text


def _figures(words: Catalogue, puzzles: Iterable[BookPuzzle], leads: Leads) -> Iterator[Content]:
    for at, puzzle in enumerate(puzzles):
        if at:
            yield ", "
        yield to_puzzle(words, puzzle, str(puzzle.number), leads)


def titled(book_title: str, subtitle: str, edited: str) -> Iterator[Element]:
    """What stands on the title page."""
    yield element("h1", book_title)
    for text in (subtitle, edited):
        if text:
            yield element("p", text)


def append_all(parent: Element, contents: Iterable[Content]) -> Element:
    """The parent, with more in it."""
    for content in contents:
        add(parent, content)
    return parent
