"""A brief as its editor typed it → a `Plan` for a catalogue; all of its diagnostics at once.

In: the path of a brief, and the catalogue to choose from. Out: the plan. What a brief can say stands in the README.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Any, Literal

from bookmaker.archive import Card, Catalogue
from bookmaker.archive.writing import plain
from bookmaker.assemble.amounts import read_amount
from bookmaker.assemble.demands import ANYWHERE, Draft, demand, kept_apart, read_curve
from bookmaker.assemble.plan import Part, Plan, Preference, Wish
from bookmaker.manifest.bookfields import BOOK_KEYS
from bookmaker.manifest.texts import read_line, read_note
from bookmaker.source.diagnostics import Collector, Place, nearest, quoted
from bookmaker.source.placed import Node, Table, Word, read_fields, read_items, read_text, read_whole
from bookmaker.source.textfile import read_file
from bookmaker.source.yamlfile import parse_yaml

FILE_KEYS = ("brief", "book", "archive")
CHAPTER_KEYS = ("title", "note", "times", *ANYWHERE)
BRIEF_KEYS = ("title", "puzzles", *ANYWHERE[1:], "chapters", "pages", "prefer")

WISHES: dict[str, Wish] = {
    "longest not shown": "unshown",
    "closest to the curve": "curve",
    "most setters": "setters",
    "most kinds": "kinds",
    "newest": "newest",
    "oldest": "oldest",
}
MOST_TIMES = 200
"""Chapters that one line of a brief may make."""

TAG = "tag "
"""“tag harbour” prefers puzzles with that tag."""


@dataclass(frozen=True, slots=True)
class Opened:
    """A brief that has been read as text: its tree, and the archives that it names."""

    tree: Table
    path: Path
    archives: tuple[tuple[Path, Place], ...]


def open_brief(path: Path, collector: Collector) -> Opened | None:
    """The brief at a path, as far as it can be read without a catalogue."""
    text = read_file(path, str(path), Place(str(path)), collector)
    tree = parse_yaml(text, str(path), collector) if text is not None else None
    if tree is None:
        return None
    fields = read_fields(tree, "a brief", collector, FILE_KEYS, ("brief",))
    if not isinstance(tree, Table) or "brief" not in fields:
        return None
    named = read_items(fields["archive"], "“archive”", collector) if "archive" in fields else ()
    words = [word for word in named if isinstance(word, Word) and read_text(word, "an archive", collector)]
    return Opened(tree, path, tuple((path.parent / word.value, word.place) for word in words))


def make_plan(
    opened: Opened,
    catalogue: Catalogue,
    books: Callable[[Sequence[tuple[Path, Place]]], frozenset[str]],
    collector: Collector,
) -> Plan | None:
    """The plan for a catalogue; None after diagnostics. `books` gives the keys of the puzzles in some books."""
    body, book = opened.tree.get("brief"), opened.tree.get("book")
    assert body is not None
    fields = read_fields(body, "the brief", collector, BRIEF_KEYS, ("title",))
    fit = tuple(card for card in catalogue.cards if _usable(card))
    brief = Draft(catalogue, collector, books, opened.path.parent, fit)
    chapters = _chapters(brief, fields)
    brief.parts += [part for part, _ in chapters] or [Part(curve=read_curve(fields, collector))]
    if "puzzles" not in fields and not any("puzzles" in own for _, own in chapters):
        place = body.place
        collector.error(
            place, "missing-key", "the brief says nowhere how many puzzles there shall be", "add “puzzles: 20”"
        )
    demand(brief, fields, None)
    for number, (_, own) in enumerate(chapters):
        demand(brief, own, number)
    preferences = _preferences(brief, fields)
    pages = read_amount(fields["pages"], "“pages”", collector) if "pages" in fields else None
    said = _book(book, collector)
    if any(collector.errors()):
        return None
    return Plan(
        title=read_line(fields, "title", collector),
        cards=brief.cards,
        parts=tuple(brief.parts),
        demands=tuple(brief.demands),
        alike=_alike(brief.cards),
        preferences=preferences,
        apart=kept_apart(fields, collector) or _first(kept_apart(own, collector) for _, own in chapters),
        pages=pages,
        pages_place=fields["pages"].place if "pages" in fields else None,
        book=said,
        folder=opened.path.parent,
        left_out=_left_out(catalogue.cards),
    )


def _first(found: Iterable[tuple[Literal["setters", "kinds"], ...]]) -> tuple[Literal["setters", "kinds"], ...]:
    return next((each for each in found if each), ())


def _usable(card: Card) -> bool:
    return card.verdict == "unique" and not card.disputed and card.state != "refused"


def _left_out(cards: Iterable[Card]) -> dict[str, int]:
    why: dict[str, int] = {}
    for card in cards:
        if not _usable(card):
            said = "without exactly one solution"
            if card.verdict == "unique":
                refused = card.state == "refused"
                said = "whose permission was refused" if refused else "that differ from the setter's own solution"
            why[said] = why.get(said, 0) + 1
    return dict(sorted(why.items()))


def _alike(cards: Sequence[Card]) -> tuple[frozenset[int], ...]:
    groups: dict[str, set[int]] = {}
    for i, card in enumerate(cards):
        groups.setdefault(card.keys.puzzle, set()).add(i)
    return tuple(frozenset(group) for key, group in groups.items() if key and len(group) > 1)


def _book(node: Node | None, collector: Collector) -> Mapping[str, Any]:
    """The lines of the book that is to be, which its manifest reads in its turn."""
    if node is None:
        return {}
    fields = read_fields(node, "the book", collector, BOOK_KEYS)
    for name, why in (("archive", "the archive stands beside “brief:”"), ("order", "the brief chooses the order")):
        if name in fields:
            collector.error(fields[name].place, "unknown-key", f"“{name}” has no place here", why)
    return {name: plain(node) for name, node in fields.items()}


def _chapters(brief: Draft, fields: Mapping[str, Node]) -> list[tuple[Part, Mapping[str, Node]]]:
    """The parts that chapters make, each with its own demands; one with “times: 10” makes ten."""
    found: list[tuple[Part, Mapping[str, Node]]] = []
    collector = brief.collector
    for node in read_items(fields["chapters"], "“chapters”", collector) if "chapters" in fields else ():
        own = read_fields(node, "the chapter", collector, CHAPTER_KEYS, ("title", "puzzles"))
        times = (read_whole(own["times"], "“times”", collector, 1, MOST_TIMES) or 1) if "times" in own else 1
        title, note = read_line(own, "title", collector), read_note(own, "note", collector)
        if times > 1 and "{n}" not in title and title:
            place = own["title"].place
            collector.error(
                place, "no-number", "ten chapters cannot have one title", "write {n} for the number: “Night {n}”"
            )
        curve = read_curve(own, collector) or read_curve(fields, Collector())
        for number in range(1, times + 1):
            part = Part(title.replace("{n}", str(number)), note.replace("{n}", str(number)), curve)
            found.append((part, own))
    return found


def _preferences(brief: Draft, fields: Mapping[str, Node]) -> tuple[Preference, ...]:
    found: list[Preference] = []
    node = fields.get("prefer")
    for word in read_items(node, "“prefer”", brief.collector) if node is not None else ():
        text = word.value if isinstance(word, Word) else ""
        if text in WISHES:
            found.append(Preference(WISHES[text], text))
        elif text.startswith(TAG):
            found.append(Preference("tag", text, text.removeprefix(TAG)))
        else:
            said = f"nothing is known of the preference {quoted(text)}"
            brief.collector.error(word.place, "unknown-word", said, nearest(text, (*WISHES, "tag …")))
    if any(part.curve for part in brief.parts) and not any(each.wish == "curve" for each in found):
        found.insert(0, Preference("curve", "closest to the curve"))
    return tuple(found)
