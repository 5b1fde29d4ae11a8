"""Codes that machines read: the EAN-13 barcode of an ISBN, and QR codes of links.

In: digits or an address. Out: one group of black rectangles whose origin is its top left corner, without the white
around it, which the page has to keep: `QUIET` for a barcode (GS1 General Specifications: 11 modules at the left, 7 at
the right), four modules for a QR code (ISO/IEC 18004). The patterns come from python-barcode and segno, which are
read when a book has a code to draw.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from functools import lru_cache
from itertools import groupby

from bookmaker.display.items import Group, Item, Rect, Text
from bookmaker.layout.lengths import mm
from bookmaker.layout.setting.text import FONTS

MODULE = mm(0.33)
"""Width of the narrowest bar at the nominal size (GS1 General Specifications)."""

QUIET = (11 * MODULE, 7 * MODULE)

BARS = mm(22.85)
"""Height of the bars at the nominal size; the guards reach five modules lower."""

GUARDS = frozenset((*range(3), *range(45, 50), *range(92, 95)))
"""Modules of the guard bars among the 95 of an EAN-13."""

DOT = mm(0.5)
"""Side of a module of a QR code: a telephone reads it at arm's length (common practice, no source)."""


def barcode(digits: str) -> Group:
    """The EAN-13 of thirteen digits, which stand under its bars: 95 modules wide, `BARS` and a line of digits high."""
    from barcode.ean import EuropeanArticleNumber13

    pattern = EuropeanArticleNumber13(digits).build()[0]
    items: list[Item] = [
        Rect(start * MODULE, 0.0, width * MODULE, BARS + (5 * MODULE if start in GUARDS else 0.0), fill=0.0)
        for start, width in _stretches(pattern)
    ]
    size, base = 7.5 * MODULE / FONTS.figure_height("sans"), BARS + 9 * MODULE
    items.append(Text(-9 * MODULE, base, digits[0], "sans", size))
    for left, six in ((3, digits[1:7]), (50, digits[7:])):
        items += [
            Text((left + 7 * at + 3.5) * MODULE, base, digit, "sans", size, anchor="middle")
            for at, digit in enumerate(six)
        ]
    return Group(tuple(items), name=f"barcode {digits}")


BARCODE = 95 * MODULE, BARS + 9 * MODULE
"""Width and height of a barcode."""


@lru_cache(maxsize=1000)
def qr_code(link: str) -> Group:
    """The QR code of an address, at the level of correction that restores 15 % of it."""
    return Group(tuple(_dots(_modules(link))), name=f"code {link}")


def qr_side(link: str) -> float:
    """Side of that code in points."""
    return DOT * len(_modules(link))


def _modules(link: str) -> tuple[bytearray, ...]:
    """The rows of that code, 1 for a dark module."""
    import segno

    return segno.make(link, error="m", boost_error=False, micro=False).matrix


def _dots(rows: Iterable[bytearray]) -> Iterator[Rect]:
    """Each stretch of dark modules as one rectangle."""
    for at, row in enumerate(rows):
        for start, width in _stretches("".join(map(str, row))):
            yield Rect(start * DOT, at * DOT, width * DOT, DOT, fill=0.0)


def _stretches(pattern: str) -> Iterator[tuple[int, int]]:
    """Where the runs of “1” begin, and how long they are."""
    at = 0
    for sign, run in groupby(pattern):
        length = len(list(run))
        if sign == "1":
            yield at, length
        at += length
