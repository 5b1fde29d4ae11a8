"""The back of a cover: what whoever turns the book over wants to know.

In: a book and the measures of its cover. Out: a panel with the blurb; under it a white card with a puzzle to try, how
many puzzles there are of each difficulty, the kinds of rules as icons, and the line for the shop: price, category, the
code of the link, the barcode. What a machine or a pencil has to read stands on white.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Generator, Iterator
from dataclasses import replace
from math import ceil

from bookmaker.book.contents import Book, BookPuzzle
from bookmaker.display.colour import contrast
from bookmaker.display.items import Group, Item, Link, Text, tagged
from bookmaker.display.tags import LINK, OURS, PARAGRAPH, Role, Tag
from bookmaker.language.figures import decimal_said
from bookmaker.layout.art.codes import BARCODE, QUIET, barcode, qr_code, qr_side
from bookmaker.layout.art.gridart import draw_grid, outside
from bookmaker.layout.art.pieces import BROAD, pieces_of
from bookmaker.layout.art.ridge import HEIGHT, ridge, skyline
from bookmaker.layout.art.swatch import legible_cell, swatch, swatch_size
from bookmaker.layout.lengths import mm
from bookmaker.layout.setting.flow import height, stacked
from bookmaker.layout.setting.runs import marked_paragraph
from bookmaker.layout.setting.text import FONTS, Row, cut, width
from bookmaker.layout.sheets.wrap import Box, Wrap, inked, legible
from bookmaker.layout.spec import Layout, Type
from bookmaker.layout.theme import Theme
from bookmaker.layout.themefile import LEGIBLE
from bookmaker.manifest.publication import Cover
from bookmaker.phrases.titles import title_of
from bookmaker.rules.common.contract import Rule, Sample

EDGE = mm(10)
"""Ornament that is left to see around the panel, at least."""

FIGURES = 6.0
"""Least type size of words and figures on the back, in points."""

SHAPES = 4.5
"""The same in an icon, which is seen as a shape and not read."""

ICON = mm(4.6)
"""Usual size of a cell in an icon."""

ICON_WIDE, ICON_HIGH, COLUMN = mm(16), mm(9.6), mm(43)
"""Room for an icon, and the width of a column with its name."""

LOOSEST = 1.3
"""How far rows of icons may stand apart beside the usual, where there is room."""

WIDEST_SCALE = mm(70)

LEAST_CELL = mm(4.2)
"""A puzzle on the back has cells of at least this, or it is not there."""


def back_box(wrap: Wrap) -> Box:
    """The panel of the back, its edges on those of the cells nearest to them."""
    edge = max(EDGE, wrap.cell)
    return Box(edge, 2 * wrap.cell, wrap.wide - edge, wrap.high - 2 * wrap.cell)


def back(book: Book, layout: Layout, wrap: Wrap, theme: Theme, cover: Cover) -> Iterator[Item]:
    """Everything on the back but the ornament."""
    box, palette, line = back_box(wrap), theme.cover, layout.line
    yield box.filled(palette.panel)
    pad = line
    words = palette.words if contrast(palette.words, palette.panel) >= LEGIBLE else legible(palette, palette.panel)
    rows = _blurb(book, layout, cover, box.wide - 2 * pad)
    y = box.top + pad
    yield from inked(stacked(rows, box.left + pad, y, {}), words)
    card = Box(box.left + pad / 2, y + height(rows) + pad / 2, box.right - pad / 2, box.bottom - pad / 2)
    if palette.panel != 1.0:
        yield card.filled(1.0)
    inner = Box(card.left + pad, card.top + pad, card.right - pad, card.bottom - pad)
    foot = [*_shop(book, layout, cover, inner)]
    bottom = inner.bottom - _shop_height(book, cover, layout)
    yield from _facts(book, layout, cover, Box(inner.left, inner.top, inner.right, bottom))
    yield from foot


def _blurb(book: Book, layout: Layout, cover: Cover, measure: float) -> list[Row]:
    """The words of the editor; without any, how many puzzles there are."""
    type, line = layout.type.text, layout.line
    type = replace(type, size=1.1 * type.size)
    rows: list[Row] = []
    for runs in cover.blurb:
        rows += [*marked_paragraph(runs, type, min(measure, 36 * type.size), line), Row(line / 2)]
    if not cover.blurb:
        count = len(book.puzzles)
        words = layout.words.sentence("cover-count", n=count, number=layout.words.number(count))
        text = Text(0.0, 0.8 * line, words, type.font, type.size)
        rows += [Row(line, (text,), tags=(OURS,)), Row(line / 2)]
    return rows


def _facts(book: Book, layout: Layout, cover: Cover, box: Box) -> Iterator[Item]:
    """The sample at the left, figures and the scale of difficulty at its right, the icons under both."""
    line = layout.line
    puzzle = _sample(book, cover)
    side = min(0.54 * box.wide, 0.62 * box.high)
    left, under = box.left, box.top
    if puzzle is not None:
        claim, grid = outside(puzzle.puzzle), puzzle.puzzle.grid
        across, down = claim.left + grid.width + claim.right, claim.top + grid.height + claim.bottom
        cell = side / max(across, down)
        if cell >= LEAST_CELL:
            drawn = draw_grid(puzzle.puzzle, cell, "sample grid", language=layout.language)
            yield Group(drawn.items, box.left + claim.left * cell, box.top + claim.top * cell)
            under = box.top + down * cell + line
            said = f"{layout.say('cover-sample', number=str(puzzle.number))}: {puzzle.title}"
            if (rating := puzzle.rating) is not None:
                said += f", {rating.band_name} {decimal_said(layout.words, rating.figure)}"
            label = layout.type.label
            said = cut(said, label, across * cell)
            yield tagged((OURS,), Text(box.left, under, said, label.font, label.size))
            left = box.left + across * cell + 1.6 * line
    top = yield from _figures(book, layout, left, box.top, box.right - left)
    rated = [puzzle.rating.band for puzzle in book.puzzles if puzzle.rating]
    wide = min(box.right - left, WIDEST_SCALE)
    if rated and wide > mm(30):
        high = HEIGHT * wide + 2.2 * line
        top = max(top, under - line - high)
        yield from _scale(book, layout, Counter(rated), left, top, wide)
        top += high
    yield from _icons(book, layout, Box(box.left, max(top, under) + 1.2 * line, box.right, box.bottom))


def _figures(book: Book, layout: Layout, x: float, y: float, room: float) -> Generator[Item, None, float]:
    """How many puzzles and kinds of rules there are, in large figures; where they end."""
    type, label, kinds = layout.type.title, layout.type.label, len(_kinds(book))
    for count, name in ((len(book.puzzles), "cover-puzzles"), (kinds, "cover-kinds")):
        if not count:
            continue
        figure, words = str(count), layout.say(name, n=count)
        wide = FONTS.width(figure, "sans-bold", type.size)
        y += 1.05 * type.size
        if wide + 0.4 * type.size + width(words, label) <= room:
            items = (
                Text(x, y, figure, "sans-bold", type.size),
                Text(x + wide + 0.4 * type.size, y, words, label.font, 1.15 * label.size),
            )
            yield tagged((replace(OURS, said=f"{figure} {words}"),), *items)
        y += 0.35 * type.size
    return y


def _scale(book: Book, layout: Layout, counts: Counter[int], x: float, y: float, wide: float) -> Iterator[Item]:
    """The ridge, with the names of the bands and how many puzzles each has under its peaks."""
    line, label = layout.line, layout.type.label
    base = y + HEIGHT * wide
    yield Group((ridge(max(counts), wide, 0.8),), x, base)
    said = ", ".join(
        layout.say("band-count", band=name, count=str(counts[band]))
        for band, name in enumerate(book.band_names, start=1)
    )
    longest = max(width(name, label) for name in book.band_names)
    size = label.size * min(1.0, wide / 5.4 / max(longest, 0.01))
    items: list[Item] = []
    for band, (name, (peak, _)) in enumerate(zip(book.band_names, skyline(wide, 1.0)[1::2], strict=True), start=1):
        if size >= FIGURES:
            items.append(Text(x + peak, base + 0.8 * line, name, label.font, size, anchor="middle"))
        items.append(Text(x + peak, base + 1.75 * line, str(counts[band]), "sans-bold", label.size, anchor="middle"))
    yield tagged((replace(OURS, said=layout.say("bands-counted", counts=said)),), *items)


def _kinds(book: Book) -> list[type[Rule]]:
    """The kinds of rules in the book, the commonest first."""
    counts = Counter(type(rule) for puzzle in book.puzzles for rule in puzzle.puzzle.rules)
    return sorted(counts, key=lambda kind: (-counts[kind], title_of(book.words, kind)))


def _icons(book: Book, layout: Layout, box: Box) -> Iterator[Item]:
    """A sample of each kind's mark beside its name, the commonest first, as many as find room."""
    label = layout.type.label
    kinds = [(kind, sample) for kind in _kinds(book) if (sample := kind.sample()) is not None]
    across = max(1, int(box.wide // COLUMN))
    wide, high = box.wide / across, ICON_HIGH
    shown: list[tuple[type[Rule], Sample, float]] = []
    for kind, sample in kinds:
        cell = max(ICON, legible_cell(sample, SHAPES))
        size = swatch_size(sample, cell)
        if (
            size[0] <= ICON_WIDE
            and size[1] <= 1.02 * high
            and width(title_of(layout.words, kind), label) <= wide - ICON_WIDE - mm(3)
        ):
            shown.append((kind, sample, cell))
    down = max(0, int(box.high // high))
    shown = shown[: across * down]
    down = min(down, ceil(len(shown) / across))
    high = min(LOOSEST * high, box.high / max(down, 1))
    for at, (kind, sample, cell) in enumerate(shown):
        column, row = divmod(at, down)
        x, middle = box.left + column * wide, box.top + (row + 0.5) * high
        yield Group((swatch(sample, cell),), x, middle - swatch_size(sample, cell)[1] / 2)
        base = middle + FONTS.x_height(label.font) * label.size / 2
        yield tagged((OURS,), Text(x + ICON_WIDE + mm(1.5), base, title_of(layout.words, kind), label.font, label.size))


def _sample(book: Book, cover: Cover) -> BookPuzzle | None:
    """The puzzle that the manifest names, or one in the middle of the book's difficulty with much to see."""
    if named := [puzzle for puzzle in book.puzzles if puzzle.id == cover.sample]:
        return named[0]
    rated = [puzzle for puzzle in book.puzzles if puzzle.rating and puzzle.rating.band <= 3 and puzzle.puzzle.rules]
    return max(rated or book.puzzles, key=_charm, default=None)


def _charm(puzzle: BookPuzzle) -> tuple[int, int]:
    """How much there is to see: a usual grid, some marks but not too many, and of these the first."""
    grid = puzzle.puzzle.grid
    marks = sum(piece.shape in BROAD for piece in pieces_of(puzzle).all)
    claim = outside(puzzle.puzzle)
    fit = grid.size == 9 and grid.plain and not (claim.left + claim.right + claim.top + claim.bottom)
    return int(fit) * min(marks, 12), -puzzle.number


def _shop_height(book: Book, cover: Cover, layout: Layout) -> float:
    """Room at the foot for the codes, or for the lines of price and category."""
    imprint, link = book.imprint, book.link
    high = BARCODE[1] + 1.2 * layout.line if imprint and imprint.isbn else 0.0
    high = max(
        high, qr_side(link) if link else 0.0, 1.2 * layout.line * bool(cover.price) + layout.line * bool(cover.category)
    )
    return high + layout.line if high else 0.0


def _shop(book: Book, layout: Layout, cover: Cover, box: Box) -> Iterator[Item]:
    """Price and category at the left over the code of the link, the barcode at the right, on white with its margins."""
    line, label = layout.line, layout.type.label
    link, imprint = book.link, book.imprint
    left = box.left
    room = box.wide
    if imprint and imprint.isbn:
        x, y = box.right - BARCODE[0] - QUIET[1], box.bottom - BARCODE[1]
        size = min(label.size, 8.0)
        yield tagged((PARAGRAPH,), Text(x, y - 0.5 * line, layout.say("isbn", number=imprint.isbn), "sans", size))
        yield Group((barcode(imprint.isbn.replace("-", "")),), x, y)
        room -= BARCODE[0] + sum(QUIET)
    if link:
        side = qr_side(link)
        top = box.bottom - side
        told = Tag(Role.FIGURE, f"Code of the link {link}", box=(left, top, side, side))
        leads = Link(left, top, side, side, link, f"Link of this book: {link}", outward=True)
        yield tagged((PARAGRAPH, LINK), tagged((told,), Group((qr_code(link),), left, top)), leads)
        left += side + 0.7 * line
        room -= side + 0.7 * line
    words = [(cover.price, "sans-bold", 1.3), (cover.category, label.font, 1.0)]
    words.append((link.split("://", 1)[1].rstrip("/") if link else "", label.font, 1.0))
    y = box.bottom
    for text, font, scale in reversed(words):
        type = Type(font, scale * label.size, label.leading)
        if text and width(text, type) <= room:
            yield tagged((PARAGRAPH,), Text(left, y, text, font, type.size))
            y -= 1.1 * label.leading * scale
