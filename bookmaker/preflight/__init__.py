"""Preflight: a finished PDF looked at by fresh eyes before it goes to press.

In: a PDF file; with proofs, also the book that should stand in it. Out: a `Report`.
"""

from __future__ import annotations

import logging
from collections.abc import Sequence
from dataclasses import dataclass
from io import BytesIO

from pypdf import PdfReader
from pypdf.errors import PyPdfError

from bookmaker.preflight.against import compare
from bookmaker.preflight.checks import Inspection
from bookmaker.preflight.grids import PrintedGrid, grids_on
from bookmaker.preflight.painting import Memory, painted
from bookmaker.proof.model import Proof
from bookmaker.trouble import Place, Trouble

__all__ = ["PrintedGrid", "Report", "inspect"]

logging.getLogger("pypdf").setLevel(logging.CRITICAL)  # what is wrong with a file is said in our own words

_DAMAGED = (
    PyPdfError, KeyError, ValueError, TypeError, AttributeError, IndexError, RecursionError, NotImplementedError,
)  # fmt: skip
"""What pypdf raises, here and there, on a file that is damaged; the last for a filter that it does not know."""


@dataclass(frozen=True, slots=True)
class Report:
    """What preflight saw: how many pages, the grids and keys printed on them in order, and what is wrong.

    A file that is no readable PDF has no pages and one trouble.
    """

    pages: int
    printed: tuple[PrintedGrid, ...]
    troubles: tuple[Trouble, ...]

    @property
    def sound(self) -> bool:
        """Nothing is wrong, warnings aside."""
        return all(trouble.warning for trouble in self.troubles)


def inspect(content: bytes, file: str, proofs: Sequence[Proof] | None = None, folded: bool = True) -> Report:
    """Look at a PDF that is, or will be, the file of that name; with `proofs`, compare its grids with them.

    `folded` sheets need a page count that is a multiple of four.
    """
    memory = Memory()
    printed: list[PrintedGrid] = []
    try:
        reader = PdfReader(BytesIO(content))
        inspection = Inspection(reader, file, folded)
        for number, page in enumerate(reader.pages, start=1):
            items = list(painted(page, memory))
            inspection.page(number, page, items)
            printed += grids_on(number, items)
            reader.resolved_objects.clear()  # pages read, which it would keep unpacked to the end
        pages = len(reader.pages)
    except _DAMAGED as reason:
        hint = "print it again, or open it in a viewer and see whether it is damaged"
        return Report(0, (), (Trouble(Place(file), "unreadable", f"this PDF cannot be read ({reason})", hint),))
    differing = () if proofs is None else compare(printed, proofs, file)
    return Report(pages, tuple(printed), (*inspection.troubles(), *differing))
