"""The web page: headings in order, landmarks, links that lead somewhere, tables that hold the digits."""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import replace
from html.parser import HTMLParser
from itertools import pairwise
from pathlib import Path

import pytest

from bookmaker.book.contents import Book
from bookmaker.hypertext.webpage import web_page
from bookmaker.language import catalogue
from bookmaker.puzzle.grid import SYMBOLS
from tests.layout.sample_book import chapter_draft, full_book, sample_book
from tests.validators import axe_violations


class Seen(HTMLParser):
    """Headings, ids, links, landmarks and the cells of tables by the section that they are in."""

    def __init__(self, page: bytes) -> None:
        super().__init__()
        self.headings: list[tuple[int, str]] = []
        self.ids: list[str] = []
        self.links: list[str] = []
        self.tags: list[str] = []
        self.cells: dict[str, list[str]] = {}
        self._open: list[str] = []
        self._section = ""
        self.feed(page.decode())

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        said = dict(attrs)
        self.tags.append(tag)
        self._open.append(tag)
        if said.get("id"):
            self.ids.append(str(said["id"]))
            self._section = self.ids[-1] if tag == "section" else self._section
        if tag == "a":
            self.links.append(str(said["href"]))
        if re.fullmatch("h[1-6]", tag):
            self.headings.append((int(tag[1]), ""))
        if tag == "td":
            self.cells.setdefault(self._section, []).append("")

    def handle_endtag(self, tag: str) -> None:
        while self._open and self._open.pop() != tag:
            pass

    def handle_data(self, data: str) -> None:
        if any(re.fullmatch("h[1-6]", tag) for tag in self._open):
            self.headings[-1] = (self.headings[-1][0], self.headings[-1][1] + data)
        if "td" in self._open:
            self.cells[self._section][-1] += data

    def digits(self, section: str) -> tuple[int, ...]:
        """Those of the table in a section; the corner of heads is empty."""
        return tuple(0 if cell == "blank" else SYMBOLS.index(cell) + 1 for cell in self.cells[section][1:])


@pytest.mark.parametrize("book", [sample_book, full_book, chapter_draft])
def test_headings_links_and_digits(book: Callable[[], Book]) -> None:
    seen = Seen(web_page(book()))
    ranks = [rank for rank, _ in seen.headings]
    assert ranks[0] == 1 and ranks.count(1) == 1
    assert all(after <= before + 1 for before, after in pairwise(ranks))
    assert all(text.strip() for _, text in seen.headings)
    assert len(set(seen.ids)) == len(seen.ids)
    assert {link.removeprefix("#") for link in seen.links if link.startswith("#")} <= set(seen.ids)
    assert [seen.tags.count(tag) for tag in ("header", "nav", "main", "h1")] == [1, 1, 1, 1]
    for puzzle in book().puzzles:
        assert seen.digits(f"puzzle-{puzzle.number}") == puzzle.puzzle.givens
        if puzzle.solution:
            assert seen.digits(f"key-{puzzle.number}") == puzzle.solution
        for name in (
            f"#key-{puzzle.number}",
            f"#puzzle-{puzzle.number}",
            *([f"#hints-{puzzle.number}"] if puzzle.hints else []),
        ):
            assert name in seen.links


def test_marks_and_words_are_those_of_the_text_edition() -> None:
    page = web_page(full_book()).decode()
    for puzzle in full_book().puzzles:
        for rule in puzzle.puzzle.rules:
            assert all(f"<li>{mark}</li>" in page for mark in rule.spoken(catalogue("en"), puzzle.puzzle.grid))
    assert "<i>rained</i>" in page and "<b>rained</b>" in page
    assert page.count("<summary>") == 3 * sum(puzzle.hints is not None for puzzle in full_book().puzzles)


def test_hostile_words_stay_words() -> None:
    hostile = '"><script>alert(1)</script>&amp;\x07'
    book = sample_book()
    chapter = book.chapters[0]
    puzzle = replace(chapter.puzzles[0], title=hostile, setter=hostile, note=hostile, link='https://a"b.c/|<x>')
    chapter = replace(chapter, puzzles=(puzzle,), note=hostile)
    page = web_page(replace(book, title=hostile, subtitle=hostile, editor=hostile, body=(chapter,)))
    assert "script" not in Seen(page).tags and b"\x07" not in page
    assert not any("|" in link or '"' in link for link in Seen(page).links)


@pytest.mark.slow
def test_axe_finds_nothing(tmp_path: Path) -> None:
    assert axe_violations(web_page(full_book()).decode(), tmp_path, "book.html") == []
