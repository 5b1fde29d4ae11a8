"""Leaves of a pad: puzzles on the front, their keys on the back, and room for notes below these.

In: the puzzles of a chapter. Out: two pages for each leaf.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import replace

from bookmaker.book.contents import BookPuzzle
from bookmaker.display.items import Item
from bookmaker.layout.page_side import PageSide, UnnumberedPage
from bookmaker.layout.pages.keys import key_rows
from bookmaker.layout.pages.notes import ruled
from bookmaker.layout.pages.parts import flowing, heading
from bookmaker.layout.pages.puzzles import fill_pages, leaf_of
from bookmaker.layout.setting.flow import height
from bookmaker.layout.setting.text import Labels
from bookmaker.layout.spec import Layout


def torn_leaves(puzzles: Iterable[BookPuzzle], layout: Layout, head: str) -> list[UnnumberedPage]:
    """Front and back of every leaf. Raises BookErrors with every puzzle that fits on no page."""
    leaves: list[UnnumberedPage] = []
    for slots in fill_pages(puzzles, layout):
        leaves.append(replace(leaf_of(slots, layout, head), torn=True, front=True))
        leaves += (replace(back, torn=True) for back in _backs([slot.block.puzzle for slot in slots], layout, head))
    return leaves


def _backs(puzzles: Sequence[BookPuzzle], layout: Layout, head: str) -> list[UnnumberedPage]:
    """The keys, usually on one page, and under them lines for notes."""
    rows = [*heading(layout.say("heading-answer-key"), layout), *key_rows(puzzles, layout)]
    leaves = flowing(rows, layout, f"back {puzzles[0].id}", head)
    if len(leaves) > 1:
        return leaves
    (back,) = leaves

    def draw(sheet: PageSide, labels: Labels) -> tuple[Item, ...]:
        return (*back.draw(sheet, labels), *ruled(sheet, height(rows) + layout.line))

    return [replace(back, draw=draw, head=head)]
