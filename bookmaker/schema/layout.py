"""A layout file, as JSON Schema: `layout.specfile` is asked for a layout by sections that note what it reads.

So every field, its unit and its limits come from the reader itself; what each is for, from the comments of the layout
`a4-book`, which explains its lines.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import TypeVar

from bookmaker.layout.basis import BASED_ON
from bookmaker.layout.explained import explained
from bookmaker.layout.lengths import LENGTH, PAPERS, SIZE
from bookmaker.layout.setting.fonts import FontBook
from bookmaker.layout.spec import TypeScale
from bookmaker.layout.specfile import NEEDED, OPTIONAL, TYPE, Section, layout_from
from bookmaker.schema import shapes
from bookmaker.schema.shapes import Shape
from bookmaker.source.diagnostics import Collector, Place
from bookmaker.source.placed import Node, Word

ANYWHERE = Place("")

T = TypeVar("T")


def layout() -> Shape:
    """The whole file of a layout: with a basis it need not be whole."""
    top = Noted(NEEDED, OPTIONAL)
    layout_from(top, "", ANYWHERE)
    whole = {"required": [*NEEDED], "properties": {
        name: {"required": [*noted.names]}
        for name, noted in top.noted.items() if isinstance(noted, Noted) and noted.names
    }}  # fmt: skip
    return {**top.shape(explained()), "if": {"required": [BASED_ON]}, "else": whole}


class Noted(Section):
    """A section that has every field, and notes how each is read."""

    def __init__(self, names: tuple[str, ...], optional: tuple[str, ...]) -> None:
        self.collector = Collector()
        self.names = names
        self.fields = {name: Word(ANYWHERE, "") for name in (*names, *optional)}
        self.noted: dict[str, Shape | Noted] = {}

    def shape(self, told: Mapping[str, str], within: str = "") -> Shape:
        fields = {
            name: noted.shape(told, f"{name}.") if isinstance(noted, Noted) else noted
            for name, noted in self.noted.items()
        }
        said = {name: told[within + name] for name in fields if within + name in told}
        return shapes.table({name: fields[name] for name in self.fields}, told=said)

    def value(self, name: str, read: Callable[[Node], T | None], stand_in: T) -> T:
        papers = {"anyOf": [shapes.choice(PAPERS), shapes.matching(SIZE)]}
        if name in ("paper", "sheet"):
            self.noted[name] = papers
        elif name in TypeScale.__dataclass_fields__:
            self.noted[name] = {**shapes.matching(TYPE), "examples": [f"{font} 10/14" for font in FontBook().names]}
        else:
            self.noted[name] = shapes.TEXT
        return stand_in

    def length(self, name: str, least: float, most: float) -> float:
        self.noted[name] = shapes.matching(LENGTH)
        return least

    def whole(self, name: str, least: int, most: int) -> int:
        self.noted[name] = shapes.whole(least, most)
        return least

    def choice(self, name: str, choices: tuple[str, ...]) -> str:
        self.noted[name] = shapes.choice(choices)
        return choices[0]

    def switch(self, name: str) -> bool:
        self.noted[name] = shapes.SWITCH
        return False

    def number(self, name: str, least: float, most: float, usual: float) -> float:
        self.noted[name] = shapes.number(least, most)
        return usual

    def section(self, name: str, names: tuple[str, ...], optional: tuple[str, ...] = ()) -> Section:
        self.noted[name] = inner = type(self)(names, optional)
        return inner
