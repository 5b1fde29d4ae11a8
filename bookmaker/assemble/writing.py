"""A chosen collection as files: a book that picks its puzzles from the archive, and a picture of how hard they are.

In: a plan, the choice made for it, in order. Out: the text of a manifest; an SVG picture.
"""

from __future__ import annotations

import os
import textwrap
from collections.abc import Iterator, Sequence
from html import escape
from pathlib import Path
from typing import Any

from bookmaker.archive.cards import Card, Catalogue
from bookmaker.archive.writing import typed
from bookmaker.assemble.plan import Choice, Plan
from bookmaker.manifest.archives import YAML


def manifest_text(plan: Plan, choice: Choice, catalogue: Catalogue, folder: Path) -> str:
    """The manifest of the book, which is to lie in `folder`."""
    roots = [Path(os.path.relpath(root, folder)).as_posix() for root in catalogue.roots]
    book: dict[str, Any] = {"title": plan.title, **plan.book}
    book["archive"] = roots[0] if len(roots) == 1 else roots
    if str(book.get("layout", "")).lower().endswith(YAML):
        layout = plan.folder.resolve() / book["layout"]
        book["layout"] = Path(os.path.relpath(layout, folder.resolve())).as_posix()
    chapters = len(plan.parts) > 1 or bool(plan.parts[0].title)
    if not chapters:
        book["order"] = "listed"
    times: dict[str, int] = {}
    for card in catalogue.cards:
        times[card.id.lower()] = times.get(card.id.lower(), 0) + 1
    lines = ["# Chosen by bookmaker assemble; reasons.md says why. Change it as you like.\n", typed({"book": book})]
    if not chapters:
        lines.append("puzzles:\n" + "".join(_picks(plan, choice.parts[0], catalogue, times)))
        return "\n".join(lines)
    lines.append("chapters:")
    for part, cards in zip(plan.parts, choice.parts, strict=True):
        head = {"title": part.title, **({"note": part.note} if part.note else {}), "order": "listed"}
        picks = textwrap.indent("".join(_picks(plan, cards, catalogue, times)), "    ")
        lines.append("  - " + textwrap.indent(typed(head), "    ")[4:] + "    puzzles:\n" + picks)
    return "\n".join(lines)


def _picks(plan: Plan, cards: Sequence[int], catalogue: Catalogue, times: dict[str, int]) -> Iterator[str]:
    """A line for each puzzle, with what it is as a comment."""
    width = max((len(plan.cards[at].id) for at in cards), default=0)
    for at in cards:
        card = plan.cards[at]
        about = ", ".join(filter(None, (catalogue.band_name(card), *card.kinds, card.setter)))
        yield f"  - pick: {card.id:{width}}  # {about}\n"
        if times[card.id.lower()] > 1:
            yield f"    from: {Path(card.file).name}\n"


WIDTH, HEIGHT, EDGE = 640, 240, 40


def curve_picture(plan: Plan, choice: Choice, catalogue: Catalogue) -> str:
    """Difficulty from the first puzzle to the last: a dot for each, the bands as lines, the curve asked for dashed."""
    cards = [plan.cards[at] for at in choice.chosen]
    step = (WIDTH - 2 * EDGE) / max(len(cards) - 1, 1)

    def x(at: float) -> float:
        return round(EDGE + at * step, 1)

    def y(difficulty: float) -> float:
        return round(HEIGHT - EDGE / 2 - (difficulty - 1) * (HEIGHT - EDGE) / 5, 1)

    items = [f'<path d="M{EDGE} {y(band)}H{WIDTH - EDGE}" stroke="#bbb" stroke-width="0.5"/>' for band in range(1, 7)]
    items += [
        f'<text x="{WIDTH - EDGE + 4}" y="{y(at + 1.5) + 3}">{escape(name, quote=False)}</text>'
        for at, name in enumerate(catalogue.band_names)
    ]
    begun = 0
    for part, chosen in zip(plan.parts, choice.parts, strict=True):
        if begun:
            items.append(f'<path d="M{x(begun - 0.5)} {y(1)}V{y(6)}" stroke="#bbb" stroke-width="0.5"/>')
        if part.curve and len(chosen) > 1:
            ends = f"M{x(begun)} {y(part.curve.start)}L{x(begun + len(chosen) - 1)} {y(part.curve.end)}"
            items.append(f'<path d="{ends}" stroke="#555" stroke-width="1" stroke-dasharray="4 3" fill="none"/>')
        begun += len(chosen)
    items += [_dot(x(at), y(card.difficulty), card) for at, card in enumerate(cards)]
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {WIDTH + EDGE} {HEIGHT}" role="img" '
        'font-family="sans-serif" font-size="9">\n'
        f"<title>{escape(plan.title, quote=False)}: difficulty from the first puzzle to the last</title>\n"
        f'<rect width="{WIDTH + EDGE}" height="{HEIGHT}" fill="white"/>\n' + "\n".join(items) + "\n</svg>\n"
    )


def _dot(x: float, y: float, card: Card) -> str:
    about = f"{card.title or card.id}, {card.difficulty_text}"
    return f'<circle cx="{x}" cy="{y}" r="3" fill="black"><title>{escape(about, quote=False)}</title></circle>'
