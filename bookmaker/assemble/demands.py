"""The lines of a brief → demands: how much of what, and what is ruled out or in.

In: a brief that is being read, and the fields of the whole or of a chapter. Out: `Demand`s, and diagnostics.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace
from pathlib import Path
from typing import Literal, cast

from bookmaker.archive import Card, Catalogue
from bookmaker.archive.cards import BY_GRID, NOTHING_RECORDED
from bookmaker.archive.listing import PERMISSIONS
from bookmaker.archive.writing import plain
from bookmaker.assemble.amounts import MOST, Amount, read_amount
from bookmaker.assemble.plan import Curve, Demand, Part, Row, called, trait
from bookmaker.grade.bands import FAMILIES
from bookmaker.manifest.dates import HOW, When, when_from
from bookmaker.rules import kinds
from bookmaker.source.diagnostics import Collector, Place, nearest, quoted
from bookmaker.source.placed import Node, Table, Word, read_items, read_text

BY_NAME = ("bands", "kinds", "families", "setters", "tags", "sizes")
EACH = ("each-band", "each-kind", "each-setter", "each-tag", "each-size")
FILTERS = ("must", "never", "difficulty", "shown", "permission", "unprinted", "not-in")
ANYWHERE = ("puzzles", *BY_NAME, *EACH, *FILTERS, "curve", "apart", "rather")
"""What may be said of the whole and of a chapter."""

FIRM = ("puzzles", "rather", "curve", "prefer", "title", "note", "times", "chapters", "pages")
"""Lines that are no demands, or that nothing can soften."""


Test = Callable[[Card], bool]


@dataclass
class Draft:
    """A brief that is being read: the catalogue, the candidates in it, and what has been found so far."""

    catalogue: Catalogue
    collector: Collector
    books: Callable[[Sequence[tuple[Path, Place]]], frozenset[str]]
    """The keys of the puzzles in some books."""
    folder: Path
    cards: tuple[Card, ...] = ()
    demands: list[Demand] = field(default_factory=list)
    parts: list[Part] = field(default_factory=list)

    def having(self, test: Test) -> frozenset[int]:
        return frozenset(i for i, card in enumerate(self.cards) if test(card))


def demand(brief: Draft, fields: Mapping[str, Node], part: int | None) -> None:
    """The demands in some fields, of the whole or of one part; those that “rather” names may be missed."""
    where = f" in “{brief.parts[part].title}”" if part is not None and brief.parts[part].title else ""
    softer = _softer(brief, fields)
    for name, node in fields.items():
        made = (
            replace(each, rather=True) if name in softer else each for each in _made(brief, name, node, part, where)
        )
        brief.demands += made


def _softer(brief: Draft, fields: Mapping[str, Node]) -> set[str]:
    """The lines that “rather: [unprinted, apart]” names."""
    names: set[str] = set()
    for word in read_items(fields["rather"], "“rather”", brief.collector) if "rather" in fields else ():
        name = word.value if isinstance(word, Word) else ""
        if name in fields and name not in FIRM:
            names.add(name)
        else:
            said = f"“rather” names lines of the brief that may be missed, and {quoted(name)} is none"
            brief.collector.error(word.place, "unknown-word", said, "such as “rather: [unprinted, apart]”")
    return names


def _made(brief: Draft, name: str, node: Node, part: int | None, where: str) -> Iterable[Demand]:
    """The demands of one line."""
    if name == "puzzles":
        amount = read_amount(node, "“puzzles”", brief.collector)
        if amount and amount.most is None:
            amount = Amount(amount.least, MOST)
        every = frozenset(range(len(brief.cards)))
        rows = (Row("puzzles", amount, every, part),) if amount else ()
        return [Demand(f"puzzles: {amount}", node.place, rows, where=where)] if amount else []
    if name in BY_NAME:
        return _by_name(brief, name, node, part, where)
    if name in EACH:
        return _each(brief, name, node, part, where)
    if name == "apart":
        return _apart(brief, node, part, where)
    return _filtered(brief, name, node, part, where) if name in FILTERS else []


def _values(card: Card, sort: str, catalogue: Catalogue) -> tuple[str, ...]:
    match sort:
        case "bands" | "each-band":
            return (catalogue.band_name(card),)
        case "kinds" | "each-kind":
            return card.sorts
        case "families":
            return (card.family,)
        case "setters" | "each-setter":
            return (card.setter,) if card.setter else ()
        case "tags" | "each-tag":
            return card.tags
        case _:
            return (str(card.size),)


def _known(brief: Draft, sort: str) -> tuple[str, ...]:
    """What may be named."""
    if sort == "bands":
        return brief.catalogue.band_names
    if sort == "kinds":
        return (*BY_GRID, *kinds())
    if sort == "families":
        return FAMILIES
    found = {value for card in brief.catalogue.cards for value in _values(card, sort, brief.catalogue)}
    return tuple(sorted(found))


def _by_name(brief: Draft, sort: str, node: Node, part: int | None, where: str) -> Iterator[Demand]:
    """“kinds: {cage: 2 to 5}”: a demand for each name."""
    collector, known = brief.collector, _known(brief, sort)
    if not isinstance(node, Table):
        collector.error(
            node.place, "not-a-table", f"“{sort}” should be names with amounts", f"such as “{sort}: {{…: 3}}”"
        )
        return
    lower = {name.casefold(): name for name in known}
    soft = node.get("rather")
    rather = isinstance(soft, Word) and soft.value in ("yes", "true")
    for word, body in node.entries:
        if word.value == "rather":
            continue
        name = lower.get(word.value.casefold())
        amount = read_amount(body, f"“{word.value}”", collector, rather)
        if name is None:
            if amount is not None and amount.least == 0:
                continue  # none of what the archive does not have: so it is
            what = {"sizes": "size of grid", "families": "family"}.get(sort, sort.removesuffix("s"))
            said = f"the archive has no {what} {quoted(word.value)}"
            collector.error(word.place, "unknown-name", said, nearest(word.value, known) if known else "")
        elif amount is not None:
            cards = brief.having(lambda card, name=name: name in _values(card, sort, brief.catalogue))  # type: ignore[misc]
            rows = (Row(name, amount, cards, part),)
            yield Demand(f"{sort}: {name}: {amount}", word.place, rows, amount.rather, where=where)


def _each(brief: Draft, sort: str, node: Node, part: int | None, where: str) -> Iterator[Demand]:
    """“each-setter: {at-most: 3}”: one demand with a row for each."""
    amount = read_amount(node, f"“{sort}”", brief.collector)
    if amount is None:
        return
    groups: dict[str, set[int]] = {}
    for i, card in enumerate(brief.cards):
        for value in _values(card, sort, brief.catalogue):
            groups.setdefault(value, set()).add(i)
    rows = tuple(Row(value, amount, frozenset(cards), part) for value, cards in sorted(groups.items()))
    yield Demand(f"{sort}: {amount}", node.place, rows, amount.rather, where=where)


def kept_apart(fields: Mapping[str, Node], collector: Collector) -> tuple[Literal["setters", "kinds"], ...]:
    words = read_items(fields["apart"], "“apart”", Collector()) if "apart" in fields else ()
    found = [word.value for word in words if isinstance(word, Word) and word.value in ("setters", "kinds")]
    return cast(tuple[Literal["setters", "kinds"], ...], tuple(found))


def _apart(brief: Draft, node: Node, part: int | None, where: str) -> Iterator[Demand]:
    """No two of a setter, or with the same rules, side by side: so no more than half of a part may be alike, and since
    bands rise, no more than half of what it has in a band."""
    for word in read_items(node, "“apart”", brief.collector):
        if not isinstance(word, Word) or word.value not in ("setters", "kinds"):
            said = "“apart” names what is not to stand side by side"
            brief.collector.error(
                word.place, "unknown-word", said, "write “apart: setters” or “apart: [setters, kinds]”"
            )
            continue
        groups: dict[object, set[int]] = {}
        for i, card in enumerate(brief.cards):
            if (value := trait(card, word.value)) is not None:
                groups.setdefault(value, set()).add(i)
        bands = [brief.having(lambda card, band=band: card.band == band) for band in range(1, 6)]  # type: ignore[misc]
        for number in range(len(brief.parts)) if part is None else (part,):
            rows = tuple(
                Row(called(value), Amount(0, None), alike & among, number, among)
                for value, cards in sorted(groups.items(), key=str)
                for alike in (frozenset(cards),)
                for among in (frozenset(range(len(brief.cards))), *bands)
                if len(alike & among) > 1
            )
            if rows:
                yield Demand(f"apart: {word.value}", word.place, rows, where=where)


def _filtered(brief: Draft, name: str, node: Node, part: int | None, where: str) -> Iterator[Demand]:
    """Demands that rule cards out, or in."""
    if name == "must":
        for word, wanted in _ids(brief, node):
            if wanted:
                row = Row(word.value, Amount(1, None), wanted, part)
                yield Demand(f"must: {word.value}", word.place, (row,), where=where)
        return
    if name == "never":
        for word, refused in _ids(brief, node):
            yield _none_of(f"never: {word.value}", word.place, refused, part, where)
        return
    read = {"difficulty": _range, "shown": _shown, "permission": _states, "unprinted": _unprinted, "not-in": _not_in}
    made = read[name](brief, node)
    if made is not None:
        words, test = made
        yield _none_of(f"{name}: {words}", node.place, brief.having(lambda card: not test(card)), part, where)


def _none_of(quoted: str, place: Place, cards: frozenset[int], part: int | None, where: str) -> Demand:
    return Demand(quoted, place, (Row("", Amount(0, 0), cards, part),), filters=True, where=where)


def _ids(brief: Draft, node: Node) -> Iterator[tuple[Word, frozenset[int]]]:
    by_id = {card.id.lower() for card in brief.catalogue.cards}
    for word in read_items(node, "the list", brief.collector):
        if not isinstance(word, Word) or not word.value:
            brief.collector.error(word.place, "bad-id", "puzzles are named by their ids", "such as [low-tide, estuary]")
        elif word.value.lower() not in by_id:
            said = f"the archive has no puzzle {quoted(word.value)}"
            brief.collector.error(
                word.place, "unknown-id", said, nearest(word.value, {c.id for c in brief.catalogue.cards})
            )
        else:
            name = word.value.lower()
            wanted = brief.having(lambda card, name=name: card.id.lower() == name)  # type: ignore[misc]
            if not wanted:
                why = "cannot be printed: it has not exactly one solution, or permission was refused"
                brief.collector.error(word.place, "unusable", f"{quoted(word.value)} {why}")
            yield word, wanted


def _range(brief: Draft, node: Node) -> tuple[str, Test] | None:
    """“Ramble to Climb”, “1.5 to 4” or one band."""
    ends = _ends(brief.catalogue.band_names, node, brief.collector)
    if ends is None:
        return None
    low, high = ends
    return plain(node), lambda card: low <= card.difficulty <= high


def _ends(names: Sequence[str], node: Node, collector: Collector) -> tuple[float, float] | None:
    """From and up to which difficulty: the start of the first band, the end of the last."""
    hint = f"write “{names[0]} to {names[-2]}”, or numbers such as “1.5 to 4”: {names[0]} is 1 to 2, {names[-1]} 5 to 6"
    text = read_text(node, "the difficulty", collector)
    if text is None:
        return None
    words = text.split(" to ")
    lower = [name.casefold() for name in names]
    found: list[float] = []
    for at, word in enumerate(words):
        if word.strip().casefold() in lower:
            band = lower.index(word.strip().casefold()) + 1
            found += [float(band), band + 0.9999] if len(words) == 1 else [band + (0.9999 if at else 0.0)]
        elif word.strip().replace(".", "", 1).isascii() and word.strip().replace(".", "", 1).isdigit():
            found.append(float(word))
    if len(found) != 2 or found[0] >= found[1]:
        collector.error(node.place, "bad-difficulty", f"{quoted(text)} is no range of difficulty", hint)
        return None
    return found[0], found[1]


def read_curve(fields: Mapping[str, Node], collector: Collector) -> Curve | None:
    """“rising”, or from where to where it rises."""
    node = fields.get("curve")
    if node is None:
        return None
    if isinstance(node, Word) and node.value == "rising":
        return Curve(1.0, 6.0)
    text = read_text(node, "the curve", collector)
    parts = text.split(" to ") if text is not None else []
    try:
        start, end = map(float, parts)
        if 1 <= start < end <= 6:
            return Curve(start, end)
    except ValueError:
        pass
    if text is not None:
        hint = "write “rising”, or where it begins and ends, such as “1.2 to 5.5”"
        collector.error(node.place, "bad-curve", f"{quoted(text)} is no curve", hint)
    return None


def _shown(brief: Draft, node: Node) -> tuple[str, Test] | None:
    text = read_text(node, "“shown”", brief.collector)
    if text is None:
        return None
    if text == "never":
        return text, lambda card: not card.shown
    word, _, date = text.partition(" ")
    when = when_from(date.strip())
    if word not in ("before", "after") or when is None:
        hint = f"write “before 2025”, “after 2024-06” or “never”; as dates, {HOW}"
        brief.collector.error(node.place, "bad-date", f"“shown” can't be {quoted(text)}", hint)
        return None
    if word == "before":
        return text, lambda card: card.when is None or card.when < when
    return text, lambda card: card.when is not None and _reaches(card.when, when)


def _reaches(shown: When, after: When) -> bool:
    """Is it surely later than a day, a month or a year?"""
    start = (shown.year, shown.month or 1, shown.day or 1)
    return start > (after.year, after.month or 12, after.day or 31)


def _states(brief: Draft, node: Node) -> tuple[str, Test] | None:
    words = [word for word in read_items(node, "“permission”", brief.collector) if isinstance(word, Word)]
    for word in words:
        if word.value not in PERMISSIONS:
            said = f"there is no state of permission {quoted(word.value)}"
            brief.collector.error(word.place, "unknown-word", said, nearest(word.value, PERMISSIONS))
    states = {word.value for word in words}
    shown = ", ".join("not recorded" if state == NOTHING_RECORDED else state for state in sorted(states))
    return shown, lambda card: card.state in states


def _unprinted(brief: Draft, node: Node) -> tuple[str, Test] | None:
    text = read_text(node, "“unprinted”", brief.collector)
    if text not in ("yes", "true"):
        return None
    return "yes", lambda card: not brief.catalogue.printed_in(card)


def _not_in(brief: Draft, node: Node) -> tuple[str, Test] | None:
    named = read_items(node, "“not-in”", brief.collector)
    words = [word for word in named if isinstance(word, Word) and read_text(word, "a book", brief.collector)]
    keys = brief.books([(brief.folder / word.value, word.place) for word in words])
    return ", ".join(word.value for word in words), lambda card: card.keys.puzzle not in keys
