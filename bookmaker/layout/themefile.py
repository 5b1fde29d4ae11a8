"""Theme files: half a page of YAML that a designer can read, in `layouts/themes/`.

In: a theme's name. Out: a `Theme`, or every mistake in its file at its place.
"""

from __future__ import annotations

import re
from functools import cache
from typing import Any, cast, get_args

from bookmaker.display.colour import Colour, Ink, contrast
from bookmaker.layout.setting.fonts import FontBook
from bookmaker.layout.spec import Layout
from bookmaker.layout.specfile import Section
from bookmaker.layout.theme import Palette, Pattern, Theme
from bookmaker.resources import shipped
from bookmaker.source.diagnostics import BookErrors, Collector, Diagnostic, Place, nearest
from bookmaker.source.placed import Node, read_items, read_text
from bookmaker.source.yamlfile import parse_yaml

PLAIN = "lamp-black"
"""The theme of a book that names none."""

NEEDED = ("about", "cover", "inside", "art")
PALETTE = ("ground", "tone", "panel", "words", "marks")
ART = ("pattern", "across", "weight", "digits")

INKS = re.compile(r"(\d{1,3}) +(\d{1,3}) +(\d{1,3}) +(\d{1,3})")

HEAVIEST = 280
"""Most of all inks together, of which each is 100: a little under what presses take, for large grounds (common
practice, no source)."""

LEGIBLE = 4.5
"""Least contrast of words to what they stand on (WCAG 2.2, success criterion 1.4.3)."""

MOST_MARKS = 6


def theme_names() -> tuple[str, ...]:
    """The themes that come with bookmaker, in alphabetical order."""
    return tuple(sorted(path.stem for path in (shipped("layouts") / "themes").glob("*.yaml")))


@cache
def load_theme(name: str = PLAIN, asked: Place | None = None) -> Theme:
    """The theme of that name, asked for at a place of the manifest or on the command line.

    Raises BookErrors if there is none, or for the mistakes in its file.
    """
    names = theme_names()
    if name not in names:
        text, hint = f"there is no theme “{name}”", nearest(name, names) or "“bookmaker themes” lists them"
        raise BookErrors([Diagnostic(asked or Place("--theme"), "unknown-theme", text, hint)])
    path = shipped("layouts") / "themes" / f"{name}.yaml"
    return read_theme(name, path.read_text(encoding="utf-8"), f"layouts/themes/{path.name}")


def worn(layout: Layout) -> Theme:
    """The theme of a layout; the plain one where it has none."""
    return layout.theme or load_theme()


def read_theme(name: str, text: str, file: str) -> Theme:
    """A theme from the text of its file. Raises BookErrors with every mistake in it."""
    collector = Collector()
    root = parse_yaml(text, file, collector)
    collector.raise_errors()
    assert root is not None
    theme = theme_from(Section(root, "a theme", NEEDED, collector), name, root.place)
    collector.raise_errors()
    return theme


def theme_from(top: Section, name: str, place: Place) -> Theme:
    """The theme that a file's sections describe; sound only if their desk holds no error."""
    collector, art = top.collector, top.section("art", ART)
    return Theme(
        name=name,
        about=top.value("about", lambda node: read_text(node, "“about”", collector), ""),
        cover=_palette(top.section("cover", PALETTE)),
        inside=_palette(top.section("inside", PALETTE)),
        pattern=cast(Any, art.choice("pattern", get_args(Pattern))),
        across=art.whole("across", 6, 30),
        weight=art.number("weight", 0.5, 2, usual=1),
        digits=art.choice("digits", FontBook().names),
        place=place,
    )


def _palette(section: Section) -> Palette:
    collector = section.collector

    black: Colour = 0.0
    blacks: tuple[Colour, ...] = (black, black)

    def colour(field: str) -> Colour:
        return section.value(field, lambda node: read_colour(node, f"“{field}”", collector), black)

    ground, tone, panel, words = (colour(field) for field in PALETTE[:-1])
    marks = section.value("marks", lambda node: _marks(node, collector), blacks)
    if {"panel", "words"} <= section.fields.keys() and not any(collector.errors()) and contrast(panel, words) < LEGIBLE:
        said = f"words on the panel have a contrast of {contrast(panel, words):.1f}, and can't be read below {LEGIBLE}"
        collector.error(section.fields["words"].place, "faint-words", said, "make one darker, or the other lighter")
    return Palette(ground, tone, panel, words, marks)


def _marks(node: Node, collector: Collector) -> tuple[Colour, ...] | None:
    items = read_items(node, "“marks”", collector)
    if not 2 <= len(items) <= MOST_MARKS:
        said = f"“marks” should be two to {MOST_MARKS} colours, not {len(items)}"
        collector.error(node.place, "marks", said, "each on a line of its own after a dash")
    read = [read_colour(item, "a mark's colour", collector) for item in items]
    return tuple(colour for colour in read if colour is not None) or None


def read_colour(node: Node, what: str, collector: Collector) -> Colour | None:
    """Cyan, magenta, yellow and black in percent; a grey where there is nothing but black."""
    text = read_text(node, what, collector)
    if text is None:
        return None
    match = INKS.fullmatch(text.strip())
    if match is None:
        hint = "give cyan, magenta, yellow and black in percent, such as 90 60 10 40"
        collector.error(node.place, "not-a-colour", f"{what} can't be “{text}”", hint)
        return None
    shares = [int(part) for part in match.groups()]
    if max(shares) > 100:
        collector.error(node.place, "out-of-range", f"{what} has more than 100 percent of an ink")
        return None
    if sum(shares) > HEAVIEST:
        said = f"{what} lays {sum(shares)} percent of ink on each other, and more than {HEAVIEST} does not dry"
        collector.error(node.place, "much-ink", said, "take back the inks that black covers anyway")
        return None
    cyan, magenta, yellow, black = (share / 100 for share in shares)
    return Ink(cyan, magenta, yellow, black) if cyan or magenta or yellow else round(1 - black, 2)
