"""Samples of marks beside their sentences: every figure in them can be read, in every layout."""

from collections.abc import Iterable, Iterator
from dataclasses import replace

import pytest

from bookmaker.book.contents import MarkLine, RulesText
from bookmaker.display.items import Group, Item, Page, Text, untagged
from bookmaker.layout import load_layout
from bookmaker.layout.pages.sizing import BESIDE
from bookmaker.layout.pages.words import rules_above, rules_beside
from bookmaker.layout.setting.text import Row
from bookmaker.layout.spec import Layout
from bookmaker.layout.specfile import layout_names
from bookmaker.rules import kinds
from bookmaker.rules.common.contract import Sample
from tests.layout.flat import flat
from tests.layout.sample_book import sample_book

LEAST, LARGE_PRINT = 6.0, 14.0
"""The smallest type in a sample, in points, in ordinary layouts and in those with text of 16 points or more (UKAAF
G003 and the RNIB's Clear Print guidelines, from memory)."""

SAMPLES = {kind: sample for kind, rule in kinds().items() if (sample := rule.sample())}


def least(layout: Layout) -> float:
    return LARGE_PRINT if layout.type.text.size >= 16 else LEAST


def sizes(items: Iterable[Item], scale: float = 1.0) -> Iterator[float]:
    for item in items:
        if isinstance(item, Group):
            yield from sizes(item.items, scale * item.scale)
        elif isinstance(item, Text):
            yield scale * item.size


def drawn(rows: Iterable[Row]) -> list[Group]:
    """The samples in rows of a key to the marks."""
    groups = (item for row in rows for item in untagged(row.drawn({})) if isinstance(item, Group))
    inside = (inner for group in groups for inner in (group, *untagged(group.items)))
    return [inner for inner in inside if isinstance(inner, Group) and inner.name]


def ruled(sample: Sample, layout: Layout) -> dict[str, list[Row]]:
    """The key to the marks of a puzzle with this sample in it, for each place where the layout might set it."""
    (puzzle, *_) = sample_book().puzzles
    told = replace(puzzle, rules=RulesText("", (MarkLine(sample, "What it asks of the digits."),)))
    return {
        "hanging": [*rules_above(told, layout, layout.measure, layout.puzzles.hang)],
        "free": [*rules_above(told, layout, layout.measure / 3, 0.0)],
        "beside": [*rules_beside(told, layout, BESIDE)],
    }


@pytest.mark.parametrize("name", layout_names())
def test_every_figure_in_a_sample_can_be_read(name: str) -> None:
    layout = load_layout(name)
    small: dict[tuple[str, str], float] = {}
    for kind, sample in SAMPLES.items():
        for place, rows in ruled(sample, layout).items():
            (found,) = drawn(rows)
            assert found.name == f"sample {kind}"
            smallest = min(sizes([found]), default=least(layout))
            if smallest < least(layout) - 0.001:
                small[kind, place] = round(smallest, 1)
    assert small == {}


@pytest.mark.parametrize("name", layout_names())
def test_samples_keep_to_their_column(name: str) -> None:
    """However large its figures, a sample stands clear of its sentence, and the sentence where all text begins, or in
    large print further to the right where the sample needs it."""
    layout = load_layout(name)
    for kind, sample in SAMPLES.items():
        *_, row = ruled(sample, layout)["hanging"]
        boxes = {"sample": (0.0, 0.0), "words": (0.0, 0.0)}
        for one in flat(Page(layout.width, layout.height, tuple(row.drawn({})), "")):
            inside = "sample" if one.inside("sample") else "words"
            boxes[inside] = one.box[0], one.box[2]
        hang = layout.puzzles.hang
        large = least(layout) == LARGE_PRINT and boxes["sample"][1] > hang - 0.3 * layout.line
        assert boxes["words"][0] > hang if large else boxes["words"][0] == pytest.approx(hang), kind
        assert boxes["sample"][1] <= boxes["words"][0] - 0.2 * layout.line, kind
