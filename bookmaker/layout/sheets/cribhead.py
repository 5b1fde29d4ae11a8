"""The head of a crib: title, setter, rules, the solve profile with its letters, and what the signs of pictures mean."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace

from bookmaker.book.contents import BookPuzzle
from bookmaker.display.items import Group, Item, Rect, Stroke, Text, tagged
from bookmaker.display.tags import HEADING, OUR_LANGUAGE, OURS, PARAGRAPH, Role, Tag
from bookmaker.language.figures import decimal_said
from bookmaker.layout.art.gridart import SHADE
from bookmaker.layout.art.profile import profile, profile_said
from bookmaker.layout.art.ridge import ridge
from bookmaker.layout.art.scenepicture import (
    LIGHT,
    corners,
    heavy_frame,
    round_sign,
    stroke_through,
)
from bookmaker.layout.page_side import capitals
from bookmaker.layout.pages.words import ridge_width, rules_above
from bookmaker.layout.setting.text import DROP, FONTS, Row, broken, paragraph, width
from bookmaker.layout.spec import Layout
from bookmaker.tell.scenes import Scene

PROFILE = 3.0
"""Height of the solve profile, in lines of text."""

SIGNS = ("look", "look-along", "next", "eliminated")
SUPPOSED = ("supposed", "follows")


def crib_head(puzzle: BookPuzzle, scenes: Sequence[Scene], layout: Layout) -> Iterator[Row]:
    """Title, setter, rules, solve profile, how cells are named, and what the pictures' signs mean."""
    line, type, measure = layout.line, layout.type, layout.measure
    crib = layout.say("crib")
    head = capitals(0.0, (1 - DROP) * line, crib, layout, measure)
    yield Row(line, (head,), tags=(replace(OURS, said=crib),))
    wide = ridge_width(layout)
    title = broken(puzzle.title, type.heading.font, type.heading.size, measure - wide - line)
    base = type.heading.leading - DROP * line
    for at, words in enumerate(title):
        text = Text(0.0, base, words, type.heading.font, type.heading.size)
        items: list[Item] = [tagged((HEADING.further if at else HEADING,), text)]
        if at == 0 and puzzle.rating:
            items.append(Group((ridge(puzzle.rating.band, wide),), measure - wide, base))
        yield Row(type.heading.leading, tuple(items))
    said = [puzzle.setter] if puzzle.setter else []
    said += [layout.say("first-shown", date=puzzle.shown)] if puzzle.shown else []
    text = Text(0.0, (1 - DROP) * line, ", ".join(said), type.note.font, type.note.size)
    items = [tagged((PARAGRAPH,), text)] if said else []
    if puzzle.rating:
        hard = layout.say("difficulty-of", figure=decimal_said(layout.words, puzzle.rating.figure))
        words = f"{puzzle.rating.band_name}  ·  {hard}"
        band = Text(measure, (1 - DROP) * line, words, type.label.font, type.label.size, anchor="end")
        items.append(tagged((PARAGRAPH,), band))
    yield Row(line / 4)
    yield Row(line, tuple(items))
    yield Row(line / 2)
    yield from rules_above(puzzle, layout, measure, 0.0)
    if puzzle.rating and puzzle.rating.profile:
        yield Row(line / 2)
        yield from _walk(puzzle, scenes, layout)
    yield from paragraph(
        f"{layout.say('cell-names')} {layout.say('crib-steps')}", type.small, measure, line, tags=(OURS,)
    )
    if scenes:
        yield Row(line / 4)
        yield from _legend(scenes, layout)
    yield Row(0.5 * line)


def _walk(puzzle: BookPuzzle, scenes: Sequence[Scene], layout: Layout) -> Iterator[Row]:
    """The solve profile, letters over the moments that have pictures."""
    rating, line, label = puzzle.rating, layout.line, layout.type.label
    assert rating is not None
    high = PROFILE * line
    drawn = profile(rating.profile, (), layout.measure, high, max(rating.profile))
    items: list[Item] = [Group((drawn,), 0.0, high + line)]
    step = layout.measure / len(rating.profile)
    by_group: dict[int, list[str]] = {}
    for scene in scenes:
        by_group.setdefault(scene.group, []).append(scene.label)
    right = -label.size
    for group, letters in sorted(by_group.items()):
        text = letters[0] if len(letters) == 1 else f"{letters[0]}–{letters[-1]}"
        half = width(text, label) / 2
        x = max((group + 0.5) * step, half, right + half + 2.0)
        items.append(Text(x, line * (1 - DROP), text, "sans-bold", label.size, anchor="middle"))
        right = x + half
    told = Tag(
        Role.FIGURE,
        profile_said(layout.words, rating),
        language=OUR_LANGUAGE,
        box=(0.0, 0.0, layout.measure, high + line),
    )
    yield Row(high + 1.6 * line, tuple(items), tags=(told,))


def _legend(scenes: Sequence[Scene], layout: Layout) -> Iterator[Row]:
    """Small cells with what the signs on the pictures mean, on as many lines as they need."""
    note, line = layout.type.small, layout.line
    cell, gap = 1.25 * line, 0.5 * note.size
    base = cell / 2 + FONTS.x_height(note.font) * note.size / 2 + 0.5
    items: list[Item] = []
    x = 0.0
    tried = any(scene.follows for scene in scenes)
    for name in (*SIGNS, *(SUPPOSED if tried else ())):
        words = layout.say(f"crib-{name}")
        wide = cell + gap + width(words, note)
        if items and x + wide > layout.measure:
            yield Row(1.5 * line, tuple(items))
            items, x = [], 0.0
        sign = Group((*_sign(name, cell),), x)
        items.append(tagged((OURS,), sign, Text(x + cell + gap, base, words, note.font, note.size)))
        x += wide + 1.8 * note.size
    yield Row(1.5 * line, tuple(items))


def _sign(name: str, cell: float) -> Iterator[Item]:
    yield Rect(0.0, 0.0, cell, cell, Stroke(0.3, 0.45), SHADE if name == "look-along" else None)
    high = 0.42 * cell
    size = high / FONTS.figure_height("sans")
    match name:
        case "look":
            yield corners(0.0, 0.0, cell)
        case "next":
            yield heavy_frame(0.0, 0.0, cell)
        case "eliminated":
            yield Text(cell / 2, (cell + high) / 2, "4", "sans", size, anchor="middle")
            yield stroke_through((cell / 2, cell / 2), high)
        case "supposed" | "follows":
            yield Text(0.4 * cell, 0.6 * cell + high / 2, "4", "sans", size, LIGHT, "middle")
            yield from round_sign((cell, 0.0), 1.6 * cell, "?" if name == "supposed" else "1")
