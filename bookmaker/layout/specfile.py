"""Layout files: a page of YAML that a designer can read.

In: `layouts/<name>.yaml`. Out: a `Layout` in points, or every mistake in the file at its place.

A value that can't be read is replaced by a harmless one, so that the next mistakes are found too; no layout leaves this
module while the collector holds an error.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from functools import cache
from typing import Any, Literal, TypeAlias, TypeVar, cast

from bookmaker.layout.lengths import PAPERS, mm, read_length, read_number, read_paper
from bookmaker.layout.setting.fonts import FontBook
from bookmaker.layout.spec import Booklet, KeySlots, Layout, PageMargins, Press, PuzzleSlots, Type, TypeScale
from bookmaker.resources import shipped
from bookmaker.source.diagnostics import BookErrors, Collector, Diagnostic, Place, nearest
from bookmaker.source.placed import Node, read_choice, read_fields, read_switch, read_text, read_whole
from bookmaker.source.yamlfile import parse_yaml

TYPE = re.compile(r"([\w-]+)\s+(\d+(?:\.\d+)?)/(\d+(?:\.\d+)?)")
T = TypeVar("T")

Use: TypeAlias = Literal["book", "handout"]

PRESS = Press(bleed=mm(3), marks=True, slug=True)
"""For layouts that say nothing of the press."""


def layout_names() -> tuple[str, ...]:
    """The layouts that come with bookmaker, in alphabetical order."""
    return tuple(sorted(path.stem for path in shipped("layouts").glob("*.yaml")))


@cache
def load_layout(name: str, asked: Place | None = None, use: Use | None = None) -> Layout:
    """The layout of that name, asked for at a place of the manifest or on the command line, and for what `use`.

    Raises BookErrors if there is none, if it is for another use, or for the mistakes in its file.
    """
    names = layout_names()
    if name not in names:
        text = f"there is no layout “{name}”"
        raise BookErrors([Diagnostic(asked or Place("--layout"), "unknown-layout", text, nearest(name, names))])
    path = shipped("layouts") / f"{name}.yaml"
    layout = read_layout(name, path.read_text(encoding="utf-8"), f"layouts/{path.name}")
    if use not in (None, layout.use):
        text = f"“{name}” is a layout for a {layout.use}, not for a {use}"
        fit = ", ".join(other for other in names if load_layout(other).use == use)
        raise BookErrors([Diagnostic(asked or Place("--layout"), "wrong-use", text, f"layouts for a {use}: {fit}")])
    return layout


def read_layout(name: str, text: str, file: str) -> Layout:
    """A layout from the text of its file. Raises BookErrors with every mistake in it."""
    collector = Collector()
    root = parse_yaml(text, file, collector)
    collector.raise_errors()
    assert root is not None
    layout = layout_from(Section(root, "a layout", NEEDED, collector, OPTIONAL), name, root.place)
    collector.raise_errors()
    return layout


NEEDED = ("about", "use", "paper", "margins", "type", "puzzles", "keys")
OPTIONAL = ("press", "booklet")


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
    puzzles = top.section("puzzles", needed, ("weight", "coordinates", "workings"))
    least = puzzles.length("least cell", mm(4), mm(40))
    keys = top.section("keys", ("columns", "most cell"))
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
        ),
        keys=KeySlots(keys.whole("columns", 1, 8), keys.length("most cell", mm(2), mm(20))),
        press=Press(press.length("bleed", 0, mm(10)), press.switch("marks"), press.switch("slug"))
        if "press" in top.fields
        else PRESS,
        place=place,
        booklet=_booklet(top, width, height, collector) if "booklet" in top.fields else None,
    )
    if "margins" in top.fields and (layout.measure < mm(80) or layout.depth < mm(120)):
        text = "these margins leave less than 80 by 120 mm of the paper to print on"
        collector.error(top.fields["margins"].place, "no-room", text)
    return layout


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
