"""What a manifest says of the book as a whole: the lines under `book:`.

In: the node under `book:`. Out: a `Heading`, and diagnostics.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import cast, get_args

from bookmaker.manifest.entries import Order
from bookmaker.manifest.publication import PLAIN, PUBLICATION_KEYS, Publication, read_publication
from bookmaker.manifest.texts import read_line
from bookmaker.phrases.bands import BAND_NAMES, band_names
from bookmaker.source import file_limits as limits
from bookmaker.source.diagnostics import Collector, Place
from bookmaker.source.placed import Node, Sequence, Table, Word, read_choice, read_fields, read_items, read_text

BOOK_KEYS = ("title", "subtitle", "editor", "layout", "order", "bands", "permission", "archive", *PUBLICATION_KEYS)


@dataclass(frozen=True, slots=True)
class Heading:
    """The book's own fields; `order` is None where none is named. Places are where to point in a later diagnostic."""

    place: Place
    title: str = ""
    subtitle: str = ""
    editor: str = ""
    layout: str = ""
    layout_place: Place | None = None
    order: Order | None = None
    order_place: Place | None = None
    band_names: tuple[str, ...] = BAND_NAMES
    permission: str = ""
    publication: Publication = PLAIN
    places: Mapping[str, Place] = field(default_factory=dict)
    archives: tuple[Word, ...] = ()


def read_heading(node: Node, collector: Collector) -> Heading:
    """The fields under `book:`; faulty ones keep their defaults."""
    fields = read_fields(node, "the book", collector, BOOK_KEYS, ("title",))
    title = fields.get("title")
    if isinstance(title, Word) and not title.value.strip():
        collector.error(title.place, "no-value", "the book's title is left empty", "it is printed on the title page")
    order, publication = fields.get("order"), read_publication(fields, collector)
    bands = read_bands(fields["bands"], collector) if "bands" in fields else band_names(publication.language)
    return Heading(
        place=title.place if title else node.place,
        title=read_line(fields, "title", collector),
        subtitle=read_line(fields, "subtitle", collector),
        editor=read_line(fields, "editor", collector),
        layout=read_line(fields, "layout", collector),
        layout_place=fields["layout"].place if "layout" in fields else None,
        order=cast(Order | None, read_choice(order, "“order”", collector, get_args(Order))) if order else None,
        order_place=order.place if order else None,
        permission=read_line(fields, "permission", collector),
        band_names=bands,
        publication=publication,
        places={name: value.place for name, value in fields.items()},
        archives=_archives(fields["archive"], collector) if "archive" in fields else (),
    )


def _archives(node: Node, collector: Collector) -> tuple[Word, ...]:
    """The folders to pick from, one or a list of them."""
    words = tuple(word for word in read_items(node, "“archive”", collector) if read_text(word, "an archive", collector))
    return tuple(word for word in words if isinstance(word, Word))


def read_bands(node: Node, collector: Collector) -> tuple[str, ...]:
    """Five names, the easiest band first."""
    hint = "such as [" + ", ".join(BAND_NAMES) + "], the easiest first"
    if not isinstance(node, Sequence) or len(node.values) != len(BAND_NAMES):
        found = (
            f", not {len(node.values)}" if isinstance(node, Sequence | Table) and not isinstance(node, Table) else ""
        )
        collector.error(node.place, "bands", f"“bands” should name five bands{found}", hint)
        return BAND_NAMES
    names = tuple(read_line({"bands": word}, "bands", collector, limits.BAND_NAME) for word in node.values)
    for at, word in enumerate(node.values):
        if isinstance(word, Word) and not word.value.strip():
            collector.error(word.place, "bands", "the name of a band is left empty", hint)
        elif names[at] and names[at] in names[:at]:
            collector.error(word.place, "bands", f"two bands are called “{names[at]}”", hint)
    return names
