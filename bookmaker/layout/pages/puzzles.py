"""Puzzles onto pages, in order, as many a page as the layout says.

In: the puzzles of a chapter. Out: an `UnnumberedPage` for each page. A puzzle too large for its share of a page has
half a page, where it fits and a share is less, or a page of its own; one too large even for that is a diagnostic that
says what is missing. A page is filled from the top, row by row: above or below a puzzle on half a page stand others in
their shares. Where text stands beside the grids, one puzzle may have more of a page than the other.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import replace
from itertools import groupby
from math import floor

from bookmaker.book.contents import BookPuzzle
from bookmaker.display.items import Group, Item, tagged
from bookmaker.display.tags import SECTION
from bookmaker.layout.lengths import mm
from bookmaker.layout.page_side import PageSide, UnnumberedPage
from bookmaker.layout.pages.block import Block
from bookmaker.layout.pages.filling import Slot, filled, shared_out
from bookmaker.layout.pages.fitting import fit, uneven
from bookmaker.layout.pages.notes import note_page
from bookmaker.layout.pages.sizing import in_line, levelled
from bookmaker.layout.pages.workings import workings
from bookmaker.layout.setting.flow import height, stacked
from bookmaker.layout.setting.text import Labels
from bookmaker.layout.spec import Layout, Shown
from bookmaker.layout.specfile import layout_names, load_layout
from bookmaker.source.diagnostics import BookErrors, Diagnostic

SMALLEST = 1.0
"""Cells of fewer millimetres are as good as none."""


def puzzle_pages(puzzles: Iterable[BookPuzzle], layout: Layout, head: str) -> list[UnnumberedPage]:
    """Pages of puzzles. Raises BookErrors with every puzzle that fits on no page."""
    pages = fill_pages(puzzles, layout, spread=True)
    return [leaf for slots in pages for leaf in _leaves(slots, layout, head)]


def fill_pages(puzzles: Iterable[BookPuzzle], layout: Layout, spread: bool = False) -> list[tuple[Slot, ...]]:
    """The slots of each page of a book, no half of a page left empty where that can be helped.

    With `spread`, a puzzle whose rules leave no room for its grid has them on the page that faces it. Raises BookErrors
    with every puzzle that fits on no page.
    """
    pages = _placed(puzzles, layout, layout.depth, spread)
    return [tuple(_in_rows(filled(page, layout, layout.depth, spread))) for page in pages]


def place_puzzles(
    puzzles: Iterable[BookPuzzle], layout: Layout, depth: float, spread: bool = False
) -> list[tuple[Slot, ...]]:
    """The slots of each page, `depth` points deep, each puzzle in its share. Else as `fill_pages`."""
    return [tuple(_in_rows(page)) for page in _placed(puzzles, layout, depth, spread)]


def _placed(puzzles: Iterable[BookPuzzle], layout: Layout, depth: float, spread: bool) -> list[list[Slot]]:
    pages: list[list[Slot]] = []
    diagnostics = []
    gap, most = layout.puzzles.gap, layout.puzzles.rows * layout.puzzles.columns
    band, left, top, below = (0, 0.0), 0, 0.0, 0.0
    for puzzle in puzzles:
        block, across = fit(_as_shown(puzzle, layout.shows), layout, depth, spread)
        if not block.fits:
            diagnostics.append(_does_not_fit(block))
            continue
        if band != (across, block.depth) or not left:
            if not pages or len(pages[-1]) == most or below + block.depth > depth + 0.01:
                pages.append([])
                below = 0.0
            band, left, top = (across, block.depth), across, below
            below += block.depth + gap
        pages[-1].append(Slot(block, (across - left) * (block.width + gap), top))
        left -= 1
    if diagnostics:
        raise BookErrors(diagnostics)
    return [shared_out(page, layout, depth, spread) for page in pages] if uneven(layout) else pages


def _as_shown(puzzle: BookPuzzle, shows: Shown) -> BookPuzzle:
    """The puzzle without what the layout leaves out."""
    return replace(
        puzzle,
        setter=puzzle.setter if shows.setter else "",
        rating=puzzle.rating if shows.difficulty else None,
        note=puzzle.note if shows.note else "",
        link=puzzle.link if shows.link else "",
    )


def _in_rows(page: Sequence[Slot]) -> Iterator[Slot]:
    """The slots of a page, the grids of those beside each other on one line, of those below each other in one."""
    for beside, slots in groupby(page, key=lambda slot: slot.block.text == "beside"):
        if beside:
            column = [*slots]
            yield from _with(column, in_line([slot.block for slot in column]))
            continue
        for _, band in groupby(slots, key=lambda slot: slot.y):
            row = [*band]
            blocks = [slot.block for slot in row]
            yield from _with(row, levelled(blocks) if len(row) > 1 else blocks)


def _with(slots: Sequence[Slot], blocks: Sequence[Block]) -> Iterator[Slot]:
    return (replace(slot, block=block) for slot, block in zip(slots, blocks, strict=True))


def _leaves(slots: tuple[Slot, ...], layout: Layout, head: str) -> Iterator[UnnumberedPage]:
    """The page of these slots, after the one that faces it if there is one."""
    facing = slots[0].block.facing
    if facing:

        def draw(sheet: PageSide, labels: Labels) -> tuple[Item, ...]:
            rules = tagged((SECTION,), *stacked(facing, sheet.x, sheet.y, labels))
            lines = workings(layout, layout.measure, height(facing) + layout.line, layout.depth)
            return rules, Group(tuple(lines), sheet.x, sheet.y)

        yield UnnumberedPage(
            draw, _anchors(slots, layout), head, between=note_page(layout.say("rules-face-grid"), layout)
        )
    yield leaf_of(slots, layout, head, not facing)


def leaf_of(slots: tuple[Slot, ...], layout: Layout, head: str, led_to: bool = True) -> UnnumberedPage:
    """The page of these slots; with anchors that lead to its puzzles, unless these lead elsewhere."""

    def draw(sheet: PageSide, labels: Labels) -> tuple[Item, ...]:
        return tuple(drawn(slots, sheet.x, sheet.y, sheet.right, labels))

    return UnnumberedPage(draw, _anchors(slots, layout) if led_to else (), head)


def _anchors(slots: tuple[Slot, ...], layout: Layout) -> tuple[tuple[str, float], ...]:
    return tuple((f"puzzle {slot.block.puzzle.id}", layout.margins.top + slot.y) for slot in slots)


def drawn(slots: tuple[Slot, ...], left: float, top: float, right: bool, labels: Labels) -> Iterator[Item]:
    """The puzzles of a page, the type area beginning at `left` and `top`; text beside a grid is at the left of it on a
    `right` page. Raises BookErrors with every mark that would not be seen."""
    diagnostics: list[Diagnostic] = []
    for slot in slots:
        try:
            items = tuple(slot.block.draw(right, labels))
        except BookErrors as found:
            diagnostics += found.diagnostics
            continue
        section = SECTION.further if slot.block.facing else SECTION
        placed = Group(items, left + slot.x, top + slot.y, name=f"puzzle {slot.block.puzzle.id}")
        yield tagged((section,), placed)
    if diagnostics:
        raise BookErrors(diagnostics)


def _does_not_fit(block: Block) -> Diagnostic:
    puzzle, layout = block.puzzle, block.layout
    grid = puzzle.puzzle.grid
    size, called = grid.extent, f"{grid.height}×{grid.width} grid{'s' if grid.overlaps else ''}"
    least, got = layout.puzzles.least_for(size) / mm(1), floor(10 * block.cell / mm(1)) / 10
    short = f"“{puzzle.title}” does not fit on a page of {layout.name}"
    if got < SMALLEST:
        text = f"{short}: its rules and note leave no room for its {called}"
    elif block.cell < layout.puzzles.least_for(size) - 0.01:
        cells = f"its {called} would have cells of {got:.1f} mm"
        text = f"{short}: {cells}, and the layout needs at least {least:.1f} mm"
    else:
        figures = floor(10 * layout.puzzles.figure * block.cell / block.least) / 10
        told = f"figures in its marks would be of {figures:.1f} points"
        text = f"{short}: {told}, and the layout needs at least {layout.puzzles.figure:g}"
    fit = _that_can(puzzle, layout)
    other = f"choose a layout that has room, such as {fit}" if fit else "choose one with larger paper or smaller cells"
    return Diagnostic(puzzle.place, "does-not-fit", text, f"{other}, or shorten the puzzle's note")


def _that_can(puzzle: BookPuzzle, layout: Layout) -> str:
    """The name of a layout for the same use that can set the puzzle, on the same paper if there is one; "" if none
    can."""
    others = [load_layout(name) for name in layout_names() if name != layout.name]
    others = [other for other in others if other.use == layout.use and not other.tear_out]
    others.sort(key=lambda other: ((other.width, other.height) != (layout.width, layout.height), other.width))
    spread = layout.use == "book"
    return next((other.name for other in others if fit(puzzle, other, other.depth, spread)[0].fits), "")
