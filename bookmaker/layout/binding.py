"""What can be told of a layout before anything is printed: will it bind, and do its puzzles find room?

In: a layout and how many pages the book has. Out: warnings, each at the line of the layout's own file that can mend it,
or where the layout is named. The limits are the least that print-on-demand services publish for glued paperbacks
(common practice, no source).
"""

from __future__ import annotations

from collections.abc import Iterator

from bookmaker.layout.lengths import mm
from bookmaker.layout.pages.block import GUTTER
from bookmaker.layout.pages.fitting import share
from bookmaker.layout.pages.sizing import BESIDE
from bookmaker.layout.spec import LEAST_EDGE, Layout
from bookmaker.source.diagnostics import Diagnostic, Place

LEAST_INNER = ((150, 27.0), (300, 36.0), (500, 45.0), (700, 54.0), (828, 63.0))
"""Up to so many pages the inner margin should be so many points: 3/8 inch, then an eighth more each time."""

MOST_BOUND = 828
"""Pages that bind as one paperback."""


def forewarned(layout: Layout, pages: int, covered: bool) -> Iterator[Diagnostic]:
    """What speaks against binding so many pages in this layout. An odd count is told of a book with a cover only: pages
    without may be meant for a binder."""
    if pages > MOST_BOUND:
        text = f"the book has {pages} pages, and a paperback binds up to about {MOST_BOUND}"
        yield _warning(layout.place, "too-thick", text, "make two volumes of it, or have more puzzles a page")
    if covered and pages % 2:
        text = f"the book has {pages} pages, and a leaf has two: its last side stays blank"
        yield _warning(layout.place, "odd-count", text, "“fold: 2” under “book:” fills it with lines for notes")
    if layout.booklet is None:
        yield from _narrow(layout, pages)


def _narrow(layout: Layout, pages: int) -> Iterator[Diagnostic]:
    """Margins in which text gets lost: in the fold of a thick book, or when it is cut."""
    margins = layout.bound(pages).margins
    least = next((inner for most, inner in LEAST_INNER if pages <= most), LEAST_INNER[-1][1])
    if margins.inner < least - 0.01:
        text = (
            f"an inner margin of {_said(margins.inner)} is narrow for {pages} pages: {_said(least)} is the usual least"
        )
        wider = _said(layout.margins.inner + least - margins.inner)
        yield _warning(_place(layout, "margins.inner"), "narrow-margin", text, f"make it {wider} or more")
    for name in ("outer", "top", "bottom"):
        margin: float = getattr(margins, name)
        if margin < LEAST_EDGE - 0.01:
            text = f"the {name} margin of {_said(margin)} is narrow: {_said(LEAST_EDGE)} is the usual least"
            yield _warning(_place(layout, f"margins.{name}"), "narrow-margin", text, "it may be cut into")
    clear, name = margins.outer - layout.puzzles.beyond, "puzzles.clues in margin"
    if layout.puzzles.beyond and clear < LEAST_EDGE - 0.01:
        text = f"clues come within {_said(max(clear, 0.0))} of the outer edge: {_said(LEAST_EDGE)} is the usual least"
        yield _warning(_place(layout, name), "narrow-margin", text, "let them stand less far in the margin")


def cramped(layout: Layout) -> Iterator[Diagnostic]:
    """Whether a 9 × 9 grid with its least cells is too large for a puzzle's place, even without a word beside it."""
    wide, high = share(layout, layout.depth)
    if layout.puzzles.text == "beside":
        wide -= BESIDE + GUTTER
    side = 9 * layout.puzzles.least
    if min(wide, high) < side - 0.01:
        place = f"{max(wide, 0.0) / mm(1):.0f} by {high / mm(1):.0f} mm"
        text = f"only small puzzles will share a page: {place} are left for a grid, and nine cells need {_said(side)}"
        hint = "give smaller cells, fewer rows or columns, or a larger paper"
        yield _warning(_place(layout, "puzzles"), "cramped", text, hint)


def _place(layout: Layout, name: str) -> Place:
    """The line that can mend it: that of the value, of its section, or whatever names the layout."""
    section = name.partition(".")[0]
    return layout.places.get(name) or layout.places.get(section) or layout.place


def _said(length: float) -> str:
    return f"{length / mm(1):.3g} mm"


def _warning(place: Place, code: str, text: str, hint: str) -> Diagnostic:
    return Diagnostic(place, code, text, hint, warning=True)
