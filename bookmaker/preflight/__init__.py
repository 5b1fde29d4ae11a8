"""Preflight: a finished PDF looked at by fresh eyes before it goes to press.

In: a PDF file; with proofs, also the book that should stand in it. Out: a `Report`.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Mapping, Sequence
from concurrent.futures import Executor, Future
from dataclasses import dataclass, field

import pikepdf

from bookmaker.preflight.against import compare
from bookmaker.preflight.grids import PrintedGrid
from bookmaker.preflight.marks import MarksRead
from bookmaker.preflight.reading import STRETCH, Read, Source, close, read_stretch, read_whole, stretches
from bookmaker.preflight.tokens import DAMAGED, reason_of
from bookmaker.proof.executors import InProcess, Shared, ahead_of, in_order
from bookmaker.proof.findings import Proof
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.source.diagnostics import Diagnostic, Place

__all__ = ["PrintedGrid", "Report", "inspect"]


@dataclass(frozen=True, slots=True)
class Report:
    """What preflight saw: how many pages, the grids and keys printed on them in order, and what is wrong; `marks` says
    how many were found of each kind, by what one is called, if the file was compared with its book.

    A file that is no readable PDF has no pages and one diagnostic.
    """

    pages: int
    printed: tuple[PrintedGrid, ...]
    diagnostics: tuple[Diagnostic, ...]
    marks: Mapping[str, int] = field(default_factory=dict)
    edition: str = ""

    @property
    def sound(self) -> bool:
        """Nothing is wrong, warnings aside."""
        return all(diagnostic.warning for diagnostic in self.diagnostics)


def inspect(
    source: Source,
    file: str,
    proofs: Sequence[Proof] | None = None,
    folded: bool = True,
    executor: Executor | None = None,
    watch: Callable[[int, int], None] = lambda done, of: None,
    figure: float = 0.0,
) -> Report:
    """Look at a PDF that is, or will be, the file of that name; with `proofs`, compare its grids and marks with them.

    `folded` sheets need a page count that is a multiple of four. An `executor` shares the pages out, and wants the file
    by its path; `watch` is told how many are read, of how many. No figure on a grid may be set in fewer points than
    `figure`, and should not be in a key.
    """
    printed, workers = list[PrintedGrid](), executor or InProcess()
    found, faulty = Counter[str](), list[tuple[int, MarksRead]]()
    known = Shared[Mapping[str, RuledPuzzle]]({proof.entry.id: proof.entry.puzzle for proof in proofs or ()})
    try:
        whole = workers.submit(read_whole, source, folded)
        first = workers.submit(read_stretch, source, range(STRETCH), known)  # while one looks at the whole
        pages, edition, findings = whole.result()

        def begin(stretch: range) -> Future[Read]:
            return workers.submit(read_stretch, source, stretch, known) if stretch.start else first

        for stretch, read in in_order(stretches(pages), begin, ahead_of(workers)):
            findings.add_all(read.findings)
            printed += read.printed
            found.update(read.found)
            faulty += read.faulty
            watch(stretch.stop, pages)
    except pikepdf.PasswordError:
        hint = "presses cannot place protected pages: print it again, or save it without protection"
        text = "the file is protected, and opens only with a password"
        return Report(0, (), (Diagnostic(Place(file), "protected", text, hint),))
    except DAMAGED as error:
        hint = "print it again, or open it in a viewer and see whether it is damaged"
        text = f"this PDF cannot be read ({reason_of(error)})"
        return Report(0, (), (Diagnostic(Place(file), "unreadable", text, hint),))
    finally:
        close()
    differing = () if proofs is None else compare(printed, faulty, proofs, file)
    small = _too_small(printed, figure, Place(file))
    return Report(pages, tuple(printed), (*findings.diagnostics(file), *small, *differing), found, edition)


def _too_small(printed: Sequence[PrintedGrid], figure: float, place: Place) -> tuple[Diagnostic, ...]:
    """Grids and keys with letters or figures of a smaller type size; a twentieth of a point is forgiven."""
    hint = "larger cells make room for them: fewer puzzles or keys beside each other"
    return tuple(
        Diagnostic(
            place,
            "figure-small",
            f"page {grid.page}: the {grid.kind} of “{grid.id}” has figures of {grid.smallest:.1f} points; "
            f"{figure:g} are asked for",
            hint,
            warning=grid.kind == "key",
        )
        for grid in printed
        if 0 < grid.smallest < figure - 0.05
    )
