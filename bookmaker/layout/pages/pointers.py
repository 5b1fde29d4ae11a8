"""The words under a puzzle that tell where its key and its hints are.

In: a puzzle, the layout and the width of the puzzle's place. Out: the pointers, and the room that they take on one
line, in points.
"""

from __future__ import annotations

from collections.abc import Iterator

from bookmaker.book.contents import BookPuzzle
from bookmaker.layout.pages.words import POINTER
from bookmaker.layout.setting.text import PageNumber, width
from bookmaker.layout.spec import Layout

POINTERS = 0.45
"""The most of a puzzle's width that pointers take on one line."""


def pointers(puzzle: BookPuzzle, layout: Layout, wide: float) -> Iterator[tuple[PageNumber, float]]:
    """Where to find the key and the hints, each with how far from the right it ends where they share a line."""
    if not layout.shows.pointers:
        return
    label = layout.type.label
    tags = (POINTER,)
    yield PageNumber(0.0, 0.0, _key_pointer(layout), f"key {puzzle.id}", label, 0.25, tags=tags), 0.0
    if points_to_hints(puzzle, layout, wide):
        back = width(f"{_key_pointer(layout)}000", label) + label.size
        yield PageNumber(0.0, 0.0, _hint_pointer(layout), f"hint 1 {puzzle.id}", label, 0.25, tags=tags), back


def pointers_width(puzzle: BookPuzzle, layout: Layout, wide: float) -> float:
    """Room for the pointers on one line under a puzzle."""
    label = layout.type.label
    key = width(f"{_key_pointer(layout)}000", label)
    return key + (_hint_width(layout) if points_to_hints(puzzle, layout, wide) else 0.0)


def _hint_width(layout: Layout) -> float:
    label = layout.type.label
    return width(f"{_hint_pointer(layout)}000", label) + label.size


def points_to_hints(puzzle: BookPuzzle, layout: Layout, wide: float) -> bool:
    """Is there a pointer to the hints? Not where it would leave a note too little room, as in large print."""
    key = width(f"{_key_pointer(layout)}000", layout.type.label)
    return puzzle.hints is not None and key + _hint_width(layout) <= POINTERS * wide


def _key_pointer(layout: Layout) -> str:
    """What stands before the page of a key."""
    return f"{layout.say('key-on-page')} "


def _hint_pointer(layout: Layout) -> str:
    """What stands before the page of the hints."""
    return f"{layout.say('hints-on-page')} "
