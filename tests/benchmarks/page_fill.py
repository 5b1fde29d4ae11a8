"""How well do the pages of a book use their paper? Measures of every layout for books, read off the finished pages.

    python tests/benchmarks/page_fill.py [BOOK] [--layout NAME ...]

BOOK is the demo book unless one is named. A line for each layout:

* pages: of the whole book
* filled: share of the height of the type area, on pages with puzzles, from its top to the lowest thing that is printed;
  in brackets without the ruled lines for time and notes
* grid: width of the 9×9 grids in millimetres, the median and the narrowest
* digit: the smallest digit or letter on a grid in points, clues and totals of marks included
* sample: the smallest one in the samples of marks
* tails: pages of words, samples or keys that are filled to less than a third; blank: pages with nothing on them at all

The last two leave out title pages and pages with ornament only.
"""

from __future__ import annotations

import sys
from argparse import ArgumentParser
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, field
from pathlib import Path
from statistics import median

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))

from bookmaker.book import Book, make_book
from bookmaker.display.items import Group, Line, Page, Rect, Text
from bookmaker.layout import compose, layout_names, load_layout
from bookmaker.layout.lengths import mm
from bookmaker.layout.spec import Layout
from bookmaker.manifest import load
from bookmaker.proof import prove_all
from bookmaker.proof.cache import user_store
from bookmaker.source.diagnostics import BookErrors
from tests.layout.flat import Flat, flat

THIRD = 1 / 3

RULED = 5

CLASSIC_CELLS = 9


@dataclass
class Measures:
    """What the pages of one book in one layout come to; lengths in points."""

    pages: int = 0
    filled: list[float] = field(default_factory=list)
    bare: list[float] = field(default_factory=list)
    grids: list[float] = field(default_factory=list)
    digit: float = 99.0
    sample: float = 99.0
    tails: list[str] = field(default_factory=list)
    blank: list[str] = field(default_factory=list)

    def line(self) -> str:
        share = f"{_mean(self.filled):5.0%} ({_mean(self.bare):.0%})"
        grid = f"{median(self.grids) / mm(1):5.1f} {min(self.grids) / mm(1):5.1f}"
        tails = f"{len(self.tails)} ({', '.join(self.tails)})" if self.tails else "0"
        return (
            f"{self.pages:5}  {share:12} {grid} mm {self.digit:6.1f} pt {self.sample:6.1f} pt"
            f"  blank {len(self.blank)}  tails {tails}"
        )


def measured(book: Book, layout: Layout) -> Measures:
    """The book on this layout."""
    found = Measures()
    sizes = {puzzle.id: puzzle.puzzle.grid.size for puzzle in book.puzzles}
    for page in compose(book, layout).pages:
        found.pages += 1
        shown = [one for one in flat(page) if not one.inside("folio")]
        _puzzles(page, shown, layout, sizes, found)
    return found


def _puzzles(page: Page, shown: list[Flat], layout: Layout, sizes: dict[str, int], found: Measures) -> None:
    grids = {name for one in shown for name in one.names if name.startswith("grid ")}
    for name in grids:
        here = [one for one in shown if one.inside(name)]
        found.digit = min([found.digit, *_figures(here)])
        if sizes[name.removeprefix("grid ")] == CLASSIC_CELLS:
            found.grids.append(_side(page, name))
    found.sample = min([found.sample, *_figures(one for one in shown if one.inside("sample "))])
    end = _share(shown, layout)
    if grids:
        found.filled.append(end)
        found.bare.append(_share([one for one in shown if not _ruled(one, layout)], layout))
    elif not shown:
        found.blank.append(page.label)
    elif _is_words(shown, layout) and _share([one for one in shown if _said(one)], layout) < THIRD:
        found.tails.append(page.label)


def _figures(shown: Iterable[Flat]) -> Iterator[float]:
    """Sizes of figures, groups turned or clipped opened."""
    for one in shown:
        if isinstance(one.item, Text):
            yield one.item.size
        elif isinstance(one.item, Group):
            yield from _inside(one.item)


def _inside(group: Group) -> Iterator[float]:
    for item in group.items:
        if isinstance(item, Group):
            yield from (size * group.scale for size in _inside(item))
        elif isinstance(item, Text):
            yield item.size * group.scale


def _side(page: Page, name: str) -> float:
    """Width of a grid: its outline is the last square that is drawn of its lines."""
    sides = [
        one.box[2] - one.box[0]
        for one in flat(page)
        if one.inside(name) and isinstance(one.item, Rect) and one.item.x == one.item.y == 0.0
    ]
    return max(sides)


def _share(shown: Iterable[Flat], layout: Layout) -> float:
    top, depth = layout.margins.top, layout.depth
    lowest = max((one.box[3] for one in shown if one.box[1] < top + depth), default=top)
    return min(1.0, (lowest - top) / depth)


def _is_words(shown: Sequence[Flat], layout: Layout) -> bool:
    """Is it neither a page of art nor one that is ruled from top to bottom?"""
    words = [one for one in shown if _said(one)]
    display = layout.type.display
    ruled = [one for one in shown if isinstance(one.item, Line) and one.box[2] - one.box[0] > 0.9 * layout.measure]
    return len(ruled) < RULED and not any(
        isinstance(one.item, Text) and one.item.font == display.font and one.item.size > layout.type.heading.size
        for one in words
    )


def _said(one: Flat) -> bool:
    """Is it something to read, and no ornament?"""
    return isinstance(one.item, Text | Line) or one.inside("sample ") or one.inside("key ")


def _ruled(one: Flat, layout: Layout) -> bool:
    """Is it a line for the time or for notes, or one of their names?"""
    if any(name.startswith(("grid ", "sample ")) for name in one.names):
        return False
    return (isinstance(one.item, Line) and one.item.start[1] == one.item.end[1]) or (
        isinstance(one.item, Text) and one.item.text in ("Time", "Notes")
    )


def _mean(values: list[float]) -> float:
    return sum(values) / len(values)


def main() -> None:
    parser = ArgumentParser(description=__doc__)
    parser.add_argument("book", nargs="?", type=Path, default=ROOT / "demo_book")
    parser.add_argument("--layout", action="append", default=[])
    asked = parser.parse_args()
    names = asked.layout or [name for name in layout_names() if load_layout(name).use == "book"]
    manifest = load(asked.book)
    store = user_store()
    book = make_book(manifest, prove_all(manifest.entries, store=store), store=store)
    print(f"{'layout':22}{'pages':>5}  {'filled':12} {'grid: median, least':>14} {'digit':>8} {'sample':>8}")
    for name in names:
        try:
            print(f"{name:22}{measured(book, load_layout(name)).line()}", flush=True)
        except BookErrors as errors:
            told = [*errors.diagnostics]
            print(f"{name:22}{len(told)} troubles: {'; '.join(one.text for one in told[:3])}")


if __name__ == "__main__":
    main()
