"""The structure of a PDF as a screen reader meets it, read by pdfplumber.

In: a file. Out: its elements in reading order, each with its type, its words and its kids.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator
from dataclasses import dataclass
from io import BytesIO
from typing import Any

import pdfplumber


@dataclass(frozen=True)
class Told:
    """An element. `said` stands in place of what it holds; `text` is what is painted for it alone."""

    type: str
    said: str
    text: str
    kids: tuple[Told, ...]

    @property
    def words(self) -> str:
        """All that is read of it."""
        return self.said or " ".join(filter(None, (self.text, *(kid.words for kid in self.kids))))

    def every(self, *types: str) -> Iterator[Told]:
        """The elements of these types in it, in reading order."""
        if self.type in types:
            yield self
        for kid in self.kids:
            yield from kid.every(*types)

    def outline(self, deep: int = 0) -> Iterator[str]:
        """A line an element; a row of a table, or what has no elements in it, takes one with all that is read of it."""
        whole = self.type == "TR" or not self.kids
        yield f"{'  ' * deep}{self.type}{f' {self.row}' if self.type == 'TR' else f' “{self.words}”' if whole else ''}"
        if not whole:
            if self.text:
                yield f"{'  ' * (deep + 1)}“{self.text}”"
            for kid in self.kids:
                yield from kid.outline(deep + 1)

    @property
    def row(self) -> str:
        return " | ".join(kid.words for kid in self.kids)


def told(file: bytes) -> Told:
    """The document's element, all others in it."""
    with pdfplumber.open(BytesIO(file)) as pdf:
        painted: dict[tuple[int, int], str] = defaultdict(str)
        for page in pdf.pages:
            last: dict[int, float] = {}
            for char in page.chars:
                at = char["mcid"]
                if at is not None:
                    gap = " " if at in last and abs(last[at] - char["x0"]) > 0.2 * char["size"] else ""
                    painted[page.page_number, at] += (
                        "" if painted[page.page_number, at].endswith(" ") else gap
                    ) + char["text"]
                    last[at] = char["x1"]
        (document,) = pdf.structure_tree
        return _told(document, painted, 0)


def _told(node: dict[str, Any], painted: dict[tuple[int, int], str], page: int) -> Told:
    page = node.get("page_number", page)
    said = node.get("alt_text") or node.get("actual_text") or ""
    text = " ".join(painted[page, at] for at in node.get("mcids", ()))
    return Told(node["type"], said, text, tuple(_told(kid, painted, page) for kid in node.get("children", ())))
