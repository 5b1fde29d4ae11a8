"""A finished PDF gone through page by page, in stretches that several processes may share.

In: a PDF file, by its path or as bytes. Out: what is to be said of the file as a whole; for each stretch of pages what
is wrong on them, and the grids and keys printed there. qpdf keeps a note of every object of a file, 300 MB for 10,000
puzzles that can be read aloud, so that the process in charge leaves even the first look at it to others.
"""

from __future__ import annotations

import os
from collections import Counter
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace
from io import BytesIO
from pathlib import Path
from typing import BinaryIO, NamedTuple, TypeAlias

import pikepdf

from bookmaker.files import ordinary
from bookmaker.preflight.checks import check_file, check_page, damaged
from bookmaker.preflight.edition import edition_of
from bookmaker.preflight.findings import Findings
from bookmaker.preflight.grids import PrintedGrid, grids_on
from bookmaker.preflight.inks import inks_of
from bookmaker.preflight.marks import MarksRead, read_marks, shapes_there
from bookmaker.preflight.painted import Painted
from bookmaker.preflight.painting import Memory, painted
from bookmaker.preflight.tokens import DAMAGED
from bookmaker.proof.executors import Shared
from bookmaker.rules.common.contract import RuledPuzzle

STRETCH = 64
"""Pages in a stretch: few enough to show progress and to share the work evenly."""

Source: TypeAlias = Path | bytes


class _Opened(NamedTuple):
    """A file, the stream that it is read from bit by bit, and what its pages share."""

    pdf: pikepdf.Pdf
    stream: BinaryIO
    memory: Memory


_opened: dict[Source, _Opened] = {}
"""The file that was read last, if any: stretches of one file come one after the other."""


def _open(source: Source) -> _Opened:
    """The file, once more if it was the last. Raises one of `DAMAGED` where it is no PDF."""
    if source not in _opened:
        close()  # before the next is opened: a long book takes hundreds of megabytes
        stream: BinaryIO
        if isinstance(source, bytes):
            stream = BytesIO(source)
        elif os.name == "nt":  # where no file that is open can be moved into its place
            stream = BytesIO(ordinary(source).read_bytes())
        else:
            stream = ordinary(source).open("rb")
        try:
            _opened[source] = _Opened(pikepdf.open(stream, suppress_warnings=True), stream, Memory())
        except BaseException:
            stream.close()
            raise
    return _opened[source]


def close() -> None:
    """Let go of the file that was read last."""
    while _opened:
        _, opened = _opened.popitem()
        opened.pdf.close()
        opened.stream.close()


class Whole(NamedTuple):
    """A file as a whole: how many pages it has, its edition in words, and what is wrong with it."""

    pages: int
    edition: str
    findings: Findings


def read_whole(source: Source, folded: bool) -> Whole:
    """A file looked at as a whole; `folded` sheets need a page count that is a multiple of four. Raises one of
    `DAMAGED` where it is no PDF."""
    pdf = _open(source).pdf
    whole = Whole(len(pdf.pages), edition_of(pdf), Findings())
    check_file(pdf, folded, whole.findings)
    if pdf.get_warnings():
        damaged(0, whole.findings)
    return whole


def stretches(pages: int) -> Iterator[range]:
    """The pages of a file, counted from 0, in stretches."""
    return (range(start, min(start + STRETCH, pages)) for start in range(0, pages, STRETCH))


class Read(NamedTuple):
    """What is wrong on a stretch of pages, and what is printed on them: grids; how many marks of each kind were found;
    and with the number of its page, from 1, each grid whose marks are not as they should be."""

    findings: Findings
    printed: list[PrintedGrid]
    found: Counter[str]
    faulty: list[tuple[int, MarksRead]]


def read_stretch(source: Source, stretch: range, known: Shared[Mapping[str, RuledPuzzle]]) -> Read:
    """A stretch of pages, as far as there are any; marks are read of the grids whose puzzles are known."""
    pdf, _, memory = _open(source)
    inks = inks_of(pdf)
    read, pages = Read(Findings(), [], Counter(), []), pdf.pages
    for at in stretch[: len(pages) - stretch.start]:
        page = pages[at]
        pdf.get_warnings()
        try:
            items = list(painted(page, memory))
            whole = not pdf.get_warnings()
        except DAMAGED:
            items, whole = [], False
        if not whole:
            damaged(at + 1, read.findings)
        check_page(at + 1, page, items, inks, read.findings)
        grids = grids_on(at + 1, items)
        for marks in _marks(items, grids, known.value):
            read.found.update(marks.found)
            if marks.diagnostics:
                read.faulty.append((at + 1, marks))
        read.printed.extend(replace(grid, frame=None) for grid in grids)  # of use for marks alone
    return read


def _marks(
    items: Sequence[Painted], grids: Sequence[PrintedGrid], known: Mapping[str, RuledPuzzle]
) -> Iterator[MarksRead]:
    """The marks of the puzzles' grids on one page."""
    meant = [(grid, known[grid.id]) for grid in grids if grid.kind == "grid" and grid.id in known]
    meant = [
        (grid, puzzle)
        for grid, puzzle in meant
        if grid.frame and (grid.rows, grid.columns) == (puzzle.grid.height, puzzle.grid.width)
    ]
    if meant:
        there = shapes_there(items)
        yield from (read_marks(there, grid, puzzle) for grid, puzzle in meant)
