"""What is left of a page under its puzzle, ruled for the solver: a line for the time, and lines for notes.

In: the width of the type area, where the room begins and where it ends. Out: furniture, or nothing where there is
little room.
"""

from __future__ import annotations

from collections.abc import Iterator

from bookmaker.display.items import Item, Line, Stroke, Text
from bookmaker.layout.setting.text import DROP, width
from bookmaker.layout.spec import Layout

APART = 2
"""From one line to the next, in lines of text: room to write by hand."""

SHARE = 0.3
"""How much of the width the time takes."""

PEN = Stroke(0.4, 0.5)


def workings(layout: Layout, wide: float, top: float, foot: float) -> Iterator[Item]:
    """The ruled lines, the last at the foot of the page, and what they are for."""
    line, label = layout.line, layout.type.label
    step = APART * line
    count = int((foot - top) / step)
    if count < 1:
        return
    lift = DROP * line
    first = foot - lift - (count - 1) * step
    split = SHARE * wide
    time, notes = layout.say("time"), layout.say("heading-notes")
    for words, left, right in ((time, 0.0, split - line), (notes, split, wide)):
        yield Text(left, first, words, label.font, label.size, 0.25)
        yield Line((left + width(words, label) + 0.6 * label.size, first), (right, first), PEN)
    yield from (Line((0.0, first + at * step), (wide, first + at * step), PEN) for at in range(1, count))
