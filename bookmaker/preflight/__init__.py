"""Preflight: a finished PDF looked at by fresh eyes before it goes to press.

In: a PDF file; with proofs, also the book that should stand in it. Out: a `Report`.
"""

from __future__ import annotations

import logging
from collections import Counter
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from io import BytesIO

from pypdf import PdfReader
from pypdf.errors import DependencyError, FileNotDecryptedError, PyPdfError

from bookmaker.preflight.against import compare
from bookmaker.preflight.checks import Inspection
from bookmaker.preflight.grids import PrintedGrid, grids_on
from bookmaker.preflight.marks import MarksRead, read_marks, shapes_there
from bookmaker.preflight.painted import Painted
from bookmaker.preflight.painting import Memory, painted
from bookmaker.proof.model import Proof
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.trouble import Place, Trouble

__all__ = ["PrintedGrid", "Report", "inspect"]

logging.getLogger("pypdf").setLevel(logging.CRITICAL)  # what is wrong with a file is said in our own words

_DAMAGED = (
    PyPdfError, KeyError, ValueError, TypeError, AttributeError, IndexError, RecursionError, NotImplementedError,
)  # fmt: skip
"""What pypdf raises, here and there, on a file that is damaged; the last for a filter that it does not know."""


@dataclass(frozen=True, slots=True)
class Report:
    """What preflight saw: how many pages, the grids and keys printed on them in order, and what is wrong; `marks` says
    how many were found of each kind, by what one is called, if the file was compared with its book.

    A file that is no readable PDF has no pages and one trouble.
    """

    pages: int
    printed: tuple[PrintedGrid, ...]
    troubles: tuple[Trouble, ...]
    marks: Mapping[str, int] = field(default_factory=dict)

    @property
    def sound(self) -> bool:
        """Nothing is wrong, warnings aside."""
        return all(trouble.warning for trouble in self.troubles)


def inspect(content: bytes, file: str, proofs: Sequence[Proof] | None = None, folded: bool = True) -> Report:
    """Look at a PDF that is, or will be, the file of that name; with `proofs`, compare its grids and marks with them.

    `folded` sheets need a page count that is a multiple of four.
    """
    memory = Memory()
    printed: list[PrintedGrid] = []
    marks: list[tuple[int, MarksRead]] = []
    known = {proof.entry.id: proof.entry.puzzle for proof in proofs or ()}
    try:
        reader = PdfReader(BytesIO(content))
        inspection = Inspection(reader, file, folded)
        for number, page in enumerate(reader.pages, start=1):
            items = list(painted(page, memory))
            inspection.page(number, page, items)
            grids = grids_on(number, items)
            printed += grids
            marks += ((number, read) for read in _marks(items, grids, known))
            reader.resolved_objects.clear()  # pages read, which it would keep unpacked to the end
        pages = len(reader.pages)
    except (DependencyError, FileNotDecryptedError):
        # pypdf opens such files only with the password, or with a package for the cipher that is no part of bookmaker.
        hint = "presses cannot place protected pages: print it again, or save it without protection"
        text = "the file is protected, so it can't be read"
        return Report(0, (), (Trouble(Place(file), "protected", text, hint),))
    except _DAMAGED as reason:
        hint = "print it again, or open it in a viewer and see whether it is damaged"
        return Report(0, (), (Trouble(Place(file), "unreadable", f"this PDF cannot be read ({reason})", hint),))
    differing = () if proofs is None else compare(printed, marks, proofs, file)
    found = sum((read.found for _, read in marks), Counter[str]())
    return Report(pages, tuple(printed), (*inspection.troubles(), *differing), found)


def _marks(
    items: Sequence[Painted], grids: Sequence[PrintedGrid], known: Mapping[str, RuledPuzzle]
) -> Iterator[MarksRead]:
    """The marks of the puzzles' grids on one page."""
    meant = [(grid, known[grid.id]) for grid in grids if grid.kind == "grid" and grid.id in known]
    meant = [(grid, puzzle) for grid, puzzle in meant if grid.frame and grid.size == puzzle.grid.size]
    if meant:
        there = shapes_there(items)
        yield from (read_marks(there, grid, puzzle) for grid, puzzle in meant)
