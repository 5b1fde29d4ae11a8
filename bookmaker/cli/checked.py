"""Finished PDF files on their way to disk: preflight looks at each before any is put in place."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from concurrent.futures import Executor, Future
from dataclasses import dataclass
from pathlib import Path

import click

from bookmaker.cli.group import print_diagnostics
from bookmaker.cli.progress import Progress
from bookmaker.display.items import Document
from bookmaker.files import Beside, Unwritten, naming
from bookmaker.ink.conditions import USUAL, Condition
from bookmaker.ink.pdf import write_pdf
from bookmaker.preflight import Report, inspect
from bookmaker.proof import Proof
from bookmaker.proof.executors import InProcess
from bookmaker.source.diagnostics import BookErrors

MANY = 2_000
"""Puzzles from which on a book is not handed to another process to draw its keys: to pack it here and to unpack it
there takes memory in both."""


@dataclass(frozen=True, slots=True)
class Printing:
    """A PDF file to be: its path, and what makes its document, which another process may be asked to do.

    A file for the `press` is PDF/X, its colours for a printing `condition`. `folded` sheets need a page count that is a
    multiple of four. Where there are `grids`, they are read back and compared with the proofs; no figure on them may be
    of fewer points than `figure`.
    """

    path: Path
    make: Callable[[], Document]
    press: bool = False
    folded: bool = False
    grids: bool = True
    condition: Condition = USUAL
    figure: float = 0.0


def hand_over(
    printings: Iterable[Printing], proofs: Sequence[Proof], beside: Beside, executor: Executor
) -> dict[Path, Future[Report]]:
    """Have files filled and looked over by the executor; by their paths, what it will report. Where there are `MANY`
    puzzles, none is handed over."""
    if len(proofs) >= MANY:
        return {}
    return {printing.path: executor.submit(_printed, printing, beside(printing.path), proofs) for printing in printings}


def print_checked(
    printings: Sequence[Printing],
    proofs: Sequence[Proof],
    beside: Beside,
    executor: Executor | None = None,
    begun: Mapping[Path, Future[Report]] | None = None,
) -> list[int]:
    """Fill the files that are to take the places of others, and look them over; how many pages each has. The first is
    drawn here, the others by the executor, unless it has `begun` with them. Warnings are said.

    Raises BookErrors if there is more than warnings in any, OSError if one can't be written.
    """
    workers, elsewhere = executor or InProcess(), dict(begun or {})
    files = {printing.path: beside(printing.path) for printing in printings}
    elsewhere |= hand_over((each for each in printings[1:] if each.path not in elsewhere), proofs, beside, workers)
    reports = [
        future.result() if (future := elsewhere.get(each.path)) else _printed(each, files[each.path], proofs, workers)
        for each in printings
    ]
    diagnostics = tuple(diagnostic for report in reports for diagnostic in report.diagnostics)
    if not all(report.sound for report in reports):
        click.echo("preflight found faults, so nothing was written:", err=True)
        raise BookErrors(diagnostics)
    print_diagnostics(diagnostics)
    return [report.pages for report in reports]


def _printed(printing: Printing, file: Path, proofs: Sequence[Proof], executor: Executor | None = None) -> Report:
    """Draw a file and read it back."""
    pages = f"pages of {printing.path.name}"
    with naming(printing.path, Unwritten), file.open("wb") as stream:
        write_pdf(printing.make(), stream, printing.press, Progress("drew", pages), printing.condition)
    known = proofs if printing.grids else None
    watch = Progress("read back", pages)
    return inspect(file, str(printing.path), known, printing.folded, executor, watch, printing.figure)
