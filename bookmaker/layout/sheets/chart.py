"""The specimen chart: every rule kind with its title, its mark at the size of a printed grid, and its sentence.

In: nothing but the rule kinds there are. Out: a `Document` of A4 pages, to be looked at, photocopied, and looked at
again. Kinds are grouped by where they draw, so that marks that could be taken for each other stand near each other.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from bookmaker.book.smart_quotes import smart_quotes
from bookmaker.display.items import Document, Group, Item, Line, Page, Stroke, Text, tagged
from bookmaker.display.tags import HEADING, OURS, SECTION, Role, Tag
from bookmaker.language import Catalogue, catalogue
from bookmaker.layout.art.gridart import frame_for
from bookmaker.layout.art.swatch import swatch, swatch_size
from bookmaker.layout.lengths import PAPERS, mm
from bookmaker.layout.setting.flow import columns, height, stacked
from bookmaker.layout.setting.text import Row, broken
from bookmaker.layout.spec import Type
from bookmaker.manifest.example import example_rule
from bookmaker.phrases.titles import title_of
from bookmaker.rules import kinds
from bookmaker.rules.common.contract import Rule, Sample
from bookmaker.rules.common.drawing.frame import Layer, Margins

WIDTH, HEIGHT = PAPERS["A4"]
MARGIN, GUTTER = mm(15), mm(9)
COLUMNS = 2

CELL = mm(8.5)
"""Cells of the samples: those of a book with one or two puzzles a page."""

HANG = 4 * CELL + mm(4)
"""Width of the samples' column: four cells, or three and a clue outside, and white space."""

HEAD = Type("serif", 20, 34)
GROUP = Type("sans-bold", 8.5, 18)
NAME = Type("serif-bold", 9, 11)
TEXT = Type("serif", 8.5, 10.5)
FOLIO = Type("sans", 7.5, 10)

GAP = 10.0
"""White space under each kind, in points."""

STEP = 10.0
"""By how many points columns are shortened while they stay as many as they are."""

GROUPS = ("chart-lines", "chart-cells", "chart-borders", "chart-outside", "chart-whole")
"""The messages of the groups' headings."""


def compose_chart(language: str = "en") -> Document:
    """The chart of all kinds."""
    words = catalogue(language)
    column = (WIDTH - 2 * MARGIN - (COLUMNS - 1) * GUTTER) / COLUMNS
    depth = HEIGHT - 2 * MARGIN - HEAD.leading
    filled = _evenly(tuple(_rows(words, column, depth)), depth)
    sides = [filled[at : at + COLUMNS] for at in range(0, len(filled), COLUMNS)]
    pages = (
        Page(WIDTH, HEIGHT, tuple(_page(words, side, str(number), column)), str(number))
        for number, side in enumerate(sides, start=1)
    )
    return Document(words.say("chart"), "", words.say("chart-subject"), tuple(pages), language=language)


def _evenly(rows: tuple[Row, ...], depth: float) -> list[tuple[Row, ...]]:
    """As few columns as the depth allows, the longest of them as short as they can be. What is tied fills a column
    of any depth, so shortening ends there."""
    best = tried = columns(rows, depth)
    while len(tried) == len(best) and max(map(height, tried)) <= depth:
        best = tried
        depth -= STEP
        tried = columns(rows, depth)
    return best


def _page(words: Catalogue, filled: list[tuple[Row, ...]], label: str, column: float) -> Iterator[Item]:
    title = Text(MARGIN, MARGIN + HEAD.size, words.say("chart"), HEAD.font, HEAD.size)
    yield tagged((HEADING,), title) if label == "1" else title
    yield Text(WIDTH - MARGIN, MARGIN + HEAD.size, label, FOLIO.font, FOLIO.size, anchor="end")
    for index, rows in enumerate(filled):
        yield from stacked(rows, MARGIN + index * (column + GUTTER), MARGIN + HEAD.leading, {})


def _rows(words: Catalogue, column: float, depth: float) -> Iterator[Row]:
    """Each group under its heading; a kind is never split, nor is a group that fits a column."""
    grouped: dict[str, list[type[Rule]]] = {name: [] for name in GROUPS}
    for kind in kinds().values():
        grouped[GROUPS[_group(kind.sample())]].append(kind)
    for name, members in grouped.items():
        rule = Line((0.0, 4.0), (column, 4.0), Stroke(0.4))
        text = tagged((SECTION, HEADING), Text(0.0, 14.0, words.say(name), GROUP.font, GROUP.size))
        heading = Row(GROUP.leading + GAP / 2, (rule, text), tied=True)
        entries = [_entry(words, kind, column) for kind in members]
        whole = height((heading, *entries)) <= depth
        if entries:
            yield heading
            yield from (replace(entry, tied=whole) for entry in entries[:-1])
            yield entries[-1]


def _group(sample: Sample | None) -> int:
    """The group of a kind by where its sample draws, as a place in `GROUPS`."""
    if sample is None:
        return 4
    if sample.rule.margins(sample.grid) != Margins():
        return 3
    layers = {mark.layer for mark in sample.rule.marks(frame_for(sample.grid, CELL))}
    if layers & {Layer.LINE, Layer.TUBE}:
        return 0
    return 2 if layers <= {Layer.WHITE, Layer.BORDER} else 1


def _entry(words: Catalogue, kind: type[Rule], column: float) -> Row:
    """The sample hangs at the left, title and sentence stand beside it; without a sample they take the whole width."""
    sample = kind.sample()
    hang = HANG if sample else 0.0
    sentence = (sample.rule if sample else example_rule(kind)).sentence(words)
    title = smart_quotes(title_of(words, kind))
    items: list[Item] = [tagged((HEADING,), Text(hang, NAME.size, title, NAME.font, NAME.size))]
    y = NAME.size
    for line in broken(sentence, TEXT.font, TEXT.size, column - hang):
        y += TEXT.leading
        items.append(tagged((OURS.further,), Text(hang, y, line, TEXT.font, TEXT.size)))
    deep = y + TEXT.leading - TEXT.size
    if sample:
        box = (0.0, 1.0, *swatch_size(sample, CELL))
        figure = Tag(Role.FIGURE, words.say("sample-of", kind=title), box=box)
        items.append(tagged((figure,), Group((swatch(sample, CELL),), 0.0, 1.0)))
        deep = max(deep, swatch_size(sample, CELL)[1] + 1.0)
    return Row(deep + GAP, tuple(items), tags=(SECTION.further, SECTION))
