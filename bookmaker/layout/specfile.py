"""Layout files: a page of YAML that a designer can read.

In: `layouts/<name>.yaml`, or a file of the user's own that says what differs from one of these. Out: a `Layout` in
points, or every mistake in the file at its place.

A value that can't be read is replaced by a harmless one, so that the next mistakes are found too; no layout leaves this
module while the collector holds an error.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import replace
from functools import cache
from math import ceil
from pathlib import Path, PureWindowsPath
from typing import Any, Literal, TypeAlias, TypeVar, cast

from bookmaker.layout.basis import BASED_ON, on_basis, places_in, seen_from
from bookmaker.layout.lengths import PAPERS, mm, read_length, read_number, read_paper
from bookmaker.layout.setting.fonts import FontBook
from bookmaker.layout.spec import (
    Booklet,
    KeySlots,
    Layout,
    PageMargins,
    Press,
    PuzzleSlots,
    Shown,
    TearOut,
    Type,
    TypeScale,
)
from bookmaker.resources import shipped
from bookmaker.source.diagnostics import BookErrors, Collector, Diagnostic, Place, nearest, quoted
from bookmaker.source.placed import Node, read_choice, read_fields, read_switch, read_text, read_whole
from bookmaker.source.textfile import read_file
from bookmaker.source.yamlfile import parse_yaml

TYPE = re.compile(r"([\w-]+)\s+(\d+(?:\.\d+)?)/(\d+(?:\.\d+)?)")
T = TypeVar("T")

Use: TypeAlias = Literal["book", "handout"]

HOLES = {"none": 0, "two": 2, "three": 3, "four": 4}

ORDERS = ("number", "apart")
"""Orders of keys, the usual one first."""

LEAST_FIGURE = 6.0
"""The smallest type of figures on a grid, in points, where nothing is said of it."""

CLEAR = mm(4)
"""White between what is printed and the edge that is torn off, or its holes, at least."""

PRESS = Press(bleed=mm(3), marks=True, slug=True)
"""For layouts that say nothing of the press."""


def layout_names() -> tuple[str, ...]:
    """The layouts that come with bookmaker, in alphabetical order."""
    return tuple(sorted(path.stem for path in shipped("layouts").glob("*.yaml")))


def load_layout(name: str, asked: Place | None = None, use: Use | None = None) -> Layout:
    """A layout asked for at a place of a manifest or on the command line, and for what `use`: one that comes with
    bookmaker, by its name, or a file, as it is found from the file that asks for it.

    Raises BookErrors if there is none, if it is for another use, or for the mistakes in its file.
    """
    if name.lower().endswith(ENDINGS):
        layout = _own(name, asked)
    elif name in layout_names():
        layout = _shipped(name)
        layout = replace(layout, place=asked or Place("--layout"), places={})
    else:
        beside = (path.name for path in _folder(asked).glob("*") if path.suffix in ENDINGS) if asked else ()
        text, hint = f"there is no layout {quoted(name)}", nearest(name, (*layout_names(), *beside))
        hint = hint if hint.startswith("did") else nearest(name, layout_names())
        raise BookErrors([Diagnostic(asked or Place("--layout"), "unknown-layout", text, hint)])
    if use not in (None, layout.use):
        text = f"“{name}” is a layout for a {layout.use}, not for a {use}"
        fit = ", ".join(other for other in layout_names() if _shipped(other).use == use)
        raise BookErrors([Diagnostic(asked or Place("--layout"), "wrong-use", text, f"layouts for a {use}: {fit}")])
    return layout


ENDINGS = (".yaml", ".yml")
"""By these a file is told from the name of a layout that comes with bookmaker."""


@cache
def _shipped(name: str) -> Layout:
    return read_layout(name, *_shipped_text(name))


def _shipped_text(name: str) -> tuple[str, str]:
    path = shipped("layouts") / f"{name}.yaml"
    return path.read_text(encoding="utf-8"), f"layouts/{path.name}"


def _own(name: str, asked: Place | None) -> Layout:
    return read_layout(Path(name).stem, *_own_text(name, asked))


def _own_text(name: str, asked: Place | None) -> tuple[str, str]:
    """The text of a layout's file, and the file's name as the user would write it: as a manifest names it, beside the
    manifest; on the command line, wherever it lies."""
    collector, place = Collector(), asked or Place("--layout")
    parts = PureWindowsPath(name)
    if asked and (parts.drive or parts.root or name.startswith("~")):
        hint = "name it as it is found from the book's folder, such as my-layout.yaml or ../my-layout.yaml"
        collector.error(place, "layout-outside", f"{quoted(name)} would not be found if the book is moved", hint)
        collector.raise_errors()
    path = _folder(asked) / name
    text = read_file(path, str(path), place, collector)
    collector.raise_errors()
    assert text is not None
    return text, str(path)


def _folder(asked: Place | None) -> Path:
    return Path(asked.file).parent if asked else Path()


def tree_of(name: str) -> tuple[str, Node]:
    """What is typed in a layout, named as on the command line, and in its basis; and the name of its own file."""
    load_layout(name)
    text, file = _own_text(name, None) if name.lower().endswith(ENDINGS) else _shipped_text(name)
    return file, on_basis(_parsed(text, file), Collector(), layout_names())


def _parsed(text: str, file: str) -> Node:
    collector = Collector()
    tree = parse_yaml(text, file, collector)
    collector.raise_errors()
    assert tree is not None
    return tree


def read_layout(name: str, text: str, file: str) -> Layout:
    """A layout from the text of its file. Raises BookErrors with every mistake in it."""
    collector = Collector()
    own = _parsed(text, file)
    root = on_basis(own, collector, layout_names())
    layout = layout_from(Section(root, "a layout", NEEDED, collector, OPTIONAL), name, root.place)
    seen_from(own, collector)
    collector.raise_errors()
    places = places_in(own)
    about = layout.about if "about" in places else f"based on {layout.based_on}"
    return replace(layout, about=about, places=places)


NEEDED = ("about", "use", "paper", "margins", "type", "puzzles", "keys")
OPTIONAL = (BASED_ON, "theme", "shows", "press", "tear-out", "booklet")


class Section:
    """The named fields of one part of the file, all of them needed but for the `optional` ones."""

    def __init__(
        self, node: Node | None, what: str, names: tuple[str, ...], collector: Collector, optional: tuple[str, ...] = ()
    ) -> None:
        self.collector = collector
        self.fields = {} if node is None else read_fields(node, what, collector, (*names, *optional), names)

    def value(self, name: str, read: Callable[[Node], T | None], stand_in: T) -> T:
        """What `read` makes of a field; the stand-in where it is missing or wrong."""
        node = self.fields.get(name)
        found = None if node is None else read(node)
        return stand_in if found is None else found

    def length(self, name: str, least: float, most: float) -> float:
        """A length, given and returned in points."""
        return self.value(name, lambda node: read_length(node, f"“{name}”", self.collector, least, most), least)

    def whole(self, name: str, least: int, most: int) -> int:
        return self.value(name, lambda node: read_whole(node, f"“{name}”", self.collector, least, most), least)

    def choice(self, name: str, choices: tuple[str, ...]) -> str:
        return self.value(name, lambda node: read_choice(node, f"“{name}”", self.collector, choices), choices[0])

    def switch(self, name: str) -> bool:
        return self.value(name, lambda node: read_switch(node, f"“{name}”", self.collector), False)

    def number(self, name: str, least: float, most: float, usual: float) -> float:
        return self.value(name, lambda node: read_number(node, f"“{name}”", self.collector, least, most), usual)

    def section(self, name: str, names: tuple[str, ...], optional: tuple[str, ...] = ()) -> Section:
        return Section(self.fields.get(name), f"“{name}”", names, self.collector, optional)


def layout_from(top: Section, name: str, place: Place) -> Layout:
    """The layout that a file's sections describe; sound only if their collector holds no error."""
    collector = top.collector
    width, height = top.value("paper", lambda node: read_paper(node, collector), PAPERS["A4"])
    margins = top.section("margins", ("inner", "outer", "top", "bottom"), ("spine",))
    roles = tuple(TypeScale.__dataclass_fields__)
    scale = top.section("type", roles)
    needed = ("rows", "columns", "text", "hang", "gap", "least cell", "most cell")
    more = ("weight", "coordinates", "workings", "least figure", "least grid", "clues in margin")
    puzzles = top.section("puzzles", needed, more)
    least = puzzles.length("least cell", mm(4), mm(40))
    keys = top.section("keys", ("columns", "most cell"), ("order",))
    press = top.section("press", ("bleed", "marks", "slug"))
    layout = Layout(
        name=name,
        about=top.value("about", lambda node: read_text(node, "“about”", collector), ""),
        use=cast(Any, top.choice("use", ("book", "handout"))),
        width=width,
        height=height,
        margins=PageMargins(
            inner=margins.length("inner", mm(5), mm(80)),
            outer=margins.length("outer", mm(5), mm(80)),
            top=margins.length("top", mm(5), mm(80)),
            bottom=margins.length("bottom", mm(5), mm(80)),
            spine=margins.length("spine", 0, mm(10)),
        ),
        type=TypeScale(
            *(scale.value(role, lambda node: _type(node, collector), Type("serif", 10, 14)) for role in roles)
        ),
        puzzles=PuzzleSlots(
            rows=puzzles.whole("rows", 1, 4),
            columns=puzzles.whole("columns", 1, 4),
            text=cast(Any, puzzles.choice("text", ("above", "beside"))),
            hang=puzzles.length("hang", 0, mm(60)),
            gap=puzzles.length("gap", 0, mm(60)),
            least=least,
            most=puzzles.length("most cell", least, mm(40)),
            weight=puzzles.number("weight", 1, 3, usual=1),
            coordinates=puzzles.switch("coordinates"),
            workings=puzzles.switch("workings"),
            figure=puzzles.length("least figure", 5, 30) if "least figure" in puzzles.fields else LEAST_FIGURE,
            grid=puzzles.length("least grid", 0, mm(300)),
            beyond=puzzles.length("clues in margin", 0, mm(20)),
        ),
        keys=KeySlots(
            keys.whole("columns", 1, 8),
            keys.length("most cell", mm(2), mm(20)),
            "order" in keys.fields and keys.choice("order", ORDERS) == ORDERS[1],
        ),
        press=Press(press.length("bleed", 0, mm(10)), press.switch("marks"), press.switch("slug"))
        if "press" in top.fields
        else PRESS,
        place=place,
        shows=_shown(top),
        based_on=top.choice(BASED_ON, layout_names()) if BASED_ON in top.fields else "",
        wears=top.choice("theme", _themes()) if "theme" in top.fields else "",
        tear_out=_tear_out(top) if "tear-out" in top.fields else None,
        booklet=_booklet(top, width, height, collector) if "booklet" in top.fields else None,
    )
    short, long = sorted((layout.measure, layout.depth))
    if "margins" in top.fields and (short < mm(80) or long < mm(120)):
        text = "these margins leave less than 80 by 120 mm of the paper to print on"
        collector.error(top.fields["margins"].place, "no-room", text)
    if layout.tear_out and layout.margins.inner < layout.tear_out.reach + CLEAR:
        least = (layout.tear_out.reach + CLEAR) / mm(1)
        text = "the inner margin is too narrow for the edge that is torn off and its holes"
        hint = f"make it {ceil(least)} mm or more"
        collector.error(margins.fields.get("inner", top.fields["tear-out"]).place, "no-room", text, hint)
    return layout


def _themes() -> tuple[str, ...]:
    return tuple(sorted(path.stem for path in (shipped("layouts") / "themes").glob("*.yaml")))


def _shown(top: Section) -> Shown:
    """What a layout does not mention is shown."""
    names = {name.replace("_", " "): name for name in Shown.__dataclass_fields__}
    section = top.section("shows", (), tuple(names)) if "shows" in top.fields else None
    said = {names[name]: section.switch(name) for name in names if name in section.fields} if section else {}
    return Shown(**said)


def _tear_out(top: Section) -> TearOut:
    section = top.section("tear-out", ("edge", "perforation", "holes"))
    edge = section.length("edge", mm(5), mm(40))
    return TearOut(edge, section.switch("perforation"), HOLES[section.choice("holes", tuple(HOLES))])


def _booklet(top: Section, width: float, height: float, collector: Collector) -> Booklet:
    """The sheet lies on its long side; two pages must find room on it."""
    section = top.section("booklet", ("sheet", "signature", "thickness"))
    short, long = sorted(section.value("sheet", lambda node: read_paper(node, collector), (2 * width, height)))
    signature = section.whole("signature", 4, 128)
    booklet = Booklet(long, short, signature, section.length("thickness", mm(0.02), mm(1)))
    if signature % 4:
        text = f"a signature can't have {signature} pages: each folded sheet has four"
        collector.error(section.fields["signature"].place, "no-fold", text)
    if "paper" in top.fields and "sheet" in section.fields and (2 * width > long + 0.01 or height > short + 0.01):
        text = "two pages of this layout do not fit side by side on the sheet"
        collector.error(section.fields["sheet"].place, "no-room", text, "use a larger sheet or smaller pages")
    return booklet


def _type(node: Node, collector: Collector) -> Type | None:
    text = read_text(node, "type", collector)
    if text is None:
        return None
    match = TYPE.fullmatch(text.strip())
    if match is None:
        hint = "give a font, its size and its leading in points, such as serif 10.5/14"
        collector.error(node.place, "not-a-type", f"“{text}” is not a type", hint)
        return None
    fonts = FontBook().names
    if match[1] not in fonts:
        collector.error(node.place, "unknown-font", f"there is no font “{match[1]}”", nearest(match[1], fonts))
        return None
    size, leading = float(match[2]), float(match[3])
    if not 5 <= size <= 144 or not size <= leading <= 3 * size:
        text = (
            f"“{text}” can't be set: sizes go from 5 to 144 points, the leading from the size to three times the size"
        )
        collector.error(node.place, "out-of-range", text)
        return None
    return Type(match[1], size, leading)
