"""What is in an archive, as somebody asks for it: chosen cards, as a table, a spreadsheet or JSON.

In: a catalogue and what to choose by. Out: cards; lines of text; bytes of files.
"""

from __future__ import annotations

import csv
import json
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from io import StringIO
from pathlib import Path
from typing import Any

from bookmaker.archive.cards import BY_GRID, NOTHING_RECORDED, Card, Catalogue
from bookmaker.archive.columns import FIELDS, TOLD, cells_of, told
from bookmaker.archive.reading import text_of
from bookmaker.archive.workbook import workbook_bytes
from bookmaker.grade.bands import figure
from bookmaker.manifest.archives import holding_of
from bookmaker.manifest.permission import STATES
from bookmaker.rules import kinds
from bookmaker.source.diagnostics import BookErrors, Collector, Place, nearest
from bookmaker.source.placed import Table, Word

PERMISSIONS = (*STATES, NOTHING_RECORDED)


@dataclass(frozen=True, slots=True)
class Wanted:
    """What cards to choose: one of the words of every sort that has any."""

    kinds: tuple[str, ...] = ()
    bands: tuple[str, ...] = ()
    setters: tuple[str, ...] = ()
    tags: tuple[str, ...] = ()
    permissions: tuple[str, ...] = ()
    unprinted: bool = False


def chosen(catalogue: Catalogue, wanted: Wanted) -> tuple[Card, ...]:
    """The cards that are wanted. Raises BookErrors where a word means nothing here."""
    collector = Collector()
    known = {
        "--kind": (wanted.kinds, (*BY_GRID, *kinds())),
        "--band": (wanted.bands, catalogue.band_names),
        "--permission": (wanted.permissions, PERMISSIONS),
        "--setter": (wanted.setters, {card.setter for card in catalogue.cards if card.setter}),
        "--tag": (wanted.tags, {tag for card in catalogue.cards for tag in card.tags}),
    }
    for option, (words, choices) in known.items():
        lower = {choice.casefold() for choice in choices}
        for word in words:
            if word.casefold() not in lower:
                said = f"the archive has no “{word}” under {option}"
                collector.error(Place(option), "unknown-word", said, nearest(word, choices) if choices else "")
    collector.raise_errors()

    def fits(words: tuple[str, ...], has: Sequence[str]) -> bool:
        return not words or not {word.casefold() for word in words}.isdisjoint(each.casefold() for each in has)

    return tuple(
        card
        for card in catalogue.cards
        if fits(wanted.kinds, card.sorts)
        and fits(wanted.bands, (catalogue.band_name(card),))
        and fits(wanted.setters, (card.setter,))
        and fits(wanted.tags, card.tags)
        and fits(wanted.permissions, (card.state,))
        and not (wanted.unprinted and catalogue.printed_in(card))
    )


def rows_of(catalogue: Catalogue, cards: Sequence[Card]) -> Iterator[tuple[str, ...]]:
    """A row of text for each card, under `HEADINGS`."""
    for card in cards:
        cells = told(catalogue, card)
        yield (
            card.id,
            card.title or "–",
            card.setter or "–",
            cells["kinds"],
            cells["band"] or card.verdict,
            cells["difficulty"] or "–",
            ", ".join(card.tags) or "–",
            card.state,
            card.shown or "–",
            cells["printed in"] or "–",
        )


HEADINGS = ("id", "title", "setter", "rules", "band", "diff.", "tags", "permission", "shown", "printed in")


def as_json(catalogue: Catalogue, cards: Sequence[Card]) -> str:
    """All that is known of the cards."""
    return json.dumps({"puzzles": [_data(catalogue, card) for card in cards]}, ensure_ascii=False, indent=1) + "\n"


def _data(catalogue: Catalogue, card: Card) -> dict[str, Any]:
    return {
        "id": card.id,
        "file": card.file,
        "line": card.line,
        "title": card.title,
        "setter": card.setter,
        "shown": card.shown or None,
        "tags": list(card.tags),
        "source": card.source,
        "permission": {"state": card.state, "printed": card.printed},
        "kinds": list(card.kinds),
        "grid": card.grid,
        "size": card.size,
        "givens": card.givens,
        "verdict": card.verdict,
        "band": card.band or None,
        "band_name": catalogue.band_name(card) or None,
        "difficulty": float(figure(card.difficulty, 3)) if card.band else None,
        "effort": round(card.effort, 3) if card.band else None,
        "hardest": card.hardest or None,
        "reached_by_logic": card.reached if card.band else None,
        "printed_in": list(catalogue.printed_in(card)),
    }


def as_csv(catalogue: Catalogue, cards: Sequence[Card]) -> bytes:
    """A table with commas that spreadsheet programs open as UTF-8."""
    text = StringIO()
    csv.writer(text, lineterminator="\r\n").writerows(_sheet(catalogue, cards))
    return text.getvalue().encode("utf-8-sig")


def as_xlsx(catalogue: Catalogue, cards: Sequence[Card]) -> bytes:
    """The same as a workbook with one sheet."""
    return workbook_bytes("Puzzles", tuple(_sheet(catalogue, cards)))


def _sheet(catalogue: Catalogue, cards: Sequence[Card]) -> Iterator[tuple[str, ...]]:
    """Headings, and a row for each card with everything that makes its puzzle."""
    yield (*FIELDS, *TOLD)
    puzzles: dict[str, dict[str, Table]] = {}
    for card in cards:
        if card.file not in puzzles:
            puzzles[card.file] = _puzzles_in(Path(card.file))
        cells = {**cells_of(puzzles[card.file][card.id], card), **told(catalogue, card)}
        yield tuple(cells.get(name, "") for name in (*FIELDS, *TOLD))


def _puzzles_in(path: Path) -> dict[str, Table]:
    collector = Collector()
    text = text_of(path, collector)
    if text is None:
        raise BookErrors(collector.found)
    return {
        word.value: table
        for table in holding_of(path, text, Collector()).puzzles
        if isinstance(word := table.get("id"), Word)
    }
