"""What makes a list of puzzles a publication: the lines under `book:` on its imprint, foreword, parts and cover.

In: the fields under `book:`. Out: a `Publication`, and diagnostics. Every part but the hints is left out
unless asked for.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import date

from bookmaker.hyphenation import languages
from bookmaker.language.catalogues import languages as spoken_languages
from bookmaker.manifest.isbn import read_isbn
from bookmaker.manifest.markup import Runs, read_marked_up
from bookmaker.manifest.pictures import Picture, read_picture, read_profile
from bookmaker.manifest.texts import read_date, read_line, read_note
from bookmaker.source.diagnostics import Collector, Place, nearest, quoted
from bookmaker.source.placed import Node, read_fields, read_switch, read_text, read_whole

PUBLICATION_KEYS = (
    "language",
    "half-title",
    "imprint",
    "foreword",
    "primer",
    "hints",
    "index",
    "contents",
    "credits",
    "fold",
    "link",
    "cover",
    "theme",
)
IMPRINT_KEYS = ("publisher", "edition", "date", "isbn", "ebook-isbn", "rights", "note")
COVER_KEYS = ("blurb", "image", "focus", "leaf", "price", "category", "sample", "condition", "profile")

LINK = re.compile(r"https?://[!-~]{3,190}")
LEAF = re.compile(r"(0?\.\d{1,3}) ?mm")

FOCUS = re.compile(r"(\d{1,3}) ?% +(\d{1,3}) ?%")

MOST_FOLD = 64
"""Pages that a page count may be asked to be a multiple of."""


@dataclass(frozen=True, slots=True)
class Imprint:
    """What stands on the back of the title page; "" and None where nothing is said. E-books have ISBNs of their own."""

    publisher: str = ""
    edition: str = ""
    date: date | None = None
    isbn: str = ""
    rights: str = ""
    note: str = ""
    ebook_isbn: str = ""


@dataclass(frozen=True, slots=True)
class Cover:
    """What the cover has that is not on the title page. `leaf` is the thickness of a leaf in millimetres.

    `focus` is the point of the picture that stays in the middle as far as can be, as shares of its width and height.
    `sample` is the id of the puzzle on the back, `condition` the name of a registered printing condition, `profile` the
    ICC profile of a printer's own. Places are where to point in a later diagnostic.
    """

    blurb: tuple[Runs, ...] = ()
    picture: Picture | None = None
    leaf: float = 0.1
    focus: tuple[float, float] = (0.5, 0.5)
    price: str = ""
    category: str = ""
    sample: str = ""
    condition: str = ""
    profile: bytes = field(default=b"", repr=False)
    places: Mapping[str, Place] = field(default_factory=dict, compare=False)


@dataclass(frozen=True, slots=True)
class Publication:
    """Parts and particulars of the book. `fold` is what the page count shall be a multiple of."""

    language: str = "en"
    half_title: bool = False
    imprint: Imprint | None = None
    foreword: tuple[Runs, ...] = ()
    primer: bool = False
    hints: bool = True
    index: bool = False
    contents: bool = True
    credits: bool = True
    fold: int = 1
    link: str = ""
    cover: Cover | None = None
    theme: str = ""


PLAIN = Publication()
"""Of a book that says nothing of itself."""


def read_publication(fields: Mapping[str, Node], collector: Collector) -> Publication:
    """The publication's fields; faulty ones keep their defaults."""
    return Publication(
        language=_language(fields["language"], collector) if "language" in fields else "en",
        half_title=_switch(fields, "half-title", collector),
        imprint=_imprint(fields["imprint"], collector) if "imprint" in fields else None,
        foreword=read_marked_up(fields, "foreword", collector),
        primer=_switch(fields, "primer", collector),
        hints="hints" not in fields or _switch(fields, "hints", collector),
        index=_switch(fields, "index", collector),
        contents="contents" not in fields or _switch(fields, "contents", collector),
        credits="credits" not in fields or _switch(fields, "credits", collector),
        fold=(read_whole(fields["fold"], "“fold”", collector, 1, MOST_FOLD) or 1) if "fold" in fields else 1,
        link=read_link(fields, collector),
        cover=_cover(fields["cover"], collector) if "cover" in fields else None,
        theme=read_line(fields, "theme", collector),
    )


def read_link(fields: Mapping[str, Node], collector: Collector) -> str:
    """The address under `link:`, printed as a QR code; "" where there is none."""
    node = fields.get("link")
    text = read_text(node, "“link”", collector) if node is not None else None
    if node is None or not text:
        return ""
    if not LINK.fullmatch(text):
        hint = "such as https://example.org/estuary, with no space in it and no more than 200 characters"
        collector.error(node.place, "bad-link", f"{quoted(text)} is not the address of a page", hint)
        return ""
    return text


def _switch(fields: Mapping[str, Node], name: str, collector: Collector) -> bool:
    return name in fields and bool(read_switch(fields[name], f"“{name}”", collector))


def _language(node: Node, collector: Collector) -> str:
    text = read_text(node, "“language”", collector)
    if text is None or text in languages():
        return text or "en"
    said = f"no language is known by the code {quoted(text)}"
    collector.error(node.place, "unknown-language", said, nearest(text, spoken_languages()))
    return "en"


def _imprint(node: Node, collector: Collector) -> Imprint:
    fields = read_fields(node, "the imprint", collector, IMPRINT_KEYS)
    return Imprint(
        publisher=read_line(fields, "publisher", collector),
        edition=read_line(fields, "edition", collector),
        date=read_date(fields["date"], "date", collector) if "date" in fields else None,
        isbn=read_isbn(fields["isbn"], collector) if "isbn" in fields else "",
        rights=read_note(fields, "rights", collector),
        note=read_note(fields, "note", collector),
        ebook_isbn=read_isbn(fields["ebook-isbn"], collector) if "ebook-isbn" in fields else "",
    )


def _cover(node: Node, collector: Collector) -> Cover:
    fields = read_fields(node, "the cover", collector, COVER_KEYS)
    return Cover(
        blurb=read_marked_up(fields, "blurb", collector),
        picture=read_picture(fields["image"], collector) if "image" in fields else None,
        leaf=_leaf(fields["leaf"], collector) if "leaf" in fields else 0.1,
        focus=_focus(fields["focus"], collector) if "focus" in fields else (0.5, 0.5),
        **{name: read_line(fields, name, collector) for name in ("price", "category", "sample", "condition")},
        profile=read_profile(fields["profile"], collector) if "profile" in fields else b"",
        places={name: node.place for name, node in fields.items()},
    )


def _focus(node: Node, collector: Collector) -> tuple[float, float]:
    """Two percentages: from the left and from the top."""
    text = read_text(node, "“focus”", collector)
    match = FOCUS.fullmatch(text.strip()) if text is not None else None
    if match and all(int(part) <= 100 for part in match.groups()):
        return int(match[1]) / 100, int(match[2]) / 100
    if text is not None:
        hint = "say how far from the left and from the top of the picture, such as 60% 30%"
        collector.error(node.place, "bad-focus", f"{quoted(text)} is not a point of the picture", hint)
    return 0.5, 0.5


def _leaf(node: Node, collector: Collector) -> float:
    """Thickness of a leaf: book papers have about 0.06 to 0.2 mm (common practice, no source)."""
    text = read_text(node, "“leaf”", collector)
    match = LEAF.fullmatch(text.strip()) if text is not None else None
    if match and 0.03 <= float(match[1]) <= 0.5:
        return float(match[1])
    if text is not None:
        hint = "such as 0.1 mm; the printer knows it, or measure a stack of a hundred leaves"
        collector.error(node.place, "bad-leaf", f"{quoted(text)} is not the thickness of a leaf, 0.03 to 0.5 mm", hint)
    return 0.1
