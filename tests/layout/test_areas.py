"""Layouts explained: every line has a meaning, every layout one drawn page that says all it has."""

from __future__ import annotations

import json
from collections.abc import Iterator
from dataclasses import replace
from typing import Any

import pytest

from bookmaker.display.items import Document, Group, Item, Page, Rect, Text
from bookmaker.layout import layout_names, load_layout
from bookmaker.layout.explained import explained, values_of
from bookmaker.layout.sheets.areas import MARGIN, compose_areas
from bookmaker.schema import schema_text
from bookmaker.schema.told import told
from tests.layout.flat import Flat, flat


def drawn(name: str) -> Document:
    return compose_areas(load_layout(name), [*values_of(name)])


def fields(shape: Any, above: str = "") -> Iterator[str]:
    for name, inner in shape["properties"].items():
        if "properties" in inner:
            yield from fields(inner, f"{name}.")
        else:
            yield above + name


def test_every_field_is_explained() -> None:
    assert {*fields(json.loads(schema_text("layout")))} - {"about"} <= explained().keys()


@pytest.mark.parametrize("name", layout_names())
def test_every_value_is_told(name: str) -> None:
    layout, said = load_layout(name), {(value.section, value.name): value.typed for value in values_of(name)}
    for role in layout.type.__dataclass_fields__:
        type = getattr(layout.type, role)
        assert said["type", role] == f"{type.font} {type.size:g}/{type.leading:g}"
    assert said["puzzles", "rows"] == str(layout.puzzles.rows)
    assert said["keys", "columns"] == str(layout.keys.columns)
    assert said["puzzles", "coordinates"] == ("yes" if layout.puzzles.coordinates else "no")
    assert ("tear-out" in {section for section, _ in said}) == (layout.tear_out is not None)
    assert ("booklet" in {section for section, _ in said}) == (layout.booklet is not None)


@pytest.mark.parametrize("name", layout_names())
def test_one_page_says_it_all(name: str) -> None:
    (page,) = drawn(name).pages
    items = flat_turned(page.items)
    words = " ".join(item.item.text for item in items if isinstance(item.item, Text))
    for value in values_of(name):
        assert value.name in words and value.typed in words
    for item in items:
        left, top, right, bottom = item.box
        assert left >= MARGIN - 1 and top >= MARGIN - 1
        assert right <= page.width - MARGIN + 1 and bottom <= page.height - MARGIN + 1


def flat_turned(items: tuple[Item, ...]) -> list[Flat]:
    """As `flat`, but for the measures that stand upright, which are left out."""

    def level(item: Item) -> Item:
        if not isinstance(item, Group):
            return item
        return replace(item, items=tuple(level(inner) for inner in item.items if getattr(inner, "turn", 0.0) != 90.0))

    return flat(Page(0, 0, tuple(map(level, items)), ""))


def test_the_drawing_is_to_scale() -> None:
    """The places of four puzzles on A4, in the measure of the page."""
    (page,) = drawn("a4-book-four").pages
    layout = load_layout("a4-book-four")
    sides = {
        round(box[2] - box[0], 2): round(box[3] - box[1], 2)
        for item in flat_turned(page.items)
        if isinstance(item.item, Rect)
        for box in [item.box]
    }
    ratios = [high / wide for wide, high in sides.items()]
    assert any(abs(ratio - layout.height / layout.width) < 0.01 for ratio in ratios)
    assert any(abs(ratio - layout.depth / layout.measure) < 0.01 for ratio in ratios)


def test_the_readme_names_every_line() -> None:
    assert set(json.loads(schema_text("layout"))["properties"]) - {"about"} == set(told()["in a layout"])
